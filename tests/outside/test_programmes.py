"""Published programmes, each written as a loop of plans: reps, tension, contacts and sessions agree.

All plans here go the whole way: from the tables of a file through the reader and the compiler to the figures.
"""

from collections.abc import Iterable, Sequence

import pytest

from app.domain.compiler import compile_timeline
from app.domain.figures import Figures, session_figures, together
from app.planfile.reader import parse_plan
from tests.plan_tables import Table, toml_of

Week = tuple[int, Sequence[int], Sequence[int]]
"""Sessions a week, and the lower and upper reps of each set of a session."""


def session(*exercises: Table, kind: str = "other") -> Figures:
    """The figures of one session of one stage."""
    stage = {"name": "Programme", "kind": kind, "exercise": list(exercises)}
    text = toml_of({"format": 1, "title": "Programme", "stage": [stage]})
    return session_figures(compile_timeline(parse_plan(text, "programme.toml", None))).figures


def sets_of(low: Sequence[int], high: Sequence[int], **keys: object) -> list[Table]:
    """One exercise a set, since the reps of the sets differ; 10 s a rep where no dose is given."""
    dose = keys or {"every": 10}
    return [{"name": "Lowering", "reps": [one, other], **dose} for one, other in zip(low, high, strict=True)]


def programme(weeks: Iterable[Week]) -> tuple[int, int, int]:
    """Sessions, lower reps and upper reps of a whole programme."""
    sessions = low = high = 0
    for a_week, lows, highs in weeks:
        figures = together(session(*sets_of(lows, highs)) for _ in range(a_week))
        sessions, low, high = sessions + a_week, low + figures.reps.low, high + figures.reps.high
    return sessions, low, high


# Polglass 2020, BMJ Open Sport & Exercise Medicine, table "Progressions in sets and repetitions": sets,
# reps, seconds a rep (20 s, split in halves here since the table does not split them; 3 s up and 3 s down
# from week 6), time under tension a leg and session as printed. Two sessions a week.
EIGHT_WEEKS = [
    (2, 6, "10-0-10-0", 240),
    (2, 6, "10-0-10-0", 240),
    (3, 6, "10-0-10-0", 360),
    (3, 8, "10-0-10-0", 480),
    (3, 8, "10-0-10-0", 480),
    (3, 6, "3-0-3-0", 108),
    (3, 8, "3-0-3-0", 144),
    (3, 10, "3-0-3-0", 180),
]


@pytest.mark.parametrize(("sets", "reps", "tempo", "printed"), EIGHT_WEEKS)
def test_the_published_table_of_time_under_tension_a_leg(
    sets: int, reps: int, tempo: str, printed: int
) -> None:
    figures = session({"name": "Raise", "sides": "each", "sets": sets, "reps": reps, "tempo": tempo})
    assert (figures.tut_left_ms, figures.tut_right_ms) == (printed * 1000, printed * 1000)


def test_eight_weeks_of_two_sessions_add_up_by_the_leg() -> None:
    # Calculated from the same table: 2 x 2232 s.
    total = together(
        session({"name": "Raise", "sides": "each", "sets": sets, "reps": reps, "tempo": tempo})
        for sets, reps, tempo, _ in EIGHT_WEEKS
        for _ in range(2)
    )
    assert total.tut_left_ms == total.tut_right_ms == 4_464_000


# Heavy slow resistance: Beyer 2015, Am J Sports Med 43:1704 (as drawn in a graphic that cites it); 3 s down
# and 3 s up, three sessions a week. Sets and reps by week; the sums are calculated.
SLOW_RESISTANCE = [(3, 15), (3, 12), (3, 12), (4, 10), (4, 10), (4, 8), (4, 8), (4, 8), *[(4, 6)] * 4]


def test_twelve_weeks_of_heavy_slow_resistance() -> None:
    weeks = [
        session({"name": "Squat", "sets": sets, "reps": reps, "tempo": "3030", "rest": 180})
        for sets, reps in SLOW_RESISTANCE
    ]
    assert [week.reps.high for week in weeks] == [45, 36, 36, 40, 40, 32, 32, 32, 24, 24, 24, 24]
    seconds = [(week.tut_ms or 0) / 1000 for week in weeks]
    assert seconds == [270, 216, 216, 240, 240, 192, 192, 192, 144, 144, 144, 144]
    total = together(week for week in weeks for _ in range(3))
    assert total.reps.low == total.reps.high == 1167
    assert total.tut_ms == 7_002_000


# The ten-week hamstring programme after Petersen 2011 (as given by three clinics' pages that cite it; the
# paper's text says 27 sessions in 10 weeks): the sums of reps are calculated.
HAMSTRING: list[Week] = [
    (1, (5, 5), (5, 5)),
    (2, (6, 6), (6, 6)),
    (3, (6, 6, 6), (8, 8, 8)),
    (3, (8, 8, 8), (10, 10, 10)),
    *[(3, (12, 10, 8), (12, 10, 8))] * 6,
]


def test_ten_weeks_of_hamstring_lowering() -> None:
    assert programme(HAMSTRING) == (27, 700, 736)


def same(sets: int, reps: int) -> tuple[Sequence[int], Sequence[int]]:
    """Sets of equal reps."""
    return (reps,) * sets, (reps,) * sets


# Cuthbert 2019/20, Sports Med 50:83-99 (PMC6942028), table 2: total reps of six programmes as printed, at the
# upper end where a range is given; the lower end of the first is calculated.
PRINTED_VOLUMES: list[tuple[str, list[Week], int, int, float]] = [
    (
        "Alonso-Fernandez",
        [
            *[(2, *same(2, 6))] * 2,
            *[(3, (4, 4, 4), (6, 6, 6))] * 2,
            *[(3, *same(3, 8))] * 2,
            *[(3, *same(3, 10))] * 2,
        ],
        444,
        480,
        60,
    ),
    ("Alt", [(3, *same(3, 3))] * 4, 108, 108, 27),
    (
        "Anastasi",
        [
            *[(3, *same(3, 6))] * 2,
            *[(3, *same(3, 7))] * 2,
            *[(3, *same(3, 8))] * 3,
            *[(3, *same(3, 10))] * 3,
        ],
        720,
        720,
        72,
    ),
    ("Clark", [(1, *same(2, 5)), (2, *same(2, 6)), (3, *same(3, 6)), (3, *same(3, 8))], 160, 160, 40),
    (
        "Delahunt",
        [
            (1, *same(2, 5)),
            (2, *same(2, 6)),
            (3, *same(3, 6)),
            (3, *same(3, 8)),
            *[(3, (12, 10, 8), (12, 10, 8))] * 2,
        ],
        340,
        340,
        56.67,
    ),
    ("Freeman", [(2, *same(2, 5)), (2, *same(3, 4)), (2, *same(3, 5)), (2, *same(3, 6))], 110, 110, 27.5),
]


@pytest.mark.parametrize(
    ("weeks", "low", "high", "a_week"),
    [entry[1:] for entry in PRINTED_VOLUMES],
    ids=[entry[0] for entry in PRINTED_VOLUMES],
)
def test_the_published_volumes_of_six_programmes(
    weeks: list[Week], low: int, high: int, a_week: float
) -> None:
    _, lower, upper = programme(weeks)
    assert (lower, upper) == (low, high)
    assert upper / len(weeks) == pytest.approx(a_week, abs=0.005)


def test_contacts_of_a_beginners_session() -> None:
    # Counting rule from memory (NSCA): a landing on both feet is one contact, one on a single leg is one.
    # The sum, 24 + 48 + 20 = 92, is calculated; it lies within the guideline of 80-100 for beginners.
    figures = session(
        {"name": "Jump on two legs", "sets": 3, "reps": 8, "every": 5},
        {"name": "Hop", "sides": "each", "sets": 3, "reps": 8, "every": 5},
        {"name": "Bound", "sides": "alternate", "sets": 2, "reps": 5, "every": 3},
        kind="power",
    )
    assert figures.contacts is not None
    assert figures.contacts.low == figures.contacts.high == 92


def test_eccentric_lowering_twice_a_day_for_twelve_weeks() -> None:
    # Alfredson's heel-drop programme: 3 x 15 with the knee straight and 3 x 15 bent, twice a day, seven
    # days a week, twelve weeks; 180 a day, and 15 120 in 84 days by calculation. The other leg lifts: no
    # concentric phase.
    one = session(
        {"name": "Heel drop, knee straight", "sides": "left", "sets": 3, "reps": 15, "tempo": "3-0-0-0"},
        {"name": "Heel drop, knee bent", "sides": "left", "sets": 3, "reps": 15, "tempo": "3-0-0-0"},
    )
    assert 2 * one.reps.high == 180
    assert together([one] * 2 * 7 * 12).reps.high == 15_120
    assert one.tut_right_ms == 0
