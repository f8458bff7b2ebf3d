"""How long Review takes to answer: a squad's season, and ten years of one club with few athletes."""

from pathlib import Path
from statistics import median, quantiles
from time import perf_counter

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.analysis.adherence import reps_by_week
from app.analysis.load import loads_by_session
from app.views.lettering import desk_scale, load_fonts
from app.views.review.page import ReviewPage
from app.views.theme import LIGHT, Look
from tests.summaries import season

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
ROUNDS = 15
FRAMES = 120


def spread(seconds: list[float]) -> str:
    """Median and worst in ms."""
    return f"median {1000 * median(seconds):.1f} ms, worst {1000 * max(seconds):.1f} ms"


@pytest.mark.bench
@pytest.mark.parametrize("weeks", [12, 52, 520])
def test_showing_a_squad_and_one_of_its_athletes(qtbot: QtBot, qapp: QGuiApplication, weeks: int) -> None:
    runs = season(weeks)
    page = ReviewPage(Look(LIGHT, load_fonts(FONTS), desk_scale(1920)), lambda: None)
    qtbot.addWidget(page)
    page.resize(1920, 1080)
    page.show()
    began = perf_counter()
    page.show_summaries(runs)
    QApplication.processEvents()
    first = perf_counter() - began
    whole: list[float] = []
    one: list[float] = []
    for _ in range(ROUNDS):
        for name, times in ((None, whole), ("Hugo", one)):
            began = perf_counter()
            page.choose_athlete(name)
            QApplication.processEvents()
            times.append(perf_counter() - began)
    print(f"\n{len(runs)} runs, {weeks} weeks: first {1000 * first:.0f} ms (with the charts' library);")
    print(f"  all athletes {spread(whole)}; one athlete {spread(one)}")
    assert page.content is not None
    page.close()


@pytest.mark.bench
@pytest.mark.parametrize("weeks", [52, 520])
def test_panning_the_charts(qtbot: QtBot, qapp: QGuiApplication, weeks: int) -> None:
    page = ReviewPage(Look(LIGHT, load_fonts(FONTS), desk_scale(1920)), lambda: None)
    qtbot.addWidget(page)
    page.resize(1920, 1080)
    page.show()
    page.show_summaries(season(weeks))
    page.choose_athlete("Hugo")
    QApplication.processEvents()
    assert page.content is not None
    for chart in (page.content.weeks, page.content.loads):
        frames = []
        for _ in range(FRAMES):
            began = perf_counter()
            chart.plots[-1].vb.translateBy(x=-0.25)
            chart.graphics.viewport().repaint()
            frames.append(perf_counter() - began)
        print(
            f"\n{type(chart).__name__}, {weeks} weeks: a panned frame {spread(frames)}, "
            f"p95 {1000 * quantiles(frames, n=20)[-1]:.1f} ms"
        )
    page.close()


@pytest.mark.bench
def test_counting_ten_years_of_a_squad() -> None:
    runs = season(520)
    weeks, loads = [], []
    for _ in range(ROUNDS):
        began = perf_counter()
        counted = reps_by_week(runs)
        weeks.append(perf_counter() - began)
        began = perf_counter()
        sessions = loads_by_session(runs)
        loads.append(perf_counter() - began)
    assert len(counted) == 520
    assert len(sessions) == len(runs)
    print(f"\n{len(runs)} runs: reps by week {spread(weeks)}; loads {spread(loads)}")
