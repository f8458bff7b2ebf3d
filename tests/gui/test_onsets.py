"""A phase is painted as it begins, and not only at the next steady tick."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.views.ticker import INTERVAL_MS, Ticker
from tests.desk import TWO_REPS, Desk


def test_the_page_tells_how_soon_a_phase_begins_when_a_tick_would_be_late_for_it(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS)
    told: list[int] = []
    desk.page.due.connect(told.append)
    desk.press(Qt.Key.Key_Space)
    desk.wait(4_980)
    for later_ms in (10, 10, 500, 500, 500, 483, 1, 15, 1):
        desk.wait(later_ms)
    assert told == [10, 16, 1], "before the work begins, and before its second phase"


def test_a_page_that_stands_still_asks_for_nothing(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS).press(Qt.Key.Key_Space).wait(6_990).press(Qt.Key.Key_Space)
    told: list[int] = []
    desk.page.due.connect(told.append)
    desk.page.refresh()
    assert told == []


def test_a_ticker_asks_once_more_when_something_is_due_and_not_once_it_is_stopped(qtbot: QtBot) -> None:
    ticker = Ticker()
    ticker.soon(0)
    assert not ticker._once.isActive(), "it does not ask before it is started"
    ticker.start()
    ticker._timer.setInterval(60_000)
    with qtbot.waitSignal(ticker.tick, timeout=5_000):
        ticker.soon(INTERVAL_MS)
    ticker.soon(1_000)
    ticker.stop()
    assert not ticker._once.isActive()
