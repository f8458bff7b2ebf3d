"""What the program on the screen needs from outside, handed in when it is opened."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from app.domain.athlete import Athlete
from app.domain.plan import WrittenPlan
from app.domain.records import RunHeader
from app.domain.timeline import Timeline
from app.run.sounding import Sounding

if TYPE_CHECKING:
    from app.audio.clocks import Clock
    from app.audio.speaker.port import Speaker
    from app.store.database import Database


@dataclass(frozen=True, slots=True)
class House:
    """Everything a window asks for. The callables are called when their thing is first needed.

    `read_plan` raises FileProblemsError, `open_record` StoreError, `save_latency` PacewrightError; the
    speaker never raises.
    """

    fonts: Path
    distance_m: float
    icon: Path
    plans: tuple[Path, ...]
    open_record: "Callable[[], Database]"
    choose_speaker: "Callable[[], Speaker]"
    make_clock: "Callable[[], Clock]"
    make_sound: "Callable[[Timeline, Speaker, Clock], Sounding]"
    read_plan: Callable[[Path], WrittenPlan]
    parse_plan: Callable[[str], WrittenPlan]
    read_athletes: Callable[[], tuple[Athlete, ...]]
    save_latency: Callable[[str, int], None]
    new_header: Callable[[str, WrittenPlan], RunHeader]


@dataclass(frozen=True, slots=True)
class Wish:
    """What the program is opened on: a session that has been read, for an athlete; or nothing yet."""

    session: WrittenPlan | None = None
    athlete: str | None = None
    full_screen: bool = False
