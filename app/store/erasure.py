"""Forgetting athletes on request: in the database, its backups, the files set aside, and the side files.

Everything else goes first and the database last, so that an erasure that was cut short can be asked for
again.
"""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from app.domain.errors import NewerStoreError, StoreError
from app.store.copying import is_sound
from app.store.durable import journal_of, make_private_file, put_in_place
from app.store.erasing import Theirs, erase_from, theirs_in
from app.store.places import aside_folder, backup_folder
from app.store.replacing import let_it_settle
from app.store.schema import APPLICATION_ID
from app.store.side_file import side_files
from app.store.side_lines import lines_without
from app.store.side_lock import is_held
from app.store.troubles import in_plain_words, in_use, missing

_MAGIC = b"SQLite format 3\0"
_MARK = slice(68, 72)
"""Where a file's header says whose it is. Source: https://www.sqlite.org/fileformat2.html, section 1.3."""


@dataclass(frozen=True, slots=True)
class Found:
    """What there is of some people, and where it stands.

    `copies` are written anew without them. `damaged` ones cannot be read whole, so that nobody knows what
    they hold; these, and `parts` that a copy cut short left behind, are deleted. `side_files` lose their
    lines.
    """

    database: Path
    theirs: Theirs
    copies: tuple[Path, ...]
    damaged: tuple[Path, ...]
    side_files: tuple[Path, ...]
    parts: tuple[Path, ...]


def find(database: Path, spare: Path | None, words: Collection[str]) -> Found:
    """What there is of those who are called so, or have such an id. Nothing is done.

    `spare` is the folder of the side files. Raises StoreError when the database cannot be read, or something
    is being written to it or to a side file.
    """
    if not database.is_file():
        raise missing(database)
    let_it_settle(database)
    theirs = theirs_in(database, words)
    copies, damaged = [], []
    for copy in sorted(_copies(database)):
        if not _can_be_rewritten(copy):
            damaged.append(copy)
            continue
        copies.append(copy)
        theirs = theirs.with_copy(theirs_in(copy, words))
    with in_plain_words(database):
        sides = () if spare is None else side_files(spare, database)
        if any(map(is_held, sides)):
            raise in_use(database)
        parts = tuple(sorted(_parts(database)))
    return Found(database, theirs, tuple(copies), tuple(damaged), sides, parts)


def erase(found: Found, at: datetime) -> None:
    """Forget them. Raises StoreError; asked for again, it goes on where it stopped."""
    for gone in (*found.parts, *found.damaged):
        with in_plain_words(gone):
            gone.unlink(missing_ok=True)
            journal_of(gone).unlink(missing_ok=True)
    for path in found.side_files:
        with in_plain_words(path):
            _go_through(path, found.theirs)
    for copy in (*found.copies, found.database):
        erase_from(copy, found.theirs, at)


def still_naming(found: Found) -> tuple[Path, ...]:
    """The files in which a name still stands, as in the words of others. Raises StoreError."""
    wanted = [name.encode(errors="surrogatepass") for name in found.theirs.names]
    files = (found.database, *found.copies, *(path for path in found.side_files if path.exists()))
    with in_plain_words(found.database):
        return tuple(path for path in files if any(name in path.read_bytes() for name in wanted))


def _copies(database: Path) -> Iterator[Path]:
    for folder in (backup_folder(database), aside_folder(database)):
        with in_plain_words(folder):
            yield from folder.glob("*.db")


def _parts(database: Path) -> Iterator[Path]:
    yield from database.parent.glob(f"{database.name}.*.part*")
    for folder in (backup_folder(database), aside_folder(database)):
        yield from folder.glob("*.part*")


def _can_be_rewritten(copy: Path) -> bool:
    try:
        return is_sound(copy)
    except NewerStoreError:
        raise
    except StoreError:
        if _says_it_is_ours(copy):
            raise
        return False


def _says_it_is_ours(copy: Path) -> bool:
    with in_plain_words(copy), copy.open("rb") as file:
        header = file.read(100)
    return header.startswith(_MAGIC) and header[_MARK] == APPLICATION_ID.to_bytes(4, "big")


def _go_through(path: Path, theirs: Theirs) -> None:
    """Leave in a side file the lines of others alone, or nothing of it."""
    left = lines_without(path.read_bytes(), theirs.runs, theirs.names)
    if not left:
        path.unlink()
        return
    part = path.with_name(f"{path.name}.part")
    make_private_file(part)
    part.write_bytes(left)
    put_in_place(part, path)
