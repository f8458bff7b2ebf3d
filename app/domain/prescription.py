"""The prescription: what every bout of a timeline asks for, as it is kept with a run."""

from app.domain.dose import kind_of, rep_band
from app.domain.figures import set_tut_ms
from app.domain.plan import Exercise, Side
from app.domain.records import BoutPrescribed
from app.domain.timeline import Bout, Timeline


def prescriptions(timeline: Timeline) -> tuple[BoutPrescribed, ...]:
    """What each bout asks for, in order."""
    return tuple(_prescribed(timeline, bout) for bout in timeline.bouts)


def _prescribed(timeline: Timeline, bout: Bout) -> BoutPrescribed:
    stage = timeline.stage_of(bout)
    exercise = timeline.exercise_of(bout)
    return BoutPrescribed(
        bout=bout.index,
        stage_name=stage.name,
        stage_kind=stage.kind,
        exercise=exercise.name,
        set_number=bout.set_number,
        side=Side.BOTH if bout.alternating else bout.side,
        low=bout.low,
        high=bout.high,
        work_ms=bout.work_ms,
        contacts_per_rep=stage.contacts_per_rep(exercise),
        load_kg=_load_text(bout),
        dose=kind_of(exercise.dose),
        rep_tut_ms=_rep_tut_ms(timeline, exercise),
    )


def _rep_tut_ms(timeline: Timeline, exercise: Exercise) -> int | None:
    tut = set_tut_ms(exercise, timeline.plan.fast_ms)
    return None if tut is None else tut // rep_band(exercise.dose).high


def _load_text(bout: Bout) -> str | None:
    """The load in kg as written; None when unknown, and when the two sides of an alternating bout differ."""
    if bout.load_kg is None or (bout.alternating and bout.load_kg != bout.other_load_kg):
        return None
    return str(bout.load_kg)
