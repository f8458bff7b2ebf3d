"""Entering tests in Review, by keys, into a real record."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.analysis.one_rep_max import TEMPO_WORK
from app.domain.plan import Side
from app.store.database import open_database
from app.views.review.entry.form import NO_LIFT
from tests.entering import ZONE, Entry


@pytest.fixture
def entry(qtbot: QtBot, tmp_path: Path) -> Iterator[Entry]:
    with open_database(tmp_path / "record.db") as database:
        made = Entry(qtbot, database)
        yield made
        if shiboken6.isValid(made.dialog):
            made.dialog.done(0)
        QApplication.processEvents()


def test_a_test_is_found_and_its_tries_are_typed_by_keys_alone(entry: Entry) -> None:
    entry.type("triple")
    for words in ("601", "598,5", "610"):
        entry.type(words)
    kept = [(r.test, r.side, r.attempt, r.value, r.unit) for r in entry.results]
    assert kept == [
        ("triple_hop", Side.LEFT, 1, "601", "cm"),
        ("triple_hop", Side.LEFT, 2, "598.5", "cm"),
        ("triple_hop", Side.LEFT, 3, "610", "cm"),
    ]
    assert entry.told == "Kept: Triple hop for distance, left, 26 Nov 2026: 601, 598.5, 610 cm."
    assert entry.refreshed == 1
    assert entry.dialog.form.side.currentText() == "right"
    assert entry.dialog.focusWidget() is entry.dialog.form.tries.entries[0]


def test_fewer_tries_than_asked_for_are_kept_too(entry: Entry) -> None:
    entry.dialog.choose("single_hop")
    entry.type("151", into=entry.dialog.form.tries.entries[0])
    entry.type("", into=entry.dialog.form.tries.entries[1])
    assert [r.value for r in entry.results] == ["151"]


def test_what_is_typed_stays_with_its_test_until_it_is_kept(entry: Entry) -> None:
    dialog, form = entry.dialog, entry.dialog.form
    dialog.choose("single_hop")
    form.side.setCurrentIndex(1)
    form.tries.entries[1].setText("151")
    form.note.setText("taped")
    dialog.choose("triple_hop")
    assert (form.tries.typed, form.note.text(), form.side.currentText()) == ((), "", "left")
    dialog.choose("single_hop")
    assert (form.tries.typed, form.note.text(), form.side.currentText()) == (((1, "151"),), "taped", "right")
    form.keep.click()
    assert [(r.test, r.side, r.value, r.note) for r in entry.results] == [
        ("single_hop", Side.RIGHT, "151", "taped")
    ]
    assert form.unkept == []
    dialog.choose("triple_hop")
    dialog.choose("single_hop")
    assert not form.tries.typed


def test_frames_typed_stay_while_numbers_are_typed(entry: Entry) -> None:
    dialog, form = entry.dialog, entry.dialog.form
    dialog.choose("jump_height")
    form.video.setChecked(True)
    form.tries.entries[0].setText("412 532")
    form.video.setChecked(False)
    assert not form.tries.typed
    dialog.choose("single_hop")
    dialog.choose("jump_height")
    assert form.video.isChecked()
    assert form.tries.typed == ((0, "412 532"),)


def test_tries_that_are_not_kept_are_not_left_without_a_word(entry: Entry) -> None:
    dialog = entry.dialog
    dialog.show()
    dialog.choose("single_hop")
    dialog.form.tries.entries[0].setText("151")
    dialog.choose("triple_hop")
    entry.qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert dialog.isVisible()
    assert entry.told == "Not kept yet: Single hop for distance. Keep it, or close once more to leave it."
    dialog.form.tries.entries[0].setText("600")
    dialog.close()
    assert dialog.isVisible()
    assert entry.told.startswith("Not kept yet: Single hop for distance, Triple hop for distance.")
    dialog.close()
    assert not dialog.isVisible()
    assert entry.results == []


def test_a_dialog_without_tries_closes_at_once(entry: Entry) -> None:
    entry.dialog.show()
    entry.qtbot.keyClick(entry.dialog, Qt.Key.Key_Escape)
    assert not entry.dialog.isVisible()


def test_a_block_of_contacts_and_flights_goes_on_into_the_tries_after_it(entry: Entry) -> None:
    entry.dialog.choose("ten_hops_flight")
    tries = entry.dialog.form.tries
    tries.entries[0].setText(" ".join(f"{180 + n} {420 + n}" for n in range(10)))
    assert tries.typed == tuple((n, f"{180 + n} {420 + n}") for n in range(10))
    tries.entries[0].setText("180 420 181")
    assert tries.typed[0] == (0, "180 420 181")  # a number is amiss: it is said, and not dealt out


def test_tries_of_one_day_and_side_are_counted_on(entry: Entry) -> None:
    entry.dialog.choose("limb_length")
    for side in (Side.LEFT, Side.RIGHT, Side.LEFT):
        assert Side(entry.dialog.form.side.currentData()) is side
        entry.type("90", into=entry.dialog.form.tries.entries[0])
    assert sorted((r.side.value, r.attempt) for r in entry.results) == [
        ("left", 1),
        ("left", 2),
        ("right", 1),
    ]


def test_a_wrong_number_says_what_would_be_right_and_nothing_is_kept(entry: Entry) -> None:
    entry.dialog.choose("single_hop")
    tries = entry.dialog.form.tries
    tries.entries[0].setText("151")
    tries.entries[1].setText("1510")
    entry.dialog.form.keep.click()
    assert entry.told == "Try 2: 1510 lies outside of this test. Enter a number from 0 to 400 cm."
    assert entry.dialog.focusWidget() is tries.entries[1]
    tries.entries[0].clear()
    tries.entries[1].clear()
    entry.dialog.form.keep.click()
    assert entry.told == "Try 1: Enter at least one try."
    assert entry.results == []


def test_an_earlier_day_is_midday_there_and_a_later_one_cannot_be_chosen(entry: Entry) -> None:
    day = entry.dialog.form.day
    day.setDate(QDate(2026, 12, 24))
    assert day.date() == QDate(2026, 11, 26)
    day.setDate(QDate(2026, 3, 29))  # the clocks went forward in that night
    entry.dialog.choose("single_hop")
    entry.type("151", into=entry.dialog.form.tries.entries[2])
    (result,) = entry.results
    assert (result.at, result.zone) == (datetime(2026, 3, 29, 10, tzinfo=UTC), ZONE)


def test_a_video_says_what_its_frames_come_to_and_keeps_which_they_were(entry: Entry) -> None:
    entry.dialog.choose("drop_jump_flight")
    form = entry.dialog.form
    form.video.setChecked(True)
    assert entry.told.startswith("Enter three frame numbers")
    form.rate.setText("120")
    form.tries.entries[0].setText("100 124 175")
    assert entry.told.startswith(
        "Try 1: Flight over contact 2.12, height over contact 1.11 m/s. "
        "One frame more or less changes the contact time by 4.2 %."
    )
    assert "Under 240 frames a second" in entry.told
    form.note.setText("barefoot")
    form.keep.click()
    contact, flight = sorted(entry.results, key=lambda result: result.test)
    assert (contact.test, contact.value, contact.unit) == ("drop_jump.contact", "200.0", "ms")
    assert (flight.test, flight.value, flight.side) == ("drop_jump.flight", "425.0", Side.BOTH)
    assert {result.note for result in entry.results} == {
        "barefoot Video at 120 frames a second, frames 100 124 175."
    }


def test_a_video_too_coarse_for_contact_times_is_refused(entry: Entry) -> None:
    entry.dialog.choose("drop_jump_flight")
    entry.dialog.form.video.setChecked(True)
    entry.dialog.form.rate.setText("60")
    entry.type("100 112 140", into=entry.dialog.form.tries.entries[0])
    entry.dialog.form.keep.click()
    assert entry.told == "Try 1: Under 120 frames a second a contact time is too coarse."
    assert entry.results == []


def test_an_instrument_is_made_once_and_known_by_its_name_from_then_on(entry: Entry) -> None:
    entry.dialog.choose("external_rotation")
    for name in ("Hand dynamometer", "hand dynamometer "):
        entry.dialog.form.device.setText(name)
        entry.type("120", into=entry.dialog.form.tries.entries[2])
    assert [device.name for device in entry.database.answers.devices()] == ["Hand dynamometer"]
    assert len({result.device_id for result in entry.results}) == 1
    assert None not in {result.device_id for result in entry.results}


def test_a_search_that_finds_nothing_leaves_the_form_alone(entry: Entry) -> None:
    entry.dialog.search.setText("zzz")
    entry.qtbot.keyClick(entry.dialog.search, Qt.Key.Key_Down)
    assert entry.dialog.tests.rows == ()
    entry.dialog.search.clear()
    assert entry.dialog.test is not None


def test_arrows_choose_while_the_search_has_the_keys(entry: Entry) -> None:
    entry.qtbot.keyClick(entry.dialog.search, Qt.Key.Key_Down)
    assert entry.dialog.test is not None
    assert entry.dialog.test.key == "triple_hop"
    entry.qtbot.keyClick(entry.dialog.search, Qt.Key.Key_Up)
    entry.qtbot.keyClick(entry.dialog.search, Qt.Key.Key_Up)
    assert entry.dialog.test.key == "single_hop"


def fill(entry: Entry, *words: str) -> None:
    """Type into the entries one after the other."""
    for place, typed in enumerate(words):
        entry.dialog.form.tries.entries[place].setText(typed)


def test_a_set_to_the_last_rep_is_kept_with_its_lift_and_says_three_estimates(entry: Entry) -> None:
    names = [
        entry.dialog.test_list.model().index(row, 0).data() for row in range(len(entry.dialog.tests.rows))
    ]
    assert names.count("Set to the last rep") == 1
    entry.dialog.choose("one_rep_max_brzycki")
    fill(entry, "80 6")
    assert entry.told == "Try 1: Estimated for one rep: Epley 96.0, Brzycki 92.9, Lombardi 95.7 kg."
    entry.dialog.form.keep.click()
    assert entry.told == NO_LIFT
    assert entry.results == []
    entry.dialog.form.lift.setText("  Front  squat ")
    entry.dialog.form.keep.click()
    assert [(r.test, r.value, r.unit) for r in sorted(entry.results, key=lambda r: r.test)] == [
        ("rep_set.load:Front squat", "80", "kg"),
        ("rep_set.reps:Front squat", "6", "reps"),
    ]
    assert entry.told == "Kept: Set to the last rep: Front squat, both sides at once, 26 Nov 2026: 80 6."


def test_a_lift_that_differs_in_capitals_alone_is_the_known_one(entry: Entry) -> None:
    for typed in ("Front squat", "front SQUAT"):
        entry.dialog.choose("one_rep_max")
        entry.dialog.form.lift.setText(typed)
        fill(entry, "90")
        entry.dialog.form.keep.click()
    assert {result.test for result in entry.results} == {"one_rep_max:Front squat"}
    assert sorted(result.attempt for result in entry.results) == [1, 2]


def test_a_set_led_to_a_tempo_is_refused(entry: Entry) -> None:
    entry.dialog.choose("one_rep_max_epley")
    entry.dialog.form.lift.setText("Front squat")
    fill(entry, "80 6")
    entry.dialog.form.tempo.setChecked(True)
    assert "tempo" in entry.told
    entry.dialog.form.keep.click()
    assert entry.results == []
    assert entry.told == f"Try 1: {TEMPO_WORK}"


def test_each_stance_has_its_entry_and_the_sum_alone_will_do(entry: Entry) -> None:
    entry.dialog.choose("balance_errors")
    entries = entry.dialog.form.tries.entries
    assert entries[1].accessibleName() == "one leg, firm"
    fill(entry, "0", "2", "1", "3", "6")
    entry.dialog.form.keep.click()
    assert entry.told == "Enter all six stances, or the sum alone."
    entries[5].setText("-")
    assert entry.told.startswith("Try 1: 22 errors")
    entry.dialog.form.keep.click()
    assert len(entry.results) == 6
    assert entry.results[0].note == "Not held: heel to toe, foam."
    entries[6].setText("21")
    entry.dialog.form.keep.click()
    assert [r.value for r in entry.results if r.test == "balance_errors"] == ["21"]
    assert [r.attempt for r in entry.results if r.test == "balance_errors"] == [2]


def test_ten_hops_say_the_best_five_once_all_are_there(entry: Entry) -> None:
    entry.dialog.choose("ten_hops_flight")
    fill(entry, *["200 450"] * 9)
    assert entry.told.startswith("Try 1: Flight over contact 2.25")
    entry.dialog.form.tries.entries[9].setText("260 450")
    assert entry.told.splitlines()[-1] == "1 of 10 contacts last 250 ms or longer."


def test_numbers_pasted_from_a_sheet_go_into_an_entry_each(entry: Entry) -> None:
    entry.dialog.choose("triple_hop")
    entries = entry.dialog.form.tries.entries
    entries[0].setText("601\t598,5\t610")
    assert [each.text() for each in entries[:3]] == ["601", "598,5", "610"]
    entries[1].setText("1 2 3 4 5")
    assert entries[1].text() == "1 2 3 4 5"


def test_a_reach_goes_on_to_the_other_side_and_then_to_the_next_direction(entry: Entry) -> None:
    entry.dialog.choose("limb_length")
    for value in ("90", "91"):
        fill(entry, value)
        entry.dialog.form.keep.click()
    entry.dialog.choose("reach_anterior")
    form = entry.dialog.form
    for left, right in (("68", "63"), ("96", "95"), ("94", "92")):
        for value in (left, right):
            fill(entry, value)
            form.keep.click()
        assert form.side.currentText() in ("left", "right")
    kept = [(r.test, r.side.value) for r in entry.results if r.test.startswith("reach")]
    assert sorted(kept) == sorted(
        (test, side)
        for test in ("reach_anterior", "reach_posteromedial", "reach_posterolateral")
        for side in ("left", "right")
    )
    # (63 + 95 + 92) / (3 x 91) x 100 = 91.6 (worked from Plisky et al. 2006, secondary); 68 - 63 is above 4.
    assert "Reach composite of the right side: 91.6 % of the limb length." in entry.told
    assert "5.0 cm apart" in entry.told
