"""The program on the screen ends as a window does, whoever asks for it."""

import signal
from types import SimpleNamespace

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from app.domain.group_choice import GroupChoice
from app.views import application
from app.views.application import OPEN_ALREADY, closed_on_interrupt
from app.views.house import Wish


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


class OpenElsewhere:
    """A window that is open on the record already, and takes what is handed over."""

    def __init__(self, *_about: object) -> None:
        """There is nothing to begin."""

    def is_handed_over(self, *_wish: object) -> bool:
        return True


@pytest.mark.parametrize(("group", "said"), [(None, ""), (GroupChoice(), f"{OPEN_ALREADY}\n")])
def test_a_group_is_not_handed_over_to_a_window_that_is_open_and_that_is_said(
    group: GroupChoice | None, said: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(application, "require_display", lambda: None)
    monkeypatch.setattr(application, "make_application", lambda _words: None)
    monkeypatch.setattr(application, "OneWindow", OpenElsewhere)
    house = SimpleNamespace(record="own.db")
    assert application.run_application(house, Wish(group=group)) == 0  # type: ignore[arg-type]
    assert capsys.readouterr().err == said
