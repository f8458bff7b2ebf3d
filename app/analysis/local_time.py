"""When a run began by the clock on the wall where it was done."""

from datetime import UTC, datetime, tzinfo
from zoneinfo import ZoneInfo

from app.domain.records import RunSummary


def local_start(summary: RunSummary, zone: str | None = None) -> datetime:
    """Beginning of a run in its own time zone, or in `zone` where one is named; UTC where it is unknown."""
    return summary.started_at.astimezone(known_zone(zone or summary.zone))


def known_zone(name: str) -> tzinfo:
    """The time zone of a name, or UTC where this machine knows none of that name."""
    try:
        return ZoneInfo(name)
    except (KeyError, ValueError, OSError):
        return UTC
