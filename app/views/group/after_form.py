"""Effort and pain of everybody, struck row after row: where the next number goes, and what it answers."""

from dataclasses import dataclass, replace
from enum import StrEnum

TEN_WITHIN_MS = 800
"""A 0 struck this soon after a 1 makes it a 10."""
MOST = 10


class Question(StrEnum):
    """What is asked of each, in this order."""

    EFFORT = "effort"
    PAIN = "pain"


QUESTIONS = (Question.EFFORT, Question.PAIN)


@dataclass(frozen=True, slots=True)
class Answer:
    """The answer of the person in a row, 0-10."""

    row: int
    question: Question
    value: int


@dataclass(frozen=True, slots=True)
class AfterForm:
    """Where the next number goes: cell by cell, effort and then pain, row by row. `rows` is how many people.

    `cell` counts from 0 to two a row and is past the last when all were asked. `one` is the cell that was
    answered with a 1, and when.
    """

    rows: int
    cell: int = 0
    one: tuple[int, int] | None = None

    @property
    def place(self) -> tuple[int, Question] | None:
        """Row and question that are asked, None when all were."""
        return None if self.cell >= self.rows * len(QUESTIONS) else _place(self.cell)

    def number(self, figure: int, now_ms: int) -> tuple["AfterForm", Answer | None]:
        """Answer with a figure 0-9, and go to the next cell; a 0 right after a 1 makes that a 10."""
        if figure == 0 and self.one is not None and now_ms - self.one[1] <= TEN_WITHIN_MS:
            return replace(self, one=None), Answer(*_place(self.one[0]), MOST)
        place = self.place
        if place is None or not 0 <= figure < MOST:
            return replace(self, one=None), None
        one = (self.cell, now_ms) if figure == 1 else None
        return AfterForm(self.rows, self.cell + 1, one), Answer(*place, figure)

    def moved(self, by: int) -> "AfterForm":
        """Go on by so many cells, or back, and answer nothing: what is passed over stays as it was."""
        return AfterForm(self.rows, min(max(self.cell + by, 0), self.rows * len(QUESTIONS)))

    def at(self, row: int, question: Question) -> "AfterForm":
        """Go to a cell."""
        return AfterForm(self.rows, row * len(QUESTIONS) + QUESTIONS.index(question))


def _place(cell: int) -> tuple[int, Question]:
    row, question = divmod(cell, len(QUESTIONS))
    return row, QUESTIONS[question]
