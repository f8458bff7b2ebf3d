"""Totals of a session keep extra reps apart, and say nothing of what nobody knows."""

from app.domain.reviewed import AthleteRecord, ReviewedSession, Totals
from tests.reviewed import MONDAY, TODAY


def test_extra_reps_are_those_beyond_what_was_prescribed() -> None:
    assert Totals(prescribed=100, met=90, done=92).extra == 2
    assert Totals(prescribed=100, met=0, done=0).extra == 0


def test_what_nobody_said_is_unknown() -> None:
    totals = Totals(prescribed=10, met=10, done=10)
    assert (totals.clean, totals.missed, totals.contacts, totals.tut_ms, totals.volume_kg) == (None,) * 5
    session = ReviewedSession("run-1", MONDAY, "Landing control", ended=False)
    assert (session.minutes, session.rpe, session.pain, session.totals) == (None,) * 4
    record = AthleteRecord("Hugo", MONDAY, MONDAY, TODAY)
    assert (record.since, record.reference) == (None, None)
