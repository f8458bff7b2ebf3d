"""Setting sound and picture together, on a clock moved by hand."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.audio.latency import BEAT_MS, TAPS
from app.views.calibration import BEATS, Bounce, CalibrationPage
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from tests.fakes import HandClock, RecordingSpeaker

LOOK = Look(choose(Place.TRAINING), "Inter", type_scale(22))


class Desk:
    def __init__(self, qtbot: QtBot, latency_ms: int = 40) -> None:
        self.qtbot, self.clock, self.speaker = qtbot, HandClock(3_000), RecordingSpeaker(latency_ms)
        self.saved: list[tuple[str, int]] = []
        self.page = CalibrationPage(
            LOOK, self.clock, self.speaker, lambda device, ms: self.saved.append((device, ms))
        )
        qtbot.addWidget(self.page)
        self.page.show()

    def press(self, key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        self.qtbot.keyClick(self.page, key, modifier)


def test_it_begins_at_what_is_known_of_the_device(qtbot: QtBot) -> None:
    desk = Desk(qtbot, latency_ms=180)
    assert desk.page.shift_ms == 180
    assert desk.speaker.asked == [f"play {(BEATS + 1) * BEAT_MS} ms"]


def test_arrows_shift_by_five_and_with_shift_by_twenty_five(qtbot: QtBot) -> None:
    desk = Desk(qtbot)
    desk.press(Qt.Key.Key_Right)
    desk.press(Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    desk.press(Qt.Key.Key_Left)
    assert desk.page.shift_ms == 65


def test_the_shift_stays_within_nought_and_a_second(qtbot: QtBot) -> None:
    desk = Desk(qtbot, latency_ms=0)
    desk.press(Qt.Key.Key_Left)
    assert desk.page.shift_ms == 0
    desk.page.shift(5_000)
    assert desk.page.shift_ms == 1_000


def test_sixteen_taps_set_the_shift_to_their_median(qtbot: QtBot) -> None:
    desk = Desk(qtbot)
    late = [90, 110, 95, 105, 100, 400, 99, 101, 100, 98, 102, 97, 103, 100, 96, 104]
    for beat, ms in enumerate(late, 1):
        desk.clock.at_ms = 3_000 + beat * BEAT_MS + ms
        desk.press(Qt.Key.Key_Return)
    assert len(late) == TAPS
    assert desk.page.shift_ms == 100


def test_space_saves_for_the_device_and_leaves(qtbot: QtBot) -> None:
    desk = Desk(qtbot)
    desk.press(Qt.Key.Key_Right)
    with qtbot.waitSignal(desk.page.left, timeout=500):
        desk.press(Qt.Key.Key_Space)
    assert desk.saved == [("recording", 45)]


def test_escape_leaves_it_as_it_was(qtbot: QtBot) -> None:
    desk = Desk(qtbot)
    desk.press(Qt.Key.Key_Right)
    with qtbot.waitSignal(desk.page.left, timeout=500):
        desk.press(Qt.Key.Key_Escape)
    assert desk.saved == []


def test_the_beat_begins_anew_when_it_has_run_out(qtbot: QtBot) -> None:
    desk = Desk(qtbot)
    desk.clock.at_ms += (BEATS + 1) * BEAT_MS
    desk.page.refresh()
    assert len(desk.speaker.played) == 2


@pytest.mark.parametrize(
    ("at_ms", "height", "lit"),
    [
        (-1, 0.002, False),
        (0, 0.0, True),
        (119, 0.238, True),
        (120, 0.24, False),
        (500, 1.0, False),
        (3_000, 0.0, True),
    ],
)
def test_the_ring_lands_lit_on_each_beat(qtbot: QtBot, at_ms: int, height: float, lit: bool) -> None:
    ring = Bounce(LOOK)
    qtbot.addWidget(ring)
    ring.show_moment(at_ms)
    assert ring.height_now == pytest.approx(height)
    assert ring.lit is lit
