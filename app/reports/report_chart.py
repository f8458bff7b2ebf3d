"""A chart as SVG: thin lines, shapes as well as colours, and a gap where a value is unknown."""

from collections.abc import Iterator
from dataclasses import dataclass
from html import escape
from itertools import pairwise

from app.reports.report_parts import Chart, Point, Series

WIDTH, HEIGHT = 250.0, 100.0
LEFT, RIGHT, TOP, BOTTOM = 30.0, 8.0, 16.0, 16.0
THIN, AXIS = 0.6, 0.4
INK, QUIET, FAINT = "#15202B", "#5B6B7C", "#DDE3EA"
COLOURS = {"circle": "#0072B2", "square": "#D55E00", "triangle": "#009E73"}
"""Of the Okabe-Ito palette, those that hold 3:1 on white."""
LETTERS, LETTER_WIDTH = 6.5, 0.56
MANY, MOST_JOINED = 60, 400
STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)
Place = tuple[float, float]
"""Points from the left and from the top."""


@dataclass(frozen=True, slots=True)
class _Frame:
    """Turns values into places on the sheet."""

    first: float
    last: float
    least: float
    most: float

    def across(self, at: float) -> float:
        share = (at - self.first) / (self.last - self.first) if self.last > self.first else 0.5
        return LEFT + share * (WIDTH - LEFT - RIGHT)

    def up(self, value: float) -> float:
        share = (value - self.least) / (self.most - self.least)
        return HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM)


def chart_svg(chart: Chart) -> str:
    """The chart as an SVG of WIDTH by HEIGHT points; its alternative text is not in it."""
    frame = _frame(chart)
    size = f'width="{WIDTH:g}" height="{HEIGHT:g}" viewBox="0 0 {WIDTH:g} {HEIGHT:g}"'
    letters = f'font-family="Inter" font-size="{LETTERS:g}"'
    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" {size} {letters}>', *_axes(chart, frame)]
    for series in chart.series:
        parts += _series(series, frame)
    parts += _legend(chart)
    return "".join((*parts, "</svg>"))


def nice_steps(least: float, most: float) -> tuple[float, ...]:
    """Round values from `least` to `most`, about four of them, that embrace what lies between."""
    width = max(most - least, 1e-9) / 4
    power = 1.0
    while power * 10 <= width:
        power *= 10
    while power > width:
        power /= 10
    step = next(power * each for each in STEPS if power * each >= width)
    first = step * (least // step)
    count = 0
    while first + count * step < most - step * 1e-6:
        count += 1
    return tuple(round(first + number * step, 6) for number in range(count + 1))


def _frame(chart: Chart) -> _Frame:
    points = [point for series in chart.series for point in series.points]
    places = [point.at for point in points] + [at for at, _ in chart.ticks]
    values = [
        value for point in points for value in (point.value, point.low, point.high) if value is not None
    ]
    values += [value for value in (chart.least, chart.most) if value is not None]
    steps = nice_steps(min(values, default=0.0), max(values, default=1.0))
    least = steps[0] if chart.least is None else chart.least
    most = steps[-1] if chart.most is None else chart.most
    return _Frame(
        min(places, default=0.0), max(places, default=1.0), least, most if most > least else least + 1
    )


def _axes(chart: Chart, frame: _Frame) -> Iterator[str]:
    for value in nice_steps(frame.least, frame.most):
        if frame.least <= value <= frame.most:
            height = frame.up(value)
            yield _line((LEFT, height), (WIDTH - RIGHT, height), FAINT, AXIS)
            yield _words(LEFT - 4, height + LETTERS / 3, f"{value:g}".replace(".", chart.point), QUIET, "end")
    for value in chart.lines:
        height = frame.up(value)
        yield _line((LEFT, height), (WIDTH - RIGHT, height), QUIET, AXIS, "2 2")
    for at, told in chart.ticks:
        place = frame.across(at)
        yield _line((place, HEIGHT - BOTTOM), (place, HEIGHT - BOTTOM + 2), QUIET, AXIS)
        anchor = "start" if place < LEFT + 12 else "end" if place > WIDTH - RIGHT - 12 else "middle"
        yield _words(place, HEIGHT - 5, told, QUIET, anchor)
    yield _words(2, TOP - 7, chart.unit, QUIET, "start")


def _series(series: Series, frame: _Frame) -> Iterator[str]:
    colour = COLOURS[series.mark]
    known = [point for point in series.points if point.value is not None]
    for point in known:
        if point.low is not None and point.high is not None:
            across = frame.across(point.at)
            yield _line((across, frame.up(point.low)), (across, frame.up(point.high)), colour, AXIS)
    if series.joined:
        for before, after in pairwise(series.points):
            yield from _joined(before, after, frame, colour)
    size = 2.0 if len(known) <= MANY else 1.2 if len(known) <= MOST_JOINED else 0.8
    for point in known:
        if point.value is not None:
            yield _mark(series.mark, frame.across(point.at), frame.up(point.value), size, colour)


def _joined(before: Point, after: Point, frame: _Frame, colour: str) -> Iterator[str]:
    if before.value is not None and after.value is not None:
        begin = frame.across(before.at), frame.up(before.value)
        end = frame.across(after.at), frame.up(after.value)
        yield _line(begin, end, colour, THIN)


def _legend(chart: Chart) -> Iterator[str]:
    """The series by their shapes at the top, from the right."""
    if len(chart.series) < 2:
        return
    right = WIDTH - RIGHT
    for series in reversed(chart.series):
        yield _mark(series.mark, right - 2, TOP - 9, 2.0, COLOURS[series.mark])
        yield _words(right - 7, TOP - 7, series.name, INK, "end")
        right -= len(series.name) * LETTERS * LETTER_WIDTH + 16


def _mark(kind: str, across: float, down: float, size: float, colour: str) -> str:
    if kind == "circle":
        return f'<circle cx="{across:.2f}" cy="{down:.2f}" r="{size:g}" fill="{colour}"/>'
    if kind == "square":
        corner = f'x="{across - size:.2f}" y="{down - size:.2f}"'
        return f'<rect {corner} width="{2 * size:g}" height="{2 * size:g}" fill="{colour}"/>'
    foot = down + size
    corners = f"{across:.2f},{down - size:.2f} {across - size:.2f},{foot:.2f} {across + size:.2f},{foot:.2f}"
    return f'<polygon points="{corners}" fill="{colour}"/>'


def _line(begin: Place, end: Place, colour: str, width: float, dashes: str = "") -> str:
    dashed = f' stroke-dasharray="{dashes}"' if dashes else ""
    ends = f'x1="{begin[0]:.2f}" y1="{begin[1]:.2f}" x2="{end[0]:.2f}" y2="{end[1]:.2f}"'
    return f'<line {ends} stroke="{colour}" stroke-width="{width:g}"{dashed}/>'


def _words(across: float, down: float, told: str, colour: str, anchor: str) -> str:
    place = f'x="{across:.2f}" y="{down:.2f}" text-anchor="{anchor}"'
    return f'<text {place} fill="{colour}">{escape(told)}</text>'
