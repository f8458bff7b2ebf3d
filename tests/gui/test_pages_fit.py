"""Every page fits, in every size, scheme, size of text, language and direction; and the check can fail."""

import os
import subprocess
import sys
from itertools import combinations
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPixmap
from PySide6.QtWidgets import QApplication, QDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from app.planfile.screen_settings import ScreenSettings
from app.views.contrast import contrast
from tests.fitting import misfits, nameless, seen
from tests.pages import PAGES, Shown, opened
from tests.pairwise import pairwise

ROOT = Path(__file__).parents[2]
SIZES = ((1366, 768), (1920, 1080), (3840, 2160))
SCALES = (1, 2)
SCHEMES = (
    ("by place", "normal"),
    ("light", "normal"),
    ("dark", "normal"),
    ("light", "high"),
    ("dark", "high"),
)
MOTIONS = ("full", "reduced")
TEXTS = (100, 125, 200)
LANGUAGES = ("en", "de")
DIRECTIONS = ("ltr", "rtl")
READ_RATIO = 4.5

PARAMETERS = (tuple(PAGES), SIZES, SCALES, SCHEMES, MOTIONS, TEXTS, LANGUAGES, DIRECTIONS)
ROWS = pairwise(*PARAMETERS)


def shown(size: tuple[int, int], scale: int, screen: ScreenSettings) -> Shown:
    """A screen of so many pixels, of which `scale` make a logical one."""
    return Shown(size[0] // scale, size[1] // scale, screen)


def faint(page: QWidget, picture: QPixmap) -> list[str]:
    """Labels whose words do not stand out from what is painted behind them."""
    image, ratio = picture.toImage(), picture.devicePixelRatio()
    found = []
    for part in page.findChildren(QLabel):
        if not (part.isVisibleTo(page) and part.text() and part.isEnabled()):
            continue
        place = seen(part, page)
        if place.size() != part.size() or not page.rect().contains(place):
            continue
        corner = place.topLeft()
        behind = image.pixelColor(round(corner.x() * ratio), round(corner.y() * ratio)).name()
        words = part.palette().color(part.foregroundRole()).name()
        if contrast(words, behind) < READ_RATIO:
            found.append(f"{part.text()[:40]}: {words} on {behind}")
    return found


@pytest.mark.parametrize(
    ("name", "size", "scale", "scheme", "motion", "text", "language", "direction"),
    ROWS,
    ids=["-".join(str(value).replace(" ", "") for value in row) for row in ROWS],
)
def test_a_page_fits_however_it_is_seen(
    name: str,
    size: tuple[int, int],
    scale: int,
    scheme: tuple[str, str],
    motion: str,
    text: int,
    language: str,
    direction: str,
    qtbot: QtBot,
) -> None:
    screen = ScreenSettings(scheme[0], scheme[1], motion, text, language, direction)
    with opened(name, shown(size, scale, screen)) as page:
        assert (page.width(), page.height()) == (size[0] // scale, size[1] // scale)
        assert misfits(page) == []
        assert nameless(page) == []
        picture = QPixmap(*size)
        picture.setDevicePixelRatio(scale)
        picture.fill(QColor(page.window().palette().color(page.backgroundRole())))
        page.render(picture)
        assert faint(page, picture) == []


@pytest.mark.parametrize("name", PAGES)
def test_a_page_fits_a_laptop_with_letters_twice_as_large_in_german(name: str, qtbot: QtBot) -> None:
    """The tightest there is, whatever the pairs above hold."""
    with opened(name, Shown(1366, 768, ScreenSettings(text=200, language="de"))) as page:
        assert misfits(page) == []


def test_pages_fit_where_the_system_itself_doubles_every_pixel() -> None:
    """At a scale of 2 set from outside, which a process takes once and for all."""
    words = (
        "import tests.pages as p; from tests.fitting import misfits;"
        "from app.views.application import make_application; a = make_application(['x']);"
        "from app.planfile.screen_settings import ScreenSettings as S\n"
        "for name in p.PAGES:\n"
        "    with p.opened(name, p.Shown(960, 540, S())) as page:\n"
        "        assert page.devicePixelRatio() == 2.0\n"
        "        print(name, misfits(page))"
    )
    environment = {**os.environ, "QT_SCALE_FACTOR": "2", "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, "-c", words], cwd=ROOT, env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.splitlines() == [f"{name} []" for name in PAGES]


def test_every_pair_of_values_is_among_the_rows() -> None:
    for one, other in combinations(range(len(PARAMETERS)), 2):
        pairs = {(row[one], row[other]) for row in ROWS}
        assert len(pairs) == len(PARAMETERS[one]) * len(PARAMETERS[other])


@pytest.fixture
def crowd(qtbot: QtBot) -> QWidget:
    page = QWidget()
    qtbot.addWidget(page)
    page.resize(400, 300)
    page.show()
    return page


def placed(part: QWidget, page: QWidget, *place: int) -> None:
    part.setParent(page)
    part.setGeometry(*place)
    part.show()


def test_words_wider_or_higher_than_their_label_are_found(crowd: QWidget) -> None:
    placed(QLabel("Side-lying external rotation"), crowd, 10, 10, 60, 30)
    placed(QLabel("Heel raise"), crowd, 10, 60, 200, 6)
    placed(QPushButton("Begin the session now"), crowd, 10, 120, 40, 30)
    wrapped = QLabel("one line and another line and yet another line")
    wrapped.setWordWrap(True)
    placed(wrapped, crowd, 10, 200, 90, 20)
    found = misfits(crowd)
    assert [each.split("'")[1][:10] for each in found] == [
        "Side-lying",
        "Heel raise",
        "Begin the ",
        "one line a",
    ]
    assert all("needs" in each for each in found)


def test_what_lies_over_something_else_is_found_with_both_names(crowd: QWidget) -> None:
    placed(QLabel("one"), crowd, 10, 10, 100, 40)
    placed(QLabel("other"), crowd, 60, 20, 100, 40)
    (found,) = misfits(crowd)
    assert "'one'" in found
    assert "lies over QLabel 'other'" in found


def test_what_reaches_out_of_its_place_is_found(crowd: QWidget) -> None:
    placed(QLabel("far right"), crowd, 380, 10, 100, 40)
    (found,) = misfits(crowd)
    assert found == "QLabel 'far right' in QWidget reaches out of its place"


def test_what_is_well_placed_is_not_found(crowd: QWidget) -> None:
    column, row = QVBoxLayout(crowd), QHBoxLayout()
    column.addWidget(QLabel("above"))
    column.addLayout(row)
    row.addWidget(QLabel("left"))
    row.addWidget(QPushButton("right"))
    crowd.grab()
    assert misfits(crowd) == []


def test_a_button_without_a_name_is_found(crowd: QWidget) -> None:
    placed(QPushButton(), crowd, 10, 10, 100, 40)
    assert nameless(crowd) == ["QPushButton '' in QWidget"]


def test_words_that_do_not_stand_out_are_found(crowd: QWidget) -> None:
    label = QLabel("grey on white")
    label.setStyleSheet("color: #bbbbbb; background: #ffffff")
    placed(label, crowd, 10, 10, 200, 40)
    assert faint(crowd, crowd.grab()) == ["grey on white: #bbbbbb on #ffffff"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("text", TEXTS)
@pytest.mark.parametrize("name", ["work", "home"])
def test_the_keys_fit_into_the_window(name: str, text: int, language: str, qtbot: QtBot) -> None:
    with opened(name, Shown(1366, 768, ScreenSettings(text=text, language=language))) as page:
        qtbot.keyClick(page, Qt.Key.Key_F1)
        (keys,) = [each for each in page.findChildren(QDialog) if each.isVisible()]
        QApplication.processEvents()
        assert keys.width() <= page.window().width()
        assert keys.height() <= page.window().height()
        assert misfits(keys) == []
        assert nameless(keys) == []
        keys.close()
