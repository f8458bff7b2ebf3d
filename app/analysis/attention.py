"""Who needs the practitioner first, by stated rules with their numbers. None of them advances anybody."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from app.analysis.reasons import DEFAULT_LIMITS, Level, Limits, Reason
from app.analysis.reasons_pain import NOT_ANSWERED, open_mornings, pain_reasons
from app.analysis.symmetry import Standing, symmetry
from app.analysis.tests_catalog import field_test
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import day_values
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.domain.squad import OwedKind, SquadMember

NO_SESSION = "No session for {days} days, and {missed} of {due} planned were missed."
NEVER = "No session yet, and {missed} of {due} planned were missed."
BEHIND = {
    Side.LEFT: "Left {difference} % behind: {test}, {left} against {right} {unit}, error {error}.",
    Side.RIGHT: "Right {difference} % behind: {test}, {right} against {left} {unit}, error {error}.",
}

RULES = (
    "pain_above",
    "pain_before",
    "warning_sign",
    "not_settled",
    "morning_above",
    "no_session",
    "side_behind",
    "not_answered",
    "pain_rising",
    "readiness",
)
"""The rules in the order in which they count: a triangle up to `morning_above`, then a square."""


@dataclass(frozen=True, slots=True)
class Attention:
    """One athlete and the reasons to look at them, the most urgent first."""

    athlete: str
    reasons: tuple[Reason, ...]

    @property
    def level(self) -> Level | None:
        """The level of the most urgent reason; None when there is none."""
        return self.reasons[0].level if self.reasons else None


def who_first(
    members: Iterable[SquadMember],
    errors: Mapping[str, float] | None = None,
    limits: Limits = DEFAULT_LIMITS,
) -> tuple[Attention, ...]:
    """Everybody, those who need a look first: by level, by rule, by name, the same for the same records.

    `errors` are minimal detectable changes by the key of their test, in its unit; without one nothing is said
    of sides. Rules and their limits: common practice, see Limits.
    """
    return tuple(sorted((attention(each, errors, limits) for each in members), key=_order))


def attention(
    member: SquadMember, errors: Mapping[str, float] | None = None, limits: Limits = DEFAULT_LIMITS
) -> Attention:
    """The reasons to look at one athlete, see `who_first`."""
    found = [
        *pain_reasons(member.record, limits),
        *_absent(member, limits),
        *_not_answered(member, limits),
        *_behind(member.record, errors or {}),
    ]
    ordered = sorted(found, key=lambda reason: (reason.level, RULES.index(reason.rule)))
    return Attention(member.record.athlete, tuple(ordered))


def _order(found: Attention) -> tuple[int, int, str, str]:
    if not found.reasons:
        return len(Level), len(RULES), found.athlete.casefold(), found.athlete
    first = found.reasons[0]
    return first.level, RULES.index(first.rule), found.athlete.casefold(), found.athlete


def _absent(member: SquadMember, limits: Limits) -> Iterator[Reason]:
    record = member.record
    done = [each.day for each in record.sessions if each.day <= record.today]
    if member.last_run is not None and member.last_run <= record.today:
        done.append(member.last_run)
    days = (record.today - max(done)).days if done else None
    if days is not None and days <= limits.days_without:
        return
    span = [each for each in record.due if _within(each.occurrence.day, record.today, limits.days_without)]
    missed = sum(each.state is DueState.MISSED for each in span)
    due = missed + sum(each.state is DueState.DONE for each in span)
    if not missed:
        return
    counts = (("missed", missed), ("due", due))
    if days is None:
        yield Reason("no_session", Level.SQUARE, NEVER, counts)
    else:
        yield Reason("no_session", Level.SQUARE, NO_SESSION, (("days", days), *counts))


def _within(day: date, today: date, days: int) -> bool:
    return 0 <= (today - day).days <= days


def _not_answered(member: SquadMember, limits: Limits) -> Iterator[Reason]:
    """Mornings whose answer is owed now, and those that were asked after and left open."""
    owed = {each.run_id: each.day for each in member.owed if each.kind is OwedKind.NEXT_MORNING_PAIN}
    open_ones = {each.run_id: each.day for each in open_mornings(member.record, limits.days_back)}
    days = (owed | open_ones).values()
    if days:
        numbers = (("day", max(days)), ("owed", len(days)))
        yield Reason("not_answered", Level.SQUARE, NOT_ANSWERED, numbers)


def _behind(record: AthleteRecord, errors: Mapping[str, float]) -> Iterator[Reason]:
    if not record.results:
        return
    for key in errors:
        test = field_test(key)
        if test is not None and test.by_side and test.more_is_better is not None:
            yield from _side_behind(record, test, errors[test.key])


def _side_behind(record: AthleteRecord, test: FieldTest, error: float) -> Iterator[Reason]:
    """The sides of the latest day on which both were tested."""
    left = {each.day: each.value for each in day_values(record.results, test, Side.LEFT)}
    right = {each.day: each.value for each in day_values(record.results, test, Side.RIGHT)}
    both = sorted(left.keys() & right.keys())
    if not both:
        return
    day = both[-1]
    found = symmetry(left[day], right[day], more_is_better=bool(test.more_is_better), mdc=error)
    if found.standing is not Standing.BEYOND_ERROR or found.behind not in BEHIND or found.difference is None:
        return
    numbers = (
        ("difference", round(found.difference)),
        ("test", test.name),
        ("left", round(left[day], 2)),
        ("right", round(right[day], 2)),
        ("unit", test.unit),
        ("error", round(error, 2)),
        ("day", day),
    )
    yield Reason("side_behind", Level.SQUARE, BEHIND[found.behind], numbers)
