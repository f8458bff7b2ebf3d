"""Tempo kept: how many of the reps that were led to a tempo followed it, as far as that can be known.

In timed work the program leads and the athlete follows, so that a rep's recorded times are those of the
schedule and no sensor says how it was moved. What can be known is whether the rep was marked as missed,
whether it was led at its length and in time, and whether a fault that stands for a lost tempo was marked on
it.
"""

from collections.abc import Collection
from dataclasses import dataclass
from statistics import median

from app.domain.dose import DoseKind
from app.domain.records import BoutPrescribed, BoutRecord, RepRecord
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance


@dataclass(frozen=True, slots=True)
class TempoCount:
    """`known` reps have a tempo that can be judged, `kept` of them kept it; both 0 where it is unknown."""

    known: int
    kept: int


UNKNOWN = TempoCount(0, 0)
WITH_TEMPO = frozenset({DoseKind.TEMPO, DoseKind.HOLD})
"""Doses whose reps have a tempo that can be kept."""


def tempo_of(
    prescribed: BoutPrescribed,
    record: BoutRecord,
    planned_ms: int | None = None,
    tolerance: Tolerance = DEFAULT_TOLERANCE,
    tempo_faults: Collection[str] = (),
) -> TempoCount:
    """Reps of one attempt at a bout that were led, and those of them that kept the tempo; counts.

    `planned_ms` is the length of one rep by the plan; where it is not at hand the median length of the bout's
    reps stands for it, the program having led them all alike. A rep kept its tempo when it was not missed,
    when its length and the lateness of the program lie within `tolerance`, and when no fault named in
    `tempo_faults` was marked. A rep that a pause broke off was led anew and counts as it was led then. A rep
    first marked as missed and corrected later has no times and is not judged. Unknown at the athlete's own
    pace, and where the athlete says another number of reps than was counted, since nobody knows which. Ask
    only for doses that have a tempo or a hold. Common practice, no source; a setting.
    """
    if prescribed.work_ms is None or not record.reps:
        return UNKNOWN
    counted = sum(not rep.missed for rep in record.reps)
    if record.reps_stated is not None and record.reps_stated != counted:
        return UNKNOWN
    judged = [rep for rep in record.reps if rep.missed or rep.end_ms > rep.start_ms]
    lengths = [rep.end_ms - rep.start_ms for rep in judged if not rep.missed]
    planned = planned_ms or (median(lengths) if lengths else 0)
    kept = sum(_kept(rep, planned, tolerance.of(planned), tempo_faults) for rep in judged)
    return TempoCount(len(judged), kept)


def tempo_of_dose(
    asked: BoutPrescribed | None, record: BoutRecord, tolerance: Tolerance = DEFAULT_TOLERANCE
) -> TempoCount:
    """As `tempo_of` for the doses that have a tempo or a hold; for others, and where it is lost, unknown."""
    if asked is None or asked.dose not in WITH_TEMPO:
        return UNKNOWN
    return tempo_of(asked, record, asked.rep_tut_ms if asked.dose is DoseKind.TEMPO else None, tolerance)


def _kept(rep: RepRecord, planned: float, allowed: float, tempo_faults: Collection[str]) -> bool:
    if rep.missed or any(fault in tempo_faults for fault in rep.faults):
        return False
    off = abs(rep.end_ms - rep.start_ms - planned)
    return off <= allowed and rep.late_ms <= allowed
