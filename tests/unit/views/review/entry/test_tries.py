"""Tries as they are typed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.jumps import TOO_FEW_REBOUNDS
from app.analysis.one_rep_max import TOO_MANY
from app.analysis.tests_catalog import CATALOGUE, field_test
from app.analysis.tests_kinds import FieldTest, Part
from app.analysis.video import COARSE, TOO_COARSE
from app.views.review.entry.telling import (
    BOTH_INDICES,
    CAPPED,
    ESTIMATES,
    JUMPED,
    SLOW,
    SLOW_CONTACTS,
    SQUARE_SHARE,
    Said,
    told_of_hops,
)
from app.views.review.entry.tries import (
    NO_NUMBER,
    NOTHING_COUNTED,
    OUT_OF_BOUNDS,
    PARTS_OR_ONE,
    PARTS_WANTED,
    TWO_WAYS,
    WHOLE_WANTED,
    Written,
    typed_part,
    typed_try,
)
from app.views.review.entry.video_tries import (
    CONTACT_ERROR,
    HEIGHT_ERROR,
    IN_ORDER,
    MOVEMENT_FRAMES,
    NO_RATE,
    THREE_FRAMES,
    TWO_FRAMES,
    VIDEO,
    frames_a_second,
    video_try,
)
from app.views.review.typed import plain


def test_of(key: str) -> FieldTest:
    found = field_test(key)
    assert found is not None
    return found


test_of.__test__ = False  # type: ignore[attr-defined]
HOP, TRIPLE = test_of("single_hop"), test_of("triple_hop")
DROP, JUMP = test_of("drop_jump_flight"), test_of("jump_height")
MODIFIED, SQUARE = test_of("jump_modified_index"), test_of("jumps_in_square")
STANCES, SET = test_of("balance_errors"), test_of("one_rep_max_epley")


@pytest.mark.parametrize(
    ("typed", "value"),
    [("151.5", "151.5"), ("151,5", "151.5"), (" 0 ", "0"), ("400", "400"), ("-0", "0"), ("1.5000", "1.5000")],
)
def test_a_number_is_kept_with_every_decimal_it_was_typed_with(typed: str, value: str) -> None:
    assert typed_try(HOP, typed).value == value


@pytest.mark.parametrize(
    "typed", ["", "far", "1 5", "nan", "inf", "1.2.3", "1e2", "1_5", "1e-400", "1.0000000"]
)
def test_what_is_no_number_is_refused_with_what_would_be_one(typed: str) -> None:
    problem = typed_try(HOP, typed).problem
    assert problem is not None
    assert problem.text == NO_NUMBER
    assert problem.values["most"] == "400 cm"


@pytest.mark.parametrize("typed", ["-1", "400.1", "1000000000"])
def test_a_number_outside_of_the_test_is_refused_with_its_bounds(typed: str) -> None:
    problem = typed_try(HOP, typed).problem
    assert problem is not None
    assert problem.text == OUT_OF_BOUNDS
    assert (problem.values["least"], problem.values["most"]) == ("0", "400 cm")


@pytest.mark.parametrize(
    ("typed", "one", "other"),
    [("1,200", "1.2", "1200"), ("1.150", "1.15", "1150"), ("1.151", "1.1510", "1151")],
)
def test_a_number_that_can_be_read_in_two_ways_is_asked_for_again(typed: str, one: str, other: str) -> None:
    problem = typed_try(TRIPLE, typed).problem
    assert problem == Said(TWO_WAYS, {"typed": typed, "one": one, "other": other})
    assert typed_try(TRIPLE, one).value == one
    assert typed_try(TRIPLE, other).value == other
    assert typed_try(HOP, typed).value == typed.replace(",", ".")  # 12 m are no single hop


def test_a_try_without_a_jump_is_none() -> None:
    assert typed_try(SQUARE, "0 0").problem == Said(NOTHING_COUNTED)
    assert typed_try(SQUARE, "0 3").value == "0"
    assert typed_try(STANCES, "0 0 0 0 0 0").value == "0"
    assert typed_try(SET, "0 5").problem is not None


@given(st.text(max_size=12), st.sampled_from(CATALOGUE))
def test_whatever_is_typed_it_is_a_value_or_a_problem(typed: str, test: FieldTest) -> None:
    tried = typed_try(test, typed)
    assert bool(tried.written) is (tried.problem is None)
    if tried.value is not None and not test.parts:
        assert test.least <= float(tried.value) <= test.most


def test_a_jump_is_read_from_frames_with_the_error_of_one_of_them() -> None:
    # 120 frames at 240 a second are 0.5 s: g t^2 / 8 = 0.3065 m; one frame changes it by g t / (4 fps)
    tried = video_try(JUMP, "412 532", 240)
    assert tried.value == "30.66"
    # and by chance, both ends off evenly within a frame, by that over sqrt 6.
    assert [(said.text, said.values) for said in tried.aside] == [
        (HEIGHT_ERROR, {"error": "0.5", "chance": "0.2"}),
        (JUMPED, {"height": "30.7", "speed": "2.45"}),
    ]
    assert tried.frames == "412 532"


def test_a_rebound_is_read_from_three_frames() -> None:
    tried = video_try(DROP, "100 148 250", 240)  # contact 48 frames, flight 102: 102 / 48
    assert tried.value == "2.125"
    assert tried.written == (
        Written("drop_jump.contact", "200.0", "ms"),
        Written("drop_jump.flight", "425.0", "ms"),
    )
    assert [said.text for said in tried.aside] == [BOTH_INDICES, CONTACT_ERROR]


def test_a_coarse_video_is_warned_of_and_a_coarser_one_refused() -> None:
    assert [said.text for said in video_try(DROP, "100 124 175", 120).aside] == [
        BOTH_INDICES,
        CONTACT_ERROR,
        COARSE,
    ]
    refused = video_try(DROP, "100 112 140", 60)
    assert refused.value is None
    assert refused.problem is not None
    assert refused.problem.text == TOO_COARSE


@pytest.mark.parametrize(
    ("test", "typed", "fps", "problem"),
    [
        (JUMP, "412 532", None, NO_RATE),
        (JUMP, "412", 240.0, TWO_FRAMES),
        (JUMP, "412 5.5", 240.0, TWO_FRAMES),
        (DROP, "412 532", 240.0, THREE_FRAMES),
        (MODIFIED, "412 532", 240.0, MOVEMENT_FRAMES),
        (JUMP, "532 412", 240.0, IN_ORDER),
        (DROP, "100 100 250", 240.0, IN_ORDER),
        (JUMP, "0 999999", 240.0, OUT_OF_BOUNDS),
    ],
)
def test_frames_that_cannot_be_are_refused_in_words(
    test: FieldTest, typed: str, fps: float | None, problem: str
) -> None:
    tried = video_try(test, typed, fps)
    assert tried.value is None
    assert tried.problem is not None
    assert tried.problem.text == problem


@given(st.text(max_size=15), st.sampled_from(sorted(VIDEO)), st.floats(1, 1000))
def test_whatever_frames_are_typed_they_are_a_value_or_a_problem(typed: str, key: str, fps: float) -> None:
    tried = video_try(test_of(key), typed, fps)
    assert bool(tried.written) is (tried.problem is None)


@pytest.mark.parametrize(
    ("typed", "fps"), [("240", 240.0), ("59,94", 59.94), ("0", None), ("x", None), ("nan", None)]
)
def test_a_frame_rate_is_a_number_above_nought(typed: str, fps: float | None) -> None:
    assert frames_a_second(typed) == fps


def test_what_cannot_be_shown_is_left_out_of_words() -> None:
    assert plain("  quiet\x07 landing\x00 ") == "quiet landing"


@pytest.mark.parametrize("typed", ["80 6", "80 x 6", "80x6", "80;6", "80,0  6", "80 × 6"])
def test_a_set_is_typed_as_load_and_reps(typed: str) -> None:
    tried = typed_try(SET, typed)
    assert [(each.key, each.unit) for each in tried.written] == [
        ("rep_set.load", "kg"),
        ("rep_set.reps", "reps"),
    ]
    # 80 kg six times: 96, 92.903, 95.698 kg, worked from the formulas, which are from memory.
    (told,) = tried.aside
    assert (told.text, told.values) == (ESTIMATES, {"epley": "96.0", "brzycki": "92.9", "lombardi": "95.7"})
    assert tried.value == "96"


def test_a_set_of_too_many_reps_is_kept_and_says_that_it_estimates_nothing() -> None:
    tried = typed_try(SET, "60 20")
    assert len(tried.written) == 2
    assert tried.value is None
    assert [said.text for said in tried.aside] == [TOO_MANY]


@pytest.mark.parametrize(
    ("test", "typed", "problem"),
    [
        (SET, "80", PARTS_WANTED),
        (SET, "80 6 2", PARTS_WANTED),
        (SET, "80 6.5", WHOLE_WANTED),
        (SET, "80 0", OUT_OF_BOUNDS),
        (SET, "80 many", NO_NUMBER),
        (DROP, "200 500 1", PARTS_OR_ONE),
        (DROP, "5 500", OUT_OF_BOUNDS),
        (SQUARE, "8", PARTS_WANTED),
        (SQUARE, "8 -1", OUT_OF_BOUNDS),
        (STANCES, "1 2 3", PARTS_OR_ONE),
    ],
)
def test_numbers_that_make_no_try_are_refused_in_words(test: FieldTest, typed: str, problem: str) -> None:
    tried = typed_try(test, typed)
    assert (tried.written, tried.value) == ((), None)
    assert tried.problem is not None
    assert tried.problem.text == problem


def test_contact_and_flight_say_both_indices_and_a_long_contact() -> None:
    # 0.5 s over 0.2 s is 2.5; 0.306563 m over 0.2 s is 1.5328 m/s (worked from the formulas).
    (told,) = typed_try(DROP, "200 500").aside
    assert (told.text, told.values) == (BOTH_INDICES, {"flight": "2.50", "height": "1.53"})
    assert [said.text for said in typed_try(DROP, "250 500").aside] == [BOTH_INDICES, SLOW]


def test_an_index_alone_is_kept_as_it_is() -> None:
    assert typed_try(DROP, "2,1").written == (Written("drop_jump_flight", "2.1", "1"),)


def test_ten_hops_come_to_the_best_five_and_their_slow_contacts() -> None:
    hops = [(200.0, 400.0 + 10 * number) for number in range(9)] + [(260.0, 300.0)]
    best, slow = told_of_hops(hops)
    # The best five flights are 440 to 480 ms over 200: their mean is 2.3.
    assert best.values["flight"] == "2.30"
    assert (slow.text, slow.values) == (SLOW_CONTACTS, {"slow": "1"})
    (few,) = told_of_hops(hops[:9])
    assert few.text == TOO_FEW_REBOUNDS


def test_jumps_in_the_square_say_their_share_with_its_interval() -> None:
    (told,) = typed_try(SQUARE, "8 2").aside
    # 8 of 10: Wilson .490162 to .943318 (Newcombe 1998, from memory).
    assert told.text == SQUARE_SHARE
    assert told.values == {"good": "8", "n": "10", "share": "80", "low": "49", "high": "94"}


def test_six_stances_add_up_and_a_dash_is_one_that_could_not_be_held() -> None:
    assert typed_try(STANCES, "0 2 1 3 6 4").value == "16"
    not_held = typed_try(STANCES, "0 0 0 - 0 –")
    assert not_held.value == "20"
    assert not_held.remark == "both legs, foam, heel to toe, foam"
    (capped,) = typed_try(STANCES, "12 0 0 0 0 0").aside
    assert (capped.text, capped.values) == (CAPPED, {"sum": "10"})
    assert typed_try(STANCES, "21").written == (Written("balance_errors", "21", "errors"),)


def test_the_modified_index_is_read_from_the_first_movement_on() -> None:
    tried = video_try(MODIFIED, "100 268 398", 240)  # 700 ms to take-off, 541.7 ms in flight
    assert tried.written == (
        Written("countermovement.take_off", "700.0", "ms"),
        Written("countermovement.flight", "541.7", "ms"),
    )
    # 9.81 x 0.5417^2 / 8 = 0.3598 m; over 0.7 s 0.514 m/s.
    assert tried.value == "0.514"
    assert [said.text for said in tried.aside] == [JUMPED, HEIGHT_ERROR]


@given(st.text(max_size=12), st.sampled_from([part for test in CATALOGUE for part in test.parts]))
def test_whatever_is_typed_of_a_part_it_is_a_number_within_its_bounds_or_a_problem(
    typed: str, part: Part
) -> None:
    found = typed_part(part, typed)
    if isinstance(found, str):
        assert part.least <= float(found) <= part.most
        assert not part.whole or float(found).is_integer()
