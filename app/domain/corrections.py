"""Corrections: what somebody said later of what was written down, and which of them holds.

Nothing is written over. A correction names those it was made in the knowledge of (`replaces`). Two that know
nothing of each other, as when two copies of a record are put together, are both kept, and are in conflict
until one is made that knows of both.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from app.domain.checks import moment, short_text
from app.domain.correctable import PARTS, Subject, Value, check_value
from app.domain.plan import Side


@dataclass(frozen=True, slots=True)
class Target:
    """What is corrected: `of` is the UUID of the run for a run, its bouts and reps, else of the thing itself.

    A bout is named by `bout` and `attempt`, a rep by `rep` and `side` too. Raises ValueError for parts that
    do not fit the subject.
    """

    subject: Subject
    of: str
    bout: int | None = None
    attempt: int | None = None
    rep: int | None = None
    side: Side | None = None

    def __post_init__(self) -> None:
        given = {name for name in ("bout", "attempt", "rep", "side") if getattr(self, name) is not None}
        if given != PARTS.get(self.subject, frozenset()):
            raise ValueError(f"a {self.subject} is not named by {', '.join(sorted(given)) or 'nothing'}")


@dataclass(frozen=True, slots=True)
class Change:
    """A correction that somebody wants: what, to which value, who, when and why.

    Raises ValueError when the field cannot have the value, or nobody or no reason is named.
    """

    target: Target
    field: str
    after: Value
    who: str
    why: str
    at: datetime
    zone: str

    def __post_init__(self) -> None:
        check_value(self.target.subject, self.field, self.after)
        short_text("who", self.who, wanted=True)
        short_text("why", self.why, wanted=True)
        moment("at", self.at)


@dataclass(frozen=True, slots=True)
class Correction:
    """A change as it was written down: `before` is what held until then, `replaces` what it was made knowing.

    `id` is a UUIDv7 as text.
    """

    id: str
    change: Change
    before: Value
    replaces: tuple[str, ...] = ()

    @property
    def key(self) -> "Key":
        """What is corrected, and which field of it."""
        return self.change.target, self.change.field

    @property
    def after(self) -> Value:
        """The value since."""
        return self.change.after


Key = tuple[Target, str]


@dataclass(frozen=True, slots=True)
class Conflict:
    """Corrections of one field that know nothing of each other and differ: `holds` does, `others` do not."""

    holds: Correction
    others: tuple[Correction, ...]


@dataclass(frozen=True, slots=True)
class History:
    """All corrections of something in the order of (when, id), those that hold, and the conflicts."""

    corrections: tuple[Correction, ...]
    holding: Mapping[Key, Correction]
    conflicts: tuple[Conflict, ...]

    def holds(self, correction: Correction) -> bool:
        """Whether a correction gives the value of its field today."""
        return self.holding.get(correction.key) == correction


def history(corrections: Iterable[Correction]) -> History:
    """What a set of corrections comes to; their order, and how often one is given, make no difference.

    Of the corrections of one field that no other replaces, the latest by (when, id) holds.
    """
    ordered = tuple(sorted({each.id: each for each in corrections}.values(), key=_moment))
    by_key: defaultdict[Key, list[Correction]] = defaultdict(list)
    for each in ordered:
        by_key[each.key].append(each)
    ends = {key: open_ends(found) for key, found in by_key.items()}
    holding = {key: found[-1] for key, found in ends.items()}
    conflicts = []
    for key, found in ends.items():
        others = tuple(each for each in found if each.after != holding[key].after)
        if others:
            conflicts.append(Conflict(holding[key], others))
    return History(ordered, holding, tuple(conflicts))


def open_ends(corrections: Iterable[Correction]) -> tuple[Correction, ...]:
    """Those of one field's corrections that no other replaces, in the order of (when, id).

    Corrections that replace each other in a circle, which nobody makes by hand, all count as open.
    """
    given = tuple(sorted(corrections, key=_moment))
    replaced = {name for each in given for name in each.replaces if name != each.id}
    return tuple(each for each in given if each.id not in replaced) or given


def undoing(correction: Correction, who: str, why: str, at: datetime, zone: str) -> Change:
    """The further correction that takes one back: to what held before it."""
    change = correction.change
    return Change(change.target, change.field, correction.before, who, why, at, zone)


def _moment(correction: Correction) -> tuple[datetime, str]:
    return correction.change.at, correction.id
