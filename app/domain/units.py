"""Whole milliseconds, and how they are made from and shown as seconds."""

from decimal import ROUND_HALF_UP, Decimal

MS_PER_SECOND = 1000


def milliseconds(seconds: float | Decimal) -> int:
    """Whole milliseconds of a length in seconds, halves rounded up; the decimal text decides, not the binary.

    Raises ValueError when the length is not finite.
    """
    exact = seconds if isinstance(seconds, Decimal) else Decimal(str(seconds))
    if not exact.is_finite():
        raise ValueError(f"{seconds} is not a length of time")
    return int((exact * MS_PER_SECOND).quantize(Decimal(1), rounding=ROUND_HALF_UP))


def seconds_text(ms: int) -> str:
    """Seconds as the trade writes them: `3`, `1.5`; no trailing zeros."""
    whole, rest = divmod(abs(ms), MS_PER_SECOND)
    sign = "-" if ms < 0 else ""
    return f"{sign}{whole}" + (f".{rest:03d}".rstrip("0") if rest else "")


def clock_text(ms: int) -> str:
    """A length as `m:ss`, or `h:mm:ss` from one hour on; part seconds are dropped."""
    seconds = max(ms, 0) // MS_PER_SECOND
    minutes, seconds = divmod(seconds, 60)
    hours, minutes = divmod(minutes, 60)
    return f"{hours}:{minutes:02d}:{seconds:02d}" if hours else f"{minutes}:{seconds:02d}"


def exact_clock_text(ms: int) -> str:
    """The same with its part seconds, where there are any: `6:00:00.1`."""
    part = max(ms, 0) % MS_PER_SECOND
    return clock_text(ms) + (f".{part:03d}".rstrip("0") if part else "")
