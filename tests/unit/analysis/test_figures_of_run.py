"""The figures of one session: each is that of its bouts and answers, and says why where it is unknown."""

from dataclasses import replace

import pytest

from app.analysis.figure import Figure
from app.analysis.figures_of_run import run_figures
from app.domain.dose import DoseKind
from app.domain.fold import Closing
from app.domain.keeping import Rating, RatingKind
from app.domain.records import BoutOutcome, RunOutcome
from app.domain.tolerance import Tolerance
from tests.answered import answers
from tests.reviewing import asked, done

ENDED = Closing(RunOutcome.FINISHED, 40 * 60_000, 6, 0, None)
REPS = asked(0).low


def by_name(*of: object, **more: object) -> dict[str, Figure]:
    return {figure.name: figure for figure in run_figures(*of, **more)}  # type: ignore[arg-type]


def test_load_is_effort_times_minutes() -> None:
    # 6 x 40 = 240 (Foster et al. 2001).
    found = by_name(ENDED, [(asked(0), done(0))])
    assert found["Load of the session"].value == 240
    assert dict(found["Load of the session"].inputs) == {"session RPE": 6, "minutes": 40}
    assert found["Effort of the session"].value == 6


@pytest.mark.parametrize(("rpe", "elapsed"), [(None, 60_000), (5, None)])
def test_without_effort_or_length_there_is_no_load(rpe: int | None, elapsed: int | None) -> None:
    figure = by_name(replace(ENDED, session_rpe=rpe, elapsed_ms=elapsed), [])["Load of the session"]
    assert (figure.value, figure.reason) == (None, "The effort or the length of the session is unknown.")
    assert len(figure.unknown) == 1


def test_reps_are_those_of_the_attempt_that_stands_up_to_what_was_asked() -> None:
    broken = done(0, 1, outcome=BoutOutcome.BROKEN_OFF, reps_stated=1)
    again = done(0, attempt=2, reps_stated=REPS + 3)
    found = by_name(ENDED, [(asked(0), broken), (asked(0), again), (asked(1), None)])
    reps = found["Rep adherence"]
    assert dict(reps.inputs) == {"reps met": REPS, "reps prescribed": 2 * REPS, "extra reps": 3}
    assert found["Extra reps"].value == 3


def test_nothing_asked_for_is_no_nought() -> None:
    found = by_name(ENDED, [])
    assert (found["Rep adherence"].value, found["Extra reps"].value) == (None, None)
    assert found["Tempo adherence"].reason == "No rep was led to a tempo."
    assert found["Pain in the session"].reason == "The athlete has not rated it."


def test_tempo_says_by_which_tolerance_it_was_judged() -> None:
    led = asked(0, dose=DoseKind.TEMPO, rep_tut_ms=5_000)
    figure = by_name(ENDED, [(led, done(0))], tolerance=Tolerance(20, 400))["Tempo adherence"]
    assert dict(figure.inputs)["tolerance, %"] == 20
    # Eight reps were led and the fifth was missed.
    assert (figure.value, figure.n) == (7 / 8, 8)


def test_pain_is_the_highest_and_stands_beside_the_morning_and_what_was_before() -> None:
    after = Rating("1", "run-1", RatingKind.NEXT_MORNING_PAIN, 3, answers().at, "UTC")
    bouts = [(asked(0), done(0, pain=2)), (asked(1), done(1, pain=6))]
    found = by_name(ENDED, bouts, [after], [answers(pain=1)])
    assert (found["Pain in the session"].value, dict(found["Pain in the session"].inputs)["zone"]) == (
        6,
        "stop",
    )
    assert found["Pain on the next morning"].value == 3
    assert dict(found["Pain on the next morning"].inputs) == {"before training": 1}
    unanswered = by_name(ENDED, bouts, [replace(after, value=None)])["Pain on the next morning"]
    assert (unanswered.value, unanswered.reason) == (None, "The athlete has not rated it.")
    assert by_name(ENDED, bouts)["Pain on the next morning"].reason == "It was not asked."


def test_readiness_before_it_is_the_sum_of_four_answers_or_says_which_is_missing() -> None:
    # 3 + 2 + 4 + 3 = 12 (Hooper et al. 1995).
    whole = answers(sleep=3, fatigue=2, stress=4, soreness=3)
    assert by_name(ENDED, [], readiness=[whole])["Readiness"].value == 12
    part = by_name(ENDED, [], readiness=[replace(whole, stress=None)])["Readiness"]
    assert (part.value, part.unknown) == (None, ("stress",))
    assert "Readiness" not in by_name(ENDED, [])
