"""Reps, tempo and landings by stage, exercise and side, with intervals."""

import pytest

from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.part_chart import Part, part_chart
from tests.reviewed import part, record, session, totals
from tests.squads import nothing, season


def two_sides() -> AthleteRecord:
    left = part(Side.LEFT, totals=totals(prescribed=10, met=8, done=9, clean=8, tempo_known=10, tempo_kept=5))
    right = part(
        Side.RIGHT,
        exercise="Hold",
        landings=False,
        totals=totals(prescribed=12, met=10, done=10, clean=10, tempo_known=0, tempo_kept=0),
    )
    return record(sessions=(session(parts=(left, right)),))


def test_each_group_has_its_shares_with_wilson_intervals() -> None:
    # 8/10, 5/10 and 10/12: Newcombe 1998, Stat Med 17:857, method 3 (from memory to 4 places).
    charted = part_chart(two_sides(), Part.SIDE)
    reps, tempo, stuck = charted.data.all_series
    assert charted.data.names == ("left", "right")
    assert list(reps.values) == pytest.approx([0.8, 10 / 12])
    assert list(reps.low) == pytest.approx([0.490162, 0.551969], abs=5e-7)
    assert list(reps.high) == pytest.approx([0.943318, 0.953035], abs=5e-7)
    assert [*tempo.values, tempo.low[0]] == [0.5, None, pytest.approx(0.236593, abs=5e-7)]
    assert list(stuck.values) == [pytest.approx(8 / 9), None]


def test_extra_reps_stand_beside_and_in_no_share() -> None:
    assert part_chart(two_sides(), Part.SIDE).data.cells(0)[-1] == "1"


@pytest.mark.parametrize(
    ("by", "names"),
    [
        (Part.STAGE, ("Hold", "Catch")),
        (Part.EXERCISE, ("External rotation hold", "Drop landing")),
        (Part.SIDE, ("left", "right")),
    ],
)
def test_the_same_work_is_told_apart_in_three_ways(by: Part, names: tuple[str, ...]) -> None:
    charted = part_chart(season(), by)
    assert charted.data.names == names
    assert [why[0].of.partition(": ")[2] for why in charted.whys] == list(names)
    assert all(len(why) == 3 for why in charted.whys)


def test_many_long_names_keep_short_labels_and_their_whole_name_in_the_table() -> None:
    long = [f"{number} {'x' * 98}" for number in range(12)]
    parts = tuple(part(exercise=name) for name in long)
    data = part_chart(record(sessions=(session(parts=parts),)), Part.EXERCISE).data
    assert max(map(len, data.labels)) <= 6
    assert data.cells(3)[0] == long[3]


def test_of_nothing_there_is_no_share() -> None:
    data = part_chart(nothing(), Part.STAGE).data
    assert data.is_empty
    assert data.empty
