"""Figures of load by day and week: monotony, strain, contacts, tension, volume, and its course."""

from collections.abc import Iterator
from datetime import timedelta

from app.analysis.figure import Figure, Rule
from app.analysis.load_course import CHRONIC_DAYS, CoursePoint, load_course
from app.analysis.load_weeks import INCOMPLETE, WeekLoad, loads_by_day, loads_by_week
from app.analysis.work_weeks import WorkDone, work_by_week
from app.domain.reviewed import AthleteRecord, ReviewedSession

DAY_UNKNOWN = "The day is not over, not in the record, or has a session without effort or length."
CONTACTS_UNKNOWN = "The contacts of a session are unknown."
NO_TENSION = "Nothing that was done has a tempo or a hold, or a session is unknown."
LOAD_UNKNOWN = "The load of some work is unknown."
TOO_SHORT = "Fewer than 28 days in a row are known."

DAY = Rule(
    "Load of the day",
    "AU",
    "sum of session RPE x minutes, rests included; 0 on a rest day",
    "Foster et al. 2001, J Strength Cond Res 15:109-115.",
)
WEEK = Rule("Load of the week", "AU", "sum of seven days from Monday", DAY.source)
MONOTONY = Rule(
    "Monotony",
    "1",
    "mean of seven daily loads / their standard deviation, that of a sample (n - 1)",
    "Foster 1998, Med Sci Sports Exerc 30:1164-1168; n - 1 is a choice, its abstract does not say.",
)
STRAIN = Rule("Strain", "AU", "load of the week x monotony, not rounded", MONOTONY.source)
CONTACTS = Rule(
    "Contacts",
    "contacts",
    "reps done x contacts a rep",
    "Common practice, no source. A guideline, not a limit.",
)
TENSION = Rule(
    "Time under tension, nominal",
    "s",
    "reps done x the sum of a rep's phases; an explosive phase by convention",
    "Textbook rule of the tempo's four digits.",
)
VOLUME = Rule("Volume load", "kg", "sum of reps x kg", "Common practice, no source.")
_WILLIAMS = "Williams et al. 2017, Br J Sports Med 51:209-210; begins with the first day's load."
LATELY = Rule("Load lately", "AU a day", "exponentially weighted mean, lambda = 2 / (7 + 1)", _WILLIAMS)
USUALLY = Rule("Load usually", "AU a day", "exponentially weighted mean, lambda = 2 / (28 + 1)", _WILLIAMS)
_PLAIN = "Common practice, no source. Two numbers side by side, never a ratio."
MEAN_LATELY = Rule("Mean of the last 7 days", "AU a day", "sum of the last 7 daily loads / 7", _PLAIN)
MEAN_USUALLY = Rule("Mean of the last 28 days", "AU a day", "sum of the last 28 daily loads / 28", _PLAIN)


def load_figures(record: AthleteRecord, *, with_course: bool = False) -> tuple[Figure, ...]:
    """Figures of load over a record's days; what lately and usually only `with_course`, and no ratio."""
    found = [*_days(record), *_weeks(record)]
    if with_course:
        found.extend(_course(record))
    return tuple(found)


def _days(record: AthleteRecord) -> Iterator[Figure]:
    sessions: dict[str, list[ReviewedSession]] = {}
    for session in record.sessions:
        sessions.setdefault(session.day.isoformat(), []).append(session)
    for each in loads_by_day(record):
        of = each.day.isoformat()
        runs = sessions.get(of, [])
        inputs = tuple(
            (label, value)
            for run in runs
            for label, value in ((f"RPE, {run.plan_title}", run.rpe), (f"min, {run.plan_title}", run.minutes))
        )
        unknown = tuple(label for label, value in inputs if value is None)
        yield DAY.figure(each.load, each.sessions, DAY_UNKNOWN, inputs, unknown, of)


def _weeks(record: AthleteRecord) -> Iterator[Figure]:
    days = {each.day: each.load for each in loads_by_day(record)}
    for week in loads_by_week(record):
        dates = [week.monday + timedelta(days=number) for number in range(7)]
        inputs = tuple((day.isoformat(), days.get(day)) for day in dates)
        unknown = tuple(label for label, value in inputs if value is None)
        of = week.monday.isoformat()
        yield WEEK.figure(week.total, week.days_known, INCOMPLETE, inputs, unknown, of)
        yield MONOTONY.figure(week.monotony, week.days_known, week.reason, inputs, unknown, of)
        yield STRAIN.figure(week.strain, week.days_known, week.reason, _of_strain(week), unknown, of)
    for monday, work in work_by_week(record.sessions_within).items():
        yield from _work(work, monday.isoformat())


def _of_strain(week: WeekLoad) -> tuple[tuple[str, float | None], ...]:
    return ("load of the week", week.total), ("monotony", week.monotony)


def _work(work: WorkDone, of: str) -> Iterator[Figure]:
    runs = (("sessions", work.sessions),)
    yield CONTACTS.figure(work.contacts, work.sessions, CONTACTS_UNKNOWN, runs, (), of)
    yield TENSION.figure(work.tut_s, work.sessions, NO_TENSION, runs, (), of)
    known = (*runs, ("known part, kg", work.known_volume_kg))
    unknown = () if work.volume_kg is not None else (LOAD_UNKNOWN,)
    yield VOLUME.figure(work.volume_kg, work.sessions, LOAD_UNKNOWN, known, unknown, of)


def _course(record: AthleteRecord) -> tuple[Figure, ...]:
    """On the last day that is known, once 28 days in a row are."""
    points = [point for point in load_course(loads_by_day(record)) if point.acute is not None]
    return course_figures(points[-1]) if points else course_figures(None)


def course_figures(point: CoursePoint | None) -> tuple[Figure, Figure, Figure, Figure]:
    """Weighted means lately and usually, then plain ones, of a day; all unknown until 28 days in a row are.

    They stand beside each other and are never divided.
    """
    days = 0 if point is None else point.days
    of = "" if point is None else point.day.isoformat()
    rests_on = (("days known in a row", days),)

    def figure(rule: Rule, value: float | None) -> Figure:
        return rule.figure(value if days >= CHRONIC_DAYS else None, days, TOO_SHORT, rests_on, (), of)

    return (
        figure(LATELY, None if point is None else point.acute),
        figure(USUALLY, None if point is None else point.chronic),
        figure(MEAN_LATELY, None if point is None else point.mean_acute),
        figure(MEAN_USUALLY, None if point is None else point.mean_chronic),
    )
