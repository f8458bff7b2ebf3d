"""What a roster does to a session, and what is said about it, whichever command is asked."""

from pathlib import Path

import pytest

from app.__main__ import main
from app.domain.compiler import compile_timeline
from app.domain.plan import WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import RunHeader
from app.planfile.reader import parse_plan
from app.views.unfinished import Unfinished, timeline_of
from app.wiring import new_header, read_athletes
from tests.plantexts import plan_text

PLAN = plan_text(
    "sets = 20",
    "reps = 10",
    'tempo = "4-0-2-0"',
    *('[[stage.exercise]]\nname = "Carry"', "work = 10"),
    *('[[stage.exercise]]\nname = "Throw"', "reps = 5", 'pace = "own"'),
)
ROSTER = """\
format = 1
[[athlete]]
name = "Ines"
[[athlete.exercise]]
name = "Squat"
reps = [1, 200]
[[athlete]]
name = "Bram"
[[athlete.exercise]]
name = "Carry"
reps = 3
[[athlete.exercise]]
name = "Sqat"
load_kg = 3
[[athlete]]
name = "Ida"
[[athlete.exercise]]
name = "Squat"
reps = 12
"""
COMMANDS = {
    "timeline": (),
    "rehearse": (),
    "guide": ("-o", "session.wav", "--level", "tones"),
    "open": ("--sound", "silent"),
}


@pytest.fixture(autouse=True)
def files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A plan and a roster in the folder one is in."""
    (tmp_path / "plan.toml").write_text(PLAN)
    (tmp_path / "roster.toml").write_text(ROSTER)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")


def asked(command: str, *words: str) -> int:
    """The exit status of a command on the plan."""
    return main([command, "plan.toml", *COMMANDS[command], *words])


@pytest.mark.parametrize("command", COMMANDS)
def test_reps_that_make_the_session_too_long_are_refused_with_whose_they_are(
    command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert asked(command, "--roster", "roster.toml", "--athlete", "Ines") == 1
    said = capsys.readouterr()
    assert said.out == ""
    # 5 s, 20 sets of 200 reps of 6 s, 19 rests of 60 s, two changeovers of 20 s and the carry of 10 s; the
    # guide gives each of five throws 3 s.
    lasts = "7:00:10" if command == "guide" else "6:59:55"
    assert said.err == (
        f'With the reps of Ines for "Squat" the session lasts {lasts}, and 6:00:00 is the most. '
        "Give fewer reps in the roster, or split the plan.\n"
    )


@pytest.mark.parametrize("command", ["timeline", "rehearse", "guide"])
def test_numbers_without_effect_are_said_on_stderr_and_are_no_error(
    command: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert asked(command, "--roster", "roster.toml", "--athlete", "Bram") == 0
    said = capsys.readouterr()
    assert said.err.splitlines() == [
        '"Sqat" is not in this plan; what Bram has for it is not used, did you mean "Squat"?',
        '"Carry" is timed work in this plan; the reps that Bram has for it are not used.',
    ]
    assert said.out
    assert asked(command, "--roster", "roster.toml", "--athlete", "Ida") == 0
    assert capsys.readouterr().err == ""


@pytest.mark.parametrize("command", ["timeline", "guide"])
def test_a_roster_without_a_name_is_refused(command: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert asked(command, "--roster", "roster.toml") == 1
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err == "--roster goes with --athlete NAME: say whose numbers of it are meant.\n"


def test_a_pace_that_makes_the_guide_too_long_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "plan.toml").write_text(plan_text("sets = 20", "reps = 50", 'pace = "own"'))
    assert asked("guide", "--pace", "60") == 1
    # 5 s, 20 sets of 50 minutes, 19 rests of a minute.
    assert capsys.readouterr().err == (
        "At this --pace the session lasts 16:59:05, and 6:00:00 is the most: "
        "give fewer seconds a rep, or one --stage alone.\n"
    )
    assert not (tmp_path / "session.wav").exists()


def test_a_run_cut_short_is_found_though_its_athlete_has_too_many_reps_by_now() -> None:
    plan = parse_plan(PLAN, "plan.toml", None)
    header: RunHeader = new_header("Ines", WrittenPlan(plan, PLAN))
    began = compile_timeline(plan)
    unfinished = Unfinished(header, (), prescriptions(began))
    athletes = read_athletes(Path("roster.toml"))
    assert timeline_of(unfinished, lambda text: WrittenPlan(plan, text), athletes) == began
