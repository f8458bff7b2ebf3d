"""Words of the lower floors that are shown: named here, so that they are among the messages."""

from app.domain.bout_work import rep_phases
from app.domain.dose import HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.plan import DEFAULT_FAST_MS, Exercise, Sides
from app.domain.tempo import Phase
from app.domain.units import seconds_text
from app.domain.words import band_text, phase_word, seconds_band
from app.views.translation import message, pointed, tr

BORROWED = (
    message("Lower"),
    message("Hold"),
    message("Lift"),
    message("Relax"),
    message("Go"),
    message("Stick"),
    message("Reset"),
    message("Your pace"),
    message("Work"),
    message("Left"),
    message("Right"),
    message("Both sides"),
    message("It is a curtain, not encryption: whoever may read your files may read the record."),
)
"""What phases and sides are called where a plan has no word of its own, and what is said of a passphrase."""


def dose_words(exercise: Exercise) -> str:
    """The dose of one bout in the language of the screens: `15 reps, 2-1-2-1, turn up first`.

    In English it is what `prescription_text` gives.
    """
    dose = exercise.dose
    match dose:
        case TempoReps(reps=reps, tempo=tempo):
            first = rep_phases(dose, DEFAULT_FAST_MS)[0].phase
            counted = tr("{n} rep(s)", "", reps.high), tr("{n} rep(s) a side", "", reps.high)
            told = tr("{reps}, {tempo}, {phase} first")
            words = _of_a_side(exercise, *counted).format(n=band_text(reps))
            return told.format(reps=words, tempo=tempo, phase=_phase(exercise, first))
        case HoldReps(reps=reps, hold=hold):
            counted = (
                tr("{n} hold(s) of {length}", "", reps.high),
                tr("{n} hold(s) a side of {length}", "", reps.high),
            )
            return _of_a_side(exercise, *counted).format(
                n=band_text(reps), length=pointed(seconds_band(hold))
            )
        case StickReps(reps=reps, stick=stick):
            counted = (
                tr("{n} landing(s), {phase} {length}", "", reps.high),
                tr("{n} landing(s) a side, {phase} {length}", "", reps.high),
            )
            phase, length = _phase(exercise, Phase.STICK), pointed(seconds_band(stick))
            return _of_a_side(exercise, *counted).format(n=band_text(reps), phase=phase, length=length)
        case SignalReps(reps=reps, every_ms=every_ms):
            counted = (
                tr("{n} rep(s), one every {seconds} s", "", reps.high),
                tr("{n} rep(s) a side, one every {seconds} s", "", reps.high),
            )
            return _of_a_side(exercise, *counted).format(n=band_text(reps), seconds=seconds_words(every_ms))
        case OwnPaceReps(reps=reps):
            return tr("{n} rep(s) at your own pace", "", reps.high).format(n=band_text(reps))
        case WorkTime(work=work):
            return tr("{length} of work").format(length=pointed(seconds_band(work)))


def seconds_words(length_ms: int) -> str:
    """A length in seconds as it is written in the language of the screens, without the unit."""
    return pointed(seconds_text(length_ms))


def _of_a_side(exercise: Exercise, both: str, one: str) -> str:
    return one if exercise.sides is Sides.ALTERNATE else both


def _phase(exercise: Exercise, phase: Phase) -> str:
    """The word of a phase within a line; the plan's own, else that of the language of the screens."""
    word = tr(phase_word(exercise, phase))
    return word[:1].lower() + word[1:]
