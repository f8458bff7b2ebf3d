"""Errands: done in order on a thread of their own, answers brought to the screen's, none after closing."""

import threading
from functools import partial

from PySide6.QtCore import QCoreApplication
from pytestqt.qtbot import QtBot

from app.views.errands import Errands


def test_answers_come_to_the_screens_thread_in_order(qtbot: QtBot) -> None:
    errands, got = Errands("test"), list[tuple[int, bool]]()

    def take(answer: int) -> None:
        got.append((answer, threading.current_thread() is threading.main_thread()))

    threads: set[str] = set()

    def errand(number: int) -> int:
        threads.add(threading.current_thread().name)
        return number

    for number in range(3):
        errands.run(partial(errand, number), take)
    qtbot.waitUntil(lambda: len(got) == 3, timeout=5_000)
    errands.close()
    assert got == [(0, True), (1, True), (2, True)]
    assert threads == {"test_0"}


def test_nothing_comes_back_once_it_is_closed_and_closing_does_not_wait(qtbot: QtBot) -> None:
    errands, begun, go_on = Errands("test"), threading.Event(), threading.Event()
    got: list[object] = []

    def long() -> str:
        begun.set()
        go_on.wait(10)
        return "late"

    errands.run(long, got.append)
    errands.run(lambda: "never", got.append)
    assert begun.wait(10)
    errands.close()
    go_on.set()
    errands._thread.shutdown(wait=True)
    QCoreApplication.processEvents()
    assert got == []


def test_a_bug_in_an_errand_is_not_swallowed(qtbot: QtBot) -> None:
    errands = Errands("test")

    def broken() -> None:
        raise ZeroDivisionError

    with qtbot.captureExceptions() as caught:
        errands.run(broken)
        qtbot.waitUntil(lambda: bool(caught), timeout=5_000)
    errands.close()
    assert caught[0][0] is ZeroDivisionError
