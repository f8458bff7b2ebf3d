"""Every page in German: nothing English is left on it, and the language can be changed while it is open."""

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, QLocale, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDialogButtonBox,
    QLabel,
    QLineEdit,
    QMessageBox,
    QPushButton,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from app import wiring
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.views.translation import Tongue, figure, language_of, locale_of, tr
from tests.integration.test_translations import KNOWN
from tests.pages import PAGES, Shown, opened
from tests.rig import Rig

GERMAN = Shown(1920, 1080, ScreenSettings(language="de"))
FOLDER = wiring.resources_folder() / "translations"
ENGLISH = re.compile(r"\b(the|and|of|with|for|not|is|this|to|that|from|are|what|your)\b", re.IGNORECASE)
HOLE = re.compile(r"\\\{\w+\\\}|%n")
OWN = (
    "the shoulder hitches",
    "The record is on a slow disk.",
    "Landing control, Hugo: cut short after 12 reps. All of it is kept.",
    "Sharp pain under the kneecap, stopped.",
    "Stage",
    "University of North Carolina",
)
"""What the pages of the tests were given to show, and whom a source names."""


def texts_of(value: object) -> Iterator[str]:
    """Every text of a file: what plans and rosters say stands as it was written, in any language."""
    if isinstance(value, str):
        yield from (value, value[:1].upper() + value[1:])
    elif isinstance(value, dict | list):
        for each in value.values() if isinstance(value, dict) else value:
            yield from texts_of(each)


def written() -> list[str]:
    """Every text of the demonstration's files and of the tests' own, the longest first."""
    files = (tomllib.loads(path.read_text()) for path in wiring.demo_folder().rglob("*.toml"))
    texts = {text for file in files for text in texts_of(file) if len(text) > 2}
    return sorted({*texts, *OWN}, key=len, reverse=True)


OF_PLANS = written()


def as_pattern(source: str) -> re.Pattern[str]:
    """What a message looks like once it is filled in."""
    return re.compile(HOLE.sub(".+", re.escape(source)))


SOURCES = [
    as_pattern(source)
    for (source, _, _), forms in KNOWN.items()
    if source not in forms and re.search(r"[A-Za-z]{3}", re.sub(r"\{\w+\}", "", source))
]


def said(page: QWidget) -> Iterator[str]:
    """Everything a page says: seen, pointed at, or read out."""
    for part in page.findChildren(QWidget):
        if not part.isVisibleTo(page):
            continue
        yield from (part.accessibleName(), part.accessibleDescription(), part.toolTip())
        if isinstance(part, QLabel | QAbstractButton):
            yield part.text()
        if isinstance(part, QLineEdit):
            yield part.placeholderText()
        if isinstance(part, QComboBox):
            yield from (part.itemText(index) for index in range(part.count()))
        if isinstance(part, QTableView):
            model = part.model()
            for column in range(model.columnCount()):
                yield str(model.headerData(column, Qt.Orientation.Horizontal))
                if model.rowCount():
                    yield str(model.index(0, column).data())


def english_left(texts: Iterator[str]) -> set[str]:
    """Those that are a message in English, or read like English, plans' own words aside."""
    left = set()
    for text in texts:
        bare = text
        for own in OF_PLANS:
            bare = bare.replace(own, "")
        if any(source.fullmatch(bare) for source in SOURCES) or ENGLISH.search(bare):
            left.add(text)
    return left


@pytest.mark.parametrize("name", PAGES)
def test_no_english_is_left_on_a_german_page(name: str, qtbot: QtBot) -> None:
    with opened(name, GERMAN) as page:
        assert english_left(said(page)) == set()


def test_the_same_page_in_english_would_be_found(qtbot: QtBot) -> None:
    with opened("rest", Shown(1920, 1080, ScreenSettings(language="en"))) as page:
        assert len(english_left(said(page))) > 5


@pytest.fixture
def german() -> Iterator[Tongue]:
    tongue = Tongue(FOLDER)
    tongue.speak("de")
    yield tongue
    tongue.end()


def test_numbers_days_and_plurals_are_written_in_german(german: Tongue) -> None:
    assert figure(19.2) == "19,2"
    assert QLocale().toString(QDate(2026, 11, 21), tr("ddd d MMM yyyy")) == "Sa. 21. Nov. 2026"
    assert tr("%n session(s)", "", 1) == "1 Einheit"
    assert tr("%n session(s)", "", 3) == "3 Einheiten"


def test_in_english_a_plural_has_its_s() -> None:
    assert [tr("%n session(s)", "", n) for n in (0, 1, 2)] == ["0 sessions", "1 session", "2 sessions"]


def test_what_reads_alike_in_english_is_told_apart(german: Tongue) -> None:
    assert tr("missed") != tr("missed", "a rep")


def test_the_buttons_that_qt_makes_are_german_too(german: Tongue, qtbot: QtBot) -> None:
    box = QMessageBox(QMessageBox.Icon.Warning, "Pacewright", "?", QMessageBox.StandardButton.Discard)
    qtbot.addWidget(box)
    buttons = box.findChild(QDialogButtonBox)
    assert buttons is not None
    (discard,) = buttons.buttons()
    assert discard.text().replace("&", "") == "Verwerfen"


def test_afterwards_it_is_as_before(german: Tongue) -> None:
    german.end()
    assert tr("Paused") == "Paused"
    assert figure(19.2) == "19.2"


@pytest.mark.parametrize(("wanted", "expected"), [("de", "de"), ("en", "en"), ("system", "en")])
def test_the_systems_language_is_english_where_it_is_none_of_ours(wanted: str, expected: str) -> None:
    assert language_of(wanted) == expected


def test_a_language_has_its_numbers_where_the_system_speaks_another() -> None:
    assert locale_of("de").decimalPoint() == ","
    assert locale_of("en").decimalPoint() == "."


def test_the_pages_are_built_again_when_the_language_changes(qtbot: QtBot, tmp_path: Path) -> None:
    rig = Rig(qtbot, tmp_path, wiring.open_record)
    rig.settings = Settings(screen=ScreenSettings(language="de"))
    rig.open()
    assert "Wer trainiert?" in rig.texts()
    rig.window._appearance.take(Settings(screen=ScreenSettings(language="en")))
    assert "Who is training?" in rig.texts()
    names = [each.text() for each in rig.page.findChildren(QPushButton)]
    assert "Screen" in names
    assert "Bildschirm" not in names
    rig.window.close()
