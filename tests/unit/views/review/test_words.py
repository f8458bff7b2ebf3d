"""Review in words: the unknown is a dash, units stand beside figures, all and none are not rounded to."""

from datetime import UTC, date, datetime

import pytest

from app.analysis.adherence import reps_by_week
from app.analysis.load import loads_by_session
from app.domain.records import RunOutcome
from app.views.review import words
from tests.summaries import summary

THIN = "\u202f"


@pytest.mark.parametrize(
    ("share", "text"),
    [(None, "–"), (0.0, "0 %"), (1.0, "100 %"), (0.998, "99 %"), (0.001, "1 %"), (0.625, "62 %")],
)
def test_only_none_and_all_are_nought_and_a_hundred_percent(share: float | None, text: str) -> None:
    assert words.percent(share) == text.replace(" ", THIN)


@pytest.mark.parametrize(
    ("value", "text"), [(None, "–"), (0, "0"), (1452.4, f"1{THIN}452"), (999.5, f"1{THIN}000")]
)
def test_a_figure_is_whole_and_the_unknown_a_dash(value: float | None, text: str) -> None:
    assert words.whole(value) == text


@pytest.mark.parametrize(
    ("first", "last", "text"),
    [
        (date(2026, 11, 16), date(2026, 11, 22), "16 – 22 Nov 2026"),
        (date(2026, 9, 28), date(2026, 10, 4), "28 Sep – 4 Oct 2026"),
        (date(2026, 12, 28), date(2027, 1, 3), "28 Dec 2026 – 3 Jan 2027"),
        (date(2026, 11, 16), date(2026, 11, 16), "16 Nov 2026"),
    ],
)
def test_a_span_of_days_names_month_and_year_once(first: date, last: date, text: str) -> None:
    assert words.span(first, last) == text


def test_a_moment_says_its_distance_from_utc_only_where_asked() -> None:
    at = datetime(2026, 11, 21, 18, 5, tzinfo=UTC)
    assert words.moment(at) == "Sat 21 Nov 2026, 18:05"
    assert words.moment(at, offset=True) == "Sat 21 Nov 2026, 18:05 UTC+00:00"


@pytest.mark.parametrize(
    ("outcome", "text"),
    [(RunOutcome.FINISHED, "finished"), (RunOutcome.ABANDONED, "abandoned"), (None, "not ended")],
)
def test_an_outcome_is_a_word(outcome: RunOutcome | None, text: str) -> None:
    assert words.outcome(summary(outcome=outcome)) == text


@pytest.mark.parametrize(("value", "text"), [(None, "–"), (0, "0"), (5, "5"), (6, "▲ 6")])
def test_pain_above_the_limit_has_a_shape_beside_it(value: int | None, text: str) -> None:
    assert words.pain(value) == text


def test_a_week_says_its_share_interval_reps_and_sessions() -> None:
    (week,) = reps_by_week([summary(reps_met=90, reps_done=92)])
    assert words.week_line(week) == (
        f"Week 47 · 16 – 22 Nov 2026 · 90{THIN}% (83 to 94{THIN}%) · 90 of 100 reps, 2 beyond · 1 session"
    )


def test_a_week_off_says_so_and_one_still_going_on_too() -> None:
    runs = [
        summary(started_at=datetime(2026, 11, 2, 9, tzinfo=UTC)),
        summary(outcome=None, elapsed_ms=None, started_at=datetime(2026, 11, 17, 9, tzinfo=UTC)),
    ]
    lines = [words.week_line(week) for week in reps_by_week(runs)]
    assert lines[1] == "Week 46 · 9 – 15 Nov 2026 · no session"
    assert lines[2] == "Week 47 · 16 – 22 Nov 2026 · no session ended · 1 run not ended"


@pytest.mark.parametrize(
    ("changes", "text"),
    [
        ({}, "RPE 5 × 40 min = 200 AU"),
        ({"session_rpe": None}, "RPE not rated, load unknown"),
        ({"outcome": None, "elapsed_ms": None}, "RPE 5, not ended, load unknown"),
    ],
)
def test_a_session_says_how_its_load_came_about(changes: dict[str, object], text: str) -> None:
    (session,) = loads_by_session([summary(**changes)])
    assert words.load_line(session) == f"Sat 21 Nov 2026, 18:05 · {text} · Hugo"


def test_the_heading_says_whether_data_are_invented() -> None:
    one, other = summary(), summary(invented=False, athlete="Ines")
    assert words.heading_line([one]) == "1 session · 21 Nov 2026 · invented data"
    assert words.heading_line([one, other]) == "2 sessions · 2 athletes · 21 Nov 2026 · 1 of them invented"
    assert words.heading_line([other]) == "1 session · 21 Nov 2026"
