"""What somebody agreed to, in a line; unknown is said as unknown."""

from datetime import date

from app.domain.keeping import Person
from app.views.review.consent import consent_line

AGREED = Person("1", "Ines", None, date(2026, 1, 2), "training data, seen by the staff")


def test_it_says_since_when_and_to_what() -> None:
    assert consent_line([AGREED], "Ines") == "Consent since 2 Jan 2026: training data, seen by the staff"
    assert consent_line([Person("1", "Ines", None, date(2026, 1, 2))], "Ines") == (
        "Consent since 2 Jan 2026, to what is not said"
    )


def test_what_is_not_known_is_said_to_be_unknown() -> None:
    assert consent_line([Person("1", "Ines")], "Ines") == "Consent: unknown"
    assert consent_line([AGREED], "Hugo") == "Consent: unknown"


def test_two_of_one_name_are_both_said() -> None:
    assert consent_line([AGREED, Person("2", "Ines")], "Ines").endswith("staff · Consent: unknown")
