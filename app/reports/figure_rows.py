"""A figure as one row of a table in plain text."""

from app.analysis.figure import Figure

HEAD = ("figure", "of", "value", "unit", "95 % interval", "n", "why it is unknown, and what of it is")
UNKNOWN = "-"
PLACES = 4


def figure_row(figure: Figure) -> tuple[str, ...]:
    """Name, what it is of, value, unit, interval, n, and the reason or what is not known; see HEAD."""
    bounds = ""
    if figure.low is not None and figure.high is not None:
        bounds = f"{number(figure.low)} to {number(figure.high)}"
    why = [figure.reason] if figure.reason else []
    why += [f"unknown: {', '.join(figure.unknown)}"] if figure.unknown else []
    return figure.name, figure.of, number(figure.value), figure.unit, bounds, str(figure.n), "; ".join(why)


def number(value: float | None) -> str:
    """A number with four significant figures, whole ones in full; a dash where it is unknown."""
    if value is None:
        return UNKNOWN
    if value == int(value):
        return str(int(value))
    return f"{value:.0f}" if abs(value) >= 10**PLACES else f"{value:.{PLACES}g}"
