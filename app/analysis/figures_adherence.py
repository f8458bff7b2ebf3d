"""Figures of adherence: sessions, reps and tempo, as a whole, by week, stage, exercise and side."""

from collections.abc import Iterator

from app.analysis.adherence_parts import (
    REPS_CAUTION,
    SESSIONS_CAUTION,
    Kept,
    SessionsKept,
    ended,
    kept,
    kept_by_exercise,
    kept_by_side,
    kept_by_stage,
    kept_by_week,
    sessions_by_week,
    sessions_kept,
)
from app.analysis.balance import CountShare, landings_stuck
from app.analysis.figure import Figure, Rule
from app.domain.reviewed import AthleteRecord
from app.domain.tolerance import Tolerance

NONE_DUE = "No planned session was due."
NONE_PRESCRIBED = "No reps were prescribed, or none of them are known."
NO_TEMPO = "No rep was led to a tempo."
NO_LANDING = "No landing was marked."
WILSON = "Interval: Wilson 1927, J Am Stat Assoc 22:209-212."

SESSIONS = Rule(
    "Session adherence",
    "1",
    "sessions done / sessions due; excused and not due ones in neither",
    f"Common practice, no source. {WILSON}",
    SESSIONS_CAUTION,
)
REPS = Rule(
    "Rep adherence",
    "1",
    "reps met / reps prescribed, at most all of each bout; extra reps apart",
    f"Common practice, no source. {WILSON}",
    REPS_CAUTION,
)
EXTRA = Rule(
    "Extra reps", "reps", "reps done beyond those prescribed, bout by bout", "Common practice, no source."
)
TEMPO = Rule(
    "Tempo adherence",
    "1",
    "reps that kept the tempo / reps led to one; the program leads, no sensor measures",
    f"No published standard; the tolerance is a setting. {WILSON}",
    REPS_CAUTION,
)
STUCK = Rule(
    "Landings stuck",
    "1",
    "landings without a fault / landings done",
    f"Common practice, no source. {WILSON}",
    REPS_CAUTION,
)


def adherence_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Every figure of adherence of a record's days; where there is no denominator, none and the reason."""
    return tuple(_figures(record))


def whole_adherence(record: AthleteRecord) -> tuple[Figure, ...]:
    """Sessions, reps and tempo of the whole time, and the reps done beyond."""
    whole = kept(each.totals for each in ended(record.sessions_within) if each.totals is not None)
    return (
        sessions_figure(sessions_kept(record.due_within)),
        *kept_figures(whole, record.tolerance),
        extra_figure(whole),
    )


def _figures(record: AthleteRecord) -> Iterator[Figure]:
    yield from whole_adherence(record)
    for monday, week in sessions_by_week(record.due_within).items():
        yield sessions_figure(week, monday.isoformat())
    for of, group in _groups(record):
        yield from kept_figures(group, record.tolerance, of)
    parts = [part for each in ended(record.sessions_within) for part in each.parts]
    stuck = landings_stuck(parts)
    for side, count in stuck.items():
        yield stuck_figure(count, f"side: {side.value}")
    if not stuck:
        yield STUCK.figure(None, 0, NO_LANDING)


def _groups(record: AthleteRecord) -> Iterator[tuple[str, Kept]]:
    sessions = record.sessions_within
    for monday, week in kept_by_week(sessions).items():
        yield monday.isoformat(), week
    for stage, group in kept_by_stage(sessions).items():
        yield f"stage: {stage}", group
    for exercise, group in kept_by_exercise(sessions).items():
        yield f"exercise: {exercise}", group
    for side, group in kept_by_side(sessions).items():
        yield f"side: {side.value}", group


def sessions_figure(found: SessionsKept, of: str = "") -> Figure:
    """Sessions done of those due, those in no denominator beside; `of` is the week, empty for all."""
    beside = (("excused", found.excused), ("not due yet", found.not_due))
    return SESSIONS.share(("done", found.done), ("due", found.due), NONE_DUE, beside, of)


def kept_figures(found: Kept, tolerance: Tolerance, of: str = "") -> tuple[Figure, Figure]:
    """Reps met of those prescribed, and reps that kept their tempo with what it is judged by."""
    reps = ("reps met", found.met), ("reps prescribed", found.prescribed)
    tempo = ("reps that kept the tempo", found.tempo_kept), ("reps led to a tempo", found.tempo_known)
    judged = ("tolerance, %", tolerance.percent), ("or, if more, ms", tolerance.ms)
    return (
        REPS.share(*reps, NONE_PRESCRIBED, (("extra reps", found.extra),), of),
        TEMPO.share(*tempo, NO_TEMPO, judged, of),
    )


def extra_figure(found: Kept) -> Figure:
    """Reps beyond those prescribed."""
    return EXTRA.figure(found.extra if found.prescribed else None, found.prescribed, NONE_PRESCRIBED)


def stuck_figure(count: CountShare, of: str) -> Figure:
    """Landings stuck of all."""
    return STUCK.share(("stuck", count.good), ("landings", count.n), NO_LANDING, (), of)
