"""The summary of a report in sentences: what was done, load, pain, sides, and what is not known."""

from collections.abc import Iterator

from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS, TEMPO
from app.analysis.figures_load import WEEK
from app.analysis.figures_wellbeing import HIGHEST
from app.analysis.pain import Morning, morning_after
from app.analysis.reasons_pain import pain_before
from app.analysis.symmetry import Standing
from app.analysis.tests_catalog import tried_tests
from app.domain.readiness import PAIN_LIMIT
from app.domain.reviewed import AthleteRecord
from app.reports.report_found import Found, given
from app.reports.report_words import Words

DIFFERENCE = "{test}: difference of the sides"


def summary(found: Found, say: Words) -> tuple[str, ...]:
    """The sentences, each of them whole."""
    return (*_done(found, say), *_load(found, say), *_wellbeing(found, say), *_sides(found, say))


def differences(found: Found) -> tuple[tuple[str, Figure], ...]:
    """The tests with both sides on one day, by name, each with the difference of its sides."""
    tests = tried_tests(found.record.results)
    told = ((test.name, DIFFERENCE.format(test=test.name)) for test in tests)
    pairs = ((name, figure) for name, own in told for figure in found.of_days(own))
    return tuple((name, figure) for name, figure in pairs if figure.value is not None)


def unsettled(record: AthleteRecord) -> tuple[int, int]:
    """On how many mornings after a session pain had not settled, and how many of them are known."""
    before = pain_before(record)
    found = [
        morning_after(before.get(each.day), each.pain_next_morning, asked=each.next_morning_asked)
        for each in record.sessions_within
    ]
    return found.count(Morning.NOT_SETTLED), found.count(Morning.NOT_SETTLED) + found.count(Morning.SETTLED)


def _done(found: Found, say: Words) -> Iterator[str]:
    sessions, reps, tempo = found.one(SESSIONS.name), found.one(REPS.name), found.one(TEMPO.name)
    count = len(found.record.sessions_within)
    yield say.counted(count, "{n} session is in the record.", "{n} sessions are in the record.")
    if sessions is not None and sessions.value is not None:
        done, excused = given(sessions, "done"), given(sessions, "excused")
        told = say("{n} of {m} planned sessions were done ({share}); {k} were excused.")
        yield told.format(n=done, m=sessions.n, share=say.percent(sessions.value), k=excused)
    else:
        yield say("No planned session was due, so that nothing can be said of how many were done.")
    if reps is not None and reps.value is not None:
        told = say("{share} of {m} prescribed reps were done.")
        yield told.format(share=say.percent(reps.value), m=say.whole(reps.n))
    else:
        yield say("Nothing is known of reps.")
    if tempo is not None and tempo.value is not None:
        told = say("{share} of {m} reps that were led to a tempo kept it.")
        yield told.format(share=say.percent(tempo.value), m=say.whole(tempo.n))


def _load(found: Found, say: Words) -> Iterator[str]:
    weeks = [figure for figure in found.of_days(WEEK.name) if figure.value is not None]
    if not weeks:
        yield say("Of no whole week is the load known.")
    elif len(weeks) == 1:
        told = say("The load of the last week known in full was {n} AU; no other week is known in full.")
        yield told.format(n=say.whole(weeks[-1].value))
    else:
        told = say("The load of the last week known in full was {n} AU, of the one known before it {m} AU.")
        yield told.format(n=say.whole(weeks[-1].value), m=say.whole(weeks[-2].value))
    unrated = sum(each.rpe is None for each in found.record.sessions_within)
    if unrated:
        yield say.counted(
            unrated, "The effort of {n} session is not rated.", "The effort of {n} sessions is not rated."
        )


def _wellbeing(found: Found, say: Words) -> Iterator[str]:
    sessions = found.record.sessions_within
    highest = found.one(HIGHEST.name)
    if highest is None or highest.value is None:
        yield say("Pain is not known: nobody has answered.")
        return
    above = sum(each.pain is not None and each.pain > PAIN_LIMIT for each in sessions)
    told = say("The highest pain was {n} of 10; it was above 5 in {k} of {m} sessions with an answer.")
    yield told.format(n=say.whole(highest.value), k=above, m=highest.n)
    worse, known = unsettled(found.record)
    if known:
        told = say("On {n} of {m} mornings after, pain had not settled.")
        yield told.format(n=worse, m=known)


def _sides(found: Found, say: Words) -> Iterator[str]:
    pairs = differences(found)
    beyond = [
        (name, figure)
        for name, figure in pairs
        if given(figure, "against its error") == Standing.BEYOND_ERROR.value
    ]
    for name, figure in beyond:
        side = say(str(given(figure, "side behind")))
        yield say(
            "{test}: one side is behind beyond the error of the test: {side}.", test=say(name), side=side
        )
    if pairs and not beyond:
        yield say("In no test is a side behind beyond the error of the test, as far as that error is known.")
    elif not pairs:
        yield say("No test was done on both sides, so that nothing can be said of a side that lags.")
