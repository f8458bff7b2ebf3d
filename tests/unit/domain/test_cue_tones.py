"""Where the tones of a bout fall, and which of two gives way."""

import pytest

from app.domain.cue_tones import onset_kind, onset_ms, thin, ticks_before, work_tones
from app.domain.cue_values import Cue, CueKind
from app.domain.dose import Band, HoldReps, StickReps, WorkTime
from app.domain.plan import Side
from app.domain.tempo import Phase
from tests.bouts import BOTH, LEFT, bout_of, tempo_reps


def kinds_at(*wanted: CueKind, **work: object) -> list[int]:
    timeline, bout = bout_of(**work)  # type: ignore[arg-type]
    tones = work_tones(timeline.exercise_of(bout), bout)
    return [tone.at_ms for tone in tones if tone.kind in wanted]


def test_an_x_phase_gets_one_accent_and_a_phase_of_nothing_gets_none() -> None:
    timeline, bout = bout_of(tempo_reps("3-0-X-0", 2))
    kinds = [tone.kind for tone in work_tones(timeline.exercise_of(bout), bout)]
    assert kinds == [CueKind.ECCENTRIC, CueKind.EXPLOSIVE] * 2 + [CueKind.END]


def test_only_the_x_phase_of_an_explosive_tempo_is_accented() -> None:
    dose = tempo_reps("3-1-X-0", 2)
    assert onset_kind(dose, Phase.CONCENTRIC) is CueKind.EXPLOSIVE
    assert onset_kind(dose, Phase.ECCENTRIC) is CueKind.ECCENTRIC
    assert onset_kind(dose, Phase.HOLD_LENGTHENED) is CueKind.HOLD_LENGTHENED


def test_phases_of_four_seconds_and_more_are_ticked_for_their_last_three() -> None:
    assert kinds_at(CueKind.TICK, dose=tempo_reps("4-0-3.9-0", 1)) == [1_000, 2_000, 3_000]


def test_the_lower_bound_of_a_ranged_hold_is_marked() -> None:
    assert kinds_at(CueKind.MARK, dose=HoldReps(Band.exactly(2), Band(5_500, 9_000))) == [5_500, 16_500]


def test_continuous_work_is_marked_at_each_quarter() -> None:
    assert kinds_at(CueKind.MARK, dose=WorkTime(Band.exactly(60_000))) == [15_000, 30_000, 45_000]


@pytest.mark.parametrize(
    ("work_ms", "ticks", "sounding"),
    [
        (1_900, [], []),
        (2_000, [1_000], []),
        (2_500, [1_500], [1_500]),
        (3_000, [1_000, 2_000], [1_000, 2_000]),
        (3_900, [1_900, 2_900], [1_900]),
        (4_000, [1_000, 2_000, 3_000], []),
        (5_000, [2_000, 3_000, 4_000], [2_000, 3_000, 4_000]),
        (10_000, [7_000, 8_000, 9_000], [7_000, 8_000, 9_000]),
    ],
)
def test_short_work_is_ticked_from_a_second_after_its_start_where_no_quarter_is_marked(
    work_ms: int, ticks: list[int], sounding: list[int]
) -> None:
    # Quarters by hand: of 3.9 s at 0.975, 1.95 and 2.925 s. A mark is 120 ms long, a tick 50 ms.
    dose = WorkTime(Band.exactly(work_ms))
    assert kinds_at(CueKind.TICK, dose=dose) == ticks
    timeline, bout = bout_of(dose)
    tones = thin(tuple(work_tones(timeline.exercise_of(bout), bout)))
    assert [tone.at_ms for tone in tones if tone.kind is CueKind.TICK] == sounding
    assert sum(tone.kind is CueKind.MARK for tone in tones) == 3


def test_a_short_phase_that_is_no_timed_work_is_not_ticked() -> None:
    assert kinds_at(CueKind.TICK, dose=HoldReps(Band.exactly(2), Band.exactly(3_000))) == []


def test_a_landing_is_called_for_held_and_let_go() -> None:
    timeline, bout = bout_of(StickReps(Band.exactly(2), Band.exactly(3_000)))
    tones = [(tone.at_ms, tone.kind, tone.shown) for tone in work_tones(timeline.exercise_of(bout), bout)]
    assert [tone for tone in tones if tone[1] is not CueKind.TICK] == [
        (0, CueKind.EXPLOSIVE, "go"),
        (2_000, CueKind.HOLD, "stick"),
        (5_000, CueKind.RELEASE, "reset"),
        (9_000, CueKind.EXPLOSIVE, "go"),
        (11_000, CueKind.HOLD, "stick"),
        (14_000, CueKind.END, "bout done"),
    ]


@pytest.mark.parametrize(("phase_ms", "expected"), [(100, 70), (1_000, 250), (1_400, 350), (6_000, 400)])
def test_the_tone_of_a_phase_is_a_quarter_of_it_within_bounds(phase_ms: int, expected: int) -> None:
    assert onset_ms(CueKind.ECCENTRIC, phase_ms) == expected


def test_an_accent_is_as_long_whatever_the_phase_unless_that_is_shorter() -> None:
    assert [onset_ms(CueKind.EXPLOSIVE, length) for length in (5_000, 1_000, 100)] == [180, 180, 70]


def test_a_tick_gives_way_to_a_mark_and_a_mark_to_a_phase() -> None:
    phase = Cue(1_000, CueKind.HOLD, BOTH, 300, "hold")
    mark = Cue(950, CueKind.MARK, BOTH, 120, "lower bound reached")
    tick = Cue(940, CueKind.TICK, BOTH, 50, "1")
    assert thin([tick, mark, phase]) == (phase,)
    assert thin([tick, mark]) == (mark,)


def test_a_tick_that_would_sound_over_the_tail_of_a_phase_tone_is_left_out() -> None:
    phase = Cue(0, CueKind.HOLD, LEFT, 400, "hold")
    late, clear = (Cue(at, CueKind.TICK, LEFT, 50, "3") for at in (399, 400))
    assert thin([phase, late]) == (phase,)
    assert thin([phase, clear]) == (phase, clear)


def test_ticks_count_down() -> None:
    ticks = list(ticks_before(10_000, Side.RIGHT))
    assert [(tick.at_ms, tick.shown) for tick in ticks] == [(7_000, "3"), (8_000, "2"), (9_000, "1")]
