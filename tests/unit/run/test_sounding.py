"""How loud a run is, in steps, and what stays of it when it is muted."""

import pytest

from app.run.sounding import Loudness, NoSound


@pytest.mark.parametrize(
    ("percent", "louder", "softer"), [(50, 60, 40), (95, 100, 85), (5, 15, 0), (0, 10, 0)]
)
def test_a_step_is_ten_percent_within_nought_and_a_hundred(percent: int, louder: int, softer: int) -> None:
    assert Loudness(percent).louder() == Loudness(louder)
    assert Loudness(percent).softer() == Loudness(softer)


def test_muted_is_silence_that_remembers_how_loud_it_was() -> None:
    muted = Loudness(70).switched()
    assert (muted.muted, muted.percent, muted.share) == (True, 70, 0.0)
    assert muted.switched() == Loudness(70)
    assert muted.switched().share == 0.7


def test_a_step_ends_a_mute() -> None:
    assert Loudness(70, muted=True).louder() == Loudness(80)
    assert Loudness(70, muted=True).softer() == Loudness(60)


def test_where_there_is_no_sound_the_loudness_is_remembered() -> None:
    silence = NoSound()
    silence.set_loudness(Loudness(30))
    assert silence.loudness == Loudness(30)
