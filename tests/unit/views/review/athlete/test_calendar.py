"""The calendar of sessions: planned, done, missed, excused, and done without a plan."""

from datetime import date, timedelta

from app.domain.planned import DueState
from app.views.review.athlete.calendar import Standing, calendar_columns, weeks_of
from app.views.widgets.rows_model import Tone
from tests.reviewed import MONDAY, due, record, session

DAYS = [MONDAY + timedelta(days=number) for number in range(5)]


def test_each_day_says_how_its_session_stands_by_shape_and_word() -> None:
    states = (DueState.DONE, DueState.MISSED, DueState.EXCUSED, DueState.NOT_DUE)
    planned = tuple(due(day, state) for day, state in zip(DAYS[:4], states, strict=True))
    runs = (session(DAYS[0]), session(DAYS[4], run_id="extra"))
    (week,) = weeks_of(record(due=planned, sessions=runs))
    columns = calendar_columns()
    assert [column.text(week) for column in columns] == [
        "16 Nov",
        "● done",
        "✕ missed",
        "– excused",
        "○ planned",
        "● not planned",
        "",
        "",
    ]
    assert [column.tone(week) for column in columns if column.tone][:4] == [
        Tone.INK,
        Tone.ATTENTION,
        Tone.QUIET,
        Tone.QUIET,
    ]


def test_a_day_is_told_in_full_to_a_screen_reader() -> None:
    (week,) = weeks_of(record(due=(due(DAYS[0], DueState.MISSED),), sessions=()))
    _, monday, tuesday, *_ = calendar_columns()
    assert monday.spoken is not None
    assert monday.spoken(week) == "Mon 16 Nov 2026\n✕ missed · Landing control"
    assert tuesday.spoken is not None
    assert tuesday.spoken(week) == "Tue 17 Nov 2026 · nothing planned, nothing done"


def test_a_run_that_carried_out_a_plan_is_counted_once() -> None:
    (week,) = weeks_of(record(due=(due(DAYS[0], DueState.DONE),), sessions=(session(DAYS[0]),)))
    assert [mark.standing for mark in week.days[0]] == [Standing.DONE]
    assert week.days[0][0].run_id == f"run-{DAYS[0]}"


def test_the_weeks_are_all_there_the_latest_first_across_the_year_s_end() -> None:
    weeks = weeks_of(record(first=date(2026, 12, 24), last=date(2027, 1, 9), sessions=()))
    assert [week.monday for week in weeks] == [date(2027, 1, 4), date(2026, 12, 28), date(2026, 12, 21)]
    assert all(len(week.days) == 7 for week in weeks)
