"""The corrections of a run as rows of a table."""

from dataclasses import dataclass

from app.analysis.local_time import known_zone
from app.domain.corrections import Correction
from app.views.review import words
from app.views.review.correct_fields import value_words, what_words
from app.views.review.details import RunDetails
from app.views.translation import message, tr
from app.views.widgets.rows_model import Column, Tone

HOLDS, REPLACED, DISAGREES = message("holds"), message("replaced"), message("disagrees")


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
        told = tr(
            "{what}: {value} ({who}) holds, and {others} was said elsewhere. "
            "Correct it once more to settle it."
        )
        what, value = what_words(holds, details.bouts), value_words(field, holds.after, zone)
        found.append(told.format(what=what, value=value, who=holds.change.who, others=others))
    return "\n".join(found)


def history_columns() -> tuple[Column[HistoryLine], ...]:
    """When, what, from what to what, who, why, and whether it holds."""
    return (
        Column(tr("When"), lambda line: line.when, lambda line: line.correction.change.at),
        Column(tr("What"), lambda line: line.what, lambda line: line.what.casefold(), wide=True),
        Column(tr("Before"), lambda line: line.before, lambda line: line.before),
        Column(tr("After"), lambda line: line.after, lambda line: line.after),
        Column(tr("Who"), lambda line: line.correction.change.who, lambda line: line.correction.change.who),
        Column(
            tr("Why"),
            lambda line: line.correction.change.why,
            lambda line: line.correction.change.why,
            wide=True,
        ),
        Column("", lambda line: tr(line.state), lambda line: tr(line.state), tone=_tone),
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
