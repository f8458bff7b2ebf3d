"""The screen's room: what is chosen is seen at once, kept or forgotten, by keys and by mouse."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QPalette
from PySide6.QtWidgets import QLabel, QPushButton
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.errors import PacewrightError
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.views.appearance import SystemWish
from app.views.screen.page import ScreenPage
from app.views.screen.room import ScreenRoom
from app.views.screen.words import seen_words, unheard_words
from app.views.theme import DARK, DARK_HIGH, LIGHT
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.profile import ProfileView
from tests.rig import Rig


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    made = Rig(qtbot, tmp_path, wiring.open_record)
    made.open()
    made.window.open_screen()
    yield made
    made.window.close()


def page(rig: Rig) -> ScreenPage:
    room = rig.page
    assert isinstance(room, ScreenRoom)
    shown = room.currentWidget()
    assert isinstance(shown, ScreenPage)
    return shown


def box(rig: Rig, name: str) -> ChoiceBox:
    found = page(rig).findChild(ChoiceBox, name)
    assert isinstance(found, ChoiceBox)
    return found


def pick(rig: Rig, name: str, value: object) -> None:
    box(rig, name).setCurrentIndex(box(rig, name).findData(value))


def click(rig: Rig, words: str) -> None:
    (button,) = [each for each in page(rig).findChildren(QPushButton) if each.text().startswith(words)]
    rig.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def ground(rig: Rig) -> str:
    return rig.window.palette().color(QPalette.ColorRole.Window).name().upper()


def test_colours_change_as_they_are_chosen_and_come_back_when_forgotten(rig: Rig) -> None:
    assert ground(rig) == DARK.ground
    pick(rig, "scheme", "light")
    assert ground(rig) == LIGHT.ground
    pick(rig, "scheme", "dark")
    pick(rig, "contrast", "high")
    assert ground(rig) == DARK_HIGH.ground
    rig.qtbot.keyClick(page(rig), Qt.Key.Key_Escape)
    assert ground(rig) == DARK.ground
    assert rig.saved == []
    assert "Who is training?" in rig.texts()


def test_what_is_kept_is_written_and_stays(rig: Rig) -> None:
    pick(rig, "scheme", "light")
    pick(rig, "text", 150)
    pick(rig, "motion", "reduced")
    pick(rig, "distance", 5.0)
    click(rig, "Keep it")
    assert rig.saved == [
        {
            ("screen", "distance"): 5.0,
            ("screen", "scheme"): "light",
            ("screen", "motion"): "reduced",
            ("screen", "text"): 150,
        }
    ]
    assert ground(rig) == LIGHT.ground
    assert rig.window._look().still
    assert rig.window._look().text == 1.5


def test_keys_alone_choose_and_keep(rig: Rig) -> None:
    focused = page(rig).focusWidget()
    assert focused is box(rig, "scheme")
    rig.qtbot.keyClick(box(rig, "scheme"), Qt.Key.Key_Down)
    rig.qtbot.keyClick(box(rig, "scheme"), Qt.Key.Key_Down)
    assert box(rig, "scheme").currentData() == "light"
    assert page(rig).focusWidget() is box(rig, "scheme"), "the page was built anew around the row"
    rig.qtbot.keyClick(box(rig, "scheme"), Qt.Key.Key_Tab)
    assert page(rig).focusWidget() is box(rig, "contrast")
    rig.qtbot.keyClick(box(rig, "contrast"), Qt.Key.Key_Return)
    assert rig.saved == [{("screen", "scheme"): "light"}]


def test_ctrl_and_the_comma_lead_there_from_the_start_and_from_nowhere_else(rig: Rig) -> None:
    rig.qtbot.keyClick(page(rig), Qt.Key.Key_Escape)
    rig.qtbot.keyClick(rig.window, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    room = rig.page
    assert isinstance(room, ScreenRoom)
    rig.qtbot.keyClick(rig.window, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    assert rig.page is room


def test_the_sample_moves_with_the_clock_and_stands_when_asked_to(rig: Rig) -> None:
    def ring(at_ms: int) -> float:
        page(rig).sample.show_moment(at_ms)
        (profile,) = page(rig).findChildren(ProfileView)
        return profile.ring().center().x()

    assert ring(1_000) == pytest.approx(ring(2_500))
    pick(rig, "motion", "reduced")
    assert ring(1_000) < ring(2_500)


def test_lines_run_from_right_to_left_when_chosen(rig: Rig) -> None:
    pick(rig, "direction", "rtl")
    assert QGuiApplication.layoutDirection() is Qt.LayoutDirection.RightToLeft
    title = next(each for each in page(rig).findChildren(QLabel) if each.buddy() is box(rig, "scheme"))
    assert title.x() > box(rig, "scheme").x()
    rig.qtbot.keyClick(page(rig), Qt.Key.Key_Escape)
    assert QGuiApplication.layoutDirection() is Qt.LayoutDirection.LeftToRight


def test_the_system_is_followed_while_the_program_is_open(rig: Rig) -> None:
    pick(rig, "scheme", "system")
    rig.window._appearance.hear(SystemWish(dark=False))
    assert ground(rig) == LIGHT.ground
    rig.window._appearance.hear(SystemWish(dark=True, strong=True))
    assert ground(rig) == DARK_HIGH.ground


def test_the_page_says_how_large_the_count_is_from_the_distance(rig: Rig) -> None:
    pick(rig, "distance", 30.0)
    assert "Come closer, or use a larger screen." in rig.texts()
    pick(rig, "distance", 1.0)
    assert "Come closer" not in rig.texts()
    assert "From 1 m the count is" in rig.texts()


def test_what_cannot_be_written_is_said_and_nothing_is_left(rig: Rig) -> None:
    def refuse(_changes: object) -> None:
        raise PacewrightError("settings.toml cannot be written: disk full.")

    room = rig.page
    assert isinstance(room, ScreenRoom)
    room._house = replace(rig.house, save_settings=refuse)
    pick(rig, "scheme", "light")
    page(rig).keep()
    assert "disk full" in rig.texts()
    assert rig.page is room


def test_a_choice_of_another_hand_is_offered_with_the_others(rig: Rig) -> None:
    rig.qtbot.keyClick(page(rig), Qt.Key.Key_Escape)
    rig.settings = Settings(distance_m=3.7, screen=ScreenSettings(text=110))
    rig.window.open_screen()
    assert box(rig, "distance").currentText() == "3.7 m"
    assert box(rig, "text").currentText() == "110 %"


def test_the_sentences_tell_what_holds() -> None:
    assert seen_words(3.0, 19.2, 22.0) == "From 3 m the count is 19.2 mm high: 22 arc minutes."
    assert "fewer than 22" in seen_words(5.0, 19.2, 13.2)
    assert unheard_words(SystemWish(dark=True, strong=False, still=False)) == ""
    assert "does not say how" in unheard_words(SystemWish(dark=True))
