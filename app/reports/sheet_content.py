"""The sheet that an athlete is given: the same content on one page, in plain words."""

from collections.abc import Iterable, Iterator
from datetime import date

from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS
from app.analysis.figures_wellbeing import HIGHEST
from app.analysis.tests_catalog import tried_tests
from app.domain.keeping import Note
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.reports.report_charts import kept_chart, pain_chart
from app.reports.report_found import Found, given
from app.reports.report_parts import Block, Charts, Heading, Lines, ReportContent, Table
from app.reports.report_sections import notes as note_blocks
from app.reports.report_words import Words

MOST_TESTS, MOST_NOTES = 4, 2
STOP = "Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional."
ADVANCE = "This sheet is no advice. Talk about it with the person who plans your training."


def sheet_content(
    record: AthleteRecord,
    figures: Iterable[Figure],
    made_on: date,
    *,
    notes: Iterable[Note] = (),
    language: str = "en",
) -> ReportContent:
    """The sheet of an athlete's days, in `en` or `de`; of the notes handed in the last two stand on it."""
    say, found = Words(language), Found(record, figures)
    span = say.span(record.first, record.last)
    latest = sorted(notes, key=lambda each: (each.at, each.id))[-MOST_NOTES:]
    blocks: tuple[Block, ...] = (
        Heading(say("What you did")),
        Lines(tuple(_done(found, say))),
        Charts((kept_chart(found, say), pain_chart(found, say))),
        *_tests(found, say),
        *note_blocks(latest, say),
        Heading(say("Keep in mind")),
        Lines((say(STOP), say(ADVANCE))),
    )
    subtitle = say("{span}. Made on {day}.", span=span, day=say.day(made_on))
    title = say("Your training: {name}", name=record.athlete)
    return ReportContent(language, title, subtitle, blocks, say("page"), large=True)


def _done(found: Found, say: Words) -> Iterator[str]:
    sessions, reps, highest = found.one(SESSIONS.name), found.one(REPS.name), found.one(HIGHEST.name)
    count = len(found.record.sessions_within)
    if not count:
        yield say("No session of yours is written down for this time.")
    elif sessions is not None and sessions.value is not None:
        told = say("You did {n} of the {m} sessions that were planned for you.")
        yield told.format(n=given(sessions, "done"), m=sessions.n)
    else:
        yield say.counted(count, "You did {n} session.", "You did {n} sessions.")
    if reps is not None and reps.value is not None:
        told = say("You did {share} of the reps you were asked for.")
        yield told.format(share=say.percent(reps.value))
    if highest is not None and highest.value is not None:
        told = say("The most pain you told of was {n} of 10.")
        yield told.format(n=say.whole(highest.value))
    elif count:
        yield say("You did not say how much pain you had.")


def _tests(found: Found, say: Words) -> tuple[Block, ...]:
    """The last value of each test beside the first, where there are two."""
    rows = []
    for test in tried_tests(found.record.results):
        for side in (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,):
            change = found.one(f"{test.name}: change", f"side: {side.value}" if test.by_side else "")
            if change is None or change.value is None:
                continue
            first, last = given(change, "first"), given(change, "last")
            name = say.called_in_unit(test)
            if test.by_side:
                name = say("{test}, {side}", test=name, side=say(side.value))
            rows.append((name, *(say.number(v) if isinstance(v, float) else "–" for v in (first, last))))
    if not rows:
        return ()
    head = say("Test"), say("First"), say("Last")
    return Heading(say("Your tests")), Table(head, tuple(rows[:MOST_TESTS]))
