"""Figures of effort, pain and readiness: by session, by morning after, and against the athlete's own days."""

from collections.abc import Iterator, Sequence
from datetime import date

from app.analysis.figure import Figure, Rule
from app.analysis.pain import Morning, PainDay, pain_course, zone
from app.analysis.readiness_course import ReadinessPoint, latest_known, local_day, readiness_course
from app.analysis.reasons_pain import pain_before
from app.domain.readiness import Readiness
from app.domain.reviewed import AthleteRecord, ReviewedSession

NOT_RATED = "The athlete has not rated it."
NOT_ASKED = "It was not asked."
NO_SESSION = "There is no session."
NO_ANSWER = "Nothing was answered."
NO_PAIN_BEFORE = "Pain before training is not known, and that of the next morning is above 2."

EFFORT = Rule(
    "Effort of the session",
    "0-10",
    "rating of the whole session",
    "Foster et al. 2001, J Strength Cond Res 15:109-115.",
)
PAIN = Rule(
    "Pain in the session",
    "0-10",
    "highest pain stated; zones 0-2, 3-5, 6-10",
    "Thomee 1997; Silbernagel et al. 2007, Am J Sports Med 35:897-906; bounds from memory.",
)
MORNING = Rule("Pain on the next morning", "0-10", "as stated; no higher than before training", PAIN.source)
HIGHEST = Rule("Highest pain", "0-10", "highest pain stated in any session", PAIN.source)
BEFORE = Rule("Pain before training", "0-10", "first answer of the day", PAIN.source)
OF_DAY = Rule("Pain of the day", "0-10", "highest pain stated in a session of the day", PAIN.source)
SETTLED = Rule(
    "Settled by the next morning",
    "yes or no",
    "1 where pain on the next morning is no higher than before training, or, that unknown, at most 2",
    "Thomee 1997, from memory.",
)
TOTAL = Rule(
    "Readiness",
    "4-28",
    "sleep + fatigue + stress + soreness, 1 (well) to 7 (badly) each",
    "Hooper et al. 1995, Med Sci Sports Exerc 27:106-112.",
)
OWN = Rule(
    "Readiness against own days",
    "SD",
    "(sum - mean of the last 28 days) / their standard deviation (n - 1); above 0 is worse",
    "A choice; 14 of the 28 days must be known.",
)


def wellbeing_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Effort, pain, readiness over a record's days; `of` is the day, and the id of the run where of one."""
    sessions = record.sessions_within
    before = pain_before(record)
    found: list[Figure] = []
    for session in sessions:
        found.extend(session_figures(session, before.get(session.day)))
    found.append(highest_pain(sessions))
    found.extend(_readiness(record))
    return tuple(found)


def pain_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Pain by day over a record's days: before training, highest, settled or not; `of` is the day."""
    return tuple(figure for day in pain_days(record) for figure in pain_day_figures(day))


def pain_days(record: AthleteRecord) -> tuple[PainDay, ...]:
    """The course of pain over a record's days: those with a session or an answer before training."""
    answers = ((local_day(each), each) for each in sorted(record.readiness, key=lambda each: each.at))
    return pain_course(
        record.sessions_within,
        ((day, each) for day, each in answers if record.covers(day)),
    )


def pain_day_figures(day: PainDay) -> tuple[Figure, Figure, Figure]:
    """Before training, highest in a session, and whether it had settled by the next morning; 1 is yes."""
    of = day.day.isoformat()
    in_zone = zone(day.during)
    zones = (("zone", None if in_zone is None else in_zone.value),)
    known = (("before training", day.before), ("next morning", day.next_morning))
    rule = day.morning
    settled = {Morning.SETTLED: 1.0, Morning.NOT_SETTLED: 0.0}.get(rule) if rule is not None else None
    unknown = tuple(label for label, value in known if value is None)
    return (
        BEFORE.figure(day.before, int(day.before is not None), NO_ANSWER, (), (), of),
        OF_DAY.figure(
            day.during, int(day.during is not None), NOT_RATED if day.trained else NO_SESSION, zones, (), of
        ),
        SETTLED.figure(settled, len(known) - len(unknown), _why_not_known(day), known, unknown, of),
    )


def _why_not_known(day: PainDay) -> str:
    if not day.trained:
        return NO_SESSION
    if day.next_morning is None:
        return NOT_RATED if day.asked else NOT_ASKED
    return NO_PAIN_BEFORE


def highest_pain(sessions: Sequence[ReviewedSession]) -> Figure:
    """The highest pain that was stated in any of these sessions."""
    known = [each.pain for each in sessions if each.pain is not None]
    return HIGHEST.figure(max(known, default=None), len(known), NOT_RATED if sessions else NO_SESSION)


def session_figures(session: ReviewedSession, before: int | None) -> tuple[Figure, Figure, Figure]:
    """Effort, pain and pain on the next morning of a session; `before` is pain before training that day."""
    of = f"{session.day.isoformat()} {session.run_id}"
    in_zone = zone(session.pain)
    zones = (("zone", None if in_zone is None else in_zone.value),)
    after = session.pain_next_morning
    reason = NOT_RATED if session.next_morning_asked else NOT_ASKED
    unknown = ("pain before training",) if before is None else ()
    return (
        EFFORT.figure(session.rpe, int(session.rpe is not None), NOT_RATED, (), (), of),
        PAIN.figure(session.pain, int(session.pain is not None), NOT_RATED, zones, (), of),
        MORNING.figure(after, int(after is not None), reason, (("before training", before),), unknown, of),
    )


def latest_readiness_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Readiness of the last day whose sum is known, and against own days on the last on which that is."""
    found = latest_known(record.readiness, record.first, record.last)
    if found is None:
        return (TOTAL.figure(None, 0, NO_ANSWER),)
    answers = _answers(record)
    with_total, with_z = found
    return _of_point(with_total, answers)[0], _of_point(with_z, answers)[1]


def _readiness(record: AthleteRecord) -> Iterator[Figure]:
    answers = _answers(record)
    points = readiness_course(record.readiness, record.first, record.last)
    for point in points:
        yield from _of_point(point, answers)
    if not points:
        yield TOTAL.figure(None, 0, NO_ANSWER)


def _answers(record: AthleteRecord) -> dict[date, Readiness]:
    """The last answer of each local day."""
    return {local_day(each): each for each in sorted(record.readiness, key=lambda each: each.at)}


def _of_point(point: ReadinessPoint, answers: dict[date, Readiness]) -> tuple[Figure, Figure]:
    of, given = point.day.isoformat(), answers[point.day]
    items = (
        ("sleep", given.sleep),
        ("fatigue", given.fatigue),
        ("stress", given.stress),
        ("soreness", given.soreness),
    )
    unknown = tuple(label for label, value in items if value is None)
    compared = ("sum", point.total), ("mean", point.mean), ("standard deviation", point.sd)
    return (
        TOTAL.figure(point.total, len(items) - len(unknown), point.reason, items, unknown, of),
        OWN.figure(point.z, point.days, point.reason, compared, unknown, of),
    )
