"""TOML that cannot be read: what is said, and that the rest of the file is not forgotten."""

from decimal import Decimal

import pytest

from app.planfile.syntax import LARGEST_MENDED, MOST_SYNTAX_PROBLEMS, parse_toml
from tests.plantexts import exercise_problems, plan_text, problems_of


def said(text: str) -> list[str]:
    """The syntax problems of a text."""
    return [problem.located("").removeprefix(":") for problem in parse_toml(text).problems]


def test_numbers_with_a_point_are_read_as_they_are_written() -> None:
    document = parse_toml("a = 0.1\nb = 1_000.50\nc = 1e2\nd = inf\n").document
    assert document == {"a": Decimal("0.1"), "b": Decimal("1000.50"), "c": Decimal(100), "d": Decimal("inf")}


def test_an_exponent_beyond_counting_is_infinite() -> None:
    assert parse_toml("a = 1e99999999999999999999\nb = -1e99999999999999999999").document == {
        "a": Decimal("inf"),
        "b": Decimal("-inf"),
    }


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("tempo = 3-0-1-0", '1:10: this value cannot be read; text stands in quotes: tempo = "3-0-1-0"'),
        (
            "name = Split squat # easy",
            '1:8: this value cannot be read; text stands in quotes: name = "Split squat"',
        ),
        ("reps = 8-10", "1:9: a range stands in brackets; write reps = [8, 10]"),
        ("reps = 8 to 10", "1:10: a range stands in brackets; write reps = [8, 10]"),
        ("hold = 3.5, 5", "1:11: a range stands in brackets; write hold = [3.5, 5]"),
        ("rest = 45 s", "1:11: a number stands without its unit; write rest = 45"),
        ("load_kg = 2.5kg", "1:14: a number stands without its unit; write load_kg = 2.5"),
        ("rest =", "1:7: rest has no value; write one after the ="),
        ("rest = # later", "1:8: rest has no value; write one after the ="),
        ('name = "a" "b"', "1:12: something stands after the value of name; a remark begins with #"),
        ('name = "a', "1:10: the text is not closed; put a quote at its end"),
        ('name = "a\nb = 1', "1:10: the text is not closed on its line; put a quote at its end"),
        ("name = 'a\nb = 1", "1:10: the text is not closed on its line; put a quote at its end"),
        ('name: "a"', "1:5: a key without a value; write key = value"),
        ('name "a"', "1:6: a key without a value; write key = value"),
        ("[stage", "1:7: the heading is not closed; end it with ]"),
        ("[[stage]", "1:8: the heading is not closed; end it with ]]"),
        (
            "[stage]\n[stage]",
            "2:1: this table stands here for the second time; keep one of the two",
        ),
        ("a = 1\n  a = 2", "2:3: this key stands here for the second time; keep one of the two"),
        (
            'cues = ["a" "b"]',
            "1:13: the list is not closed here; put a comma between its entries and ] at its end",
        ),
        (
            'words = { a = "b"',
            "1:18: the braces are not closed here; put a comma between the entries and } at the end",
        ),
        ("words = { a = 1, a = 2 }", "1:23: a key stands twice in these braces; keep one of the two"),
        ('name = "a\\c"', '1:10: a lone "\\" in text; write it twice, or use single quotes'),
        ('name = "\\u12"', '1:9: a broken "\\u" in text; write four hexadecimal digits after it'),
        ("day = 2026-02-30", "1:7: there is no such date or time; put text in quotes"),
        ("; a remark", "1:1: this is no key = value and no [heading]; a remark begins with #"),
        ("= 3", "1:1: this is no key = value and no [heading]; a remark begins with #"),
        ("a\x07 = 1", "1:2: the file holds the control character U+0007; remove it"),
        ("a = 1\rb = 2", "1:6: the file holds the control character U+000D; remove it"),
    ],
)
def test_the_first_mistake_is_placed_and_explained(text: str, says: str) -> None:
    assert said(text)[0] == says


def test_what_the_parser_says_otherwise_is_passed_on_in_a_sentence() -> None:
    (problem,) = said("a.b = 1\n[a.b.c]\nd = 1")
    assert problem.startswith("2:")
    assert "; " in problem


def test_a_mistake_in_one_line_does_not_hide_the_others() -> None:
    text = """\
format = 1
title: "x"
[[stage]
name = "a"
kind = "power
[[stage.exercise]]
name "b"
reps = 3 4
sets = "two"
hold = 2
rest = x
rest = 3
"""
    assert problems_of(text) == [
        "2:6: a key without a value; write key = value",
        "3:8: the heading is not closed; end it with ]]",
        "5:14: the text is not closed on its line; put a quote at its end",
        "7:6: a key without a value; write key = value",
        "8:10: a range stands in brackets; write reps = [3, 4]",
        '9:8: this must be a number, not "two"; write a number, without quotes',
        "11:8: this is no number; write one without quotes, like rest = 8",
        "12:1: this key stands here for the second time; keep one of the two",
    ]


def test_nothing_more_is_said_about_a_line_that_cannot_be_read() -> None:
    assert exercise_problems("reps = 8", "tempo = 30X0") == [
        '11:11: this value cannot be read; text stands in quotes: tempo = "30X0"'
    ]


def test_a_mistake_that_cannot_be_passed_over_ends_the_reading() -> None:
    parsed = parse_toml('; no remark\nb = "open\n')
    assert parsed.document is None
    assert [problem.line for problem in parsed.problems] == [1]


NO_STATEMENT = "this is no key = value and no [heading]; a remark begins with #"
OPEN = "the list is not closed; put a comma between its entries and ] at its end"
QUOTE = "the text is not closed on its line; put a quote at its end"
COMMA = "the list is not closed here; put a comma between its entries and ] at its end"


@pytest.mark.parametrize(
    ("lines", "says"),
    [
        (['cues = ["a", "b"'], [f"11:8: {OPEN}"]),
        (['cues = ["a", "b",'], [f"11:8: {OPEN}"]),
        (["cues = [", '  "a",', "", "  # b"], [f"11:8: {OPEN}"]),
        (["cues = [", '  "a"', '  "b",', "]"], [f"13:3: {COMMA}"]),
        (
            ["cues = [", '  "a",', '  "b,', "]"],
            [f"13:6: {QUOTE}"],
        ),
        (['cues = ["a", "b"', 'faults = ["c"'], [f"11:8: {OPEN}", f"12:10: {OPEN}"]),
        (['cues = ["]", "["', 'faults = ["c"'], [f"11:8: {OPEN}", f"12:10: {OPEN}"]),
    ],
)
def test_a_list_that_is_not_closed_hides_nothing_of_what_follows(lines: list[str], says: list[str]) -> None:
    more = ["sets = 0", "[[stage.exercise]]", 'name = "b"', "work = 0"]
    assert exercise_problems("work = 9", *lines, *more) == [
        *says,
        f"{11 + len(lines)}:8: 0 is out of range; write a whole number from 1 to 20",
        f"{14 + len(lines)}:8: 0 is out of range; write 0.1 to 600 seconds",
    ]
    assert exercise_problems("work = 9", *lines)[: len(says)] == says


def test_a_table_that_stands_there_twice_is_one_problem_and_what_follows_is_read() -> None:
    twice = ["[stage.exercise.words]", 'hold = "stay"']
    says = "12:1: this table stands here for the second time; keep one of the two"
    other = ["[[stage.exercise]]", 'name = "b"', "work = 0"]
    assert exercise_problems(*twice, *twice, *other) == [
        "8:1: the exercise has no dose; write one of tempo, hold, stick, every, pace or work",
        says,
        "16:8: 0 is out of range; write 0.1 to 600 seconds",
    ]
    assert exercise_problems("work = 9", "[words]", 'hold = "a"', "[words]", 'hold = "b"') == [
        '11:1: "words" does not belong here; write it under a [[stage.exercise]]',
        "13:1: this table stands here for the second time; keep one of the two",
    ]


def test_a_line_is_called_broken_once() -> None:
    assert said("a = 1\n= 3 = 4\n") == [f"2:1: {NO_STATEMENT}"]
    assert said("[[stage] x\n= 3 = 4\n")[1:] == [f"2:1: {NO_STATEMENT}"]
    unreadable = "this value cannot be read; text stands in quotes"
    assert said("a = no\na = no\nb = no\n") == [
        f'1:5: {unreadable}: a = "no"',
        f'2:5: {unreadable}: a = "no"',
        f'3:5: {unreadable}: b = "no"',
    ]


def test_mistakes_are_told_up_to_twenty() -> None:
    assert len(said("\n".join(f"k{number} = no thing" for number in range(50)))) == MOST_SYNTAX_PROBLEMS


def test_in_a_large_file_the_first_mistake_has_to_do() -> None:
    text = "# remark\n" * (LARGEST_MENDED // 9 + 1) + "a = no\nb = no\n"
    assert len(said(text)) == 1


@pytest.mark.parametrize(
    "text",
    [
        'title = "' + "a. " * 300 + '"',
        "# " + "a." * 300,
        "title = '''" + "[" * 300 + "'''",
        'title = """\\"""' + "{" * 300 + '"""',
        "# " + "f" * 5000,
        "a = [" + "1.5, " * 90 + "]",
        "a = " + "[" * 20 + "]" * 20,
    ],
)
def test_what_only_looks_endless_inside_text_and_remarks_is_read(text: str) -> None:
    assert parse_toml(text).problems == ()


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("a = " + "[" * 21 + "]" * 21, "1:25: brackets are nested more than 20 deep; close them"),
        (
            't = """\nx" # \n"""\nu = "v" # w\na = ' + "[" * 21,
            "5:25: brackets are nested more than 20 deep; close them",
        ),
        (
            "x = 1\na = " + "9" * 1000,
            "2:5: a word or number of more than 1000 characters; check that it is the right file",
        ),
        (".".join("a" * 102) + " = 1", "1:1: far too many dots in one line; put text in quotes"),
        (
            "a = [" + "1," * 20_000 + "]",
            "1:1: the file has more than 20000 entries; check that it is the right file",
        ),
    ],
)
def test_what_would_take_for_ever_is_not_begun(text: str, says: str) -> None:
    assert said(text) == [says]


def test_a_sound_plan_has_no_syntax_problems() -> None:
    assert parse_toml(plan_text("work = 9")).problems == ()
