"""How long a session lasts, as far as a file with problems in it lets that be known."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.length import session_ms
from app.domain.plan import Plan
from app.planfile.form import PLAN
from app.planfile.known_length import KnownLength, known_length
from app.planfile.syntax import parse_toml
from app.planfile.writer import write_plan
from tests.plantexts import Refusals, exercise_problems, plan_text, problems_of
from tests.strategies import plans

LONG = ["work = 600", "sets = 20", "rest = 600"]
SECOND = ["[[stage.exercise]]", 'name = "Row"']


def known(text: str) -> KnownLength:
    """What is known of the length of a plan."""
    document = parse_toml(text).document
    assert document is not None
    values = PLAN.read(document, Refusals())
    assert values is not None
    return known_length(document, values)


@given(plans())
def test_of_a_sound_plan_the_whole_length_is_known(plan: Plan) -> None:
    assert known(write_plan(plan)) == KnownLength(session_ms(plan), whole=True)


@given(plans(), st.data())
def test_a_line_made_senseless_never_makes_the_session_longer(plan: Plan, data: st.DataObject) -> None:
    lines = write_plan(plan).split("\n")
    places = [number for number, line in enumerate(lines) if " = " in line]
    for number in data.draw(st.sets(st.sampled_from(places), min_size=1, max_size=3)):
        key = lines[number].partition(" = ")[0]
        lines[number] = data.draw(st.sampled_from([f"{key} = true", f"{key}x = 1", f"{key} = x y"]))
    assert known("\n".join(lines)).ms <= session_ms(plan)


@pytest.mark.parametrize(
    "lines",
    [
        ["cues = 3"],
        ["target = 3"],
        ['first = "up"'],
        ["words = { zebra = 1 }"],
        ["zebra = 3"],
        ["contacts = -1"],
        ["load_kg = -1"],
    ],
)
def test_what_is_wrong_with_other_keys_does_not_hide_the_length(lines: list[str]) -> None:
    # 5 s lead-in, 20 x 600 s of work, 19 x 600 s of rest; 20 s changeover, and the same again.
    text = plan_text(*LONG, *lines, *SECOND, *LONG)
    assert known(text) == KnownLength((5 + 23_400 + 20 + 23_400) * 1000, whole=True)
    assert known(text.replace("title", "titl")).whole


@pytest.mark.parametrize(
    ("lines", "seconds"),
    [
        # Alone: 5 s lead-in and 23 400 s. Without a known rest: 20 lead-ins.
        (["work = 30", "sets = true"], 5 + 23_400 + 35),
        (["work = 30", "sets = 2", "rest = true"], 5 + 23_400 + 35 + 35),
        (["work = 30", "sets = 2", "superset = 1"], 5 + 23_400 + 35 + 35),
        (["work = 30", "sides = true"], 5 + 23_400 + 35),
        (["work = 30", 'sides = "alternate"'], 5 + 23_400 + 35),
        (["work = true"], 5 + 23_400),
        (["reps = 3"], 5 + 23_400),
        (["reps = 3", "hold = 2", "every = 3"], 5 + 23_400),
        (["hold = 2"], 5 + 23_400),
        (["reps = 3", "hold = 2", "relx = 0"], 5 + 23_400),
        (["reps = 3", "hold = 2", "pause = 0"], 5 + 23_400),
    ],
)
def test_what_is_wrong_with_a_key_of_the_length_leaves_a_lower_bound(lines: list[str], seconds: int) -> None:
    assert known(plan_text(*LONG, *SECOND, *lines)) == KnownLength(seconds * 1000, whole=False)


@pytest.mark.parametrize("line", ["lead_in = 1", "led_in = 9", "side_change = true", "changeovr = 9"])
def test_what_is_wrong_with_the_gaps_of_the_plan_leaves_a_lower_bound(line: str) -> None:
    text = plan_text(*LONG, *SECOND, *LONG).replace("[[stage]]", f"{line}\n[[stage]]", 1)
    assert known(text) == KnownLength(2 * (3 + 23_400) * 1000, whole=False)


def test_in_a_superset_only_the_lead_ins_are_sure() -> None:
    text = plan_text(*LONG, 'superset = "A"', *SECOND, "work = true", 'superset = "A"')
    assert known(text) == KnownLength(20 * (600 + 5) * 1000, whole=False)


def test_a_list_under_another_name_or_of_no_tables_tells_no_length() -> None:
    head = 'format = 1\ntitle = "x"\n'
    for stages in (
        "",
        "stage = []",
        "stage = [3]",
        "stage = [{ exercise = [3] }]",
        "stage = [{ exercise = 3 }]",
    ):
        assert known(head + stages).ms == 0
    inline = "stge = [{ name = 'a', kind = 'power', exercise = [{ name = 'b', work = 9 }] }]"
    assert known(head + inline) == KnownLength(0, whole=False)


def test_a_session_that_is_too_long_is_told_beside_the_other_problems() -> None:
    most = "shorten it to 6:00:00 at most, or split it"
    assert exercise_problems(*LONG, "cues = 3") == [
        f"1:1: the session lasts 6:30:05; {most}",
        '13:8: this must be a list of texts, not 3; write it like ["first", "second"]',
    ]
    assert exercise_problems(*LONG, *SECOND, "work = 0") == [
        f"1:1: the session lasts at least 6:30:05; {most}",
        "15:8: 0 is out of range; write 0.1 to 600 seconds",
    ]
    assert exercise_problems(*LONG, "setup = lie down") == [
        f"1:1: the session lasts 6:30:05; {most}",
        '13:9: this value cannot be read; text stands in quotes: setup = "lie down"',
    ]


def test_part_seconds_over_six_hours_are_shown() -> None:
    # 5 s, 36 sets of 595 s and 34 rests of 5 s between, a changeover of 5.1 s.
    twice = [*("work = 595", "rest = 5", "sets = 18"), *SECOND, *("work = 595", "rest = 5", "sets = 18")]
    text = plan_text(*twice).replace("[[stage]]", "changeover = 5.1\n[[stage]]", 1)
    assert problems_of(text) == [
        "1:1: the session lasts 6:00:00.1; shorten it to 6:00:00 at most, or split it"
    ]
    assert problems_of(text.replace("5.1", "5")) == []
