"""Samples made softer: exactly as they were, exactly nothing, or in proportion."""

import numpy as np
import pytest

from app.audio.samples import CHANNELS, FULL_SCALE, soften
from app.audio.track import Volumes

WHOLE = np.array([[-FULL_SCALE - 1, FULL_SCALE], [1, -1], [0, 12_345]], dtype=np.int16)


@pytest.mark.parametrize("share", [0.0, 0.1, 0.5, 0.999, 1.0])
def test_each_sample_is_softened_in_proportion(share: float) -> None:
    into = np.full_like(WHOLE, 7)
    soften(WHOLE, share, into)
    assert np.max(np.abs(into - WHOLE.astype(np.float64) * share)) < 1.01
    if share in (0.0, 1.0):
        assert np.array_equal(into, WHOLE * int(share))


def test_nothing_can_be_softened() -> None:
    nothing = np.zeros((0, CHANNELS), dtype=np.int16)
    soften(nothing, 0.5, nothing)


@pytest.mark.parametrize(
    ("volumes", "loudest", "balance"),
    [
        (Volumes(0.6, 0.3), 0.6, Volumes(1.0, 0.5)),
        (Volumes(0.0, 0.4), 0.4, Volumes(0.0, 1.0)),
        (Volumes(1.0, 1.0), 1.0, Volumes(1.0, 1.0)),
        (Volumes(0.0, 0.0), 0.0, Volumes(1.0, 1.0)),
    ],
)
def test_volumes_are_a_balance_and_how_loud_the_louder_is(
    volumes: Volumes, loudest: float, balance: Volumes
) -> None:
    assert (volumes.loudest, volumes.balance) == (loudest, balance)
