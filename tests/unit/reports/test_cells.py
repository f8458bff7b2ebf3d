"""Values as cells and back."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.table import Column
from app.domain.tables import TABLES
from app.domain.values import Flag, Plain, Text, Whole, Words
from app.reports.cells import cell_of, value_of
from app.reports.drawn import DRAWN
from app.reports.guard import FORMULA_SIGNS
from tests.table_rows import values

NOTE = Column("note", Text(9), "", unknown=True)
TITLE = Column("title", Text(9), "")


EVERY = {(column.kind, column.unknown): column for table in (*TABLES, *DRAWN) for column in table.columns}


@pytest.mark.parametrize("column", EVERY.values(), ids=repr)
@settings(max_examples=30)
@given(data=st.data())
def test_whatever_a_column_may_hold_is_read_back_and_no_text_begins_a_formula(
    column: Column, data: st.DataObject
) -> None:
    value = data.draw(st.none() | values(column.kind) if column.unknown else values(column.kind))
    cell = cell_of(column, value)
    assert value_of(column, cell) == value
    if isinstance(column.kind, Text | Words):
        assert cell[:1] not in FORMULA_SIGNS


@pytest.mark.parametrize(
    ("column", "value", "cell"),
    [
        (NOTE, None, ""),
        (NOTE, "", "'"),
        (NOTE, "'", "''"),
        (NOTE, "=1", "'=1"),
        (TITLE, "", ""),
        (TITLE, "'", "'"),
        (Column("n", Whole(-9, 9), ""), -3, "-3"),
        (Column("f", Flag(), ""), False, "false"),
    ],
)
def test_a_cell_says_unknown_by_being_empty_and_nothing_else_does_but_an_empty_title(
    column: Column, value: Plain, cell: str
) -> None:
    assert cell_of(column, value) == cell


def test_an_empty_cell_where_something_must_be_is_refused() -> None:
    with pytest.raises(ValueError, match="must not be empty"):
        value_of(Column("n", Whole(), ""), "")
