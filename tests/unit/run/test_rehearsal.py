"""A rehearsal leads a whole run on a simulated clock, and writes it down as it happens."""

import pytest

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, OwnPaceReps, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import RepDone, RunBegan, RunEnded, RunOutcome
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.rehearsal import rehearse
from tests.fakes import MemoryJournal

TEMPO = Exercise("Row", TempoReps(Band.exactly(4), parse_tempo("2-0-1-0")), sides=Sides.EACH, sets=2)
OWN = Exercise("Throw", OwnPaceReps(Band(2, 3)))


def timeline_of(*exercises: Exercise) -> Timeline:
    return compile_timeline(Plan("Try-out", (Stage("One", StageKind.OTHER, exercises),)))


def test_a_timed_plan_takes_its_timeline_and_every_rep_is_written_down() -> None:
    timeline, journal, waited = timeline_of(TEMPO), MemoryJournal(), list[int]()
    length = rehearse(Controller(timeline), journal, "run", waited.append)
    facts = journal.facts["run"]
    assert facts[0] == RunBegan()
    assert facts[-1] == RunEnded(timeline.timed_ms, RunOutcome.FINISHED)
    assert sum(isinstance(fact, RepDone) for fact in facts) == 16
    assert sum(waited) == length
    assert 0 <= length - timeline.timed_ms < 250


@pytest.mark.parametrize("pace_ms", [1_500, 1_100, 260])
def test_reps_at_ones_own_pace_come_at_the_pace_asked_for(pace_ms: int) -> None:
    journal = MemoryJournal()
    rehearse(Controller(timeline_of(OWN)), journal, "run", lambda _ms: None, own_pace_ms=pace_ms)
    done = [fact.at_ms for fact in journal.facts["run"] if isinstance(fact, RepDone)]
    assert done == [5_000 + pace_ms * count for count in (1, 2, 3)]


def test_an_interruption_keeps_what_was_done_and_abandons_the_run() -> None:
    journal, waited = MemoryJournal(), list[int]()

    def wait(ms: int) -> None:
        waited.append(ms)
        if sum(waited) > 9_000:
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        rehearse(Controller(timeline_of(TEMPO)), journal, "run", wait)
    facts = journal.facts["run"]
    assert [fact.rep for fact in facts if isinstance(fact, RepDone)] == [1]
    assert isinstance(facts[-1], RunEnded)
    assert facts[-1].outcome is RunOutcome.ABANDONED
