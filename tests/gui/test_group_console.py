"""The coach's console: a whole session by keys alone, and the record says what was struck."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from app.domain.fold import fold_closing, fold_run
from app.domain.grouping import Form
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import BoutOutcome, FaultMarked, RepMissed, RestExtended, RunEnded, RunOutcome
from app.run.state import Doing, Stand
from app.views.group.console import Console
from app.views.lettering import training_scale
from app.views.theme import Look, Place, choose
from tests.fitting import misfits, nameless
from tests.halls import Hall, club, demo_plan, group_session
from tests.planned import holds, tempo_reps

FAULTS = ("shoulder hikes", "trunk rolls")
PLAN = Plan(
    "Shoulder evening",
    (
        Stage(
            "Wake",
            StageKind.ACTIVATION,
            (
                Exercise(
                    "Row",
                    tempo_reps(3, "2-0-2-0"),
                    sides=Sides.EACH,
                    faults=("shoulder hikes", "trunk rolls"),
                ),
                Exercise("Hold", holds(2, 3)),
            ),
        ),
    ),
    lead_in_ms=3_000,
    changeover_ms=10_000,
    side_change_ms=5_000,
)


class Coach:
    """A console with a session, keys that are struck, and the notes that were written."""

    def __init__(self, qtbot: QtBot, form: Form = Form.TOGETHER, count: int = 4, plan: Plan = PLAN) -> None:
        self.hall = Hall(group_session(form, plan, club(count)))
        self.notes: list[tuple[int, str]] = []
        look = Look(choose(Place.TRAINING), "Inter", training_scale(768))
        self.console = Console(look, self.hall.room, lambda member, text: self.notes.append((member, text)))
        self.qtbot = qtbot
        qtbot.addWidget(self.console)
        self.console.resize(1366, 768)
        self.console.show()
        self.console.setFocus()

    def type(self, keys: str) -> "Coach":
        self.qtbot.keyClicks(self.console, keys)
        return self

    def press(self, *keys: Qt.Key) -> "Coach":
        for key in keys:
            self.qtbot.keyClick(self.console, key)
        return self

    def wait(self, ms: int) -> "Coach":
        self.hall.wait(ms)
        self.console.refresh()
        return self

    def to_a_gap(self) -> "Coach":
        session, room = self.hall.room.session, self.hall.room
        while room.state.leader.doing(session.leader, room.now_ms()) is not Doing.GAP:
            self.wait(500)
        return self

    def to_the_end(self) -> "Coach":
        while not self.hall.room.over:
            self.wait(1_000)
        return self


def test_a_whole_session_by_keys_is_recorded_as_it_was_struck(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type("4").press(Qt.Key.Key_Return)
    assert coach.hall.room.state.present == (True, True, True, False)
    coach.type(" ").wait(3_500).type("1f").type("22").type("3m").wait(5_000)
    coach.type(" ").wait(30_000).type(" ").to_a_gap().type("t").to_the_end()
    first, second, third, fourth = coach.hall.written
    assert [fact.fault for fact in first if isinstance(fact, FaultMarked)] == [None]
    assert [fact.fault for fact in second if isinstance(fact, FaultMarked)] == ["trunk rolls"]
    assert [(fact.bout, fact.rep) for fact in third if isinstance(fact, RepMissed)] == [(0, 1)]
    assert fourth == []
    assert all(any(isinstance(fact, RestExtended) for fact in facts) for facts in (first, second, third))
    for facts in (first, second, third):
        assert [record.outcome for record in fold_run(facts)] == [BoutOutcome.DONE] * 3
        assert isinstance(facts[-1], RunEnded)
        assert facts[-1].outcome is RunOutcome.FINISHED


def test_effort_and_pain_of_all_who_were_there_by_two_keys_each(qtbot: QtBot) -> None:
    coach = Coach(qtbot, count=20)
    coach.type("4").press(Qt.Key.Key_Return).type(" ").to_the_end()
    grid = coach.console._after
    coach.qtbot.keyClicks(grid, "73" * 18)
    coach.qtbot.keyClick(grid, Qt.Key.Key_Return)
    coach.qtbot.keyClicks(grid, "4")
    rated = [facts for facts in coach.hall.written if facts]
    assert len(rated) == 19
    for facts in rated[:-1]:
        assert fold_closing(facts).session_rpe == 7
        assert [record.pain for record in fold_run(facts)] == [None, None, 3]
    assert fold_closing(rated[-1]).session_rpe is None
    assert [record.pain for record in fold_run(rated[-1])] == [None, None, 4]


def test_one_and_nought_struck_quickly_are_ten(qtbot: QtBot) -> None:
    coach = Coach(qtbot, count=2)
    coach.type(" ").to_the_end()
    coach.qtbot.keyClicks(coach.console._after, "102")
    assert fold_closing(coach.hall.written[0]).session_rpe == 10
    assert fold_run(coach.hall.written[0])[-1].pain == 2


def test_somebody_late_joins_with_the_next_bout_and_somebody_early_leaves(qtbot: QtBot) -> None:
    coach = Coach(qtbot, count=3)
    coach.type("3").press(Qt.Key.Key_Return).type(" ").wait(5_000)
    coach.type("3").press(Qt.Key.Key_Return).wait(18_000).type("1ll").to_the_end()
    late, early = coach.hall.written[2], coach.hall.written[0]
    assert [record.bout for record in fold_run(late)] == [1, 2]
    assert isinstance(early[-1], RunEnded)
    assert early[-1].outcome is RunOutcome.ABANDONED
    assert not any(record.bout == 2 for record in fold_run(early))


def test_a_note_is_written_and_its_letters_command_nothing(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).type("2y")
    writing = coach.console._writing
    assert writing.isVisible()
    coach.qtbot.keyClicks(writing, "tense neck, asks t s k")
    coach.qtbot.keyClick(writing, Qt.Key.Key_Return)
    assert coach.notes == [(1, "tense neck, asks t s k")]
    assert not writing.isVisible()
    assert coach.hall.room.state.leader.stand is Stand.RUNNING


def test_a_name_that_is_typed_takes_somebody_off_before_the_session(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type("/")
    find = coach.console._find
    coach.qtbot.keyClicks(find, "bra")
    coach.qtbot.keyClick(find, Qt.Key.Key_Return)
    assert coach.hall.room.state.present == (True, False, True, True)


def test_the_arrow_keys_choose_where_there_are_more_people_than_keys(qtbot: QtBot) -> None:
    coach = Coach(qtbot, count=30)
    coach.press(Qt.Key.Key_Down, Qt.Key.Key_Up, Qt.Key.Key_Return)
    assert coach.hall.room.state.present == (*(True,) * 29, False)


def test_stop_asks_once_more_and_a_single_press_ends_nothing(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000).type("s").wait(500).type("x")
    assert coach.hall.room.state.leader.stand is Stand.RUNNING
    coach.type("ss")
    assert coach.hall.room.over


def test_every_button_does_what_its_key_does(qtbot: QtBot) -> None:
    coach = Coach(qtbot)
    coach.type(" ").wait(4_000)
    buttons = {button.text(): button for button in coach.console.findChildren(QPushButton)}
    coach.qtbot.mouseClick(buttons["End this bout  (E)"], Qt.MouseButton.LeftButton)
    assert coach.hall.room.state.leader.bout == 1
    coach.qtbot.mouseClick(buttons["Do it again  (A)"], Qt.MouseButton.LeftButton)
    assert (coach.hall.room.state.leader.bout, coach.hall.room.state.leader.attempt) == (0, 2)
    coach.qtbot.mouseClick(buttons["On  (→)"], Qt.MouseButton.LeftButton)
    assert coach.hall.room.state.leader.bout == 1
    coach.qtbot.mouseClick(buttons["Begin, pause, go on  (Space)"], Qt.MouseButton.LeftButton)
    assert coach.hall.room.state.leader.stand is Stand.PAUSED


@pytest.mark.parametrize("form", Form)
def test_the_console_fits_and_everything_has_a_name(qtbot: QtBot, form: Form) -> None:
    coach = Coach(qtbot, form, count=24, plan=demo_plan())
    for _ in range(3):
        assert misfits(coach.console) == []
        assert nameless(coach.console) == []
        coach.type(" ").wait(6_000).type("3")
    coach.press(Qt.Key.Key_Escape).type("ss")
    assert misfits(coach.console) == []
    assert isinstance(coach.console._find, QLineEdit)
