"""Which bout is asked about."""

from app.domain.records import BoutBegan, BoutEnded, BoutOutcome, BoutRated, BoutRecord, Fact, RunBegan
from app.views.athlete.asked import Turning, asked_about

DONE, SKIPPED, BROKEN = BoutOutcome.DONE, BoutOutcome.SKIPPED, BoutOutcome.BROKEN_OFF


def record(bout: int, rpe: int | None = None, pain: int | None = None) -> BoutRecord:
    return BoutRecord(bout, 1, (), DONE, bout * 10, bout * 10 + 5, rpe=rpe, pain=pain)


def shown(turning: Turning) -> int | None:
    return None if turning.record is None else turning.record.bout


def test_bouts_that_were_never_begun_or_are_not_over_are_not_asked_about() -> None:
    facts: list[Fact] = [
        RunBegan(),
        BoutBegan(10, 0, 1),
        BoutEnded(20, 0, 1, DONE),
        BoutBegan(30, 0, 2),
        BoutEnded(40, 0, 2, BROKEN),
        BoutEnded(50, 1, 1, SKIPPED),
        BoutBegan(60, 2, 1),
    ]
    assert [(each.bout, each.attempt) for each in asked_about(facts, under_way=2)] == [(0, 1)]
    facts.append(BoutRated(70, 0, 1, rpe=4))
    assert asked_about(facts, 2)[0].rpe == 4


def test_the_last_bout_is_asked_about_until_another_is_turned_to() -> None:
    turning = Turning()
    assert shown(turning) is None
    turning.turn_back()
    turning.turn_on()
    turning.take([record(0), record(1, 3, 0), record(2, 4), record(3)])
    assert (shown(turning), turning.earlier, turning.at_last) == (3, 2, True)
    turning.turn_back()
    assert (shown(turning), turning.earlier, turning.at_last) == (2, 1, False)
    turning.turn_back()
    turning.turn_back()
    assert (shown(turning), turning.earlier) == (0, 0), "what is answered is passed over"
    turning.turn_on()
    assert shown(turning) == 2
    turning.turn_on()
    turning.turn_on()
    assert shown(turning) == 3


def test_an_answer_leaves_it_at_its_bout_and_a_bout_that_ends_comes_to_the_front() -> None:
    turning = Turning()
    turning.take([record(0), record(1)])
    turning.turn_back()
    turning.take([record(0, 4, 2), record(1)])
    assert shown(turning) == 0
    turning.take([record(0, 4, 2), record(1), record(2)])
    assert shown(turning) == 2
