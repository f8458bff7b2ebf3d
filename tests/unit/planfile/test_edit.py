"""Edits of a plan file: the change and nothing but the change."""

import difflib
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.planfile.edit import (
    EditError,
    add_exercise,
    add_stage,
    move_exercise,
    move_stage,
    remove_exercise,
    remove_stage,
    set_value,
)
from app.planfile.positions import Place
from app.planfile.reader import parse_plan
from app.planfile.writer import Value, write_plan
from tests.planned import work_for
from tests.strategies import plans

DEMO = (Path(__file__).parents[3] / "demo_data" / "landing_control.toml").read_text(encoding="utf-8")

TEXT = """\
# For Tuesdays.
format = 1
title  =  'Tuesday'   # not Monday

# first things first
[[stage]]
name = "Wake"
kind = "activation"

  # the easy one
  [[stage.exercise]]
  name = "Bridge"
  reps = 8 # each
  tempo = "2-0-1-1"
  words = { hold = "stay" }
  # softly

  # the other one
  [[stage.exercise]]
  name = "Raise"
  work = 30

[[stage]]
name = "Jump"
kind = "power"

  [[stage.exercise]]
  name = "Hop"
  work = 20
# done
"""


WALK = '\n[[stage.exercise]]\nname = "Walk"\nwork = 60\n'
"""An exercise for the last stage."""


def changes(after: str, before: str = TEXT) -> list[str]:
    """The lines that an edit took out and put in."""
    lines = difflib.ndiff(before.splitlines(), after.splitlines())
    return [line for line in lines if line[0] in "+-" and line[2:].strip()]


def names(text: str) -> list[list[str]]:
    """The exercises of each stage."""
    return [[exercise.name for exercise in stage.exercises] for stage in parse_plan(text, "p", None).stages]


@pytest.mark.parametrize(
    ("place", "value", "expected"),
    [
        (("stage", 0, "exercise", 0, "reps"), [8, 10], ["-   reps = 8 # each", "+   reps = [8, 10] # each"]),
        (
            ("title",),
            'A "day"',
            ["- title  =  'Tuesday'   # not Monday", '+ title  =  "A \\"day\\""   # not Monday'],
        ),
        (("author",), "Me", ['+ author = "Me"']),
        (("stage", 1, "kind"), "reactive", ['- kind = "power"', '+ kind = "reactive"']),
        (("stage", 0, "exercise", 0, "rest"), 45, ["+   rest = 45"]),
        (("stage", 1, "exercise", 0, "cues"), ["soft"], ['+   cues = ["soft"]']),
        (("stage", 0, "exercise", 1, "words", "work"), "go", ['+   words = { work = "go" }']),
        (
            ("stage", 0, "exercise", 0, "words", "relax"),
            "off",
            ['-   words = { hold = "stay" }', '+   words = { hold = "stay", relax = "off" }'],
        ),
        (("stage", 0, "exercise", 0, "words", "hold"), None, ['-   words = { hold = "stay" }']),
        (("stage", 0, "exercise", 0, "reps"), None, ["-   reps = 8 # each"]),
        (("stage", 0, "exercise", 0, "cues"), None, []),
    ],
)
def test_one_value_is_changed_and_everything_else_stays(
    place: Place, value: Value | None, expected: list[str]
) -> None:
    edited = set_value(TEXT, place, value)
    assert sorted(changes(edited)) == sorted(expected)
    assert edited.endswith("# done\n")


def test_a_new_key_goes_before_the_remarks_below_it() -> None:
    lines = set_value(TEXT, ("stage", 0, "exercise", 0, "rest"), 45).splitlines()
    assert lines[lines.index("  rest = 45") + 1] == "  # softly"


def test_one_entry_of_a_list_is_changed() -> None:
    place = ("stage", 0, "exercise", 0, "cues", 1)
    assert changes(set_value(DEMO, place, "Hips level"), DEMO) == [
        '-   cues = ["Push through the heel", "Level pelvis"]',
        '+   cues = ["Push through the heel", "Hips level"]',
    ]


def test_dotted_words_are_changed_where_they_stand() -> None:
    text = TEXT.replace('words = { hold = "stay" }', 'words.hold = "stay" # ah')
    assert changes(set_value(text, ("stage", 0, "exercise", 0, "words", "hold"), "x"), text) == [
        '-   words.hold = "stay" # ah',
        '+   words.hold = "x" # ah',
    ]


def test_an_exercise_moves_with_the_remark_above_it() -> None:
    edited = move_exercise(TEXT, (0, 1), (1, 0))
    assert names(edited) == [["Bridge"], ["Raise", "Hop"]]
    assert '  # the other one\n  [[stage.exercise]]\n  name = "Raise"' in edited
    assert sorted(edited.splitlines()) == sorted([*TEXT.splitlines()])


def test_an_exercise_moves_within_its_stage_both_ways() -> None:
    assert names(move_exercise(TEXT, (0, 0), (0, 1))) == [["Raise", "Bridge"], ["Hop"]]
    assert names(move_exercise(TEXT, (0, 1), (0, 0))) == [["Raise", "Bridge"], ["Hop"]]


def test_an_exercise_is_taken_out_with_the_remark_above_it() -> None:
    edited = remove_exercise(TEXT, 0, 1)
    assert names(edited) == [["Bridge"], ["Hop"]]
    assert changes(edited) == [
        "-   # the other one",
        "-   [[stage.exercise]]",
        '-   name = "Raise"',
        "-   work = 30",
    ]


def test_an_exercise_is_added_where_it_is_wanted() -> None:
    new = Exercise("New", work_for(10))
    assert names(add_exercise(TEXT, 0, 1, new)) == [["Bridge", "New", "Raise"], ["Hop"]]
    assert names(add_exercise(TEXT, 0, 9, new)) == [["Bridge", "Raise", "New"], ["Hop"]]
    assert names(add_exercise(TEXT, 1, 0, new)) == [["Bridge", "Raise"], ["New", "Hop"]]
    put_in = ["+   [[stage.exercise]]", '+   name = "New"', "+   work = 10"]
    assert sorted(changes(add_exercise(TEXT, 1, 0, new))) == sorted(put_in)


def test_an_exercise_is_added_to_a_stage_that_has_none_yet() -> None:
    text = TEXT[: TEXT.index('  [[stage.exercise]]\n  name = "Hop"')]
    assert names(add_exercise(text, 1, 0, Exercise("New", work_for(10)))) == [["Bridge", "Raise"], ["New"]]


GROUPED = TEXT.replace(
    "# first things", '# in the hall\n[group]\nform = "stations" # round\n\n# first things'
)
BELOW = TEXT.replace("# done", '[group]\nform = "stations" # round\n# done')


@pytest.mark.parametrize("text", [GROUPED, BELOW])
def test_what_is_said_of_a_group_is_changed_where_it_stands(text: str) -> None:
    assert changes(set_value(text, ("group", "form"), "waves"), text) == [
        '- form = "stations" # round',
        '+ form = "waves" # round',
    ]
    assert changes(set_value(text, ("group", "swap"), 12), text) == ["+ swap = 12"]
    assert parse_plan(set_value(text, ("group", "rounds"), 2), "p", None).group == Grouping(
        Form.STATIONS, rounds=2
    )
    assert parse_plan(set_value(text, ("group",), None), "p", None).group is None
    assert changes(set_value(text, ("title",), "T"), text)[1:] == ['+ title  =  "T"   # not Monday']


def test_a_plan_that_says_nothing_of_groups_gets_a_first_word() -> None:
    assert changes(set_value(TEXT, ("group", "form"), "waves")) == ['+ group = { form = "waves" }']
    assert set_value(TEXT, ("group",), None) == TEXT


@pytest.mark.parametrize("text", [GROUPED, BELOW])
def test_a_group_outlives_the_stages_around_it(text: str) -> None:
    for edited in (remove_stage(text, 1), move_stage(text, 1, 0), remove_exercise(text, 1, 0) + WALK):
        assert parse_plan(edited, "p", None).group == Grouping(Form.STATIONS)


def test_stages_are_moved_added_and_taken_out_whole() -> None:
    assert names(move_stage(TEXT, 0, 1)) == [["Hop"], ["Bridge", "Raise"]]
    assert "# first things first\n[[stage]]" in move_stage(TEXT, 0, 1)
    assert names(remove_stage(TEXT, 0)) == [["Hop"]]
    stage = Stage("New", StageKind.OTHER, (Exercise("Walk", work_for(60)),))
    assert names(add_stage(TEXT, 1, stage)) == [["Bridge", "Raise"], ["Walk"], ["Hop"]]
    assert names(add_stage(TEXT, 2, stage)) == [["Bridge", "Raise"], ["Hop"], ["Walk"]]


@pytest.mark.parametrize("place", [("stage", 2, "name"), ("stage", 0, "exercise", 2, "name")])
def test_a_place_that_is_not_there_is_refused(place: Place) -> None:
    with pytest.raises(EditError, match=r"There is no stage [13]"):
        set_value(TEXT, place, "x")
    for edit in (
        lambda: remove_exercise(TEXT, 0, 2),
        lambda: move_stage(TEXT, 2, 0),
        lambda: remove_stage(TEXT, 9),
    ):
        with pytest.raises(EditError):
            edit()


def test_a_plan_in_braces_is_not_edited_and_it_is_said_why() -> None:
    stage = '{ name = "S", kind = "power", exercise = [{ name = "E", work = 9 }] }'
    text = f'format = 1\ntitle = "T"\nstage = [{stage}]\n'
    with pytest.raises(EditError, match=r"write plans with \[\[stage\]\]"):
        set_value(text, ("stage", 0, "exercise", 0, "work"), 10)
    assert parse_plan(set_value(text, ("title",), "U"), "p", None).title == "U"


@given(plans(), st.data())
def test_any_edit_of_any_plan_reads_as_the_plan_with_that_change(plan: Plan, data: st.DataObject) -> None:
    if plan.group is not None:  # a station is named as its exercise, which gets another name here
        plan = replace(plan, group=replace(plan.group, stations=()))
    text = write_plan(plan)
    number = data.draw(st.integers(0, len(plan.stages) - 1))
    stage = plan.stages[number]
    index = data.draw(st.integers(0, len(stage.exercises) - 1))
    edited = set_value(text, ("stage", number, "exercise", index, "name"), "Another")
    exercises = list(stage.exercises)
    exercises[index] = replace(exercises[index], name="Another")
    assert parse_plan(edited, "p", None) == with_exercises(plan, number, exercises)
    to = data.draw(st.integers(0, len(exercises) - 1))
    exercises.insert(to, exercises.pop(index))
    moved = move_exercise(edited, (number, index), (number, to))
    assert parse_plan(moved, "p", None) == with_exercises(plan, number, exercises)
    assert parse_plan(move_stage(text, number, 0), "p", None).stages[0] == stage


def with_exercises(plan: Plan, number: int, exercises: list[Exercise]) -> Plan:
    """The plan with other exercises in one stage."""
    stages = list(plan.stages)
    stages[number] = replace(stages[number], exercises=tuple(exercises))
    return replace(plan, stages=tuple(stages))
