"""Speech from the rate of the synthesiser to ours, by a polyphase windowed-sinc filter."""

from functools import lru_cache
from math import gcd

import numpy as np
from numpy.typing import NDArray

ZEROS = 24
"""Zero crossings of the sinc on each side, at the lower of the two rates."""
KAISER_BETA = 9.0
"""Shape of the window: what lies above the new band is about 90 dB down (Kaiser's formula, from memory)."""
PASS = 0.94
"""Corner of the filter as a share of the lower Nyquist rate, so that its slope ends near there."""


def resample(wave: NDArray[np.floating], rate_from: int, rate_to: int) -> NDArray[np.float64]:
    """A wave of one channel at another rate: ceil(frames * rate_to / rate_from) frames, nothing delayed."""
    common = gcd(rate_from, rate_to)
    up, down = rate_to // common, rate_from // common
    frames = -(-len(wave) * up // down)
    if up == down or not frames:
        return np.asarray(wave, dtype=np.float64)
    taps = design(up, down)
    reach = len(taps) // 2
    legs = _legs(up, down)
    width = legs.shape[1]
    padded = np.concatenate((np.zeros(width - 1), wave, np.zeros(width + reach // up + down)))
    windows = np.lib.stride_tricks.sliding_window_view(padded, width)
    filtered = np.empty(frames)
    # Output n stands at input n * down / up: every up-th output takes the same leg, its inputs `down` apart.
    for first in range(min(up, frames)):
        place = first * down + reach
        turns = len(range(first, frames, up))
        filtered[first::up] = windows[place // up :: down][:turns] @ legs[place % up]
    return filtered


@lru_cache(maxsize=8)
def design(up: int, down: int) -> NDArray[np.float64]:
    """The filter at `up` times the first rate: odd, symmetric, its gain `up`; read-only."""
    slower = max(up, down)
    reach = ZEROS * slower
    places = np.arange(-reach, reach + 1) / slower
    taps = PASS * np.sinc(PASS * places) * np.kaiser(2 * reach + 1, KAISER_BETA)
    taps *= up / taps.sum()
    taps.flags.writeable = False
    return np.asarray(taps)


@lru_cache(maxsize=8)
def _legs(up: int, down: int) -> NDArray[np.float64]:
    """The filter dealt out to its `up` phases, each reversed: shape (up, taps a phase)."""
    taps = design(up, down)
    width = -(-len(taps) // up)
    dealt = np.zeros(width * up)
    dealt[: len(taps)] = taps
    return np.ascontiguousarray(dealt.reshape(width, up).T[:, ::-1])
