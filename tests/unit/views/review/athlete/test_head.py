"""The figures at the top, looked for in the last weeks first."""

from dataclasses import replace

import pytest

from app.analysis.athlete_figures import athlete_figures
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.head import head_figures, head_of
from tests.reviewed import MONDAY
from tests.squads import nothing, season, unknown


def rated_long_ago(weeks: int = 60) -> AthleteRecord:
    """Nobody rated an effort or answered anything in all but the first weeks."""
    whole = season(weeks=weeks)
    first = whole.first
    sessions = tuple(
        each if (each.day - first).days < 28 else replace(each, rpe=None) for each in whole.sessions
    )
    answers = tuple(each for each in whole.readiness if (each.at.date() - first).days < 28)
    return replace(whole, sessions=sessions, readiness=answers)


@pytest.mark.parametrize(
    "record",
    [season(), season(weeks=60), rated_long_ago(), nothing(), unknown(), replace(season(), first=MONDAY)],
    ids=["weeks", "years", "long ago", "nothing", "unknown", "part of it"],
)
def test_they_are_those_of_all_figures_however_far_back_the_last_known_one_is(record: AthleteRecord) -> None:
    assert head_of(record) == head_figures(athlete_figures(record))
    assert head_of(record, pain=False) == head_figures(athlete_figures(record), pain=False)
