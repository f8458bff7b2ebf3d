"""Reasons from pain and readiness: above 5, not settled by the next morning, a warning sign, rising."""

from collections.abc import Iterator
from datetime import date, timedelta

from app.analysis.pain import Morning, morning_after, rising_two_weeks
from app.analysis.readiness_course import latest_readiness, local_day
from app.analysis.reasons import Level, Limits, Reason
from app.domain.reviewed import AthleteRecord, ReviewedSession

ABOVE_NOT_SETTLED = "Pain {pain} on {day}, {after} on the next morning: not settled."
ABOVE_NOT_ANSWERED = "Pain {pain} on {day}, and the next morning is not known."
ABOVE_SETTLED = "Pain {pain} on {day}, settled by the next morning."
BEFORE_ABOVE = "Pain {pain} before training on {day}."
NOT_SETTLED = "Pain {after} on the morning after {day}, {before} before it: not settled."
MORNING_ABOVE = "Pain {after} on the morning after {day}."
WARNING_SIGN = "A warning sign was reported on {day}."
NOT_ANSWERED = "Next-morning pain after {day} is not answered."
RISING = "The highest pain of a week rose twice in a row: {first}, {second}, {third}."
READINESS = "Readiness on {day} is {z} SD worse than on their own last {days} days."


def pain_reasons(record: AthleteRecord, limits: Limits) -> Iterator[Reason]:
    """Reasons from pain and readiness, the most urgent first within each rule. Rules: see Limits."""
    recent = recent_sessions(record, limits.days_back)
    before = pain_before(record)
    yield from _above(record, recent, before, limits)
    yield from _warning_signs(record, limits)
    yield from _mornings(recent, before, limits)
    yield from _rising(record)
    yield from _readiness(record, limits)


def recent_sessions(record: AthleteRecord, days: int) -> tuple[ReviewedSession, ...]:
    """The sessions of the last days up to today, the latest first."""
    since = record.today - timedelta(days=days)
    recent = (each for each in record.sessions if since <= each.day <= record.today)
    return tuple(sorted(recent, key=lambda each: (each.day, each.run_id), reverse=True))


def open_mornings(record: AthleteRecord, days: int) -> tuple[ReviewedSession, ...]:
    """The sessions whose next morning was asked after, has come and is not answered, the latest first."""
    return tuple(
        each
        for each in recent_sessions(record, days)
        if each.next_morning_asked and each.pain_next_morning is None and each.day < record.today
    )


def pain_before(record: AthleteRecord) -> dict[date, int]:
    """Pain that was answered before training, by local day; the first answer of each day."""
    found: dict[date, int] = {}
    for answers in sorted(record.readiness, key=lambda each: each.at):
        if answers.pain is not None:
            found.setdefault(local_day(answers), answers.pain)
    return found


def _above(
    record: AthleteRecord, recent: tuple[ReviewedSession, ...], before: dict[date, int], limits: Limits
) -> Iterator[Reason]:
    above = next((each for each in recent if each.pain is not None and each.pain > limits.pain), None)
    if above is not None and above.pain is not None:
        numbers = (("pain", above.pain), ("day", above.day))
        after = above.pain_next_morning
        if after is None:
            yield Reason("pain_above", Level.TRIANGLE, ABOVE_NOT_ANSWERED, numbers)
        elif morning_after(before.get(above.day), after) is Morning.SETTLED:
            yield Reason("pain_above", Level.TRIANGLE, ABOVE_SETTLED, numbers)
        else:
            yield Reason("pain_above", Level.TRIANGLE, ABOVE_NOT_SETTLED, (*numbers, ("after", after)))
    since = record.today - timedelta(days=limits.days_back)
    for day in sorted(before, reverse=True):
        if since <= day <= record.today and before[day] > limits.pain:
            yield Reason("pain_before", Level.TRIANGLE, BEFORE_ABOVE, (("pain", before[day]), ("day", day)))
            return


def _warning_signs(record: AthleteRecord, limits: Limits) -> Iterator[Reason]:
    since = record.today - timedelta(days=limits.days_back)
    days = [local_day(each) for each in record.readiness if each.red_flag]
    recent = [day for day in days if since <= day <= record.today]
    if recent:
        yield Reason("warning_sign", Level.TRIANGLE, WARNING_SIGN, (("day", max(recent)),))


def _mornings(
    recent: tuple[ReviewedSession, ...], before: dict[date, int], limits: Limits
) -> Iterator[Reason]:
    """The latest morning after that is known; one after pain above the limit is told of already."""
    known = next((each for each in recent if each.pain_next_morning is not None), None)
    if known is None or known.pain_next_morning is None or (known.pain or 0) > limits.pain:
        return
    start, after = before.get(known.day), known.pain_next_morning
    if start is not None and morning_after(start, after) is Morning.NOT_SETTLED:
        numbers = (("after", after), ("before", start), ("day", known.day))
        yield Reason("not_settled", Level.TRIANGLE, NOT_SETTLED, numbers)
    elif after > limits.pain:
        yield Reason("morning_above", Level.TRIANGLE, MORNING_ABOVE, (("after", after), ("day", known.day)))


def _rising(record: AthleteRecord) -> Iterator[Reason]:
    monday = record.today - timedelta(days=record.today.weekday())
    weeks = [_highest(record, monday - timedelta(weeks=number)) for number in (3, 2, 1)]
    if rising_two_weeks(weeks):
        first, second, third = (int(each or 0) for each in weeks)
        numbers = (("first", first), ("second", second), ("third", third))
        yield Reason("pain_rising", Level.SQUARE, RISING, numbers)


def _highest(record: AthleteRecord, monday: date) -> float | None:
    week = (each for each in record.sessions if monday <= each.day < monday + timedelta(days=7))
    return max((each.pain for each in week if each.pain is not None), default=None)


def _readiness(record: AthleteRecord, limits: Limits) -> Iterator[Reason]:
    last = latest_readiness(record.readiness)
    if last is None or last.z is None or last.z < limits.readiness_z:
        return
    if record.today - timedelta(days=limits.days_back) <= last.day <= record.today:
        numbers = (("day", last.day), ("z", round(last.z, 1)), ("days", last.days))
        yield Reason("readiness", Level.SQUARE, READINESS, numbers)
