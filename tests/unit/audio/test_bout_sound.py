"""The sound of a bout as one is led through it."""

import numpy as np
import pytest

from app.audio.bout_sound import OPEN_TAIL_MS, Entry, Manner, bout_sound, count_sound, heard_cues, length_in
from app.audio.samples import PER_MS, Spoken
from app.audio.tones import tone
from app.audio.track import Volumes
from app.domain.cue_tones import TICK_MS
from app.domain.cue_values import CueKind, CueLevel, caption
from app.domain.cues import CODA_MS
from app.domain.plan import Side
from tests.bouts import EVERY_DOSE, ROTATION, bout_of, timeline_of


def phrase(ms: int) -> Spoken:
    return np.full(ms * PER_MS, 2_000, dtype=np.int16)


SPOKEN = {"rep 1": phrase(700), "1": phrase(300), "12": phrase(450), "rechte Seite": phrase(600)}


def test_the_sound_runs_from_its_entry_to_the_end_of_the_chord() -> None:
    timeline = timeline_of(ROTATION)
    samples = bout_sound(timeline, timeline.bouts[0], Entry(-5_000), Manner(), {})
    assert samples.shape == ((5_000 + 24_000 + CODA_MS) * PER_MS, 2)
    assert not samples[: PER_MS * 1_000].any()
    assert samples[(5_000 + 24_000) * PER_MS].any()


def test_open_ended_work_is_rendered_a_little_way_in() -> None:
    timeline, bout = bout_of(EVERY_DOSE["own"])
    samples = bout_sound(timeline, bout, Entry(-5_000), Manner(), {})
    assert len(samples) == (5_000 + OPEN_TAIL_MS) * PER_MS


def test_only_what_has_a_phrase_is_said_and_in_the_language_of_the_manner() -> None:
    timeline = timeline_of(ROTATION)
    heard = heard_cues(timeline, timeline.bouts[0], Entry(-5_000), Manner(), SPOKEN)
    assert [caption(cue) for cue in heard if cue.kind.spoken] == ["rep 1"]
    german = heard_cues(timeline, timeline.bouts[1], Entry(-8_000), Manner(language="de"), SPOKEN)
    assert [(cue.at_ms, caption(cue)) for cue in german if cue.kind is CueKind.SIDE] == [
        (-5_000, "rechte Seite")
    ]


def test_tones_only_has_the_same_tones() -> None:
    timeline = timeline_of(ROTATION)
    full, bare = (
        heard_cues(timeline, timeline.bouts[0], Entry(-5_000), Manner(level), SPOKEN)
        for level in (CueLevel.FULL, CueLevel.TONES)
    )
    assert [cue for cue in full if not cue.kind.spoken] == list(bare)


def test_a_count_is_a_tick_and_its_number_at_once() -> None:
    samples = count_sound(12, Manner(), SPOKEN)
    assert len(samples) == 450 * PER_MS
    assert samples[0].all()
    assert samples[-1].all()


def test_a_count_without_a_phrase_is_the_tick_alone() -> None:
    for manner, phrases in ((Manner(), {}), (Manner(CueLevel.TONES), SPOKEN)):
        samples = count_sound(12, manner, phrases, side=Side.LEFT)
        assert len(samples) == TICK_MS * PER_MS
        assert np.max(np.abs(samples / 32_767 - tone(CueKind.TICK, TICK_MS, Side.LEFT))) < 1e-4


def test_the_last_count_is_the_closing_chord() -> None:
    assert len(count_sound(12, Manner(), {}, last=True)) > TICK_MS * PER_MS


def test_volumes_of_the_manner_reach_the_samples() -> None:
    timeline = timeline_of(ROTATION)
    muted = Manner(volumes=Volumes(0, 0))
    assert not bout_sound(timeline, timeline.bouts[0], Entry(-5_000), muted, SPOKEN).any()
    assert not count_sound(12, muted, SPOKEN).any()


@pytest.mark.parametrize(("frames", "expected"), [(48, 1), (49, 2), (96, 2)])
def test_the_length_of_a_phrase_is_rounded_up(frames: int, expected: int) -> None:
    assert length_in({"a": np.zeros(frames, dtype=np.int16)})("a") == expected
    assert length_in({})("a") is None
