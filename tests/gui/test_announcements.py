"""What changes by itself on the athlete's screen is told to a screen reader: phases, gaps, a pause."""

import pytest
from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAccessibleAnnouncementEvent
from pytestqt.qtbot import QtBot

from app.domain.plan import Sides
from app.views.athlete import page
from tests.desk import TWO_REPS, Desk


class Reader:
    """A screen reader that writes down what it is told, as Qt's own class would tell it."""

    active = True
    told: list[str]

    def __init__(self) -> None:
        self.told = []

    def isActive(self) -> bool:  # noqa: N802 - Qt's own name
        return self.active

    def updateAccessibility(self, event: QAccessibleAnnouncementEvent) -> None:  # noqa: N802
        assert isinstance(event.object(), QObject)
        self.told.append(event.message())


@pytest.fixture
def reader(monkeypatch: pytest.MonkeyPatch) -> Reader:
    made = Reader()
    monkeypatch.setattr(page, "QAccessible", made)
    return made


def test_every_phase_and_gap_is_told_once_as_it_begins(reader: Reader, qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, Sides.EACH)
    desk.press(Qt.Key.Key_Space).wait(26_000)
    one_side = ["Ready", "Lower", "Hold", "Lift", "Lower", "Hold", "Lift"]
    assert reader.told[:8] == [*one_side, "Change sides"]
    assert reader.told[8:10] == ["Ready", "Lower"]


def test_a_pause_is_told_and_the_phase_again_after_it(reader: Reader, qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS)
    desk.press(Qt.Key.Key_Space).wait(6_000).press(Qt.Key.Key_Space).wait(1_000)
    assert reader.told[-1] == "Paused"
    desk.press(Qt.Key.Key_Space).wait(1_000)
    assert reader.told[-1] == "Ready"


def test_nothing_is_told_where_nobody_listens(reader: Reader, qtbot: QtBot) -> None:
    reader.active = False
    Desk(qtbot, TWO_REPS).press(Qt.Key.Key_Space).wait(10_000)
    assert reader.told == []
