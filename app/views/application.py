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
from app.views.one_window import OneWindow
from app.views.remembered import Remembered
from app.views.window import Window

HEARTBEAT_MS = 200
APPLICATION_ID = "io.pacewright.Pacewright"
OPEN_ALREADY = "The program is open on this record already, and has the plan now: choose Group there."


def run_application(house: House, wish: Wish) -> int:
    """Show the window until it is closed; gives the exit status, 1 when the record could not be opened.

    Where a window is open on the record already, the wish is handed over to it. Raises DisplayError when
    there is no screen.
    """
    require_display()
    application = make_application(sys.argv[:1])
    one = None if house.record is None else OneWindow(house.record, application)
    if one is not None and one.is_handed_over(wish.plan, wish.athlete):
        if wish.group is not None:
            sys.stderr.write(f"{OPEN_ALREADY}\n")
        return 0
    window, remembered = Window(house, wish, load_fonts(house.fonts)), Remembered(house.state)
    window.broken.connect(lambda sentence: _give_up(window, sentence))
    if one is not None:
        one.handed.connect(window.take_over)
    try:
        with closed_on_interrupt(window):
            show_where_it_was(window, remembered, full_screen=wish.full_screen)
            return application.exec()
    finally:
        remembered.keep_place(window)
        if one is not None:
            one.close()
        window.deleteLater()
        application.processEvents()
        gc.enable()


def show_where_it_was(window: QWidget, remembered: Remembered, *, full_screen: bool) -> None:
    """Show a window where it was when it was closed, full screen where asked, else as large as can be."""
    kept = remembered.place(window)
    if not kept:
        window.setGeometry(window.screen().availableGeometry())
    if full_screen:
        window.showFullScreen()
    elif kept:
        window.show()
    else:
        window.showMaximized()


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
    icon, ok = QMessageBox.Icon.Critical, QMessageBox.StandardButton.Ok
    box = QMessageBox(icon, "Pacewright", sentence, ok, window)
    # Where no window manager hands on the focus, the window beneath would keep it, and no key would end this.
    asking = QTimer(box, interval=HEARTBEAT_MS)
    asking.timeout.connect(lambda: None if box.isActiveWindow() else box.activateWindow())
    asking.start()
    box.exec()
    asking.stop()
    window.close()
    QApplication.exit(1)
