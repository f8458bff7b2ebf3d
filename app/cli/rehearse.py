"""`rehearse`: a whole session without a screen, through the same controller, journal and store."""

import argparse
import json
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

from app import wiring
from app.cli.whose import athlete_for, configure_whose
from app.domain.errors import UsageError
from app.domain.units import clock_text

if TYPE_CHECKING:
    from app.domain.timeline import Timeline
    from app.store.database import Database

SUMMARY = "lead a plan with a simulated clock and no screen, and print what was recorded"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, metavar="PLAN")
    configure_whose(parser)
    parser.add_argument("--database", type=Path, metavar="FILE", help="keep the record here (else nowhere)")
    parser.add_argument("--speed", type=float, default=0.0, metavar="N", help="times real time; 0 = at once")
    parser.add_argument("--json", action="store_true", help="print what was recorded as JSON")


def run(arguments: argparse.Namespace) -> int:
    """Rehearse the plan and print the record read back from the database."""
    from app.domain.compiler import compile_timeline
    from app.domain.prescription import prescriptions
    from app.run.controller import Controller
    from app.run.rehearsal import rehearse

    pace = _pace(arguments.speed)
    written = wiring.read_plan(arguments.plan)
    timeline = compile_timeline(written.plan, athlete_for(written.plan, arguments))
    name = arguments.athlete or "Rehearsal"
    header = wiring.new_header(name, written, invented=True)
    with ExitStack() as stack:
        path = (
            arguments.database
            or Path(stack.enter_context(tempfile.TemporaryDirectory())) / wiring.DATABASE_NAME
        )
        database = stack.enter_context(wiring.open_record(path))
        with _ended_between_steps(pace) as wait:
            database.journal.open_run(header, prescriptions(timeline))
            rehearse(Controller(timeline), database.journal, header.run_id, wait)
        report = recorded(database, header.run_id, timeline)
    sys.stdout.write(json.dumps(report, indent=2) + "\n" if arguments.json else as_text(report))
    return 0


def _pace(speed: float) -> Callable[[int], None]:
    if not 0 <= speed <= 1_000_000:
        raise UsageError("--speed is 0 (at once) or how many times faster than real time, such as 1 or 20.")
    if speed == 0:
        return lambda _step_ms: None
    return lambda step_ms: time.sleep(step_ms / 1000 / speed)


@contextmanager
def _ended_between_steps(pace: Callable[[int], None]) -> Iterator[Callable[[int], None]]:
    """The pace, ended by Ctrl-C; what a step has begun to write is finished first."""
    asked = waiting = False

    def hear(_number: int, _frame: object) -> None:
        nonlocal asked
        asked = True
        if waiting:
            raise KeyboardInterrupt

    def wait(step_ms: int) -> None:
        nonlocal waiting
        waiting = True
        try:
            if asked:
                raise KeyboardInterrupt
            pace(step_ms)
        finally:
            waiting = False

    before = signal.signal(signal.SIGINT, hear)
    try:
        yield wait
    finally:
        signal.signal(signal.SIGINT, before)


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
