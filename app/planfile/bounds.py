"""What would make a TOML text slow or impossible to read, found in one quick pass over its structure."""

import re

from app.domain.errors import Problem
from app.planfile.positions import line_and_column

DEEPEST_NESTING = 20
MOST_ENTRIES = 20_000
MOST_DOTS_A_LINE = 100
LONGEST_NUMBER = 1000

# Possessive repeats of single characters only, as in positions. What is never closed ends with the text or
# the line, so that nothing is looked at twice.
_ASIDE = re.compile(
    r'"""[^"\\]*+(?:(?:\\.|"(?!""))[^"\\]*+)*(?:"{3,5})?'
    r"|'''[^']*+(?:'(?!'')[^']*+)*(?:'{3,5})?"
    r'|"[^"\\\n]*+(?:\\[^\n][^"\\\n]*+)*"?'
    r"|'[^'\n]*+'?"
    r"|#[^\n]*+",
    re.DOTALL,
)
_NOT_NEWLINE = re.compile(r"[^\n]")
_DOTTED_LINE = re.compile(rf"^[^\n.]*+(?:\.[^\n.]*+){{{MOST_DOTS_A_LINE + 1}}}", re.MULTILINE)
_BRACKET = re.compile(r"[\[\]{}]")
_LONG_NUMBER = re.compile(rf"(?<![0-9A-Fa-f_])[0-9A-Fa-f_]{{{LONGEST_NUMBER},}}")


def beyond_bounds(text: str) -> Problem | None:
    """The first such thing, or None: too many entries, too deep, numbers or dotted keys without end."""
    bare = blanked(text)
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
    dotted = _DOTTED_LINE.search(bare)
    if dotted:
        place = line_and_column(text, dotted.start())
        return Problem(*place, "far too many dots in one line; put text in quotes")
    depth = 0
    for match in _BRACKET.finditer(bare):
        depth = max(depth + (1 if match.group() in "[{" else -1), 0)
        if depth > DEEPEST_NESTING:
            place = line_and_column(text, match.start())
            return Problem(*place, f"brackets are nested more than {DEEPEST_NESTING} deep; close them")
    return None


def blanked(text: str) -> str:
    """The text with blanks for all that stands in quotes or in a remark; every place stays where it was."""
    return _ASIDE.sub(_blank, text)


def _blank(match: re.Match[str]) -> str:
    return _NOT_NEWLINE.sub(" ", match.group()) if "\n" in match.group() else " " * len(match.group())
