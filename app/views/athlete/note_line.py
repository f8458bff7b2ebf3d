"""A note that is opened by a key: while it is open, keys type."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.views.athlete.amount_row import TypingLine
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import quiet_button, say

LONGEST_NOTE = 500


class NoteLine(QWidget):
    """A note, or a word that opens it; `written` carries the text once it is kept.

    `has_key` says that the key W opens it, so that its button names the key.
    """

    written = Signal(str)

    def __init__(self, look: Look, name: str, *, has_key: bool = True) -> None:
        super().__init__()
        self._note = ""
        self._words = (tr("Add a note  (W)"), tr("Change the note  (W)"))
        if not has_key:
            self._words = (tr("Add a note about this bout"), tr("Change the note about this bout"))
        self._shown = FittedLabel(look, pixels=look.sizes.body, lines=2)
        self._line = TypingLine(look, name)
        self._line.setMaxLength(LONGEST_NOTE)
        self._line.setPlaceholderText(tr("For your practitioner; Enter keeps it"))
        self._line.setObjectName("note_line")
        self._line.returnPressed.connect(self.finish)
        self._line.given_up.connect(self._close)
        self._line.hide()
        self._keep = quiet_button(look, tr("Keep it  (Enter)"), self.finish)
        self._keep.hide()
        self._open = quiet_button(look, self._words[0], self.open)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._shown, 1)
        row.addWidget(self._line, 1)
        row.addWidget(self._keep)
        row.addWidget(self._open)

    def show_note(self, note: str | None) -> None:
        """Show the note as it is kept."""
        self._note = note or ""
        say(self._shown, self._note)
        words = self._words[1 if self._note else 0]
        if self._open.text() != words:
            self._open.setText(words)
            self._open.setAccessibleName(words)

    @property
    def typing(self) -> bool:
        """Whether the note is being written."""
        return not self._line.isHidden()

    def open(self) -> None:
        """Let the note be written, what is there to begin with."""
        if self.typing:
            self._line.setFocus()
            return
        self._line.setText(self._note)
        self._show_line(open_=True)
        self._line.setFocus()

    def finish(self) -> None:
        """Close it and keep what was written."""
        text = self._line.text().strip()
        if not self.typing:
            return
        self._close()
        if text and text != self._note:
            self.written.emit(text)

    def _close(self) -> None:
        had = self._line.hasFocus()
        self._show_line(open_=False)
        if had and (parent := self.parentWidget()) is not None:
            parent.setFocus()

    def _show_line(self, *, open_: bool) -> None:
        self._line.setVisible(open_)
        self._keep.setVisible(open_)
        self._shown.setVisible(not open_)
        self._open.setVisible(not open_)
