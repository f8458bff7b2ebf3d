"""The exercises of a session in their order: how much of each, how to set it up, and its picture."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from app.domain.plan import Exercise, Plan, Sides
from app.views.athlete.figure import Figure, FigureView
from app.views.borrowed import dose_words
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label

LONG_DOSE = 60
"""Letters from which on a dose is wrapped; a shorter one keeps its line."""
FIGURE_LINES = (6.0, 4.2)
"""Width and height of a picture in lines of running text."""

ALL_THE_REST = 1_000_000
"""The room below the last exercise, against what a picture takes beside short words."""


class SetUpList(QWidget):
    """Every stage with its exercises; `figure_of` gives the picture of a path of the plan, or None."""

    def __init__(self, look: Look, plan: Plan, figure_of: Callable[[str | None], Figure | None]) -> None:
        super().__init__()
        self._look, self._figure_of = look, figure_of
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(look.sizes.body)
        self._grid.setVerticalSpacing(0)
        self._grid.setColumnMinimumWidth(3, round(look.sizes.body * 0.3))
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(1, 1)
        row = 0
        gap = round(look.sizes.body * 0.3)
        for number, stage in enumerate(plan.stages, 1):
            named = tr("{n}  {stage}").format(n=number, stage=stage.name)
            heading = label(look, named, pixels=look.sizes.heading, weight=Weight.SEMIBOLD, wrap=True)
            self._grid.setRowMinimumHeight(row, round(look.sizes.body * 0.6) if row else 0)
            heading.setContentsMargins(0, 0, 0, gap)
            self._grid.addWidget(heading, row + 1, 0, 1, 3)
            row += 2
            for exercise in stage.exercises:
                self._add(exercise, row)
                row += 3
        self._grid.setRowStretch(row, ALL_THE_REST)

    def _add(self, exercise: Exercise, row: int) -> None:
        look, dose = self._look, _dose(exercise)
        name = label(look, exercise.name, weight=Weight.SEMIBOLD, wrap=True)
        amount = label(look, dose, wrap=len(dose) > LONG_DOSE)
        self._grid.addWidget(name, row, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(amount, row, 1, Qt.AlignmentFlag.AlignTop)
        if exercise.setup:
            words = label(look, exercise.setup, colour=look.scheme.quiet, wrap=True)
            self._grid.addWidget(words, row + 1, 0, 1, 2, Qt.AlignmentFlag.AlignTop)
        figure = self._figure_of(exercise.picture)
        if figure is not None:
            view = FigureView(look)
            width, height = (round(look.sizes.body / look.text * lines) for lines in FIGURE_LINES)
            view.setFixedSize(width, height)
            self._grid.addWidget(view, row, 2, 3, 1, Qt.AlignmentFlag.AlignTop)
            view.show_figure(figure, exercise.name)
        self._grid.setRowMinimumHeight(row + 2, round(look.sizes.body * 0.5))
        self._grid.setRowStretch(row + 2, 1)


def _dose(exercise: Exercise) -> str:
    each = tr("{sets} × {dose}, each side") if exercise.sides is Sides.EACH else tr("{sets} × {dose}")
    return each.format(sets=exercise.sets, dose=dose_words(exercise))
