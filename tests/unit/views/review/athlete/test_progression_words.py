"""The row of an exercise and the change of a week in words: a dash for what is unknown, and no advice."""

from dataclasses import replace
from datetime import timedelta

import pytest

from app.analysis.figures_changes import last_changes
from app.analysis.figures_progression import exercise_signs
from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.domain.reviewed import ExerciseDone
from app.views.review.athlete.progression_words import change_words, sign_columns
from app.views.review.athlete.view import athlete_view
from tests.exercised import exercise_done
from tests.reviewed import MONDAY, record, session, totals

EARLIER = MONDAY - timedelta(days=3)
BEFORE = MONDAY - timedelta(days=7)


def row(*sessions: ExerciseDone) -> list[str]:
    """The cells of the only exercise."""
    (signs,) = exercise_signs(record(exercises=sessions))
    return [column.text(signs) for column in sign_columns()]


def spoken(*sessions: ExerciseDone) -> list[str]:
    """The cells as a screen reader says them."""
    (signs,) = exercise_signs(record(exercises=sessions))
    return [(column.spoken or column.text)(signs) for column in sign_columns()]


def test_a_row_has_the_last_load_the_sets_of_the_range_and_the_signs_in_words() -> None:
    found = row(exercise_done((14, 14, 14), load="4.5"), exercise_done((14,), day=EARLIER, load="4.5"))
    assert found == [
        "External rotation",
        "left",
        "16 Nov",
        "4.5",
        "14 14 14 of 8-12",
        "yes",
        "yes",
        "0.09 to 0.45",
    ]


@pytest.mark.parametrize(
    ("reps", "told"), [((12, 12, 11), "not yet"), ((12, 7, 12), "below it"), ((12, None, 12), "–")]
)
def test_the_range_is_told_as_it_was_worked_within(reps: tuple[int | None, ...], told: str) -> None:
    assert row(exercise_done(reps))[6] == told


def test_what_is_unknown_is_a_dash_to_the_eye_and_unknown_to_the_ear() -> None:
    landing = exercise_done((5, None), load=None, dose=DoseKind.STICK, side=Side.BOTH, asked=(5, 5))
    assert row(landing)[1:] == ["both", "16 Nov", "–", "5 – of 5", "–", "–", "–"]
    assert spoken(landing)[3] == "unknown"
    assert spoken(landing)[5:] == ["unknown"] * 3


def test_work_for_a_time_is_no_rep_of_one() -> None:
    assert row(exercise_done((1, 1), asked=(1, 1), dose=DoseKind.WORK))[4] == "–"


def weeks(before: float, this: float, contacts: tuple[int, int] = (20, 20)) -> list[str]:
    """The changes of two weeks with these loads and contacts and no known volume."""
    none = {"volume_kg": None, "volume_complete": False}
    runs = tuple(
        session(day, rpe=1, minutes=load, totals=totals(contacts=count, **none))
        for day, load, count in ((BEFORE, before, contacts[0]), (MONDAY, this, contacts[1]))
    )
    pairs = last_changes(record(first=BEFORE, sessions=runs))
    return [
        change_words(what, *pair) for what, pair in zip(("Load", "Contacts", "Volume"), pairs, strict=True)
    ]


def test_a_change_stands_with_both_weeks_and_its_percent_beside_it() -> None:
    assert weeks(100, 110, (20, 15)) == [
        "Load: 110 after 100 AU, +10 (+10\u202f%)",
        "Contacts: 15 after 20 contacts, \N{MINUS SIGN}5 (\N{MINUS SIGN}25\u202f%)",
        "Volume: unknown",
    ]


def test_only_what_is_above_a_tenth_says_so() -> None:
    assert weeks(1000, 1204)[0] == "Load: 1\u202f204 after 1\u202f000 AU, +204 (+20.4\u202f%), above 10 %"
    assert weeks(100, 100)[0] == "Load: 100 after 100 AU, 0 (0\u202f%)"
    assert weeks(0, 40)[0] == "Load: 40 after 0 AU, +40"


def test_the_view_has_signs_and_changes_of_its_record() -> None:
    looked = record(first=BEFORE, exercises=(exercise_done(),))
    view = athlete_view(looked)
    assert [signs.last.exercise for signs in view.signs] == ["External rotation"]
    assert len(view.changes) == 3
    empty = athlete_view(replace(looked, exercises=(), first=MONDAY))
    assert (empty.signs, empty.changes) == ((), ())
