"""Adherence as three charts, never one number: of reps, of tempo, of sessions, by week or month."""

from collections.abc import Sequence
from dataclasses import dataclass

from app.analysis.adherence_parts import Kept, ended, kept, sessions_kept
from app.analysis.figure import Figure
from app.analysis.figures_adherence import kept_figures, sessions_figure
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Panel, Series
from app.views.review import words
from app.views.review.athlete.buckets import gathered
from app.views.review.athlete.charted import OFF, SHARE_TICKS, Charted, Times, spoken
from app.views.review.figure_words import with_bounds
from app.views.translation import message, tr

ASIDE = message("% with 95 % interval")
NO_REPS = message("No session with reps that are known ended in this time.")
NO_TEMPO_YET = message("In this time no rep was led to a tempo that can be judged.")
NO_DUE = message(
    "No session was planned for a day of this time. Plan sessions, and what was missed can be counted."
)


@dataclass(frozen=True, slots=True)
class Apart:
    """What is counted beside a share and is not in it: its title, how many by place, the sum in words."""

    title: str
    counts: Sequence[int]
    told: str


def reps_chart(record: AthleteRecord, times: Times) -> Charted:
    """Reps done of those prescribed."""
    weeks = _kept(record, times)
    figures = [reps for reps, _ in _figures(record, weeks, times)]
    counted = [words.of(week.met, week.prescribed) if week.prescribed else "" for week in weeks]
    more = tr("reps beyond: {n}")
    beyond = [more.format(n=words.whole(week.extra)) if week.extra else "" for week in weeks]
    total = sum(week.extra for week in weeks)
    apart = Apart(tr("Reps beyond"), [week.extra for week in weeks], more.format(n=words.whole(total)))
    return _charted(tr("Reps done of prescribed"), times, figures, (counted, beyond), NO_REPS, apart)


def tempo_chart(record: AthleteRecord, times: Times) -> Charted:
    """Reps that kept their tempo of those whose tempo can be judged."""
    weeks = _kept(record, times)
    figures = [tempo for _, tempo in _figures(record, weeks, times)]
    counted = [words.of(week.tempo_kept, week.tempo_known) if week.tempo_known else "" for week in weeks]
    return _charted(tr("Tempo kept"), times, figures, (counted,), NO_TEMPO_YET)


def sessions_chart(record: AthleteRecord, times: Times) -> Charted:
    """Sessions done of those that were due."""
    due = gathered(record.due, (each.occurrence.day for each in record.due), times.buckets)
    weeks = [sessions_kept(each) for each in due]
    figures = [sessions_figure(week, bucket.of) for week, bucket in zip(weeks, times.buckets, strict=True)]
    counted = [words.of(week.done, week.due) if week.due else "" for week in weeks]
    left_out = tr("excused: {n}")
    excused = [left_out.format(n=week.excused) if week.excused else "" for week in weeks]
    total = sum(week.excused for week in weeks)
    apart = Apart(tr("Excused"), [week.excused for week in weeks], left_out.format(n=total))
    return _charted(tr("Sessions done of due"), times, figures, (counted, excused), NO_DUE, apart)


def _figures(record: AthleteRecord, weeks: Sequence[Kept], times: Times) -> list[tuple[Figure, Figure]]:
    """Reps and tempo of each week or month."""
    pairs = zip(weeks, times.buckets, strict=True)
    return [kept_figures(week, record.tolerance, bucket.of) for week, bucket in pairs]


def _kept(record: AthleteRecord, times: Times) -> list[Kept]:
    sessions = ended(record.sessions)
    parts = gathered(sessions, (session.day for session in sessions), times.buckets)
    return [kept(session.totals for session in each if session.totals is not None) for each in parts]


def _charted(
    heading: str,
    times: Times,
    figures: Sequence[Figure],
    beside: Sequence[Sequence[str]],
    empty: str,
    apart: Apart | None = None,
) -> Charted:
    series = Series(
        heading,
        tuple(each.value for each in figures),
        tuple(map(with_bounds, figures)),
        low=tuple(each.low for each in figures),
        high=tuple(each.high for each in figures),
    )
    data = ChartData(
        tr("Chart: {heading}").format(heading=heading),
        times.unit,
        times.labels,
        spoken(times.names, series.words, *beside),
        (Panel((series,), SHARE_TICKS),),
        window=times.window,
        gap=tr(OFF),
        gaps_up_to=sum(bucket.last < times.today for bucket in times.buckets),
        names=times.names,
        empty=tr(empty),
        aside=words.DOT.join((tr(ASIDE), apart.told)) if apart and any(apart.counts) else tr(ASIDE),
        beside=() if apart is None else ((apart.title, tuple(map(words.whole, apart.counts))),),
    )
    return Charted(heading, data, tuple((each,) for each in figures))
