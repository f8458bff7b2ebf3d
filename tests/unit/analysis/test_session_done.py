"""What was done of a session: by exercise and side, unknown where it is not known."""

from dataclasses import replace

from app.analysis.session_done import session_done
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, HoldReps, OwnPaceReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.records import BoutOutcome, BoutRecord, RepRecord
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline

TEMPO = TempoReps(Band(8, 10), parse_tempo("3-1-1-0"))
LEFT = Side.LEFT


def timeline(*exercises: Exercise, kind: StageKind = StageKind.REACTIVE) -> Timeline:
    return compile_timeline(Plan("Try-out", (Stage("One", kind, exercises),)))


def record(bout: int, reps: int, attempt: int = 1, **more: object) -> BoutRecord:
    done = tuple(RepRecord(number, LEFT, 0, 1, 0) for number in range(1, reps + 1))
    plain = BoutRecord(bout, attempt, done, BoutOutcome.DONE, 0, 1_000)
    return replace(plain, **more)  # type: ignore[arg-type]


def test_reps_are_summed_over_the_sets_of_an_exercise_and_side() -> None:
    two_sets = timeline(Exercise("Squat", TEMPO, sides=Sides.EACH, sets=2))
    done = session_done(two_sets, [record(0, 10), record(1, 8), record(2, 3)])
    assert [(row.side, row.reps, row.asked, row.met) for row in done.rows] == [
        (Side.LEFT, 13, Band(16, 20), False),
        (Side.RIGHT, 8, Band(16, 20), False),
    ]


def test_tension_contacts_and_faults_are_summed_over_sets_too() -> None:
    """By hand: 10 and 8 reps at 5 s, two contacts each; the lower bound itself is met."""
    jump = Exercise("Squat jump", TEMPO, sets=2, contacts=2)
    faulty = replace(
        record(1, 8), reps=(RepRecord(1, LEFT, 0, 1, 0, faults=("knee in",)), *record(1, 7).reps)
    )
    (row,) = session_done(timeline(jump), [record(0, 10), faulty]).rows
    assert (row.reps, row.tut_ms, row.contacts, row.faulty) == (18, 90_000, 36, 1)
    (row,) = session_done(timeline(jump), [record(0, 8), record(1, 8)]).rows
    assert (row.asked, row.met) == (Band(16, 20), True)
    skips = timeline(Exercise("Skip", WorkTime(Band.exactly(20_000)), sets=2))
    (row,) = session_done(skips, [record(0, 1), record(1, 1)]).rows
    assert (row.tut_ms, row.contacts) == (None, None)


def test_timed_work_without_landings_has_no_contacts() -> None:
    hold = Exercise("Plank", WorkTime(Band.exactly(20_000)))
    assert session_done(timeline(hold, kind=StageKind.ACTIVATION), [record(0, 1)]).contacts == 0


def test_faults_as_frequent_as_one_another_stand_by_name() -> None:
    rep = RepRecord(1, LEFT, 0, 1, 0, faults=("too fast", "knee in", "heel lifts"))
    done = session_done(timeline(Exercise("Squat", TEMPO)), [replace(record(0, 0), reps=(rep,))])
    assert [name for name, _ in done.faults] == ["heel lifts", "knee in", "too fast"]


def test_time_under_tension_is_the_sum_of_the_tempos_digits_times_the_reps_done() -> None:
    """Ten reps at 3-1-1-0 are 50 s: textbook rule, by hand; relaxing between holds is not in it."""
    holds = HoldReps(Band.exactly(3), Band(4_000, 6_000), relax_ms=2_000)
    done = session_done(
        timeline(Exercise("Squat", TEMPO), Exercise("Hold", holds)), [record(0, 10), record(1, 2)]
    )
    assert [row.tut_ms for row in done.rows] == [50_000, 12_000]
    assert done.tut_ms == 62_000


def test_what_has_no_tempo_has_no_time_under_tension_and_not_none_of_it() -> None:
    sticks = Exercise("Hop", StickReps(Band.exactly(3), Band.exactly(3_000)))
    done = session_done(timeline(sticks, Exercise("Throw", OwnPaceReps(Band(4, 5)))), [record(0, 3)])
    assert [row.tut_ms for row in done.rows] == [None, None]
    assert done.tut_ms is None


def test_contacts_are_those_of_the_reps_done_and_unknown_in_timed_work() -> None:
    hops = Exercise("Hop", StickReps(Band.exactly(3), Band.exactly(3_000)), contacts=2)
    skips = Exercise("Skip", WorkTime(Band.exactly(20_000)))
    assert session_done(timeline(hops), [record(0, 2)]).contacts == 4
    done = session_done(timeline(hops, skips), [record(0, 2), record(1, 1)])
    assert [row.contacts for row in done.rows] == [4, None]
    assert done.contacts is None
    calm = session_done(timeline(Exercise("Squat", TEMPO), kind=StageKind.ACTIVATION), [record(0, 8)])
    assert calm.contacts == 0


def test_what_was_said_counts_and_of_several_attempts_the_one_that_stands() -> None:
    attempts = [record(0, 10), record(0, 2, attempt=2, outcome=BoutOutcome.BROKEN_OFF)]
    assert session_done(timeline(Exercise("Squat", TEMPO)), attempts).rows[0].reps == 10
    stated = session_done(timeline(Exercise("Squat", TEMPO)), [record(0, 10, reps_stated=9)])
    assert (stated.rows[0].reps, stated.rows[0].tut_ms) == (9, 45_000)


def test_faults_are_counted_by_name_the_most_frequent_first() -> None:
    reps = (
        RepRecord(1, LEFT, 0, 1, 0, faults=("heel lifts",)),
        RepRecord(2, LEFT, 1, 2, 0, faults=("knee caves in", "heel lifts")),
        RepRecord(3, LEFT, 2, 3, 0, faults=("",)),
    )
    done = session_done(timeline(Exercise("Squat", TEMPO)), [replace(record(0, 0), reps=reps)])
    assert done.faults == (("heel lifts", 2), ("knee caves in", 1))
    assert done.rows[0].faulty == 3
    assert session_done(timeline(Exercise("Squat", TEMPO)), []).rows[0].faulty == 0
