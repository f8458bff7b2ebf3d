"""Gathers every problem of one file, and finds where each stands."""

from app.domain.errors import FileProblemsError, Problem
from app.planfile.positions import Place, Positions
from app.planfile.syntax import Parsed

MOST_PROBLEMS = 500


class Report:
    """The problems of one file so far."""

    def __init__(self, file: str, parsed: Parsed) -> None:
        self._file = file
        self._parsed = parsed
        self._found: list[tuple[Place, bool, str]] = []

    def refuse(self, message: str, *place: str | int, key: bool = False) -> None:
        """Take down one problem at a path from the top of the file, of its value or of its key."""
        if len(self._found) < MOST_PROBLEMS:
            self._found.append((place, key, message))

    @property
    def clean(self) -> bool:
        """Whether nothing is wrong so far."""
        return not self._found and not self._parsed.problems

    def error(self) -> FileProblemsError:
        """All problems, in the order of the file, as an error to raise."""
        return FileProblemsError(self._file, self._problems())

    def _problems(self) -> tuple[Problem, ...]:
        problems = set(self._parsed.problems)
        if self._found:
            positions = Positions(self._parsed.text)
            for path, key, message in self._found:
                line, column = positions.of_key(path) if key else positions.of_value(path)
                if line not in self._parsed.broken:
                    problems.add(Problem(line, column, message))
        if len(self._found) >= MOST_PROBLEMS:
            problems.add(Problem(0, 0, f"there are more than {MOST_PROBLEMS} problems; mend these first"))
        return tuple(sorted(problems))
