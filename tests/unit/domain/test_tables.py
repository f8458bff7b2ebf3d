"""The list of what a record hands on: every table of the record is in it, parents before children."""

from app.domain.fact_rows import FACT_KINDS
from app.domain.tables import TABLES
from app.domain.tables_of_runs import FACTS


def test_every_table_stands_after_those_it_names_a_row_of() -> None:
    names = [table.name for table in TABLES]
    for place, table in enumerate(TABLES):
        assert set(table.links.values()) <= set(names[:place])
        assert set(table.links) <= set(table.column_names)


def test_names_are_unique_and_keys_are_columns_that_are_always_known() -> None:
    assert len({table.name for table in TABLES}) == len(TABLES)
    for table in TABLES:
        assert len(set(table.column_names)) == len(table.columns)
        assert all(not column.unknown for column in table.columns if column.name in table.key)
        assert set(table.key) <= set(table.column_names)


def test_every_table_and_column_is_said_in_words() -> None:
    for table in TABLES:
        assert table.about.endswith(".")
        assert [column.name for column in table.columns if not column.about.endswith(".")] == []


def test_the_table_of_facts_has_a_column_for_every_field_of_a_fact() -> None:
    assert set(FACTS.column_names) == {"run", "number", "fact", *FACT_KINDS}
