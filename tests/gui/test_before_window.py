"""The questions in the window: what is kept of them, tied to which run, and that nothing of it is lost."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from app import wiring
from app.audio.bout_sound import Manner
from app.audio.trial import Trial
from app.audio.voice import Voice
from app.domain.cue_values import CueLevel
from app.domain.errors import StoreError
from app.domain.plan import Side
from app.domain.readiness import ITEMS, Decision, Readiness
from app.domain.records import RunOutcome
from app.planfile.settings import Settings
from app.run.readiness_form import Step
from app.store.answers import Answers, Kept
from app.views.athlete.figure import FigureView
from app.views.athlete.page import AthletePage
from app.views.before.page import BeforePage
from tests.fakes import RecordingSpeaker
from tests.rig import Rig

PICTURE = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><rect width="10" height="10"/></svg>'
)


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    made = Rig(qtbot, tmp_path, wiring.open_record)
    made.settings = Settings()
    yield made
    made.window.close()


def numbers(rig: Rig, *pressed: int) -> None:
    for number in pressed:
        rig.press(Qt.Key(Qt.Key.Key_0 + number))


def write(rig: Rig, words: str) -> None:
    note = rig.page.findChild(QLineEdit, "note")
    assert isinstance(note, QLineEdit)
    rig.qtbot.keyClicks(note, words)


def kept(rig: Rig, athlete: str = "Hugo") -> tuple[Readiness, ...]:
    """What the record has of an athlete, once the window is closed."""
    rig.window.close()
    with wiring.open_record(rig.database) as database:
        return tuple(held.thing for held in database.answers.readiness_of(athlete))


def test_the_answers_are_kept_before_the_run_they_led_to(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 0, 2, 2)
    assert isinstance(rig.page, AthletePage)
    rig.press(Qt.Key.Key_Space)
    rig.wait(10_000)
    (said,) = kept(rig)
    (run,) = rig.runs()
    assert [getattr(said, name) for name in ITEMS] == [2, 3, 4, 1]
    assert (said.pain, said.changed, said.red_flag, said.total) == (0, False, False, 10)
    assert (said.run_id, run.athlete, run.outcome) == (run.run_id, "Hugo", RunOutcome.ABANDONED)
    assert run.reps_done == 1


def test_who_answers_nothing_is_known_to_have_been_asked(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_S)
    rig.press(Qt.Key.Key_Space)
    (said,) = kept(rig)
    (run,) = rig.runs()
    assert said.run_id == run.run_id
    assert [getattr(said, name) for name in (*ITEMS, "pain", "changed", "red_flag", "note")] == [None] * 8


def test_answers_without_a_run_are_kept_when_the_window_is_closed(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3)
    (said,) = kept(rig)
    assert (said.sleep, said.fatigue, said.stress, said.run_id) == (2, 3, None, None)
    assert rig.runs() == ()


def test_answers_are_kept_when_the_athlete_goes_back_to_the_start(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2)
    rig.press(Qt.Key.Key_Escape)
    assert "Who is training?" in rig.texts()
    rig.window.choose_plan(rig.plan)
    numbers(rig, 7)
    assert [said.sleep for said in kept(rig)] == [2, 7]


def test_a_page_that_nobody_touched_leaves_nothing_behind(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_Escape)
    assert kept(rig) == ()


def test_skipping_today_leads_to_the_start_with_nothing_begun(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 8)
    rig.press(Qt.Key.Key_Space)
    numbers(rig, 2, 2)
    write(rig, "since Monday")
    rig.click("Skip today  (2)")
    assert "Skipped for today" in rig.texts()
    rig.window.choose_plan(rig.plan)
    rig.press(Qt.Key.Key_Escape)
    assert "Skipped for today" not in rig.texts()
    (said,) = kept(rig)
    assert (said.pain, said.note, said.decision) == (8, "since Monday", Decision.SKIPPED)
    assert (said.run_id, rig.runs()) == (None, ())


def test_who_has_spoken_to_their_practitioner_may_begin(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 8)
    rig.press(Qt.Key.Key_Space)
    numbers(rig, 2, 1)
    write(rig, "numb since Monday")
    rig.press(Qt.Key.Key_Return)
    numbers(rig, 1)
    assert isinstance(rig.page, AthletePage)
    rig.press(Qt.Key.Key_Space)
    (said,) = kept(rig)
    assert (said.red_flag, said.decision, said.note) == (True, Decision.SPOKEN, "numb since Monday")
    assert said.run_id == rig.runs()[0].run_id


def test_a_place_is_kept_with_its_side(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 3)
    page = rig.page
    assert isinstance(page, BeforePage)
    (calf,) = [part for part in page._pain.body._buttons if part.accessibleName() == "calf, right"]
    rig.qtbot.mouseClick(calf, Qt.MouseButton.LeftButton)
    (said,) = kept(rig)
    assert (said.pain, said.pain_place, said.pain_side) == (3, "calf", Side.RIGHT)


def test_another_size_keeps_the_question_the_answers_and_the_note(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 8)
    rig.press(Qt.Key.Key_Space)
    numbers(rig, 2, 1)
    write(rig, "since M")
    before = rig.page
    rig.window.resize(1000, 560)
    qtbot.waitUntil(lambda: rig.page is not before, timeout=3_000)
    page = rig.page
    assert isinstance(page, BeforePage)
    assert page.form.step is Step.CARE
    assert page.focusWidget() is page.findChild(QLineEdit, "note")
    write(rig, "onday")
    (said,) = kept(rig)
    assert (said.pain, said.red_flag, said.note) == (8, True, "since Monday")


def test_where_the_club_leaves_the_questions_out_the_session_stands_ready_at_once(rig: Rig) -> None:
    rig.settings = Settings(ask_before=False)
    rig.open(wiring.read_plan(rig.plan))
    assert isinstance(rig.page, AthletePage)
    rig.press(Qt.Key.Key_Space)
    assert kept(rig) == ()


def test_a_record_that_fails_for_a_while_gets_the_answers_later(
    rig: Rig, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep, failures = Answers.keep, [3]

    def fail_at_first(answers: Answers, thing: Kept) -> None:
        if failures[0]:
            failures[0] -= 1
            raise StoreError("The disk is full.")
        keep(answers, thing)

    monkeypatch.setattr(Answers, "keep", fail_at_first)
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2)
    rig.press(Qt.Key.Key_Escape)
    for _ in range(2):
        rig.window._asking.try_again()
    (said,) = kept(rig)
    assert (said.sleep, failures) == (2, [0])


def test_a_record_that_never_takes_the_answers_is_said_before_they_are_lost(
    rig: Rig, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[str] = []

    def refuse(_answers: Answers, _thing: Kept) -> None:
        raise StoreError("The disk is full.")

    def give_up(_window: object, _title: str, sentence: str, *_rest: object) -> object:
        asked.append(sentence)
        return None

    monkeypatch.setattr(Answers, "keep", refuse)
    monkeypatch.setattr("app.views.window.QMessageBox.warning", give_up)
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2)
    rig.window.close()
    assert len(asked) == 1
    assert "What was answered before the session is not in the record yet." in asked[0]


def test_the_way_back_from_the_session_that_stands_ready_leads_to_the_last_question(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    numbers(rig, 2, 3, 4, 1, 0, 2, 2)
    rig.press(Qt.Key.Key_Escape)
    page = rig.page
    assert isinstance(page, BeforePage)
    assert (page.form.step, page.form.sleep) == (Step.RED_FLAG, 2)
    numbers(rig, 1)
    write(rig, "dizzy")
    rig.press(Qt.Key.Key_Return)
    numbers(rig, 2)
    (said,) = kept(rig)
    assert (said.sleep, said.red_flag, said.decision) == (2, True, Decision.SKIPPED)


def test_where_nothing_was_asked_the_way_back_leads_to_the_start(rig: Rig) -> None:
    rig.settings = Settings(ask_before=False)
    rig.open(wiring.read_plan(rig.plan))
    rig.click("Back  (Esc)")
    assert "Who is training?" in rig.texts()
    assert rig.runs() == ()


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return])
def test_a_press_that_comes_twice_leaves_a_question_open_and_begins_nothing(key: Qt.Key, rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    for _ in range(7):
        rig.press(key)
    assert isinstance(rig.page, AthletePage)
    rig.press(key)
    assert "I am ready  (Space)" in [button.text() for button in rig.page.findChildren(QPushButton)]
    assert rig.window._leading.session is not None
    assert rig.window._leading.session.facts == []
    rig.clock.at_ms += 500
    rig.press(key)
    assert rig.window._leading.session.facts != []


def test_a_run_that_is_under_way_has_no_way_back(rig: Rig) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_S)
    rig.press(Qt.Key.Key_Space)
    rig.press(Qt.Key.Key_Escape)
    assert isinstance(rig.page, AthletePage)
    assert rig.window._leading.session is not None


def test_what_stands_ready_says_how_to_set_up_and_shows_the_picture(rig: Rig) -> None:
    rig.settings = Settings(ask_before=False)
    rig.plan.with_name("raise.svg").write_text(PICTURE, encoding="utf-8")
    told = 'name = "Heel raise"\n  setup = "Stand on a step."\n  picture = "raise.svg"'
    text = rig.plan.read_text(encoding="utf-8").replace('name = "Heel raise"', told)
    rig.plan.write_text(text, encoding="utf-8")
    rig.open(wiring.read_plan(rig.plan))
    assert "Stand on a step." in rig.texts()
    shown = [view for view in rig.page.findChildren(FigureView) if view.isVisibleTo(rig.page)]
    assert [view.accessibleName() for view in shown] == ["Heel raise"]


def test_the_sound_can_be_tried_before_the_session(rig: Rig, qtbot: QtBot) -> None:
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_S)
    rig.click("Test the sound")
    qtbot.waitUntil(lambda: "Listen: left, then right." in rig.texts(), timeout=3_000)
    rig.click("Stop the test")
    qtbot.waitUntil(lambda: "Played through recording." in rig.texts(), timeout=5_000)
    assert "Test the sound" in [button.text() for button in rig.page.findChildren(QPushButton)]


def test_a_sound_that_is_being_tried_is_silent_once_the_session_begins(rig: Rig) -> None:
    trials: list[Trial] = []

    def make(_settings: Settings) -> Trial:
        trials.append(Trial(RecordingSpeaker(), Voice(), Manner(CueLevel.TONES)))
        return trials[0]

    rig.house = replace(rig.house, make_trial=make)
    rig.open(wiring.read_plan(rig.plan))
    rig.press(Qt.Key.Key_S)
    rig.click("Test the sound")
    rig.press(Qt.Key.Key_Space)
    assert trials[0]._stopped.is_set()


def test_without_a_moment_or_an_id_nothing_is_asked(rig: Rig) -> None:
    rig.house = replace(rig.house, stamp=None)
    rig.open(wiring.read_plan(rig.plan))
    assert isinstance(rig.page, AthletePage)
