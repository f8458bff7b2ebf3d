"""Between the values of the domain and the columns of the tables."""

import json
from collections.abc import Sequence
from dataclasses import asdict
from hashlib import sha256
from typing import Any

from sqlalchemy import RowMapping

from app.analysis.tempo_kept import tempo_of_dose
from app.domain.dose import DoseKind
from app.domain.fold import Closing
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutPrescribed,
    BoutRecord,
    RunHeader,
    RunOutcome,
    RunSummary,
)
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance

Columns = dict[str, Any]
_ADDED_LATER = {"dose", "rep_tut_ms"}
"""Fields of a prescription that those written before them do not have."""


def plan_columns(header: RunHeader) -> Columns:
    """The row of the plan a run carries out, named by its content."""
    content = f"{header.plan_title}\n{header.plan_text}".encode()
    return {"hash": sha256(content).digest(), "title": header.plan_title, "text": header.plan_text}


def prescription_columns(prescribed: Sequence[BoutPrescribed]) -> tuple[Columns, list[Columns]]:
    """The row of a prescription, named by its content, and the rows of its bouts."""
    bouts = [asdict(bout) for bout in prescribed]
    said = [{name: each[name] for name in each if _is_said(name, each[name])} for each in bouts]
    name = sha256(json.dumps(said, sort_keys=True).encode()).digest()
    parent: Columns = {"hash": name, "low": sum(bout.low for bout in prescribed)}
    return parent, [{"prescription_hash": name, **bout} for bout in bouts]


def _is_said(name: str, value: object) -> bool:
    """Whether a field goes into the hash: one that was added later only where it is known."""
    return value is not None or name not in _ADDED_LATER


def as_prescribed(columns: RowMapping) -> BoutPrescribed:
    """What a bout asks for, from its row."""
    kept = {name: value for name, value in columns.items() if name != "prescription_hash"}
    kept["stage_kind"] = StageKind(kept["stage_kind"])
    kept["side"] = Side(kept["side"])
    if kept.get("dose") is not None:
        kept["dose"] = DoseKind(kept["dose"])
    return BoutPrescribed(**kept)


def record_columns(
    record: BoutRecord, asked: BoutPrescribed | None, tolerance: Tolerance = DEFAULT_TOLERANCE
) -> Columns:
    """The figures of one attempt at one bout; what it asked for is None where that is lost."""
    tempo = tempo_of_dose(asked, record, tolerance)
    rep_tut_ms = None if asked is None else asked.rep_tut_ms
    return {
        "bout": record.bout,
        "attempt": record.attempt,
        "outcome": record.outcome.value,
        "began_ms": record.began_ms,
        "ended_ms": record.ended_ms,
        "reps_counted": sum(not rep.missed for rep in record.reps),
        "reps_clean": sum(rep.clean for rep in record.reps),
        "reps_stated": record.reps_stated,
        "rpe": record.rpe,
        "pain": record.pain,
        "load_kg": record.load_kg,
        "reps_missed": sum(rep.missed for rep in record.reps),
        "tempo_known": tempo.known,
        "tempo_kept": tempo.kept,
        "tut_ms": None if rep_tut_ms is None else rep_tut_ms * record.reps_done,
    }


def course_columns(closing: Closing) -> Columns:
    """How a run went on, without what was noted."""
    return {
        "outcome": None if closing.outcome is None else closing.outcome.value,
        "elapsed_ms": closing.elapsed_ms,
        "session_rpe": closing.session_rpe,
        "lag_ms": closing.lag_ms,
    }


def as_closing(columns: RowMapping) -> Closing:
    """How a run went on, from its row."""
    return Closing(
        None if columns["outcome"] is None else RunOutcome(columns["outcome"]),
        columns["elapsed_ms"],
        columns["session_rpe"],
        columns["lag_ms"],
    )


def as_header(columns: RowMapping) -> RunHeader:
    """Who carries out which plan, from columns named as in `RunHeader`."""
    return RunHeader(**columns)


def as_summary(columns: RowMapping) -> RunSummary:
    """A line of a list of runs, from columns named as in `RunSummary`."""
    outcome, corrected = columns["outcome"], columns["corrected"]
    figures = frozenset(corrected.split(",")) if corrected else frozenset()
    ended = None if outcome is None else RunOutcome(outcome)
    return RunSummary(**{**columns, "outcome": ended, "corrected": figures})
