"""What can be read across a gym: sizes by distance and screen, and how many names or tiles find room."""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtGui import QFontMetricsF

from app.views.lettering import GLANCE_ARCMIN, LEAST_ARCMIN, Weight, digit_height_px, font_px
from app.views.theme import Look

PAGE_MS = 8_000
"""A page of names or tiles stays for so long before the next one takes its place."""


@dataclass(frozen=True, slots=True)
class Legible:
    """Font sizes in pixels: `glance` for count, phase, side and countdown, `name` for names."""

    glance: int
    name: int


def legible(look: Look, px_per_mm: float) -> Legible:
    """The least sizes for the distance of a look on a screen of so many pixels a mm.

    22 arc minutes for what is read at a glance, 16 for names: the preferred and the least height of
    characters by ISO 9241-303.
    """
    glance = digit_height_px(look.distance_m, GLANCE_ARCMIN, px_per_mm)
    name = digit_height_px(look.distance_m, LEAST_ARCMIN, px_per_mm)
    return Legible(font_px(glance, look.family, Weight.BOLD), font_px(name, look.family, Weight.SEMIBOLD))


@dataclass(frozen=True, slots=True)
class Grid:
    """How cells are laid out: so many columns and rows a page, on so many pages."""

    columns: int
    rows: int
    pages: int

    @property
    def a_page(self) -> int:
        """Cells on a page."""
        return self.columns * self.rows

    def page_at(self, now_ms: int) -> int:
        """The page to show at a time, from 0: they take turns."""
        return now_ms // PAGE_MS % self.pages


def grid_of(count: int, cell: tuple[float, float], room: tuple[float, float], gap: float) -> Grid:
    """The grid for `count` cells of at least the size `cell` in a place of the size `room`.

    At least one cell is on a page. The last page is not much emptier than the others, and columns are no
    more than are needed for the rows there are.
    """
    columns = max(int((room[0] + gap) // (cell[0] + gap)), 1)
    rows = max(int((room[1] + gap) // (cell[1] + gap)), 1)
    pages = max(math.ceil(count / (columns * rows)), 1)
    a_page = math.ceil(count / pages) if count else 1
    rows = min(max(math.ceil(a_page / columns), 1), rows)
    return Grid(min(max(math.ceil(a_page / rows), 1), columns), rows, pages)


def lines_of(names: Sequence[str], between: str, width: Callable[[str], float], room: float) -> list[str]:
    """The names in order on as few lines as each is within the room; a name too wide has one of its own."""
    lines: list[str] = []
    for name in names:
        longer = f"{lines[-1]}{between}{name}" if lines else name
        if lines and width(longer) <= room:
            lines[-1] = longer
        else:
            lines.append(name)
    return lines


def widest(texts: Sequence[str], look: Look, pixels: float, weight: Weight) -> float:
    """Width in pixels of the widest of some texts."""
    metrics = QFontMetricsF(look.font(pixels, weight))
    return max((metrics.horizontalAdvance(text) for text in texts), default=0.0)
