"""A zip file from somewhere else, read with suspicion: in place, never extracted, nothing in it believed.

Whatever is odd about it raises ValueError with what it is.
"""

import re
import struct
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from hashlib import sha256
from io import BytesIO
from typing import IO

LARGEST_FILE = 256 << 20
LARGEST_CONTENT = 512 << 20
HIGHEST_RATIO = 200
"""Lines of a record come down to a twentieth; only a trap comes down to less than a two-hundredth."""
SMALL = 1 << 20
"""Below this size the ratio says nothing: a line of blanks comes down to nothing too."""
LONGEST_LINE = 8 << 20
MOST_MEMBERS = 64

_PLAIN_NAME = re.compile(r"[a-z_]{1,40}\.jsonl?")
_ENCRYPTED = 0x1
_UNREADABLE = (NotImplementedError, RuntimeError, OSError)
_KNOWN_PACKING = {zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED}


class Archive:
    """The members of a zip, each with a plain name that no other has, and of a size that can be read."""

    def __init__(self, data: bytes) -> None:
        with _zip_troubles():
            self._zip = zipfile.ZipFile(BytesIO(data))
        members = self._zip.infolist()
        if len(members) > MOST_MEMBERS:
            raise ValueError("it has far too many members")
        self._members = {member.orig_filename: member for member in members}
        if len(self._members) != len(members):
            raise ValueError("two of its members have one name")
        for name, member in self._members.items():
            _look_at(name, member)
        if sum(member.file_size for member in members) > LARGEST_CONTENT:
            raise ValueError("it would unpack to more than 512 MiB")

    @property
    def names(self) -> frozenset[str]:
        """The names of the members."""
        return frozenset(self._members)

    def lines(self, name: str) -> "Lines":
        """The lines of a member."""
        if name not in self._members:
            raise ValueError(f"{name} is missing")
        return Lines(self._zip, self._members[name])


class Lines:
    """The lines of one member without their ends, read once; then `digest` is the SHA-256 of them all."""

    def __init__(self, archive: zipfile.ZipFile, member: zipfile.ZipInfo) -> None:
        self._zip, self._member = archive, member
        self._hash = sha256()

    def __iter__(self) -> Iterator[bytes]:
        with _zip_troubles(), self._zip.open(self._member) as stream:
            yield from self._split(stream)

    def _split(self, stream: IO[bytes]) -> Iterator[bytes]:
        while line := stream.readline(LONGEST_LINE + 1):
            if len(line) > LONGEST_LINE:
                raise ValueError("a line is longer than 8 MiB")
            self._hash.update(line)
            yield line.removesuffix(b"\n")

    @property
    def digest(self) -> str:
        """64 hexadecimal digits."""
        return self._hash.hexdigest()


def _look_at(name: str, member: zipfile.ZipInfo) -> None:
    if not _PLAIN_NAME.fullmatch(name):
        raise ValueError("a member has a name that no pack gives it")
    if member.flag_bits & _ENCRYPTED:
        raise ValueError("a member is encrypted")
    if member.compress_type not in _KNOWN_PACKING:
        raise ValueError("a member is packed in a way that no pack is")
    if member.file_size > max(SMALL, HIGHEST_RATIO * member.compress_size):
        raise ValueError("a member would unpack to more than 200 times its size")


@contextmanager
def _zip_troubles() -> Iterator[None]:
    """Turn what the reading of a zip may end in into one sentence."""
    try:
        yield
    except (zipfile.BadZipFile, zlib.error, EOFError, struct.error, *_UNREADABLE) as error:
        raise ValueError("it is damaged, or no zip file") from error
