"""The look-out of the test run itself: what a test leaves behind is seen."""

import threading

from PySide6.QtCore import QThread, QTimer
from PySide6.QtWidgets import QApplication, QWidget

from tests.leftovers import LeftBehind


def test_a_thread_that_still_runs_is_named() -> None:
    before = LeftBehind()
    done = threading.Event()
    thread = threading.Thread(target=done.wait, name="straggler", daemon=True)
    thread.start()
    assert before.since() == ["thread straggler"]
    done.set()
    thread.join()


def test_a_timer_that_still_runs_is_named(qapp: QApplication) -> None:
    before = LeftBehind()
    timer = QTimer()
    timer.setObjectName("straggler")
    timer.start(60_000)
    assert before.since() == ["running QTimer straggler"]
    timer.stop()


def test_a_thread_of_qt_that_still_runs_is_named(qapp: QApplication) -> None:
    before = LeftBehind()
    thread = QThread()
    thread.start()
    assert before.since() == ["running QThread"]
    thread.quit()
    thread.wait()


def test_a_window_that_nobody_closed_is_named(qapp: QApplication) -> None:
    before = LeftBehind()
    window = QWidget()
    window.setObjectName("straggler")
    assert before.since() == ["window QWidget straggler"]
    window.deleteLater()


def test_what_ended_is_not_named(qapp: QApplication) -> None:
    before = LeftBehind()
    thread = threading.Thread(target=int)
    thread.start()
    window = QWidget()
    timer = QTimer(window)
    timer.start(60_000)
    window.deleteLater()
    assert before.since() == []
