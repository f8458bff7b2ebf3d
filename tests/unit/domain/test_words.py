"""The words of phases, sides and doses."""

import pytest

from app.domain.dose import Band, Dose
from app.domain.plan import Exercise, Side, Sides, Words
from app.domain.tempo import Begins, Phase
from app.domain.words import (
    PHASE_WORDS,
    band_text,
    phase_word,
    phases_text,
    prescription_text,
    seconds_band,
    side_word,
)
from tests.planned import holds, own_pace, signals, sticks, tempo_reps, work_for

TURN = Words(eccentric="lower slowly", hold="stay", concentric="turn up")
ROTATION = Exercise("Rotation", tempo_reps(15, "2-1-2-1", Begins.CONCENTRIC), words=TURN)


@pytest.mark.parametrize("phase", list(Phase))
def test_every_phase_has_a_word(phase: Phase) -> None:
    assert phase_word(Exercise("Any", work_for(5)), phase) == PHASE_WORDS[phase]


@pytest.mark.parametrize(
    ("phase", "word"),
    [
        (Phase.ECCENTRIC, "Lower slowly"),
        (Phase.CONCENTRIC, "Turn up"),
        (Phase.HOLD_LENGTHENED, "Stay"),
        (Phase.HOLD_SHORTENED, "Stay"),
        (Phase.HOLD, "Stay"),
        (Phase.RELAX, "Relax"),
        (Phase.OWN, "Your pace"),
    ],
)
def test_the_plans_words_come_first_with_their_first_letter_raised(phase: Phase, word: str) -> None:
    assert phase_word(ROTATION, phase) == word


def test_every_word_a_plan_may_choose_is_used() -> None:
    chosen = Words(relax="rest", move="jump", stick="freeze", reset="back", go="now", work="row")
    exercise = Exercise("Any", work_for(5), words=chosen)
    phases = (Phase.RELAX, Phase.MOVE, Phase.STICK, Phase.RESET, Phase.GO, Phase.WORK)
    assert [phase_word(exercise, phase) for phase in phases] == [
        "Rest",
        "Jump",
        "Freeze",
        "Back",
        "Now",
        "Row",
    ]


def test_sides_have_words() -> None:
    assert [side_word(side) for side in Side] == ["Left", "Right", "Both sides"]


@pytest.mark.parametrize(
    ("dose", "text"),
    [
        (tempo_reps(10, "3-0-1-0"), "10 reps, 3-0-1-0, lower first"),
        (tempo_reps((12, 15), "2-1-X-0", Begins.HOLD), "12-15 reps, 2-1-X-0, lower first"),
        (tempo_reps(1, "0-0-2-0"), "1 rep, 0-0-2-0, lift first"),
        (holds(5, 20), "5 holds of 20 s"),
        (holds(1, (20, 30)), "1 hold of 20-30 s"),
        (sticks((6, 10), (3, 5)), "6-10 landings, stick 3-5 s"),
        (signals(6, 7.5), "6 reps, one every 7.5 s"),
        (own_pace(8), "8 reps at your own pace"),
        (work_for(30), "30 s of work"),
    ],
)
def test_a_prescription_is_said_in_a_few_words(dose: Dose, text: str) -> None:
    assert prescription_text(Exercise("Any", dose)) == text


def test_a_prescription_uses_the_plans_words() -> None:
    assert prescription_text(ROTATION) == "15 reps, 2-1-2-1, turn up first"
    frozen = Exercise("Any", sticks(6, 3), words=Words(stick="Freeze"))
    assert prescription_text(frozen) == "6 landings, freeze 3 s"


@pytest.mark.parametrize(
    ("dose", "text"),
    [
        (tempo_reps(10, "3-0-1-0"), "10 reps a side, 3-0-1-0, lower first"),
        (holds(1, 20), "1 hold a side of 20 s"),
        (sticks(6, 3), "6 landings a side, stick 3 s"),
        (signals(6, 5), "6 reps a side, one every 5 s"),
    ],
)
def test_a_prescription_of_alternating_sides_counts_a_side(dose: Dose, text: str) -> None:
    assert prescription_text(Exercise("Any", dose, sides=Sides.ALTERNATE)) == text


@pytest.mark.parametrize(
    ("dose", "text"),
    [
        (tempo_reps(3, "3-1-X-0"), "lower 3 s, hold 1 s, lift as fast as control allows"),
        (holds(5, 20), "hold 20 s, relax 2 s between"),
        (sticks(6, (3, 5)), "go 2 s, stick 3-5 s, reset 4 s between"),
        (signals(6, 5), "go every 5 s"),
        (own_pace(8), "your pace"),
        (work_for(30), "work 30 s"),
    ],
)
def test_the_phases_are_spelt_in_words(dose: Dose, text: str) -> None:
    assert phases_text(Exercise("Any", dose)) == text


def test_the_phases_are_spelt_in_playing_order_with_the_plans_words() -> None:
    assert phases_text(ROTATION) == "turn up 2 s, stay 1 s, lower slowly 2 s, stay 1 s"


def test_ranges_are_written_with_a_dash() -> None:
    assert (band_text(Band(12, 15)), band_text(Band(12, 12))) == ("12-15", "12")
    assert (seconds_band(Band(3_000, 4_500)), seconds_band(Band(500, 500))) == ("3-4.5 s", "0.5 s")
