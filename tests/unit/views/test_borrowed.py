"""Words of the lower floors as they are shown: all are messages, and English says what the domain says."""

import pytest
from PySide6.QtCore import QLocale

from app.domain.plan import Exercise, Sides
from app.domain.words import PHASE_WORDS, SIDE_WORDS, prescription_text
from app.planfile.passphrase import CURTAIN
from app.views.borrowed import BORROWED, dose_words, seconds_words
from tests.planned import holds, own_pace, signals, sticks, tempo_reps, work_for

DOSES = [
    tempo_reps((12, 15), "2-0-1-1"),
    tempo_reps(1, "2-0-1-1"),
    holds(5, (3, 5.5)),
    sticks(4, 2),
    signals(6, 3.5),
    own_pace((8, 12)),
    work_for(20),
]


def test_every_word_of_phases_and_sides_is_a_message() -> None:
    assert {*PHASE_WORDS.values(), *SIDE_WORDS.values(), CURTAIN} == set(BORROWED)


@pytest.mark.parametrize("sides", [Sides.BOTH, Sides.EACH, Sides.ALTERNATE])
@pytest.mark.parametrize("dose", DOSES, ids=lambda dose: type(dose).__name__)
def test_in_english_a_dose_is_written_as_the_domain_writes_it(dose: object, sides: Sides) -> None:
    exercise = Exercise("Heel raise", dose, sides=sides)  # type: ignore[arg-type]
    assert dose_words(exercise) == prescription_text(exercise)


def test_seconds_have_the_point_of_the_language() -> None:
    before = QLocale()
    QLocale.setDefault(QLocale("de"))
    try:
        assert seconds_words(1_500) == "1,5"
        assert dose_words(Exercise("Plank", holds(5, (3, 5.5)))).endswith("3-5,5 s")
    finally:
        QLocale.setDefault(before)
    assert seconds_words(1_500) == "1.5"
