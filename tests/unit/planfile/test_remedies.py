"""What a value that TOML cannot read was meant to be."""

import tomllib

import pytest

from app.planfile.remedies import remedy
from tests.plantexts import exercise_problems

NUMBERS = [
    ("rest", "045", "rest = 45"),
    ("rest", "00", "rest = 0"),
    ("rest", "-045", "rest = -45"),
    ("load_kg", "02.50", "load_kg = 2.50"),
    ("reps", "08", "reps = 8"),
    ("rest", "45;", "rest = 45"),
    ("rest", "45,", "rest = 45"),
    ("rest", "4,5", "rest = 4.5"),
    ("load_kg", "02,50", "load_kg = 2.50"),
    ("lead_in", "3,0", "lead_in = 3.0"),
    ("hold", "4,2", "hold = 4.2"),
    ("distance", "3,5", "distance = 3.5"),
    ("rest", ".5", "rest = 0.5"),
    ("rest", "5.", "rest = 5"),
    ("rest", "+.5", "rest = 0.5"),
    ("rest", "45 s", "rest = 45"),
    ("load_kg", "2,5kg", "load_kg = 2.5"),
    ("sets", "3x", "sets = 3"),
    ("reps", "8,10", "reps = [8, 10]"),
    ("reps", "(8, 10)", "reps = [8, 10]"),
    ("hold", "3.5, 5", "hold = [3.5, 5]"),
    ("work", "20 to 30 s", "work = [20, 30]"),
]
TEXTS = [
    ("sides", "“each”", 'sides = "each"'),
    ("sides", "‘each’;", 'sides = "each"'),
    ("sides", "„each“", 'sides = "each"'),
    ("sides", "«each»", 'sides = "each"'),
    ("sides", "“each", 'sides = "each"'),
    ("name", "“it's”", 'name = "it\'s"'),
    ("name", "it’s", 'name = "it’s"'),
    ("cues", "[“a”, “b”]", 'cues = ["a", "b"]'),
    ("words", "{ hold = “stay” }", 'words = { hold = "stay" }'),
    ("sides", '"each";', 'sides = "each"'),
    ("sides", '"each",', 'sides = "each"'),
    ("cues", '["a", "b"],', 'cues = ["a", "b"]'),
]


@pytest.mark.parametrize(("key", "value", "right"), [*NUMBERS, *TEXTS])
def test_the_remedy_is_what_was_meant_and_can_be_read(key: str, value: str, right: str) -> None:
    message = remedy(key, value)
    wrong, says = message.split("; ")
    assert wrong
    assert says == f"write {right}"
    assert tomllib.loads(right)


@pytest.mark.parametrize(("key", "value"), [(key, value) for key, value, _ in NUMBERS[:9]])
def test_a_number_is_told_at_its_line_and_once(key: str, value: str) -> None:
    others = {"reps": "reps = 8", "tempo": 'tempo = "3010"', key: f"{key} = {value}"}
    problems = exercise_problems(*others.values())
    assert [problem.partition(":")[0] for problem in problems] == [str(10 + list(others).index(key))]


@pytest.mark.parametrize(
    ("key", "value", "says"),
    [
        ("hold", "4,5", "a range stands in brackets; write hold = [4, 5], or hold = 4.5 with a point"),
        ("rest", "4-5", "rest takes one number; write rest = 4 or rest = 5"),
        ("rest", "1:30", "this is no number; write one without quotes, like rest = 8"),
        ("rest", "“45”", "this is no number; write one without quotes, like rest = 45"),
        ("rest", "“x”", 'quotes are straight here; write rest = "x"'),
        ("rest", "8 ; y", "this is no number; write one without quotes, like rest = 8"),
        ("reps", "[8, 10] x", "something stands after the value of reps; a remark begins with #"),
        ("name", '"a" "b"', "something stands after the value of name; a remark begins with #"),
        ("tempo", "3-0-1-0", 'this value cannot be read; text stands in quotes: tempo = "3-0-1-0"'),
        ("tempo", "1,5-0-1-0", 'this value cannot be read; text stands in quotes: tempo = "1.5-0-1-0"'),
        ("tempo", "0301", 'this value cannot be read; text stands in quotes: tempo = "0301"'),
        ("setup", "045", 'this value cannot be read; text stands in quotes: setup = "045"'),
        ("sides", "each;", 'this value cannot be read; text stands in quotes: sides = "each"'),
        ("zebra", ";", 'this value cannot be read; text stands in quotes: zebra = ";"'),
    ],
)
def test_where_it_is_not_clear_what_was_meant_nothing_wrong_is_proposed(
    key: str, value: str, says: str
) -> None:
    assert remedy(key, value) == says


def test_a_long_value_is_cut() -> None:
    for value in (
        "“" + "x" * 5000 + "”",
        "x" * 5000,
        "[" + "“x”, " * 50 + "]",
        "0" * 900,
        '"' + "x" * 5000 + '";',
    ):
        assert len(remedy("notes", value)) < 200
