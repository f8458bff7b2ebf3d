"""Left against right in one test: both raw values of each day, what lies between them, and its error."""

from collections.abc import Mapping, Sequence
from datetime import date

from app.analysis.figures_tests import figures_of_sides, sides_on_a_day
from app.analysis.symmetry import Standing, Symmetry
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import values_within
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Panel
from app.views.charts.scales import span_ticks
from app.views.review import words
from app.views.review.athlete.charted import Charted, Later, decimals, each_tick, spoken
from app.views.review.athlete.result_chart import IN_SIGHT, series_of
from app.views.review.athlete.side_chart import weeks_from
from app.views.review.figure_names import called_words, unit_words
from app.views.review.figure_words import number_words
from app.views.translation import message, tr

INDEX_OF = {
    Side.LEFT: message("Index of the right side, reference left"),
    Side.RIGHT: message("Index of the left side, reference right"),
}
WITH_REFERENCE = {
    Side.LEFT: message("index {n}, reference left"),
    Side.RIGHT: message("index {n}, reference right"),
}
NO_INDEX = message("no index: nobody chose a reference side")
STANDS = {
    Standing.BEYOND_ERROR: message("beyond the error of the test"),
    Standing.WITHIN_ERROR: message("within the error of the test"),
    Standing.UNKNOWN: message("the error of this test is not known"),
}
SHORT = {
    Standing.BEYOND_ERROR: message("beyond"),
    Standing.WITHIN_ERROR: message("within"),
    Standing.UNKNOWN: message("not known"),
}
INDEX_BY: dict[Side | None, str] = {
    None: message("Index"),
    Side.LEFT: message("Index, reference left"),
    Side.RIGHT: message("Index, reference right"),
}
BEHIND = {
    Side.LEFT: message("left behind by {n} %"),
    Side.RIGHT: message("right behind by {n} %"),
    Side.BOTH: message("neither behind"),
}
BEHIND_SHORT = {
    Side.LEFT: message("left by {n} %"),
    Side.RIGHT: message("right by {n} %"),
    Side.BOTH: message("neither"),
}


def sided_tests(tests: Sequence[FieldTest]) -> tuple[FieldTest, ...]:
    """Those of the tests that are done on either side and have a better direction."""
    return tuple(test for test in tests if test.by_side and test.more_is_better is not None)


def side_test_chart(record: AthleteRecord, test: FieldTest, errors: Mapping[str, float]) -> Charted:
    """A line a side; the table has difference, direction, index with its reference, and the error beside."""
    left, right = (_by_day(record, test, side) for side in (Side.LEFT, Side.RIGHT))
    days = sorted(left.keys() | right.keys())
    found = [
        sides_on_a_day(record.reference, test, errors.get(test.key), left.get(day), right.get(day))
        for day in days
    ]
    names = tuple(map(words.dated, days))
    series = (
        series_of(Side.LEFT, [left.get(day) for day in days], test, None),
        series_of(Side.RIGHT, [right.get(day) for day in days], test, None),
    )
    known = [value for each in series for value in each.values if value is not None]
    unit = unit_words(test.unit)
    ticks = each_tick(span_ticks(min(known), max(known)), unit, number_words) if known else ()
    index = INDEX_OF.get(record.reference) if record.reference is not None else None
    told = ([_compared(each) for each in found], [_stands(each, STANDS) for each in found])
    data = ChartData(
        tr("Chart: left against right"),
        tr("date"),
        tuple(map(words.day, days)),
        spoken(names, *([f"{each.name} {word}" for word in each.words] for each in series), *told),
        (Panel(series, ticks, ticks[0][0] if ticks else 0.0),),
        at=weeks_from(days),
        window=IN_SIGHT,
        names=names,
        aside=words.DOT.join(filter(None, (called_words(test), unit, tr(index or NO_INDEX)))),
        beside=(
            (tr("Behind"), tuple(_behind(each, BEHIND_SHORT) for each in found)),
            (tr(INDEX_BY[record.reference]), tuple(map(_index, found))),
            (tr("Against error"), tuple(_stands(each, SHORT) for each in found)),
        ),
    )
    whys = Later(len(days), lambda place: figures_of_sides(test, found[place], days[place].isoformat()))
    return Charted(tr("Left against right"), data, whys)


def _by_day(record: AthleteRecord, test: FieldTest, side: Side) -> dict[date, float]:
    return {each.day: each.value for each in values_within(record, test, side)}


def _compared(found: Symmetry) -> str:
    """Direction and size of the difference, then the index with its reference."""
    told = [_behind(found, BEHIND)]
    if found.index is not None and found.reference is not None:
        told.append(tr(WITH_REFERENCE[found.reference]).format(n=_index(found)))
    return words.DOT.join(filter(None, told))


def _behind(found: Symmetry, told: Mapping[Side, str]) -> str:
    if found.behind is None or found.difference is None:
        return ""
    return tr(told[found.behind]).format(n=decimals(found.difference))


def _index(found: Symmetry) -> str:
    return words.DASH if found.index is None else decimals(found.index, 1, "%")


def _stands(found: Symmetry, told: Mapping[Standing, str]) -> str:
    return "" if found.apart is None else tr(told[found.standing])
