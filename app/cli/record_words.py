"""What databases hold, and how two differ, in lines to read."""

from collections.abc import Callable, Iterator, Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.store.contents import Contents, HeldRun
    from app.store.restore import Difference

MOST_RUNS = 20
_BESIDE = {
    "readiness": "answers before a run",
    "rating": "ratings after a run",
    "result": "test results",
    "note": "notes",
    "correction": "corrections",
    "device": "devices",
    "setting": "settings",
}


def size_words(size: int) -> str:
    """A file's size, `12 KiB` or `3.4 MiB`."""
    return f"{size / 2**20:.1f} MiB" if size >= 2**20 else f"{-(-size // 1024)} KiB"


def counted(count: int, noun: str, plural: str | None = None) -> str:
    """A number of things: `1 run`, `12 runs`."""
    return f"{count} {noun if count == 1 else plural or f'{noun}s'}"


def contents_words(contents: "Contents") -> str:
    """What a database holds, in one line; nobody is named."""
    newest = contents.newest
    until = "" if newest is None else f", the newest of {_began(newest)}"
    return f"{counted(len(contents.runs), 'run')}{until}, {counted(contents.reps, 'rep')}"


def difference_lines(
    difference: "Difference", now: str = "now", then: str = "in the backup"
) -> Iterator[str]:
    """How two databases differ: counts side by side, then the runs that only one of them has."""
    if difference.trouble:
        yield difference.trouble
        yield ""
    yield from _table(difference, now, then)
    yield from _runs(f"Only {now}", difference.lost)
    yield from _runs(f"Only {then}", difference.gained)
    yield from _changed(difference, now, then)


def _table(difference: "Difference", now: str, then: str) -> Iterator[str]:
    rows: list[tuple[str, Callable[[Contents], object]]] = [
        ("runs", lambda one: len(one.runs)),
        ("athletes", lambda one: one.athletes),
        ("reps", lambda one: one.reps),
        ("ratings", lambda one: one.ratings),
    ]
    present, backup = difference.present, difference.backup
    tables = sorted({*backup.beside, *(present.beside if present else ())})
    rows += [(_BESIDE.get(table, table), _rows_of(table)) for table in tables]
    rows.append(("newest run", lambda one: "none" if one.newest is None else _began(one.newest)))
    yield f"{'':22}{now:>20}{then:>20}"
    for name, figure in rows:
        known = "cannot be read" if present is None else figure(present)
        yield f"{name:22}{known:>20}{figure(backup):>20}"


def _rows_of(table: str) -> "Callable[[Contents], object]":
    return lambda one: len(one.beside.get(table, ()))


def _runs(title: str, runs: "Sequence[HeldRun]") -> Iterator[str]:
    if not runs:
        return
    yield ""
    yield f"{title}: {counted(len(runs), 'run')}"
    for run in runs[-MOST_RUNS:][::-1]:
        yield f"  {run_words(run)}, {counted(run.reps, 'rep')}"
    if len(runs) > MOST_RUNS:
        yield f"  and {len(runs) - MOST_RUNS} before"


def _changed(difference: "Difference", now: str, then: str) -> Iterator[str]:
    if not difference.changed:
        return
    yield ""
    yield f"Not the same in both: {counted(len(difference.changed), 'run')}"
    for mine, theirs in difference.changed[-MOST_RUNS:][::-1]:
        reps = f"{mine.reps} reps and {mine.facts} entries {now}, {theirs.reps} and {theirs.facts} {then}"
        yield f"  {run_words(mine)}: {reps}"
    if len(difference.changed) > MOST_RUNS:
        yield f"  and {len(difference.changed) - MOST_RUNS} before"


def run_words(run: "HeldRun") -> str:
    """A run by when it began, whose it is and of which plan."""
    return f"{_began(run)}  {run.athlete}, {run.plan_title}"


def _began(run: "HeldRun") -> str:
    """When a run began, by the clock where it was done."""
    from app.analysis.local_time import known_zone

    return f"{run.started_at.astimezone(known_zone(run.zone)):%Y-%m-%d %H:%M}"
