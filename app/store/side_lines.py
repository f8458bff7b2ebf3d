"""Lines of a side file: what a journal was told, each line a checksum and what it guards, as JSON."""

import json
from base64 import b64decode, b64encode
from collections.abc import Collection, Iterator, Sequence
from dataclasses import asdict, dataclass, field, fields, replace
from datetime import datetime
from typing import Any
from zlib import crc32

from app.domain.dose import DoseKind
from app.domain.group_record import GroupMember, GroupRecord
from app.domain.grouping import Form
from app.domain.plan import Side, StageKind
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.store.encoding import decode, encode

FORMAT = 1


@dataclass(slots=True)
class KeptRun:
    """A run as far as it was told: who and what, where that was told, and its facts by number."""

    run_id: str
    header: RunHeader | None = None
    prescribed: tuple[BoutPrescribed, ...] = ()
    facts: dict[int, Fact] = field(default_factory=dict)

    def stretches(self) -> Iterator[tuple[int, list[Fact]]]:
        """The facts in pieces without a gap: the number of the first, and the facts."""
        first, piece = 0, list[Fact]()
        for number in sorted(self.facts):
            if piece and number != first + len(piece):
                yield first, piece
                piece = []
            first = first if piece else number
            piece.append(self.facts[number])
        if piece:
            yield first, piece

    def add(self, first_number: int, facts: Sequence[Fact]) -> None:
        """Take facts in; a number that is there already is left as it is."""
        for number, fact in enumerate(facts, first_number):
            self.facts.setdefault(number, fact)


def run_line(header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> bytes:
    """The line that says that a run exists."""
    who = {**asdict(header), "started_at": header.started_at.isoformat()}
    return _line({"run": who, "prescribed": [asdict(bout) for bout in prescribed]})


def facts_line(run_id: str, first_number: int, facts: Sequence[Fact]) -> bytes:
    """The line that holds some facts of a run."""
    body = b64encode(encode(facts)).decode()
    return _line({"run_id": run_id, "first": first_number, "facts": body})


def group_line(group: GroupRecord) -> bytes:
    """The line that says that a group session exists, and who was to come to it."""
    return _line({"group": {**asdict(group), "started_at": group.started_at.isoformat()}})


def read_groups(data: bytes) -> tuple[GroupRecord, ...]:
    """The group sessions that some lines tell of, each as it was last told."""
    found: dict[str, GroupRecord] = {}
    for line in data.split(b"\n"):
        try:
            said = _checked(line)
            if "group" in said:
                group = _group(said["group"])
                found[group.group_id] = group
        except (ValueError, KeyError, TypeError, AttributeError):
            continue
    return tuple(found.values())


def read_lines(data: bytes) -> tuple[dict[str, KeptRun], int]:
    """The runs that some lines tell of, by UUID, and how many lines could not be read.

    A line that was cut off, as by the death of the program, is one of those.
    """
    runs: dict[str, KeptRun] = {}
    unread = 0
    for line in data.split(b"\n"):
        if not line.strip():
            continue
        try:
            _take(runs, _checked(line))
        except (ValueError, KeyError, TypeError, AttributeError):
            unread += 1
    return runs, unread


def lines_without(data: bytes, runs: Collection[str], athletes: Collection[str]) -> bytes:
    """The lines that can be read and tell of no run among these, nor of one by somebody of these names."""
    left, gone = [], set(runs)
    for line in data.split(b"\n"):
        try:
            said = _checked(line)
            if "group" in said:
                left.append(_group_without(said["group"], gone, athletes))
                continue
            if "run" in said and said["run"]["athlete"] in athletes:
                gone.add(said["run"]["run_id"])
            run_id = said["run"]["run_id"] if "run" in said else said["run_id"]
        except (ValueError, KeyError, TypeError, AttributeError):
            continue
        if run_id not in gone:
            left.append(line + b"\n")
    return b"".join(left)


def _group_without(said: dict[str, Any], runs: Collection[str], athletes: Collection[str]) -> bytes:
    """The line of a group session without those members."""
    group = _group(said)
    others = [each for each in group.members if each.athlete not in athletes and each.run_id not in runs]
    return group_line(replace(group, members=tuple(others))) if others else b""


def _take(runs: dict[str, KeptRun], said: dict[str, Any]) -> None:
    if "group" in said:
        _group(said["group"])
    elif "run" in said:
        header = _header(said["run"])
        prescribed = tuple(_bout(bout) for bout in said["prescribed"])
        run = runs.setdefault(header.run_id, KeptRun(header.run_id))
        run.header, run.prescribed = header, prescribed
    else:
        facts = decode(b64decode(said["facts"], validate=True))
        runs.setdefault(said["run_id"], KeptRun(said["run_id"])).add(int(said["first"]), facts)


def _line(said: dict[str, Any]) -> bytes:
    text = _canonical({"format": FORMAT, **said})
    return f"[{crc32(text.encode())},{text}]\n".encode()


def _checked(line: bytes) -> dict[str, Any]:
    checksum, said = json.loads(line)
    if crc32(_canonical(said).encode()) != checksum:
        raise ValueError("a line is not what was written")
    if said.pop("format") != FORMAT:
        raise ValueError("a line of another format")
    return dict(said)


def _canonical(said: object) -> str:
    return json.dumps(said, sort_keys=True, separators=(",", ":"))


def _header(said: dict[str, Any]) -> RunHeader:
    return RunHeader(**{**said, "started_at": datetime.fromisoformat(said["started_at"])})


def _group(said: dict[str, Any]) -> GroupRecord:
    members = tuple(GroupMember(**member) for member in said["members"])
    started_at = datetime.fromisoformat(said["started_at"])
    return GroupRecord(**{**said, "form": Form(said["form"]), "started_at": started_at, "members": members})


def _bout(said: dict[str, Any]) -> BoutPrescribed:
    names = [each.name for each in fields(BoutPrescribed)]
    known = {name: said[name] for name in names if name in said}
    known |= {"stage_kind": StageKind(said["stage_kind"]), "side": Side(said["side"])}
    if said.get("dose") is not None:
        known["dose"] = DoseKind(said["dose"])
    return BoutPrescribed(**known)
