"""The trial: a short invented bout to be heard, lowered, held and lifted on the left, then on the right."""

import threading
from dataclasses import dataclass

from app.audio.bout_sound import Entry, Manner, bout_sound
from app.audio.samples import RATE, Stereo
from app.audio.speaker.port import Speaker
from app.audio.track import Phrases
from app.audio.voice import Voice
from app.domain.compiler import compile_timeline
from app.domain.cue_texts import spoken_texts
from app.domain.cue_words import TONGUES
from app.domain.dose import Band, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.tempo import Phase, parse_tempo
from app.domain.timeline import Timeline

LEAD_IN_MS = 3_000
_TEMPO = parse_tempo("2-1-2-0")
_NAMED = (Phase.ECCENTRIC, Phase.HOLD_LENGTHENED, Phase.CONCENTRIC)


@dataclass(frozen=True, slots=True)
class Heard:
    """What a trial plays through, how long it takes, and what the user should know of it."""

    speaker: str
    length_s: float
    notices: tuple[str, ...]


def trial_timeline(language: str) -> Timeline:
    """The invented bout, named by its own phases so that it is of one language."""
    name = ", ".join(TONGUES[language].phases[phase] for phase in _NAMED)
    exercise = Exercise(name, TempoReps(Band.exactly(1), _TEMPO), sides=Sides.ALTERNATE)
    stage = Stage(name, StageKind.OTHER, (exercise,))
    return compile_timeline(Plan(name, (stage,), lead_in_ms=LEAD_IN_MS))


def trial_sound(manner: Manner, phrases: Phrases) -> Stereo:
    """The bout's samples, in the manner asked for."""
    timeline = trial_timeline(manner.language)
    return bout_sound(timeline, timeline.bouts[0], Entry(-LEAD_IN_MS), manner, phrases)


class Trial:
    """Plays the invented bout once: `begin`, then `wait`, on one thread; `stop` on any.

    The speaker and the voice are closed with it.
    """

    def __init__(self, speaker: Speaker, voice: Voice, manner: Manner) -> None:
        self._speaker, self._voice, self._manner = speaker, voice, manner
        self._stopped = threading.Event()
        self._length_s = 0.0

    def begin(self) -> Heard:
        """Make the speech, and start to play; tells what is heard."""
        tongue = TONGUES[self._manner.language]
        texts = spoken_texts(trial_timeline(tongue.code), self._manner.level, tongue)
        samples = trial_sound(self._manner, self._voice.prepare(texts).result())
        self._speaker.set_loudness(0.0 if self._manner.muted else 1.0)
        self._speaker.warm_up()
        if not self._stopped.is_set():
            self._speaker.play(samples)
        self._length_s = len(samples) / RATE + self._speaker.latency_ms / 1000
        notices = (self._speaker.notice, self._voice.notice)
        return Heard(self._speaker.name, self._length_s, tuple(filter(None, notices)))

    def wait(self) -> None:
        """Wait until the bout is over or was stopped, and let everything go."""
        self._stopped.wait(self._length_s)
        self._speaker.stop()
        self._speaker.close()
        self._voice.close()

    def stop(self) -> None:
        """Have it end now."""
        self._stopped.set()
