"""Headings that miss the list they are meant for."""

import pytest

from app.planfile.form import PLAN
from app.planfile.headings import MOST_JUDGED, mend_headings
from app.planfile.roster import ROSTER
from app.planfile.tables import Table
from tests.plantexts import problems_of


def mended(*lines: str, table: Table = PLAN) -> list[str]:
    """The lines with their headings put right."""
    return mend_headings("\n".join(lines), table)[0].split("\n")


def wrong(*lines: str, table: Table = PLAN) -> list[str]:
    """What is said of the headings."""
    problems = mend_headings("\n".join(lines), table)[1]
    return [problem.located("").removeprefix(":") for problem in problems]


@pytest.mark.parametrize(
    ("line", "right", "says"),
    [
        ("[[stag]]", "[[stage]]", 'unknown key "stag"; did you mean "stage"?'),
        ("[[Stage]]", "[[stage]]", 'unknown key "Stage"; did you mean "stage"?'),
        ("[[stages]]", "[[stage]]", '"stages" does not belong here; write each stage as [[stage]]'),
        ("[[stag.exercise]]", "[[stage.exercise]]", 'unknown key "stag"; did you mean "stage"?'),
        ("[[stage.exercse]]", "[[stage.exercise]]", 'unknown key "exercse"; did you mean "exercise"?'),
        ("[[ stag . exercise ]] # x", "[[stage.exercise]] # x", 'unknown key "stag"; did you mean "stage"?'),
        ("[[stag]", "[[stage]", 'unknown key "stag"; did you mean "stage"?'),
        ("[[stag.exercise.wrds]]", "[[stage.exercise.wrds]]", 'unknown key "stag"; did you mean "stage"?'),
        (
            "[stage]",
            "[[stage]]",
            "this must be a list of tables; begin each with [[stage]], in double brackets",
        ),
        (
            "[stage.exercise]",
            "[[stage.exercise]]",
            "this must be a list of tables; begin each with [[stage.exercise]], in double brackets",
        ),
    ],
)
def test_a_heading_that_misses_its_list_is_told_and_put_right(line: str, right: str, says: str) -> None:
    assert mended("a = 1", line, "b = 2") == ["a = 1", right, "b = 2"]
    assert wrong("a = 1", line, "b = 2") == [f"2:1: {says}"]


def test_what_is_wrong_twice_is_told_twice_at_the_bracket() -> None:
    assert wrong("  [stag]") == [
        '1:3: unknown key "stag"; did you mean "stage"?',
        "1:3: this must be a list of tables; begin each with [[stage]], in double brackets",
    ]


@pytest.mark.parametrize(
    "line",
    [
        "[[stage]]",
        "[[stage.exercise]]",
        "[stage.exercise.words]",
        "[stage.exercise.wrds]",
        "[words]",
        "[[zebra]]",
        "[[title]]",
        "[titel]",
        "[[exercise]]",
        "[[zebra.stag]]",
        '["stag"]',
        "[[stage",
        "[",
        "# [[stag]]",
        'a = "[[stag]]"',
        "a = [[1], [2]]",
    ],
)
def test_any_other_line_stays_as_it_is(line: str) -> None:
    assert mended(line) == [line]
    assert wrong(line) == []


def test_text_over_several_lines_holds_no_headings() -> None:
    text = ['a = """', "[[stag]]", '"""', "b = '''", "[stage]", "'''"]
    assert mended(*text) == text


def test_an_exercise_without_its_stage_in_front_belongs_to_the_one_begun() -> None:
    assert mended("[[stage]]", "[[exercise]]", "[[exercises]]", "[exercse]") == [
        "[[stage]]",
        *["[[stage.exercise]]"] * 3,
    ]
    assert wrong("[[stag]]", "[[exercise]]", "[[exercises]]") == [
        '1:1: unknown key "stag"; did you mean "stage"?',
        '2:1: "exercise" does not belong here; write it as [[stage.exercise]] below its [[stage]]',
        '3:1: unknown key "exercises"; did you mean "stage.exercise"?',
    ]


def test_the_headings_of_a_roster_are_put_right_too() -> None:
    assert mended("[[athlet]]", "[athlete.exercise]", table=ROSTER) == ["[[athlete]]", "[[athlete.exercise]]"]


def test_of_unknown_headings_without_end_not_all_are_judged() -> None:
    lines = [f"[stag{number}]" for number in range(3 * MOST_JUDGED)]
    assert mended(*lines)[:MOST_JUDGED] == ["[[stage]]"] * MOST_JUDGED
    assert mended(*lines)[MOST_JUDGED:] == lines[MOST_JUDGED:]


STAG = """\
format = 1
title = "x"
[[stag]]
name = "a"
kind = "powr"
[[stage.exercise]]
name = "b"
work = 0
[[stag]]
nam = "c"
kind = "power"
[[stag.exercise]]
name = "d"
work = 0
"""


def test_nothing_below_a_heading_that_misses_its_list_is_hidden() -> None:
    assert problems_of(STAG) == [
        '3:1: unknown key "stag"; did you mean "stage"?',
        '5:8: "powr" is not known here; did you mean "power"?',
        "8:8: 0 is out of range; write 0.1 to 600 seconds",
        '9:1: unknown key "stag"; did you mean "stage"?',
        '10:1: unknown key "nam"; did you mean "name"?',
        '12:1: unknown key "stag"; did you mean "stage"?',
        "14:8: 0 is out of range; write 0.1 to 600 seconds",
    ]
    single = STAG.replace("[[stag]]", "[stage]").replace("[[stag.exercise]]", "[stage.exercise]")
    assert [problem.partition(": ")[0] for problem in problems_of(single)] == [
        problem.partition(": ")[0] for problem in problems_of(STAG)
    ]
