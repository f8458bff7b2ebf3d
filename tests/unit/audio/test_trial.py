"""The trial: what it sounds like, what it tells, and that it ends when it is told to."""

import threading

import numpy as np
import pytest

from app.audio.bout_sound import Manner
from app.audio.samples import PER_MS, rms
from app.audio.speaker.silent import SilentSpeaker
from app.audio.track import Volumes
from app.audio.trial import Trial, trial_sound, trial_timeline
from app.audio.voice import LANGUAGES, Voice
from app.domain.cue_texts import spoken_texts
from app.domain.cue_values import CueLevel
from app.domain.cue_words import TONGUES
from app.domain.plan import Side
from tests.fakes import RecordingSpeaker

TONES = Manner(CueLevel.TONES)
LEAD_IN_MS, REP_MS = 3_000, 5_000


def test_it_is_a_rep_on_the_left_then_one_on_the_right_then_the_chord() -> None:
    sound = trial_sound(TONES, {}).astype(np.float64)[LEAD_IN_MS * PER_MS :]
    left, right = sound[: REP_MS * PER_MS], sound[REP_MS * PER_MS : 2 * REP_MS * PER_MS]
    assert rms(left[:, 0]) > 2 * rms(left[:, 1])
    assert rms(right[:, 1]) > 2 * rms(right[:, 0])
    chord = sound[2 * REP_MS * PER_MS :]
    assert len(chord) == 500 * PER_MS
    assert chord.any()


@pytest.mark.parametrize("language", LANGUAGES)
def test_its_words_are_of_the_language_chosen(language: str) -> None:
    tongue = TONGUES[language]
    said = " ".join(spoken_texts(trial_timeline(language), CueLevel.FULL, tongue))
    assert tongue.side_words[Side.LEFT] in said
    assert tongue.side_words[Side.RIGHT] in said
    if language != "en":
        assert "lower" not in said


def test_it_is_played_in_the_manner_asked_for_and_everything_is_let_go() -> None:
    speaker = RecordingSpeaker(latency_ms=40)
    trial = Trial(speaker, Voice(), Manner(CueLevel.TONES, volumes=Volumes(0.5, 1.0)))
    heard = trial.begin()
    assert (heard.speaker, heard.length_s, heard.notices) == ("recording", 13.54, ())
    trial.stop()
    trial.wait()
    assert speaker.asked == ["loudness 1", "warm up", "play 13500 ms", "stop", "close"]
    loud, soft = trial_sound(TONES, {}), speaker.played[0]
    assert abs(int(np.max(loud)) - 2 * int(np.max(soft))) <= 2


def test_a_muted_trial_is_silent() -> None:
    speaker = RecordingSpeaker()
    trial = Trial(speaker, Voice(), Manner(CueLevel.TONES, muted=True))
    trial.begin()
    trial.stop()
    trial.wait()
    assert speaker.asked[0] == "loudness 0"


def test_what_is_wrong_with_speaker_and_voice_is_told() -> None:
    voice = Voice()
    voice.notice = "No speech: it is not installed."
    trial = Trial(SilentSpeaker("No sound: there is no device."), voice, Manner())
    heard = trial.begin()
    trial.stop()
    trial.wait()
    assert heard.notices == ("No sound: there is no device.", "No speech: it is not installed.")


def test_one_that_was_stopped_before_it_began_is_not_heard() -> None:
    speaker = RecordingSpeaker()
    trial = Trial(speaker, Voice(), TONES)
    trial.stop()
    trial.begin()
    trial.wait()
    assert speaker.played == []


def test_waiting_ends_when_it_is_stopped_from_another_thread() -> None:
    trial = Trial(RecordingSpeaker(), Voice(), TONES)
    trial.begin()
    waiting = threading.Thread(target=trial.wait)
    waiting.start()
    trial.stop()
    waiting.join(timeout=10)
    assert not waiting.is_alive()
