"""The reference side is chosen in Review with who and why, into a real record, and taken back."""

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any, cast

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from app.domain.keeping import Result
from app.domain.plan import Side
from app.store.database import Database, open_database
from app.views.lettering import desk_scale, load_fonts
from app.views.review.reference.choosing import KEPT, TAKEN_BACK, UNCHANGED, Choosing
from app.views.review.reference.dialog import ReferenceDialog
from app.views.review.signing import WHO_AND_WHY
from app.views.theme import LIGHT, Look
from app.views.worker import RecordKeeper
from tests.reviewing import FONTS, Room

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
HOP = Result("0190163d-8694-739b-aea5-966c26f8ad91", "Ines", "single_hop", "151", "cm", NOW, "UTC", Side.LEFT)


class AtOnce:
    """A keeper that answers on the spot."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def ask(self, query: Callable[[Database], Any], then: Callable[[Any], None]) -> None:
        then(query(self._database))


class Choice:
    """The dialog over a window, and the record behind it."""

    def __init__(self, qtbot: QtBot, database: Database) -> None:
        self.database, self.refreshed, self.minutes = database, 0, 0
        self.window = QWidget()
        self.window.resize(1366, 768)
        qtbot.addWidget(self.window)
        self.window.show()
        choosing = Choosing(cast("RecordKeeper", AtOnce(database)), self._stamp, self._refresh)
        choosing.open("Ines", Look(LIGHT, load_fonts(FONTS), desk_scale(1366)), self.window)
        (self.dialog,) = self.window.findChildren(ReferenceDialog)

    def _stamp(self) -> tuple[datetime, str]:
        """A minute later each time."""
        self.minutes += 1
        return NOW + timedelta(minutes=self.minutes), "UTC"

    def _refresh(self) -> None:
        self.refreshed += 1

    def choose(self, side: str, who: str = "Ruben", why: str = "the sound side") -> str:
        """What the dialog says once a side was chosen by hand."""
        self.dialog.side.setCurrentIndex(self.dialog.side.findText(side))
        self.dialog.signing.who.setText(who)
        self.dialog.signing.why.setText(why)
        self.dialog.choose.click()
        return self.dialog.message.text()

    def side(self) -> Side | None:
        return self.database.reviewing.athlete("Ines", NOW.date(), NOW.date(), NOW.date()).reference

    @property
    def history(self) -> list[tuple[object, object, str, str, bool]]:
        return [
            (
                each.correction.before,
                each.correction.after,
                each.correction.change.who,
                each.correction.change.why,
                each.holds,
            )
            for each in self.dialog.lines.rows
        ]


@pytest.fixture
def choice(qtbot: QtBot, tmp_path: Path) -> Iterator[Choice]:
    with open_database(tmp_path / "record.db") as database:
        database.answers.keep(HOP)
        made = Choice(qtbot, database)
        yield made
        made.dialog.close()
        QApplication.processEvents()


def test_until_somebody_chooses_there_is_none(choice: Choice) -> None:
    assert (choice.side(), choice.dialog.side.currentText(), choice.history) == (None, "no side", [])


def test_a_side_is_kept_with_who_and_why_and_read_by_the_review(choice: Choice) -> None:
    assert choice.choose("right") == KEPT
    assert choice.side() is Side.RIGHT
    assert choice.history == [(None, "right", "Ruben", "the sound side", True)]
    assert choice.refreshed == 1
    assert choice.choose("right") == UNCHANGED


def test_another_choice_leaves_the_first_in_the_history_and_is_taken_back(choice: Choice) -> None:
    choice.choose("right")
    choice.choose("left", why="the right one was hurt before")
    assert choice.side() is Side.LEFT
    assert [line[-1] for line in choice.history] == [True, False]
    choice.dialog.history.selectRow(0)
    choice.dialog.signing.why.setText("a slip")
    choice.dialog.take_back.click()
    assert choice.dialog.message.text() == TAKEN_BACK
    assert choice.side() is Side.RIGHT
    assert choice.dialog.side.currentText() == "right"
    assert len(choice.history) == 3
    assert choice.choose("no side", why="both were operated on") == KEPT
    assert choice.side() is None


def test_what_no_longer_holds_cannot_be_taken_back(choice: Choice) -> None:
    choice.choose("right")
    choice.choose("left")
    choice.dialog.history.selectRow(1)
    assert not choice.dialog.take_back.isEnabled()


@pytest.mark.parametrize(("who", "why"), [("", "the sound side"), ("Ruben", " ")])
def test_nobody_chooses_without_who_and_why(choice: Choice, who: str, why: str) -> None:
    assert choice.choose("right", who, why) == WHO_AND_WHY
    assert choice.side() is None


def test_the_page_says_the_side_beside_left_against_right_and_asks_for_another(
    qtbot: QtBot, qapp: QGuiApplication
) -> None:
    room = Room(qtbot).open("Hugo")
    button = room.widget.athlete.board.reference_side
    assert (button.text(), button.isEnabled()) == ("Reference side: none", True)
    button.click()
    assert room.referred == ["Hugo"]
    room.widget.present(on=True)
    assert not button.isEnabled()
    room.close()
