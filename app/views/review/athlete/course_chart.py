"""Load lately and load usually: two lines in their own unit, shown when asked for, never divided."""

from app.analysis.figures_load import course_figures
from app.analysis.load_course import load_course
from app.analysis.load_weeks import loads_by_day
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Form, Ink, Mark, Panel, Series
from app.views.charts.scales import round_ticks
from app.views.review.athlete.buckets import Step, buckets
from app.views.review.athlete.charted import Charted, each_tick, spoken
from app.views.review.figure_words import value_words
from app.views.translation import message, tr

AU = "AU"
LEAST_TOP = 50.0
DAYS_IN_SIGHT = 84
NO_COURSE = message("28 days in a row have to be known before there is a course.")


def course_chart(record: AthleteRecord) -> Charted:
    """Both means of each day that rests on 28 known days in a row; before, and where one is unknown, gaps.

    Why they are what they are tells the plain means of 7 and 28 days beside them.
    """
    into = buckets(record.first, record.last, Step.DAY)
    points = load_course(loads_by_day(record))
    figures = [course_figures(point) for point in points]
    drawn = [pair[:2] for pair in figures]
    told = [tuple(map(value_words, line)) for line in zip(*drawn, strict=True)] or [(), ()]
    values = [tuple(each.value for each in line) for line in zip(*drawn, strict=True)] or [(), ()]
    lately = Series(tr("lately"), values[0], told[0], Form.LINE, Ink.ACCENT, Mark.CIRCLE, ended=True)
    usually = Series(tr("usually"), values[1], told[1], Form.LINE, Ink.PLAIN, Mark.DIAMOND, ended=True)
    known = [value for line in values for value in line if value is not None]
    ticks = each_tick(round_ticks(max([LEAST_TOP, *known])), AU)
    names = tuple(bucket.name for bucket in into)
    data = ChartData(
        tr("Chart: load lately and usually"),
        tr("day"),
        tuple(bucket.label for bucket in into),
        spoken(
            names,
            [tr("lately {value}").format(value=words) for words in told[0]],
            [tr("usually {value}").format(value=words) for words in told[1]],
        ),
        (Panel((lately, usually), ticks),),
        window=min(DAYS_IN_SIGHT, max(len(into), 1)),
        names=names,
        empty="" if known else tr(NO_COURSE),
        aside=tr("AU a day · means over 7 and 28 days, the latest weighing most"),
    )
    return Charted(tr("Load lately and usually"), data, tuple(figures))
