"""Planned sessions: their days, what became of them, and the runs that carried them out."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

import pytest
from dateutil.rrule import WEEKLY, rrule
from hypothesis import given
from hypothesis import strategies as st

from app.domain.planned import (
    ChangeKind,
    DoneRun,
    DueSession,
    DueState,
    Occurrence,
    PlannedChange,
    PlannedSession,
    next_after,
    occurrences,
    settle,
)

AT = datetime(2026, 9, 1, 9, tzinfo=UTC)
TUESDAY = date(2026, 12, 15)
SESSION = PlannedSession(
    "01", "Ines", "Landing control", TUESDAY, AT, "Europe/Lisbon", time(18), date(2027, 1, 12)
)


def change(number: int, kind: ChangeKind, day: date, **more: object) -> PlannedChange:
    made = AT + timedelta(hours=number)
    return PlannedChange(f"c{number}", "01", "Ines", kind, day, made, "Europe/Lisbon", **more)  # type: ignore[arg-type]


def days(found: Iterable[Occurrence]) -> list[date]:
    return [each.day for each in found]


def run(number: int, day: date, title: str = "Landing control", athlete: str = "Ines") -> DoneRun:
    return DoneRun(f"r{number}", athlete, title, AT + timedelta(minutes=number), day)


def test_a_weekly_session_goes_on_over_the_end_of_the_year_and_ends_with_its_last_day() -> None:
    found = occurrences([SESSION], [], date(2026, 12, 1), date(2027, 3, 1))
    assert days(found) == [
        TUESDAY,
        date(2026, 12, 22),
        date(2026, 12, 29),
        date(2027, 1, 5),
        date(2027, 1, 12),
    ]


def test_a_session_without_an_end_is_there_once() -> None:
    found = occurrences([replace(SESSION, until=None)], [], date(2026, 1, 1), date(2030, 1, 1))
    assert days(found) == [TUESDAY]


@given(
    st.dates(date(2019, 1, 1), date(2035, 1, 1)),
    st.integers(0, 400),
    st.integers(-30, 500),
    st.integers(0, 200),
)
def test_the_days_are_those_of_a_weekly_rule(first: date, length: int, from_day: int, span: int) -> None:
    # Outside: dateutil.rrule, the recurrence rules of RFC 5545.
    last = first + timedelta(days=length)
    since = first + timedelta(days=from_day)
    until = since + timedelta(days=span)
    rule = rrule(WEEKLY, dtstart=datetime.combine(first, time()), until=datetime.combine(last, time()))
    expected = [each.date() for each in rule if since <= each.date() <= until]
    assert days(occurrences([replace(SESSION, day=first, until=last)], [], since, until)) == expected


def test_an_excuse_names_its_reason_and_is_taken_back_by_a_later_word_alone() -> None:
    excused = change(1, ChangeKind.EXCUSED, TUESDAY, reason="fever")
    due = change(2, ChangeKind.DUE, TUESDAY)
    (first, *_) = occurrences([SESSION], [excused], TUESDAY, TUESDAY)
    assert first.excused == "fever"
    (again, *_) = occurrences([SESSION], [due, excused], TUESDAY, TUESDAY)
    assert again.excused is None


def test_a_session_that_is_moved_stands_on_its_new_day_alone_even_out_of_the_days_asked_for() -> None:
    moved = change(1, ChangeKind.MOVED, TUESDAY, to_day=date(2026, 12, 17))
    (found,) = occurrences([SESSION], [moved], TUESDAY, date(2026, 12, 21))
    assert (found.day, found.first_day) == (date(2026, 12, 17), TUESDAY)
    assert occurrences([SESSION], [moved], TUESDAY, TUESDAY) == ()


def test_a_session_that_was_ended_is_not_there_from_that_day_on() -> None:
    ended = change(1, ChangeKind.ENDED, date(2026, 12, 29))
    found = occurrences([SESSION], [ended], TUESDAY, date(2027, 2, 1))
    assert days(found) == [TUESDAY, date(2026, 12, 22)]


def test_a_run_of_the_same_day_and_plan_carries_out_the_session() -> None:
    due = occurrences([SESSION], [], TUESDAY, date(2026, 12, 29))
    settled, left = settle(due, [run(1, TUESDAY)], date(2026, 12, 29))
    assert [each.state for each in settled] == [DueState.DONE, DueState.MISSED, DueState.NOT_DUE]
    assert [each.run_id for each in settled] == ["r1", None, None]
    assert left == ()


def test_each_run_counts_once_and_the_others_carried_out_nothing() -> None:
    evening = replace(SESSION, id="02", clock=time(20))
    due = occurrences([SESSION, evening], [], TUESDAY, TUESDAY)
    strangers = [run(3, TUESDAY, "Shoulder rotators"), run(4, TUESDAY, athlete="Hugo")]
    settled, left = settle(due, [run(2, TUESDAY), run(1, TUESDAY), run(5, TUESDAY), *strangers], TUESDAY)
    assert [(each.occurrence.planned.id, each.run_id) for each in settled] == [("01", "r1"), ("02", "r2")]
    assert [each.run_id for each in left] == ["r3", "r4", "r5"]


def test_what_is_excused_is_not_missed_and_leaves_a_run_to_a_session_that_is_due() -> None:
    evening = replace(SESSION, id="02", clock=time(20))
    excused = change(1, ChangeKind.EXCUSED, TUESDAY, reason="fever")
    due = occurrences([SESSION, evening], [excused], TUESDAY, TUESDAY)
    settled, _ = settle(due, [run(1, TUESDAY)], TUESDAY + timedelta(days=1))
    assert [(each.state, each.run_id) for each in settled] == [
        (DueState.EXCUSED, None),
        (DueState.DONE, "r1"),
    ]


def test_an_excused_session_that_was_done_all_the_same_is_done() -> None:
    excused = change(1, ChangeKind.EXCUSED, TUESDAY, reason="exam")
    due = occurrences([SESSION], [excused], TUESDAY, TUESDAY)
    assert settle(due, [run(1, TUESDAY)], TUESDAY)[0] == (DueSession(due[0], DueState.DONE, "r1"),)


def test_the_next_session_is_one_that_is_neither_past_nor_excused() -> None:
    excused = change(1, ChangeKind.EXCUSED, date(2026, 12, 22), reason="exam")
    early = next_after([SESSION], [excused], TUESDAY, time(17, 59))
    late = next_after([SESSION], [excused], TUESDAY, time(18, 1))
    assert early is not None
    assert late is not None
    assert (early.day, late.day) == (TUESDAY, date(2026, 12, 29))
    assert next_after([SESSION], [], date(2027, 1, 12), time(19)) is None
    assert next_after([replace(SESSION, clock=None)], [], date(2027, 1, 12), time(19)) is not None


def test_what_cannot_be_planned_is_refused() -> None:
    with pytest.raises(ValueError, match="until lies from the first day"):
        replace(SESSION, until=TUESDAY - timedelta(days=1))
    with pytest.raises(ValueError, match="until lies from the first day"):
        replace(SESSION, until=date(2037, 12, 30))
    with pytest.raises(ValueError, match="hours and minutes"):
        replace(SESSION, clock=time(18, 0, 30))
    with pytest.raises(ValueError, match="reason"):
        change(1, ChangeKind.EXCUSED, TUESDAY)
    with pytest.raises(ValueError, match="to_day"):
        change(1, ChangeKind.MOVED, TUESDAY)
    with pytest.raises(ValueError, match="to_day"):
        change(1, ChangeKind.DUE, TUESDAY, to_day=TUESDAY)
