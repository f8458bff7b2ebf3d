"""How long a frame of a chart takes while ten years are panned; draw it under Xvfb."""

from pathlib import Path
from statistics import median, quantiles
from time import perf_counter

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.views.charts.data import ChartData
from app.views.charts.data_card import DataCard
from app.views.lettering import desk_scale, load_fonts
from app.views.theme import LIGHT, Look, palette
from tests.chart_data import loads, sides, weeks

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
WEEKS = 520
FRAMES = 200


def ten_years(kind: str, window: int) -> tuple[ChartData, int]:
    """Ten years of weeks, and on how many panels."""
    shares = tuple(None if week % 13 == 5 else 0.5 + 0.4 * (week % 11) / 11 for week in range(WEEKS))
    if kind == "dots":
        return weeks(*shares, window=window), 1
    if kind == "sides":
        left = tuple(None if share is None else 40 * share for share in shares)
        return sides(left, tuple(None if value is None else value + 4 for value in left)), 1
    return loads(WEEKS), 2


@pytest.mark.bench
@pytest.mark.parametrize("window", [60, 400])
@pytest.mark.parametrize("kind", ["dots", "sides", "loads"])
def test_panning_ten_years(qtbot: QtBot, qapp: QGuiApplication, kind: str, window: int) -> None:
    data, panels = ten_years(kind, window)
    card = DataCard("Ten years", panels)
    qtbot.addWidget(card)
    card.setPalette(palette(LIGHT))
    card.set_look(Look(LIGHT, load_fonts(FONTS), desk_scale(1920)))
    card.resize(900, 440)
    card.show()
    card.show_data(data)
    box = card.chart.plots[-1].vb
    box.setXRange(WEEKS - window - 1.0, WEEKS - 1.0, padding=0)
    QApplication.processEvents()
    frames = []
    for number in range(FRAMES):
        began = perf_counter()
        box.translateBy(x=-0.4 if number % 100 < 50 else 0.4)
        card.chart.graphics.viewport().repaint()
        frames.append(perf_counter() - began)
    print(
        f"\n{kind}, {window} of {WEEKS} weeks in sight ({QGuiApplication.platformName()}): a panned frame "
        f"median {1000 * median(frames):.1f} ms, p95 {1000 * quantiles(frames, n=20)[-1]:.1f} ms"
    )
    card.close_plots()
