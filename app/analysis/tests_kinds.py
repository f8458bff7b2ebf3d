"""What a test is: its unit, what more of it means, its sides and tries, and the numbers a try is made of."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

NO_UNIT = "1"
OF_LIFT = ":"
"""Stands in a key between a test and the lift that it was done with."""


class More(StrEnum):
    """What a higher value means."""

    BETTER = "better"
    WORSE = "worse"
    NEITHER = "neither"


class Counts(StrEnum):
    """Which of several tries on one day counts."""

    BEST = "best"
    MEAN = "mean"
    MEAN_OF_BEST_FIVE = "mean_of_best_five"
    LAST = "last"


@dataclass(frozen=True, slots=True)
class Part:
    """One of the numbers that a try is made of. `key` is what the record keeps it under.

    It lies from `least` to `most` in `unit` ("1" for none), `whole` where it is counted. Tests that are made
    of the same numbers share their parts, so that one try tells of all of them.
    """

    key: str
    name: str
    unit: str
    least: float
    most: float
    whole: bool = False


Made = Callable[[Sequence[float]], float | None]
"""The value of a try out of its parts in their order; None where there is none."""


@dataclass(frozen=True, slots=True)
class FieldTest:
    """A test. `key` is what the record keeps, `name` what a screen shows; `tries` is how many are asked for.

    Values lie from `least` to `most` in `unit` ("1" for none). `standing` says on what tries and their
    summary rest. A test with `parts` is `made` of them, and where it is `direct` its value can be given by
    itself too. A test `by_lift` is done with a lift, which then stands in `lift`, in its key and its name.
    """

    key: str
    name: str
    unit: str
    more: More
    by_side: bool
    tries: int
    counts: Counts
    least: float
    most: float
    standing: str = "common practice, no source"
    parts: tuple[Part, ...] = ()
    made: Made | None = None
    direct: bool = True
    by_lift: bool = False
    lift: str = ""

    @property
    def more_is_better(self) -> bool | None:
        """Whether more is better; None where it is neither good nor bad."""
        return None if self.more is More.NEITHER else self.more is More.BETTER

    @property
    def plain_name(self) -> str:
        """The name without the lift, which is in the words of whoever entered it."""
        return self.name.removesuffix(f": {self.lift}") if self.lift else self.name

    def with_lift(self, lift: str) -> "FieldTest":
        """The same test done with a lift. Raises ValueError for one that is done with none."""
        if not self.by_lift or not lift.strip():
            raise ValueError(f"{self.name} is done with {'no' if not self.by_lift else 'a'} lift.")
        named = lift.strip()
        return replace(
            self,
            key=f"{self.key}{OF_LIFT}{named}",
            name=f"{self.name}: {named}",
            parts=tuple(replace(part, key=f"{part.key}{OF_LIFT}{named}") for part in self.parts),
            lift=named,
        )

    def value_of(self, values: Sequence[float]) -> float | None:
        """The value of a try out of its parts in their order, in the test's unit; None where it has none.

        Raises ValueError for a test that is not made of parts, or for another number of them.
        """
        if self.made is None or len(values) != len(self.parts):
            raise ValueError(f"{self.name} is made of {len(self.parts)} numbers.")
        return self.made(values)
