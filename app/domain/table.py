"""A table of plain rows: which columns it has, what they hold, and what tells its rows apart."""

from dataclasses import dataclass, field

from app.domain.values import Kind, Plain, Row


@dataclass(frozen=True, slots=True)
class Column:
    """One column: what it holds, said in words, and whether it may be unknown (None)."""

    name: str
    kind: Kind
    about: str
    unknown: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """One table. `key` names the columns that tell its rows apart, `links` says whose rows a column names.

    `column_names` are the names of the columns in order.
    """

    name: str
    about: str
    columns: tuple[Column, ...]
    key: tuple[str, ...]
    links: dict[str, str] = field(default_factory=dict)
    column_names: tuple[str, ...] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "column_names", tuple(column.name for column in self.columns))

    def check(self, row: Row) -> Row:
        """The row with every column, None where it is unknown. Raises ValueError with what is wrong."""
        if not row.keys() <= frozenset(self.column_names):
            raise ValueError(f"there is no column of such a name in {self.name}")
        return {column.name: _checked(column, row) for column in self.columns}

    def key_of(self, row: Row) -> tuple[object, ...]:
        """What tells a row from all others of the table."""
        return tuple(row[name] for name in self.key)


def _checked(column: Column, row: Row) -> Plain:
    value = row.get(column.name)
    if value is None:
        if column.unknown:
            return None
        raise ValueError(f"{column.name} is missing")
    try:
        return column.kind.check(value)
    except ValueError as error:
        raise ValueError(f"{column.name} {error}") from error
