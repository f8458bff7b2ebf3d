"""The words of the cues, in each language."""

from dataclasses import fields

import pytest

from app.domain.cue_texts import spoken_texts
from app.domain.cue_values import LEVEL_SPEECH, PRIORITY, SPOKEN, CueKind, CueLevel
from app.domain.cue_words import ENGLISH, TONGUES, Tongue, spoken_phase
from app.domain.plan import Sides, Words
from app.domain.tempo import Phase
from tests.bouts import EVERY_DOSE, ROTATION, exercise, tempo_reps, timeline_of

FORMS = ("rep", "next_exercise", "seconds", "change_side", "first", "station", "wave")


@pytest.mark.parametrize("code", TONGUES)
def test_a_language_has_every_word_and_a_place_where_one_is_filled_in(code: str) -> None:
    tongue = TONGUES[code]
    assert tongue.code == code
    for each in fields(Tongue):
        value = getattr(tongue, each.name)
        words = list(value.values()) if isinstance(value, dict) else [value]
        assert all(word.strip() for word in words)
        assert all((word.count("{}") == 1) is (each.name in FORMS) for word in words)
    assert set(tongue.phases) == set(Phase)


def test_the_plans_own_word_is_said_in_any_language() -> None:
    lift = exercise(EVERY_DOSE["tempo"], words=Words(concentric="drive up"))
    assert spoken_phase(lift, Phase.CONCENTRIC, TONGUES["fr"]) == "drive up"
    assert spoken_phase(lift, Phase.ECCENTRIC, TONGUES["fr"]) == "descends"
    assert spoken_phase(lift, Phase.ECCENTRIC) == "lower"


def test_every_kind_has_its_place_in_the_order_of_who_gives_way() -> None:
    assert set(PRIORITY) == set(CueKind)
    assert all(PRIORITY[kind] > PRIORITY[CueKind.MARK] for kind in SPOKEN)
    assert LEVEL_SPEECH[CueLevel.SPARE] < LEVEL_SPEECH[CueLevel.FULL]


def test_every_text_of_a_plan_is_known_before_it_begins() -> None:
    timeline = timeline_of(ROTATION, exercise(EVERY_DOSE["own"], "Wall throws"))
    texts = spoken_texts(timeline)
    assert len(texts) == len(set(texts))
    expected = {
        "rep 1",
        "1",
        "last rep",
        "Elbow down",
        "next: Wall throws",
        "Wall throws",
        "right side",
        "12",
    }
    assert expected <= set(texts)
    assert "Lie on the other side" not in texts


def test_tones_alone_need_no_texts() -> None:
    timeline = timeline_of(ROTATION, exercise(EVERY_DOSE["own"]))
    assert spoken_texts(timeline, CueLevel.TONES) == ()


def test_a_resumed_alternating_bout_needs_no_text_that_was_not_made() -> None:
    from app.domain.cues import bout_cues

    timeline = timeline_of(exercise(tempo_reps("2-0-2-0", 3), sides=Sides.ALTERNATE))
    known = set(spoken_texts(timeline, tongue=ENGLISH))
    resumed = bout_cues(timeline, timeline.bouts[0], from_ms=-1_000, work_from_ms=4_000)
    assert all(known & {cue.text, *cue.shorter} for cue in resumed if cue.kind.spoken)
