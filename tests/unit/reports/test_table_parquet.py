"""Parquet: typed columns, unknown as null, descriptions within."""

from datetime import UTC, date, datetime
from pathlib import Path

import pyarrow as pa
import pyarrow.parquet as pq
import pytest

from app.domain.table import Column, Table
from app.domain.values import Day, Flag, Moment, Number, Row, Text, Whole
from app.reports import table_parquet
from app.reports.table_parquet import write_parquet

TABLE = Table(
    "things",
    "Some things.",
    (
        Column("id", Whole(), "A number."),
        Column("flag", Flag(), "A flag.", unknown=True),
        Column("load", Number(0, 9), "A load.", unknown=True),
        Column("at", Moment(), "A moment.", unknown=True),
        Column("on", Day(), "A day.", unknown=True),
        Column("note", Text(), "A note.", unknown=True),
    ),
    ("id",),
)
FULL: Row = {
    "id": 1,
    "flag": True,
    "load": 1.5,
    "at": "2026-03-02T17:30:00Z",
    "on": "2026-03-02",
    "note": "=1",
}
EMPTY: Row = dict.fromkeys(TABLE.column_names) | {"id": 2}


def test_what_is_read_has_its_types_and_what_is_unknown_is_null(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(table_parquet, "ROWS_A_GROUP", 1)
    path = tmp_path / "a.parquet"
    assert write_parquet(path, TABLE, [FULL, EMPTY]) == 2
    table = pq.read_table(path)
    moment = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
    assert table.to_pylist() == [{**FULL, "at": moment, "on": date(2026, 3, 2)}, EMPTY]
    types = [pa.int64(), pa.bool_(), pa.float64(), pa.timestamp("us", tz="UTC"), pa.date32(), pa.string()]
    assert table.schema.types == types
    assert [each.nullable for each in table.schema] == [False, True, True, True, True, True]
    assert table.schema.field("id").metadata[b"description"] == b"A number."


def test_a_table_without_rows_is_a_file_with_its_columns(tmp_path: Path) -> None:
    path = tmp_path / "a.parquet"
    assert write_parquet(path, TABLE, []) == 0
    assert pq.read_table(path).column_names == list(TABLE.column_names)
