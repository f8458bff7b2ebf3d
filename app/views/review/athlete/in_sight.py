"""Cards that are filled when they come into sight of a rolling area; until then they are blank."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import QEvent, QObject, QRect
from PySide6.QtWidgets import QScrollArea

from app.views.charts.data_card import DataCard

Fill = Callable[[], object]


class InSight(QObject):
    """Fills the cards of an area by what they were given last; one that is given the keys is in sight too."""

    def __init__(self, area: QScrollArea) -> None:
        super().__init__(area)
        self._area = area
        self._waiting: dict[DataCard, Fill] = {}
        area.verticalScrollBar().valueChanged.connect(self.fill)

    def begin(self, fills: Mapping[DataCard, Fill]) -> None:
        """Fill those that are in sight, and make the others blank until they are."""
        self._waiting = dict(fills)
        self.fill()
        for card in self._waiting:
            card.show_blank()

    def watch(self, card: DataCard) -> None:
        """Fill a card as soon as its chart or table has the keys."""
        for part in (card.chart, card.table):
            part.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Fill the card whose chart or table is given the keys."""
        if event.type() is QEvent.Type.FocusIn:
            for card in [each for each in self._waiting if watched in (each.chart, each.table)]:
                self._waiting.pop(card)()
        return False

    def now(self, card: DataCard, fill: Fill) -> None:
        """Fill a card by something else, in sight or not."""
        self._waiting.pop(card, None)
        fill()

    def fill(self, _rolled: int = 0) -> None:
        """Fill what is in sight by now."""
        if not self._waiting or not self._area.isVisible():
            return
        inside = self._area.widget()
        placing = None if inside is None else inside.layout()
        if placing is not None:
            placing.activate()
        for card in [each for each in self._waiting if self._sees(each)]:
            self._waiting.pop(card)()

    def fill_all(self) -> None:
        """Fill every card, in sight or not."""
        waiting, self._waiting = self._waiting, {}
        for fill in waiting.values():
            fill()

    def _sees(self, card: DataCard) -> bool:
        if card.isHidden():
            return False
        top = self._area.verticalScrollBar().value()
        seen = QRect(0, top, max(self._area.viewport().width(), 1), self._area.viewport().height())
        return seen.intersects(card.geometry())
