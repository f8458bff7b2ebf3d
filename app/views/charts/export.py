"""A chart kept as a picture: SVG or PNG, in the colours of print, with its heading and its units."""

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from app.domain.errors import PacewrightError
from app.views.charts.chart import Chart
from app.views.lettering import Weight
from app.views.theme import Look, Scheme

PRINT = Scheme("print", False, "#FFFFFF", "#FFFFFF", "#000000", "#4A5866", "#C9D1DA")
"""Colours for white paper."""
KINDS = {".svg": "SVG", ".png": "PNG"}
PNG_TIMES = 2
NOT_WRITTEN = "{path} cannot be written; choose a folder that exists and is yours."
NO_KIND = "{path} is neither .svg nor .png; end the name in one of them."
MARGIN = 16


@dataclass(frozen=True, slots=True)
class Page:
    """A chart with what stands above it, and the look that it has on the screen."""

    chart: Chart
    look: Look
    heading: str
    aside: str = ""


def save_chart(page: Page, path: Path) -> None:
    """Write a chart to a file, by the ending of its name. Raises PacewrightError when that cannot be."""
    ending = path.suffix.lower()
    if ending not in KINDS:
        raise PacewrightError(NO_KIND.format(path=path))
    size = page_size(page)
    saved = _save_svg(page, path, size) if ending == ".svg" else chart_image(page, size).save(str(path))
    if not saved:
        raise PacewrightError(NOT_WRITTEN.format(path=path))


def page_size(page: Page) -> QSize:
    """The size of the picture in pixels of the screen."""
    return page.chart.size() + QSize(2 * MARGIN, 2 * MARGIN + _head(page.look))


def chart_image(page: Page, size: QSize) -> QImage:
    """The chart as a picture of twice the size in pixels, on white."""
    image = QImage(size * PNG_TIMES, QImage.Format.Format_ARGB32)
    image.fill(QColor(PRINT.ground))
    painter = QPainter(image)
    painter.scale(PNG_TIMES, PNG_TIMES)
    _paint(page, painter, size)
    painter.end()
    return image


def _save_svg(page: Page, path: Path, size: QSize) -> bool:
    if not path.parent.is_dir() or path.is_dir():
        return False
    made = QSvgGenerator()
    made.setFileName(str(path))
    made.setSize(size)
    made.setViewBox(QRect(0, 0, size.width(), size.height()))
    made.setTitle(page.heading)
    made.setDescription(page.aside)
    painter = QPainter()
    if not painter.begin(made):
        return False
    _paint(page, painter, size)
    return painter.end()


def _head(look: Look) -> int:
    return round(look.sizes.heading * 1.5 + look.sizes.small * 1.6)


def _paint(page: Page, painter: QPainter, size: QSize) -> None:
    chart, place = page.chart, page.chart.place
    look = Look(PRINT, page.look.family, page.look.sizes)
    chart.set_look(look)
    chart.mark(None)
    try:
        painter.setPen(QColor(PRINT.ink))
        painter.setFont(look.font(look.sizes.heading, Weight.SEMIBOLD))
        line = QRectF(MARGIN, MARGIN, size.width() - 2 * MARGIN, look.sizes.heading * 1.5)
        painter.drawText(line, Qt.AlignmentFlag.AlignLeft, page.heading)
        painter.setPen(QColor(PRINT.quiet))
        painter.setFont(look.font(look.sizes.small))
        painter.drawText(line.translated(0, line.height()), Qt.AlignmentFlag.AlignLeft, page.aside)
        target = QRectF(MARGIN, MARGIN + _head(look), chart.width(), chart.height())
        chart.graphics.render(painter, target, chart.graphics.rect())
    finally:
        chart.set_look(page.look)
        chart.mark(place)
