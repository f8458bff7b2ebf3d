"""`check`, from the words on the command line to what is printed and the exit status."""

from pathlib import Path

import pytest

from app.__main__ import main
from tests.plantexts import plan_text

DEMO = Path(__file__).parents[2] / "demo_data"


def checked(capsys: pytest.CaptureFixture[str], *words: str | Path) -> tuple[int, str, str]:
    """Exit status, stdout and stderr of `check`."""
    status = main(["check", *map(str, words)])
    out, err = capsys.readouterr()
    return status, out, err


def test_the_demo_data_has_no_problems_and_nothing_to_question(capsys: pytest.CaptureFixture[str]) -> None:
    assert checked(capsys, *sorted(DEMO.glob("*.toml"))) == (0, "", "")


def test_the_problems_of_all_files_are_printed_one_a_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first, second, missing = tmp_path / "a.toml", tmp_path / "b.toml", tmp_path / "c.toml"
    first.write_text(plan_text("work = 0", "repz = 3"))
    second.write_text(plan_text("reps = 3"))
    status, out, err = checked(capsys, first, second, missing)
    assert (status, out) == (1, "")
    assert err.splitlines() == [
        f"{first}:10:8: 0 is out of range; write 0.1 to 600 seconds",
        f'{first}:11:1: unknown key "repz"; did you mean "reps"?',
        f"{second}:8:1: the exercise has no dose; write one of tempo, hold, stick, every, pace or work",
        f"{missing}:1:1: there is no such file; check the name and the folder",
    ]


def test_cautions_are_printed_for_sound_plans_and_change_no_status(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan, wrong = tmp_path / "plan.toml", tmp_path / "wrong.toml"
    plan.write_text(plan_text("reps = 8", "every = 3").replace("activation", "power"))
    wrong.write_text("")
    status, out, err = checked(capsys, plan)
    assert (status, err) == (0, "")
    assert out.splitlines()
    assert all(line.startswith(f"{plan}: ") for line in out.splitlines())
    assert "(common practice; " in out
    assert checked(capsys, plan, "--no-cautions") == (0, "", "")
    assert checked(capsys, wrong, plan)[:2] == (1, out)


def test_the_person_s_own_thresholds_hold(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("PACEWRIGHT_DATA", str(tmp_path))
    (tmp_path / "settings.toml").write_text("format = 1\n[cautions]\nsession_minutes = 20\n")
    status, out, err = checked(capsys, DEMO / "landing_control.toml")
    assert (status, err) == (0, "")
    assert "20 minutes" in out
    (tmp_path / "settings.toml").write_text("format = 1\n[cautions]\nsession_minuts = 20\n")
    status, out, err = checked(capsys, DEMO / "landing_control.toml")
    assert (status, out) == (1, "")
    assert err.startswith(f"{tmp_path / 'settings.toml'}:3:")
    assert checked(capsys, DEMO / "landing_control.toml", "--no-cautions") == (0, "", "")


def test_rosters_are_checked_as_rosters(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    toml, sheet, sound = tmp_path / "r.toml", tmp_path / "r.csv", tmp_path / "s.csv"
    toml.write_text("format = 1\n[[athlete]]\nnam = 'Ida'\n")
    sheet.write_text("name,first\nIda,up\n")
    sound.write_text("name,first\nIda,left\n")
    status, out, err = checked(capsys, toml, sheet, sound)
    assert (status, out) == (1, "")
    assert err.splitlines() == [
        f'{toml}:3:1: unknown key "nam"; did you mean "name"?',
        f'{sheet}:2:5: "up" is not known here; write "left" or "right"',
    ]


def test_a_picture_is_looked_for_beside_the_plan(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "plans").mkdir()
    (tmp_path / "outside.svg").touch()
    (tmp_path / "plans" / "linked.svg").symlink_to(tmp_path / "outside.svg")
    plan = tmp_path / "plans" / "plan.toml"
    plan.write_text(plan_text("work = 9", 'picture = "linked.svg"'))
    status, _, err = checked(capsys, plan)
    assert status == 1
    assert "is a link out of the plan's folder" in err


def test_without_a_file_the_words_do_not_parse(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["check"])
    assert ended.value.code == 2
    assert "PLAN" in capsys.readouterr().err


def test_the_schema_is_printed_as_it_is_kept(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["schema"]) == 0
    kept = DEMO.parent / "resources" / "plan.schema.json"
    assert capsys.readouterr().out == kept.read_text(encoding="utf-8")
