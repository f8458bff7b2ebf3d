"""How long plan files take to read, sound and hostile. Aims: 300 ms for the largest, else 1 s and 200 MB."""

import tracemalloc
from collections.abc import Callable, Iterator
from pathlib import Path
from statistics import median
from time import perf_counter

import pytest

from app.domain.compiler import compile_timeline
from app.domain.errors import FileProblemsError
from app.planfile.reader import parse_plan, read_plan
from app.planfile.source import LARGEST_BYTES
from tests.hostile import HOSTILE
from tests.mutators import byte_mutants, structure_mutants

ROUNDS = 7
DEMO = Path(__file__).parents[2] / "demo_data"
SOURCES = tuple((DEMO / name).read_bytes() for name in ("landing_control.toml", "shoulder_rotators.toml"))

HEAD = 'format = 1\ntitle = "Bench"\nlead_in = 3\n'
EXERCISE = """
  [[stage.exercise]]
  name = "Exercise {number}"
  sets = {sets}
  reps = 10
  tempo = "0.4-0.3-0.4-0.3"
  rest = 5
"""


def many_spans() -> str:
    """Sixty exercises that come to twelve thousand spans."""
    return HEAD + '[[stage]]\nname = "All"\nkind = "other"\n' + "".join(map(exercise, range(60)))


def exercise(number: int) -> str:
    return EXERCISE.format(number=number, sets=5)


def long_texts() -> str:
    """The same with as much text as 1 MiB holds."""
    texts = ", ".join(f'"{"knee over toe " * 35}"' for _ in range(11))
    lists = "".join(f"  {key} = [{texts}]\n" for key in ("cues", "faults", "stop_if"))
    return filled(many_spans().replace("  rest = 5\n", "  rest = 5\n" + lists))


def filled(text: str) -> str:
    """A text made up to 1 MiB with remarks."""
    remark = "# " + "o" * 60 + "\n"
    return text + remark * ((LARGEST_BYTES - len(text.encode())) // len(remark))


def every_line_wrong() -> str:
    """1 MiB with more wrong in it than is told."""
    return filled(
        many_spans().replace("reps = 10", 'reps = "ten"\n  repz = 1\n  sides = "eech"\n  hold = 1e9')
    )


@pytest.mark.bench
@pytest.mark.parametrize("make", [many_spans, long_texts, every_line_wrong], ids=lambda make: make.__name__)
def test_reading_a_large_plan(make: Callable[[], str], tmp_path: Path) -> None:
    path = tmp_path / "plan.toml"
    path.write_text(make(), encoding="utf-8")
    times = []
    for _ in range(ROUNDS):
        began = perf_counter()
        try:
            found = f"{sum(1 for _ in compile_timeline(read_plan(path)).spans())} spans, compiling included"
        except FileProblemsError as error:
            found = f"{len(error.problems)} problems"
        times.append(perf_counter() - began)
    print(f"\n{make.__name__}: {path.stat().st_size} bytes, {found}: {told(times)}")


@pytest.mark.bench
@pytest.mark.parametrize("name", sorted(HOSTILE))
def test_reading_a_hostile_file(name: str, tmp_path: Path) -> None:
    path = tmp_path / "plan.toml"
    path.write_bytes(HOSTILE[name]())
    began = perf_counter()
    with pytest.raises(FileProblemsError) as caught:
        read_plan(path)
    took = perf_counter() - began
    print(f"\n{name}: {1000 * took:.1f} ms, {peak_mb(path):.0f} MB: {str(caught.value)[-80:]}")


@pytest.mark.bench
def test_reading_ten_thousand_damaged_plans(tmp_path: Path) -> None:
    times, sound = [], 0
    for data in damaged(10_000):
        began = perf_counter()
        try:
            parse_plan(data.decode("utf-8", "replace"), "plan.toml", tmp_path)
            sound += 1
        except FileProblemsError:
            pass
        times.append(perf_counter() - began)
    print(f"\n{len(times)} damaged plans, {sound} still sound: {told(times)}")


def damaged(count: int) -> Iterator[bytes]:
    for number, source in enumerate(SOURCES):
        yield from byte_mutants(source, SOURCES, count // 4, seed=number)
        for text in structure_mutants(source.decode("utf-8"), count // 4, seed=number):
            yield text.encode()


def told(times: list[float]) -> str:
    return f"{1000 * median(times):.1f} ms (worst {1000 * max(times):.1f})"


def peak_mb(path: Path) -> float:
    """The most memory that reading a hostile file has needed at once, in MB."""
    tracemalloc.start()
    try:
        with pytest.raises(FileProblemsError):
            read_plan(path)
        return tracemalloc.get_traced_memory()[1] / 1e6
    finally:
        tracemalloc.stop()
