"""What a report is made of: blocks of words, tables and charts, all of it plain values in one language."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Point:
    """One value at a place on the axis; None is unknown and leaves a gap. `low` and `high` bound it."""

    at: float
    value: float | None
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True, slots=True)
class Series:
    """Values of one kind; `mark` is circle, square or triangle, `joined` draws a line along them."""

    name: str
    mark: str
    points: tuple[Point, ...]
    joined: bool = True


@dataclass(frozen=True, slots=True)
class Chart:
    """Series over one axis. `alt` says in words what is to be seen; `ticks` are places below with words.

    `least` and `most` bound the axis of values in `unit` where they are given; `lines` are values at which a
    thin line is drawn. `point` stands before decimals.
    """

    title: str
    alt: str
    unit: str
    series: tuple[Series, ...]
    ticks: tuple[tuple[float, str], ...]
    least: float | None = None
    most: float | None = None
    lines: tuple[float, ...] = ()
    point: str = "."


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading of a section."""

    text: str


@dataclass(frozen=True, slots=True)
class Lines:
    """Sentences, one under the other, as a list."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """Cells in words under a head; the first column is read from the left, the others from the right.

    In one of `text` every column is read from the left.
    """

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    text: bool = False


@dataclass(frozen=True, slots=True)
class Charts:
    """Charts beside each other, two in a row."""

    charts: tuple[Chart, ...]


Block = Heading | Lines | Table | Charts


@dataclass(frozen=True, slots=True)
class ReportContent:
    """A whole report: `language` as its code, the title, a line of facts under it, and the blocks in order.

    `large` sets it in larger letters, for a sheet that is handed out; `page` is the word before the number of
    a page.
    """

    language: str
    title: str
    subtitle: str
    blocks: tuple[Block, ...]
    page: str
    large: bool = False
