"""Hypothesis strategies for plain rows: any value of a kind, any row of a table."""

from datetime import UTC, date, datetime

from hypothesis import strategies as st

from app.domain.table import Table
from app.domain.values import (
    Choice,
    Clock,
    Day,
    Decimals,
    Digest,
    Flag,
    Kind,
    Load,
    Moment,
    Name,
    Number,
    Plain,
    Row,
    Whole,
    Words,
    moment_text,
)

_AWKWARD = ("=1+1", "'=1", "''", "'", "\r\n", '"', "-3", "a,b;c\td", "\x00", "\ufeff")


_SHOWN = st.characters(min_codepoint=32, exclude_categories=["Cs"])
_FIRST, _LAST = datetime(1900, 1, 2), datetime(2200, 12, 30)  # noqa: DTZ001 - the strategy wants them so
_OF_KIND: dict[type[Kind], st.SearchStrategy[Plain]] = {
    Flag: st.booleans(),
    Name: st.uuids().map(str),
    Digest: st.binary(min_size=32, max_size=32).map(bytes.hex),
    Day: st.dates(date(1900, 1, 1), date(2200, 12, 31)).map(str),
    Moment: st.datetimes(_FIRST, _LAST, timezones=st.just(UTC)).map(moment_text),
    Clock: st.times().map(lambda at: f"{at:%H:%M}"),
    Load: st.decimals(0, 1000, places=2).map(str),
    Decimals: st.decimals(-1000, 1000, places=2).map(str),
}


def values(kind: Kind) -> st.SearchStrategy[Plain]:
    """Any value that a column of this kind may have."""
    match kind:
        case Whole(least=least, most=most):
            return st.integers(least, most)
        case Number(least=least, most=most):
            return st.floats(least, most)
        case Choice(among=among):
            return st.sampled_from(among)
        case Words(empty=empty):
            return st.text(_SHOWN, max_size=12).filter(lambda said: empty or bool(said.strip()))
        case _:
            return _OF_KIND.get(type(kind), st.text(max_size=12) | st.sampled_from(_AWKWARD))


def table_rows(table: Table) -> st.SearchStrategy[Row]:
    """Any row of a table, by its columns alone."""
    return st.fixed_dictionaries(
        {
            column.name: (st.none() | values(column.kind)) if column.unknown else values(column.kind)
            for column in table.columns
        }
    )
