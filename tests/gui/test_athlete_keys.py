"""Keys where they are easily pressed wrong: twice, late, with something else in focus."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from app.domain.dose import Band, OwnPaceReps
from app.domain.records import (
    BoutEnded,
    BoutRated,
    FaultMarked,
    Paused,
    PauseReason,
    Resumed,
    RunBegan,
    RunEnded,
    SkipReason,
)
from app.run.state import Stand
from app.views.athlete.key_page import KeyPage
from tests.desk import TWO_REPS, Desk

LEAD_IN, WORK, REST = 5_000, 8_000, 30_000


@pytest.fixture
def resting(qtbot: QtBot) -> Desk:
    """Three sets, in the rest after the first."""
    return Desk(qtbot, TWO_REPS, sets=3).press(Qt.Key.Key_Space).wait(LEAD_IN + WORK + 2_000)


def ratings(desk: Desk) -> list[tuple[int | None, int | None]]:
    return [(fact.rpe, fact.pain) for fact in desk.facts if isinstance(fact, BoutRated)]


def note_of(desk: Desk) -> QLineEdit:
    note = desk.page.findChild(QLineEdit, "note")
    assert isinstance(note, QLineEdit)
    return note


def test_space_pauses_after_an_answer_by_mouse(resting: Desk) -> None:
    resting.click("Effort 4").press_where_the_keys_go(Qt.Key.Key_Space)
    assert resting.session.controller.state.pause is PauseReason.ASKED
    assert ratings(resting) == [(4, None)]


def test_space_on_a_button_reached_by_tab_presses_it(resting: Desk) -> None:
    resting.button("+15 s").setFocus(Qt.FocusReason.TabFocusReason)
    left = resting.session.look().gap_left_ms
    assert left is not None
    resting.press_where_the_keys_go(Qt.Key.Key_Space)
    assert resting.session.look().gap_left_ms == left + 15_000


def test_enter_counts_after_the_mouse_was_used(qtbot: QtBot) -> None:
    desk = Desk(qtbot, OwnPaceReps(Band(1, 5)), sets=2).click("I am ready").wait(LEAD_IN + 1_000)
    desk.press_where_the_keys_go(Qt.Key.Key_Return)
    assert desk.reps == [1]


def test_one_and_zero_are_ten_of_the_question_the_key_answered(resting: Desk) -> None:
    resting.click("Pain 1").press(Qt.Key.Key_1, Qt.Key.Key_0)
    assert ratings(resting) == [(None, 1), (1, None), (10, None)]


def test_a_number_pressed_too_late_marks_no_fault(resting: Desk) -> None:
    resting.wait(REST - LEAD_IN - 2_000 + 500)
    assert "Ready, 5" in resting.texts()
    resting.press(Qt.Key.Key_2)
    assert not [fact for fact in resting.facts if isinstance(fact, FaultMarked | BoutRated)]


def test_space_pressed_as_the_session_ends_does_not_pass_the_summary_by(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS).press(Qt.Key.Key_Space).wait(LEAD_IN + WORK)
    left: list[bool] = []
    desk.page.left.connect(lambda: left.append(True))
    assert isinstance(desk.facts[-1], RunEnded)
    desk.press(Qt.Key.Key_Space)
    assert not left
    desk.wait(1_000).press(Qt.Key.Key_Space)
    assert left == [True]


def test_a_stop_key_that_bounces_stops_nothing(resting: Desk) -> None:
    resting.press(Qt.Key.Key_S, Qt.Key.Key_S)
    assert not resting.session.over
    resting.wait(500).press(Qt.Key.Key_S)
    assert resting.session.over


def test_any_key_closes_the_page_of_keys_and_the_next_reaches_the_session(resting: Desk) -> None:
    resting.press(Qt.Key.Key_F1)
    (page,) = resting.page.findChildren(KeyPage)
    resting.qtbot.keyClick(page, Qt.Key.Key_Space)
    assert not page.isVisible()
    assert resting.session.controller.state.stand is Stand.RUNNING


def test_the_note_about_pain_takes_the_keys_once_and_lets_them_go(resting: Desk) -> None:
    resting.press(Qt.Key.Key_4, Qt.Key.Key_7)
    assert resting.page.focusWidget() is note_of(resting)
    resting.button("The number was wrong").setFocus(Qt.FocusReason.TabFocusReason)
    resting.wait(1_000).press_where_the_keys_go(Qt.Key.Key_Space)
    assert resting.session.controller.state.stand is Stand.RUNNING


def test_numbers_and_spaces_in_the_note_are_words_and_enter_leaves_the_exercise_out(resting: Desk) -> None:
    resting.press(Qt.Key.Key_4, Qt.Key.Key_7)
    resting.qtbot.keyClicks(note_of(resting), "rep 2 s k")
    resting.press_where_the_keys_go(Qt.Key.Key_Return)
    left_out = [(fact.bout, fact.reason, fact.note) for fact in resting.facts if isinstance(fact, BoutEnded)]
    assert left_out[1:] == [(1, SkipReason.PAIN, "rep 2 s k"), (2, SkipReason.PAIN, "rep 2 s k")]
    assert resting.reps == [1, 2]


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_A, Qt.Key.Key_K, Qt.Key.Key_S, Qt.Key.Key_1])
def test_no_key_passes_by_the_question_about_pain(resting: Desk, key: Qt.Key) -> None:
    resting.press(Qt.Key.Key_4, Qt.Key.Key_7)
    resting.page.setFocus()
    before = resting.session.controller.state
    resting.press(key).wait(500)
    after = resting.session.controller.state
    assert (after.stand, after.bout, after.skipped) == (Stand.PAUSED, before.bout, before.skipped)
    assert "ends here" in resting.texts()


def test_another_page_asks_what_the_first_one_asked(resting: Desk) -> None:
    resting.press(Qt.Key.Key_4, Qt.Key.Key_7)
    resting.qtbot.keyClicks(note_of(resting), "sharp")
    question = resting.page.question
    resting.another_page().ask_again(question)
    assert "Pain 7: Heel raise ends here." in resting.texts()
    assert note_of(resting).text() == "sharp"
    resting.click("Leave it out")
    assert [fact.note for fact in resting.facts if isinstance(fact, BoutEnded)][1:] == ["sharp", "sharp"]


def test_trouble_and_what_to_know_of_the_sound_are_said_on_every_panel_until_they_are_over(
    qtbot: QtBot,
) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2)
    desk.speaker.notice = "The sound device has gone."
    desk.page.show_trouble("The disk is full.")
    for key in (None, Qt.Key.Key_Space, Qt.Key.Key_Space):
        if key is not None:
            desk.press(key)
        desk.wait(500)
        assert desk.texts().count("The disk is full.") == 1
        assert desk.texts().count("The sound device has gone.") == 1
    desk.speaker.notice = None
    desk.page.show_trouble("")
    desk.wait(500)
    assert "disk" not in desk.texts()
    assert "device" not in desk.texts()


def test_a_space_that_bounces_begins_pauses_or_goes_on_once(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS).press(Qt.Key.Key_Space, Qt.Key.Key_Space)
    desk.wait(4_000).press(Qt.Key.Key_Space, Qt.Key.Key_Space)
    desk.wait(1_000).press(Qt.Key.Key_Space, Qt.Key.Key_Space)
    assert [type(fact) for fact in desk.facts] == [RunBegan, Paused, Resumed]


@pytest.mark.parametrize("key", [0x424, 0x6A9, 0x5D0, 0, 0x01FFFFFF, 0x01000FFE])
def test_a_key_that_nobody_knows_does_nothing(qtbot: QtBot, key: int) -> None:
    desk = Desk(qtbot, TWO_REPS).press(Qt.Key.Key_Space).wait(6_000)
    before = list(desk.facts)
    for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        QApplication.sendEvent(desk.page, QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier))
    assert desk.facts == before
