"""Contacts, tension and volume are added up where they are known, and unknown where a part is."""

from datetime import timedelta

import pytest

from app.analysis.work_weeks import work_by_week, work_of
from tests.reviewed import MONDAY, session, totals


def test_an_unknown_load_leaves_the_volume_unknown_and_shows_what_is_known() -> None:
    found = work_of([session(), session(totals=totals(volume_kg=None, volume_complete=False))])
    assert found.volume_kg is None
    assert found.known_volume_kg == 460


def test_a_load_of_nought_is_known() -> None:
    assert work_of([session(totals=totals(volume_kg=0.0))]).volume_kg == 0


def test_one_session_without_known_contacts_leaves_them_unknown() -> None:
    assert work_of([session(), session(totals=totals(contacts=None))]).contacts is None
    assert work_of([session(), session(totals=totals(contacts=0))]).contacts == 24


def test_a_session_without_a_tempo_takes_nothing_from_the_tension() -> None:
    assert work_of([session(), session(totals=totals(tut_ms=None))]).tut_s == pytest.approx(368)
    assert work_of([session(totals=totals(tut_ms=None))]).tut_s is None


def test_an_imported_session_leaves_everything_unknown() -> None:
    found = work_of([session(), session(totals=None, imported=True)])
    assert (found.contacts, found.tut_s, found.volume_kg) == (None, None, None)


def test_no_session_is_no_work_and_not_nought() -> None:
    found = work_of([])
    assert (found.sessions, found.contacts, found.tut_s, found.volume_kg) == (0, None, None, None)


def test_weeks_without_a_session_are_left_out() -> None:
    weeks = work_by_week([session(MONDAY + timedelta(days=14)), session(), session()])
    assert {monday: work.contacts for monday, work in weeks.items()} == {
        MONDAY: 48,
        MONDAY + timedelta(days=14): 24,
    }
