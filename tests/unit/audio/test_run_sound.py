"""The sound follows the run: one buffer a stretch of time, from the right place, silent when it should be."""

import threading
from concurrent.futures import Executor, Future
from dataclasses import replace

import numpy as np
import pytest
from numpy.typing import NDArray

from app.audio import run_sound
from app.audio.bout_sound import Entry, Manner
from app.audio.espeak import VoiceError
from app.audio.run_sound import RunSound, Wanted
from app.audio.track import Volumes
from app.audio.voice import Voice
from app.domain.compiler import compile_timeline
from app.domain.cue_texts import spoken_texts
from app.domain.cue_values import CueLevel
from app.domain.cue_words import ENGLISH
from app.domain.cues import CODA_MS
from app.domain.dose import Band, OwnPaceReps, TempoReps
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.records import SkipReason
from app.domain.tempo import parse_tempo
from app.domain.timeline import Bout, Timeline
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    Intent,
    Pause,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.sounding import Loudness, Making
from tests.fakes import HandClock, ImmediateExecutor, RecordingSpeaker

TWO_SETS = Exercise("Heel raise", TempoReps(Band.exactly(2), parse_tempo("2-1-1-0")), sets=2, rest_ms=30_000)
OWN = Exercise("Throw", OwnPaceReps(Band.exactly(3)))


class Room:
    """A run and its sound, whose buffers hold their own place, in units of 100 ms, in every sample."""

    def __init__(
        self,
        *exercises: Exercise,
        monkeypatch: pytest.MonkeyPatch,
        latency_ms: int = 0,
        voice: Voice | None = None,
        manner: Manner | None = None,
        threads: tuple[Executor, Executor] | None = None,
    ) -> None:
        timeline = compile_timeline(Plan("Try-out", (Stage("One", StageKind.OTHER, exercises),)))
        self.controller, self.speaker, self.clock = (
            Controller(timeline),
            RecordingSpeaker(latency_ms),
            HandClock(),
        )
        self.rendered: list[Wanted] = []
        monkeypatch.setattr(run_sound, "bout_sound", self._render)
        self.manners: list[Manner] = []
        self.sound = RunSound(
            timeline,
            self.speaker,
            self.clock,
            voice,
            manner,
            threads or (ImmediateExecutor(), ImmediateExecutor()),
        )
        self.sound.prepare(self.controller.state)

    def _render(
        self, _timeline: Timeline, bout: Bout, entry: Entry, manner: Manner, _phrases: object
    ) -> NDArray[np.int16]:
        self.manners.append(manner)
        self.rendered.append((bout.index, entry))
        places = np.arange(entry.from_ms, (bout.work_ms or 2_000) + CODA_MS) // 100
        return np.repeat(places, 48).astype(np.int16)[:, np.newaxis].repeat(2, axis=1)

    def do(self, intent: Intent) -> "Room":
        now = self.clock.at_ms - self.speaker.latency_ms
        _, facts = self.controller.handle(intent, now)
        self.sound.hear(facts)
        self.sound.follow(self.controller.state, now)
        return self

    def to(self, now: int) -> "Room":
        self.do(Tick())
        while self.clock.at_ms < now:
            self.clock.at_ms = min(self.clock.at_ms + 250, now)
            self.do(Tick())
        return self

    @property
    def asked(self) -> list[str]:
        """What the speaker was asked, its regular tending and its first loudness aside."""
        return [word for word in self.speaker.asked[1:] if word != "tend"]

    @property
    def first_places_ms(self) -> list[int]:
        """Where on the bout's axis each buffer that was played began, to 100 ms."""
        return [int(samples[0, 0]) * 100 for samples in self.speaker.played]


def test_the_device_is_woken_and_the_first_bout_rendered_while_the_athlete_gets_ready(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch)
    assert room.asked == ["warm up"]
    assert room.rendered == [(0, Entry(-5_000, 0, 0))]


def test_a_bout_is_one_buffer_from_the_lead_in_on(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(12_000)
    assert room.first_places_ms == [-5_000]
    assert room.asked[-1] == f"play {5_000 + 8_000 + CODA_MS} ms"


def test_the_end_of_a_bout_rings_out_before_the_next_buffer_begins(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(20_000)
    assert "stop" not in room.asked[2:]
    assert room.first_places_ms == [-5_000, -30_000 + CODA_MS]


def test_the_next_bout_is_rendered_while_this_one_plays(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(6_000)
    assert room.rendered[-1] == (1, Entry(CODA_MS - 30_000, 0, 25_000))
    before = len(room.rendered)
    room.to(20_000)
    assert len(room.rendered) == before


def test_pausing_is_silence_at_once_and_going_on_begins_at_the_lead_in_of_the_rep(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(10_000).do(Pause())
    assert room.asked[-1] == "stop"
    room.to(30_000).do(Resume())
    assert room.rendered[-2] == (0, Entry(-1_000, 4_000, 0))
    assert room.first_places_ms[-1] == -1_000


@pytest.mark.parametrize("intent", [BeginNow(), ExtendRest()])
def test_a_changed_rest_is_a_new_buffer(intent: Intent, monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(20_000)
    played = len(room.speaker.played)
    room.do(intent)
    assert room.asked[-2] == "stop"
    assert len(room.speaker.played) == played + 1


def test_ending_a_bout_by_hand_cuts_its_sound(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(7_000).do(EndBout())
    assert room.asked[-2] == "stop"
    assert room.first_places_ms[-1] == -30_000


def test_stopping_is_silence_and_finishing_rings_out(monkeypatch: pytest.MonkeyPatch) -> None:
    stopped = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(7_000).do(Stop())
    assert stopped.asked[-1] == "stop"
    finished = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(60_000)
    assert finished.controller.over
    assert finished.asked[-1].startswith("play")


def test_the_buffer_begins_where_the_ear_will_be_when_it_is_heard(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch, latency_ms=200).do(Begin())
    assert room.first_places_ms == [-4_800]


def test_own_pace_work_has_a_buffer_up_to_its_beginning(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(OWN, monkeypatch=monkeypatch).do(Begin()).to(12_000)
    assert room.first_places_ms == [-5_000]
    assert not room.controller.over


def test_reps_at_ones_own_pace_are_counted_aloud_and_the_last_one_rings_out(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    room = Room(OWN, TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(6_000)
    for _ in range(3):
        room.do(CountRep()).to(room.clock.at_ms + 500)
    kinds = [word.split()[0] for word in room.asked[-4:]]
    assert kinds == ["play"] * 4, "a tick, a tick, the chord, and the next bout's buffer"
    assert len(room.speaker.played[-2]) > 4 * len(room.speaker.played[-3])
    assert room.first_places_ms[-1] == -20_000 + CODA_MS


def test_what_is_due_after_a_turn_of_the_run_is_not_played(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin())
    played = len(room.speaker.played)
    made: Future[NDArray[np.int16]] = Future()
    made.set_result(room.speaker.played[0])
    room.sound._play(made, -5_000, room.controller.state, turn=0)
    assert len(room.speaker.played) == played


def test_the_device_is_tended_while_a_bout_plays(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(8_000)
    assert room.speaker.asked.count("tend") >= 10


def test_closing_is_silence_and_lets_the_device_go(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin())
    room.sound.close()
    assert room.asked[-2:] == ["stop", "close"]


def test_the_run_begins_as_loud_as_asked_and_its_balance_is_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch, manner=Manner(volumes=Volumes(0.6, 0.3)))
    assert room.speaker.asked[0] == "loudness 0.6"
    assert room.sound.loudness == Loudness(60)
    assert room.manners[0].volumes == Volumes(1.0, 0.5)


def test_a_run_with_both_volumes_at_nought_can_be_made_louder(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch, manner=Manner(volumes=Volumes(0.0, 0.0)))
    assert room.speaker.asked[0] == "loudness 0"
    room.sound.set_loudness(room.sound.loudness.louder())
    assert room.asked[-1] == "loudness 0.1"
    assert room.manners[0].volumes == Volumes(1.0, 1.0)


def test_muting_and_its_end_leave_the_buffer_playing(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch, manner=Manner(muted=True)).do(Begin()).to(8_000)
    assert room.speaker.asked[0] == "loudness 0"
    room.sound.set_loudness(room.sound.loudness.switched())
    assert room.asked[-1] == "loudness 1"
    assert len(room.speaker.played) == 1


def test_the_device_is_kept_awake_while_the_run_stands_still(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).to(10_000)
    assert room.asked == ["warm up"] * 4
    room.do(Begin()).to(16_000).do(Pause()).to(24_000)
    assert room.asked[-3:] == ["stop", "warm up", "warm up"]
    room.do(Stop()).to(40_000)
    assert room.asked.count("warm up") == 6


def test_speech_is_made_away_from_the_screen_and_tells_how_far_it_is(monkeypatch: pytest.MonkeyPatch) -> None:
    seen: list[Making | None] = []

    def say(*_: object) -> NDArray[np.int16]:
        seen.append(room.sound.making)
        return np.full(2_000, 900, dtype=np.int16)

    room = Room(TWO_SETS, monkeypatch=monkeypatch)
    room.sound._voice = Voice(say=say)
    room.sound.prepare(room.controller.state)
    texts = len(spoken_texts(room.controller.timeline, CueLevel.FULL, ENGLISH))
    assert texts > 5
    assert [(making.done, making.of) for making in seen if making] == [(done, texts) for done in range(texts)]
    assert room.sound.making is None
    assert room.sound.notice is None
    room.sound.close()


def test_why_there_is_no_speech_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> NDArray[np.int16]:
        raise VoiceError("The library is missing.")

    room = Room(TWO_SETS, monkeypatch=monkeypatch, voice=Voice(say=refuse))
    assert room.sound.notice == "No speech: The library is missing. Cues are tones only."
    room.sound.close()


def test_leaving_does_not_wait_for_speech_that_is_not_made(monkeypatch: pytest.MonkeyPatch) -> None:
    from concurrent.futures import ThreadPoolExecutor

    begun, go_on = threading.Event(), threading.Event()
    said: list[str] = []

    def say(text: str, *_: object) -> NDArray[np.int16]:
        said.append(text)
        begun.set()
        go_on.wait(10)
        return np.full(2_000, 900, dtype=np.int16)

    threads = (ThreadPoolExecutor(1), ThreadPoolExecutor(1))
    room = Room(TWO_SETS, monkeypatch=monkeypatch, voice=Voice(say=say), threads=threads)
    assert begun.wait(10)
    leaving = threading.Thread(target=room.sound.close)
    leaving.start()
    while not room.sound._voice._closed:  # type: ignore[union-attr]
        go_on.wait(0.001)
    go_on.set()
    leaving.join(10)
    assert not leaving.is_alive()
    assert len(said) == 1


def test_a_sound_that_cannot_be_made_is_raised_once_and_the_next_bout_is_made(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch)
    render = room._render

    def fail(timeline: Timeline, bout: Bout, *how: object) -> NDArray[np.int16]:
        if bout.index == 0:
            raise ZeroDivisionError
        return render(timeline, bout, *how)  # type: ignore[arg-type]

    monkeypatch.setattr(run_sound, "bout_sound", fail)
    room.sound._ahead.clear()
    with pytest.raises(ZeroDivisionError):
        room.do(Begin())
    assert room.speaker.played == []
    room.to(20_000)
    assert room.first_places_ms == [-30_000 + CODA_MS]


def test_a_device_that_slips_is_raised_once_and_is_asked_again(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin())
    slips = [True]

    def tend() -> None:
        if slips and slips.pop():
            raise ZeroDivisionError

    monkeypatch.setattr(room.speaker, "tend", tend)
    with pytest.raises(ZeroDivisionError):
        room.to(2_000)
    room.to(20_000)
    assert len(room.speaker.played) == 2


def test_a_device_that_cannot_be_let_go_is_raised_when_both_threads_have_ended(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch)

    def fail() -> None:
        raise ZeroDivisionError

    monkeypatch.setattr(room.speaker, "close", fail)
    with pytest.raises(ZeroDivisionError):
        room.sound.close()


def test_a_late_ear_hears_the_next_buffer_from_its_beginning(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch, latency_ms=250).do(Begin()).to(20_000)
    assert room.first_places_ms[-1] == -30_000 + CODA_MS


def test_what_is_left_out_is_not_made_ahead(monkeypatch: pytest.MonkeyPatch) -> None:
    pair = [replace(TWO_SETS, name=name, superset="A") for name in ("Row", "Press")]
    room = Room(*pair, monkeypatch=monkeypatch)
    room.controller.handle(Begin(), 0)
    room.do(SkipExercise(SkipReason.EQUIPMENT, bout=1)).to(2_000)
    assert room.rendered[-1][0] == 2


def test_going_on_when_the_bout_would_have_ended_is_no_end(monkeypatch: pytest.MonkeyPatch) -> None:
    room = Room(TWO_SETS, monkeypatch=monkeypatch).do(Begin()).to(10_000).do(Pause()).to(13_000)
    room.do(Resume())
    assert room.first_places_ms[-1] == -1_000


def test_what_waits_to_be_made_is_given_up_on_closing(monkeypatch: pytest.MonkeyPatch) -> None:
    given_up: list[bool] = []

    class Noted(ImmediateExecutor):
        def shutdown(self, wait: bool = True, *, cancel_futures: bool = False) -> None:
            given_up.append(cancel_futures)

    room = Room(TWO_SETS, monkeypatch=monkeypatch, threads=(Noted(), Noted()))
    room.sound.close()
    assert given_up == [True, False], "what the device is to do last is done"
