"""Making a report from Review, and the actions of an athlete's page."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path
from typing import cast

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QDate, Qt, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from app.domain.errors import PacewrightError
from app.domain.keeping import Note
from app.store.database import Database, open_database
from app.views.lettering import desk_scale, load_fonts
from app.views.review.handout.dialog import WRONG_WAY_ROUND, ReportDialog
from app.views.review.handout.handing_out import HandingOut, file_name
from app.views.theme import LIGHT, Look
from app.views.worker import RecordKeeper
from tests.entering import AtOnce

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
FONTS = Path(__file__).parents[2] / "resources" / "fonts"
EARLY = Note(
    "0190163d-8694-739b-aea5-966c26f8ad91", "Ines", "Quiet landings", "Ruben", NOW.replace(month=1), "UTC"
)
LATE = Note("0190163d-8694-739b-aea5-966c26f8ad92", "Ines", "Box of 20 cm", "Ruben", NOW, "UTC")


class Desk:
    """The dialog over a window, and what was opened."""

    def __init__(self, qtbot: QtBot, database: Database) -> None:
        self.opened: list[QUrl] = []
        self.window = QWidget()
        self.window.resize(1366, 768)
        qtbot.addWidget(self.window)
        self.window.show()
        self.handing_out = HandingOut(cast("RecordKeeper", AtOnce(database)), lambda: (NOW, "UTC"), FONTS)
        self.handing_out.open("Ines", Look(LIGHT, load_fonts(FONTS), desk_scale(1366)), self.window)
        (self.dialog,) = self.window.findChildren(ReportDialog)


@pytest.fixture
def desk(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Desk]:
    with open_database(tmp_path / "record.db") as database:
        for note in (EARLY, LATE):
            database.answers.keep(note)
        made = Desk(qtbot, database)
        monkeypatch.setattr(QDesktopServices, "openUrl", made.opened.append)
        yield made
        made.dialog.close()
        QApplication.processEvents()


def save_to(monkeypatch: pytest.MonkeyPatch, path: Path | None) -> list[str]:
    offered: list[str] = []

    def pick(_parent: QWidget, _title: str, told: str, _filter: str) -> tuple[str, str]:
        offered.append(told)
        return ("" if path is None else str(path)), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", pick)
    return offered


def words(path: Path) -> str:
    with PdfReader(path) as reader:
        return "\n".join(page.extract_text() for page in reader.pages)


def test_a_report_of_twelve_weeks_is_written_where_it_is_said_and_opened(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "ines.pdf"
    offered = save_to(monkeypatch, file)
    assert desk.dialog.days == (date(2026, 9, 7), date(2026, 11, 25))
    desk.dialog.save.click()
    assert offered == ["Ines 2026-11-25.pdf"]
    assert "Report: Ines" in words(file)
    assert "Box of 20 cm" not in words(file)
    assert [url.toLocalFile() for url in desk.opened] == [str(file)]
    assert desk.dialog.message.text() == f"Written to {file}. It holds health data and is not encrypted."


def test_only_notes_that_are_ticked_stand_in_it(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "ines.pdf"
    save_to(monkeypatch, file)
    notes = desk.dialog.notes
    assert [notes.item(row).checkState() for row in range(notes.count())] == [Qt.CheckState.Unchecked]
    notes.item(0).setCheckState(Qt.CheckState.Checked)
    desk.dialog.first.setDate(QDate(2026, 1, 1))
    assert notes.count() == 2
    desk.dialog.form_of.setCurrentIndex(1)
    desk.dialog.language.setCurrentIndex(1)
    desk.dialog.opened.setChecked(False)
    desk.dialog.save.click()
    assert "Dein Training: Ines" in words(file)
    assert "Box of 20 cm" in words(file)
    assert "Quiet landings" not in words(file)
    assert desk.opened == []


def test_the_wrong_way_round_is_said_and_nothing_is_asked(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    offered = save_to(monkeypatch, None)
    desk.dialog.last.setDate(QDate(2026, 1, 1))
    desk.dialog.save.click()
    assert desk.dialog.message.text() == WRONG_WAY_ROUND
    assert offered == []


def test_no_place_chosen_writes_nothing(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    save_to(monkeypatch, None)
    before = desk.dialog.message.text()
    desk.dialog.save.click()
    assert desk.dialog.message.text() == before
    assert desk.opened == []


def test_a_place_that_cannot_be_written_is_said_plainly(
    desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from app.views.review.handout.dialog import Wanted
    from app.views.review.handout.handing_out import written

    wanted = Wanted("Ines", date(2026, 9, 7), date(2026, 11, 25), "en", False, frozenset(), True)
    with open_database(tmp_path / "record.db") as database:
        nowhere = tmp_path / "no" / "a.pdf"
        with pytest.raises(PacewrightError, match="cannot be written"):
            written(database, wanted, NOW.date(), FONTS, nowhere)


@pytest.mark.parametrize(
    ("name", "file"), [("Ines", "Ines"), ("a/b\\c:d", "a b c d"), ("..", "report"), ("N" * 100, "N" * 60)]
)
def test_a_name_becomes_one_that_a_file_may_have(name: str, file: str) -> None:
    assert file_name(name) == file
