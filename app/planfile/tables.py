"""Tables of a file: which keys one may hold, read and described by the same list of keys."""

from collections.abc import Callable, Iterable, Mapping, Set
from dataclasses import dataclass, field
from typing import Any

from app.planfile.kinds import Kind, Refuse, Schema, below
from app.planfile.shown import shown, suggestion, suggestions

MOST_GUESSED = 100
"""For so many unknown keys of one table it is looked what they may have been meant to be."""

Values = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Written:
    """The keys of one table: those written by their name, and those that mistyped ones may stand for."""

    named: Set[str]
    guessed: Set[str] = frozenset()

    @property
    def meant(self) -> Set[str]:
        """Both together: what cannot be called missing."""
        return self.named | self.guessed


Check = Callable[[Written, Values, Refuse], None]
Fitting = Callable[[Set[str]], Set[str]]


@dataclass(frozen=True, slots=True)
class Key:
    """One key of a table. `default` and `example` are as the file says them, None where there is none."""

    name: str
    kind: Kind
    meaning: str
    required: bool = False
    default: Any = None
    example: str | None = None

    def schema(self) -> Schema:
        """The kind's schema with the key's meaning and default."""
        default = {} if self.default is None else {"default": self.default}
        return {"description": self.meaning, **self.kind.schema(), **default}

    @property
    def holds_tables(self) -> bool:
        """Whether a table, or a list of tables, stands under the key."""
        return isinstance(self.kind, Table | Tables)

    def takes(self, value: object) -> bool:
        """Whether a value may stand under the key; of tables, whether it is one at all."""
        if self.holds_tables or isinstance(value, dict):
            return self.holds_tables and isinstance(value, list if isinstance(self.kind, Tables) else dict)
        return self.kind.read(value, _say_nothing) is not None


@dataclass(frozen=True, slots=True)
class Table:
    """A table with certain keys.

    `check` sees which keys are written and which values were sound, and refuses what does not go together;
    `rules` says the same in JSON Schema, as far as it can. `elsewhere` tells what to do with other tables'
    keys. Of a mistyped key, `fitting` says which known ones go with those written, and `also` which is meant
    by a word that looks like none. A guess is never blamed for what only follows from it.
    """

    keys: tuple[Key, ...]
    check: Check | None = None
    rules: Schema = field(default_factory=dict)
    elsewhere: Mapping[str, str] = field(default_factory=dict)
    fitting: Fitting | None = None
    also: Mapping[str, str] = field(default_factory=dict)

    def read(self, value: object, refuse: Refuse) -> dict[str, Any] | None:
        """The sound values by key; None when this is no table at all."""
        if not isinstance(value, dict):
            refuse(f"this must be a table, not {shown(value)}; write it like {{ key = value }}")
            return None
        named = {key.name for key in self.keys} & value.keys()
        read_as, guessed = self._guesses(value, named, refuse)
        values: dict[str, Any] = {}
        for key in self.keys:
            name = key.name if key.name in named else read_as.get(key.name)
            if name is not None:
                sound = key.kind.read(value[name], _below(refuse, key, name, value[name]))
                if sound is not None:
                    values[key.name] = sound
            elif key.required and key.name not in guessed:
                refuse(f'"{key.name}" is missing; write {key.example or key.name}', key=True)
        if self.check is not None:
            self.check(Written(named, guessed), values, _as_written(refuse, read_as))
        return values

    def key(self, name: str) -> Key | None:
        """The key of a name."""
        return next((key for key in self.keys if key.name == name), None)

    def _guesses(
        self, value: Mapping[str, object], named: Set[str], refuse: Refuse
    ) -> tuple[dict[str, str], set[str]]:
        """Under which names mistyped keys are read, and all keys they may stand for. Refuses unknown ones."""
        read_as: dict[str, str] = {}
        guessed: set[str] = set()
        for number, name in enumerate(name for name in value if name not in named):
            if name in self.elsewhere:
                refuse(f"{shown(name)} does not belong here; {self.elsewhere[name]}", name, key=True)
                continue
            near, fits = self._guess(name, value[name], named) if number < MOST_GUESSED else (None, False)
            if near is not None and fits:
                read_as.setdefault(near, name)
            refuse(f"unknown key {shown(name)}; {self._right(near, named)}", name, key=True)
            guessed |= set() if near is None else {near}
        return read_as, guessed - named

    def _guess(self, name: str, value: object, named: Set[str]) -> tuple[str | None, bool]:
        """The known key most likely meant by a mistyped one, and whether it goes with those written.

        First comes one that does, is not there yet and takes the value, then the nearest of all unless it
        would not take it, then one that does but for the value.
        """
        free = {key.name: key for key in self._fitting_keys(named) if key.name not in named}
        near = suggestions(name, free)
        if self.also.get(name) in free:
            near.insert(0, self.also[name])
        for guess in near:
            if free[guess].takes(value):
                return guess, True
        nearest = self.key(suggestion(name, [key.name for key in self.keys]) or "")
        if nearest is not None and (nearest.name in named or nearest.takes(value)):
            return nearest.name, False
        return (near[0], True) if near else (None, False)

    def _fitting_keys(self, named: Set[str]) -> list[Key]:
        if self.fitting is None:
            return list(self.keys)
        fitting = self.fitting(named)
        return [key for key in self.keys if key.name in fitting]

    def _right(self, near: str | None, named: Set[str]) -> str:
        if near is None:
            return f"known here are {', '.join(key.name for key in self._fitting_keys(named))}"
        return f'"{near}" stands here already, keep one' if near in named else f'did you mean "{near}"?'

    def schema(self) -> Schema:
        """An object without other keys."""
        required = [key.name for key in self.keys if key.required]
        return {
            "type": "object",
            "additionalProperties": False,
            **({"required": required} if required else {}),
            "properties": {key.name: key.schema() for key in self.keys},
            **self.rules,
        }


def _say_nothing(message: str, *below: str | int, key: bool = False) -> None:
    """Takes nothing down."""


def _below(refuse: Refuse, key: Key, name: str, value: object) -> Refuse:
    """A `refuse` for the value of a key; for that of a mistyped one, unless it is of tables, it is silent."""
    told = name == key.name or (key.holds_tables and key.takes(value))
    return below(refuse, name) if told else _say_nothing


def _as_written(refuse: Refuse, names: Mapping[str, str]) -> Refuse:
    """A `refuse` that finds mistyped keys under the names they are written under."""

    def refuse_written(message: str, *place: str | int, key: bool = False) -> None:
        written = [names.get(str(part), part) for part in place[:1]]
        refuse(message, *written, *place[1:], key=key)

    return refuse_written


@dataclass(frozen=True, slots=True)
class Tables:
    """A list of one to `most` tables of the same keys, each begun by `header`. All are looked into."""

    table: Table
    most: int
    header: str

    def read(self, value: object, refuse: Refuse) -> list[dict[str, Any]] | None:
        """The tables in order, as far as they are sound."""
        if not isinstance(value, list):
            refuse(self.no_list)
            if isinstance(value, dict) and value:
                self.table.read(value, refuse)
            return None
        if not value:
            refuse(f"the list is empty; begin a first table with {self.header}")
        if len(value) > self.most:
            refuse(f"there are {len(value)} of these; write {self.most} at most", self.most)
        return [read or {} for read in self._each(value, refuse)]

    @property
    def no_list(self) -> str:
        """What is said of something else that stands in place of the list."""
        return f"this must be a list of tables; begin each with {self.header}, in double brackets"

    def _each(self, value: list[object], refuse: Refuse) -> Iterable[dict[str, Any] | None]:
        return (self.table.read(item, below(refuse, index)) for index, item in enumerate(value))

    def schema(self) -> Schema:
        """An array of objects."""
        return {"type": "array", "minItems": 1, "maxItems": self.most, "items": self.table.schema()}
