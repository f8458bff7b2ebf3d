"""The sound of a bout as one is led through it: which cues are heard, and their samples."""

from dataclasses import dataclass
from typing import Protocol

from app.audio.samples import PER_MS, Spoken, Stereo
from app.audio.track import FULL_VOLUME, Phrases, Volumes, render_track
from app.domain.cue_fit import Length, fit_speech
from app.domain.cue_tones import CHORD_MS, TICK_MS
from app.domain.cue_values import Cue, CueKind, CueLevel
from app.domain.cue_words import TONGUES
from app.domain.cues import CODA_MS, bout_cues
from app.domain.plan import Side
from app.domain.timeline import Bout, Timeline

OPEN_TAIL_MS = 2_000
"""An open-ended bout is rendered this far into its work."""


@dataclass(frozen=True, slots=True)
class Manner:
    """How a user wants to be led by ear: how much is said, in which language, how loud or not at all."""

    level: CueLevel = CueLevel.FULL
    language: str = "en"
    volumes: Volumes = FULL_VOLUME
    muted: bool = False


@dataclass(frozen=True, slots=True)
class Entry:
    """Where on its axis a bout's sound begins, the rep it is entered at, and the length of its gap. In ms."""

    from_ms: int
    work_from_ms: int = 0
    rest_ms: int | None = None


class Score(Protocol):
    """What is heard of a run's timeline, in place of what one athlete hears."""

    def texts(self) -> tuple[str, ...]:
        """Every text that may need to be spoken, each once."""

    def samples(self, bout: Bout, entry: Entry, volumes: Volumes, phrases: Phrases) -> Stereo:
        """The samples of a bout from `entry.from_ms` to the end of its closing chord."""


def heard_cues(
    timeline: Timeline, bout: Bout, entry: Entry, manner: Manner, phrases: Phrases
) -> tuple[Cue, ...]:
    """The cues of a bout that will be heard, every phrase at its place; tones alone without phrases."""
    wished = bout_cues(
        timeline,
        bout,
        from_ms=entry.from_ms,
        work_from_ms=entry.work_from_ms,
        rest_ms=entry.rest_ms,
        level=manner.level,
        tongue=TONGUES[manner.language],
    )
    return fit_speech(wished, length_in(phrases))


def bout_sound(timeline: Timeline, bout: Bout, entry: Entry, manner: Manner, phrases: Phrases) -> Stereo:
    """The samples of a bout from `entry.from_ms` to the end of its closing chord."""
    end = OPEN_TAIL_MS if bout.work_ms is None else bout.work_ms + CODA_MS
    cues = heard_cues(timeline, bout, entry, manner, phrases)
    return render_track(cues, entry.from_ms, end, volumes=manner.volumes, phrases=phrases)


def count_sound(
    count: int, manner: Manner, phrases: Phrases, *, side: Side = Side.BOTH, last: bool = False
) -> Stereo:
    """What is heard as a rep at one's own pace is counted: a tick, or the closing chord, and the number."""
    kind, length = (CueKind.END, CHORD_MS) if last else (CueKind.TICK, TICK_MS)
    cues = [Cue(0, kind, side, length, str(count))]
    said = phrases.get(str(count))
    if manner.level is not CueLevel.TONES and said is not None:
        spoken_ms = _rounded_up(said)
        cues.append(Cue(0, CueKind.COUNT, side, spoken_ms, str(count), str(count)))
        length = max(length, spoken_ms)
    return render_track(cues, 0, length, volumes=manner.volumes, phrases=phrases)


def length_in(phrases: Phrases) -> Length:
    """How long each phrase takes, in whole ms; None for a text that is not among them."""
    return lambda text: _rounded_up(phrases[text]) if text in phrases else None


def _rounded_up(phrase: Spoken) -> int:
    return -(-len(phrase) // PER_MS)
