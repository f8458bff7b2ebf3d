"""The curtain before Review on a shared machine: asks for the passphrase, and says what a curtain is."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QLineEdit, QVBoxLayout, QWidget

from app.planfile.passphrase import CURTAIN, opens
from app.views.lettering import Weight
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.plain import label, say, strong_button

TITLE = message("Review is behind a passphrase")
WRONG = message("That is not the passphrase.")
LONGEST = 1_000


class Curtain(QDialog):
    """Asks for the passphrase whose hash is `kept`; `passed` when it was the one."""

    passed = Signal()

    def __init__(self, kept: str, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._kept = kept
        self.setWindowTitle(tr(TITLE))
        self.setPalette(palette(look.scheme))
        self.setAutoFillBackground(True)
        self.entry = QLineEdit()
        self.entry.setEchoMode(QLineEdit.EchoMode.Password)
        self.entry.setMaxLength(LONGEST)
        self.entry.setAccessibleName(tr("Passphrase"))
        self.entry.setFont(look.font(look.sizes.heading))
        self.entry.returnPressed.connect(self._try)
        self.message = label(look, wrap=True)
        about = label(look, tr(CURTAIN), colour=look.scheme.quiet, wrap=True)
        column = QVBoxLayout(self)
        edge = look.sizes.body * 2
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(look.sizes.body)
        column.addWidget(label(look, tr(TITLE), pixels=look.sizes.heading, weight=Weight.SEMIBOLD))
        column.addWidget(self.entry)
        column.addWidget(self.message)
        column.addWidget(about)
        button = strong_button(look, tr("Open Review"), self._try)
        button.setAutoDefault(False)
        column.addWidget(button, 0, Qt.AlignmentFlag.AlignRight)
        self.setMinimumWidth(look.sizes.body * 34)

    def _try(self) -> None:
        if opens(self._kept, self.entry.text()):
            self.accept()
            self.passed.emit()
            return
        self.entry.clear()
        say(self.message, tr(WRONG))
        self.entry.setFocus()


def pass_curtain(kept: str | None, look: Look, parent: QWidget, then: Callable[[], object]) -> None:
    """Do what comes then, at once where no passphrase is kept, else once it was said."""
    if kept is None:
        then()
        return
    curtain = Curtain(kept, look, parent)
    curtain.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    curtain.passed.connect(then)
    curtain.open()
    curtain.entry.setFocus()
