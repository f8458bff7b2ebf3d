"""The pages of an SQLite file read one by one, without the library, which gives up at the first bad one.

Source of the format: https://www.sqlite.org/fileformat2.html, sections 1.3, 1.6 and 2.1.
"""

import os
import struct
from collections.abc import Iterator
from dataclasses import dataclass
from io import FileIO
from pathlib import Path

Value = None | int | float | str | bytes
_HEADER = 100
_MAGIC = b"SQLite format 3\x00"
_USUAL_SIZE = 4096
_SIZES = {1 << power for power in range(9, 17)}
_INTEGERS = {1: 1, 2: 2, 3: 3, 4: 4, 5: 6, 6: 8}
TABLE_LEAF, TABLE_INNER, INDEX_LEAF, INDEX_INNER = 0x0D, 0x05, 0x0A, 0x02
_KINDS = {TABLE_LEAF, TABLE_INNER, INDEX_LEAF, INDEX_INNER}


@dataclass(frozen=True, slots=True)
class Record:
    """The values of one row as they are stored; `rowid` is None in an index or a table without one."""

    values: tuple[Value, ...]
    rowid: int | None


@dataclass(frozen=True, slots=True)
class Page:
    """What can be read of one page: its kind, the pages below it, its records, and how many cells are bad."""

    kind: int
    children: tuple[int, ...] = ()
    records: tuple[Record, ...] = ()
    bad: int = 0


class PagedFile:
    """The bytes of a database file. A stretch that the disk does not give back counts as zeros.

    `application_id` and `version` are what the header says, 0 where there is none.
    """

    def __init__(self, path: Path) -> None:
        self._bytes, self.unread = _read(path)
        header = self._bytes[:_HEADER]
        self.has_header = header.startswith(_MAGIC) and len(header) == _HEADER
        size = int.from_bytes(header[16:18], "big")
        size = 1 << 16 if size == 1 else size
        self._size = size if self.has_header and size in _SIZES else _USUAL_SIZE
        self._usable = self._size - (header[20] if self.has_header else 0)
        self.version = int.from_bytes(header[60:64], "big") if self.has_header else 0
        self.application_id = int.from_bytes(header[68:72], "big") if self.has_header else 0
        self.count = -(-len(self._bytes) // self._size)

    def page(self, number: int) -> Page | None:
        """What can be read of a page, counted from 1; None where it is no page of a table or index."""
        data = self._page_bytes(number)
        start = _HEADER if number == 1 else 0
        if len(data) < start + 12 or data[start] not in _KINDS:
            return None
        kind = data[start]
        cells = int.from_bytes(data[start + 3 : start + 5], "big")
        array = start + (8 if kind in (TABLE_LEAF, INDEX_LEAF) else 12)
        if array + 2 * cells > len(data):
            return None
        below = [] if array == start + 8 else [int.from_bytes(data[start + 8 : start + 12], "big")]
        records, bad = [], 0
        for place in range(array, array + 2 * cells, 2):
            try:
                at = int.from_bytes(data[place : place + 2], "big")
                if kind in (TABLE_INNER, INDEX_INNER):
                    below.append(int.from_bytes(data[at : at + 4], "big"))
                    at += 4
                if kind != TABLE_INNER:
                    records.append(self._record(data, at, kind))
            except (ValueError, IndexError):
                bad += 1
        return Page(kind, tuple(below), tuple(records), bad)

    def _page_bytes(self, number: int) -> bytes:
        return self._bytes[(number - 1) * self._size : number * self._size]

    def _record(self, data: bytes, at: int, kind: int) -> Record:
        length, at = _varint(data, at)
        rowid = None
        if kind == TABLE_LEAF:
            rowid, at = _varint(data, at)
            rowid = rowid - (1 << 64) if rowid >> 63 else rowid
        return Record(_values(self._payload(data, at, length, kind)), rowid)

    def _payload(self, data: bytes, at: int, length: int, kind: int) -> bytes:
        """The bytes of a record, those that went to overflow pages with them."""
        usable = self._usable
        most = usable - 35 if kind == TABLE_LEAF else (usable - 12) * 64 // 255 - 23
        if length > len(self._bytes):
            raise ValueError("longer than the file")
        if length <= most:
            return _slice(data, at, length)
        least = (usable - 12) * 32 // 255 - 23
        here = least + (length - least) % (usable - 4)
        here = here if here <= most else least
        payload = bytearray(_slice(data, at, here))
        following = int.from_bytes(_slice(data, at + here, 4), "big")
        while len(payload) < length:
            page = self._page_bytes(following) if following else b""
            payload += _slice(page, 4, min(usable - 4, length - len(payload)))
            following = int.from_bytes(page[:4], "big")
        return bytes(payload)


def walk(file: PagedFile, root: int) -> Iterator[tuple[int, Page]]:
    """The pages that can be reached from the root of a table or index, each once."""
    waiting, seen = [root], {root}
    while waiting:
        number = waiting.pop()
        page = file.page(number) if 0 < number <= file.count else None
        if page is None:
            continue
        yield number, page
        new = [child for child in page.children if child not in seen]
        seen.update(new)
        waiting += new


def _read(path: Path) -> tuple[bytes, int]:
    """The bytes of a file, and how many of them the disk does not give back."""
    content, unread = bytearray(), 0
    with open_raw(path) as file:
        size = file.seek(0, os.SEEK_END)
        for start in range(0, size, _USUAL_SIZE):
            length = min(_USUAL_SIZE, size - start)
            try:
                file.seek(start)
                piece = file.read(length)
            except OSError:
                piece = b""
            unread += length - len(piece)
            content += piece.ljust(length, b"\0")
    return bytes(content), unread


def open_raw(path: Path) -> FileIO:
    """A file that is read straight from the disk."""
    return FileIO(path)


def _slice(data: bytes, at: int, length: int) -> bytes:
    if at + length > len(data):
        raise ValueError("beyond the end of the page")
    return data[at : at + length]


def _varint(data: bytes, at: int) -> tuple[int, int]:
    """A number of 1 to 9 bytes, the highest first, and where the next thing begins."""
    value = 0
    for place in range(8):
        byte = data[at + place]
        value = value << 7 | byte & 0x7F
        if byte < 0x80:
            return value, at + place + 1
    return value << 8 | data[at + 8], at + 9


def _values(payload: bytes) -> tuple[Value, ...]:
    """The values of a record. Raises ValueError or IndexError where the bytes are none."""
    end, at = _varint(payload, 0)
    kinds = []
    while at < end:
        kind, at = _varint(payload, at)
        kinds.append(kind)
    if at != end:
        raise ValueError("a header that does not end where it says")
    values: list[Value] = []
    for kind in kinds:
        value, at = _value(payload, at, kind)
        values.append(value)
    if at != len(payload):
        raise ValueError("a record that does not end where it says")
    return tuple(values)


def _value(payload: bytes, at: int, kind: int) -> tuple[Value, int]:
    if kind in (0, 8, 9):
        return (None if kind == 0 else kind - 8), at
    if kind in _INTEGERS:
        length = _INTEGERS[kind]
        return int.from_bytes(_slice(payload, at, length), "big", signed=True), at + length
    if kind == 7:
        (number,) = struct.unpack(">d", _slice(payload, at, 8))
        return float(number), at + 8
    if kind < 12:
        raise ValueError(f"there is no kind {kind} of value")
    length = (kind - 12) // 2
    content = _slice(payload, at, length)
    return (content if kind % 2 == 0 else content.decode()), at + length
