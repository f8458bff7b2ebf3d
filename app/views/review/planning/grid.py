"""The month as a grid: weeks in rows, Monday first; arrows go from day to day."""

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from app.domain.planned import DueSession
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.planning.month import DAYS_A_WEEK, month_weeks, next_month, session_words, short_words
from app.views.theme import Look
from app.views.translation import tr


class MonthGrid(QTableWidget):
    """Shows the month of `day`. `went` says that another day is meant; Page Up and Down change the month."""

    went = Signal(object)

    def __init__(self, look: Look, day: date, parent: QWidget | None = None) -> None:
        super().__init__(0, DAYS_A_WEEK, parent)
        self._look, self.day = look, day
        self._weeks = month_weeks(day)
        locale = QLocale()
        names = [locale.dayName(number, QLocale.FormatType.ShortFormat) for number in range(1, 8)]
        self.setHorizontalHeaderLabels(names)
        self.setAccessibleName(tr("Calendar"))
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        for header in (self.horizontalHeader(), self.verticalHeader()):
            header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.setFont(look.font(look.sizes.small))
        self.horizontalHeader().setFont(look.font(look.sizes.small, Weight.SEMIBOLD))
        self.currentCellChanged.connect(self._go)

    @property
    def span(self) -> tuple[date, date]:
        """First and last day in sight."""
        return self._weeks[0][0], self._weeks[-1][-1]

    def show_month(self, day: date, due: Sequence[DueSession], today: date) -> None:
        """Show the month of a day with its sessions; the day is the one meant."""
        self.day, self._weeks = day, month_weeks(day)
        self.blockSignals(True)
        self.setRowCount(len(self._weeks))
        for row, week in enumerate(self._weeks):
            for column, each in enumerate(week):
                self.setItem(row, column, self._item(each, due, today))
                if each == day:
                    self.setCurrentCell(row, column)
        self.blockSignals(False)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Page Up and Page Down go by months; arrows are the table's."""
        steps: dict[int, int] = {Qt.Key.Key_PageUp: -1, Qt.Key.Key_PageDown: 1}
        if event.key() in steps:
            self.went.emit(next_month(self.day, steps[event.key()]))
        else:
            super().keyPressEvent(event)

    def _item(self, day: date, due: Sequence[DueSession], today: date) -> QTableWidgetItem:
        mine = [each for each in due if each.occurrence.day == day]
        number = tr("{n} today").format(n=day.day) if day == today else str(day.day)
        item = QTableWidgetItem("\n".join([number, *map(short_words, mine)]))
        item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        told = "\n".join([words.dated(day), *map(session_words, mine)])
        item.setToolTip(told)
        item.setData(Qt.ItemDataRole.AccessibleTextRole, told)
        if day.month != self.day.month:
            item.setForeground(QColor(self._look.scheme.quiet))
        return item

    def _go(self, row: int, column: int, _row: int, _column: int) -> None:
        if 0 <= row < len(self._weeks) and 0 <= column < DAYS_A_WEEK:
            self.went.emit(self._weeks[row][column])
