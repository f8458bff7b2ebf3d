"""Tables of a file: known, mistyped, missing and misplaced keys."""

from collections.abc import Set

import pytest

from app.planfile.amounts import Count
from app.planfile.kinds import Refuse, Text
from app.planfile.tables import Key, Table, Tables, Values
from tests.plantexts import Refusals, accepted, refused


def no_more_dogs_than_people(written: Set[str], values: Values, refuse: Refuse) -> None:
    if written >= {"dogs", "people"} and values.get("dogs", 0) > values.get("people", 0):
        refuse("more dogs than people; bring a friend", "dogs", key=True)


TABLE = Table(
    (
        Key("name", Text(), "What it is called.", required=True, example='name = "..."'),
        Key("people", Count(0, 9), "How many.", default=1),
        Key("dogs", Count(0, 9), "How many."),
    ),
    check=no_more_dogs_than_people,
    elsewhere={"cats": "leave them at home"},
)
TABLES = Tables(TABLE, 2, "[[walk]]")


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ({}, ['"name" is missing; write name = "..."']),
        ({"nam": "x"}, ['unknown key "nam"; did you mean "name"?']),
        ({"name": "x", "nam": "y"}, ['unknown key "nam"; did you mean "name"?']),
        ({"name": "x", "zebras": 1}, ['unknown key "zebras"; known here are name, people, dogs']),
        ({"name": "x", "cats": 1}, ['"cats" does not belong here; leave them at home']),
        ({"name": "x", "people": 1, "dogs": 2}, ["more dogs than people; bring a friend"]),
        ({"name": "x", "people": 1, "dogs": 99}, ["99 is out of range; write a whole number from 0 to 9"]),
    ],
)
def test_what_is_wrong_with_the_keys_is_said(value: dict[str, object], says: list[str]) -> None:
    refusals = Refusals()
    TABLE.read(value, refusals)
    assert [message for message, _ in refusals] == says


def test_a_mistyped_key_is_read_as_what_was_meant_and_placed_where_it_stands() -> None:
    refusals = Refusals()
    values = TABLE.read({"name": "x", "peple": 1, "dog": 2}, refusals)
    assert values == {"name": "x", "people": 1, "dogs": 2}
    assert refusals == [
        ('unknown key "peple"; did you mean "people"?', ("peple",)),
        ('unknown key "dog"; did you mean "dogs"?', ("dog",)),
        ("more dogs than people; bring a friend", ("dog",)),
    ]


def test_what_is_no_table_is_refused() -> None:
    assert refused(TABLE, 3) == ["this must be a table, not 3; write it like { key = value }"]


def test_a_list_of_tables_has_one_at_least_and_no_more_than_its_most() -> None:
    assert accepted(TABLES, [{"name": "a"}, {"name": "b"}]) == [{"name": "a"}, {"name": "b"}]
    for value, says in (
        ([], "the list is empty; begin a first table with [[walk]]"),
        ({}, "this must be a list of tables; begin each with [[walk]], in double brackets"),
        ([{"name": "a"}] * 3, "there are 3 of these; write 2 at most"),
        ([3], "this must be a table, not 3; write it like { key = value }"),
    ):
        refusals = Refusals()
        TABLES.read(value, refusals)
        assert [message for message, _ in refusals] == [says]


def test_beyond_the_most_nothing_is_read() -> None:
    refusals = Refusals()
    TABLES.read([{"name": "a"}] * 2 + [{}] * 10_000, refusals)
    assert refusals == [("there are 10002 of these; write 2 at most", (2,))]


def test_the_schema_says_which_keys_there_are_and_what_they_mean() -> None:
    assert TABLE.schema() == {
        "type": "object",
        "additionalProperties": False,
        "required": ["name"],
        "properties": {
            "name": {"description": "What it is called.", **Text().schema()},
            "people": {"description": "How many.", **Count(0, 9).schema(), "default": 1},
            "dogs": {"description": "How many.", **Count(0, 9).schema()},
        },
    }
    assert TABLES.schema() == {"type": "array", "minItems": 1, "maxItems": 2, "items": TABLE.schema()}
