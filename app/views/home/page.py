"""The first page: who trains and which plan, what was cut short, what is owed, and one key to begin."""

from collections.abc import Callable, Sequence
from pathlib import Path
from time import monotonic

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractButton, QFileDialog, QHBoxLayout, QVBoxLayout, QWidget

from app.views.home.dropping import dropped_plan
from app.views.home.keys import HOME_KEYS
from app.views.home.offer_card import OfferCard
from app.views.home.owed_list import OwedList
from app.views.home.people import GUEST
from app.views.home.people_list import PeopleList
from app.views.home.plan_card import PlanList
from app.views.home.state import Door, HomeState, Offer
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.columns import Columns
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.flow import FlowLayout
from app.views.widgets.key_table import KeyTable
from app.views.widgets.plain import label, quiet_button, say, scrolling, strong_button

DEAF_S = 0.7
"""So long after a session was left, no key begins another: it was meant for the page before."""


class HomePage(QWidget):
    """Shows a HomeState and tells what is asked for.

    `begun` carries a plan's path and a name, `athlete_chosen` a name, `plan_chosen` and `plan_brought` a
    path, `answered` a LateAnswer, `unasked` an OwedRating.
    """

    begun = Signal(object, str)
    athlete_chosen = Signal(str)
    plan_chosen = Signal(object)
    plan_brought = Signal(object)
    answered = Signal(object)
    unasked = Signal(object)

    def __init__(self, look: Look, doors: Sequence[Door], now_s: Callable[[], float] = monotonic) -> None:
        super().__init__()
        self._look, self._now_s = look, now_s
        self._deaf_until_s = 0.0
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self._notice.hide()
        self.resume = OfferCard(look)
        self.people = PeopleList(look)
        self.plans = PlanList(look)
        self.owed = OwedList(look, now_s)
        self._who = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD, lines=2)
        self._what = FittedLabel(look, pixels=look.sizes.heading, lines=2)
        self._start = strong_button(look, "", self.begin)
        self._open = quiet_button(look, tr("Open a plan…  (Ctrl+O)"), self.pick)
        self._owed_heading = label(look, tr("Still owed"), pixels=look.sizes.heading)
        self._owed_scroll = scrolling(self.owed, tr("Answers that are owed"))
        self._plans_scroll = scrolling(self.plans, tr("Plans"))
        self._plans_scroll.setMinimumHeight(look.sizes.body * 8)
        self._owed_scroll.setMinimumHeight(look.sizes.body * 6)
        self._lay_out(doors)
        self._connect()
        self.setAcceptDrops(True)
        self._show_owed(shown=False)

    @property
    def athlete(self) -> str:
        """Who is chosen."""
        return self.people.name

    @property
    def notice(self) -> str:
        """What went wrong, in a sentence, or nothing."""
        return self._notice.text()

    def show_state(self, state: HomeState) -> None:
        """Show what there is; what is being typed or answered stays."""
        self.people.show_people(state.people, state.today, state.athlete)
        self._who.setText(tr("Guest") if state.athlete == GUEST else state.athlete)
        self.plans.show_plans(state.plans, state.plan)
        self.owed.show_owed(state.owed, state.today)
        self._show_owed(shown=bool(state.owed))
        plan = self.plans.plan
        self._start.setEnabled(plan is not None)
        words = tr("{plan}, {athlete}")
        said = words.format(plan="" if plan is None else plan.title, athlete=self._who.text())
        self._what.setText(tr("Choose a plan first.") if plan is None else said)
        self._start.setAccessibleDescription(self._what.text())
        self._name_start()

    def offer(self, offer: Offer | None) -> None:
        """Offer a run that was cut short, or nothing."""
        waiting = self._start.hasFocus() or self.focusWidget() is None
        self.resume.offer(offer)
        self._name_start()
        if waiting or (offer is None and not self.resume.isVisible()):
            self.take_focus()

    def show_notice(self, text: str) -> None:
        """Say what went wrong, in a sentence."""
        say(self._notice, text)
        self._notice.setVisible(bool(text))

    def take_focus(self) -> None:
        """Let one key do what is most likely."""
        if self.resume.offered is not None:
            self.resume.take_up.setFocus()
        else:
            self._start.setFocus()

    def be_deaf(self) -> None:
        """Let no key begin anything for a moment."""
        self._deaf_until_s = self._now_s() + DEAF_S

    def begin(self) -> None:
        """Begin the plan chosen with the athlete chosen."""
        plan = self.plans.plan
        if plan is not None and plan.path is not None and self._now_s() >= self._deaf_until_s:
            self.begun.emit(plan.path, self.athlete)

    def begin_likely(self) -> None:
        """Go on with what was cut short, else begin the plan chosen."""
        if self.resume.offered is not None:
            self.resume.take_up.click()
        else:
            self.begin()

    def pick(self) -> None:
        """Let a plan be chosen among the files."""
        name, _ = QFileDialog.getOpenFileName(self.window(), tr("Open a plan"), "", tr("Plans (*.toml)"))
        if name:
            self.plan_brought.emit(Path(name))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter and Space begin, or press the button reached; arrows choose who trains, letters look."""
        key = Qt.Key(event.key())
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._press(event)
        elif key == Qt.Key.Key_F1:
            KeyTable(self._look, self, HOME_KEYS).show()
        elif key == Qt.Key.Key_F2:
            self.owed.open_first()
        elif event.matches(QKeySequence.StandardKey.Open):
            self.pick()
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.people.step(1 if key == Qt.Key.Key_Down else -1)
        elif _types(event):
            self.people.type(event.text())
        else:
            super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Let files be dropped; what can't be taken is said then."""
        if event.mimeData().hasUrls() or event.mimeData().hasText():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Take a plan, or say what can be dropped."""
        event.acceptProposedAction()
        found = dropped_plan([url.toLocalFile() for url in event.mimeData().urls()])
        if isinstance(found, Path):
            self.show_notice("")
            self.plan_brought.emit(found)
        else:
            self.show_notice(found)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let arrows choose who trains on the buttons that begin, where they would go to the next button."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
            step = steps.get(Qt.Key(event.key()))
            if step is not None:
                self.people.step(step)
                return True
        return super().eventFilter(watched, event)

    def _press(self, event: QKeyEvent) -> None:
        if event.isAutoRepeat() or self._now_s() < self._deaf_until_s:
            return
        reached = self.focusWidget()
        space = event.key() == Qt.Key.Key_Space
        if isinstance(reached, QAbstractButton) and reached is not self._start and not space:
            reached.click()
            if reached in self.plans.cards:
                self.take_focus()
        else:
            self.begin_likely()

    def _name_start(self) -> None:
        """Say on the button which keys begin; a run that was cut short comes first."""
        words = tr("Begin  (Enter or Space)") if self.resume.offered is None else tr("Begin")
        self._start.setText(words)
        self._start.setAccessibleName(words)

    def _show_owed(self, *, shown: bool) -> None:
        self._owed_heading.setVisible(shown)
        self._owed_scroll.setVisible(shown)

    def _make_room(self) -> None:
        """Give the card that is open the room it needs."""
        card = self.owed.open_card
        usual = self._look.sizes.body * 6
        self._owed_scroll.setMinimumHeight(usual if card is None else max(card.sizeHint().height(), usual))
        if card is not None:
            QTimer.singleShot(0, card, lambda: self._owed_scroll.ensureWidgetVisible(card))

    def _connect(self) -> None:
        self._start.installEventFilter(self)
        self.resume.take_up.installEventFilter(self)
        self.people.chosen.connect(self.athlete_chosen)
        self.people.done.connect(self.take_focus)
        self.plans.chosen.connect(self.plan_chosen)
        self.owed.answered.connect(self.answered)
        self.owed.unasked.connect(self.unasked)
        self.owed.turned.connect(self._make_room)

    def _lay_out(self, doors: Sequence[Door]) -> None:
        look = self._look
        side = round(look.margin * 0.75)
        column = QVBoxLayout(self)
        column.setContentsMargins(side, side, side, round(side * 0.5))
        column.setSpacing(round(look.sizes.body * 0.7))
        column.addWidget(label(look, tr("Pacewright"), colour=look.scheme.quiet, weight=Weight.SEMIBOLD))
        column.addWidget(self.resume)
        halves = Columns(((self._who_part(), 5), (self._what_part(), 7)), side)
        column.addWidget(scrolling(halves, tr("Who trains, and which session")), 1)
        column.addWidget(self._notice)
        column.addLayout(self._foot(doors))

    def _who_part(self) -> QWidget:
        part, column = self._part()
        heading = label(self._look, tr("Who is training?"), pixels=self._look.sizes.heading)
        heading.setMinimumHeight(self._open.sizeHint().height())
        column.addWidget(heading)
        column.addWidget(self._who)
        column.addWidget(self.people, 1)
        return part

    def _what_part(self) -> QWidget:
        look = self._look
        part, column = self._part()
        head = QHBoxLayout()
        head.addWidget(label(look, tr("Which session?"), pixels=look.sizes.heading))
        head.addStretch(1)
        head.addWidget(self._open)
        column.addLayout(head)
        column.addWidget(self._plans_scroll, 3)
        column.addWidget(self._owed_heading)
        column.addWidget(self._owed_scroll, 2)
        return part

    def _part(self) -> tuple[QWidget, QVBoxLayout]:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(self._look.sizes.body * 0.5))
        return part, column

    def _foot(self, doors: Sequence[Door]) -> QHBoxLayout:
        look = self._look
        row = QHBoxLayout()
        row.setSpacing(look.sizes.body)
        ways = QWidget()
        flow = FlowLayout(ways, round(look.sizes.body * 0.5))
        for words, act in doors:
            flow.addWidget(quiet_button(look, words, act))
        flow.addWidget(quiet_button(look, tr("Keys  (F1)"), lambda: KeyTable(look, self, HOME_KEYS).show()))
        row.addWidget(ways, 5, Qt.AlignmentFlag.AlignVCenter)
        self._what.setAlignment(Qt.AlignmentFlag.AlignTrailing | Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(self._what, 4)
        row.addWidget(self._start)
        return row


def _types(event: QKeyEvent) -> bool:
    """Whether a key is one that writes something."""
    plain = Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.KeypadModifier
    text = event.text()
    return bool(text) and text.isprintable() and not text.isspace() and not event.modifiers() & ~plain
