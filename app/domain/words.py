"""The words of a phase, a side and a dose, as they are shown and said."""

from collections.abc import Iterator

from app.domain.bout_work import rep_phases
from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import DEFAULT_FAST_MS, Exercise, Side, Sides
from app.domain.tempo import Phase
from app.domain.units import seconds_text

PHASE_WORDS: dict[Phase, str] = {
    Phase.ECCENTRIC: "Lower",
    Phase.HOLD_LENGTHENED: "Hold",
    Phase.CONCENTRIC: "Lift",
    Phase.HOLD_SHORTENED: "Hold",
    Phase.HOLD: "Hold",
    Phase.RELAX: "Relax",
    Phase.MOVE: "Go",
    Phase.STICK: "Stick",
    Phase.RESET: "Reset",
    Phase.GO: "Go",
    Phase.OWN: "Your pace",
    Phase.WORK: "Work",
}

SIDE_WORDS: dict[Side, str] = {Side.LEFT: "Left", Side.RIGHT: "Right", Side.BOTH: "Both sides"}

FAST_WORDS = "as fast as control allows"


def phase_word(exercise: Exercise, phase: Phase) -> str:
    """What is shown and said for a phase: the plan's word, its first letter raised, else the default."""
    written = written_word(exercise, phase)
    return PHASE_WORDS[phase] if written is None else written[:1].upper() + written[1:]


def side_word(side: Side) -> str:
    """What is shown and said for a side."""
    return SIDE_WORDS[side]


def prescription_text(exercise: Exercise) -> str:
    """The dose of one bout in a few words: `15 reps, 2-1-2-1, turn up first`, `5 holds of 20 s`.

    Where sides alternate within the bout the count is that of a side, and says so.
    """
    a_side = " a side" if exercise.sides is Sides.ALTERNATE else ""
    match exercise.dose:
        case TempoReps(reps=reps, tempo=tempo):
            first = rep_phases(exercise.dose, DEFAULT_FAST_MS)[0].phase
            return f"{_counted(reps, 'rep')}{a_side}, {tempo}, {_lowered(phase_word(exercise, first))} first"
        case HoldReps(reps=reps, hold=hold):
            return f"{_counted(reps, 'hold')}{a_side} of {seconds_band(hold)}"
        case StickReps(reps=reps, stick=stick):
            word = _lowered(phase_word(exercise, Phase.STICK))
            return f"{_counted(reps, 'landing')}{a_side}, {word} {seconds_band(stick)}"
        case SignalReps(reps=reps, every_ms=every_ms):
            return f"{_counted(reps, 'rep')}{a_side}, one every {seconds_text(every_ms)} s"
        case OwnPaceReps(reps=reps):
            return f"{_counted(reps, 'rep')} at your own pace"
        case WorkTime(work=work):
            return f"{seconds_band(work)} of work"


def phases_text(exercise: Exercise) -> str:
    """The phases of one rep spelt in words, in playing order: `turn up 2 s, hold 1 s, lower 2 s`."""
    if isinstance(exercise.dose, OwnPaceReps):
        return _lowered(phase_word(exercise, Phase.OWN))
    return ", ".join(_phase_texts(exercise))


def band_text(band: Band) -> str:
    """A number, or a range as `12-15`."""
    return f"{band.low}-{band.high}" if band.ranged else str(band.high)


def seconds_band(band: Band) -> str:
    """A length in ms as `20 s`, or a range as `3-5 s`."""
    if band.ranged:
        return f"{seconds_text(band.low)}-{seconds_text(band.high)} s"
    return f"{seconds_text(band.high)} s"


def _phase_texts(exercise: Exercise) -> Iterator[str]:
    for part in rep_phases(exercise.dose, DEFAULT_FAST_MS):
        word = _lowered(phase_word(exercise, part.phase))
        if isinstance(exercise.dose, TempoReps) and exercise.dose.tempo.length(part.phase) is None:
            yield f"{word} {FAST_WORDS}"
        elif part.phase is Phase.GO:
            yield f"{word} every {seconds_text(part.length_ms)} s"
        else:
            low_ms = part.length_ms if part.low_ms is None else part.low_ms
            yield f"{word} {seconds_band(Band(low_ms, part.length_ms))}" + (
                " between" if part.between else ""
            )


def written_word(exercise: Exercise, phase: Phase) -> str | None:
    """The plan's own word for a phase, as written; None where it has none."""
    words = exercise.words
    match phase:
        case Phase.HOLD | Phase.HOLD_LENGTHENED | Phase.HOLD_SHORTENED:
            return words.hold
        case Phase.OWN:
            return None
        case _:
            word: str | None = getattr(words, phase.value)
            return word


def _counted(band: Band, noun: str) -> str:
    return f"{band_text(band)} {noun}" + ("" if band == Band.exactly(1) else "s")


def _lowered(word: str) -> str:
    return word[:1].lower() + word[1:]
