"""The athlete as far as a plan needs to know them, and what changes in a plan for one of them."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from app.domain.dose import Band
from app.domain.plan import Side


@dataclass(frozen=True, slots=True)
class Athlete:
    """One person of a roster.

    Overrides are by exercise name; a load also by side (BOTH where it is the same). What follows `notes` is
    for group sessions: the name on the screen, the letter of the team, the exercises sat out, and which
    variant, `easier` or `harder`, of an exercise is done.
    """

    name: str
    first: Side | None = None
    loads_kg: Mapping[tuple[str, Side], Decimal] = field(default_factory=dict)
    reps: Mapping[str, Band] = field(default_factory=dict)
    notes: str | None = None
    short: str | None = None
    team: str | None = None
    sits_out: frozenset[str] = frozenset()
    variants: Mapping[str, str] = field(default_factory=dict)

    def load_kg(self, exercise: str, side: Side, planned: Decimal | None) -> Decimal | None:
        """The load for a side of an exercise: this athlete's for it, else for both, else the plan's."""
        for key in ((exercise, side), (exercise, Side.BOTH)):
            if key in self.loads_kg:
                return self.loads_kg[key]
        return planned
