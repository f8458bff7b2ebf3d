"""The results of one test as they stand, and the correction of one of them with who and why."""

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from app.analysis.local_time import known_zone
from app.analysis.tests_catalog import keys_of
from app.analysis.tests_kinds import OF_LIFT, FieldTest, Part
from app.domain.correctable import Value
from app.domain.corrected import Held
from app.domain.corrections import Correction
from app.domain.keeping import Result
from app.domain.plan import Side
from app.views.review import words
from app.views.review.entry.form import SIDES
from app.views.review.entry.results import (
    Known,
    local_day,
    moment_day,
    on_day,
    value_of,
    what_words,
)
from app.views.review.entry.telling import Said
from app.views.review.entry.tries import typed_part, typed_value
from app.views.review.figure_names import unit_words
from app.views.review.marks import MARK
from app.views.review.signing import Signing
from app.views.review.typed import LONGEST, plain
from app.views.theme import Look
from app.views.translation import message, tr, translated
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton

FIELDS = {
    "value": message("Value"),
    "side": message("Side"),
    "at": message("Day"),
    "note": message("Note"),
}
CHOOSE = message("Choose the result that is wrong.")
SAME = message("That value holds already. Enter another.")
A_SIDE = message("Enter left or right.")
A_DAY = message("Enter a day such as 2026-11-25.")
KEPT = message("What was recorded stays as it is. A correction is written beside it.")
ONCE = message("{when}: {what} {before} → {after}, {who}: {why}")
NONE_TO_TAKE_BACK = message("Nothing of that is corrected, so that there is nothing to take back.")


class ResultsCard(Card):
    """Shows results. `corrected` carries a `Held` result, a field, its new value, who and why.

    `taken_back` carries a correction, who and why.
    """

    corrected = Signal(object, str, object, str, str)
    taken_back = Signal(object, str, str)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(tr("Results"), tr(KEPT), parent)
        self._test: FieldTest | None = None
        self._known = Known((), ())
        self.results: RowsModel[Held[Result]] = RowsModel(_columns(), look.scheme, self)
        self.table = RowsTable(self.results, tr("Results"))
        self.field = ChoiceBox(tr("What is wrong"), 10, look)
        for name, told in FIELDS.items():
            self.field.addItem(tr(told), name)
        self.value, self.signing = QLineEdit(), Signing(self.say)
        self.value.setMaxLength(LONGEST)
        self.message, self.past = QLabel(), QLabel()
        for label in (self.message, self.past):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self.correct, self.back = WordButton(tr("Correct")), WordButton(tr("Take back"))
        for button in (self.correct, self.back):
            button.setAutoDefault(False)
        self._lay_out()
        self.table.selectionModel().selectionChanged.connect(self._begin)
        self.field.activated.connect(self._begin)
        self.correct.clicked.connect(self._correct)
        self.back.clicked.connect(self._take_back)
        for entry in (self.value, *self.signing.entries):
            entry.returnPressed.connect(self._correct)
        self.set_look(look)

    def show_results(self, test: FieldTest, known: Known) -> None:
        """Show those of one test, of its parts and with any lift, the latest day first."""
        chosen = self._chosen()
        self._test, self._known = test, known
        mine = [held for held in known.results if _is_of(held.thing, test)]
        mine.sort(key=lambda held: (held.thing.side.value, held.thing.attempt))
        mine.sort(key=lambda held: local_day(held.thing), reverse=True)
        self.results.set_rows(mine)
        ids = [held.thing.id for held in self.results.rows]
        if chosen is not None and chosen.thing.id in ids:
            self.table.selectRow(ids.index(chosen.thing.id))
        self._begin()

    def say(self, sentence: str) -> None:
        """Say what came of a correction, or what stands in its way."""
        self.message.setText(sentence)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.table.set_look(look, dense=True)
        self.field.set_look(look)
        for part in (self.value, *self.signing.entries, *self._captions):
            part.setFont(look.font(look.sizes.body))
        for label in (self.message, self.past):
            label.setFont(look.font(look.sizes.small))
        for button in (self.correct, self.back):
            button.set_look(look)

    def _lay_out(self) -> None:
        told = (
            (tr("What is wrong"), self.field),
            (tr("Should be"), self.value),
            (tr("Who"), self.signing.who),
            (tr("Why"), self.signing.why),
        )
        form = QFormLayout()
        self._captions = [QLabel(text) for text, _ in told]
        for caption, (text, entry) in zip(self._captions, told, strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(text)
            form.addRow(caption, entry)
        buttons = QHBoxLayout()
        buttons.addWidget(self.message, 1)
        buttons.addWidget(self.back)
        buttons.addWidget(self.correct)
        beside = QVBoxLayout()
        beside.addLayout(form)
        beside.addLayout(buttons)
        left = QVBoxLayout()
        left.addWidget(self.table, 1)
        left.addWidget(self.past)
        row = QHBoxLayout()
        row.addLayout(left, 3)
        row.addLayout(beside, 2)
        self.body.addLayout(row, 1)

    def _chosen(self) -> Held[Result] | None:
        rows = self.table.selectionModel().selectedRows()
        return self.results.rows[rows[0].row()] if rows else None

    def _begin(self, *_changed: object) -> None:
        """Begin with the value that stands there, and tell what was corrected of it."""
        held = self._chosen()
        if held is not None:
            self.value.setText(_shown(held.thing, self.field.currentData()))
            self.value.selectAll()
        history = None if held is None else self._known.history.get(held.thing.id)
        told = (
            []
            if history is None or held is None
            else [_told(each, held.thing) for each in history.corrections]
        )
        self.past.setText("\n".join(told[-3:]))
        self.past.setVisible(bool(told))
        self.back.setEnabled(self._holding() is not None)

    def _holding(self) -> Correction | None:
        """The correction that gives the chosen field of the chosen result its value."""
        held = self._chosen()
        history = None if held is None else self._known.history.get(held.thing.id)
        if history is None:
            return None
        own = [each for each in history.holding.values() if each.change.field == self.field.currentData()]
        return own[0] if own and own[0].before != own[0].after else None

    def _take_back(self) -> None:
        holding = self._holding()
        if holding is None:
            self.say(tr(NONE_TO_TAKE_BACK))
        elif self.signing.said():
            self.taken_back.emit(holding, *self.signing.take())

    def _correct(self) -> None:
        held, field = self._chosen(), self.field.currentData()
        if held is None or self._test is None:
            self.say(tr(CHOOSE))
            return
        if not self.signing.said():
            return
        found = entered_value(self._test, held.thing, field, plain(self.value.text()))
        if isinstance(found, Said):
            self.say(tr(found.text).format(**found.values))
            self.value.setFocus()
        elif found == value_of(held.thing, field):
            self.say(tr(SAME))
        else:
            self.corrected.emit(held, field, found, *self.signing.take())


def entered_value(test: FieldTest, result: Result, field: str, typed: str) -> Value | Said:
    """A new value as it is corrected, or what is wrong with it."""
    text = typed.strip()
    if field == "value":
        part = _part_of(result, test)
        return typed_value(test, text) if part is None else typed_part(part, text)
    if field == "side":
        sides = (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,)
        named = {tr(SIDES[side]).casefold(): side.value for side in sides}
        return named.get(text.casefold(), Said(A_SIDE))
    if field == "at":
        try:
            return on_day(result, date.fromisoformat(text))
        except (ValueError, OverflowError):
            return Said(A_DAY)
    return text or None


def _is_of(result: Result, test: FieldTest) -> bool:
    return result.test.partition(OF_LIFT)[0] in keys_of(test)


def _part_of(result: Result, test: FieldTest) -> Part | None:
    key = result.test.partition(OF_LIFT)[0]
    return next((part for part in test.parts if part.key == key), None)


def _told(correction: Correction, result: Result) -> str:
    """A correction in a line: when, what, from what to what, who and why."""
    change = correction.change
    at = change.at.astimezone(known_zone(change.zone))
    before, after = (
        _value_words(change.field, value, result) for value in (correction.before, correction.after)
    )
    return tr(ONCE).format(
        when=words.moment(at),
        what=tr(FIELDS[change.field]),
        before=before,
        after=after,
        who=change.who,
        why=change.why,
    )


def _value_words(field: str, value: Value, result: Result) -> str:
    if value is None or value == "":
        return words.DASH
    if field == "side":
        return tr(SIDES[Side(str(value))])
    if field == "at":
        return words.dated(moment_day(str(value), result.zone))
    return str(value)


def _shown(result: Result, field: str) -> str:
    if field == "at":
        return local_day(result).isoformat()
    if field == "side":
        return translated(SIDES)[result.side]
    return str(getattr(result, field) or "")


def _columns() -> tuple[Column[Held[Result]], ...]:
    return (
        Column(tr("Day"), lambda held: words.dated(local_day(held.thing)), lambda held: held.thing.at),
        Column(
            tr("Side"), lambda held: translated(SIDES)[held.thing.side], lambda held: held.thing.side.value
        ),
        Column(tr("Try"), lambda held: str(held.thing.attempt), lambda held: held.thing.attempt, right=True),
        Column(tr("What"), lambda held: what_words(held.thing), lambda held: what_words(held.thing)),
        Column(tr("Value"), _marked, lambda held: float(held.thing.value), right=True),
        Column(tr("Note"), lambda held: held.thing.note or "", lambda held: held.thing.note, wide=True),
    )


def _marked(held: Held[Result]) -> str:
    told = words.THIN.join(filter(None, (held.thing.value, unit_words(held.thing.unit))))
    return f"{MARK} {told}" if held.corrected else told
