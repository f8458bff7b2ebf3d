"""Records with their corrections: what differs is named, what does not is as it was."""

from datetime import UTC, datetime

from app.domain.correctable import Subject, Value
from app.domain.corrected import (
    Begun,
    corrected,
    corrected_bout,
    corrected_run,
    target_of_bout,
    target_of_rep,
)
from app.domain.corrections import Change, Correction, History, Target, history
from app.domain.fold import Closing
from app.domain.plan import Side
from app.domain.readiness import Readiness
from app.domain.records import BoutOutcome, BoutRecord, RepRecord, RunOutcome

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
AT = datetime(2026, 3, 3, 12, tzinfo=UTC)
REPS = (
    RepRecord(1, Side.LEFT, 0, 4_000, 0),
    RepRecord(2, Side.LEFT, 4_000, 8_000, 0, faults=("trunk rolls",)),
)
RECORD = BoutRecord(0, 1, REPS, BoutOutcome.DONE, 0, 8_000, rpe=5, pain=2)
BEGUN = Begun("Ines", datetime(2026, 3, 2, 17, 30, tzinfo=UTC), "Europe/Lisbon")
CLOSING = Closing(RunOutcome.FINISHED, 70_000, 6, 5_000, "heavy legs")
RUN_ITSELF = Target(Subject.RUN, RUN)


def known(*changes: tuple[Target, str, Value]) -> History:
    """The history of corrections made one after the other."""
    return history(
        Correction(f"{number}", Change(target, field, after, "Tomas", "misheard", AT, "UTC"), None)
        for number, (target, field, after) in enumerate(changes)
    )


def test_a_bout_without_corrections_is_as_it_was() -> None:
    other = BoutRecord(0, 2, REPS, BoutOutcome.DONE, 0, 8_000)
    assert corrected_bout(RUN, RECORD, known((target_of_bout(RUN, other), "rpe", 9))) == RECORD


def test_a_corrected_bout_has_the_new_values_and_names_what_differs() -> None:
    bout = target_of_bout(RUN, RECORD)
    made = corrected_bout(RUN, RECORD, known((bout, "rpe", 7), (bout, "pain", 2), (bout, "reps_stated", 12)))
    assert (made.rpe, made.pain, made.reps_done) == (7, 2, 12)
    assert made.corrected == {"rpe", "reps_stated"}


def test_a_corrected_rep_counts_as_it_is_now() -> None:
    rep = target_of_rep(RUN, RECORD, REPS[0])
    made = corrected_bout(RUN, RECORD, known((rep, "missed", True)))
    assert made.reps_done == 1
    assert made.corrected == {"missed"}
    without = corrected_bout(RUN, RECORD, known((target_of_rep(RUN, RECORD, REPS[1]), "faults", ())))
    assert all(rep.clean for rep in without.reps)
    assert without.corrected == {"faults"}


def test_a_run_names_the_figures_that_rest_on_a_corrected_value() -> None:
    bout = target_of_bout(RUN, RECORD)
    cases: list[tuple[tuple[Target, str, Value], set[str]]] = [
        ((RUN_ITSELF, "athlete", "Tomas"), {"athlete"}),
        ((RUN_ITSELF, "started_at", "2026-03-01T17:30:00+00:00"), {"started_at"}),
        ((RUN_ITSELF, "session_rpe", None), {"session_rpe"}),
        ((RUN_ITSELF, "note", "light legs"), set()),
        ((bout, "reps_stated", 1), {"reps_met", "reps_done"}),
        ((bout, "pain", 3), {"pain"}),
        ((bout, "rpe", 3), set()),
        ((target_of_rep(RUN, RECORD, REPS[0]), "missed", True), {"reps_met", "reps_done"}),
        ((target_of_rep(RUN, RECORD, REPS[0]), "missed", False), set()),
        ((target_of_rep(RUN, RECORD, REPS[0]), "faults", ("hurried",)), set()),
    ]
    for change, figures in cases:
        assert corrected_run(RUN, BEGUN, [RECORD], CLOSING, known(change)).figures == figures


def test_whose_and_when_a_run_was_and_how_it_was_rated_are_as_corrected() -> None:
    made = corrected_run(
        RUN,
        BEGUN,
        [],
        CLOSING,
        known(
            (RUN_ITSELF, "athlete", "Tomas"),
            (RUN_ITSELF, "started_at", "2026-03-01T17:30:00+00:00"),
            (RUN_ITSELF, "session_rpe", 8),
        ),
    )
    assert made.begun == Begun("Tomas", datetime(2026, 3, 1, 17, 30, tzinfo=UTC), "Europe/Lisbon")
    assert (made.closing.session_rpe, made.closing.lag_ms, made.closing.note) == (8, 5_000, "heavy legs")


def test_a_correction_back_to_what_was_written_leaves_nothing_corrected() -> None:
    back = known((RUN_ITSELF, "session_rpe", 6))
    assert corrected_run(RUN, BEGUN, [RECORD], CLOSING, back).figures == set()


def test_readiness_is_corrected_with_sides_as_sides() -> None:
    asked = Readiness(RUN, "Ines", AT, "UTC", sleep=3, pain_side=None)
    target = Target(Subject.READINESS, RUN)
    made, names = corrected(asked, target, known((target, "pain_side", "left"), (target, "sleep", 3)))
    assert made.pain_side is Side.LEFT
    assert names == {"pain_side"}
