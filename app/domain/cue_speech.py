"""What is said during the work of a bout, in as far as its tempo leaves room for words."""

from collections.abc import Iterator

from app.domain.cue_tones import onset_kind
from app.domain.cue_values import Cue, CueKind
from app.domain.cue_words import Tongue, spoken_phase
from app.domain.dose import HoldReps, WorkTime
from app.domain.plan import Exercise, Side
from app.domain.timeline import Bout, RepWindow, rep_windows

SPEECHLESS_MS = 2_000
"""A rep shorter than this has counts of five and no other speech."""
COUNTS_ONLY_MS = 3_000
"""A rep shorter than this is counted, and nothing else is said."""
COUNT_OF = 5
REPS_A_CUE = 3
"""A coaching cue stands for this many reps before the next takes its place."""
PHASE_WORD_REPS = 2
"""Phases are named in this many reps of a bout; after that the tones do."""
LEAST_REPS_HALVED = 4
LEAST_REPS_LAST = 3
LONG_HOLD_MS = 20_000
"""A hold or work of this length has its middle announced."""


def coaching_cue(exercise: Exercise, bout: Bout, rep: int, at_ms: int = 0) -> str | None:
    """The coaching cue that stands, said and shown, in a rep counted from 1, `at_ms` into the bout's work.

    They rotate: from set to set where reps leave no room for words, with each half of continuous work, else
    every third rep.
    """
    if not exercise.cues:
        return None
    if not has_room_for_words(bout):
        turn = bout.set_number - 1
    elif isinstance(exercise.dose, WorkTime):
        turn = int(at_ms * 2 >= rep_windows(bout)[0].end_ms)
    else:
        turn = (max(rep, 1) - 1) // REPS_A_CUE
    return exercise.cues[turn % len(exercise.cues)]


def has_room_for_words(bout: Bout) -> bool:
    """Whether more than counts is said in the work of a bout."""
    shortest = shortest_rep_ms(bout)
    return shortest is not None and shortest >= COUNTS_ONLY_MS


def shortest_rep_ms(bout: Bout) -> int | None:
    """Length of the shortest rep, None where reps come at the athlete's own pace."""
    return min((window.end_ms - window.start_ms for window in rep_windows(bout)), default=None)


def work_speech(exercise: Exercise, bout: Bout, tongue: Tongue) -> Iterator[Cue]:
    """Everything that could be said in a timed bout; whether it finds room shows when its length is known."""
    windows = rep_windows(bout)
    shortest = shortest_rep_ms(bout)
    if shortest is None:
        return
    timed = isinstance(exercise.dose, WorkTime)
    if not timed:
        yield from _counts(bout, windows, shortest, tongue)
    if not has_room_for_words(bout):
        return
    yield from _middles(exercise, bout, windows, tongue)
    yield from _phase_words(exercise, bout, tongue)
    yield from _coaching(exercise, bout, windows)


def _counts(bout: Bout, windows: tuple[RepWindow, ...], shortest: int, tongue: Tongue) -> Iterator[Cue]:
    reps = windows[-1].rep
    for window in windows:
        until = window.end_ms
        if shortest < SPEECHLESS_MS:
            if window.rep % COUNT_OF == 0 and window.side is bout.side:
                yield _say(window.start_ms, CueKind.COUNT, window.side, (str(window.rep),), until)
            continue
        texts = _count_texts(window.rep, reps, tongue)
        if bout.alternating:
            side = tongue.side_words[window.side]
            texts = (f"{side}, {texts[0]}", f"{side} {window.rep}", side)
        yield _say(window.start_ms, CueKind.COUNT, window.side, texts, until)


def _count_texts(rep: int, reps: int, tongue: Tongue) -> tuple[str, ...]:
    if rep == reps >= LEAST_REPS_LAST:
        return tongue.last_rep, tongue.last, str(rep)
    return tongue.rep.format(rep), str(rep)


def _middles(exercise: Exercise, bout: Bout, windows: tuple[RepWindow, ...], tongue: Tongue) -> Iterator[Cue]:
    reps = windows[-1].rep
    if reps >= LEAST_REPS_HALVED:
        middle = next(window for window in windows if window.rep == reps // 2 + 1)
        yield _find_room(middle.start_ms, CueKind.HALFWAY, middle.side, tongue.halfway, middle.end_ms)
    if isinstance(exercise.dose, HoldReps | WorkTime):
        for span in bout.work:
            if span.end_ms is not None and span.end_ms - span.start_ms >= LONG_HOLD_MS:
                middle_ms = (span.start_ms + span.end_ms) // 2
                yield _find_room(middle_ms, CueKind.HALFWAY, span.side, tongue.halfway, span.end_ms)


def _phase_words(exercise: Exercise, bout: Bout, tongue: Tongue) -> Iterator[Cue]:
    for span in bout.work:
        explosive = onset_kind(exercise.dose, span.phase) is CueKind.EXPLOSIVE
        if span.rep <= PHASE_WORD_REPS and span.end_ms is not None and not explosive:
            word = spoken_phase(exercise, span.phase, tongue)
            yield _find_room(span.start_ms, CueKind.PHASE, span.side, word, span.end_ms)


def _coaching(exercise: Exercise, bout: Bout, windows: tuple[RepWindow, ...]) -> Iterator[Cue]:
    if isinstance(exercise.dose, WorkTime):
        length = windows[0].end_ms - windows[0].start_ms
        places = [(length // 4, length // 2), (length * 3 // 4, length)]
        for at, until in places:
            if text := coaching_cue(exercise, bout, 1, at):
                yield _find_room(at, CueKind.COACHING, bout.side, text, until)
        return
    for window in windows:
        text_for_rep = coaching_cue(exercise, bout, window.rep)
        if text_for_rep and (window.rep - 1) % REPS_A_CUE == 0 and window.side is bout.side:
            until = max(later.end_ms for later in windows if later.rep < window.rep + REPS_A_CUE)
            yield _find_room(window.start_ms, CueKind.COACHING, window.side, text_for_rep, until)


def _say(at_ms: int, kind: CueKind, side: Side, texts: tuple[str, ...], until_ms: int) -> Cue:
    return Cue(at_ms, kind, side, 0, texts[0], texts[0], texts[1:], until_ms)


def _find_room(at_ms: int, kind: CueKind, side: Side, text: str, until_ms: int) -> Cue:
    return Cue(at_ms, kind, side, 0, text, text, (), until_ms, slides=True)
