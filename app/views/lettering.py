"""Letters: the family shipped with the program, one scale of sizes, and what size is seen from afar."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum
from pathlib import Path

from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF, QScreen

FAMILY = "Inter"
GLANCE_ARCMIN = 22.0
LEAST_ARCMIN = 16.0
MM_PER_INCH = 25.4
WINDOW_TO_BODY = 1080 / 22
"""Height of a window over that of its running text, from the sketches."""

_PROBE_PX = 1000
_TABULAR = "tnum"
_PLAUSIBLE_PX_PER_MM = (0.3, 30.0)


class Weight(IntEnum):
    """The four weights in use."""

    LIGHT = 300
    REGULAR = 400
    SEMIBOLD = 600
    BOLD = 700


@dataclass(frozen=True, slots=True)
class TypeScale:
    """Font sizes in logical pixels, each in a fixed ratio to the running text."""

    small: int
    body: int
    heading: int
    title: int
    display: int


def type_scale(body: float) -> TypeScale:
    """Give the sizes that go with running text of `body` logical pixels."""
    small, heading, title, display = (round(body * ratio) for ratio in (0.87, 1.25, 1.95, 3.05))
    return TypeScale(small, round(body), heading, title, display)


def desk_scale(window_width: int, text: float = 1.0) -> TypeScale:
    """Give the sizes at the desk: text of 15 px in a window up to 1366 px wide, growing to 18 px at 1920.

    `text` is how many times larger a person wants it.
    """
    return type_scale(text * min(max(15 + 3 * (window_width - 1366) / (1920 - 1366), 15), 18))


def training_scale(window_height: int, text: float = 1.0) -> TypeScale:
    """Give the sizes for training: text of 22 px in a window 1080 px high, in proportion, times `text`."""
    return type_scale(text * window_height / WINDOW_TO_BODY)


def load_fonts(folder: Path) -> str:
    """Make the font files of a folder known; give the family to use: Inter, else the system's.

    Needs a QGuiApplication. An unreadable file is passed over: the system's letters beat no screen.
    """
    families: list[str] = []
    for file in sorted(folder.glob("*.[ot]tf")):
        families += QFontDatabase.applicationFontFamilies(QFontDatabase.addApplicationFont(str(file)))
    return _family(families)


def lettering(family: str, pixels: float, weight: Weight = Weight.REGULAR) -> QFont:
    """Make a font of a size in logical pixels (at least 1), its figures of equal width."""
    font = QFont(family)
    font.setPixelSize(max(round(pixels), 1))
    font.setWeight(QFont.Weight(weight))
    font.setFeature(QFont.Tag(_TABULAR), 1)
    return font


def character_mm(distance_m: float, arcmin: float = GLANCE_ARCMIN) -> float:
    """Height in mm of a character that fills an angle: h = 2 D tan(a / 2), D the distance of the eye.

    22 arc minutes are preferred and 16 the least by ISO 9241-3.
    """
    return 2000.0 * distance_m * math.tan(math.radians(arcmin / 60.0) / 2.0)


def arcmin_of(height_mm: float, distance_m: float) -> float:
    """The angle in arc minutes that a character of a height in mm fills at a distance."""
    return math.degrees(2.0 * math.atan(height_mm / (2000.0 * distance_m))) * 60.0


def digit_height_px(distance_m: float, arcmin: float, px_per_mm: float) -> float:
    """Height in pixels of a figure that fills an angle at a distance, on a screen of so many pixels a mm."""
    return character_mm(distance_m, arcmin) * px_per_mm


def font_px(height_px: float, family: str, weight: Weight = Weight.REGULAR) -> int:
    """Font size in pixels that makes figures and capitals `height_px` high. Needs a QGuiApplication."""
    return math.ceil(height_px / character_px(1.0, family, weight))


def character_px(pixels: float, family: str, weight: Weight = Weight.REGULAR) -> float:
    """Height in pixels of figures and capitals of a font size in pixels. Needs a QGuiApplication."""
    metrics = QFontMetricsF(lettering(family, _PROBE_PX, weight))
    return pixels * min(metrics.capHeight(), metrics.tightBoundingRect("1").height()) / _PROBE_PX


def px_per_mm(screen: QScreen) -> float:
    """Logical pixels a mm of a screen; from its logical dots an inch where the size it reports cannot be."""
    millimetres = screen.physicalSize().height()
    measured = screen.geometry().height() / millimetres if millimetres > 0 else 0.0
    low, high = _PLAUSIBLE_PX_PER_MM
    return measured if low <= measured <= high else screen.logicalDotsPerInch() / MM_PER_INCH


def _family(families: Sequence[str]) -> str:
    if FAMILY in families:
        return FAMILY
    if families:
        return families[0]
    return QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont).family()
