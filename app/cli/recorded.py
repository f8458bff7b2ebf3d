"""What the database holds of a run, for reading and as JSON."""

from typing import TYPE_CHECKING, Any

from app.domain.units import clock_text

if TYPE_CHECKING:
    from app.domain.timeline import Timeline
    from app.store.database import Database


def recorded(database: "Database", run_id: str, timeline: "Timeline") -> dict[str, Any]:
    """What the database holds of a run, ready for JSON; unknown answers are null."""
    (summary,) = [line for line in database.queries.run_summaries() if line.run_id == run_id]
    bouts = [
        {
            "bout": prescribed.bout + 1,
            "stage": prescribed.stage_name,
            "exercise": prescribed.exercise,
            "set": prescribed.set_number,
            "side": prescribed.side.value,
            "reps_prescribed": prescribed.high,
            "reps_recorded": record.reps_done,
            "outcome": record.outcome.value,
            "rpe": record.rpe,
            "pain": record.pain,
        }
        for prescribed, record in database.queries.bouts_of(run_id)
        if record is not None
    ]
    return {
        "run": run_id,
        "athlete": summary.athlete,
        "plan": summary.plan_title,
        "outcome": None if summary.outcome is None else summary.outcome.value,
        "timeline_ms": timeline.timed_ms,
        "open_ended": timeline.open_ended,
        "elapsed_ms": summary.elapsed_ms,
        "reps_prescribed": sum(bout["reps_prescribed"] for bout in bouts),
        "reps_recorded": sum(bout["reps_recorded"] for bout in bouts),
        "bouts": bouts,
    }


def as_text(report: dict[str, Any]) -> str:
    """The record for reading, one line a bout."""
    more = ", and own-pace work on top" if report["open_ended"] else ""
    lines = [
        f"{report['plan']}, {report['athlete']}: {report['outcome']}",
        f"timeline {clock_text(report['timeline_ms'])}{more}; took {clock_text(report['elapsed_ms'] or 0)}",
    ]
    for bout in report["bouts"]:
        side = "" if bout["side"] == "both" else f", {bout['side']}"
        what = f"{bout['exercise']}, set {bout['set']}{side}"
        lines.append(
            f"  {bout['bout']:>3}  {what:<60} {bout['reps_recorded']:>3} of {bout['reps_prescribed']}"
        )
    lines.append(f"recorded {report['reps_recorded']} of {report['reps_prescribed']} reps")
    return "\n".join(lines) + "\n"
