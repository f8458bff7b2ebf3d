"""The card of a run that was cut short."""

from functools import partial

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from app.views.home.state import Offer
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import card, label, quiet_button, say, strong_button


class OfferCard(QWidget):
    """Offers a run that was cut short; it is not there while there is none."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._offered: Offer | None = None
        self._words = label(look, pixels=look.sizes.heading, wrap=True)
        self.take_up = strong_button(
            look, tr("Take it up again  (Enter)"), partial(self._answer, take_up=True)
        )
        frame: QFrame = card(look)
        row = QHBoxLayout(frame)
        edge = round(look.sizes.body * 0.8)
        row.setContentsMargins(edge * 2, edge, edge * 2, edge)
        row.addWidget(self._words, 1)
        row.addWidget(quiet_button(look, tr("Lay it down"), partial(self._answer, take_up=False)))
        row.addWidget(self.take_up)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(frame)
        self.hide()

    @property
    def offered(self) -> Offer | None:
        """What is offered."""
        return self._offered

    def offer(self, offer: Offer | None) -> None:
        """Offer a run, or nothing."""
        self._offered = offer
        say(self._words, "" if offer is None else offer.sentence)
        self.setVisible(offer is not None)

    def _answer(self, *, take_up: bool) -> None:
        offer, self._offered = self._offered, None
        self.hide()
        if offer is not None:
            (offer.take_up if take_up else offer.lay_down)()
