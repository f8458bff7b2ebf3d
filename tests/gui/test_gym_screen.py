"""The gym screen: what must be read across the room is large enough, and nothing lies over anything."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.domain.grouping import Form
from app.domain.plan import Side
from app.run.intents import Begin, Pause, Stop
from app.run.room_intents import Depart
from app.views.group.band import RosterBand
from app.views.group.gym_page import GymPage
from app.views.group.legible import PAGE_MS
from app.views.group.scene import room_scene
from app.views.group.station_tile import APART, StationTile, TileWords
from app.views.group.together_view import RoomHeadline
from app.views.lettering import Weight, arcmin_of, character_px, training_scale
from app.views.theme import Lightness, Look, Place, choose
from tests.fitting import misfits
from tests.halls import Hall, club, demo_plan, group_session

PANEL_MM = 685.0
"""Height of a 55-inch panel of 16:9: 55 x 25.4 x 9 / sqrt(16^2 + 9^2)."""
DISTANCE_M = 10.0
FAMILY = "Inter"
SIZES = ((1920, 1080), (3840, 2160))


def gym_page(qtbot: QtBot, hall: Hall, size: tuple[int, int]) -> GymPage:
    look = Look(choose(Place.TRAINING), FAMILY, training_scale(size[1]), DISTANCE_M)
    page = GymPage(look, hall.room.session, size[1] / PANEL_MM)
    qtbot.addWidget(page)
    page.resize(*size)
    for _ in range(3):
        page.show_room(hall.room.look(), hall.room.now_ms())
        page.grab()
    return page


def arcmin(pixels: float, weight: Weight, screen_height: int) -> float:
    """The angle that capitals of a font size fill at the distance, on the panel."""
    return arcmin_of(character_px(pixels, FAMILY, weight) * PANEL_MM / screen_height, DISTANCE_M)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("count", [3, 12, 24])
@pytest.mark.parametrize("form", Form)
def test_everything_fits_and_can_be_read_at_ten_metres(
    qtbot: QtBot, form: Form, count: int, size: tuple[int, int]
) -> None:
    hall = Hall(group_session(form, demo_plan(), club(count))).do(Begin())
    for wait_ms in (2_000, 20_000, 20_000):
        page = gym_page(qtbot, hall.wait(wait_ms), size)
        assert misfits(page) == []
        for headline in page.findChildren(RoomHeadline):
            if headline.isVisibleTo(page):
                assert arcmin(headline._fit().pixels, Weight.BOLD, size[1]) >= 22
        for band in page.findChildren(RosterBand):
            assert arcmin(band._sizes.name, Weight.SEMIBOLD, size[1]) >= 16
        for words in page.findChildren(TileWords):
            if words.isVisibleTo(page):
                assert arcmin(words.pixels, Weight.BOLD, size[1]) >= 22, words.accessibleName()


@pytest.mark.parametrize("form", [Form.TOGETHER, Form.WAVES])
def test_twelve_people_are_on_one_page_and_forty_take_turns(qtbot: QtBot, form: Form) -> None:
    twelve = Hall(group_session(form, demo_plan(), club(12))).do(Begin()).wait(2_000)
    assert gym_page(qtbot, twelve, (1920, 1080)).pages == 1
    forty = Hall(group_session(form, demo_plan(), club(40))).do(Begin()).wait(2_000)
    assert gym_page(qtbot, forty, (1920, 1080)).pages > 1


def test_turning_pages_show_everybody(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.STATIONS, demo_plan(), club(24))).do(Begin()).wait(6_000)
    page = gym_page(qtbot, hall, (1920, 1080))
    seen: set[str] = set()
    for _ in range(page.pages):
        page.show_room(hall.room.look(), hall.room.now_ms())
        seen |= {tile._letter.text() for tile in page.findChildren(StationTile) if tile.isVisibleTo(page)}
        hall.wait(8_000)
    assert seen == {"A", "B", "C", "D", "E", "F", "G", "H", "I", "J"}


def test_names_are_never_cut_at_the_usual_twelve(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), club(12))).do(Begin()).wait(4_000)
    page = gym_page(qtbot, hall, (1920, 1080))
    (band,) = [band for band in page.findChildren(RosterBand) if band.isVisibleTo(page)]
    (crew,) = band._crews
    cell = band._place(band._grid(crew), 0, 0, 0.0).width()
    assert cell >= band._cell[0] - 1


def test_no_pain_note_or_surname_is_on_the_gym_screen(qtbot: QtBot) -> None:
    athletes = club(24)
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), athletes)).do(Begin()).wait(4_000)
    page = gym_page(qtbot, hall, (1920, 1080))
    (band,) = [band for band in page.findChildren(RosterBand) if band.isVisibleTo(page)]
    spoken = band.accessibleDescription()
    assert "Anouk Dulsea" not in spoken
    assert "Anouk" in spoken
    assert not any(athlete.notes and athlete.notes in spoken for athlete in athletes)


def test_a_pause_and_the_end_are_said(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), club(3))).do(Begin()).wait(6_000).do(Pause())
    page = gym_page(qtbot, hall, (1920, 1080))
    assert page._still.isVisibleTo(page)
    assert misfits(page) == []
    hall.do(Stop())
    over = gym_page(qtbot, hall, (1920, 1080))
    assert "over" in over._outside._line.text()
    assert misfits(over) == []


def test_who_has_gone_stays_named_and_quiet(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), club(3))).do(Begin()).wait(6_000).do(Depart(1))
    page = gym_page(qtbot, hall, (1920, 1080))
    (band,) = [band for band in page.findChildren(RosterBand) if band.isVisibleTo(page)]
    assert "Bram: has gone" in band.accessibleDescription()


def test_names_at_a_station_are_never_smaller_but_take_turns_and_the_coach_hears_of_it(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.STATIONS, demo_plan(), club(40))).do(Begin()).wait(8_000)
    page = gym_page(qtbot, hall, (1920, 1080))
    assert page.crowded
    tile = next(each for each in page.findChildren(StationTile) if each.isVisibleTo(page))
    scene = room_scene(hall.room.session, hall.room.look(), page._names, hall.room.now_ms())
    (station,) = [each for each in scene.stations if each.letter == tile._letter.text()]
    seen: set[str] = set()
    for turn in range(12):
        tile.show_station(station, coming=False, now_ms=turn * PAGE_MS)
        assert tile._names.fitted()[0].pixelSize() == tile._sizes.name
        seen |= set(tile._names.text().split(APART))
    assert seen == set(station.names)


def test_those_on_the_right_stand_at_the_right_of_their_tiles(qtbot: QtBot) -> None:
    hall = Hall(group_session(Form.TOGETHER, demo_plan(), club(12))).do(Begin()).wait(6_000)
    page = gym_page(qtbot, hall, (1920, 1080))
    (band,) = [band for band in page.findChildren(RosterBand) if band.isVisibleTo(page)]
    people, image = band._crews[0].people, band.grab().toImage()
    grid = band._grid(band._crews[0])
    for index, someone in enumerate(people):
        place = band._place(grid, *divmod(index, grid.columns), 0.0).toRect()
        middle = place.center().y()
        edges = {Side.LEFT: place.left() + 2, Side.RIGHT: place.right() - 2}
        light = {side: image.pixelColor(x, middle).lightness() for side, x in edges.items()}
        assert max(light, key=light.__getitem__) is someone.side, someone.name


@pytest.mark.parametrize("lightness", [Lightness.LIGHT, Lightness.DARK])
@pytest.mark.parametrize("form", Form)
def test_forty_with_long_names_fit_in_every_scheme_and_from_right_to_left(
    qtbot: QtBot, form: Form, lightness: Lightness
) -> None:
    squad = [replace(one, short=f"{one.name.split()[0]}-Maximiliane") for one in club(40)]
    hall = Hall(group_session(form, demo_plan(), squad)).do(Begin()).wait(8_000)
    scheme = choose(Place.TRAINING, lightness, high_contrast=True)
    look = Look(scheme, FAMILY, training_scale(1080), DISTANCE_M)
    page = GymPage(look, hall.room.session, 1080 / PANEL_MM)
    page.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    qtbot.addWidget(page)
    page.resize(1920, 1080)
    for _ in range(3):
        page.show_room(hall.room.look(), hall.room.now_ms())
        page.grab()
    assert misfits(page) == []
    assert page.crowded
