"""A table says which rows are its own."""

import pytest

from app.domain.table import Column, Table
from app.domain.values import Row, Text, Whole

TABLE = Table(
    "things", "", (Column("id", Whole(0, 9), ""), Column("note", Text(5), "", unknown=True)), ("id",)
)


def test_a_row_comes_back_with_every_column_and_none_for_what_is_unknown() -> None:
    assert TABLE.check({"id": 3}) == {"id": 3, "note": None}
    assert TABLE.check({"note": "", "id": 0}) == {"id": 0, "note": ""}


@pytest.mark.parametrize(
    ("row", "because"),
    [
        ({}, "id is missing"),
        ({"id": None}, "id is missing"),
        ({"id": 10}, "id must be a whole number from 0 to 9"),
        ({"id": 1, "note": "longer"}, "note must be text of at most 5"),
        ({"id": 1, "other": None}, "no column of such a name in things"),
    ],
)
def test_a_row_that_does_not_fit_is_refused_with_the_column(row: Row, because: str) -> None:
    with pytest.raises(ValueError, match=because):
        TABLE.check(row)


def test_the_key_of_a_row_is_told_by_its_columns() -> None:
    assert TABLE.column_names == ("id", "note")
    assert TABLE.key_of({"id": 3, "note": None}) == (3,)
