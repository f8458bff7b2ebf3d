"""Pedals and presenters in the settings file."""

from pathlib import Path

import pytest

from app.domain.errors import FileProblemsError
from app.planfile.key_settings import PedalKeys
from app.planfile.settings import Settings, parse_settings, read_settings
from app.planfile.settings_edit import keys_changes, save_settings


def test_keys_are_read_and_left_out_they_are_none() -> None:
    text = '[keys]\ncount = ["PageDown", "Right"]\npause = ["PageUp"]\none_pedal = true\n'
    assert parse_settings(text, "s").keys == PedalKeys(("PageDown", "Right"), ("PageUp",), one_pedal=True)
    assert parse_settings("", "s").keys == PedalKeys()


def test_a_key_in_both_lists_pauses() -> None:
    assert parse_settings('[keys]\ncount = ["B"]\npause = ["B"]\n', "s").keys == PedalKeys((), ("B",))


@pytest.mark.parametrize(
    ("line", "problem"),
    [
        ('count = "B"', "this must be a list"),
        ("count = [1]", "in quotes"),
        ("one_pedal = 1", "true or false"),
    ],
)
def test_what_is_no_key_is_refused(line: str, problem: str) -> None:
    with pytest.raises(FileProblemsError, match=problem):
        parse_settings(f"[keys]\n{line}\n", "s")


def test_a_key_that_is_learned_anew_does_that_alone() -> None:
    keys = PedalKeys().learned("B", pause=False).learned("C", pause=False).learned("B", pause=True)
    assert keys == PedalKeys(("C",), ("B",))
    assert keys.learned("B", pause=True) == keys


def test_what_was_learned_is_written_and_read_again(tmp_path: Path) -> None:
    path, before = tmp_path / "settings.toml", Settings()
    after = Settings(keys=PedalKeys(("PageDown",), ("PageUp",), one_pedal=True))
    save_settings(path, keys_changes(before, after))
    assert read_settings(path) == after
    save_settings(path, keys_changes(after, before))
    assert read_settings(path) == before
    assert keys_changes(after, after) == {}
