"""The working screen: headline, moving profile, one coaching cue, what comes next."""

from collections.abc import Callable

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QStackedLayout, QVBoxLayout, QWidget

from app.domain.profile import profile_of
from app.run.intents import CountRep, Intent
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.athlete.headline import HeadlineView
from app.views.athlete.wording import headline, next_line
from app.views.athlete.work_buttons import WorkButtons
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import say
from app.views.widgets.profile import ProfileView

TWO_LINES = 2.6
"""Height of two lines of running text over the size of its letters: a long cue takes them."""
CUE_SHARE, NEXT_SHARE = 3, 2
"""Parts of the width: the coaching cue goes before what comes next."""


class WorkPanel(QWidget):
    """Shows lead-in and work of one bout; `act` is given what is asked for by its buttons."""

    def __init__(self, look: Look, act: Callable[[Intent], object]) -> None:
        super().__init__()
        self._buttons = WorkButtons(look, act)
        self._look = look
        self._entered: tuple[int, int, int] | None = None
        self._headline = HeadlineView(look)
        self._profile = ProfileView(look)
        self._count = CountBar(look)
        self._count.touched.connect(lambda: act(CountRep()))
        self._shape = QStackedLayout()
        self._shape.addWidget(self._profile)
        self._shape.addWidget(self._count)
        self._cue = FittedLabel(look, pixels=look.sizes.title * 0.9, weight=Weight.SEMIBOLD)
        self._cue.setObjectName("coaching_cue")
        self._cue.setMinimumHeight(round(look.sizes.body * TWO_LINES))
        self._next = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet, lines=2)
        self._next.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self._headline)
        layout.addLayout(self._shape, 1)
        layout.addWidget(self._foot())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let the headline grow and shrink with the window."""
        super().resizeEvent(event)
        self._headline.fit_window()

    def show_snapshot(self, shown: Snapshot) -> None:
        """Show a moment of the run."""
        entered = (shown.bout.index, shown.attempt, shown.work_from_ms)
        if entered != self._entered:
            self._enter(shown)
            self._entered = entered
        self._buttons.show_snapshot(shown)
        self._headline.show_headline(headline(shown, self._look.scheme))
        if shown.bout.open_ended:
            contacts = shown.stage.contacts_per_rep(shown.exercise)
            self._count.show_count(shown.passed, shown.bout.low, shown.reps, contacts)
        else:
            self._profile.show_moment(shown.local_ms)
        say(self._cue, self._cue_text(shown))

    def _enter(self, shown: Snapshot) -> None:
        self._shape.setCurrentWidget(self._count if shown.bout.open_ended else self._profile)
        self._profile.show_bout(profile_of(shown.bout, shown.exercise), shown.work_from_ms)
        say(self._next, next_line(shown))

    def _cue_text(self, shown: Snapshot) -> str:
        if shown.missed:
            return tr("This rep is marked as not done")
        if shown.marked:
            marked = ", ".join(fault or tr("a fault") for fault in shown.marked)
            return tr("Marked: {faults}").format(faults=marked)
        if shown.doing is not Doing.WORK:
            return shown.exercise.setup or shown.cue or ""
        if shown.bout.open_ended and not shown.cue:
            return tr("Press Enter for each rep")
        return shown.cue or ""

    def _foot(self) -> QFrame:
        foot = QFrame()
        foot.setStyleSheet(f"QFrame {{ background: {self._look.scheme.panel}; }}")
        column = QVBoxLayout(foot)
        side = self._look.margin
        column.setContentsMargins(side, round(side * 0.3), side, round(side * 0.15))
        column.setSpacing(0)
        row = QHBoxLayout()
        column.addLayout(row)
        column.addWidget(self._buttons)
        row.addWidget(self._cue, CUE_SHARE)
        row.addSpacing(self._look.sizes.body)
        row.addWidget(self._next, NEXT_SHARE)
        return foot


LINE = 2.0
"""Height of a line of words beside the bar over the size of its letters."""


class CountBar(QWidget):
    """Reps at the athlete's own pace: a block for each, filled as counted; a mark where it is enough.

    It fills from where lines begin; a touch or a click counts one more. Above it stand the contacts so far,
    where reps have contacts.
    """

    touched = Signal()

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._shown = (0, 0, 0, 0)
        self.setAccessibleName(tr("Reps counted"))

    def show_count(self, passed: int, low: int, high: int, contacts: int = 0) -> None:
        """Show how many of how many are counted, each with so many contacts."""
        if (passed, low, high, contacts) == self._shown:
            return
        self._shown = (passed, low, high, contacts)
        counted = tr("{n} of {m}").format(n=passed, m=high)
        self.setAccessibleDescription(f"{counted}, {self._contacts()}" if contacts else counted)
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Count one more."""
        event.accept()
        self.touched.emit()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the blocks."""
        passed, low, high, contacts = self._shown
        painter = QPainter(self)
        scheme = self._look.scheme
        painter.fillRect(self.rect(), QColor(scheme.ground))
        if high:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            left, step = self.width() * 0.0375, self.width() * 0.925 / high
            top, height = self.height() * 0.34, self.height() * 0.26
            for index in range(high):
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(scheme.ink if index < passed else scheme.unfilled))
                block = QRectF(left + index * step, top, step * 0.82, height)
                painter.drawRoundedRect(self._mirrored(block), 8, 8)
            if low < high:
                self._paint_words(painter, tr("enough from here"), left + low * step, top + height)
            if contacts:
                lines = self._look.sizes.heading * LINE
                self._paint_words(painter, self._contacts(), left, top - lines, begins=True)
        painter.end()

    def _contacts(self) -> str:
        passed, _, high, contacts = self._shown
        words = tr("contacts: {done} of {asked}")
        return words.format(done=passed * contacts, asked=high * contacts)

    def _paint_words(self, painter: QPainter, text: str, x: float, y: float, *, begins: bool = False) -> None:
        """Paint words that end at a place, or begin there."""
        font = self._look.font(self._look.sizes.heading)
        painter.setFont(font)
        painter.setPen(QColor(self._look.scheme.quiet))
        width = QFontMetricsF(font).horizontalAdvance(text)
        left = x if begins else max(x - width, 0.0)
        place = self._mirrored(QRectF(left, y, width, self._look.sizes.heading * LINE))
        painter.drawText(place, Qt.AlignmentFlag.AlignCenter, text)

    def _mirrored(self, place: QRectF) -> QRectF:
        """The same place counted from the right where lines run from there."""
        if self.layoutDirection() is Qt.LayoutDirection.LeftToRight:
            return place
        return QRectF(self.width() - place.right(), place.y(), place.width(), place.height())
