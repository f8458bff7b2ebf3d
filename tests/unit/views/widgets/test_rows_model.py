"""Rows as a table: sorted with the unknown last, said in full to a screen reader."""

from PySide6.QtCore import QPersistentModelIndex, Qt

from app.views.theme import DARK, LIGHT
from app.views.widgets.rows_model import Column, Role, RowsModel, Tone

Pair = tuple[str, int | None]
UP, DOWN = Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder
PAIRS: tuple[Pair, ...] = (("b", 2), ("a", None), ("c", 1), ("d", 2))


def model() -> RowsModel[Pair]:
    made: RowsModel[Pair] = RowsModel(
        (
            Column("Name", lambda pair: pair[0], lambda pair: pair[0]),
            Column(
                "Pain",
                lambda pair: "–" if pair[1] is None else str(pair[1]),
                lambda pair: pair[1],
                right=True,
                tone=lambda pair: Tone.ATTENTION if pair[1] == 2 else Tone.INK,
                spoken=lambda pair: "unknown" if pair[1] is None else f"{pair[1]} of 10",
                hint="0 to 10",
            ),
        ),
        LIGHT,
    )
    made.set_rows(PAIRS)
    return made


def test_the_unknown_comes_last_whichever_way_it_is_sorted() -> None:
    rows = model()
    rows.sort(1, UP)
    assert [pair[0] for pair in rows.rows] == ["c", "b", "d", "a"]
    rows.sort(1, DOWN)
    assert [pair[0] for pair in rows.rows] == ["b", "d", "c", "a"]


def test_other_rows_come_in_the_order_last_asked_for() -> None:
    rows = model()
    rows.sort(0, DOWN)
    rows.set_rows((("x", 1), ("z", 2)))
    assert [pair[0] for pair in rows.rows] == ["z", "x"]


def test_what_was_pointed_at_stays_pointed_at_after_sorting() -> None:
    rows = model()
    held = QPersistentModelIndex(rows.index(0, 0))
    rows.sort(0, DOWN)
    assert held.data() == "b"
    assert held.row() == 2


def test_a_column_that_is_not_there_sorts_nothing() -> None:
    rows = model()
    rows.sort(-1, UP)
    assert rows.rows == PAIRS


def test_the_title_says_by_what_and_which_way_the_rows_are_sorted() -> None:
    rows = model()
    across = Qt.Orientation.Horizontal
    assert rows.headerData(0, across) == "Name"
    rows.sort(0, DOWN)
    assert (rows.headerData(0, across), rows.headerData(1, across)) == ("Name ↓", "Pain")
    rows.sort(0, UP)
    assert rows.headerData(0, across) == "Name ↑"
    assert rows.headerData(1, across, Role.ToolTipRole) == "0 to 10"
    assert rows.headerData(0, Qt.Orientation.Vertical) is None


def test_a_cell_says_its_title_and_the_unknown_in_words() -> None:
    rows = model()
    assert rows.index(1, 1).data(Role.AccessibleTextRole) == "Pain: unknown"
    assert rows.index(0, 1).data(Role.AccessibleTextRole) == "Pain: 2 of 10"
    assert rows.index(1, 1).data() == "–"


def test_a_cell_takes_the_colour_of_its_tone_and_of_the_scheme() -> None:
    rows = model()
    assert rows.index(0, 1).data(Role.ForegroundRole).name().upper() == LIGHT.attention
    assert rows.index(2, 1).data(Role.ForegroundRole).name().upper() == LIGHT.ink
    rows.set_scheme(DARK)
    assert rows.index(0, 1).data(Role.ForegroundRole).name().upper() == DARK.attention


def test_a_cell_has_no_rows_below_it_and_no_index_is_no_cell() -> None:
    rows = model()
    assert rows.rowCount(rows.index(0, 0)) == 0
    assert rows.data(rows.index(9, 0)) is None
    assert rows.index(0, 0).data(Role.DecorationRole) is None
