"""Contrast and character heights against values worked or published outside the project."""

import pytest

from app.views.contrast import contrast, held
from app.views.lettering import character_mm

WHITE, BLACK = "#FFFFFF", "#000000"

# Blue on white 8.59: published in accessibility guidance. The others worked by hand from the WCAG 2.2 formula
# (W3C, Web Content Accessibility Guidelines 2.2, definitions of contrast ratio and relative luminance).
AGAINST_WHITE = [
    ("#0000FF", 8.59, 0.005),
    (BLACK, 21.0, 1e-9),
    ("#767676", 4.5422, 5e-5),
    ("#777777", 4.4781, 5e-5),
    ("#949494", 3.0335, 5e-5),
    ("#959595", 2.9953, 5e-5),
    ("#595959", 7.0047, 5e-5),
    ("#FF0000", 3.9985, 5e-5),
    ("#00FF00", 1.3722, 5e-5),
]

# The Okabe-Ito palette (Okabe and Ito, Color Universal Design, jfly), worked by hand from the same formula.
OKABE_ITO = [
    ("#E69F00", 2.25, 9.32),
    ("#56B4E9", 2.31, 9.10),
    ("#009E73", 3.42, 6.14),
    ("#F0E442", 1.32, 15.88),
    ("#0072B2", 5.19, 4.05),
    ("#D55E00", 3.87, 5.43),
    ("#CC79A7", 3.06, 6.86),
]

# Heights in mm worked from h = 2 D tan(a / 2). The angles are those of ISO 9241-3: 16 least, 20-22 preferred.
CHARACTER_MM = [
    (16, (2.793, 4.654, 9.308, 13.963, 23.271)),
    (20, (3.491, 5.818, 11.636, 17.453, 29.089)),
    (22, (3.840, 6.400, 12.799, 19.199, 31.998)),
]
DISTANCES_M = (0.6, 1.0, 2.0, 3.0, 5.0)


@pytest.mark.parametrize(("colour", "expected", "tolerance"), AGAINST_WHITE)
def test_contrast_with_white_is_that_of_the_formula(colour: str, expected: float, tolerance: float) -> None:
    assert contrast(colour, WHITE) == pytest.approx(expected, abs=tolerance)
    assert contrast(WHITE, colour) == contrast(colour, WHITE)


def test_yellow_on_black_is_the_worked_one() -> None:
    assert contrast("#FFFF00", BLACK) == pytest.approx(19.5560, abs=5e-5)


@pytest.mark.parametrize(("colour", "on_white", "on_black"), OKABE_ITO)
def test_okabe_ito_colours_have_the_worked_contrasts(colour: str, on_white: float, on_black: float) -> None:
    assert contrast(colour, WHITE) == pytest.approx(on_white, abs=0.005)
    assert contrast(colour, BLACK) == pytest.approx(on_black, abs=0.005)


def test_the_lightest_passing_grey_is_the_boundary() -> None:
    # Worked from the same formula: on white #767676 passes 4.5:1 and #777777 fails, #949494 passes 3:1 and
    # #959595 fails: no rounding up.
    assert held("#AAAAAA", (WHITE,), 4.5) == "#767676"
    assert held("#AAAAAA", (WHITE,), 3.0) == "#949494"
    assert held("#AAAAAA", (WHITE,), 7.0) == "#595959"


@pytest.mark.parametrize(("arcmin", "heights"), CHARACTER_MM)
def test_character_heights_are_the_worked_ones(arcmin: float, heights: tuple[float, ...]) -> None:
    for distance, height in zip(DISTANCES_M, heights, strict=True):
        assert character_mm(distance, arcmin) == pytest.approx(height, abs=5e-4)


def test_character_height_agrees_with_the_linear_rule_of_nureg_0700() -> None:
    # NUREG-0700: height = 6.283 D MA / 21600.
    assert character_mm(3.0, 22.0) == pytest.approx(6.283 * 3000.0 * 22.0 / 21600.0, abs=2e-3)
