"""Tables of a file: which keys one may hold, read and described by the same list of keys."""

from collections.abc import Callable, Iterable, Mapping, Set
from dataclasses import dataclass, field
from typing import Any

from app.planfile.kinds import Kind, Refuse, Schema, below
from app.planfile.shown import shown, suggestion

Values = Mapping[str, Any]
Check = Callable[[Set[str], Values, Refuse], None]


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


@dataclass(frozen=True, slots=True)
class Table:
    """A table with certain keys.

    `check` sees which keys are written, be they mistyped, and which values were sound, and refuses what does
    not go together; `rules` says the same in JSON Schema, as far as it can. `elsewhere` tells what to do with
    other tables' keys.
    """

    keys: tuple[Key, ...]
    check: Check | None = None
    rules: Schema = field(default_factory=dict)
    elsewhere: Mapping[str, str] = field(default_factory=dict)

    def read(self, value: object, refuse: Refuse) -> dict[str, Any] | None:
        """The sound values by key; None when this is no table at all."""
        if not isinstance(value, dict):
            refuse(f"this must be a table, not {shown(value)}; write it like {{ key = value }}")
            return None
        names = self._names(value, refuse)
        values: dict[str, Any] = {}
        for key in self.keys:
            if key.name in names:
                sound = key.kind.read(value[names[key.name]], below(refuse, names[key.name]))
                if sound is not None:
                    values[key.name] = sound
            elif key.required:
                refuse(f'"{key.name}" is missing; write {key.example or key.name}', key=True)
        if self.check is not None:
            self.check(names.keys(), values, _as_written(refuse, names))
        return values

    def _names(self, value: Mapping[str, object], refuse: Refuse) -> dict[str, str]:
        """The name each known key is written under: its own or a mistyped one. Refuses unknown names."""
        known = [key.name for key in self.keys]
        names = {name: name for name in known if name in value}
        for name in [name for name in value if name not in names]:
            near = None if name in self.elsewhere else suggestion(name, known)
            if near is not None:
                refuse(f'unknown key {shown(name)}; did you mean "{near}"?', name, key=True)
                names.setdefault(near, name)
            elif name in self.elsewhere:
                refuse(f"{shown(name)} does not belong here; {self.elsewhere[name]}", name, key=True)
            else:
                refuse(f"unknown key {shown(name)}; known here are {', '.join(known)}", name, key=True)
        return names

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


def _as_written(refuse: Refuse, names: Mapping[str, str]) -> Refuse:
    """A `refuse` that finds mistyped keys under the names they are written under."""

    def refuse_written(message: str, *place: str | int, key: bool = False) -> None:
        written = [names.get(str(part), part) for part in place[:1]]
        refuse(message, *written, *place[1:], key=key)

    return refuse_written


@dataclass(frozen=True, slots=True)
class Tables:
    """A list of one to `most` tables of the same keys, each begun by `header`."""

    table: Table
    most: int
    header: str

    def read(self, value: object, refuse: Refuse) -> list[dict[str, Any]] | None:
        """The tables in order, as far as they are sound."""
        if not isinstance(value, list):
            refuse(f"this must be a list of tables; begin each with {self.header}, in double brackets")
            return None
        if not value:
            refuse(f"the list is empty; begin a first table with {self.header}")
        if len(value) > self.most:
            refuse(f"there are {len(value)} of these; write {self.most} at most", self.most)
        return [read or {} for read in self._each(value[: self.most], refuse)]

    def _each(self, value: list[object], refuse: Refuse) -> Iterable[dict[str, Any] | None]:
        return (self.table.read(item, below(refuse, index)) for index, item in enumerate(value))

    def schema(self) -> Schema:
        """An array of objects."""
        return {"type": "array", "minItems": 1, "maxItems": self.most, "items": self.table.schema()}
