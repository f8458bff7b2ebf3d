"""What the athlete's screen says, as pure functions of a snapshot."""

from app.domain.dose import TempoReps
from app.domain.plan import Side
from app.domain.tempo import Phase
from app.domain.timeline import Bout, SpanKind, Timeline
from app.domain.units import MS_PER_SECOND, seconds_text
from app.domain.words import phase_word, prescription_text, side_word
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.athlete.headline import Headline
from app.views.theme import Scheme

GAP_WORDS: dict[SpanKind, str] = {
    SpanKind.REST: "Rest",
    SpanKind.SIDE_CHANGE: "Change sides",
    SpanKind.CHANGEOVER: "Next exercise",
}


def headline(shown: Snapshot, scheme: Scheme) -> Headline:
    """The huge words of a moment of lead-in or work."""
    side = "" if shown.side is Side.BOTH else side_word(shown.side).upper()
    if shown.doing is not Doing.WORK:
        seconds = str(whole_seconds(shown.gap_left_ms or 0))
        to_do = shown.reps - shown.rep + (0 if shown.bout.open_ended else 1)
        return Headline(shown.side, side, "Ready", seconds, "", f"{to_do} to do", scheme.quiet)
    phase = shown.phase or Phase.OWN
    seconds = "" if shown.phase_left_ms is None else str(whole_seconds(shown.phase_left_ms))
    colour = scheme.text(phase, explosive=is_fast(shown))
    count, of = (str(shown.rep), f"of {shown.reps}")
    if phase is Phase.WORK:
        count, of = "", ""
    return Headline(shown.side, side, phase_word(shown.exercise, phase), seconds, count, of, colour)


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
    parts = [f"Set {shown.bout.set_number} of {shown.exercise.sets}"]
    if shown.bout.load_kg is not None:
        parts.append(f"{shown.bout.load_kg.normalize():f} kg")
    parts.append(prescription_text(shown.exercise))
    return "  ·  ".join(parts)


def time_left(shown: Snapshot) -> str:
    """What is left of the session; own-pace work has no length and is said to come on top."""
    minutes = -(-shown.left_ms // 60_000)
    if shown.left_open:
        return f"{minutes} min left, own pace aside"
    return "less than a minute left" if shown.left_ms < 60_000 else f"{minutes} min left"


def bout_line(timeline: Timeline, bout: Bout, before: Bout | None = None) -> str:
    """A bout in a few words; the exercise is named only where it changes."""
    exercise = timeline.exercise_of(bout)
    side = "" if bout.side is Side.BOTH else f"{side_word(bout.side).lower()} side"
    if bout.alternating:
        side = f"{side_word(bout.side).lower()} first"
    count = "" if bout.high <= 1 else str(bout.high // 2 if bout.alternating else bout.high)
    same = before is not None and (before.stage, before.exercise) == (bout.stage, bout.exercise)
    words = [word for word in (exercise.name if not same else "", side, count) if word]
    return ", ".join(words) or f"set {bout.set_number}"


def next_line(shown: Snapshot) -> str:
    """What comes after this bout, for the corner of the screen."""
    following = shown.following
    if following is None:
        return "last bout of the session"
    gap = seconds_text(following.before_ms)
    return f"next: {bout_line(shown.timeline, following, shown.bout)}, after {gap} s"


def last_bout_title(timeline: Timeline, bout: Bout) -> str:
    """The heading of the card that asks about a bout."""
    exercise = timeline.exercise_of(bout)
    side = "" if bout.side is Side.BOTH or bout.alternating else f", {side_word(bout.side).lower()} side"
    return f"{exercise.name}, set {bout.set_number}{side}"


def paused_line(shown: Snapshot) -> str:
    """Where the run goes on after a pause."""
    lead = seconds_text(shown.bout.lead_in_ms)
    if shown.local_ms < shown.work_from_ms - shown.bout.lead_in_ms:
        return f"Goes on with the rest of {whole_seconds(shown.gap_left_ms or 0)} s."
    side = "" if shown.side is Side.BOTH else f", {side_word(shown.side).lower()} side"
    what = f"rep {shown.rep} of {shown.reps}{side}"
    if shown.bout.open_ended:
        what = f"{shown.passed} of {shown.reps} counted{side}"
    return f"Goes on with {what}, after {lead} s to get ready."
