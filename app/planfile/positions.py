"""Where the keys and values of a TOML text stand. Made only when something has to be said about one.

A light scanner of text that is already known to be valid TOML: it finds places and judges nothing.
"""

import re
import tomllib

Place = tuple[str | int, ...]

# Possessive repeats of single characters save memory; those of groups are wrong before Python 3.11.5
# (cpython issue 106052), so there are none.
_BLANK = re.compile(r"[ \t\n\r]*+")
_KEY = re.compile(r""""[^"\\\n]*+(?:\\.[^"\\\n]*+)*"|'[^'\n]*+'|[A-Za-z0-9_-]++""")
_DOT = re.compile(r"[ \t]*+\.[ \t]*+")
_STRING = re.compile(
    r'"""[^"\\]*+(?:(?:\\.|"(?!""))[^"\\]*+)*"{3,5}'
    r"|'''[^']*+(?:'(?!'')[^']*+)*'{3,5}"
    r'|"[^"\\\n]*+(?:\\.[^"\\\n]*+)*"'
    r"|'[^'\n]*+'",
    re.DOTALL,
)
_BARE = re.compile(r"[^,\]}#\n]++")


class Positions:
    """Line and column, both from 1, of every key and value of a TOML text.

    `headings` are those in order that begin something of their own, each with its path and its place counted
    in characters: the double-bracketed ones, and a table at the top such as [group].
    """

    def __init__(self, text: str) -> None:
        self.headings: list[tuple[Place, int]] = []
        self._text = text
        self._keys: dict[Place, int] = {}
        self._values: dict[Place, int] = {}
        self._tables: dict[Place, int] = {}
        self._document()

    def of_key(self, path: Place) -> tuple[int, int]:
        """Where the key at the end of a path stands, or the nearest thing around it."""
        return self._nearest(path, (self._keys, self._values))

    def of_value(self, path: Place) -> tuple[int, int]:
        """Where the value at the end of a path stands, or the nearest thing around it."""
        return self._nearest(path, (self._values, self._keys))

    def _nearest(self, path: Place, places: tuple[dict[Place, int], ...]) -> tuple[int, int]:
        for length in range(len(path), 0, -1):
            for known in places:
                if path[:length] in known:
                    return line_and_column(self._text, known[path[:length]])
        return 1, 1

    def _document(self) -> None:
        table: Place = ()
        at = self._skip(0)
        while at < len(self._text):
            if self._text[at] == "[":
                table, at = self._header(at)
            else:
                at = self._pair(at, table)
            at = self._skip(at)

    def _header(self, at: int) -> tuple[Place, int]:
        listed = self._text.startswith("[[", at)
        names, end = self._key_parts(self._skip(at + (2 if listed else 1)))
        path = (*self._resolve(names[:-1]), names[-1][0])
        if listed:
            index = self._tables.get(path, 0)
            self._tables[path] = index + 1
            self._keys.setdefault(path, at)
            path = (*path, index)
        if listed or len(path) == 1:
            self.headings.append((path, at))
        self._keys.setdefault(path, at)
        return path, self._text.index("]", end) + (2 if listed else 1)

    def _resolve(self, names: list[tuple[str, int]]) -> Place:
        path: Place = ()
        for name, place in names:
            path = (*path, name)
            self._keys.setdefault(path, place)
            if path in self._tables:
                path = (*path, self._tables[path] - 1)
        return path

    def _key_parts(self, at: int) -> tuple[list[tuple[str, int]], int]:
        names = []
        while match := _KEY.match(self._text, at):
            raw = match.group()
            names.append((tomllib.loads(f"k={raw}")["k"] if raw[0] in "\"'" else raw, at))
            dot = _DOT.match(self._text, match.end())
            if dot is None:
                return names, match.end()
            at = dot.end()
        return names, at

    def _pair(self, at: int, table: Place) -> int:
        names, end = self._key_parts(at)
        path = table
        for name, place in names:
            path = (*path, name)
            self._keys.setdefault(path, place)
        return self._value(self._skip(self._text.index("=", end) + 1), path)

    def _value(self, at: int, path: Place) -> int:
        self._values[path] = at
        if self._text[at] == "[":
            return self._array(at, path)
        if self._text[at] == "{":
            return self._inline(at, path)
        match = _STRING.match(self._text, at) or _BARE.match(self._text, at)
        return match.end() if match else at + 1

    def _array(self, at: int, path: Place) -> int:
        at, index = self._skip(at + 1), 0
        while self._text[at] != "]":
            at, index = self._skip(self._value(at, (*path, index))), index + 1
            if self._text[at] == ",":
                at = self._skip(at + 1)
        return at + 1

    def _inline(self, at: int, path: Place) -> int:
        at = self._skip(at + 1)
        while self._text[at] != "}":
            at = self._skip(self._pair(at, path))
            if self._text[at] == ",":
                at = self._skip(at + 1)
        return at + 1

    def _skip(self, at: int) -> int:
        """The next place that is neither blank nor in a remark."""
        while match := _BLANK.match(self._text, at):
            at = match.end()
            if not self._text.startswith("#", at):
                break
            line_end = self._text.find("\n", at)
            at = len(self._text) if line_end < 0 else line_end
        return at


def line_and_column(text: str, offset: int) -> tuple[int, int]:
    """Line and column, both from 1, of a place in a text."""
    return text.count("\n", 0, offset) + 1, offset - (text.rfind("\n", 0, offset) + 1) + 1
