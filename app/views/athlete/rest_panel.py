"""The screen between bouts: time left, what comes next, how to set up, and the card about the last bout."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.domain.records import Fact
from app.domain.timeline import Timeline
from app.domain.units import clock_text
from app.run.intents import BeginNow, ExtendRest, Intent, Pause, RedoBout, TakeBack
from app.run.snapshot import Snapshot
from app.views.athlete.asked import asked_about
from app.views.athlete.bout_card import BoutCard
from app.views.athlete.figure import Figure, FigureView
from app.views.athlete.wording import bout_line, whole_seconds
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say

CLOCK_RATIO = 4.2
DIGITS_SHARE = 0.9
"""Height that the digits of the clock take of their font's size: they have no letters that reach below."""


class RestPanel(QWidget):
    """Shows a gap. `act` is given what is asked for, `figure_of` gives the picture of a path of the plan."""

    def __init__(
        self,
        look: Look,
        timeline: Timeline,
        act: Callable[[Intent], object],
        figure_of: Callable[[str | None], Figure | None],
    ) -> None:
        super().__init__()
        self._look, self._timeline, self._act = look, timeline, act
        self._figure_of = figure_of
        self._asked: int | None = None
        self._coming: tuple[int, int] | None = None
        self._figure = FigureView(look)
        self._clock = label(look, pixels=look.sizes.display / look.text * CLOCK_RATIO, weight=Weight.BOLD)
        self._clock.setFixedHeight(round(look.sizes.display / look.text * CLOCK_RATIO * DIGITS_SHARE))
        self._bar = TimeBar(look)
        self._next = FittedLabel(look, pixels=look.sizes.display * 0.9, weight=Weight.SEMIBOLD, lines=3)
        self._setup = FittedLabel(look, pixels=look.sizes.title * 0.85, colour=look.scheme.quiet, lines=5)
        self.card = BoutCard(look, timeline)
        self.card.rated.connect(act)
        self._lay_out()

    def show_snapshot(self, shown: Snapshot, facts: Sequence[Fact]) -> None:
        """Show a moment of a gap; `facts` are those of the run so far."""
        left, whole = shown.gap_left_ms or 0, max(shown.gap_all_ms or 1, 1)
        say(self._clock, clock_text(whole_seconds(left) * 1000))
        self._bar.show_share(left / whole)
        before = None if shown.last_bout is None else self._timeline.bouts[shown.last_bout]
        words = tr("Again: {bout}") if shown.attempt > 1 else tr("Next: {bout}")
        say(self._next, words.format(bout=bout_line(self._timeline, shown.bout, before)))
        say(self._setup, shown.exercise.setup or "")
        coming = (shown.bout.stage, shown.bout.exercise)
        if coming != self._coming:
            self._coming = coming
            self._figure.show_figure(self._figure_of(shown.exercise.picture), shown.exercise.name)
        if len(facts) != self._asked:
            self._asked = len(facts)
            records = asked_about(facts, shown.bout.index if shown.begun else None)
            self.card.setVisible(bool(records))
            self.card.show_bouts(records)

    def _lay_out(self) -> None:
        look = self._look
        left = QVBoxLayout()
        left.setSpacing(round(look.sizes.body * 0.6))
        left.addWidget(self._clock)
        left.addWidget(self._bar)
        left.addSpacing(look.sizes.title)
        left.addWidget(self._next)
        left.addWidget(self._setup)
        left.addSpacing(round(look.sizes.body * 0.4))
        left.addWidget(self._figure, 1)
        left.addStretch(0)
        left.addLayout(self._buttons())
        self.card.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        row = QHBoxLayout(self)
        side = look.margin
        row.setContentsMargins(side, look.sizes.body, side, round(side * 0.5))
        row.setSpacing(side)
        row.addLayout(left, 5)
        row.addWidget(self.card, 6)

    def _buttons(self) -> FlowLayout:
        row = FlowLayout(None, round(self._look.sizes.body * 0.5))
        intents: tuple[tuple[str, Intent, str], ...] = (
            (tr("+15 s  (T)"), ExtendRest(), tr("A longer rest")),
            (tr("Do it again  (A)"), RedoBout(), tr("Do the last bout again")),
            (tr("Begin now  (N)"), BeginNow(), tr("Go to the lead-in")),
            (tr("Take back  (Backspace)"), TakeBack(), tr("The last mark or answer")),
            (tr("Pause  (Space)"), Pause(), tr("Let the rest stand still")),
        )
        for text, intent, tip in intents:
            row.addWidget(quiet_button(self._look, text, partial(self._act, intent), tip=tip))
        return row


class TimeBar(QWidget):
    """How much of the gap is left, as a line that shortens to where lines begin."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._share = 1.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("Time left in this gap"))

    def sizeHint(self) -> QSize:
        """Give a thin line."""
        return QSize(300, max(round(self._look.sizes.body * 0.35), 4))

    def show_share(self, share: float) -> None:
        """Show the share that is left, 0 to 1; painted anew only when a pixel changes."""
        width = self.width()
        changed = round(share * width) != round(self._share * width)
        self._share = min(max(share, 0.0), 1.0)
        if changed:
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the line."""
        painter = QPainter(self)
        scheme = self._look.scheme
        painter.fillRect(self.rect(), QColor(scheme.faint))
        left = self.width() * self._share
        begin = self.width() - left if self.layoutDirection() is Qt.LayoutDirection.RightToLeft else 0.0
        painter.fillRect(QRectF(begin, 0, left, self.height()), QColor(scheme.accent))
        painter.end()
