"""Tables as Parquet files, each column with its type and its description. Needs the extra `export`."""

from collections.abc import Iterable, Iterator
from itertools import islice
from pathlib import Path
from typing import Any

from app.domain.errors import MissingExtraError
from app.domain.table import Column, Table
from app.domain.values import Day, Flag, Moment, Number, Plain, Row, Whole, day_of, moment_of

ROWS_A_GROUP = 50_000


def write_parquet(path: Path, table: Table, rows: Iterable[Row]) -> int:
    """Write a table into a file; gives how many rows it has. Raises MissingExtraError without the library."""
    try:
        import pyarrow as pa
        import pyarrow.parquet as pq
    except ImportError as error:
        raise MissingExtraError("Parquet", "export") from error
    schema = pa.schema(
        [_field(pa, column) for column in table.columns], metadata={"description": table.about}
    )
    count = 0
    with pq.ParquetWriter(path, schema) as writer:
        for group in _groups(rows):
            cells = {
                column.name: [_native(column, row[column.name]) for row in group] for column in table.columns
            }
            writer.write_table(pa.table(cells, schema=schema))
            count += len(group)
    return count


def _groups(rows: Iterable[Row]) -> Iterator[list[Row]]:
    remaining = iter(rows)
    while group := list(islice(remaining, ROWS_A_GROUP)):
        yield group


def _field(pa: Any, column: Column) -> Any:  # noqa: ANN401 - the library carries no types
    return pa.field(
        column.name,
        _type(pa, column),
        nullable=column.unknown,
        metadata={"description": column.about},
    )


def _type(pa: Any, column: Column) -> Any:  # noqa: ANN401 - the library carries no types
    match column.kind:
        case Whole():
            return pa.int64()
        case Number():
            return pa.float64()
        case Flag():
            return pa.bool_()
        case Moment():
            return pa.timestamp("us", tz="UTC")
        case Day():
            return pa.date32()
        case _:
            return pa.string()


def _native(column: Column, value: Plain) -> object:
    if isinstance(value, str) and isinstance(column.kind, Moment):
        return moment_of(value)
    if isinstance(value, str) and isinstance(column.kind, Day):
        return day_of(value)
    return value
