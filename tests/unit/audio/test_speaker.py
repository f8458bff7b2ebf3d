"""The choice among speakers, and how it goes on when one of them fails."""

import sys
from collections.abc import Generator
from dataclasses import dataclass, field
from types import SimpleNamespace

import numpy as np
import pytest

from app.audio.clocks import MonotonicClock
from app.audio.samples import CHANNELS, PER_MS, Stereo, silence
from app.audio.speaker.choice import GONE, RETRY_MS, SteadySpeaker, choose_speaker
from app.audio.speaker.mini import START_MS, MiniaudioSpeaker
from app.audio.speaker.port import First, from_the_start
from app.audio.speaker.silent import SilentSpeaker
from app.audio.speaker.simple import SimpleaudioSpeaker
from app.domain.errors import SpeakerError


@dataclass
class Hand:
    """A clock set by hand."""

    at_ms: int = 0

    def now_ms(self) -> int:
        return self.at_ms


@dataclass
class Device:
    """A speaker that can be pulled out and plugged in."""

    name: str
    there: bool = True
    lost: bool = False
    notice: str | None = None
    latency_ms: int = 30
    played: list[Stereo] = field(default_factory=list)
    doings: list[str] = field(default_factory=list)

    def warm_up(self) -> None:
        self.play(silence(10))

    def play(self, samples: Stereo, first: First = from_the_start) -> None:
        self.doings.append("play")
        if not self.there:
            raise SpeakerError(f"{self.name} is not there.")
        self.lost = False
        self.played.append(samples[first() :])

    def set_loudness(self, share: float) -> None:
        self.doings.append(f"loudness {share:g}")

    def stop(self) -> None:
        self.lost = False
        self.doings.append("stop")

    def tend(self) -> None:
        self.doings.append("tend")

    def close(self) -> None:
        self.doings.append("close")

    def pull_out(self) -> None:
        self.there, self.lost = False, True


def numbered(ms: int) -> Stereo:
    frames = np.arange(ms * PER_MS, dtype=np.int16)
    return np.stack([frames, frames], axis=1)


def test_the_first_choice_plays_without_a_word() -> None:
    first, second = Device("first"), Device("second")
    steady = SteadySpeaker((first, second), Hand())
    steady.warm_up()
    steady.play(numbered(100))
    assert (len(first.played), len(second.played)) == (2, 0)
    assert (steady.name, steady.notice, steady.lost) == ("first", None, False)


def test_the_next_choice_steps_in_and_the_user_is_told_why() -> None:
    first, second = Device("first", there=False), Device("second")
    steady = SteadySpeaker((first, second), Hand())
    steady.play(numbered(100))
    assert steady.name == "second"
    assert steady.notice == "Sound plays through second: first is not there."
    first.there = True
    steady.play(numbered(100))
    assert [steady.name, steady.notice] == ["first", None]
    assert second.doings == ["play", "stop"]


def test_without_any_device_the_session_goes_on_in_silence_with_a_notice() -> None:
    steady = SteadySpeaker((Device("first", there=False), Device("second", there=False)), Hand())
    steady.warm_up()
    steady.play(numbered(100))
    steady.stop()
    steady.close()
    assert steady.name == "silent"
    assert steady.notice is not None
    assert steady.notice.startswith("No sound: first is not there.")
    assert not steady.lost


def test_a_device_that_vanishes_is_tried_again_each_second_and_taken_up_where_the_sound_would_be() -> None:
    clock, device = Hand(1_000), Device("first")
    steady = SteadySpeaker((device,), clock)
    steady.play(numbered(6_000))
    clock.at_ms += 100
    steady.tend()
    assert len(device.played) == 1
    device.pull_out()
    assert (steady.lost, steady.notice) == (True, GONE)
    clock.at_ms += RETRY_MS - 100
    steady.tend()
    assert (steady.name, steady.lost) == ("silent", True)
    assert steady.notice == GONE
    for _ in range(3 * RETRY_MS // 50):
        steady.tend()
        clock.at_ms += 50
    assert device.doings.count("play") == 2 + 2


def test_the_sound_comes_back_within_two_seconds_of_its_device() -> None:
    clock, device = Hand(), Device("first")
    steady = SteadySpeaker((device,), clock)
    buffer = numbered(10_000)
    steady.play(buffer)
    device.pull_out()
    for clock.at_ms in range(0, 4_000, 250):
        steady.tend()
    device.there = True
    back_ms = clock.at_ms
    while len(device.played) == 1:
        clock.at_ms += 250
        steady.tend()
    assert clock.at_ms - back_ms <= 2_000
    assert np.array_equal(device.played[1], buffer[clock.at_ms * PER_MS :])
    assert (steady.name, steady.lost, steady.notice) == ("first", False, None)


def test_what_was_stopped_or_is_over_is_not_taken_up_again() -> None:
    clock, device = Hand(), Device("first")
    steady = SteadySpeaker((device,), clock)
    steady.play(numbered(500))
    device.pull_out()
    clock.at_ms = 5_000
    device.there = True
    steady.tend()
    steady.stop()
    clock.at_ms = 10_000
    steady.tend()
    assert len(device.played) == 1


def test_a_machine_that_never_had_sound_is_not_asked_again_and_again() -> None:
    clock, device = Hand(), Device("first", there=False)
    steady = SteadySpeaker((device,), clock)
    steady.play(numbered(5_000))
    device.there = True
    clock.at_ms = 2_000
    steady.tend()
    assert device.played == []


def test_the_latency_is_the_speakers_until_the_user_sets_one() -> None:
    steady = SteadySpeaker((Device("first"),), Hand())
    assert steady.latency_ms == 30
    steady.latency_ms = 180
    assert steady.latency_ms == 180


def test_each_speaker_keeps_the_latency_the_user_set_for_it() -> None:
    known = {"simpleaudio": 35, "miniaudio": 180, "hall": 1}
    assert choose_speaker("simpleaudio", latency_ms=known).latency_ms == 35
    assert choose_speaker("miniaudio", latency_ms=known).latency_ms == 180
    assert choose_speaker("miniaudio", device="Hall", latency_ms=known).latency_ms == START_MS


def test_what_is_taken_up_again_is_reckoned_from_the_frame_it_was_begun_at() -> None:
    clock, device = Hand(1_000), Device("first")
    steady = SteadySpeaker((device,), clock)
    buffer = numbered(6_000)
    steady.play(buffer, lambda: 2_000 * PER_MS)
    assert np.array_equal(device.played[0], buffer[2_000 * PER_MS :])
    device.pull_out()
    device.there = True
    clock.at_ms += RETRY_MS
    steady.tend()
    assert np.array_equal(device.played[1], buffer[3_000 * PER_MS :])


def test_a_loudness_holds_for_every_speaker_that_may_step_in() -> None:
    first, second = Device("first"), Device("second")
    SteadySpeaker((first, second), Hand()).set_loudness(0.4)
    assert first.doings == second.doings == ["loudness 0.4"]


class Library:
    """A library that plays nothing and keeps hold of the memory it was given, as simpleaudio does."""

    def __init__(self) -> None:
        self.memory = silence(0)

    def play_buffer(self, samples: Stereo, *_format: int) -> "Library":
        self.memory = samples
        return self

    def is_playing(self) -> bool:
        return True

    def stop(self) -> None:
        return


@pytest.fixture
def library(monkeypatch: pytest.MonkeyPatch) -> Library:
    made = Library()
    monkeypatch.setitem(sys.modules, "simpleaudio", made)
    return made


def test_what_plays_is_softened_where_it_has_not_been_heard_and_comes_back_as_it_was(
    library: Library,
) -> None:
    clock = Hand()
    speaker, buffer = SimpleaudioSpeaker(clock), np.full((5_000 * PER_MS, CHANNELS), 1_000, dtype=np.int16)
    speaker.play(buffer)
    clock.at_ms = 2_000
    speaker.set_loudness(0)
    here = library.memory[2_000 * PER_MS :]
    assert not here.any()
    assert library.memory[: 1_000 * PER_MS].all()
    speaker.set_loudness(0.5)
    assert np.all(here == 500)
    speaker.set_loudness(1)
    assert np.array_equal(here, buffer[2_000 * PER_MS :])
    assert np.all(buffer == 1_000)


def test_a_loudness_set_before_holds_for_what_is_played_next(library: Library) -> None:
    speaker, buffer = SimpleaudioSpeaker(Hand()), np.full((100, CHANNELS), 1_000, dtype=np.int16)
    speaker.set_loudness(0.25)
    speaker.play(buffer)
    assert np.all(library.memory == 250)


def test_the_place_to_begin_at_is_asked_for_when_the_copy_is_made(library: Library) -> None:
    clock, buffer = Hand(), numbered(1_000)
    speaker = SimpleaudioSpeaker(clock)
    speaker.play(buffer, lambda: 300 * PER_MS)
    assert np.array_equal(library.memory, buffer[300 * PER_MS :])
    library.memory = silence(0)
    speaker.play(buffer, lambda: 1_000 * PER_MS)
    assert library.memory.size == 0, "nothing is left to play"
    speaker.stop()


def test_a_stop_silences_the_memory_that_is_still_read(library: Library) -> None:
    speaker = SimpleaudioSpeaker(Hand())
    speaker.play(np.full((100, CHANNELS), 7, dtype=np.int16))
    speaker.stop()
    assert not library.memory.any()


class Devices:
    """A miniaudio whose devices ask for ten ms at a time, when they are told to."""

    SampleFormat = SimpleNamespace(SIGNED16="s16")
    backend = "test"

    def __init__(self) -> None:
        self.opened = 0
        self.running = False
        self.feed: Generator[Stereo, int, None] | None = None

    def PlaybackDevice(self, *_format: object, app_name: str) -> "Devices":  # noqa: N802 - the library's name
        self.opened += 1
        return self

    def start(self, feed: "Generator[Stereo, int, None]") -> None:
        self.running, self.feed = True, feed

    def close(self) -> None:
        self.running = False

    def hear(self) -> Stereo:
        assert self.feed is not None
        return self.feed.send(480)


@pytest.fixture
def devices(monkeypatch: pytest.MonkeyPatch) -> Devices:
    made = Devices()
    monkeypatch.setitem(sys.modules, "miniaudio", made)
    return made


def test_each_buffer_is_played_by_a_fresh_device_and_a_stop_lets_it_go(devices: Devices) -> None:
    speaker = MiniaudioSpeaker(clock=Hand())
    speaker.play(numbered(30), lambda: 10 * PER_MS)
    assert np.array_equal(devices.hear(), numbered(30)[480:960])
    speaker.play(numbered(5))
    heard = devices.hear()
    assert np.array_equal(heard[:240], numbered(5))
    assert not heard[240:].any()
    assert devices.opened == 2
    speaker.stop()
    assert not devices.running


def test_a_device_that_plays_silence_is_awake_and_is_not_opened_again(devices: Devices) -> None:
    speaker = MiniaudioSpeaker(clock=Hand())
    speaker.warm_up()
    speaker.warm_up()
    assert devices.opened == 1
    assert not devices.hear().any()


def test_what_miniaudio_plays_is_softened_at_the_next_asking_and_muted_at_once(devices: Devices) -> None:
    clock, buffer = Hand(), np.full((1_000 * PER_MS, CHANNELS), 1_000, dtype=np.int16)
    buffer[600 * PER_MS :] = 2_000
    speaker = MiniaudioSpeaker(clock=clock)
    speaker.play(buffer)
    speaker.set_loudness(0.5)
    assert np.all(devices.hear() == 500)
    assert devices.opened == 1
    clock.at_ms = 300
    speaker.set_loudness(0)
    assert not devices.hear().any()
    assert devices.opened == 2
    clock.at_ms = 700
    speaker.set_loudness(1)
    assert np.all(devices.hear() == 2_000)


def test_closing_lets_every_device_go() -> None:
    first, second = Device("first"), Device("second")
    SteadySpeaker((first, second), Hand()).close()
    assert first.doings == second.doings == ["close"]


def test_silence_can_be_chosen_and_says_nothing() -> None:
    steady = choose_speaker("silent")
    steady.warm_up()
    steady.play(numbered(10))
    assert (steady.name, steady.notice, steady.lost) == ("silent", None, False)
    steady.tend()
    steady.close()


@pytest.mark.parametrize(
    ("preference", "device", "expected"),
    [
        ("auto", None, "simpleaudio"),
        ("auto", "Hall", "miniaudio: Hall"),
        ("simpleaudio", None, "simpleaudio"),
        ("miniaudio", None, "miniaudio"),
        ("miniaudio", "Hall", "miniaudio: Hall"),
        ("silent", None, "silent"),
    ],
)
def test_a_preference_names_the_speaker_that_comes_first(
    preference: str, device: str | None, expected: str
) -> None:
    assert choose_speaker(preference, device=device).name == expected  # type: ignore[arg-type]


def test_a_silent_speaker_takes_everything() -> None:
    speaker = SilentSpeaker("Muted.")
    for act in (speaker.warm_up, speaker.stop, speaker.tend, speaker.close):
        act()
    speaker.play(silence(5))
    speaker.set_loudness(0.5)
    assert (speaker.notice, speaker.latency_ms) == ("Muted.", 0)
    assert silence(5).shape == (5 * PER_MS, CHANNELS)


def test_the_clock_never_goes_back() -> None:
    clock = MonotonicClock()
    times = [clock.now_ms() for _ in range(1_000)]
    assert times == sorted(times)
    assert all(isinstance(time, int) for time in times)
