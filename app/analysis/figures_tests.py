"""Figures of tests: best, last, change, trend, one side against the other, and how far a test is trusted."""

from collections.abc import Iterator
from dataclasses import replace

from app.analysis.adherence import Interval
from app.analysis.course import NO_RESULT, course
from app.analysis.figure import Figure, Input, Rule
from app.analysis.figures_of_one_test import figures_of_one_test
from app.analysis.figures_trust import trust_figures
from app.analysis.one_rep_max import TOO_MANY
from app.analysis.reliability import UNKNOWN, trusts_of
from app.analysis.symmetry import NO_BOTH, NO_ERROR_KNOWN, Symmetry, other_indices, symmetry
from app.analysis.tests_catalog import tried_tests
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import DayValue, day_tries, values_within
from app.analysis.trend import CAUTION, repeated_medians, trend
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord

DAYS_A_WEEK = 7
NEITHER = "More of it is neither better nor worse."
NO_TWO_SIDES = "There is no day on which both sides were tested."
BOTH_NOUGHT = "Both sides are nought."
NO_INDEX = "other side / reference side x 100; turned over where less is better"
INDEX_OF = {
    Side.LEFT: "index of the right side, reference left: right / left x 100; turned if less is better",
    Side.RIGHT: "index of the left side, reference right: left / right x 100; turned if less is better",
}
"""The formula of the index by the reference side."""
TRIES = "Common practice, no source."
SEN = "Sen 1968, J Am Stat Assoc 63:1379-1389."
MANN = "Mann 1945, Econometrica 13:245-259; ties as in Gilbert 1987."
GOKELER = "Gokeler et al. 2017 (PMC5315711); for times Noyes et al. 1991, from memory."
BISHOP = "Bishop et al. 2018, Strength Cond J, from memory."


def figures_of_tests(record: AthleteRecord) -> tuple[Figure, ...]:
    """Figures of every test of the catalogue in the record; a day's value is what counts of its tries.

    How far a test is trusted is told by the tries of the record. `of` is the side.
    """
    found: list[Figure] = []
    trusts = trusts_of(record.tries)
    for test in tried_tests(record.results):
        trust = trusts.get(test.key, UNKNOWN)
        found.extend(_of_test(record, test, trust.detectable))
        found.extend(trust_figures(test, trust))
    found.extend(figures_of_one_test(record))
    return tuple(found)


def _of_test(record: AthleteRecord, test: FieldTest, error: float | None) -> Iterator[Figure]:
    for side in (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,):
        values = values_within(record, test, side)
        of = f"side: {side.value}" if test.by_side else ""
        yield from _course(test, values, error, of, _why_none(record, test, side))
        yield from _trend(test, values, of)
    if test.by_side and test.more_is_better is not None:
        yield from _sides(record, test, error)


def _why_none(record: AthleteRecord, test: FieldTest, side: Side) -> str:
    """Why a test has no value: there was no try, or none of those sets has an estimate."""
    days = day_tries(record.results, test, side) if test.by_lift and test.parts else {}
    tried = any(map(record.covers, days))
    return TOO_MANY if tried else NO_RESULT


def _course(
    test: FieldTest, values: tuple[DayValue, ...], error: float | None, of: str, why_none: str
) -> Iterator[Figure]:
    found = course([each.value for each in values], more_is_better=test.more_is_better, mdc=error)
    inputs: tuple[Input, ...] = tuple((each.day.isoformat(), each.value) for each in values)
    counted = f"{test.counts.value.replace('_', ' ')} of a day's tries"
    unknown = () if error is not None else (NO_ERROR_KNOWN,)
    none = why_none if found.reason == NO_RESULT else found.reason
    best = Rule(f"{test.name}: best", test.unit, f"best day; {counted}", TRIES)
    last = Rule(f"{test.name}: last", test.unit, f"last day; {counted}", TRIES)
    change = Rule(f"{test.name}: change", test.unit, "last day less first day", TRIES)
    yield best.figure(found.best, found.n, none or NEITHER, inputs, (), of)
    yield last.figure(found.last, found.n, none, inputs, (), of)
    compared: tuple[Input, ...] = (
        ("first", found.baseline),
        ("last", found.last),
        ("change over the first, %", found.change_share),
        ("against its error", found.standing.value),
    )
    yield change.figure(found.change, found.n, none, compared, unknown, of)


def _trend(test: FieldTest, values: tuple[DayValue, ...], of: str) -> Iterator[Figure]:
    first = values[0].day if values else None
    times = [(each.day - first).days / DAYS_A_WEEK for each in values] if first is not None else []
    found = trend(times, [each.value for each in values])
    line, rank = found.slope, found.test
    unit = f"{test.unit} a week"
    slope = Rule(f"{test.name}: slope", unit, "median of the slopes of all pairs of days", SEN, CAUTION)
    bounds = None if line is None else Interval(line.low, line.high)
    value = None if line is None else line.slope
    others: tuple[Input, ...] = ()
    if line is not None:
        others = (
            ("repeated medians (Siegel 1982)", repeated_medians(times, [each.value for each in values])[0]),
        )
    yield slope.bounded(slope.figure(value, found.n, found.reason, others, (), of), bounds)
    test_rule = Rule(
        f"{test.name}: rank test", "Z", "Mann-Kendall, (S -+ 1) / sqrt Var, ties corrected", MANN, CAUTION
    )
    inputs: tuple[Input, ...] = ()
    if rank is not None:
        ranks = ("Kendall's tau a", rank.tau_a), ("Kendall's tau b, with ties", rank.tau_b)
        inputs = (("S", rank.s), ("Var", rank.variance), ("p", rank.p), *ranks)
    z = test_rule.figure(None if rank is None else rank.z, found.n, found.reason, inputs, (), of)
    yield z if rank is None else replace(z, caution=CAUTION)


def _sides(record: AthleteRecord, test: FieldTest, error: float | None) -> Iterator[Figure]:
    """The latest day on which both sides were tested."""
    left = {each.day: each.value for each in values_within(record, test, Side.LEFT)}
    right = {each.day: each.value for each in values_within(record, test, Side.RIGHT)}
    both = sorted(left.keys() & right.keys())
    if both:
        found = sides_on_a_day(record.reference, test, error, left[both[-1]], right[both[-1]])
        yield from figures_of_sides(test, found, both[-1].isoformat())
    else:
        yield from figures_of_sides(test, sides_on_a_day(record.reference, test, error, None, None), "")


def sides_on_a_day(
    reference: Side | None, test: FieldTest, error: float | None, left: float | None, right: float | None
) -> Symmetry:
    """What counts of both sides' tries of a day, compared; `error` is its minimal detectable change."""
    return symmetry(left, right, reference=reference, more_is_better=bool(test.more_is_better), mdc=error)


def figures_of_sides(test: FieldTest, found: Symmetry, of: str) -> tuple[Figure, Figure]:
    """The index, whose formula names the side and its reference, and the difference; `of` is the day."""
    reference = "none" if found.reference is None else found.reference.value
    formula = NO_INDEX if found.reference is None else INDEX_OF.get(found.reference, NO_INDEX)
    index = Rule(f"{test.name}: limb symmetry index", "%", formula, GOKELER)
    difference = Rule(
        f"{test.name}: difference of the sides", "%", "(greater - smaller) / greater x 100", BISHOP
    )
    known = (found.left is not None) + (found.right is not None)
    one_missing = NO_TWO_SIDES if not of else NO_BOTH if known < 2 else BOTH_NOUGHT
    why = found.reasons[0] if found.reasons and known == 2 else one_missing
    inputs = _raw(found)
    return (
        index.figure(found.index, known, why, (("reference side", reference), *inputs), found.reasons, of),
        difference.figure(found.difference, known, one_missing, (*inputs, *_other(found)), found.reasons, of),
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


def _other(found: Symmetry) -> tuple[Input, ...]:
    """The same two sides by other indices in use, for whoever has figures made by one of those."""
    if found.left is None or found.right is None:
        return ()
    other = other_indices(found.left, found.right)
    return (
        ("(G - S) / (G + S), %", other.over_sum),
        ("(G - S) / mean, %", other.over_mean),
        ("(G - S) / S, %", other.over_smaller),
        ("symmetry angle, left first, %", other.angle),
    )
