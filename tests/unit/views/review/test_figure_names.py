"""Names of figures are said piece by piece in a person's language, a lift in the words of whoever gave it."""

import pytest

from app.analysis.tests_catalog import CATALOGUE, field_test
from app.views.review import figure_names
from app.views.review.figure_names import called_words, name_words, part_words, unit_words

GERMAN = {
    "Single hop for distance": "Einbeinsprung auf Weite",
    "One-rep maximum, measured": "Maximum für eine Wiederholung, gemessen",
    "Ten hops: contacts of 250 ms or longer": "Zehn Hüpfer: Kontakte ab 250 ms",
    "best": "bester",
    "errors": "Fehler",
    "left": "links",
    "{unit} a week": "{unit} je Woche",
}


@pytest.fixture
def _german(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(figure_names, "tr", lambda text: GERMAN.get(text, text))


@pytest.mark.usefixtures("_german")
@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("Single hop for distance: best", "Einbeinsprung auf Weite: bester"),
        (
            "One-rep maximum, measured: Front squat: best",
            "Maximum für eine Wiederholung, gemessen: Front squat: bester",
        ),
        (
            "One-rep maximum, measured: best: with a pause: best",
            "Maximum für eine Wiederholung, gemessen: best: with a pause: bester",
        ),
        ("Ten hops: contacts of 250 ms or longer", "Zehn Hüpfer: Kontakte ab 250 ms"),
        ("Strain", "Strain"),
    ],
)
def test_a_name_is_said_piece_by_piece_and_a_lift_as_it_was_given(name: str, told: str) -> None:
    assert name_words(name) == told


@pytest.mark.usefixtures("_german")
def test_a_test_of_a_lift_is_called_by_both() -> None:
    squat = field_test("one_rep_max:Front squat")
    assert squat is not None
    assert called_words(squat) == "Maximum für eine Wiederholung, gemessen: Front squat"
    assert called_words(CATALOGUE[0]) == "Einbeinsprung auf Weite"


@pytest.mark.usefixtures("_german")
@pytest.mark.parametrize(
    ("unit", "told"),
    [("errors", "Fehler"), ("cm a week", "cm je Woche"), ("1", ""), ("1 a week", "je Woche"), ("AU", "AU")],
)
def test_units_are_said_and_none_is_no_one(unit: str, told: str) -> None:
    assert unit_words(unit) == told


@pytest.mark.usefixtures("_german")
def test_a_side_is_said_and_an_exercise_stands_as_it_was_given() -> None:
    assert part_words("side: left") == "links"
    assert part_words("exercise: left") == "left"
