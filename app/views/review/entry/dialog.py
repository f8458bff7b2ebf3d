"""The dialog for tests: which test, its tries, and the results that are there already."""

from datetime import date
from functools import partial

from PySide6.QtCore import QItemSelectionModel, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from app.analysis.tests_catalog import CATALOGUE, field_test
from app.analysis.tests_kinds import FieldTest
from app.views.lettering import Weight
from app.views.review.entry.correction import ResultsCard
from app.views.review.entry.form import TestForm, entry_name
from app.views.review.entry.reach import next_reach
from app.views.review.entry.results import Known
from app.views.review.figure_names import unit_words
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.card import Card
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import scrolling
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable

WIDE = 10_000
UNKEPT = message("Not kept yet: {tests}. Keep it, or close once more to leave it.")


class TestDialog(QDialog):
    """Lets tests of one athlete be entered and corrected. It keeps nothing itself.

    `entered` carries an `Entered`; `corrected` a held result, a field, its new value, who and why;
    `taken_back` a correction, who and why.
    """

    __test__ = False
    entered = Signal(object)
    corrected = Signal(object, str, object, str, str)
    taken_back = Signal(object, str, str)

    def __init__(self, look: Look, athlete: str, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._known = Known((), ())
        self._warned = False
        self.setWindowTitle(tr("Enter a test"))
        self.title = ElidedLabel(tr("Enter a test: {name}").format(name=athlete))
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("Search a test"))
        self.search.setAccessibleName(tr("Search a test"))
        self.search.setClearButtonEnabled(True)
        self.tests: RowsModel[FieldTest] = RowsModel(_columns(), look.scheme, self)
        self.test_list = RowsTable(self.tests, tr("Tests"))
        self.form = TestForm(look, athlete, today)
        self.results = ResultsCard(look)
        self._choice = Card(tr("Tests"))
        self._lay_out()
        self._connect()
        self._set_look(look)
        self._fill()
        self.search.setFocus()

    @property
    def test(self) -> FieldTest | None:
        """The test chosen."""
        row = self.test_list.currentIndex().row()
        return self.tests.rows[row] if 0 <= row < len(self.tests.rows) else None

    def show_known(self, known: Known) -> None:
        """Show what is written down of this athlete."""
        self._known = known
        self.form.show_devices(known.devices)
        self.form.show_lifts(known.lifts)
        if self.test is not None:
            self.results.show_results(self.test, known)

    def choose(self, key: str) -> None:
        """Choose a test by its key; one that the search hides is looked for among all."""
        self.search.clear()
        entered = next(test for test in ENTERED if key == test.key or _same_parts(key, test))
        self._go_to(self.tests.rows.index(entered))

    def go_on(self) -> None:
        """Make ready for what is measured next: the other side, then the next direction of a reach."""
        following = next_reach(self.test.key) if self.test is not None else None
        last_side = self.form.side.currentIndex() == self.form.side.count() - 1
        if following is not None and last_side:
            self.form.forget()
            self.choose(following)
            self.form.tries.go_to(0)
        else:
            self.form.go_on()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return closes nothing: it keeps what was typed, or goes on."""
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)

    def reject(self) -> None:
        """Close; with tries that are not kept, say so first."""
        unkept = self.form.unkept
        if unkept and not self._warned:
            self._warned = True
            self.form.say(tr(UNKEPT).format(tests=", ".join(unkept)))
            return
        super().reject()

    def _typed_on(self) -> None:
        self._warned = False

    def _step(self, by: int) -> None:
        row = self.test_list.currentIndex().row() + by
        self._go_to(min(max(row, 0), len(self.tests.rows) - 1))

    def _fill(self, _text: str = "") -> None:
        wanted = self.search.text().strip().casefold()
        self.tests.set_rows([test for test in ENTERED if wanted in entry_name(test).casefold()])
        if self.tests.rows:
            self._go_to(0)

    def _go_to(self, row: int) -> None:
        flags = QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
        self.test_list.selectionModel().setCurrentIndex(self.tests.index(row, 0), flags)

    def _show_test(self, *_changed: object) -> None:
        if self.test is not None:
            self.form.show_test(self.test)
            self.results.show_results(self.test, self._known)

    def _lay_out(self) -> None:
        self._choice.body.addWidget(self.search)
        self._choice.body.addWidget(self.test_list, 1)
        above = QHBoxLayout()
        above.addWidget(self._choice, 4)
        above.addWidget(self.form, 6)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(above, 6)
        column.addWidget(self.results, 4)
        frame = QVBoxLayout(self)
        frame.addWidget(self.title)
        self._scroll = scrolling(inside, tr("Tests and their results"))
        frame.addWidget(self._scroll, 1)

    def _connect(self) -> None:
        self.search.textChanged.connect(self._fill)
        for key, by in ((Qt.Key.Key_Up, -1), (Qt.Key.Key_Down, 1)):
            arrow = QShortcut(QKeySequence(key), self.search)
            arrow.setContext(Qt.ShortcutContext.WidgetShortcut)
            arrow.activated.connect(partial(self._step, by))
        self.search.returnPressed.connect(lambda: self.form.tries.go_to(0))
        self.test_list.selectionModel().currentRowChanged.connect(self._show_test)
        self.test_list.activated.connect(lambda: self.form.tries.go_to(0))
        self.form.tries.changed.connect(self._typed_on)
        self.form.entered.connect(self.entered)
        self.results.corrected.connect(self.corrected)
        self.results.taken_back.connect(self.taken_back)

    def _set_look(self, look: Look) -> None:
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        quieten_bars(self._scroll, look)
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.search.setFont(look.font(sizes.body))
        for card in (self._choice, self.form, self.results):
            card.set_look(look)
        self.test_list.set_look(look, dense=True)
        parent = self.parentWidget()
        room = QSize(WIDE, WIDE) if parent is None else parent.size()
        self.resize(
            min(sizes.body * 76, room.width() - sizes.body), min(sizes.body * 52, room.height() - sizes.body)
        )


def _same_parts(key: str, test: FieldTest) -> bool:
    """Whether a test is made of the same numbers as another that cannot be entered otherwise."""
    other = field_test(key)
    return other is not None and not test.direct and bool(test.parts) and other.parts == test.parts


def _entered() -> tuple[FieldTest, ...]:
    """The tests that can be entered: of those made of the same numbers and of nothing else the first."""
    parts = set()
    found = []
    for test in CATALOGUE:
        if test.direct or test.parts not in parts:
            found.append(test)
        parts.add(test.parts)
    return tuple(found)


ENTERED = _entered()


def _columns() -> tuple[Column[FieldTest], ...]:
    return (
        Column(tr("Tests"), entry_name, entry_name, wide=True),
        Column(tr("Unit"), lambda test: unit_words(test.unit), lambda test: test.unit),
    )
