"""Figures that were corrected are marked, seen and heard, and no others."""

from app.analysis.adherence import reps_by_week
from app.analysis.load import loads_by_session
from app.domain.records import RunSummary
from app.views.review.figures import load_columns, week_columns
from app.views.review.marks import MARK, marked, spoken
from app.views.review.runs import run_columns
from app.views.review.words import load_line, week_line
from tests.summaries import summary

FIGURES = {
    "athlete": {"Athlete"},
    "started_at": {"Date and time"},
    "zone": {"Date and time"},
    "session_rpe": {"RPE", "Load, AU"},
    "reps_met": {"Reps met"},
    "reps_done": {"Reps met"},
    "pain": {"Pain"},
}


def marks(run: RunSummary) -> set[str]:
    """The titles of the cells that are marked."""
    return {column.title for column in run_columns() if MARK in column.text(run)}


def test_a_figure_is_marked_when_one_of_its_names_was_corrected() -> None:
    assert marked("7", {"rpe"}, "pain", "rpe") == f"{MARK} 7"
    assert marked("7", {"rpe"}, "pain") == "7"
    assert spoken("7", {"rpe"}, "rpe") == "7, corrected"


def test_a_run_has_its_corrected_figures_marked_and_no_others() -> None:
    assert marks(summary()) == set()
    for name, titles in FIGURES.items():
        assert marks(summary(corrected=frozenset({name}))) == titles


def test_what_is_marked_is_said_to_be_corrected() -> None:
    run = summary(corrected=frozenset({"session_rpe", "reps_met", "pain"}))
    said = {column.title: (column.spoken or column.text)(run) for column in run_columns()}
    assert all(said[title].endswith(", corrected") for title in ("RPE", "Load, AU", "Reps met", "Pain"))
    assert not said["Minutes"].endswith("corrected")


def test_weeks_and_loads_say_what_of_them_was_corrected() -> None:
    runs = [summary(corrected=frozenset({"reps_met", "reps_done", "session_rpe"})), summary(run_id="other")]
    (week,), loads = reps_by_week(runs), loads_by_session(runs)
    assert "2 sessions · 1 of them corrected" in week_line(week)
    assert [load.corrected for load in loads] == [True, False]
    assert "rating corrected" in load_line(loads[0])
    assert "corrected" not in load_line(loads[1])
    assert {column.title for column in week_columns() if MARK in column.text(week)} == {"Reps met", "Share"}
    assert {column.title for column in load_columns() if MARK in column.text(loads[0])} == {"RPE", "Load, AU"}
