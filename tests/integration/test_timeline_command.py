"""The `timeline` command from a file to what is printed."""

import csv
import io
import json
from pathlib import Path

import pytest

from app.__main__ import main

PLAN = """
format = 1
title = "Try-out"

[[stage]]
name = "Wake"
kind = "activation"

  [[stage.exercise]]
  name = "Rotation"
  sides = "each"
  reps = 2
  tempo = "1-0-1-0"
"""

ROSTER = """
format = 1
club = "Samphire Bay Handball"

[[athlete]]
name = "Runa Ostrander"
first = "right"

  [[athlete.exercise]]
  name = "Rotation"
  reps = 1
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    """A small plan as a file."""
    path = tmp_path / "plan.toml"
    path.write_text(PLAN, encoding="utf-8")
    return path


def printed(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    """What the command prints when it goes well."""
    assert main(["timeline", *words]) == 0
    captured = capsys.readouterr()
    assert captured.err == ""
    return captured.out


def test_the_sheet_is_printed_when_no_format_is_asked(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert printed(capsys, str(plan)).splitlines()[:2] == ["Try-out", "takes 0:21"]


def test_csv_is_one_row_a_span(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = printed(capsys, str(plan), "--format", "csv")
    rows = list(csv.DictReader(io.StringIO(out, newline="")))
    assert [(row["start_ms"], row["kind"], row["side"]) for row in rows] == [
        ("0", "lead_in", "left"),
        ("5000", "work", "left"),
        ("6000", "work", "left"),
        ("7000", "work", "left"),
        ("8000", "work", "left"),
        ("9000", "side_change", "right"),
        ("12000", "lead_in", "right"),
        ("17000", "work", "right"),
        ("18000", "work", "right"),
        ("19000", "work", "right"),
        ("20000", "work", "right"),
    ]


def test_json_has_spans_and_figures(plan: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = json.loads(printed(capsys, str(plan), "--format", "json"))
    assert (len(found["spans"]), found["figures"]["duration_ms"]) == (11, 21_000)


def test_an_athlete_of_the_roster_has_a_timeline_of_their_own(
    plan: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    roster = tmp_path / "roster.toml"
    roster.write_text(ROSTER, encoding="utf-8")
    who = ("--athlete", "Runa Ostrander", "--roster", str(roster))
    out = printed(capsys, str(plan), *who, "--format", "csv")
    rows = list(csv.DictReader(io.StringIO(out, newline="")))
    assert [row["side"] for row in rows if row["kind"] == "work"] == ["right"] * 2 + ["left"] * 2
    assert printed(capsys, str(plan), *who).startswith("Try-out, for Runa Ostrander\n")


def test_a_broken_plan_is_a_plain_line_and_status_one(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "broken.toml"
    path.write_text(PLAN.replace("reps = 2", "rep = 2"), encoding="utf-8")
    assert main(["timeline", str(path)]) == 1
    captured = capsys.readouterr()
    assert captured.out == ""
    assert captured.err.startswith(f"{path}:")
