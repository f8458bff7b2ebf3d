"""The quiet top of the athlete's screen: exercise, set, the ladder, time left."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from app.run.snapshot import Snapshot
from app.run.state import Doing, Stand
from app.views.athlete.wording import GAP_WORDS, last_bout_title, set_line, time_left
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.ladder import Ladder
from app.views.widgets.plain import label, say

LARGE = 1.1
"""With letters so many times larger than usual, the words stand one below the other."""
MOST_FOR_STAGE = 0.25
"""The name of the stage takes no more of the width than this."""


class Header(QWidget):
    """Says where in the session the athlete is."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._title = FittedLabel(look, pixels=look.sizes.title * 1.25, weight=Weight.SEMIBOLD)
        self._line = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self._ladder = Ladder(look)
        self._stage = ElidedLabel()
        self._stage.setFont(look.font(look.sizes.heading))
        self._stage.setStyleSheet(f"color: {look.scheme.ink}")
        self._sound = label(look, pixels=look.sizes.heading, colour=look.scheme.notice)
        self._left = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        below = QHBoxLayout()
        below.addWidget(self._stage)
        below.addSpacing(look.sizes.title)
        below.addStretch(1)
        below.addWidget(self._sound)
        below.addSpacing(look.sizes.body)
        below.addWidget(self._left)
        layout = self._in_rows(below) if look.text > LARGE else self._in_columns(look, below)
        side = look.margin
        layout.setContentsMargins(side, round(side * 0.75), side, 0)
        self.setLayout(layout)

    def _in_columns(self, look: Look, below: QHBoxLayout) -> QBoxLayout:
        words, place = QVBoxLayout(), QVBoxLayout()
        words.addWidget(self._title)
        words.addWidget(self._line)
        place.addWidget(self._ladder, 0, Qt.AlignmentFlag.AlignRight)
        place.addLayout(below)
        columns = QHBoxLayout()
        columns.addLayout(words, 1)
        columns.addSpacing(look.sizes.title)
        columns.addLayout(place)
        return columns

    def _in_rows(self, below: QHBoxLayout) -> QBoxLayout:
        top, rows = QHBoxLayout(), QVBoxLayout()
        top.addWidget(self._title, 1)
        top.addWidget(self._ladder)
        rows.addLayout(top)
        rows.addWidget(self._line)
        rows.addLayout(below)
        rows.setSpacing(0)
        return rows

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave most of the width to the exercise."""
        super().resizeEvent(event)
        self._stage.setMaximumWidth(round(self.width() * MOST_FOR_STAGE))

    def show_sound(self, words: str) -> None:
        """Say in a few words how loud it is, or nothing."""
        say(self._sound, words)

    def show_snapshot(self, shown: Snapshot) -> None:
        """Show where the run stands."""
        title, line = _words(shown)
        say(self._title, title)
        say(self._line, line)
        say(self._stage, shown.stage.name)
        say(self._left, time_left(shown))
        names = tuple(stage.name for stage in shown.timeline.plan.stages)
        self._ladder.show_stages(names, shown.rungs)


def _words(shown: Snapshot) -> tuple[str, str]:
    resting = shown.doing is Doing.GAP and shown.stand is Stand.RUNNING
    if resting and shown.gap_kind is not None and shown.last_bout is not None:
        last = shown.timeline.bouts[shown.last_bout]
        after = tr("after {bout}").format(bout=last_bout_title(shown.timeline, last))
        return tr(GAP_WORDS[shown.gap_kind]), after
    return shown.exercise.name, set_line(shown)
