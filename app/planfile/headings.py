"""Headings that are meant for a list of tables and miss it: told, and put right, so that all is read.

To TOML, `[[stag]]` or `[stage]` is a sound heading of something else; what stands below it would go unread.
"""

import re
from dataclasses import dataclass

from app.domain.errors import Problem
from app.planfile.bounds import blanked
from app.planfile.shown import shown, suggestion
from app.planfile.tables import Key, Table, Tables

MOST_JUDGED = 100
"""So many different names that are not known are compared with those that are."""

_HEADING = re.compile(
    r"^[ \t]*+(?P<open>\[{1,2})[ \t]*+(?P<names>[A-Za-z0-9_-]++(?:[ \t]*+\.[ \t]*+[A-Za-z0-9_-]++){0,3})"
    r"[ \t]*+(?P<close>\]{0,2})",
    re.MULTILINE,
)
_DOT = re.compile(r"[ \t]*\.[ \t]*")


def mend_headings(text: str, table: Table) -> tuple[str, tuple[Problem, ...]]:
    """The text with headings that lead to the lists of a table, line by line as long, and what was wrong."""
    guide = _Guide(table)
    pieces: list[str] = []
    problems: list[Problem] = []
    done, line = 0, 1
    for match in _HEADING.finditer(blanked(text)):
        names = _DOT.split(match["names"])
        way = guide.way(names)
        single = way.listed is not None and match["open"] == "[" and match["close"] == "]"
        if single and way.listed is not None:
            way.messages.append(way.listed.no_list)
        if way.messages:
            at = match.start("open")
            line += text.count("\n", done, at)
            problems += [Problem(line, at - match.start() + 1, message) for message in way.messages]
            opening, closing = ("[[", "]]") if single else (match["open"], match["close"])
            pieces += [text[done:at], opening, ".".join(way.names), closing]
            done = match.end()
    return "".join([*pieces, text[done:]]), tuple(problems)


@dataclass(slots=True)
class _Way:
    """Where a heading leads: its names put right, the list it ends at, what was wrong with the names."""

    names: list[str]
    listed: Tables | None
    messages: list[str]


class _Guide:
    """Finds the lists that headings are meant for, one heading after the other."""

    def __init__(self, table: Table) -> None:
        self._table = table
        self._begun: str | None = None
        self._judged: dict[str, str | None] = {}

    def way(self, names: list[str]) -> _Way:
        """Where a heading of these names leads."""
        way = _Way([], None, [])
        table = self._table
        for index, name in enumerate(names):
            found = self._step(table, name, way) if len(way.names) == index else None
            if found is None:
                return _Way([*way.names, *names[index:]], None, way.messages)
            way.listed, table = found, found.table
        if len(way.names) == 1:
            self._begun = way.names[0]
        return way

    def _step(self, table: Table, name: str, way: _Way) -> Tables | None:
        """The list that a name of a table leads to; a misspelt name is put right and told."""
        key = self._key(table, name)
        listed = _list_under(key)
        if key is not None and listed is not None:
            if key.name != name:
                way.messages.append(_wrong(table, name, key.name))
            way.names.append(key.name)
            return listed
        return None if key is not None or table is not self._table else self._inner(name, way)

    def _inner(self, name: str, way: _Way) -> Tables | None:
        """The same for the name of a list within the one begun before, written without the outer name."""
        outer = self._table.key(self._begun or "")
        around = _list_under(outer)
        key = None if around is None else self._key(around.table, name)
        if outer is None or key is None or _list_under(key) is None:
            return None
        way.messages.append(_wrong(self._table, name, f"{outer.name}.{key.name}"))
        way.names += [outer.name, key.name]
        return _list_under(key)

    def _key(self, table: Table, name: str) -> Key | None:
        return table.key(name) or table.key(self._near(table, name) or "")

    def _near(self, table: Table, name: str) -> str | None:
        """The known name nearest to one; after many different ones none is looked for any more."""
        asked = f"{id(table)} {name}"
        if asked not in self._judged and len(self._judged) < MOST_JUDGED:
            self._judged[asked] = suggestion(name, [key.name for key in table.keys])
        return self._judged.get(asked)


def _list_under(key: Key | None) -> Tables | None:
    return key.kind if key is not None and isinstance(key.kind, Tables) else None


def _wrong(table: Table, name: str, meant: str) -> str:
    if name in table.elsewhere:
        return f"{shown(name)} does not belong here; {table.elsewhere[name]}"
    return f'unknown key {shown(name)}; did you mean "{meant}"?'
