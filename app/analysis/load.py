"""Session load: how hard a whole session was, times how long it took."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from app.analysis.local_time import local_start
from app.domain.records import RunSummary

MS_PER_MINUTE = 60_000


@dataclass(frozen=True, slots=True)
class SessionLoad:
    """Effort and load of one session; None is unknown.

    `started` is local, `minutes` are elapsed ones, rests included, `load` is in AU. `corrected` says that the
    rating was corrected, `imported` that only the day is known of when it was.
    """

    run_id: str
    athlete: str
    started: datetime
    minutes: float | None
    rpe: int | None
    load: float | None
    corrected: bool = False
    imported: bool = False


def elapsed_minutes(elapsed_ms: int | None) -> float | None:
    """Minutes of a session from its beginning to its end, rests included; None while it has not ended."""
    return None if elapsed_ms is None else elapsed_ms / MS_PER_MINUTE


def session_load(rpe: int | None, minutes: float | None) -> float | None:
    """Session RPE (0-10) x minutes, in arbitrary units (AU); None when either is unknown.

    Minutes are those of the whole session with its rests. Source: Foster et al. 2001, J Strength Cond Res
    15(1):109-115.
    """
    return None if rpe is None or minutes is None else rpe * minutes


def load_of(summary: RunSummary) -> float | None:
    """Session load of a run in AU; None when its session RPE or its length is unknown."""
    return session_load(summary.session_rpe, elapsed_minutes(summary.elapsed_ms))


def loads_by_session(summaries: Iterable[RunSummary]) -> tuple[SessionLoad, ...]:
    """Effort and load of each session, the earliest first, those unknown among them."""
    ordered = sorted(summaries, key=lambda summary: (summary.started_at, summary.run_id))
    return tuple(
        SessionLoad(
            summary.run_id,
            summary.athlete,
            local_start(summary),
            elapsed_minutes(summary.elapsed_ms),
            summary.session_rpe,
            load_of(summary),
            "session_rpe" in summary.corrected,
            summary.imported,
        )
        for summary in ordered
    )
