"""Rosters in TOML: who there is, and what is different for whom."""

from decimal import Decimal
from pathlib import Path

import pytest

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.errors import FileProblemsError
from app.domain.plan import Side
from app.planfile.roster import is_roster, parse_roster, read_roster

WHOLE = """\
format = 1
club = "Samphire Bay Handball"

[[athlete]]
name = "Ines"
first = "right"
notes = "Left shoulder tired after long throws."
short = "Ine"
team = "B"
sits_out = ["Tuck jump", "Hop"]

  [[athlete.exercise]]
  name = "Split squat"
  reps = [6, 8]
  load_kg = { left = 4, right = 5.5 }

  [[athlete.exercise]]
  name = "Row"
  load_kg = 10
  variant = "easier"

[[athlete]]
name = "Bram"
"""


def problems(text: str) -> list[str]:
    """What is wrong with a roster."""
    with pytest.raises(FileProblemsError) as caught:
        parse_roster(text, "r")
    return [line.removeprefix("r:") for line in str(caught.value).splitlines()]


def test_every_key_of_a_roster_is_read() -> None:
    loads = {
        ("Split squat", Side.LEFT): Decimal(4),
        ("Split squat", Side.RIGHT): Decimal("5.5"),
        ("Row", Side.BOTH): Decimal(10),
    }
    notes = "Left shoulder tired after long throws."
    assert parse_roster(WHOLE, "r") == (
        Athlete(
            "Ines",
            Side.RIGHT,
            loads,
            {"Split squat": Band(6, 8)},
            notes,
            short="Ine",
            team="B",
            sits_out=frozenset({"Tuck jump", "Hop"}),
            variants={"Row": "easier"},
        ),
        Athlete("Bram"),
    )


def test_loads_are_found_by_side_then_for_both_then_in_the_plan() -> None:
    ines, bram = parse_roster(WHOLE, "r")
    assert ines.load_kg("Split squat", Side.RIGHT, Decimal(3)) == Decimal("5.5")
    assert ines.load_kg("Row", Side.LEFT, None) == Decimal(10)
    assert bram.load_kg("Row", Side.LEFT, Decimal(3)) == Decimal(3)


def test_all_problems_come_at_once_each_with_its_place() -> None:
    text = """\
format = 1
team = "Bay"

[[athlete]]
name = "Ines"
first = "both"
note = "tired"

  [[athlete.exercise]]
  name = "Squat"

  [[athlete.exercise]]
  name = "Row"
  reps = 0
  load_kg = { left = -1, middle = 3 }

  [[athlete.exercise]]
  name = "Row"
  load_kg = "5"

[[athlete]]
name = "Ines"

[[athlete]]
first = "left"
"""
    assert problems(text) == [
        '2:1: unknown key "team"; known here are format, club, athlete',
        '6:9: "both" is not known here; write "left" or "right"',
        '7:1: unknown key "note"; did you mean "notes"?',
        "9:3: nothing is different here; write reps, load_kg or variant, or leave the exercise out",
        "14:10: 0 is out of range; write a whole number from 1 to 200",
        "15:22: -1 is out of range; write 0 to 1000 kg",
        '15:26: unknown key "middle"; known here are left, right',
        '18:10: "Row" stands here for the second time; keep one of the two',
        '19:13: this must be a number, not "5"; write a number, without quotes',
        '22:8: "Ines" stands here for the second time; keep one of the two',
        '24:1: "name" is missing; write name = "..."',
    ]


def test_what_is_said_for_a_group_is_judged_like_the_rest() -> None:
    text = """\
format = 1
[[athlete]]
name = "Ines"
shrt = "I"
team = "b"
sits_out = "Hop"
[[athlete.exercise]]
name = "Row"
variant = "harde"
"""
    assert problems(text) == [
        '4:1: unknown key "shrt"; did you mean "short"?',
        '5:8: "b" is not known here; write "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K" or "L"',
        '6:12: this must be a list; put it in square brackets, like ["Hop"]',
        '9:11: "harde" is not known here; did you mean "harder"?',
    ]


def test_a_roster_needs_a_format_and_an_athlete() -> None:
    assert problems("") == [
        '1:1: "format" is missing; write format = 1',
        '1:1: "athlete" is missing; write a first athlete under [[athlete]]',
    ]


def test_what_cannot_be_read_is_told_as_for_plans() -> None:
    assert problems('format = 1\n[[athlete]]\nname = Ines\nfirst = "up"\n') == [
        '3:8: this value cannot be read; text stands in quotes: name = "Ines"',
        '4:9: "up" is not known here; write "left" or "right"',
    ]


def test_a_file_is_read_by_the_ending_of_its_name(tmp_path: Path) -> None:
    (tmp_path / "r.toml").write_text(WHOLE)
    (tmp_path / "r.CSV").write_text("name\nIda\n")
    assert [athlete.name for athlete in read_roster(tmp_path / "r.toml")] == ["Ines", "Bram"]
    assert read_roster(tmp_path / "r.CSV") == (Athlete("Ida"),)


def test_a_roster_is_told_from_a_plan_by_its_headings() -> None:
    assert is_roster(WHOLE)
    assert is_roster("x = 1\n  [[ athlete ]]\n")
    assert not is_roster('title = "[[athlete]]"\n# [[athlete]]\n')
