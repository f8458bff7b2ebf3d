"""What the first page says, word by word."""

from datetime import UTC, date, datetime, timedelta

import pytest

from app.domain.errors import FileProblemsError, Problem
from app.domain.squad import OwedKind
from app.views.home.plans import PlanFigures
from app.views.home.words import about_words, ago, figures_words, problem_words, question_words
from tests.homes import NOW, owed_rating

TODAY = date(2026, 3, 4)


@pytest.mark.parametrize(
    ("days", "words"),
    [
        (0, "today"),
        (1, "yesterday"),
        (2, "2 days ago"),
        (13, "13 days ago"),
        (14, "2 weeks ago"),
        (27, "3 weeks ago"),
        (-1, "today"),
    ],
)
def test_days_gone_by_are_counted_by_the_calendar(days: int, words: str) -> None:
    last = datetime(2026, 3, 4, 23, 59, tzinfo=UTC) - timedelta(days=days)
    assert ago(last, TODAY) == words


def test_who_never_trained_has_not_yet() -> None:
    assert ago(None, TODAY) == "not yet"


@pytest.mark.parametrize(
    ("length_ms", "own_pace", "words"),
    [
        (1_500_000, False, "1 stage · 3 exercises · about 25 min"),
        (20_000, False, "1 stage · 3 exercises · about 1 min"),
        (60_000, True, "1 stage · 3 exercises · about 1 min, and work at your own pace"),
    ],
)
def test_a_plan_is_told_in_a_line(length_ms: int, own_pace: bool, words: str) -> None:
    assert figures_words(PlanFigures("Try-out", ("One",), 3, length_ms, own_pace)) == words


def test_the_first_problems_of_a_plan_are_said_and_the_others_counted() -> None:
    problems = tuple(Problem(line, 1, f"wrong {line}") for line in range(1, 6))
    said = problem_words(FileProblemsError("/some/where/plan.toml", problems)).splitlines()
    assert said == [
        "This plan cannot be led:",
        "plan.toml:1:1: wrong 1",
        "plan.toml:2:1: wrong 2",
        "plan.toml:3:1: wrong 3",
        "And 2 more.",
    ]


def test_it_is_said_whom_is_asked_what_about_which_session() -> None:
    owed = owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo")
    assert about_words(owed, NOW.date()) == "Hugo: Landing control, yesterday"
    assert question_words(owed) == "How much does it hurt this morning?"
