"""What the coach's console says, as pure functions."""

from collections.abc import Sequence

from app.domain.fold import fold_run
from app.domain.group import GroupSession
from app.domain.records import (
    BoutChosen,
    BoutOutcome,
    Fact,
    FaultMarked,
    RepMissed,
    RunEnded,
    RunOutcome,
)
from app.domain.units import clock_text
from app.run.intents import MarkMissed, SkipExercise
from app.run.room import RoomState
from app.run.room_intents import Arrive, Depart, ForOne, RoomIntent
from app.run.state import Doing, Stand
from app.views.athlete.wording import bout_line, time_left, whole_seconds
from app.views.group.coach_keys import REASONS, Keys, Wait, key_of
from app.views.group.people_table import Line
from app.views.group.scene import RoomScene, Someone, Standing
from app.views.group.wording import about, change_line, room_headline, round_line, seconds_left, then_line
from app.views.theme import Scheme
from app.views.translation import message, tr

REASON_WORDS = dict(
    zip(REASONS, (message("pain"), message("equipment"), message("time"), message("other")), strict=True)
)
AWAY = (Standing.ABSENT, Standing.GONE, Standing.SITS_OUT)


def line_of(member: int, someone: Someone, facts: Sequence[Fact], *, ready: bool) -> Line:
    """One person in the coach's list."""
    here = tr("here") if ready and someone.standing is not Standing.ABSENT else about(someone)
    words = here or tr("rests")
    return Line(key_of(member), someone.name, words, _last_mark(facts), someone.standing in AWAY)


def _last_mark(facts: Sequence[Fact]) -> str:
    for fact in reversed(facts):
        if isinstance(fact, FaultMarked):
            fault = fact.fault or tr("a fault")
            return tr("rep {n}: {fault}").format(n=fact.rep, fault=fault)
        if isinstance(fact, RepMissed):
            return tr("rep {n}: not done").format(n=fact.rep)
    return ""


def now_line(scene: RoomScene, scheme: Scheme) -> str:
    """What the room does now, in a line."""
    shown = scene.leader
    if shown.stand is Stand.READY:
        return tr("Not begun")
    if shown.stand is Stand.ENDED:
        return tr("Over")
    if shown.stand is Stand.PAUSED:
        return tr("Paused")
    if scene.stations:
        return f"{change_line(scene)} {clock_text(seconds_left(scene) * 1000)}"
    if shown.doing is Doing.GAP:
        return tr("Rest, {time} left").format(time=clock_text(whole_seconds(shown.gap_left_ms or 0) * 1000))
    shows = room_headline(scene, scheme)
    phase = " ".join(filter(None, (shows.phase_text, shows.seconds_text)))
    count = " ".join(filter(None, (shows.count_text, shows.of_text)))
    return "  ·  ".join(filter(None, (shows.side_text, phase, count)))


def following_line(scene: RoomScene) -> str:
    """What comes after the slot, or what the room waits for."""
    shown = scene.leader
    if scene.stations or shown.stand is Stand.ENDED:
        return ""
    if shown.stand is Stand.READY or shown.doing is Doing.GAP:
        return tr("Next: {bout}").format(bout=bout_line(shown.timeline, shown.bout))
    return then_line(scene)


def chosen_line(keys: Keys) -> str:
    """What is waited for of somebody who is chosen."""
    waits = {
        Wait.REASON_FOR_ONE: message("sits out: why?"),
        Wait.GONE: message("leaves for good: L once more"),
    }
    return tr(waits.get(keys.wait, message("chosen")))


def asked_line(keys: Keys) -> str:
    """What is asked before it is done for everybody."""
    asks = {
        Wait.STOP: message("Stop for everybody?"),
        Wait.LEAVE: message("Leave, and stop for everybody?"),
        Wait.REASON_FOR_ALL: message("Leave out: why?"),
    }
    return tr(asks[keys.wait]) if keys.wait in asks else ""


def said_back(intent: RoomIntent, new: Sequence[Fact], before: RoomState, after: RoomState) -> str:
    """What came of an intent about one person, said back to the coach."""
    if isinstance(intent, Arrive):
        return _arrived(intent.member, new, before, after)
    if isinstance(intent, Depart):
        return tr("is not here") if after.leader.stand is Stand.READY else tr("has gone")
    marked = _last_mark(new)
    if marked:
        return marked
    if isinstance(intent, ForOne) and isinstance(intent.intent, MarkMissed):
        missed = after.members[intent.member].missed
        return tr("this rep is not done") if missed else tr("no rep is under way")
    if isinstance(intent, ForOne) and isinstance(intent.intent, SkipExercise) and new:
        return tr("sits out")
    return tr("marked already, or nothing to mark")


def _arrived(member: int, new: Sequence[Fact], before: RoomState, after: RoomState) -> str:
    if after.leader.stand is Stand.READY:
        return tr("is here")
    if new:
        return tr("joins with the next bout")
    too_late = before.members[member].stand in (Stand.READY, Stand.ENDED)
    return tr("cannot join any more") if too_late else tr("is here already")


def last_worked(facts: Sequence[Fact]) -> int | None:
    """The bout that somebody worked in last, of which they are asked for pain; none where they did not."""
    bouts = [record.bout for record in fold_run(facts) if record.outcome is not BoutOutcome.SKIPPED]
    return bouts[-1] if bouts else None


def done_words(done: int, asked: int, facts: Sequence[Fact]) -> str:
    """How much of their session somebody did, and why it is not the whole."""
    counted = tr("{n} of {m}").format(n=done, m=asked)
    if any(isinstance(fact, BoutChosen) for fact in facts[:2]):
        return tr("{counted}, came late").format(counted=counted)
    if _abandoned(facts):
        return tr("{counted}, cut short").format(counted=counted)
    return tr("{counted}, partly").format(counted=counted) if done < asked else counted


def _abandoned(facts: Sequence[Fact]) -> bool:
    return any(isinstance(fact, RunEnded) and fact.outcome is RunOutcome.ABANDONED for fact in facts)


def place_line(scene: RoomScene) -> str:
    """Where in the session the room is."""
    shown = scene.leader
    if scene.stations:
        return round_line(scene)
    bout = bout_line(shown.timeline, shown.bout)
    place = tr("{n} of {m}: {bout}").format(n=scene.slot + 1, m=scene.slots, bout=bout)
    return f"{place}  ·  {time_left(shown)}"


def hint(keys: Keys, names: Sequence[str], faults: Sequence[str], stand: Stand) -> str:  # noqa: PLR0911
    """What the next key means."""
    name = "" if keys.member is None else names[keys.member]
    reasons = "   ".join(f"{number} {tr(REASON_WORDS[reason])}" for number, reason in enumerate(REASONS, 1))
    if keys.wait is Wait.LEAVE:
        return tr("Enter leaves, and ends the session for everybody. Any other key goes on.")
    if keys.wait is Wait.GONE:
        return tr("L once more: {name} leaves for good. Any other key goes on.").format(name=name)
    if keys.wait is Wait.STOP:
        return tr("S once more ends the session for everybody. Any other key goes on.")
    if keys.wait is Wait.REASON_FOR_ALL:
        return tr("Leave out this exercise for all. Why?   {reasons}").format(reasons=reasons)
    if keys.wait is Wait.REASON_FOR_ONE:
        return tr("{name} sits out this exercise. Why?   {reasons}").format(name=name, reasons=reasons)
    if keys.wait is Wait.ACTION:
        return _about_one(name, faults, stand)
    if stand is Stand.READY:
        return tr("Somebody's key, then Enter: here or not.   / finds a name.   Space begins.")
    return tr(
        "Somebody's key, then: F a fault, M a missed rep, O sits out, L leaves, Y a note.   Space pauses."
    )


def _about_one(name: str, faults: Sequence[str], stand: Stand) -> str:
    if stand is Stand.READY:
        return tr("{name}:   Enter here or not   Y note").format(name=name)
    named = "   ".join(f"{number} {fault}" for number, fault in enumerate(faults[:9], 1))
    words = tr("{name}:   {faults}   F fault   M missed   O sits out   L leaves   Enter is here   Y note")
    return words.format(name=name, faults=named)


def here_line(session: GroupSession, present: Sequence[bool]) -> str:
    """How many are here."""
    return tr("{n} of {m} here").format(n=sum(present), m=len(session.parts))
