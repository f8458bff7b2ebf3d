"""Results of one test: what counts of each day, its trend, and what lies within the error of the test."""

import math
from collections.abc import Mapping, Sequence
from datetime import date
from functools import cache

from app.analysis.figure import Figure
from app.analysis.figures_of_one_test import figures_about
from app.analysis.figures_tests import figures_of_tests
from app.analysis.tests_catalog import tried_tests
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import DayValue, values_within
from app.analysis.trend import trend
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Form, Ink, Mark, Panel, Series, Slope, Zone
from app.views.charts.scales import span_ticks
from app.views.review import words
from app.views.review.athlete.charted import Charted, Later, each_tick, spoken
from app.views.review.athlete.side_chart import weeks_from
from app.views.review.figure_names import called_words, unit_words
from app.views.review.figure_words import number_words, weekday_words
from app.views.translation import message, tr

NO_RESULT = message("No test was entered in this time. Enter one, and its course is drawn here.")
WITHIN = message("error")
BAND = message("grey: a change within the error of the test")
BARS = message("bars: the error of a result")
NO_BAND = message("the error of this test is not known")
IN_SIGHT = 60
LOOKS = {
    Side.LEFT: (message("left"), Ink.LEFT, Mark.SQUARE),
    Side.RIGHT: (message("right"), Ink.RIGHT, Mark.CIRCLE),
    Side.BOTH: (message("result"), Ink.ACCENT, Mark.CIRCLE),
}


def tests_done(record: AthleteRecord) -> tuple[FieldTest, ...]:
    """The tests of the catalogue that have a result in the record's days, in the order of the catalogue."""
    return tuple(test for test in tried_tests(record.results) if any(_values(record, test).values()))


def result_chart(record: AthleteRecord, test: FieldTest | None, errors: Mapping[str, float]) -> Charted:
    """The course of a test; where it has sides a line for each."""
    if test is None:
        return Charted(tr("Test results"), _data("", (), (), (), (), NO_RESULT))
    values = _values(record, test)
    days = sorted({each.day for found in values.values() for each in found})
    at = weeks_from(days)
    by_day = {side: {each.day: each.value for each in found} for side, found in values.items()}
    error = errors.get(test.key)
    around = None if error is None or len(values) == 1 else error / math.sqrt(2)
    series = tuple(series_of(side, [by_day[side].get(day) for day in days], test, around) for side in values)
    zones = (
        tuple(zone for found in values.values() for zone in _zone(found, error)) if len(values) == 1 else ()
    )
    slopes = tuple(slope for found in values.values() for slope in _slope(found, days, at))
    known = [value for each in series for value in each.values if value is not None]
    reach = [*known, *(edge for zone in zones for edge in (zone.low, zone.high))]
    reach += [edge for each in series for edge in (*each.low, *each.high) if edge is not None]
    unit = unit_words(test.unit)
    ticks = each_tick(span_ticks(min(reach), max(reach)), unit, number_words) if reach else ()
    panel = Panel(series, ticks, ticks[0][0] if ticks else 0.0, zones, slopes)
    about = tr(NO_BAND) if error is None else tr(BAND) if zones else tr(BARS)
    about = words.DOT.join(filter(None, (called_words(test), unit, about)))
    return Charted(
        tr("Test results"),
        _data(about, days, at, series, (panel,), NO_RESULT),
        _whys(record, test, days),
    )


def _data(
    aside: str,
    days: Sequence[date],
    at: tuple[float, ...],
    series: Sequence[Series],
    panels: tuple[Panel, ...],
    empty: str,
) -> ChartData:
    names = tuple(weekday_words(day) for day in days)
    lines = [[f"{each.name} {word}" for word in each.words] for each in series]
    return ChartData(
        tr("Chart: test results"),
        tr("date"),
        tuple(map(words.day, days)),
        spoken(names, *lines),
        panels or (Panel((), ()),),
        at=at,
        window=IN_SIGHT,
        names=names,
        empty=tr(empty),
        aside=aside,
    )


def _values(record: AthleteRecord, test: FieldTest) -> dict[Side, tuple[DayValue, ...]]:
    sides = (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,)
    return {side: values_within(record, test, side) for side in sides}


def series_of(side: Side, values: Sequence[float | None], test: FieldTest, around: float | None) -> Series:
    """A side's line; with bars of 1.96 typical errors `around` each value where that is given."""
    name, ink, mark = LOOKS[side]
    unit = unit_words(test.unit)
    told = tuple(
        words.DASH if value is None else words.THIN.join(filter(None, (number_words(value), unit)))
        for value in values
    )
    low, high = (
        tuple(None if value is None else value + edge for value in values)
        for edge in ((-around, around) if around is not None else (0.0, 0.0))
    )
    bounds = (low, high) if around is not None else ((), ())
    return Series(tr(name), tuple(values), told, Form.LINE, ink, mark, *bounds, ended=side is not Side.BOTH)


def _zone(values: Sequence[DayValue], error: float | None) -> list[Zone]:
    """What lies within the error of the first result."""
    if not values or error is None:
        return []
    first = values[0].value
    return [Zone(first - error, first + error, tr(WITHIN))]


def _slope(values: Sequence[DayValue], days: Sequence[date], at: Sequence[float]) -> list[Slope]:
    where = dict(zip(days, at, strict=True))
    times = [where[each.day] for each in values]
    found = trend(times, [each.value for each in values]).slope if values else None
    if found is None:
        return []
    ends = (times[0], times[-1])
    return [Slope(ends, (found.intercept + found.slope * ends[0], found.intercept + found.slope * ends[1]))]


def _whys(record: AthleteRecord, test: FieldTest, days: Sequence[date]) -> Later:
    """The figures of the test, the same at each day, as they rest on all; made when asked for."""

    @cache
    def own() -> tuple[Figure, ...]:
        return figures_about(figures_of_tests(record), test)

    return Later(len(days), lambda _: own())
