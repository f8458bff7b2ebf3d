"""Hypothesis strategies shared by tests."""

from datetime import UTC, datetime

from hypothesis import strategies as st

from app.domain.records import RunOutcome, RunSummary
from tests.summaries import SQUAD, summary

ZONES = (
    "UTC",
    "Europe/Lisbon",
    "Europe/Copenhagen",
    "America/St_Johns",
    "Pacific/Auckland",
    "Asia/Kathmandu",
)


@st.composite
def summaries(draw: st.DrawFn) -> RunSummary:
    """Any run, ended or not, anywhere between 2019 and 2029, whatever is unknown."""
    prescribed = draw(st.integers(0, 400))
    met = draw(st.integers(0, prescribed))
    outcome = draw(st.sampled_from([*RunOutcome, None]))
    naive = draw(st.datetimes(datetime(2019, 1, 1), datetime(2029, 12, 31)))  # noqa: DTZ001 - made UTC below
    return summary(
        run_id=str(draw(st.uuids())),
        athlete=draw(st.sampled_from(SQUAD)),
        started_at=naive.replace(tzinfo=UTC),
        zone=draw(st.sampled_from(ZONES)),
        outcome=outcome,
        elapsed_ms=None if outcome is None else draw(st.integers(0, 6 * 3_600_000)),
        reps_prescribed=prescribed,
        reps_met=met,
        reps_done=met + draw(st.integers(0, 30)),
        session_rpe=draw(st.none() | st.integers(0, 10)),
        pain=draw(st.none() | st.integers(0, 10)),
    )
