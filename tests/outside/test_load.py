"""Session load against the products of the published method."""

import pytest

from app.analysis.load import load_of
from tests.summaries import summary


@pytest.mark.parametrize(
    ("rpe", "minutes", "load"), [(7, 60, 420), (7, 75, 525), (9, 75, 675), (3, 30, 90), (4, 45, 180)]
)
def test_load_is_session_rpe_times_minutes(rpe: int, minutes: int, load: int) -> None:
    # Foster et al. 2001, J Strength Cond Res 15(1):109-115: RPE of the session x its length in minutes. The
    # products are arithmetic.
    assert load_of(summary(session_rpe=rpe, elapsed_ms=minutes * 60_000)) == load


def test_minutes_run_from_warm_up_to_cool_down_with_the_rests() -> None:
    # Foster's length is that of the whole session "including rest periods" (as quoted of Foster 1996): the
    # minutes of work alone would give less. 20 min of work and 25 min of rests at 4: 180, not 80.
    work_ms, rests_ms = 20 * 60_000, 25 * 60_000
    assert load_of(summary(session_rpe=4, elapsed_ms=work_ms + rests_ms)) == 180
