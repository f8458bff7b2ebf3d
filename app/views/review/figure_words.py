"""A figure in words: its value with its unit, its bounds, what it is of, and why it is what it is."""

from datetime import date, timedelta

from PySide6.QtCore import QDate, QLocale

from app.analysis.figure import Figure, Input
from app.analysis.figures_adherence import REPS, SESSIONS, STUCK, TEMPO
from app.analysis.figures_changes import CHANGE_NAMES
from app.analysis.figures_progression import OF_SIDE, YES_OR_NO
from app.analysis.figures_wellbeing import BEFORE, HIGHEST, MORNING, OF_DAY, PAIN, SETTLED
from app.analysis.reason_figures import PAINFUL_RULES
from app.views.review import words
from app.views.review.figure_names import name_words, part_words, unit_words
from app.views.translation import pointed, tr

SHARES = frozenset(rule.name for rule in (SESSIONS, REPS, TEMPO, STUCK))
"""Figures that are shares from 0 to 1, shown in percent."""
RATED = frozenset({"0-10", "4-28"})
PAINFUL = frozenset(rule.name for rule in (PAIN, MORNING, HIGHEST, BEFORE, OF_DAY, SETTLED)) | PAINFUL_RULES
"""Figures that tell of pain, which presentation hides."""
WHOLE_UNITS = frozenset({"AU", "contacts", "reps", "AU a day"})


def value_words(figure: Figure) -> str:
    """The value with its unit; a dash where it is unknown."""
    if figure.value is None:
        return words.DASH
    if figure.name in SHARES:
        return words.percent(figure.value)
    if figure.name == SETTLED.name:
        return tr("settled") if figure.value else tr("not settled")
    if figure.unit == YES_OR_NO:
        return tr("yes") if figure.value else tr("not yet")
    if figure.unit in RATED:
        told = tr("{value} of 10") if figure.unit == "0-10" else tr("{value} (4 to 28)")
        return told.format(value=words.whole(figure.value))
    number = words.whole(figure.value) if figure.unit in WHOLE_UNITS else number_words(figure.value)
    return words.THIN.join(filter(None, (number, unit_words(figure.unit))))


def bounds_words(figure: Figure) -> str:
    """The 95 % interval: `88 to 97 %`; empty where there is none."""
    if figure.low is None or figure.high is None:
        return ""
    if figure.name in SHARES:
        low = words.percent(figure.low).rstrip("%").rstrip()
        return tr("{low} to {high}").format(low=low, high=words.percent(figure.high))
    return tr("{low} to {high}").format(low=number_words(figure.low), high=number_words(figure.high))


def with_bounds(figure: Figure) -> str:
    """`94 % (88 to 97 %)`, or the value alone."""
    bounds = bounds_words(figure)
    told = value_words(figure)
    return f"{told} ({bounds})" if bounds else told


def number_words(value: float) -> str:
    """A number with as many decimals as say something: 12, 3.4, 0.07, thousands set apart."""
    size = abs(value)
    places = 0 if size >= 100 or value == round(value) else 1 if size >= 10 else 2
    return pointed(f"{value:,.{places}f}".replace(",", words.THIN))


def of_words(figure: Figure) -> str:
    """What a figure is of: a week, a day, a side, a stage; empty for the whole time."""
    first, _, rest = figure.of.partition(" ")
    day = _day(first)
    if day is None:
        return _month(figure.of) or _part(figure.of) or figure.of
    if figure.name in WEEK_FIGURES and not rest:
        span = words.span(day, day + timedelta(days=6))
        return tr("Week {n}, {span}").format(n=day.isocalendar().week, span=span)
    return weekday_words(day)


def _part(of: str) -> str:
    """The stage, exercise or side that a figure is of, or an exercise and a side."""
    name, sided, side = of.partition(": ")[2].rpartition(OF_SIDE)
    return tr("{exercise}, {side}").format(exercise=name, side=tr(side)) if sided else part_words(of)


def short_of_words(figure: Figure) -> str:
    """What a figure is of, where there is little room: `Week 47`, `Mon 23 Nov`."""
    day = _day(figure.of.partition(" ")[0])
    if day is None:
        return of_words(figure)
    if figure.name in WEEK_FIGURES:
        return tr("Week {n}").format(n=day.isocalendar().week)
    return _written(day, tr("ddd d MMM"))


def input_words(given: Input) -> tuple[str, str]:
    """A number that went in: its label and its value in words, a dash where it is unknown."""
    label, value = given
    day = _day(label)
    name = tr(label) if day is None else weekday_words(day)
    if value is None:
        return name, words.DASH
    return name, _said(value) if isinstance(value, str) else number_words(float(value))


def _said(value: str) -> str:
    day = _day(value)
    return tr(value.replace("_", " ")) if day is None else weekday_words(day)


def title_words(figure: Figure) -> str:
    """The name, and what it is of."""
    return words.DOT.join(filter(None, (name_words(figure.name), of_words(figure))))


def as_text(figure: Figure) -> str:
    """All of a figure, a line each, as it can be copied."""
    lines = [f"{title_words(figure)}: {with_bounds(figure)}"]
    lines += [tr(figure.reason)] if figure.reason else []
    lines += [tr(figure.formula)]
    lines += [f"{name}: {value}" for name, value in map(input_words, figure.inputs)]
    about = filter(None, (figure.source, figure.caution))
    return "\n".join([*lines, *map(tr, about), *map(tr, figure.unknown)])


def weekday_words(day: date) -> str:
    """A day with the day of the week: `Sat 21 Nov 2026`."""
    return _written(day, tr("ddd d MMM yyyy"))


def weekday_names() -> tuple[str, ...]:
    """The days of the week in short, Monday first."""
    locale = QLocale()
    return tuple(locale.standaloneDayName(day, QLocale.FormatType.ShortFormat) for day in range(1, 8))


def month_words(day: date) -> str:
    """The month of a day: `Nov 2026`."""
    return _written(day, tr("MMM yyyy"))


def short_month_words(day: date) -> str:
    """The month of a day where there is little room: `Nov ’26`."""
    return _written(day, tr("MMM ’yy"))


def _written(day: date, form: str) -> str:
    return QLocale().toString(QDate(day.year, day.month, day.day), form)


def _month(text: str) -> str:
    """`Nov 2026` out of `2026-11`, nothing out of anything else."""
    day = _day(f"{text}-01") if len(text) == len("2026-11") else None
    return month_words(day) if day is not None else ""


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


WEEK_FIGURES = (
    SHARES
    | CHANGE_NAMES
    | {
        "Load of the week",
        "Monotony",
        "Strain",
        "Contacts",
        "Time under tension, nominal",
        "Volume load",
    }
)
"""Figures whose day is the Monday of their week."""
