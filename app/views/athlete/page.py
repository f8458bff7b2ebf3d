"""The athlete's screen as a whole: one of five panels under one header, driven by keys."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from time import monotonic

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QFocusEvent,
    QHideEvent,
    QKeyEvent,
)
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.domain.errors import PacewrightError
from app.domain.readiness import PAIN_LIMIT
from app.domain.records import PauseReason
from app.planfile.key_settings import PedalKeys
from app.run.intents import Begin, BeginNow, CountRep, Intent, MarkFault, Pause, RateBout, Resume, Stop
from app.run.snapshot import Snapshot
from app.run.sounding import Loudness
from app.run.state import Doing, Stand
from app.views.athlete.around import Around
from app.views.athlete.bout_card import BoutCard
from app.views.athlete.figure import load_figure
from app.views.athlete.finished_panel import FinishedPanel
from app.views.athlete.header import Header
from app.views.athlete.key_page import KeyPage
from app.views.athlete.keys import KEY_INTENTS, LOUDNESS_KEYS, meant
from app.views.athlete.loudness_bar import LoudnessBar, loudness_words
from app.views.athlete.number_keys import Ten, fault_to_name
from app.views.athlete.paused_panel import REASONS, Asking, PausedPanel, Question
from app.views.athlete.pedal import Pedal, follow, name_of
from app.views.athlete.ready_panel import ReadyPanel
from app.views.athlete.rest_panel import RestPanel
from app.views.athlete.session import RunSession
from app.views.athlete.wording import GAP_WORDS, headline
from app.views.athlete.work_panel import WorkPanel
from app.views.theme import Look
from app.views.ticker import INTERVAL_MS
from app.views.translation import tr
from app.views.widgets.faces import Faces
from app.views.widgets.plain import label, say

SAID_FOR_S = 3.0
"""A change of loudness is said on the screen for so long."""
TWICE_WITHIN_MS = 500
"""A key pressed again this soon is one press that came twice: it ends nothing."""
HALTS: dict[Qt.Key, Asking] = {
    Qt.Key.Key_S: Asking.STOP,
    Qt.Key.Key_K: Asking.WHY,
    Qt.Key.Key_X: Asking.WHY_STAGE,
    Qt.Key.Key_G: Asking.STAGE,
}
"""Keys that pause and ask something."""


class AthletePage(QWidget):
    """Paints the run it is given and hands intents to it.

    `left` is emitted when the athlete is done with it, `due` with the ms until a phase begins that should be
    seen at once, when that is before the next tick.
    """

    left = Signal()
    due = Signal(int)

    def __init__(
        self,
        look: Look,
        session: RunSession,
        athlete: str,
        now_s: Callable[[], float] = monotonic,
        around: Around | None = None,
    ) -> None:
        super().__init__()
        self._around = around or Around()
        self._pedal = Pedal(self)
        self._pedal.short.connect(self._next)
        self._pedal.long.connect(self._pause_or_go_on)
        self._look, self._session, self._now_s = look, session, now_s
        self._opened_ms = session.now_ms()
        self._switched_ms = self._opened_ms - TWICE_WITHIN_MS
        self._announced = ""
        self._ten = Ten(now_s)
        self._changed_s: float | None = None
        self._halted_ms = self._entered_ms = 0
        self._trouble = ""
        timeline = session.timeline
        self._header = Header(look)
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self._notice.setContentsMargins(look.margin, 0, look.margin, 0)
        self._ready = ReadyPanel(look, session, athlete, partial(self.act, Begin()), self._around)
        self._work = WorkPanel(look, self.act)
        self._rest = RestPanel(look, timeline, self.act, partial(load_figure, session.folder))
        self._paused = PausedPanel(look, self.act)
        self._finished = FinishedPanel(look, timeline, self.act, self.left.emit, self._around.next_session)
        self._loudness = LoudnessBar(look, self._change_loudness, self._show_keys)
        self._panels = Faces(look)
        self._panels.add(self._work)
        self._panels.add(self._ready, tr("Before the session"))
        self._panels.add(self._rest, tr("Between two bouts"))
        self._panels.add(self._paused, tr("Pause"))
        self._panels.add(self._finished, tr("After the session"))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self._header)
        layout.addWidget(self._notice)
        layout.addWidget(self._panels, 1)
        layout.addWidget(self._loudness)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setStyleSheet(f"AthletePage {{ background: {look.scheme.ground}; }}")
        self.refresh()

    def refresh(self) -> None:
        """Let time pass and paint the run as it stands."""
        shown = self._session.look()
        panel = self._panel(shown)
        entered = self._panels.face is not panel
        self._show_notice(panel)
        self._header.setVisible(panel not in (self._ready, self._finished))
        self._header.show_snapshot(shown)
        self._show_loudness(panel)
        if panel is self._work:
            self._work.show_snapshot(shown)
            self._announce(headline(shown, self._look.scheme).phase_text)
        elif panel is self._rest:
            self._rest.show_snapshot(shown, self._session.facts)
            self._announce(tr(GAP_WORDS[shown.gap_kind]) if shown.gap_kind in GAP_WORDS else "")
        elif panel is self._paused:
            self._paused.show_snapshot(shown)
            self._announce(tr(REASONS[shown.pause or PauseReason.ASKED]))
        elif panel is self._ready:
            notices = filter(None, (self._session.notice, self._session.voice_notice))
            self._ready.show_notice("\n".join(notices))
            self._ready.show_making(self._session.making)
        else:
            self._finished.show_run(shown.outcome, self._session.facts)
        if entered:
            self._rest.card.finish_typing()
            self._panels.show_face(panel)
            self.setFocus()
            self._entered_ms = self._session.now_ms()
        self._paused.take_focus()
        self._ask_for_onset(shown)

    def show_next_session(self, when: str) -> None:
        """Say when the athlete trains next, on the last panel."""
        self._finished.show_next(when)

    def show_trouble(self, sentence: str) -> None:
        """Say in words that something outside the session went wrong, until told ""; the session goes on."""
        self._trouble = sentence

    @property
    def question(self) -> Question:
        """What is asked in the pause, to be asked again by the page that takes the place of this one."""
        return self._paused.question

    def ask_again(self, question: Question) -> None:
        """Ask in the pause what another page had asked."""
        self._paused.ask(question.asking, question.hurt, question.note)
        self.refresh()

    def act(self, intent: Intent) -> None:
        """Hand an intent to the run and show what came of it."""
        if isinstance(intent, Resume | Stop):
            self._paused.ask(Asking.NOTHING)
        self._session.act(intent)
        hurts = isinstance(intent, RateBout) and (intent.pain or 0) > PAIN_LIMIT
        if isinstance(intent, RateBout) and hurts and not self._session.over:
            self._paused.ask(Asking.PAIN, intent)
            self._session.act(Pause())
        self.refresh()
        if hurts and self._session.over:
            self._finished.card.open_note()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Follow a key; a key held down counts once."""
        if event.isAutoRepeat():
            return
        key = meant(event)
        if key is Qt.Key.Key_F1:
            self._show_keys()
        elif self._asks_about_pain or self._typing:
            super().keyPressEvent(event)
        elif follow(self._around.pedals, event, self._pedal, self._next, self._pause_or_go_on):
            return
        elif key in LOUDNESS_KEYS:
            self._change_loudness(LOUDNESS_KEYS[key])
        elif key is Qt.Key.Key_Space:
            self._space()
        elif Qt.Key.Key_0 <= key <= Qt.Key.Key_9:
            self._number(key - Qt.Key.Key_0)
        elif key in HALTS:
            self._halt(HALTS[key])
        elif not self._follow_card(key):
            self._follow_intent(key, event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """Tell a short press of the one pedal from a long one."""
        if event.isAutoRepeat():
            return
        if self._around.pedals.one_pedal and name_of(Qt.Key(event.key())) in self._around.pedals.count:
            self._pedal.up()
        else:
            super().keyReleaseEvent(event)

    def hideEvent(self, event: QHideEvent) -> None:
        """Keep what is being typed when another page takes the place of this one."""
        super().hideEvent(event)
        if not self._session.closed:
            self._rest.card.finish_typing()
            self._finished.finish_typing()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """A pedal whose release goes elsewhere was not pressed for long."""
        self._pedal.let_go()
        super().focusOutEvent(event)

    def _follow_intent(self, key: Qt.Key, event: QKeyEvent) -> None:
        intent = KEY_INTENTS.get(key)
        back, ready = self._around.back, self._session.controller.state.stand is Stand.READY
        if key is Qt.Key.Key_Escape and back is not None and ready and not self.window().isFullScreen():
            back()
        elif intent is None:
            super().keyPressEvent(event)
        elif isinstance(intent, CountRep) and ready:
            self._begin()
        else:
            self.act(intent)

    def _follow_card(self, key: Qt.Key) -> bool:
        """Follow a key that is for the card about a bout, where one is in sight."""
        card = self._card
        by = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(key, 0)
        if by and card is not None:
            # The press that ended the bout may have come twice.
            if self._session.now_ms() - self._entered_ms >= TWICE_WITHIN_MS:
                card.change_reps(by)
            return True
        acts: dict[Qt.Key, Callable[[BoutCard], object]] = {
            Qt.Key.Key_Left: BoutCard.turn_back,
            Qt.Key.Key_Right: BoutCard.turn_on,
            Qt.Key.Key_L: BoutCard.open_load,
            Qt.Key.Key_W: BoutCard.open_note,
        }
        if key is Qt.Key.Key_W and self._panels.face is self._finished:
            self._finished.open_note()
        elif card is not None and key in acts:
            acts[key](card)
        else:
            return False
        return True

    @property
    def _card(self) -> BoutCard | None:
        """The card about a bout, where it is in sight."""
        panel = self._panels.face
        card = self._rest.card if panel is self._rest else self._finished.card
        return card if panel in (self._rest, self._finished) and not card.isHidden() else None

    @property
    def _typing(self) -> bool:
        card = self._card
        return (card is not None and card.typing) or self._finished.typing

    @property
    def _asks_about_pain(self) -> bool:
        """Pain above the limit has to be answered by what is on the screen: no key passes it by."""
        paused = self._session.controller.state.stand is Stand.PAUSED
        return paused and self._paused.asking is Asking.PAIN

    def _space(self) -> None:
        state = self._session.controller.state
        if state.stand is Stand.ENDED:
            if state.seen_ms - state.began_ms - (state.ended_ms or 0) >= TWICE_WITHIN_MS:
                self.left.emit()
        elif state.stand is Stand.READY:
            self._begin()
        else:
            self._pause_or_go_on()

    def _begin(self) -> None:
        """Begin by a key, but not by the second press of the one that led here."""
        twice = self._session.now_ms() - self._opened_ms < TWICE_WITHIN_MS
        if not (twice and self._around.key_just_pressed):
            self._switched_ms = self._session.now_ms()
            self.act(Begin())

    def _pause_or_go_on(self) -> None:
        """Pause or go on, but not both by one press that bounced."""
        now, stand = self._session.now_ms(), self._session.controller.state.stand
        if now - self._switched_ms < TWICE_WITHIN_MS or self._asks_about_pain:
            return
        self._switched_ms = now
        self.act(Pause() if stand is Stand.RUNNING else Resume())

    def _next(self) -> None:
        """What a pedal asks for: begin, count, cut the rest short; never twice by one press that bounced."""
        state = self._session.controller.state
        if state.stand is Stand.READY:
            self._begin()
            return
        shown = self._session.look()
        if shown.stand is not Stand.RUNNING:
            return
        if shown.doing is Doing.WORK:
            self.act(CountRep())
        elif shown.doing is Doing.GAP and self._session.now_ms() - self._entered_ms >= TWICE_WITHIN_MS:
            self.act(BeginNow())

    def _show_keys(self) -> None:
        KeyPage(self._look, self, self._around.pedals, self._learn).show()

    def _learn(self, pedals: PedalKeys) -> None:
        self._around = replace(self._around, pedals=pedals)
        try:
            if self._around.keep_pedals is not None:
                self._around.keep_pedals(pedals)
        except PacewrightError as error:
            self.show_trouble(str(error))
            self.refresh()

    def _halt(self, asking: Asking) -> None:
        shown = self._session.look()
        if shown.stand not in (Stand.RUNNING, Stand.PAUSED) or (asking is Asking.STAGE and not shown.choices):
            return
        now = self._session.now_ms()
        if shown.stand is Stand.PAUSED and self._paused.asking is Asking.STOP and asking is Asking.STOP:
            if now - self._halted_ms >= TWICE_WITHIN_MS:
                self.act(Stop())
            return
        self._halted_ms = now
        self._paused.ask(asking)
        self.act(Pause())

    def _number(self, number: int) -> None:
        shown = self._session.look()
        panel = self._panel(shown)
        ten = self._ten.made_by(number)
        named = fault_to_name(self._session, number, self._entered_ms) if panel is self._rest else None
        if named is not None:
            self.act(named)
        elif panel is self._paused:
            self._paused.choose(number)
        elif panel is self._finished:
            self._answer(self._finished, number, ten=ten)
        elif panel is self._rest and self._card is not None:
            self._answer(self._rest.card, number, ten=ten)
        elif shown.doing is Doing.WORK and panel is self._work and 1 <= number <= len(shown.exercise.faults):
            self.act(MarkFault(shown.exercise.faults[number - 1]))
        self.refresh()

    def _answer(self, asking: BoutCard | FinishedPanel, number: int, *, ten: bool) -> None:
        if ten:
            asking.make_ten()
        else:
            asking.answer_number(number)

    def _panel(self, shown: Snapshot) -> QWidget:
        if shown.stand is Stand.RUNNING:
            return self._rest if shown.doing is Doing.GAP else self._work
        return {Stand.READY: self._ready, Stand.PAUSED: self._paused}.get(shown.stand, self._finished)

    def _ask_for_onset(self, shown: Snapshot) -> None:
        left_ms = shown.phase_left_ms if shown.doing is Doing.WORK else shown.gap_left_ms
        if shown.stand is Stand.RUNNING and left_ms is not None and left_ms <= INTERVAL_MS:
            self.due.emit(left_ms)

    def _change_loudness(self, change: Callable[[Loudness], Loudness]) -> None:
        self._session.set_loudness(change(self._session.loudness))
        self._changed_s = self._now_s()
        self.refresh()

    def _show_loudness(self, panel: QWidget) -> None:
        loudness = self._session.loudness
        just_now = self._changed_s is not None and self._now_s() - self._changed_s < SAID_FOR_S
        self._header.show_sound(loudness_words(loudness) if loudness.muted or just_now else "")
        self._loudness.setVisible(panel in (self._ready, self._paused))
        self._loudness.show_loudness(loudness)

    def _show_notice(self, panel: QWidget) -> None:
        of_sound = None if panel in (self._ready, self._finished) else self._session.notice
        say(self._notice, "\n".join(filter(None, (self._trouble, of_sound))))
        self._notice.setVisible(bool(self._notice.text()))

    def _announce(self, words: str) -> None:
        if not words or words == self._announced:
            return
        self._announced = words
        if QAccessible.isActive():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, words))
