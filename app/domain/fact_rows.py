"""A fact as a row of plain values, and back: the open form of what happened, for any program to read."""

from dataclasses import fields
from enum import StrEnum
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
from app.domain.values import LONGEST_NAME, MOST_MS, Choice, Kind, Load, Plain, Row, Text, Whole

MOST_BOUTS = 100_000
MOST_REPS = 100_000
SCALE = Whole(0, 10)
"""Exertion and pain."""

FACT_WORDS: dict[str, type[Fact]] = {
    "run_began": RunBegan,
    "bout_began": BoutBegan,
    "rep_done": RepDone,
    "rep_missed": RepMissed,
    "fault_marked": FaultMarked,
    "bout_ended": BoutEnded,
    "bout_rated": BoutRated,
    "paused": Paused,
    "resumed": Resumed,
    "rest_extended": RestExtended,
    "run_ended": RunEnded,
    "session_rated": SessionRated,
    "taken_back": TakenBack,
    "bout_chosen": BoutChosen,
    "load_used": LoadUsed,
}
"""What happened, in a word, and the fact that it names."""

_WORDS = {kind: word for word, kind in FACT_WORDS.items()}

_TIME = Whole()
_LAPSE = Whole(-MOST_MS, MOST_MS)
_NAMED: dict[str, Kind] = {
    "at_ms": _TIME,
    "bout": Whole(0, MOST_BOUTS),
    "attempt": Whole(1, MOST_BOUTS),
    "rep": Whole(0, MOST_REPS),
    "side": Choice(tuple(Side)),
    "start_ms": _TIME,
    "late_ms": _LAPSE,
    "fault": Text(LONGEST_NAME),
    "reps": Whole(0, MOST_REPS),
    "rpe": SCALE,
    "pain": SCALE,
    "note": Text(),
    "by_ms": _LAPSE,
    "lag_ms": _LAPSE,
    "load_kg": Load(),
}
_WORDED: dict[tuple[type[Fact], str], type[StrEnum]] = {
    (BoutEnded, "outcome"): BoutOutcome,
    (BoutEnded, "reason"): SkipReason,
    (Paused, "reason"): PauseReason,
    (RunEnded, "outcome"): RunOutcome,
}
_UNKNOWN_ALLOWED = {
    (FaultMarked, "fault"),
    (BoutEnded, "reason"),
    (BoutEnded, "note"),
    *((BoutRated, name) for name in ("reps", "rpe", "pain", "note")),
    *((SessionRated, name) for name in ("rpe", "lag_ms", "note")),
}

FACT_KINDS: dict[str, Kind] = {
    **_NAMED,
    "outcome": Choice((*BoutOutcome, *RunOutcome)),
    "reason": Choice((*SkipReason, *PauseReason)),
}
"""What each field of a fact holds, by its name."""


def fact_row(fact: Fact) -> Row:
    """The row of a fact: `fact` names what happened, then the fields it has that are known."""
    said = {field.name: getattr(fact, field.name) for field in fields(fact)}
    known = {
        name: value.value if isinstance(value, StrEnum) else value
        for name, value in said.items()
        if value is not None
    }
    return {"fact": _WORDS[type(fact)], **known}


def fact_of(row: Row) -> Fact:
    """The fact of a row; cells of other columns, and of what is unknown, are None or left out.

    Raises ValueError with the name of the column and what would be right there.
    """
    word = row.get("fact")
    if not isinstance(word, str) or word not in FACT_WORDS:
        raise ValueError(f"fact must be one of {', '.join(FACT_WORDS)}")
    kind = FACT_WORDS[word]
    names = {field.name for field in fields(kind)}
    for name, value in row.items():
        if name != "fact" and name not in FACT_KINDS:
            raise ValueError("there is no such column in a fact")
        if name != "fact" and name not in names and value is not None:
            raise ValueError(f"{name} does not go with {word}")
    return kind(**{name: _field(kind, name, row.get(name)) for name in names})


def _field(kind: type[Fact], name: str, value: Plain) -> Any:  # noqa: ANN401 - each field has its own
    if value is None:
        if (kind, name) in _UNKNOWN_ALLOWED:
            return None
        raise ValueError(f"{name} is missing")
    try:
        if (kind, name) in _WORDED:
            words = _WORDED[kind, name]
            return words(Choice(tuple(words)).check(value))
        checked = _NAMED[name].check(value)
    except ValueError as error:
        raise ValueError(f"{name} {error}") from error
    return Side(str(checked)) if name == "side" else checked
