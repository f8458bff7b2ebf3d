"""The timeline as a sheet for reading."""

import re
from decimal import Decimal

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.plan import Exercise, Side, Sides, StageKind
from app.reports.timeline_sheet import timeline_text
from tests.planned import compiled, holds, own_pace, plan_of, signals, staged, tempo_reps, work_for

SQUAT = Exercise("Squat", tempo_reps(5, "3-0-1-0"), sets=2, rest_ms=45_000)


def lines_with(text: str, part: str) -> list[str]:
    return [line for line in text.splitlines() if part in line]


def test_there_is_one_line_a_bout_with_its_clock_times() -> None:
    first, second = lines_with(timeline_text(compiled(SQUAT)), " of 2, ")
    assert first.split()[:3] == ["0:05", "0:25", "Squat"]
    assert second.split()[:3] == ["1:10", "1:30", "Squat"]
    assert second.endswith("after 0:45 rest")
    assert "5 reps, 3-0-1-0, lower first" in first


def test_the_heading_names_plan_author_athlete_and_length() -> None:
    timeline = compile_timeline(plan_of(SQUAT, author="Practitioner on duty"))
    assert timeline_text(timeline, "Ada").splitlines()[:3] == [
        "Try-out, for Ada",
        "by Practitioner on duty",
        "takes 1:30",
    ]
    assert timeline_text(timeline).splitlines()[0] == "Try-out"


def test_every_stage_has_a_heading_of_its_own() -> None:
    plan = staged((StageKind.ACTIVATION, (SQUAT,)), (StageKind.OTHER, (SQUAT,)))
    text = timeline_text(compile_timeline(plan))
    assert "1. 1 activation (activation)" in text.splitlines()
    assert "2. 2 other (other)" in text.splitlines()


def test_work_without_an_end_is_open_and_starts_the_clock_again() -> None:
    text = timeline_text(compiled(Exercise("Jump", own_pace(5)), Exercise("Plank", work_for(30))))
    assert text.splitlines()[1] == "takes 0:55, and own-pace work on top"
    (jump,) = lines_with(text, "5 reps at your own pace")
    (plank,) = lines_with(text, "30 s of work")
    assert jump.split()[:2] == ["0:05", "open"]
    assert plank.split()[:2] == ["0:20", "0:50"]


def test_an_unknown_length_is_a_dash_and_a_partly_known_one_has_a_plus() -> None:
    text = timeline_text(compiled(Exercise("Jump", own_pace(5)), Exercise("Plank", work_for(30))))
    (jump,) = [line for line in text.splitlines() if line.startswith("   Jump ")]
    assert jump.split()[1:4] == ["0:05+", "-", "-"]
    (session,) = lines_with(text, "Session")
    assert session.split()[1:4] == ["0:55+", "0:30+", "-"]
    assert "its length is not known" in text


def test_sides_and_loads_are_named() -> None:
    loads = {("Press", Side.LEFT): Decimal("3.50"), ("Press", Side.RIGHT): Decimal(4)}
    athlete = Athlete("Ada", loads_kg=loads)
    text = timeline_text(compiled(Exercise("Press", signals(5, 3), sides=Sides.EACH), athlete=athlete))
    left, right = lines_with(text, "set 1 of 1")
    assert "left" in left
    assert "3.5 kg" in left
    assert "right" in right
    assert "4 kg" in right
    both = timeline_text(compiled(Exercise("Press", signals(5, 3), sides=Sides.ALTERNATE), athlete=athlete))
    (alternating,) = lines_with(both, "set 1 of 1")
    assert "alternating, left first" in alternating
    assert "3.5 kg left, 4 kg the other" in alternating
    alike = Exercise("Press", signals(5, 3), sides=Sides.ALTERNATE, load_kg=Decimal(100))
    (one_load,) = lines_with(timeline_text(compiled(alike)), "set 1 of 1")
    assert one_load.endswith("5 reps a side, one every 3 s, 100 kg")


def test_figures_stand_by_exercise_stage_and_session() -> None:
    press = Exercise("Press", holds((8, 10), 3), sides=Sides.EACH, load_kg=Decimal("2.5"))
    text = timeline_text(compiled(press, kind=StageKind.POWER))
    rows = [lines_with(text, name)[-1].split() for name in ("1. Stage", "   Press", "Session")]
    figures = ["1:49", "1:36", "88", "%", "16-20", "8-10/8-10", "60", "30/30", "60", "16-20", "40-50"]
    assert [row[-11:] for row in rows] == [figures, figures, figures]


def test_a_nominal_tension_is_marked_and_explained() -> None:
    text = timeline_text(compiled(Exercise("Throw", tempo_reps(6, "4-0-X-0")), fast_ms=500))
    assert "~27" in lines_with(text, "Session")[0]
    assert "~ nominal: a phase as fast as possible counts as 0.5 s." in text
    assert "~" not in timeline_text(compiled(SQUAT))


def test_loads_that_are_not_all_known_have_a_plus() -> None:
    text = timeline_text(compiled(SQUAT, Exercise("Press", signals((4, 5), 3), load_kg=Decimal(2))))
    (session,) = lines_with(text, "Session")
    assert session.split()[-1] == "8-10+"
    assert "not every load is known" in text
    assert lines_with(timeline_text(compiled(SQUAT)), "Session")[0].split()[-1] == "-"


def test_columns_of_figures_are_as_wide_as_their_content_needs_and_two_blanks_apart() -> None:
    plank = Exercise("Plank", work_for(600), sets=6, rest_ms=300_000)
    press = Exercise(
        "P" * 50, tempo_reps((150, 200), "9-9-9-9"), sides=Sides.EACH, load_kg=Decimal("123.456")
    )
    jump = Exercise("Jump", own_pace((90, 200)), sets=20)
    text = timeline_text(compiled(plank, press, jump))
    table = text[text.index("Figures") :].split("\n\n")[0].splitlines()
    cells = [re.split("  +", line.strip()) for line in table]
    assert {len(row) for row in cells} == {11}
    ends = [{match.end() for match in re.finditer(r"\S(?=  |$)", line)} for line in table]
    assert len(set.intersection(*ends)) == 10
    # By hand: 5 + 6 x 600 + 5 x 300, then 20 + 7200 + 8 + 7200, then 20 + 19 x 60 s.
    assert [row[1] for row in cells[2:]] == ["1:25:05", "4:00:28", "19:20+", "5:44:53+"]
    assert cells[-1][5] == "1956-4206/1956-4206"
    assert cells[-1][-1] == "37036.8-49382.4+"


def test_a_narrow_table_of_figures_is_narrow() -> None:
    text = timeline_text(compiled(Exercise("Plank", work_for(9))))
    (heading,) = lines_with(text, "Figures")
    assert heading == (
        "Figures   time  work  density  reps  left/right  TUT s  left/right  holds s  contacts  kg x reps"
    )
    (session,) = lines_with(text, "Session")
    assert session == (
        "Session   0:14  0:09     64 %     1         1/1      -           -        0         0          -"
    )


def test_timed_work_is_said_to_count_as_one_rep() -> None:
    note = "A stretch of timed work counts as one rep."
    assert note in timeline_text(compiled(Exercise("Plank", work_for(9))))
    assert note not in timeline_text(compiled(SQUAT))


def test_a_long_name_is_cut_and_lines_have_no_spaces_at_their_end() -> None:
    text = timeline_text(compiled(Exercise("A" * 37, work_for(9)), Exercise("B" * 36, work_for(9))))
    assert f"  {'A' * 35}…  set" in text
    assert f"  {'B' * 36}  set" in text
    assert all(line == line.rstrip() for line in text.splitlines())
