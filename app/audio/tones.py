"""The tones: each kind of cue as a shape of pitch, each side as a place and a timbre.

Pitches are of equal temperament on A = 440 Hz (ISO 16), all between 500 and 2000 Hz with their overtones.
"""

from collections.abc import Callable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from app.audio.samples import PER_MS, RATE, Wave
from app.domain.cue_values import CueKind
from app.domain.plan import Side

LOUDNESS = 0.12
"""RMS of every tone over its length and both channels, -18.4 dBFS."""
RAMP_MS = 15
THRESHOLD = 0.02
"""A ramp starts at this share of the whole, so that the first sample of a tone is the first that sounds."""
NEAR, FAR = 1.32, 0.507
"""Gains of the two channels for a one-sided tone; their squares add up to 2, as for a central one."""
GAINS = {Side.LEFT: (NEAR, FAR), Side.RIGHT: (FAR, NEAR), Side.BOTH: (1.0, 1.0)}
"""Gain of the left and of the right channel by side."""
ROUGHNESS_HZ = 25.0
"""The right side is rough: its loudness wavers at this rate, which a single loudspeaker carries too."""

Pitch = NDArray[np.float64]


def note(semitones_from_a4: int) -> float:
    """Frequency in Hz of a note, counted in equal-tempered semitones from A4 = 440 Hz (ISO 16)."""
    return 440.0 * float(2.0 ** (semitones_from_a4 / 12))


C5, E5, G5, A5, C6, E6, G6 = (note(steps) for steps in (3, 7, 10, 12, 15, 19, 22))


@lru_cache(maxsize=512)
def tone(kind: CueKind, length_ms: int, side: Side) -> Wave:
    """The sound of a cue, shape (length_ms * 48, 2), read-only. Raises KeyError for a kind that is spoken."""
    frames = length_ms * PER_MS
    mono = _SHAPES[kind](frames, side)
    stereo = np.stack([mono * gain for gain in GAINS[side]], axis=1)
    loudness = np.sqrt(np.mean(np.square(stereo)))
    finished: Wave = (stereo * (LOUDNESS / loudness)).astype(np.float32)
    finished.flags.writeable = False
    return finished


def _voiced(pitch: Pitch, side: Side) -> Pitch:
    """A pitch in Hz by frame as a wave: left plain and round, right bright and rough, both in between."""
    # The phase of the first frame is 0 and a cosine is loudest there: a tone is heard from its first sample.
    phase = 2 * np.pi * (np.cumsum(pitch) - pitch) / RATE
    if side is Side.LEFT:
        return np.cos(phase)
    if side is Side.BOTH:
        return np.cos(phase) + 0.35 * np.cos(2 * phase)
    waver = 1 + 0.6 * np.cos(_turns(ROUGHNESS_HZ, len(pitch)))
    return (np.cos(phase) + 0.9 * np.cos(2 * phase)) * waver


def _ramped(wave: Pitch) -> Pitch:
    frames = len(wave)
    ramp = min(RAMP_MS * PER_MS, frames // 2)
    rise = THRESHOLD + (1 - THRESHOLD) * (1 - np.cos(np.pi * np.arange(ramp) / ramp)) / 2
    envelope = np.ones(frames)
    envelope[:ramp] = rise
    envelope[frames - ramp :] = rise[::-1]
    return wave * envelope


def _fading(wave: Pitch, to: float) -> Pitch:
    return wave * np.geomspace(1.0, to, len(wave))


def _glide(start: float, end: float) -> Callable[[int, Side], Pitch]:
    return lambda frames, side: _ramped(_voiced(np.geomspace(start, end, frames), side))


def _level(pitch: float) -> Callable[[int, Side], Pitch]:
    return lambda frames, side: _ramped(_voiced(np.full(frames, pitch), side))


def _together(*pitches: float, fade: float) -> Callable[[int, Side], Pitch]:
    """Notes struck together and dying away: the low ones lead on the left, the high ones on the right.

    Each is a little out of step with the others, so that their peaks do not add up.
    """

    def shape(frames: int, side: Side) -> Pitch:
        lean = {Side.LEFT: -1.0, Side.RIGHT: 1.0, Side.BOTH: 0.0}[side]
        parts = [
            2 ** (lean * step) * np.cos(_turns(pitch, frames) + 0.6 * step)
            for step, pitch in enumerate(pitches)
        ]
        return _ramped(_fading(np.sum(parts, axis=0), fade))

    return shape


def _in_turn(*pitches: float) -> Callable[[int, Side], Pitch]:
    """Short notes one after the other, each with its own ramps and a little silence after it."""

    def shape(frames: int, side: Side) -> Pitch:
        wave = np.zeros(frames)
        step = frames // len(pitches)
        sounding = max(step * 4 // 5, 1)
        for place, pitch in enumerate(pitches):
            part = _ramped(_voiced(np.full(sounding, pitch), side))
            wave[place * step : place * step + sounding] = part
        return wave

    return shape


def _turns(rate_hz: float, frames: int) -> Pitch:
    return 2 * np.pi * rate_hz * np.arange(frames) / RATE


_SHAPES: dict[CueKind, Callable[[int, Side], Pitch]] = {
    CueKind.ECCENTRIC: _glide(G5, C5),
    CueKind.CONCENTRIC: _glide(C5, G5),
    CueKind.HOLD_LENGTHENED: _level(C5),
    CueKind.HOLD_SHORTENED: _level(G5),
    CueKind.HOLD: _level(E5),
    CueKind.EXPLOSIVE: _together(C6, E6, G6, fade=0.05),
    CueKind.RELEASE: _in_turn(G5, E5, C5),
    CueKind.END: _together(C5, E5, G5, C6, fade=0.1),
    CueKind.MARK: _in_turn(A5, A5),
    CueKind.TICK: _level(A5),
}
