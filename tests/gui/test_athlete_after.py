"""After the session, and the choice of stages in the pause."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, OwnPaceReps, StickReps
from app.domain.fold import fold_closing
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind, StageOrder
from app.domain.records import BoutBegan, BoutEnded, BoutOutcome, SessionRated, SkipReason
from app.domain.timeline import Timeline
from app.run.state import Stand
from app.views.athlete.around import Around
from app.views.athlete.work_panel import CountBar
from app.views.widgets.ladder import Ladder
from tests.desk import FAULTS, TWO_REPS, Desk

KEY = Qt.Key
HOPS = StickReps(Band.exactly(2), Band.exactly(3_000))


def two_stages(order: StageOrder = StageOrder.LOCKED) -> Timeline:
    heel = Exercise("Heel raise", TWO_REPS, sides=Sides.EACH, faults=FAULTS)
    hop = Exercise("Hop", HOPS, contacts=2)
    stages = (Stage("Wake", StageKind.ACTIVATION, (heel,)), Stage("Land", StageKind.REACTIVE, (hop,)))
    return compile_timeline(Plan("Try-out", stages, order=order))


@pytest.fixture
def over(qtbot: QtBot) -> Desk:
    """A session of which the left side and the hops were done and one fault was marked."""
    desk = Desk(qtbot, TWO_REPS, timeline=two_stages(), around=Around(next_session="Thursday at 18:00"))
    desk.press(KEY.Key_Space).wait(7_000).press(KEY.Key_2).wait(60_000)
    assert "Session finished" in desk.texts()
    return desk


def test_what_was_done_is_shown_by_exercise_and_side_with_tension_contacts_and_faults(over: Desk) -> None:
    said = over.texts()
    assert "left\n2 of 2\n8 s\n0\n" in said
    assert "right\n2 of 2\n8 s\n0\n" in said
    assert "Hop\n\n2 of 2\n–\n4\n" in said, "landings have no tempo, so no time under tension"
    assert "In all: 16 s under tension by the tempo written, contacts: 4." in said
    assert "Faults: heel lifts × 1" in said


def test_it_says_what_the_practitioner_will_see_and_when_the_next_session_is(over: Desk) -> None:
    assert "Your practitioner sees this table" in over.texts()
    assert "What you do not answer is shown as unknown." in over.texts()
    assert "Next session: Thursday at 18:00" in over.texts()


def test_where_nobody_knows_the_next_session_nothing_is_said_of_it(qtbot: QtBot) -> None:
    assert "Next session" not in Desk(qtbot, TWO_REPS).press(KEY.Key_Space).wait(14_000).texts()


def test_the_rating_is_put_off_and_stays_unknown(over: Desk, qtbot: QtBot) -> None:
    with qtbot.waitSignal(over.page.left, timeout=1_000):
        over.click("Ask me later")
    assert not [fact for fact in over.facts if isinstance(fact, SessionRated)]


def test_once_rated_it_is_not_put_off_any_more(over: Desk) -> None:
    over.click("How hard was the session? 7").wait(500)
    assert fold_closing(over.facts).session_rpe == 7
    assert "Ask me later" not in over.texts()


def test_a_note_about_the_session_is_kept_and_can_be_changed(over: Desk) -> None:
    for words in ("windy", "very windy"):
        over.press(KEY.Key_W)
        (line,) = [part for part in over.page.findChildren(QLineEdit) if part.isVisibleTo(over.page)]
        line.clear()
        over.qtbot.keyClicks(line, words)
        over.press_where_the_keys_go(KEY.Key_Return)
        over.wait(500)
        assert fold_closing(over.facts).note == words
        assert words in over.texts()
    assert fold_closing(over.facts).session_rpe is None


def test_a_note_that_is_open_when_one_leaves_is_kept(over: Desk) -> None:
    over.press(KEY.Key_W)
    over.qtbot.keyClicks(over.page.focusWidget(), "windy")
    over.click("Done")
    assert fold_closing(over.facts).note == "windy"


def test_contacts_are_counted_with_the_reps_at_ones_own_pace(qtbot: QtBot) -> None:
    skips = Exercise("Skip", OwnPaceReps(Band(3, 5)), contacts=4)
    timeline = compile_timeline(Plan("Try-out", (Stage("Jump", StageKind.POWER, (skips,)),)))
    desk = Desk(qtbot, TWO_REPS, timeline=timeline).press(KEY.Key_Return).wait(6_000)
    desk.press(KEY.Key_Return).wait(1_000).press(KEY.Key_Return).wait(500)
    (bar,) = desk.page.findChildren(CountBar)
    assert bar.accessibleDescription() == "2 of 5, contacts: 8 of 20"
    for _ in range(2):
        qtbot.mousePress(bar, Qt.MouseButton.LeftButton)
    assert desk.reps == [1, 2, 3], "a touch counts one, and one that bounces counts no more"


def test_the_ladder_says_which_stages_are_locked(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, timeline=two_stages()).press(KEY.Key_Space).wait(6_000)
    (ladder,) = desk.page.findChildren(Ladder)
    assert ladder.accessibleName() == "Stage 1 of 2: Wake"
    assert ladder.accessibleDescription().endswith("left out: Land")
    free = Desk(qtbot, TWO_REPS, timeline=two_stages(StageOrder.FREE)).press(KEY.Key_Space).wait(6_000)
    (ladder,) = free.page.findChildren(Ladder)
    assert ladder.accessibleDescription() == ""


def test_the_rest_of_a_stage_is_left_out_with_its_reason_and_the_next_one_opens(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, timeline=two_stages()).press(KEY.Key_Space).wait(6_000).press(KEY.Key_X)
    assert "Leave out what remains of the stage Wake. Why?" in desk.texts()
    desk.press(KEY.Key_3).wait(1_000).press(KEY.Key_Space).wait(500)
    skipped = [(fact.bout, fact.reason) for fact in desk.facts if isinstance(fact, BoutEnded)]
    assert skipped == [(0, SkipReason.TIME), (1, SkipReason.TIME)]
    assert "Stage 2 of 2: Land" in desk.texts()


def test_a_locked_plan_has_no_key_to_another_stage(qtbot: QtBot) -> None:
    desk = Desk(qtbot, TWO_REPS, timeline=two_stages()).press(KEY.Key_Space).wait(6_000).press(KEY.Key_G)
    assert desk.session.controller.state.stand is Stand.RUNNING
    desk.press(KEY.Key_K)
    assert "Another stage" not in desk.texts()


@pytest.mark.parametrize("by_key", [True, False])
def test_a_free_plan_lets_another_stage_be_chosen_in_the_pause(qtbot: QtBot, by_key: bool) -> None:
    desk = Desk(qtbot, TWO_REPS, timeline=two_stages(StageOrder.FREE)).press(KEY.Key_Space).wait(6_000)
    if by_key:
        desk.press(KEY.Key_G, KEY.Key_1).press(KEY.Key_2)
    else:
        desk.press(KEY.Key_Space).wait(500).click("Another stage").wait(500).click("2  Land")
    desk.wait(1_000).press(KEY.Key_Space).wait(70_000)
    begun = [(fact.bout, fact.attempt) for fact in desk.facts if isinstance(fact, BoutBegan)]
    assert begun == [(0, 1), (2, 1), (0, 2), (1, 1)]
    broken = [fact.bout for fact in desk.facts if isinstance(fact, BoutEnded) and not _over(fact)]
    assert broken == [0]


def _over(fact: BoutEnded) -> bool:
    return fact.outcome is BoutOutcome.DONE
