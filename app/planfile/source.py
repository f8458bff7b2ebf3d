"""The text of a file somebody wrote, or a plain sentence why it cannot be had."""

import codecs
from pathlib import Path

from app.domain.errors import FileProblemsError, Problem

LARGEST_BYTES = 1 << 20


def read_text(path: Path) -> str:
    """The text of a UTF-8 file of at most 1 MiB, without byte order mark, its lines ended by a line feed.

    Raises FileProblemsError when there is no such text.
    """
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        raise FileProblemsError(str(path), (Problem(0, 0, _unreadable(path, error)),)) from error
    if len(data) > LARGEST_BYTES:
        message = "the file is larger than 1 MiB; check that it is the right one"
        raise FileProblemsError(str(path), (Problem(0, 0, message),))
    data = data.removeprefix(codecs.BOM_UTF8)
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        before = data[: error.start].decode("utf-8")
        line, column = before.count("\n") + 1, len(before) - (before.rfind("\n") + 1) + 1
        message = "the file is not UTF-8 text; save it as UTF-8 in your editor"
        raise FileProblemsError(str(path), (Problem(line, column, message),)) from error
    return text.replace("\r\n", "\n")


def _unreadable(path: Path, error: OSError | ValueError) -> str:
    if isinstance(error, FileNotFoundError):
        return "there is no such file; check the name and the folder"
    if isinstance(error, IsADirectoryError) or (isinstance(error, PermissionError) and path.is_dir()):
        return "this is a folder; name a file in it"
    if isinstance(error, PermissionError):
        return "the file may not be read; give yourself the right to read it"
    if isinstance(error, ValueError):
        return "no file can have this name; check the name"
    return f"the file cannot be read ({error.strerror}); check the name and the disk"
