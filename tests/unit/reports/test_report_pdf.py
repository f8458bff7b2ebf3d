"""The PDF of a report: tagged, titled, in its language; whatever people are called."""

from dataclasses import replace
from datetime import timedelta
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from app.analysis.tests_catalog import CATALOGUE
from app.domain.keeping import Note
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.reports.report_pdf import LETTERS_MISSING, Rendered
from app.reports.report_signs import NO_ROOM
from app.reports.reporting import Report, made_report
from tests.exercised import season_of_sets
from tests.reviewed import MONDAY, TODAY, part, record, result, session
from tests.unit.reports.test_report_content import NOTE

FONTS = Path(__file__).parents[3] / "resources" / "fonts"
NOBODY = "\U00013000\U00013001"
"""Two hieroglyphs, which no font of a desk has."""


def made(known: AthleteRecord, *notes: Note, language: str = "en", sheet: bool = False) -> Rendered:
    return made_report(Report(known, TODAY, notes, language, sheet=sheet), FONTS)


def read(rendered: Rendered) -> PdfReader:
    return PdfReader(BytesIO(rendered.pdf))


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_report_is_tagged_and_says_that_it_is_accessible(language: str) -> None:
    reader = read(made(record(), language=language))
    root: Any = reader.root_object
    assert root["/MarkInfo"]["/Marked"]
    assert root["/Lang"] == language
    assert root["/ViewerPreferences"]["/DisplayDocTitle"]
    metadata = reader.xmp_metadata
    assert metadata is not None
    assert b"pdfuaid" in metadata.stream.get_data()
    assert reader.metadata is not None
    assert "Hugo" in (reader.metadata.title or "")


def test_the_report_has_one_to_three_pages_and_the_sheet_one() -> None:
    assert 1 <= len(read(made(record())).pages) == made(record()).pages <= 3
    assert len(read(made(record(), NOTE, sheet=True)).pages) == 1


@pytest.mark.parametrize("language", ["en", "de"])
def test_an_athlete_with_everything_still_fits_the_pages(language: str) -> None:
    days = [MONDAY - timedelta(weeks=number) for number in range(12)]
    tries = [
        result(f"{(test.least + test.most) / 3:.1f}", test.key, unit=test.unit, day=day, side=side)
        for test in CATALOGUE
        for side in ((Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,))
        for day in days
    ]
    parts = tuple(part(stage=f"A stage with a long name, number {number}") for number in range(12))
    sessions = tuple(session(day, parts=parts) for day in days)
    everything = record(
        first=days[-1],
        results=tuple(tries),
        sessions=sessions,
        athlete="N" * 100,
        exercises=season_of_sets(TODAY, 12),
    )
    long = [replace(NOTE, id=f"note-{number}", text="quiet landings " * 16) for number in range(5)]
    rendered = made(everything, *long, language=language)
    assert len(read(rendered).pages) == rendered.pages <= 3
    assert NO_ROOM in "\n".join(page.extract_text() for page in read(rendered).pages) or language == "de"
    assert len(read(made(everything, *long, language=language, sheet=True)).pages) == 1


def test_charts_are_vectors_and_not_pictures() -> None:
    assert [image for page in read(made(record())).pages for image in page.images] == []


def test_words_of_people_are_data_and_never_source() -> None:
    text = "\n".join(
        page.extract_text() for page in read(made(record(athlete='#panic("a") *b*'), NOTE)).pages
    )
    assert 'Report: #panic("a") *b*' in text
    assert "#panic() *quiet* landings" in text


@pytest.mark.parametrize(
    "name", ["N" * 100, "Annabella Konstantina " * 4, "Анна Ивановна", "\x07 tab\tend", "{n} {0}"]
)
def test_any_name_makes_a_report(name: str) -> None:
    rendered = made(record(athlete=name))
    assert len(read(rendered).pages) <= 3
    assert rendered.notice is None


def test_letters_that_no_font_has_are_told_of() -> None:
    rendered = made(record(athlete=NOBODY), sheet=True)
    assert rendered.notice == LETTERS_MISSING
    assert len(read(rendered).pages) == 1


def test_a_time_of_which_nothing_is_known_makes_a_report() -> None:
    nothing = AthleteRecord("Hugo", MONDAY, MONDAY + timedelta(days=6), TODAY)
    assert len(read(made(nothing)).pages) <= 3
