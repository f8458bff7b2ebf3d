"""One try at a test, plain and light, for what rests on the tries of everybody."""

from datetime import date
from typing import NamedTuple

from app.domain.plan import Side


class Tried(NamedTuple):
    """A try: whose (a name that stands for somebody and says nothing), at which test, on which local day.

    `value` is in `unit`. Tries come in the order in which they were made.
    """

    whose: bytes
    test: str
    side: Side
    day: date
    attempt: int
    value: float
    unit: str
