"""Tables for reading: sessions, bouts, reps and faults, drawn from what was written down and as corrected."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from app.analysis.load import elapsed_minutes, load_of
from app.analysis.local_time import local_start
from app.domain.fold import UNNAMED_FAULT
from app.domain.plan import Side, StageKind
from app.domain.records import BoutOutcome, BoutPrescribed, BoutRecord, RunOutcome, RunSummary, SkipReason
from app.domain.table import Column, Table
from app.domain.values import LONGEST_NAME, MOST_MS, Choice, Flag, Load, Name, Number, Row, Text, Whole

_COUNT = Whole(0, MOST_MS)
_SCALE = Whole(0, 10)

SESSIONS = Table(
    "sessions",
    "One row a run, with the figures of the whole of it, as corrected.",
    (
        Column("run", Name(), "The run."),
        Column("athlete", Text(LONGEST_NAME), "What the person is called.", unknown=True),
        Column("plan_title", Text(), "What the session is called."),
        Column(
            "local_start", Text(40), "When it began by the clock on the wall, with the distance from UTC."
        ),
        Column("outcome", Choice(tuple(RunOutcome)), "How it ended.", unknown=True),
        Column("minutes", Number(0, MOST_MS), "From beginning to end, rests included.", unknown=True),
        Column(
            "reps_prescribed",
            _COUNT,
            "Reps asked for, by the lower bounds; unknown without a plan.",
            unknown=True,
        ),
        Column("reps_met", _COUNT, "Reps done up to those bounds, bout by bout.", unknown=True),
        Column("reps_done", _COUNT, "All reps done.", unknown=True),
        Column("session_rpe", _SCALE, "Exertion of the whole session, 0 to 10.", unknown=True),
        Column("load", Number(0, MOST_MS), "Session RPE times minutes, in arbitrary units.", unknown=True),
        Column("pain", _SCALE, "The highest pain stated in a bout, 0 to 10.", unknown=True),
        Column("corrected", Text(), "Which figures rest on a corrected value.", unknown=True),
        Column("invented", Flag(), "Whether it is demo data."),
    ),
    ("run",),
    {"run": "runs"},
)
_BOUT = (
    Column("run", Name(), "The run."),
    Column("bout", _COUNT, "The number of the bout, from 0."),
    Column("attempt", _COUNT, "Which attempt at it, from 1."),
)
BOUTS = Table(
    "bouts",
    "One row an attempt at a bout, as corrected, with what was asked for. Bouts not begun are left out.",
    (
        *_BOUT,
        Column("stage_name", Text(LONGEST_NAME), "What the stage is called."),
        Column("stage_kind", Choice(tuple(StageKind)), "The rung of the ladder."),
        Column("exercise", Text(LONGEST_NAME), "What the exercise is called."),
        Column("set_number", _COUNT, "The number of the set, from 1."),
        Column("side", Choice(tuple(Side)), "The side of the body."),
        Column("load_kg", Text(40), "The load in kg as the plan writes it.", unknown=True),
        Column("reps_low", _COUNT, "Reps from which the bout is met."),
        Column("reps_high", _COUNT, "Reps to which it is led."),
        Column("reps_done", _COUNT, "Reps the athlete says were done, else those counted."),
        Column("reps_clean", _COUNT, "Reps counted with no fault marked."),
        Column("outcome", Choice(tuple(BoutOutcome)), "How it ended."),
        Column("began_ms", _COUNT, "When its work began, in ms from the beginning of the run.", unknown=True),
        Column("ended_ms", _COUNT, "When it was over."),
        Column("rpe", _SCALE, "Exertion, 0 to 10.", unknown=True),
        Column("pain", _SCALE, "Pain, 0 to 10.", unknown=True),
        Column("load_used_kg", Load(), "The load that was used, in kg as it was said.", unknown=True),
        Column("reason", Choice(tuple(SkipReason)), "Why it was left out.", unknown=True),
        Column("note", Text(), "What was noted.", unknown=True),
        Column("corrected", Text(), "Which of these hold another value than at first.", unknown=True),
    ),
    ("run", "bout", "attempt"),
    {"run": "runs"},
)
_REP = (
    *_BOUT,
    Column("rep", _COUNT, "The number of the rep, from 1, within a side where sides alternate."),
    Column("side", Choice(tuple(Side)), "The side of the body."),
)
REPS = Table(
    "reps",
    "One row a rep, as corrected.",
    (
        *_REP,
        Column("start_ms", _COUNT, "When it began, in ms from the beginning of the run."),
        Column("end_ms", _COUNT, "When it was over."),
        Column("late_ms", Whole(-MOST_MS, MOST_MS), "How late the program noticed its end, in ms."),
        Column("missed", Flag(), "Whether it was marked as not done."),
        Column("faults", _COUNT, "How many faults were marked on it."),
    ),
    ("run", "bout", "attempt", "rep", "side"),
    {"run": "runs"},
)
FAULTS = Table(
    "faults",
    "One row a fault marked on a rep, as corrected.",
    (*_REP, Column("fault", Text(LONGEST_NAME), "The fault; unknown where none was named.", unknown=True)),
    ("run", "bout", "attempt", "rep", "side", "fault"),
    {"run": "runs"},
)
DRAWN: tuple[Table, ...] = (SESSIONS, BOUTS, REPS, FAULTS)


@dataclass(frozen=True, slots=True)
class Drawn:
    """A run as it is drawn: its line in the list, whose name it is shown by (None: left out), its bouts."""

    summary: RunSummary
    athlete: str | None
    bouts: tuple[tuple[BoutPrescribed, BoutRecord | None], ...]


def drawn_rows(table: Table, runs: Iterable[Drawn]) -> Iterator[Row]:
    """The rows of one of these tables for some runs."""
    for run in runs:
        if table is SESSIONS:
            yield session_row(run)
            continue
        for asked, record in run.bouts:
            if record is not None:
                yield from _rows(table, run.summary.run_id, asked, record)


def session_row(run: Drawn) -> Row:
    """The row of a whole run. Reps are unknown where no plan asked for any."""
    summary = run.summary
    planned = bool(run.bouts)
    return {
        "run": summary.run_id,
        "athlete": run.athlete,
        "plan_title": summary.plan_title,
        "local_start": local_start(summary).isoformat(),
        "outcome": None if summary.outcome is None else summary.outcome.value,
        "minutes": elapsed_minutes(summary.elapsed_ms),
        "reps_prescribed": summary.reps_prescribed if planned else None,
        "reps_met": summary.reps_met if planned else None,
        "reps_done": summary.reps_done if planned else None,
        "session_rpe": summary.session_rpe,
        "load": load_of(summary),
        "pain": summary.pain,
        "corrected": _named(summary.corrected),
        "invented": summary.invented,
    }


def _rows(table: Table, run_id: str, asked: BoutPrescribed, record: BoutRecord) -> Iterator[Row]:
    place: Row = {"run": run_id, "bout": record.bout, "attempt": record.attempt}
    if table is BOUTS:
        yield {**place, **_bout(asked, record)}
        return
    for rep in record.reps:
        named: Row = {**place, "rep": rep.rep, "side": rep.side.value}
        if table is REPS:
            yield {
                **named,
                "start_ms": rep.start_ms,
                "end_ms": rep.end_ms,
                "late_ms": rep.late_ms,
                "missed": rep.missed,
                "faults": len(rep.faults),
            }
            continue
        for fault in rep.faults:
            yield {**named, "fault": None if fault == UNNAMED_FAULT else fault}


def _bout(asked: BoutPrescribed, record: BoutRecord) -> Row:
    return {
        "stage_name": asked.stage_name,
        "stage_kind": asked.stage_kind.value,
        "exercise": asked.exercise,
        "set_number": asked.set_number,
        "side": asked.side.value,
        "load_kg": asked.load_kg,
        "reps_low": asked.low,
        "reps_high": asked.high,
        "reps_done": record.reps_done,
        "reps_clean": sum(rep.clean for rep in record.reps),
        "outcome": record.outcome.value,
        "began_ms": record.began_ms,
        "ended_ms": record.ended_ms,
        "rpe": record.rpe,
        "pain": record.pain,
        "load_used_kg": record.load_kg,
        "reason": None if record.reason is None else record.reason.value,
        "note": record.note,
        "corrected": _named(record.corrected),
    }


def _named(names: Iterable[str]) -> str | None:
    return ", ".join(sorted(names)) or None
