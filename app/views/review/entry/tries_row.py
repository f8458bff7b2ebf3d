"""The tries of a test, one entry each: Return goes on to the next, and from the last to `done`."""

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from app.views.theme import Look
from app.views.translation import tr

MOST, A_ROW = 10, 5


class TriesRow(QWidget):
    """So many entries, some in a row. `done` is told after Return in the last, `changed` at every letter.

    The numbers of several tries put into one entry at once, as from a sheet, go on into the entries after it.
    """

    done = Signal()
    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.entries = [QLineEdit() for _ in range(MOST)]
        self._captions = [QLabel() for _ in range(MOST)]
        self._numbers = 1
        self._spreading = False
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        for number, (entry, caption) in enumerate(zip(self.entries, self._captions, strict=True)):
            caption.setBuddy(entry)
            entry.setMaxLength(200)
            self._place(number, A_ROW)
            entry.returnPressed.connect(partial(self._next, number))
            entry.textChanged.connect(partial(self._changed, number))
        self.setFocusProxy(self.entries[0])

    @property
    def typed(self) -> tuple[tuple[int, str], ...]:
        """Places, from 0, and words of the entries that are not empty."""
        shown = enumerate(self.entries)
        return tuple(
            (place, entry.text().strip())
            for place, entry in shown
            if not entry.isHidden() and entry.text().strip()
        )

    def put(self, typed: Sequence[tuple[int, str]]) -> None:
        """Let entries hold what was typed before, by their places."""
        for place, words in typed:
            self.entries[place].setText(words)

    def offer(
        self, count: int, hint: str, captions: Sequence[str] = (), *, across: int = A_ROW, numbers: int = 1
    ) -> None:
        """Offer so many empty entries with a hint in each, `across` in a row, called as `captions` say.

        `numbers` says how many each takes, 0 that it is not told.
        """
        self._numbers = numbers
        named = captions or [tr("Try {n}").format(n=number + 1) for number in range(MOST)]
        for number, (entry, caption) in enumerate(zip(self.entries, self._captions, strict=True)):
            entry.clear()
            entry.setPlaceholderText(hint)
            shown = number < count
            caption.setText(named[number] if number < len(named) else "")
            entry.setAccessibleName(caption.text())
            self._place(number, across)
            for part in (entry, caption):
                part.setVisible(shown)

    def go_to(self, place: int) -> None:
        """Let an entry be typed over."""
        self.entries[place].setFocus(Qt.FocusReason.OtherFocusReason)
        self.entries[place].selectAll()

    def set_look(self, look: Look) -> None:
        """Take letters."""
        for entry, caption in zip(self.entries, self._captions, strict=True):
            entry.setFont(look.font(look.sizes.body))
            caption.setFont(look.font(look.sizes.small))
        self._grid.setHorizontalSpacing(look.sizes.body // 2)

    def _place(self, number: int, across: int) -> None:
        row, column = divmod(number, across)
        self._grid.addWidget(self._captions[number], 2 * row, column)
        self._grid.addWidget(self.entries[number], 2 * row + 1, column)

    def _changed(self, place: int, text: str) -> None:
        if self._spreading:
            return
        pieces = text.split()
        each = self._numbers
        if each and len(pieces) > each and not len(pieces) % each:
            tries = range(0, len(pieces), each)
            self._spread(place, [" ".join(pieces[first : first + each]) for first in tries])
        self.changed.emit()

    def _spread(self, place: int, pieces: Sequence[str]) -> None:
        room = [number for number in range(place, MOST) if not self.entries[number].isHidden()]
        if len(pieces) > len(room):
            return
        self._spreading = True
        for number, piece in zip(room, pieces, strict=False):
            self.entries[number].setText(piece)
        self._spreading = False
        self.go_to(room[len(pieces) - 1])

    def _next(self, place: int) -> None:
        if place + 1 < MOST and not self.entries[place + 1].isHidden() and self.entries[place].text().strip():
            self.go_to(place + 1)
        else:
            self.done.emit()
