"""What the program on the screen needs from outside, handed in when it is opened."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime
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
    from app.audio.trial import Trial
    from app.domain.group import GroupSession
    from app.domain.group_choice import GroupChoice
    from app.planfile.key_settings import PedalKeys
    from app.planfile.settings import Settings
    from app.planfile.settings_edit import Changes
    from app.store.database import Database


def _no_backup() -> None:
    """A house without backups."""


@dataclass(frozen=True, slots=True)
class House:
    """Everything a window asks for. The callables are called when their thing is first needed.

    `read_plan` and `read_settings` raise FileProblemsError, `open_record` and `back_up_record` StoreError,
    both in the database's thread, `save_settings` PacewrightError; speakers never raise. `overrule` gives
    settings as they hold while the program is open: the words of the command go before those of the file.
    `stamp` gives the present moment and the name of the time zone; without it nothing can be corrected.
    `new_id` gives a fresh UUIDv7 for what is of a moment; without both nothing is asked before a session.
    `record` is the database's file, of which one window is open at a time; `state` the folder for what this
    computer remembers. Without them there may be several windows, and nothing is remembered.
    """

    fonts: Path
    translations: Path
    icon: Path
    plans: tuple[Path, ...]
    open_record: "Callable[[], Database]"
    choose_speaker: "Callable[[], Speaker]"
    make_clock: "Callable[[], Clock]"
    make_sound: "Callable[[Timeline, Speaker, Clock], Sounding]"
    read_plan: Callable[[Path], WrittenPlan]
    parse_plan: Callable[[str], WrittenPlan]
    read_athletes: Callable[[], tuple[Athlete, ...]]
    read_settings: "Callable[[], Settings]"
    overrule: "Callable[[Settings], Settings]"
    save_settings: "Callable[[Changes], None]"
    list_devices: Callable[[], tuple[str, ...]]
    try_speaker: "Callable[[Settings], Speaker]"
    make_trial: "Callable[[Settings], Trial]"
    new_header: Callable[[str, WrittenPlan], RunHeader]
    back_up_record: Callable[[], object] = _no_backup
    stamp: Callable[[], tuple[datetime, str]] | None = None
    new_id: Callable[[datetime], str] | None = None
    make_room_sound: "Callable[[GroupSession, Speaker, Clock], Sounding] | None" = None
    record: Path | None = None
    state: Path | None = None

    def room_sound(self, session: "GroupSession", speaker: "Speaker", clock: "Clock") -> "Sounding":
        """The sound of a group session; where none is made for rooms, that of its leading timeline."""
        if self.make_room_sound is None:
            return self.make_sound(session.leader, speaker, clock)
        return self.make_room_sound(session, speaker, clock)

    def trial(self) -> "Trial":
        """A trial of the sound as it is set. Raises FileProblemsError."""
        return self.make_trial(self.overrule(self.read_settings()))

    def keep_pedals(self, pedals: "PedalKeys") -> None:
        """Write down which keys of pedals were taught. Raises PacewrightError."""
        from app.planfile.settings_edit import keys_changes

        before = self.read_settings()
        self.save_settings(keys_changes(before, replace(before, keys=pedals)))


@dataclass(frozen=True, slots=True)
class Wish:
    """What the program is opened on: a session that has been read, for an athlete; or nothing yet.

    `plan` is the file it was read from; with `group` it is led by everybody in the roster in that way.
    """

    session: WrittenPlan | None = None
    athlete: str | None = None
    full_screen: bool = False
    plan: Path | None = None
    group: "GroupChoice | None" = None
