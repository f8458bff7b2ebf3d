"""The one format of sound in this program, and how time and loudness map to it."""

import numpy as np
from numpy.typing import NDArray

RATE = 48_000
PER_MS = 48
CHANNELS = 2
FULL_SCALE = 32_767
PEAK = 10 ** (-1 / 20)
"""The highest sample allowed, -1 dBFS, on a scale where 1 is full."""

Stereo = NDArray[np.int16]
"""Samples as played: shape (frames, 2), left then right, 48 kHz."""
Wave = NDArray[np.float32]
"""Samples being made, 1 is full scale: shape (frames,) for one channel or (frames, 2)."""
Spoken = NDArray[np.int16]
"""One phrase of speech, one channel at 48 kHz: shape (frames,)."""


def rms(wave: NDArray[np.floating]) -> float:
    """Root mean square over all frames and channels; 0 for no samples."""
    return float(np.sqrt(np.mean(np.square(wave, dtype=np.float64)))) if wave.size else 0.0


def to_stereo(wave: Wave) -> Stereo:
    """A wave of shape (frames, 2) as whole samples, held at the highest level allowed."""
    held: Stereo = np.rint(np.clip(wave, -PEAK, PEAK) * FULL_SCALE).astype(np.int16)
    return held


def silence(ms: int) -> Stereo:
    """So many ms of nothing."""
    return np.zeros((ms * PER_MS, CHANNELS), dtype=np.int16)


def soften(samples: Stereo, share: float, into: Stereo) -> None:
    """Write samples at a share, 0 to 1, of their loudness into an array of the same shape."""
    if share == 1:
        np.copyto(into, samples)
    elif share == 0:
        into.fill(0)
    else:
        np.multiply(samples, np.float32(share), out=into, casting="unsafe")


NOTHING: Stereo = silence(0)
"""No samples."""
