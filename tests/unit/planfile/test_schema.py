"""The format as a JSON Schema: it agrees with the reader, and the copy kept agrees with it."""

import json
import tomllib
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from jsonschema import Draft202012Validator

from app.domain.plan import Plan
from app.planfile.form import EXERCISE, GROUP, PLAN, STAGE
from app.planfile.keys import WORDS
from app.planfile.schema import plan_schema, schema_text
from app.planfile.writer import write_plan
from tests.mutators import structure_mutants
from tests.plantexts import plan_text, problems_of
from tests.strategies import plans

ROOT = Path(__file__).parents[3]
DEMO = ROOT / "demo_data"
VALIDATOR = Draft202012Validator(plan_schema())
BEYOND_A_SCHEMA = (
    "the range runs downwards",
    "the session lasts",
    "is finer than",
    "the plan has more than 60 exercises",
    "is not a whole number",
    "is no exercise of this plan",
)
"""What the reader refuses and the schema cannot: order and sums, and 2.0, a whole number to JSON."""


def valid(text: str) -> bool:
    """Whether the schema takes a plan."""
    return bool(VALIDATOR.is_valid(tomllib.loads(text)))


def test_the_schema_is_a_schema() -> None:
    Draft202012Validator.check_schema(plan_schema())


def test_the_copy_kept_in_the_resources_is_the_one_that_is_printed() -> None:
    assert (ROOT / "resources" / "plan.schema.json").read_text(encoding="utf-8") == schema_text()
    assert json.loads(schema_text()) == plan_schema()


@pytest.mark.parametrize("name", ["landing_control.toml", "shoulder_rotators.toml"])
def test_the_demo_plans_pass_and_name_the_schema_that_is_there(name: str) -> None:
    text = (DEMO / name).read_text(encoding="utf-8")
    assert valid(text)
    first, _, path = text.splitlines()[0].partition(" ")
    assert first == "#:schema"
    assert (DEMO / path).resolve() == ROOT / "resources" / "plan.schema.json"


@given(plans())
def test_every_plan_that_can_be_written_passes(plan: Plan) -> None:
    assert valid(write_plan(plan))


@pytest.mark.parametrize(
    "lines",
    [
        [],
        ["reps = 8"],
        ['tempo = "3010"'],
        ["reps = 8", 'tempo = "3010"', "hold = 4"],
        ["reps = 8", "work = 30"],
        ["reps = 8", "hold = 4", 'begins = "hold"'],
        ["work = 30", 'sides = "alternate"'],
        ["work = 30", 'sides = "eech"'],
        ["work = 30", "rep = 3"],
        ["work = 601"],
        ["work = 0"],
        ["work = [30]"],
        ["work = [30, 40, 50]"],
        ["reps = 201", "hold = 4"],
        ["reps = 8.5", "hold = 4"],
        ["reps = 8", "hold = 4", "relax = 0.05"],
        ["work = 30", "sets = 21"],
        ["work = 30", "sets = true"],
        ["work = 30", 'sets = "2"'],
        ["work = 30", 'superset = "ab"'],
        ["work = 30", 'superset = "1"'],
        ["work = 30", 'superset = ""'],
        ["work = 30", 'picture = "http:a.svg"'],
        ["work = 30", 'picture = "."'],
        ["work = 30", 'picture = "figures/"'],
        ["work = 30", 'picture = "~/a.svg"'],
        ["work = 30", "contacts = 1001"],
        ["work = 30", "rest = 21601"],
        ["work = 30", f"cues = [{', '.join(['1'] * 101)}]"],
        ["work = 30", 'picture = "../a.svg"'],
        ["work = 30", 'picture = "/a.svg"'],
        ["work = 30", 'picture = "C:a.svg"'],
        ["work = 30", "picture = 'a\\b.svg'"],
        ["work = 30", 'setup = ""'],
        ["work = 30", 'setup = " "'],
        ["work = 30", f'setup = "{"x" * 501}"'],
        ["work = 30", 'setup = "a\\nb"'],
        ["work = 30", 'setup = "a\\n"'],
        ["work = 30", 'setup = "a\\u202eb"'],
        ["work = 30", "cues = 'down'"],
        ["work = 30", 'words = { ecentric = "down" }'],
        ["work = 30", "load_kg = -1"],
        ["work = 30", "load_kg = inf"],
    ],
)
def test_the_reader_and_the_schema_refuse_the_same(lines: list[str]) -> None:
    assert problems_of(plan_text(*lines))
    assert not valid(plan_text(*lines))


@pytest.mark.parametrize(
    "line",
    [
        'form = "circle"',
        "work = 9",
        "change = 601",
        "rounds = 21",
        "stations = []",
        'stations = ["Squat", "Squat"]',
        "teams = 0",
        "swap = 601",
        "pace = 3",
    ],
)
def test_the_reader_and_the_schema_refuse_the_same_of_a_group(line: str) -> None:
    text = plan_text("work = 30").replace("[[stage]]", f"[group]\n{line}\n[[stage]]", 1)
    assert problems_of(text)
    assert not valid(text)


@pytest.mark.parametrize(
    "lines",
    [
        *(["work = 30", f'superset = "{letter}"'] for letter in "aÄßЯ膝𐐀"),
        *(["work = 30", f'picture = "{path}"'] for path in ("~a.svg", "./a.svg", "a//b", "..a", "a/~/b")),
        ["work = 30", "contacts = 1000"],
        ["work = 30", "rest = 21600"],
        ["work = 30", f"cues = {['x'] * 100}"],
    ],
)
def test_the_reader_and_the_schema_take_the_same(lines: list[str]) -> None:
    assert problems_of(plan_text(*lines)) == []
    assert valid(plan_text(*lines))


@pytest.mark.parametrize("tempo", ["3-0-X-0", "3010", "301", "x/0/1", "1.5:0:1:0.5", "600-0-0-0", " 3010 "])
def test_every_spelling_of_a_tempo_passes(tempo: str) -> None:
    assert valid(plan_text("reps = 8", f'tempo = "{tempo}"'))


@pytest.mark.parametrize(
    "tempo", ["3-X-1-0", "30", "30100", "3-0/1-0", "0000", "0-0-0", "", "1.55-0-1-0", "3-0-1-X"]
)
def test_every_misspelling_of_a_tempo_is_refused(tempo: str) -> None:
    assert not valid(plan_text("reps = 8", f'tempo = "{tempo}"'))


@pytest.mark.parametrize("seed", range(2))
def test_of_senseless_plans_the_schema_refuses_what_the_reader_refuses(seed: int) -> None:
    name = ("landing_control.toml", "shoulder_rotators.toml")[seed]
    agreed = 0
    for text in structure_mutants((DEMO / name).read_text(encoding="utf-8"), 150, seed):
        problems = problems_of(text)
        if not problems:
            assert valid(text)
        elif not all(any(beyond in problem for beyond in BEYOND_A_SCHEMA) for problem in problems):
            assert not valid(text)
        agreed += 1
    assert agreed == 150


def test_every_key_says_what_it_means() -> None:
    for table in (PLAN, GROUP, STAGE, EXERCISE, WORDS):
        for key in table.keys:
            assert key.meaning.endswith(".")


def test_every_default_is_one_the_schema_takes() -> None:
    def defaults(schema: Any) -> list[tuple[Any, Any]]:  # noqa: ANN401
        if not isinstance(schema, dict):
            return [found for item in schema for found in defaults(item)] if isinstance(schema, list) else []
        own = [(schema, schema["default"])] if "default" in schema else []
        return own + [found for item in schema.values() for found in defaults(item)]

    found = defaults(plan_schema())
    assert len(found) >= 13
    assert all(Draft202012Validator(schema).is_valid(default) for schema, default in found)
