"""Answers of an invented athlete for tests."""

from datetime import UTC, datetime
from typing import Any

from app.domain.readiness import Readiness


def answers(**changes: Any) -> Readiness:  # noqa: ANN401 - whatever an answer holds
    """Readiness before a session: all four answered with 3, no pain; `changes` say what differs."""
    values: dict[str, Any] = {
        "id": "0190b5a0-0000-7000-8000-000000000002",
        "athlete": "Hugo",
        "at": datetime(2026, 11, 21, 16, 50, tzinfo=UTC),
        "zone": "Europe/Copenhagen",
        "sleep": 3,
        "fatigue": 3,
        "stress": 3,
        "soreness": 3,
        "pain": 0,
    }
    return Readiness(**(values | changes))
