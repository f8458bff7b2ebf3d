"""The squad as a table: its rows, the small bars of load, and the shape before the reason."""

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter
from PySide6.QtWidgets import QAbstractItemView, QStyleOptionViewItem, QWidget

from app.analysis.reasons import Level
from app.views.lettering import Weight
from app.views.review.squad.columns import LOAD, WHY_FIRST, squad_columns
from app.views.review.squad.line import WEEKS_SHOWN, SquadLine, WeekBar
from app.views.theme import LIGHT, Look
from app.views.translation import tr
from app.views.widgets.rows_model import Role, RowsModel
from app.views.widgets.rows_table import RowDelegate, RowsTable
from app.views.widgets.shapes import Shape, paint_shape

Index = QModelIndex | QPersistentModelIndex
ROW_ROLE = Qt.ItemDataRole.UserRole
SHAPES = {Level.TRIANGLE: Shape.TRIANGLE, Level.SQUARE: Shape.SQUARE}
NAME_LETTERS = 22
REASON_LETTERS = 18
"""A reason has room for so many letters at least; where there is less, the table is rolled sideways."""
BAR_SHARE, ROOM_SHARE, BAR_STEP = 0.62, 0.62, 0.85


class SquadModel(RowsModel[SquadLine]):
    """Rows of the squad; the row itself is at hand for what is painted."""

    def __init__(self, parent: QObject | None = None, *, pain: bool = True) -> None:
        super().__init__(squad_columns(pain=pain), LIGHT, parent)
        self.pain = pain

    def data(self, index: Index, role: int = Role.DisplayRole) -> object:
        """What a cell shows, says or looks like; the row for what is painted."""
        if role == ROW_ROLE and index.isValid():
            return self.rows_at(index.row())
        return super().data(index, role)

    def rows_at(self, row: int) -> SquadLine:
        """The line in a row."""
        return self._rows[row]

    def present(self, *, on: bool) -> None:
        """Leave out pain and what may tell of it, or show it again."""
        self.beginResetModel()
        self.pain = not on
        self.columns = squad_columns(pain=self.pain)
        self.endResetModel()


class SquadDelegate(RowDelegate):
    """Paints the bars and the shapes, and leaves the words to the rows of the house."""

    def __init__(self, look: Look, padding: int, parent: QWidget) -> None:
        super().__init__(look.scheme, padding, parent)
        self._look = look

    def _write(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        line: SquadLine = index.data(ROW_ROLE)
        rect: QRect = option.rect
        if index.column() == LOAD:
            paint_bars(
                painter, QRectF(rect.adjusted(self._padding, 0, -self._padding, 0)), line.loads, self._look
            )
        elif index.column() == WHY_FIRST and str(index.data()) and line.attention.level is not None:
            size = self._look.sizes.body * 0.85
            centre = QPointF(rect.left() + self._padding + size / 2, rect.center().y() + 1)
            colour = self._scheme.attention if line.attention.level is Level.TRIANGLE else self._scheme.notice
            paint_shape(painter, SHAPES[line.attention.level], centre, size, QColor(colour))
            option.rect = rect.adjusted(round(size * 1.7), 0, 0, 0)
            self._write_reason(painter, option, index)
        else:
            if index.column() == 0:
                option.font = self._look.font(self._look.sizes.body, Weight.SEMIBOLD)
            super()._write(painter, option, index)

    def _write_reason(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """In one line, in two of smaller letters, or as much of it as there is room for."""
        rect: QRect = option.rect
        room = rect.adjusted(self._padding, 0, -self._padding, 0)
        text = str(index.data())
        if QFontMetrics(option.font).horizontalAdvance(text) <= room.width():
            super()._write(painter, option, index)
            return
        painter.setFont(self._look.font(self._look.sizes.small))
        painter.setPen(index.data(Role.ForegroundRole))
        flags = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft) | int(
            Qt.TextFlag.TextWordWrap
        )
        metrics = painter.fontMetrics()
        if metrics.boundingRect(room, flags, text).height() > room.height():
            text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, room.width())
        painter.drawText(room, flags, text)


class SquadTable(RowsTable):
    """The table; Enter opens an athlete."""

    def __init__(self, model: SquadModel, parent: QWidget | None = None) -> None:
        super().__init__(model, tr("Squad"), parent)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)

    def set_look(self, look: Look, *, dense: bool = False) -> None:
        """Take colours and letters."""
        super().set_look(look, dense=dense)
        self.setItemDelegate(SquadDelegate(look, self._padding, self))
        self.verticalHeader().setDefaultSectionSize(round(look.sizes.body * 2.5))

    def _measure(self) -> None:
        """Room for the bars, which are no words; what is wished beside is as words want it."""
        super()._measure()
        if len(self._wished) > LOAD:
            self._wished[0] = min(self._wished[0], self.fontMetrics().averageCharWidth() * NAME_LETTERS)
            bars = round(WEEKS_SHOWN * BAR_STEP * self.fontMetrics().height()) + 2 * self._padding
            title = self.horizontalHeader().fontMetrics().horizontalAdvance(tr("Load, 8 weeks"))
            self._wished[LOAD] = max(bars, title + 2 * self._padding)
            least = self.fontMetrics().averageCharWidth() * REASON_LETTERS
            self._titles[WHY_FIRST] = max(self._titles[WHY_FIRST], least)
            self._share()


def paint_bars(painter: QPainter, room: QRectF, bars: tuple[WeekBar, ...], look: Look) -> None:
    """Bars from the ground of a cell, each week as high as its load; a short line where nothing is known."""
    top = max((bar.known or 0.0 for bar in bars), default=0.0)
    step = min(room.width() / max(len(bars), 1), look.sizes.body * 1.1)
    height = room.height() * ROOM_SHARE
    ground = room.top() + (room.height() + height) / 2
    for number, bar in enumerate(bars):
        left = room.left() + number * step
        if bar.known is None:
            painter.fillRect(QRectF(left, ground - 1, step * BAR_SHARE, 1), QColor(look.scheme.quiet))
            continue
        tall = max(height * bar.known / top, 1.0) if top else 1.0
        colour = look.scheme.quiet if bar.total is None else look.scheme.accent
        painter.fillRect(QRectF(left, ground - tall, step * BAR_SHARE, tall), QColor(colour))
