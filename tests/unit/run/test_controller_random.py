"""A hundred thousand random intents at random moments: a run keeps to its rules throughout."""

import random
from collections import Counter

from app.domain.records import RepDone, RepMissed
from tests.driven import FREE, TIMELINE, drive_randomly

RUNS, INTENTS_A_RUN = 200, 500


def test_a_hundred_thousand_random_intents_break_no_rule_and_count_no_rep_twice() -> None:
    reps = 0
    for run in range(RUNS):
        facts = drive_randomly(FREE if run % 4 == 0 else TIMELINE, random.Random(run), INTENTS_A_RUN)
        passed = [fact for fact in facts if isinstance(fact, RepDone | RepMissed)]
        once = Counter((fact.bout, fact.attempt, fact.rep, fact.side) for fact in passed)
        assert max(once.values(), default=0) <= 1
        reps += len(passed)
    assert reps > RUNS * 10, "the runs hardly got anywhere"
