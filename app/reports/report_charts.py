"""The charts of a report: weeks, days and sessions along the axis, in words of one language."""

from collections.abc import Iterable, Sequence
from datetime import date

from app.analysis.figures_adherence import REPS, SESSIONS
from app.analysis.figures_load import CONTACTS
from app.analysis.figures_load import WEEK as WEEK_LOAD
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import values_within
from app.domain.plan import Side
from app.reports.report_found import Found
from app.reports.report_parts import Chart, Point, Series
from app.reports.report_words import Words

MOST_TICKS = 4
HUNDRED = 100
ZONES = (2.5, 5.5)
"""Between the zones 0-2, 3-5 and 6-10."""
SIDES = ((Side.LEFT, "square"), (Side.RIGHT, "circle"), (Side.BOTH, "circle"))


def kept_chart(found: Found, say: Words) -> Chart:
    """Sessions and reps done, in percent by week; reps with their interval.

    The few sessions of a week have one as wide as the chart, which would hide the rest.
    """
    sessions = _weekly(found, SESSIONS.name, HUNDRED)
    series = (
        Series(say("reps"), "circle", _weekly(found, REPS.name, HUNDRED)),
        Series(say("sessions"), "square", _without_bounds(sessions), joined=False),
    )
    shares = [found.value(REPS.name, monday.isoformat()) for monday in found.mondays]
    alt = _alt(
        say, say("Reps done of prescribed, by week"), [_times(share, HUNDRED) for share in shares], "%"
    )
    return Chart(say("Done of prescribed, by week"), alt, "%", series, _week_ticks(found, say), 0, HUNDRED)


def load_chart(found: Found, say: Words) -> Chart:
    """Load of the week in AU."""
    return _of_weeks(found, say, WEEK_LOAD.name, say("Load of the week"), "AU")


def contacts_chart(found: Found, say: Words) -> Chart:
    """Contacts of the week."""
    return _of_weeks(found, say, CONTACTS.name, say("Contacts of the week"), say("contacts"))


def pain_chart(found: Found, say: Words) -> Chart:
    """Pain in each session and on the morning after, 0 to 10; lines between the zones."""
    sessions = found.record.sessions_within
    pain = tuple(Point(each.day.toordinal(), each.pain) for each in sessions)
    after = tuple(Point(each.day.toordinal(), each.pain_next_morning) for each in sessions)
    series = (
        Series(say("in the session"), "circle", pain),
        Series(say("morning after"), "triangle", after, joined=False),
    )
    title = say("Pain by session")
    alt = _alt(say, title, [each.pain for each in sessions], say("of 10"))
    return Chart(title, alt, say("0 to 10"), series, _day_ticks(found, say), 0, 10, ZONES, say.point)


def test_chart(found: Found, say: Words, test: FieldTest) -> Chart:
    """What counts of each day of a test, each side by its shape."""
    series = []
    for side, mark in SIDES:
        days = values_within(found.record, test, side)
        if days:
            points = tuple(Point(each.day.toordinal(), each.value) for each in days)
            series.append(Series(say(side.value), mark, points))
    title, unit = say.called(test), "" if test.unit == "1" else say.known(test.unit)
    values = [point.value for each in series for point in each.points]
    alt, ticks = _alt(say, title, values, unit), _day_ticks(found, say)
    return Chart(title, alt, unit, tuple(series), ticks, point=say.point)


def days_tested(found: Found, test: FieldTest) -> int:
    """On how many days of the time a test was done."""
    return len({each.day for side, _ in SIDES for each in values_within(found.record, test, side)})


def _of_weeks(found: Found, say: Words, name: str, title: str, unit: str) -> Chart:
    series = Series(title, "circle", _weekly(found, name, 1))
    alt = _alt(say, title, [point.value for point in series.points], unit)
    return Chart(title, alt, unit, (series,), _week_ticks(found, say), 0)


def _weekly(found: Found, name: str, times: float) -> tuple[Point, ...]:
    points = []
    for monday in found.mondays:
        figure = found.one(name, monday.isoformat())
        at = monday.toordinal()
        if figure is None:
            points.append(Point(at, None))
        else:
            scaled = (_times(each, times) for each in (figure.value, figure.low, figure.high))
            points.append(Point(at, *scaled))
    return tuple(points)


def _without_bounds(points: tuple[Point, ...]) -> tuple[Point, ...]:
    return tuple(Point(point.at, point.value) for point in points)


def _times(value: float | None, times: float) -> float | None:
    return None if value is None else value * times


def _week_ticks(found: Found, say: Words) -> tuple[tuple[float, str], ...]:
    mondays = found.mondays
    return _ticks(mondays[:: max(1, -(-len(mondays) // MOST_TICKS))], say)


def _day_ticks(found: Found, say: Words) -> tuple[tuple[float, str], ...]:
    first, last = found.record.first.toordinal(), found.record.last.toordinal()
    step = max(1, (last - first) // (MOST_TICKS - 1))
    return _ticks([date.fromordinal(day) for day in range(first, last + 1, step)][:MOST_TICKS], say)


def _ticks(days: Sequence[date], say: Words) -> tuple[tuple[float, str], ...]:
    """Days with their year where they reach beyond one."""
    long = bool(days) and (days[-1] - days[0]).days > 366
    return tuple((day.toordinal(), say.day(day) if long else say.short_day(day)) for day in days)


def _alt(say: Words, title: str, values: Iterable[float | None], unit: str) -> str:
    """What a chart shows, for those who do not see it."""
    every = list(values)
    known = [value for value in every if value is not None]
    if not known:
        return say("{title}: nothing is known.", title=title)
    return say(
        "{title}: {n} known, {gaps} not; first {first}, last {last}, least {least}, greatest {most} {unit}.",
        title=title,
        n=len(known),
        gaps=len(every) - len(known),
        first=say.number(known[0]),
        last=say.number(known[-1]),
        least=say.number(min(known)),
        most=say.number(max(known)),
        unit=unit,
    ).replace(" .", ".")
