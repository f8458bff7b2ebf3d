"""The table that every list of the desk is: quiet lines, no grid, the chosen row marked at its edge."""

import math
from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QGuiApplication,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from app.views.lettering import Weight
from app.views.theme import Look, Scheme
from app.views.translation import tr
from app.views.widgets.lines import paint_words
from app.views.widgets.rows_model import Column, Index, Role, RowsModel

EDGE = 4
PROBED_ROWS = 100
LEAST_WIDTH = 60
SLACK = 2


class RowDelegate(QStyledItemDelegate):
    """Paints a cell: its words, a line below, and an edge of accent before the chosen row."""

    def __init__(self, scheme: Scheme, padding: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._scheme = scheme
        self._padding = padding

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint one cell."""
        rect: QRect = option.rect
        state: QStyle.StateFlag = option.state
        chosen = bool(state & QStyle.StateFlag.State_Selected)
        painter.save()
        painter.fillRect(rect, QColor(self._scheme.ground if chosen else self._scheme.panel))
        painter.setPen(QPen(QColor(self._scheme.faint), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        if chosen and index.column() == 0:
            mirrored = option.direction is Qt.LayoutDirection.RightToLeft
            begin = rect.right() - EDGE + 1 if mirrored else rect.left()
            painter.fillRect(QRect(begin, rect.top(), EDGE, rect.height()), QColor(self._scheme.accent))
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(self._scheme.accent), 1))
            painter.drawRect(rect.adjusted(0, 0, -1, -1))
        self._write(painter, option, index)
        painter.restore()

    def _write(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        rect: QRect = option.rect
        room = rect.adjusted(self._padding, 0, -self._padding, 0)
        font = option.font
        painter.setFont(font)
        painter.setPen(index.data(Role.ForegroundRole) or QColor(self._scheme.ink))
        text = painter.fontMetrics().elidedText(str(index.data()), Qt.TextElideMode.ElideRight, room.width())
        paint_words(painter, room, index.data(Role.TextAlignmentRole), text)


class RowsTable(QTableView):
    """A sortable table over a `RowsModel`; whole rows are chosen, Ctrl+C copies them with their titles."""

    def __init__(self, model: RowsModel[Any], name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setModel(model)
        self._rows = model
        self.setAccessibleName(name)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setFrameShape(QTableView.Shape.NoFrame)
        self.setCornerButtonEnabled(False)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header = self.horizontalHeader()
        header.setAccessibleName(tr("{name}, titles").format(name=name))
        header.setHighlightSections(False)
        header.setSortIndicatorClearable(False)
        header.setMinimumSectionSize(LEAST_WIDTH // 2)
        self._padding = 0
        self._wished: list[int] = [LEAST_WIDTH] * len(model.columns)
        self._titles = list(self._wished)
        for changed in (model.modelReset, model.layoutChanged):
            changed.connect(self._measure)

    def sort_by(self, column: int, order: Qt.SortOrder) -> None:
        """Sort, and let a click on a title sort from here on."""
        self.sortByColumn(column, order)
        self.setSortingEnabled(True)
        self.horizontalHeader().setSortIndicatorShown(False)

    def set_look(self, look: Look, *, dense: bool = False) -> None:
        """Take colours and letters; `dense` ones for a table that stands in for a chart."""
        letters = look.sizes.small if dense else look.sizes.body
        padding = self._padding = letters * 2 // 3
        self._rows.set_scheme(look.scheme)
        self.setItemDelegate(RowDelegate(look.scheme, padding, self))
        self.setFont(look.font(letters))
        self.verticalHeader().setDefaultSectionSize(round(letters * 2.2))
        self.horizontalHeader().setFont(look.font(look.sizes.small, Weight.SEMIBOLD))
        self.horizontalHeader().setStyleSheet(
            f"QHeaderView {{ background: {look.scheme.panel}; }}"
            f"QHeaderView::section {{ background: {look.scheme.panel}; color: {look.scheme.quiet};"
            f" border: none; border-bottom: 1px solid {look.scheme.faint}; padding: 4px {padding}px; }}"
        )
        bars = (
            f"QScrollBar {{ background: {look.scheme.panel}; }}"
            "QScrollBar:vertical { width: 10px; } QScrollBar:horizontal { height: 10px; }"
            f"QScrollBar::handle {{ background: {look.scheme.quiet}; border-radius: 3px; margin: 2px; }}"
            "QScrollBar::handle:vertical { min-height: 32px; }"
            "QScrollBar::handle:horizontal { min-width: 32px; }"
            "QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
        )
        self.verticalScrollBar().setStyleSheet(bars)
        self.horizontalScrollBar().setStyleSheet(bars)
        self._measure()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the room anew."""
        super().resizeEvent(event)
        self._share()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Copy the chosen rows on Ctrl+C; anything else is the table's."""
        if event.matches(QKeySequence.StandardKey.Copy):
            QGuiApplication.clipboard().setText(self.chosen_text())
        else:
            super().keyPressEvent(event)

    def _measure(self) -> None:
        """Find what width each column wishes, from its title and its first rows."""
        cells, titles = QFontMetricsF(self.font()), QFontMetricsF(self.horizontalHeader().font())
        rows, edge = self._rows.rows[:PROBED_ROWS], 2 * self._padding + SLACK
        across = Qt.Orientation.Horizontal
        self._titles = [
            math.ceil(titles.horizontalAdvance(str(self._rows.headerData(section, across)))) + edge
            for section in range(len(self._rows.columns))
        ]
        self._wished = [
            max(title, *(math.ceil(cells.horizontalAdvance(text)) + edge for text in _texts(column, rows)), 0)
            for title, column in zip(self._titles, self._rows.columns, strict=True)
        ]
        self._share()

    def _share(self) -> None:
        if len(self._wished) != len(self._rows.columns):
            return  # the view is resized by a change of columns before they are measured
        wide = [section for section, column in enumerate(self._rows.columns) if column.wide]
        room = self.viewport().width() - sum(self._wished)
        widths = dict(enumerate(self._wished))
        wished = [self._wished[section] for section in wide]
        least = max((self._titles[section] for section in wide), default=LEAST_WIDTH)
        widths |= dict(zip(wide, shared(room + sum(wished), wished, least), strict=True))
        for section, width in widths.items():
            self.horizontalHeader().resizeSection(section, width)

    def chosen_text(self) -> str:
        """The chosen rows as text, tabs between cells, titles first."""
        places = sorted(index.row() for index in self.selectionModel().selectedRows())
        lines = [[column.title for column in self._rows.columns]]
        rows = self._rows.rows
        lines += [[column.text(rows[place]) for column in self._rows.columns] for place in places]
        return "\n".join("\t".join(line) for line in lines)


def _texts(column: Column[Any], rows: Sequence[Any]) -> set[str]:
    return {column.text(row) for row in rows}


def shared(room: int, wished: Sequence[int], least: int = LEAST_WIDTH) -> list[int]:
    """Widths of columns that share a room: as wished where it suffices, what is over in equal parts.

    Where it does not suffice the widest give way first. No column falls below `least` or LEAST_WIDTH.
    """
    widths = list(wished)
    left, open_ = room, len(widths)
    for place in sorted(range(len(widths)), key=lambda at: wished[at]):
        widths[place] = max(min(wished[place], left // open_), least, LEAST_WIDTH)
        left, open_ = left - widths[place], open_ - 1
    over = max(left, 0) // max(len(widths), 1)
    return [width + over for width in widths]
