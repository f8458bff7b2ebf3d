"""The audio guide: a whole session as one sound file, every gap in its real length."""

import wave
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from typing import Any

from app.audio.bout_sound import Manner, length_in
from app.audio.samples import CHANNELS, RATE, Stereo
from app.audio.track import Phrases, render_track
from app.domain.cue_fit import fit_speech
from app.domain.cue_values import Cue
from app.domain.cue_words import TONGUES
from app.domain.cues import CODA_MS, whole_bout_cues
from app.domain.dose import OwnPaceReps, SignalReps
from app.domain.errors import PacewrightError
from app.domain.plan import Exercise, Plan
from app.domain.timeline import Timeline

PIECE_MS = 60_000
"""The file is made in pieces of about this length, so that a long session needs little memory."""
DEFAULT_PACE_MS = 3_000

Take = Callable[[Stereo], None]


def paced(plan: Plan, every_ms: int) -> Plan:
    """The plan with own-pace work led at a rep each `every_ms`, so that all of it has a length."""
    stages = tuple(
        replace(stage, exercises=tuple(_paced_exercise(exercise, every_ms) for exercise in stage.exercises))
        for stage in plan.stages
    )
    return replace(plan, stages=stages)


def session_cues(timeline: Timeline, manner: Manner, phrases: Phrases) -> tuple[Cue, ...]:
    """Every cue of a session in order, times in ms from `ready`. Raises ValueError for open-ended work."""
    placed: list[Cue] = []
    carried: tuple[Cue, ...] = ()
    begin = 0
    for bout in timeline.bouts:
        if bout.work_ms is None:
            raise ValueError("open-ended work has no place in time: pace it first")
        begin += bout.before_ms
        wished = whole_bout_cues(timeline, bout, level=manner.level, tongue=TONGUES[manner.language])
        # The chord at the end of the bout before sounds into this one's gap.
        fitted = fit_speech((*(_moved(cue, -begin) for cue in carried), *wished), length_in(phrases))
        placed.extend(_moved(cue, begin) for cue in fitted if cue.at_ms < bout.work_ms)
        carried = tuple(_moved(cue, begin) for cue in fitted if cue.at_ms >= bout.work_ms)
        begin += bout.work_ms
    return (*placed, *carried)


def session_sound(cues: Sequence[Cue], length_ms: int, manner: Manner, phrases: Phrases) -> Iterator[Stereo]:
    """The samples of a session, piece by piece, from `ready` to `length_ms`."""
    waiting = list(cues)
    start = 0
    for end in _cuts(cues, length_ms):
        here = [cue for cue in waiting if cue.at_ms < end]
        waiting = waiting[len(here) :]
        yield render_track(here, start, end, volumes=manner.volumes, phrases=phrases)
        start = end


def write_guide(path: Path, timeline: Timeline, manner: Manner, phrases: Phrases) -> tuple[Cue, ...]:
    """Write a session to a `.wav` or `.flac` file, and give its cues, times in ms from the start of the file.

    Raises PacewrightError when the file cannot be written or its kind not be made.
    """
    cues = session_cues(timeline, manner, phrases)
    part = path.with_name(f"{path.name}.part")
    try:
        with _file(part, path.suffix.lower()) as take:
            for piece in session_sound(cues, timeline.timed_ms + CODA_MS, manner, phrases):
                take(piece)
        part.replace(path)
    except OSError as error:
        raise PacewrightError(f"{path} cannot be written: {error.strerror or error}.") from error
    finally:
        part.unlink(missing_ok=True)
    return cues


def _paced_exercise(exercise: Exercise, every_ms: int) -> Exercise:
    if not isinstance(exercise.dose, OwnPaceReps):
        return exercise
    return replace(exercise, dose=SignalReps(exercise.dose.reps, every_ms))


def _moved(cue: Cue, by_ms: int) -> Cue:
    until = None if cue.until_ms is None else cue.until_ms + by_ms
    return replace(cue, at_ms=cue.at_ms + by_ms, until_ms=until)


def _cuts(cues: Sequence[Cue], length_ms: int) -> Iterator[int]:
    """Ends of pieces: at or after each `PIECE_MS`, where nothing sounds; the last is the end."""
    start = silent_from = 0
    for at, end in (*((cue.at_ms, cue.end_ms) for cue in cues), (length_ms, length_ms)):
        cut = max(start + PIECE_MS, silent_from)
        while cut <= at and cut < length_ms:
            yield cut
            start = cut
            cut += PIECE_MS
        silent_from = max(silent_from, end)
    yield length_ms


@contextmanager
def _file(path: Path, kind: str) -> Iterator[Take]:
    if kind == ".wav":
        with path.open("wb") as raw, wave.open(raw, "wb") as file:
            file.setnchannels(CHANNELS)
            file.setsampwidth(2)
            file.setframerate(RATE)
            yield lambda samples: file.writeframesraw(samples.astype("<i2").tobytes())
    elif kind == ".flac":
        with _flac().SoundFile(str(path), "w", RATE, CHANNELS, "PCM_16", format="FLAC") as flac:
            yield flac.write
    else:
        raise PacewrightError(
            "The guide is written as .wav or .flac: give it a name that ends in one of them."
        )


def _flac() -> Any:  # noqa: ANN401
    try:
        import soundfile
    except ImportError as error:
        raise PacewrightError(
            "FLAC needs the extra 'export' (pip install 'pacewright[export]'); .wav is always possible."
        ) from error
    return soundfile
