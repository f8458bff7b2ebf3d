"""The plans that are offered: what is known of each, in which order, and which is most likely wanted."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import time
from enum import StrEnum
from pathlib import Path

from app.domain.dose import OwnPaceReps
from app.domain.errors import FileProblemsError
from app.domain.length import session_ms
from app.domain.plan import Plan, WrittenPlan


class Why(StrEnum):
    """Why a plan is offered."""

    PLANNED = "planned"
    DONE = "done"
    HANDED = "handed"
    LAST = "last"
    RECENT = "recent"
    DEMO = "demo"


@dataclass(frozen=True, slots=True)
class PlanFigures:
    """What is known of a plan before it is led: its stages, how much it is, how long in ms."""

    title: str
    stages: tuple[str, ...]
    exercises: int
    length_ms: int
    own_pace: bool


@dataclass(frozen=True, slots=True)
class OfferedPlan:
    """A plan that can be begun, or why it cannot: `figures` and `problem` exclude each other.

    `at` is the time of day it is planned for. `path` is None for a planned session whose file nobody knows.
    """

    path: Path | None
    title: str
    figures: PlanFigures | None = None
    problem: FileProblemsError | None = None
    why: Why = Why.RECENT
    at: time | None = None


@dataclass(frozen=True, slots=True)
class Today:
    """A planned session of today: whose, which plan, when, and whether it was done."""

    athlete: str
    title: str
    path: Path | None
    at: time | None
    done: bool


class PlanShelf:
    """Reads each plan once, and again where its file has changed since."""

    def __init__(self, read: Callable[[Path], WrittenPlan]) -> None:
        self._read = read
        self._kept: dict[Path, tuple[int, PlanFigures | FileProblemsError]] = {}

    def look(self, path: Path) -> PlanFigures | FileProblemsError:
        """What is known of a plan, or why it cannot be read."""
        stamp = _stamp(path)
        kept = self._kept.get(path)
        if kept is None or kept[0] != stamp or isinstance(kept[1], FileProblemsError):
            kept = self._kept[path] = (stamp, self._figures(path))
        return kept[1]

    def offered(self, path: Path, why: Why, at: time | None = None) -> OfferedPlan:
        """A plan as it is offered."""
        found = self.look(path)
        if isinstance(found, FileProblemsError):
            return OfferedPlan(path, path.name, None, found, why, at)
        return OfferedPlan(path, found.title, found, None, why, at)

    def _figures(self, path: Path) -> PlanFigures | FileProblemsError:
        try:
            return figures_of(self._read(path).plan)
        except FileProblemsError as error:
            return error


def figures_of(plan: Plan) -> PlanFigures:
    """What is known of a plan."""
    exercises = [exercise for stage in plan.stages for exercise in stage.exercises]
    return PlanFigures(
        plan.title,
        tuple(stage.name for stage in plan.stages),
        len(exercises),
        session_ms(plan),
        any(isinstance(exercise.dose, OwnPaceReps) for exercise in exercises),
    )


def offered_plans(
    shelf: PlanShelf,
    today: Sequence[Today],
    recent: Sequence[Path],
    demo: Sequence[Path],
    *,
    last: Path | None = None,
    handed: Path | None = None,
) -> tuple[OfferedPlan, ...]:
    """Each plan once: what was handed over, what is planned, what was led lately, and the demo's.

    `today` is of one athlete, `recent` the latest first, `last` the one that athlete did last. A planned
    session without a file takes the known plan of its title.
    """
    found: list[OfferedPlan] = []
    if handed is not None:
        found.append(shelf.offered(handed, Why.HANDED))
    known = [shelf.offered(path, Why.LAST if path == last else Why.RECENT) for path in recent]
    known += [shelf.offered(path, Why.DEMO) for path in demo]
    found += [_planned(shelf, session, known) for session in today]
    found += known
    return tuple(_once(found))


def likely(plans: Iterable[OfferedPlan]) -> OfferedPlan | None:
    """The first that can be begun and was not done today."""
    ready = [plan for plan in plans if plan.figures is not None]
    return next((plan for plan in ready if plan.why is not Why.DONE), ready[0] if ready else None)


def _planned(shelf: PlanShelf, session: Today, known: Sequence[OfferedPlan]) -> OfferedPlan:
    why = Why.DONE if session.done else Why.PLANNED
    path = session.path
    if path is None or not path.exists():
        path = next((plan.path for plan in known if plan.title == session.title), None)
    if path is None:
        return OfferedPlan(None, session.title, why=why, at=session.at)
    return shelf.offered(path, why, session.at)


def _once(plans: Iterable[OfferedPlan]) -> Iterable[OfferedPlan]:
    seen: set[Path] = set()
    for plan in plans:
        if plan.path is None or plan.path.resolve() not in seen:
            yield plan
        if plan.path is not None:
            seen.add(plan.path.resolve())


def _stamp(path: Path) -> int:
    try:
        return path.stat().st_mtime_ns
    except OSError:
        return 0
