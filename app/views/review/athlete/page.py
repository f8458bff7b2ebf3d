"""The page of one athlete: the time looked at, the figures, the charts, the calendar, notes and runs."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from app.analysis.figure import Figure
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.athlete.board import Board
from app.views.review.athlete.range_bar import RangeBar
from app.views.review.athlete.tiles import Tiles
from app.views.review.athlete.view import AthleteView
from app.views.review.consent import consent_line
from app.views.review.presentation import NOTICE
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.word_button import WordButton

READING = message("Reading the sessions …")
Door = tuple[str, Callable[[str], object]]
"""The words of an action, and what it does with the athlete's name."""


class AthletePage(QWidget):
    """Shows an `AthleteView`. `doors` are the actions beside the range, each given the athlete's name.

    `why` carries a heading and figures, `opened` and `correct` a run, `stretched` another stretch of time,
    `reference` the athlete whose reference side is to be chosen.
    """

    why = Signal(str, object)
    opened = Signal(str)
    correct = Signal(str)
    stretched = Signal(object)
    reference = Signal(str)

    def __init__(self, look: Look, doors: Sequence[Door] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.athlete = ""
        self.title, self.subtitle = ElidedLabel(), ElidedLabel(least=8)
        self.consent = ElidedLabel(least=12)
        for quiet in (self.subtitle, self.consent):
            quiet.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.doors = [self._door(*door) for door in doors]
        self.range = RangeBar(look)
        self.tiles = Tiles(look)
        self.board = Board(look)
        self.message = QLabel(tr(READING))
        self.message.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._faces = QStackedWidget()
        self._lay_out()
        self.tiles.why.connect(self._ask)
        self.range.changed.connect(self.stretched)
        self.board.why.connect(self.why)
        self.board.opened.connect(self.opened)
        self.board.correct.connect(self.correct)
        self.board.reference.connect(self._want_reference)
        self.set_look(look)

    def begin(self, athlete: str) -> None:
        """Say who is being read about."""
        self.athlete = athlete
        self.title.say(athlete)
        self.subtitle.say("")
        self.consent.say("")
        self.setAccessibleName(athlete)
        self._faces.setCurrentWidget(self.message)

    def show_view(self, view: AthleteView, *, correcting: bool) -> None:
        """Show what was worked out; what belongs to somebody else by now is left alone."""
        if view.record.athlete != self.athlete:
            return
        self.range.show_days(view.record.first, view.record.last)
        self.subtitle.say(_subtitle(view))
        told = consent_line(view.people, self.athlete) if view.people and view.pain else ""
        self.consent.say(told)
        self.tiles.show_figures(view.head)
        self.board.show_view(view, correcting=correcting)
        self._faces.setCurrentWidget(self._whole)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.subtitle.setFont(look.font(sizes.body))
        self.consent.setFont(look.font(sizes.small))
        drop = self.title.fontMetrics().descent() - self.subtitle.fontMetrics().descent()
        self.subtitle.setContentsMargins(0, 0, 0, drop)
        self.message.setFont(look.font(sizes.heading))
        for door in self.doors:
            door.set_look(look)
        for part in (self.range, self.tiles, self.board):
            part.set_look(look)
        self._header.setSpacing(sizes.body)
        self._column.setSpacing(sizes.body // 2)
        self._frame.setContentsMargins(sizes.body * 2, 0, sizes.body * 2, sizes.body)
        self._frame.setSpacing(sizes.body // 2)

    def close_plots(self) -> None:
        """Let go of the drawings before the program ends."""
        self.board.close_plots()

    def _lay_out(self) -> None:
        self._header = QHBoxLayout()
        self._header.addWidget(self.title)
        self._header.addWidget(self.subtitle, 1, Qt.AlignmentFlag.AlignBottom)
        self._header.addWidget(self.range)
        self._below = QHBoxLayout()
        self._below.addWidget(self.consent, 1)
        for door in self.doors:
            self._below.addWidget(door)
        self._whole = QWidget()
        self._column = QVBoxLayout(self._whole)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addWidget(self.tiles)
        self._column.addWidget(self.board, 1)
        for face in (self.message, self._whole):
            self._faces.addWidget(face)
        self._frame = QVBoxLayout(self)
        self._frame.addLayout(self._header)
        self._frame.addLayout(self._below)
        self._frame.addWidget(self._faces, 1)
        self.setFocusProxy(self.board.cards[0].chart)

    def _door(self, told: str, act: Callable[[str], object]) -> WordButton:
        button = WordButton(told)
        button.clicked.connect(partial(self._pass, act))
        return button

    def _pass(self, act: Callable[[str], object], _checked: bool = False) -> None:
        act(self.athlete)

    def _want_reference(self) -> None:
        self.reference.emit(self.athlete)

    def _ask(self, figure: Figure) -> None:
        self.why.emit(tr(figure.name), (figure,))


def _subtitle(view: AthleteView) -> str:
    sessions = sorted(view.record.sessions, key=lambda each: (each.day, each.started or 0))
    parts = [sessions[-1].plan_title] if sessions else []
    parts.append(tr("%n session(s)", "", len(sessions)))
    parts.append(words.span(view.record.first, view.record.last))
    if any(run.invented for run in view.runs):
        parts.append(tr("invented data"))
    if not view.pain:
        parts.append(tr(NOTICE))
    return words.DOT.join(parts)
