"""The coach's console: who is here, what the room does, marks and steering, everything on the keyboard."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from app.run.room_intents import RoomIntent
from app.run.state import Stand
from app.views.athlete.loudness_bar import loudness_words
from app.views.group.after_form import Answer
from app.views.group.after_grid import AfterGrid
from app.views.group.afterwards import answering, missing, rated
from app.views.group.coach_keys import Asked, Keys, Moment, Wait, strike
from app.views.group.console_buttons import steering_buttons
from app.views.group.console_kept import Kept
from app.views.group.console_keys import KEY_PAGE, SIGNS
from app.views.group.console_words import (
    asked_line,
    chosen_line,
    following_line,
    here_line,
    hint,
    line_of,
    now_line,
    place_line,
    said_back,
)
from app.views.group.names import screen_names
from app.views.group.now_panel import ECHO_MS, NowPanel
from app.views.group.people_table import PeopleTable
from app.views.group.room_session import RoomSession
from app.views.group.scene import RoomScene, room_scene
from app.views.lettering import Weight
from app.views.theme import Look, palette
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.key_table import KeyTable
from app.views.widgets.plain import label, quiet_button, say, strong_button

MOST_NOTE = 500


class Console(QWidget):
    """Shows a group session to its coach and hands intents to it.

    `left` is emitted when the coach is done, `gym_wanted` with the name of the monitor for the gym screen.
    `note` is given the place of somebody and words about them.
    """

    left = Signal()
    gym_wanted = Signal(str)

    def __init__(self, look: Look, session: RoomSession, note: Callable[[int, str], object]) -> None:
        super().__init__()
        self._look, self._session, self._note = look, session, note
        self._names = screen_names([part.athlete for part in session.session.parts])
        self._keys = Keys()
        self._notice = ""
        self._echo: tuple[int, str, str] | None = None
        self._title = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD)
        self._place = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet, lines=2)
        self._now = NowPanel(look)
        self._here = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self._warning = label(look, colour=look.scheme.notice, wrap=True)
        self._hint = FittedLabel(look, pixels=look.sizes.heading, lines=2)
        self._find = QLineEdit()
        self._writing = QLineEdit()
        self._monitor = QComboBox()
        self._people = PeopleTable(look, self._choose)
        self._after = AfterGrid(look, self._rate, session.now_ms)
        self._stack = QStackedLayout()
        self._leave = quiet_button(look, tr("Leave  (Esc)"), self._ask_to_leave)
        self._go = strong_button(look, tr("Begin, pause, go on  (Space)"), partial(self._strike, " "))
        say(self._title, session.session.leader.plan.title)
        self._lay_out()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setPalette(palette(look.scheme))
        self.setAutoFillBackground(True)
        self.refresh()

    def refresh(self) -> None:
        """Let time pass and show the room as it stands."""
        state, now = self._session.look(), self._session.now_ms()
        scene = room_scene(self._session.session, state, self._names, now)
        self._keys = self._keys.at(now)
        ready, over = scene.leader.stand is Stand.READY, state.over and scene.leader.stand is Stand.ENDED
        self._stack.setCurrentIndex(1 if over else 0)
        self._now.show_now(now_line(scene, self._look.scheme), following_line(scene))
        self._show_echo(now)
        say(self._place, "" if over else place_line(scene))
        say(self._here, here_line(self._session.session, state.present))
        self._hint.setVisible(not over)
        self._go.setVisible(not over)
        self._leave.setText(tr("Done") if over else tr("Leave  (Esc)"))
        say(self._hint, hint(self._keys, self._names, self._faults(scene), scene.leader.stand))
        say(self._warning, "\n".join(filter(None, (self._notice, self._session.notice))))
        self._warning.setVisible(bool(self._warning.text()))
        self._find.setVisible(ready)
        if over:
            facts = self._session.facts
            self._after.show_rows(
                rated(self._session.session, self._names, facts), missing(self._names, facts)
            )
        else:
            lines = [
                line_of(member, someone, self._session.facts[member], ready=ready)
                for member, someone in enumerate(scene.people)
            ]
            self._people.show_lines(lines, self._keys.member)

    def show_monitors(self, names: Sequence[tuple[str, str]], chosen: str) -> None:
        """Offer monitors, by name and by what they are called, with one of them chosen."""
        self._monitor.clear()
        for name, called in names:
            self._monitor.addItem(called, name)
        self._monitor.setCurrentIndex(max(self._monitor.findData(chosen), 0))

    def show_notice(self, sentence: str) -> None:
        """Say what the coach should know, until told otherwise."""
        self._notice = sentence

    def act(self, intent: RoomIntent) -> None:
        """Hand an intent to the room and show what came of it."""
        self._session.act(intent)
        self.refresh()
        if self._session.over:
            self._after.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Follow a key; a key held down counts once."""
        key = Qt.Key(event.key())
        if event.isAutoRepeat():
            return
        if key is Qt.Key.Key_Escape and (not self._writing.isHidden() or self._find.hasFocus()):
            self._put_away()
        elif key is Qt.Key.Key_Escape and self._keys.wait is Wait.NOTHING and self.window().isFullScreen():
            super().keyPressEvent(event)
        elif key is Qt.Key.Key_F9:
            self._show_gym()
        elif key is Qt.Key.Key_F1:
            KeyTable(self._look, self, KEY_PAGE).show()
        elif event.text() == "/" and not self._find.isHidden():
            self._find.setFocus()
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self._step(1 if key is Qt.Key.Key_Down else -1)
        elif key in SIGNS or event.text():
            self._strike(SIGNS.get(key, event.text().upper()))
        else:
            super().keyPressEvent(event)

    def _strike(self, sign: str) -> None:
        state, now = self._session.look(), self._session.now_ms()
        scene = room_scene(self._session.session, state, self._names, now)
        moment = Moment(
            scene.leader.stand, scene.slot, scene.slots, len(self._names), state.present, self._faults(scene)
        )
        member = self._keys.at(now).member
        self._keys, asked = strike(self._keys, sign, moment, now)
        if asked is Asked.NOTE and member is not None:
            self._begin_note(member)
        elif asked is Asked.LEAVE:
            self.left.emit()
            return
        elif asked is Asked.HEAR and member is not None:
            self._session.pick(member)
            heard = self._session.picked == member
            self._say_back(member, tr("their tempo is heard") if heard else tr("their tempo is not heard"))
        elif isinstance(asked, Asked):
            self._change_loudness(asked)
        elif asked is not None:
            self._act_and_say(asked)
        self.refresh()

    def _act_and_say(self, intent: RoomIntent) -> None:
        """Follow an intent and, where it is about one person, say back what came of it."""
        before = self._session.state
        member = getattr(intent, "member", None)
        known = 0 if member is None else len(self._session.facts[member])
        self.act(intent)
        if member is not None:
            new = self._session.facts[member][known:]
            self._say_back(member, said_back(intent, new, before, self._session.state))

    def _say_back(self, member: int | None, words: str) -> None:
        name = "" if member is None else self._names[member]
        self._echo = (self._session.now_ms(), name, words)

    def _show_echo(self, now_ms: int) -> None:
        """Show who is chosen, else what was struck last."""
        member = self._keys.member
        if member is not None:
            self._now.show_echo(self._names[member], chosen_line(self._keys))
            return
        if self._keys.wait is not Wait.NOTHING:
            self._now.show_echo(asked_line(self._keys), "")
            return
        if self._echo is not None and now_ms - self._echo[0] > ECHO_MS:
            self._echo = None
        _, name, words = self._echo or (0, "", "")
        self._now.show_echo(name or words, words if name else "")

    def _ask_to_leave(self) -> None:
        """Leave at the second press while a session goes on, else at once."""
        if self._keys.wait is Wait.LEAVE:
            self.left.emit()
            return
        self._keys = Keys()
        self._strike("\x1b")

    @property
    def kept(self) -> Kept:
        """Where it is, for a console in its place."""
        writing = None if self._writing.isHidden() else self._writing.text()
        monitor = str(self._monitor.currentData() or "")
        return Kept(self._keys, self._echo, self._notice, monitor, writing, self._after.form)

    def carry_on(self, kept: Kept) -> None:
        """Be where another console of the same session was."""
        self._keys, self._echo, self._notice = kept.keys, kept.echo, kept.notice
        self._monitor.setCurrentIndex(max(self._monitor.findData(kept.monitor), 0))
        self.refresh()
        if kept.writing is not None and self._keys.member is not None:
            self._begin_note(self._keys.member)
            self._writing.setText(kept.writing)
        elif self._session.over:
            self._after.carry_on(kept.form)

    def take_focus(self) -> None:
        """Have the keys go to what asks for them."""
        if not self._writing.isHidden():
            self._writing.setFocus()
        elif self._session.over:
            self._after.setFocus()
        else:
            self.setFocus()

    def _faults(self, scene: RoomScene) -> tuple[str, ...]:
        """The faults that a digit names: those of what the chosen one does."""
        member = self._keys.member
        if member is None or not scene.stations:
            return scene.leader.exercise.faults
        part, state = self._session.session.parts[member], self._session.state.members[member]
        return part.timeline.exercise_of(part.timeline.bouts[state.bout]).faults

    def _choose(self, row: int) -> None:
        self._keys = Keys(Wait.ACTION, row, self._session.now_ms())
        if self._session.state.leader.stand is Stand.READY:
            self._strike("\r")
        self.setFocus()
        self.refresh()

    def _step(self, by: int) -> None:
        member = self._keys.member
        row = 0 if member is None else (member + by) % max(len(self._names), 1)
        self._keys = Keys(Wait.ACTION, row, self._session.now_ms())
        self.refresh()

    def _found(self) -> None:
        wanted = self._find.text().strip().casefold()
        athletes = [part.athlete.name for part in self._session.session.parts]
        for member, name in enumerate(athletes):
            if wanted and (name.casefold().startswith(wanted) or wanted in self._names[member].casefold()):
                self._find.clear()
                self._choose(member)
                return
        self.setFocus()

    def _begin_note(self, member: int) -> None:
        self._writing.setPlaceholderText(
            tr("A note on {name}, Enter keeps it").format(name=self._names[member])
        )
        self._writing.setProperty("member", member)
        self._writing.show()
        self._writing.setFocus()

    def _put_away(self) -> None:
        """Give up the note or the name that was begun."""
        self._writing.clear()
        self._writing.hide()
        self._find.clear()
        self._keys = Keys()
        self.setFocus()

    def _end_note(self) -> None:
        text, member = self._writing.text().strip(), self._writing.property("member")
        if text and isinstance(member, int):
            self._note(member, text)
            self._say_back(member, tr("noted"))
        self._writing.clear()
        self._writing.hide()
        self._keys = Keys()
        self.setFocus()

    def _change_loudness(self, asked: Asked) -> None:
        loudness = self._session.loudness
        changed = {
            Asked.LOUDER: loudness.louder,
            Asked.SOFTER: loudness.softer,
            Asked.SWITCH: loudness.switched,
        }[asked]()
        self._session.set_loudness(changed)
        self._say_back(None, loudness_words(changed))

    def _show_gym(self) -> None:
        self.gym_wanted.emit(str(self._monitor.currentData() or ""))

    def _rate(self, answer: Answer) -> None:
        intent = answering(answer, self._session.facts)
        if intent is not None:
            self._session.act(intent)
        self.refresh()

    def _lay_out(self) -> None:
        look = self._look
        for line, words in ((self._find, tr("Find a name")), (self._writing, tr("Note"))):
            line.setFont(look.font(look.sizes.heading))
            line.setAccessibleName(words)
            line.setMaxLength(MOST_NOTE)
        self._find.setPlaceholderText(tr("Find a name, Enter: here or not"))
        self._find.returnPressed.connect(self._found)
        self._writing.returnPressed.connect(self._end_note)
        self._writing.hide()
        self._monitor.setFont(look.font(look.sizes.body))
        self._monitor.setAccessibleName(tr("Monitor of the gym screen"))
        self._monitor.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        led = QWidget()
        row = QHBoxLayout(led)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(look.sizes.title)
        people = QVBoxLayout()
        people.addWidget(self._find)
        people.addWidget(self._people, 1)
        row.addLayout(people, 6)
        row.addLayout(self._steering(), 5)
        self._stack.addWidget(led)
        self._stack.addWidget(self._after)
        layout = QVBoxLayout(self)
        side = round(look.sizes.body * 2)
        layout.setContentsMargins(side, side, side, side)
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._here)
        layout.addLayout(head)
        layout.addWidget(self._place)
        layout.addLayout(self._stack, 1)
        layout.addWidget(self._warning)
        layout.addWidget(self._writing)
        layout.addWidget(self._hint)
        layout.addLayout(self._foot())

    def _steering(self) -> QVBoxLayout:
        look = self._look
        column = QVBoxLayout()
        column.addWidget(self._now)
        column.addStretch(1)
        column.addLayout(steering_buttons(look, self._strike))
        return column

    def _foot(self) -> QHBoxLayout:
        look = self._look
        row = QHBoxLayout()
        row.addWidget(self._monitor)
        row.addWidget(quiet_button(look, tr("Gym screen  (F9)"), self._show_gym))
        row.addWidget(quiet_button(look, tr("Keys  (F1)"), lambda: KeyTable(look, self, KEY_PAGE).show()))
        row.addStretch(1)
        row.addWidget(self._leave)
        row.addWidget(self._go)
        return row
