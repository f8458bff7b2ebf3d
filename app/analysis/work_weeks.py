"""Work done by week: contacts, nominal time under tension and volume load, each unknown where a part is."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from app.analysis.adherence_parts import monday_of
from app.domain.reviewed import ReviewedSession

MS_A_SECOND = 1_000


@dataclass(frozen=True, slots=True)
class WorkDone:
    """Work of some sessions; None where it is unknown or, for TUT, where nothing of it is defined.

    `contacts` are foot or hand contacts; `tut_s` is nominal, in seconds: the reps done x the sum of a rep's
    phases, because an explosive one has no length but one agreed on. `volume_kg` is kg times reps and
    None as soon as a load is unknown; `known_volume_kg` is what is known of it, None where nothing is.
    """

    sessions: int
    contacts: int | None
    tut_s: float | None
    volume_kg: float | None
    known_volume_kg: float | None


def work_of(sessions: Iterable[ReviewedSession]) -> WorkDone:
    """Work of sessions together. One of which no reps are known makes contacts and volume unknown."""
    runs = tuple(sessions)
    totals = [session.totals for session in runs]
    known = [each for each in totals if each is not None]
    contacts = [each.contacts for each in known if each.contacts is not None]
    tut = [each.tut_ms for each in known if each.tut_ms is not None]
    volume = [each.volume_kg for each in known if each.volume_kg is not None]
    complete = len(known) == len(runs) and all(each.volume_complete for each in known)
    return WorkDone(
        len(runs),
        sum(contacts) if runs and len(contacts) == len(runs) else None,
        sum(tut) / MS_A_SECOND if tut and len(known) == len(runs) else None,
        sum(volume) if volume and complete else None,
        sum(volume) if volume else None,
    )


def work_by_week(sessions: Iterable[ReviewedSession]) -> dict[date, WorkDone]:
    """Work by the Monday of the ISO week of the local day, in order; weeks without a session are left out."""
    weeks: dict[date, list[ReviewedSession]] = {}
    for session in sorted(sessions, key=lambda session: session.day):
        weeks.setdefault(monday_of(session.day), []).append(session)
    return {monday: work_of(runs) for monday, runs in weeks.items()}
