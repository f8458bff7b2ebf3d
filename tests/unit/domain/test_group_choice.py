"""Which group session comes of a plan, a roster and what was chosen."""

from dataclasses import replace

import pytest

from app.domain.athlete import Athlete
from app.domain.group import GroupError
from app.domain.group_choice import GroupChoice, chosen_grouping, group_session, station_places
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise
from tests.planned import plan_of, tempo_reps, work_for

PLAN = plan_of(
    Exercise("Row", tempo_reps(4, "2-0-1-0")), Exercise("Hold", work_for(20)), Exercise("Row", work_for(20))
)
FOUR = [Athlete(name) for name in ("Ines", "Bram", "Kaya", "Hugo")]
WRITTEN = Grouping(Form.STATIONS, 30_000, 15_000, 2, ("Hold", "Row"), 2, 8_000)


def test_what_is_chosen_goes_before_the_plan_and_the_plan_before_what_is_usual() -> None:
    written = replace(PLAN, group=WRITTEN)
    assert chosen_grouping(PLAN, GroupChoice()) == Grouping()
    assert chosen_grouping(written, GroupChoice()) == WRITTEN
    assert chosen_grouping(written, GroupChoice(Form.WAVES, 20_000, 10_000, 3, 0)) == Grouping(
        Form.WAVES, 20_000, 10_000, 3, ("Hold", "Row"), 2, 0
    )
    assert chosen_grouping(PLAN, GroupChoice(rounds=3)) == Grouping(rounds=3)


def test_each_form_makes_its_own_session_of_the_same_plan() -> None:
    together, waves = (
        group_session(PLAN, FOUR, replace(WRITTEN, form=form)) for form in (Form.TOGETHER, Form.WAVES)
    )
    assert (together.form, len(together.leader.bouts)) == (Form.TOGETHER, 3)
    assert (waves.form, len(waves.leader.bouts)) == (Form.WAVES, 6)
    assert waves.leader.bouts[1].before_ms == 8_000
    stations = group_session(PLAN, FOUR, WRITTEN)
    assert (stations.form, stations.teams, stations.stations) == (Form.STATIONS, 2, ((0, 1), (0, 0)))
    assert [bout.work_ms for bout in stations.leader.bouts] == [30_000] * 4
    assert stations.leader.bouts[1].before_ms == 15_000


def test_a_station_is_the_first_exercise_of_its_name() -> None:
    assert station_places(PLAN, ("Row",)) == ((0, 0),)
    assert station_places(PLAN, ()) == ()
    with pytest.raises(GroupError, match='"Hop" is no exercise'):
        station_places(PLAN, ("Hop",))
