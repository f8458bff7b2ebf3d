"""Plan files to plans: every key, every default, and every problem of a file at once."""

from decimal import Decimal
from pathlib import Path

import pytest

from app.domain.dose import Band, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.errors import FileProblemsError
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, First, Level, Plan, Sides, Stage, StageKind, StageOrder, Words
from app.domain.tempo import Begins, Tempo
from app.planfile.reader import parse_plan, read_plan
from tests.plantexts import exercise_of, exercise_problems, plan_text, problems_of

WHOLE = """\
format = 1
title = "Landing control, week 3"
author = "Practitioner on duty"
level = "advanced"
order = "free"
lead_in = 4.5
changeover = 25
side_change = 9
fast = 0.8

[group]
form = "stations"
work = 45
change = 12.5
rounds = 2
stations = ["Side-lying external rotation"]
teams = 3
swap = 8

[[stage]]
name = "Wake the rotators"
kind = "activation"

  [[stage.exercise]]
  name = "Side-lying external rotation"
  target = "infraspinatus"
  sides = "each"
  first = "weaker"
  sets = 2
  reps = [12, 15]
  tempo = "2-1-X-1"
  begins = "concentric"
  rest = 45
  load_kg = 2.50
  contacts = 0
  superset = "A"
  setup = "Lie on the other side."
  cues = ["Elbow stays down", "Slow on the way back"]
  faults = ["shoulder hikes", "trunk rolls"]
  words = { eccentric = "lower", hold = "hold", concentric = "turn up" }
  picture = "figures/side_lying_er.svg"
  stop_if = ["sharp pain", "tingling"]
  easier = "Side-lying, towel alone"
  harder = "Standing, with a band"
"""


def test_every_key_of_a_plan_is_read() -> None:
    exercise = Exercise(
        name="Side-lying external rotation",
        dose=TempoReps(Band(12, 15), Tempo(2000, 1000, None, 1000), Begins.CONCENTRIC),
        target="infraspinatus",
        sides=Sides.EACH,
        first=First.WEAKER,
        sets=2,
        rest_ms=45_000,
        load_kg=Decimal("2.5"),
        contacts=0,
        superset="A",
        setup="Lie on the other side.",
        cues=("Elbow stays down", "Slow on the way back"),
        faults=("shoulder hikes", "trunk rolls"),
        words=Words(eccentric="lower", hold="hold", concentric="turn up"),
        picture="figures/side_lying_er.svg",
        stop_if=("sharp pain", "tingling"),
        easier="Side-lying, towel alone",
        harder="Standing, with a band",
    )
    assert parse_plan(WHOLE, "plan.toml", None) == Plan(
        title="Landing control, week 3",
        stages=(Stage("Wake the rotators", StageKind.ACTIVATION, (exercise,)),),
        author="Practitioner on duty",
        level=Level.ADVANCED,
        order=StageOrder.FREE,
        lead_in_ms=4500,
        changeover_ms=25_000,
        side_change_ms=9000,
        fast_ms=800,
        group=Grouping(
            form=Form.STATIONS,
            work_ms=45_000,
            change_ms=12_500,
            rounds=2,
            stations=("Side-lying external rotation",),
            teams=3,
            swap_ms=8000,
        ),
    )


def test_what_is_left_out_has_the_defaults_of_the_format() -> None:
    plan = parse_plan(plan_text("work = 30"), "plan.toml", None)
    assert plan == Plan("Tuesday", (Stage("Wake", StageKind.ACTIVATION, (exercise_of("work = 30"),)),))
    assert (plan.lead_in_ms, plan.changeover_ms, plan.side_change_ms, plan.fast_ms) == (
        5000,
        20_000,
        8000,
        1000,
    )
    assert plan.group is None
    grouped = plan_text("work = 30").replace("[[stage]]", "[group]\n[[stage]]")
    assert parse_plan(grouped, "plan.toml", None).group == Grouping()
    assert (plan.level, plan.order) == (Level.BEGINNER, StageOrder.LOCKED)
    exercise = plan.stages[0].exercises[0]
    assert (exercise.sides, exercise.first, exercise.sets, exercise.rest_ms) == (
        Sides.BOTH,
        First.LEFT,
        1,
        60_000,
    )
    assert (exercise.load_kg, exercise.contacts, exercise.superset) == (None, None, None)


@pytest.mark.parametrize(
    ("lines", "dose"),
    [
        (["reps = 15", 'tempo = "3010"'], TempoReps(Band(15, 15), Tempo(3000, 0, 1000, 0))),
        (
            ["reps = 8", 'tempo = "301"', 'begins = "hold"'],
            TempoReps(Band(8, 8), Tempo(3000, 0, 1000, 0), Begins.HOLD),
        ),
        (["reps = 6", "hold = 4"], HoldReps(Band(6, 6), Band(4000, 4000), 2000)),
        (["reps = 6", "hold = [3, 4.5]", "relax = 0"], HoldReps(Band(6, 6), Band(3000, 4500), 0)),
        (["reps = [6, 10]", "stick = [3, 5]"], StickReps(Band(6, 10), Band(3000, 5000), 2000, 4000)),
        (
            ["reps = 6", "stick = 3", "move = 1.5", "reset = 0"],
            StickReps(Band(6, 6), Band(3000, 3000), 1500, 0),
        ),
        (["reps = 5", "every = 8"], SignalReps(Band(5, 5), 8000)),
        (["reps = [4, 6]", 'pace = "own"'], OwnPaceReps(Band(4, 6))),
        (["work = 30"], WorkTime(Band(30_000, 30_000))),
        (["work = [20, 30]"], WorkTime(Band(20_000, 30_000))),
    ],
)
def test_every_form_of_a_dose_is_read(lines: list[str], dose: object) -> None:
    assert exercise_of(*lines).dose == dose


def test_a_word_may_be_given_for_any_phase() -> None:
    lines = [f'words.{name} = "{name}!"' for name in Words.__dataclass_fields__]
    words = exercise_of("work = 30", *lines).words
    assert words == Words(*[f"{name}!" for name in Words.__dataclass_fields__])


def test_braces_and_dotted_keys_say_the_same_as_headings() -> None:
    stage = 'name = "S"', 'kind = "power"'
    exercise = 'name = "E"', "work = 9", 'words.work = "go on"'
    head = 'format = 1\ntitle = "T"\n'
    braces = f"{head}stage = [{{ {', '.join(stage)}, exercise = [{{ {', '.join(exercise)} }}] }}]"
    headings = "\n".join([head, "[[stage]]", *stage, "[[stage.exercise]]", *exercise])
    assert parse_plan(braces, "a", None) == parse_plan(headings, "b", None)


def test_exercises_of_the_same_name_are_fine() -> None:
    text = plan_text("work = 30", "[[stage.exercise]]", 'name = "Squat"', "work = 30")
    assert [exercise.name for exercise in parse_plan(text, "a", None).stages[0].exercises] == [
        "Squat",
        "Squat",
    ]


def test_writing_of_the_right_to_left_and_of_other_scripts_is_welcome() -> None:
    assert exercise_of("work = 9", 'setup = "ישיבה על הכיסא"', 'target = "膝 👣"').target == "膝 👣"


GROUP = """\
[group]
form = "sations"
work = 9.9
chnge = 20
rounds = 0
stations = ["Squats", "Squat", "Squat"]
teams = 41
swap = -1
title = "Tuesday"
sets = 2

[[stage]]"""


def test_every_problem_of_a_group_is_told_with_its_place() -> None:
    assert problems_of(plan_text("work = 30", "group = 1").replace("[[stage]]", GROUP, 1)) == [
        '5:8: "sations" is not known here; did you mean "stations"?',
        "6:8: 9.9 is out of range; write 10 to 600 seconds",
        '7:1: unknown key "chnge"; did you mean "change"?',
        "8:10: 0 is out of range; write a whole number from 1 to 20",
        '9:32: "Squat" stands here for the second time; keep one of the two',
        "10:9: 41 is out of range; write a whole number from 1 to 40",
        "11:8: -1 is out of range; write 0 to 600 seconds",
        '12:1: "title" does not belong here; write it above [group]',
        '13:1: "sets" does not belong here; write it under a [[stage.exercise]]',
        '22:1: "group" does not belong here; write [group] above the first [[stage]]',
    ]


@pytest.mark.parametrize(
    ("station", "right"),
    [("Sqat", 'did you mean "Squat"?'), ("Hop", "write the name of one as it stands below")],
)
def test_a_station_is_an_exercise_of_the_plan(station: str, right: str) -> None:
    text = plan_text("work = 30").replace("[[stage]]", f'[group]\nstations = ["{station}"]\n\n[[stage]]', 1)
    assert problems_of(text) == [f'5:13: "{station}" is no exercise of this plan; {right}']
    unread = text.replace('name = "Squat"', "name = 5")
    assert [line for line in problems_of(unread) if "station" in line or "no exercise" in line] == []


def test_stations_are_one_to_twelve() -> None:
    text = plan_text("work = 30").replace("[[stage]]", "[group]\nstations = []\n\n[[stage]]", 1)
    assert problems_of(text) == ["5:12: there are 0 stations; write 1 to 12, or leave the key out"]


def test_a_key_of_a_group_stands_under_its_heading() -> None:
    says = problems_of(plan_text("work = 30").replace("[[stage]]", "rounds = 2\n\n[[stage]]", 1))
    assert says == ['4:1: "rounds" does not belong here; write it under [group]']
    says = problems_of(plan_text("work = 30").replace("[[stage]]", "[grup]\nrounds = 2\n[[stage]]", 1))
    assert says == ['4:1: unknown key "grup"; did you mean "group"?']


WRONG = """\
titel = "Tuesday"
format = 1
lead_in = 2
level = "beginer"

[[stage]]
name = "Wake"
kind = "activaton"

  [[stage.exercise]]
  name = Side lying
  reps = 1000000000
  tempo = 3-0-1-0
  sets = "2"
  rest = -5
  cues = "Elbow down"
  words = { ecentric = "lower" }
  relax = 3

  [[stage.exercise]]
  reps = [15, 12]
  tempo = "3-0-X-X"
  hold = 4
"""


def test_all_problems_come_at_once_each_with_its_place_and_a_way_out() -> None:
    assert problems_of(WRONG) == [
        '1:1: unknown key "titel"; did you mean "title"?',
        "3:11: 2 is out of range; write 3 to 600 seconds",
        '4:9: "beginer" is not known here; did you mean "beginner"?',
        '8:8: "activaton" is not known here; did you mean "activation"?',
        '11:10: this value cannot be read; text stands in quotes: name = "Side lying"',
        "12:10: 1000000000 is out of range; write a whole number from 1 to 200",
        '13:12: this value cannot be read; text stands in quotes: tempo = "3-0-1-0"',
        '14:10: this must be a number, not "2"; write a number, without quotes',
        "15:10: -5 is out of range; write 0 to 21600 seconds",
        '16:10: this must be a list; put it in square brackets, like ["Elbow down"]',
        '17:13: unknown key "ecentric"; did you mean "eccentric"?',
        "18:3: relax does not go with tempo; it goes with hold",
        '20:3: "name" is missing; write name = "..."',
        "21:10: the range runs downwards; write the lower number first: [12, 15]",
        "22:11: X does not stand for a hold; write it in the first field (eccentric) or third (concentric)",
        "23:3: tempo and hold are two doses; keep one of them",
    ]


def test_an_empty_file_says_what_a_plan_needs() -> None:
    assert problems_of("") == [
        '1:1: "format" is missing; write format = 1',
        '1:1: "title" is missing; write title = "..."',
        '1:1: "stage" is missing; write a first stage under [[stage]]',
    ]


def test_windows_line_ends_change_neither_the_plan_nor_the_places() -> None:
    assert parse_plan(WHOLE.replace("\n", "\r\n"), "a", None) == parse_plan(WHOLE, "a", None)
    assert problems_of(WRONG.replace("\n", "\r\n")) == problems_of(WRONG)


def test_a_session_of_six_hours_is_read_and_one_any_longer_is_refused() -> None:
    # 5 s lead-in, then sets of 595 s of work and 5 s of rest: 36 sets are six hours to the second.
    whole = ["work = 595", "rest = 5", "sets = 18"]
    second = ["[[stage.exercise]]", 'name = "Again"', *whole]
    text = plan_text(*whole, *second).replace('title = "Tuesday"', 'title = "Tuesday"\nchangeover = 5')
    assert problems_of(text) == []
    longer = text.replace("changeover = 5", "changeover = 6")
    assert problems_of(longer) == [
        "1:1: the session lasts 6:00:01; shorten it to 6:00:00 at most, or split it"
    ]


@pytest.mark.parametrize("picture", ["../out.svg", "figures/../../out.svg", "/etc/x.svg", "~/x.svg"])
def test_a_picture_that_leaves_the_folder_is_refused_by_its_words_alone(picture: str) -> None:
    (problem,) = exercise_problems("work = 9", f'picture = "{picture}"')
    assert problem.startswith("11:11: the path")


@pytest.mark.parametrize("picture", ["C:/x.svg", "C:x", "http://x/a.svg", "file:a.svg"])
def test_a_picture_is_no_address(picture: str) -> None:
    assert exercise_problems("work = 9", f'picture = "{picture}"') == [
        '11:11: a path has no ":"; write it from the plan\'s folder, like "figures/landing.svg"'
    ]


def test_a_gap_may_be_as_long_as_a_session() -> None:
    assert exercise_of("work = 30", "rest = 21600").rest_ms == 21_600_000
    assert exercise_problems("work = 30", "rest = 21600.1") == [
        "11:8: 21600.1 is out of range; write 0 to 21600 seconds"
    ]
    gaps = plan_text("work = 30").replace("[[stage]]", "changeover = 21600\nside_change = 21600\n[[stage]]")
    assert parse_plan(gaps, "plan.toml", None).side_change_ms == 21_600_000
    assert problems_of(gaps.replace("21600", "21601")) == [
        "4:14: 21601 is out of range; write 0 to 21600 seconds",
        "5:15: 21601 is out of range; write 0 to 21600 seconds",
    ]


def test_a_backslash_in_a_picture_is_refused_with_the_way_to_write_it() -> None:
    assert exercise_problems("work = 9", "picture = 'figures\\a.svg'") == [
        '11:11: the path holds "\\"; write it with "/", like "figures/landing.svg"'
    ]


def test_a_picture_that_a_link_takes_out_of_the_folder_is_refused(tmp_path: Path) -> None:
    folder = tmp_path / "plans"
    folder.mkdir()
    (tmp_path / "outside.svg").write_text("<svg/>")
    (folder / "linked.svg").symlink_to(tmp_path / "outside.svg")
    (folder / "up").symlink_to(tmp_path)
    (folder / "round").symlink_to(folder / "round")
    (folder / "inside.svg").write_text("<svg/>")
    (folder / "same.svg").symlink_to(folder / "inside.svg")
    lines = 'work = 9\npicture = "{}"'
    for name in ("linked.svg", "up/outside.svg", "up/nothing.svg", "round/a.svg"):
        assert problems_of(plan_text(lines.format(name)), folder) == [
            "11:11: the picture is a link out of the plan's folder; put the picture itself there"
        ]
    for name in ("inside.svg", "same.svg", "not_there_yet.svg", "figures/deeper.svg"):
        assert problems_of(plan_text(lines.format(name)), folder) == []


def test_a_plan_in_a_folder_that_is_itself_a_link_may_have_pictures(tmp_path: Path) -> None:
    (tmp_path / "real").mkdir()
    (tmp_path / "real" / "a.svg").write_text("<svg/>")
    (tmp_path / "link").symlink_to(tmp_path / "real")
    (tmp_path / "real" / "plan.toml").write_text(plan_text("work = 9", 'picture = "a.svg"'))
    assert read_plan(tmp_path / "link" / "plan.toml").stages[0].exercises[0].picture == "a.svg"


def test_the_file_is_named_in_every_line_of_the_message(tmp_path: Path) -> None:
    path = tmp_path / "wrong.toml"
    path.write_text(WRONG)
    with pytest.raises(FileProblemsError) as caught:
        read_plan(path)
    assert caught.value.file == str(path)
    assert all(line.startswith(f"{path}:") for line in str(caught.value).splitlines())
    assert len(str(caught.value).splitlines()) == len(caught.value.problems) == 16
