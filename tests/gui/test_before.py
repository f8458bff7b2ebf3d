"""The questions before a run, answered by keys, by the mouse and by accessible actions."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from app.domain.plan import Side
from app.domain.readiness import Decision
from app.run.readiness_form import ReadinessForm, Spot, Step
from app.views.before.body_map import PartButton, spot_words
from app.views.before.body_parts import PARTS
from tests.questions import Questions

WELL = ReadinessForm(Step.DONE, 2, 3, 4, 1, 0, None, changed=False, red_flag=False)
HURT = ReadinessForm(
    Step.DONE, 2, 3, 4, 1, 6, Spot("knee", Side.LEFT), False, False, "since Monday", Decision.SPOKEN
)


def test_seven_number_keys_answer_everything(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3, 4, 1, 0, 2, 2)
    assert asked.form == WELL
    assert asked.ends == ["answered"]


def test_yes_and_no_have_letters_too(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3, 4, 1, 0).press(Qt.Key.Key_Y, Qt.Key.Key_N)
    assert (asked.form.changed, asked.form.red_flag, asked.form.step) == (True, False, Step.CARE)


@pytest.mark.parametrize("way", ["click", "act"])
def test_the_mouse_and_accessible_actions_answer_everything(way: str, qtbot: QtBot) -> None:
    asked = Questions(qtbot)
    go = getattr(asked, way)
    go("Sleep 2", "Fatigue 3", "Stress 4", "Soreness 1", "Pain 6", "knee, left")
    go("Health 2, no", "Warning signs 2, no")
    assert not asked.button("I have spoken").isEnabled()
    asked.type("since Monday")
    go("I have spoken")
    assert asked.form == HURT
    assert asked.ends == ["answered"]


def test_the_same_by_keys_alone(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3, 4, 1, 6)
    reach(asked, Spot("knee", Side.LEFT))
    asked.press(Qt.Key.Key_Return, Qt.Key.Key_N, Qt.Key.Key_N)
    asked.type("since Monday").press(Qt.Key.Key_Return).number(1)
    assert asked.form == HURT


def reach(asked: Questions, spot: Spot) -> None:
    """Walk over the body with the arrows: to the side, then down."""
    asked.press(Qt.Key.Key_Down)
    for key in (Qt.Key.Key_Right, *[Qt.Key.Key_Down] * 12):
        focused = asked.page.focusWidget()
        assert isinstance(focused, PartButton)
        if focused.part.spot == spot:
            return
        asked.press(key)
    focused = asked.page.focusWidget()
    assert isinstance(focused, PartButton)
    assert focused.part.spot == spot


def test_every_region_is_reached_by_arrows(qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.PLACE, pain=3))
    asked.press(Qt.Key.Key_Down)
    arrows = (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down)
    start = asked.page.focusWidget()
    assert isinstance(start, PartButton)
    seen, waiting = {start.part.spot}, [start]
    while waiting:
        here = waiting.pop()
        for arrow in arrows:
            here.setFocus(Qt.FocusReason.TabFocusReason)
            asked.press(arrow)
            there = asked.page.focusWidget()
            assert isinstance(there, PartButton)
            if there.part.spot not in seen:
                seen.add(there.part.spot)
                waiting.append(there)
    assert seen == {part.spot for part in PARTS}


def test_each_region_takes_a_press_in_its_middle_and_says_its_name(qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.PLACE, pain=3))
    for part in PARTS:
        button = asked.button(spot_words(part.spot))
        middle = button.mapTo(asked.page, button.rect().center())
        assert asked.page.childAt(middle) is button
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
        assert asked.form.spot == part.spot
        asked.click("Where")


def test_left_is_at_the_right_of_who_faces_you_and_at_the_left_of_who_turns_away(qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.PLACE, pain=3))

    def across(name: str) -> int:
        button = asked.button(name)
        return button.mapTo(asked.page, button.rect().center()).x()

    assert across("knee, right") < across("knee, left") < across("calf, left") < across("calf, right")


def test_one_and_zero_quickly_are_ten(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(1, 1, 1, 1, 1)
    asked.now_s += 0.7
    assert asked.number(0).form.pain == 10
    slow = Questions(qtbot).number(1, 1, 1, 1, 1)
    slow.now_s += 0.9
    assert slow.number(0).form.pain == 1


def test_zero_after_the_one_of_another_question_is_no_ten(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(1, 1, 1, 1, 0)
    assert (asked.form.soreness, asked.form.pain) == (1, 0)


def test_the_number_of_pain_can_be_changed_while_the_place_is_asked(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(1, 1, 1, 1, 3).click("Pain 8")
    assert (asked.form.pain, asked.form.step) == (8, Step.PLACE)


def test_the_sum_is_said_once_all_four_are_there_and_not_before(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3, 4)
    assert "Sum" not in asked.texts()
    assert "Sum 10, of 4 (well) to 28" in asked.number(1).texts()


def test_backspace_asks_again_and_the_answer_stands_until_another_is_given(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3).press(Qt.Key.Key_Backspace, Qt.Key.Key_Backspace)
    assert (asked.form.step, asked.form.sleep) == (Step.SLEEP, 2)
    assert asked.press(Qt.Key.Key_Space).form.sleep == 2
    assert asked.press(Qt.Key.Key_Backspace).number(7).form.sleep == 7


def test_space_and_enter_leave_questions_open(qtbot: QtBot) -> None:
    asked = Questions(qtbot).press(*[Qt.Key.Key_Space, Qt.Key.Key_Return] * 3)
    assert asked.form == ReadinessForm(step=Step.RED_FLAG)
    assert asked.press(Qt.Key.Key_Space).ends == ["answered by key"]


def test_one_key_leaves_all_that_follow_open(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(5).press(Qt.Key.Key_S)
    assert asked.form == ReadinessForm(step=Step.DONE, sleep=5)
    assert asked.ends == ["answered"]


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_S, Qt.Key.Key_1])
def test_no_key_passes_by_a_note_that_is_due(key: Qt.Key, qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.RED_FLAG)).press(Qt.Key.Key_Y)
    asked.page.setFocus()
    asked.press(key, key, key)
    assert (asked.form.step, asked.ends) == (Step.CARE, [])


def test_the_note_takes_the_keys_and_letters_of_commands_are_words_in_it(qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.RED_FLAG)).press(Qt.Key.Key_Y)
    assert asked.page.focusWidget() is asked.note()
    assert asked.type("sy 12 n").form.note == "sy 12 n"
    assert asked.form.step is Step.CARE
    assert asked.press(Qt.Key.Key_Return).number(2).ends == ["skipped"]
    assert asked.form.decision is Decision.SKIPPED


def test_a_change_in_health_goes_on_with_enter_and_an_empty_note(qtbot: QtBot) -> None:
    asked = Questions(qtbot, ReadinessForm(step=Step.CHANGED)).press(Qt.Key.Key_Y, Qt.Key.Key_N)
    assert "something has changed" in asked.texts()
    assert asked.press(Qt.Key.Key_Return).ends == ["answered by key"]


def test_the_trail_leads_back_to_a_question(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3, 4).click("Sleep: 2")
    assert asked.form.step is Step.SLEEP


def test_escape_leaves(qtbot: QtBot) -> None:
    assert Questions(qtbot).press(Qt.Key.Key_Escape).ends == ["left"]


def test_every_answer_is_told_at_once(qtbot: QtBot) -> None:
    asked = Questions(qtbot).number(2, 3)
    assert asked.forms == [ReadinessForm(Step.FATIGUE, 2), ReadinessForm(Step.STRESS, 2, 3)]
    asked = Questions(qtbot, ReadinessForm(step=Step.CARE, changed=True)).type("ab")
    assert [form.note for form in asked.forms] == ["a", "ab"]


def test_a_page_built_anew_shows_what_was_answered(qtbot: QtBot) -> None:
    first = Questions(qtbot, ReadinessForm(step=Step.RED_FLAG, sleep=3)).press(Qt.Key.Key_Y).type("a fall")
    again = Questions(qtbot, first.form)
    assert again.note().text() == "a fall"
    assert "3 · good" in again.texts()


def test_everything_that_can_be_reached_has_a_name(qtbot: QtBot) -> None:
    for step in Step:
        if step is Step.DONE:
            continue
        asked = Questions(qtbot, ReadinessForm(step=step, pain=7, red_flag=True))
        for part in asked.page.findChildren(QWidget):
            if part.isVisible() and part.focusPolicy() & Qt.FocusPolicy.TabFocus and part is not asked.page:
                assert part.accessibleName(), (step, part)


@pytest.mark.parametrize(("language", "yes"), [("ja", Qt.Key.Key_J), ("да", Qt.Key.Key_Y)])
def test_yes_has_the_letter_of_its_word(
    language: str, yes: Qt.Key, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    words = {"yes": language}
    monkeypatch.setattr("app.views.before.page.tr", lambda text: words.get(text, text))
    asked = Questions(qtbot, ReadinessForm(step=Step.CHANGED)).press(yes)
    assert (asked.form.changed, asked.form.step) == (True, Step.RED_FLAG)


def test_trouble_is_said_above_the_question_until_it_is_over(qtbot: QtBot) -> None:
    asked = Questions(qtbot)
    asked.page.show_trouble("The disk is full.")
    assert "The disk is full." in asked.texts()
    asked.page.show_trouble("")
    assert "disk" not in asked.texts()
