"""Column types: how a moment and a name of a row are kept."""

from datetime import UTC, datetime, timedelta
from uuid import UUID

from sqlalchemy import BigInteger, Dialect, LargeBinary
from sqlalchemy.types import TypeDecorator

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)


class UtcDateTime(TypeDecorator[datetime]):
    """A moment as whole microseconds since 1970 UTC: it sorts, and no time zone can be lost on the way.

    Takes moments of any zone and gives them back in UTC. Raises ValueError for one that has no zone.
    """

    impl = BigInteger
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> int | None:  # noqa: ARG002
        """The number that is stored."""
        if value is None:
            return None
        if value.utcoffset() is None:
            raise ValueError(f"{value.isoformat()} does not say in which time zone")
        return (value - _EPOCH) // _MICROSECOND

    def process_result_value(self, value: int | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """The moment, in UTC."""
        return None if value is None else _EPOCH + value * _MICROSECOND


class UuidText(TypeDecorator[str]):
    """A UUID, text outside and 16 bytes in the file. Raises ValueError for text that is none."""

    impl = LargeBinary(16)
    cache_ok = True

    def process_bind_param(self, value: str | None, dialect: Dialect) -> bytes | None:  # noqa: ARG002
        """The bytes that are stored."""
        return None if value is None else UUID(value).bytes

    def process_result_value(self, value: bytes | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """The UUID as text, lower case with hyphens."""
        return None if value is None else str(UUID(bytes=value))
