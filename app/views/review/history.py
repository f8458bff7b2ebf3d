"""The corrections of a run as rows of a table."""

from dataclasses import dataclass

from app.analysis.local_time import known_zone
from app.domain.corrections import Correction
from app.views.review import words
from app.views.review.correct_fields import value_words, what_words
from app.views.review.details import RunDetails
from app.views.widgets.rows_model import Column, Tone

HOLDS, REPLACED, DISAGREES = "holds", "replaced", "disagrees"


@dataclass(frozen=True, slots=True)
class HistoryLine:
    """One correction in words."""

    correction: Correction
    when: str
    what: str
    before: str
    after: str
    state: str


def lines_of(details: RunDetails) -> tuple[HistoryLine, ...]:
    """Every correction of a run, the latest first."""
    return tuple(_line(details, each) for each in reversed(details.history.corrections))


def conflict_words(details: RunDetails) -> str:
    """What disagrees and how to settle it, an empty text when nothing does."""
    found = []
    for conflict in details.history.conflicts:
        holds = conflict.holds
        zone, field = details.header.zone, holds.change.field
        others = ", ".join(
            f"{value_words(field, each.after, zone)} ({each.change.who})" for each in conflict.others
        )
        found.append(
            f"{what_words(holds, details.bouts)}: {value_words(field, holds.after, zone)} "
            f"({holds.change.who}) holds, and {others} was said elsewhere. Correct it once more to settle it."
        )
    return "\n".join(found)


def history_columns() -> tuple[Column[HistoryLine], ...]:
    """When, what, from what to what, who, why, and whether it holds."""
    return (
        Column("When", lambda line: line.when, lambda line: line.correction.change.at),
        Column("What", lambda line: line.what, lambda line: line.what.casefold(), wide=True),
        Column("Before", lambda line: line.before, lambda line: line.before),
        Column("After", lambda line: line.after, lambda line: line.after),
        Column("Who", lambda line: line.correction.change.who, lambda line: line.correction.change.who),
        Column(
            "Why", lambda line: line.correction.change.why, lambda line: line.correction.change.why, wide=True
        ),
        Column("", lambda line: line.state, lambda line: line.state, tone=_tone),
    )


def _line(details: RunDetails, correction: Correction) -> HistoryLine:
    change, zone = correction.change, details.header.zone
    at = change.at.astimezone(known_zone(change.zone))
    return HistoryLine(
        correction,
        words.moment(at),
        what_words(correction, details.bouts),
        value_words(change.field, correction.before, zone),
        value_words(change.field, correction.after, zone),
        _state(details, correction),
    )


def _state(details: RunDetails, correction: Correction) -> str:
    if details.history.holds(correction):
        return HOLDS
    rivals = [each for conflict in details.history.conflicts for each in conflict.others]
    return DISAGREES if correction in rivals else REPLACED


def _tone(line: HistoryLine) -> Tone:
    return {HOLDS: Tone.INK, REPLACED: Tone.QUIET, DISAGREES: Tone.ATTENTION}[line.state]
