"""What a chart shows, as plain values: places along the bottom, panels above them, series in each panel."""

from dataclasses import dataclass
from enum import StrEnum


class Ink(StrEnum):
    """The colour of a series by what it means; each is a colour of the scheme."""

    ACCENT = "accent"
    LEFT = "left"
    RIGHT = "right"
    PLAIN = "ink"
    QUIET = "quiet"
    FAINT = "faint"
    NOTICE = "notice"
    ATTENTION = "attention"


class Mark(StrEnum):
    """The shape of a point, as pyqtgraph names it."""

    CIRCLE = "o"
    SQUARE = "s"
    DIAMOND = "d"
    TRIANGLE = "t1"


class Form(StrEnum):
    """How the values of a series are drawn."""

    DOTS = "dots"
    LINE = "line"
    BARS = "bars"


@dataclass(frozen=True, slots=True)
class Series:
    """One value a place; None is unknown and stays a gap.

    `low` and `high` bound each value, empty where there are no bounds. `words` are the values as a table
    shows them. `unknown` are places where something was done whose value is not known: a dash at the ground
    line. `ended` writes the name at the end of the line. `shift` draws it so far beside its places.
    """

    name: str
    values: tuple[float | None, ...]
    words: tuple[str, ...]
    form: Form = Form.DOTS
    ink: Ink = Ink.ACCENT
    mark: Mark = Mark.CIRCLE
    low: tuple[float | None, ...] = ()
    high: tuple[float | None, ...] = ()
    unknown: tuple[int, ...] = ()
    ended: bool = False
    shift: float = 0.0


@dataclass(frozen=True, slots=True)
class Zone:
    """A stretch of the height with a meaning: between two values, its word at the left edge."""

    low: float
    high: float
    word: str
    ink: Ink = Ink.FAINT


@dataclass(frozen=True, slots=True)
class Slope:
    """A straight line through the points, from one position and value to another."""

    x: tuple[float, float]
    y: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Panel:
    """One plot: its series from `bottom` to the highest tick; ticks have words. `share` of the height."""

    series: tuple[Series, ...]
    ticks: tuple[tuple[float, str], ...]
    bottom: float = 0.0
    zones: tuple[Zone, ...] = ()
    slopes: tuple[Slope, ...] = ()
    share: int = 1

    @property
    def top(self) -> float:
        """The highest tick, or 1 above the bottom where there are none."""
        return self.ticks[-1][0] if self.ticks else self.bottom + 1.0


@dataclass(frozen=True, slots=True)
class ChartData:
    """A chart. `unit` says what the labels at the bottom are; `spoken` gives all figures of a place in words.

    `at` are the positions of the places, rising, empty for one after the other. `window` is how many places
    are in sight at first. `gap` is the word that stands where the first panel has nothing, empty for none,
    among the first `gaps_up_to` places only: what is still to come is no gap.
    `first_column` is the title of the labels in the table, and `names` what stands there, longer than a
    label may be. `beside` are further columns that only the table has: a title, and the words of each place.
    `empty` says in a sentence why there is nothing to draw, `aside` in what units it is.
    """

    name: str
    unit: str
    labels: tuple[str, ...]
    spoken: tuple[str, ...]
    panels: tuple[Panel, ...]
    at: tuple[float, ...] = ()
    window: int = 60
    gap: str = ""
    gaps_up_to: int | None = None
    first_column: str = ""
    names: tuple[str, ...] = ()
    empty: str = ""
    aside: str = ""
    beside: tuple[tuple[str, tuple[str, ...]], ...] = ()

    @property
    def is_empty(self) -> bool:
        """Whether no series has a value or a dash anywhere."""
        return not any(
            series.unknown or any(value is not None for value in series.values)
            for panel in self.panels
            for series in panel.series
        )

    @property
    def last_known(self) -> int | None:
        """The last place where any series has a value or a dash; None where there is none."""
        known = [
            place
            for series in self.all_series
            for place, value in enumerate(series.values)
            if value is not None or place in series.unknown
        ]
        return max(known, default=None)

    @property
    def titles(self) -> tuple[str, ...]:
        """The titles of the table's columns."""
        first = self.first_column or self.unit.capitalize()
        return (first, *(series.name for series in self.all_series), *(title for title, _ in self.beside))

    @property
    def all_series(self) -> tuple[Series, ...]:
        """The series of all panels, in order."""
        return tuple(series for panel in self.panels for series in panel.series)

    def cells(self, place: int) -> tuple[str, ...]:
        """The row of a place in the table."""
        first = self.names[place] if self.names else self.labels[place]
        told = (*(series.words for series in self.all_series), *(words for _, words in self.beside))
        return (first, *(words[place] for words in told))

    def as_text(self) -> str:
        """The whole table, tabs between cells, titles first, lines for rows."""
        rows = [self.titles, *(self.cells(place) for place in range(len(self.labels)))]
        return "\n".join("\t".join(row) for row in rows)
