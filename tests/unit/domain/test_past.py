"""Past training as facts: what is unknown stays unknown."""

from datetime import date

from app.domain.fold import Closing, fold_closing, fold_run
from app.domain.past import PastSession, past_facts
from app.domain.records import RunOutcome

DAY = date(2026, 3, 2)


def test_a_session_of_known_length_and_effort_has_an_end_and_a_rating() -> None:
    facts = past_facts(PastSession(DAY, "Beach run", 45 * 60_000, 6))
    assert fold_closing(facts) == Closing(RunOutcome.FINISHED, 45 * 60_000, 6, None)
    assert fold_run(facts) == ()


def test_a_session_of_unknown_length_has_no_end_and_one_without_rating_no_effort() -> None:
    assert fold_closing(past_facts(PastSession(DAY, "Beach run", None, 6))) == Closing(session_rpe=6)
    assert fold_closing(past_facts(PastSession(DAY, "Beach run", 60_000))).session_rpe is None
    assert fold_closing(past_facts(PastSession(DAY, "Beach run"))) == Closing()
