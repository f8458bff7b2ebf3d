"""A run that was cut short by the death of the program: found in the record, and taken up again."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.errors import FileProblemsError, SessionTooLongError
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import BoutPrescribed, Fact, RepDone, RunHeader
from app.domain.timeline import Timeline
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database

ParsePlan = Callable[[str], WrittenPlan]
GONE = message(
    "That session cannot be led on: its plan or the athlete's numbers have changed since. Everything done is "
    "kept; lay it down, and begin a new one."
)


@dataclass(frozen=True, slots=True)
class Unfinished:
    """A run without an end, and what was written of it."""

    header: RunHeader
    facts: tuple[Fact, ...]
    prescribed: tuple[BoutPrescribed, ...]

    @property
    def sentence(self) -> str:
        """What it was, for the person who may take it up."""
        reps = sum(isinstance(fact, RepDone) for fact in self.facts)
        told = tr("{plan}, {athlete}: cut short after %n rep(s). All of it is kept.", "", reps)
        return told.format(plan=self.header.plan_title, athlete=self.header.athlete)


def latest_unfinished(database: "Database") -> Unfinished | None:
    """The latest run without an end, None when every run has one. For the database's thread."""
    headers = database.queries.unfinished_runs()
    if not headers:
        return None
    header = headers[0]
    prescribed = dict.fromkeys(asked for asked, _ in database.queries.bouts_of(header.run_id))
    return Unfinished(header, database.queries.facts_of(header.run_id), tuple(prescribed))


def timeline_of(unfinished: Unfinished, parse: ParsePlan, athletes: Sequence[Athlete]) -> Timeline | None:
    """The timeline that the run followed; None when its plan or its athlete's numbers cannot be had any more.

    The athlete's numbers of today are used where they give what the run asked for, else none.
    """
    try:
        plan = parse(unfinished.header.plan_text).plan
    except FileProblemsError:
        return None
    named = [athlete for athlete in athletes if athlete.name == unfinished.header.athlete]
    for athlete in (*named, None):
        try:
            timeline = compile_timeline(plan, athlete)
        except SessionTooLongError:
            continue
        if prescriptions(timeline) == unfinished.prescribed:
            return timeline
    return None
