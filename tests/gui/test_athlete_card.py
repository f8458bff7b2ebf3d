"""The card between bouts: earlier bouts, load, notes, faults afterwards, and taking back."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from app.domain.fold import fold_bout
from app.domain.plan import Sides
from app.domain.records import BoutEnded, BoutRated, FaultMarked, LoadUsed, RunEnded, SessionRated, TakenBack
from app.run.state import Stand
from app.views.athlete.figure import FigureView
from tests.desk import TWO_REPS, Desk, heel_raise

KEY = Qt.Key


@pytest.fixture
def both_sides(qtbot: QtBot) -> Desk:
    """In the rest after the right side; nothing was answered of the left."""
    desk = Desk(qtbot, TWO_REPS, Sides.EACH, sets=2).press(KEY.Key_Space).wait(14_000)
    return desk.wait(16_500)


@pytest.fixture
def loaded(qtbot: QtBot) -> Desk:
    desk = Desk(qtbot, TWO_REPS, timeline=heel_raise(TWO_REPS, sets=2, load_kg="12.5"))
    return desk.press(KEY.Key_Space).wait(14_000)


def rated(desk: Desk) -> list[tuple[int, int | None, int | None]]:
    return [(fact.bout, fact.rpe, fact.pain) for fact in desk.facts if isinstance(fact, BoutRated)]


def line(desk: Desk) -> QLineEdit:
    (found,) = [part for part in desk.page.findChildren(QLineEdit) if part.isVisibleTo(desk.page)]
    return found


def test_a_side_passed_over_in_a_short_change_is_answered_in_the_rest_and_goes_to_its_own_bout(
    both_sides: Desk,
) -> None:
    desk = both_sides
    assert "right side" in desk.texts()
    desk.press(KEY.Key_3, KEY.Key_1, KEY.Key_Left)
    assert "Heel raise, set 1, left side" in desk.texts()
    desk.press(KEY.Key_Left, KEY.Key_4, KEY.Key_2)
    assert rated(desk) == [(1, 3, None), (1, None, 1), (0, 4, None), (0, None, 2)]
    assert "not answered" not in desk.texts()
    desk.press(KEY.Key_Right, KEY.Key_Right)
    assert "Heel raise, set 1, right side" in desk.texts()


def test_the_arrows_are_buttons_too(both_sides: Desk) -> None:
    both_sides.click("1 before it not answered").click("on  (→)")
    assert "set 1, right side" in both_sides.texts()


def test_answers_of_an_earlier_bout_do_not_stop_the_clock(both_sides: Desk) -> None:
    before = both_sides.session.look().gap_left_ms
    both_sides.press(KEY.Key_Left, KEY.Key_4).wait(1_000)
    after = both_sides.session.look()
    assert after.stand is Stand.RUNNING
    assert (before, after.gap_left_ms) == (before, (before or 0) - 1_000)


def test_all_bouts_passed_over_can_be_answered_in_the_end(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, Sides.EACH).press(KEY.Key_Space).wait(40_000)
    assert "Session finished" in desk.texts()
    desk.press(KEY.Key_3, KEY.Key_1, KEY.Key_Left, KEY.Key_4, KEY.Key_2)
    assert [(fact.rpe, fact.pain) for fact in (fold_bout(desk.facts, bout, 1) for bout in (0, 1))] == [
        (4, 2),
        (3, 1),
    ]
    desk.press(KEY.Key_6)
    (ended,) = [fact for fact in desk.facts if isinstance(fact, RunEnded)]
    assert desk.facts[-1] == SessionRated(40_000, 6, 40_000 - ended.at_ms)


def test_the_load_is_unknown_until_it_is_said_and_steps_by_half_a_kilogram(loaded: Desk) -> None:
    desk = loaded
    assert "12.5 kg" in desk.texts()
    assert "planned" in desk.texts()
    assert fold_bout(desk.facts, 0, 1).load_kg is None
    desk.click("Half a kilogram more").click("Half a kilogram more").click("Half a kilogram less")
    assert [fact.load_kg for fact in desk.facts if isinstance(fact, LoadUsed)] == ["13", "13.5", "13"]


def test_the_load_is_as_planned_by_one_key_and_enter(loaded: Desk) -> None:
    loaded.press(KEY.Key_L).press_where_the_keys_go(KEY.Key_Return)
    assert [fact.load_kg for fact in loaded.facts if isinstance(fact, LoadUsed)] == ["12.5"]
    assert not [part for part in loaded.page.findChildren(QLineEdit) if part.isVisibleTo(loaded.page)]
    assert not [fact for fact in loaded.facts if isinstance(fact, BoutRated)]


def test_a_load_is_typed_with_a_comma_and_digits_answer_nothing_meanwhile(loaded: Desk) -> None:
    loaded.press(KEY.Key_L)
    loaded.qtbot.keyClicks(line(loaded), "1,25")
    loaded.press_where_the_keys_go(KEY.Key_Return)
    assert [fact.load_kg for fact in loaded.facts if isinstance(fact, LoadUsed)] == ["1.25"]
    assert rated(loaded) == []
    loaded.press(KEY.Key_5)
    assert rated(loaded) == [(0, 5, None)]


def test_an_exercise_without_a_load_is_not_asked_for_one(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(KEY.Key_Space).wait(14_000).press(KEY.Key_L)
    assert "Load used" not in desk.texts()
    assert not [part for part in desk.page.findChildren(QLineEdit) if part.isVisibleTo(desk.page)]


def test_a_note_is_opened_by_a_key_and_then_keys_type(both_sides: Desk) -> None:
    desk = both_sides.press(KEY.Key_W)
    desk.qtbot.keyClicks(line(desk), "slips 5 s, no")
    desk.press_where_the_keys_go(KEY.Key_Left, KEY.Key_Down)
    assert rated(desk) == []
    assert desk.session.controller.state.stand is Stand.RUNNING
    desk.press_where_the_keys_go(KEY.Key_Return)
    assert fold_bout(desk.facts, 1, 1).note == "slips 5 s, no"
    desk.press(KEY.Key_5)
    assert rated(desk)[-1] == (1, 5, None)


def test_a_note_that_is_still_open_when_the_rest_ends_is_kept(both_sides: Desk) -> None:
    both_sides.press(KEY.Key_W)
    both_sides.qtbot.keyClicks(line(both_sides), "ran out of time")
    both_sides.wait(30_000)
    assert fold_bout(both_sides.facts, 1, 1).note == "ran out of time"


def test_a_note_that_is_open_when_another_page_takes_over_is_kept(both_sides: Desk) -> None:
    both_sides.press(KEY.Key_W)
    both_sides.qtbot.keyClicks(line(both_sides), "half said")
    both_sides.page.hide()
    assert fold_bout(both_sides.facts, 1, 1).note == "half said"
    both_sides.another_page().show()
    assert "half said" in both_sides.wait(500).texts()


def test_what_is_typed_after_the_session_was_left_writes_nothing(both_sides: Desk) -> None:
    both_sides.press(KEY.Key_W)
    both_sides.qtbot.keyClicks(line(both_sides), "too late")
    both_sides.session.close()
    known = list(both_sides.facts)
    both_sides.page.hide()
    assert both_sides.facts == known


def test_a_note_can_be_given_up(both_sides: Desk) -> None:
    both_sides.press(KEY.Key_W)
    both_sides.qtbot.keyClicks(line(both_sides), "never mind")
    both_sides.press_where_the_keys_go(KEY.Key_Escape)
    both_sides.wait(30_000)
    assert fold_bout(both_sides.facts, 1, 1).note is None


def test_a_fault_is_marked_afterwards_by_its_button_and_by_key_on_the_last_rep(both_sides: Desk) -> None:
    desk = both_sides.click("Mark heel lifts on the last rep").click("Mark heel lifts on the last rep")
    desk.press(KEY.Key_F, KEY.Key_1)
    marked = [(fact.bout, fact.rep, fact.fault) for fact in desk.facts if isinstance(fact, FaultMarked)]
    assert marked == [(1, 2, "heel lifts"), (1, 2, None), (1, 2, "knee caves in")]
    assert rated(desk) == [], "the number named the fault"
    desk.press(KEY.Key_Left).click("Mark heel lifts on the last rep")
    last = desk.facts[-1]
    assert isinstance(last, FaultMarked)
    assert (last.bout, last.rep) == (0, 2)


def test_a_number_in_the_rest_answers_even_when_a_fault_was_marked_at_work_just_before(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, sets=2).press(KEY.Key_Space).wait(12_500).press(KEY.Key_F).wait(1_000)
    desk.press(KEY.Key_1)
    assert rated(desk) == [(0, 1, None)]
    assert [fact.fault for fact in desk.facts if isinstance(fact, FaultMarked)] == [None]


def test_what_was_said_by_mistake_is_taken_back_and_is_unknown_again(both_sides: Desk) -> None:
    desk = both_sides.press(KEY.Key_4, KEY.Key_2, KEY.Key_Backspace)
    assert fold_bout(desk.facts, 1, 1).pain is None
    desk.press(KEY.Key_Backspace)
    assert fold_bout(desk.facts, 1, 1).rpe is None
    assert desk.texts().count("stays unknown") == 2
    desk.press(KEY.Key_Backspace, KEY.Key_Backspace)
    assert [type(fact) for fact in desk.facts].count(TakenBack) == 2


def test_pain_that_was_a_slip_of_the_finger_does_not_stay_the_highest(both_sides: Desk) -> None:
    desk = both_sides.press(KEY.Key_4, KEY.Key_9).click("The number was wrong")
    assert fold_bout(desk.facts, 1, 1).pain is None
    desk.press(KEY.Key_1)
    assert fold_bout(desk.facts, 1, 1).pain == 1


def test_pain_above_five_on_the_last_card_asks_for_a_note(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS).press(KEY.Key_Space).wait(14_000).press(KEY.Key_4, KEY.Key_7)
    assert "see a licensed professional" in desk.texts()
    desk.qtbot.keyClicks(line(desk), "sharp at the top")
    desk.press_where_the_keys_go(KEY.Key_Return)
    assert fold_bout(desk.facts, 0, 1).note == "sharp at the top"


def test_pain_in_the_last_set_of_an_exercise_is_written_with_its_note(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, Sides.EACH).press(KEY.Key_Space).wait(14_000)
    desk.press(KEY.Key_4, KEY.Key_8)
    desk.press_where_the_keys_go(KEY.Key_Return)
    ends = [fact for fact in desk.facts if isinstance(fact, BoutEnded)]
    assert [(end.bout, end.outcome.value) for end in ends] == [(0, "done"), (1, "skipped")]


def figures(desk: Desk) -> list[FigureView]:
    return [part for part in desk.page.findChildren(FigureView) if part.isVisibleTo(desk.page)]


def test_the_picture_of_what_comes_next_is_shown_where_there_is_one(qtbot: QtBot, tmp_path: Path) -> None:
    timeline = heel_raise(TWO_REPS, sets=2)
    stage = timeline.plan.stages[0]
    pictured = replace(stage, exercises=(replace(stage.exercises[0], picture="raise.png"),))
    timeline = replace(timeline, plan=replace(timeline.plan, stages=(pictured,)))
    image = QImage(8, 4, QImage.Format.Format_RGB32)
    image.fill(0)
    image.save(str(tmp_path / "raise.png"))
    desk = Desk(qtbot, TWO_REPS, timeline=timeline)
    desk.session.folder = tmp_path
    desk.another_page()
    desk.press(KEY.Key_Space).wait(14_000)
    assert [figure.accessibleName() for figure in figures(desk)] == ["Heel raise"]


def test_where_there_is_no_picture_there_is_no_box(both_sides: Desk) -> None:
    assert figures(both_sides) == []
