"""The sound follows the run: one buffer a stretch of time, from the right place, silent when it should be."""

import numpy as np
import pytest
from numpy.typing import NDArray

from app.domain.compiler import compile_timeline
from app.domain.cues import CODA_MS
from app.domain.dose import Band, OwnPaceReps, TempoReps
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.controller import Controller
from app.run.intents import Begin, BeginNow, EndBout, ExtendRest, Intent, Pause, Resume, Stop, Tick
from app.views.athlete.sound import RunSound, Wanted
from tests.fakes import ImmediateExecutor, RecordingSpeaker

TWO_SETS = Exercise("Heel raise", TempoReps(Band.exactly(2), parse_tempo("2-1-1-0")), sets=2, rest_ms=30_000)
OWN = Exercise("Throw", OwnPaceReps(Band.exactly(3)))


class Room:
    """A run and its sound, whose buffers hold their own place in ms in every 48th sample."""

    def __init__(self, *exercises: Exercise, latency_ms: int = 0) -> None:
        timeline = compile_timeline(Plan("Try-out", (Stage("One", StageKind.OTHER, exercises),)))
        self.timeline: Timeline = timeline
        self.controller, self.speaker, self.now = Controller(timeline), RecordingSpeaker(latency_ms), 0
        self.rendered: list[Wanted] = []
        self.sound = RunSound(timeline, self.speaker, self._render, ImmediateExecutor())
        self.sound.prepare(self.controller.state)

    def _render(self, wanted: Wanted) -> NDArray[np.int16]:
        self.rendered.append(wanted)
        end = (self.timeline.bouts[wanted.bout].work_ms or 2_000) + CODA_MS
        places = np.arange(wanted.start_ms, end) // 100
        return np.repeat(places, 48).astype(np.int16)[:, np.newaxis].repeat(2, axis=1)

    def do(self, intent: Intent) -> "Room":
        self.controller.handle(intent, self.now)
        self.sound.follow(self.controller.state, self.now)
        return self

    def to(self, now: int) -> "Room":
        while self.now < now:
            self.now = min(self.now + 250, now)
            self.do(Tick())
        return self

    @property
    def first_places_ms(self) -> list[int]:
        """Where on the bout's axis each buffer that was played began, to 100 ms."""
        return [int(samples[0, 0]) * 100 for samples in self.speaker.played]


def test_the_device_is_woken_and_the_first_bout_rendered_while_the_athlete_gets_ready() -> None:
    room = Room(TWO_SETS)
    assert room.speaker.asked == ["warm up"]
    assert room.rendered == [Wanted(0, -5_000, 0, 0)]


def test_a_bout_is_one_buffer_from_the_lead_in_on() -> None:
    room = Room(TWO_SETS).do(Begin()).to(12_000)
    assert room.first_places_ms == [-5_000]
    assert room.speaker.asked[-1] == f"play {5_000 + 8_000 + CODA_MS} ms"


def test_the_end_of_a_bout_rings_out_before_the_next_buffer_begins() -> None:
    room = Room(TWO_SETS).do(Begin()).to(20_000)
    assert "stop" not in room.speaker.asked[2:]
    assert room.first_places_ms == [-5_000, -30_000 + CODA_MS]


def test_the_next_bout_is_rendered_while_this_one_plays() -> None:
    room = Room(TWO_SETS).do(Begin()).to(6_000)
    assert room.rendered[-1] == Wanted(1, CODA_MS - 30_000, 0, 25_000)
    before = len(room.rendered)
    room.to(20_000)
    assert len(room.rendered) == before


def test_pausing_is_silence_at_once_and_going_on_begins_at_the_lead_in_of_the_rep() -> None:
    room = Room(TWO_SETS).do(Begin()).to(10_000).do(Pause())
    assert room.speaker.asked[-1] == "stop"
    room.to(30_000).do(Resume())
    assert room.rendered[-2] == Wanted(0, -1_000, 4_000, 0)
    assert room.first_places_ms[-1] == -1_000


@pytest.mark.parametrize("intent", [BeginNow(), ExtendRest()])
def test_a_changed_rest_is_a_new_buffer(intent: Intent) -> None:
    room = Room(TWO_SETS).do(Begin()).to(20_000)
    played = len(room.speaker.played)
    room.do(intent)
    assert room.speaker.asked[-2] == "stop"
    assert len(room.speaker.played) == played + 1


def test_ending_a_bout_by_hand_cuts_its_sound() -> None:
    room = Room(TWO_SETS).do(Begin()).to(7_000).do(EndBout())
    assert room.speaker.asked[-2] == "stop"
    assert room.first_places_ms[-1] == -30_000


def test_stopping_is_silence_and_finishing_rings_out() -> None:
    stopped = Room(TWO_SETS).do(Begin()).to(7_000).do(Stop())
    assert stopped.speaker.asked[-1] == "stop"
    finished = Room(TWO_SETS).do(Begin()).to(60_000)
    assert finished.controller.over
    assert finished.speaker.asked[-1].startswith("play")


def test_the_buffer_begins_where_the_ear_will_be_when_it_is_heard() -> None:
    room = Room(TWO_SETS, latency_ms=200).do(Begin())
    assert room.first_places_ms == [-4_800]


def test_own_pace_work_has_a_buffer_up_to_its_beginning() -> None:
    room = Room(OWN).do(Begin()).to(12_000)
    assert room.first_places_ms == [-5_000]
    assert not room.controller.over
