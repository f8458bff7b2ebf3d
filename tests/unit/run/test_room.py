"""The room: everybody keeps step with the leading clock, and each record is as if trained alone."""

import random
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.fold import fold_run
from app.domain.group import GroupSession
from app.domain.group_together import together
from app.domain.grouping import Form
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    Fact,
    RepDone,
    RepMissed,
    RunBegan,
    RunEnded,
    RunOutcome,
    SkipReason,
)
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.room import RoomState, handle_room, ready_room
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.room_restore import restore_room
from app.run.state import Stand
from tests.planned import holds, own_pace, plan_of, sticks, tempo_reps
from tests.unit.domain.test_group import made

PLAN = Plan(
    "Group",
    (
        Stage(
            "Wake",
            StageKind.ACTIVATION,
            (
                Exercise("Row", tempo_reps(3, "1-0-1-0"), sides=Sides.EACH, rest_ms=8_000, sets=2),
                Exercise("Hold", holds(2, 2), rest_ms=8_000),
            ),
        ),
        Stage("Land", StageKind.REACTIVE, (Exercise("Hop", sticks(2, 1), sides=Sides.ALTERNATE),)),
    ),
    lead_in_ms=3_000,
    changeover_ms=8_000,
    side_change_ms=4_000,
)
SQUAD = (
    Athlete("Anouk"),
    Athlete("Bram", first=Side.RIGHT, reps={"Row": Band(2, 2)}),
    Athlete("Chidi", reps={"Row": Band(4, 5)}),
    Athlete("Dagny", sits_out=frozenset({"Hold"})),
)


class Hall:
    """A room on a clock moved by hand, and everybody's facts."""

    def __init__(self, session: GroupSession, present: Sequence[bool] | None = None) -> None:
        self.session, self.now_ms = session, 1_000
        self.state = ready_room(session, None if present is None else tuple(present))
        self.facts: list[list[Fact]] = [[] for _ in session.parts]

    def do(self, intent: RoomIntent) -> "Hall":
        self.state, _, told = handle_room(self.session, self.state, intent, self.now_ms)
        for mine, more in zip(self.facts, told, strict=True):
            mine.extend(more)
        return self

    def wait(self, ms: int, step_ms: int = 250) -> "Hall":
        while ms > 0:
            self.now_ms += min(step_ms, ms)
            ms -= step_ms
            self.do(Tick())
        return self

    def to_the_end(self, count: bool = False) -> "Hall":
        for _ in range(40_000):
            if self.state.over:
                return self
            self.now_ms += 300 if count else 500
            self.do(CountRep() if count else Tick())
        raise AssertionError("the session never ends")

    def reps(self, member: int) -> list[tuple[int, int, Side]]:
        return [(fact.bout, fact.rep, fact.side) for fact in self.facts[member] if isinstance(fact, RepDone)]


def alone(session: GroupSession, member: int) -> list[Fact]:
    """The facts of the same athlete led alone."""
    controller, now, facts = Controller(session.parts[member].timeline), 1_000, list[Fact]()
    facts.extend(controller.handle(Begin(), now)[1])
    while not controller.over:
        now += 500
        facts.extend(controller.handle(Tick(), now)[1])
    return facts


def by_bout(facts: Sequence[Fact]) -> list[tuple[object, ...]]:
    """Facts with their times counted from the beginning of their bout, and lateness left out."""
    rows, began = list[tuple[object, ...]](), 0
    for fact in facts:
        if isinstance(fact, BoutBegan):
            began = fact.at_ms
        if not isinstance(fact, RunEnded):
            moved = replace(fact, at_ms=fact.at_ms - began)
            if isinstance(moved, RepDone):
                moved = replace(moved, start_ms=moved.start_ms - began, late_ms=0)
            rows.append((type(fact).__name__, moved))
    return rows


def test_everybodys_record_equals_the_one_they_have_alone() -> None:
    hall = Hall(together(PLAN, SQUAD[:3])).do(Begin()).to_the_end()
    for member in range(3):
        mine, own = hall.facts[member], alone(hall.session, member)
        assert by_bout(mine) == by_bout(own)
        assert isinstance(mine[-1], RunEnded)
        assert mine[-1].outcome is RunOutcome.FINISHED


def test_all_alike_have_the_very_same_facts_as_alone() -> None:
    hall = Hall(together(PLAN, (Athlete("A"), Athlete("B")))).do(Begin()).to_the_end()
    assert hall.facts[0] == hall.facts[1] == alone(hall.session, 0)


def test_bouts_begin_together_however_many_reps_each_has() -> None:
    hall = Hall(together(PLAN, SQUAD)).do(Begin()).to_the_end()
    began: dict[int, set[int]] = {}
    for facts in hall.facts:
        for fact in facts:
            if isinstance(fact, BoutBegan):
                began.setdefault(fact.bout, set()).add(fact.at_ms)
    assert set(began) == set(range(len(hall.session.leader.bouts)))
    assert all(len(times) == 1 for times in began.values())


def test_who_sits_out_has_the_exercise_skipped_and_the_rest_done() -> None:
    hall = Hall(together(PLAN, SQUAD)).do(Begin()).to_the_end()
    records = fold_run(hall.facts[3])
    outcomes = {record.bout: record.outcome for record in records}
    assert [outcomes[bout] for bout in range(6)] == [BoutOutcome.DONE] * 4 + [
        BoutOutcome.SKIPPED,
        BoutOutcome.DONE,
    ]
    assert [record.note for record in records if record.outcome is BoutOutcome.SKIPPED] == ["sits out"]


@given(st.integers(0, 120_000), st.integers(0, 120_000))
@settings(max_examples=40)
def test_late_and_early_people_have_exactly_the_reps_of_the_bouts_they_were_there_for(
    late_ms: int, stays_ms: int
) -> None:
    hall = Hall(together(PLAN, (Athlete("A"), Athlete("B"))), (True, False)).do(Begin())
    hall.wait(late_ms)
    came, working = hall.state.leader.bout, hall.state.leader.begun
    hall.do(Arrive(1)).wait(stays_ms)
    left_at = hall.now_ms - hall.state.leader.began_ms
    hall.do(Depart(1)).to_the_end()
    first = came + (1 if working else 0)
    theirs = [rep for rep in hall.reps(0) if rep[0] >= first]
    ended = {
        (fact.bout, fact.rep, fact.side): fact.at_ms for fact in hall.facts[0] if isinstance(fact, RepDone)
    }
    assert hall.reps(1) == [rep for rep in theirs if ended[rep] <= left_at]
    assert hall.reps(0) == [
        (fact.bout, fact.rep, fact.side) for fact in alone(hall.session, 0) if isinstance(fact, RepDone)
    ]


def test_who_was_taken_off_before_the_session_can_still_come_late() -> None:
    hall = Hall(together(PLAN, SQUAD[:2])).do(Depart(1)).do(Begin()).wait(5_000)
    assert hall.facts[1] == []
    hall.do(Arrive(1)).to_the_end()
    assert [record.bout for record in fold_run(hall.facts[1])] == [1, 2, 3, 4, 5]


def test_a_pause_a_longer_rest_and_a_redo_are_everybodys() -> None:
    hall = Hall(together(PLAN, SQUAD[:3])).do(Begin()).wait(4_000)
    hall.do(Pause()).wait(60_000, 1_000).do(Resume()).wait(6_500)
    assert hall.state.leader.bout == 0
    hall.wait(8_000).do(ExtendRest(15_000))
    waits = {member.local_ms(hall.now_ms) for member in hall.state.members if not member.begun} | {
        hall.state.leader.local_ms(hall.now_ms)
    }
    assert len(waits) == 1
    hall.do(RedoBout()).wait(3_500)
    assert {member.attempt for member in hall.state.members} == {2}
    hall.to_the_end()
    assert all(isinstance(facts[-1], RunEnded) for facts in hall.facts)


def test_the_coach_leaves_out_an_exercise_for_all_with_the_reason() -> None:
    hall = Hall(together(PLAN, SQUAD[:2])).do(Begin()).wait(4_000)
    hall.do(SkipExercise(SkipReason.TIME)).to_the_end()
    for facts in hall.facts:
        skipped = [
            fact for fact in facts if isinstance(fact, BoutEnded) and fact.outcome is BoutOutcome.SKIPPED
        ]
        assert [fact.bout for fact in skipped] == [0, 1, 2, 3]
        assert {fact.reason for fact in skipped} == {SkipReason.TIME}


def test_reps_at_ones_own_pace_are_counted_for_all_and_the_next_bout_waits_for_the_last() -> None:
    plan = plan_of(Exercise("Bounds", own_pace(4)), Exercise("Hold", holds(1, 2)), lead_in_ms=3_000)
    session = together(plan, (Athlete("A", reps={"Bounds": Band(2, 2)}), Athlete("B")))
    hall = Hall(session).do(Begin()).to_the_end(count=True)
    assert [rep[:2] for rep in hall.reps(0)] == [(0, 1), (0, 2), (1, 1)]
    assert [rep[:2] for rep in hall.reps(1)] == [(0, 1), (0, 2), (0, 3), (0, 4), (1, 1)]
    began = [
        [fact.at_ms for fact in facts if isinstance(fact, BoutBegan) and fact.bout == 1]
        for facts in hall.facts
    ]
    assert began[0] == began[1]


def test_a_fault_and_a_missed_rep_are_one_athletes_alone() -> None:
    hall = Hall(together(PLAN, SQUAD[:2])).do(Begin()).wait(3_500)
    hall.do(ForOne(1, MarkMissed())).do(ForOne(0, MarkFault("trunk tips"))).to_the_end()
    assert [(fact.bout, fact.rep) for fact in hall.facts[1] if isinstance(fact, RepMissed)] == [(0, 1)]
    assert not any(isinstance(fact, RepMissed) for fact in hall.facts[0])


@pytest.mark.parametrize("form", [Form.STATIONS, Form.WAVES])
def test_every_form_ends_with_all_work_done(form: Form) -> None:
    hall = Hall(made(form, PLAN, SQUAD[:3])).do(Begin()).to_the_end()
    for member, part in enumerate(hall.session.parts):
        records = list(fold_run(hall.facts[member]))
        assert [record.bout for record in records] == [bout.index for bout in part.timeline.bouts]
        assert {record.outcome for record in records} == {BoutOutcome.DONE}
        assert [record.reps_done for record in records] == [bout.high for bout in part.timeline.bouts]


@pytest.mark.parametrize("form", Form)
def test_going_to_a_slot_and_back_leaves_the_skipped_without_reps(form: Form) -> None:
    hall = Hall(made(form, PLAN, SQUAD[:3])).do(Begin()).wait(4_000)
    hall.do(GoToSlot(2)).wait(500)
    assert hall.state.leader.bout == 2
    hall.do(GoToSlot(0)).to_the_end()
    for facts in hall.facts:
        assert isinstance(facts[-1], RunEnded)


def drive(form: Form, seed: int, intents: int) -> Hall:
    """Random intents at random moments, then the end."""
    rng = random.Random(seed)
    hall = Hall(made(form, PLAN, SQUAD), [rng.random() < 0.8 for _ in SQUAD])
    makers = (
        Begin,
        Tick,
        Pause,
        Resume,
        Resume,
        CountRep,
        EndBout,
        RedoBout,
        lambda: (
            SkipExercise(SkipReason.TIME, None, rng.choice((None, 0, 3, 99)))
            if rng.random() < 0.1
            else Resume()
        ),
        ExtendRest,
        BeginNow,
        lambda: Arrive(rng.randrange(-1, 6)),
        lambda: Depart(rng.randrange(-1, 6)) if rng.random() < 0.1 else Tick(),
        lambda: ForOne(rng.randrange(-1, 6), rng.choice((MarkMissed(), MarkFault(), RateBout(0, rpe=4)))),
        lambda: GoToSlot(rng.randrange(-1, 12)) if rng.random() < 0.3 else Tick(),
        lambda: Stop() if rng.random() < 0.01 else Tick(),
    )
    for _ in range(intents):
        hall.now_ms += 2_500 if rng.random() < 0.02 else rng.choice((0, 40, 400, 900, 1_500, 1_900))
        hall.do(rng.choice(makers)() if rng.random() < 0.4 else Tick())
    return hall


@pytest.mark.parametrize("form", Form)
def test_random_intents_of_a_coach_lose_no_rep_count_none_twice_and_leave_no_run_open(form: Form) -> None:
    reps = 0
    for seed in range(12):
        hall = drive(form, seed, 300)
        hall.do(Stop())
        assert hall.state.over
        for member, facts in enumerate(hall.facts):
            if not facts:
                continue
            assert isinstance(facts[0], RunBegan)
            assert sum(isinstance(fact, RunEnded) for fact in facts) == 1
            passed = Counter(
                (fact.bout, fact.attempt, fact.rep, fact.side)
                for fact in facts
                if isinstance(fact, RepDone | RepMissed)
            )
            assert max(passed.values(), default=0) <= 1
            times = [fact.at_ms for fact in facts if not isinstance(fact, RunEnded)]
            assert times == sorted(times), f"member {member}"
            reps += sum(passed.values())
    assert reps > 200, "the sessions hardly got anywhere"


@pytest.mark.parametrize("form", Form)
def test_a_room_taken_up_again_goes_on_together_with_nothing_lost(form: Form) -> None:
    for cut_ms in range(3_700, 60_000, 4_100):
        hall = Hall(made(form, PLAN, SQUAD[:3]), (True, True, False)).do(Begin()).wait(cut_ms)
        before = [hall.reps(member) for member in range(3)]
        hall.state = restore_room(hall.session, hall.facts, hall.now_ms)
        assert hall.state.leader.stand is Stand.PAUSED
        hall.do(Resume()).to_the_end()
        for member in range(2):
            done = hall.reps(member)
            assert done[: len(before[member])] == before[member]
            assert len(set(done)) == len(done)
            assert Counter(rep[0] for rep in done) == Counter(
                {bout.index: bout.high for bout in hall.session.parts[member].timeline.bouts}
            ), f"cut at {cut_ms}"
        assert hall.facts[2] == []


def test_a_room_that_was_over_stays_over() -> None:
    hall = Hall(together(PLAN, SQUAD[:2])).do(Begin()).to_the_end()
    state: RoomState = restore_room(hall.session, hall.facts, 99_000)
    assert state.over
