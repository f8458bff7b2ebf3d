"""The dialog for planned sessions: the month, the sessions of a day, and what is done with them."""

from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path

from PySide6.QtCore import QDate, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QDialog,
    QFileDialog,
    QFormLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.domain.errors import PacewrightError
from app.domain.planned import MOST_YEARS, DueSession
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.figure_words import month_words, weekday_names
from app.views.review.planning.book import NewSession, Shown
from app.views.review.planning.grid import MonthGrid
from app.views.review.planning.month import NO_TIME, clock_of, session_words
from app.views.review.typed import LONGEST, plain
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.bars import quieten_bars
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.outlines import outline_fields
from app.views.widgets.plain import scrolling, strong_button
from app.views.widgets.word_button import WordButton

WIDE = 10_000
DAYS_A_ROW = 4
ANOTHER, BY_TITLE = "another file", "by title"
"""In the place of a file: one is to be chosen; a plan that was carried out and is known by its title."""
WEEKS_OFFERED = 11
"""A weekly session is offered for so many weeks more."""
LEGEND = message("● done · ▲ missed · ◇ excused · ○ to come · Page Up and Page Down change the month")
NO_REASON = message("Say why it is excused: the reason stands beside the session.")
NOTHING_CHOSEN = message("Choose a session of this day first.")
NOBODY = message("Tick at least one athlete.")
NO_PLAN = message("Choose a plan first.")
UNTIL = message("The last day of a weekly session lies after its first, by ten years at most.")
Titled = Callable[[Path], str]


class PlanDialog(QDialog):
    """Lets sessions of an athlete be planned. It writes nothing itself.

    `went` asks for the days in sight; `planned` carries a `NewSession`; `excused` a session and a reason,
    `due_again` and `ended` a session, `moved` a session and a day; `exported` wants a calendar file.
    """

    went = Signal()
    planned = Signal(object)
    excused = Signal(object, str)
    due_again = Signal(object)
    moved = Signal(object, object)
    ended = Signal(object)
    exported = Signal()

    def __init__(
        self,
        look: Look,
        athlete: str,
        today: date,
        plans: Sequence[Path],
        title_of: Titled,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.athlete, self._today, self._title_of = athlete, today, title_of
        self._due: tuple[DueSession, ...] = ()
        self.setWindowTitle(tr("Plan sessions"))
        self.title = ElidedLabel(tr("Plan sessions: {name}").format(name=athlete))
        self.grid = MonthGrid(look, today)
        self.sessions, self.people = QListWidget(), QListWidget()
        self.reason, self.clock = QLineEdit(), QLineEdit()
        self.to_day, self.until = (_day_edit(today) for _ in range(2))
        self.weekly = QCheckBox(tr("Every week until"))
        self.plan, self.message = ChoiceBox(tr("Plan"), 24, look), QLabel(tr(LEGEND))
        self._weekdays = [QCheckBox(name) for name in weekday_names()]
        for path in plans:
            self.offer_plan(path)
        self.plan.addItem(tr("Another file …"), ANOTHER)
        told = (
            (tr("Excuse"), self._excuse),
            (tr("Make due"), self._make_due),
            (tr("Move"), self._move),
            (tr("End from here"), self._end),
        )
        self.acts = [self._act(words_, act) for words_, act in told]
        self.everybody = self._act(tr("Tick everybody"), self._tick_everybody)
        self.export = self._act(tr("Calendar file …"), self.exported.emit)
        self.keep = strong_button(look, tr("Plan it"), self._plan)
        self._lay_out()
        self.grid.went.connect(self.go_to)
        self.plan.activated.connect(self._choose_file)
        self._set_look(look)
        self.show_days(Shown((), (athlete,)))
        self.grid.setFocus()

    def show_days(self, shown: Shown) -> None:
        """Show the sessions of the days in sight; who is ticked stays ticked."""
        self._due = shown.due
        self.grid.show_month(self.grid.day, shown.due, self._today)
        self._offer_recent(shown.recent)
        ticked = self.ticked or (self.athlete,)
        self.people.clear()
        for name in dict.fromkeys((self.athlete, *shown.people)):
            item = QListWidgetItem(name, self.people)
            item.setCheckState(Qt.CheckState.Checked if name in ticked else Qt.CheckState.Unchecked)
        self._show_day()

    def go_to(self, day: date) -> None:
        """Mean another day; of another month its days are asked for."""
        other = (day.year, day.month) != (self.grid.day.year, self.grid.day.month)
        self.grid.day = day
        self._show_day()
        if other:
            self.grid.show_month(day, self._due, self._today)
            self.went.emit()

    @property
    def ticked(self) -> tuple[str, ...]:
        """Who is to have the session."""
        items = (self.people.item(row) for row in range(self.people.count()))
        return tuple(item.text() for item in items if item.checkState() is Qt.CheckState.Checked)

    def offer_plan(self, path: Path) -> bool:
        """Put a plan on offer and choose it; one that cannot be read is told of, and left out."""
        try:
            self.plan.insertItem(0, self._title_of(path), str(path))
        except PacewrightError as error:
            self.say(str(error))
            return False
        self.plan.setCurrentIndex(0)
        return True

    def _offer_recent(self, titles: Sequence[str]) -> None:
        """Put plans on offer that were carried out lately and are not there by their file."""
        there = {self.plan.itemText(place) for place in range(self.plan.count())}
        before = self.plan.count() - 1
        for title in titles:
            if title not in there:
                self.plan.insertItem(self.plan.count() - 1, title, BY_TITLE)
        if not before and self.plan.count() > 1:
            self.plan.setCurrentIndex(0)

    def say(self, sentence: str) -> None:
        """Say what came of it, or what stands in its way."""
        self.message.setText(sentence)

    def _show_day(self) -> None:
        day = self.grid.day
        self._month.heading.say(month_words(day))
        self._day.heading.say(words.dated(day))
        self.sessions.clear()
        for due in self._due:
            if due.occurrence.day == day:
                item = QListWidgetItem(session_words(due), self.sessions)
                item.setData(Qt.ItemDataRole.UserRole, self._due.index(due))
        self.sessions.setCurrentRow(0)
        here = QDate(day.year, day.month, day.day)
        self.to_day.setDate(here)
        self.until.setDate(here.addDays(WEEKS_OFFERED * 7))

    def _tick_everybody(self) -> None:
        for row in range(self.people.count()):
            self.people.item(row).setCheckState(Qt.CheckState.Checked)

    def _chosen(self) -> DueSession | None:
        item = self.sessions.currentItem() if self.sessions.count() else None
        if item is None:
            self.say(tr(NOTHING_CHOSEN))
            return None
        place: int = item.data(Qt.ItemDataRole.UserRole)
        return self._due[place]

    def _excuse(self) -> None:
        due, reason = self._chosen(), plain(self.reason.text())
        if due is not None and not reason:
            self.say(tr(NO_REASON))
            self.reason.setFocus()
        elif due is not None:
            self.excused.emit(due, reason)
            self.reason.clear()

    def _make_due(self) -> None:
        due = self._chosen()
        if due is not None:
            self.due_again.emit(due)

    def _move(self) -> None:
        due = self._chosen()
        if due is not None:
            self.moved.emit(due, _date(self.to_day))

    def _end(self) -> None:
        due = self._chosen()
        if due is not None:
            self.ended.emit(due)

    def _choose_file(self, _place: int) -> None:
        if self.plan.currentData() == ANOTHER:
            name, _ = QFileDialog.getOpenFileName(self, tr("Open a plan"), "", tr("Plans (*.toml)"))
            if not name or not self.offer_plan(Path(name)):
                self.plan.setCurrentIndex(0)

    def _plan(self) -> None:
        chosen, day = self.plan.currentData(), self.grid.day
        until = _date(self.until) if self.weekly.isChecked() else None
        try:
            clock = clock_of(self.clock.text())
        except ValueError:
            self.say(tr(NO_TIME).format(typed=self.clock.text().strip()))
            self.clock.setFocus()
            return
        problem = ""
        if chosen == ANOTHER:
            problem = NO_PLAN
        elif not self.ticked:
            problem = NOBODY
        elif until is not None and not 0 < (until - day).days <= MOST_YEARS * 365:
            problem = UNTIL
        if problem:
            self.say(tr(problem))
        else:
            title = self.plan.currentText()
            path = None if chosen == BY_TITLE else chosen
            also = tuple(number for number, box in enumerate(self._weekdays) if box.isChecked())
            self.planned.emit(NewSession(self.ticked, title, path, day, clock, until, also))

    def _act(self, told: str, act: Callable[[], object]) -> WordButton:
        button = WordButton(told)
        button.setAutoDefault(False)
        button.clicked.connect(lambda _checked=False: act())
        return button

    def _lay_out(self) -> None:
        self._month, self._day = Card(""), Card("")
        self._new = Card(tr("Plan a session on this day"))
        self._month.body.addWidget(self.grid, 1)
        self._month.header.addWidget(self.export)
        self._new.header.addWidget(self.everybody)
        self.sessions.setAccessibleName(tr("Sessions of this day"))
        self.people.setAccessibleName(tr("For whom"))
        self._day.body.addWidget(self.sessions, 1)
        row = QHBoxLayout()
        for act in self.acts:
            row.addWidget(act)
        self._captions: list[QLabel] = []
        self._day.body.addLayout(self._form(((tr("Reason"), self.reason), (tr("Move to"), self.to_day))))
        self._day.body.addLayout(row)
        new = self._form(((tr("Plan"), self.plan), (tr("Time, if any"), self.clock)))
        new.addRow(self.weekly, self.until)
        also = QLabel(tr("Also on"))
        self._captions.append(also)
        new.addRow(also, self._days_of_the_week())
        self.until.setAccessibleName(tr("Every week until"))
        self._new.body.addLayout(new)
        self._new.body.addWidget(self.people, 1)
        self._new.body.addWidget(self.keep, 0, Qt.AlignmentFlag.AlignRight)
        beside = QVBoxLayout()
        beside.addWidget(self._day, 1)
        beside.addWidget(self._new, 1)
        inside = QWidget()
        above = QHBoxLayout(inside)
        above.setContentsMargins(0, 0, 0, 0)
        above.addWidget(self._month, 6)
        above.addLayout(beside, 4)
        self._scroll = scrolling(inside, tr("Month and day"), sideways=True)
        frame = QVBoxLayout(self)
        frame.addWidget(self.title)
        frame.addWidget(self._scroll, 1)
        frame.addWidget(self.message)

    def _days_of_the_week(self) -> QWidget:
        """Seven ticks, of use where a session comes weekly."""
        holder = QWidget()
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        for number, box in enumerate(self._weekdays):
            box.setAccessibleName(tr("Also on {day}").format(day=box.text()))
            grid.addWidget(box, number // DAYS_A_ROW, number % DAYS_A_ROW)
        self.weekly.toggled.connect(holder.setEnabled)
        holder.setEnabled(False)
        return holder

    def _form(self, told: Sequence[tuple[str, QWidget]]) -> QFormLayout:
        form = QFormLayout()
        for text, entry in told:
            caption = QLabel(text)
            caption.setBuddy(entry)
            entry.setAccessibleName(text)
            self._captions.append(caption)
            form.addRow(caption, entry)
        return form

    def _set_look(self, look: Look) -> None:
        self.setPalette(palette(look.scheme))
        outline_fields(self, look.scheme)
        quieten_bars(self._scroll, look)
        for listed in (self.sessions, self.people):
            quieten_bars(listed, look)
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        for card in (self._month, self._day, self._new):
            card.set_look(look)
        entries = (self.reason, self.clock, self.to_day, self.until, self.weekly, self.sessions, self.people)
        for part in (*entries, *self._captions, *self._weekdays):
            part.setFont(look.font(sizes.body))
        self.reason.setMaxLength(LONGEST)
        self.message.setFont(look.font(sizes.body))
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self.plan.set_look(look)
        for act in (*self.acts, self.export, self.everybody):
            act.set_look(look)
        parent = self.parentWidget()
        room = QSize(WIDE, WIDE) if parent is None else parent.size()
        self.resize(
            min(sizes.body * 84, room.width() - sizes.body), min(sizes.body * 50, room.height() - sizes.body)
        )


def _day_edit(day: date) -> QDateEdit:
    edit = QDateEdit(QDate(day.year, day.month, day.day))
    edit.setDisplayFormat("yyyy-MM-dd")
    edit.setCalendarPopup(True)
    return edit


def _date(edit: QDateEdit) -> date:
    found = edit.date()
    return date(found.year(), found.month(), found.day())
