"""Past training: what somebody has written down of sessions that were not led by the program."""

from dataclasses import dataclass
from datetime import date

from app.domain.records import Fact, RunBegan, RunEnded, RunOutcome, SessionRated

MS_A_MINUTE = 60_000
LONGEST_MINUTES = 24 * 60


@dataclass(frozen=True, slots=True)
class PastSession:
    """A session of which only the day is sure. `ms` is its length, `rpe` its exertion 0-10; None is unknown.

    `athlete` is what the person is called, None where the list does not say.
    """

    day: date
    title: str
    ms: int | None = None
    rpe: int | None = None
    athlete: str | None = None


def past_facts(session: PastSession) -> tuple[Fact, ...]:
    """What is known of a past session, as facts of a run without bouts. One of unknown length has no end."""
    facts: list[Fact] = [RunBegan()]
    if session.ms is not None:
        facts.append(RunEnded(session.ms, RunOutcome.FINISHED))
    if session.rpe is not None:
        facts.append(SessionRated(session.ms or 0, session.rpe, None))
    return tuple(facts)
