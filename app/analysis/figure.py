"""A figure: one computed number that can say why it is what it is, or why it is not known."""

from dataclasses import asdict, dataclass, replace
from typing import Any

from app.analysis.adherence import Interval, wilson

Input = tuple[str, float | int | str | None]


@dataclass(frozen=True, slots=True)
class Figure:
    """One number. `value` is in `unit`, None where unknown, with the `reason`; shares are 0-1, unit "1".

    `of` says what it is of where there are several of a name: a week by the ISO date of its Monday, a day, a
    side, a stage. `n` is how many things it rests on. `inputs` are the numbers that went in, by their label;
    `unknown` says what is not known of them. `low` and `high` bound a 95 % interval, which `caution` is
    about. Raises ValueError unless exactly one of `value` and `reason` is there.
    """

    name: str
    value: float | None
    unit: str
    n: int
    reason: str | None
    formula: str
    source: str
    inputs: tuple[Input, ...] = ()
    unknown: tuple[str, ...] = ()
    of: str = ""
    low: float | None = None
    high: float | None = None
    caution: str | None = None

    def __post_init__(self) -> None:
        if (self.value is None) is (self.reason is None):
            raise ValueError(f"{self.name} has a value or the reason why it has none")


@dataclass(frozen=True, slots=True)
class Rule:
    """What figures of one kind share; `caution` is what to keep in mind of their interval."""

    name: str
    unit: str
    formula: str
    source: str
    caution: str | None = None

    def figure(
        self,
        value: float | None,
        n: int,
        reason: str | None = None,
        inputs: tuple[Input, ...] = (),
        unknown: tuple[str, ...] = (),
        of: str = "",
    ) -> Figure:
        """A figure by this rule; a `reason` counts only where there is no value."""
        return Figure(
            self.name,
            value,
            self.unit,
            n,
            reason if value is None else None,
            self.formula,
            self.source,
            inputs,
            unknown,
            of,
        )

    def bounded(self, figure: Figure, bounds: Interval | None) -> Figure:
        """The figure with its interval and what to keep in mind of that, where it has one."""
        if bounds is None:
            return figure
        return replace(figure, low=bounds.low, high=bounds.high, caution=self.caution)

    def share(
        self,
        good: tuple[str, int],
        whole: tuple[str, int],
        reason: str,
        more: tuple[Input, ...] = (),
        of: str = "",
    ) -> Figure:
        """A share with its Wilson interval; of nothing, the `reason`. `more` are numbers shown beside."""
        value = good[1] / whole[1] if whole[1] else None
        figure = self.figure(value, whole[1], reason, (good, whole, *more), (), of)
        return self.bounded(figure, wilson(good[1], whole[1]))


def as_data(figure: Figure) -> dict[str, Any]:
    """A figure as plain values for JSON; inputs as a list of label and value."""
    data = asdict(figure)
    data["inputs"] = [{"label": label, "value": value} for label, value in figure.inputs]
    data["unknown"] = list(figure.unknown)
    return data
