"""How late the sound is, from taps along with it."""

from collections.abc import Sequence
from statistics import median

TAPS = 16
"""Taps that are needed, and the last of which count."""
BEAT_MS = 1_000
EARLIEST_MS = -250
"""A tap this much before a beat or less still belongs to it: people tap early."""


def latency_from_taps(taps_ms: Sequence[int], beat_ms: int = BEAT_MS) -> int | None:
    """By how many ms taps come after the beats: the median of the last 16, None while there are fewer.

    `taps_ms` are moments of a clock on which a beat is sent to the speaker at each multiple of `beat_ms`.
    """
    if len(taps_ms) < TAPS:
        return None
    late = [(tap - EARLIEST_MS) % beat_ms + EARLIEST_MS for tap in taps_ms[-TAPS:]]
    return round(median(late))
