"""The tests a practitioner can enter: unit, what more of it means, sides, tries, and which try counts.

No typical error of these tests is at hand from a source, so that none is written here: the error that a
difference is held against is the one measured with the record's own tries, see `reliability`.
"""

from collections.abc import Callable, Iterable, Sequence

from app.analysis.balance import balance_total, in_square
from app.analysis.jumps import flight_over_contact, height_over_contact, height_over_take_off, jump_height
from app.analysis.one_rep_max import MOST_REPS, brzycki, epley, lombardi
from app.analysis.tests_kinds import NO_UNIT, OF_LIFT, Counts, FieldTest, Made, More, Part
from app.domain.keeping import Result

MS = 1_000
HARPER = "Harper et al. 2011, from memory"
BESS = "University of North Carolina, manual of the Balance Error Scoring System"


def _sided(key: str, name: str, unit: str, most: float, more: More = More.BETTER) -> FieldTest:
    return FieldTest(key, name, unit, more, True, 3, Counts.BEST, 0, most)


def _both(
    key: str, name: str, unit: str, most: float, parts: tuple[Part, ...] = (), made: Made | None = None
) -> FieldTest:
    return FieldTest(key, name, unit, More.BETTER, False, 3, Counts.BEST, 0, most, parts=parts, made=made)


def _hops(key: str, name: str, unit: str, made: Made) -> FieldTest:
    counts, parts = Counts.MEAN_OF_BEST_FIVE, CONTACT_AND_FLIGHT["ten_hops"]
    return FieldTest(key, name, unit, More.BETTER, False, 10, counts, 0, 10, HARPER, parts, made)


def _estimated(key: str, formula: str, source: str, made: Made) -> FieldTest:
    return FieldTest(
        key,
        f"One-rep maximum, estimated ({formula})",
        "kg",
        More.BETTER,
        False,
        1,
        Counts.BEST,
        0,
        2_000,
        source,
        SET_TO_THE_LAST_REP,
        made,
        direct=False,
        by_lift=True,
    )


def _by_flight(parts: Sequence[float]) -> float:
    contact, flight = parts
    return flight_over_contact(flight / MS, contact / MS)


def _by_height(parts: Sequence[float]) -> float:
    contact, flight = parts
    return height_over_contact(jump_height(flight / MS), contact / MS)


def _by_take_off(parts: Sequence[float]) -> float:
    take_off, flight = parts
    return height_over_take_off(jump_height(flight / MS), take_off / MS)


def _share(parts: Sequence[float]) -> float | None:
    inside, outside = parts
    share = in_square(round(inside), round(outside)).share
    return None if share is None else share * 100


def _errors(parts: Sequence[float]) -> float | None:
    total = balance_total([round(part) for part in parts])
    return None if total is None else float(total)


def _estimate(formula: Callable[[float, int], float]) -> Made:
    def made(parts: Sequence[float]) -> float | None:
        load, reps = parts
        return formula(load, round(reps)) if 1 <= round(reps) <= MOST_REPS else None

    return made


CONTACT_AND_FLIGHT: dict[str, tuple[Part, ...]] = {
    key: (
        Part(f"{key}.contact", "contact", "ms", 20, 2_000),
        Part(f"{key}.flight", "flight", "ms", 20, 2_000),
    )
    for key in ("drop_jump", "ten_hops")
}
TAKE_OFF = (
    Part("countermovement.take_off", "time to take-off", "ms", 50, 5_000),
    Part("countermovement.flight", "flight", "ms", 20, 2_000),
)
SET_TO_THE_LAST_REP = (
    Part("rep_set.load", "load", "kg", 0.5, 1_000),
    Part("rep_set.reps", "reps", "reps", 1, 100, whole=True),
)
SQUARE = (
    Part("jumps_in_square.inside", "inside", "jumps", 0, 1_000, whole=True),
    Part("jumps_in_square.outside", "outside", "jumps", 0, 1_000, whole=True),
)
STANCES = tuple(
    Part(f"balance_errors.{key}", name, "errors", 0, 100, whole=True)
    for key, name in (
        ("double_firm", "both legs, firm"),
        ("single_firm", "one leg, firm"),
        ("tandem_firm", "heel to toe, firm"),
        ("double_foam", "both legs, foam"),
        ("single_foam", "one leg, foam"),
        ("tandem_foam", "heel to toe, foam"),
    )
)
"""Each stands for 20 s with eyes closed; of one that could not be held ten errors are counted."""

CATALOGUE: tuple[FieldTest, ...] = (
    _sided("single_hop", "Single hop for distance", "cm", 400),
    _sided("triple_hop", "Triple hop for distance", "cm", 1_200),
    _sided("crossover_hop", "Crossover hop for distance", "cm", 1_200),
    _sided("timed_hop", "Six metre timed hop", "s", 60, More.WORSE),
    _both("jump_height", "Counter-movement jump, height", "cm", 120),
    _sided("one_leg_jump_height", "Counter-movement jump on one leg, height", "cm", 100),
    _both(
        "jump_modified_index",
        "Counter-movement jump, height over time to take-off",
        "m/s",
        5,
        TAKE_OFF,
        _by_take_off,
    ),
    _both(
        "drop_jump_flight",
        "Drop jump, flight over contact",
        NO_UNIT,
        10,
        CONTACT_AND_FLIGHT["drop_jump"],
        _by_flight,
    ),
    _both(
        "drop_jump_height",
        "Drop jump, height over contact",
        "m/s",
        10,
        CONTACT_AND_FLIGHT["drop_jump"],
        _by_height,
    ),
    _hops("ten_hops_flight", "Ten hops, flight over contact", NO_UNIT, _by_flight),
    _hops("ten_hops_height", "Ten hops, height over contact", "m/s", _by_height),
    _sided("reach_anterior", "Reach forwards on one leg", "cm", 200),
    _sided("reach_posteromedial", "Reach backwards and inwards on one leg", "cm", 200),
    _sided("reach_posterolateral", "Reach backwards and outwards on one leg", "cm", 200),
    FieldTest("limb_length", "Limb length", "cm", More.NEITHER, True, 1, Counts.LAST, 30, 150),
    FieldTest("stance_open", "Stance on one leg, eyes open", "s", More.BETTER, True, 1, Counts.BEST, 0, 30),
    FieldTest(
        "stance_closed", "Stance on one leg, eyes closed", "s", More.BETTER, True, 1, Counts.BEST, 0, 30
    ),
    FieldTest(
        "balance_errors",
        "Balance errors, six stances",
        "errors",
        More.WORSE,
        False,
        1,
        Counts.LAST,
        0,
        60,
        BESS,
        STANCES,
        _errors,
    ),
    FieldTest(
        "jumps_in_square",
        "Jumps that ended in the square",
        "%",
        More.BETTER,
        True,
        1,
        Counts.LAST,
        0,
        100,
        parts=SQUARE,
        made=_share,
        direct=False,
    ),
    FieldTest(
        "landing_errors",
        "Landing errors, jump from a 30 cm box",
        "errors",
        More.WORSE,
        False,
        3,
        Counts.MEAN,
        0,
        19,
        "Padua et al. 2009 (mean of three jumps; items from memory)",
    ),
    _sided("external_rotation", "Shoulder external rotation, force", "N", 1_000),
    _sided("internal_rotation", "Shoulder internal rotation, force", "N", 1_000),
    FieldTest(
        "rotation_range", "Shoulder rotation, total range", "deg", More.NEITHER, True, 3, Counts.MEAN, 0, 270
    ),
    _sided("adductor_squeeze", "Adductor strength, force", "N", 2_000),
    FieldTest(
        "one_rep_max",
        "One-rep maximum, measured",
        "kg",
        More.BETTER,
        False,
        3,
        Counts.BEST,
        0,
        1_000,
        by_lift=True,
    ),
    _estimated("one_rep_max_epley", "Epley", "Epley 1985, from memory", _estimate(epley)),
    _estimated("one_rep_max_brzycki", "Brzycki", "Brzycki 1993, from memory", _estimate(brzycki)),
    _estimated("one_rep_max_lombardi", "Lombardi", "Lombardi 1989, from memory", _estimate(lombardi)),
)


def field_test(key: str) -> FieldTest | None:
    """The test of a key, with its lift where the key has one; None for one that is not in the catalogue."""
    own, _, lift = key.partition(OF_LIFT)
    found = next((test for test in CATALOGUE if test.key == own), None)
    if found is None or not lift:
        return found
    return found.with_lift(lift) if found.by_lift and lift.strip() else None


def tried_tests(results: Iterable[Result]) -> tuple[FieldTest, ...]:
    """The tests of the catalogue of which there are results, see `kept_under`."""
    return kept_under({result.test for result in results})


def kept_under(keys: Iterable[str]) -> tuple[FieldTest, ...]:
    """The tests of the catalogue that these keys, of tests or of parts, belong to, each lift for itself.

    In the order of the catalogue, lifts by the alphabet.
    """
    lifts: dict[str, set[str]] = {}
    for key in keys:
        own, _, lift = key.partition(OF_LIFT)
        lifts.setdefault(own, set()).add(lift)
    found: list[FieldTest] = []
    for test in CATALOGUE:
        named = lifts.get(test.key, set()).union(*(lifts.get(part.key, set()) for part in test.parts))
        if "" in named:
            found.append(test)
        if test.by_lift:
            given = {lift.strip() for lift in named} - {""}
            found.extend(map(test.with_lift, sorted(given, key=str.casefold)))
    return tuple(found)


def keys_of(test: FieldTest) -> tuple[str, ...]:
    """Everything that the record may keep tries at a test under: its own key, and those of its parts."""
    return test.key, *(part.key for part in test.parts)
