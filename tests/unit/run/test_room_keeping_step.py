"""Keeping step in a room: pauses at stations, windows that end, empty slots, and everybody gone."""

import random
from collections import Counter

import pytest

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.fold import fold_run
from app.domain.group_stations import Rotation, stations
from app.domain.group_together import together
from app.domain.group_waves import waves
from app.domain.grouping import Form
from app.domain.plan import Exercise, Sides
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Fact,
    RepDone,
    RepMissed,
    RunEnded,
    RunOutcome,
    SkipReason,
)
from app.run.intents import Begin, EndBout, Pause, Resume, SkipExercise, Stop
from app.run.room_intents import Arrive, Depart, GoToSlot
from app.run.room_restore import restore_room
from app.run.state import Stand
from tests.planned import holds, plan_of, tempo_reps, work_for
from tests.unit.run.test_room import PLAN, SQUAD, Hall, drive

SLOW = Exercise("Slow squat", tempo_reps(3, "4-2-4-0"))
QUICK = Exercise("Row", tempo_reps(9, "1-0-1-0"))
PLANK = Exercise("Plank", work_for(30))
LUNGE = Exercise("Lunge", tempo_reps(3, "2-0-2-0"), sides=Sides.EACH)
TWO = (Athlete("Anouk"), Athlete("Bram"))


def circuit(*exercises: Exercise, count: int = 2) -> Hall:
    plan = plan_of(*exercises, lead_in_ms=3_000, side_change_ms=4_000)
    athletes = tuple(Athlete(name) for name in ("Anouk", "Bram", "Chidi")[:count])
    return Hall(stations(plan, athletes, Rotation(40_000, 10_000, 1))).do(Begin())


def began(facts: list[Fact]) -> dict[int, int]:
    return {fact.bout: fact.at_ms for fact in facts if isinstance(fact, BoutBegan)}


def test_pauses_in_a_window_cost_nobody_a_rep_and_keep_the_next_one_together() -> None:
    hall = circuit(SLOW, QUICK).wait(12_500)
    for _ in range(4):
        hall.do(Pause()).wait(20_000, 1_000).do(Resume()).wait(11_500)
    hall.to_the_end()
    for part, facts in zip(hall.session.parts, hall.facts, strict=True):
        assert [record.reps_done for record in fold_run(facts)] == [bout.high for bout in part.timeline.bouts]
        assert {record.outcome for record in fold_run(facts)} == {BoutOutcome.DONE}
    assert began(hall.facts[0])[1] == began(hall.facts[1])[1]


def test_timed_work_at_a_station_goes_on_where_the_pause_cut_it() -> None:
    hall = circuit(PLANK, QUICK).wait(33_000).do(Pause()).wait(5_000, 1_000).do(Resume())
    assert hall.state.members[0].work_from_ms == 30_000
    hall.wait(14_500)
    assert hall.state.leader.bout == 1
    assert [record.reps_done for record in fold_run(hall.facts[0])] == [1]


def test_a_window_ended_by_the_coach_ends_for_all_on_both_sides_of_an_exercise() -> None:
    hall = circuit(LUNGE, QUICK).wait(8_000).do(EndBout()).wait(500)
    assert hall.state.leader.bout == 1
    assert [hall.session.parts[who].slots[state.bout] for who, state in enumerate(hall.state.members)] == [
        1,
        1,
    ]
    hall.to_the_end()
    assert [record.bout for record in fold_run(hall.facts[0])] == [0, 2]


def test_leaving_out_at_the_last_window_ends_it() -> None:
    hall = circuit(QUICK, SLOW).do(GoToSlot(1)).wait(14_000).do(SkipExercise(SkipReason.TIME))
    assert hall.state.over


def test_the_room_goes_on_when_whoever_had_the_most_reps_leaves() -> None:
    squad = (Athlete("Anouk", reps={"Row": Band(2, 2)}), Athlete("Bram", reps={"Row": Band(20, 20)}))
    plan = plan_of(QUICK, Exercise("Hold", holds(1, 2)), lead_in_ms=3_000)
    hall = Hall(together(plan, squad)).do(Begin()).wait(9_000).do(Depart(1)).wait(500)
    assert hall.state.leader.bout == 1
    hall.to_the_end()
    assert [record.reps_done for record in fold_run(hall.facts[0])] == [2, 1]


def test_an_exercise_that_all_sit_out_takes_no_time_but_its_rest() -> None:
    plan = plan_of(QUICK, Exercise("Hold", holds(5, 5)), Exercise("Last", holds(1, 2)), lead_in_ms=3_000)
    squad = (Athlete("Anouk", sits_out=frozenset({"Hold"})), Athlete("Bram", sits_out=frozenset({"Hold"})))
    hall = Hall(together(plan, squad)).do(Begin()).to_the_end()
    gaps = sum(hall.session.leader.bouts[slot].before_ms for slot in (1, 2))
    assert began(hall.facts[0])[2] - (3_000 + 9 * 2_000) - gaps in range(501)


def test_sitting_out_the_last_exercise_is_a_finished_run_and_the_others_go_on() -> None:
    plan = plan_of(QUICK, Exercise("Hold", holds(2, 2)), lead_in_ms=3_000)
    hall = Hall(together(plan, (Athlete("Anouk", sits_out=frozenset({"Hold"})), Athlete("Bram"))))
    hall.do(Begin()).to_the_end()
    for facts in hall.facts:
        assert isinstance(facts[-1], RunEnded)
        assert facts[-1].outcome is RunOutcome.FINISHED
    assert {record.bout: record.outcome for record in fold_run(hall.facts[0])}[1] is BoutOutcome.SKIPPED


def test_a_wave_that_has_gone_is_not_waited_for_but_the_other_rests_as_planned() -> None:
    row = Exercise("Row", tempo_reps(4, "1-0-1-0"), sets=3, rest_ms=40_000)
    hall = Hall(waves(plan_of(row, lead_in_ms=3_000), TWO, 10_000)).do(Begin()).wait(500).do(Depart(1))
    hall.to_the_end()
    times = [fact.at_ms for fact in hall.facts[0] if isinstance(fact, BoutBegan | BoutEnded)]
    rests = [after - before for before, after in zip(times[1:-1:2], times[2::2], strict=True)]
    assert len(rests) == 2
    assert all(40_000 <= rest <= 41_000 for rest in rests)


def test_the_session_is_over_when_everybody_has_gone() -> None:
    hall = Hall(together(PLAN, SQUAD[:2])).do(Begin()).wait(5_000).do(Depart(0))
    one_left = hall.state.over
    hall.do(Depart(1))
    assert (one_left, hall.state.over) == (False, True)
    assert all(isinstance(facts[-1], RunEnded) for facts in hall.facts)


def test_nothing_begins_while_nobody_is_here() -> None:
    hall = Hall(together(PLAN, SQUAD[:2]), (False, False)).do(Begin())
    stands = [hall.state.leader.stand]
    hall.do(Arrive(1)).do(Begin()).wait(4_000)
    assert [*stands, hall.state.leader.stand] == [Stand.READY, Stand.RUNNING]


def test_who_comes_in_a_pause_waits_with_the_others() -> None:
    hall = Hall(together(PLAN, SQUAD[:2]), (True, False)).do(Begin()).wait(5_000).do(Pause()).wait(500)
    hall.do(Arrive(1))
    assert hall.state.members[1].stand is Stand.PAUSED
    hall.wait(9_000, 1_000).do(Resume()).to_the_end()
    assert began(hall.facts[1]).keys() == {1, 2, 3, 4, 5}


def test_who_comes_in_the_last_bout_has_no_run() -> None:
    plan = plan_of(QUICK, lead_in_ms=3_000)
    hall = Hall(together(plan, TWO), (True, False)).do(Begin()).wait(6_000).do(Arrive(1)).to_the_end()
    assert hall.facts[1] == []
    assert hall.state.present == (True, False)


def test_who_had_gone_before_the_program_died_is_gone_afterwards() -> None:
    hall = Hall(together(PLAN, SQUAD[:3])).do(Begin()).wait(6_000).do(Depart(1)).wait(3_000)
    state = restore_room(hall.session, hall.facts, hall.now_ms)
    assert state.present == (True, False, True)


@pytest.mark.parametrize("cut_ms", range(4_000, 52_000, 3_700))
def test_windows_taken_up_again_are_as_long_as_the_one_with_most_to_repeat_needs(cut_ms: int) -> None:
    hall = circuit(LUNGE, SLOW, PLANK, count=3).wait(cut_ms)
    hall.state = restore_room(hall.session, hall.facts, hall.now_ms)
    hall.do(Resume()).to_the_end()
    for part, facts in zip(hall.session.parts, hall.facts, strict=True):
        done = [(record.bout, record.reps_done) for record in fold_run(facts)]
        assert done == [(bout.index, bout.high) for bout in part.timeline.bouts], f"cut at {cut_ms}"


@pytest.mark.parametrize("form", Form)
def test_ten_thousand_intents_of_coaches_who_crash_now_and_then_lose_no_fact(form: Form) -> None:
    rng = random.Random(form.value)
    for seed in range(30):
        hall = drive(form, 1_000 + seed, 111)
        before = [tuple(facts) for facts in hall.facts]
        hall.state = restore_room(hall.session, hall.facts, hall.now_ms)
        hall.now_ms += rng.choice((0, 700, 5_000))
        hall.do(Resume()).wait(rng.randrange(0, 40_000), 1_000)
        if rng.random() < 0.5:
            hall.do(GoToSlot(rng.randrange(len(hall.session.leader.bouts)))).wait(9_000)
        hall.do(Stop())
        assert hall.state.over
        for theirs, facts in zip(before, hall.facts, strict=True):
            assert tuple(facts[: len(theirs)]) == theirs
            assert sum(isinstance(fact, RunEnded) for fact in facts) == (1 if facts else 0)
            passed = Counter(
                (fact.bout, fact.attempt, fact.rep, fact.side)
                for fact in facts
                if isinstance(fact, RepDone | RepMissed)
            )
            assert max(passed.values(), default=0) <= 1


def test_whatever_the_coach_does_all_at_work_in_a_slot_are_at_the_same_place_of_it() -> None:
    compared = 0
    for seed in range(60):
        hall = drive(Form.TOGETHER, 500 + seed, 60)
        leader = hall.state.leader
        if leader.stand is not Stand.RUNNING or not leader.begun:
            continue
        for state in hall.state.members:
            if state.stand is Stand.RUNNING and state.begun:
                assert state.bout == leader.bout
                assert state.local_ms(hall.now_ms) == leader.local_ms(hall.now_ms)
                compared += 1
    assert compared > 20
