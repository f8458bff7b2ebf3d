"""Plan files as texts, and what is said about wrong ones."""

from pathlib import Path

from app.domain.errors import FileProblemsError
from app.domain.plan import Exercise
from app.planfile.kinds import Kind
from app.planfile.reader import parse_plan

HEAD = """\
format = 1
title = "Tuesday"

[[stage]]
name = "Wake"
kind = "activation"

[[stage.exercise]]
name = "Squat"
"""
"""Nine lines that begin a plan; a dose from line 10 on makes it whole."""


def plan_text(*lines: str) -> str:
    """A plan whose only exercise ends with some lines."""
    return HEAD + "\n".join(lines) + "\n"


def exercise_of(*lines: str) -> Exercise:
    """The exercise read from a plan that ends with some lines."""
    return parse_plan(plan_text(*lines), "plan.toml", None).stages[0].exercises[0]


def problems_of(text: str, folder: Path | None = None) -> list[str]:
    """What is wrong with a plan text, each as `LINE:COLUMN: message`; nothing where nothing is."""
    try:
        parse_plan(text, "plan.toml", folder)
    except FileProblemsError as error:
        return [line.removeprefix("plan.toml:") for line in str(error).splitlines()]
    return []


def exercise_problems(*lines: str) -> list[str]:
    """What is wrong with a plan whose only exercise ends with some lines, the first of them being line 10."""
    return problems_of(plan_text(*lines))


class Refusals(list[tuple[str, tuple[str | int, ...]]]):
    """Everything refused, with the way to it."""

    def __call__(self, message: str, *below: str | int, key: bool = False) -> None:
        self.append((message, below))


def refused(kind: Kind, value: object) -> list[str]:
    """What a kind says of a value it refuses."""
    refusals = Refusals()
    assert kind.read(value, refusals) is None
    assert refusals
    return [message for message, _ in refusals]


def accepted(kind: Kind, value: object) -> object:
    """What a kind makes of a value it takes."""
    refusals = Refusals()
    read = kind.read(value, refusals)
    assert refusals == []
    return read
