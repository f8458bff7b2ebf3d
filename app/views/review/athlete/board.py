"""The board of an athlete's page: charts, calendar, notes and runs, two beside each other, rolling down."""

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QScrollArea, QWidget

from app.views.charts.data_card import DataCard
from app.views.review.athlete.calendar_card import CalendarCard
from app.views.review.athlete.charted import Charted
from app.views.review.athlete.notes_card import NotesCard
from app.views.review.athlete.progression_card import ProgressionCard
from app.views.review.athlete.runs_card import RunsCard
from app.views.review.athlete.view import AthleteView
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.word_button import WordButton

HEADINGS = (
    (message("Reps done of prescribed"), 1),
    (message("Session load"), 1),
    (message("Tempo kept"), 1),
    (message("Effort and pain by session"), 2),
    (message("Sessions done of due"), 1),
    (message("Monotony and strain, by week"), 2),
    (message("Contacts and time under tension"), 2),
    (message("Session load by day"), 1),
)
"""The charts of a view in their order, each with its number of panels."""
EFFORT_PLACE, DAY_PLACE = 3, 7
ROWS_IN_SIGHT = 2
LETTERS_FOR_TWO = 56
"""Two cards stand beside each other where there is room for so many letters."""
BESIDE_LETTERS = 33
"""Heading and words of a card take so many letters beside its choice."""
LEAST_ROW = 15
"""A row of cards is at least so many letters high."""


class Board(QScrollArea):
    """Shows a view. `why` carries a heading and figures, `opened` a run, `correct` a run to be corrected."""

    why = Signal(str, object)
    opened = Signal(str)
    correct = Signal(str)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.view: AthleteView | None = None
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(tr("Charts, calendar, notes and runs"))
        self.cards = [DataCard(tr(heading), panels) for heading, panels in HEADINGS]
        self.effort_alone = DataCard(tr("Effort by session"))
        self.side_card, self.result_card = DataCard(tr("Left against right")), DataCard(tr("Test results"))
        self.course = WordButton(tr("Lately and usually"))
        self.course.setCheckable(True)
        self.exercise = ChoiceBox(tr("Exercise compared"), 11, Look(LIGHT, look.family, look.sizes))
        self.test = ChoiceBox(tr("Test shown"), 11, Look(LIGHT, look.family, look.sizes))
        self.calendar, self.notes, self.runs = CalendarCard(), NotesCard(), RunsCard()
        self.signs = ProgressionCard()
        self._whys: dict[int, Charted] = {}
        self._inside = QWidget()
        self._grid = QGridLayout(self._inside)
        self._across = 0
        self._lay_out()
        self._connect()
        self.set_look(look)

    @property
    def data_cards(self) -> tuple[DataCard, ...]:
        """Every card with a chart."""
        return (*self.cards, self.effort_alone, self.side_card, self.result_card)

    def show_view(self, view: AthleteView, *, correcting: bool) -> None:
        """Show an athlete; the exercise and the test chosen stay chosen where they have any."""
        self.view = view
        for number, charted in enumerate(view.charts):
            alone = number == EFFORT_PLACE and not view.pain
            self._show(self.effort_alone if alone else self.cards[number], charted)
        self._show_course()
        self.cards[EFFORT_PLACE].setVisible(view.pain)
        self.effort_alone.setVisible(not view.pain)
        self._offer(self.exercise, [(name, name) for name in view.exercises])
        self._offer(self.test, [(tr(test.name), test) for test in view.tests])
        self._show_side()
        self._show_result()
        self.signs.show_signs(view.signs, view.changes, pain=view.pain)
        self.calendar.show_weeks(view.weeks)
        self.notes.show_notes(view.notes)
        self.notes.setVisible(view.pain)
        self.runs.show_runs(view.runs, pain=view.pain, correcting=correcting)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        for card in (*self.data_cards, self.signs, self.calendar, self.notes, self.runs):
            card.set_look(look)
        for choice in (self.exercise, self.test, self.course):
            choice.set_look(look)
        self._grid.setSpacing(look.sizes.body)
        self._arrange()
        quieten_bars(self, look)
        self._heighten()

    def close_plots(self) -> None:
        """Let go of the drawings before the program ends."""
        for card in self.data_cards:
            card.close_plots()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let two rows of cards fill what is in sight."""
        super().resizeEvent(event)
        self._arrange()
        self._heighten()
        self._widen_choices()

    def _widen_choices(self) -> None:
        """Show names whole where the cards have room beside their headings and words."""
        card = self.viewport().width() // self._across
        for choice in (self.exercise, self.test):
            least = choice.sizeHint().width()
            choice.setFixedWidth(max(least, min(2 * least, card - self._look.sizes.body * BESIDE_LETTERS)))

    def _arrange(self) -> None:
        """Two cards beside each other, or one where letters are too large for two."""
        cards = (*self.data_cards, self.calendar, self.notes)
        two = 2 * max(card.minimumSizeHint().width() for card in cards) + self._grid.spacing()
        across = 2 if self.viewport().width() >= max(two, self._look.sizes.body * LETTERS_FOR_TWO) else 1
        if across == self._across:
            return
        self._across = across
        effort = EFFORT_PLACE
        reps, load, tempo, _, sessions, monotony, work, day = self.cards
        shown: list[QWidget] = [reps, self.side_card, load, self.cards[effort], self.result_card, tempo]
        shown += [sessions, monotony, work, day, self.calendar, self.notes]
        for number, card in enumerate(shown):
            self._grid.addWidget(card, number // across, number % across)
        place = shown.index(self.cards[effort])
        self._grid.addWidget(self.effort_alone, place // across, place % across)
        self._grid.addWidget(self.signs, len(shown) // across, 0, 1, across)
        self._grid.addWidget(self.runs, len(shown) // across + 1, 0, 1, across)
        for column in (0, 1):
            self._grid.setColumnStretch(column, int(column < across))
        for row in range(self._grid.rowCount()):
            self._grid.setRowMinimumHeight(row, 0)

    def _heighten(self) -> None:
        gap = self._grid.spacing()
        room = (self.viewport().height() - gap * (ROWS_IN_SIGHT - 1)) // ROWS_IN_SIGHT
        rows = 14 if self._across == 1 else 8
        for row in range(rows):
            self._grid.setRowMinimumHeight(row, max(room, self._look.sizes.body * LEAST_ROW))

    def _lay_out(self) -> None:
        self._grid.setContentsMargins(0, 0, 0, 0)
        self.side_card.header.insertWidget(1, self.exercise)
        self.result_card.header.insertWidget(1, self.test)
        self.cards[DAY_PLACE].header.insertWidget(1, self.course)
        self.setWidget(self._inside)
        self._inside.setAutoFillBackground(False)
        self.viewport().setAutoFillBackground(False)

    def _connect(self) -> None:
        for card in self.data_cards:
            card.why.connect(partial(self._ask, card))
        self.course.toggled.connect(self._show_course)
        self.exercise.activated.connect(self._show_side)
        self.test.activated.connect(self._show_result)
        self.signs.why.connect(self.why)
        self.calendar.opened.connect(self.opened)
        self.runs.opened.connect(self.opened)
        self.runs.correct_wanted.connect(self.correct)

    def _show(self, card: DataCard, charted: Charted) -> None:
        self._whys[id(card)] = charted
        card.show_data(charted.data)

    def _show_course(self) -> None:
        """Show the load of each day, or its two courses where they are asked for."""
        if self.view is not None:
            wanted = self.course.isChecked()
            charted = self.view.course() if wanted else self.view.charts[DAY_PLACE]
            self.course.setText(tr("By day") if wanted else tr("Lately and usually"))
            self.cards[DAY_PLACE].heading.setText(charted.heading)
            self._show(self.cards[DAY_PLACE], charted)

    def _show_side(self) -> None:
        if self.view is not None:
            self._show(self.side_card, self.view.side(self.exercise.currentData()))

    def _show_result(self) -> None:
        if self.view is not None:
            self._show(self.result_card, self.view.result(self.test.currentData()))

    def _offer(self, choice: ChoiceBox, offered: list[tuple[str, object]]) -> None:
        chosen = choice.currentData()
        choice.clear()
        for words, data in offered:
            choice.addItem(words, data)
        found = [number for number, (_, data) in enumerate(offered) if data == chosen]
        if offered:
            choice.setCurrentIndex(found[0] if found else 0)
        choice.setVisible(len(offered) > 1)

    def _ask(self, card: DataCard, place: int) -> None:
        charted = self._whys.get(id(card))
        if charted is not None and place < len(charted.whys):
            self.why.emit(charted.heading, charted.whys[place])
