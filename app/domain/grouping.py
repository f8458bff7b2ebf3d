"""How a plan is done by a group: what its author wrote down of that, as far as anything."""

from dataclasses import dataclass
from enum import StrEnum

SHORTEST_WINDOW_MS = 10_000
LONGEST_WINDOW_MS = 600_000
SHORTEST_CHANGE_MS = 5_000
LONGEST_CHANGE_MS = 600_000
MOST_ROUNDS = 20
MOST_STATIONS = 12
MOST_MEMBERS = 40
DEFAULT_WINDOW_MS = 40_000
DEFAULT_CHANGE_MS = 20_000
DEFAULT_SWAP_MS = 10_000


class Form(StrEnum):
    """How a group goes through a plan."""

    TOGETHER = "together"
    STATIONS = "stations"
    WAVES = "waves"


@dataclass(frozen=True, slots=True)
class Grouping:
    """The form a group goes through the plan in, and the numbers of each form. Lengths in ms.

    `stations` are names of exercises of the plan, all of them when none is named; `teams` is how many teams
    go round, as many as stations when it is not said; `swap_ms` is the least time between two waves.
    """

    form: Form = Form.TOGETHER
    work_ms: int = DEFAULT_WINDOW_MS
    change_ms: int = DEFAULT_CHANGE_MS
    rounds: int = 1
    stations: tuple[str, ...] = ()
    teams: int | None = None
    swap_ms: int = DEFAULT_SWAP_MS
