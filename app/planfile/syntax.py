"""TOML text to nested dicts, whatever the text: bounded in time and memory, its errors in plain words.

A mistake in one line does not hide the rest: the line is set aside and reading goes on.
"""

import re
import tomllib
from collections.abc import Set
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from typing import Any

from app.domain.errors import Problem
from app.planfile.bounds import beyond_bounds
from app.planfile.plainly import PAIR, TWICE, syntax_problem

MOST_SYNTAX_PROBLEMS = 20
LARGEST_MENDED = 64 * 1024

_PLACEHOLDER = '"?"'
_HEADING = re.compile(r"[ \t]*\[+[ \t]*(?P<name>[A-Za-z0-9_-]+(?:\.[A-Za-z0-9_-]+)*)")
_LONE_KEY = re.compile(r"[ \t]*[A-Za-z0-9_-]+(?=[ \t]*[:\"'0-9])")


@dataclass(frozen=True, slots=True)
class Parsed:
    """What could be read. `document` is None when nothing can be said beyond `problems`.

    `text` is the text that was read in the end; `broken` are the lines of it whose value was set aside.
    """

    document: dict[str, Any] | None
    text: str
    problems: tuple[Problem, ...] = ()
    broken: Set[int] = frozenset()


def parse_toml(text: str) -> Parsed:
    """Read a TOML text whose lines end with a line feed; numbers with a point or exponent become Decimal."""
    bound = beyond_bounds(text)
    if bound is not None:
        return Parsed(None, text, (bound,))
    problems: list[Problem] = []
    broken: set[int] = set()
    while True:
        try:
            return Parsed(tomllib.loads(text, parse_float=_decimal), text, tuple(problems), broken)
        except tomllib.TOMLDecodeError as error:
            problem = syntax_problem(str(error), text)
        problems.append(problem)
        mended = None if problem.line in broken or len(text) > LARGEST_MENDED else _set_aside(text, problem)
        if mended is None or len(problems) >= MOST_SYNTAX_PROBLEMS:
            return Parsed(None, text, tuple(problems), broken)
        text = mended
        broken.add(problem.line)


def _decimal(text: str) -> Decimal:
    try:
        return Decimal(text)
    except InvalidOperation:
        return Decimal("Infinity")


def _set_aside(text: str, problem: Problem) -> str | None:
    """The text with the broken line made readable: value replaced, heading closed, second key left out."""
    lines = text.split("\n")
    line = lines[problem.line - 1]
    if problem.message == TWICE:
        mended = ""
    elif pair := PAIR.fullmatch(line):
        mended = pair["head"] + _PLACEHOLDER
    elif heading := _HEADING.match(line):
        mended = f"[[{heading['name']}]]"
    elif key := _LONE_KEY.match(line):
        mended = f"{key.group()} = {_PLACEHOLDER}"
    else:
        return None
    lines[problem.line - 1] = mended
    return "\n".join(lines)
