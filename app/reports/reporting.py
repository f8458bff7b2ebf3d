"""Making a report out of an athlete's record: figures, content, PDF."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from app.analysis.athlete_figures import athlete_figures
from app.analysis.local_time import known_zone
from app.domain.keeping import Note
from app.domain.reviewed import AthleteRecord
from app.reports.report_content import report_content
from app.reports.report_parts import ReportContent
from app.reports.report_pdf import Rendered, render_report
from app.reports.sheet_content import sheet_content

MOST_PAGES = 3


@dataclass(frozen=True, slots=True)
class Report:
    """What is to be made: of a record, on a day, with these notes, in `en` or `de`; or the sheet."""

    record: AthleteRecord
    made_on: date
    notes: tuple[Note, ...] = ()
    language: str = "en"
    sheet: bool = False


def made_report(wanted: Report, fonts: Path) -> Rendered:
    """The PDF, in the fonts of a folder; what would go beyond three pages goes without its table of signs."""
    rendered = render_report(content_of(wanted), fonts)
    if wanted.sheet or rendered.pages <= MOST_PAGES:
        return rendered
    return render_report(content_of(wanted, room=False), fonts)


def content_of(wanted: Report, *, room: bool = True) -> ReportContent:
    """What stands in it, all of it or what has to; a test's error is that of everybody's repeated tries."""
    figures = athlete_figures(wanted.record)
    told = wanted.record, figures, wanted.made_on
    if wanted.sheet:
        return sheet_content(*told, notes=wanted.notes, language=wanted.language)
    return report_content(*told, notes=wanted.notes, language=wanted.language, room=room)


def notes_within(notes: Iterable[Note], record: AthleteRecord) -> tuple[Note, ...]:
    """The notes of a record's days."""
    return tuple(note for note in notes if record.covers(_day(note)))


def _day(note: Note) -> date:
    return note.at.astimezone(known_zone(note.zone)).date()
