"""Plans to text: what is written reads back as the same plan, in one canonical form."""

import tomllib
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Plan
from app.planfile.reader import parse_plan, read_plan
from app.planfile.writer import write_plan, write_value
from tests.strategies import plans

DEMO = Path(__file__).parents[3] / "demo_data"

CANONICAL = """\
format = 1
title = "A \\"quoted\\" title"
lead_in = 4.5

[[stage]]
name = "One"
kind = "activation"

  [[stage.exercise]]
  name = "Row"
  sides = "each"
  reps = [8, 10]
  tempo = "3-0-X-0"
  begins = "concentric"
  rest = 45
  load_kg = 2.5
  cues = ["a", "b"]
  words = { eccentric = "back", concentric = "row" }

  [[stage.exercise]]
  name = "Hold"
  reps = 6
  hold = [3, 4.5]
  relax = 0

[[stage]]
name = "Two"
kind = "power"

  [[stage.exercise]]
  name = "Jump"
  reps = 5
  pace = "own"
"""


@given(plans())
def test_what_is_written_reads_back_as_the_same_plan(plan: Plan) -> None:
    assert parse_plan(write_plan(plan), "plan.toml", None) == plan


@given(plans())
def test_the_same_plan_is_always_written_the_same_way(plan: Plan) -> None:
    text = write_plan(plan)
    assert write_plan(parse_plan(text, "plan.toml", None)) == text


def test_the_canonical_form_leaves_out_defaults_and_keeps_the_order_of_the_format() -> None:
    assert write_plan(parse_plan(CANONICAL, "plan.toml", None)) == CANONICAL


def test_what_says_no_more_than_the_defaults_is_not_written() -> None:
    said = CANONICAL.replace("lead_in = 4.5", 'lead_in = 4.5\nchangeover = 20.0\nlevel = "beginner"').replace(
        "  rest = 45", "  rest = 45\n  sets = 1\n  first = 'left'\n  faults = []\n  words.hold = 'x'"
    )
    said = said.replace('  words = { eccentric = "back", concentric = "row" }\n', "")
    assert "changeover" not in write_plan(parse_plan(said, "plan.toml", None))
    assert "faults" not in write_plan(parse_plan(said, "plan.toml", None))
    assert 'words = { hold = "x" }' in write_plan(parse_plan(said, "plan.toml", None))


@pytest.mark.parametrize("name", ["landing_control.toml", "shoulder_rotators.toml"])
def test_the_demo_plans_survive_being_written(name: str) -> None:
    plan = read_plan(DEMO / name)
    assert parse_plan(write_plan(plan), name, DEMO) == plan


@given(st.text())
def test_any_text_is_written_as_toml_that_means_it(text: str) -> None:
    # What a plan may not hold must still be written so that the reader, not the parser, refuses it.
    assert tomllib.loads(f"v = {write_value(text)}")["v"] == text


def test_numbers_lists_and_tables_are_written_plainly() -> None:
    assert write_value(Decimal("2.5")) == "2.5"
    assert write_value([1, Decimal("1.5")]) == "[1, 1.5]"
    assert write_value({"a": "x", "b": 1}) == '{ a = "x", b = 1 }'
