"""The audio guide: the session as one file, every cue at its sample."""

import wave
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest

from app.audio import guide
from app.audio.bout_sound import Manner
from app.audio.guide import paced, session_cues, session_sound, write_guide
from app.audio.samples import PER_MS, RATE, Spoken
from app.domain.compiler import compile_timeline
from app.domain.cue_values import CueKind, CueLevel, caption
from app.domain.cues import CODA_MS
from app.domain.errors import PacewrightError
from tests.bouts import EVERY_DOSE, ROTATION, exercise, timeline_of

TONES = Manner(CueLevel.TONES)


def phrases(*texts: str) -> dict[str, Spoken]:
    return {text: np.full(400 * PER_MS, 3_000, dtype=np.int16) for text in texts}


def test_cues_of_all_bouts_follow_on_one_clock_from_ready() -> None:
    timeline = timeline_of(ROTATION)
    cues = session_cues(timeline, TONES, {})
    ends = [cue.at_ms for cue in cues if cue.kind is CueKind.END]
    assert ends == [5_000 + 24_000, 5_000 + 24_000 + 8_000 + 24_000]
    first_phases = [cue.at_ms for cue in cues if cue.kind is CueKind.CONCENTRIC][::4]
    assert first_phases == [5_000, 37_000]
    assert [cue.at_ms for cue in cues] == sorted(cue.at_ms for cue in cues)


def test_the_chord_of_a_bout_is_not_spoken_into_and_outranks_a_tick() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["tempo"], sets=2, rest_ms=3_000), lead_in_ms=3_000)
    cues = session_cues(timeline, TONES, {})
    chord = next(cue for cue in cues if cue.kind is CueKind.END)
    assert [cue for cue in cues if chord.at_ms <= cue.at_ms < chord.end_ms] == [chord]
    spoken = session_cues(timeline, Manner(), phrases("rest", "rep 1", "rep 5", "last rep"))
    assert all(cue.at_ms >= chord.end_ms for cue in spoken if cue.kind is CueKind.REST)


def test_open_ended_work_is_led_at_the_pace_given() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["own"]), exercise(EVERY_DOSE["tempo"], "Row"))
    with pytest.raises(ValueError, match="pace it first"):
        session_cues(timeline, TONES, {})
    led = compile_timeline(paced(timeline.plan, 2_500))
    assert led.bouts[0].work_ms == 12 * 2_500
    assert led.bouts[1] == timeline.bouts[1]
    cues = session_cues(led, Manner(), phrases("rep 1", "rep 2"))
    counts = [(cue.at_ms, caption(cue)) for cue in cues if cue.kind is CueKind.COUNT]
    assert counts[:2] == [(5_000, "rep 1"), (7_500, "rep 2")]


def test_pieces_join_to_the_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    timeline = timeline_of(ROTATION, exercise(EVERY_DOSE["hold"], "Wall hold"))
    said = phrases("rep 1", "rep 2", "left side", "rest", "halfway")
    cues = session_cues(timeline, Manner(), said)
    length = timeline.timed_ms + CODA_MS
    whole = np.concatenate(list(session_sound(cues, length, Manner(), said)))
    monkeypatch.setattr(guide, "PIECE_MS", 700)
    pieces = list(session_sound(cues, length, Manner(), said))
    assert len(pieces) > 100
    assert max(len(piece) for piece in pieces) < 2_000 * PER_MS
    assert np.array_equal(np.concatenate(pieces), whole)
    assert len(whole) == length * PER_MS


def test_every_tone_of_the_file_begins_at_the_sample_of_its_cue(tmp_path: Path) -> None:
    timeline = timeline_of(ROTATION, exercise(EVERY_DOSE["stick"], "Drop landing"))
    cues = write_guide(tmp_path / "session.wav", timeline, TONES, {})
    with wave.open(str(tmp_path / "session.wav")) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (2, 2, RATE)
        samples = np.frombuffer(file.readframes(file.getnframes()), dtype="<i2").reshape(-1, 2)
    assert len(samples) == (timeline.timed_ms + CODA_MS) * PER_MS
    loud = np.any(samples != 0, axis=1)
    for before, cue in pairwise((None, *cues)):
        assert cue is not None
        at = cue.at_ms * PER_MS
        assert loud[at]
        assert not loud[(before.end_ms if before else 0) * PER_MS : at].any()


def test_a_session_is_written_as_flac_too(tmp_path: Path) -> None:
    soundfile = pytest.importorskip("soundfile")
    timeline = timeline_of(ROTATION)
    for name in ("session.wav", "session.flac"):
        write_guide(tmp_path / name, timeline, TONES, {})
    flac, rate = soundfile.read(tmp_path / "session.flac", dtype="int16")
    plain, _ = soundfile.read(tmp_path / "session.wav", dtype="int16")
    assert rate == RATE
    assert np.array_equal(flac, plain)


def test_what_cannot_be_written_is_said_and_leaves_nothing_behind(tmp_path: Path) -> None:
    timeline = timeline_of(ROTATION)
    with pytest.raises(PacewrightError, match=r"as \.wav or \.flac"):
        write_guide(tmp_path / "session.mp3", timeline, TONES, {})
    with pytest.raises(PacewrightError, match="cannot be written: No such file or directory"):
        write_guide(tmp_path / "nowhere" / "session.wav", timeline, TONES, {})
    assert list(tmp_path.iterdir()) == []


def test_an_older_guide_stays_when_the_new_one_fails(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "session.wav"
    path.write_bytes(b"older")

    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(guide, "render_track", full)
    with pytest.raises(PacewrightError, match="No space left on device"):
        write_guide(path, timeline_of(ROTATION), TONES, {})
    assert [(each.name, each.read_bytes()) for each in tmp_path.iterdir()] == [("session.wav", b"older")]


def test_flac_without_its_library_is_said_plainly(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(__import__("sys").modules, "soundfile", None)
    with pytest.raises(PacewrightError, match=r"pip install 'pacewright\[export\]'"):
        write_guide(tmp_path / "session.flac", timeline_of(ROTATION), TONES, {})
