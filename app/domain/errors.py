"""The errors whose message is meant for the person at the screen."""

from dataclasses import dataclass


class PacewrightError(Exception):
    """Something outside the program is wrong; the message says what, and what to do."""


@dataclass(frozen=True, slots=True, order=True)
class Problem:
    """One thing wrong in a file. Line and column count from 1; 0 means the file as a whole."""

    line: int
    column: int
    message: str

    def located(self, file: str) -> str:
        """The problem as one line, `FILE:LINE:COLUMN: message`, with at least line 1, column 1."""
        return f"{file}:{max(self.line, 1)}:{max(self.column, 1)}: {self.message}"


class FileProblemsError(PacewrightError):
    """Every problem found in one file (a plan, a roster), in the order of the file."""

    def __init__(self, file: str, problems: tuple[Problem, ...]) -> None:
        super().__init__("\n".join(problem.located(file) for problem in problems))
        self.file = file
        self.problems = problems


class StoreError(PacewrightError):
    """The database cannot be opened, read or written."""


class DamagedStoreError(StoreError):
    """The database holds what cannot be read, or what cannot be true."""


class NewerStoreError(StoreError):
    """The database was made by a newer version of the program."""


class PackError(PacewrightError):
    """A pack, or a folder of tables, cannot be written, or is not to be trusted."""


class MissingExtraError(PacewrightError):
    """Something asked for needs a library that comes with an extra of the installation."""

    def __init__(self, what: str, extra: str) -> None:
        super().__init__(
            f"{what} needs libraries that are not installed here. Install them with: "
            f'pip install "pacewright[{extra}]".'
        )


class SpeakerError(PacewrightError):
    """No sound can be had from the device asked for."""


class DisplayError(PacewrightError):
    """There is no screen to open a window on."""


class SessionTooLongError(PacewrightError):
    """The session that would come about is longer than any may be."""


class UsageError(PacewrightError):
    """The words of a command do not fit together."""
