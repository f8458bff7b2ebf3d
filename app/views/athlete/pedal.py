"""Presenter and pedal keys that were learned, and the one pedal that does everything."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent

from app.planfile.key_settings import PedalKeys

LONG_MS = 600
"""A pedal held down for so long pauses and goes on."""
RESERVED = (Qt.Key.Key_Escape, Qt.Key.Key_F1, Qt.Key.Key_F11, Qt.Key.Key_Tab, Qt.Key.Key_Backtab)


def name_of(key: Qt.Key) -> str:
    """A key's name in the settings, as Qt has it without `Key_`."""
    return key.name.removeprefix("Key_")


def learnable(key: Qt.Key) -> bool:
    """Whether a key can be learned: one that can be told from others and is not needed otherwise."""
    return key not in RESERVED and key is not Qt.Key.Key_unknown and key.value > 0


class Pedal(QObject):
    """Tells a short press from a long one: `long` comes while the key is down, `short` at its release."""

    short = Signal()
    long = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._timer = QTimer(self, singleShot=True, interval=LONG_MS)
        self._timer.timeout.connect(self.long)

    def down(self) -> None:
        """The key went down."""
        self._timer.start()

    def up(self) -> None:
        """The key came up."""
        if self._timer.isActive():
            self._timer.stop()
            self.short.emit()

    def let_go(self) -> None:
        """Forget a press whose end will not be seen."""
        self._timer.stop()


def follow(
    keys: PedalKeys, event: QKeyEvent, pedal: Pedal, count: Callable[[], object], halt: Callable[[], object]
) -> bool:
    """Follow a key that went down when it is a learned one; tells whether it was."""
    key = Qt.Key(event.key())
    if name_of(key) in keys.pause:
        halt()
    elif name_of(key) in keys.count and keys.one_pedal:
        pedal.down()
    elif name_of(key) in keys.count:
        count()
    else:
        return False
    return True
