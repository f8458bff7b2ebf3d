"""Correcting the results of tests in Review, with who and why."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.domain.plan import Side
from app.store.database import open_database
from app.views.review.entry.correction import A_DAY, A_SIDE, CHOOSE, SAME
from app.views.review.entry.results import what_words
from app.views.review.signing import WHO_AND_WHY
from tests.entering import Entry


@pytest.fixture
def entry(qtbot: QtBot, tmp_path: Path) -> Iterator[Entry]:
    with open_database(tmp_path / "record.db") as database:
        made = Entry(qtbot, database)
        yield made
        if shiboken6.isValid(made.dialog):
            made.dialog.done(0)
        QApplication.processEvents()


def correct(entry: Entry, field: str, value: str, who: str = "Ruben", why: str = "read it wrongly") -> str:
    card = entry.dialog.results
    card.field.setCurrentIndex(card.field.findData(field))
    card.value.setText(value)
    card.signing.who.setText(who)
    card.signing.why.setText(why)
    card.correct.click()
    return card.message.text()


def test_a_result_is_corrected_with_who_and_why(entry: Entry) -> None:
    entry.dialog.choose("single_hop")
    entry.type("151", into=entry.dialog.form.tries.entries[2])
    assert correct(entry, "value", "152") == CHOOSE
    entry.dialog.results.table.selectRow(0)
    assert entry.dialog.results.value.text() == "151"
    assert correct(entry, "value", "152", why=" ") == WHO_AND_WHY
    assert correct(entry, "value", "1520").startswith("1520 lies outside of this test.")
    assert correct(entry, "value", "151") == SAME
    assert correct(entry, "value", "152,5") == "Corrected. What was recorded stays beside it."
    assert entry.results[0].value == "152.5"
    history = entry.database.corrections.history_about(entry.results[0].id)
    assert [(c.change.who, c.change.why, c.before) for c in history.corrections] == [
        ("Ruben", "read it wrongly", "151")
    ]
    assert entry.refreshed == 2
    entry.dialog.results.table.selectRow(0)
    assert entry.dialog.results.results.rows[0].corrected == {"value"}


def test_side_day_and_note_are_corrected_too(entry: Entry) -> None:
    entry.dialog.choose("single_hop")
    entry.type("151", into=entry.dialog.form.tries.entries[2])
    for field, wrong, sentence, right in (
        ("side", "upper", A_SIDE, "Right"),
        ("at", "yesterday", A_DAY, "2026-11-24"),
    ):
        entry.dialog.results.table.selectRow(0)
        assert correct(entry, field, wrong) == sentence
        assert correct(entry, field, right).startswith("Corrected.")
    entry.dialog.results.table.selectRow(0)
    assert correct(entry, "note", "on grass").startswith("Corrected.")
    (result,) = entry.results
    assert (result.side, result.note) == (Side.RIGHT, "on grass")
    assert result.at == datetime(2026, 11, 23, 23, 30, tzinfo=UTC)


def test_a_correction_of_a_result_is_told_and_taken_back(entry: Entry) -> None:
    entry.dialog.choose("single_hop")
    entry.type("151", into=entry.dialog.form.tries.entries[2])
    card = entry.dialog.results
    card.table.selectRow(0)
    assert not card.back.isEnabled()
    assert correct(entry, "value", "152").startswith("Corrected.")
    assert "Value 151 → 152, Ruben: read it wrongly" in card.past.text()
    assert card.back.isEnabled()
    card.back.click()
    assert card.message.text() == WHO_AND_WHY
    card.signing.why.setText("it was right")
    card.back.click()
    assert card.message.text() == "Taken back."
    assert entry.results[0].value == "151"
    assert "152 → 151, Ruben: it was right" in card.past.text()
    card.field.setCurrentIndex(card.field.findData("note"))
    card.field.activated.emit(card.field.currentIndex())
    assert not card.back.isEnabled()


def test_a_part_of_a_try_is_corrected_within_its_own_bounds(entry: Entry) -> None:
    entry.dialog.choose("one_rep_max_epley")
    entry.dialog.form.lift.setText("Front squat")
    entry.dialog.form.tries.entries[0].setText("80 6")
    entry.dialog.form.keep.click()
    card = entry.dialog.results
    row = next(row for row, held in enumerate(card.results.rows) if held.thing.unit == "reps")
    assert what_words(card.results.rows[row].thing) == "Front squat, reps"
    card.table.selectRow(row)
    assert correct(entry, "value", "6.5") == "6.5 is counted in whole numbers."
    assert correct(entry, "value", "7").startswith("Corrected.")
