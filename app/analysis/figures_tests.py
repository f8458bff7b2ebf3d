"""Figures of tests: best, last, change, trend, error, one side against the other, reach of the leg."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from statistics import fmean

from app.analysis.adherence import Interval
from app.analysis.balance import reach_composite
from app.analysis.course import course
from app.analysis.figure import Figure, Input, Rule
from app.analysis.symmetry import NO_ERROR_KNOWN, Symmetry, symmetry
from app.analysis.tests_catalog import CATALOGUE, DayValue, FieldTest, day_values, field_test
from app.analysis.trend import CAUTION, trend
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord

DAYS_A_WEEK = 7
REACHES = ("reach_anterior", "reach_posteromedial", "reach_posterolateral")
LIMB = "limb_length"
REACH_MISSING = "A reach or the limb length is missing."
TOO_FEW_ATHLETES = "There are too few athletes with this test: fewer than 10."
NEITHER = "More of it is neither better nor worse."
NO_TWO_SIDES = "There is no day on which both sides were tested."
BOTH_NOUGHT = "Both sides are nought."
TRIES = "Common practice, no source."
HOPKINS = "Hopkins 2000, Sports Med 30:1-15 (secondary: course notes)."
SEN = "Sen 1968, J Am Stat Assoc 63:1379-1389."
MANN = "Mann 1945, Econometrica 13:245-259; ties as in Gilbert 1987."
GOKELER = "Gokeler et al. 2017 (PMC5315711); for times Noyes et al. 1991, from memory."
BISHOP = "Bishop et al. 2018, Strength Cond J, from memory."
COMPOSITE = Rule(
    "Reach of the leg, composite",
    "%",
    "sum of the three reaches / (3 x limb length) x 100",
    "Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (secondary).",
)


def figures_of_tests(
    record: AthleteRecord,
    errors: Mapping[str, float] | None = None,
    worthwhile: Mapping[str, float] | None = None,
) -> tuple[Figure, ...]:
    """Figures of every test of the catalogue in the record; a day's value is what counts of its tries.

    `errors` are minimal detectable changes and `worthwhile` smallest worthwhile changes by the key of their
    test, in its unit. `of` is the side.
    """
    keys = {result.test for result in record.results}
    found: list[Figure] = []
    for test in CATALOGUE:
        if test.key in keys:
            found.extend(_of_test(record, test, (errors or {}).get(test.key)))
            found.append(_worthwhile(test, (worthwhile or {}).get(test.key)))
    if keys & {*REACHES, LIMB}:
        found.extend(_composite(record, side) for side in (Side.LEFT, Side.RIGHT))
    return tuple(found)


def _in_range(record: AthleteRecord, test: FieldTest, side: Side) -> tuple[DayValue, ...]:
    values = day_values(record.results, test, side)
    return tuple(each for each in values if record.first <= each.day <= record.last)


def _of_test(record: AthleteRecord, test: FieldTest, error: float | None) -> Iterator[Figure]:
    for side in (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,):
        values = _in_range(record, test, side)
        of = f"side: {side.value}" if test.by_side else ""
        yield from _course(test, values, error, of)
        yield from _trend(test, values, of)
    mdc = Rule(f"{test.name}: minimal detectable change", test.unit, "1.96 x sqrt 2 x typical error", HOPKINS)
    yield mdc.figure(error, int(error is not None), NO_ERROR_KNOWN)
    if test.by_side and test.more_is_better is not None:
        yield from _sides(record, test, error)


def _worthwhile(test: FieldTest, change: float | None) -> Figure:
    rule = Rule(
        f"{test.name}: smallest worthwhile change",
        test.unit,
        "0.2 x standard deviation between athletes, freed of the typical error",
        HOPKINS,
    )
    return rule.figure(change, int(change is not None), TOO_FEW_ATHLETES)


def _course(test: FieldTest, values: tuple[DayValue, ...], error: float | None, of: str) -> Iterator[Figure]:
    found = course([each.value for each in values], more_is_better=test.more_is_better, mdc=error)
    inputs: tuple[Input, ...] = tuple((each.day.isoformat(), each.value) for each in values)
    counted = f"{test.counts.value.replace('_', ' ')} of a day's tries"
    unknown = () if error is not None else (NO_ERROR_KNOWN,)
    best = Rule(f"{test.name}: best", test.unit, f"best day; {counted}", TRIES)
    last = Rule(f"{test.name}: last", test.unit, f"last day; {counted}", TRIES)
    change = Rule(f"{test.name}: change", test.unit, "last day less first day", HOPKINS)
    yield best.figure(found.best, found.n, found.reason or NEITHER, inputs, (), of)
    yield last.figure(found.last, found.n, found.reason, inputs, (), of)
    compared = (("first", found.baseline), ("last", found.last), ("against its error", found.standing.value))
    yield change.figure(found.change, found.n, found.reason, compared, unknown, of)


def _trend(test: FieldTest, values: tuple[DayValue, ...], of: str) -> Iterator[Figure]:
    first = values[0].day if values else None
    times = [(each.day - first).days / DAYS_A_WEEK for each in values] if first is not None else []
    found = trend(times, [each.value for each in values])
    line, rank = found.slope, found.test
    unit = f"{test.unit} a week"
    slope = Rule(f"{test.name}: slope", unit, "median of the slopes of all pairs of days", SEN, CAUTION)
    bounds = None if line is None else Interval(line.low, line.high)
    value = None if line is None else line.slope
    yield slope.bounded(slope.figure(value, found.n, found.reason, (), (), of), bounds)
    test_rule = Rule(
        f"{test.name}: rank test", "Z", "Mann-Kendall, (S -+ 1) / sqrt Var, ties corrected", MANN, CAUTION
    )
    inputs: tuple[Input, ...] = () if rank is None else (("S", rank.s), ("Var", rank.variance), ("p", rank.p))
    z = test_rule.figure(None if rank is None else rank.z, found.n, found.reason, inputs, (), of)
    yield z if rank is None else replace(z, caution=CAUTION)


def _sides(record: AthleteRecord, test: FieldTest, error: float | None) -> Iterator[Figure]:
    """The latest day on which both sides were tested."""
    left = {each.day: each.value for each in _in_range(record, test, Side.LEFT)}
    right = {each.day: each.value for each in _in_range(record, test, Side.RIGHT)}
    both = sorted(left.keys() & right.keys())
    day = both[-1] if both else None
    found = symmetry(
        None if day is None else left[day],
        None if day is None else right[day],
        reference=record.reference,
        more_is_better=bool(test.more_is_better),
        mdc=error,
    )
    of = "" if day is None else day.isoformat()
    inputs = _raw(found)
    reference = "none" if record.reference is None else record.reference.value
    index = Rule(
        f"{test.name}: limb symmetry index",
        "%",
        "other side / reference side x 100; turned over where less is better",
        GOKELER,
    )
    difference = Rule(
        f"{test.name}: difference of the sides", "%", "(greater - smaller) / greater x 100", BISHOP
    )
    why = NO_TWO_SIDES if day is None else found.reasons[0] if found.reasons else BOTH_NOUGHT
    n = 0 if day is None else 2
    yield index.figure(found.index, n, why, (("reference side", reference), *inputs), found.reasons, of)
    yield difference.figure(
        found.difference, n, NO_TWO_SIDES if day is None else BOTH_NOUGHT, inputs, found.reasons, of
    )


def _raw(found: Symmetry) -> tuple[Input, ...]:
    return (
        ("left", found.left),
        ("right", found.right),
        ("side behind", None if found.behind is None else found.behind.value),
        ("apart", found.apart),
        ("minimal detectable change", found.mdc),
        ("against its error", found.standing.value),
    )


def _composite(record: AthleteRecord, side: Side) -> Figure:
    """Of the last day's reaches; several limb lengths of a side are averaged, bones do not change."""
    reaches = [_last(record, key, side) for key in REACHES]
    limb_test = field_test(LIMB)
    lengths = [each.value for each in day_values(record.results, limb_test, side)] if limb_test else []
    limb = fmean(lengths) if lengths else None
    inputs: tuple[Input, ...] = (*zip(REACHES, reaches, strict=True), (LIMB, limb))
    unknown = tuple(label for label, value in inputs if value is None)
    known = [each for each in reaches if each is not None]
    value = None
    if limb is not None and len(known) == len(REACHES):
        value = reach_composite(known[0], known[1], known[2], limb)
    return COMPOSITE.figure(value, len(known), REACH_MISSING, inputs, unknown, f"side: {side.value}")


def _last(record: AthleteRecord, key: str, side: Side) -> float | None:
    test = field_test(key)
    values = _in_range(record, test, side) if test else ()
    return values[-1].value if values else None
