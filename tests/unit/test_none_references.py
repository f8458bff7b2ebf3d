"""The Qt binding keeps the references to None: losing them ends the process within seconds of painting.

From Python 3.12 on None is immortal and the count does not move. On 3.11 it is counted, and binding 6.12.0
loses one on each call that returns nothing.
"""

import sys

from PySide6.QtCore import QObject

CALLS = 1_000
STRAY = 50


def test_a_call_that_returns_nothing_costs_no_reference_to_none() -> None:
    thing = QObject()
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        thing.setObjectName("none")
    assert abs(sys.getrefcount(None) - before) < STRAY
