"""Pain by day: before training, highest in a session, on the morning after, and whether it had settled."""

from collections.abc import Sequence

from app.analysis.figures_wellbeing import pain_day_figures, pain_days
from app.analysis.pain import CAUTION_TO, SAFE_TO, Morning, PainDay
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Ink, Mark, Panel, Series, Zone
from app.views.review import words
from app.views.review.athlete.charted import Charted, Later, spoken
from app.views.review.athlete.side_chart import weeks_from
from app.views.translation import message, tr

HEADING = message("Pain by day")
IN_SIGHT = 8
"""So many weeks are in sight at first."""
NOTHING = message("Nobody was asked about pain in this time.")
TEN = ((0.0, "0"), (2.0, "2"), (5.0, "5"), (10.0, "10"))
RULED = {
    Morning.SETTLED: message("settled by the next morning"),
    Morning.NOT_SETTLED: message("not settled by the next morning"),
    Morning.NOT_ANSWERED: message("next morning not answered"),
}
NOT_TOLD = message("next morning not known")
SHORT = {
    Morning.SETTLED: message("settled"),
    Morning.NOT_SETTLED: message("not settled"),
    Morning.NOT_ANSWERED: message("not answered"),
    Morning.UNKNOWN: message("not known"),
}
NO_SESSION = message("no session")


def pain_chart(record: AthleteRecord) -> Charted:
    """A diamond before training, a circle in the session, a triangle on the morning after; gaps unknown."""
    days = pain_days(record)
    names = tuple(words.dated(each.day) for each in days)
    before = _series(tr("Before"), [each.before for each in days], Ink.PLAIN, Mark.DIAMOND)
    during = _series(tr("In the session"), [each.during for each in days], Ink.ACCENT, Mark.CIRCLE)
    after = _series(tr("Next morning"), [each.next_morning for each in days], Ink.NOTICE, Mark.TRIANGLE)
    ruled = tuple(map(rule_words, days))
    unknown = tuple(place for place, each in enumerate(days) if each.trained and each.during is None)
    data = ChartData(
        tr("Chart: pain by day"),
        tr("date"),
        tuple(words.day(each.day) for each in days),
        spoken(names, list(map(_line, days)), ruled),
        (Panel((before, _dashed(during, unknown), after), TEN, zones=_zones()),),
        at=weeks_from(each.day for each in days),
        window=IN_SIGHT,
        first_column=tr("Day"),
        names=names,
        empty=tr(NOTHING),
        aside=tr(
            "0 to 10 · diamonds: before training, circles: in the session, triangles: the morning after"
        ),
        beside=((tr("Settled"), tuple(_short(each) for each in days)),),
    )
    return Charted(tr(HEADING), data, Later(len(days), lambda place: pain_day_figures(days[place])))


def rule_words(day: PainDay) -> str:
    """The rule of the next morning for a day, in words."""
    if day.morning is None:
        return tr(NO_SESSION)
    return tr(RULED.get(day.morning, NOT_TOLD))


def _short(day: PainDay) -> str:
    return tr(NO_SESSION if day.morning is None else SHORT[day.morning])


def _zones() -> tuple[Zone, ...]:
    return (
        Zone(0.0, SAFE_TO + 0.5, tr("0–2 low")),
        Zone(SAFE_TO + 0.5, CAUTION_TO + 0.5, tr("3–5 take care"), Ink.NOTICE),
        Zone(CAUTION_TO + 0.5, 10.0, tr("6–10 too high"), Ink.ATTENTION),
    )


def _series(title: str, values: Sequence[int | None], ink: Ink, mark: Mark) -> Series:
    numbers = tuple(None if value is None else float(value) for value in values)
    return Series(title, numbers, tuple(map(words.pain, values)), ink=ink, mark=mark)


def _dashed(series: Series, unknown: tuple[int, ...]) -> Series:
    return Series(series.name, series.values, series.words, ink=series.ink, mark=series.mark, unknown=unknown)


def _line(day: PainDay) -> str:
    told = (
        (tr("before {pain}"), day.before),
        (tr("in the session {pain}"), day.during),
        (tr("next morning {pain}"), day.next_morning),
    )
    return words.DOT.join(form.format(pain=words.pain(value)) for form, value in told if value is not None)
