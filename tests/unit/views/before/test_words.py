"""The words of the questions: a word for each number, a dash for what is not known, no advice of our own."""

import pytest

from app.domain.plan import Side
from app.run.readiness_form import ITEM_STEPS, ReadinessForm, Spot, Step
from app.views.before.words import ITEM_WORDS, QUESTIONS, TITLES, answer_words, care_words


def test_every_question_is_worded() -> None:
    asked = set(Step) - {Step.DONE}
    assert set(QUESTIONS) == set(TITLES) == asked


@pytest.mark.parametrize("step", ITEM_STEPS)
def test_every_number_of_an_item_has_its_own_words(step: Step) -> None:
    assert len(set(ITEM_WORDS[step])) == 7


@pytest.mark.parametrize("step", [step for step in TITLES if step is not Step.CARE])
def test_what_is_not_answered_is_a_dash_and_never_nought(step: Step) -> None:
    assert answer_words(ReadinessForm(), step) == "—"


def test_answers_are_shown_in_words() -> None:
    spot = Spot("knee", Side.LEFT)
    form = ReadinessForm(sleep=1, pain=0, changed=True, red_flag=False, note=" a fall ", spot=spot)
    shown = {step: answer_words(form, step) for step in TITLES}
    assert shown[Step.SLEEP] == "1 · very, very good"
    assert (shown[Step.PAIN], shown[Step.PLACE]) == ("0 of 10", "knee, left")
    assert (shown[Step.CHANGED], shown[Step.RED_FLAG], shown[Step.CARE]) == ("yes", "no", "a fall")
    assert answer_words(ReadinessForm(spot=Spot("lower back")), Step.PLACE) == "lower back"


def test_what_is_said_before_a_note_is_what_was_answered_and_the_caution() -> None:
    assert care_words(ReadinessForm(pain=5)) == ()
    assert care_words(ReadinessForm(pain=6)) == (
        "You said pain 6 of 10.",
        "The session is not started before you have written a note and chosen.",
    )
    flagged = care_words(ReadinessForm(red_flag=True))
    assert "see a licensed professional" in flagged[1]
    assert care_words(ReadinessForm(changed=True)) == ("You said that something has changed in your health.",)
