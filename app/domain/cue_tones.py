"""The tones of a bout: where each phase, tick, mark and end falls, and which of two at one instant sounds."""

from collections.abc import Iterator, Sequence

from app.domain.cue_values import Cue, CueKind
from app.domain.cue_words import ENGLISH, Tongue, spoken_phase
from app.domain.dose import Dose, TempoReps
from app.domain.plan import Exercise, Side
from app.domain.tempo import Phase
from app.domain.timeline import Bout, WorkSpan

LONG_PHASE_MS = 4_000
"""From this length on, the last three seconds of a phase are ticked; of timed work, those there are."""
FIRST_TICK_MS = 1_000
"""In shorter timed work a tick comes no sooner after its start, so that it is not taken for the start."""
TICKED_S = (3, 2, 1)
TICK_MS = 50
MARK_MS = 120
ACCENT_MS = 180
RELEASE_MS = 200
CHORD_MS = 450
SHORTEST_ONSET_MS, LONGEST_ONSET_MS = 250, 400
REST_BETWEEN_TONES_MS = 30

PHASE_KIND: dict[Phase, CueKind] = {
    Phase.ECCENTRIC: CueKind.ECCENTRIC,
    Phase.HOLD_LENGTHENED: CueKind.HOLD_LENGTHENED,
    Phase.CONCENTRIC: CueKind.CONCENTRIC,
    Phase.HOLD_SHORTENED: CueKind.HOLD_SHORTENED,
    Phase.HOLD: CueKind.HOLD,
    Phase.RELAX: CueKind.RELEASE,
    Phase.MOVE: CueKind.EXPLOSIVE,
    Phase.STICK: CueKind.HOLD,
    Phase.RESET: CueKind.RELEASE,
    Phase.GO: CueKind.EXPLOSIVE,
    Phase.OWN: CueKind.EXPLOSIVE,
    Phase.WORK: CueKind.EXPLOSIVE,
}
_FIXED_MS = {CueKind.EXPLOSIVE: ACCENT_MS, CueKind.RELEASE: RELEASE_MS}


def onset_kind(dose: Dose, phase: Phase) -> CueKind:
    """The kind of tone a phase begins with: an accent where the tempo says X."""
    tempo_phase = isinstance(dose, TempoReps) and phase in (Phase.ECCENTRIC, Phase.CONCENTRIC)
    if tempo_phase and isinstance(dose, TempoReps) and dose.tempo.length(phase) is None:
        return CueKind.EXPLOSIVE
    return PHASE_KIND[phase]


def onset_ms(kind: CueKind, phase_ms: int | None) -> int:
    """How long the tone of a phase sounds: a quarter of the phase within bounds, and never into the next."""
    if phase_ms is None:
        return _FIXED_MS.get(kind, LONGEST_ONSET_MS)
    wanted = _FIXED_MS.get(kind) or min(max(phase_ms // 4, SHORTEST_ONSET_MS), LONGEST_ONSET_MS)
    return max(min(wanted, phase_ms - REST_BETWEEN_TONES_MS), 1)


def work_tones(exercise: Exercise, bout: Bout, tongue: Tongue = ENGLISH) -> Iterator[Cue]:
    """Every tone of the work: phase onsets, marks, the last three seconds of long phases, the end."""
    for span in bout.work:
        kind = onset_kind(exercise.dose, span.phase)
        length = None if span.end_ms is None else span.end_ms - span.start_ms
        word = tongue.begin if span.end_ms is None else spoken_phase(exercise, span.phase, tongue)
        yield Cue(span.start_ms, kind, span.side, onset_ms(kind, length), word)
        yield from _marks(span, tongue)
        yield from _ticks(span)
    if bout.work_ms is not None:
        yield Cue(bout.work_ms, CueKind.END, Side.BOTH, CHORD_MS, tongue.bout_done)


def ticks_before(end_ms: int, side: Side) -> Iterator[Cue]:
    """A tick three, two and one seconds before an instant."""
    for left in TICKED_S:
        yield Cue(end_ms - left * 1000, CueKind.TICK, side, TICK_MS, str(left))


def _ticks(span: WorkSpan) -> Iterator[Cue]:
    if span.end_ms is None:
        return
    long = span.end_ms - span.start_ms >= LONG_PHASE_MS
    for tick in ticks_before(span.end_ms, span.side):
        if long or (span.phase is Phase.WORK and tick.at_ms - span.start_ms >= FIRST_TICK_MS):
            yield tick


def _marks(span: WorkSpan, tongue: Tongue) -> Iterator[Cue]:
    if span.mark_ms is not None:
        yield Cue(span.mark_ms, CueKind.MARK, span.side, MARK_MS, tongue.lower_bound)
    if span.phase is Phase.WORK and span.end_ms is not None:
        length = span.end_ms - span.start_ms
        for quarter in (1, 2, 3):
            yield Cue(span.start_ms + length * quarter // 4, CueKind.MARK, span.side, MARK_MS, tongue.quarter)


def thin(tones: Sequence[Cue]) -> tuple[Cue, ...]:
    """The tones in order of time, without those that would sound together with one of higher priority."""
    kept: list[Cue] = []
    for tone in sorted(tones, key=lambda tone: (tone.at_ms, tone.priority)):
        while kept and kept[-1].end_ms > tone.at_ms and kept[-1].priority > tone.priority:
            kept.pop()
        if not kept or kept[-1].end_ms <= tone.at_ms:
            kept.append(tone)
    return tuple(kept)
