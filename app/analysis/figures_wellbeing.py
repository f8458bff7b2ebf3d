"""Figures of effort, pain and readiness: by session, by morning after, and against the athlete's own days."""

from collections.abc import Iterator

from app.analysis.figure import Figure, Rule
from app.analysis.pain import zone
from app.analysis.readiness_course import local_day, readiness_course
from app.analysis.reasons_pain import pain_before
from app.domain.reviewed import AthleteRecord, ReviewedSession

NOT_RATED = "The athlete has not rated it."
NOT_ASKED = "It was not asked."
NO_SESSION = "There is no session."
NO_ANSWER = "Nothing was answered."

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
    sessions = [each for each in record.sessions if record.first <= each.day <= record.last]
    before = pain_before(record)
    found: list[Figure] = []
    for session in sessions:
        found.extend(_session(session, before.get(session.day)))
    known = [each.pain for each in sessions if each.pain is not None]
    reason = NOT_RATED if sessions else NO_SESSION
    found.append(HIGHEST.figure(max(known, default=None), len(known), reason))
    found.extend(_readiness(record))
    return tuple(found)


def _session(session: ReviewedSession, before: int | None) -> Iterator[Figure]:
    of = f"{session.day.isoformat()} {session.run_id}"
    yield EFFORT.figure(session.rpe, int(session.rpe is not None), NOT_RATED, (), (), of)
    in_zone = zone(session.pain)
    zones = (("zone", None if in_zone is None else in_zone.value),)
    yield PAIN.figure(session.pain, int(session.pain is not None), NOT_RATED, zones, (), of)
    after = session.pain_next_morning
    reason = NOT_RATED if session.next_morning_asked else NOT_ASKED
    unknown = ("pain before training",) if before is None else ()
    yield MORNING.figure(after, int(after is not None), reason, (("before training", before),), unknown, of)


def _readiness(record: AthleteRecord) -> Iterator[Figure]:
    answers = {local_day(each): each for each in sorted(record.readiness, key=lambda each: each.at)}
    points = [each for each in readiness_course(record.readiness) if record.first <= each.day <= record.last]
    for point in points:
        of, given = point.day.isoformat(), answers[point.day]
        items = (
            ("sleep", given.sleep),
            ("fatigue", given.fatigue),
            ("stress", given.stress),
            ("soreness", given.soreness),
        )
        unknown = tuple(label for label, value in items if value is None)
        yield TOTAL.figure(point.total, len(items) - len(unknown), point.reason, items, unknown, of)
        compared = ("sum", point.total), ("mean", point.mean), ("standard deviation", point.sd)
        yield OWN.figure(point.z, point.days, point.reason, compared, unknown, of)
    if not points:
        yield TOTAL.figure(None, 0, NO_ANSWER)
