"""Words in a place of a given height: as large as there is room for, never larger than their place."""

from collections.abc import Iterator

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy

from app.views.lettering import Weight
from app.views.theme import Look
from app.views.widgets.lines import paint_words

SMALLER = 0.9
"""Each size tried over the one before."""
ENDLESS = 100_000


class FittedLabel(QLabel):
    """A text on up to `lines` lines at `pixels`; longer, it takes smaller letters, down to running text.

    What even then finds no room ends in an ellipsis; the tooltip has the whole. It takes any width.
    """

    def __init__(
        self,
        look: Look,
        *,
        pixels: float,
        weight: Weight = Weight.REGULAR,
        colour: str | None = None,
        lines: int = 1,
    ) -> None:
        super().__init__()
        self._fonts = [look.font(size, weight) for size in _sizes(pixels, look.sizes.body)]
        self._lines = lines
        self._fitted: tuple[tuple[str, QSize], tuple[QFont, str]] | None = None
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setFont(self._fonts[0])
        self.setStyleSheet(f"color: {colour or look.scheme.ink}")
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(lines > 1)
        self.setSizePolicy(policy)

    def sizeHint(self) -> QSize:
        """Room for one line at the full size."""
        return QSize(self._lines_px(1), self._lines_px(1))

    def minimumSizeHint(self) -> QSize:
        """One line high, and no width of its own."""
        return QSize(0, self._lines_px(1))

    def hasHeightForWidth(self) -> bool:
        """Whether more lines are taken where the width asks for it."""
        return self._lines > 1

    def heightForWidth(self, width: int) -> int:
        """As many lines at the full size as the text takes, up to the most allowed."""
        wanted = _bounds(self._fonts[0], width, self.text()).height()
        return min(max(wanted, self._lines_px(1)), self._lines_px(self._lines))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the text as it fits."""
        font, text = self.fitted()
        painter = QPainter(self)
        painter.setFont(font)
        painter.setPen(self.palette().color(self.foregroundRole()))
        paint_words(painter, self.contentsRect(), self.alignment(), text, Qt.TextFlag.TextWordWrap)
        painter.end()

    def fitted(self) -> tuple[QFont, str]:
        """The letters and the words that are painted."""
        key = (self.text(), self.contentsRect().size())
        if self._fitted is None or self._fitted[0] != key:
            self._fitted = (key, self._fit(*key))
            self.setToolTip("" if self._fitted[1][1] == key[0] else key[0])
        return self._fitted[1]

    def _fit(self, text: str, room: QSize) -> tuple[QFont, str]:
        for font in self._fonts:
            if _fits(font, room, text):
                return font, text
        font, low, high = self._fonts[-1], 0, len(text)
        while low < high:
            middle = (low + high + 1) // 2
            if _fits(font, room, _cut(text, middle)):
                low = middle
            else:
                high = middle - 1
        return font, _cut(text, low)

    def _lines_px(self, lines: int) -> int:
        return _bounds(self._fonts[0], ENDLESS, "\n".join("X" * lines)).height()


def _sizes(largest: float, least: float) -> Iterator[float]:
    size = largest
    while size > least:
        yield size
        size *= SMALLER
    yield min(largest, least)


def _cut(text: str, letters: int) -> str:
    return text[:letters].rstrip() + "…"


def _fits(font: QFont, room: QSize, text: str) -> bool:
    bounds = _bounds(font, room.width(), text)
    return bounds.width() <= room.width() and bounds.height() <= room.height()


def _bounds(font: QFont, width: int, text: str) -> QRect:
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, ENDLESS), Qt.TextFlag.TextWordWrap, text)
