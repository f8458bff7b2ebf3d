"""TOML text to nested dicts, whatever the text: bounded in time and memory, its errors in plain words.

A mistake in the value of one line does not hide the rest: the value is set aside and reading goes on.
"""

import re
import tomllib
from collections.abc import Set
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from typing import Any

from app.domain.errors import Problem
from app.planfile.positions import line_and_column
from app.planfile.shown import code_point, shown, unseen

DEEPEST_NESTING = 20
MOST_ENTRIES = 20_000
MOST_DOTS_A_LINE = 100
LONGEST_NUMBER = 1000
MOST_SYNTAX_PROBLEMS = 20
LARGEST_MENDED = 64 * 1024

_PLACEHOLDER = '"?"'
_ASIDE = re.compile(
    r'"""(?:[^"\\]++|\\.|"(?!""))*+(?:"{3,5})?'
    r"|'''(?:[^']++|'(?!''))*+(?:'{3,5})?"
    r'|"(?:[^"\\\n]++|\\[^\n])*+"?'
    r"|'[^'\n]*+'?"
    r"|#[^\n]*+",
    re.DOTALL,
)
_NOT_NEWLINE = re.compile(r"[^\n]")
_BRACKET = re.compile(r"[\[\]{}]")
_LONG_NUMBER = re.compile(rf"[0-9A-Fa-f_]{{{LONGEST_NUMBER},}}")
_PLACE = re.compile(
    r"(?P<what>.*) \(at (?:line (?P<line>[0-9]+), column (?P<column>[0-9]+)|end of document)\)\Z", re.DOTALL
)
_PAIR = re.compile(r"(?P<head>[ \t]*(?P<key>[A-Za-z0-9_-]+)[ \t]*=[ \t]*)(?P<value>[^\n]*)")

_PLAINLY: tuple[tuple[str, str], ...] = (
    ("Cannot overwrite", "this key stands here for the second time; keep one of the two"),
    ("Duplicate inline", "a key stands twice in these braces; keep one of the two"),
    (
        "Cannot declare",
        "this table stands here for the second time; a list takes double brackets, like [[stage]]",
    ),
    ("Cannot mutate", "this adds to something that is already complete; write each table in one place"),
    ("Cannot redefine", "this adds to something that is already complete; write each table in one place"),
    ("Expected ']]'", "the heading is not closed; end it with ]]"),
    ("Expected ']'", "the heading is not closed; end it with ]"),
    ("Expected '='", "a key without a value; write key = value"),
    ("Unclosed array", "the list is not closed here; put a comma between its entries and ] at its end"),
    ("Unclosed inline", "the braces are not closed here; put a comma between the entries and } at the end"),
    ("Unescaped", 'a lone "\\" in text; write it twice, or use single quotes'),
    ("Invalid hex", 'a broken "\\u" in text; write four hexadecimal digits after it'),
    ("Escaped character is not", 'a broken "\\u" in text; it names no character'),
    ("Unterminated string", "the text is not closed; put a quote at its end"),
    ('Expected "\'"', "the text is not closed; put a quote at its end"),
    ("Expected '\"", "the text is not closed; put quotes at its end"),
    ("Invalid date", "there is no such date or time; put text in quotes"),
    ("Invalid statement", "this is no key = value and no [heading]; a remark begins with #"),
    (
        "Invalid initial",
        "a key is missing or has a character that a key cannot have; use letters, digits, _ and -",
    ),
)


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
    bound = _beyond_bounds(text)
    if bound is not None:
        return Parsed(None, text, (bound,))
    problems: list[Problem] = []
    broken: set[int] = set()
    while True:
        try:
            return Parsed(tomllib.loads(text, parse_float=_decimal), text, tuple(problems), broken)
        except tomllib.TOMLDecodeError as error:
            problem = _problem(str(error), text)
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


def _beyond_bounds(text: str) -> Problem | None:
    """What would make reading the text slow or impossible, found in one quick pass over its structure."""
    bare = _ASIDE.sub(_blank, text)
    if sum(map(bare.count, "[{,=")) > MOST_ENTRIES:
        return Problem(
            0, 0, f"the file has more than {MOST_ENTRIES} entries; check that it is the right file"
        )
    number = _LONG_NUMBER.search(bare)
    if number:
        message = (
            f"a word or number of more than {LONGEST_NUMBER} characters; check that it is the right file"
        )
        return Problem(*line_and_column(text, number.start()), message)
    for line, content in enumerate(bare.split("\n"), start=1):
        if content.count(".") > MOST_DOTS_A_LINE:
            return Problem(line, content.index(".") + 1, "far too many dots in one line; put text in quotes")
    depth = 0
    for match in _BRACKET.finditer(bare):
        depth = max(depth + (1 if match.group() in "[{" else -1), 0)
        if depth > DEEPEST_NESTING:
            place = line_and_column(text, match.start())
            return Problem(*place, f"brackets are nested more than {DEEPEST_NESTING} deep; close them")
    return None


def _blank(match: re.Match[str]) -> str:
    return _NOT_NEWLINE.sub(" ", match.group()) if "\n" in match.group() else " " * len(match.group())


def _problem(error: str, text: str) -> Problem:
    match = _PLACE.match(error)
    what = match["what"] if match else error
    if match and match["line"]:
        line, column = int(match["line"]), int(match["column"])
    else:
        line, column = line_and_column(text, len(text))
    return Problem(line, column, _plainly(what, text, line, column))


def _plainly(what: str, text: str, line: int, column: int) -> str:
    content = text.split("\n")[line - 1]
    character = content[column - 1 : column]
    if character and unseen(character) and character != "\n":
        return f"the file holds the control character {code_point(character)}; remove it"
    if what.startswith(("Illegal character", "Found invalid")):
        return "the text is not closed on its line; put a quote at its end"
    if what.startswith(("Invalid value", "Expected newline")):
        return _misplaced(content)
    for beginning, sentence in _PLAINLY:
        if what.startswith(beginning):
            return sentence
    return f"the file cannot be read from here on ({what}); compare it with a line that can be read"


def _misplaced(content: str) -> str:
    pair = _PAIR.match(content)
    if pair is None:
        return "something stands here that does not belong to the line; a remark begins with #"
    value = pair["value"].split("#")[0].strip()
    if not value:
        return f"{pair['key']} has no value; write one after the ="
    if value[0] in "\"'[{":
        return f"something stands after the value of {pair['key']}; a remark begins with #"
    return f"this value cannot be read; text stands in quotes: {pair['key']} = {shown(value)}"


def _set_aside(text: str, problem: Problem) -> str | None:
    """The text with the broken line's value replaced, or without the line where its key is the mistake."""
    lines = text.split("\n")
    pair = _PAIR.fullmatch(lines[problem.line - 1])
    if pair is None:
        return None
    twice = problem.message == _PLAINLY[0][1]
    lines[problem.line - 1] = "" if twice else pair["head"] + _PLACEHOLDER
    return "\n".join(lines)
