"""The timeline: a plan compiled for one athlete, every span of the session in whole milliseconds."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from itertools import groupby
from operator import attrgetter

from app.domain.plan import Exercise, Plan, Side, Stage
from app.domain.tempo import Phase

BETWEEN_REPS = frozenset({Phase.RELAX, Phase.RESET})


class SpanKind(StrEnum):
    """What a span of the session is for."""

    LEAD_IN = "lead_in"
    WORK = "work"
    SIDE_CHANGE = "side_change"
    REST = "rest"
    CHANGEOVER = "changeover"


@dataclass(frozen=True, slots=True)
class WorkSpan:
    """One phase of one rep. Times in ms from the first phase of its bout; `end_ms` None when open-ended.

    `mark_ms` is the lower bound of a length that is a range, from the start of the bout. `rep` counts from 1
    within the bout, within a side where sides alternate; timed and own-pace work is rep 1.
    """

    start_ms: int
    end_ms: int | None
    phase: Phase
    rep: int
    side: Side
    mark_ms: int | None = None


@dataclass(frozen=True, slots=True)
class RepWindow:
    """When one rep of a timed bout begins, is done and is over. Times in ms from the first phase of the bout.

    `done_ms` is the end of its last phase of work; `end_ms` has the relaxing or resetting after it too.
    """

    rep: int
    side: Side
    start_ms: int
    done_ms: int
    end_ms: int


@dataclass(frozen=True, slots=True)
class Bout:
    """One uninterrupted stretch of work: one set on one side. All times in ms.

    `gap_ms` is the rest, side change or changeover before the bout without its lead-in; `gap_kind` is None
    before the first bout. `stage` and `exercise` are indices into the plan, from 0; `set_number` counts from
    1. `side` is the side that begins where sides alternate. `low` and `high` are reps prescribed in the whole
    bout, both sides of an alternating one together; timed work counts as one. `windows` are its reps, see
    `rep_windows`. `other_load_kg` is the load of the other side where sides alternate, else None.
    """

    index: int
    stage: int
    exercise: int
    set_number: int
    side: Side
    gap_kind: SpanKind | None
    gap_ms: int
    lead_in_ms: int
    work: tuple[WorkSpan, ...]
    windows: tuple[RepWindow, ...]
    low: int
    high: int
    load_kg: Decimal | None = None
    other_load_kg: Decimal | None = None

    @property
    def alternating(self) -> bool:
        """Whether the side changes within the bout."""
        return any(span.side is not self.side for span in self.work)

    @property
    def work_ms(self) -> int | None:
        """Length of the work; None when open-ended."""
        return self.work[-1].end_ms

    @property
    def open_ended(self) -> bool:
        """Whether the bout ends by count and not by time."""
        return self.work_ms is None

    @property
    def before_ms(self) -> int:
        """Gap and lead-in before the work."""
        return self.gap_ms + self.lead_in_ms


def rep_windows(bout: Bout) -> tuple[RepWindow, ...]:
    """The reps of a timed bout in order; none of an open-ended one, whose reps come when they come."""
    return bout.windows


def windows_of(work: Iterable[WorkSpan]) -> tuple[RepWindow, ...]:
    """The reps that the spans of a bout make up; none where the work has no end."""
    windows: list[RepWindow] = []
    for (rep, side), spans in groupby(work, attrgetter("rep", "side")):
        parts = tuple(spans)
        end = parts[-1].end_ms
        if end is None:
            return ()
        done = max(part.end_ms or 0 for part in parts if part.phase not in BETWEEN_REPS)
        windows.append(RepWindow(rep, side, parts[0].start_ms, done, end))
    return tuple(windows)


@dataclass(frozen=True, slots=True)
class Span:
    """A row of the compiled timeline. Times in ms from `ready`, from 0 again after an open-ended bout."""

    start_ms: int
    end_ms: int | None
    kind: SpanKind
    bout: Bout
    side: Side
    rep: int | None = None
    phase: Phase | None = None
    mark_ms: int | None = None


@dataclass(frozen=True, slots=True)
class Timeline:
    """A plan compiled for one athlete: its bouts in order."""

    plan: Plan
    bouts: tuple[Bout, ...]

    def stage_of(self, bout: Bout) -> Stage:
        """The stage a bout belongs to."""
        return self.plan.stages[bout.stage]

    def exercise_of(self, bout: Bout) -> Exercise:
        """The exercise a bout belongs to."""
        return self.plan.stages[bout.stage].exercises[bout.exercise]

    def spans(self) -> Iterator[Span]:
        """Every span in order, without gaps or overlaps; spans of 0 ms are left out."""
        now = 0
        for bout in self.bouts:
            for kind, length in ((bout.gap_kind, bout.gap_ms), (SpanKind.LEAD_IN, bout.lead_in_ms)):
                if kind is not None and length:
                    yield Span(now, now + length, kind, bout, bout.side)
                    now += length
            for work in bout.work:
                end = None if work.end_ms is None else now + work.end_ms
                mark = None if work.mark_ms is None else now + work.mark_ms
                yield Span(
                    now + work.start_ms, end, SpanKind.WORK, bout, work.side, work.rep, work.phase, mark
                )
            now = 0 if bout.work_ms is None else now + bout.work_ms

    @property
    def timed_ms(self) -> int:
        """Length of everything that has a length: open-ended work counts nothing."""
        return sum(bout.before_ms + (bout.work_ms or 0) for bout in self.bouts)

    @property
    def open_ended(self) -> bool:
        """Whether some bout ends by count, so that the length of the session is not fixed."""
        return any(bout.open_ended for bout in self.bouts)
