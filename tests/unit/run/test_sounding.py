"""How loud a run is, in steps, and muted."""

import pytest

from app.run.sounding import Loudness, NoSound


def test_what_is_heard_is_its_share_of_a_hundred_and_nothing_when_muted() -> None:
    assert Loudness(70).share == 0.7
    assert Loudness(70, muted=True).share == 0.0


@pytest.mark.parametrize(("percent", "softer", "louder"), [(50, 40, 60), (95, 85, 100), (5, 0, 15)])
def test_a_step_goes_no_further_than_silence_and_full(percent: int, softer: int, louder: int) -> None:
    assert Loudness(percent).softer() == Loudness(softer)
    assert Loudness(percent).louder() == Loudness(louder)


def test_a_step_in_either_direction_ends_the_muting() -> None:
    muted = Loudness(50, muted=True)
    assert not muted.softer().muted
    assert not muted.louder().muted


def test_muting_twice_is_as_loud_as_before() -> None:
    assert Loudness(30).switched() == Loudness(30, muted=True)
    assert Loudness(30).switched().switched() == Loudness(30)


def test_where_nothing_sounds_the_loudness_chosen_is_kept() -> None:
    sound = NoSound()
    sound.set_loudness(Loudness(40))
    assert sound.loudness == Loudness(40)
