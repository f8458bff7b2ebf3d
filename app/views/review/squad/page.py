"""The squad's page: everybody in a table, those who need a look first at the top."""

from collections.abc import Sequence

from PySide6.QtCore import QItemSelectionModel, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QPalette, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QStackedWidget, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.review import words
from app.views.review.presentation import NOTICE
from app.views.review.squad.columns import WHY_FIRST, first_reason
from app.views.review.squad.filtering import SHOWN_WORDS, WITHOUT_PAIN, Shown, fits
from app.views.review.squad.line import SquadLine, figures_of, presented
from app.views.review.squad.table import SquadModel, SquadTable
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.word_button import WordButton

TITLE = message("Squad")
EMPTY = message("No session yet. One appears here as soon as an athlete has been led through a plan.")
NOBODY = message("Nobody fits these letters. Esc shows everybody again.")
READING = message("Reading the sessions …")
ASIDE = message("sessions, reps, tempo: this week · last week")
NONE_SUCH = message("Nobody is like that just now. Choose everybody to see all.")
SEARCH = message("/ to search")


class SquadPage(QWidget):
    """Everybody, or those chosen. `opened` carries a name, `why` a name and the figures of a line.

    `sessions` asks for the list of all runs, `plan` to plan sessions, first for the athlete of the line
    chosen. Return opens an athlete, W asks why, / searches, Esc ends it.
    """

    opened = Signal(str)
    why = Signal(str, object)
    sessions = Signal()
    plan = Signal(str)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._lines: tuple[SquadLine, ...] = ()
        self._known = self._presenting = False
        self.setAccessibleName(tr(TITLE))
        self.title, self.subtitle = ElidedLabel(tr(TITLE)), ElidedLabel(least=8)
        self.subtitle.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr(SEARCH))
        self.search.setAccessibleName(tr("Search the squad"))
        self.search.setClearButtonEnabled(True)
        self.shown = ChoiceBox(tr("Who is shown"), 12, look)
        self.why_first = WordButton(tr("Why? (W)"))
        self.all_sessions, self.planning = WordButton(tr("All sessions")), WordButton(tr("Plan sessions"))
        self._may_plan = False
        self.planning.hide()
        self.model = SquadModel(self)
        self.table = SquadTable(self.model)
        self.table.sort_by(WHY_FIRST, Qt.SortOrder.AscendingOrder)
        self.card = Card(tr("Who needs me first"), tr(ASIDE))
        self._offer(tuple(Shown))
        self.message = QLabel(tr(READING))
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self.message.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._faces = QStackedWidget()
        self._lay_out()
        self._connect()
        self.set_look(look)

    @property
    def lines(self) -> tuple[SquadLine, ...]:
        """The lines as they stand in the table."""
        return self.model.rows

    def show_lines(self, lines: Sequence[SquadLine]) -> None:
        """Show these lines, the first on top; who was chosen stays chosen, and the search stays."""
        self._lines, self._known = tuple(lines), True
        self._fill()

    def offer_planning(self) -> None:
        """Let sessions be planned from here, though not while others look on."""
        self._may_plan = True
        self.planning.setVisible(not self._presenting)

    def present(self, *, on: bool) -> None:
        """Hide pain, reasons and names, or show them again."""
        self._presenting = on
        self.planning.setVisible(self._may_plan and not on)
        self.model.present(on=on)
        self._offer(WITHOUT_PAIN if on else tuple(Shown))
        self._fill()

    def show_problem(self, text: str) -> None:
        """Say why there is nothing to show, and what to do."""
        self.message.setText(text)
        self._faces.setCurrentWidget(self.message)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.subtitle.setFont(look.font(sizes.body))
        drop = self.title.fontMetrics().descent() - self.subtitle.fontMetrics().descent()
        self.subtitle.setContentsMargins(0, 0, 0, drop)
        self.search.setFont(look.font(sizes.body))
        self.search.setMaximumWidth(sizes.body * 15)
        self.search.setMinimumWidth(sizes.body * 7)
        self.search.setStyleSheet(
            f"QLineEdit {{ background: {look.scheme.panel}; color: {look.scheme.ink};"
            f" border: 1px solid {look.scheme.quiet}; border-radius: 6px; padding: 3px 8px; }}"
            f"QLineEdit:focus {{ border-color: {look.scheme.accent}; }}"
        )
        for door in (self.all_sessions, self.planning, self.why_first):
            door.set_look(look)
        self.shown.set_look(look)
        self.message.setFont(look.font(sizes.heading))
        self.card.set_look(look)
        self.table.set_look(look)
        self._header.setSpacing(sizes.body)
        self._frame.setContentsMargins(sizes.body * 2, 0, sizes.body * 2, sizes.body)
        self._frame.setSpacing(sizes.body)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc ends a search; anything else goes on to whoever holds the page."""
        if event.key() == Qt.Key.Key_Escape and self.search.text():
            self.search.clear()
            self.table.setFocus()
        else:
            super().keyPressEvent(event)

    def _lay_out(self) -> None:
        self._header = QHBoxLayout()
        self._header.addWidget(self.title)
        self._header.addWidget(self.subtitle, 1, Qt.AlignmentFlag.AlignBottom)
        self._header.addWidget(self.planning)
        self._header.addWidget(self.all_sessions)
        self._header.addWidget(self.search)
        for part in (self.shown, self.why_first):
            self.card.header.addWidget(part)
        self.card.body.addWidget(self.table, 1)
        for face in (self.message, self.card):
            self._faces.addWidget(face)
        self._frame = QVBoxLayout(self)
        self._frame.addLayout(self._header)
        self._frame.addWidget(self._faces, 1)
        self.setFocusProxy(self.table)

    def _connect(self) -> None:
        self.table.activated.connect(self._open)
        self.search.textChanged.connect(self._fill)
        self.search.returnPressed.connect(self.table.setFocus)
        self.all_sessions.clicked.connect(self.sessions)
        self.planning.clicked.connect(self._want_plan)
        self.why_first.clicked.connect(self._want_why)
        self.shown.activated.connect(self._fill)
        for keys, act in (("/", self._begin_search), ("W", self._want_why)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def _offer(self, choices: Sequence[Shown]) -> None:
        """Let these be chosen; a choice that is no longer offered gives way to everybody."""
        chosen = self.shown.currentData()
        self.shown.clear()
        for choice in choices:
            self.shown.addItem(tr(SHOWN_WORDS[choice]), choice)
        self.shown.setCurrentIndex(choices.index(chosen) if chosen in choices else 0)

    def _begin_search(self) -> None:
        self.search.setFocus()
        self.search.selectAll()

    def _fill(self, *_changed: object) -> None:
        chosen = self._chosen()
        shown = presented(self._lines) if self._presenting else self._lines
        wanted = self.search.text().strip().casefold()
        found = [line for line in shown if self._fits(line, wanted)]
        self.model.set_rows(found)
        self._say()
        if not self._known:
            return
        if not found:
            self._show_nobody()
            return
        self.card.set_aside(tr(ASIDE))
        self._faces.setCurrentWidget(self.card)
        names = [line.athlete for line in self.model.rows]
        row = names.index(chosen) if chosen in names else 0
        flags = QItemSelectionModel.SelectionFlag.ClearAndSelect | QItemSelectionModel.SelectionFlag.Rows
        self.table.selectionModel().setCurrentIndex(self.model.index(row, 0), flags)

    def _show_nobody(self) -> None:
        """Say that there is nobody; a choice that left nobody stays in sight, so that it can be changed."""
        chosen = bool(self._lines) and self.shown.currentData() is not Shown.EVERYBODY
        if chosen:
            self.card.set_aside(tr(NONE_SUCH))
            self._faces.setCurrentWidget(self.card)
        else:
            self.show_problem(tr(NOBODY) if self._lines else tr(EMPTY))

    def _fits(self, line: SquadLine, wanted: str) -> bool:
        told = line.called if self._presenting else f"{line.called} {first_reason(line)}"
        return wanted in told.casefold() and fits(line, self.shown.currentData())

    def _say(self) -> None:
        if not self._lines:
            self.subtitle.say("")
            return
        today = self._lines[0].record.today
        week = tr("week {n}").format(n=today.isocalendar().week)
        parts = [tr("%n athlete(s)", "", len(self._lines)), week]
        parts += [tr(NOTICE)] if self._presenting else [tr("who needs me first")]
        self.subtitle.say(words.DOT.join(parts))

    def _chosen(self) -> str | None:
        row = self.table.currentIndex().row()
        return self.model.rows[row].athlete if 0 <= row < len(self.model.rows) else None

    def _open(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.opened.emit(chosen)

    def _want_plan(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.plan.emit(chosen)

    def _want_why(self) -> None:
        row = self.table.currentIndex().row()
        if 0 <= row < len(self.model.rows):
            line = self.model.rows[row]
            self.why.emit(line.called, figures_of(line))
