"""Left against right in one exercise: what each side did, session by session, both raw."""

from collections.abc import Callable, Iterable
from datetime import date

from app.analysis.figure import Figure, Rule
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord, PartTotals
from app.views.charts.data import ChartData, Form, Ink, Mark, Panel, Series
from app.views.charts.scales import round_ticks
from app.views.review import words
from app.views.review.athlete.charted import Charted, Later, decimals, each_tick, spoken
from app.views.review.figure_words import weekday_words
from app.views.translation import message, tr

WEEK_DAYS = 7.0
NO_SIDES = message("No exercise was done on one side at a time in this time.")
NOT_KNOWN = message("Nothing is known of this side on that day.")
FORMULA = message("what this side did on that day, added up; divided by nothing")
IN_SIGHT = 60
SIDES = {
    "left": Rule(message("Left side"), "1", FORMULA, "Common practice, no source."),
    "right": Rule(message("Right side"), "1", FORMULA, "Common practice, no source."),
}
Measure = Callable[[PartTotals], float | None]


def sided_exercises(record: AthleteRecord) -> tuple[str, ...]:
    """The exercises that were done on the left and on the right, those done most often first."""
    sides: dict[str, set[Side]] = {}
    times: dict[str, int] = {}
    for part in _parts(record):
        sides.setdefault(part.exercise, set()).add(part.side)
        times[part.exercise] = times.get(part.exercise, 0) + 1
    both = [name for name, found in sides.items() if {Side.LEFT, Side.RIGHT} <= found]
    return tuple(sorted(both, key=lambda name: (-times[name], name.casefold())))


def side_chart(record: AthleteRecord, exercise: str | None) -> Charted:
    """Clean reps by session of each side; seconds under tension where reps were led to a time."""
    measure, unit, what = _measure(record, exercise)
    days: dict[date, dict[Side, float]] = {}
    for session in record.sessions:
        for part in session.parts:
            value = measure(part)
            if part.exercise == exercise and part.side is not Side.BOTH and value is not None:
                sides = days.setdefault(session.day, {})
                sides[part.side] = sides.get(part.side, 0.0) + value
    return _charted(days, exercise or "", unit, what)


def _charted(days: dict[date, dict[Side, float]], exercise: str, unit: str, what: str) -> Charted:
    ordered = sorted(days)
    values = {side: tuple(days[day].get(side) for day in ordered) for side in (Side.LEFT, Side.RIGHT)}
    told = {side: tuple(decimals(value, 0, unit) for value in each) for side, each in values.items()}
    left = Series(
        tr("left"), values[Side.LEFT], told[Side.LEFT], Form.LINE, Ink.LEFT, Mark.SQUARE, ended=True
    )
    right = Series(
        tr("right"), values[Side.RIGHT], told[Side.RIGHT], Form.LINE, Ink.RIGHT, Mark.CIRCLE, ended=True
    )
    top = max((value for each in values.values() for value in each if value is not None), default=1.0)
    names = [weekday_words(day) for day in ordered]
    data = ChartData(
        tr("Chart: left against right"),
        tr("date"),
        tuple(map(words.day, ordered)),
        spoken(
            names,
            [tr("left {value}").format(value=each) for each in left.words],
            [tr("right {value}").format(value=each) for each in right.words],
        ),
        (Panel((left, right), each_tick(round_ticks(top), unit)),),
        at=weeks_from(ordered),
        window=IN_SIGHT,
        names=tuple(names),
        empty=tr(NO_SIDES),
        aside=words.DOT.join(filter(None, (exercise, what))),
    )

    def why(place: int) -> tuple[Figure, ...]:
        day = ordered[place]
        return (
            _figure(left.values[place], "left", day, what),
            _figure(right.values[place], "right", day, what),
        )

    return Charted(tr("Left against right"), data, Later(len(ordered), why))


def weeks_from(days: Iterable[date]) -> tuple[float, ...]:
    """Positions of days, rising, in weeks after the first."""
    ordered = tuple(days)
    return tuple((day - ordered[0]).days / WEEK_DAYS for day in ordered)


def _measure(record: AthleteRecord, exercise: str | None) -> tuple[Measure, str, str]:
    own = [part for part in _parts(record) if part.exercise == exercise]
    if own and all(part.landings for part in own):
        return _clean, "", tr("landings stuck in a session")
    if own and all(part.totals.tut_ms is not None for part in own):
        return _seconds, "s", tr("nominal seconds under tension in a session")
    return _done, "", tr("reps done in a session")


def _clean(part: PartTotals) -> float | None:
    return None if part.totals.clean is None else float(part.totals.clean)


def _seconds(part: PartTotals) -> float | None:
    return None if part.totals.tut_ms is None else part.totals.tut_ms / 1_000


def _done(part: PartTotals) -> float | None:
    return float(part.totals.done)


def _parts(record: AthleteRecord) -> list[PartTotals]:
    return [part for session in record.sessions for part in session.parts if part.side is not Side.BOTH]


def _figure(value: float | None, side: str, day: date, what: str) -> Figure:
    return SIDES[side].figure(
        value, int(value is not None), NOT_KNOWN, (("measure", what),), (), day.isoformat()
    )
