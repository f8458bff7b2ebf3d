"""Effort and pain, session by session, with the zones of pain."""

from collections.abc import Iterable, Sequence

from app.analysis.figure import Figure
from app.analysis.figures_wellbeing import session_figures
from app.analysis.pain import CAUTION_TO, SAFE_TO
from app.analysis.reasons_pain import pain_before
from app.domain.reviewed import AthleteRecord, ReviewedSession
from app.views.charts.data import ChartData, Ink, Mark, Panel, Series, Zone
from app.views.review import words
from app.views.review.athlete.charted import Charted, Later, spoken
from app.views.review.figure_words import weekday_words
from app.views.translation import message, tr

IN_SIGHT = 40
TEN = ((0.0, "0"), (5.0, "5"), (10.0, "10"))
ZONES = (
    Zone(0.0, SAFE_TO + 0.5, "0–2"),
    Zone(SAFE_TO + 0.5, CAUTION_TO + 0.5, "3–5", Ink.NOTICE),
    Zone(CAUTION_TO + 0.5, 10.0, "6–10", Ink.ATTENTION),
)
NONE_YET = message("No session in this time.")


def session_chart(record: AthleteRecord, *, pain: bool = True) -> Charted:
    """RPE above, pain below: highest in the session and on the morning after. Without `pain` none of it."""
    sessions = in_order(record.sessions_within)
    names = [weekday_words(each.day) for each in sessions]
    efforts = [None if each.rpe is None else float(each.rpe) for each in sessions]
    effort = Series(
        "RPE",
        tuple(efforts),
        tuple(words.whole(each.rpe) for each in sessions),
        ink=Ink.PLAIN,
        mark=Mark.DIAMOND,
        unknown=tuple(place for place, value in enumerate(efforts) if value is None),
    )
    panels = [Panel((effort,), (*TEN[:-1], (10.0, "RPE\u202f10")))]
    if pain:
        panels.append(
            Panel(_pain(sessions), (*TEN[:-1], (10.0, tr("pain") + "\u202f10")), zones=ZONES, share=2)
        )
    data = ChartData(
        tr("Chart: effort and pain by session") if pain else tr("Chart: effort by session"),
        tr("date"),
        tuple(words.day(each.day) for each in sessions),
        spoken(names, [_line(each, pain=pain) for each in sessions], [each.plan_title for each in sessions]),
        tuple(panels),
        window=min(IN_SIGHT, max(len(sessions), 1)),
        first_column=tr("Session"),
        names=tuple(names),
        empty=tr(NONE_YET),
        aside=tr("0 to 10 · circles: in the session, triangles: the morning after")
        if pain
        else tr("0 to 10"),
    )
    heading = tr("Effort and pain by session") if pain else tr("Effort by session")
    before = pain_before(record)

    def why(place: int) -> tuple[Figure, ...]:
        figures = session_figures(sessions[place], before.get(sessions[place].day))
        return figures if pain else figures[:1]

    return Charted(heading, data, Later(len(sessions), why))


def in_order(sessions: Iterable[ReviewedSession]) -> tuple[ReviewedSession, ...]:
    """Sessions from the earliest on."""
    return tuple(sorted(sessions, key=lambda each: (each.day, each.started or 0, each.run_id)))


def _pain(sessions: Sequence[ReviewedSession]) -> tuple[Series, ...]:
    during = [each.pain for each in sessions]
    after = [each.pain_next_morning for each in sessions]
    return (
        Series(
            tr("Pain in the session"),
            tuple(None if value is None else float(value) for value in during),
            tuple(map(words.pain, during)),
            ink=Ink.ACCENT,
            unknown=tuple(place for place, value in enumerate(during) if value is None),
        ),
        Series(
            tr("Pain on the next morning"),
            tuple(None if value is None else float(value) for value in after),
            tuple(map(words.pain, after)),
            ink=Ink.NOTICE,
            mark=Mark.TRIANGLE,
        ),
    )


def _line(session: ReviewedSession, *, pain: bool) -> str:
    effort = tr("RPE not rated") if session.rpe is None else tr("RPE {n}").format(n=session.rpe)
    if not pain:
        return effort
    during = tr("pain unknown") if session.pain is None else tr("pain {n}").format(n=session.pain)
    return words.DOT.join((effort, during, _morning(session)))


def _morning(session: ReviewedSession) -> str:
    if session.pain_next_morning is not None:
        return tr("next morning {pain}").format(pain=session.pain_next_morning)
    return tr("next morning not answered") if session.next_morning_asked else tr("next morning not asked")
