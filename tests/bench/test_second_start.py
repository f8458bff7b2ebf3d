"""How long a second start takes before Python: at most 2 s asked, a tenth of that aimed at."""

import time
from pathlib import Path
from statistics import median

import pytest

from tests.checkouts import make_checkout

STARTS = 20


@pytest.mark.bench
def test_a_second_start_reaches_python_at_once(tmp_path: Path) -> None:
    checkout = make_checkout(tmp_path)
    checkout.start("check")
    taken = []
    for _ in range(STARTS):
        before = time.perf_counter()
        assert checkout.start("check").returncode == 0
        taken.append(time.perf_counter() - before)
    print(f"\nsecond start, the stand-in for Python included: {median(taken):.3f} s (median of {STARTS})")
