"""The choice of the stretch of time that is looked back on."""

from datetime import date

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QDateEdit, QHBoxLayout, QWidget

from app.views.review.athlete.spans import Span, Stretch
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.choice_box import ChoiceBox

EARLIEST = QDate(1990, 1, 1)
LATEST = QDate(2100, 12, 31)


class RangeBar(QWidget):
    """A list of stretches, and two days where they are wanted. `changed` carries the stretch."""

    changed = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.choice = ChoiceBox(tr("Time looked back on"), 13, look)
        for span in Span:
            self.choice.addItem(tr(span.value), span)
        self.first, self.last = QDateEdit(), QDateEdit()
        self.first.setAccessibleName(tr("From which day"))
        self.last.setAccessibleName(tr("To which day"))
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        for day in (self.first, self.last):
            day.setCalendarPopup(True)
            day.setDateRange(EARLIEST, LATEST)
            day.editingFinished.connect(self._dates)
            day.hide()
            self._row.addWidget(day)
        self._row.addWidget(self.choice)
        self.show_stretch(Stretch())
        self.choice.activated.connect(self._chosen)

    @property
    def stretch(self) -> Stretch:
        """What is chosen now."""
        span: Span = self.choice.currentData()
        return Stretch(span, _day(self.first.date()), _day(self.last.date()))

    def show_stretch(self, stretch: Stretch) -> None:
        """Show a choice without saying that it was made."""
        self.choice.setCurrentIndex(list(Span).index(stretch.span))
        for field, day in ((self.first, stretch.first), (self.last, stretch.last)):
            if day is not None:
                field.setDate(QDate(day.year, day.month, day.day))
        self._show_dates()

    def show_days(self, first: date, last: date) -> None:
        """Put the days looked at into the two fields, unless they are being chosen."""
        if self.stretch.span is not Span.DATES:
            self.first.setDate(QDate(first.year, first.month, first.day))
            self.last.setDate(QDate(last.year, last.month, last.day))

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._row.setSpacing(look.sizes.body // 2)
        self.choice.set_look(look)
        for day in (self.first, self.last):
            day.setFont(look.font(look.sizes.body))

    def _chosen(self) -> None:
        self._show_dates()
        self.changed.emit(self.stretch)

    def _dates(self) -> None:
        if self.stretch.span is Span.DATES:
            self.changed.emit(self.stretch)

    def _show_dates(self) -> None:
        for day in (self.first, self.last):
            day.setVisible(self.choice.currentData() is Span.DATES)


def _day(value: QDate) -> date:
    return date(value.year(), value.month(), value.day())
