"""Pain: its zones, its course by day, and whether it had settled by the next morning."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from app.domain.readiness import Readiness
from app.domain.reviewed import ReviewedSession

SAFE_TO, CAUTION_TO = 2, 5


class Zone(StrEnum):
    """A zone of pain on whole numbers: 0-2, 3-5, 6-10."""

    SAFE = "safe"
    CAUTION = "caution"
    STOP = "stop"


class Morning(StrEnum):
    """How pain was on the morning after."""

    SETTLED = "settled"
    NOT_SETTLED = "not_settled"
    NOT_ANSWERED = "not_answered"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class PainDay:
    """Pain of a local day, 0-10: before, highest in a session, the morning after; None is unknown.

    `trained` says that there was a session, `asked` that the next morning was asked after.
    """

    day: date
    before: int | None
    during: int | None
    next_morning: int | None
    trained: bool = False
    asked: bool = False

    @property
    def morning(self) -> Morning | None:
        """How it was on the morning after, by `morning_after`; None on a day without a session."""
        return morning_after(self.before, self.next_morning, asked=self.asked) if self.trained else None


def zone(pain: int | None) -> Zone | None:
    """The zone of a pain of 0-10; None when it is unknown.

    Zones after Thomee 1997 and Silbernagel et al. 2007, Am J Sports Med 35:897-906 (bounds from memory, and
    made whole numbers: 2 and 5 belong below). For tendon and kneecap pain; of no use in acute injury. Raises
    ValueError outside of 0-10.
    """
    if pain is None:
        return None
    if not 0 <= pain <= 10:
        raise ValueError("Pain is a whole number from 0 to 10.")
    if pain <= SAFE_TO:
        return Zone.SAFE
    return Zone.CAUTION if pain <= CAUTION_TO else Zone.STOP


def morning_after(baseline: int | None, next_morning: int | None, *, asked: bool = True) -> Morning:
    """Whether pain 0-10 had settled by the next morning: no higher than before the session.

    Where the pain before is not known, it has settled in the zone 0-2 and it is not known above. Rule: pain
    is to have subsided by the next morning (Thomee 1997, from memory).
    """
    if next_morning is None:
        return Morning.NOT_ANSWERED if asked else Morning.UNKNOWN
    if baseline is None:
        return Morning.SETTLED if next_morning <= SAFE_TO else Morning.UNKNOWN
    return Morning.SETTLED if next_morning <= baseline else Morning.NOT_SETTLED


def rising_two_weeks(weekly: Sequence[float | None]) -> bool | None:
    """Whether pain rose twice in a row over the last three weeks; None when one of them is unknown.

    Rule: pain is not to rise from week to week (Thomee 1997, from memory); twice is a choice.
    """
    last = weekly[-3:]
    first, second, third = last if len(last) == 3 else (None, None, None)
    if first is None or second is None or third is None:
        return None
    return first < second < third


def pain_course(
    sessions: Iterable[ReviewedSession], readiness: Iterable[tuple[date, Readiness]]
) -> tuple[PainDay, ...]:
    """Pain by local day, in order; readiness comes with its day, the earliest answer first.

    Before training the first answer of a day stands, of its sessions and mornings after the highest.
    """
    before: dict[date, int | None] = {}
    for day, answers in readiness:
        if before.get(day) is None:
            before[day] = answers.pain
    by_day: dict[date, list[ReviewedSession]] = {}
    for session in sessions:
        by_day.setdefault(session.day, []).append(session)
    return tuple(
        _pain_day(day, before.get(day), by_day.get(day, [])) for day in sorted(before.keys() | by_day.keys())
    )


def _pain_day(day: date, before: int | None, sessions: Sequence[ReviewedSession]) -> PainDay:
    return PainDay(
        day,
        before,
        _highest(each.pain for each in sessions),
        _highest(each.pain_next_morning for each in sessions),
        bool(sessions),
        any(each.next_morning_asked for each in sessions),
    )


def _highest(values: Iterable[int | None]) -> int | None:
    return max((value for value in values if value is not None), default=None)
