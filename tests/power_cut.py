"""What a disk may hold after a power cut: what was synced, and of the rest any part, in any order, torn.

The rules are those of SQLite's own account of what it expects (https://www.sqlite.org/atomiccommit.html,
sections 2 and 3): an unsynced write may be there, not be there, or be there from its beginning or its end
only; a name in a folder is sure once its file (when it was made) or the folder is synced.
"""

import random
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from tests.file_layer import Event


@dataclass(slots=True)
class _File:
    sure: bytearray = field(default_factory=bytearray)
    unsure: list[Event] = field(default_factory=list)
    named: bool = True


class Disk:
    """A disk that has seen some events, beginning with files that are all synced."""

    def __init__(self, files: Mapping[str, bytes]) -> None:
        self._files = {name: _File(bytearray(content)) for name, content in files.items()}
        self._deleted: dict[str, list[_File]] = {}
        self.told = 0

    def see(self, events: Iterable[Event]) -> None:
        """Let so much happen."""
        for event in events:
            self._see(event)

    def _see(self, event: Event) -> None:
        match event.kind:
            case "open":
                self._files[event.name] = _File(named=False)
            case "write" | "truncate":
                self._files[event.name].unsure.append(event)
            case "sync":
                file = self._files[event.name]
                file.sure = _applied(file.sure, file.unsure)
                file.unsure, file.named = [], True
            case "delete":
                self._delete(event)
            case "told":
                self.told = event.at

    def _delete(self, event: Event) -> None:
        file = self._files.pop(event.name)
        if event.at:
            self._deleted.clear()
            for other in self._files.values():
                other.named = True
        else:
            self._deleted.setdefault(event.name, []).append(file)

    def after_cut(self, chance: random.Random) -> dict[str, bytes]:
        """What is found of the files when the power comes back."""
        found = {name: _left(file, chance) for name, file in self._files.items() if _named(file, chance)}
        for name, files in self._deleted.items():
            if name not in found and chance.random() < 0.5:
                found[name] = _left(files[-1], chance)
        return found


def _named(file: _File, chance: random.Random) -> bool:
    return file.named or chance.random() < 0.5


def _left(file: _File, chance: random.Random) -> bytes:
    """Synced content with any part of what was not synced."""
    how = chance.choice(("none", "all", "some", "torn"))
    if how == "none":
        return bytes(file.sure)
    kept = file.unsure if how == "all" else [event for event in file.unsure if chance.random() < 0.5]
    if how == "torn":
        kept = [_torn(event, chance) for event in kept]
    return bytes(_applied(file.sure, kept))


def _torn(event: Event, chance: random.Random) -> Event:
    if event.kind != "write" or chance.random() < 0.5:
        return event
    cut = chance.randrange(len(event.data) + 1)
    if chance.random() < 0.5:
        return Event("write", event.name, event.at, event.data[:cut])
    return Event("write", event.name, event.at + cut, event.data[cut:])


def _applied(content: bytearray, events: Iterable[Event]) -> bytearray:
    made = bytearray(content)
    for event in events:
        if event.kind == "truncate":
            del made[event.at :]
            made.extend(bytes(event.at - len(made)))
        elif event.data:
            made.extend(bytes(max(0, event.at - len(made))))
            made[event.at : event.at + len(event.data)] = event.data
    return made
