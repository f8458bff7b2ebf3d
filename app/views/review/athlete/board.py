"""The board of an athlete's page: charts, calendar, notes and runs, two beside each other, rolling down."""

from functools import partial

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QGridLayout, QScrollArea, QWidget

from app.domain.plan import Side
from app.views.charts.data_card import DataCard
from app.views.review.athlete.calendar_card import CalendarCard
from app.views.review.athlete.charted import Charted
from app.views.review.athlete.in_sight import Fill, InSight
from app.views.review.athlete.notes_card import NotesCard
from app.views.review.athlete.pain_chart import HEADING as PAIN_HEADING
from app.views.review.athlete.part_chart import HEADING as PART_HEADING
from app.views.review.athlete.part_chart import Part
from app.views.review.athlete.progression_card import ProgressionCard
from app.views.review.athlete.runs_card import RunsCard
from app.views.review.athlete.view import AthleteView
from app.views.review.figure_names import called_words
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
REFERENCE = {
    None: message("Reference side: none"),
    Side.LEFT: message("Reference side: left"),
    Side.RIGHT: message("Reference side: right"),
}
ROWS_IN_SIGHT = 2
WIDE = 2
"""The rows of cards that are as wide as the page."""
LETTERS_FOR_TWO = 56
"""Two cards stand beside each other where there is room for so many letters."""
BESIDE_LETTERS = 33
"""Heading and words of a card take so many letters beside its choice."""
LEAST_ROW = 15
"""A row of cards is at least so many letters high."""


class Board(QScrollArea):
    """Shows a view; a chart is worked out when it comes into sight.

    `why` carries a heading and figures, `opened` a run, `correct` a run to be corrected; `reference` asks for
    the reference side to be chosen, where `offer_reference` offers it.
    """

    why = Signal(str, object)
    opened = Signal(str)
    correct = Signal(str)
    reference = Signal()

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
        self.part_card, self.pain_card = DataCard(tr(PART_HEADING)), DataCard(tr(PAIN_HEADING))
        self.side_card, self.result_card = DataCard(tr("Left against right")), DataCard(tr("Test results"))
        self.course = WordButton(tr("Lately and usually"))
        self.course.setCheckable(True)
        self.exercise = ChoiceBox(tr("Exercise or test compared"), 11, Look(LIGHT, look.family, look.sizes))
        self.by = ChoiceBox(tr("Told apart"), 11, Look(LIGHT, look.family, look.sizes))
        self.reference_side = WordButton(tr(REFERENCE[None]))
        self.reference_side.setEnabled(False)
        self.test = ChoiceBox(tr("Test shown"), 11, Look(LIGHT, look.family, look.sizes))
        self.calendar, self.notes, self.runs = CalendarCard(), NotesCard(), RunsCard()
        self.signs = ProgressionCard()
        self._whys: dict[int, Charted] = {}
        self._asked: QWidget | None = None
        self._inside = QWidget()
        self._grid = QGridLayout(self._inside)
        self._across, self._pain = 0, True
        self._placed: tuple[QWidget, ...] = ()
        self._sight = InSight(self)
        self._lay_out()
        self._connect()
        self.set_look(look)

    @property
    def data_cards(self) -> tuple[DataCard, ...]:
        """Every card with a chart."""
        beside = self.side_card, self.result_card, self.part_card, self.pain_card
        return (*self.cards, self.effort_alone, *beside)

    def show_view(self, view: AthleteView, *, correcting: bool) -> None:
        """Show an athlete; the exercise and the test chosen stay chosen where they have any."""
        self.view, self._asked = view, None
        self._offer(
            self.exercise,
            [(name if isinstance(name, str) else called_words(name), name) for name in view.sided],
        )
        self._offer(self.test, [(called_words(test), test) for test in view.tests])
        self.reference_side.setText(tr(REFERENCE.get(view.record.reference, REFERENCE[None])))
        for card, shown in ((self.cards[EFFORT_PLACE], view.pain), (self.effort_alone, not view.pain)):
            card.setVisible(shown)
        self.pain_card.setVisible(view.pain)
        self.notes.setVisible(view.pain)
        self._pain = view.pain
        self._arrange()
        self._sight.begin(self._fills(view))
        self.signs.show_signs(view.signs, view.changes, pain=view.pain)
        self.calendar.show_weeks(view.weeks)
        self.notes.show_notes(view.notes)
        self.runs.show_runs(view.runs, pain=view.pain, correcting=correcting)

    def show_all(self) -> None:
        """Work out every chart now, in sight or not."""
        self._sight.fill_all()

    def offer_reference(self, *, on: bool) -> None:
        """Let the reference side be chosen, or only be read."""
        self.reference_side.setEnabled(on)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        for card in (*self.data_cards, self.signs, self.calendar, self.notes, self.runs):
            card.set_look(look)
        for choice in (self.exercise, self.test, self.by, self.course, self.reference_side):
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
        self._sight.fill()

    def showEvent(self, event: QShowEvent) -> None:
        """Work out what is in sight."""
        super().showEvent(event)
        self._sight.fill()

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
        order = self._order()
        if (across, order) == (self._across, self._placed):
            return
        self._across, self._placed = across, order
        for left_out in {self.effort_alone, self.cards[EFFORT_PLACE], self.pain_card, self.notes} - {*order}:
            self._grid.removeWidget(left_out)
        for number, card in enumerate(order):
            self._grid.addWidget(card, number // across, number % across)
        rows = -(-len(order) // across)
        for beneath, wide in enumerate((self.signs, self.runs)):
            self._grid.addWidget(wide, rows + beneath, 0, 1, across)
        for column in (0, 1):
            self._grid.setColumnStretch(column, int(column < across))
        for row in range(self._grid.rowCount()):
            self._grid.setRowMinimumHeight(row, 0)
        self._heighten()

    def _order(self) -> tuple[QWidget, ...]:
        """What is looked at first stands first; while somebody else looks on, without pain and notes."""
        reps, load, tempo, effort, sessions, monotony, work, day = self.cards
        if not self._pain:
            first = reps, self.side_card, load, self.effort_alone, self.result_card
            return (*first, self.part_card, tempo, sessions, monotony, work, day, self.calendar)
        first = reps, self.side_card, load, effort, self.result_card
        then = self.pain_card, self.part_card, tempo, sessions, monotony, work, day
        return (*first, *then, self.calendar, self.notes)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the card that was asked where the cards above it take another room."""
        if watched is self._asked and event.type() is QEvent.Type.Move:
            self._keep_in_sight()
        return super().eventFilter(watched, event)

    def _keep_in_sight(self) -> None:
        """Roll to the card that was asked, which stands elsewhere since the answer took its room."""
        if self._asked is not None:
            self.verticalScrollBar().setValue(self._asked.y())

    def _heighten(self) -> None:
        gap = self._grid.spacing()
        room = (self.viewport().height() - gap * (ROWS_IN_SIGHT - 1)) // ROWS_IN_SIGHT
        for row in range(-(-len(self._placed) // max(self._across, 1)) + WIDE):
            self._grid.setRowMinimumHeight(row, max(room, self._look.sizes.body * LEAST_ROW))

    def _lay_out(self) -> None:
        self._grid.setContentsMargins(0, 0, 0, 0)
        for card in (*self.data_cards, self.calendar, self.notes, self.signs, self.runs):
            card.setParent(self._inside)
        self.side_card.header.insertWidget(1, self.exercise)
        self.side_card.foot.addWidget(self.reference_side, 0, Qt.AlignmentFlag.AlignRight)
        self.part_card.header.insertWidget(1, self.by)
        for part in Part:
            self.by.addItem(tr(part.value), part)
        self.result_card.header.insertWidget(1, self.test)
        self.cards[DAY_PLACE].header.insertWidget(1, self.course)
        self.setWidget(self._inside)
        self._inside.setAutoFillBackground(False)
        self.viewport().setAutoFillBackground(False)

    def _connect(self) -> None:
        for card in self.data_cards:
            card.why.connect(partial(self._ask, card))
            self._sight.watch(card)
        for choice, card, show in (
            (self.course.toggled, self.cards[DAY_PLACE], self._show_course),
            (self.exercise.activated, self.side_card, self._show_side),
            (self.test.activated, self.result_card, self._show_result),
            (self.by.activated, self.part_card, self._show_parts),
        ):
            choice.connect(partial(self._show_now, card, show))
        self.reference_side.clicked.connect(self.reference)
        self.signs.why.connect(self._ask_of_signs)
        self.verticalScrollBar().rangeChanged.connect(self._keep_in_sight)
        self.verticalScrollBar().actionTriggered.connect(self._forget_asked)
        self.calendar.opened.connect(self.opened)
        self.runs.opened.connect(self.opened)
        self.runs.correct_wanted.connect(self.correct)

    def _fills(self, view: AthleteView) -> dict[DataCard, Fill]:
        """What fills each card of a view."""
        effort = self.cards[EFFORT_PLACE] if view.pain else self.effort_alone
        cards = {number: card for number, card in enumerate(self.cards) if number != DAY_PLACE}
        cards[EFFORT_PLACE] = effort
        fills: dict[DataCard, Fill] = {
            card: partial(self._show_chart, card, number) for number, card in cards.items()
        }
        fills |= {
            self.cards[DAY_PLACE]: self._show_course,
            self.side_card: self._show_side,
            self.result_card: self._show_result,
            self.part_card: self._show_parts,
        }
        return fills | {self.pain_card: self._show_pain} if view.pain else fills

    def _show(self, card: DataCard, charted: Charted) -> None:
        self._whys[id(card)] = charted
        card.show_data(charted.data)

    def _show_now(self, card: DataCard, show: Fill, _chosen: object = None) -> None:
        self._sight.now(card, show)

    def _show_chart(self, card: DataCard, number: int) -> None:
        if self.view is not None:
            self._show(card, self.view.charts[number])

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

    def _show_parts(self) -> None:
        if self.view is not None:
            self._show(self.part_card, self.view.parts(self.by.currentData()))

    def _show_pain(self) -> None:
        charted = None if self.view is None else self.view.pain_by_day()
        if charted is not None:
            self._show(self.pain_card, charted)

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
            self._follow(card)
            self.why.emit(charted.heading, charted.whys[place])

    def _follow(self, card: QWidget) -> None:
        card.removeEventFilter(self)
        card.installEventFilter(self)
        self._asked = card

    def _forget_asked(self) -> None:
        """Whoever rolls on is no longer at the card that was asked."""
        self._asked = None

    def _ask_of_signs(self, heading: str, figures: object) -> None:
        self._follow(self.signs)
        self.why.emit(heading, figures)
