"""The courses of a run: what was written of it in one place, or in several that did not know of each other.

A course is all facts of a run in their encoding. One that another begins with is an earlier state of it; of
two that part, each holds what the other does not, and both are kept.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from hashlib import sha256

from app.domain.records import Fact
from app.store.encoding import decode, encode


@dataclass(frozen=True, slots=True, order=True)
class Course:
    """The facts of a run as bytes, and how many they are; they are ordered by the facts they have."""

    count: int
    body: bytes

    @property
    def hash(self) -> bytes:
        """The SHA-256 of the bytes."""
        return sha256(self.body).digest()

    def facts(self) -> tuple[Fact, ...]:
        """The facts."""
        return decode(self.body)


def course_of(facts: Iterable[Fact]) -> Course:
    """The course that some facts make."""
    written = tuple(facts)
    return Course(len(written), encode(written))


def read_course(body: bytes) -> Course:
    """The course in some bytes. Raises ValueError when they are not what facts are written in."""
    facts = decode(body)
    if encode(facts) != body:
        raise ValueError("the facts are not written as this program writes them")
    return Course(len(facts), body)


def farthest(courses: Iterable[Course]) -> tuple[Course, ...]:
    """Those that no other begins with, the one that stands for the run last.

    It is the one with the most facts, and of those the last by its bytes, so that the same courses give the
    same whatever the order in which they came.
    """
    found: list[Course] = []
    for course in sorted(set(courses), reverse=True):
        if not any(other.body.startswith(course.body) for other in found):
            found.append(course)
    return tuple(reversed(found))
