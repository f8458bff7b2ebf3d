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

    def start(self) -> None:
        """Begin to ask."""
        self._timer.start()

    def stop(self) -> None:
        """Stop asking."""
        self._timer.stop()
