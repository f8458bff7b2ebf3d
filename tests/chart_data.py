"""Charts for tests: weeks of adherence, two sides, loads, pain."""

import random

from app.views.charts.data import ChartData, Form, Ink, Mark, Panel, Series, Slope, Zone

TICKS = ((0.0, "0\u202f%"), (0.5, "50\u202f%"), (1.0, "100\u202f%"))


def weeks(*shares: float | None, window: int = 60) -> ChartData:
    """Shares by week with bounds; None is a gap."""
    words = tuple("–" if share is None else f"{share:.0%}" for share in shares)
    low = tuple(None if share is None else max(share - 0.1, 0.0) for share in shares)
    high = tuple(None if share is None else min(share + 0.1, 1.0) for share in shares)
    labels = tuple(str(36 + number) for number in range(len(shares)))
    spoken = tuple(f"Week {label} · {word}" for label, word in zip(labels, words, strict=True))
    series = Series("Reps done", shares, words, low=low, high=high)
    return ChartData(
        "Reps by week",
        "week",
        labels,
        spoken,
        (Panel((series,), TICKS),),
        window=window,
        gap="off",
        empty="No session in this time.",
        aside="% with 95 % interval",
    )


def sides(
    left: tuple[float | None, ...], right: tuple[float | None, ...], at: tuple[float, ...] = ()
) -> ChartData:
    """Two lines, one a side, with a slope and a zone."""
    labels = tuple(f"{place} Nov" for place in range(len(left)))
    words = [tuple("–" if value is None else f"{value:g} s" for value in side) for side in (left, right)]
    both = (
        Series("left", left, words[0], Form.LINE, Ink.LEFT, Mark.SQUARE, ended=True),
        Series("right", right, words[1], Form.LINE, Ink.RIGHT, Mark.CIRCLE, ended=True),
    )
    panel = Panel(
        both,
        ((0.0, "0"), (20.0, "20"), (40.0, "40"), (60.0, "60\u202fs")),
        zones=(Zone(24.0, 30.0, "within error"),),
        slopes=(Slope((0.0, float(len(left) - 1)), (18.0, 30.0)),),
    )
    spoken = tuple(f"{a} · left {b} · right {c}" for a, b, c in zip(labels, *words, strict=True))
    return ChartData("Hold", "day", labels, spoken, (panel,), at=at, empty="Not measured.")


def loads(count: int, seed: int = 5) -> ChartData:
    """Bars below, diamonds above; every seventh unknown."""
    chance = random.Random(seed)
    rated = tuple(None if place % 7 == 3 else float(chance.randint(2, 9)) for place in range(count))
    bars = tuple(None if value is None else value * chance.uniform(30, 60) for value in rated)
    dashes = tuple(place for place, value in enumerate(bars) if value is None)
    words = tuple("–" if value is None else f"{value:.0f}" for value in bars)
    labels = tuple(str(place) for place in range(count))
    top = Panel(
        (Series("RPE", rated, words, ink=Ink.PLAIN, mark=Mark.DIAMOND),), ((0.0, "0"), (10.0, "10")), share=2
    )
    low = Panel(
        (Series("Load", bars, words, Form.BARS, unknown=dashes),), ((0.0, "0"), (600.0, "600 AU")), share=3
    )
    return ChartData("Load", "week", labels, tuple(f"Place {label}" for label in labels), (top, low))
