"""What somebody agreed to, in a line."""

from collections.abc import Sequence

from app.domain.keeping import Person
from app.views.review import words

UNKNOWN = "Consent: unknown"


def consent_line(people: Sequence[Person], name: str) -> str:
    """Since when the athlete of a name agrees to what; of several of one name, each."""
    return words.DOT.join(_line(person) for person in people if person.name == name) or UNKNOWN


def _line(person: Person) -> str:
    if person.consent_on is None:
        return UNKNOWN
    since = f"Consent since {words.day(person.consent_on)} {person.consent_on.year}"
    return f"{since}: {person.consent_scope}" if person.consent_scope else f"{since}, to what is not said"
