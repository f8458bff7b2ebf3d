"""The look holds its contrasts in every scheme, and its letters come out at the height asked for."""

from pathlib import Path
from typing import cast

import pytest
from PySide6.QtCore import QRect, QSizeF
from PySide6.QtGui import QFontMetricsF, QGuiApplication, QPalette, QScreen

from app.domain.tempo import Phase
from app.views.contrast import contrast
from app.views.lettering import (
    Weight,
    desk_scale,
    digit_height_px,
    font_px,
    lettering,
    load_fonts,
    px_per_mm,
    type_scale,
)
from app.views.theme import (
    DARK,
    DARK_HIGH,
    LIGHT,
    LIGHT_HIGH,
    ROLES,
    SCHEMES,
    SKY,
    VERMILLION,
    YELLOW,
    Lightness,
    Look,
    Place,
    Scheme,
    choose,
    palette,
)

FONTS = Path(__file__).parents[3] / "resources" / "fonts"

schemes = pytest.mark.parametrize("scheme", SCHEMES, ids=lambda scheme: scheme.name)


def grounds(scheme: Scheme) -> tuple[str, str]:
    return scheme.ground, scheme.panel


@schemes
@pytest.mark.parametrize("phase", Phase)
@pytest.mark.parametrize("explosive", [False, True])
def test_phase_lines_and_words_hold_their_contrast_on_both_grounds(
    scheme: Scheme, phase: Phase, explosive: bool
) -> None:
    for ground in grounds(scheme):
        assert contrast(scheme.line(phase, explosive=explosive), ground) >= scheme.line_ratio >= 3.0
        assert contrast(scheme.text(phase, explosive=explosive), ground) >= scheme.text_ratio >= 4.5


@schemes
@pytest.mark.parametrize("name", ["ink", "quiet", "accent", "left", "right", "attention", "notice", "good"])
def test_words_hold_their_contrast_on_both_grounds(scheme: Scheme, name: str) -> None:
    for ground in grounds(scheme):
        assert contrast(getattr(scheme, name), ground) >= scheme.text_ratio


@schemes
def test_words_on_the_accent_hold_their_contrast(scheme: Scheme) -> None:
    assert contrast(scheme.on_accent, scheme.accent) >= scheme.text_ratio


@pytest.mark.parametrize("scheme", [DARK_HIGH, LIGHT_HIGH], ids=lambda scheme: scheme.name)
def test_dividing_lines_are_plain_to_see_in_strong_contrast(scheme: Scheme) -> None:
    assert contrast(scheme.faint, scheme.panel) >= 3.0


def test_on_dark_ground_the_palette_stays_as_it_is() -> None:
    assert DARK.line(Phase.ECCENTRIC) == SKY
    assert DARK.line(Phase.HOLD) == YELLOW
    assert DARK.line(Phase.CONCENTRIC, explosive=True) == VERMILLION


def test_every_phase_has_a_role() -> None:
    assert set(ROLES) == set(Phase)


@schemes
def test_the_four_kinds_of_work_differ_in_colour(scheme: Scheme) -> None:
    phases = (Phase.ECCENTRIC, Phase.HOLD, Phase.CONCENTRIC, Phase.GO)
    assert len({scheme.line(phase) for phase in phases}) == len(phases)


@pytest.mark.parametrize(
    ("place", "lightness", "high", "expected"),
    [
        (Place.TRAINING, Lightness.BY_PLACE, False, DARK),
        (Place.DESK, Lightness.BY_PLACE, False, LIGHT),
        (Place.TRAINING, Lightness.LIGHT, False, LIGHT),
        (Place.DESK, Lightness.DARK, False, DARK),
        (Place.TRAINING, Lightness.BY_PLACE, True, DARK_HIGH),
        (Place.DESK, Lightness.BY_PLACE, True, LIGHT_HIGH),
        (Place.DESK, Lightness.DARK, True, DARK_HIGH),
    ],
)
def test_a_place_has_its_scheme_unless_one_is_wanted_everywhere(
    place: Place, lightness: Lightness, high: bool, expected: Scheme
) -> None:
    assert choose(place, lightness, high_contrast=high) is expected


@schemes
def test_the_palette_paints_text_in_ink_on_the_grounds(scheme: Scheme) -> None:
    made = palette(scheme)
    assert made.color(QPalette.ColorRole.Window).name().upper() == scheme.ground
    assert made.color(QPalette.ColorRole.Base).name().upper() == scheme.panel
    for words, under in (
        (QPalette.ColorRole.Text, QPalette.ColorRole.Base),
        (QPalette.ColorRole.WindowText, QPalette.ColorRole.Window),
        (QPalette.ColorRole.ButtonText, QPalette.ColorRole.Button),
        (QPalette.ColorRole.HighlightedText, QPalette.ColorRole.Highlight),
        (QPalette.ColorRole.PlaceholderText, QPalette.ColorRole.Base),
        (QPalette.ColorRole.ToolTipText, QPalette.ColorRole.ToolTipBase),
    ):
        for group in (QPalette.ColorGroup.Active, QPalette.ColorGroup.Inactive, QPalette.ColorGroup.Disabled):
            pair = made.color(group, words).name(), made.color(group, under).name()
            assert contrast(*pair) >= scheme.text_ratio, (words, group)


def test_sizes_rise_from_small_to_display() -> None:
    for scale in (type_scale(15), desk_scale(1366), desk_scale(1920)):
        sizes = [scale.small, scale.body, scale.heading, scale.title, scale.display]
        assert sizes == sorted(set(sizes))
        assert scale.small >= 13


def test_desk_text_grows_with_the_window_between_bounds() -> None:
    bodies = [desk_scale(width).body for width in (600, 1366, 1643, 1920, 3840)]
    assert bodies[0] == bodies[1] < bodies[2] < bodies[3] == bodies[4]


def test_a_digit_comes_out_at_least_as_high_as_asked(qapp: QGuiApplication) -> None:
    family = load_fonts(FONTS)
    # A 14-inch panel, 174 mm high, of 1080 lines, seen from 3 m at 22 arc minutes: 19.199 mm.
    height = digit_height_px(3.0, 22.0, 1080 / 174)
    assert height == pytest.approx(19.199 * 1080 / 174, abs=0.01)
    metrics = QFontMetricsF(lettering(family, font_px(height, family, Weight.BOLD), Weight.BOLD))
    for digit in "0123456789":
        assert metrics.tightBoundingRect(digit).height() >= height - 1.0
    assert metrics.capHeight() >= height - 1.0


def test_without_font_files_the_family_is_one_the_system_has(qapp: QGuiApplication, tmp_path: Path) -> None:
    (tmp_path / "broken.otf").write_bytes(b"no font at all")
    assert load_fonts(tmp_path)


def test_figures_have_equal_width(qapp: QGuiApplication) -> None:
    family = load_fonts(FONTS)
    metrics = QFontMetricsF(Look(DARK, family, type_scale(15)).font(100))
    assert metrics.horizontalAdvance("1111") == pytest.approx(metrics.horizontalAdvance("0000"))


class Panel:
    """A screen that reports what it is told to."""

    def __init__(self, lines: int, millimetres: float) -> None:
        self.lines, self.millimetres = lines, millimetres

    def physicalSize(self) -> QSizeF:  # noqa: N802
        return QSizeF(self.millimetres * 16 / 9, self.millimetres)

    def geometry(self) -> QRect:
        return QRect(0, 0, self.lines * 16 // 9, self.lines)

    def logicalDotsPerInch(self) -> float:  # noqa: N802
        return 96.0


@pytest.mark.parametrize(
    ("lines", "millimetres", "expected"),
    [(1080, 174.0, 1080 / 174), (1080, 685.0, 1080 / 685), (1080, 0.0, 96 / 25.4), (1080, 9.0, 96 / 25.4)],
)
def test_pixels_a_mm_come_from_the_panel_unless_its_size_cannot_be(
    lines: int, millimetres: float, expected: float
) -> None:
    assert px_per_mm(cast("QScreen", Panel(lines, millimetres))) == pytest.approx(expected)
