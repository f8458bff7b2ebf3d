"""After the session: effort and pain of everybody who was there, row after row by number keys."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.views.group.after_form import QUESTIONS, AfterForm, Answer, Question
from app.views.group.people_table import ROOM
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, say

UNKNOWN = "–"


@dataclass(frozen=True, slots=True)
class Rated:
    """One person's row: what they did in words, and what they said, None where they did not."""

    name: str
    did: str
    effort: int | None
    pain: int | None


class AfterGrid(QWidget):
    """Asks each in turn. `answer` is given every answer at once; what is passed over stays unknown."""

    def __init__(self, look: Look, answer: Callable[[Answer], object], now_ms: Callable[[], int]) -> None:
        super().__init__()
        self._look, self._answer, self._now_ms = look, answer, now_ms
        self._form = AfterForm(0)
        self._rows: tuple[Rated, ...] = ()
        self._table = QTableWidget(0, 4)
        self._table.setHorizontalHeaderLabels(
            [tr("Name"), tr("Reps done"), tr("Effort 0-10"), tr("Pain 0-10")]
        )
        self._table.setAccessibleName(tr("Effort and pain of everybody"))
        self._table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self._table.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self._table.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._table.verticalHeader().hide()
        self._table.verticalHeader().setDefaultSectionSize(round(look.sizes.heading * 1.9))
        self._table.setFont(look.font(look.sizes.heading))
        self._table.horizontalHeader().setFont(look.font(look.sizes.body))
        self._table.setShowGrid(False)
        header = self._table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        header.setDefaultSectionSize(round(look.sizes.heading * 8))
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeading | Qt.AlignmentFlag.AlignVCenter)
        self._asked = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        self._missing = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet, lines=2)
        self._table.cellClicked.connect(self._go_to)
        about = tr(
            "A number answers and goes on; 1 and 0 quickly for 10. Enter or ↓ passes over: it stays unknown. "
            "Backspace goes back."
        )
        layout = QVBoxLayout(self)
        layout.addWidget(self._asked)
        layout.addWidget(label(look, about, colour=look.scheme.quiet, wrap=True))
        layout.addWidget(self._table, 1)
        layout.addWidget(self._missing)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @property
    def form(self) -> AfterForm:
        """Where the next number goes."""
        return self._form

    def carry_on(self, form: AfterForm) -> None:
        """Ask on from there; the people are the same."""
        self._form = form
        self._paint()

    def show_rows(self, rows: Sequence[Rated], missing: Sequence[str] = ()) -> None:
        """Show these people and what they have said so far, and name those who never came."""
        say(self._missing, tr("Not here: {names}").format(names=", ".join(missing)) if missing else "")
        self._missing.setVisible(bool(missing))
        rows = tuple(rows)
        if rows == self._rows:
            return
        if len(rows) != self._form.rows:
            self._form = AfterForm(len(rows))
        self._rows = rows
        self._paint()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Follow a key."""
        key = Qt.Key(event.key())
        steps = {Qt.Key.Key_Return: 1, Qt.Key.Key_Enter: 1, Qt.Key.Key_Right: 1, Qt.Key.Key_Tab: 1}
        steps |= {Qt.Key.Key_Backspace: -1, Qt.Key.Key_Left: -1, Qt.Key.Key_Backtab: -1}
        steps |= {Qt.Key.Key_Down: len(QUESTIONS), Qt.Key.Key_Up: -len(QUESTIONS)}
        if event.text().isdigit() and not event.isAutoRepeat():
            self._form, answer = self._form.number(int(event.text()), self._now_ms())
            if answer is not None:
                self._answer(answer)
            self._paint()
        elif key in steps:
            self._form = self._form.moved(steps[key])
            self._paint()
        else:
            super().keyPressEvent(event)

    def _go_to(self, row: int, column: int) -> None:
        self._form = self._form.at(row, Question.PAIN if column == 3 else Question.EFFORT)
        self.setFocus()
        self._paint()

    def _paint(self) -> None:
        self._table.setRowCount(len(self._rows))
        asked = self._form.place
        say(self._asked, self._question(asked))
        for row, rated in enumerate(self._rows):
            self._put(row, 0, rated.name, asked=asked is not None and asked[0] == row)
            self._put(row, 1, f"{rated.did}{ROOM}", asked=False)
            for column, (question, value) in enumerate(
                zip(QUESTIONS, (rated.effort, rated.pain), strict=True), 2
            ):
                text = UNKNOWN if value is None else str(value)
                self._put(row, column, text, asked=asked == (row, question))
        if asked is not None and self._rows:
            self._table.scrollTo(self._table.model().index(asked[0], 0))
            words = tr("Effort") if asked[1] is Question.EFFORT else tr("Pain")
            self.setAccessibleName(f"{self._rows[asked[0]].name}: {words}")

    def _question(self, asked: tuple[int, Question] | None) -> str:
        """What is asked now, of whom; that all were asked once nothing is."""
        if asked is None or not self._rows:
            return tr("Everybody was asked.") if self._rows else tr("Nobody was there.")
        effort, name = asked[1] is Question.EFFORT, self._rows[asked[0]].name
        return (tr("{name}: how hard was it?") if effort else tr("{name}: how much did it hurt?")).format(
            name=name
        )

    def _put(self, row: int, column: int, text: str, *, asked: bool) -> None:
        item = self._table.item(row, column)
        if item is None:
            item = QTableWidgetItem()
            self._table.setItem(row, column, item)
        scheme = self._look.scheme
        item.setText(text)
        item.setBackground(QColor(scheme.accent if asked else scheme.panel))
        item.setForeground(QColor(scheme.on_accent if asked else scheme.ink))
        item.setFont(
            self._look.font(self._look.sizes.heading, Weight.SEMIBOLD if column != 1 else Weight.REGULAR)
        )
