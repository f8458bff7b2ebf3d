"""The run under way: begun or taken up again, with its clock, sound and record, until it is left."""

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.domain.compiler import compile_timeline
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import BoutEnded, Fact, RunBegan, RunEnded, RunHeader, RunOutcome
from app.domain.timeline import Timeline
from app.run.controller import handle
from app.run.intents import Stop
from app.run.restore import restore
from app.run.state import Stand
from app.views.athlete.session import RunSession
from app.views.awake import Awake
from app.views.run_writer import RunWriter
from app.views.ticker import Ticker
from app.views.tidying import Tidying
from app.views.unfinished import Unfinished, timeline_of

if TYPE_CHECKING:
    from app.views.house import House
    from app.views.worker import RecordKeeper


class Leading(QObject):
    """Owns at most one run, with all that goes on only while there is one.

    `ticker` asks for repaints; the computer is kept awake while the run is going. `fresh` tells that the run
    is a new one and none that was taken up.
    """

    began = Signal()
    """A run stands ready to be shown: `session` and `athlete` are those of it."""
    under_way = Signal(str)
    """A new run has begun and is in the record, with this id."""

    def __init__(self, house: "House", keeper: "RecordKeeper", parent: QObject) -> None:
        super().__init__(parent)
        self._house, self._keeper = house, keeper
        self._tidying, self._awake = Tidying(), Awake()
        self.ticker = Ticker(self)
        self.session: RunSession | None = None
        self.athlete = ""
        self.fresh = False
        self._write: RunWriter | None = None

    def begin(self, session: WrittenPlan, name: str) -> None:
        """Make the run of an athlete, ready to begin. Raises PacewrightError when it cannot be made."""
        athletes = {athlete.name: athlete for athlete in self._house.read_athletes()}
        timeline = compile_timeline(session.plan, athletes.get(name))
        folder = None if session.folder is None else Path(session.folder)
        self._lead(timeline, name, lambda: self._house.new_header(name, session), folder=folder)

    def take_up(self, unfinished: Unfinished) -> bool:
        """Go on with a run that was cut short, standing still at its bout; False when it can't be led on."""
        timeline = timeline_of(unfinished, self._house.parse_plan, self._house.read_athletes())
        if timeline is None:
            return False
        self._keeper.recall(unfinished.header, unfinished.prescribed, unfinished.facts)
        self._lead(timeline, unfinished.header.athlete, lambda: unfinished.header, unfinished.facts)
        return True

    def lay_down(self, unfinished: Unfinished) -> None:
        """Close a run that was cut short as it stands: abandoned, every rep kept."""
        timeline = timeline_of(unfinished, self._house.parse_plan, self._house.read_athletes())
        gone_ms = max((fact.at_ms for fact in unfinished.facts), default=0)
        facts: tuple[Fact, ...] = (RunEnded(gone_ms, RunOutcome.ABANDONED),)
        if timeline is not None:
            stopped = restore(timeline, unfinished.facts, gone_ms)
            facts = handle(timeline, stopped, Stop(), gone_ms)[1]
        self._keeper.recall(unfinished.header, unfinished.prescribed, unfinished.facts)
        self._keeper.append(unfinished.header.run_id, len(unfinished.facts), facts)

    def leave(self) -> None:
        """Let the run go; one that is not over is abandoned, every finished rep kept."""
        session, self.session = self.session, None
        if session is None:
            return
        self.ticker.stop()
        self._awake.hold(wanted=False)
        self._tidying.end()
        session.close()
        session.moved.disconnect(self._on_moved)

    def close(self) -> None:
        """Leave, and let the computer sleep again."""
        try:
            self.leave()
        finally:
            self._awake.close()

    def _lead(
        self,
        timeline: Timeline,
        name: str,
        new_header: Callable[[], RunHeader],
        written: Sequence[Fact] = (),
        folder: Path | None = None,
    ) -> None:
        speaker, clock = self._house.choose_speaker(), self._house.make_clock()
        write = RunWriter(self._keeper, new_header, prescriptions(timeline))
        sound = self._house.make_sound(timeline, speaker, clock)
        self.session = RunSession(timeline, clock, speaker, sound, write, written)
        self.session.folder = folder
        self.session.moved.connect(self._on_moved)
        self.athlete, self.fresh, self._write = name, not written, write
        self.ticker.start()
        self._tidying.begin()
        self.began.emit()

    def _on_moved(self, facts: tuple[Fact, ...]) -> None:
        if self.session is not None:
            self._awake.hold(wanted=self.session.controller.state.stand is Stand.RUNNING)
        run_id = None if self._write is None else self._write.run_id
        if run_id is not None and any(isinstance(fact, RunBegan) for fact in facts):
            self.under_way.emit(run_id)
        if any(isinstance(fact, BoutEnded) for fact in facts):
            QTimer.singleShot(0, self._tidying.between)
