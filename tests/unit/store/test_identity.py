"""Names of rows against the printed example of the standard, and their order."""

from uuid import RFC_4122, UUID

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.store.identity import RANDOM_BYTES, uuid7

MOMENTS = st.integers(0, (1 << 48) - 1)
RANDOM = st.binary(min_size=RANDOM_BYTES, max_size=RANDOM_BYTES)


def test_the_example_of_the_standard_comes_out() -> None:
    # RFC 9562, appendix A.6: 22 February 2022 14:22:22.00 GMT-05:00 is 0x017F22E279B0 ms;
    # rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
    made = uuid7(0x017F22E279B0, bytes.fromhex("0CC3" + "18C4DC0C0C07398F"))
    assert str(made).upper() == "017F22E2-79B0-7CC3-98C4-DC0C0C07398F"


@given(MOMENTS, RANDOM)
def test_version_variant_and_moment_stand_where_the_standard_puts_them(ms: int, random: bytes) -> None:
    made = uuid7(ms, random)
    assert (made.version, made.variant) == (7, RFC_4122)
    assert int.from_bytes(made.bytes[:6], "big") == ms


@given(MOMENTS, MOMENTS, RANDOM, RANDOM)
def test_later_names_sort_after_earlier_ones(one: int, other: int, random: bytes, more: bytes) -> None:
    early, late = sorted((one, other))
    if early != late:
        assert str(uuid7(early, random)) < str(uuid7(late, more))
        assert uuid7(early, random).bytes < uuid7(late, more).bytes


def test_all_seventy_four_random_bits_are_used() -> None:
    made = uuid7(0, b"\xff" * RANDOM_BYTES)
    assert made == UUID("00000000-0000-7fff-bfff-ffffffffffff")


@pytest.mark.parametrize(("ms", "size"), [(-1, 10), (1 << 48, 10), (0, 9), (0, 11)])
def test_what_does_not_fit_is_refused(ms: int, size: int) -> None:
    with pytest.raises(ValueError, match="UUIDv7"):
        uuid7(ms, bytes(size))
