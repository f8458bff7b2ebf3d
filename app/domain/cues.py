"""Which cue, when: everything that is heard of a bout, from its timeline."""

from collections.abc import Iterator
from dataclasses import replace

from app.domain.cue_gap import CODA_MS, Gap, gap_before, gap_speech, gap_ticks
from app.domain.cue_speech import work_speech
from app.domain.cue_tones import thin, work_tones
from app.domain.cue_values import LEVEL_SPEECH, Cue, CueKind, CueLevel, caption
from app.domain.cue_words import ENGLISH, Tongue
from app.domain.plan import Side
from app.domain.timeline import Bout, Timeline

QUIET_MS = 1_000
"""Nothing is cued this soon after a sound begins to play: its first instants may be shifted."""

__all__ = ["CODA_MS", "QUIET_MS", "Cue", "CueKind", "CueLevel", "bout_cues", "caption", "whole_bout_cues"]


def bout_cues(  # noqa: PLR0913 - each says one thing of how the bout is entered
    timeline: Timeline,
    bout: Bout,
    *,
    from_ms: int,
    work_from_ms: int = 0,
    rest_ms: int | None = None,
    level: CueLevel = CueLevel.FULL,
    tongue: Tongue = ENGLISH,
) -> tuple[Cue, ...]:
    """The cues of a bout in order of time, for a sound that begins to play at `from_ms` of the bout's axis.

    `work_from_ms` is the start of the rep at which the work begins (0 but after a pause), its lead-in right
    before it; `rest_ms` is the length of the gap without the lead-in where it is not the planned one. Nothing
    is cued in the first second. Speech is as wished for and still has to be fitted (`cue_fit.fit_speech`); of
    two tones that would sound together one is left. An open-ended bout has cues up to the start of its work.
    """
    gap = gap_before(bout, work_from_ms, rest_ms)
    return _cues(timeline, bout, gap, from_ms + QUIET_MS, (level, tongue))


def whole_bout_cues(
    timeline: Timeline, bout: Bout, *, level: CueLevel = CueLevel.FULL, tongue: Tongue = ENGLISH
) -> tuple[Cue, ...]:
    """The cues of a bout and all that is before it, as in an unbroken recording of the session."""
    gap = gap_before(bout, 0, None)
    earliest = gap.start_ms + (QUIET_MS if bout.index == 0 else 0)
    return _cues(timeline, bout, gap, earliest, (level, tongue))


def _cues(
    timeline: Timeline, bout: Bout, gap: Gap, earliest_ms: int, manner: tuple[CueLevel, Tongue]
) -> tuple[Cue, ...]:
    level, tongue = manner
    tones = [tone for tone in _tones(timeline, bout, gap, tongue) if tone.at_ms >= earliest_ms]
    speech = [
        late
        for cue in _speech(timeline, bout, gap, tongue)
        if cue.kind in LEVEL_SPEECH[level] and (late := _not_before(cue, earliest_ms)) is not None
    ]
    return tuple(sorted((*thin(tones), *speech), key=lambda cue: (cue.at_ms, cue.priority)))


def _tones(timeline: Timeline, bout: Bout, gap: Gap, tongue: Tongue) -> Iterator[Cue]:
    yield from gap_ticks(gap, side_at(bout, gap.work_ms))
    for tone in work_tones(timeline.exercise_of(bout), bout, tongue):
        if tone.at_ms >= gap.work_ms:
            yield tone


def _speech(timeline: Timeline, bout: Bout, gap: Gap, tongue: Tongue) -> Iterator[Cue]:
    yield from gap_speech(timeline, bout, gap, side_at(bout, gap.work_ms), tongue)
    for cue in work_speech(timeline.exercise_of(bout), bout, tongue):
        if cue.at_ms >= gap.work_ms:
            yield cue


def side_at(bout: Bout, at_ms: int) -> Side:
    """The side at work at an instant of the bout's axis; the first before the work."""
    sides = [span.side for span in bout.work if span.start_ms <= at_ms]
    return sides[-1] if sides else bout.side


def _not_before(cue: Cue, earliest_ms: int) -> Cue | None:
    if cue.at_ms >= earliest_ms:
        return cue
    if not cue.slides or cue.at_ms < earliest_ms - QUIET_MS:
        return None
    return replace(cue, at_ms=earliest_ms)
