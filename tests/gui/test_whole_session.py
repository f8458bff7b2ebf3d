"""Whole sessions of the demo club led by keys, by the mouse and by accessible actions, on a hand-moved clock.

What was pressed is written down beside, and the record read back from a database must say the same.
"""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.dose import Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import Plan, Stage, WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import BoutOutcome, BoutRecord
from app.domain.timeline import Timeline
from app.run.snapshot import Snapshot
from app.run.state import Doing, Stand
from tests.desk import Desk
from tests.hands import SESSION, Accessible, Hand, Keys, Mouse

DOSES = (TempoReps, HoldReps, StickReps, SignalReps, OwnPaceReps, WorkTime)
STEP_MS = 500
SESSION_RPE = 7


def demo(*doses: type[Dose]) -> tuple[Stage, ...]:
    """The stages of the demo club's two plans with everything in them that has one of these doses."""
    plans = [wiring.read_plan(path).plan for path in sorted(wiring.demo_folder().glob("*_*.toml"))]
    return tuple(
        replace(stage, exercises=kept)
        for plan in plans
        for stage in plan.stages
        if (kept := tuple(each for each in stage.exercises if isinstance(each.dose, doses)))
    )


def one_of_each() -> tuple[Stage, ...]:
    """One exercise of each dose, in one set."""
    stages = [demo(dose)[0] for dose in DOSES]
    return tuple(
        replace(stage, exercises=(replace(stage.exercises[0], sets=1, superset=None),)) for stage in stages
    )


@dataclass(slots=True)
class Pressed:
    """What was pressed about one bout."""

    passed: int = 0
    missed: tuple[int, ...] = ()
    fault: int | None = None
    early: bool = False
    fewer: int = 0
    rpe: int | None = None
    pain: int | None = None
    load_kg: str | None = None
    note: str | None = None


@dataclass(slots=True)
class Leader:
    """Leads a whole session with a hand, another way in each bout."""

    desk: Desk
    hand: Hand
    pressed: dict[int, Pressed] = field(default_factory=dict)
    asked: int | None = None

    def lead(self) -> dict[int, Pressed]:
        """From ready to the last word."""
        self.hand.begin()
        for _ in range(20_000):
            shown = self.desk.session.look()
            if shown.stand is Stand.ENDED:
                break
            if shown.doing is Doing.WORK:
                self._work(shown, self.pressed.setdefault(shown.bout.index, Pressed()))
            elif shown.doing is Doing.GAP and shown.last_bout not in (None, self.asked):
                self._rest(shown)
            self.desk.wait(STEP_MS)
        assert self.desk.session.over
        self._answer(max(self.pressed), "the last")
        self.hand.answer(SESSION, SESSION_RPE)
        return self.pressed

    def _work(self, shown: Snapshot, pressed: Pressed) -> None:
        way = shown.bout.index % 4
        if shown.bout.open_ended:
            self.hand.count()
            pressed.passed += 1
        reps = self.desk.session.look()
        if way == 1 and pressed.fault is None and reps.doing is Doing.WORK:
            pressed.fault = 1
            self.hand.fault()
        if way == 2 and not shown.bout.open_ended and shown.rep == 1 and not pressed.missed:
            self.hand.missed()
            pressed.missed = (1,)
        if way == 3 and shown.passed >= 1 and not shown.bout.open_ended and not pressed.early:
            pressed.early = True
            self.hand.end_bout()

    def _rest(self, shown: Snapshot) -> None:
        assert shown.last_bout is not None
        self.asked = shown.last_bout
        self.desk.wait(STEP_MS)
        self._answer(shown.last_bout, "went well" if shown.last_bout == 0 else None)

    def _answer(self, bout: int, words: str | None) -> None:
        pressed, loaded = self.pressed[bout], self.desk.session.timeline.bouts[bout]
        self.desk.wait(STEP_MS)
        if bout % 3 == 0:
            pressed.fewer = 1
            self.hand.fewer_reps()
        if loaded.load_kg is not None and not loaded.alternating:
            pressed.load_kg = f"{loaded.load_kg.normalize():f}"
            self.hand.load_as_planned()
        pressed.rpe, pressed.pain = bout % 11, bout % 6
        self.hand.answer("Effort", pressed.rpe)
        self.hand.answer("Pain", pressed.pain)
        if words == "went well" and self.hand.types:
            pressed.note = words
            self.hand.write(words)


def kept(desk: Desk, folder: Path) -> dict[int, BoutRecord]:
    """The records of a run as a database gives them back, one attempt a bout."""
    header = wiring.new_header("Hugo", WrittenPlan(desk.session.timeline.plan, "demo"))
    with wiring.open_record(folder / "own.db") as database:
        database.journal.open_run(header, prescriptions(desk.session.timeline))
        database.journal.append(header.run_id, 0, desk.facts)
        assert database.queries.closing_of(header.run_id).session_rpe == SESSION_RPE
        records = [record for _, record in database.queries.bouts_of(header.run_id) if record is not None]
    assert [record.attempt for record in records] == [1] * len(records)
    return {record.bout: record for record in records}


def assert_said(record: BoutRecord, pressed: Pressed, timeline: Timeline) -> None:
    """The record of a bout says what was pressed about it."""
    bout = timeline.bouts[record.bout]
    sides = 2 if bout.alternating else 1
    missed = {(rep.rep, rep.side) for rep in record.reps if rep.missed}
    assert {rep for rep, _ in missed} == set(pressed.missed)
    assert len(missed) == len(pressed.missed)
    faulty = [rep.rep for rep in record.reps if rep.faults]
    assert faulty == ([] if pressed.fault is None else [pressed.fault])
    counted = sum(not rep.missed for rep in record.reps)
    if bout.open_ended:
        assert counted == pressed.passed
    elif pressed.early:
        assert 1 <= counted < bout.high
    else:
        assert counted == bout.high - len(pressed.missed)
    early = pressed.early and counted < bout.low
    assert record.outcome is (BoutOutcome.ENDED_EARLY if early else BoutOutcome.DONE)
    assert record.reps_done == counted - pressed.fewer
    assert (record.rpe, record.pain) == (pressed.rpe, pressed.pain)
    assert (record.load_kg, record.note) == (pressed.load_kg, pressed.note)
    assert sides * len({rep.rep for rep in record.reps}) >= len(record.reps)


def assert_the_record_says_what_was_pressed(
    qtbot: QtBot, folder: Path, stages: tuple[Stage, ...], make_hand: Callable[[Desk], Hand]
) -> None:
    timeline = compile_timeline(Plan("Demo", stages))
    desk = Desk(qtbot, stages[0].exercises[0].dose, timeline=timeline)
    hand = make_hand(desk)
    pressed = Leader(desk, hand).lead()
    records = kept(desk, folder)
    assert sorted(records) == sorted(pressed) == [bout.index for bout in timeline.bouts]
    for index, record in records.items():
        assert_said(record, pressed[index], timeline)
    with qtbot.waitSignal(desk.page.left, timeout=1_000):
        desk.wait(1_000)
        hand.leave()


@pytest.mark.parametrize("dose", DOSES)
def test_by_keys_alone_a_whole_session_of_each_dose_is_recorded_as_it_was_pressed(
    qtbot: QtBot, tmp_path: Path, dose: type[Dose]
) -> None:
    assert_the_record_says_what_was_pressed(qtbot, tmp_path, demo(dose), Keys)


@pytest.mark.parametrize("dose", DOSES)
def test_by_the_mouse_alone_a_whole_session_of_each_dose_is_recorded_as_it_was_pressed(
    qtbot: QtBot, tmp_path: Path, dose: type[Dose]
) -> None:
    assert_the_record_says_what_was_pressed(qtbot, tmp_path, demo(dose), Mouse)


def test_by_accessible_actions_alone_a_session_of_all_doses_is_recorded_as_it_was_pressed(
    qtbot: QtBot, tmp_path: Path
) -> None:
    assert_the_record_says_what_was_pressed(qtbot, tmp_path, one_of_each(), Accessible)
