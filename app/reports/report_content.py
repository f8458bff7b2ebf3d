"""What stands in the report of an athlete, and on the sheet that the athlete is given."""

from collections.abc import Iterable
from datetime import date

from app.analysis.figure import Figure
from app.domain.keeping import Note
from app.domain.reviewed import AthleteRecord
from app.reports import report_sections as sections
from app.reports.report_found import Found
from app.reports.report_parts import Heading, Lines, ReportContent
from app.reports.report_signs import EXPLAINED, NO_ROOM, signs
from app.reports.report_summary import summary
from app.reports.report_words import Words


def report_content(
    record: AthleteRecord,
    figures: Iterable[Figure],
    made_on: date,
    *,
    notes: Iterable[Note] = (),
    language: str = "en",
    room: bool = True,
) -> ReportContent:
    """The report of an athlete's days, in `en` or `de`; only the notes handed in stand in it.

    Without `room` it goes without the table of signs, which is what can best be read elsewhere.
    """
    say, found = Words(language), Found(record, figures)
    shown = signs(found, say) if room else ()
    left_out = (say(NO_ROOM),) if record.exercises and not room else ()
    subtitle = say("{span}. Made on {day}.", span=say.span(record.first, record.last), day=say.day(made_on))
    return ReportContent(
        language,
        say("Report: {name}", name=record.athlete),
        subtitle,
        (
            Heading(say("In short")),
            Lines(summary(found, say)),
            *sections.adherence(found, say),
            *sections.load(found, say),
            *shown,
            *sections.pain(found, say),
            *sections.sides(found, say),
            *sections.progress(found, say),
            *sections.notes(notes, say),
            *sections.cautions(say, left_out),
            *sections.definitions(say, EXPLAINED if shown else ()),
        ),
        say("page"),
    )
