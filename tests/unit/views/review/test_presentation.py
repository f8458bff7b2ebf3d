"""Review as it may be shown to others."""

from app.views.review.presentation import presented
from tests.summaries import summary

RUNS = (
    summary(athlete="Ines", pain=6),
    summary(athlete="Hugo"),
    summary(athlete="ada", corrected=frozenset({"pain", "session_rpe"})),
)


def test_nobody_has_pain_and_only_the_one_shown_has_a_name() -> None:
    shown = presented(RUNS, "Hugo")
    assert [run.athlete for run in shown] == ["Athlete 2", "Hugo", "Athlete 1"]
    assert {run.pain for run in shown} == {None}
    assert shown[2].corrected == frozenset({"session_rpe"})


def test_with_nobody_chosen_all_go_by_numbers() -> None:
    assert [run.athlete for run in presented(RUNS, None)] == ["Athlete 3", "Athlete 2", "Athlete 1"]


def test_everything_else_stays() -> None:
    (run,) = presented(RUNS[:1], "Ines")
    assert run == summary(athlete="Ines", pain=None)
