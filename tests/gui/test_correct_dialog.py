"""Correcting a session from Review, with a real record behind it."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QDateTime, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QApplication, QComboBox, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.corrections import Correction
from app.domain.records import RunSummary
from app.store.database import Database
from app.views.review.content import ReviewContent
from app.views.review.correct_dialog import SAME, CorrectDialog
from app.views.review.correcting import CORRECTED, TAKEN_BACK, UNCHANGED
from app.views.review.marks import LEGEND, MARK
from app.views.review.page import ReviewPage
from app.views.review.room import ReviewRoom
from app.views.review.signing import WHO_AND_WHY
from app.views.review.value_editor import WALL
from app.views.window import Window
from tests.rig import Rig

AT = datetime(2026, 11, 25, 9, 30, tzinfo=UTC)


class Review:
    """A window in whose review one session of four reps is chosen, and its dialog."""

    def __init__(self, rig: Rig, qtbot: QtBot) -> None:
        self.rig, self.qtbot = rig, qtbot
        self.minutes = 0
        rig.house = replace(rig.house, stamp=self._stamp)
        window = rig.open(wiring.read_plan(rig.plan))
        rig.press(Qt.Key.Key_Space)
        rig.wait(15_000)
        rig.press(Qt.Key.Key_4)
        rig.press(Qt.Key.Key_2)
        rig.wait(40_000)
        rig.press(Qt.Key.Key_5)
        rig.press(Qt.Key.Key_Space)
        window.open_review()
        (room,) = window.findChildren(ReviewRoom)
        room.open_sessions()
        self.window: Window = window
        qtbot.waitUntil(lambda: self._page().content is not None, timeout=3_000)
        self.content.list.selectRow(0)

    def _stamp(self) -> tuple[datetime, str]:
        """A moment a minute later after each correction, however often it is asked for."""
        return AT + timedelta(minutes=self.minutes), "Europe/Lisbon"

    def _page(self) -> ReviewPage:
        (page,) = self.window.findChildren(ReviewPage)
        return page

    @property
    def content(self) -> ReviewContent:
        content = self._page().content
        assert content is not None
        return content

    @property
    def dialog(self) -> CorrectDialog:
        (dialog,) = self.window.findChildren(CorrectDialog)
        return dialog

    def open_dialog(self) -> CorrectDialog:
        self.qtbot.mouseClick(self.content.correct, Qt.MouseButton.LeftButton)
        self.qtbot.waitUntil(lambda: bool(self.window.findChildren(CorrectDialog)), timeout=3_000)
        return self.dialog

    def choose(self, part: int, title: str) -> None:
        self.dialog.part_list.selectRow(part)
        place = self.dialog.field.findText(title)
        assert place >= 0, [self.dialog.field.itemText(at) for at in range(self.dialog.field.count())]
        self.dialog.field.setCurrentIndex(place)
        self.dialog.field.activated.emit(place)

    def correct(self, who: str = "Tomas", why: str = "counted on the video") -> None:
        dialog = self.dialog
        dialog.signing.who.setText(who)
        dialog.signing.why.setText(why)
        self.qtbot.mouseClick(dialog.correct, Qt.MouseButton.LeftButton)
        self.minutes += 1

    def heard(self, sentence: str) -> None:
        """Wait until the dialog says so, and the list behind it was read anew."""
        self.qtbot.waitUntil(lambda: self.dialog.message.text() == sentence, timeout=3_000)
        answers: list[int] = []
        self.window._keeper.ask(lambda _database: 1, answers.append)
        self.qtbot.waitUntil(lambda: bool(answers), timeout=3_000)

    def shown(self, title: str, cell: str) -> None:
        """Wait until the list behind the dialog shows a cell."""
        self.qtbot.waitUntil(lambda: self.cells()[title] == cell, timeout=3_000)

    def cells(self) -> dict[str, str]:
        """The one line of the list."""
        (run,) = self.content.model.rows
        return {column.title: column.text(run) for column in self.content.model.columns}

    def run(self) -> RunSummary:
        (run,) = self.rig.runs()
        return run

    def ask(self, database: Database) -> tuple[Correction, ...]:
        return database.corrections.history_of(self.run().run_id).corrections

    def corrections(self) -> tuple[Correction, ...]:
        with wiring.open_record(self.rig.database) as database:
            return self.ask(database)


@pytest.fixture
def review(qtbot: QtBot, tmp_path: Path) -> Iterator[Review]:
    rig = Rig(qtbot, tmp_path, wiring.open_record)
    yield Review(rig, qtbot)
    rig.window.close()


def test_reps_are_corrected_with_who_and_why_and_the_list_says_so(review: Review) -> None:
    before = review.cells()
    dialog = review.open_dialog()
    assert [part.title for part in dialog.parts.rows] == [
        "The session",
        "1  Heel raise, set 1",
        "2  Heel raise, set 2",
    ]
    review.choose(1, "Reps")
    assert dialog.present.text() == "as counted"
    dialog.editor.reps.setValue(1)
    review.correct()
    review.heard(CORRECTED)
    (made,) = review.corrections()
    assert (made.change.who, made.change.why, made.change.at) == ("Tomas", "counted on the video", AT)
    assert (made.before, made.after) == (None, 1)
    review.shown("Reps met", f"{MARK} 3 of 4")
    after = review.cells()
    assert {title for title in before if before[title] != after[title]} == {"Reps met"}
    assert review.content.list_card.aside.text() == LEGEND
    assert dialog.parts.data(dialog.parts.index(1, 1)) == f"{MARK} 1"
    assert dialog.signing.why.text() == ""
    assert dialog.signing.who.text() == "Tomas"


def test_the_load_used_is_typed_with_a_point_or_a_comma_and_nothing_else(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "Load in kg")
    load = dialog.editor.load
    assert load.text() == ""
    review.qtbot.keyClicks(load, "-1a2,5kg")
    assert load.text() == "12,5"
    review.correct()
    review.heard(CORRECTED)
    (made,) = review.corrections()
    assert (made.change.field, made.before, made.after) == ("load_kg", None, "12.5")
    load.clear()
    review.qtbot.keyClicks(load, "1000.5")
    assert load.text() == "1000", "no more than a thousand"
    load.clear()
    review.correct()
    review.heard(CORRECTED)
    assert review.corrections()[-1].after is None


def test_without_who_or_why_nothing_is_corrected(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "RPE")
    dialog.editor.scale.setCurrentIndex(dialog.editor.scale.findData(9))
    for who, why in (("", "why"), ("Tomas", "  ")):
        review.correct(who, why)
        assert dialog.message.text() == WHO_AND_WHY
    assert review.corrections() == ()


def test_the_same_value_again_is_no_correction(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "RPE")
    assert dialog.editor.value == 4
    review.correct()
    assert dialog.message.text() == SAME


def test_a_correction_is_taken_back_by_a_further_one(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "Pain")
    dialog.editor.scale.setCurrentIndex(dialog.editor.scale.findData(None))
    review.correct()
    review.heard(CORRECTED)
    review.shown("Pain", f"{MARK} –")
    assert not dialog.take_back.isEnabled()
    dialog.history.selectRow(0)
    assert dialog.take_back.isEnabled()
    dialog.signing.why.setText("it was two after all")
    review.qtbot.mouseClick(dialog.take_back, Qt.MouseButton.LeftButton)
    review.heard(TAKEN_BACK)
    assert [line.state for line in dialog.lines.rows] == ["holds", "replaced"]
    review.shown("Pain", "2")
    dialog.history.selectRow(1)
    assert not dialog.take_back.isEnabled()


def test_the_athlete_and_the_day_are_corrected_by_the_clock_on_the_wall(review: Review) -> None:
    started = review.run().started_at
    dialog = review.open_dialog()
    review.choose(0, "Athlete")
    dialog.editor.line.setText("Ines")
    review.correct()
    review.heard(CORRECTED)
    review.choose(0, "Date and time")
    assert dialog.editor.value == started.isoformat()
    dialog.editor.moment.setDateTime(QDateTime.fromString("2026-11-24 18:05", WALL))
    review.correct()
    review.qtbot.waitUntil(lambda: len(review.corrections()) == 2, timeout=3_000)
    run = review.run()
    assert run.athlete == "Ines"
    assert run.started_at.astimezone(UTC) == datetime(2026, 11, 24, 18, 5, tzinfo=UTC)  # this house is in UTC
    assert run.corrected == {"athlete", "started_at"}


def test_a_rep_is_missed_and_gets_its_faults(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(2, "Rep 1: done or missed")
    dialog.editor.missed.setCurrentIndex(1)
    review.correct()
    review.heard(CORRECTED)
    assert review.run().reps_done == 3
    review.choose(2, "Rep 2: faults")
    dialog.editor.line.setText("hurried, heel drops")
    review.correct()
    review.qtbot.waitUntil(lambda: len(review.corrections()) == 2, timeout=3_000)
    assert review.corrections()[-1].after == ("hurried", "heel drops")


def test_a_value_that_cannot_be_is_refused_in_words(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(0, "Athlete")
    dialog.editor.line.setText(" ")
    review.correct()
    assert dialog.message.text().startswith("Athlete is a text")
    assert review.corrections() == ()


def test_what_was_corrected_elsewhere_meanwhile_is_not_written_twice(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "RPE")
    dialog.editor.scale.setCurrentIndex(dialog.editor.scale.findData(9))
    review.correct()
    review.heard(CORRECTED)
    field = dialog._field_chosen()
    dialog.corrected.emit(field, 9, "Tomas", "again")
    review.heard(UNCHANGED)
    assert len(review.corrections()) == 1


def test_what_disagrees_is_said_and_settled_by_one_more_correction(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "RPE")
    dialog.editor.scale.setCurrentIndex(dialog.editor.scale.findData(9))
    assert dialog.conflict.isHidden()
    review.correct()
    review.heard(CORRECTED)
    (ours,) = review.corrections()
    elsewhere = replace(
        ours,
        id=wiring.new_run_id(AT),
        change=replace(ours.change, after=2, who="Bea", at=AT - timedelta(days=1)),
    )
    with wiring.open_record(review.rig.database) as database:
        database.corrections.add([elsewhere])
    review.qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    review.qtbot.waitUntil(lambda: not review.window.findChildren(CorrectDialog), timeout=3_000)
    dialog = review.open_dialog()
    assert "9 (Tomas) holds, and 2 (Bea) was said elsewhere" in dialog.conflict.text()
    assert dialog.conflict.isVisible()
    review.choose(1, "RPE")
    review.correct(why="asked them both")
    review.heard(CORRECTED)
    assert dialog.conflict.isHidden()
    assert len(review.corrections()) == 3


def test_the_one_who_corrected_last_is_remembered_and_the_dialog_closes_with_escape(review: Review) -> None:
    dialog = review.open_dialog()
    review.choose(1, "RPE")
    dialog.editor.scale.setCurrentIndex(dialog.editor.scale.findData(9))
    review.correct(who="Bea")
    review.heard(CORRECTED)
    review.qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    review.qtbot.waitUntil(lambda: not review.window.findChildren(CorrectDialog), timeout=3_000)
    assert review.open_dialog().signing.who.text() == "Bea"


def test_a_session_can_be_corrected_only_when_one_is_chosen(review: Review) -> None:
    assert review.content.correct.isEnabled()
    review.content.list.clearSelection()
    assert not review.content.correct.isEnabled()


def test_everything_one_can_reach_in_the_dialog_has_a_name_and_nothing_is_cut_off(review: Review) -> None:
    dialog = review.open_dialog()
    QApplication.processEvents()
    kinds = (QAbstractButton, QComboBox, QAbstractItemView, QLineEdit)
    shown = [
        part
        for part in dialog.findChildren(QWidget)
        if isinstance(part, kinds) and part.isVisibleTo(dialog) and not part.inherits("QTableCornerButton")
    ]
    names = [QAccessible.queryAccessibleInterface(part).text(QAccessible.Text.Name) for part in shown]
    captions = {caption.buddy() for caption in dialog._captions}
    unnamed = [
        part
        for part, name in zip(shown, names, strict=True)
        if not name
        and part not in captions
        and part.parent() not in (dialog.editor.reps, dialog.editor.moment)
    ]
    assert len(shown) >= 8
    assert unnamed == []
    assert dialog.correct.geometry().right() < dialog.width()
