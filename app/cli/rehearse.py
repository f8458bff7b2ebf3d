"""`rehearse`: a session of one or of a group without a screen; the same controller, journal and store."""

import argparse
import json
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

from app import wiring
from app.cli.group_words import configure_form, speaks_of_a_group
from app.cli.recorded import as_text, recorded
from app.cli.whose import athlete_for, configure_whose
from app.domain.errors import UsageError

SUMMARY = "lead a plan with a simulated clock and no screen, and print what was recorded"


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, metavar="PLAN")
    configure_whose(parser)
    configure_form(parser)
    parser.add_argument("--database", type=Path, metavar="FILE", help="keep the record here (else nowhere)")
    parser.add_argument("--speed", type=float, default=0.0, metavar="N", help="times real time; 0 = at once")
    parser.add_argument("--json", action="store_true", help="print what was recorded as JSON")


def run(arguments: argparse.Namespace) -> int:
    """Rehearse the plan and print the record read back from the database."""
    pace = _pace(arguments.speed)
    group = arguments.roster is not None and not arguments.athlete
    if speaks_of_a_group(arguments) and arguments.roster is None:
        raise UsageError("A group needs --roster FILE: say who is in it.")
    with ExitStack() as stack:
        path = (
            arguments.database
            or Path(stack.enter_context(tempfile.TemporaryDirectory())) / wiring.DATABASE_NAME
        )
        if group or speaks_of_a_group(arguments):
            _run_group(arguments, path, pace)
        else:
            _run_one(arguments, path, pace)
    return 0


def _run_one(arguments: argparse.Namespace, path: Path, pace: Callable[[int], None]) -> None:
    from app.domain.compiler import compile_timeline
    from app.domain.prescription import prescriptions
    from app.run.controller import Controller
    from app.run.rehearsal import rehearse

    written = wiring.read_plan(arguments.plan)
    timeline = compile_timeline(written.plan, athlete_for(written.plan, arguments))
    header = wiring.new_header(arguments.athlete or "Rehearsal", written, invented=True)
    with wiring.open_record(path) as database:
        with _ended_between_steps(pace) as wait:
            database.journal.open_run(header, prescriptions(timeline))
            rehearse(Controller(timeline), database.journal, header.run_id, wait)
        report = recorded(database, header.run_id, timeline)
    sys.stdout.write(json.dumps(report, indent=2) + "\n" if arguments.json else as_text(report))


def _run_group(arguments: argparse.Namespace, path: Path, pace: Callable[[int], None]) -> None:
    from app.cli.rehearse_group import make_pen, rehearse_group, say

    with wiring.open_record(path) as database:
        pen = make_pen(arguments, database)
        with _ended_between_steps(pace) as wait:
            report = rehearse_group(pen, database, wait)
    say(report, as_json=arguments.json)


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
