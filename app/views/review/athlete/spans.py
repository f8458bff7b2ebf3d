"""Which stretch of time is looked back on: the last weeks, all there is, or from one day to another."""

from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum

from app.views.translation import message


class Span(Enum):
    """A choice of stretch, with its words."""

    MONTH = message("last 4 weeks")
    QUARTER = message("last 12 weeks")
    YEAR = message("last year")
    ALL = message("all")
    DATES = message("two dates")


WEEKS = {Span.MONTH: 4, Span.QUARTER: 12, Span.YEAR: 53}
LONGEST = timedelta(days=366 * 30)
DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Stretch:
    """What is looked at; `first` and `last` count only for two dates, in whichever order."""

    span: Span = Span.QUARTER
    first: date | None = None
    last: date | None = None

    @property
    def needs_since(self) -> bool:
        """Whether the first day depends on what is known."""
        return self.span is Span.ALL

    def days(self, today: date, since: date | None) -> tuple[date, date]:
        """First and last day, both included. Whole weeks from Monday, the present one the last.

        `since` is the first day of which anything is known. Two dates reach thirty years at most.
        """
        sunday = today + timedelta(days=6 - today.weekday())
        if self.span is Span.DATES and self.first is not None and self.last is not None:
            first, last = sorted((self.first, self.last))
            return max(first, last - LONGEST), last
        if self.span is Span.ALL:
            first = min(since or today, today)
            return max(first - timedelta(days=first.weekday()), sunday - LONGEST), sunday
        weeks = WEEKS.get(self.span, WEEKS[Span.QUARTER])
        return sunday - timedelta(weeks=weeks) + DAY, sunday
