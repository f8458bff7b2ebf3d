"""Signs to weigh: of each exercise and side what was lifted how often, and the change of the last week."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QKeySequence, QPalette, QShortcut
from PySide6.QtWidgets import QLabel, QWidget

from app.analysis.figure import Figure
from app.analysis.figures_progression import ExerciseSigns
from app.views.review.athlete.progression_words import (
    Changes,
    change_words,
    named,
    sign_columns,
    week_words,
)
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.flow import FlowLayout
from app.views.widgets.rows_model import RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

HEADING = message("Signs to weigh")
CAUTION = message("The practitioner decides, pain and technique first: these are signs and no advice.")
CAUTION_SHOWN = message("The practitioner decides, technique first: these are signs and no advice.")
"""The caution while somebody else looks on, who is told nothing of pain."""
NOTHING = message("No exercise was done in the last sessions of this time.")
LAST_COLUMN, GAP = 2, 12
WHAT = (message("Load"), message("Contacts"), message("Volume"))


class ProgressionCard(Card):
    """A row for each exercise and side, below them the change of a week.

    `why` carries a heading and figures.
    """

    why = Signal(str, object)

    def __init__(self) -> None:
        super().__init__(tr(HEADING), tr(CAUTION))
        self.model: RowsModel[ExerciseSigns] = RowsModel(sign_columns(), LIGHT, self)
        self.table = RowsTable(self.model, tr(HEADING))
        self.table.sort_by(LAST_COLUMN, Qt.SortOrder.DescendingOrder)
        self.empty = QLabel(tr(NOTHING))
        self.empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.week = QLabel()
        self.changes = [WordButton("") for _ in WHAT]
        self._pairs: list[tuple[Figure, Figure]] = []
        below = QWidget()
        flow = FlowLayout(below, GAP)
        for part in (self.week, *self.changes):
            flow.addWidget(part)
        for quiet in (self.empty, self.week):
            quiet.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        for part in (self.table, self.empty):
            self.body.addWidget(part, 1)
        self.body.addWidget(below)
        for number, button in enumerate(self.changes):
            button.clicked.connect(partial(self._ask_change, number))
        for chosen in (self.table.clicked, self.table.activated):
            chosen.connect(self._ask)
        shortcut = QShortcut(QKeySequence("W"), self.table)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(lambda: self._ask(self.table.currentIndex()))

    def hasHeightForWidth(self) -> bool:
        """No: else all cards of the page would be given the height that they would like best."""
        return False

    def show_signs(self, signs: Sequence[ExerciseSigns], changes: Changes, *, pain: bool) -> None:
        """Show these signs and changes; without `pain` no word of it."""
        self.model.set_rows(signs)
        self.set_aside(tr(CAUTION if pain else CAUTION_SHOWN))
        self.table.setVisible(bool(signs))
        self.empty.setVisible(not signs)
        self._pairs = list(changes)
        self.week.setText(week_words(changes))
        for button in self.changes:
            button.setVisible(bool(changes))
        for button, what, pair in zip(self.changes, WHAT, changes, strict=False):
            button.setText(change_words(tr(what), *pair))
            button.updateGeometry()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.table.set_look(look, dense=True)
        self.empty.setFont(look.font(look.sizes.body))
        self.week.setFont(look.font(look.sizes.small))
        self.week.setContentsMargins(0, round(self.week.fontMetrics().height() * 0.3), 0, 0)
        for button in self.changes:
            button.set_look(look)

    def _ask(self, index: QModelIndex) -> None:
        if index.isValid():
            signs = self.model.rows[index.row()]
            self.why.emit(named(signs), signs.figures)

    def _ask_change(self, number: int, _checked: bool = False) -> None:
        self.why.emit(tr(WHAT[number]), self._pairs[number])
