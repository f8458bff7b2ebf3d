"""The timeline as a sheet for reading: clock times, one line a bout, then the figures."""

from collections.abc import Iterator
from decimal import Decimal

from app.domain.dose import WorkTime
from app.domain.figures import Figures, SessionFigures, session_figures
from app.domain.plan import Sides
from app.domain.timeline import Bout, SpanKind, Timeline
from app.domain.units import clock_text, seconds_text
from app.domain.words import band_text, prescription_text, side_word

NAME_WIDTH = 36
UNKNOWN = "-"
GAP_WORDS = {
    SpanKind.REST: "rest",
    SpanKind.SIDE_CHANGE: "side change",
    SpanKind.CHANGEOVER: "changeover",
}
COLUMNS = (
    "time",
    "work",
    "density",
    "reps",
    "left/right",
    "TUT s",
    "left/right",
    "holds s",
    "contacts",
    "kg x reps",
)
BETWEEN = "  "
"""What stands between two columns at least."""

Line = tuple[str, ...]
"""A line of the figures: a name, then a cell for each column."""


def timeline_text(timeline: Timeline, athlete: str | None = None) -> str:
    """The whole sheet. Clock times count from `ready`, and from 0 again after own-pace work."""
    session = session_figures(timeline)
    lines = [
        *_heading(timeline, athlete),
        *_bout_lines(timeline),
        "",
        *_figure_lines(session),
        *_notes(timeline, session),
    ]
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _heading(timeline: Timeline, athlete: str | None) -> Iterator[str]:
    yield timeline.plan.title + ("" if athlete is None else f", for {athlete}")
    if timeline.plan.author is not None:
        yield f"by {timeline.plan.author}"
    length = clock_text(timeline.timed_ms)
    yield f"takes {length}, and own-pace work on top" if timeline.open_ended else f"takes {length}"


def _bout_lines(timeline: Timeline) -> Iterator[str]:
    stage = None
    now = 0
    for bout in timeline.bouts:
        if bout.stage != stage:
            stage = bout.stage
            yield ""
            yield f"{stage + 1}. {timeline.stage_of(bout).name} ({timeline.stage_of(bout).kind})"
        start = now + bout.before_ms
        end = None if bout.work_ms is None else start + bout.work_ms
        yield _bout_line(timeline, bout, start, end)
        now = end or 0


def _bout_line(timeline: Timeline, bout: Bout, start: int, end: int | None) -> str:
    exercise = timeline.exercise_of(bout)
    until = "open" if end is None else clock_text(end)
    name = _cut(exercise.name)
    which = f"set {bout.set_number} of {exercise.sets}, {_side(timeline, bout)}"
    dose = prescription_text(exercise) + _load(bout)
    before = "" if bout.gap_kind is None else f"after {clock_text(bout.before_ms)} {GAP_WORDS[bout.gap_kind]}"
    return f"{clock_text(start):>9} {until:>8}  {name:<{NAME_WIDTH}}  {which:<36}  {dose:<44}  {before}"


def _side(timeline: Timeline, bout: Bout) -> str:
    side = side_word(bout.side).lower()
    if timeline.exercise_of(bout).sides is Sides.ALTERNATE:
        return f"alternating, {side} first"
    return side


def _load(bout: Bout) -> str:
    if bout.load_kg is None:
        return ""
    if bout.other_load_kg not in (None, bout.load_kg):
        return (
            f", {_kg(bout.load_kg)} kg {side_word(bout.side).lower()}, {_kg(bout.other_load_kg)} kg the other"
        )
    return f", {_kg(bout.load_kg)} kg"


def _figure_lines(session: SessionFigures) -> Iterator[str]:
    lines: list[Line] = [("Figures", *COLUMNS)]
    for stage in session.stages:
        lines.append(_figure_line(f"{stage.stage + 1}. {stage.name}", stage.figures))
        lines += [_figure_line(f"   {exercise.name}", exercise.figures) for exercise in stage.exercises]
    lines.append(_figure_line("Session", session.figures))
    first, *others = (max(map(len, column)) for column in zip(*lines, strict=True))
    for name, *cells in lines:
        aligned = [f"{cell:>{width}}" for cell, width in zip(cells, others, strict=True)]
        yield BETWEEN.join([f"{name:<{first}}", *aligned])


def _figure_line(name: str, figures: Figures) -> Line:
    about = "~" if figures.nominal else ""
    density = UNKNOWN if figures.density is None else f"{100 * figures.density:.0f} %"
    tut, left, right = (_seconds(ms) for ms in (figures.tut_ms, figures.tut_left_ms, figures.tut_right_ms))
    return (
        _cut(name, NAME_WIDTH + 4),
        _length(figures.timed_ms, figures.open_ended),
        _length(figures.timed_work_ms, figures.open_ended),
        density,
        band_text(figures.reps),
        f"{band_text(figures.reps_left)}/{band_text(figures.reps_right)}",
        tut if tut == UNKNOWN else about + tut,
        UNKNOWN if left == right == UNKNOWN else f"{left}/{right}",
        seconds_text(figures.isometric_ms),
        UNKNOWN if figures.contacts is None else band_text(figures.contacts),
        _volume_load(figures),
    )


def _volume_load(figures: Figures) -> str:
    load = figures.known_load_kg
    if load is None:
        return UNKNOWN
    known = _kg(load.high) if load.low == load.high else f"{_kg(load.low)}-{_kg(load.high)}"
    return known + ("" if figures.load_complete else "+")


def _notes(timeline: Timeline, session: SessionFigures) -> Iterator[str]:
    total = session.figures
    yield ""
    yield "TUT is the time under tension of reps at a tempo and of holds; holds are those of isometric reps."
    if any(isinstance(timeline.exercise_of(bout).dose, WorkTime) for bout in timeline.bouts):
        yield "A stretch of timed work counts as one rep."
    if total.nominal:
        yield f"~ nominal: a phase as fast as possible counts as {seconds_text(timeline.plan.fast_ms)} s."
    if total.open_ended:
        yield "+ at a time: work at the athlete's own pace comes on top, its length is not known."
    if not total.load_complete and total.known_load_kg is not None:
        yield "+ at kg x reps: not every load is known."
    yield f"{UNKNOWN} is not known or not defined."


def _length(ms: int, open_ended: bool) -> str:
    """A length; with open-ended work on top it has a plus, and alone that has no length."""
    if not open_ended:
        return clock_text(ms)
    return f"{clock_text(ms)}+" if ms else UNKNOWN


def _kg(load: Decimal | None) -> str:
    return UNKNOWN if load is None else f"{load.normalize():f}"


def _seconds(ms: int | None) -> str:
    return UNKNOWN if ms is None else seconds_text(ms)


def _cut(name: str, width: int = NAME_WIDTH) -> str:
    return name if len(name) <= width else f"{name[: width - 1]}…"
