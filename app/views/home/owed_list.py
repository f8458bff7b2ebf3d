"""The answers that are owed, each a card; at most one of them is open."""

from collections.abc import Callable
from datetime import date
from time import monotonic

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.domain.squad import OwedRating
from app.views.home.owed_card import OwedCard
from app.views.theme import Look


class OwedList(QWidget):
    """Asks everybody who owes an answer. Signals as those of OwedCard; an open card stays while others go."""

    answered = Signal(object)
    unasked = Signal(object)
    turned = Signal()
    """Another card is open, or none."""

    def __init__(self, look: Look, now_s: Callable[[], float] = monotonic) -> None:
        super().__init__()
        self._look, self._now_s = look, now_s
        self.cards: dict[OwedRating, OwedCard] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(round(look.sizes.body * 0.5))
        self._column.addStretch(1)

    def show_owed(self, owed: tuple[OwedRating, ...], today: date) -> None:
        """Show a card for each, in this order."""
        for gone in [each for each in self.cards if each not in owed]:
            card = self.cards.pop(gone)
            self._column.removeWidget(card)
            card.hide()
            card.deleteLater()
            self.turned.emit()
        for place, each in enumerate(owed):
            card = self.cards.get(each) or self._add(each, today)
            if self._column.indexOf(card) != place:
                self._column.removeWidget(card)
                self._column.insertWidget(place, card)

    def open_first(self) -> None:
        """Open the first card."""
        if self.cards:
            first = self._column.itemAt(0)
            card = None if first is None else first.widget()
            if isinstance(card, OwedCard):
                card.open()

    @property
    def open_card(self) -> OwedCard | None:
        """The card that is open."""
        return next((card for card in self.cards.values() if card.is_open), None)

    def _add(self, owed: OwedRating, today: date) -> OwedCard:
        card = self.cards[owed] = OwedCard(self._look, owed, today, self._now_s)
        card.answered.connect(self.answered)
        card.unasked.connect(self.unasked)
        card.opened.connect(self._close_others)
        card.closed.connect(self.turned)
        return card

    def _close_others(self, opened: OwedCard) -> None:
        for card in self.cards.values():
            if card is not opened and card.is_open:
                card.close_again()
        self.turned.emit()
