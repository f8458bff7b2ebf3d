"""Reps, tempo and landings by stage, exercise or side: three shares with intervals, never one number."""

from collections.abc import Callable, Hashable, Iterable, Sequence
from enum import Enum

from app.analysis.adherence_parts import ended, kept
from app.analysis.balance import CountShare, landings_stuck
from app.analysis.figure import Figure
from app.analysis.figures_adherence import kept_figures, stuck_figure
from app.domain.reviewed import AthleteRecord, PartTotals
from app.domain.tolerance import Tolerance
from app.views.charts.chart import LEAST_PLACES
from app.views.charts.data import ChartData, Mark, Panel, Series
from app.views.review import words
from app.views.review.athlete.charted import SHARE_TICKS, Charted, spoken
from app.views.review.athlete.kept_charts import NO_REPS
from app.views.review.figure_words import with_bounds
from app.views.translation import message, tr

HEADING = message("Reps and tempo")
ASIDE = message("% with 95 % interval · circles: reps, diamonds: tempo, triangles: landings stuck")
MARKS = (Mark.CIRCLE, Mark.DIAMOND, Mark.TRIANGLE)
BESIDE = 0.15
"""So much of the way from one group to the next the marks of a group stand from each other."""
LEAST_LETTERS, ALL_LETTERS = 6, 56
"""A label has at least so many letters, all of them together not many more."""


class Part(Enum):
    """By what the work is told apart, with its words."""

    STAGE = message("by stage")
    EXERCISE = message("by exercise")
    SIDE = message("by side")


_KEYS: dict[Part, tuple[str, Callable[[PartTotals], Hashable]]] = {
    Part.STAGE: ("stage", lambda part: part.stage),
    Part.EXERCISE: ("exercise", lambda part: part.exercise),
    Part.SIDE: ("side", lambda part: part.side),
}
HEADINGS = {
    Part.STAGE: message("Stage"),
    Part.EXERCISE: message("Exercise"),
    Part.SIDE: message("Side"),
}


def part_chart(record: AthleteRecord, by: Part) -> Charted:
    """Reps met of those prescribed, tempo kept, landings stuck: three marks beside each other a group."""
    groups = _groups(record, by)
    called, _ = _KEYS[by]
    names = tuple(tr(name) if by is Part.SIDE else name for name in groups)
    figures = [_figures(f"{called}: {name}", parts, record.tolerance) for name, parts in groups.items()]
    columns = [[each[place] for each in figures] for place in range(3)]
    titles = (tr("Reps done"), tr("Tempo kept"), tr("Landings stuck"))
    at = _spread(len(names))
    apart = BESIDE * (at[1] - at[0] if len(at) > 1 else float(LEAST_PLACES))
    series = tuple(
        _series(title, column, mark, shift * apart)
        for title, column, mark, shift in zip(titles, columns, MARKS, (-1, 0, 1), strict=True)
    )
    extra = tuple(words.whole(kept(part.totals for part in parts).extra) for parts in groups.values())
    data = ChartData(
        tr("Chart: reps and tempo by stage, exercise and side"),
        "",
        tuple(_short(name, len(names)) for name in names),
        spoken(
            names,
            *(
                [_told(title, figure) for figure in column]
                for title, column in zip(titles, columns, strict=True)
            ),
        ),
        (Panel(series, SHARE_TICKS),),
        at=at,
        window=max(len(names), LEAST_PLACES),
        first_column=tr(HEADINGS[by]),
        names=names,
        empty=tr(NO_REPS),
        aside=tr(ASIDE),
        beside=((tr("Reps beyond"), extra),),
    )
    return Charted(tr(HEADING), data, tuple(figures))


def _groups(record: AthleteRecord, by: Part) -> dict[str, list[PartTotals]]:
    """The parts of the sessions that ended, by group, in the order in which groups first came."""
    found: dict[str, list[PartTotals]] = {}
    _, key = _KEYS[by]
    for session in ended(record.sessions_within):
        for part in session.parts:
            found.setdefault(str(key(part)), []).append(part)
    return found


def _figures(of: str, parts: Sequence[PartTotals], tolerance: Tolerance) -> tuple[Figure, Figure, Figure]:
    reps, tempo = kept_figures(kept(part.totals for part in parts), tolerance, of)
    return reps, tempo, stuck_figure(_together(landings_stuck(parts).values()), of)


def _together(counts: Iterable[CountShare]) -> CountShare:
    every = tuple(counts)
    return CountShare(sum(each.good for each in every), sum(each.n for each in every))


def _series(title: str, figures: Iterable[Figure], mark: Mark, shift: float) -> Series:
    column = tuple(figures)
    return Series(
        title,
        tuple(each.value for each in column),
        tuple(map(with_bounds, column)),
        mark=mark,
        low=tuple(each.low for each in column),
        high=tuple(each.high for each in column),
        shift=shift,
    )


def _told(title: str, figure: Figure) -> str:
    return "" if figure.value is None else f"{title} {with_bounds(figure)}"


def _short(name: str, count: int) -> str:
    letters = max(ALL_LETTERS // max(count, 1), LEAST_LETTERS)
    return name if len(name) <= letters else f"{name[: letters - 1].rstrip()}…"


def _spread(count: int) -> tuple[float, ...]:
    """Positions of few groups over the whole width; of many one after the other."""
    apart = max(LEAST_PLACES / max(count, 1), 1.0)
    return tuple(apart * (place + 0.5) - 0.5 for place in range(count))
