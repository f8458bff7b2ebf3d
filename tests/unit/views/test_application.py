"""The program on the screen ends as a window does, whoever asks for it."""

import signal

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from app.views.application import closed_on_interrupt


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_a_request_to_end_closes_the_window_and_no_longer_once_it_is_over(
    number: signal.Signals, qtbot: QtBot
) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    before = signal.getsignal(number)
    with closed_on_interrupt(window):
        assert signal.getsignal(number) is not before
        signal.raise_signal(number)
        assert window.isVisible(), "it may be painting"
        qtbot.waitUntil(lambda: not window.isVisible(), timeout=1_000)
    assert signal.getsignal(number) is before


def test_requests_to_end_are_let_go_when_something_goes_wrong(qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    before = signal.getsignal(signal.SIGINT)
    with pytest.raises(ZeroDivisionError), closed_on_interrupt(window):
        raise ZeroDivisionError
    assert signal.getsignal(signal.SIGINT) is before
