"""Small stand-ins with the same ports as the real thing."""

from collections.abc import Sequence

from app.domain.records import BoutPrescribed, Fact, RunHeader


class MemoryJournal:
    """A journal that keeps everything in lists."""

    def __init__(self) -> None:
        self.headers: list[RunHeader] = []
        self.prescribed: list[tuple[BoutPrescribed, ...]] = []
        self.facts: dict[str, list[Fact]] = {}

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        self.headers.append(header)
        self.prescribed.append(tuple(prescribed))
        self.facts[header.run_id] = []

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        kept = self.facts.setdefault(run_id, [])
        assert first_number <= len(kept), "a fact was left out"
        kept.extend(facts[len(kept) - first_number :])
