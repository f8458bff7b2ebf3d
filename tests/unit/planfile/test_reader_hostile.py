"""Files written to hurt the reader are refused in a few plain words."""

from pathlib import Path

import pytest

from app.domain.errors import FileProblemsError
from app.planfile.reader import read_plan
from tests.hostile import HOSTILE
from tests.plantexts import exercise_problems


@pytest.mark.parametrize("name", sorted(HOSTILE))
def test_a_hostile_file_is_refused_in_a_few_plain_words(name: str, tmp_path: Path) -> None:
    path = tmp_path / "plan.toml"
    path.write_bytes(HOSTILE[name]())
    with pytest.raises(FileProblemsError) as caught:
        read_plan(path)
    assert len(caught.value.problems) <= 3
    for problem in caught.value.problems:
        assert "; " in problem.message
        assert len(problem.message) < 300
        assert problem.message.isprintable()


@pytest.mark.parametrize("number", ["nan", "+nan", "-nan", "inf", "-inf"])
@pytest.mark.parametrize("key", ["hold", "rest", "load_kg", "sets", "reps", "contacts", "relax"])
def test_numbers_that_are_none_are_refused_everywhere(key: str, number: str) -> None:
    lines = {"reps": "reps = 3", "hold": "hold = 4", key: f"{key} = {number}"}
    (problem,) = exercise_problems(*lines.values())
    assert f" {number.strip('+-') if 'nan' in number else number.strip('+')} is " in problem


@pytest.mark.parametrize(
    "number",
    [
        "1000000000",
        "-1",
        "0",
        "1e9",
        "1e-9",
        "0x7fffffffffffffff",
        "9" * 900,
        "-" + "9" * 900,
        "1e" + "9" * 18,
    ],
)
@pytest.mark.parametrize("key", ["hold", "reps", "sets"])
def test_numbers_out_of_all_proportion_are_refused(key: str, number: str) -> None:
    lines = {"reps": "reps = 3", "hold": "hold = 4", key: f"{key} = {number}"}
    (problem,) = exercise_problems(*lines.values())
    assert len(problem) < 120


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("a\\u0000b", "U+0000"),
        ("a\\u0007b", "U+0007"),
        ("a\\tb", "U+0009"),
        ("a\\u007fb", "U+007F"),
        ("a\\u0085b", "U+0085"),
        ("a\\u009bb", "U+009B"),
        ("a\u202eb", "U+202E"),
        ("\u2066ab\u2069", "U+2066"),
        ("\u200fab", "U+200F"),
        ("a\u061cb", "U+061C"),
        ("a\u2028b", "U+2028"),
    ],
)
@pytest.mark.parametrize("key", ["setup", "cues", "words.hold", "picture", "target"])
def test_characters_that_work_unseen_are_refused_in_every_text(key: str, text: str, name: str) -> None:
    value = f'["{text}"]' if key == "cues" else f'"{text}"'
    (problem,) = exercise_problems("work = 9", f"{key} = {value}")
    assert name in problem
    assert problem.isprintable()


def test_an_unseen_character_in_a_key_or_a_word_is_shown_by_its_number() -> None:
    (problem,) = exercise_problems("work = 9", '"si\u202edes" = "each"', 'sides = "\u202eeach"')[:1]
    assert "si<U+202E>des" in problem
