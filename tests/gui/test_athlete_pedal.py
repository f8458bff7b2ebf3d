"""Pedals and presenters: taught by pressing them, one pedal for everything, and no harm from a bounce."""

from typing import cast

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QCheckBox, QDialog, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from app.domain.dose import Band, OwnPaceReps
from app.domain.errors import PacewrightError
from app.domain.records import BoutBegan, Paused, Resumed, RunBegan
from app.planfile.key_settings import PedalKeys
from app.run.state import Stand
from app.views.athlete.around import Around
from app.views.athlete.key_page import KeyPage, TeachPedal
from app.views.athlete.pedal import LONG_MS, Pedal, learnable
from tests.desk import TWO_REPS, Desk

OWN = OwnPaceReps(Band(2, 5))
KEY = Qt.Key
NO_SHIFT = Qt.KeyboardModifier.NoModifier


def open_dialog(desk: Desk, kind: type[QDialog]) -> QDialog:
    found = [each for each in desk.page.findChildren(kind) if each.isVisible()]
    assert len(found) == 1
    return found[0]


def teach(desk: Desk, words: str, key: Qt.Key) -> None:
    desk.press(KEY.Key_F1)
    page = open_dialog(desk, KeyPage)
    (button,) = [each for each in page.findChildren(QPushButton) if each.text() == words]
    desk.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    desk.qtbot.keyClick(open_dialog(desk, TeachPedal), key)


def test_a_presenter_is_taught_by_pressing_it_and_what_it_learned_is_kept(qtbot: QtBot) -> None:
    kept: list[PedalKeys] = []
    desk = Desk(qtbot, OWN, around=Around(keep_pedals=kept.append))
    teach(desk, "Teach a pedal to count", KEY.Key_PageDown)
    teach(desk, "Teach a pedal to pause", KEY.Key_PageUp)
    assert kept[-1] == PedalKeys(("PageDown",), ("PageUp",))
    desk.press(KEY.Key_PageDown).wait(6_000).press(KEY.Key_PageDown).wait(1_000).press(KEY.Key_PageDown)
    assert desk.reps == [1, 2]
    desk.press(KEY.Key_PageUp, KEY.Key_PageUp)
    assert isinstance(desk.facts[-1], Paused), "twice at once is one press that bounced"
    desk.wait(1_000).press(KEY.Key_PageUp)
    assert [type(fact) for fact in desk.facts[-2:]] == [Paused, Resumed]


def test_the_page_of_keys_names_what_was_taught(qtbot: QtBot) -> None:
    desk = Desk(qtbot, OWN, around=Around(PedalKeys(("PageDown",), ("PageUp",)))).press(KEY.Key_F1)
    assert "PageDown" in desk.texts()
    assert "PageUp" in desk.texts()


@pytest.mark.parametrize("key", [0, KEY.Key_unknown])
def test_a_key_that_cannot_be_told_from_others_is_not_learned(key: int) -> None:
    assert not learnable(Qt.Key(key))
    assert learnable(Qt.Key(0x424)), "a letter of another script is a key like any other"


def test_a_key_that_is_needed_otherwise_is_not_learned(qtbot: QtBot) -> None:
    kept: list[PedalKeys] = []
    desk = Desk(qtbot, OWN, around=Around(keep_pedals=kept.append))
    teach(desk, "Teach a pedal to count", KEY.Key_F11)
    assert "cannot be learned" in desk.texts()
    desk.qtbot.keyClick(open_dialog(desk, TeachPedal), KEY.Key_Escape)
    assert kept == []


@pytest.mark.parametrize("key", [KEY.Key_Space, KEY.Key_Return, KEY.Key_F1, KEY.Key_A])
def test_any_key_closes_the_page_of_keys_and_teaches_nothing(qtbot: QtBot, key: Qt.Key) -> None:
    desk = Desk(qtbot, OWN).press(KEY.Key_F1)
    page = open_dialog(desk, KeyPage)
    focused = cast("QWidget | None", page.focusWidget())
    desk.qtbot.keyClick(page if focused is None else focused, key)
    assert not [each for each in desk.page.findChildren(QDialog) if each.isVisible()]
    assert desk.facts == []


@pytest.mark.parametrize("key", [KEY.Key_Space, KEY.Key_Return])
def test_a_pedal_that_sends_space_or_enter_can_be_taught(qtbot: QtBot, key: Qt.Key) -> None:
    kept: list[PedalKeys] = []
    desk = Desk(qtbot, OWN, around=Around(keep_pedals=kept.append))
    teach(desk, "Teach a pedal to pause", key)
    assert kept == [PedalKeys((), (key.name.removeprefix("Key_"),))]


def test_one_pedal_is_chosen_on_the_page_of_keys(qtbot: QtBot) -> None:
    kept: list[PedalKeys] = []
    desk = Desk(qtbot, OWN, around=Around(PedalKeys(("PageDown",)), kept.append)).press(KEY.Key_F1)
    (one,) = open_dialog(desk, KeyPage).findChildren(QCheckBox)
    one.click()
    assert kept == [PedalKeys(("PageDown",), (), one_pedal=True)]


def press_and_hold(desk: Desk, qtbot: QtBot, halt: type[Paused | Resumed]) -> None:
    """Hold the pedal until it has paused or gone on; a pedal held down repeats."""
    desk.qtbot.keyPress(desk.page, KEY.Key_PageDown)
    held = QKeyEvent(QEvent.Type.KeyPress, KEY.Key_PageDown, NO_SHIFT, "", True)
    QApplication.sendEvent(desk.page, held)
    qtbot.waitUntil(lambda: isinstance(desk.facts[-1], halt), timeout=5_000)
    desk.qtbot.keyRelease(desk.page, KEY.Key_PageDown)


def test_one_pedal_counts_when_pressed_shortly_and_pauses_and_goes_on_when_held(qtbot: QtBot) -> None:
    desk = Desk(qtbot, OWN, around=Around(PedalKeys(("PageDown",), (), one_pedal=True)))
    desk.press(KEY.Key_PageDown)
    assert [type(fact) for fact in desk.facts] == [RunBegan]
    desk.wait(6_000).press(KEY.Key_PageDown)
    assert desk.reps == [1]
    press_and_hold(desk, qtbot, Paused)
    desk.wait(1_000).press(KEY.Key_PageDown)
    assert desk.session.controller.state.stand is Stand.PAUSED, "a short press does not go on"
    press_and_hold(desk, qtbot, Resumed)
    assert desk.reps == [1]


def test_a_long_press_is_six_tenths_of_a_second(qtbot: QtBot) -> None:
    pedal = Pedal(Desk(qtbot, OWN).page)
    assert LONG_MS == 600
    said: list[str] = []
    pedal.short.connect(lambda: said.append("short"))
    pedal.long.connect(lambda: said.append("long"))
    pedal.down()
    pedal.up()
    pedal.up()
    pedal.down()
    pedal.let_go()
    pedal.up()
    assert said == ["short"]


@pytest.mark.parametrize("one_pedal", [False, True])
def test_the_press_that_ends_a_bout_does_not_cut_the_rest_short_when_it_bounces(
    qtbot: QtBot, one_pedal: bool
) -> None:
    desk = Desk(qtbot, OwnPaceReps(Band(1, 1)), sets=2, around=Around(PedalKeys(("B",), (), one_pedal)))
    desk.press(KEY.Key_B).wait(6_000).press(KEY.Key_B, KEY.Key_B)
    assert desk.session.look().gap_left_ms == 30_000
    desk.wait(1_000).press(KEY.Key_B)
    assert desk.session.look().gap_left_ms == 5_000, "pressed again later it goes to the lead-in"
    assert len([fact for fact in desk.facts if isinstance(fact, BoutBegan)]) == 1


def test_a_pedal_does_nothing_to_work_that_is_led_in_time(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, around=Around(PedalKeys(("PageDown",)))).press(KEY.Key_Space).wait(6_000)
    before = list(desk.facts)
    desk.press(KEY.Key_PageDown, KEY.Key_PageDown)
    assert desk.facts == before


def test_a_pedal_that_cannot_be_written_down_still_works_and_the_screen_says_so(qtbot: QtBot) -> None:
    def refuse(_pedals: PedalKeys) -> None:
        raise PacewrightError("settings.toml cannot be written: it is read-only.")

    desk = Desk(qtbot, OWN, around=Around(keep_pedals=refuse))
    teach(desk, "Teach a pedal to count", KEY.Key_PageDown)
    assert "settings.toml cannot be written" in desk.texts()
    desk.press(KEY.Key_PageDown).wait(6_000).press(KEY.Key_PageDown)
    assert desk.reps == [1]
