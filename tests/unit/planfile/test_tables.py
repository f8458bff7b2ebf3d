"""Tables of a file: known, mistyped, missing and misplaced keys."""

from collections.abc import Set

import pytest

from app.planfile.amounts import Count
from app.planfile.kinds import Refuse, Text
from app.planfile.tables import MOST_GUESSED, Key, Table, Tables, Values, Written
from tests.plantexts import Refusals, accepted, refused


def no_more_dogs_than_people(written: Written, values: Values, refuse: Refuse) -> None:
    if written.named >= {"dogs", "people"} and values.get("dogs", 0) > values.get("people", 0):
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
        ({"name": "x", "nam": "y"}, ['unknown key "nam"; "name" stands here already, keep one']),
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


def test_a_mistyped_key_is_read_as_what_was_meant_and_never_blamed_for_what_follows_from_that() -> None:
    refusals = Refusals()
    values = TABLE.read({"name": "x", "peple": 1, "dog": 2}, refusals)
    assert values == {"name": "x", "people": 1, "dogs": 2}
    assert refusals == [
        ('unknown key "peple"; did you mean "people"?', ("peple",)),
        ('unknown key "dog"; did you mean "dogs"?', ("dog",)),
    ]
    refusals.clear()
    assert TABLE.read({"name": "x", "peple": 99}, refusals) == {"name": "x"}
    assert [message for message, _ in refusals] == ['unknown key "peple"; did you mean "people"?']


def some_drink(named: Set[str]) -> Set[str]:
    """With a glass it is wine, else juice or wine."""
    return {"glass", "wine", "winter", "words"} | (set() if "glass" in named else {"juice"})


DRINKS = Table(
    (
        Key("glass", Count(1, 9), "How many glasses."),
        Key("juice", Count(1, 9), "How much juice."),
        Key("wine", Text(), "Which wine."),
        Key("winter", Count(1, 9), "How cold."),
        Key("words", TABLE, "What is said."),
    ),
    fitting=some_drink,
    also={"vino": "wine"},
)


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ({"juce": 3}, 'did you mean "juice"?'),
        ({"juce": 3, "glass": 1}, 'did you mean "juice"?'),
        ({"juce": "x", "glass": 1}, "known here are glass, wine, winter, words"),
        ({"wnte": 3, "glass": 1}, 'did you mean "winter"?'),
        ({"winte": "red"}, 'did you mean "wine"?'),
        ({"winte": 3}, 'did you mean "winter"?'),
        ({"winte": 99}, 'did you mean "winter"?'),
        ({"winte": 3, "winter": 3}, '"winter" stands here already, keep one'),
        ({"vino": "red"}, 'did you mean "wine"?'),
        ({"vino": "red", "wine": "red"}, "known here are glass, juice, wine, winter, words"),
        ({"glas": 3}, 'did you mean "glass"?'),
        ({"wrds": 3}, 'did you mean "words"?'),
    ],
)
def test_a_guess_goes_with_what_is_written_and_takes_the_value_where_one_can(
    value: dict[str, object], says: str
) -> None:
    refusals = Refusals()
    DRINKS.read(value, refusals)
    assert [message.partition("; ")[2] for message, _ in refusals] == [says]


def test_tables_under_a_mistyped_key_are_looked_into() -> None:
    refusals = Refusals()
    DRINKS.read({"wrds": {"people": 99}}, refusals)
    assert sorted(refusals) == [
        ('"name" is missing; write name = "..."', ("wrds",)),
        ("99 is out of range; write a whole number from 0 to 9", ("wrds", "people")),
        ('unknown key "wrds"; did you mean "words"?', ("wrds",)),
    ]


def test_of_unknown_keys_without_end_a_hundred_are_guessed() -> None:
    refusals = Refusals()
    TABLE.read({"name": "x"} | {f"people{number}": 1 for number in range(300)}, refusals)
    assert len(refusals) == 300
    assert sum("did you mean" in message for message, _ in refusals) == MOST_GUESSED


def test_what_is_no_table_is_refused() -> None:
    assert refused(TABLE, 3) == ["this must be a table, not 3; write it like { key = value }"]


def test_a_list_of_tables_has_one_at_least_and_no_more_than_its_most() -> None:
    assert accepted(TABLES, [{"name": "a"}, {"name": "b"}]) == [{"name": "a"}, {"name": "b"}]
    for value, says in (
        ([], "the list is empty; begin a first table with [[walk]]"),
        ({}, "this must be a list of tables; begin each with [[walk]], in double brackets"),
        (3, "this must be a list of tables; begin each with [[walk]], in double brackets"),
        ([{"name": "a"}] * 3, "there are 3 of these; write 2 at most"),
        ([3], "this must be a table, not 3; write it like { key = value }"),
    ):
        refusals = Refusals()
        TABLES.read(value, refusals)
        assert [message for message, _ in refusals] == [says]


def test_beyond_the_most_all_is_read_too() -> None:
    refusals = Refusals()
    TABLES.read([{"name": "a"}] * 2 + [{"people": 99, "name": "b"}], refusals)
    assert refusals == [
        ("there are 3 of these; write 2 at most", (2,)),
        ("99 is out of range; write a whole number from 0 to 9", (2, "people")),
    ]


def test_a_single_table_in_place_of_a_list_is_looked_into() -> None:
    refusals = Refusals()
    assert TABLES.read({"name": "x", "people": 99}, refusals) is None
    assert [place for _, place in refusals] == [(), ("people",)]


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
