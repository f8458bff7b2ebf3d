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
from app.planfile.headings import mend_headings
from app.planfile.plainly import NOT_CLOSED, PAIR, TWICE, syntax_problem
from app.planfile.tables import Table
from app.planfile.unclosed import OpenList, list_around

MOST_SYNTAX_PROBLEMS = 20
LARGEST_MENDED = 64 * 1024

_PLACEHOLDER = '"?"'
_HEADING = re.compile(
    r"[ \t]*(?P<open>\[+)[ \t]*(?P<outer>(?:[A-Za-z0-9_-]+\.)*)(?P<name>[A-Za-z0-9_-]+)[ \t]*(?P<close>\]*)"
    r"(?P<end>[ \t]*(?:#.*)?\Z)?"
)
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


def parse_toml(text: str, table: Table | None = None) -> Parsed:
    """Read a TOML text whose lines end with a line feed; numbers with a point or exponent become Decimal.

    With the table that the text is meant for, headings that miss its lists are put right.
    """
    bound = beyond_bounds(text)
    if bound is not None:
        return Parsed(None, text, (bound,))
    text, wrong = (text, ()) if table is None else mend_headings(text, table)
    problems: list[Problem] = []
    broken: set[int] = set()
    while True:
        try:
            return Parsed(tomllib.loads(text, parse_float=_decimal), text, (*wrong, *problems), broken)
        except tomllib.TOMLDecodeError as error:
            problem = syntax_problem(str(error), text)
        around = None if len(text) > LARGEST_MENDED else list_around(text, problem.line)
        if around is not None and not around.closed:
            problem = Problem(around.first, around.column, NOT_CLOSED)
        # Of a line that was set aside before, nothing more is said.
        again = problem.line in broken
        problems += [] if again else [problem]
        if len(text) > LARGEST_MENDED or len(problems) >= MOST_SYNTAX_PROBLEMS:
            return Parsed(None, text, (*wrong, *problems), broken)
        if around is None:
            mended, lines = _set_aside(text, problem, again=again), {problem.line}
        else:
            mended, lines = _without(text, around), set(range(around.first, around.last + 1))
        if mended is None or mended == text:
            return Parsed(None, text, (*wrong, *problems), broken)
        text = mended
        broken |= lines


def _decimal(text: str) -> Decimal:
    try:
        return Decimal(text)
    except InvalidOperation:
        return Decimal("-Infinity" if text.startswith("-") else "Infinity")


def _set_aside(text: str, problem: Problem, *, again: bool) -> str | None:
    """The text with the broken line made readable: value replaced, heading closed, second key left out.

    What is broken `again` is left out, unless it is a heading; None when there is no way.
    """
    lines = text.split("\n")
    line = lines[problem.line - 1]
    heading = _HEADING.match(line)
    if heading:
        mended = line if again else _other_heading(heading, problem.line)
    elif again or problem.message == TWICE:
        mended = ""
    elif pair := PAIR.fullmatch(line):
        mended = pair["head"] + _PLACEHOLDER
    elif key := _LONE_KEY.match(line):
        mended = f"{key.group()} = {_PLACEHOLDER}"
    else:
        return None
    lines[problem.line - 1] = mended
    return "\n".join(lines)


def _other_heading(heading: re.Match[str], line: int) -> str:
    """A heading in place of a broken one: closed; of its own name where it was sound but out of place."""
    sound = heading["end"] is not None and len(heading["open"]) == len(heading["close"])
    return f"[{heading['outer']}_{line}]" if sound else f"[[{heading['outer']}{heading['name']}]]"


def _without(text: str, around: OpenList) -> str:
    """The text with a whole list replaced, on as many lines."""
    lines = text.split("\n")
    head = PAIR.match(lines[around.first - 1])
    lines[around.first - 1] = f"{head['head'] if head else ''}{_PLACEHOLDER}"
    lines[around.first : around.last] = [""] * (around.last - around.first)
    return "\n".join(lines)
