"""How far a rep may be from its planned length and still have kept its tempo."""

from dataclasses import dataclass

from app.domain.checks import in_range

LEAST_PERCENT, MOST_PERCENT = 1, 50
LEAST_MS, MOST_MS = 0, 2_000


@dataclass(frozen=True, slots=True)
class Tolerance:
    """How far a rep may be from its planned length: the larger of `percent` of it and `ms`.

    There is no published standard; this is a setting, by default 10 % or 250 ms. Raises ValueError outside of
    1 to 50 percent and 0 to 2000 ms.
    """

    percent: int = 10
    ms: int = 250

    def __post_init__(self) -> None:
        in_range("percent", self.percent, LEAST_PERCENT, MOST_PERCENT)
        in_range("ms", self.ms, LEAST_MS, MOST_MS)

    def of(self, planned_ms: float) -> float:
        """Milliseconds that are allowed for a rep of a planned length in ms."""
        return max(self.percent * planned_ms / 100, float(self.ms))


DEFAULT_TOLERANCE = Tolerance()
