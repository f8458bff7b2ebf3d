"""The coach's keys: struck without looking down, people by a digit or letter of their own."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.records import SkipReason
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    MarkFault,
    MarkMissed,
    Pause,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
)
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.state import Stand

PEOPLE_KEYS = "1234567890BCDGIJPQRUWXZHLOY"
"""Who has which key, in the order of the roster, those that say what is meant of somebody last of all.

Those beyond are chosen with the arrow keys.
"""
CHOSEN_FOR_MS = 5_000
"""Somebody chosen by their key is meant by the next key for so long."""
REASONS = (SkipReason.PAIN, SkipReason.EQUIPMENT, SkipReason.TIME, SkipReason.OTHER)


class Asked(StrEnum):
    """What is asked for that is no intent of the room."""

    NOTE = "note"
    LOUDER = "louder"
    SOFTER = "softer"
    SWITCH = "switch"
    HEAR = "hear"
    LEAVE = "leave"


class Wait(StrEnum):
    """What the next key answers: nothing in particular, or a question."""

    NOTHING = "nothing"
    ACTION = "action"
    REASON_FOR_ONE = "reason_for_one"
    REASON_FOR_ALL = "reason_for_all"
    STOP = "stop"
    LEAVE = "leave"
    GONE = "gone"


@dataclass(frozen=True, slots=True)
class Keys:
    """What the keys stand at: somebody may be chosen, a question may be open since `since_ms`."""

    wait: Wait = Wait.NOTHING
    member: int | None = None
    since_ms: int = 0

    def at(self, now_ms: int) -> "Keys":
        """The same later: a choice that nobody followed up is forgotten, a question is not."""
        late = self.wait is Wait.ACTION and now_ms - self.since_ms > CHOSEN_FOR_MS
        return Keys() if late else self


@dataclass(frozen=True, slots=True)
class Moment:
    """What a key depends on: how the room stands, its slot, how many slots and people, faults by name."""

    stand: Stand
    slot: int
    slots: int
    people: int
    present: tuple[bool, ...]
    faults: tuple[str, ...]


Struck = tuple[Keys, RoomIntent | Asked | None]

_FOR_ALL: dict[str, RoomIntent] = {
    "T": ExtendRest(),
    "N": BeginNow(),
    "E": EndBout(),
    "A": RedoBout(),
    "\r": CountRep(),
}
_SPACE: dict[Stand, RoomIntent] = {
    Stand.READY: Begin(),
    Stand.RUNNING: Pause(),
    Stand.PAUSED: Resume(),
}
_ASKED = {"+": Asked.LOUDER, "=": Asked.LOUDER, "-": Asked.SOFTER, "V": Asked.SWITCH}


def key_of(member: int) -> str:
    """The key of somebody; nothing for those beyond the keys there are."""
    return PEOPLE_KEYS[member] if member < len(PEOPLE_KEYS) else ""


def strike(keys: Keys, key: str, moment: Moment, now_ms: int) -> Struck:  # noqa: PLR0911
    r"""What the keys stand at after one was struck, and what it asks for, if anything.

    `key` is a capital letter, a digit, a sign, `\r` for Enter, `\x1b` for Esc, `<` and `>` for the arrows to
    the left and the right. Space is never kept from the room by what else was struck.
    """
    keys = keys.at(now_ms)
    if key == " ":
        return Keys(), _SPACE.get(moment.stand)
    if key == "\x1b":
        return _back(keys, moment, now_ms)
    if keys.wait is Wait.LEAVE:
        return Keys(), Asked.LEAVE if key == "\r" else None
    if keys.wait is Wait.GONE and keys.member is not None:
        return Keys(), Depart(keys.member) if key == "L" else None
    if keys.wait is Wait.STOP:
        return (Keys(), Stop()) if key == "S" else (Keys(), None)
    if keys.wait in (Wait.REASON_FOR_ONE, Wait.REASON_FOR_ALL):
        return _reason(keys, key)
    if keys.wait is Wait.ACTION and keys.member is not None:
        followed = _action(keys.member, key, moment, now_ms)
        if followed is not None:
            return followed
    return _plain(key, moment, now_ms)


def _back(keys: Keys, moment: Moment, now_ms: int) -> Struck:
    """Esc: out of what was chosen or asked, then out of the session, which is asked while it goes on."""
    if keys.wait is not Wait.NOTHING and moment.stand is not Stand.ENDED:
        return Keys(), None
    if moment.stand in (Stand.RUNNING, Stand.PAUSED):
        return Keys(Wait.LEAVE, None, now_ms), None
    return Keys(), Asked.LEAVE


def _plain(key: str, moment: Moment, now_ms: int) -> Struck:
    member = PEOPLE_KEYS.find(key) if key else -1
    if 0 <= member < moment.people:
        return Keys(Wait.ACTION, member, now_ms), None
    if key in _ASKED:
        return Keys(), _ASKED[key]
    if moment.stand not in (Stand.RUNNING, Stand.PAUSED):
        return Keys(), None
    if key in ("S", "K"):
        return Keys(Wait.STOP if key == "S" else Wait.REASON_FOR_ALL, None, now_ms), None
    return Keys(), _turn(key, moment) if key in ("<", ">") else _FOR_ALL.get(key)


def _turn(key: str, moment: Moment) -> RoomIntent | None:
    slot = moment.slot + (1 if key == ">" else -1)
    return GoToSlot(slot) if 0 <= slot < moment.slots else None


def _action(member: int, key: str, moment: Moment, now_ms: int) -> Struck | None:
    """The key after somebody's: what is marked, or who they are to the session; None where it is neither."""
    if key.isdigit() and 1 <= int(key) <= len(moment.faults):
        return Keys(), ForOne(member, MarkFault(moment.faults[int(key) - 1]))
    if key == "O":
        return Keys(Wait.REASON_FOR_ONE, member, now_ms), None
    if key in ("Y", "H"):
        return Keys(Wait.ACTION, member, now_ms), Asked.NOTE if key == "Y" else Asked.HEAR
    if key == "L" and moment.stand is not Stand.READY:
        return Keys(Wait.GONE, member, now_ms), None
    intents: dict[str, RoomIntent] = {
        "F": ForOne(member, MarkFault()),
        "M": ForOne(member, MarkMissed()),
        "L": Depart(member),
        "\r": Depart(member) if moment.stand is Stand.READY and moment.present[member] else Arrive(member),
    }
    return (Keys(), intents[key]) if key in intents else None


def _reason(keys: Keys, key: str) -> Struck:
    if not (key.isdigit() and 1 <= int(key) <= len(REASONS)):
        return Keys(), None
    skip = SkipExercise(REASONS[int(key) - 1])
    if keys.wait is Wait.REASON_FOR_ALL or keys.member is None:
        return Keys(), skip
    return Keys(), ForOne(keys.member, skip)
