"""Gathers every problem of one file, and finds where each stands."""

from collections.abc import Callable, Iterable, Set
from typing import Protocol

from app.domain.errors import FileProblemsError, Problem
from app.planfile.positions import Place

MOST_PROBLEMS = 500


class Places(Protocol):
    """Knows where in a file things stand: line and column from 1."""

    def of_key(self, path: Place) -> tuple[int, int]:
        """Where a key stands, or the nearest thing around it."""

    def of_value(self, path: Place) -> tuple[int, int]:
        """Where a value stands, or the nearest thing around it."""


class Report:
    """The problems of one file so far, `begun` being those found on the way to its values.

    `places` is asked for only when there is something to place. Nothing more is said about lines in `broken`.
    """

    def __init__(
        self,
        file: str,
        places: Callable[[], Places],
        begun: Iterable[Problem] = (),
        broken: Set[int] = frozenset(),
    ) -> None:
        self._file = file
        self._places = places
        self._begun = tuple(begun)
        self._broken = broken
        self._found: list[tuple[Place, bool, str]] = []

    def refuse(self, message: str, *place: str | int, key: bool = False) -> None:
        """Take down one problem at a path from the top of the file, of its value or of its key."""
        if len(self._found) <= MOST_PROBLEMS:
            self._found.append((place, key, message))

    @property
    def clean(self) -> bool:
        """Whether nothing is wrong so far."""
        return not self._found and not self._begun

    def error(self) -> FileProblemsError:
        """All problems, in the order of the file, as an error to raise."""
        return FileProblemsError(self._file, self._problems())

    def _problems(self) -> tuple[Problem, ...]:
        problems = list(self._begun)
        if self._found:
            places = self._places()
            for path, key, message in self._found:
                line, column = places.of_key(path) if key else places.of_value(path)
                if line not in self._broken:
                    problems.append(Problem(line, column, message))
        problems = list(dict.fromkeys(problems))
        if max(len(problems), len(self._found)) > MOST_PROBLEMS:
            more = Problem(0, 0, f"there are more than {MOST_PROBLEMS} problems; mend these first")
            problems = [more, *problems[:MOST_PROBLEMS]]
        return tuple(sorted(problems, key=lambda problem: (problem.line, problem.column)))
