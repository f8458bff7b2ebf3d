"""What the charts of one athlete show: the figures of the analysis, gaps for the unknown, never a nought."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from app.analysis.figures_adherence import adherence_figures
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete import result_chart as course
from app.views.review.athlete.buckets import buckets, step_of
from app.views.review.athlete.charted import Times
from app.views.review.athlete.kept_charts import reps_chart, sessions_chart, tempo_chart
from app.views.review.athlete.load_charts import load_charts
from app.views.review.athlete.session_chart import session_chart
from app.views.review.athlete.side_chart import side_chart, sided_exercises
from app.views.review.athlete.work_charts import work_chart
from app.views.review.figure_words import as_text
from tests.reviewed import MONDAY, due, part, record, result, session, totals
from tests.squads import nothing, season, unknown


def times_of(of: AthleteRecord) -> Times:
    step = step_of(of.first, of.last)
    return Times(buckets(of.first, of.last, step), step, of.today)


def test_shares_by_week_are_the_figures_of_the_analysis_with_their_bounds() -> None:
    whole = season()
    figures = {(each.name, each.of): each for each in adherence_figures(whole)}
    times = times_of(whole)
    for charted, name in (
        (reps_chart(whole, times), "Rep adherence"),
        (tempo_chart(whole, times), "Tempo adherence"),
        (sessions_chart(whole, times), "Session adherence"),
    ):
        (series,) = charted.data.all_series
        expected = [figures.get((name, bucket.of)) for bucket in times.buckets]
        known = [each.value if each else None for each in expected]
        assert list(series.values) == known
        assert list(series.low) == [each.low if each else None for each in expected]
        assert sum(value is not None for value in known) >= 10
        assert [why[0].value for why in charted.whys] == known


def test_a_week_off_is_a_gap_and_no_nought() -> None:
    whole = season()
    (series,) = reps_chart(whole, times_of(whole)).data.all_series
    assert series.values[4] is None
    assert series.words[4] == "–"
    assert 0.0 not in series.values


def test_the_week_that_is_not_over_is_no_gap_yet() -> None:
    whole = season()
    data = reps_chart(whole, times_of(whole)).data
    assert data.all_series[0].values[-1] is None
    assert data.gaps_up_to == len(data.labels) - 1


def test_a_week_of_rest_days_and_one_unknown_session_is_a_dash_and_no_nought() -> None:
    found = record(sessions=(session(MONDAY, rpe=None),))
    whole, known = load_charts(found, times_of(found))[0].data.all_series
    assert (whole.values, known.values, whole.unknown) == ((None,), (None,), (0,))


def test_excused_sessions_are_said_and_not_counted() -> None:
    days = [MONDAY + timedelta(days=number) for number in range(3)]
    states = (DueState.DONE, DueState.EXCUSED, DueState.MISSED)
    found = record(due=tuple(due(day, state) for day, state in zip(days, states, strict=True)))
    charted = sessions_chart(found, times_of(found))
    assert charted.data.all_series[0].values == (0.5,)
    assert charted.data.spoken[0].endswith("1 of 2 · excused: 1")


def test_over_years_shares_are_gathered_by_month() -> None:
    whole = season(weeks=150)
    charted = reps_chart(whole, times_of(whole))
    met = sum(figure.inputs[0][1] for (figure,) in charted.whys if isinstance(figure.inputs[0][1], int))
    assert charted.data.unit == "month"
    assert met == sum(each.totals.met for each in whole.sessions if each.totals)
    assert as_text(charted.whys[0][0]).startswith("Rep adherence · Jan 2024")


def test_a_week_with_an_unknown_day_has_no_load_but_says_what_is_known_of_it() -> None:
    runs = (session(MONDAY), session(MONDAY + timedelta(days=2), rpe=None))
    found = record(sessions=runs)
    week, day, monotony = load_charts(found, times_of(found))
    whole, known = week.data.all_series
    assert whole.values == (None,)
    assert known.values == (200.0,)
    assert "200 AU known, 1 of 7 days are not" in week.data.spoken[0]
    (days,) = day.data.all_series
    assert days.values == (200.0, 0.0, None, 0.0, 0.0, 0.0, 0.0)
    assert days.unknown == (2,)
    assert [series.values for series in monotony.data.all_series] == [(None,), (None,)]


def test_a_complete_week_has_load_monotony_and_strain() -> None:
    found = record()
    week, _, monotony = load_charts(found, times_of(found))
    whole, known = week.data.all_series
    assert (whole.values, known.values) == ((600.0,), (None,))
    alike, strain = monotony.data.all_series
    assert alike.values[0] == pytest.approx(85.714285 / 106.904496, rel=1e-6)
    assert strain.values[0] == pytest.approx(600 * 85.714285 / 106.904496, rel=1e-6)


def test_work_is_unknown_as_soon_as_a_part_of_it_is() -> None:
    found = record(sessions=(session(MONDAY), session(MONDAY + timedelta(days=1), totals=None)))
    contacts, tension = work_chart(found, times_of(found)).data.all_series
    assert (contacts.values, contacts.unknown) == ((None,), (0,))
    assert (tension.values, tension.unknown) == ((None,), (0,))


def test_effort_and_pain_of_a_session_and_which_of_it_is_unknown() -> None:
    runs = (
        session(MONDAY, pain=7),
        session(MONDAY + timedelta(days=1), rpe=None, pain=None, pain_next_morning=None),
    )
    charted = session_chart(record(sessions=runs))
    effort, during, after = charted.data.all_series
    assert (effort.values, effort.unknown) == ((5.0, None), (1,))
    assert (during.values, during.unknown) == ((7.0, None), (1,))
    assert after.values == (0.0, None)
    assert during.words[0] == "▲ 7"
    assert charted.data.spoken[1].startswith(
        "Tue 17 Nov 2026 · RPE not rated · pain unknown · next morning not answered"
    )


def test_without_pain_nothing_of_it_is_left() -> None:
    charted = session_chart(record(sessions=(session(pain=7),)), pain=False)
    told = " ".join((*charted.data.spoken, charted.data.as_text(), charted.data.aside, charted.heading))
    assert "pain" not in told.lower()
    assert [figure.name for figure in charted.whys[0]] == ["Effort of the session"]


def test_sides_are_compared_raw_in_what_the_exercise_is_measured_in() -> None:
    parts = (
        part(Side.LEFT, totals=totals(clean=20)),
        part(Side.RIGHT, totals=totals(clean=26)),
        part(Side.LEFT, exercise="Hold", landings=False, totals=totals(tut_ms=90_000)),
        part(Side.RIGHT, exercise="Hold", landings=False, totals=totals(tut_ms=96_000)),
    )
    found = record(sessions=(session(parts=parts),))
    assert sided_exercises(found) == ("Drop landing", "Hold")
    landings, hold = side_chart(found, "Drop landing"), side_chart(found, "Hold")
    assert [series.values for series in landings.data.all_series] == [(20.0,), (26.0,)]
    assert [series.values for series in hold.data.all_series] == [(90.0,), (96.0,)]
    assert "seconds under tension" in hold.data.aside


def test_one_side_alone_leaves_a_gap_on_the_other() -> None:
    later = MONDAY + timedelta(days=7)
    runs = (session(parts=(part(Side.LEFT), part(Side.RIGHT))), session(later, parts=(part(Side.LEFT),)))
    data = side_chart(record(sessions=runs, last=later), "Drop landing").data
    assert [series.values for series in data.all_series] == [(88.0, 88.0), (88.0, None)]
    assert data.at == (0.0, 1.0)


def test_results_have_their_days_their_error_and_a_trend_from_eight_points_on() -> None:
    days = [date(2026, 9, 1) + timedelta(weeks=number) for number in range(8)]
    results = tuple(
        result(30 + number, "jump_height", day=day, side=Side.BOTH) for number, day in enumerate(days)
    )
    found = record(first=days[0], results=results)
    (test,) = course.tests_done(found)
    data = course.result_chart(found, test, {"jump_height": 2.5}).data
    (panel,) = data.panels
    assert panel.series[0].values == tuple(float(30 + number) for number in range(8))
    assert (panel.zones[0].low, panel.zones[0].high) == (27.5, 32.5)
    assert panel.slopes[0].y == pytest.approx((30.0, 37.0))
    assert panel.bottom <= 27.5
    assert panel.top >= 37.0
    few = replace(found, results=results[:7])
    assert course.result_chart(few, test, {}).data.panels[0].slopes == ()
    assert course.result_chart(few, test, {}).data.panels[0].zones == ()


@pytest.mark.parametrize("of", [nothing(), unknown()], ids=["nothing", "unknown"])
def test_of_somebody_unknown_every_chart_is_a_gap_or_a_sentence(of: AthleteRecord) -> None:
    times = times_of(of)
    exercises, tests = sided_exercises(of), course.tests_done(of)
    charts = (
        reps_chart(of, times),
        tempo_chart(of, times),
        sessions_chart(of, times),
        work_chart(of, times),
        session_chart(of),
        side_chart(of, exercises[0] if exercises else None),
        course.result_chart(of, tests[0] if tests else None, {}),
    )
    for charted in charts:
        assert all(value is None for series in charted.data.all_series for value in series.values)
        assert charted.data.empty
