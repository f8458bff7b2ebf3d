"""Who needs a look first: by rules that are stated, in an order that does not move, and never to go on."""

import random
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest

from app.analysis.attention import RULES, attention, who_first
from app.analysis.reasons import Level, Limits, Reason
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.readiness import Readiness
from app.domain.reviewed import AthleteRecord
from app.domain.squad import OwedKind, OwedRating, SquadMember
from tests.answered import answers
from tests.reviewed import MONDAY, TODAY, due, record, result, session

SATURDAY = MONDAY + timedelta(days=5)


def on(day: date, **changes: object) -> Readiness:
    """Answers before training on a day."""
    return answers(at=datetime(day.year, day.month, day.day, 9, tzinfo=UTC), zone="UTC", **changes)


def member(looked: AthleteRecord) -> SquadMember:
    """A member of the squad whose last session ever is the last of their record."""
    return SquadMember(looked, max((each.day for each in looked.sessions), default=None))


def reasons(found: AthleteRecord, errors: dict[str, float] | None = None) -> dict[str, Reason]:
    """The reasons to look at somebody by their rule."""
    return {reason.rule: reason for reason in attention(member(found), errors).reasons}


def test_with_nothing_amiss_there_is_no_reason() -> None:
    found = attention(member(record(readiness=(on(MONDAY),))))
    assert (found.reasons, found.level) == ((), None)


def test_pain_of_five_is_no_reason_and_pain_of_six_a_triangle() -> None:
    assert "pain_above" not in reasons(record(sessions=(session(SATURDAY, pain=5),)))
    (reason,) = attention(member(record(sessions=(session(SATURDAY, pain=6),)))).reasons
    assert reason.level is Level.TRIANGLE
    assert reason.sentence == "Pain 6 on 2026-11-21, settled by the next morning."


@pytest.mark.parametrize(
    ("after", "sentence"),
    [
        (None, "Pain 6 on 2026-11-21, and the next morning is not known."),
        (3, "Pain 6 on 2026-11-21, 3 on the next morning: not settled."),
    ],
)
def test_the_morning_after_pain_is_told_with_it(after: int | None, sentence: str) -> None:
    found = reasons(record(sessions=(session(SATURDAY, pain=6, pain_next_morning=after),)))
    assert found["pain_above"].sentence == sentence
    assert "morning_above" not in found


def test_more_pain_than_before_on_the_next_morning_is_a_triangle() -> None:
    runs = (session(SATURDAY, pain=3, pain_next_morning=2),)
    found = reasons(record(sessions=runs, readiness=(on(SATURDAY, pain=1),)))
    assert found["not_settled"].level is Level.TRIANGLE
    assert (
        found["not_settled"].sentence == "Pain 2 on the morning after 2026-11-21, 1 before it: not settled."
    )
    assert reasons(record(sessions=runs, readiness=(on(SATURDAY, pain=2),))) == {}


def test_a_morning_that_is_not_answered_is_a_square_once_it_has_come() -> None:
    asked = session(SATURDAY, pain_next_morning=None)
    assert reasons(record(sessions=(asked,)))["not_answered"].level is Level.SQUARE
    assert reasons(record(sessions=(asked,), today=SATURDAY)) == {}
    assert (
        reasons(record(sessions=(session(SATURDAY, pain_next_morning=None, next_morning_asked=False),))) == {}
    )


def test_a_morning_of_nought_is_answered() -> None:
    assert reasons(record(sessions=(session(SATURDAY, pain_next_morning=0),))) == {}


def test_warning_signs_and_pain_before_training_are_triangles() -> None:
    found = reasons(record(readiness=(on(SATURDAY, pain=7, red_flag=True),)))
    assert {rule: reason.level for rule, reason in found.items()} == {
        "pain_before": Level.TRIANGLE,
        "warning_sign": Level.TRIANGLE,
    }


def test_what_is_long_ago_is_no_reason_any_more() -> None:
    old = MONDAY - timedelta(days=1)
    assert "pain_above" not in reasons(record(sessions=(session(old, pain=9), session(SATURDAY))))
    assert reasons(record(readiness=(on(old, red_flag=True, pain=9),))) == {}


def test_no_session_for_more_than_a_week_is_a_reason_where_one_was_planned() -> None:
    runs = (session(TODAY - timedelta(days=9)),)
    missed = due(TODAY - timedelta(days=2), DueState.MISSED)
    found = reasons(record(sessions=runs, due=(missed,)))
    assert found["no_session"].sentence == "No session for 9 days, and 1 of 1 planned were missed."
    assert found["no_session"].level is Level.SQUARE
    assert reasons(record(sessions=runs)) == {}
    excused = due(TODAY - timedelta(days=2), DueState.EXCUSED)
    assert reasons(record(sessions=runs, due=(excused,))) == {}


@pytest.mark.parametrize("days", [2, 7])
def test_a_session_within_the_week_is_no_absence_though_another_was_missed(days: int) -> None:
    missed = due(TODAY - timedelta(days=1), DueState.MISSED)
    assert "no_session" not in reasons(
        record(sessions=(session(TODAY - timedelta(days=days)),), due=(missed,))
    )


def test_pain_that_did_not_settle_is_told_once() -> None:
    runs = (session(SATURDAY, pain=6, pain_next_morning=4),)
    assert list(reasons(record(sessions=runs, readiness=(on(SATURDAY, pain=1),)))) == ["pain_above"]


def test_somebody_without_any_session_is_asked_after_where_one_was_missed() -> None:
    found = reasons(record(sessions=(), due=(due(MONDAY, DueState.MISSED), due(TODAY, DueState.NOT_DUE))))
    assert found["no_session"].sentence == "No session yet, and 1 of 1 planned were missed."


def test_a_side_is_behind_only_beyond_the_error_of_the_test() -> None:
    sides = (result(78), result(100, side=Side.RIGHT))
    looked = record(results=sides)
    found = reasons(looked, {"single_hop": 8.0})
    assert found["side_behind"].sentence == (
        "Left 22 % behind: Single hop for distance, 78.0 against 100.0 cm, error 8.0."
    )
    assert reasons(looked, {"single_hop": 22.0}) == {}
    assert reasons(looked) == {}


def test_the_side_that_takes_longer_is_behind() -> None:
    times = (result("2.1", "timed_hop", unit="s"), result("2.9", "timed_hop", unit="s", side=Side.RIGHT))
    found = reasons(record(results=times), {"timed_hop": 0.3})
    assert found["side_behind"].sentence.startswith("Right 28 % behind")


def test_pain_that_rose_in_two_weeks_running_is_a_square() -> None:
    runs = tuple(
        session(MONDAY - timedelta(weeks=weeks), pain=pain) for weeks, pain in ((2, 1), (1, 2), (0, 4))
    )
    assert reasons(record(sessions=runs))["pain_rising"].sentence == (
        "The highest pain of a week rose twice in a row: 1, 2, 4."
    )


def test_readiness_far_from_the_own_days_is_a_square() -> None:
    days = [on(SATURDAY - timedelta(days=number), sleep=2 + number % 2) for number in range(1, 21)]
    found = reasons(record(readiness=(*days, on(SATURDAY, sleep=7, fatigue=7))))
    assert found["readiness"].level is Level.SQUARE
    assert dict(found["readiness"].numbers)["days"] == 20
    assert reasons(record(readiness=(*days[:10], on(SATURDAY, sleep=7, fatigue=7)))) == {}


def test_a_morning_that_is_owed_now_is_a_square() -> None:
    sunday = TODAY - timedelta(days=1)
    run = ("run-1", "Hugo", "Landing control", sunday, datetime(2026, 11, 22, 18, tzinfo=UTC), "UTC")
    owed = (OwedRating(OwedKind.SESSION_RPE, *run), OwedRating(OwedKind.NEXT_MORNING_PAIN, *run))
    looked = replace(member(record()), owed=owed)
    (reason,) = attention(looked).reasons
    assert reason.sentence == "Next-morning pain after 2026-11-22 is not answered."
    assert dict(reason.numbers)["owed"] == 1
    assert attention(replace(looked, owed=owed[:1])).reasons == ()


def test_the_last_session_ever_counts_though_it_lies_before_the_days_looked_at() -> None:
    missed = record(sessions=(), due=(due(MONDAY, DueState.MISSED),))
    (reason,) = attention(SquadMember(missed, TODAY - timedelta(days=100))).reasons
    assert reason.sentence == "No session for 100 days, and 1 of 1 planned were missed."


def squad() -> list[AthleteRecord]:
    """One athlete for each kind of place in the order, and two who need nothing."""
    return [
        record(athlete="Bram"),
        record(athlete="anouk"),
        record(athlete="Esra", sessions=(session(SATURDAY, pain_next_morning=None),)),
        record(
            athlete="Greta",
            sessions=(session(TODAY - timedelta(days=9)),),
            due=(due(SATURDAY, DueState.MISSED),),
        ),
        record(athlete="Dagny", sessions=(session(SATURDAY, pain_next_morning=None),)),
        record(athlete="Chidi", sessions=(session(SATURDAY, pain=6, pain_next_morning=4),)),
    ]


def test_the_order_is_by_urgency_then_rule_then_name_however_they_come() -> None:
    names = ["Chidi", "Greta", "Dagny", "Esra", "anouk", "Bram"]
    for seed in range(10):
        shuffled = squad()
        random.Random(seed).shuffle(shuffled)
        assert [found.athlete for found in who_first(map(member, shuffled))] == names


def test_a_reason_of_more_urgency_stands_first() -> None:
    both = record(sessions=(session(SATURDAY, pain=6), session(MONDAY, pain_next_morning=None)))
    assert [reason.level for reason in attention(member(both)).reasons] == [Level.TRIANGLE, Level.SQUARE]


def test_limits_are_settings() -> None:
    runs = record(sessions=(session(SATURDAY, pain=4),))
    assert [reason.rule for reason in attention(member(runs), limits=Limits(pain=3)).reasons] == [
        "pain_above"
    ]


def test_somebody_of_whom_nothing_is_known_is_no_cause_for_an_error() -> None:
    unknown = record(
        sessions=(session(rpe=None, minutes=None, pain=None, pain_next_morning=None, totals=None),)
    )
    assert {reason.rule for reason in attention(member(unknown)).reasons} == {"not_answered"}
    assert attention(member(record(sessions=(), since=None))).reasons == ()


def test_every_reason_is_of_a_rule_that_has_its_place() -> None:
    given = [reason.rule for found in who_first(map(member, squad())) for reason in found.reasons]
    assert given
    assert set(given) <= set(RULES)
