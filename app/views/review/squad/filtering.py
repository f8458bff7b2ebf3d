"""Which athletes of the squad are shown: everybody, or those of whom something is the case."""

from collections.abc import Callable
from enum import Enum

from app.analysis.adherence_parts import monday_of
from app.analysis.pain import SAFE_TO
from app.views.review.squad.line import SquadLine
from app.views.translation import message


class Shown(Enum):
    """Who is shown."""

    EVERYBODY = "everybody"
    NEED_A_LOOK = "need_a_look"
    OWED = "owed"
    PAIN = "pain"
    NOT_THIS_WEEK = "not_this_week"
    MISSED = "missed"


SHOWN_WORDS = {
    Shown.EVERYBODY: message("everybody"),
    Shown.NEED_A_LOOK: message("need a look"),
    Shown.OWED: message("answers owed"),
    Shown.PAIN: message("pain above 2"),
    Shown.NOT_THIS_WEEK: message("no session this week"),
    Shown.MISSED: message("missed one last week"),
}
WITHOUT_PAIN = (Shown.EVERYBODY, Shown.NOT_THIS_WEEK, Shown.MISSED)
"""What can be asked while others look on: it tells nothing of pain or answers."""


def fits(line: SquadLine, shown: Shown) -> bool:
    """Whether an athlete is among those shown."""
    return _RULES[shown](line)


def _not_this_week(line: SquadLine) -> bool:
    return line.last is None or line.last < monday_of(line.record.today)


_RULES: dict[Shown, Callable[[SquadLine], bool]] = {
    Shown.EVERYBODY: lambda _line: True,
    Shown.NEED_A_LOOK: lambda line: bool(line.attention.reasons),
    Shown.OWED: lambda line: bool(line.owed),
    Shown.PAIN: lambda line: line.pain is not None and line.pain > SAFE_TO,
    Shown.NOT_THIS_WEEK: _not_this_week,
    Shown.MISSED: lambda line: line.weeks.sessions[1].missed > 0,
}
