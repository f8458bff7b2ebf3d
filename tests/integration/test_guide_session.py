"""A long session through the audio guide, every onset where its cue says; and the command itself."""

import csv
import io
import subprocess
import sys
import wave
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from app.__main__ import main
from app.audio.bout_sound import Manner
from app.audio.guide import session_cues, session_sound
from app.audio.samples import PER_MS
from app.audio.voice import Voice
from app.domain.cue_texts import spoken_texts
from app.domain.cue_values import Cue
from app.domain.cues import CODA_MS
from app.domain.timeline import Timeline
from tests.bouts import exercise, tempo_reps, timeline_of

HOUR_MS = 3_600_000
SPEECH_WITHIN = PER_MS
ROOT = Path(__file__).parents[2]
PLAN = """
format = 1
title = "Landing control, week 3"
[[stage]]
name = "Quiet landings"
kind = "stability"
  [[stage.exercise]]
  name = "Step-down"
  sides = "each"
  reps = 3
  tempo = "2-0-1-0"
  cues = ["Knee over the toes"]
[[stage]]
name = "Hops"
kind = "reactive"
  [[stage.exercise]]
  name = "Line hops"
  reps = 8
  pace = "own"
"""


def listed(table: Path) -> list[dict[str, str]]:
    """The rows of a list of cues."""
    return list(csv.DictReader(io.StringIO(table.read_text(encoding="utf-8"))))


def hour_of_work() -> Timeline:
    rows = exercise(tempo_reps("1-1-1-1", 45), "Band row", sets=20, rest_ms=10_000, cues=("Ribs down",))
    return timeline_of(rows)


def sound_of(
    timeline: Timeline, cues: tuple[Cue, ...], phrases: dict[str, NDArray[np.int16]]
) -> NDArray[np.int16]:
    """The left channel of the whole session."""
    pieces = session_sound(cues, timeline.timed_ms + CODA_MS, Manner(), phrases)
    return np.concatenate([piece[:, 0] for piece in pieces])


def test_over_an_hour_every_tone_begins_at_its_sample_and_speech_within_a_millisecond() -> None:
    timeline = hour_of_work()
    voice = Voice()
    phrases = voice.prepare(spoken_texts(timeline)).result()
    voice.close()
    cues = session_cues(timeline, Manner(), phrases)
    assert timeline.timed_ms >= HOUR_MS
    assert len(cues) >= 3_000
    assert sum(cue.kind.spoken for cue in cues) > 900
    heard = sound_of(timeline, cues, phrases) != 0
    silent_until = 0
    checked = {True: 0, False: 0}
    for cue in cues:
        if cue.at_ms >= silent_until:
            at = cue.at_ms * PER_MS
            first = at - PER_MS + int(np.argmax(heard[at - PER_MS : at + 2 * PER_MS]))
            assert 0 <= first - at <= (SPEECH_WITHIN if cue.kind.spoken else 0), cue
            checked[cue.kind.spoken] += 1
        silent_until = max(silent_until, cue.end_ms)
    assert checked[False] > 3_000
    assert checked[True] > 20


def test_the_command_writes_a_session_and_the_list_of_its_cues(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan, sound, table = (tmp_path / name for name in ("plan.toml", "session.wav", "cues.csv"))
    plan.write_text(PLAN)
    words = ["guide", str(plan), "-o", str(sound), "--cues", str(table), "--pace", "2.5"]
    assert main(words) == 0
    rows = listed(table)
    told = capsys.readouterr()
    assert told.err == ""
    assert told.out.endswith(f"{len(rows)} cues\n")
    assert set(rows[0]) == {"sample", "ms", "kind", "text"}
    assert all(int(row["sample"]) == int(row["ms"]) * PER_MS for row in rows)
    texts = [row["text"] for row in rows]
    assert texts.index("left side") < texts.index("right side") < texts.index("next: Line hops")
    assert "Knee over the toes" in texts
    hops = [int(row["ms"]) for row in rows if row["kind"] == "explosive"]
    assert len(hops) == 8
    assert {later - before for before, later in pairwise(hops)} == {2_500}
    with wave.open(str(sound)) as file:
        samples = np.frombuffer(file.readframes(file.getnframes()), dtype="<i2").reshape(-1, 2)
    for row in rows:
        if row["kind"] in {"eccentric", "concentric", "tick", "explosive", "end"}:
            assert samples[int(row["sample"])].any()
    assert np.max(np.abs(samples.astype(int))) <= 32_767 * 10 ** (-1 / 20) + 1


def test_one_stage_alone_begins_with_its_own_lead_in(tmp_path: Path) -> None:
    plan, sound, table = (tmp_path / name for name in ("plan.toml", "stage.wav", "cues.csv"))
    plan.write_text(PLAN)
    words = ["guide", str(plan), "-o", str(sound), "--stage", "2", "--level", "tones", "--cues", str(table)]
    assert main(words) == 0
    rows = listed(table)
    assert [row["ms"] for row in rows[:4]] == ["2000", "3000", "4000", "5000"]
    assert {row["kind"] for row in rows} == {"tick", "explosive", "end"}


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["--stage", "3"], "--stage is from 1 to 2: the plan has no stage 3."),
        (["--pace", "0"], "--pace is how many seconds a rep takes, from 0.5 to 60."),
        (["-o", "session.ogg"], "The guide is written as .wav or .flac"),
        (["-o", "/nowhere/session.wav"], "/nowhere/session.wav cannot be written"),
    ],
)
def test_what_does_not_fit_is_said_in_a_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], words: list[str], sentence: str
) -> None:
    plan = tmp_path / "plan.toml"
    plan.write_text(PLAN)
    given = ["-o", str(tmp_path / "session.wav")] if "-o" not in words else []
    assert main(["guide", str(plan), *given, *words]) == 1
    assert capsys.readouterr().err.startswith(sentence)
    assert [path.name for path in tmp_path.iterdir()] == ["plan.toml"]


def test_a_guide_needs_no_device_and_no_display(tmp_path: Path) -> None:
    plan = tmp_path / "plan.toml"
    plan.write_text(PLAN)
    environment = {"PATH": "/usr/bin:/bin", "HOME": str(tmp_path)}
    done = subprocess.run(
        [sys.executable, "-m", "app", "guide", str(plan), "-o", str(tmp_path / "session.wav")],
        env=environment, cwd=ROOT, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
