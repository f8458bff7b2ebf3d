"""A reason to look at somebody: how urgent, in a sentence, with the numbers it rests on."""

from dataclasses import dataclass
from datetime import date
from enum import IntEnum

Number = int | float | str | date


class Level(IntEnum):
    """How urgent a reason is, the most urgent first; shown as a shape too."""

    TRIANGLE = 0
    SQUARE = 1


@dataclass(frozen=True, slots=True)
class Limits:
    """The limits of the rules.

    `pain` is the highest pain that is no reason (5 of 10: Thomee 1997, Silbernagel et al. 2007), `days_back`
    how many days are looked back on, `days_without` after how many days without a session one that was
    planned is asked after, `readiness_z` how many SDs above the own mean are a reason. All but the first are
    choices.
    """

    pain: int = 5
    days_back: int = 7
    days_without: int = 7
    readiness_z: float = 2.0


@dataclass(frozen=True, slots=True)
class Reason:
    """Why somebody needs a look: the `rule`'s name, its level, a sentence to be filled, the numbers in it."""

    rule: str
    level: Level
    template: str
    numbers: tuple[tuple[str, Number], ...]

    @property
    def sentence(self) -> str:
        """The sentence with its numbers, days written as ISO 8601 dates."""
        return self.template.format(**dict(self.numbers))


DEFAULT_LIMITS = Limits()
