"""The panel that answers "why": a figure with its formula, what went in, its source, what is unknown."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QGuiApplication, QKeyEvent, QKeySequence, QPalette
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from app.analysis.figure import Figure
from app.views.lettering import Weight
from app.views.review.figure_words import as_text, input_words, title_words, with_bounds
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.card import Card
from app.views.widgets.word_button import WordButton

TITLE = message("Why?")
LETTERS = 25
COPIED = message("Copied.")
UNKNOWN_HEADING = message("Unknown")


class WhyPanel(Card):
    """Stands beside what it explains. `closed` is emitted when the person is done with it (Esc)."""

    closed = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(tr(TITLE), "", parent)
        self.setPalette(parent.palette() if parent is not None else self.palette())
        self._look = look
        self._figures: tuple[Figure, ...] = ()
        self.copy_all, self.leave = WordButton(tr("Copy")), WordButton(tr("Close"))
        self.copy_all.clicked.connect(self.copy)
        self.leave.clicked.connect(self.closed)
        for button in (self.copy_all, self.leave):
            self.header.addWidget(button)
        self.area = QScrollArea()
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QScrollArea.Shape.NoFrame)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setAccessibleName(tr("Why the figure is what it is"))
        self.body.addWidget(self.area, 1)
        action = QAction(self)
        action.setShortcut(QKeySequence(QKeySequence.StandardKey.Copy))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(self.copy)
        self.addAction(action)
        self.setFocusProxy(self.area)
        self.set_look(look)

    def explain(self, heading: str, figures: Sequence[Figure]) -> None:
        """Explain these figures, below each other."""
        self._figures = tuple(figures)
        self.heading.say(heading or tr(TITLE))
        self.set_aside("")
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, self._look.sizes.body // 2, 0)
        column.setSpacing(self._look.sizes.body // 2)
        for figure in self._figures:
            self._add(column, figure)
        column.addStretch(1)
        old = self.area.takeWidget()
        if old is not None:
            old.deleteLater()
        self.area.setWidget(inside)
        inside.setAutoFillBackground(False)
        self.area.viewport().setAutoFillBackground(False)

    def text(self) -> str:
        """All figures as text, an empty line between them."""
        return "\n\n".join(map(as_text, self._figures))

    def copy(self) -> None:
        """Put the text on the clipboard."""
        QGuiApplication.clipboard().setText(self.text())
        self.set_aside(tr(COPIED))

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self._look = look
        self.setFixedWidth(look.sizes.body * LETTERS)
        quieten_bars(self.area, look)
        for button in (self.copy_all, self.leave):
            button.set_look(look)
        if self._figures:
            self.explain(self.heading.text(), self._figures)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc closes it."""
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        else:
            super().keyPressEvent(event)

    def _add(self, column: QVBoxLayout, figure: Figure) -> None:
        sizes = self._look.sizes
        column.addWidget(self._words(title_words(figure), sizes.body, Weight.SEMIBOLD))
        column.addWidget(self._words(with_bounds(figure), sizes.heading, Weight.SEMIBOLD))
        if figure.reason:
            column.addWidget(self._words(tr(figure.reason), sizes.body))
        column.addWidget(self._words(tr(figure.formula), sizes.small))
        if figure.inputs:
            column.addLayout(self._inputs(figure))
        if figure.unknown:
            missing = ", ".join(tr(each) for each in figure.unknown)
            row = QHBoxLayout()
            row.addWidget(self._words(f"{tr(UNKNOWN_HEADING)}: {missing}", sizes.small))
            column.addLayout(row)
        for quiet in filter(None, (figure.caution, figure.source)):
            column.addWidget(self._words(tr(quiet), sizes.small, quiet=True))
        column.addSpacing(sizes.body)

    def _inputs(self, figure: Figure) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(self._look.sizes.body)
        grid.setVerticalSpacing(2)
        for row, (name, value) in enumerate(map(input_words, figure.inputs)):
            grid.addWidget(self._words(name, self._look.sizes.small, quiet=True), row, 0)
            told = self._words(value, self._look.sizes.small)
            told.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
            grid.addWidget(told, row, 1)
        grid.setColumnStretch(0, 1)
        return grid

    def _words(
        self, text: str, pixels: int, weight: Weight = Weight.REGULAR, *, quiet: bool = False
    ) -> QLabel:
        made = QLabel(text)
        made.setTextFormat(Qt.TextFormat.PlainText)
        made.setWordWrap(True)
        made.setFont(self._look.font(pixels, weight))
        role = QPalette.ColorRole.PlaceholderText if quiet else QPalette.ColorRole.WindowText
        made.setForegroundRole(role)
        made.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        return made
