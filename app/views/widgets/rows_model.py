"""Rows of anything as a table: what each column shows, says and sorts by."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QColor

from app.views.theme import Scheme

Row = TypeVar("Row")
Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole

RISING, FALLING = " ↑", " ↓"


class Tone(Enum):
    """How loud a cell speaks."""

    INK = "ink"
    QUIET = "quiet"
    ATTENTION = "attention"


@dataclass(frozen=True, slots=True)
class Column(Generic[Row]):
    """One column. `key` gives what rows are sorted by, None where it is unknown.

    `spoken` is the cell for a screen reader, `tip` its tooltip; both are the text where not given. `wide`
    columns share the room that is left and give way first. `hint` explains the title.
    """

    title: str
    text: Callable[[Row], str]
    key: Callable[[Row], Any]
    right: bool = False
    wide: bool = False
    tone: Callable[[Row], Tone] | None = None
    spoken: Callable[[Row], str] | None = None
    tip: Callable[[Row], str] | None = None
    hint: str = ""


class RowsModel(QAbstractTableModel, Generic[Row]):
    """A table model over rows held in memory. Unknown values sort last, whichever way."""

    def __init__(self, columns: Sequence[Column[Row]], scheme: Scheme, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.columns = tuple(columns)
        self._scheme = scheme
        self._rows: list[Row] = []
        self._sorted: tuple[int, Qt.SortOrder] | None = None

    @property
    def rows(self) -> tuple[Row, ...]:
        """The rows as they stand now."""
        return tuple(self._rows)

    def set_rows(self, rows: Sequence[Row], columns: Sequence[Column[Row]] | None = None) -> None:
        """Show other rows, in the order last asked for; other columns too where they are given."""
        self.beginResetModel()
        if columns is not None:
            self.columns = tuple(columns)
        self._rows = list(rows)
        if self._sorted:
            self._arrange(*self._sorted)
        self.endResetModel()

    def set_scheme(self, scheme: Scheme) -> None:
        """Take other colours."""
        self._scheme = scheme

    def rowCount(self, parent: Index | None = None) -> int:
        """Rows below the root; a cell has none."""
        return 0 if parent is not None and parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index | None = None) -> int:
        """Columns of every row."""
        return 0 if parent is not None and parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = Role.DisplayRole) -> object:
        """What a cell shows, says or looks like."""
        if not index.isValid():
            return None
        row, column = self._rows[index.row()], self.columns[index.column()]
        shown: dict[int, Callable[[], object]] = {
            Role.DisplayRole: lambda: column.text(row),
            Role.ToolTipRole: lambda: (column.tip or column.text)(row),
            Role.AccessibleTextRole: lambda: f"{column.title}: {(column.spoken or column.text)(row)}",
            Role.TextAlignmentRole: lambda: alignment(column),
            Role.ForegroundRole: lambda: self._colour(column.tone(row) if column.tone else Tone.INK),
        }
        return shown[role]() if role in shown else None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole) -> object:
        """The titles of the columns; rows have none."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        column = self.columns[section]
        if role == Role.DisplayRole:
            return column.title + self._arrow(section)
        if role == Role.ToolTipRole:
            return column.hint or None
        if role == Role.TextAlignmentRole:
            return alignment(column)
        return None

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Arrange the rows by a column; rows alike keep their order."""
        if not 0 <= column < len(self.columns):
            return
        self.layoutAboutToBeChanged.emit()
        before = [(index, self._rows[index.row()]) for index in self.persistentIndexList()]
        self._sorted = (column, order)
        self._arrange(column, order)
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(self.columns) - 1)
        places = {id(row): place for place, row in enumerate(self._rows)}
        for index, row in before:
            self.changePersistentIndex(index, self.index(places[id(row)], index.column()))
        self.layoutChanged.emit()

    def _arrow(self, section: int) -> str:
        if self._sorted is None or self._sorted[0] != section:
            return ""
        return FALLING if self._sorted[1] is Qt.SortOrder.DescendingOrder else RISING

    def _colour(self, tone: Tone) -> QColor:
        return QColor(getattr(self._scheme, tone.value))

    def _arrange(self, column: int, order: Qt.SortOrder) -> None:
        key = self.columns[column].key
        known = [row for row in self._rows if key(row) is not None]
        unknown = [row for row in self._rows if key(row) is None]
        known.sort(key=key, reverse=order is Qt.SortOrder.DescendingOrder)
        self._rows = known + unknown


def alignment(column: Column[Any]) -> Qt.AlignmentFlag:
    """Where a column's words stand: figures at the right, words at the left."""
    side = Qt.AlignmentFlag.AlignRight if column.right else Qt.AlignmentFlag.AlignLeft
    return side | Qt.AlignmentFlag.AlignVCenter
