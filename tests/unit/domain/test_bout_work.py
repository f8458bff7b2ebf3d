"""A dose laid out as phases."""

import pytest

from app.domain.bout_work import RepPhase, rep_phases, work_of
from app.domain.dose import Dose
from app.domain.plan import Exercise, Side, Sides
from app.domain.tempo import Begins, Phase
from app.domain.timeline import WorkSpan
from tests.planned import holds, own_pace, signals, sticks, tempo_reps, work_for

FAST_MS = 800


def laid(dose: Dose, sides: Sides = Sides.BOTH, side: Side = Side.BOTH) -> list[tuple[str, int, str, float]]:
    """Phase, rep, side and seconds of each span."""
    spans = work_of(Exercise("Any", dose, sides=sides), side, FAST_MS)
    return [
        (span.phase.value, span.rep, span.side.value, ((span.end_ms or 0) - span.start_ms) / 1000)
        for span in spans
    ]


@pytest.mark.parametrize(
    ("begins", "order"),
    [
        (Begins.ECCENTRIC, ["eccentric", "hold_lengthened", "concentric", "hold_shortened"]),
        (Begins.CONCENTRIC, ["concentric", "hold_shortened", "eccentric", "hold_lengthened"]),
        (Begins.HOLD, ["hold_shortened", "eccentric", "hold_lengthened", "concentric"]),
    ],
)
def test_a_rep_plays_its_phases_from_the_one_it_begins_with(begins: Begins, order: list[str]) -> None:
    assert [phase for phase, *_ in laid(tempo_reps(1, "4-3-2-1", begins))] == order


def test_the_digits_keep_their_meaning_whatever_is_played_first() -> None:
    spans = laid(tempo_reps(1, "4-3-2-1", Begins.CONCENTRIC))
    assert [seconds for *_, seconds in spans] == [2, 1, 4, 3]


def test_a_phase_of_nothing_is_not_laid() -> None:
    assert laid(tempo_reps(2, "3-0-1-0")) == [
        ("eccentric", 1, "both", 3),
        ("concentric", 1, "both", 1),
        ("eccentric", 2, "both", 3),
        ("concentric", 2, "both", 1),
    ]


def test_an_x_lasts_as_long_as_the_plan_gives_it() -> None:
    assert laid(tempo_reps(1, "2-0-X-0"))[1] == ("concentric", 1, "both", 0.8)


def test_half_seconds_are_whole_milliseconds() -> None:
    spans = work_of(Exercise("Any", tempo_reps(2, "1.5-0.1-1.5-0")), Side.BOTH, FAST_MS)
    assert [(span.start_ms, span.end_ms) for span in spans] == [
        (0, 1500),
        (1500, 1600),
        (1600, 3100),
        (3100, 4600),
        (4600, 4700),
        (4700, 6200),
    ]


def test_holds_have_relaxing_between_and_none_after_the_last() -> None:
    assert laid(holds(3, 5, relax=1.5)) == [
        ("hold", 1, "both", 5),
        ("relax", 1, "both", 1.5),
        ("hold", 2, "both", 5),
        ("relax", 2, "both", 1.5),
        ("hold", 3, "both", 5),
    ]


def test_holds_without_relaxing_follow_one_another() -> None:
    assert [phase for phase, *_ in laid(holds(2, 5, relax=0))] == ["hold", "hold"]


def test_a_landing_is_moved_into_stuck_and_reset_but_for_the_last() -> None:
    assert laid(sticks(2, 5)) == [
        ("move", 1, "both", 2),
        ("stick", 1, "both", 5),
        ("reset", 1, "both", 4),
        ("move", 2, "both", 2),
        ("stick", 2, "both", 5),
    ]


def test_a_range_of_seconds_is_led_to_the_upper_with_a_mark_at_the_lower() -> None:
    spans = work_of(Exercise("Any", sticks(2, (3, 5))), Side.BOTH, FAST_MS)
    assert [(span.end_ms, span.mark_ms) for span in spans if span.phase is Phase.STICK] == [
        (7000, 5000),
        (18000, 16000),
    ]
    assert all(span.mark_ms is None for span in spans if span.phase is not Phase.STICK)


def test_a_single_length_has_no_mark() -> None:
    assert [span.mark_ms for span in work_of(Exercise("Any", holds(1, 5)), Side.BOTH, FAST_MS)] == [None]


def test_a_range_of_reps_is_led_to_the_upper() -> None:
    assert [rep for _, rep, *_ in laid(signals((2, 4), 3))] == [1, 2, 3, 4]


def test_every_rep_on_a_signal_lasts_to_the_next_the_last_one_too() -> None:
    assert laid(signals(2, 5)) == [("go", 1, "both", 5), ("go", 2, "both", 5)]


def test_own_pace_is_one_span_without_an_end() -> None:
    spans = work_of(Exercise("Any", own_pace(8), sides=Sides.LEFT), Side.LEFT, FAST_MS)
    assert spans == (WorkSpan(0, None, Phase.OWN, 1, Side.LEFT),)


def test_timed_work_is_one_span_and_rep_one() -> None:
    assert laid(work_for((20, 30))) == [("work", 1, "both", 30)]


def test_sides_that_alternate_change_every_rep_and_count_apart() -> None:
    assert [(rep, side) for _, rep, side, _ in laid(signals(2, 3), Sides.ALTERNATE, Side.RIGHT)] == [
        (1, "right"),
        (1, "left"),
        (2, "right"),
        (2, "left"),
    ]


def test_what_is_between_alternating_reps_belongs_to_the_rep_before_it() -> None:
    assert laid(holds(1, 5), Sides.ALTERNATE, Side.LEFT) == [
        ("hold", 1, "left", 5),
        ("relax", 1, "left", 2),
        ("hold", 1, "right", 5),
    ]


def test_the_phases_of_a_rep_say_what_is_only_between_reps() -> None:
    assert rep_phases(holds(3, (4, 6)), FAST_MS) == (
        RepPhase(Phase.HOLD, 6000, low_ms=4000),
        RepPhase(Phase.RELAX, 2000, between=True),
    )
    assert rep_phases(own_pace(3), FAST_MS) == ()
