"""The athlete's screen on a clock moved by hand: what is pressed, what is shown, what is recorded."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from app.domain.dose import Band, HoldReps, OwnPaceReps
from app.domain.plan import Sides
from app.domain.records import (
    BoutEnded,
    BoutOutcome,
    BoutRated,
    FaultMarked,
    PauseReason,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
)
from app.run.state import Stand
from tests.desk import TWO_REPS, Desk


@pytest.fixture
def two_reps(qtbot: QtBot) -> Desk:
    return Desk(qtbot, TWO_REPS)


def test_a_two_rep_plan_is_begun_paused_taken_up_and_finished_by_the_space_key(two_reps: Desk) -> None:
    desk = two_reps
    assert "does not diagnose" in desk.texts()
    desk.press(Qt.Key.Key_Space).wait(2_000)
    assert "Ready, 3" in desk.texts()
    desk.wait(5_000)
    assert "Hold, 1, 1 of 2" in desk.texts()
    desk.wait(4_000)
    assert desk.reps == [1]
    desk.press(Qt.Key.Key_Space)
    assert "Goes on with rep 2 of 2, after 5 s to get ready." in desk.texts()
    desk.wait(60_000).press(Qt.Key.Key_Space).wait(9_000)
    assert desk.reps == [1, 2]
    assert desk.facts[-1] == RunEnded(desk.facts[-1].at_ms, RunOutcome.FINISHED)
    assert "Session finished" in desk.texts()
    assert "2 of 2" in desk.texts()


def test_the_last_bout_and_then_the_session_are_rated_when_it_is_over(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(14_000)
    assert "Heel raise, set 1" in desk.texts()
    desk.press(Qt.Key.Key_1, Qt.Key.Key_0, Qt.Key.Key_2)
    rated = [fact for fact in desk.facts if isinstance(fact, BoutRated)]
    assert [(fact.bout, fact.rpe, fact.pain) for fact in rated] == [(0, 1, None), (0, 10, None), (0, None, 2)]
    desk.press(Qt.Key.Key_1, Qt.Key.Key_0)
    session = [fact.rpe for fact in desk.facts if isinstance(fact, SessionRated)]
    assert session == [1, 10]
    assert len([fact for fact in desk.facts if isinstance(fact, BoutRated)]) == 3


def test_the_reps_of_the_last_bout_are_put_right_in_the_summary(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(14_000)
    assert "2 of 2" in desk.texts()
    desk.click("One rep fewer").wait(500)
    assert "1 of 2" in desk.texts()
    assert "2 of 2" not in desk.texts()


def test_a_session_stopped_in_mid_bout_asks_about_that_bout(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(10_000).press(Qt.Key.Key_S)
    desk.wait(1_000).press(Qt.Key.Key_S, Qt.Key.Key_3, Qt.Key.Key_8)
    rated = [(fact.bout, fact.rpe, fact.pain) for fact in desk.facts if isinstance(fact, BoutRated)]
    assert rated == [(0, 3, None), (0, None, 8)]
    assert "see a licensed professional" in desk.texts()
    assert "Session stopped" in desk.texts()


def test_a_session_without_a_bout_begun_asks_about_none(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(1_000).press(Qt.Key.Key_S).wait(1_000).press(Qt.Key.Key_S)
    assert "Reps done\n" not in desk.texts()
    desk.press(Qt.Key.Key_6)
    assert isinstance(desk.facts[-1], SessionRated)


def test_leaving_the_summary_says_so_once(two_reps: Desk, qtbot: QtBot) -> None:
    two_reps.press(Qt.Key.Key_Space).wait(14_000)
    with qtbot.waitSignal(two_reps.page.left, timeout=500):
        two_reps.press(Qt.Key.Key_Space)


def test_a_key_held_down_counts_once(qtbot: QtBot) -> None:
    from PySide6.QtCore import QEvent
    from PySide6.QtGui import QKeyEvent

    desk = Desk(qtbot, OwnPaceReps(Band(2, 5))).press(Qt.Key.Key_Space).wait(6_000).press(Qt.Key.Key_Return)
    held = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Return, Qt.KeyboardModifier.NoModifier, "\r", True)
    desk.wait(500)
    desk.page.keyPressEvent(held)
    assert desk.reps == [1]


def test_own_pace_is_counted_and_ended_by_keys(qtbot: QtBot) -> None:
    desk = Desk(qtbot, OwnPaceReps(Band(2, 5))).press(Qt.Key.Key_Space).wait(6_000)
    for _ in range(3):
        desk.press(Qt.Key.Key_Return).wait(1_000)
    assert "3 of 5" in desk.texts()
    desk.press(Qt.Key.Key_E)
    ended = [fact for fact in desk.facts if isinstance(fact, BoutEnded)]
    assert [(fact.outcome, desk.reps) for fact in ended] == [(BoutOutcome.DONE, [1, 2, 3])]


def test_effort_then_pain_are_answered_by_number_keys_in_the_rest(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(15_000)
    assert "Next:" in desk.texts()
    assert desk.texts().count("stays unknown") == 2
    desk.press(Qt.Key.Key_4, Qt.Key.Key_2)
    rated = [fact for fact in desk.facts if isinstance(fact, BoutRated)]
    assert [(fact.bout, fact.rpe, fact.pain) for fact in rated] == [(0, 4, None), (0, None, 2)]
    assert "somewhat hard" in desk.texts()


def test_one_and_zero_in_a_row_are_ten_and_apart_they_are_not(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(15_000)
    desk.press(Qt.Key.Key_1, Qt.Key.Key_0)
    assert [fact.rpe for fact in desk.facts if isinstance(fact, BoutRated)] == [1, 10]
    slow = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(15_000).press(Qt.Key.Key_1)
    slow.now_s += 1.0
    slow.press(Qt.Key.Key_0)
    last = [fact for fact in slow.facts if isinstance(fact, BoutRated)][-1]
    assert (last.rpe, last.pain) == (None, 0)


def test_reps_are_put_right_by_the_buttons(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(15_000).click("One rep fewer")
    assert [fact.reps for fact in desk.facts if isinstance(fact, BoutRated)] == [1]
    assert "Reps done: 1 of 2" in desk.texts()


def test_pain_above_five_ends_the_exercise_and_asks_for_a_note(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=3).press(Qt.Key.Key_Space).wait(15_000)
    desk.press(Qt.Key.Key_4, Qt.Key.Key_7)
    assert "Pain 7: Heel raise ends here." in desk.texts()
    assert desk.session.controller.state.pause is PauseReason.ASKED
    desk.qtbot.keyClicks(desk.page.findChild(QWidget, "note"), "sharp at the top")
    desk.click("Leave it out")
    skipped = [
        fact for fact in desk.facts if isinstance(fact, BoutEnded) and fact.outcome is BoutOutcome.SKIPPED
    ]
    assert [(fact.bout, fact.reason, fact.note) for fact in skipped] == [
        (1, SkipReason.PAIN, "sharp at the top"),
        (2, SkipReason.PAIN, "sharp at the top"),
    ]


def test_a_wrong_number_for_pain_can_be_put_right(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(15_000)
    desk.press(Qt.Key.Key_4, Qt.Key.Key_7).click("The number was wrong").wait(500).press(Qt.Key.Key_2)
    pains = [fact.pain for fact in desk.facts if isinstance(fact, BoutRated) and fact.pain is not None]
    assert pains == [7, 2]
    assert desk.session.controller.state.stand is Stand.RUNNING


def test_faults_are_marked_by_key_and_named_by_number(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(6_000).press(Qt.Key.Key_F, Qt.Key.Key_F, Qt.Key.Key_2)
    marked = [fact.fault for fact in desk.facts if isinstance(fact, FaultMarked)]
    assert marked == [None, "heel lifts"]
    assert "Marked" in desk.texts()


def test_stopping_asks_once_more_while_paused(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(10_000).press(Qt.Key.Key_S)
    assert "Stop the session here?" in desk.texts()
    assert not desk.session.over
    desk.wait(1_000).press(Qt.Key.Key_S)
    assert desk.facts[-1] == RunEnded(11_000, RunOutcome.ABANDONED)
    assert "Session stopped" in desk.texts()
    assert desk.reps == [1]


def test_leaving_out_an_exercise_asks_why(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(Qt.Key.Key_Space).wait(6_000).press(Qt.Key.Key_K)
    assert "Why?" in desk.texts()
    desk.press(Qt.Key.Key_2)
    reasons = [fact.reason for fact in desk.facts if isinstance(fact, BoutEnded)]
    assert reasons == [SkipReason.EQUIPMENT, SkipReason.EQUIPMENT]


def test_everything_can_be_done_with_the_mouse(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).click("I am ready").wait(15_000)
    desk.click("+15 s").click("Begin now").wait(15_000)
    assert "Session finished" in desk.texts()
    assert desk.reps == [1, 2, 1, 2]


def test_sides_are_said_and_shown(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, Sides.EACH).press(Qt.Key.Key_Space).wait(6_000)
    assert "LEFT, Lower, 1, 1 of 2" in desk.texts()
    desk.wait(8_000)
    assert "Change sides" in desk.texts()
    desk.wait(8_000)
    assert "RIGHT, Lower" in desk.texts()


def test_a_hold_counts_its_seconds_down(qtbot: QtBot) -> None:
    desk = Desk(qtbot, HoldReps(Band.exactly(1), Band.exactly(20_000))).press(Qt.Key.Key_Space).wait(10_000)
    assert "Hold, 15, 1 of 1" in desk.texts()


def test_a_sleeping_computer_pauses_and_says_so(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(8_000)
    desk.clock.at_ms += 60_000
    desk.page.refresh()
    assert "Interrupted" in desk.texts()
    assert "slept" in desk.texts()


def test_every_part_that_can_be_reached_has_a_name(two_reps: Desk) -> None:
    desk = two_reps
    for moment in (0, 6_000, 1_000):
        desk.wait(moment)
        for part in desk.page.findChildren(QWidget):
            if part.focusPolicy() != Qt.FocusPolicy.NoFocus and part.isVisibleTo(desk.page):
                assert part.accessibleName(), f"{type(part).__name__} has no name"
        desk.press(Qt.Key.Key_Space)


def test_the_key_page_names_every_key_in_use(two_reps: Desk) -> None:
    from app.views.athlete.keys import KEY_INTENTS, KEY_PAGE

    said = " ".join(key for key, _ in KEY_PAGE)
    named = {Qt.Key.Key_Return: "Enter", Qt.Key.Key_Enter: "Enter", Qt.Key.Key_Down: "↓"}
    for key in KEY_INTENTS:
        assert named.get(key, key.name.removeprefix("Key_")) in said
