"""Signs of progression in words: the cells of an exercise, and the change of a week in a line."""

from collections.abc import Callable, Sequence
from datetime import date, timedelta

from app.analysis.figure import Figure
from app.analysis.figures_changes import ABOVE_A_TENTH, THIS_WEEK, WEEK_BEFORE
from app.analysis.figures_progression import ExerciseSigns, asked_words, reps_words
from app.analysis.progression import Reached
from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.views.review import words
from app.views.review.figure_words import WHOLE_UNITS, number_words, value_words
from app.views.translation import message, pointed, tr
from app.views.widgets.rows_model import Column, Tone

NO_WEEKS = message("There are no two weeks after one another in this time.")
SIDES = {Side.LEFT: message("left"), Side.RIGHT: message("right"), Side.BOTH: message("both")}
REACHED = {
    Reached.TOP: message("yes"),
    Reached.WITHIN: message("not yet"),
    Reached.BELOW: message("below it"),
}
PLAIN = message("{what}: {this} after {before} {unit}, {change}")
SHARED = message("{what}: {this} after {before} {unit}, {change} ({percent})")
BEYOND = message("{what}: {this} after {before} {unit}, {change} ({percent}), above 10 %")
UNKNOWN = message("{what}: unknown")
UNITS = {"AU": message("AU"), "contacts": message("contacts"), "kg": message("kg")}
Changes = Sequence[tuple[Figure, Figure]]


def sign_columns() -> tuple[Column[ExerciseSigns], ...]:
    """What each exercise and side shows: what was done last, and the signs in words."""
    return (*_done(), *_read())


def change_words(what: str, change: Figure, percent: Figure) -> str:
    """`Load: 1 200 after 1 000 AU, +200 (+20 %), above 10 %`, or that it is unknown."""
    if change.value is None:
        return tr(UNKNOWN).format(what=what)
    given = dict(percent.inputs)
    form = PLAIN if percent.value is None else BEYOND if given[ABOVE_A_TENTH] == "yes" else SHARED
    say = words.whole if change.unit in WHOLE_UNITS else number_words
    return tr(form).format(
        what=what,
        this=_said(given[THIS_WEEK], say),
        before=_said(given[WEEK_BEFORE], say),
        unit=tr(UNITS[change.unit]),
        change=_signed(change.value, say),
        percent="" if percent.value is None else f"{_signed(percent.value, _tenth)}{words.THIN}%",
    )


def _done() -> tuple[Column[ExerciseSigns], ...]:
    return (
        Column(
            tr("Exercise"),
            lambda row: row.last.exercise,
            lambda row: row.last.exercise.casefold(),
            wide=True,
            hint=tr("A click or Return says why"),
        ),
        Column(tr("Side"), lambda row: tr(SIDES[row.last.side]), lambda row: row.last.side.value),
        Column(tr("Last done"), lambda row: words.day(row.last.day), lambda row: row.last.day, right=True),
        Column(
            tr("Load, kg"),
            lambda row: _number(row.load.value),
            lambda row: row.load.value,
            right=True,
            spoken=lambda row: tr("unknown") if row.load.value is None else value_words(row.load),
            hint=tr("Of the last set: as said after it, else as planned"),
        ),
        Column(
            tr("Reps of those asked for"),
            _reps,
            lambda row: row.reps.value,
            right=True,
            hint=tr("Each set of the last session, and the reps that were asked for"),
        ),
    )


def _read() -> tuple[Column[ExerciseSigns], ...]:
    return (
        Column(
            tr("Two for two"),
            lambda row: value_words(row.two_for_two),
            lambda row: row.two_for_two.value,
            tone=lambda row: _tone(row.two_for_two),
            spoken=lambda row: _spoken(row.two_for_two, value_words(row.two_for_two)),
            hint=tr("Two reps above the most asked for, in the last set of two sessions running"),
        ),
        Column(
            tr("Top of the range"),
            _reached,
            lambda row: row.double.value,
            tone=lambda row: _tone(row.double),
            spoken=lambda row: _spoken(row.double, _reached(row)),
            hint=tr("Every set of the last session at the most reps asked for, or above"),
        ),
        Column(
            tr("2 to 10 %, kg"),
            _step,
            lambda row: row.steps[0].value,
            right=True,
            tone=lambda _row: Tone.QUIET,
            spoken=lambda row: _spoken(row.steps[0], _step(row)),
            hint=tr("The customary step of a load, once 1 or 2 reps above the target can be done"),
        ),
    )


def _reps(row: ExerciseSigns) -> str:
    if row.last.dose is DoseKind.WORK:
        return words.DASH
    return tr("{done} of {asked}").format(done=reps_words(row.last), asked=asked_words(row.last))


def _reached(row: ExerciseSigns) -> str:
    return words.DASH if row.reached is None else tr(REACHED[row.reached])


def _step(row: ExerciseSigns) -> str:
    least, most = (step.value for step in row.steps)
    if least is None or most is None:
        return words.DASH
    return tr("{low} to {high}").format(low=_kilograms(least), high=_kilograms(most))


def _tone(figure: Figure) -> Tone:
    return Tone.INK if figure.value else Tone.QUIET


def _spoken(figure: Figure, told: str) -> str:
    return tr("unknown") if figure.value is None else told


def _number(value: float | None) -> str:
    return words.DASH if value is None else _kilograms(value)


def _said(value: float | str | None, say: Callable[[float], str]) -> str:
    return say(value) if isinstance(value, int | float) else words.DASH


def _signed(value: float, say: Callable[[float], str]) -> str:
    told = say(abs(value))
    return told if not value else f"+{told}" if value > 0 else f"\N{MINUS SIGN}{told}"


def _tenth(value: float) -> str:
    """A percent, with one decimal below 100."""
    return _shortened(value, 1) if value < 100 else words.whole(value)


def _kilograms(value: float) -> str:
    """A load with the decimals that it has, at most two: 4.5, 42.5, 0.09."""
    return _shortened(value, 2)


def _shortened(value: float, places: int) -> str:
    return pointed(f"{value:.{places}f}".rstrip("0").rstrip("."))


def named(signs: ExerciseSigns) -> str:
    """The exercise and its side in words."""
    last = signs.last
    if last.side is Side.BOTH:
        return last.exercise
    return tr("{exercise}, {side}").format(exercise=last.exercise, side=tr(SIDES[last.side]))


def week_words(changes: Changes) -> str:
    """Which week the changes are of, or that there is none."""
    if not changes:
        return tr(NO_WEEKS)
    monday = date.fromisoformat(changes[0][0].of)
    told = words.span(monday, monday + timedelta(days=6))
    return tr("Week {n}, {span}, after the week before:").format(n=monday.isocalendar().week, span=told)
