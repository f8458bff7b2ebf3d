"""What the page of an athlete holds before it is shown."""

from datetime import UTC, datetime, timedelta

from app.analysis.athlete_figures import athlete_figures
from app.domain.keeping import Note
from app.domain.plan import Side
from app.views.review.athlete.head import ORDER, head_figures
from app.views.review.athlete.view import athlete_view
from app.views.review.figure_words import PAINFUL
from tests.reviewed import MONDAY, lights, record, result, session
from tests.squads import nothing, season


def test_the_figures_at_the_top_are_of_the_whole_time_or_the_last_known() -> None:
    whole = season()
    chosen = {figure.name: figure for figure in head_figures(athlete_figures(whole))}
    assert list(chosen) == list(ORDER)
    assert chosen["Rep adherence"].of == ""
    assert chosen["Load of the week"].of == "2026-11-16"
    assert all(figure.value is not None for figure in chosen.values())


def test_where_nothing_is_known_each_says_why() -> None:
    chosen = head_figures(athlete_figures(nothing()))
    assert all(figure.value is None and figure.reason for figure in chosen)
    assert len(chosen) >= 6


def test_a_later_unknown_week_does_not_hide_the_last_known_one() -> None:
    runs = (session(MONDAY), session(MONDAY + timedelta(days=7), rpe=None))
    of = record(sessions=runs, last=MONDAY + timedelta(days=13), today=MONDAY + timedelta(days=14))
    chosen = {figure.name: figure for figure in head_figures(athlete_figures(of))}
    assert (chosen["Load of the week"].value, chosen["Load of the week"].of) == (200.0, "2026-11-16")


def test_without_pain_neither_pain_nor_notes_are_worked_out() -> None:
    note = Note("note", "Hugo", "Hurts.", "Coach", datetime(2026, 11, 18, tzinfo=UTC), "UTC")
    assert athlete_view(season(), (note,)).notes == (note,)
    view = athlete_view(season(), (note,), pain=False)
    assert "Highest pain" not in [figure.name for figure in view.head]
    assert not any(
        figure.name in PAINFUL for charted in view.charts for why in charted.whys for figure in why
    )
    assert view.notes == ()


def test_the_error_of_a_test_is_known_from_ten_repeated_tries_on() -> None:
    days = [MONDAY - timedelta(weeks=number) for number in range(10)]
    tries = [
        result(30 + attempt, "jump_height", day=day, side=Side.BOTH, attempt=attempt, id=f"{day}-{attempt}")
        for day in days
        for attempt in (1, 2)
    ]
    assert athlete_view(record(results=tuple(tries), tries=lights(tries[:18]))).errors == {}
    assert list(athlete_view(record(results=tuple(tries), tries=lights(tries))).errors) == ["jump_height"]
