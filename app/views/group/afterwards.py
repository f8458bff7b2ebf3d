"""What everybody did and said of a group session, for the grid afterwards, and where an answer goes."""

from collections.abc import Sequence

from app.domain.fold import fold_closing, fold_run, standing
from app.domain.group import GroupSession
from app.domain.records import Fact
from app.run.intents import RateBout, RateSession
from app.run.room_intents import ForOne
from app.views.group.after_form import Answer, Question
from app.views.group.after_grid import Rated
from app.views.group.console_words import done_words, last_worked


def who_was_there(facts: Sequence[Sequence[Fact]]) -> tuple[int, ...]:
    """The places of those who have a run, in order: the rows of the grid."""
    return tuple(place for place, theirs in enumerate(facts) if theirs)


def rated(session: GroupSession, names: Sequence[str], facts: Sequence[Sequence[Fact]]) -> tuple[Rated, ...]:
    """Everybody who was there, with what counts of what they did, and what they said."""
    rows = []
    for place in who_was_there(facts):
        records = standing(fold_run(facts[place])).values()
        asked = sum(bout.low for bout in session.parts[place].timeline.bouts)
        did = done_words(sum(record.reps_done for record in records), asked, facts[place])
        pains = [record.pain for record in records if record.pain is not None]
        effort = fold_closing(facts[place]).session_rpe
        rows.append(Rated(names[place], did, effort, pains[-1] if pains else None))
    return tuple(rows)


def missing(names: Sequence[str], facts: Sequence[Sequence[Fact]]) -> tuple[str, ...]:
    """Who never came."""
    return tuple(name for name, theirs in zip(names, facts, strict=True) if not theirs)


def answering(answer: Answer, facts: Sequence[Sequence[Fact]]) -> ForOne | None:
    """The intent that writes an answer down; none for pain of somebody who did no work."""
    place = who_was_there(facts)[answer.row]
    if answer.question is Question.EFFORT:
        return ForOne(place, RateSession(answer.value))
    bout = last_worked(facts[place])
    return None if bout is None else ForOne(place, RateBout(bout, pain=answer.value))
