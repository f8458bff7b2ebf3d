"""Asks for a repaint sixty times a second; never a measure of time."""

from PySide6.QtCore import QObject, Qt, QTimer, Signal

INTERVAL_MS = 16


class Ticker(QObject):
    """A steady request to look at the clock again."""

    tick = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.setInterval(INTERVAL_MS)
        self._timer.timeout.connect(self.tick)
        self._once = QTimer(self)
        self._once.setTimerType(Qt.TimerType.PreciseTimer)
        self._once.setSingleShot(True)
        self._once.timeout.connect(self.tick)

    def start(self) -> None:
        """Begin to ask."""
        self._timer.start()

    def soon(self, ms: int) -> None:
        """Ask once more, besides, in so many ms: something begins then that should be seen at once."""
        if self._timer.isActive() and not self._once.isActive():
            self._once.start(ms)

    def stop(self) -> None:
        """Stop asking."""
        self._timer.stop()
        self._once.stop()
