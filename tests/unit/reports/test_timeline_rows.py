"""The timeline row by row."""

import csv
import io
import json
from decimal import Decimal
from typing import Any

from app.domain.compiler import compile_timeline
from app.domain.cues import whole_bout_cues
from app.domain.plan import Exercise, Sides, StageKind
from app.domain.timeline import Timeline
from app.reports.timeline_rows import timeline_csv, timeline_json
from tests.planned import compiled, own_pace, signals, staged, sticks, tempo_reps, work_for

HOP = Exercise("Hop", sticks(2, (3, 5)), sides=Sides.EACH, sets=2)


def rows(timeline: Timeline) -> list[list[str]]:
    return list(csv.reader(io.StringIO(timeline_csv(timeline), newline="")))


def report(timeline: Timeline) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(timeline_json(timeline))
    return found


def test_csv_has_its_nine_columns_and_ends_lines_as_the_standard_says() -> None:
    text = timeline_csv(compiled(Exercise("Plank", work_for(30))))
    assert text == (
        "start_ms,end_ms,kind,stage,exercise,set,side,rep,phase\r\n"
        "0,5000,lead_in,Stage,Plank,1,both,,\r\n"
        "5000,35000,work,Stage,Plank,1,both,1,work\r\n"
    )


def test_csv_has_a_row_a_span() -> None:
    timeline = compiled(HOP)
    assert len(rows(timeline)) == 1 + len(list(timeline.spans()))


def test_csv_leaves_an_unknown_end_empty_and_begins_the_clock_again() -> None:
    timeline = compiled(Exercise("Jump", own_pace(5)), Exercise("Plank", work_for(30)))
    assert [row[:3] for row in rows(timeline)[1:]] == [
        ["0", "5000", "lead_in"],
        ["5000", "", "work"],
        ["0", "15000", "changeover"],
        ["15000", "20000", "lead_in"],
        ["20000", "50000", "work"],
    ]


def test_csv_keeps_written_words_from_becoming_formulas() -> None:
    _, lead_in, _ = rows(compiled(Exercise('=HYPERLINK("x"), "y"', work_for(30))))
    assert lead_in[4] == '\'=HYPERLINK("x"), "y"'


def test_json_has_the_same_rows_as_csv() -> None:
    timeline = compiled(HOP, Exercise("Jump", own_pace(5)))
    heading, *lines = rows(timeline)
    spans = report(timeline)["spans"]
    as_text = [["" if span[name] is None else str(span[name]) for name in heading] for span in spans]
    assert as_text == lines


def test_json_gives_every_cue_once_within_or_at_the_border_of_its_span() -> None:
    timeline = compiled(HOP, Exercise("Squat", tempo_reps(3, "2-1-2-1"), rest_ms=40_000))
    spans = report(timeline)["spans"]
    for span in spans:
        for cue in span["cues"]:
            assert span["start_ms"] <= cue["at_ms"] <= span["end_ms"]
            assert cue["text"]
    expected = sum(len(whole_bout_cues(timeline, bout)) for bout in timeline.bouts)
    assert sum(len(span["cues"]) for span in spans) == expected


def test_json_puts_the_cue_of_a_phase_at_its_start() -> None:
    timeline = compiled(Exercise("Squat", tempo_reps(1, "2-1-2-1")))
    starts = {
        span["phase"]: [cue["at_ms"] for cue in span["cues"] if cue["kind"] == span["phase"]]
        for span in report(timeline)["spans"]
        if span["phase"]
    }
    assert starts == {
        "eccentric": [5_000],
        "hold_lengthened": [7_000],
        "concentric": [8_000],
        "hold_shortened": [10_000],
    }


def test_json_marks_the_lower_bound() -> None:
    marks = [span["mark_ms"] for span in report(compiled(Exercise("Hop", sticks(1, (3, 5)))))["spans"]]
    assert marks == [None, None, 10_000]


def test_json_gives_figures_by_session_stage_and_exercise() -> None:
    squat = Exercise("Squat", tempo_reps((5, 6), "3-0-1-0"), sets=2, load_kg=Decimal("2.5"))
    figures = report(compiled(squat))["figures"]
    assert (figures["reps"], figures["tut_ms"], figures["volume_load_kg"]) == ([10, 12], 48_000, [25.0, 30.0])
    (stage,) = figures["stages"]
    (exercise,) = stage["exercises"]
    assert (stage["stage"], exercise["exercise"]) == ("Stage", "Squat")
    assert exercise["work_ms"] == stage["work_ms"] == figures["work_ms"] == 48_000


def test_json_says_null_where_nothing_is_known() -> None:
    found = report(compiled(Exercise("Jump", own_pace(5)), Exercise("Hop", signals(3, 4))))
    assert found["open_ended"] is True
    for name in ("duration_ms", "work_ms", "density", "tut_ms", "volume_load_kg"):
        assert found["figures"][name] is None
    skip = staged((StageKind.REACTIVE, (Exercise("Skip", work_for(20)),)))
    assert report(compile_timeline(skip))["figures"]["contacts"] is None
