"""The coach's console: who is here, what the room does, marks and steering, everything on the keyboard."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from app.domain.fold import fold_closing, fold_run
from app.run.intents import RateBout, RateSession
from app.run.room_intents import ForOne, RoomIntent
from app.run.state import Stand
from app.views.athlete.loudness_bar import loudness_words
from app.views.group.after_form import Answer, Question
from app.views.group.after_grid import AfterGrid, Rated
from app.views.group.coach_keys import Asked, Keys, Moment, Wait, strike
from app.views.group.console_words import here_line, hint, line_of, now_line, place_line
from app.views.group.names import screen_names
from app.views.group.people_table import PeopleTable
from app.views.group.room_session import RoomSession
from app.views.group.scene import RoomScene, room_scene
from app.views.lettering import Weight
from app.views.theme import Look, palette
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, quiet_button, say, strong_button

SIGNS = {
    Qt.Key.Key_Space: " ",
    Qt.Key.Key_Return: "\r",
    Qt.Key.Key_Enter: "\r",
    Qt.Key.Key_Escape: "\x1b",
    Qt.Key.Key_Left: "<",
    Qt.Key.Key_PageUp: "<",
    Qt.Key.Key_Right: ">",
    Qt.Key.Key_PageDown: ">",
}
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
        self._notice = self._said = ""
        self._row = 0
        self._title = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD)
        self._place = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet, lines=2)
        self._now = FittedLabel(look, pixels=look.sizes.display, weight=Weight.BOLD, lines=2)
        self._here = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self._warning = label(look, colour=look.scheme.notice, wrap=True)
        self._hint = FittedLabel(look, pixels=look.sizes.heading, lines=2)
        self._find = QLineEdit()
        self._writing = QLineEdit()
        self._monitor = QComboBox()
        self._people = PeopleTable(look, self._choose)
        self._after = AfterGrid(look, self._rate, session.now_ms)
        self._stack = QStackedLayout()
        self._leave = quiet_button(look, tr("Leave"), self.left.emit)
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
        say(self._now, now_line(scene, self._look.scheme))
        say(self._place, place_line(scene))
        say(self._here, here_line(self._session.session, state.present))
        self._hint.setVisible(not over)
        self._go.setVisible(not over)
        self._leave.setText(tr("Done") if over else tr("Leave"))
        say(self._hint, hint(self._keys, self._names, self._faults(scene), scene.leader.stand))
        say(self._warning, "\n".join(filter(None, (self._said, self._notice, self._session.notice))))
        self._warning.setVisible(bool(self._warning.text()))
        self._find.setVisible(ready)
        if over:
            self._after.show_rows([rated for _, rated in self._rated()])
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
        if key is Qt.Key.Key_F9:
            self._show_gym()
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
        elif isinstance(asked, Asked):
            self._change_loudness(asked)
        elif asked is not None:
            self.act(asked)
        self.refresh()

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

    def _end_note(self) -> None:
        text, member = self._writing.text().strip(), self._writing.property("member")
        if text and isinstance(member, int):
            self._note(member, text)
            self._said = tr("Noted of {name}.").format(name=self._names[member])
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
        self._said = loudness_words(changed)

    def _show_gym(self) -> None:
        self.gym_wanted.emit(str(self._monitor.currentData() or ""))

    def _rated(self) -> list[tuple[int, Rated]]:
        """Everybody who was there with what they did and said, by their place in the session."""
        rows = []
        for member, facts in enumerate(self._session.facts):
            if not facts:
                continue
            records = fold_run(facts)
            asked = sum(bout.low for bout in self._session.session.parts[member].timeline.bouts)
            done = tr("{n} of {m}").format(n=sum(record.reps_done for record in records), m=asked)
            pains = [record.pain for record in records if record.pain is not None]
            pain = pains[-1] if pains else None
            rows.append((member, Rated(self._names[member], done, fold_closing(facts).session_rpe, pain)))
        return rows

    def _rate(self, answer: Answer) -> None:
        member = self._rated()[answer.row][0]
        if answer.question is Question.EFFORT:
            self._session.act(ForOne(member, RateSession(answer.value)))
        else:
            bouts = [record.bout for record in fold_run(self._session.facts[member])]
            if bouts:
                self._session.act(ForOne(member, RateBout(bouts[-1], pain=answer.value)))
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
        grid = QGridLayout()
        buttons = (
            (tr("+15 s  (T)"), "T"),
            (tr("Begin now  (N)"), "N"),
            (tr("End this bout  (E)"), "E"),
            (tr("Do it again  (A)"), "A"),
            (tr("One rep for all  (Enter)"), "\r"),
            (tr("Leave out  (K)"), "K"),
            (tr("Back  (←)"), "<"),
            (tr("On  (→)"), ">"),
            (tr("Softer  (-)"), "-"),
            (tr("Louder  (+)"), "+"),
            (tr("Sound off or on  (V)"), "V"),
            (tr("Stop  (S)"), "S"),
        )
        for index, (words, sign) in enumerate(buttons):
            grid.addWidget(quiet_button(look, words, partial(self._strike, sign)), index // 2, index % 2)
        column.addLayout(grid)
        column.addStretch(1)
        return column

    def _foot(self) -> QHBoxLayout:
        look = self._look
        row = QHBoxLayout()
        row.addWidget(self._monitor)
        row.addWidget(quiet_button(look, tr("Gym screen  (F9)"), self._show_gym))
        row.addStretch(1)
        row.addWidget(self._leave)
        row.addWidget(self._go)
        return row
