"""The signs of progression in a report: a short table, the change of the last week, and no advice."""

from app.analysis.figure import Figure
from app.analysis.figures_changes import THIS_WEEK, WEEK_BEFORE, last_changes
from app.analysis.figures_progression import (
    DOUBLE,
    TWO_FOR_TWO,
    ExerciseSigns,
    asked_words,
    exercise_signs,
    reps_words,
)
from app.analysis.progression import Reached
from app.domain.plan import Side
from app.reports.report_found import Found
from app.reports.report_parts import Block, Heading, Lines, Table
from app.reports.report_words import DASH, THIN, Words

MOST_SIGNS = 6
REACHED = {Reached.TOP: "yes", Reached.WITHIN: "not yet", Reached.BELOW: "below it"}
EXPLAINED = (TWO_FOR_TWO, DOUBLE)
"""What is explained of them at the end of a report that has them."""
NO_ROOM = "The signs to weigh found no room here; they are among the figures."
CAUTION = "The practitioner decides, pain and technique first: these are signs and no advice."


def signs(found: Found, say: Words) -> tuple[Block, ...]:
    """Of each exercise and side the last sets and what is read from them; nothing where none was done.

    Those of which something can be read come first.
    """
    every = sorted(exercise_signs(found.record), key=_unread)
    if not every:
        return ()
    head = ("Exercise", "Day", "Load, kg", "Reps", "Asked for", "Two for two", "Top of the range")
    rows = tuple(_row(each, say) for each in every[:MOST_SIGNS])
    more = len(every) - MOST_SIGNS
    one, many = "{n} more row is among the figures.", "{n} more rows are among the figures."
    lines = (say.counted(more, one, many),) if more > 0 else ()
    table = Table(tuple(map(say, head)), rows)
    return Heading(say("Signs to weigh")), table, Lines((*_changes(found, say), say(CAUTION), *lines))


def _unread(each: ExerciseSigns) -> bool:
    return each.two_for_two.value is None and each.double.value is None


def _row(each: ExerciseSigns, say: Words) -> tuple[str, ...]:
    last, two = each.last, each.two_for_two.value
    named = last.exercise
    if last.side is not Side.BOTH:
        named = say("{exercise}, {side}", exercise=last.exercise, side=say(last.side.value))
    return (
        named,
        say.short_day(last.day),
        _kilograms(each.load.value, say),
        reps_words(last),
        asked_words(last),
        DASH if two is None else say("yes") if two else say("not yet"),
        DASH if each.reached is None else say(REACHED[each.reached]),
    )


def _kilograms(load: float | None, say: Words) -> str:
    """A load with the decimals that it has."""
    if load is None:
        return DASH
    return f"{load:.6g}".replace(".", "," if say.language == "de" else ".")


def _changes(found: Found, say: Words) -> tuple[str, ...]:
    """Each change that is known, with both weeks beside its percent."""
    return tuple(
        _change(what, change, percent, say)
        for what, (change, percent) in zip(
            ("Load", "Contacts", "Volume"), last_changes(found.record), strict=False
        )
        if change.value is not None
    )


def _change(what: str, change: Figure, percent: Figure, say: Words) -> str:
    given = dict(change.inputs)
    share = DASH if percent.value is None else f"{percent.value:+.0f}{THIN}%"
    return say(
        "{what} in the last whole week: {this} after {before} {unit} ({percent}).",
        what=say(what),
        this=_whole(given[THIS_WEEK], say),
        before=_whole(given[WEEK_BEFORE], say),
        unit=say(change.unit),
        percent=share,
    )


def _whole(value: float | str | None, say: Words) -> str:
    return say.whole(value) if isinstance(value, int | float) else DASH
