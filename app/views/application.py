"""Opens the program on the screen, and ends it cleanly."""

import gc
import signal
import sys
from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox, QWidget

from app.views.display import require_display
from app.views.house import House, Wish
from app.views.lettering import load_fonts
from app.views.window import Window

HEARTBEAT_MS = 200
APPLICATION_ID = "io.pacewright.Pacewright"


def run_application(house: House, wish: Wish) -> int:
    """Show the window until it is closed; gives the exit status, 1 when the record could not be opened.

    Raises DisplayError when there is no screen.
    """
    require_display()
    application = make_application(sys.argv[:1])
    window = Window(house, wish, load_fonts(house.fonts))
    window.broken.connect(lambda sentence: _give_up(window, sentence))
    window.setGeometry(window.screen().availableGeometry())
    try:
        with closed_on_interrupt(window):
            if wish.full_screen:
                window.showFullScreen()
            else:
                window.showMaximized()
            return application.exec()
    finally:
        window.deleteLater()
        application.processEvents()
        gc.enable()


def make_application(arguments: list[str]) -> QApplication:
    """Make the one application object, in the plain style that takes our palette."""
    application = QApplication(arguments)
    application.setApplicationName("Pacewright")
    application.setDesktopFileName(APPLICATION_ID)
    application.setStyle("Fusion")
    return application


@contextmanager
def closed_on_interrupt(window: QWidget) -> Iterator[None]:
    """Within it Ctrl-C, or a request to end, closes the window; Python hears of them only while it runs.

    It is closed from the event loop: the request may come in the middle of painting, or before there is one.
    """
    heartbeat = QTimer(window)
    heartbeat.timeout.connect(lambda: None)
    heartbeat.start(HEARTBEAT_MS)
    before = {number: signal.getsignal(number) for number in (signal.SIGINT, signal.SIGTERM)}
    for number in before:
        signal.signal(number, lambda _number, _frame: QTimer.singleShot(0, window.close))
    try:
        yield
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)
        heartbeat.stop()


def _give_up(window: Window, sentence: str) -> None:
    sys.stderr.write(f"{sentence}\n")
    QMessageBox.critical(window, "Pacewright", sentence)
    window.close()
    QApplication.exit(1)
