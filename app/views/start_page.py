"""The first page: who trains, which plan, or the review."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFileDialog, QHBoxLayout, QVBoxLayout, QWidget

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.plain import card, label, quiet_button, say, strong_button

NOBODY = "Guest"


@dataclass(frozen=True, slots=True)
class Offer:
    """A run that was cut short: what it was, and what to do with it."""

    sentence: str
    take_up: Callable[[], object]
    lay_down: Callable[[], object]


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
        self._offered: Offer | None = None
        self._offer_words = label(look, pixels=look.sizes.heading, wrap=True)
        self._offer = self._offer_card()
        self._lay_out(plans, doors)

    @property
    def athlete(self) -> str:
        """The name chosen or typed."""
        return self._who.currentText().strip() or NOBODY

    @property
    def notice(self) -> str:
        """What went wrong, in a sentence, or nothing."""
        return self._notice.text()

    def show_athletes(self, names: Sequence[str], chosen: str | None = None) -> None:
        """Offer these names, with one chosen or what was typed before."""
        named = chosen or self._who.currentText()
        self._who.clear()
        self._who.addItems([NOBODY, *names])
        self._who.setCurrentText(named)

    def offer(self, offer: Offer | None) -> None:
        """Offer a run that was cut short, or nothing."""
        self._offer.setVisible(offer is not None)
        self._offered = offer
        say(self._offer_words, "" if offer is None else offer.sentence)

    def _answer(self, *, take_up: bool) -> None:
        offer, self._offered = self._offered, None
        self._offer.hide()
        if offer is not None:
            (offer.take_up if take_up else offer.lay_down)()

    def show_notice(self, text: str) -> None:
        """Say what went wrong, in a sentence."""
        say(self._notice, text)
        self._notice.setVisible(bool(text))

    def _lay_out(self, plans: Sequence[Path], doors: Sequence[Door]) -> None:
        look = self._look
        column = QVBoxLayout(self)
        side = look.margin
        column.setContentsMargins(side, side, side, side)
        column.setSpacing(look.sizes.body)
        column.addWidget(label(look, "Pacewright", pixels=look.sizes.display, weight=Weight.SEMIBOLD))
        about = "Leads a planned session rep by rep, and records what was done."
        column.addWidget(label(look, about, pixels=look.sizes.heading, colour=look.scheme.quiet))
        column.addSpacing(look.sizes.body)
        column.addWidget(self._offer)
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

    def _offer_card(self) -> QWidget:
        look = self._look
        frame = card(look)
        row = QHBoxLayout(frame)
        edge = round(look.sizes.body * 1.2)
        row.setContentsMargins(edge, edge, edge, edge)
        row.addWidget(self._offer_words, 1)
        row.addWidget(quiet_button(look, "Lay it down", partial(self._answer, take_up=False)))
        row.addWidget(strong_button(look, "Take it up again", partial(self._answer, take_up=True)))
        frame.hide()
        return frame

    def _plan_row(self, plans: Sequence[Path]) -> QHBoxLayout:
        row = QHBoxLayout()
        for path in plans:
            name = path.stem.replace("_", " ").capitalize()
            row.addWidget(strong_button(self._look, name, partial(self._choose, path), tip=str(path)))
        row.addWidget(quiet_button(self._look, "Open a plan…", self._pick))
        row.addStretch(1)
        return row

    def _pick(self) -> None:
        name, _ = QFileDialog.getOpenFileName(self.window(), "Open a plan", "", "Plans (*.toml)")
        if name:
            self._choose(Path(name))
