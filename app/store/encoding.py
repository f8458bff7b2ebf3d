"""Facts as bytes: a version byte, then for each fact its tag and fields, times and numbers as differences.

A fact whose bout, attempt, side and rep are the ones to be expected says so by a mark on its tag, so that a
rep costs about eight bytes. Tags and the order of the lists below are the format: they may be added to, never
changed.
"""

from collections.abc import Sequence
from typing import Any

from app.domain.plan import Side
from app.domain.records import (
    BoutBegan,
    BoutChosen,
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    FaultMarked,
    LoadUsed,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
    TakenBack,
)
from app.store.pieces import Answer, Choice, Field, Number, Piece, Text, Time, fold_sign, unfold_sign

FORMAT = 1

_TIME, _NUMBER, _ANSWER, _TEXT, _SOME_TEXT = Time(), Number(), Answer(), Text(), Text(wanted=True)
_SIDES = (Side.LEFT, Side.RIGHT, Side.BOTH)
_BOUT_OUTCOME = Choice(
    (BoutOutcome.DONE, BoutOutcome.ENDED_EARLY, BoutOutcome.SKIPPED, BoutOutcome.BROKEN_OFF)
)
_RUN_OUTCOME = Choice((RunOutcome.FINISHED, RunOutcome.ABANDONED))
_PAUSE = Choice((PauseReason.ASKED, PauseReason.INTERRUPTED))
_SKIP = Choice((None, SkipReason.PAIN, SkipReason.EQUIPMENT, SkipReason.TIME, SkipReason.OTHER))

_Fields = tuple[tuple[str, Field], ...]
_Shape = tuple[type[Fact], tuple[str, ...], _Fields]
_AT: tuple[str, Field] = ("at_ms", _TIME)
_OF_BOUT = ("bout", "attempt")
_OF_REP = ("bout", "attempt", "side", "rep")

_SHAPES: dict[int, _Shape] = {
    1: (RunBegan, (), (_AT,)),
    2: (BoutBegan, _OF_BOUT, (_AT,)),
    3: (RepDone, _OF_REP, (("start_ms", _TIME), _AT, ("late_ms", _NUMBER))),
    4: (RepMissed, _OF_REP, (_AT,)),
    5: (FaultMarked, _OF_REP, (_AT, ("fault", _TEXT))),
    6: (BoutEnded, _OF_BOUT, (_AT, ("outcome", _BOUT_OUTCOME), ("reason", _SKIP), ("note", _TEXT))),
    7: (
        BoutRated,
        _OF_BOUT,
        (_AT, ("reps", _ANSWER), ("rpe", _ANSWER), ("pain", _ANSWER), ("note", _TEXT)),
    ),
    8: (Paused, (), (_AT, ("reason", _PAUSE))),
    9: (Resumed, (), (_AT,)),
    10: (RestExtended, ("bout",), (_AT, ("by_ms", _NUMBER))),
    11: (RunEnded, (), (_AT, ("outcome", _RUN_OUTCOME))),
    12: (SessionRated, (), (_AT, ("rpe", _ANSWER), ("lag_ms", _ANSWER), ("note", _TEXT))),
    13: (LoadUsed, _OF_BOUT, (_AT, ("load_kg", _SOME_TEXT))),
    14: (TakenBack, _OF_BOUT, (_AT,)),
    15: (BoutChosen, ("bout",), (_AT,)),
}
_TAGS: dict[type[Fact], int] = {kind: tag for tag, (kind, _, _) in _SHAPES.items()}
_AS_EXPECTED = 0x10
"""Added to a tag: bout, attempt and side are those before, and the rep comes after the last one recorded."""

_RECORDS_A_REP = {3, 4}


def encode(facts: Sequence[Fact]) -> bytes:
    """The bytes of some facts, in order."""
    piece = Piece(bytearray((FORMAT,)))
    for fact in facts:
        tag = _TAGS[type(fact)]
        _, names, fields = _SHAPES[tag]
        place = _place(fact, names)
        expected = _expected(piece, names)
        as_expected = place == expected and bool(names)
        piece.put(tag | _AS_EXPECTED if as_expected else tag)
        if not as_expected:
            for name in names:
                piece.put(fold_sign(place[name] - expected[name]))
        _remember(piece, tag, place)
        for name, kind in fields:
            kind.write(piece, getattr(fact, name))
    return bytes(piece.data)


def decode(body: bytes) -> tuple[Fact, ...]:
    """The facts in some bytes. Raises ValueError when the bytes are not what `encode` gives."""
    if body[:1] != bytes((FORMAT,)):
        raise ValueError("facts of an unknown format")
    piece = Piece(bytearray(body), 1)
    facts: list[Fact] = []
    while piece.at < len(piece.data):
        marked = piece.take()
        tag = marked & ~_AS_EXPECTED
        if tag not in _SHAPES:
            raise ValueError(f"there is no fact {tag}")
        kind, names, fields = _SHAPES[tag]
        place = _expected(piece, names)
        if not marked & _AS_EXPECTED:
            place = {name: value + unfold_sign(piece.take()) for name, value in place.items()}
        _remember(piece, tag, place)
        said = {name: shape.read(piece) for name, shape in fields}
        facts.append(kind(**_named(place), **said))
    return tuple(facts)


def _place(fact: Fact, names: Sequence[str]) -> dict[str, int]:
    """Which bout, attempt, side and rep a fact is about, the side by its place in the list."""
    place = {name: getattr(fact, name) for name in names}
    if "side" in place:
        place["side"] = _SIDES.index(place["side"])
    return place


def _named(place: dict[str, int]) -> dict[str, Any]:
    if "side" not in place:
        return dict(place)
    if not 0 <= place["side"] < len(_SIDES):
        raise ValueError(f"there is no side {place['side']}")
    return {**place, "side": _SIDES[place["side"]]}


def _expected(piece: Piece, names: Sequence[str]) -> dict[str, int]:
    return {name: piece.place[name] + (1 if name == "rep" else 0) for name in names}


def _remember(piece: Piece, tag: int, place: dict[str, int]) -> None:
    """A rep is passed once it is recorded; a fault marked within it leaves it to come."""
    for name, value in place.items():
        if name != "rep" or tag in _RECORDS_A_REP:
            piece.place[name] = value
    if tag == _TAGS[BoutBegan]:
        piece.place["rep"] = 0
