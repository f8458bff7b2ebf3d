"""The tries of everybody are read as corrected, bounded in time and number, without anybody's name."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from app.domain.correctable import Subject, Value
from app.domain.corrections import Change, Target
from app.domain.keeping import Result
from app.domain.plan import Side
from app.store.database import Database, open_database
from app.store.identity import uuid7
from app.store.tries import LATEST

ZONE = "Europe/Lisbon"
NOW = datetime(2026, 10, 25, 9, tzinfo=UTC)
TODAY = date(2026, 10, 25)


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db") as opened:
        yield opened


def name(number: int) -> str:
    return str(uuid7(1_790_000_000_000 + number, bytes(10)))


def hop(
    number: int,
    athlete: str = "Ines",
    *,
    days_ago: int = 1,
    side: Side = Side.LEFT,
    attempt: int = 1,
    value: str = "140",
    test: str = "single_hop",
) -> Result:
    at = NOW - timedelta(days=days_ago) + timedelta(seconds=number)
    return Result(name(number), athlete, test, value, "cm", at, ZONE, side, attempt)


def correct(database: Database, number: int, field: str, value: Value) -> None:
    target = Target(Subject.RESULT, name(number))
    database.corrections.correct(Change(target, field, value, "Coach", "misread", NOW, ZONE))


def test_first_and_second_tries_come_in_the_order_they_were_made(database: Database) -> None:
    database.answers.keep(
        hop(1, days_ago=3, value="150"),
        hop(2, attempt=1, value="141.5"),
        hop(3, attempt=2, value="142"),
        hop(4, attempt=3, value="160"),
    )
    found = database.reviewing.first_two_tries(TODAY)
    assert [(each.value, each.attempt) for each in found] == [(150.0, 1), (141.5, 1), (142.0, 2)]
    assert {each.side for each in found} == {Side.LEFT}
    assert {each.unit for each in found} == {"cm"}
    assert found[0].day == TODAY - timedelta(days=3)


def test_tries_say_nobodys_name_and_tell_people_apart(database: Database) -> None:
    database.answers.keep(hop(1, "Ines"), hop(2, "Bram"), hop(3, "Ines"))
    first, second, third = database.reviewing.first_two_tries(TODAY)
    assert first.whose == third.whose != second.whose
    assert not any("Ines" in str(each) or "Bram" in str(each) for each in (first, second, third))


def test_tries_are_read_as_corrected(database: Database) -> None:
    database.answers.keep(hop(1), hop(2))
    correct(database, 1, "value", "139.5")
    correct(database, 2, "side", "right")
    found = database.reviewing.first_two_tries(TODAY)
    assert [(each.value, each.side) for each in found] == [(139.5, Side.LEFT), (140.0, Side.RIGHT)]


def test_only_the_tests_named_and_the_last_half_year_are_read(database: Database) -> None:
    database.answers.keep(hop(1), hop(2, test="triple_hop"), hop(3, days_ago=190), hop(4, days_ago=-2))
    database.answers.keep(hop(5, "Bram", test="triple_hop"), hop(6, "Bram", days_ago=2))
    assert [each.test for each in database.reviewing.first_two_tries(TODAY)].count("triple_hop") == 2
    assert len(database.reviewing.first_two_tries(TODAY)) == 4
    database.answers.keep(hop(7, "Zoe", test="triple_hop"))
    looked = database.reviewing.athlete("Zoe", TODAY - timedelta(days=7), TODAY, TODAY)
    assert [each.test for each in looked.tries] == ["triple_hop"] * 3
    assert database.reviewing.athlete("Nobody", TODAY, TODAY, TODAY).tries == ()


def test_a_test_is_trusted_by_tries_of_its_parts_too_and_by_nothing_that_is_no_test(
    database: Database,
) -> None:
    database.answers.keep(
        hop(1, test="drop_jump.contact", value="200"),
        hop(2, test="drop_jump.flight", value="500"),
        hop(3, "Zoe", test="drop_jump_flight", value="2.4"),
        hop(4, "Zoe", test="unheard"),
        hop(5, test="unheard"),
    )
    looked = database.reviewing.athlete("Zoe", TODAY - timedelta(days=7), TODAY, TODAY)
    assert {each.test for each in looked.tries} == {
        "drop_jump.contact",
        "drop_jump.flight",
        "drop_jump_flight",
    }


def test_of_very_many_tries_the_latest_are_read(database: Database) -> None:
    database.answers.keep(*(hop(n, days_ago=60 - n // 10, value=str(n)) for n in range(LATEST + 50)))
    database.answers.keep(hop(9_000, test="triple_hop", days_ago=100))
    found = database.reviewing.first_two_tries(TODAY)
    hops = [each.value for each in found if each.test == "single_hop"]
    assert len(hops) == LATEST
    assert min(hops) == 50
    assert sum(each.test == "triple_hop" for each in found) == 1


def test_the_squad_has_the_results_since_both_sides_were_tested(database: Database) -> None:
    database.answers.keep(
        hop(1, days_ago=60, side=Side.LEFT, value="100"),
        hop(2, days_ago=60, side=Side.RIGHT, value="101"),
        hop(3, days_ago=5, side=Side.LEFT, value="120"),
        hop(4, days_ago=5, side=Side.RIGHT, value="121"),
        hop(5, days_ago=2, side=Side.LEFT, value="122"),
        hop(6, days_ago=2, side=Side.LEFT, value="90", test="triple_hop"),
        hop(7, days_ago=2, side=Side.BOTH, value="30", test="jump_height"),
    )
    correct(database, 4, "value", "119")
    (member,) = database.reviewing.squad(NOW, TODAY)
    assert [each.value for each in member.record.results] == ["120", "119", "122"]
    assert {each.athlete for each in member.record.results} == {"Ines"}


def test_a_side_tested_long_before_the_other_brings_both_sides_in(database: Database) -> None:
    """The right was tested alone later: the latest common day lies before it, within two weeks."""
    database.answers.keep(
        hop(1, days_ago=12, side=Side.LEFT, value="120"),
        hop(2, days_ago=12, side=Side.RIGHT, value="121"),
        hop(3, days_ago=2, side=Side.RIGHT, value="125"),
    )
    (member,) = database.reviewing.squad(NOW, TODAY)
    assert [each.value for each in member.record.results] == ["120", "121", "125"]
