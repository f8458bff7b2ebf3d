"""The group's pages in one place: the setting up, the coach's console, and the gym screen on its monitor."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QGuiApplication, QIcon, QResizeEvent
from PySide6.QtWidgets import QStackedWidget, QWidget

from app.domain.errors import PacewrightError
from app.domain.group import GroupSession
from app.domain.group_choice import GroupChoice, chosen_grouping, group_session
from app.domain.grouping import Grouping
from app.domain.keeping import Note
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import BoutEnded
from app.run.state import Stand
from app.views.awake import Awake
from app.views.group.console import Console
from app.views.group.group_writer import GroupWriter, NewId, Stamp, new_record
from app.views.group.gym_window import REBUILD_AFTER_MS, GymWindow, LookOf, monitor_name
from app.views.group.room_session import RoomSession
from app.views.group.setup_page import SetupPage
from app.views.group.unfinished import UnfinishedGroup, ends_of, laid_out, latest_unfinished_group
from app.views.ticker import Ticker
from app.views.tidying import Tidying
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.house import House
    from app.views.worker import RecordKeeper

CROWDED = message(
    "There are more names or stations than can be read across the room: they take turns on the gym screen."
)
GONE = message(
    "That group session cannot be led on: its plan is read otherwise now. Everything done is kept."
)


class GroupRoom(QStackedWidget):
    """Sets a group session up, leads it, and keeps a record for each. `left` is emitted on the way back.

    `looks` gives the look of the console and that of the gym screen, each for a height in pixels.
    """

    left = Signal()

    def __init__(
        self, house: "House", keeper: "RecordKeeper", looks: tuple[LookOf, LookOf], within: QWidget
    ) -> None:
        super().__init__()
        self._house, self._keeper, self._within = house, keeper, within
        self._look_of, self._gym_look_of = looks
        self._ticker, self._awake, self._tidying = Ticker(self), Awake(), Tidying()
        self._ticker.tick.connect(self._refresh)
        self._room: RoomSession | None = None
        self._writer: GroupWriter | None = None
        self._console: Console | None = None
        self._gym: GymWindow | None = None
        self._unfinished: UnfinishedGroup | None = None
        self._ended = False
        self._built_height = within.height()
        self._resized = QTimer(self, singleShot=True, interval=REBUILD_AFTER_MS)
        self._resized.timeout.connect(self._rebuild)
        self._setup = self._build_setup()
        self._keeper.ask(latest_unfinished_group, self._offer)

    def begin(self, written: WrittenPlan, choice: GroupChoice) -> None:
        """Make a session of a plan for everybody in the roster. Raises PacewrightError."""
        grouping = chosen_grouping(written.plan, choice)
        session = group_session(written.plan, self._house.read_athletes(), grouping)
        self._lead(session, self._writer_for(session, grouping, written))

    def take_up(self) -> None:
        """Go on with the session that was cut short, standing still; or say why it cannot be led on."""
        group = self._unfinished
        session = None if group is None else laid_out(group, self._house.parse_plan)
        if group is None or session is None:
            self._setup.show_notice(tr(GONE))
            return
        for header, part, facts in zip(group.headers, session.parts, group.facts, strict=True):
            if facts:
                self._keeper.recall(header, prescriptions(part.timeline), facts)
        stamp, _ = self._writing()
        known = group.record, group.headers
        self._lead(session, GroupWriter(self._keeper, session, lambda: known, stamp), group)

    def lay_down(self) -> None:
        """Close the session that was cut short as it stands: every run abandoned, every rep kept."""
        group = self._unfinished
        if group is None:
            return
        ends = ends_of(group, laid_out(group, self._house.parse_plan))
        for header, prescribed, facts, more in zip(
            group.headers, group.prescribed, group.facts, ends, strict=True
        ):
            if more:
                self._keeper.recall(header, prescribed, facts)
                self._keeper.append(header.run_id, len(facts), more)
        self._offer(None)
        self._keeper.ask(latest_unfinished_group, self._offer)

    def renew(self) -> None:
        """Build what is shown anew, where it was, with the look that screens have now."""
        if self._ended:
            return
        self._built_height = self._within.height()
        setup, console = self._setup, self._console
        self._setup = self._build_setup()
        self._setup.carry_on(setup.kept)
        if console is not None and self._room is not None:
            self._build_console(self._room, console)
            self._drop(console)
        else:
            self.setCurrentWidget(self._setup)
            self._setup.setFocus()
        self._drop(setup)
        if self._gym is not None:
            self._gym.renew()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Build everything anew, with letters to match, once the window has another size for good."""
        super().resizeEvent(event)
        self._resized.start()

    def _rebuild(self) -> None:
        if self._within.height() != self._built_height:
            self.renew()

    def _drop(self, page: QWidget) -> None:
        self.removeWidget(page)
        page.deleteLater()

    def end(self) -> None:
        """Let the session go; runs that are not over are abandoned, every finished rep kept."""
        room, self._room = self._room, None
        self._ended = True
        self._ticker.stop()
        self._resized.stop()
        self._tidying.end()
        if self._gym is not None:
            self._gym.close()
            self._gym.deleteLater()
            self._gym = None
        if room is not None:
            room.close()
            room.moved.disconnect(self._on_moved)
        self._awake.close()

    def _lead(self, session: GroupSession, writer: GroupWriter, group: UnfinishedGroup | None = None) -> None:
        speaker, clock = self._house.choose_speaker(), self._house.make_clock()
        sound = self._house.room_sound(session, speaker, clock)
        written = () if group is None else group.facts
        self._room = RoomSession(session, clock, speaker, sound, writer, written)
        self._room.moved.connect(self._on_moved)
        self._writer = writer
        self._build_console(self._room)
        self._tidying.begin()
        self._ticker.start()
        if len(QGuiApplication.screens()) > 1:
            self._show_gym("")

    def _build_console(self, room: RoomSession, before: Console | None = None) -> None:
        console = Console(self._look_of(self._within.height()), room, self._note)
        console.left.connect(self._leave)
        console.gym_wanted.connect(self._show_gym)
        own = self._within.screen().name()
        monitors = [(screen.name(), monitor_name(screen)) for screen in QGuiApplication.screens()]
        others = [name for name, _ in monitors if name != own]
        console.show_monitors(monitors, others[0] if others else own)
        if before is not None:
            console.carry_on(before.kept)
        self._console = console
        self.addWidget(console)
        self.setCurrentWidget(console)
        self.setFocusProxy(console)
        console.take_focus()

    def _build_setup(self) -> SetupPage:
        look = self._look_of(self._within.height())
        setup = SetupPage(look, self._house.plans, self._grouping_of, len(self._house.read_athletes()))
        setup.chosen.connect(self._on_chosen)
        setup.again.connect(self.take_up)
        setup.laid_down.connect(self.lay_down)
        setup.left.connect(self.left)
        self.addWidget(setup)
        self.setFocusProxy(setup)
        return setup

    def _grouping_of(self, path: Path) -> Grouping | None:
        try:
            return self._house.read_plan(path).plan.group
        except PacewrightError:
            return None

    def _on_chosen(self, path: Path, choice: GroupChoice) -> None:
        self._setup.show_notice("")
        try:
            self.begin(self._house.read_plan(path), choice)
        except PacewrightError as error:
            self._setup.show_notice(str(error))

    def _offer(self, group: UnfinishedGroup | None) -> None:
        if self._ended:
            return
        self._unfinished = group
        if group is None:
            self._setup.offer("")
            return
        words = tr("{plan}, with {n} people: cut short. All that was done is kept.")
        self._setup.offer(words.format(plan=group.title, n=group.people))

    def _writer_for(self, session: GroupSession, grouping: Grouping, written: WrittenPlan) -> GroupWriter:
        stamp, new_id = self._writing()
        make = partial(new_record, session, grouping, written, stamp, new_id)
        return GroupWriter(self._keeper, session, make, stamp)

    def _writing(self) -> tuple[Stamp, NewId]:
        stamp, new_id = self._house.stamp, self._house.new_id
        if stamp is None or new_id is None:
            raise PacewrightError(tr("This program keeps no record, so a group cannot be led."))
        return stamp, new_id

    def _refresh(self) -> None:
        if self._console is None or self._room is None:
            return
        self._console.refresh()
        if self._gym is not None:
            self._gym.show_room(self._room.state, self._room.now_ms())
            self._console.show_notice(tr(CROWDED) if self._gym.crowded else "")

    def _show_gym(self, name: str) -> None:
        if self._room is None:
            return
        if self._gym is None:
            self._gym = GymWindow(self._room.session, self._gym_look_of, QIcon(str(self._house.icon)))
        screens = QGuiApplication.screens()
        own = self._within.screen()
        other = next((screen for screen in screens if screen is not own), own)
        self._gym.put_on(next((screen for screen in screens if screen.name() == name), other))
        self._within.activateWindow()
        if self._console is not None:
            self._console.setFocus()

    def _note(self, member: int, text: str) -> None:
        if self._room is None or self._writer is None:
            return
        stamp, new_id = self._writing()
        at, zone = stamp()
        athlete = self._room.session.parts[member].athlete.name
        begun = bool(self._room.facts[member])
        run_id = self._writer.headers[member].run_id if begun and self._writer.headers else None
        note = Note(new_id(at), athlete, text, tr("Coach"), at, zone, run_id)
        self._keeper.ask(_keep(note), lambda _kept: None)

    def _leave(self) -> None:
        self.end()
        self.left.emit()

    def _on_moved(self, told: tuple[tuple[object, ...], ...]) -> None:
        if self._room is not None:
            self._awake.hold(wanted=self._room.state.leader.stand is Stand.RUNNING)
        if any(isinstance(fact, BoutEnded) for facts in told for fact in facts):
            QTimer.singleShot(0, self._tidying.between)


def _keep(note: Note) -> Callable[["Database"], None]:
    return lambda database: database.answers.keep(note)
