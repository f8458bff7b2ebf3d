"""The screen before a run: what is planned for whom, the cautions, and one key to begin."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from app.domain.plan import Sides
from app.domain.timeline import Timeline
from app.domain.words import prescription_text
from app.run.sounding import Making
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import card, label, say, scrolling, strong_button

CAUTIONS = (
    "This is no medical device: it does not diagnose, clear or predict injury.",
    "Pain above 5 of 10 or any red-flag sign ends the exercise and asks for a note.",
    "Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional.",
    "Your practitioner decides; local practice and law come first. Nothing advances by itself.",
)

LONG_DOSE = 60
"""Letters from which on a dose is wrapped; a shorter one keeps its line."""


class ReadyPanel(QWidget):
    """Shows the session that is about to begin."""

    def __init__(self, look: Look, timeline: Timeline, athlete: str, begin: Callable[[], object]) -> None:
        super().__init__()
        self._look, self._timeline = look, timeline
        self._notice = label(look, wrap=True, colour=look.scheme.notice)
        self._making = label(look, colour=look.scheme.quiet)
        self._making.hide()
        layout = QHBoxLayout(self)
        side = round(look.sizes.body * 3.2)
        layout.setContentsMargins(side, look.sizes.body, side, round(side * 0.5))
        layout.setSpacing(side)
        layout.addLayout(self._plan_column(athlete), 6)
        layout.addLayout(self._caution_column(begin), 5)

    def show_notice(self, notice: str | None) -> None:
        """Say what the athlete should know of the sound."""
        say(self._notice, notice or "")
        self._notice.setVisible(bool(notice))

    def show_making(self, making: Making | None) -> None:
        """Say how far speech has been made; nothing once it is."""
        say(self._making, "" if making is None else f"Voice: {making.done} of {making.of} phrases")
        self._making.setVisible(making is not None)

    def _plan_column(self, athlete: str) -> QVBoxLayout:
        look, plan = self._look, self._timeline.plan
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        title = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD, lines=2)
        title.setText(plan.title)
        column.addWidget(title)
        minutes = -(-self._timeline.timed_ms // 60_000)
        more = ", and own-pace work" if self._timeline.open_ended else ""
        about = f"For {athlete}  ·  {minutes} min{more}"
        whom = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        whom.setText(about)
        column.addWidget(whom)
        column.addSpacing(look.sizes.body)
        column.addWidget(self._exercises(), 1)
        return column

    def _exercises(self) -> QScrollArea:
        look = self._look
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(look.sizes.title)
        grid.setVerticalSpacing(round(look.sizes.body * 0.45))
        grid.setColumnStretch(0, 1)
        row = 0
        for number, stage in enumerate(self._timeline.plan.stages, 1):
            grid.setRowMinimumHeight(row, round(look.sizes.body * 0.7) if row else 0)
            named = f"{number}  {stage.name}"
            name = label(look, named, pixels=look.sizes.heading, weight=Weight.SEMIBOLD, wrap=True)
            grid.addWidget(name, row + 1, 0, 1, 2)
            row += 2
            for exercise in stage.exercises:
                each = ", each side" if exercise.sides is Sides.EACH else ""
                dose = f"{exercise.sets} × {prescription_text(exercise)}{each}"
                grid.addWidget(label(look, exercise.name, wrap=True), row, 0)
                wrap = len(dose) > LONG_DOSE
                grid.addWidget(label(look, dose, colour=look.scheme.quiet, wrap=wrap), row, 1)
                row += 1
        grid.setRowStretch(row, 1)
        inside = QWidget()
        inside.setLayout(grid)
        return scrolling(inside, "The exercises of this session")

    def _caution_column(self, begin: Callable[[], object]) -> QVBoxLayout:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.8)
        inner.setContentsMargins(edge, edge, edge, edge)
        inner.setSpacing(round(look.sizes.body * 0.9))
        inner.addWidget(label(look, "Before you begin", pixels=look.sizes.heading, weight=Weight.SEMIBOLD))
        for caution in CAUTIONS:
            inner.addWidget(label(look, caution, pixels=look.sizes.heading * 0.92, wrap=True))
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        column.addWidget(frame)
        column.addWidget(self._making)
        column.addWidget(self._notice)
        column.addStretch(1)
        column.addWidget(strong_button(look, "I am ready  (Space)", begin), 0, Qt.AlignmentFlag.AlignRight)
        return column
