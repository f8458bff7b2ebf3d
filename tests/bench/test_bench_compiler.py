"""How long a six-hour plan of twelve thousand spans takes to compile. Aim: at most 50 ms."""

import gc
from collections.abc import Callable
from statistics import median
from time import perf_counter

import pytest

from app.domain.compiler import compile_timeline
from app.domain.plan import Exercise, Plan, Sides
from tests.planned import plan_of, signals, tempo_reps

ROUNDS = 15


def few_long_sets() -> Plan:
    """Fifteen exercises of 200 reps of four phases: nothing in it is alike."""
    exercises = (Exercise(f"Long {number}", tempo_reps(200, "1.8-1.6-2.0-1.7")) for number in range(15))
    return plan_of(*exercises, changeover_ms=20_000)


def many_short_sets() -> Plan:
    """Sixty exercises, twenty sets each: the sets of an exercise are alike."""
    exercises = (
        Exercise(f"Short {number}", signals(10, 1.3), sets=20, rest_ms=5_000, sides=Sides.BOTH)
        for number in range(60)
    )
    return plan_of(*exercises, changeover_ms=5_000)


@pytest.mark.bench
@pytest.mark.parametrize("make", [few_long_sets, many_short_sets], ids=lambda make: make.__name__)
def test_compiling_twelve_thousand_spans(make: Callable[[], Plan]) -> None:
    plan = make()
    spans = list(compile_timeline(plan).spans())
    assert len(spans) >= 12_000
    compiling, laying = [], []
    gc.collect()
    for _ in range(ROUNDS):
        began = perf_counter()
        timeline = compile_timeline(plan)
        compiled = perf_counter()
        laid = sum(1 for _ in timeline.spans())
        laying.append(perf_counter() - compiled)
        compiling.append(compiled - began)
        assert laid == len(spans)
    hours = timeline.timed_ms / 3_600_000
    print(
        f"\n{make.__name__}: {len(spans)} spans, {hours:.1f} h: compile {1000 * median(compiling):.1f} ms "
        f"(worst {1000 * max(compiling):.1f}), walk all spans {1000 * median(laying):.1f} ms"
    )
