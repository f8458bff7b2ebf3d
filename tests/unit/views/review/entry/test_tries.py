"""Tries as they are typed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.tests_catalog import CATALOGUE, field_test
from app.analysis.tests_kinds import FieldTest
from app.analysis.video import COARSE, TOO_COARSE
from app.views.review.entry.tries import (
    CONTACT_ERROR,
    HEIGHT_ERROR,
    IN_ORDER,
    NO_NUMBER,
    NO_RATE,
    OUT_OF_BOUNDS,
    THREE_FRAMES,
    TWO_FRAMES,
    VIDEO,
    frames_a_second,
    plain,
    typed_try,
    video_try,
)


def test_of(key: str) -> FieldTest:
    found = field_test(key)
    assert found is not None
    return found


test_of.__test__ = False  # type: ignore[attr-defined]
HOP, DROP, JUMP = test_of("single_hop"), test_of("drop_jump_flight"), test_of("jump_height")


@pytest.mark.parametrize(
    ("typed", "value"), [("151.5", "151.5"), ("151,5", "151.5"), (" 0 ", "0"), ("400", "400"), ("1e2", "100")]
)
def test_a_number_is_kept_with_every_decimal_it_was_typed_with(typed: str, value: str) -> None:
    assert typed_try(HOP, typed).value == value


@pytest.mark.parametrize("typed", ["", "far", "1 5", "nan", "inf", "1.2.3"])
def test_what_is_no_number_is_refused_with_what_would_be_one(typed: str) -> None:
    problem = typed_try(HOP, typed).problem
    assert problem is not None
    assert problem.text == NO_NUMBER
    assert problem.values["most"] == "400 cm"


@pytest.mark.parametrize("typed", ["-1", "400.1", "1e9"])
def test_a_number_outside_of_the_test_is_refused_with_its_bounds(typed: str) -> None:
    problem = typed_try(HOP, typed).problem
    assert problem is not None
    assert problem.text == OUT_OF_BOUNDS
    assert (problem.values["least"], problem.values["most"]) == ("0", "400 cm")


@given(st.text(max_size=12), st.sampled_from(CATALOGUE))
def test_whatever_is_typed_it_is_a_value_or_a_problem(typed: str, test: FieldTest) -> None:
    tried = typed_try(test, typed)
    assert (tried.value is None) is (tried.problem is not None)
    if tried.value is not None:
        assert test.least <= float(tried.value) <= test.most


def test_a_jump_is_read_from_frames_with_the_error_of_one_of_them() -> None:
    # 120 frames at 240 a second are 0.5 s: g t^2 / 8 = 0.3065 m; one frame changes it by g t / (4 fps)
    tried = video_try(JUMP, "412 532", 240)
    assert tried.value == "30.66"
    assert [(said.text, said.values) for said in tried.aside] == [(HEIGHT_ERROR, {"error": "0.5"})]
    assert tried.frames == "412 532"


def test_a_rebound_is_read_from_three_frames() -> None:
    tried = video_try(DROP, "100 148 250", 240)  # contact 48 frames, flight 102: 102 / 48
    assert tried.value == "2.125"
    assert [said.text for said in tried.aside] == [CONTACT_ERROR]


def test_a_coarse_video_is_warned_of_and_a_coarser_one_refused() -> None:
    assert [said.text for said in video_try(DROP, "100 124 175", 120).aside] == [CONTACT_ERROR, COARSE]
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
    assert (tried.value is None) is (tried.problem is not None)


@pytest.mark.parametrize(
    ("typed", "fps"), [("240", 240.0), ("59,94", 59.94), ("0", None), ("x", None), ("nan", None)]
)
def test_a_frame_rate_is_a_number_above_nought(typed: str, fps: float | None) -> None:
    assert frames_a_second(typed) == fps


def test_what_cannot_be_shown_is_left_out_of_words() -> None:
    assert plain("  quiet\x07 landing\x00 ") == "quiet landing"
