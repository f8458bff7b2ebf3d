"""Finds single figures among all of an athlete, by name and by what they are of."""

from collections.abc import Iterable
from datetime import date, timedelta

from app.analysis.adherence_parts import monday_of
from app.analysis.figure import Figure
from app.domain.reviewed import AthleteRecord

WEEK = timedelta(days=7)


class Found:
    """Figures at hand: `record` is what they were made of, `today` bounds nothing."""

    def __init__(self, record: AthleteRecord, figures: Iterable[Figure]) -> None:
        self.record = record
        self._figures = {(figure.name, figure.of): figure for figure in figures}

    def one(self, name: str, of: str = "") -> Figure | None:
        """The figure of a name, of the whole time or of a part of it; None where there is none."""
        return self._figures.get((name, of))

    def value(self, name: str, of: str = "") -> float | None:
        """Its value; None where it is unknown or not there."""
        figure = self.one(name, of)
        return None if figure is None else figure.value

    def parts(self, name: str, begin: str) -> tuple[Figure, ...]:
        """The figures of a name whose part begins in a way, such as `stage: `, in their order."""
        return tuple(
            figure for (own, of), figure in self._figures.items() if own == name and of.startswith(begin)
        )

    def of_days(self, name: str) -> tuple[Figure, ...]:
        """The figures of a name, whatever they are of, in their order."""
        return tuple(figure for (own, _), figure in self._figures.items() if own == name)

    @property
    def mondays(self) -> tuple[date, ...]:
        """The Monday of each week that the time touches."""
        first, last = monday_of(self.record.first), monday_of(self.record.last)
        return tuple(first + number * WEEK for number in range((last - first).days // 7 + 1))


def given(figure: Figure, label: str) -> float | str | None:
    """A number that went into a figure; None where it is unknown or did not."""
    return dict(figure.inputs).get(label)
