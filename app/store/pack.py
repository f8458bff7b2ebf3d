"""The pack: rows of a record in one file, to be handed to another computer.

A zip with a member of JSON Lines for each table, and `manifest.json`, which says the format, how many rows
each member has, and its SHA-256:

    {"format": 1, "made_by": "Pacewright 0.1.0", "made_at": "2026-11-22T18:00:00Z", "names": true,
     "members": [{"name": "athletes.jsonl", "rows": 1, "sha256": "..."}, ...]}
"""

import json
import zipfile
from collections.abc import Callable, Iterable
from datetime import datetime
from hashlib import sha256
from pathlib import Path
from typing import Any

from app import __version__
from app.domain.errors import PackError
from app.domain.table import Table
from app.domain.tables import TABLES
from app.domain.values import Row, moment_text
from app.store.archive import LARGEST_FILE, Archive, Lines
from app.store.durable import make_private_file, put_in_place
from app.store.intake import Incoming, Intake

FORMAT = 1
MANIFEST = "manifest.json"
_BEGINNING = (1980, 1, 1, 0, 0, 0)
_PRIVATE = 0o600 << 16

RowsOf = Callable[[Table], Iterable[Row]]


def write_pack(path: Path, rows_of: RowsOf, made_at: datetime, *, names: bool) -> dict[str, int]:
    """Write the rows of every table into a pack, its owner's alone; gives how many each table has.

    Raises PackError when it cannot be written, and then what stood at `path` still does.
    """
    part = path.with_name(f"{path.name}.part")
    try:
        make_private_file(part)
        with zipfile.ZipFile(part, "w", zipfile.ZIP_DEFLATED) as archive:
            members = [_write_member(archive, table, rows_of(table)) for table in TABLES]
            manifest = {
                "format": FORMAT,
                "made_by": f"Pacewright {__version__}",
                "made_at": moment_text(made_at),
                "names": names,
                "members": members,
            }
            archive.writestr(_member(MANIFEST), _line(manifest))
        put_in_place(part, path)
    except OSError as error:
        part.unlink(missing_ok=True)
        raise PackError(
            f"{path} cannot be written ({error.strerror}). See whether its folder is there, may be written "
            "and has room."
        ) from error
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    return {table.name: int(member["rows"]) for table, member in zip(TABLES, members, strict=True)}


def read_pack(path: Path) -> Incoming:
    """Everything in a pack, checked. Raises PackError, with what is wrong, unless it is whole and right."""
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST_FILE + 1)
    except OSError as error:
        raise PackError(
            f"{path} cannot be read ({error.strerror}). See whether the name is right."
        ) from error
    try:
        if len(data) > LARGEST_FILE:
            raise ValueError("it is larger than 256 MiB")
        return _read(Archive(data))
    except _NewerFormatError as error:
        raise PackError(
            f"{path} was packed by a newer version of Pacewright. Install the newer version here too. "
            "Nothing was taken from it."
        ) from error
    except ValueError as error:
        raise PackError(
            f"{path} is refused, and nothing was taken from it: {error}. Ask for the pack to be made and "
            "sent again."
        ) from error


def _write_member(archive: zipfile.ZipFile, table: Table, rows: Iterable[Row]) -> dict[str, Any]:
    name, digest, count = _name(table), sha256(), 0
    with archive.open(_member(name), "w") as stream:
        for row in rows:
            line = _line({key: value for key, value in row.items() if value is not None})
            digest.update(line)
            stream.write(line)
            count += 1
    return {"name": name, "rows": count, "sha256": digest.hexdigest()}


def _name(table: Table) -> str:
    return f"{table.name}.jsonl"


def _member(name: str) -> zipfile.ZipInfo:
    member = zipfile.ZipInfo(name, _BEGINNING)
    member.compress_type = zipfile.ZIP_DEFLATED
    member.external_attr = _PRIVATE
    return member


def _line(said: dict[str, Any]) -> bytes:
    return json.dumps(said, ensure_ascii=False, separators=(",", ":"), allow_nan=False).encode() + b"\n"


class _NewerFormatError(ValueError):
    """The pack has a format of the future."""


def _read(archive: Archive) -> Incoming:
    promised = _manifest(archive)
    wanted = {_name(table) for table in TABLES}
    if set(promised) != wanted or archive.names != wanted | {MANIFEST}:
        raise ValueError("it does not have the members that a pack has")
    intake = Intake()
    for table in TABLES:
        lines = archive.lines(_name(table))
        count = _take(intake, table, lines)
        if (count, lines.digest) != promised[_name(table)]:
            raise ValueError(f"{_name(table)} is not what the manifest says it is")
    return intake.finish()


def _take(intake: Intake, table: Table, lines: Lines) -> int:
    count = 0
    for line in lines:
        count += 1
        try:
            intake.take(table, _object(line))
        except ValueError as error:
            raise ValueError(f"{_name(table)}, line {count}: {error}") from error
    return count


def _manifest(archive: Archive) -> dict[str, tuple[int, str]]:
    """By member how many rows it should have, and its hash."""
    said = _object(b" ".join(archive.lines(MANIFEST)))
    version, members = said.get("format"), said.get("members")
    if isinstance(version, int) and version > FORMAT:
        raise _NewerFormatError
    if version is True or version != FORMAT or not isinstance(members, list):
        raise ValueError("the manifest does not say what a manifest says")
    try:
        promised = {member["name"]: (member["rows"], member["sha256"]) for member in members}
    except (TypeError, KeyError) as error:
        raise ValueError("the manifest does not say what a manifest says") from error
    if len(promised) != len(members):
        raise ValueError("the manifest names a member twice")
    return promised


def _object(line: bytes) -> dict[str, Any]:
    """The object in a line. Raises ValueError, with nothing of what the line says."""
    try:
        said = json.loads(line.decode(), object_pairs_hook=_once, parse_constant=_refuse)
    except UnicodeDecodeError as error:
        raise ValueError("this is not UTF-8") from error
    except (ValueError, RecursionError) as error:
        raise ValueError("this is not JSON that can be read") from error
    if not isinstance(said, dict):
        raise ValueError("this is no JSON object")
    return said


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    said = dict(pairs)
    if len(said) != len(pairs):
        raise ValueError("a name stands twice in an object")
    return said


def _refuse(word: str) -> None:
    raise ValueError(f"{word} is no number")
