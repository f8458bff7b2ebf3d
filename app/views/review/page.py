"""The page of Review: who trained, whether it was done as prescribed, and how hard it was."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent, QPalette, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from app.domain.keeping import Person
from app.domain.records import RunSummary
from app.views.lettering import Weight, desk_scale
from app.views.review import words
from app.views.review.consent import consent_line
from app.views.review.presentation import NOTICE, presented
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.elided import ElidedLabel

if TYPE_CHECKING:
    from app.views.review.content import ReviewContent

TITLE = message("Review")
ALL = message("All athletes")
READING = message("Reading the sessions …")
EMPTY = message("No session yet. One appears here as soon as an athlete has been led through a plan.")


class ReviewPage(QWidget):
    """Charts and a list of runs, of all athletes or of one.

    `ask` is called each time the page comes into sight; the answer comes through `show_summaries` or
    `show_problem`, at once or later. The charts are only loaded with the first answer that holds a run.
    `correct` is given the UUID of a run that is to be corrected, and the look; without it nothing can be.
    F8 turns presentation on and off: pain, notes and the names of others are hidden. `opened` carries a run
    that is to be seen.
    """

    opened = Signal(str)

    def __init__(
        self,
        look: Look,
        ask: Callable[[], None],
        correct: Callable[[str, Look], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._ask = ask
        self._correct = correct
        self._look = look
        self._runs: tuple[RunSummary, ...] = ()
        self._people: tuple[Person, ...] | None = None
        self._presenting = False
        self._named: str | None = None
        self._content: ReviewContent | None = None
        self.setAccessibleName(tr(TITLE))
        self.setAutoFillBackground(True)
        self.title, self.subtitle = ElidedLabel(tr(TITLE), least=12), ElidedLabel(least=50)
        self.subtitle.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.consent = ElidedLabel(least=12)
        self.consent.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.consent.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.athlete = ChoiceBox(tr("Athlete shown"), 22, look)
        self.athlete_label = QLabel(tr("Athlete"))
        self.athlete_label.setBuddy(self.athlete)
        self.athlete_label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.athlete.activated.connect(self._filter)
        self.message = QLabel(tr(READING))
        self.message.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self._faces = QStackedWidget()
        self._faces.addWidget(self.message)
        self._lay_out()
        self.set_look(look)
        application = QCoreApplication.instance()
        if application:
            application.aboutToQuit.connect(self.close_charts)

    @property
    def content(self) -> "ReviewContent | None":
        """The charts and the list; None until there has been a run to show."""
        return self._content

    @property
    def presenting(self) -> bool:
        """Whether pain, notes and the names of others are hidden."""
        return self._presenting

    def show_summaries(self, summaries: Sequence[RunSummary]) -> None:
        """Show these runs, keeping the athlete chosen where they have any."""
        self._runs = tuple(summaries)
        self._fill_filter()
        self._filter()

    def show_people(self, people: Sequence[Person]) -> None:
        """Take what is known of the athletes beside their runs."""
        self._people = tuple(people)
        self._say_consent()

    def present(self, *, on: bool) -> None:
        """Hide pain, notes and the names of all but the athlete chosen now, or show them again."""
        if on == self._presenting:
            return
        chosen: str | None = self.athlete.currentData() if on else self._named
        self._presenting, self._named = on, chosen if on else None
        if not self._runs:
            return
        self._fill_filter()
        self.choose_athlete(chosen)

    def show_problem(self, text: str) -> None:
        """Say why there is nothing to show, and what to do."""
        self.message.setText(text)
        self._faces.setCurrentWidget(self.message)

    def choose_athlete(self, name: str | None) -> None:
        """Show one athlete's runs, or everyone's; a name without runs changes nothing."""
        place = 0 if name is None else self.athlete.findData(name)
        if place >= 0:
            self.athlete.setCurrentIndex(place)
            self._filter()

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        sizes = look.sizes
        self.setPalette(palette(look.scheme))
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.subtitle.setFont(look.font(sizes.body))
        drop = self.title.fontMetrics().descent() - self.subtitle.fontMetrics().descent()
        self.subtitle.setContentsMargins(0, 0, 0, drop)
        self.athlete.set_look(look)
        self.athlete_label.setFont(look.font(sizes.body))
        self.consent.setFont(look.font(sizes.small))
        self.message.setFont(look.font(sizes.heading))
        self._header.setSpacing(sizes.body)
        self._frame.setContentsMargins(sizes.body * 2, sizes.body, sizes.body * 2, sizes.body)
        self._frame.setSpacing(sizes.body)
        if self._content:
            self._content.set_look(look)

    def close_charts(self) -> None:
        """Let go of the drawings before the program ends; another answer would make them anew."""
        content, self._content = self._content, None
        if content:
            self._faces.setCurrentWidget(self.message)
            self._faces.removeWidget(content)
            content.close_charts()
            content.deleteLater()

    def showEvent(self, event: QShowEvent) -> None:
        """Ask for the runs as they are now."""
        super().showEvent(event)
        self._ask()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """F8 turns presentation on and off."""
        if event.key() == Qt.Key.Key_F8:
            self.present(on=not self.presenting)
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Let go of the drawings."""
        self.close_charts()
        super().closeEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the letters grow with the window."""
        super().resizeEvent(event)
        sizes = desk_scale(self.width(), self._look.text)
        if sizes != self._look.sizes:
            self.set_look(replace(self._look, sizes=sizes))

    def _lay_out(self) -> None:
        self._header = QHBoxLayout()
        self._header.addWidget(self.title)
        self._header.addWidget(self.subtitle, 1, Qt.AlignmentFlag.AlignBottom)
        self._header.addWidget(self.athlete_label, 0, Qt.AlignmentFlag.AlignVCenter)
        self._header.addWidget(self.athlete)
        self._frame = QVBoxLayout(self)
        self._frame.addLayout(self._header)
        self._frame.addWidget(self.consent)
        self._frame.addWidget(self._faces, 1)

    def _fill_filter(self) -> None:
        chosen = self.athlete.currentData()
        self.athlete.clear()
        self.athlete.addItem(tr(ALL), None)
        for name in sorted({run.athlete for run in self._shown()}, key=str.casefold):
            self.athlete.addItem(name, name)
            self.athlete.setItemData(self.athlete.count() - 1, name, Qt.ItemDataRole.ToolTipRole)
        self.athlete.setCurrentIndex(max(self.athlete.findData(chosen), 0) if chosen else 0)
        self.athlete.setEnabled(bool(self._runs))

    def _filter(self) -> None:
        name: str | None = self.athlete.currentData()
        runs = tuple(run for run in self._shown() if name is None or run.athlete == name)
        self.title.say(name or tr(TITLE))
        heading = words.heading_line(runs) if runs else ""
        self.subtitle.say(f"{heading}{words.DOT}{tr(NOTICE)}" if self._presenting else heading)
        self._say_consent()
        if runs:
            content = self._loaded()
            content.present(on=self._presenting, correcting=self._correct is not None)
            content.show_runs(runs)
            self._faces.setCurrentWidget(content)
        else:
            self.show_problem(tr(EMPTY))

    def _shown(self) -> tuple[RunSummary, ...]:
        return presented(self._runs, self._named) if self._presenting else self._runs

    def _say_consent(self) -> None:
        name: str | None = self.athlete.currentData()
        told = "" if name is None or self._people is None else consent_line(self._people, name)
        self.consent.setVisible(bool(told) and not self._presenting)
        self.consent.say(told)

    def _want_correction(self, run_id: str) -> None:
        if self._correct is not None:
            self._correct(run_id, self._look)

    def _loaded(self) -> "ReviewContent":
        if self._content is None:
            from app.views.review.content import ReviewContent

            self._content = ReviewContent(self._look)
            self._content.correct_wanted.connect(self._want_correction)
            self._content.opened.connect(self.opened)
            self._faces.addWidget(self._content)
        return self._content
