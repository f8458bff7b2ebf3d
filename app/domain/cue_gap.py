"""What is heard before the work of a bout: what comes next, on which side, and the last seconds."""

from collections.abc import Iterator
from dataclasses import dataclass

from app.domain.cue_speech import coaching_cue, has_room_for_words
from app.domain.cue_tones import ticks_before
from app.domain.cue_values import Cue, CueKind
from app.domain.cue_words import Tongue
from app.domain.plan import Side
from app.domain.timeline import Bout, SpanKind, Timeline

CODA_MS = 500
"""The end of a bout sounds this long into the gap after it."""
TIME_LEFT_S = {30: 45_000, 10: 20_000}
"""Seconds left that are announced, and the shortest gap (lead-in included) in which they are."""


@dataclass(frozen=True, slots=True)
class Gap:
    """What is before the work of a bout, in ms on its axis: the gap, and from `lead_in_ms` the lead-in."""

    start_ms: int
    lead_in_ms: int
    work_ms: int


def gap_before(bout: Bout, work_from_ms: int, rest_ms: int | None) -> Gap:
    """What is before the work; in mid-bout a lead-in alone. `rest_ms` is the gap's length if changed."""
    rest = bout.gap_ms if rest_ms is None else rest_ms
    lead_in = work_from_ms - bout.lead_in_ms
    return Gap(lead_in - (rest if work_from_ms == 0 else 0), lead_in, work_from_ms)


def gap_ticks(gap: Gap, side: Side) -> Iterator[Cue]:
    """The last three seconds before the work."""
    for tick in ticks_before(gap.work_ms, side):
        if tick.at_ms >= gap.start_ms:
            yield tick


def gap_speech(timeline: Timeline, bout: Bout, gap: Gap, side: Side, tongue: Tongue) -> Iterator[Cue]:
    """What is said before the work: rest, what comes next, side, coaching the work has no room for."""
    opening = gap.start_ms + (0 if bout.gap_kind is None else CODA_MS)
    if gap.start_ms < gap.lead_in_ms:
        yield from _opening(timeline, bout, gap, opening, tongue)
    elif gap.work_ms == 0 and _exercise_begins(timeline, bout):
        yield _next(timeline, bout, gap.lead_in_ms, gap.work_ms, tongue)
    if side is not Side.BOTH:
        words = tongue.sides[side], tongue.side_words[side]
        if bout.alternating:
            words = tongue.first.format(tongue.side_words[side]), tongue.side_words[side]
        yield Cue(gap.lead_in_ms, CueKind.SIDE, side, 0, words[0], *_spoken(words), gap.work_ms, slides=True)


def _opening(timeline: Timeline, bout: Bout, gap: Gap, opening: int, tongue: Tongue) -> Iterator[Cue]:
    exercise = timeline.exercise_of(bout)
    until = gap.lead_in_ms
    if bout.gap_kind is SpanKind.REST:
        yield _slide(opening, CueKind.REST, tongue.rest, until)
    if bout.gap_kind is SpanKind.SIDE_CHANGE:
        words = tongue.change_side.format(tongue.sides[bout.side]), tongue.side_words[bout.side]
        yield Cue(opening, CueKind.SIDE, bout.side, 0, words[0], *_spoken(words), until, slides=True)
    elif _exercise_begins(timeline, bout):
        yield _next(timeline, bout, opening, until, tongue)
        if exercise.setup:
            yield _slide(opening, CueKind.SETUP, exercise.setup, until)
    text = coaching_cue(exercise, bout, 1)
    if text and not has_room_for_words(bout):
        yield _slide(opening, CueKind.COACHING, text, until)
    if bout.gap_kind is not SpanKind.SIDE_CHANGE:
        yield from _time_left(gap, tongue)


def _time_left(gap: Gap, tongue: Tongue) -> Iterator[Cue]:
    for seconds, shortest_gap in TIME_LEFT_S.items():
        if gap.work_ms - gap.start_ms >= shortest_gap:
            texts = tongue.seconds.format(seconds), str(seconds)
            at = gap.work_ms - seconds * 1000
            yield Cue(at, CueKind.TIME_LEFT, Side.BOTH, 0, texts[0], *_spoken(texts), gap.work_ms)


def _exercise_begins(timeline: Timeline, bout: Bout) -> bool:
    if bout.index == 0:
        return True
    before = timeline.bouts[bout.index - 1]
    return (before.stage, before.exercise) != (bout.stage, bout.exercise)


def _next(timeline: Timeline, bout: Bout, at_ms: int, until_ms: int, tongue: Tongue) -> Cue:
    name = timeline.exercise_of(bout).name
    text = name if bout.gap_kind is None else tongue.next_exercise.format(name)
    shorter = () if text == name else (name,)
    return Cue(at_ms, CueKind.EXERCISE, Side.BOTH, 0, text, text, shorter, until_ms, slides=True)


def _slide(at_ms: int, kind: CueKind, text: str, until_ms: int) -> Cue:
    return Cue(at_ms, kind, Side.BOTH, 0, text, text, (), until_ms, slides=True)


def _spoken(texts: tuple[str, ...]) -> tuple[str, tuple[str, ...]]:
    return texts[0], texts[1:]
