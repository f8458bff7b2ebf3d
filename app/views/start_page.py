"""The first page: who trains, which plan, or the review."""

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFileDialog, QHBoxLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.plain import label, quiet_button, say, strong_button

NOBODY = "Guest"

Door = tuple[str, Callable[[], object]]
"""The words of a button, and what it does."""


class StartPage(QWidget):
    """Offers the plans at hand and other `doors`; `choose` is given a plan's path."""

    def __init__(
        self,
        look: Look,
        plans: Sequence[Path],
        choose: Callable[[Path], object],
        doors: Sequence[Door],
    ) -> None:
        super().__init__()
        self._look, self._choose = look, choose
        self._who = QComboBox()
        self._who.setEditable(True)
        self._who.setFont(look.font(look.sizes.heading))
        self._who.setAccessibleName("Who is training")
        self._who.addItem(NOBODY)
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self._notice.hide()
        self._lay_out(plans, doors)

    @property
    def athlete(self) -> str:
        """The name chosen or typed."""
        return self._who.currentText().strip() or NOBODY

    def show_athletes(self, names: Sequence[str]) -> None:
        """Offer these names, keeping what was typed."""
        typed = self._who.currentText()
        self._who.clear()
        self._who.addItems([NOBODY, *names])
        self._who.setCurrentText(typed)

    def show_notice(self, text: str) -> None:
        """Say what went wrong, in a sentence."""
        say(self._notice, text)
        self._notice.setVisible(bool(text))

    def _lay_out(self, plans: Sequence[Path], doors: Sequence[Door]) -> None:
        look = self._look
        column = QVBoxLayout(self)
        side = round(look.sizes.body * 3.2)
        column.setContentsMargins(side, side, side, side)
        column.setSpacing(look.sizes.body)
        column.addWidget(label(look, "Pacewright", pixels=look.sizes.display, weight=Weight.SEMIBOLD))
        about = "Leads a planned session rep by rep, and records what was done."
        column.addWidget(label(look, about, pixels=look.sizes.heading, colour=look.scheme.quiet))
        column.addSpacing(side)
        column.addWidget(label(look, "Who is training?", pixels=look.sizes.heading))
        column.addWidget(self._who, 0, Qt.AlignmentFlag.AlignLeft)
        column.addSpacing(look.sizes.title)
        column.addWidget(label(look, "Which session?", pixels=look.sizes.heading))
        column.addLayout(self._plan_row(plans))
        column.addWidget(self._notice)
        column.addStretch(1)
        for words, act in doors:
            column.addWidget(quiet_button(look, words, act), 0, Qt.AlignmentFlag.AlignLeft)
        self._who.setMinimumWidth(round(look.sizes.heading * 16))

    def _plan_row(self, plans: Sequence[Path]) -> QHBoxLayout:
        row = QHBoxLayout()
        for path in plans:
            name = path.stem.replace("_", " ").capitalize()
            row.addWidget(strong_button(self._look, name, partial(self._choose, path), tip=str(path)))
        row.addWidget(quiet_button(self._look, "Open a plan…", self._pick))
        row.addStretch(1)
        return row

    def _pick(self) -> None:
        name, _ = QFileDialog.getOpenFileName(self, "Open a plan", "", "Plans (*.toml)")
        if name:
            self._choose(Path(name))
