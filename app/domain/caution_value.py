"""A caution: something a sensible colleague would question in a plan, with what the question rests on."""

from dataclasses import dataclass
from enum import StrEnum

from app.domain.plan import StageKind
from app.domain.thresholds import Basis, Standing

EXPLOSIVE_STAGES = frozenset({StageKind.REACTIVE, StageKind.POWER})


class CautionRule(StrEnum):
    """Which question is asked."""

    STAGE_ORDER = "stage order"
    CONTACTS = "contacts"
    EXPLOSIVE_REST = "rest in explosive work"
    SESSION_LENGTH = "session length"
    ISOMETRIC_TOTAL = "isometric total"
    SET_TENSION = "tension in a set"
    SIDE_BALANCE = "balance of sides"
    STOP_SIGNS = "signs to stop at"
    EXPLOSIVE_HOLD = "hold in explosive work"
    HOLD_REST = "rest after long holds"
    TIRED_TARGET = "power on a tired target"


@dataclass(frozen=True, slots=True)
class Caution:
    """One question about a plan, never a refusal.

    `stage` and `exercise` are names, None where the whole session or stage is meant; `what` is what was seen
    in the plan, `reason` why one may look at it again; `source` and `standing` say what that rests on.
    """

    rule: CautionRule
    stage: str | None
    exercise: str | None
    what: str
    reason: str
    source: str
    standing: Standing

    @property
    def where(self) -> str:
        """The place in words: `Stage, exercise`, or `whole session`."""
        return ", ".join(name for name in (self.stage, self.exercise) if name is not None) or "whole session"

    def __str__(self) -> str:
        said_already = self.source.startswith(self.standing)
        basis = self.source if said_already else f"{self.standing}: {self.source}"
        return f"{self.where}: {self.what}; {self.reason} ({basis})"


@dataclass(frozen=True, slots=True)
class Place:
    """Where in a plan a question arises, by names."""

    stage: str | None = None
    exercise: str | None = None


def caution(rule: CautionRule, place: Place, what: str, reason: str, basis: Basis) -> Caution:
    """A caution resting on a basis."""
    return Caution(rule, place.stage, place.exercise, what, reason, basis.source, basis.standing)
