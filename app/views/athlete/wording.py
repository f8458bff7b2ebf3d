"""What the athlete's screen says, as pure functions of a snapshot."""

from app.domain.dose import TempoReps
from app.domain.plan import Side
from app.domain.tempo import Phase
from app.domain.timeline import Bout, SpanKind, Timeline
from app.domain.units import MS_PER_SECOND
from app.domain.words import phase_word, side_word
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.athlete.headline import Headline
from app.views.borrowed import dose_words, seconds_words
from app.views.theme import Scheme
from app.views.translation import figure, message, tr

GAP_WORDS: dict[SpanKind, str] = {
    SpanKind.REST: message("Rest"),
    SpanKind.SIDE_CHANGE: message("Change sides"),
    SpanKind.CHANGEOVER: message("Next exercise"),
}
SIDES: dict[Side, str] = {Side.LEFT: message("left side"), Side.RIGHT: message("right side")}
FIRST: dict[Side, str] = {Side.LEFT: message("left first"), Side.RIGHT: message("right first")}


def headline(shown: Snapshot, scheme: Scheme) -> Headline:
    """The huge words of a moment of lead-in or work."""
    side = "" if shown.side is Side.BOTH else tr(side_word(shown.side)).upper()
    if shown.doing is not Doing.WORK:
        seconds = str(whole_seconds(shown.gap_left_ms or 0))
        to_do = shown.reps - shown.rep + (0 if shown.bout.open_ended else 1)
        left = tr("{n} to do").format(n=to_do)
        return Headline(shown.side, side, tr("Ready"), seconds, "", left, scheme.waiting)
    phase = shown.phase or Phase.OWN
    seconds = "" if shown.phase_left_ms is None else str(whole_seconds(shown.phase_left_ms))
    colour = scheme.text(phase, explosive=is_fast(shown))
    count, of = (str(shown.rep), tr("of {n}").format(n=shown.reps))
    if phase is Phase.WORK:
        count, of = "", ""
    return Headline(shown.side, side, tr(phase_word(shown.exercise, phase)), seconds, count, of, colour)


def is_fast(shown: Snapshot) -> bool:
    """Whether the phase under way is one written X."""
    if not isinstance(shown.exercise.dose, TempoReps):
        return False
    tempo = shown.exercise.dose.tempo
    return (shown.phase is Phase.CONCENTRIC and tempo.concentric is None) or (
        shown.phase is Phase.ECCENTRIC and tempo.eccentric is None
    )


def whole_seconds(ms: int) -> int:
    """Seconds left as a count-down shows them: 1 until the very end."""
    return -(-ms // MS_PER_SECOND)


def set_line(shown: Snapshot) -> str:
    """The line under the exercise: set, load and dose."""
    parts = [tr("Set {n} of {m}").format(n=shown.bout.set_number, m=shown.exercise.sets)]
    if shown.bout.load_kg is not None:
        parts.append(tr("{kg} kg").format(kg=figure(float(shown.bout.load_kg))))
    parts.append(dose_words(shown.exercise))
    return "  ·  ".join(parts)


def time_left(shown: Snapshot) -> str:
    """What is left of the session; own-pace work has no length and is said to come on top."""
    minutes = -(-shown.left_ms // 60_000)
    if shown.left_open:
        return tr("{n} min left, own pace aside").format(n=minutes)
    if shown.left_ms < 60_000:
        return tr("less than a minute left")
    return tr("{n} min left").format(n=minutes)


def bout_line(timeline: Timeline, bout: Bout, before: Bout | None = None) -> str:
    """A bout in a few words; the exercise is named only where it changes."""
    exercise = timeline.exercise_of(bout)
    side = "" if bout.side is Side.BOTH else tr((FIRST if bout.alternating else SIDES)[bout.side])
    count = "" if bout.high <= 1 else str(bout.high // 2 if bout.alternating else bout.high)
    same = before is not None and (before.stage, before.exercise) == (bout.stage, bout.exercise)
    words = [word for word in (exercise.name if not same else "", side, count) if word]
    return ", ".join(words) or tr("set {n}").format(n=bout.set_number)


def next_line(shown: Snapshot) -> str:
    """What comes after this bout, for the corner of the screen."""
    following = shown.following
    if following is None:
        return tr("last bout of the session")
    words = tr("next: {bout}, after {seconds} s")
    bout = bout_line(shown.timeline, following, shown.bout)
    return words.format(bout=bout, seconds=seconds_words(following.before_ms))


def last_bout_title(timeline: Timeline, bout: Bout) -> str:
    """The heading of the card that asks about a bout."""
    exercise = timeline.exercise_of(bout)
    if bout.side is Side.BOTH or bout.alternating:
        return tr("{name}, set {n}").format(name=exercise.name, n=bout.set_number)
    words = tr("{name}, set {n}, {side}")
    return words.format(name=exercise.name, n=bout.set_number, side=tr(SIDES[bout.side]))


def paused_line(shown: Snapshot) -> str:
    """Where the run goes on after a pause."""
    if shown.local_ms < shown.work_from_ms - shown.bout.lead_in_ms:
        rest = tr("Goes on with the rest of {seconds} s.")
        return rest.format(seconds=whole_seconds(shown.gap_left_ms or 0))
    words = tr("Goes on with rep {n} of {m}, after {seconds} s to get ready.")
    if shown.bout.open_ended and shown.side is Side.BOTH:
        words = tr("Goes on with {n} of {m} counted, after {seconds} s to get ready.")
    elif shown.bout.open_ended:
        words = tr("Goes on with {n} of {m} counted, {side}, after {seconds} s to get ready.")
    elif shown.side is not Side.BOTH:
        words = tr("Goes on with rep {n} of {m}, {side}, after {seconds} s to get ready.")
    return words.format(
        n=shown.passed if shown.bout.open_ended else shown.rep,
        m=shown.reps,
        side="" if shown.side is Side.BOTH else tr(SIDES[shown.side]),
        seconds=seconds_words(shown.bout.lead_in_ms),
    )
