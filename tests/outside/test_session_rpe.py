"""The words of session RPE against those quoted of their author, and which numbers have none."""

import pytest

from app.analysis.load import session_load
from app.views.widgets.scale import EFFORT_WORDS

# Foster's modified CR-10: Foster et al. 2001, J Strength Cond Res 15(1):109-115 (secondary: as quoted).
QUOTED = {
    0: "Rest",
    1: "Very, very easy",
    2: "Easy",
    3: "Moderate",
    4: "Somewhat hard",
    5: "Hard",
    7: "Very hard",
    10: "Maximal",
}


def test_efforts_have_the_words_quoted() -> None:
    assert {number: word.capitalize() for number, word in EFFORT_WORDS.items()} == QUOTED


@pytest.mark.parametrize("number", [6, 8, 9])
def test_an_effort_without_a_word_is_given_none(number: int) -> None:
    # The same source prints a dash beside 6, 8 and 9.
    assert number not in EFFORT_WORDS


def test_rest_makes_no_load_and_an_effort_unknown_an_unknown_one() -> None:
    # By the product of Foster et al. 2001; that unknown is not nought: common practice.
    assert session_load(0, 60) == 0
    assert session_load(None, 60) is None
    assert session_load(7, None) is None
