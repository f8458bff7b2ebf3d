"""Side, phase and count are read from three metres on a laptop: 22 arc minutes in the panel's mm."""

from dataclasses import dataclass

import pytest
from PySide6.QtGui import QFontMetricsF, QScreen
from PySide6.QtWidgets import QMainWindow
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.plan import Side
from app.domain.tempo import Phase
from app.domain.words import PHASE_WORDS
from app.views.athlete import headline
from app.views.athlete.headline import Headline, HeadlineView
from app.views.lettering import (
    GLANCE_ARCMIN,
    LEAST_ARCMIN,
    Weight,
    arcmin_of,
    character_mm,
    load_fonts,
    training_scale,
)
from app.views.theme import Look, Place, choose
from app.views.translation import Tongue, tr

PANEL_MM = 174.0
"""Height of a 14-inch panel of 16 to 9."""
DISTANCE_M = 3.0
SIZES = ((1366, 768), (1920, 1080), (3840, 2160))


@dataclass
class Seen:
    """A headline in a full-screen window on that panel."""

    view: HeadlineView
    window: QMainWindow
    height: int

    def arcmin(self, shown: Headline, *, count: bool = False) -> float:
        """How large capitals of side and phase, or figures of the count, are from where they are read."""
        self.view.show_headline(shown)
        fit = self.view._fit()
        font = self.view._look.font(fit.count_px if count else fit.pixels * fit.word, Weight.BOLD)
        metrics = QFontMetricsF(font)
        pixels: float = min(metrics.capHeight(), metrics.tightBoundingRect("1").height())
        return arcmin_of(pixels * PANEL_MM / self.height, DISTANCE_M)


@pytest.fixture(params=SIZES, ids=str)
def seen(request: pytest.FixtureRequest, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Seen:
    size: tuple[int, int] = request.param
    width, height = size

    def of_the_panel(_screen: QScreen) -> float:
        return height / PANEL_MM

    monkeypatch.setattr(headline, "px_per_mm", of_the_panel)
    family = load_fonts(wiring.resources_folder() / "fonts")
    window = QMainWindow()
    qtbot.addWidget(window)
    view = HeadlineView(Look(choose(Place.TRAINING), family, training_scale(height), DISTANCE_M))
    window.setCentralWidget(view)
    window.resize(width, height)
    window.show()
    view.fit_window()
    return Seen(view, window, height)


def working(side: str, phase: str, seconds: str = "3", count: str = "12") -> Headline:
    return Headline(Side.LEFT, side, phase, seconds, count, tr("of {n}").format(n="12"), "#FFFFFF")


@pytest.mark.parametrize("language", ["en", "de"])
def test_every_phase_word_leaves_side_phase_and_count_legible(language: str, seen: Seen) -> None:
    tongue = Tongue(wiring.resources_folder() / "translations")
    tongue.speak(language)
    try:
        for side in (tr("Left").upper(), tr("Right").upper()):
            for phase, word in PHASE_WORDS.items():
                shown = working(side, tr(word), "" if phase is Phase.OWN else "3")
                assert seen.arcmin(shown) >= GLANCE_ARCMIN - 0.2, shown.spoken
                assert seen.arcmin(shown, count=True) >= GLANCE_ARCMIN, shown.spoken
    finally:
        tongue.end()


def test_a_word_too_long_gives_way_alone(seen: Seen) -> None:
    shown = working("RIGHT", "Turn as slowly as you possibly can")
    assert seen.arcmin(shown, count=True) >= GLANCE_ARCMIN
    assert seen.arcmin(shown) >= LEAST_ARCMIN - 0.2
    assert seen.view._fitting_word(seen.view._fit()).endswith("…")


def test_the_angle_of_a_height_is_the_inverse_of_the_height_of_an_angle() -> None:
    # ISO 9241-3, h = 2 D tan(a / 2): 22 arc minutes at 3 m are 19.199 mm.
    assert arcmin_of(19.199, 3.0) == pytest.approx(22.0, abs=1e-3)
    for angle in (16.0, 20.0, 22.0):
        assert arcmin_of(character_mm(5.0, angle), 5.0) == pytest.approx(angle, abs=1e-9)
