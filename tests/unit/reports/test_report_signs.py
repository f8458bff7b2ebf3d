"""The signs of progression in a report, in both languages, and no word of them where nothing was done."""

from dataclasses import replace
from datetime import timedelta
from io import BytesIO

import pytest
from pypdf import PdfReader

from app.domain.reviewed import AthleteRecord
from app.reports.report_parts import Heading, Lines, ReportContent, Table
from app.reports.report_signs import CAUTION, MOST_SIGNS, NO_ROOM
from app.reports.reporting import Report, content_of
from tests.exercised import exercise_done, season_of_sets
from tests.reviewed import MONDAY, TODAY, record, session, totals
from tests.unit.reports.test_report_pdf import made

EARLIER = MONDAY - timedelta(days=3)


def section(known: AthleteRecord, language: str = "en") -> tuple[Table, Lines]:
    """The table and the sentences below the heading."""
    blocks = report(known, language).blocks
    heading = Heading("Signs to weigh" if language == "en" else "Zeichen zum Abwägen")
    table, lines = blocks[blocks.index(heading) + 1 :][:2]
    assert isinstance(table, Table)
    assert isinstance(lines, Lines)
    return table, lines


def report(known: AthleteRecord, language: str = "en") -> ReportContent:
    return content_of(Report(known, TODAY, (), language))


def test_the_last_sets_stand_against_the_range_with_the_signs_in_words() -> None:
    sessions = (exercise_done((14, 12, None)), exercise_done((14, 14), day=EARLIER))
    table, lines = section(record(exercises=sessions))
    (row,) = table.rows
    assert row == ("External rotation, left", "16 Nov", "4", "14 12 –", "8-12", "–", "–")
    assert CAUTION in lines.items
    told = section(record(exercises=(exercise_done((14,)), exercise_done((14,), day=EARLIER))))[0]
    assert told.rows[0][-2:] == ("yes", "yes")


def test_the_change_of_the_last_week_stands_with_both_weeks_where_they_are_known() -> None:
    none = {"volume_kg": None, "volume_complete": False}
    runs = tuple(
        session(day, rpe=1, minutes=minutes, totals=totals(**none))
        for day, minutes in ((MONDAY - timedelta(days=7), 1000.0), (MONDAY, 1250.0))
    )
    first = MONDAY - timedelta(days=7)
    _, lines = section(record(first=first, sessions=runs, exercises=(exercise_done(),)))
    assert lines.items[:2] == (
        "Load in the last whole week: 1\u202f250 after 1\u202f000 AU (+25\u202f%).",
        "Contacts in the last whole week: 24 after 24 contacts (+0\u202f%).",
    )
    assert not [each for each in lines.items if each.startswith("Volume")]


def test_where_no_exercise_was_done_there_is_no_such_section() -> None:
    assert Heading("Signs to weigh") not in report(record()).blocks


def test_what_can_be_read_comes_first_and_what_finds_no_room_is_counted() -> None:
    table, lines = section(record(exercises=season_of_sets(TODAY, 40)))
    assert len(table.rows) == MOST_SIGNS
    assert all(row[-2:] != ("–", "–") for row in table.rows)
    assert lines.items[-1] == f"{70 - MOST_SIGNS} more rows are among the figures."


def test_it_is_all_said_in_german() -> None:
    table, lines = section(record(exercises=season_of_sets(TODAY)), "de")
    assert table.head[0] == "Übung"
    assert {"4,5", "42,5", "–"} <= {row[2] for row in table.rows}
    assert {"ja", "noch nicht"} <= {cell for row in table.rows for cell in row}
    assert lines.items[-2].startswith("Die Fachperson entscheidet")
    assert section(record(exercises=(exercise_done((7,)),)), "de")[0].rows[0][-1] == "darunter"


@pytest.mark.parametrize("language", ["en", "de"])
def test_without_room_a_sentence_says_where_they_are(language: str) -> None:
    known = record(exercises=season_of_sets(TODAY))
    told = content_of(Report(known, TODAY, (), language), room=False).blocks
    sentence = NO_ROOM if language == "en" else "Die Zeichen zum Abwägen fanden hier keinen Platz"
    assert any(isinstance(each, Lines) and each.items[-1].startswith(sentence) for each in told)
    assert not any(isinstance(each, Table) and each.head[0] in ("Exercise", "Übung") for each in told)


def test_both_signs_are_explained_where_they_are_shown_and_only_there() -> None:
    def explained(known: AthleteRecord) -> set[str]:
        last = report(known).blocks[-1]
        assert isinstance(last, Table)
        return {row[0] for row in last.rows}

    assert {"Two for two", "Top of the range"} <= explained(record(exercises=(exercise_done(),)))
    assert not {"Two for two", "Top of the range"} & explained(record())


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_report_with_signs_still_has_three_pages_at_most(language: str) -> None:
    sets = tuple(
        replace(each, exercise=f"{each.exercise} {'x' * 100}"[:100]) for each in season_of_sets(TODAY, 40)
    )
    first = MONDAY - timedelta(weeks=11)
    runs = tuple(session(first + timedelta(weeks=number)) for number in range(12))
    rendered = made(record(first=first, sessions=runs, exercises=sets), language=language)
    pages = PdfReader(BytesIO(rendered.pdf)).pages
    assert len(pages) <= 3
    words = "Signs to weigh" if language == "en" else "Zeichen zum Abwägen"
    assert words in "\n".join(page.extract_text() for page in pages)
