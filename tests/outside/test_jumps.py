"""Jumps, landings, balance and the errors of a video against published and worked values."""

import math

import pytest

from app.analysis.balance import (
    anterior_reach_apart,
    balance_errors,
    balance_total,
    landing_band,
    reach_composite,
)
from app.analysis.jumps import (
    Hop,
    fast_contact,
    flight_over_contact,
    height_over_contact,
    height_over_take_off,
    jump_height,
    take_off_speed,
    ten_hops,
)
from app.analysis.tests_catalog import field_test
from app.analysis.tests_kinds import FieldTest
from app.analysis.tests_values import counting
from app.analysis.video import contact_error, height_error_one_frame, height_error_random, video_jump


def in_catalogue(key: str) -> FieldTest:
    """The test of this key in the catalogue."""
    found = field_test(key)
    assert found is not None
    return found


# h = FT^2 x 9.81 / 8: PMC9750644, table 1; 0.6 s as 44.1 cm was seen, the others are worked from the formula.
@pytest.mark.parametrize(
    ("flight", "height"),
    [
        (0.3, 0.110363),
        (0.4, 0.196200),
        (0.444, 0.241738),
        (0.5, 0.306563),
        (0.6, 0.441450),
        (0.7, 0.600862),
    ],
)
def test_height_is_that_of_the_time_in_flight(flight: float, height: float) -> None:
    assert jump_height(flight) == pytest.approx(height, abs=6e-7)
    assert jump_height(flight) == pytest.approx(1.22625 * flight**2)


@pytest.mark.parametrize(("flight", "height"), [(0.5, 0.306458), (0.6, 0.441299)])
def test_standard_gravity_changes_the_fourth_place(flight: float, height: float) -> None:
    # Worked with g = 9.80665 m/s^2.
    assert jump_height(flight, 9.80665) == pytest.approx(height, abs=6e-7)


def test_no_flight_is_no_height() -> None:
    # By the same formula.
    assert jump_height(0) == 0
    landed = video_jump(0, 48, 48, 240)
    assert (landed.flight_s, landed.height_m, landed.height_error_m) == (0, 0, 0)


def test_speed_at_take_off_is_that_of_half_the_flight() -> None:
    # v = g t / 2, worked: 0.5 s gives 2.4525 m/s.
    assert take_off_speed(0.5) == pytest.approx(2.4525)


def test_the_two_reactive_strength_indices_are_two() -> None:
    # Worked from PMC9750644, table 1 (height / contact): 1.5328 and 1.2263 m/s; and 0.5 / 0.2 = 2.5.
    assert height_over_contact(jump_height(0.5), 0.20) == pytest.approx(1.5328, abs=5e-5)
    assert height_over_contact(jump_height(0.5), 0.25) == pytest.approx(1.2263, abs=5e-5)
    assert flight_over_contact(0.5, 0.2) == pytest.approx(2.5)


# Southey et al. 2024, Kinesiology 56(2): mean flight and contact in ms and the mean index as printed.
@pytest.mark.parametrize(
    ("flight", "contact", "printed", "spread"), [(444, 180, 2.52, 0.43), (500, 209, 2.46, 0.38)]
)
def test_a_published_index_can_be_flight_over_contact_only(
    flight: float, contact: float, printed: float, spread: float
) -> None:
    by_flight = flight_over_contact(flight / 1000, contact / 1000)
    by_height = height_over_contact(jump_height(flight / 1000), contact / 1000)
    assert abs(by_flight - printed) < spread
    assert abs(by_height - printed) > 2 * spread


# Worked from the same means: flight over contact, and height over contact, which is another figure.
@pytest.mark.parametrize(
    ("flight", "contact", "by_flight", "by_height"), [(444, 180, 2.467, 1.343), (500, 209, 2.392, 1.467)]
)
def test_means_of_flight_and_contact_give_both_indices(
    flight: float, contact: float, by_flight: float, by_height: float
) -> None:
    for key, value in (("drop_jump_flight", by_flight), ("drop_jump_height", by_height)):
        assert in_catalogue(key).value_of([contact, flight]) == pytest.approx(value, abs=5e-4)
    assert flight_over_contact(flight / 1000, contact / 1000) == pytest.approx(by_flight, abs=5e-4)


def test_a_tried_jump_is_worked_out_as_its_formula() -> None:
    # As above: 0.5 s of flight after 0.2 s are 2.5 and 1.5328 m/s; 0.306563 m in 0.7 s to take-off.
    assert in_catalogue("drop_jump_flight").value_of([200, 500]) == pytest.approx(2.5)
    assert in_catalogue("drop_jump_height").value_of([200, 500]) == pytest.approx(1.5328, abs=5e-5)
    assert in_catalogue("jump_modified_index").value_of([700, 500]) == pytest.approx(0.306563 / 0.7, abs=1e-6)


def test_tries_at_ten_hops_count_by_the_mean_of_the_best_five() -> None:
    # Harper et al. 2011, from memory.
    test = in_catalogue("ten_hops_flight")
    values = [2.0, 2.9, 2.1, 2.8, 2.2, 2.7, 2.3, 2.6, 2.4, 2.5]
    assert test.tries == 10
    assert counting(values, test.counts, test.more) == pytest.approx(2.7)
    assert counting(values[:5], test.counts, test.more) == pytest.approx(2.4)
    assert counting(values[:4], test.counts, test.more) is None


def test_landing_errors_are_the_mean_of_three_jumps_of_19_at_most() -> None:
    # Padua et al. 2009, Am J Sports Med 37:1996-2002: 15 items of 0 or 1 and two of 0 to 2, from memory; the
    # box of 30 cm was seen in a secondary text.
    test = in_catalogue("landing_errors")
    assert (test.tries, test.most, "30 cm" in test.name) == (3, 15 + 2 * 2, True)
    assert counting([4, 5, 7], test.counts, test.more) == pytest.approx(16 / 3)


def test_tried_stances_are_added_up_with_the_cap() -> None:
    # University of North Carolina, manual of the Balance Error Scoring System: six stances, 60 errors.
    test = in_catalogue("balance_errors")
    assert (len(test.parts), test.most) == (6, 60)
    assert test.value_of([0, 2, 1, 3, 6, 4]) == 16
    assert test.value_of([0, 2, 1, 3, 12, 4]) == 20


@pytest.mark.parametrize("key", ["stance_open", "stance_closed"])
def test_a_stance_on_one_leg_is_held_for_30_s_at_most(key: str) -> None:
    # 30 s on one leg, eyes open and closed: exercise.trekeducation.org after Potach and Chu (secondary).
    test = in_catalogue(key)
    assert (test.unit, test.most, test.by_side) == ("s", 30, True)


def test_the_modified_index_is_height_over_time_to_take_off() -> None:
    # Ebben and Petushek 2010, from memory: 0.35 m / 0.70 s = 0.50.
    assert height_over_take_off(0.35, 0.70) == pytest.approx(0.50)


def test_250_ms_is_no_longer_a_fast_contact() -> None:
    # Schmidtbleicher 1992, as quoted by World Rugby: fast under 250 ms.
    assert fast_contact(0.2499)
    assert not fast_contact(0.250)
    assert not any(fast_contact(contact) for contact in (0.3, 0.5)), "of a counter-movement jump"
    assert ten_hops([Hop(0.250, 0.5), Hop(0.251, 0.5), *[Hop(0.2499, 0.5)] * 8]).slow == 2


def test_ten_hops_give_the_mean_of_the_best_five() -> None:
    # Harper et al. 2011, from memory. Contacts of 0.2 s; flights so that flight / contact is 2.0, 2.1 ...
    # 2.9.
    hops = [Hop(0.2, 0.2 * (2 + number / 10)) for number in range(10)]
    found = ten_hops(hops)
    assert found.flight_over_contact == pytest.approx((2.9 + 2.8 + 2.7 + 2.6 + 2.5) / 5)
    expected = sum(9.81 * (0.2 * r) ** 2 / 8 / 0.2 for r in (2.9, 2.8, 2.7, 2.6, 2.5)) / 5
    assert found.height_over_contact == pytest.approx(expected)


@pytest.mark.parametrize("count", [9, 11])
def test_other_than_ten_rebounds_give_no_index(count: int) -> None:
    # The test as remembered from Harper et al. 2011: 11 contacts, of which 10 are rebounds.
    found = ten_hops([Hop(0.2, 0.5)] * count)
    assert found.flight_over_contact is None
    assert found.reason == "The test asks for ten rebounds."


# Worked from dh = g T dT / 4 at T = 0.5 s, in cm: one frame, and the SD of two even errors of a frame.
FRAME_ERRORS = [(30, 4.09, 1.67), (60, 2.04, 0.83), (120, 1.02, 0.42), (240, 0.51, 0.21), (1000, 0.12, 0.05)]


@pytest.mark.parametrize(("fps", "one_frame", "random"), FRAME_ERRORS)
def test_a_frame_rate_brings_its_error_of_height(fps: float, one_frame: float, random: float) -> None:
    assert height_error_one_frame(0.5, fps) * 100 == pytest.approx(one_frame, abs=5.1e-3)
    assert height_error_random(0.5, fps) * 100 == pytest.approx(random, abs=5.1e-3)


# Worked: one frame of a contact of 0.2 s, in %.
@pytest.mark.parametrize(("fps", "percent"), [(30, 16.7), (60, 8.3), (120, 4.2), (240, 2.1), (1000, 0.5)])
def test_a_frame_rate_brings_its_error_of_contact(fps: float, percent: float) -> None:
    assert contact_error(0.2, fps) * 100 == pytest.approx(percent, abs=0.05)


@pytest.mark.parametrize(
    ("fps", "refused", "warned"),
    [(60, True, False), (119, True, False), (120, False, True), (239, False, True), (240, False, False)],
)
def test_a_coarse_video_gives_no_contact_time_or_a_warning(
    fps: float, *, refused: bool, warned: bool
) -> None:
    # A choice that follows from the table above; no source.
    jump = video_jump(0, round(0.2 * fps), round(0.7 * fps), fps)
    assert (jump.refused is not None) is refused
    assert (jump.contact_s is None) is refused
    assert (jump.height_over_contact is None) is refused
    assert (jump.warning is not None) is warned
    assert jump.height_m == pytest.approx(0.3066, abs=0.012)


# (anterior + posteromedial + posterolateral) / (3 x limb length) x 100: Plisky et al. 2006 (secondary);
# worked.
@pytest.mark.parametrize(
    ("reaches", "limb", "composite"),
    [
        ((68, 96, 94), 90, 95.5556),
        ((70, 97, 93), 91, 95.2381),
        ((63, 95, 92), 90, 92.5926),
        ((65, 96, 94), 89, 95.5056),
    ],
)
def test_the_composite_of_reaches(reaches: tuple[float, float, float], limb: float, composite: float) -> None:
    assert reach_composite(*reaches, limb) == pytest.approx(composite, abs=5e-5)


def test_four_centimetres_are_not_more_than_four() -> None:
    # "> 4 cm": Plisky et al. 2006, J Orthop Sports Phys Ther 36:911 (secondary).
    assert not anterior_reach_apart(68.0, 64.0)
    assert not anterior_reach_apart(64.0, 68.0)
    assert anterior_reach_apart(63.9, 68.0)
    assert anterior_reach_apart(68.0, 63.9)


def test_balance_errors_are_added_up_and_capped() -> None:
    # University of North Carolina, manual of the Balance Error Scoring System: at most 10 a condition, 60 in
    # all.
    assert balance_total([0, 2, 1, 3, 6, 4]) == 16
    assert balance_errors(12) == 10
    assert balance_errors(None) == 10
    assert balance_total([99, None, 10, 11, 12, 13]) == 60
    assert balance_total([0, 2, 1]) is None
    assert balance_total([10] * 6) == 60


def test_the_random_error_is_that_of_two_even_errors() -> None:
    # The variance of an even error of width 1 is 1/12 (any textbook); two of them: 1/6.
    assert height_error_random(0.5, 240) / height_error_one_frame(0.5, 240) == pytest.approx(
        math.sqrt(2 / 12)
    )


# Bands of the Landing Error Scoring System: Padua et al. 2009, Am J Sports Med 37:1996-2002, from memory.
@pytest.mark.parametrize(
    ("errors", "band"),
    [
        (0, "excellent"),
        (4, "excellent"),
        (4.01, "good"),
        (5, "good"),
        (5.34, "moderate"),
        (6, "moderate"),
        (6.7, "poor"),
    ],
)
def test_bands_of_landing_errors(errors: float, band: str) -> None:
    assert landing_band(errors) == band
