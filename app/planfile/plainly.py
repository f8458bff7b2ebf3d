"""What the TOML parser says about a text that cannot be read, in plain words and with the way out."""

import re

from app.domain.errors import Problem
from app.planfile.positions import line_and_column
from app.planfile.remedies import remedy
from app.planfile.shown import UNSEEN, code_point, shown

PAIR = re.compile(r"(?P<head>[ \t]*(?P<key>[A-Za-z0-9_-]+)[ \t]*=[ \t]*)(?P<value>[^\n]*)")
_PLACE = re.compile(
    r"(?P<what>.*) \(at (?:line (?P<line>[0-9]+), column (?P<column>[0-9]+)|end of document)\)\Z", re.DOTALL
)
_OPEN_LITERAL = re.compile(r"^[^\n#\"']*+'[^'\n]*+$", re.MULTILINE)
TWICE = "this key stands here for the second time; keep one of the two"
NOT_CLOSED = "the list is not closed; put a comma between its entries and ] at its end"
_PLAINLY: tuple[tuple[str, str], ...] = (
    ("Cannot overwrite", TWICE),
    ("Duplicate inline", "a key stands twice in these braces; keep one of the two"),
    (
        "Cannot declare",
        "this table stands here for the second time; keep one of the two",
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
    (
        "Escaped character is not",
        'a "\\u" that is no character; write the character itself, or leave it out',
    ),
    ("Unterminated string", "the text is not closed; put a quote at its end"),
    ("Expected '\"", "the text is not closed; put quotes at its end"),
    ("Invalid date", "there is no such date or time; put text in quotes"),
    ("Invalid statement", "this is no key = value and no [heading]; a remark begins with #"),
    (
        "Invalid initial",
        "a key is missing or has a character that a key cannot have; use letters, digits, _ and -",
    ),
)


def syntax_problem(error: str, text: str) -> Problem:
    """The problem behind an error of the TOML parser, `error` being its message."""
    match = _PLACE.match(error)
    what = match["what"] if match else error
    if match and match["line"]:
        line, column = int(match["line"]), int(match["column"])
    else:
        line, column = _end(what, text)
    content = text.split("\n")[line - 1]
    message = _plainly(what, content, column)
    return Problem(line, _at_the_cause(what, content, column), message)


def _end(what: str, text: str) -> tuple[int, int]:
    """Where a text ends too early: on the line of a single quote that is not closed, else at the end."""
    opened = _OPEN_LITERAL.search(text) if what.startswith('Expected "\'"') else None
    return line_and_column(text, opened.end() if opened else len(text))


def _at_the_cause(what: str, content: str, column: int) -> int:
    """The column to show: that of the key or backslash where the parser noticed the mistake later."""
    if what.startswith(("Cannot overwrite", "Cannot declare")):
        return len(content) - len(content.lstrip()) + 1
    if what.startswith(("Unescaped", "Invalid hex", "Escaped character")):
        return content.rfind("\\", 0, column) + 1 or column
    return column


def _plainly(what: str, content: str, column: int) -> str:
    character = content[column - 1 : column]
    if character != "\t" and UNSEEN.match(character):
        return f"the file holds the control character {code_point(character)}; remove it"
    if what.startswith(("Illegal character", "Found invalid", 'Expected "\'"')):
        return "the text is not closed on its line; put a quote at its end"
    if what.startswith(("Invalid value", "Expected newline")):
        return _misplaced(content)
    for beginning, sentence in _PLAINLY:
        if what.startswith(beginning):
            return sentence
    return (
        f"the file cannot be read from here on ({shown(what)[1:-1]}); compare it with a line that can be read"
    )


def _misplaced(content: str) -> str:
    pair = PAIR.match(content)
    if pair is None:
        return "something stands here that does not belong to the line; a remark begins with #"
    value = pair["value"].split("#")[0].strip()
    if not value:
        return f"{pair['key']} has no value; write one after the ="
    return remedy(pair["key"], value)
