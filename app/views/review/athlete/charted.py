"""A chart with the answers to "why" of each of its places, and the small words that charts share."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cache
from typing import overload

from app.analysis.figure import Figure
from app.views.charts.data import ChartData
from app.views.review import words
from app.views.review.athlete.buckets import Bucket, Step
from app.views.translation import message, pointed, tr

SHARE_TICKS = ((0.0, "0\u202f%"), (0.5, "50\u202f%"), (1.0, "100\u202f%"))
OFF = message("off")


class Later(Sequence[tuple[Figure, ...]]):
    """The figures of so many places, each made when it is asked for."""

    def __init__(self, count: int, make: Callable[[int], tuple[Figure, ...]]) -> None:
        self._count, self._make = count, make

    def __len__(self) -> int:
        return self._count

    @overload
    def __getitem__(self, place: int) -> tuple[Figure, ...]: ...
    @overload
    def __getitem__(self, place: slice) -> tuple[tuple[Figure, ...], ...]: ...
    def __getitem__(self, place: int | slice) -> tuple[Figure, ...] | tuple[tuple[Figure, ...], ...]:
        """The figures of a place, or of several."""
        if isinstance(place, slice):
            return tuple(map(self._make, range(*place.indices(self._count))))
        return self._make(range(self._count)[place])


@dataclass(frozen=True, slots=True)
class Charted:
    """What a card shows: its heading, the chart, and the figures of each place, which know why."""

    heading: str
    data: ChartData
    whys: Sequence[tuple[Figure, ...]] = ()


class Made(Sequence[Charted]):
    """Charts in their order, each worked out when it is first looked at."""

    def __init__(self, makers: Sequence[Callable[[], Charted]]) -> None:
        self._makers = tuple(map(cache, makers))

    def __len__(self) -> int:
        return len(self._makers)

    @overload
    def __getitem__(self, place: int) -> Charted: ...
    @overload
    def __getitem__(self, place: slice) -> tuple[Charted, ...]: ...
    def __getitem__(self, place: int | slice) -> Charted | tuple[Charted, ...]:
        """The chart at a place, or several."""
        if isinstance(place, slice):
            return tuple(make() for make in self._makers[place])
        return self._makers[place]()


Found = Mapping[tuple[str, str], Figure]
"""Figures by their name and what they are of."""


def found_in(figures: Iterable[Figure]) -> Found:
    """The figures, to be found by name and what they are of."""
    return {(figure.name, figure.of): figure for figure in figures}


@dataclass(frozen=True, slots=True)
class Times:
    """The buckets along the bottom of the charts of a page, and the day on which they are looked at."""

    buckets: tuple[Bucket, ...]
    step: Step
    today: date

    @property
    def unit(self) -> str:
        """What the buckets are: week or month."""
        return tr("month") if self.step is Step.MONTH else tr("week")

    @property
    def labels(self) -> tuple[str, ...]:
        """What stands below each bucket."""
        return tuple(bucket.label for bucket in self.buckets)

    @property
    def names(self) -> tuple[str, ...]:
        """Each bucket in full."""
        return tuple(bucket.name for bucket in self.buckets)

    @property
    def window(self) -> int:
        """How many buckets are in sight at first: all of them."""
        return max(len(self.buckets), 1)


def spoken(names: Sequence[str], *parts: Sequence[str]) -> tuple[str, ...]:
    """The figures of each place in a line."""
    return tuple(words.DOT.join(filter(None, each)) for each in zip(names, *parts, strict=True))


def decimals(value: float | None, places: int = 1, unit: str = "") -> str:
    """A figure with so many decimals and its unit; a dash where it is unknown."""
    if value is None:
        return words.DASH
    text = pointed(f"{value:,.{places}f}".replace(",", words.THIN))
    return f"{text}{words.THIN}{unit}" if unit else text


def each_tick(
    ticks: Sequence[float], unit: str, say: Callable[[float], str] = words.whole
) -> tuple[tuple[float, str], ...]:
    """Ticks with their figures, the topmost with the unit."""
    last = len(ticks) - 1
    return tuple(
        (tick, f"{say(tick)}{words.THIN}{unit}" if unit and number == last else say(tick))
        for number, tick in enumerate(ticks)
    )
