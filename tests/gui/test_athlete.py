"""The athlete's screen on a clock moved by hand: what is pressed, what is shown, what is recorded."""

from collections.abc import Sequence

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import (
    BoutEnded,
    BoutOutcome,
    BoutRated,
    Fact,
    FaultMarked,
    PauseReason,
    RepDone,
    RunEnded,
    RunOutcome,
    SessionRated,
    SkipReason,
)
from app.domain.tempo import parse_tempo
from app.run.sounding import NoSound
from app.run.state import Stand
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from tests.fakes import HandClock, RecordingSpeaker

TWO_REPS = TempoReps(Band.exactly(2), parse_tempo("2-1-1-0"))
FAULTS = ("knee caves in", "heel lifts")


class Desk:
    """A page with a clock, and what it wrote."""

    def __init__(self, qtbot: QtBot, dose: Dose, sides: Sides = Sides.BOTH, sets: int = 1) -> None:
        exercise = Exercise(
            "Heel raise", dose, sides=sides, sets=sets, rest_ms=30_000, faults=FAULTS, cues=("Tall",)
        )
        timeline = compile_timeline(Plan("Try-out", (Stage("One", StageKind.ACTIVATION, (exercise,)),)))
        self.qtbot, self.clock, self.facts = qtbot, HandClock(7_000), list[Fact]()
        self.session = RunSession(timeline, self.clock, RecordingSpeaker(), NoSound(), self._write)
        self.now_s = 0.0
        look = Look(choose(Place.TRAINING), "Inter", type_scale(22))
        self.page = AthletePage(look, self.session, "Hugo", lambda: self.now_s)
        self.page.resize(1280, 720)
        qtbot.addWidget(self.page)
        self.page.show()
        self.page.setFocus()

    def _write(self, first: int, facts: Sequence[Fact]) -> None:
        assert first == len(self.facts)
        self.facts.extend(facts)

    def press(self, *keys: Qt.Key) -> "Desk":
        for key in keys:
            self.qtbot.keyClick(self.page, key)
        return self

    def wait(self, ms: int) -> "Desk":
        end = self.clock.at_ms + ms
        while self.clock.at_ms < end:
            self.clock.at_ms = min(self.clock.at_ms + 500, end)
            self.page.refresh()
        return self

    def texts(self) -> str:
        """Every word in sight, spoken names of painted parts included."""
        seen = [label.text() for label in self.page.findChildren(QLabel) if label.isVisibleTo(self.page)]
        named = [
            part.accessibleName() for part in self.page.findChildren(QWidget) if part.isVisibleTo(self.page)
        ]
        return "\n".join([*seen, *named])

    def button(self, text: str) -> QPushButton:
        found = [
            button
            for button in self.page.findChildren(QPushButton)
            if button.isVisibleTo(self.page) and button.accessibleName().startswith(text)
        ]
        assert found, f"no button '{text}' in sight"
        return found[0]

    def click(self, text: str) -> "Desk":
        self.qtbot.mouseClick(self.button(text), Qt.MouseButton.LeftButton)
        return self

    @property
    def reps(self) -> list[int]:
        return [fact.rep for fact in self.facts if isinstance(fact, RepDone)]


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


def test_the_session_is_rated_when_it_is_over(two_reps: Desk) -> None:
    desk = two_reps.press(Qt.Key.Key_Space).wait(14_000).press(Qt.Key.Key_6)
    assert isinstance(desk.facts[-1], SessionRated)
    assert desk.facts[-1].rpe == 6


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
    desk.press(Qt.Key.Key_S)
    assert desk.facts[-1] == RunEnded(10_000, RunOutcome.ABANDONED)
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
