"""Dose: bands, and the reps each kind asks for."""

from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime, rep_band
from app.domain.tempo import parse_tempo


def test_a_band_of_one_value_is_not_ranged() -> None:
    assert Band.exactly(8) == Band(8, 8)
    assert not Band.exactly(8).ranged
    assert Band(8, 10).ranged


def test_every_kind_of_reps_says_how_many() -> None:
    reps = Band(8, 10)
    kinds = (
        TempoReps(reps, parse_tempo("3010")),
        HoldReps(reps, Band.exactly(4000)),
        StickReps(reps, Band(3000, 5000)),
        SignalReps(reps, 3000),
        OwnPaceReps(reps),
    )
    assert [rep_band(dose) for dose in kinds] == [reps] * len(kinds)


def test_timed_work_counts_as_one_rep() -> None:
    assert rep_band(WorkTime(Band(20_000, 30_000))) == Band.exactly(1)
