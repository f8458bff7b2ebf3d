"""One athlete as a line of the squad: what the last two weeks came to, the figures behind it on demand."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import chain

from app.analysis.adherence_parts import Kept, SessionsKept, ended, kept, monday_of, sessions_kept
from app.analysis.attention import Attention, who_first
from app.analysis.figure import Figure
from app.analysis.figures_adherence import adherence_figures
from app.analysis.figures_load import load_figures
from app.analysis.figures_wellbeing import wellbeing_figures
from app.analysis.load import session_load
from app.analysis.readiness_course import ReadinessPoint, latest_readiness
from app.analysis.reason_figures import reason_figures
from app.domain.reviewed import AthleteRecord, ReviewedSession
from app.domain.squad import OwedRating, SquadMember
from app.views.translation import message, tr

WEEKS_SHOWN = 8
WEEK = timedelta(weeks=1)


@dataclass(frozen=True, slots=True)
class TwoWeeks:
    """Adherence of this week and of the one before."""

    sessions: tuple[SessionsKept, SessionsKept]
    kept: tuple[Kept, Kept]


@dataclass(frozen=True, slots=True)
class WeekBar:
    """Load of a week in AU for a small bar: as a whole, or what is known of it; None where nothing is.

    A week without a session has neither: it is told by its missing bar, not by a nought.
    """

    total: float | None
    known: float | None


@dataclass(frozen=True, slots=True)
class SquadLine:
    """One athlete. `place` counts from 0 who needs a look first; `last` is the day of the last session ever.

    `owed` are the answers that are owed now, `pain` is what was last stated in a session of the record's
    days, `called` the name shown, which presentation replaces.
    """

    place: int
    record: AthleteRecord
    owed: tuple[OwedRating, ...]
    attention: Attention
    called: str
    last: date | None
    weeks: TwoWeeks
    loads: tuple[WeekBar, ...]
    pain: int | None
    readiness: ReadinessPoint | None

    @property
    def athlete(self) -> str:
        """Their name."""
        return self.record.athlete


def squad_lines(
    members: Sequence[SquadMember], errors: Mapping[str, float] | None = None
) -> tuple[SquadLine, ...]:
    """A line for each member, those who need a look first at the top. `errors` as in `who_first`."""
    by_name = {member.record.athlete: member for member in members}
    found = who_first(members, errors)
    return tuple(_line(place, by_name[each.athlete], each) for place, each in enumerate(found))


def presented(lines: Sequence[SquadLine], shown: str | None = None) -> tuple[SquadLine, ...]:
    """The lines as others may see them: a number for every name but the one shown, in the order of names."""
    others = sorted(
        (line.athlete for line in lines if line.athlete != shown), key=lambda name: name.casefold()
    )
    numbers = {name: number for number, name in enumerate(others, start=1)}
    named = [
        line if line.athlete == shown else replace(line, called=tr(ANONYMOUS).format(n=numbers[line.athlete]))
        for line in lines
    ]
    return tuple(sorted(named, key=lambda line: numbers.get(line.athlete, 0)))


ANONYMOUS = message("Athlete {n}")


def figures_of(line: SquadLine) -> tuple[Figure, ...]:
    """Why they stand first, and the figures that a line shows, of this week and the one before."""
    record = line.record
    monday = monday_of(record.today)
    wanted = {monday.isoformat(), (monday - WEEK).isoformat()}
    found = (*adherence_figures(record), *load_figures(record))
    of_weeks = tuple(figure for figure in found if figure.of in wanted and figure.name not in DAILY)
    course = wellbeing_figures(record)
    latest = {figure.name: figure for figure in course}
    return (*reason_figures(line.attention.reasons), *of_weeks, *latest.values())


DAILY = frozenset({"Load of the day"})


def _line(place: int, member: SquadMember, found: Attention) -> SquadLine:
    record = member.record
    past = [each for each in record.sessions if each.day <= record.today]
    return SquadLine(
        place,
        record,
        member.owed,
        found,
        record.athlete,
        member.last_run,
        _two_weeks(record),
        _bars(member),
        _last_pain(past),
        latest_readiness(record.readiness),
    )


def _two_weeks(record: AthleteRecord) -> TwoWeeks:
    this = monday_of(record.today)
    mondays = (this, this - WEEK)
    late = [each for each in record.due if each.occurrence.day >= mondays[1]]
    lately = ended(each for each in record.sessions if each.day >= mondays[1])
    due = [[each for each in late if _in_week(each.occurrence.day, monday)] for monday in mondays]
    done = [[each.totals for each in lately if _in_week(each.day, monday)] for monday in mondays]
    now, before = (kept(each for each in totals if each is not None) for totals in done)
    return TwoWeeks((sessions_kept(due[0]), sessions_kept(due[1])), (now, before))


def _in_week(day: date, monday: date) -> bool:
    return monday <= day < monday + WEEK


def _bars(member: SquadMember) -> tuple[WeekBar, ...]:
    """As `loads_by_week` has it: a week has a total when each day of it is known or a rest day."""
    record = member.record
    first = monday_of(record.today) - (WEEKS_SHOWN - 1) * WEEK
    weeks: list[list[tuple[date, float | None]]] = [[] for _ in range(WEEKS_SHOWN)]
    within = ((each.day, session_load(each.rpe, each.minutes)) for each in record.sessions)
    for day, load in chain(member.before, within):
        place = (day - first).days // 7
        if 0 <= place < WEEKS_SHOWN:
            weeks[place].append((day, load))
    return tuple(_bar(record, first + number * WEEK, mine) for number, mine in enumerate(weeks))


def _bar(record: AthleteRecord, monday: date, loads: Sequence[tuple[date, float | None]]) -> WeekBar:
    known = [load for _, load in loads if load is not None]
    if not known:
        return WeekBar(None, None)
    total = math.fsum(known)
    whole = len(known) == len(loads) and _all_days_known(record, monday, {day for day, _ in loads})
    return WeekBar(total if whole else None, total)


def _all_days_known(record: AthleteRecord, monday: date, trained: set[date]) -> bool:
    """Whether each day of a week has a session, or is a rest day that the record knows of and is over."""
    if record.since is not None and record.since <= monday and monday + WEEK <= record.today:
        return True
    days = (monday + timedelta(days=number) for number in range(7))
    since = record.since
    return all(day in trained or (since is not None and since <= day < record.today) for day in days)


def _last_pain(sessions: Sequence[ReviewedSession]) -> int | None:
    latest = sorted(sessions, key=lambda each: (each.day, each.started or 0, each.run_id))
    return latest[-1].pain if latest else None
