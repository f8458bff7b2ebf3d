"""What stands in the report of an athlete."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest

from app.analysis.tests_catalog import CATALOGUE
from app.analysis.tests_kinds import Counts
from app.domain.keeping import Note
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.reports.report_parts import Charts, Heading, Lines, ReportContent, Table
from app.reports.report_sections import CAUTIONS, MOST_ROWS
from app.reports.reporting import Report, content_of, notes_within
from tests.reviewed import MONDAY, TODAY, due, lights, part, record, result, session

NOTE = Note(
    "note-1", "Hugo", "#panic() *quiet* landings", "Ruben", datetime(2026, 11, 17, 9, tzinfo=UTC), "UTC"
)
NOTHING = AthleteRecord("Hugo", MONDAY, MONDAY + timedelta(days=6), TODAY)


def report(known: AthleteRecord, **changes: object) -> ReportContent:
    return content_of(replace(Report(known, TODAY), **changes))  # type: ignore[arg-type]


def sentences(content: ReportContent) -> list[str]:
    return [item for block in content.blocks if isinstance(block, Lines) for item in block.items]


def rows(content: ReportContent) -> dict[str, tuple[str, ...]]:
    tables = [block for block in content.blocks if isinstance(block, Table)]
    return {row[0]: row[1:] for table in reversed(tables) for row in table.rows}


def test_the_summary_says_in_words_what_was_done() -> None:
    planned = (due(MONDAY, DueState.DONE), due(MONDAY + timedelta(days=1), DueState.MISSED))
    told = sentences(report(record(due=planned)))
    assert told[0] == "3 sessions are in the record."
    assert told[1] == "1 of 2 planned sessions were done (50\u202f%); 0 were excused."
    assert told[2] == "90\u202f% of 300 prescribed reps were done."
    assert "The highest pain was 1 of 10; it was above 5 in 0 of 3 sessions with an answer." in told


def test_figures_stand_beside_what_they_rest_on() -> None:
    assert rows(report(record()))["Rep adherence"] == ("270", "300", "90\u202f%", "86 to 93\u202f%")


def test_what_is_unknown_is_a_dash_and_never_nought() -> None:
    told = rows(report(NOTHING))
    assert told["Session adherence"] == told["Rep adherence"] == ("–", "–", "–", "–")
    assert set(told["16 Nov – 22 Nov 2026"]) == {"–"}
    assert told["Sessions with pain 0 to 2"] == ("–",)
    unrated = record(sessions=(session(pain=None, rpe=None, pain_next_morning=None),))
    assert rows(report(unrated))["Sessions with pain above 5"] == ("–",)
    assert "The effort of 1 session is not rated." in sentences(report(unrated))


def test_nothing_known_leaves_charts_without_a_point() -> None:
    charts = [
        chart for block in report(NOTHING).blocks if isinstance(block, Charts) for chart in block.charts
    ]
    assert len(charts) == 4
    values = [point.value for chart in charts for series in chart.series for point in series.points]
    assert set(values) == {None}
    assert all(chart.alt == f"{chart.title}: nothing is known." for chart in charts[1:])


def test_a_side_is_behind_only_beyond_the_error_of_the_test() -> None:
    days = [MONDAY - timedelta(weeks=number) for number in range(12)]
    tries = [
        result(value + attempt, day=day, side=side, attempt=attempt, id=f"{day}{side}{attempt}")
        for day in days
        for side, value in ((Side.LEFT, 140), (Side.RIGHT, 160))
        for attempt in (1, 2 + day.day % 2)
    ]
    known = report(record(first=days[-1], results=tuple(tries), tries=lights(tries)))
    assert "Single hop for distance: one side is behind beyond the error of the test: left." in sentences(
        known
    )
    few = record(results=(result(140), result(160, side=Side.RIGHT, id="other")))
    told = "In no test is a side behind beyond the error of the test, as far as that error is known."
    assert told in sentences(report(few))
    assert rows(report(few))["Single hop for distance, cm"][-2:] == ("left", "unknown")


def test_what_finds_no_room_in_a_table_is_counted() -> None:
    one_side = [
        result(50, test.key, unit=test.unit, side=Side.LEFT if test.by_side else Side.BOTH, id=test.key)
        for test in CATALOGUE
        if test.counts is not Counts.MEAN_OF_BEST_FIVE and test.direct
    ]
    told = sentences(report(record(results=tuple(one_side))))
    assert f"{len(one_side) - MOST_ROWS} more rows are among the figures." in told


def test_notes_stand_in_it_only_where_they_are_handed_in() -> None:
    assert not [each for each in sentences(report(record())) if "landings" in each]
    told = sentences(report(record(), notes=(NOTE,)))
    assert "17 Nov 2026, Ruben: #panic() *quiet* landings" in told


def test_notes_are_of_the_time_looked_at_by_their_own_clock() -> None:
    late = replace(NOTE, at=datetime(2026, 11, 22, 23, 30, tzinfo=UTC), zone="Europe/Berlin")
    assert notes_within((NOTE, late), record()) == (NOTE,)


@pytest.mark.parametrize("known", [NOTHING, record()])
def test_cautions_and_definitions_are_always_there(known: AthleteRecord) -> None:
    content = report(known)
    assert set(CAUTIONS) <= set(sentences(content))
    assert rows(content)["Monotony"][1].startswith("Foster 1998")


def test_stages_and_landings_have_their_own_rows() -> None:
    parts = (part(), part(Side.RIGHT))
    told = rows(report(record(sessions=(session(parts=parts),))))
    assert told["Reps, Landing"][2] == "90\u202f%"
    assert told["Landings stuck, left"][:3] == ("88", "92", "96\u202f%")


def test_the_sheet_of_the_athlete_is_free_of_the_words_of_the_trade() -> None:
    content = report(record(due=(due(MONDAY, DueState.DONE),), results=(result(140),)), sheet=True)
    told = " ".join(
        [*sentences(content), *(each.text for each in content.blocks if isinstance(each, Heading))]
    )
    assert "You did 1 of the 1 sessions that were planned for you." in told
    assert content.large
    for word in ("adherence", "AU", "monotony", "strain", "RPE", "interval", "symmetry"):
        assert word not in told


def test_a_sheet_of_no_session_says_so() -> None:
    assert sentences(report(NOTHING, sheet=True))[0] == "No session of yours is written down for this time."


def test_days_and_numbers_are_written_as_the_language_has_them() -> None:
    content = report(record(), language="de")
    assert content.title == "Bericht: Hugo"
    assert content.subtitle == "16.11.2026 – 22.11.2026. Erstellt am 23.11.2026."
    assert "," in rows(content)["16.11. – 22.11.2026"][1]


def test_dates_across_the_end_of_a_year_keep_both_years() -> None:
    content = report(replace(record(), first=date(2026, 12, 28), last=date(2027, 1, 3)))
    assert content.subtitle.startswith("28 Dec 2026 – 3 Jan 2027")
