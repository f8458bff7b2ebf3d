"""Finding who trains: by any part of the name, whatever its case and marks, who trained last first."""

import unicodedata
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.squad import LastTrained
from app.views.home.people import GUEST, Trainee, everybody, matching, plainly

NOW = datetime(2026, 3, 4, 12, tzinfo=UTC)


def named(*names: str) -> tuple[Trainee, ...]:
    return tuple(Trainee(name) for name in names)


def names(people: tuple[Trainee, ...]) -> list[str]:
    return [each.name for each in people]


def test_who_trained_last_comes_first_and_the_others_in_the_order_of_the_roster() -> None:
    trained = [LastTrained("Ines", NOW - timedelta(days=3)), LastTrained("Hugo", NOW)]
    assert names(everybody(["Zoé", "Anouk", "Ines"], trained)) == ["Hugo", "Ines", "Zoé", "Anouk"]


def test_everybody_of_roster_and_record_is_there_once_and_no_guest() -> None:
    trained = [LastTrained(GUEST, NOW), LastTrained("Hugo", NOW), LastTrained("Ines", None)]
    assert names(everybody(["Hugo", "Hugo"], trained)) == ["Hugo", "Ines"]


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("zoe", ["Zoé Ångström"]),
        ("ANGSTROM", ["Zoé Ångström"]),
        ("strasse", ["Lia Straße"]),
        ("soren", ["Søren Łukasz"]),
        ("lukasz so", ["Søren Łukasz"]),
        ("αθηνα", ["Ἀθηνᾶ"]),
        ("محمد", ["محمد الأمين"]),
        ("nobody", []),
    ],
)
def test_a_name_is_found_without_its_case_and_marks(typed: str, found: list[str]) -> None:
    people = named("Zoé Ångström", "Lia Straße", "Søren Łukasz", "Ἀθηνᾶ", "محمد الأمين")
    assert names(matching(people, typed)) == found


def test_names_in_which_a_word_begins_so_come_before_those_that_only_hold_it() -> None:
    assert names(matching(named("Joanna", "Jean-Anouk", "Anouk"), "an")) == ["Jean-Anouk", "Anouk", "Joanna"]


def test_nothing_typed_leaves_everybody() -> None:
    people = named(*(f"Athlete {number}" for number in range(400)))
    assert matching(people, "  ") == people


@given(st.text(min_size=1, max_size=100))
def test_every_name_is_found_by_itself_in_either_form_of_its_letters(name: str) -> None:
    for form in ("NFC", "NFD"):
        assert matching(named(name), unicodedata.normalize(form, name)) == named(name)


@given(st.text())
def test_a_plain_text_stays_as_it_is(text: str) -> None:
    plain = plainly(text)
    assert not any(unicodedata.combining(letter) for letter in plain)
