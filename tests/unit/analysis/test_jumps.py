"""Times that cannot be are refused, and what is not there is not made up."""

import pytest

from app.analysis.balance import CountShare, balance_errors, in_square, landings_stuck, reach_composite
from app.analysis.jumps import flight_over_contact, jump_height, mean_of_best
from app.analysis.one_rep_max import epley
from app.analysis.trend import mann_kendall, theil_sen, trend
from app.analysis.video import contact_error, frames_time, video_jump
from app.domain.plan import Side
from tests.reviewed import part, totals


def test_times_and_lengths_that_cannot_be_are_refused() -> None:
    with pytest.raises(ValueError, match="not negative"):
        jump_height(-0.1)
    with pytest.raises(ValueError, match="longer than nought"):
        flight_over_contact(0.5, 0)
    with pytest.raises(ValueError, match="has to last"):
        contact_error(0, 240)
    with pytest.raises(ValueError, match="has a length"):
        reach_composite(68, 96, 94, 0)
    with pytest.raises(ValueError, match="from nought"):
        balance_errors(-1)
    with pytest.raises(ValueError, match="1 to 12 reps"):
        epley(100, 0)


@pytest.mark.parametrize(
    ("first", "last", "fps"), [(10, 9, 240), (-1, 9, 240), (0, 9, 0), (0, 9, float("nan"))]
)
def test_frames_are_counted_forwards(first: int, last: int, fps: float) -> None:
    with pytest.raises(ValueError, match="counted forwards"):
        frames_time(first, last, fps)


def test_a_video_names_both_indices_apart() -> None:
    jump = video_jump(100, 148, 268, 240)
    assert (jump.contact_s, jump.flight_s) == (0.2, 0.5)
    assert jump.flight_over_contact == pytest.approx(2.5)
    assert jump.height_over_contact == pytest.approx(1.5328, abs=5e-5)


def test_the_best_of_too_few_is_none() -> None:
    assert mean_of_best([1, 2, 3], 5) is None
    assert mean_of_best([1, 2, 3], 0) is None


def test_landings_are_counted_by_side_where_they_were_marked() -> None:
    found = landings_stuck(
        [
            part(Side.LEFT, totals=totals(done=10, clean=7)),
            part(Side.LEFT, totals=totals(done=10, clean=8)),
            part(Side.RIGHT, totals=totals(done=10, clean=None)),
            part(Side.BOTH, landings=False),
        ]
    )
    assert found == {Side.LEFT: CountShare(15, 20)}
    assert found[Side.LEFT].share == 0.75


def test_no_jump_is_neither_in_nor_out_of_the_square() -> None:
    assert in_square(0, 0).share is None
    assert in_square(0, 0).interval is None
    assert in_square(3, 1).share == 0.75


def test_a_trend_needs_two_times() -> None:
    assert trend([5] * 8, range(8)).reason == "All points are of one time."
    with pytest.raises(ValueError, match="two times"):
        theil_sen([1, 1], [2, 3])
    with pytest.raises(ValueError, match="two values"):
        mann_kendall([1])


def test_a_course_that_stands_still_has_no_trend() -> None:
    found = mann_kendall([5] * 9)
    assert (found.s, found.z, found.p, found.tau_b) == (0, 0, 1, None)


def test_points_are_put_in_the_order_of_time_first() -> None:
    rising = trend([8, 7, 6, 5, 4, 3, 2, 1], [8, 7, 6, 5, 4, 3, 2, 1]).test
    assert rising is not None
    assert rising.s == 28
