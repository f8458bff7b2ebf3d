"""How far apart a phase is heard and seen, and how soon a pause is silence. Prints; asserts no time.

Sound is recorded from a PulseAudio of the bench's own and placed on the machine's monotonic clock, the same
that stamps the first painted frame of each phase. Positive is sound before picture. To be within +40 and
-60 ms always: people notice from +45 and -125 ms on (ITU-R BT.1359-1, detectability).
"""

import os
import signal
import subprocess
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent
from pytestqt.qtbot import QtBot

from app import wiring
from app.audio.bout_sound import Manner
from app.audio.clocks import MonotonicClock
from app.audio.run_sound import RunSound
from app.audio.speaker.choice import Preference, choose_speaker
from app.domain.cue_values import CueLevel
from app.domain.timeline import Timeline
from app.run.intents import Begin
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.athlete.work_panel import WorkPanel
from app.views.lettering import load_fonts, type_scale
from app.views.theme import Look, Place, choose
from app.views.ticker import Ticker
from app.views.widgets.profile import ProfileView
from tests.bouts import exercise, tempo_reps, timeline_of
from tests.pulse import FIRST, RATE, SINK, PulseAudio, installed, pulse_audio

pytestmark = [
    pytest.mark.bench,
    pytest.mark.skipif(not os.environ.get("DISPLAY"), reason="needs a display"),
    pytest.mark.skipif(not installed(), reason="PulseAudio is not installed"),
]
MS = 1_000_000
SETS, REPS = 3, 5
PRESSES = 8
TONE_MS = 400
Onset = tuple[int, int, int]
"""Bout, attempt and place on the bout's axis of a phase that begins there."""


class Recorder:
    """Records the sink's monitor and knows when, on the monotonic clock, each frame was there.

    A chunk is there no later than it arrives: the least of arrival less length so far is where the recording
    began, as near as can be known. A null sink hands out as much ahead of its time as its listener asks for
    at once: 2 ms here.
    """

    def __init__(self, server: PulseAudio) -> None:
        words = [
            *FIRST, "parec", f"--device={SINK}.monitor", "--format=s16le", f"--rate={RATE}", "--channels=2",
            "--latency-msec=2", "--raw",
        ]  # fmt: skip
        self._process = subprocess.Popen(words, env=server.environment, stdout=subprocess.PIPE)
        self._chunks: list[bytes] = []
        self._frames = 0
        self._began_ns: float | None = None
        self._reader = threading.Thread(target=self._read)
        self._reader.start()

    def _read(self) -> None:
        assert self._process.stdout is not None
        while chunk := os.read(self._process.stdout.fileno(), 1 << 16):
            now = time.monotonic_ns()
            self._chunks.append(chunk)
            self._frames += len(chunk) // 4
            began = now - self._frames * 1e9 / RATE
            self._began_ns = began if self._began_ns is None else min(began, self._began_ns)

    def end(self) -> None:
        """End the recording."""
        os.kill(self._process.pid, signal.SIGTERM)
        self._process.wait()
        self._reader.join()
        assert self._process.stdout is not None
        self._process.stdout.close()

    @property
    def loud(self) -> NDArray[np.bool_]:
        """By frame, whether anything sounds."""
        samples = np.frombuffer(b"".join(self._chunks), dtype=np.int16)
        return np.asarray(samples.reshape(-1, 2).any(axis=1))

    def at_ns(self, frames: NDArray[np.int64]) -> NDArray[np.float64]:
        """When frames were there."""
        assert self._began_ns is not None
        return np.asarray(self._began_ns + frames * 1e9 / RATE)


def onsets(loud: NDArray[np.bool_]) -> NDArray[np.int64]:
    """First frames after at least 10 ms of silence."""
    there = np.flatnonzero(loud)
    return there[np.insert(np.diff(there) > 480, 0, True)]


class Stage:
    """The athlete's screen with its sound on a machine of its own, and when it painted what."""

    def __init__(
        self, qtbot: QtBot, timeline: Timeline, speaker: Preference, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        self.qtbot = qtbot
        self.painted: dict[Onset, int] = {}
        self._shown: Snapshot | None = None
        self._watch(monkeypatch)
        clock = MonotonicClock()
        self.speaker = choose_speaker(speaker, clock=clock)
        sound = RunSound(timeline, self.speaker, clock, manner=Manner(CueLevel.TONES))
        self.session = RunSession(timeline, clock, self.speaker, sound, lambda _first, _facts: None)
        family = load_fonts(wiring.resources_folder() / "fonts")
        self.page = AthletePage(Look(choose(Place.TRAINING), family, type_scale(22)), self.session, "Hugo")
        self.page.resize(1920, 1080)
        qtbot.addWidget(self.page)
        with qtbot.waitExposed(self.page):
            self.page.show()
        self.ticker = Ticker(self.page)
        self.ticker.tick.connect(self.page.refresh)
        self.page.due.connect(self.ticker.soon)
        self.ticker.start()
        # A null sink has made two seconds ahead before it knows that its listener wants them in small pieces.
        qtbot.wait(3_000)

    def _watch(self, monkeypatch: pytest.MonkeyPatch) -> None:
        show, paint = WorkPanel.show_snapshot, ProfileView.paintEvent

        def showing(panel: WorkPanel, shown: Snapshot) -> None:
            self._shown = shown
            show(panel, shown)

        def painting(view: ProfileView, event: QPaintEvent) -> None:
            paint(view, event)
            shown = self._shown
            if shown is not None and shown.doing is Doing.WORK and shown.phase_left_ms is not None:
                span = next(span for span in reversed(shown.bout.work) if span.start_ms <= shown.local_ms)
                onset = (shown.bout.index, shown.attempt, span.start_ms)
                self.painted.setdefault(onset, time.monotonic_ns())

        monkeypatch.setattr(WorkPanel, "show_snapshot", showing)
        monkeypatch.setattr(ProfileView, "paintEvent", painting)

    def wait_until(self, holds: Callable[[], bool], most_s: float) -> None:
        self.qtbot.waitUntil(holds, timeout=round(most_s * 1000))

    def close(self) -> None:
        self.ticker.stop()
        self.session.close()


@pytest.fixture
def server(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[PulseAudio]:
    with pulse_audio(tmp_path) as own:
        for name, value in own.environment.items():
            monkeypatch.setenv(name, value)
        yield own


@pytest.mark.parametrize("speaker", ["simpleaudio", "miniaudio"])
def test_bench_sound_and_picture_of_each_phase(
    server: PulseAudio, qtbot: QtBot, speaker: Preference, monkeypatch: pytest.MonkeyPatch
) -> None:
    timeline = timeline_of(exercise(tempo_reps("2-1-2-1", REPS), sets=SETS, rest_ms=10_000))
    recorder = Recorder(server)
    stage = Stage(qtbot, timeline, speaker, monkeypatch)
    stage.session.act(Begin())
    stage.wait_until(lambda: stage.session.over, 150)
    stage.close()
    qtbot.wait(500)
    recorder.end()
    heard = onsets(recorder.loud)
    # Before each bout three ticks; its phases; the chord at its end.
    phases = np.concatenate([each[3:-1] for each in np.split(heard, SETS)])
    assert len(phases) == len(stage.painted) == SETS * REPS * 4
    early = (np.array(sorted(stage.painted.values())) - recorder.at_ns(phases)) / MS
    report(f"sound before picture with {speaker}, to be within 20", list(early))
    for number, bout in enumerate(np.split(early, SETS), 1):
        print(f"  bout {number}: p50 {np.median(bout):+.1f} ms, {bout.min():+.1f} to {bout.max():+.1f}")


@pytest.mark.parametrize("speaker", ["simpleaudio", "miniaudio"])
@pytest.mark.parametrize(("key", "what"), [(Qt.Key.Key_Space, "pause"), (Qt.Key.Key_V, "mute")])
def test_bench_key_press_to_silence(
    server: PulseAudio,
    qtbot: QtBot,
    speaker: Preference,
    key: Qt.Key,
    what: str,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    timeline = timeline_of(exercise(tempo_reps("2-0-2-0", 60)))
    recorder = Recorder(server)
    stage = Stage(qtbot, timeline, speaker, monkeypatch)
    stage.session.act(Begin())
    pressed = [_pressed_in_a_tone(stage, key) for _ in range(PRESSES)]
    stage.close()
    recorder.end()
    loud = recorder.at_ns(np.flatnonzero(recorder.loud))
    silent = [_last_heard(loud, press) for press in pressed]
    report(f"key press of {what} to silence with {speaker}, to be within 100", silent)


def _pressed_in_a_tone(stage: Stage, key: Qt.Key) -> int:
    """Press a key 100 ms into a tone of 400, and again later, so that the next can be heard."""
    known = len(stage.painted)
    stage.wait_until(lambda: len(stage.painted) > known, 20)
    stage.qtbot.wait(TONE_MS // 4)
    at = time.monotonic_ns()
    stage.qtbot.keyClick(stage.page, key)
    stage.qtbot.wait(2 * TONE_MS)
    stage.qtbot.keyClick(stage.page, key)
    return at


def _last_heard(loud_ns: NDArray[np.float64], press_ns: int) -> float:
    """Ms from a press to the last frame that sounds of the tone it fell into."""
    here = loud_ns[(loud_ns > press_ns - TONE_MS * MS) & (loud_ns < press_ns + 2 * TONE_MS * MS)]
    assert here.size, "the press fell into silence"
    return float(here[-1] - press_ns) / MS


def report(what: str, taken: Sequence[float]) -> None:
    p50, p99 = np.percentile(taken, [50, 99])
    far = np.percentile(np.abs(taken), 99)
    print(
        f"\n{what}: p50 {p50:+.1f} ms, p99 {p99:+.1f} ms, least {min(taken):+.1f}, most {max(taken):+.1f}; "
        f"p99 of the distance {far:.1f} ms; {len(taken)} taken"
    )
