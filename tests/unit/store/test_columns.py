"""Moments keep their instant, names their text."""

from datetime import UTC, datetime, timedelta
from uuid import UUID
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy.dialects.sqlite import dialect as sqlite

from app.store.columns import UtcDateTime, UuidText
from tests.strategies import ZONES

DIALECT = sqlite()
MOMENTS = st.integers(-(10**15), 10**16).map(
    lambda us: datetime(1970, 1, 1, tzinfo=UTC) + timedelta(microseconds=us)
)


@given(MOMENTS, st.sampled_from(ZONES))
def test_a_moment_of_any_zone_comes_back_as_the_same_instant_in_utc(moment: datetime, zone: str) -> None:
    stored = UtcDateTime().process_bind_param(moment.astimezone(ZoneInfo(zone)), DIALECT)
    back = UtcDateTime().process_result_value(stored, DIALECT)
    assert back == moment
    assert back is not None
    assert back.utcoffset() == timedelta(0)


def test_a_moment_is_kept_as_microseconds_of_unix_time() -> None:
    # POSIX seconds since the epoch: 1 000 000 000 s was 2001-09-09 01:46:40 UTC (`date -u -d @1000000000`).
    moment = datetime(2001, 9, 9, 1, 46, 40, tzinfo=UTC)
    assert UtcDateTime().process_bind_param(moment, DIALECT) == 1_000_000_000_000_000


def test_a_moment_without_a_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="time zone"):
        UtcDateTime().process_bind_param(datetime(2026, 3, 1, 7, 0), DIALECT)  # noqa: DTZ001


def test_the_two_moments_of_an_hour_that_comes_twice_stay_apart() -> None:
    # On 25 October 2026 clocks in Lisbon go back from 02:00 to 01:00.
    first = datetime(2026, 10, 25, 1, 30, tzinfo=ZoneInfo("Europe/Lisbon"))
    stored = [UtcDateTime().process_bind_param(first.replace(fold=fold), DIALECT) for fold in (0, 1)]
    assert None not in stored
    assert (stored[1] or 0) - (stored[0] or 0) == 3_600_000_000


@given(st.uuids())
def test_a_name_is_sixteen_bytes_in_the_file_and_the_same_text_outside(name: UUID) -> None:
    stored = UuidText().process_bind_param(str(name), DIALECT)
    assert stored == name.bytes
    assert UuidText().process_result_value(stored, DIALECT) == str(name)


def test_nothing_stays_nothing() -> None:
    for kind in (UtcDateTime(), UuidText()):
        assert kind.process_bind_param(None, DIALECT) is None
        assert kind.process_result_value(None, DIALECT) is None


def test_text_that_is_no_name_is_refused() -> None:
    with pytest.raises(ValueError, match="UUID"):
        UuidText().process_bind_param("run 7", DIALECT)
