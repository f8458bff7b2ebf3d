"""Rows out of a damaged database: those its tables lead to, and those on pages that nothing leads to."""

import sqlite3
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from app.store.pages import (
    INDEX_INNER,
    INDEX_LEAF,
    TABLE_LEAF,
    Page,
    PagedFile,
    Record,
    Value,
    walk,
)

Row = dict[str, Value]
_FITS = {
    "BLOB": bytes,
    "VARCHAR": str,
    "TEXT": str,
    "DATE": str,
    "INTEGER": int,
    "BIGINT": int,
    "BOOLEAN": int,
    "FLOAT": float,
}
_LENGTHS = {"id": 16, "hash": 32}
"""How long the names of rows are, by the last word of the column that holds them."""

_TABLES = "SELECT name, wr FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
_COLUMNS = 'SELECT name, type, "notnull", pk, dflt_value IS NOT NULL FROM pragma_table_info(?)'
_SCHEMA_ROOT = 1
_SCHEMA_COLUMNS = 5


Agrees = Callable[[str, Row], bool | None]


def _nobody_knows(_table: str, _row: Row) -> None:
    """Says of no row whether it can be one of a table."""


@dataclass(frozen=True, slots=True)
class Column:
    """A column as a table declares it."""

    name: str
    kind: str
    needed: bool
    given: bool = False
    """Whether a row may lack it, because it was added later and says what it is then."""

    def fits(self, value: Value) -> bool:
        """Whether the column may hold a value."""
        if value is None:
            return not self.needed
        if isinstance(value, bytes) and len(value) != _LENGTHS.get(self.name.rpartition("_")[2], len(value)):
            return False
        expected = _FITS.get(self.kind)
        return expected is None or isinstance(value, expected)


@dataclass(frozen=True, slots=True)
class Shape:
    """How the rows of a table, or of an index (`table` None), lie in a file."""

    table: str | None
    columns: tuple[Column, ...]
    by_rowid: bool
    numbered: str | None = None
    """The column that is another name of the rowid, and stored as NULL."""

    def row(self, record: Record) -> Row | None:
        """The row that a record holds, None where it cannot be one of these. Later columns may be missing."""
        if len(record.values) > len(self.columns) or (record.rowid is None) == self.by_rowid:
            return None
        missing = self.columns[len(record.values) :]
        if any(self.table is None or (column.needed and not column.given) for column in missing):
            return None
        row: Row = {}
        for column, value in zip(self.columns, record.values, strict=False):
            known = record.rowid if column.name == self.numbered else value
            if not column.fits(known):
                return None
            row[column.name] = known
        return row


@dataclass(slots=True)
class Salvaged:
    """What was read of a damaged database: rows by table, those on pages that its tables lead to first.

    `lost_pages` counts pages that its tables lead to and that cannot be read, `bad_cells` rows that cannot on
    pages that can, `unplaced` pages of rows that could belong to several tables, `unread` bytes that the disk
    did not give back.
    """

    rows: dict[str, list[Row]] = field(default_factory=lambda: defaultdict(list))
    lost_pages: int = 0
    bad_cells: int = 0
    unplaced: int = 0
    unread: int = 0


def shapes_of(connection: sqlite3.Connection) -> list[Shape]:
    """The shapes of all tables and indexes of a sound database."""
    shapes = []
    for table, without_rowid in connection.execute(_TABLES).fetchall():
        if table.startswith("sqlite_"):
            continue
        found = connection.execute(_COLUMNS, (table,)).fetchall()
        columns = {
            name: Column(name, kind.partition("(")[0], bool(needed or pk), bool(given))
            for name, kind, needed, pk, given in found
        }
        keys = [name for name, _, _, pk, _ in sorted(found, key=lambda one: one[3]) if pk]
        alone = len(keys) == 1 and not without_rowid
        numbered = keys[0] if alone and columns[keys[0]].kind == "INTEGER" else None
        order = [*keys, *(name for name in columns if name not in keys)] if without_rowid else list(columns)
        shapes.append(Shape(table, tuple(columns[name] for name in order), not without_rowid, numbered))
        shapes += _indexes(connection, table, columns, keys if without_rowid else [])
    return shapes


def _indexes(
    connection: sqlite3.Connection, table: str, columns: Mapping[str, Column], keys: Sequence[str]
) -> list[Shape]:
    shapes = []
    names = connection.execute("SELECT name, origin FROM pragma_index_list(?)", (table,)).fetchall()
    for name, origin in names:
        if keys and origin == "pk":
            continue
        of_index = [name for (name,) in connection.execute("SELECT name FROM pragma_index_info(?)", (name,))]
        rowid = Column("", "INTEGER", needed=True)
        behind = [columns[key] for key in keys if key not in of_index] if keys else [rowid]
        shapes.append(Shape(None, (*(columns[column] for column in of_index), *behind), by_rowid=False))
    return shapes


def salvage(file: PagedFile, shapes: Sequence[Shape], agrees: Agrees = _nobody_knows) -> Salvaged:
    """Everything that can still be read of a damaged database with tables of these shapes.

    `agrees` says of a row whether it can be one of a table, None where that cannot be told.
    """
    found = Salvaged(unread=file.unread)
    placed: set[int] = set()
    by_name = {shape.table: shape for shape in shapes if shape.table is not None}
    for name, root in _roots(file):
        shape = None if name is None else by_name.get(name)
        pages = dict(walk(file, root))
        if shape is not None:
            led_to = {root}.union(*(page.children for page in pages.values()))
            found.lost_pages += len(led_to - pages.keys())
        for number, page in pages.items():
            if number not in placed:
                placed.add(number)
                if shape is not None:
                    _take(found, shape, page)
    stray = (file.page(number) for number in range(1, file.count + 1) if number not in placed)
    for lost in stray:
        if lost is not None:
            _place(found, shapes, lost, agrees)
    return found


def _roots(file: PagedFile) -> list[tuple[str | None, int]]:
    """The roots of all tables by name, and of all indexes without, as far as the schema can be read.

    Parts of it that nothing leads to any more are known by their look.
    """
    roots: list[tuple[str | None, int]] = [(None, _SCHEMA_ROOT)]
    reached = dict(walk(file, _SCHEMA_ROOT))
    others = (file.page(number) for number in range(1, file.count + 1) if number not in reached)
    for page in (*reached.values(), *(other for other in others if other and _is_of_schema(other))):
        for record in page.records:
            if len(record.values) != _SCHEMA_COLUMNS:
                continue
            kind, name, _, root, _ = record.values
            if isinstance(name, str) and isinstance(root, int) and root > _SCHEMA_ROOT:
                roots.append((name if kind == "table" else None, root))
    return roots


def _is_of_schema(page: Page) -> bool:
    return page.kind == TABLE_LEAF and all(
        len(record.values) == _SCHEMA_COLUMNS and record.values[0] in ("table", "index")
        for record in page.records
    )


def _place(found: Salvaged, shapes: Sequence[Shape], page: Page, agrees: Agrees) -> None:
    """Take the rows of a page that nothing leads to, where they can be those of one table alone."""
    if not page.records:
        found.bad_cells += page.bad
        return
    fitting = [shape for shape in shapes if _all_fit(shape, page.records)]
    if len(fitting) > 1:
        verdicts = {shape: _verdict(shape, page.records, agrees) for shape in fitting}
        fitting = [shape for shape in fitting if verdicts[shape] is not False]
        fitting = [shape for shape in fitting if verdicts[shape]] or fitting
    if len(fitting) == 1 and fitting[0].table is not None:
        _take(found, fitting[0], page)
    elif any(shape.table is not None for shape in fitting):
        found.unplaced += 1


def _verdict(shape: Shape, records: Iterable[Record], agrees: Agrees) -> bool | None:
    """Whether all records of a page agree with a shape that they fit; None where that cannot be told."""
    rows = (shape.row(record) for record in records)
    said = {None if shape.table is None or row is None else agrees(shape.table, row) for row in rows}
    return False if False in said else None if None in said else True


def _all_fit(shape: Shape, records: Iterable[Record]) -> bool:
    return all(shape.row(record) is not None for record in records)


def _take(found: Salvaged, shape: Shape, page: Page) -> None:
    found.bad_cells += page.bad if page.kind in (TABLE_LEAF, INDEX_LEAF, INDEX_INNER) else 0
    for record in page.records:
        row = shape.row(record)
        if row is None:
            found.bad_cells += 1
        else:
            found.rows[shape.table or ""].append(row)
