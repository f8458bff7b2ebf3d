"""The coach's list of people: key, name, what they do, what was last marked."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr

ROOM = "   "
"""What keeps a column from the next."""


@dataclass(frozen=True, slots=True)
class Line:
    """One person in the list. `quiet` is for those who are not in the session now."""

    key: str
    name: str
    about: str
    marked: str
    quiet: bool


class PeopleTable(QTableWidget):
    """Shows lines; `choose` is given the row that was clicked or taken with Enter."""

    def __init__(self, look: Look, choose: Callable[[int], object]) -> None:
        super().__init__(0, 4)
        self._look, self._choose = look, choose
        self._lines: tuple[Line, ...] = ()
        self.setHorizontalHeaderLabels([tr("Key"), tr("Name"), tr("Now"), tr("Last mark")])
        self.setAccessibleName(tr("People of this session"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setShowGrid(False)
        self.verticalHeader().hide()
        self.horizontalHeader().setFont(look.font(look.sizes.small))
        self.setFont(look.font(look.sizes.heading))
        header = self.horizontalHeader()
        for column, mode in enumerate((QHeaderView.ResizeMode.ResizeToContents,) * 3):
            header.setSectionResizeMode(column, mode)
        header.setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeading | Qt.AlignmentFlag.AlignVCenter)
        self.verticalHeader().setDefaultSectionSize(round(look.sizes.heading * 1.9))
        self.cellClicked.connect(lambda row, _column: self._choose(row))

    def show_lines(self, lines: Sequence[Line], chosen: int | None) -> None:
        """Show these lines, with one of them chosen or none."""
        lines = tuple(lines)
        if lines != self._lines:
            self._fill(lines)
        with QSignalBlocker(self):
            if chosen is None:
                self.clearSelection()
            elif self.currentRow() != chosen or not self.selectedIndexes():
                self.selectRow(chosen)

    def _fill(self, lines: tuple[Line, ...]) -> None:
        old = self._lines if len(self._lines) == len(lines) else (None,) * len(lines)
        self._lines = lines
        self.setRowCount(len(lines))
        for row, (line, before) in enumerate(zip(lines, old, strict=True)):
            if line == before:
                continue
            colour = QColor(self._look.scheme.quiet if line.quiet else self._look.scheme.ink)
            for column, text in enumerate((line.key, line.name, line.about, line.marked)):
                item = self.item(row, column) or QTableWidgetItem()
                item.setText(f"{text}{ROOM}")
                item.setForeground(colour)
                if column < 2:
                    item.setFont(self._look.font(self._look.sizes.heading, Weight.SEMIBOLD))
                if self.item(row, column) is None:
                    self.setItem(row, column, item)
