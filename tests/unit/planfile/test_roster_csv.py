"""Rosters in CSV, as a spreadsheet saves them."""

import csv
import io
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.errors import FileProblemsError
from app.domain.plan import Side
from app.planfile.roster import parse_roster, parse_roster_csv
from app.planfile.roster_csv import COLUMNS
from tests.mutators import byte_mutants

SHEET = """\
name,first,exercise,side,load_kg,reps,notes
Ines,right,Split squat,left,4,6-8,"Tired, often"
Ines,,Split squat,right,5.5,,
Ines,,Row,,10,,
Bram,,,,,,
"""
NO_NAME = '1:1: the first line has no column "name"; begin with name,first,exercise,side,load_kg,reps,notes'
INES = Athlete(
    "Ines",
    Side.RIGHT,
    {
        ("Split squat", Side.LEFT): Decimal(4),
        ("Split squat", Side.RIGHT): Decimal("5.5"),
        ("Row", Side.BOTH): Decimal(10),
    },
    {"Split squat": Band(6, 8)},
    "Tired, often",
)


def problems(text: str) -> list[str]:
    """What is wrong with a roster."""
    with pytest.raises(FileProblemsError) as caught:
        parse_roster_csv(text, "r")
    return [line.removeprefix("r:") for line in str(caught.value).splitlines()]


def test_rows_of_the_same_name_are_one_athlete() -> None:
    assert parse_roster_csv(SHEET, "r") == (INES, Athlete("Bram"))


def test_both_forms_of_a_roster_say_the_same() -> None:
    text = """\
format = 1
[[athlete]]
name = "Ines"
first = "right"
notes = "Tired, often"
[[athlete.exercise]]
name = "Split squat"
reps = [6, 8]
load_kg = { left = 4, right = 5.5 }
[[athlete.exercise]]
name = "Row"
load_kg = 10
[[athlete]]
name = "Bram"
"""
    assert parse_roster(text, "r") == parse_roster_csv(SHEET, "r")


@pytest.mark.parametrize(
    "text",
    [
        SHEET.replace("\n", "\r\n"),
        SHEET.replace(",,,,,,", ""),
        SHEET.replace("Bram", "\n,,,,,,\n  Bram  "),
        SHEET.replace("6-8", "6 – 8"),
        SHEET.replace(",right,5.5", ",Right,5.50"),
        SHEET.replace(",,10,", ",both,10,"),
        SHEET.replace('"Tired, often"', "Tired; often")
        .replace(",", ";")
        .replace("5.5", "5,5")
        .replace("d; o", "d, o"),
        SHEET.replace('"Tired, often"', "Tired@ often").replace(",", "\t").replace("@", ","),
        SHEET.replace("name,first", "Name,FIRST"),
    ],
)
def test_what_spreadsheets_make_of_it_reads_the_same(text: str) -> None:
    assert parse_roster_csv(text, "r") == (INES, Athlete("Bram"))


GROUPED = """\
name,short,team,exercise,variant,sits_out,reps
Ines,Ine,B,Row,Easier,,
Ines,,,Hop,,yes,
Ines,,,Split squat,,YES,6
"""


def test_what_a_sheet_says_for_a_group_is_read() -> None:
    assert parse_roster_csv(GROUPED, "r") == (
        Athlete(
            "Ines",
            short="Ine",
            team="B",
            sits_out=frozenset({"Hop", "Split squat"}),
            variants={"Row": "easier"},
            reps={"Split squat": Band(6, 6)},
        ),
    )


def test_what_a_sheet_says_for_a_group_is_judged_like_the_rest() -> None:
    text = (
        GROUPED.replace(",B,", ",M,").replace("yes", "no").replace("Easier", "soft") + "Ines,,,,hard,yes,\n"
    )
    assert problems(text) == [
        '2:10: "M" is not known here; write "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K" or "L"',
        '2:16: "soft" is not known here; write "easier" or "harder"',
        '3:13: "no" is not known here; write yes, or leave the cell empty',
        "5:9: variant without an exercise; name the exercise in the same row",
        "5:14: sits_out without an exercise; name the exercise in the same row",
    ]


def test_columns_may_stand_in_any_order_and_be_left_out() -> None:
    assert parse_roster_csv("reps,exercise,name\n8,Row,Ida\n", "r") == (
        Athlete("Ida", reps={"Row": Band(8, 8)}),
    )


def test_an_apostrophe_that_guards_a_text_from_being_a_formula_is_left_out() -> None:
    (ida,) = parse_roster_csv("name,notes\nIda,'=strong\n", "r")
    assert ida.notes == "=strong"
    (jo,) = parse_roster_csv("name,notes\nIda,'s Heeren Loo\n", "r")
    assert jo.notes == "'s Heeren Loo"


def test_all_problems_come_at_once_each_with_its_row_and_column() -> None:
    text = """\
name,first,exercise,side,load_kg,reps,notes,age
Ines,up,Row,left,heavy,0,,3
,left,,,,,,
Bo,,,left,3,8-6,,
Cy,,Row,middle,4,,,,,extra
Di,left,Row,,4,8,one,
Di,right,Row,,5,9,two,
Ed,,Row,,4,9-7,,
Ed,,Row,left,4,,,
"""
    assert problems(text) == [
        f'1:45: unknown column "age"; known here are {", ".join(COLUMNS)}',
        '2:6: "up" is not known here; write "left" or "right"',
        '2:18: this must be a number, not "heavy"; write a number, without quotes',
        "2:24: 0 is out of range; write a whole number from 1 to 200",
        "3:1: the row has no name; write whose it is",
        "4:6: side without an exercise; name the exercise in the same row",
        "4:11: load_kg without an exercise; name the exercise in the same row",
        "4:13: reps without an exercise; name the exercise in the same row",
        '5:9: "middle" is no side; write left, right or both, or nothing for both',
        "5:21: the row has more than 8 cells; put text with commas in quotes",
        "7:4: another row says something else about first; keep one of them",
        "7:15: another row says something else about load_kg; keep one of them",
        "7:17: another row says something else about reps; keep one of them",
        "7:19: another row says something else about notes; keep one of them",
        "8:12: the range runs downwards; write the lower number first: [7, 9]",
        "9:14: another row says something else about load_kg; keep one of them",
    ]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", NO_NAME),
        ("nam,first\nIda,left\n", '1:1: unknown column "nam"; did you mean "name"?'),
        ("name,first,name\nIda,left,Ida\n", "1:12: the column name stands here twice; keep one of them"),
        ('name\n"Ida\n', "2:1: this row cannot be read; close each quote"),
        (
            'name\nIda\n"Bo"x\n',
            "3:1: this row cannot be read; close each quote",
        ),
        ("name\n", "1:1: there is nobody in the sheet; write a row for each athlete"),
        (
            "name,notes\nIda,a\u202eb\n",
            "2:5: the text holds U+202E, which turns the reading direction; remove",
        ),
    ],
)
def test_a_sheet_that_cannot_be_one_is_explained(text: str, says: str) -> None:
    assert any(problem.startswith(says) for problem in problems(text))


@given(st.lists(st.lists(st.text(max_size=5), max_size=9), max_size=6), st.sampled_from(",;\t"))
def test_any_sheet_is_a_roster_or_a_list_of_problems(rows: list[list[str]], delimiter: str) -> None:
    out = io.StringIO()
    writer = csv.writer(out, delimiter=delimiter)
    writer.writerow(["name", "first", "exercise", "side", "load_kg", "reps", "sits_out", "variant", "team"])
    writer.writerows(rows)
    assert_read(out.getvalue())


def test_any_damaged_sheet_is_a_roster_or_a_list_of_problems() -> None:
    source = SHEET.encode()
    for data in byte_mutants(source, (source,), 400, seed=1):
        assert_read(data.decode("utf-8", "replace"))


def assert_read(text: str) -> None:
    """Athletes, or problems on single lines."""
    try:
        assert all(athlete.name for athlete in parse_roster_csv(text, "r"))
    except FileProblemsError as error:
        assert len(str(error).splitlines()) == len(error.problems)  # noqa: PT017
        assert str(error).replace("\n", "").isprintable()  # noqa: PT017


@pytest.mark.parametrize(
    "text",
    [
        "," * 1_000_000,
        "name\n" + "," * 1_000_000,
        "name\n" + "a\n" * 500_000,
        '"' * 1_000_000,
        "name\n" + '"a",' * 250_000,
    ],
    ids=["columns", "cells", "rows", "quotes", "quoted cells"],
)
def test_a_hostile_sheet_is_refused_in_a_few_words(text: str) -> None:
    assert 1 <= len(problems(text)) <= 501


def test_rows_without_end_are_not_read_to_their_end() -> None:
    rows = "".join(f"{number}\n" for number in range(30_000))
    assert "20002:1: there are more than 20000 rows; check that it is the right file" in problems(
        "name\n" + rows
    )
