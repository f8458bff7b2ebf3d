"""Names that no two machines give twice: UUID version 7 (RFC 9562, section 5.7)."""

from uuid import UUID

RANDOM_BYTES = 10
_LATEST_MS = (1 << 48) - 1


def uuid7(ms: int, random: bytes) -> UUID:
    """A UUIDv7 of a moment, in ms since 1970 UTC, and of 10 random bytes, 74 bits of which are used.

    Text and bytes of these names sort by their moment. Raises ValueError when either does not fit.
    """
    if not 0 <= ms <= _LATEST_MS:
        raise ValueError(f"{ms} ms does not fit a UUIDv7")
    if len(random) != RANDOM_BYTES:
        raise ValueError(f"a UUIDv7 takes {RANDOM_BYTES} random bytes, not {len(random)}")
    rand_a = int.from_bytes(random[:2], "big") & 0xFFF
    rand_b = int.from_bytes(random[2:], "big") & ((1 << 62) - 1)
    return UUID(int=ms << 80 | 7 << 76 | rand_a << 64 | 0b10 << 62 | rand_b)
