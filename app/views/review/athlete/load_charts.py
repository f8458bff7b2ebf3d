"""Session load by day and by week, and the monotony and strain of each week."""

import math
from collections.abc import Iterable, Sequence
from datetime import date

from app.analysis.figure import Figure, Rule
from app.analysis.figures_load import DAY, MONOTONY, STRAIN, WEEK, load_figures
from app.analysis.load_weeks import DayLoad, loads_by_day
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Form, Ink, Mark, Panel, Series
from app.views.charts.scales import round_ticks
from app.views.review import words
from app.views.review.athlete.buckets import Step, buckets, gathered
from app.views.review.athlete.charted import Charted, Found, Times, each_tick, found_in, spoken
from app.views.review.figure_words import value_words
from app.views.translation import message, tr

AU = "AU"
MONTH = Rule(message("Load of the month"), AU, message("sum of the days of the month"), DAY.source)
MONTH_INCOMPLETE = message("A day of this month is unknown.")
LEAST_TOP = 100.0
DAYS_IN_SIGHT = 56
NO_LOAD = message("No session in this time has both an effort and a length.")
NO_MONOTONY = message("No week of this time is known on every day, so that none has a monotony.")
PART = message("{known} AU known, {n} of {of} days are not")
ASIDE = message("RPE × minutes, in AU")
ASIDE_PART = message("RPE × minutes, in AU · grey: not every day is known")


def load_charts(
    record: AthleteRecord, times: Times, figures: Iterable[Figure] | None = None
) -> tuple[Charted, Charted, Charted]:
    """Load by week or month, load by day, monotony and strain by week.

    `figures` are those of `load_figures`, where they are at hand.
    """
    found = found_in(load_figures(record) if figures is None else figures)
    return week_chart(record, times, found), day_chart(record, found), monotony_chart(record, found)


def day_chart(record: AthleteRecord, found: Found) -> Charted:
    """Load of each day; rest days are nought, unknown days a gap, with a dash where there was a session."""
    days = loads_by_day(record)
    into = buckets(record.first, record.last, Step.DAY)
    figures = [found[DAY.name, each.day.isoformat()] for each in days]
    told = tuple(map(value_words, figures))
    dashes = tuple(place for place, each in enumerate(days) if each.load is None and each.sessions)
    series = Series(tr("Load"), tuple(each.load for each in days), told, Form.BARS, unknown=dashes)
    data = ChartData(
        tr("Chart: session load by day"),
        tr("day"),
        tuple(bucket.label for bucket in into),
        spoken([bucket.name for bucket in into], told, [_sessions(each) for each in days]),
        (_panel(series),),
        window=min(DAYS_IN_SIGHT, max(len(into), 1)),
        names=tuple(bucket.name for bucket in into),
        empty="" if any(each.sessions for each in days) else tr(NO_LOAD),
        aside=tr("RPE × minutes, in AU · nought on a rest day"),
    )
    return Charted(tr("Session load by day"), data, tuple((figure,) for figure in figures))


def week_chart(record: AthleteRecord, times: Times, found: Found) -> Charted:
    """Load of each week or month; where a day is unknown what is known of it stands in grey."""
    spans = gathered(*_with_days(loads_by_day(record)), times.buckets)
    figures = [_sum(bucket.of, span, times, found) for bucket, span in zip(times.buckets, spans, strict=True)]
    known = [[each.load for each in span if each.load is not None] for span in spans]
    parts = [
        math.fsum(loads) if figure.value is None and any(loads) else None
        for figure, loads in zip(figures, known, strict=True)
    ]
    notes = [
        tr(PART).format(known=words.whole(part), n=len(span) - len(loads), of=len(span))
        if part is not None
        else ""
        for part, span, loads in zip(parts, spans, known, strict=True)
    ]
    dashes = tuple(
        place
        for place, span in enumerate(spans)
        if figures[place].value is None and parts[place] is None and any(each.sessions for each in span)
    )
    told = tuple(map(value_words, figures))
    whole = Series(tr("Load"), tuple(each.value for each in figures), told, Form.BARS, unknown=dashes)
    some = Series(tr("Known part of it"), tuple(parts), tuple(map(words.whole, parts)), Form.BARS, Ink.QUIET)
    data = ChartData(
        tr("Chart: session load"),
        times.unit,
        times.labels,
        spoken(times.names, told, notes),
        (_panel(whole, some),),
        window=times.window,
        names=times.names,
        empty=tr(NO_LOAD),
        aside=tr(ASIDE_PART if any(part is not None for part in parts) else ASIDE),
    )
    return Charted(tr("Session load"), data, tuple((figure,) for figure in figures))


def monotony_chart(record: AthleteRecord, found: Found) -> Charted:
    """Monotony above, strain below, week by week; both are gaps where a day of the week is unknown."""
    into = buckets(record.first, record.last, Step.WEEK)
    alike = [found[MONOTONY.name, bucket.of] for bucket in into]
    strain = [found[STRAIN.name, bucket.of] for bucket in into]
    told = tuple(map(value_words, alike)), tuple(map(value_words, strain))
    upper = Series(
        tr("Monotony"), tuple(each.value for each in alike), told[0], Form.LINE, Ink.PLAIN, Mark.DIAMOND
    )
    lower = Series(tr("Strain"), tuple(each.value for each in strain), told[1], Form.BARS)
    names = tuple(bucket.name for bucket in into)
    lines = [
        [tr("monotony {value}").format(value=value) for value in told[0]],
        [tr("strain {value}").format(value=value) for value in told[1]],
        [tr(each.reason) if each.reason else "" for each in alike],
    ]
    ticks = each_tick(round_ticks(_top((upper,), 2.0), 2), "", lambda tick: f"{tick:g}")
    data = ChartData(
        tr("Chart: monotony and strain by week"),
        tr("week"),
        tuple(bucket.label for bucket in into),
        spoken(names, *lines),
        (Panel((upper,), ticks), _panel(lower)),
        window=max(len(into), 1),
        names=names,
        empty=tr(NO_MONOTONY),
        aside=tr("monotony above, without a unit · strain below, in AU"),
    )
    return Charted(tr("Monotony and strain, by week"), data, tuple(zip(alike, strain, strict=True)))


def _with_days(days: Sequence[DayLoad]) -> tuple[Sequence[DayLoad], list[date]]:
    return days, [each.day for each in days]


def _sum(of: str, span: Sequence[DayLoad], times: Times, found: Found) -> Figure:
    if times.step is Step.WEEK:
        return found[WEEK.name, of]
    loads = [each.load for each in span if each.load is not None]
    total = math.fsum(loads) if loads and len(loads) == len(span) else None
    return MONTH.figure(
        total,
        len(loads),
        MONTH_INCOMPLETE,
        ((message("days known"), len(loads)), ("days", len(span))),
        (),
        of,
    )


def _top(series: Sequence[Series], least: float) -> float:
    return max([least, *(value for each in series for value in each.values if value is not None)])


def _panel(*series: Series) -> Panel:
    return Panel(series, each_tick(round_ticks(_top(series, LEAST_TOP)), AU), share=2)


def _sessions(day: DayLoad) -> str:
    if day.sessions:
        return tr("sessions: {n}").format(n=day.sessions)
    return tr("rest day") if day.load is not None else tr("unknown")
