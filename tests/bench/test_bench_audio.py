"""How long sound takes to make, and how much memory: figures to read, none asserted."""

import resource
import time

import numpy as np
import pytest

from app.audio.bout_sound import Entry, Manner, bout_sound
from app.audio.voice import Voice
from app.domain.cue_texts import spoken_texts
from tests.bouts import EVERY_DOSE, ROTATION, exercise, timeline_of

pytestmark = pytest.mark.bench
SESSION_MS = 90 * 60_000


def test_rendering_against_real_time() -> None:
    rotation = exercise(ROTATION.dose, "Rotation", sets=40, rest_ms=60_000, cues=ROTATION.cues)
    landing = exercise(EVERY_DOSE["stick"], "Landing", sets=40, rest_ms=60_000, setup="Stand on the low box")
    timeline = timeline_of(rotation, landing)
    assert timeline.timed_ms > SESSION_MS
    voice = Voice()
    texts = spoken_texts(timeline)
    began = time.perf_counter()
    phrases = voice.prepare(texts).result()
    print(f"\n{len(texts)} phrases: {(time.perf_counter() - began) * 1000:.0f} ms")
    voice.close()
    for _ in range(2):
        began = time.perf_counter()
        for bout in timeline.bouts:
            bout_sound(timeline, bout, Entry(-bout.before_ms), Manner(), phrases)
        took = time.perf_counter() - began
        speed = timeline.timed_ms / 1000 / took
        print(
            f"{len(timeline.bouts)} bouts, {timeline.timed_ms / 60_000:.0f} min: {took:.2f} s,"
            f" {speed:.0f} x real time"
        )
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    spoken = sum(phrase.nbytes for phrase in phrases.values()) / 2**20
    print(f"peak memory of this process {peak:.0f} MB, of which phrases {spoken:.1f} MB")


def test_one_long_bout() -> None:
    timeline = timeline_of(exercise(EVERY_DOSE["hold"], "Wall hold"))
    bout = timeline.bouts[0]
    times = []
    for _ in range(20):
        began = time.perf_counter()
        bout_sound(timeline, bout, Entry(-5_000), Manner(), {})
        times.append(time.perf_counter() - began)
    print(f"\na bout of {(bout.work_ms or 0) / 1000:.0f} s: median {np.median(times) * 1000:.1f} ms")
