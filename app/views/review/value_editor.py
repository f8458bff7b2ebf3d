"""Enters one value: a number or unknown, words, a moment, done or missed."""

from collections.abc import Callable, Sequence
from datetime import UTC, datetime

from PySide6.QtCore import QDateTime, QRegularExpression
from PySide6.QtGui import QRegularExpressionValidator
from PySide6.QtWidgets import QCompleter, QDateTimeEdit, QLineEdit, QSpinBox, QStackedWidget, QWidget

from app.analysis.local_time import known_zone
from app.domain.correctable import MOST_REPS, Value, utc_text
from app.views.review.correct_fields import AS_COUNTED, Field, Kind, fault_words, faults_from
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.choice_box import ChoiceBox

NOT_KNOWN = message("not known")
WALL = "yyyy-MM-dd HH:mm"
_LOAD = QRegularExpression("(1000|[0-9]{1,3}([.,][0-9]{0,3})?)?")
_LINES = (Kind.WORDS, Kind.NAME, Kind.FAULTS)


class ValueEditor(QStackedWidget):
    """The right way to enter a value for the field shown."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._field: Field | None = None
        self._zone = "UTC"
        self.scale = ChoiceBox(tr("New value"), 10, look)
        self.missed = ChoiceBox(tr("New value"), 10, look)
        self.reps, self.line, self.moment = QSpinBox(), QLineEdit(), QDateTimeEdit()
        self.load = QLineEdit()
        self.load.setValidator(QRegularExpressionValidator(_LOAD, self.load))
        self.scale.addItem(tr(NOT_KNOWN), None)
        for number in range(11):
            self.scale.addItem(str(number), number)
        for name, value in ((tr("done", "a rep"), False), (tr("missed", "a rep"), True)):
            self.missed.addItem(name, value)
        self.reps.setRange(-1, MOST_REPS)
        self.reps.setSpecialValueText(tr(AS_COUNTED))
        self.moment.setDisplayFormat(WALL)
        self.moment.setCalendarPopup(True)
        for editor in (self.reps, self.line, self.load, self.moment):
            editor.setAccessibleName(tr("New value"))
        for widget in (self.scale, self.missed, self.reps, self.line, self.load, self.moment):
            self.addWidget(widget)
        self.set_look(look)

    def show_field(self, field: Field, zone: str, athletes: Sequence[str]) -> None:
        """Let a field's value be entered, beginning with the one it has."""
        self._field, self._zone = field, zone
        self.line.setCompleter(QCompleter(list(athletes), self.line) if field.kind is Kind.NAME else None)  # type: ignore[arg-type]
        match field.kind:
            case Kind.SCALE:
                self.scale.setCurrentIndex(self.scale.findData(field.value))
            case Kind.MISSED:
                self.missed.setCurrentIndex(self.missed.findData(field.value))
            case Kind.REPS:
                self.reps.setValue(field.value if isinstance(field.value, int) else -1)
            case Kind.MOMENT:
                self.moment.setDateTime(_wall(str(field.value), zone))
            case Kind.FAULTS:
                self.line.setText(fault_words(field.value))
            case Kind.LOAD:
                self.load.setText(str(field.value or ""))
            case Kind.WORDS | Kind.NAME:
                self.line.setText(str(field.value or ""))
        self.setCurrentWidget(self._widget(field.kind))

    @property
    def value(self) -> Value:
        """The value that stands there now."""
        if self._field is None:
            return None
        entered: dict[Kind, Callable[[], Value]] = {
            Kind.SCALE: self.scale.currentData,
            Kind.MISSED: self.missed.currentData,
            Kind.REPS: lambda: None if self.reps.value() < 0 else self.reps.value(),
            Kind.MOMENT: self._moment_entered,
            Kind.FAULTS: lambda: faults_from(self.line.text()),
            Kind.LOAD: lambda: self.load.text().replace(",", ".").rstrip(".") or None,
        }
        return entered.get(self._field.kind, lambda: self.line.text().strip() or None)()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        for box in (self.scale, self.missed):
            box.set_look(look)
        for editor in (self.reps, self.line, self.load, self.moment):
            editor.setFont(look.font(look.sizes.body))

    def _moment_entered(self) -> Value:
        assert self._field is not None  # noqa: S101 - told by the caller
        shown = str(self._field.value)
        if self.moment.dateTime() == _wall(shown, self._zone):
            return shown
        wall = datetime.strptime(self.moment.dateTime().toString(WALL), "%Y-%m-%d %H:%M")  # noqa: DTZ007
        return utc_text(wall.replace(tzinfo=known_zone(self._zone)).astimezone(UTC))

    def _widget(self, kind: Kind) -> QWidget:
        if kind in _LINES:
            return self.line
        return {
            Kind.SCALE: self.scale,
            Kind.MISSED: self.missed,
            Kind.REPS: self.reps,
            Kind.LOAD: self.load,
            Kind.MOMENT: self.moment,
        }[kind]


def _wall(text: str, zone: str) -> QDateTime:
    """A moment in UTC as the clock on the wall of a time zone shows it, to the minute."""
    at = datetime.fromisoformat(text).astimezone(known_zone(zone))
    return QDateTime.fromString(at.strftime("%Y-%m-%d %H:%M"), WALL)
