"""Who is shown of the squad: each choice shows those of whom it is the case, and pain stays hidden."""

from datetime import UTC, datetime, timedelta

import pytest

from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord
from app.domain.squad import OwedKind, OwedRating, SquadMember
from app.views.review.squad.filtering import SHOWN_WORDS, WITHOUT_PAIN, Shown, fits
from app.views.review.squad.line import SquadLine, squad_lines
from tests.reviewed import MONDAY, TODAY, due, record, session

AT = datetime(2026, 11, 16, 18, tzinfo=UTC)
LAST_WEEK = MONDAY - timedelta(weeks=1)


def line_of(of: AthleteRecord, *owed: OwedRating) -> SquadLine:
    last = max((each.day for each in of.sessions), default=None)
    (line,) = squad_lines((SquadMember(of, last, owed),))
    return line


def shown(line: SquadLine) -> set[Shown]:
    return {choice for choice in Shown if fits(line, choice)}


def test_every_choice_has_its_words() -> None:
    assert set(SHOWN_WORDS) == set(Shown)


@pytest.mark.parametrize(
    ("pain", "expected"),
    [
        (None, {Shown.EVERYBODY}),
        (2, {Shown.EVERYBODY}),
        (3, {Shown.EVERYBODY, Shown.PAIN}),
        (6, {Shown.EVERYBODY, Shown.PAIN, Shown.NEED_A_LOOK}),
    ],
)
def test_pain_is_shown_from_three_on_and_unknown_pain_never(pain: int | None, expected: set[Shown]) -> None:
    line = line_of(record(sessions=(session(TODAY, pain=pain),), today=TODAY, last=TODAY))
    assert shown(line) == expected


def test_answers_owed_and_sessions_missed() -> None:
    owed = OwedRating(OwedKind.SESSION_RPE, "1", "Hugo", "", MONDAY, AT, "UTC")
    missed = due(LAST_WEEK, DueState.MISSED)
    of = record(first=LAST_WEEK, sessions=(session(TODAY),), due=(missed,), today=TODAY, last=TODAY)
    assert shown(line_of(of, owed)) >= {Shown.OWED}
    this_week = TODAY - timedelta(days=TODAY.weekday())
    before = due(this_week - timedelta(days=3), DueState.MISSED)
    of = record(first=LAST_WEEK, sessions=(session(TODAY),), due=(before,), today=TODAY, last=TODAY)
    assert shown(line_of(of)) >= {Shown.MISSED}


def test_whoever_has_not_trained_since_monday_or_never_is_shown() -> None:
    this_week = TODAY - timedelta(days=TODAY.weekday())
    before = record(
        first=LAST_WEEK, sessions=(session(this_week - timedelta(days=1)),), today=TODAY, last=TODAY
    )
    on_monday = record(first=LAST_WEEK, sessions=(session(this_week),), today=TODAY, last=TODAY)
    assert Shown.NOT_THIS_WEEK in shown(line_of(before))
    assert Shown.NOT_THIS_WEEK not in shown(line_of(on_monday))
    assert Shown.NOT_THIS_WEEK in shown(line_of(record(sessions=(), today=TODAY, last=TODAY)))


def test_what_can_be_asked_before_others_tells_nothing_of_pain() -> None:
    hurting = line_of(record(sessions=(session(TODAY, pain=8),), today=TODAY, last=TODAY))
    well = line_of(record(sessions=(session(TODAY, pain=0),), today=TODAY, last=TODAY))
    for choice in WITHOUT_PAIN:
        assert fits(hurting, choice) is fits(well, choice)
