"""Figures that one test alone has: reach of the leg, hops, jumps in their square, sets to the last rep."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from statistics import fmean

from app.analysis.adherence_parts import REPS_CAUTION
from app.analysis.balance import anterior_reach_apart, in_square, landing_band, reach_composite
from app.analysis.figure import Figure, Input, Rule
from app.analysis.figures_trust import MEASURES
from app.analysis.jumps import TOO_FEW_REBOUNDS, Hop, ten_hops
from app.analysis.one_rep_max import estimated_one_rep_max, mayhew, oconner, percent_of_maximum, wathen
from app.analysis.reliability import TOO_FEW_PAIRS
from app.analysis.tests_catalog import field_test, tried_tests
from app.analysis.tests_kinds import OF_LIFT, FieldTest
from app.analysis.tests_values import Try, day_tries, day_values, values_within
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord

MS = 1_000
REACHES = ("reach_anterior", "reach_posteromedial", "reach_posterolateral")
LIMB = "limb_length"
REACH_LABELS = ("reach forwards, cm", "reach backwards and inwards, cm", "reach backwards and outwards, cm")
LIMB_LABEL = "limb length, cm"
REACH_MISSING = "A reach or the limb length is missing."
NO_JUMP = "No jump was counted."
NO_ANTERIOR = "The reach forwards of one side is missing."
NO_ERRORS_COUNTED = "No landing was looked at."
PLISKY = "Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (secondary)."
COMPOSITE = Rule(
    "Reach of the leg, composite", "%", "sum of the three reaches / (3 x limb length) x 100", PLISKY
)
ANTERIOR = Rule(
    "Reach forwards, sides apart",
    "cm",
    "greater - smaller; above 4 cm is a limit found in school basketball, no limit for everybody",
    PLISKY,
)
SQUARE = Rule(
    "Jumps that ended in the square, last day",
    "%",
    "jumps inside / all jumps x 100",
    "Common practice, no source. Interval: Wilson 1927, J Am Stat Assoc 22:209-212.",
    REPS_CAUTION,
)
SLOW = Rule(
    "Ten hops: contacts of 250 ms or longer",
    "contacts",
    "of the ten rebounds of the last day",
    "Schmidtbleicher 1992 (secondary).",
)
MAXIMUM = Rule(
    "Set to the last rep",
    "kg",
    "load x (1 + reps / 30); one rep returns the load",
    "Epley 1985, from memory; the others from memory too. No estimate holds for work to a tempo.",
)
LANDING = Rule(
    "Landing errors, last mean",
    "errors",
    "mean of the jumps of the last day; bands to 4, 5, 6 and above, from memory",
    "Padua et al. 2009. Under 5 is a limit used for the return to sport; no verdict by itself.",
)


BESIDE: dict[str, tuple[Rule, ...]] = {
    **dict.fromkeys((*REACHES[1:], LIMB), (COMPOSITE,)),
    REACHES[0]: (COMPOSITE, ANTERIOR),
    "jumps_in_square": (SQUARE,),
    **dict.fromkeys(("ten_hops_flight", "ten_hops_height"), (SLOW,)),
    "landing_errors": (LANDING,),
    **dict.fromkeys(("one_rep_max_epley", "one_rep_max_brzycki", "one_rep_max_lombardi"), (MAXIMUM,)),
}
"""By the key of a test which of these figures tell more of it."""


def figures_about(figures: Iterable[Figure], test: FieldTest) -> tuple[Figure, ...]:
    """Those of the figures that tell of a test: course and sides, what it alone has, how far it is trusted.

    That there are too few repeated tries is said once.
    """
    beside = {rule.name for rule in BESIDE.get(test.key.partition(OF_LIFT)[0], ())}
    lifted = f"lift: {test.lift}"
    own: list[Figure] = []
    alone: list[Figure] = []
    trusted: dict[object, Figure] = {}
    for figure in figures:
        whose, _, measure = figure.name.rpartition(": ")
        if figure.name in beside and (figure.name != MAXIMUM.name or figure.of == lifted):
            alone.append(figure)
        elif whose == test.name and measure in MEASURES:
            trusted.setdefault(TOO_FEW_PAIRS if figure.reason == TOO_FEW_PAIRS else measure, figure)
        elif whose == test.name:
            own.append(figure)
    return (*own, *alone, *trusted.values())


def figures_of_one_test(record: AthleteRecord) -> Iterator[Figure]:
    """The figures of tests that have more to say than their course; of tests that were not done none."""
    done = {test.key.partition(OF_LIFT)[0]: test for test in tried_tests(record.results)}
    if done.keys() & {*REACHES, LIMB}:
        yield from (_composite(record, side) for side in (Side.LEFT, Side.RIGHT))
        yield _anterior(record)
    if "jumps_in_square" in done:
        yield from (_square(record, done["jumps_in_square"], side) for side in (Side.LEFT, Side.RIGHT))
    if "ten_hops_flight" in done:
        yield from _slow(record, done["ten_hops_flight"])
    if "landing_errors" in done:
        yield _landing(record, done["landing_errors"])
    sets = [
        test for test in tried_tests(record.results) if test.key.startswith(f"one_rep_max_epley{OF_LIFT}")
    ]
    yield from (_last_set(record, test) for test in sets)


def _composite(record: AthleteRecord, side: Side) -> Figure:
    """Of the last day's reaches; several limb lengths of a side are averaged, bones do not change."""
    reaches = [_last(record, key, side) for key in REACHES]
    limb_test = field_test(LIMB)
    lengths = [each.value for each in day_values(record.results, limb_test, side)] if limb_test else []
    limb = fmean(lengths) if lengths else None
    inputs: tuple[Input, ...] = (*zip(REACH_LABELS, reaches, strict=True), (LIMB_LABEL, limb))
    unknown = tuple(label for label, value in inputs if value is None)
    known = [each for each in reaches if each is not None]
    value = None
    if limb is not None and len(known) == len(REACHES):
        value = reach_composite(known[0], known[1], known[2], limb)
    return COMPOSITE.figure(value, len(known), REACH_MISSING, inputs, unknown, f"side: {side.value}")


def _anterior(record: AthleteRecord) -> Figure:
    left, right = (_last(record, REACHES[0], side) for side in (Side.LEFT, Side.RIGHT))
    sides: tuple[Input, ...] = (("left", left), ("right", right))
    if left is None or right is None:
        return ANTERIOR.figure(None, int(left is not None) + int(right is not None), NO_ANTERIOR, sides)
    told = "yes" if anterior_reach_apart(left, right) else "no"
    return ANTERIOR.figure(abs(left - right), 2, None, (*sides, ("more than 4 cm", told)))


def _square(record: AthleteRecord, test: FieldTest, side: Side) -> Figure:
    day, tries = _last_day(record, test, side)
    counts = [each.parts for each in tries if each.parts]
    found = in_square(round(sum(each[0] for each in counts)), round(sum(each[1] for each in counts)))
    inputs: tuple[Input, ...] = (("day", None if day is None else day.isoformat()), ("inside", found.good))
    share = None if found.share is None else found.share * 100
    figure = SQUARE.figure(share, found.n, NO_JUMP, inputs, (), f"side: {side.value}")
    bounds = found.interval
    if bounds is None:
        return figure
    return replace(figure, low=bounds.low * 100, high=bounds.high * 100, caution=SQUARE.caution)


def _slow(record: AthleteRecord, test: FieldTest) -> Iterator[Figure]:
    day, tries = _last_day(record, test, Side.BOTH)
    hops = [Hop(each.parts[0] / MS, each.parts[1] / MS) for each in tries if each.parts]
    if not hops:
        return
    found = ten_hops(hops)
    inputs: tuple[Input, ...] = (
        ("day", None if day is None else day.isoformat()),
        ("flight over contact, best five", found.flight_over_contact),
        ("height over contact, best five, m/s", found.height_over_contact),
    )
    value = None if found.reason else float(found.slow)
    yield SLOW.figure(value, found.hops, TOO_FEW_REBOUNDS, inputs)


def _landing(record: AthleteRecord, test: FieldTest) -> Figure:
    values = values_within(record, test, Side.BOTH)
    if not values:
        return LANDING.figure(None, 0, NO_ERRORS_COUNTED)
    last = values[-1]
    band: tuple[Input, ...] = (("day", last.day.isoformat()), ("band", landing_band(last.value)))
    return LANDING.figure(last.value, last.tries, None, band)


def _last_set(record: AthleteRecord, test: FieldTest) -> Figure:
    """What the last set of a lift comes to by each formula in use."""
    day, tries = _last_day(record, test, Side.BOTH)
    load, reps = tries[-1].parts if tries and tries[-1].parts else (None, None)
    inputs: list[Input] = [
        ("day", None if day is None else day.isoformat()),
        ("load, kg", load),
        ("reps", reps),
    ]
    count = 0 if reps is None else round(reps)
    found = estimated_one_rep_max(load, count)
    inputs += [("Brzycki, kg", found.brzycki), ("Lombardi, kg", found.lombardi)]
    if load is not None and found.reason is None:
        formulas = (("O'Conner, kg", oconner), ("Mayhew, kg", mayhew), ("Wathen, kg", wathen))
        inputs += [(name, formula(load, count)) for name, formula in formulas]
        inputs.append(("load of the maximum by a table, %", percent_of_maximum(count)))
    return MAXIMUM.figure(found.epley, len(tries), found.reason, tuple(inputs), (), f"lift: {test.lift}")


def _last_day(record: AthleteRecord, test: FieldTest, side: Side) -> tuple[date | None, tuple[Try, ...]]:
    days = {day: own for day, own in day_tries(record.results, test, side).items() if record.covers(day)}
    return (max(days), days[max(days)]) if days else (None, ())


def _last(record: AthleteRecord, key: str, side: Side) -> float | None:
    test = field_test(key)
    values = values_within(record, test, side) if test else ()
    return values[-1].value if values else None
