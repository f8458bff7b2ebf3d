"""Speech made ahead: trimmed, levelled, kept, and done without when it cannot be had."""

import sys
import threading

import numpy as np
import pytest
from numpy.typing import NDArray

from app.audio import espeak
from app.audio.espeak import RATE, VoiceError, synthesise
from app.audio.samples import FULL_SCALE, PER_MS, Spoken, rms
from app.audio.tones import LOUDNESS
from app.audio.voice import LANGUAGES, Voice, phrase_of, speakable

QUIET_MS, SPEECH_MS = 80, 300


class Parrot:
    """Says every text as the same hum between silences, and remembers what it said on which thread."""

    def __init__(self) -> None:
        self.said: list[tuple[str, str, int]] = []
        self.threads: set[int] = set()

    def __call__(self, text: str, voice: str, words_a_minute: int) -> NDArray[np.int16]:
        self.said.append((text, voice, words_a_minute))
        self.threads.add(threading.get_ident())
        quiet = np.zeros(RATE * QUIET_MS // 1000)
        hum = 9_000 * np.cos(2 * np.pi * 300 * np.arange(RATE * SPEECH_MS // 1000) / RATE)
        return np.concatenate((quiet, hum, quiet)).astype(np.int16)


def made(voice: Voice, *texts: str) -> dict[str, Spoken]:
    try:
        return voice.prepare(texts).result(timeout=30)
    finally:
        voice.close()


def test_each_text_is_said_once_on_one_thread_of_its_own() -> None:
    parrot, progress = Parrot(), list[tuple[int, int]]()
    voice = Voice("de", say=parrot)
    first = voice.prepare(["links", "rechts", "links"], lambda *done: progress.append(done)).result()
    again = voice.prepare(["rechts"]).result()
    voice.close()
    assert parrot.said == [("links", "de", 170), ("rechts", "de", 170)]
    assert progress == [(1, 2), (2, 2)]
    assert np.array_equal(first["rechts"], again["rechts"])
    assert len(parrot.threads) == 1
    assert threading.get_ident() not in parrot.threads


def test_silence_around_a_phrase_is_cut_off_to_the_millisecond() -> None:
    phrase = phrase_of(Parrot()("hum", "en", 170))
    assert abs(len(phrase) - SPEECH_MS * PER_MS) < 2 * PER_MS
    assert np.flatnonzero(np.abs(phrase) > np.max(phrase) // 50)[0] < PER_MS


@pytest.mark.parametrize("level", [0.01, 0.1, 1.0])
def test_phrases_are_as_loud_as_the_tones_however_loud_they_were_made(level: float) -> None:
    raw = (Parrot()("hum", "en", 170) * level).astype(np.int16)
    assert abs(20 * np.log10(rms(phrase_of(raw) / FULL_SCALE) / LOUDNESS)) < 0.5


def test_silence_is_no_phrase() -> None:
    assert phrase_of(np.zeros(1_000, dtype=np.int16)).size == 0
    assert phrase_of(np.zeros(0, dtype=np.int16)).size == 0
    assert made(Voice(say=lambda *_: np.zeros(500, dtype=np.int16)), "...") == {}


def test_without_the_library_there_is_a_notice_and_no_phrase() -> None:
    def missing(*_: object) -> NDArray[np.int16]:
        raise VoiceError("The speech library espeakng-loader is not installed.")

    voice = Voice(say=missing)
    assert made(voice, "rep 1", "left side") == {}
    assert (
        voice.notice == "No speech: The speech library espeakng-loader is not installed. Cues are tones only."
    )


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Elbow  stays\tdown", "Elbow stays down"),
        ("Land softly 🦶🏽 now", "Land softly now"),
        ("\u202eright\u202c", "right"),
        ("a\x00b\x07", "a b"),
        ("🙂", ""),
        ("e\u0301paule", "épaule"),
        ("Плечо вниз", "Плечо вниз"),
    ],
)
def test_what_has_no_sound_is_taken_out_of_a_text(text: str, expected: str) -> None:
    assert speakable(text) == expected


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_program_speaks_each_of_its_languages(language: str) -> None:
    voice = Voice(language)
    (phrase,) = made(voice, "12").values()
    assert voice.notice is None
    assert 150 * PER_MS < len(phrase) < 1_500 * PER_MS


@pytest.mark.parametrize(
    "text", ["Elbow down, " * 41, "肩を下げる", "Плечо вниз", "<b>5 & 6</b>", "[[h@'loU]]", "1e999"]
)
def test_any_text_is_said_or_left_out_without_harm(text: str) -> None:
    voice = Voice()
    phrases = made(voice, text, "rep 1")
    assert voice.notice is None
    assert phrases["rep 1"].size


def test_pictographs_alone_are_left_out() -> None:
    assert made(Voice(), "🤾🏽‍♀️") == {}


def test_an_unknown_voice_is_refused_in_words() -> None:
    with pytest.raises(VoiceError, match="no voice called 'xx-nowhere'"):
        synthesise("hello", "xx-nowhere", 170)


def test_a_faster_voice_is_shorter() -> None:
    slow, fast = (len(synthesise("Slow on the way back", "en", rate)) for rate in (120, 240))
    assert fast < 0.75 * slow


def test_a_machine_without_the_speech_library_is_told_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "espeakng_loader", None)
    with pytest.raises(VoiceError, match="espeakng-loader is not installed"):
        espeak._library.__wrapped__()
    monkeypatch.setattr(espeak, "_library", espeak._library.__wrapped__)
    voice = Voice()
    assert made(voice, "rep 1") == {}
    assert voice.notice is not None
    assert voice.notice.endswith("Cues are tones only.")
