"""However a plan file is damaged: a plan, or an error that lists its problems, and nothing else."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from app.domain.errors import FileProblemsError
from app.domain.length import session_ms
from app.domain.plan import LONGEST_SESSION_MS, Plan
from app.planfile.reader import parse_plan, read_plan
from app.planfile.writer import write_plan
from tests.mutators import byte_mutants, structure_mutants

DEMO = Path(__file__).parents[3] / "demo_data"
PLANS = ("landing_control.toml", "shoulder_rotators.toml")
SOURCES = tuple((DEMO / name).read_bytes() for name in (*PLANS, "roster.toml"))


def broken_bytes(seed: int, path: Path) -> Iterator[tuple[int, Path]]:
    """Files with broken bytes one after the other at a path, each with the number of its lines."""
    for data in byte_mutants(SOURCES[seed % 2], SOURCES, 500, seed):
        path.write_bytes(data)
        yield data.count(b"\n") + 1, path


@pytest.mark.parametrize("seed", range(4))
def test_a_file_with_broken_bytes_is_a_plan_or_a_list_of_problems(seed: int, tmp_path: Path) -> None:
    refused = 0
    for lines, path in broken_bytes(seed, tmp_path / "plan.toml"):
        try:
            assert_sound(read_plan(path))
        except FileProblemsError as error:
            refused += 1
            assert_well_told(error, lines)
    assert 100 < refused < 500


@pytest.mark.parametrize("seed", range(4))
def test_a_file_with_senseless_values_is_a_plan_or_a_list_of_problems(seed: int) -> None:
    refused = 0
    for text in structure_mutants(SOURCES[seed % 2].decode("utf-8"), 500, seed):
        try:
            assert_sound(parse_plan(text, "plan.toml", None))
        except FileProblemsError as error:
            refused += 1
            assert_well_told(error, text.count("\n") + 1)
    assert 100 < refused < 500


def assert_sound(plan: Plan) -> None:
    """What was read can be written and read again, and is no longer than a session may be."""
    assert parse_plan(write_plan(plan), "plan.toml", None) == plan
    assert 0 < session_ms(plan) <= LONGEST_SESSION_MS


def assert_well_told(error: FileProblemsError, lines: int) -> None:
    """Each problem has a place in the file and a short sentence on one line, without surprises."""
    assert error.problems
    assert len(set(error.problems)) == len(error.problems)
    places = [(problem.line, problem.column) for problem in error.problems]
    assert places == sorted(places)
    for problem in error.problems:
        assert 0 <= problem.line <= lines
        assert len(problem.message) < 600
        assert "; " in problem.message
        assert problem.message.isprintable()
    assert len(str(error).splitlines()) == len(error.problems)
