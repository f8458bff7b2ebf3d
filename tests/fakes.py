"""Small stand-ins with the same ports as the real thing."""

from collections.abc import Callable, Sequence
from concurrent.futures import Executor, Future
from typing import ParamSpec, TypeVar

import numpy as np
from numpy.typing import NDArray

from app.domain.group_record import GroupRecord
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.run.group_journal import Opened, Written

P = ParamSpec("P")
T = TypeVar("T")


class ImmediateExecutor(Executor):
    """Does what it is given at once, in the same thread."""

    def submit(self, fn: Callable[P, T], /, *args: P.args, **kwargs: P.kwargs) -> Future[T]:
        future: Future[T] = Future()
        try:
            future.set_result(fn(*args, **kwargs))
        except Exception as slip:
            future.set_exception(slip)
        return future


class MemoryJournal:
    """A journal that keeps everything in lists."""

    def __init__(self) -> None:
        self.headers: list[RunHeader] = []
        self.prescribed: list[tuple[BoutPrescribed, ...]] = []
        self.facts: dict[str, list[Fact]] = {}
        self.groups: list[GroupRecord] = []

    def open_group(self, group: GroupRecord, runs: Sequence[Opened]) -> None:
        if group not in self.groups:
            self.groups.append(group)
        for header, prescribed in runs:
            self.open_run(header, prescribed)

    def append_all(self, written: Sequence[Written]) -> None:
        for run_id, first_number, facts in written:
            self.append(run_id, first_number, facts)

    def open_run(self, header: RunHeader, prescribed: Sequence[BoutPrescribed]) -> None:
        self.headers.append(header)
        self.prescribed.append(tuple(prescribed))
        self.facts[header.run_id] = []

    def append(self, run_id: str, first_number: int, facts: Sequence[Fact]) -> None:
        kept = self.facts.setdefault(run_id, [])
        assert first_number <= len(kept), "a fact was left out"
        kept.extend(facts[len(kept) - first_number :])


class HandClock:
    """A clock that is moved by hand."""

    def __init__(self, at_ms: int = 0) -> None:
        self.at_ms = at_ms

    def now_ms(self) -> int:
        return self.at_ms


class RecordingSpeaker:
    """A speaker that writes down what it was asked, with the length of what it would play in ms."""

    name = "recording"
    notice: str | None = None
    lost = False

    def __init__(self, latency_ms: int = 0) -> None:
        self.latency_ms = latency_ms
        self.asked: list[str] = []
        self.played: list[NDArray[np.int16]] = []

    def warm_up(self) -> None:
        self.asked.append("warm up")

    def play(self, samples: NDArray[np.int16], first: Callable[[], int] = lambda: 0) -> None:
        rest = samples[first() :]
        self.asked.append(f"play {len(rest) // 48} ms")
        self.played.append(rest)

    def set_loudness(self, share: float) -> None:
        self.asked.append(f"loudness {share:g}")

    def stop(self) -> None:
        self.asked.append("stop")

    def tend(self) -> None:
        self.asked.append("tend")

    def close(self) -> None:
        self.asked.append("close")
