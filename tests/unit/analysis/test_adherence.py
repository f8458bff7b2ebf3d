"""Weeks of reps: nothing lost, nothing counted twice, and a week without a session is a gap."""

import random
from datetime import UTC, date, datetime
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.adherence import WeekReps, reps_by_week, wilson
from app.analysis.local_time import local_start
from app.domain.records import RunOutcome, RunSummary
from tests.strategies import summaries
from tests.summaries import summary

many = st.lists(summaries(), max_size=30, unique_by=lambda run: run.run_id)


def on(*moment: int) -> datetime:
    return datetime(*moment, tzinfo=UTC)  # type: ignore[arg-type, misc]


@given(many)
def test_the_weeks_add_up_to_the_total_of_the_runs_that_ended(runs: list[RunSummary]) -> None:
    weeks = reps_by_week(runs)
    ended = [run for run in runs if run.outcome is not None]
    assert sum(week.sessions for week in weeks) == len(ended)
    assert sum(week.reps_met or 0 for week in weeks) == sum(run.reps_met for run in ended)
    assert sum(week.reps_prescribed or 0 for week in weeks) == sum(run.reps_prescribed for run in ended)
    assert sum(week.reps_extra or 0 for week in weeks) == sum(run.reps_done - run.reps_met for run in ended)
    assert sum(week.not_ended for week in weeks) == len(runs) - len(ended)


@given(many, st.randoms(use_true_random=False))
def test_the_order_of_the_runs_does_not_matter(runs: list[RunSummary], chance: random.Random) -> None:
    shuffled = list(runs)
    chance.shuffle(shuffled)
    assert reps_by_week(shuffled) == reps_by_week(runs)


@given(many)
def test_weeks_follow_each_other_without_a_hole_and_each_run_lies_in_its_own(runs: list[RunSummary]) -> None:
    weeks = reps_by_week(runs)
    assert all((later.monday - earlier.monday).days == 7 for earlier, later in pairwise(weeks))
    named = {(week.year, week.week): week for week in weeks}
    for run in runs:
        year, number, _ = local_start(run).isocalendar()
        assert named[year, number].sessions + named[year, number].not_ended >= 1


@given(many)
def test_a_week_without_a_session_is_unknown_and_never_zero(runs: list[RunSummary]) -> None:
    for week in reps_by_week(runs):
        if week.sessions == 0:
            assert (week.reps_met, week.reps_prescribed, week.reps_extra) == (None, None, None)
            assert (week.share, week.interval) == (None, None)
        elif week.reps_prescribed:
            assert week.share is not None
            assert week.interval is not None
            assert 0 <= week.interval.low <= week.share <= week.interval.high <= 1


def test_no_runs_make_no_weeks() -> None:
    assert reps_by_week([]) == ()


def test_a_week_between_two_is_a_gap() -> None:
    weeks = reps_by_week([summary(started_at=on(2026, 9, 2, 9)), summary(started_at=on(2026, 9, 16, 9))])
    assert [(week.week, week.reps_met) for week in weeks] == [(36, 90), (37, None), (38, 90)]


def test_a_session_with_nothing_prescribed_has_no_share_but_is_counted() -> None:
    (week,) = reps_by_week([summary(reps_prescribed=0, reps_met=0, reps_done=0)])
    assert (week.sessions, week.reps_met, week.share, week.interval) == (1, 0, None, None)


def test_a_run_that_has_not_ended_is_not_held_against_the_athlete() -> None:
    (week,) = reps_by_week([summary(), summary(outcome=None, elapsed_ms=None, reps_met=3, reps_done=3)])
    assert (week.reps_met, week.reps_prescribed, week.not_ended) == (90, 100, 1)
    (alone,) = reps_by_week([summary(outcome=None, elapsed_ms=None)])
    assert alone == WeekReps(date(2026, 11, 16), 0, None, None, None, 1)


def test_an_abandoned_run_counts_by_its_reps_and_extra_reps_stand_apart() -> None:
    (week,) = reps_by_week(
        [
            summary(outcome=RunOutcome.ABANDONED, reps_met=20, reps_done=20),
            summary(reps_met=100, reps_done=130),
        ]
    )
    assert (week.reps_met, week.reps_prescribed, week.reps_extra) == (120, 200, 30)
    assert week.share == pytest.approx(0.6)


@pytest.mark.parametrize(
    ("moment", "zone", "monday"),
    [
        # Copenhagen leaves summer time on Sunday 25 October 2026: 22:30 UTC is Monday before, Sunday after.
        ((2026, 10, 18, 22, 30), "Europe/Copenhagen", date(2026, 10, 19)),
        ((2026, 10, 25, 22, 30), "Europe/Copenhagen", date(2026, 10, 19)),
        ((2026, 10, 25, 23, 0), "Europe/Copenhagen", date(2026, 10, 26)),
        # Auckland is 13 h ahead in January and 12 h in July.
        ((2026, 1, 4, 11, 0), "Pacific/Auckland", date(2026, 1, 5)),
        ((2026, 7, 5, 11, 30), "Pacific/Auckland", date(2026, 6, 29)),
        ((2026, 7, 5, 12, 0), "Pacific/Auckland", date(2026, 7, 6)),
    ],
)
def test_the_week_is_the_one_on_the_wall_where_the_run_was_done(
    moment: tuple[int, ...], zone: str, monday: date
) -> None:
    (week,) = reps_by_week([summary(started_at=on(*moment), zone=zone)])
    assert week.monday == monday


def test_a_named_zone_stands_in_for_each_runs_own() -> None:
    run = summary(started_at=on(2026, 1, 4, 11), zone="Pacific/Auckland")
    assert reps_by_week([run])[0].monday == date(2026, 1, 5)
    assert reps_by_week([run], "UTC")[0].monday == date(2025, 12, 29)


@pytest.mark.parametrize("zone", ["Nowhere/Atall", "", "../etc", "Europe"])
def test_a_zone_this_machine_does_not_know_is_read_as_utc(zone: str) -> None:
    began = local_start(summary(zone=zone))
    assert (began.hour, began.utcoffset()) == (17, on(2026, 1, 1).utcoffset())


@pytest.mark.parametrize(("k", "n"), [(-1, 5), (6, 5), (0, -1)])
def test_what_is_no_proportion_is_refused(k: int, n: int) -> None:
    with pytest.raises(ValueError, match="no proportion"):
        wilson(k, n)
