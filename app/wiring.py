"""The one place that builds the object graph: which folder, which store, which speaker."""

import os
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, cast
from zoneinfo import ZoneInfo

import app
from app.domain.athlete import Athlete
from app.domain.errors import UsageError
from app.domain.plan import WrittenPlan
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.domain.timeline import Timeline
from app.store import places

if TYPE_CHECKING:
    from app.audio.bout_sound import Manner
    from app.audio.clocks import Clock
    from app.audio.room_sound import RoomSound
    from app.audio.run_sound import RunSound
    from app.audio.speaker.choice import Preference
    from app.audio.speaker.port import Speaker
    from app.audio.trial import Trial
    from app.domain.group import GroupSession
    from app.domain.group_record import GroupMember, GroupRecord
    from app.domain.grouping import Grouping
    from app.planfile.settings import Settings
    from app.planfile.settings_edit import Changes
    from app.run.group_journal import GroupJournal
    from app.run.room_pen import RoomPen
    from app.store.backup import BackedUp
    from app.store.database import Database

DATA_VARIABLE = "PACEWRIGHT_DATA"
STATE_VARIABLE = "PACEWRIGHT_STATE"
DATABASE_NAME = places.DATABASE_NAME
SETTINGS_NAME = "settings.toml"


def resources_folder() -> Path:
    """Where fonts, icons and licences lie: beside the package in a checkout, inside it when installed."""
    return _carried("resources")


def demo_folder() -> Path:
    """Where the invented club's plans and roster lie."""
    return _carried("demo_data")


def _carried(name: str) -> Path:
    package = Path(app.__file__).resolve().parent
    inside = package / f"_{name}"
    return inside if inside.is_dir() else package.parent / name


def data_folder(asked: Path | None = None, environment: Mapping[str, str] | None = None) -> Path:
    """Where the record is kept: as asked, else PACEWRIGHT_DATA says, else the user's data folder."""
    if asked is not None:
        return asked
    named = (os.environ if environment is None else environment).get(DATA_VARIABLE)
    if named:
        return Path(named)
    import platformdirs

    return Path(platformdirs.user_data_dir("pacewright", appauthor=False))


def state_folder(environment: Mapping[str, str] | None = None) -> Path:
    """Where things wait that the data folder cannot take: as PACEWRIGHT_STATE says, else the user's own."""
    named = (os.environ if environment is None else environment).get(STATE_VARIABLE)
    if named:
        return Path(named)
    import platformdirs

    return Path(platformdirs.user_state_dir("pacewright", appauthor=False))


def database_file(asked: Path | None = None) -> Path:
    """The database: as asked, else in the data folder."""
    return asked if asked is not None else data_folder() / DATABASE_NAME


def open_record(path: Path, *, read_only: bool = False) -> "Database":
    """The record in a file, made when it is not there. Raises StoreError when it cannot be had."""
    from app.store.database import open_database

    return open_database(path, read_only=read_only, spare=state_folder())


def back_up_record(path: Path) -> "BackedUp":
    """See that the record in a file has a backup of today's state beside it. Raises StoreError."""
    from app.store.backup import back_up

    return back_up(path, places.backup_folder(path), now())


def now() -> datetime:
    """The present moment, in UTC."""
    return datetime.now(UTC)


def stamp() -> tuple[datetime, str]:
    """The present moment, in UTC, and the name of this machine's time zone."""
    return now(), local_zone_name()


def read_plan(path: Path) -> WrittenPlan:
    """The plan in a file, and its text. Raises FileProblemsError."""
    from app.planfile.reader import parse_plan
    from app.planfile.source import read_text

    text = read_text(path)
    return WrittenPlan(parse_plan(text, str(path), path.parent), text, str(path.parent))


def parse_plan(text: str) -> WrittenPlan:
    """A plan from the text that was kept of it. Raises FileProblemsError when it is no plan any more."""
    from app.planfile.reader import parse_plan as parse

    return WrittenPlan(parse(text, "the plan as it was", None), text)


def read_athletes(roster: Path) -> tuple[Athlete, ...]:
    """Everybody in a roster. Raises FileProblemsError."""
    from app.planfile.roster import read_roster

    return read_roster(roster)


def make_clock() -> "Clock":
    """The machine's own clock."""
    from app.audio.clocks import MonotonicClock

    return MonotonicClock()


def settings_file() -> Path:
    """Where the settings are written."""
    return data_folder() / SETTINGS_NAME


def read_settings() -> "Settings":
    """The person's settings. Raises FileProblemsError."""
    from app.planfile.settings import read_settings as read

    return read(settings_file())


def save_settings(changes: "Changes") -> None:
    """Write single settings into the person's file. Raises PacewrightError."""
    from app.planfile.settings_edit import save_settings as save

    save(settings_file(), changes)


def make_sound(timeline: Timeline, speaker: "Speaker", clock: "Clock", settings: "Settings") -> "RunSound":
    """The sound of a run, as the settings say."""
    from app.audio.run_sound import RunSound
    from app.audio.voice import Voice

    return RunSound(timeline, speaker, clock, Voice(settings.language), _manner(settings))


def make_room_sound(
    session: "GroupSession",
    speaker: "Speaker",
    clock: "Clock",
    settings: "Settings",
    *,
    apart: bool = False,
) -> "RoomSound":
    """The sound of a group session's leading clock, as the settings say.

    People are called by their short names, else by the first word of their names. `apart` puts each wave
    into a speaker of its own.
    """
    from app.audio.room_score import RoomScore
    from app.audio.room_sound import RoomSound
    from app.audio.run_sound import RunSound
    from app.audio.voice import Voice
    from app.domain.cue_room import RoomEar
    from app.domain.cue_words import TONGUES

    manner = _manner(settings)
    people = [part.athlete for part in session.parts]
    names = {place: each.short or each.name.split(maxsplit=1)[0] for place, each in enumerate(people)}
    ear = RoomEar(names, level=manner.level, tongue=TONGUES[manner.language])
    score = RoomScore(session, ear, apart)
    voice = Voice(settings.language)
    return RoomSound(RunSound(session.leader, speaker, clock, voice, manner), score)


def make_trial(settings: "Settings") -> "Trial":
    """A short invented bout, as the settings say."""
    from app.audio.trial import Trial
    from app.audio.voice import Voice

    return Trial(choose_speaker(settings), Voice(settings.language), _manner(settings))


def list_devices() -> tuple[str, ...]:
    """Names of the outputs that a person can choose from."""
    from app.audio.speaker.mini import list_devices as look

    return look()


def _manner(settings: "Settings") -> "Manner":
    from app.audio.bout_sound import Manner
    from app.audio.track import Volumes

    volumes = Volumes(settings.tones, settings.voice)
    return Manner(settings.cues, settings.language, volumes, settings.mute)


def choose_speaker(settings: "Settings") -> "Speaker":
    """The best speaker that can be had of those asked for; silence, with a notice, where there is none."""
    from app.audio.speaker.choice import choose_speaker as choose

    preference = cast("Preference", settings.speaker)
    return choose(preference, device=settings.device, latency_ms=settings.latency_ms)


def find_athlete(name: str, roster: Path | None) -> "Athlete":
    """An athlete of a roster by name; without a roster a person of that name with nothing of their own.

    Raises UsageError when the roster does not have the name.
    """
    if roster is None:
        return Athlete(name)
    athletes = {athlete.name: athlete for athlete in read_athletes(roster)}
    if name not in athletes:
        raise UsageError(f"{name} is not in {roster}; it has {', '.join(athletes)}.")
    return athletes[name]


def new_run_id(at: datetime) -> str:
    """A fresh UUIDv7 for a run that begins at a time, or for what is said at it."""
    from app.store.identity import uuid7

    return str(uuid7(int(at.timestamp() * 1000), os.urandom(10)))


def local_zone_name() -> str:
    """The name of this machine's time zone, `UTC` when it cannot be told."""
    link = Path("/etc/localtime")
    for candidate in (os.environ.get("TZ", ""), _zone_of(link)):
        if candidate and _known_zone(candidate):
            return candidate
    return "UTC"


def _zone_of(link: Path) -> str:
    try:
        target = str(link.resolve())
    except OSError:
        return ""
    return target.partition("/zoneinfo/")[2]


def _known_zone(name: str) -> bool:
    try:
        ZoneInfo(name)
    except (ValueError, OSError, KeyError):
        return False
    return True


def new_header(athlete: str, written: WrittenPlan, *, invented: bool = False) -> RunHeader:
    """The header of a run that begins now."""
    began = now()
    return RunHeader(
        new_run_id(began), athlete, written.plan.title, written.text, began, local_zone_name(), invented
    )


def new_group(session: "GroupSession", grouping: "Grouping") -> "GroupRecord":
    """A group session that begins now: a name for it, and one for the run of each athlete."""
    from app.domain.group_record import GroupMember, GroupRecord, grouping_text, member_text

    began = now()
    members = tuple(
        GroupMember(
            new_run_id(began),
            place,
            part.athlete.name,
            new_run_id(began),
            member_text(part.athlete, part.team),
        )
        for place, part in enumerate(session.parts)
    )
    return GroupRecord(
        new_run_id(began),
        grouping.form,
        grouping_text(grouping, session),
        began,
        local_zone_name(),
        members,
    )


def new_member_header(member: "GroupMember", written: WrittenPlan, *, invented: bool = False) -> RunHeader:
    """The header of a run of a group session that begins now, under the name kept for it."""
    return replace(new_header(member.athlete, written, invented=invented), run_id=member.run_id)


def take_up_group(
    database: "Database",
    group: "GroupRecord",
    journal: "GroupJournal",
    now_ms: int,
    recall: Callable[[RunHeader, Sequence[BoutPrescribed], Sequence[Fact]], None] | None = None,
) -> "RoomPen":
    """A group session that has no end yet, standing still where it was, to be led on from `now_ms`.

    `recall` is told of each run that goes on, as a steady journal wants it. Raises StoreError when it cannot
    be read, FileProblemsError when its plan is no plan any more.
    """
    from app.domain.group_record import session_of
    from app.domain.prescription import prescriptions
    from app.run.room_controller import RoomController
    from app.run.room_pen import RoomPen

    members = sorted(group.members, key=lambda member: member.place)
    there = database.queries.run_ids()
    headers = {
        each.run_id: database.queries.header_of(each.run_id) for each in members if each.run_id in there
    }
    written = parse_plan(next(iter(headers.values())).plan_text)
    invented = any(header.invented for header in headers.values())
    facts = [database.queries.facts_of(each.run_id) for each in members]
    session = session_of(written.plan, group)
    for member, part, theirs in zip(members, session.parts, facts, strict=True):
        if recall is not None and theirs:
            recall(headers[member.run_id], prescriptions(part.timeline), theirs)
    room = RoomController.taken_up(session, facts, now_ms)

    def header_of(member: "GroupMember") -> RunHeader:
        return headers.get(member.run_id) or new_member_header(member, written, invented=invented)

    return RoomPen(room, journal, group, header_of, kept=True)
