"""How the screens look follows the choice, and where that is left to the system, the system."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.views.appearance import Appearance, Manner, SystemWish, manner, reading_direction
from app.views.lettering import desk_scale, training_scale
from app.views.theme import DARK, DARK_HIGH, LIGHT, LIGHT_HIGH, Lightness, Place

QUIET = SystemWish()
ALL = SystemWish(dark=True, strong=True, still=True)


@pytest.fixture
def appearance(qtbot: QtBot, tmp_path: Path) -> Iterator[Appearance]:
    made = Appearance("Inter", tmp_path, Settings())
    made.hear(QUIET)
    yield made
    made.end()


@pytest.mark.parametrize(
    ("screen", "system", "expected"),
    [
        (ScreenSettings(), QUIET, Manner(Lightness.BY_PLACE, strong=False, still=False)),
        (ScreenSettings(), ALL, Manner(Lightness.BY_PLACE, strong=True, still=True)),
        (ScreenSettings("system"), QUIET, Manner(Lightness.BY_PLACE, strong=False, still=False)),
        (ScreenSettings("system"), ALL, Manner(Lightness.DARK, strong=True, still=True)),
        (
            ScreenSettings("system"),
            replace(ALL, dark=False),
            Manner(Lightness.LIGHT, strong=True, still=True),
        ),
        (ScreenSettings("light", "normal", "full"), ALL, Manner(Lightness.LIGHT, strong=False, still=False)),
        (ScreenSettings("dark", "high", "reduced"), QUIET, Manner(Lightness.DARK, strong=True, still=True)),
    ],
)
def test_the_choice_goes_before_the_systems_wish(
    screen: ScreenSettings, system: SystemWish, expected: Manner
) -> None:
    assert manner(screen, system) == expected


def test_each_place_has_its_colours(appearance: Appearance) -> None:
    assert (appearance.training(1080).scheme, appearance.desk(1920).scheme) == (DARK, LIGHT)
    appearance.hear(ALL)
    assert (appearance.training(1080).scheme, appearance.desk(1920).scheme) == (DARK_HIGH, LIGHT_HIGH)
    assert manner(ScreenSettings("light"), QUIET).scheme(Place.TRAINING) is LIGHT


def test_letters_grow_and_things_stand_still_as_chosen(appearance: Appearance) -> None:
    appearance.take(Settings(distance_m=5.0, screen=ScreenSettings(text=200, motion="reduced")))
    look = appearance.training(1080)
    assert (look.sizes, look.distance_m, look.still) == (training_scale(1080, 2.0), 5.0, True)
    assert look.sizes.body == 44
    assert appearance.desk(1366).sizes == desk_scale(1366, 2.0)
    assert appearance.desk(1366).sizes.body == 30


def test_it_tells_of_changes_and_of_nothing_else(appearance: Appearance) -> None:
    told: list[bool] = []
    appearance.changed.connect(lambda: told.append(True))
    appearance.take(Settings(tones=0.5))
    appearance.hear(QUIET)
    appearance.hear(SystemWish(dark=True))
    assert told == [], "colours are by place, whatever the system's are"
    appearance.hear(SystemWish(strong=True))
    appearance.take(Settings(screen=ScreenSettings("dark")))
    appearance.take(Settings(screen=ScreenSettings("dark"), distance_m=4.0))
    assert len(told) == 3


def test_a_change_of_the_systems_colours_is_heard(appearance: Appearance) -> None:
    appearance.take(Settings(screen=ScreenSettings("system")))
    appearance.hear(SystemWish(dark=True))
    told: list[bool] = []
    appearance.changed.connect(lambda: told.append(True))
    QGuiApplication.styleHints().colorSchemeChanged.emit(Qt.ColorScheme.Light)
    assert told, "what the system says now is not what was heard"


@pytest.mark.parametrize(
    ("direction", "language", "expected"),
    [
        ("system", "de", Qt.LayoutDirection.LeftToRight),
        ("system", "ar", Qt.LayoutDirection.RightToLeft),
        ("rtl", "de", Qt.LayoutDirection.RightToLeft),
        ("ltr", "ar", Qt.LayoutDirection.LeftToRight),
    ],
)
def test_lines_begin_where_the_language_begins_them_unless_chosen(
    direction: str, language: str, expected: Qt.LayoutDirection
) -> None:
    assert reading_direction(ScreenSettings(direction=direction), language) is expected


def test_the_direction_holds_for_the_whole_program_until_the_end(appearance: Appearance) -> None:
    appearance.take(Settings(screen=ScreenSettings(direction="rtl")))
    assert QGuiApplication.layoutDirection() is Qt.LayoutDirection.RightToLeft
    appearance.end()
    assert QGuiApplication.layoutDirection() is Qt.LayoutDirection.LeftToRight
