"""A program for the sound tests: plays something known through one speaker.

`python -m tests.player SPEAKER WHAT`: `bout` plays a bout while two threads compute and garbage is collected
without end; `tone` plays a steady tone and obeys `stop` on its input. It writes what it does, one line each.
"""

import gc
import json
import sys
import threading
import time
from typing import cast

import numpy as np

from app.audio.bout_sound import Entry, Manner, bout_sound
from app.audio.clocks import MonotonicClock
from app.audio.samples import RATE, Stereo
from app.audio.speaker.choice import Preference, SteadySpeaker, choose_speaker
from app.domain.cue_values import CueLevel
from tests.bouts import bout_of, tempo_reps

LEAD_IN_MS = 3_000
TONE_S = 12
TONE_LEVEL = 6_000


def known_bout() -> Stereo:
    """Some seconds of a bout: ticks before it, then glides and accents."""
    timeline, bout = bout_of(tempo_reps("1-0-X-0", 3))
    return bout_sound(timeline, bout, Entry(-LEAD_IN_MS), Manner(CueLevel.TONES), {})


def steady_tone() -> Stereo:
    """A second of silence, then a tone of which no sample is silent for long."""
    wave = TONE_LEVEL * np.cos(2 * np.pi * 600 * np.arange(TONE_S * RATE) / RATE)
    wave[:RATE] = 0
    return np.stack([wave, wave], axis=1).astype(np.int16)


def tell(**what: object) -> None:
    """One line for the test."""
    sys.stdout.write(json.dumps(what) + "\n")
    sys.stdout.flush()


def compute(over: threading.Event) -> None:
    """Keep the interpreter busy, and make garbage in rings."""
    while not over.is_set():
        ring: list[object] = [number * number for number in range(2_000)]
        ring.append(ring)


def play_bout(speaker: SteadySpeaker) -> None:
    """Play beside two busy threads and endless collections, frozen as when a session begins."""
    samples = known_bout()
    gc.collect()
    gc.freeze()
    over = threading.Event()
    busy = [threading.Thread(target=compute, args=(over,)) for _ in range(2)]
    for thread in busy:
        thread.start()
    speaker.play(samples)
    end = time.monotonic() + len(samples) / RATE + 1.0
    while time.monotonic() < end:
        gc.collect()
    over.set()
    for thread in busy:
        thread.join()


def play_tone(speaker: SteadySpeaker) -> None:
    """Play until told to stop, and look after the speaker as the program does."""
    clock = MonotonicClock()
    listener = threading.Thread(target=sys.stdin.readline, daemon=True)
    listener.start()
    began = clock.now_ms()
    speaker.play(steady_tone())
    told: object = None
    while listener.is_alive():
        speaker.tend()
        state = {"speaker": speaker.name, "lost": speaker.lost, "notice": speaker.notice}
        if state != told:
            tell(at_ms=clock.now_ms() - began, **state)
            told = state
        time.sleep(0.01)
    stopped = clock.now_ms()
    speaker.stop()
    tell(played_ms=stopped - began, stop_took_ms=clock.now_ms() - stopped)
    time.sleep(0.5)


def main() -> None:
    """Play what the words say."""
    preference, what = sys.argv[1:]
    speaker = choose_speaker(cast("Preference", preference))
    speaker.warm_up()
    time.sleep(0.7)
    tell(speaker=speaker.name, notice=speaker.notice)
    {"bout": play_bout, "tone": play_tone}[what](speaker)
    speaker.close()


if __name__ == "__main__":
    main()
