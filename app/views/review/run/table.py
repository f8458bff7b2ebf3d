"""The bouts of a run as a table, each with its painted strip."""

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QRect, QRectF, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QStyleOptionViewItem, QWidget

from app.views.review.run.columns import LETTERS, STRIP, bout_columns
from app.views.review.run.strip import paint_strip
from app.views.review.run.view import BoutLine
from app.views.theme import LIGHT, Look
from app.views.widgets.rows_model import Role, RowsModel
from app.views.widgets.rows_table import RowDelegate, RowsTable

Index = QModelIndex | QPersistentModelIndex
ROW_ROLE = Qt.ItemDataRole.UserRole
ROW_LETTERS = 4
STRIP_LETTERS = 24
LEAST_LETTERS = 9


class BoutModel(RowsModel[BoutLine]):
    """Rows of a run; the row itself is at hand for what is painted."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(bout_columns(), LIGHT, parent)

    def data(self, index: Index, role: int = Role.DisplayRole) -> object:
        """What a cell shows, says or looks like; the row for what is painted."""
        if role == ROW_ROLE and index.isValid():
            return self._rows[index.row()]
        return super().data(index, role)


class StripDelegate(RowDelegate):
    """Paints the strips, and leaves the words to the rows of the house."""

    def __init__(self, look: Look, padding: int, parent: QWidget) -> None:
        super().__init__(look.scheme, padding, parent)
        self._look = look

    def _write(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        if index.column() != STRIP:
            super()._write(painter, option, index)
            return
        rect: QRect = option.rect
        room = QRectF(rect.adjusted(self._padding, 6, -self._padding, -6))
        paint_strip(painter, room, index.data(ROW_ROLE), self._look)


class BoutTable(RowsTable):
    """The bouts below each other."""

    def set_look(self, look: Look, *, dense: bool = False) -> None:
        """Take colours and letters."""
        super().set_look(look, dense=dense)
        self.setItemDelegate(StripDelegate(look, self._padding, self))
        self.verticalHeader().setDefaultSectionSize(look.sizes.body * ROW_LETTERS)

    def _measure(self) -> None:
        """Room for the strips, which are no words."""
        super()._measure()
        if len(self._wished) > STRIP:
            letter = self.fontMetrics().averageCharWidth()
            self._wished[STRIP] = letter * STRIP_LETTERS
            for column, most in LETTERS.items():
                if column < len(self._wished):
                    self._wished[column] = min(self._wished[column], letter * most + 2 * self._padding)
            self._share()

    def _share(self) -> None:
        """Where not all has room, notes, faults and names give way before the strips do."""
        wished = self._wished
        if len(wished) == len(self._rows.columns) > STRIP:
            over = sum(wished) - wished[STRIP] + self._titles[STRIP] - self.viewport().width()
            self._wished = list(wished)
            for column in sorted((each for each in LETTERS if each < len(wished)), reverse=True):
                least = max(self._titles[column], self.fontMetrics().averageCharWidth() * LEAST_LETTERS)
                given = min(max(wished[column] - least, 0), max(over, 0))
                self._wished[column] -= given
                over -= given
        super()._share()
        self._wished = wished
