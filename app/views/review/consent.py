"""What somebody agreed to, in a line."""

from collections.abc import Sequence

from app.domain.keeping import Person
from app.views.review import words
from app.views.translation import tr


def consent_line(people: Sequence[Person], name: str) -> str:
    """Since when the athlete of a name agrees to what; of several of one name, each."""
    return words.DOT.join(_line(person) for person in people if person.name == name) or tr("Consent: unknown")


def _line(person: Person) -> str:
    if person.consent_on is None:
        return tr("Consent: unknown")
    told = tr("Consent since {day}, to what is not said")
    if person.consent_scope:
        told = tr("Consent since {day}: {scope}")
    return told.format(day=words.dated(person.consent_on), scope=person.consent_scope)
