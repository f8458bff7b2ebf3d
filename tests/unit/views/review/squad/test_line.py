"""A line of the squad: what the last two weeks came to, in what order, and what others may see of it."""

from dataclasses import replace
from datetime import timedelta

import pytest

from app.analysis.adherence_parts import monday_of
from app.analysis.load_weeks import loads_by_week
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.domain.squad import SquadMember
from app.views.review.squad.columns import reason_words, squad_columns
from app.views.review.squad.line import SquadLine, figures_of, presented, squad_lines
from tests.reviewed import MONDAY, TODAY, due, record, session, totals
from tests.squads import members, nothing, squad


def line_of(of: AthleteRecord) -> SquadLine:
    (line,) = squad_lines((SquadMember(of, None),))
    return line


def cells(line: SquadLine, *, pain: bool = True) -> dict[str, str]:
    return {column.title: column.text(line) for column in squad_columns(pain=pain)}


def test_this_week_and_the_one_before_stand_beside_each_other() -> None:
    runs = (session(MONDAY), session(MONDAY + timedelta(days=7), totals=totals(met=100, tempo_kept=92)))
    planned = (due(MONDAY, DueState.DONE), due(MONDAY + timedelta(days=2), DueState.MISSED))
    of = record(sessions=runs, due=planned, today=TODAY, last=TODAY)
    told = cells(line_of(of))
    assert told["Sessions"] == "– · 1 of 2"
    assert told["Reps"] == "100\u202f% · 90\u202f%"
    assert told["Tempo"] == "100\u202f% · 87\u202f%"


def test_weeks_without_a_session_have_no_bar_and_incomplete_ones_what_is_known() -> None:
    first = MONDAY - timedelta(weeks=6)
    runs = (session(first), session(MONDAY), session(MONDAY + timedelta(days=1), rpe=None))
    line = line_of(record(first=first, last=TODAY, sessions=runs))
    assert [bar.known for bar in line.loads] == [200.0, None, None, None, None, None, 200.0, None]
    assert line.loads[0].total == 200.0
    assert [bar.total for bar in line.loads][6:] == [None, None]


def test_the_bars_are_the_weeks_of_the_analysis_as_far_as_there_were_sessions() -> None:
    for of in squad(weeks=8):
        line = line_of(of)
        trained = {monday_of(each.day) for each in of.sessions}
        expected = [
            (week.total, week.known) if week.monday in trained else (None, None) for week in loads_by_week(of)
        ]
        assert [(bar.total, bar.known) for bar in line.loads] == [pytest.approx(each) for each in expected]


def test_sessions_before_those_of_the_record_have_their_bars_too() -> None:
    first = MONDAY - timedelta(weeks=6)
    of = record(first=MONDAY - timedelta(weeks=2), last=TODAY, sessions=(session(MONDAY),))
    before = (first, 180.0), (first + timedelta(days=2), None), (first + timedelta(weeks=1), 90.0)
    (line,) = squad_lines((SquadMember(replace(of, since=first), None, before=before),))
    assert [bar.known for bar in line.loads] == [180.0, 90.0, None, None, None, None, 200.0, None]
    assert [bar.total for bar in line.loads[:2]] == [None, 90.0]


def test_a_week_of_no_effort_at_all_is_known_and_has_a_bar_of_nought() -> None:
    line = line_of(record(sessions=(session(MONDAY, rpe=0),)))
    assert (line.loads[6].total, line.loads[6].known) == (0.0, 0.0)


def test_of_nobody_known_every_cell_is_a_dash() -> None:
    told = cells(line_of(nothing()))
    assert told["Last session"] == "–"
    assert told["Sessions"] == told["Reps"] == told["Tempo"] == "– · –"
    assert told["Pain"] == told["Readiness"] == "–"
    assert set(told["Load, 8 weeks"].split(", ")) == {"–"}


def test_pain_of_the_last_session_stands_there_and_who_hurts_comes_first() -> None:
    hurt = record(athlete="Zoe", sessions=(session(MONDAY + timedelta(days=4), pain=7, pain_next_morning=6),))
    fine = record(athlete="Anouk")
    lines = squad_lines((SquadMember(fine, MONDAY), SquadMember(hurt, MONDAY)))
    assert [line.athlete for line in lines] == ["Zoe", "Anouk"]
    told = cells(lines[0])
    assert told["Pain"] == "▲ 7"
    assert told["Why first"] == "Pain 7 on 20 Nov, 6 on the next morning: not settled."
    assert reason_words(lines[0].attention.reasons[0]) == told["Why first"]


def test_figures_of_a_line_are_of_the_two_weeks_it_shows() -> None:
    line = squad_lines(members(squad(weeks=4)))[0]
    weeks = {figure.of for figure in figures_of(line) if figure.name == "Rep adherence"}
    assert weeks <= {"2026-11-16", "2026-11-23"}
    assert weeks


def test_others_see_numbers_for_names_in_an_order_that_tells_nothing_and_neither_pain_nor_reasons() -> None:
    lines = squad_lines(members(squad(weeks=4)))
    shown = presented(lines)
    assert [line.called for line in shown] == [f"Athlete {number}" for number in range(1, 13)]
    assert [line.athlete for line in shown] == sorted(line.athlete for line in lines)
    told = cells(shown[0], pain=False)
    assert "Pain" not in told
    assert told["Why first"] == ""
    assert [line.called for line in presented(lines, "Hugo") if line.athlete == "Hugo"] == ["Hugo"]


def test_a_line_keeps_what_is_owed() -> None:
    (line,) = squad_lines((replace(SquadMember(record(), MONDAY), owed=()),))
    assert cells(line)["Owed"] == ""
