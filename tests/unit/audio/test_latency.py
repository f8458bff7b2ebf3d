"""How late the sound is, from taps."""

import pytest

from app.audio.latency import TAPS, latency_from_taps


def taps(late_ms: int, count: int = TAPS) -> list[int]:
    return [beat * 1_000 + late_ms for beat in range(count)]


@pytest.mark.parametrize("late_ms", [-60, 0, 35, 220, 749])
def test_steady_taps_give_their_lateness(late_ms: int) -> None:
    assert latency_from_taps(taps(late_ms)) == late_ms


def test_fewer_than_sixteen_taps_give_nothing() -> None:
    assert latency_from_taps(taps(100, 15)) is None


def test_a_few_wild_taps_do_not_move_the_median() -> None:
    wild = taps(180)
    wild[3] += 400
    wild[9] -= 250
    assert latency_from_taps(wild) == 180


def test_only_the_last_sixteen_count() -> None:
    assert latency_from_taps([*taps(500, 20), *(beat * 1_000 + 90 for beat in range(20, 36))]) == 90


def test_an_even_spread_gives_the_middle() -> None:
    assert latency_from_taps([beat * 1_000 + beat * 10 for beat in range(16)]) == 75
