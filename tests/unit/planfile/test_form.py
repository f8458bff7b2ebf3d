"""What goes together in a plan file and what does not."""

import pytest

from app.planfile.doses import FORMS
from app.planfile.keys import DOSE_KEYS, MOST_EXERCISES, MOST_STAGES
from tests.plantexts import HEAD, exercise_problems, plan_text, problems_of

VALUES = {
    "reps": "8",
    "tempo": '"3010"',
    "begins": '"concentric"',
    "hold": "4",
    "relax": "2",
    "stick": "[3, 5]",
    "move": "2",
    "reset": "4",
    "every": "8",
    "pace": '"own"',
    "work": "30",
}
BELONGS = {
    "tempo": {"reps", "begins"},
    "hold": {"reps", "relax"},
    "stick": {"reps", "move", "reset"},
    "every": {"reps"},
    "pace": {"reps"},
    "work": set(),
}
"""The table of doses in the format, written down once more by hand: what may stand beside each marker."""


def test_the_hand_written_table_names_every_form_and_key() -> None:
    assert set(BELONGS) == {form.marker for form in FORMS}
    assert set(VALUES) == {key.name for key in DOSE_KEYS}


@pytest.mark.parametrize("marker", BELONGS)
@pytest.mark.parametrize("other", VALUES)
def test_a_key_stands_only_beside_the_dose_it_belongs_to(marker: str, other: str) -> None:
    keys = {marker, other, *({"reps"} if marker != "work" else ())}
    problems = exercise_problems(*(f"{key} = {VALUES[key]}" for key in VALUES if key in keys))
    if other == marker or other in BELONGS[marker]:
        assert problems == []
    elif other in BELONGS:
        assert [problem for problem in problems if "are two doses; keep one of them" in problem]
    else:
        (problem,) = problems
        assert f"{other} does not go with {marker}; it goes with " in problem


@pytest.mark.parametrize("marker", [marker for marker in BELONGS if marker != "work"])
def test_every_dose_of_reps_needs_them(marker: str) -> None:
    assert exercise_problems(f"{marker} = {VALUES[marker]}") == [
        f'10:1: "reps" is missing beside {marker}; write reps = 8, or a range'
    ]


@pytest.mark.parametrize("lines", [[], ["reps = 8"], ["sets = 3"]])
def test_an_exercise_without_a_dose_is_refused_at_its_heading(lines: list[str]) -> None:
    assert exercise_problems(*lines) == [
        "8:1: the exercise has no dose; write one of tempo, hold, stick, every, pace or work"
    ]


def test_a_mistyped_dose_is_named_once() -> None:
    assert exercise_problems("reps = 8", 'temo = "3010"') == [
        '11:1: unknown key "temo"; did you mean "tempo"?'
    ]


@pytest.mark.parametrize(
    ("mistyped", "meant"),
    [
        ("rset = 3", "rest"),
        ("rst = 3", "rest"),
        ("pause = 3", "rest"),
        ("wrk = 3", "work"),
        ("hld = 3", "hold"),
        ("evry = 3", "every"),
        ("stik = 3", "stick"),
        ("mov = 3", "move"),
        ("relx = 3", "relax"),
        ('pase = "own"', "pace"),
        ('pause = "own"', "pace"),
    ],
)
def test_a_mistyped_key_beside_a_dose_is_one_problem(mistyped: str, meant: str) -> None:
    says = f'12:1: unknown key "{mistyped.split(maxsplit=1)[0]}"; did you mean "{meant}"?'
    assert exercise_problems("reps = 3", 'tempo = "3010"', mistyped) == [says]


def test_a_mistyped_key_that_neither_fits_nor_takes_its_value_gets_no_guess() -> None:
    (problem,) = exercise_problems("reps = 3", 'tempo = "3010"', "pase = 3")
    assert problem.startswith(
        '12:1: unknown key "pase"; known here are name, target, sides, first, sets, reps, '
    )
    assert "hold" not in problem


def test_a_mistyped_key_is_meant_for_one_that_is_not_there_yet() -> None:
    assert exercise_problems("reps = 3", 'tempo = "3010"', "rest = 9", "rset = 3") == [
        '13:1: unknown key "rset"; did you mean "sets"?'
    ]
    assert exercise_problems("reps = 3", "stick = 3", "rest = 9", "rset = 3") == [
        '13:1: unknown key "rset"; did you mean "reset"?'
    ]
    assert exercise_problems("work = 3", "wrk = 3") == [
        '11:1: unknown key "wrk"; "work" stands here already, keep one'
    ]


@pytest.mark.parametrize("mistyped", ["wrk = 3", "hld = 3", "evry = 3", "stik = 3", 'pase = "own"'])
def test_a_mistyped_dose_beside_reps_alone_is_one_problem(mistyped: str) -> None:
    (problem,) = exercise_problems("reps = 3", mistyped)
    assert problem.startswith("11:1: unknown key ")


def test_sides_that_are_only_guessed_are_not_blamed() -> None:
    assert exercise_problems("work = 3", 'sids = "alternate"') == [
        '11:1: unknown key "sids"; did you mean "sides"?'
    ]


def test_a_gap_has_no_word_of_its_own() -> None:
    (problem,) = exercise_problems("work = 9", 'words = { rest = "breathe" }')
    assert problem == (
        '11:11: "rest" does not belong here; no gap has a word of its own, but eccentric, hold, concentric, '
        "relax, move, stick, reset, go, work have"
    )


def test_three_doses_are_two_too_many() -> None:
    assert exercise_problems("reps = 8", "hold = 4", "work = 9", "every = 3") == [
        "12:1: hold and work are two doses; keep one of them",
        "13:1: hold and every are two doses; keep one of them",
    ]


@pytest.mark.parametrize(
    ("lines", "marker"), [(["work = 30"], "work"), (["reps = 8", 'pace = "own"'], "pace")]
)
def test_work_without_a_fixed_rep_does_not_alternate(lines: list[str], marker: str) -> None:
    (problem,) = exercise_problems('sides = "alternate"', *lines)
    assert problem == f'10:9: sides = "alternate" does not go with {marker}; write sides = "each"'


@pytest.mark.parametrize("marker", ["tempo", "hold", "stick", "every"])
def test_reps_of_a_known_length_may_alternate(marker: str) -> None:
    assert exercise_problems('sides = "alternate"', "reps = 8", f"{marker} = {VALUES[marker]}") == []


def test_a_key_of_another_table_is_sent_where_it_belongs() -> None:
    text = plan_text(
        "work = 9", 'title = "x"', "lead_in = 3", "[[stage]]", 'name = "b"', 'kind = "power"', "sets = 3"
    )
    assert problems_of("reps = 3\n" + text) == [
        '1:1: "reps" does not belong here; write it under a [[stage.exercise]]',
        '12:1: "title" does not belong here; write it above the first [[stage]]',
        '13:1: "lead_in" does not belong here; write it above the first [[stage]]',
        '14:1: "exercise" is missing; write a first exercise under [[stage.exercise]]',
        '17:1: "sets" does not belong here; write it under a [[stage.exercise]]',
    ]


def test_headings_of_the_wrong_kind_are_explained() -> None:
    assert problems_of('format = 1\ntitle = "x"\n[stage]\nname = "a"\nkind = "power"\n') == [
        "3:1: this must be a list of tables; begin each with [[stage]], in double brackets",
        '3:1: "exercise" is missing; write a first exercise under [[stage.exercise]]',
    ]
    assert problems_of('format = 1\ntitle = "x"\nstage = []\n') == [
        "3:9: the list is empty; begin a first table with [[stage]]"
    ]
    assert problems_of('format = 1\ntitle = "x"\n[[exercise]]\nname = "a"\n') == [
        '1:1: "stage" is missing; write a first stage under [[stage]]',
        '3:1: "exercise" does not belong here; write it as [[stage.exercise]] below its [[stage]]',
    ]


def exercises(count: int) -> str:
    return '[[stage.exercise]]\nname = "x"\nwork = 1\n' * count


def stages(count: int, each: int) -> str:
    return ('[[stage]]\nname = "x"\nkind = "other"\n' + exercises(each)) * count


def test_ten_stages_are_the_most() -> None:
    head = 'format = 1\ntitle = "x"\n'
    assert problems_of(head + stages(MOST_STAGES, 1)) == []
    (problem,) = problems_of(head + stages(MOST_STAGES + 1, 1))
    assert problem == "63:1: there are 11 of these; write 10 at most"


def test_beyond_the_most_everything_is_looked_into_and_every_excess_told() -> None:
    head = 'format = 1\ntitle = "x"\nchangeover = 0\nlead_in = 3\n'
    last = '[[stage.exercise]]\nname = "x"\nwork = 0\n'
    # 11 stages of 3 + 7 x 3 lines below 4; the 61st exercise is the fifth of the ninth stage.
    assert problems_of(head + stages(MOST_STAGES + 1, 7) + last) == [
        f"{4 + 8 * 24 + 3 + 4 * 3 + 1}:1: the plan has 78 exercises; write 60 at most, or split it",
        "245:1: there are 11 of these; write 10 at most",
        "271:8: 0 is out of range; write 0.1 to 600 seconds",
    ]
    assert problems_of(head + stages(1, MOST_EXERCISES + 1) + last) == [
        "188:1: there are 62 of these; write 60 at most",
        "193:8: 0 is out of range; write 0.1 to 600 seconds",
    ]


def test_sixty_exercises_are_the_most_in_one_stage_or_over_several() -> None:
    head = 'format = 1\ntitle = "x"\nchangeover = 0\nlead_in = 3\n'
    assert problems_of(head + stages(1, MOST_EXERCISES)) == []
    assert problems_of(head + stages(6, 10)) == []
    assert len(problems_of(head + stages(1, MOST_EXERCISES + 1))) == 1
    (problem,) = problems_of(head + stages(6, 10) + exercises(1))
    assert problem.endswith(": the plan has 61 exercises; write 60 at most, or split it")


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("format = 2", "format 2 is newer than this program; update it, it reads 1"),
        ("format = 0", "there is no format 0; write format = 1"),
        ('format = "1"', '"1" is no format; write format = 1'),
        ("format = 1.0", "1.0 is no format; write format = 1"),
        ("format = true", "true is no format; write format = 1"),
    ],
)
def test_only_format_one_is_read(line: str, says: str) -> None:
    assert problems_of(HEAD.replace("format = 1", line) + "work = 9") == [f"1:10: {says}"]
