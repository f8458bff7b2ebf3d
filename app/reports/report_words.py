"""How a report writes words, numbers and days in a language; the English text is a sentence's name."""

from datetime import date, timedelta

from app.analysis.tests_kinds import NO_UNIT, FieldTest
from app.reports.report_german import GERMAN

LANGUAGES = ("en", "de")
DASH = "–"
THIN = "\u202f"
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


class Words:
    """The words of one language, `en` or `de`. Raises KeyError for an English text it has no German for."""

    def __init__(self, language: str) -> None:
        self.language = language

    def __call__(self, text: str, /, **values: object) -> str:
        """A text in the language, with its values put in."""
        told = text if self.language == "en" else GERMAN[text]
        return told.format(**values) if values else told

    @property
    def point(self) -> str:
        """What stands before the decimals of a number."""
        return "," if self.language == "de" else "."

    def known(self, text: str) -> str:
        """A text that is said in the language where it is known there, and as it stands where not."""
        return text if self.language == "en" else GERMAN.get(text, text)

    def called(self, test: FieldTest) -> str:
        """What a test is called, with its lift in the words of whoever entered it."""
        plain = self(test.plain_name)
        return f"{plain}: {test.lift}" if test.lift else plain

    def called_in_unit(self, test: FieldTest) -> str:
        """What a test is called, and its unit where it has one."""
        return self.called(test) if test.unit == NO_UNIT else f"{self.called(test)}, {self.known(test.unit)}"

    def counted(self, number: int, one: str, many: str) -> str:
        """One text for one, another for any other number, `{n}` in it."""
        return self(one if number == 1 else many, n=self.whole(number))

    def whole(self, value: float | None) -> str:
        """A number without decimals, thousands set apart; a dash where it is unknown."""
        return DASH if value is None else f"{value:,.0f}".replace(",", THIN)

    def number(self, value: float | None) -> str:
        """A number with as many decimals as say something; a dash where it is unknown."""
        if value is None:
            return DASH
        size = abs(value)
        places = 0 if size >= 100 or value == round(value) else 1 if size >= 10 else 2
        told = f"{value:,.{places}f}".replace(",", THIN)
        return told.replace(".", self.point)

    def percent(self, share: float | None) -> str:
        """A share 0-1 in whole percent; 0 and 100 stand only for none and all; a dash where unknown."""
        return DASH if share is None else f"{_percent(share)}{THIN}%"

    def bounds(self, low: float | None, high: float | None) -> str:
        """Two shares as an interval; a dash where there is none."""
        if low is None or high is None:
            return DASH
        return self("{low} to {high}", low=str(_percent(low)), high=self.percent(high))

    def day(self, value: date) -> str:
        """A day with its year: `21 Nov 2026`, `21.11.2026`."""
        if self.language == "de":
            return f"{value.day}.{value.month}.{value.year}"
        return f"{value.day} {_MONTHS[value.month - 1]} {value.year}"

    def short_day(self, value: date) -> str:
        """A day without its year: `21 Nov`, `21.11.`."""
        if self.language == "de":
            return f"{value.day}.{value.month}."
        return f"{value.day} {_MONTHS[value.month - 1]}"

    def span(self, first: date, last: date) -> str:
        """From one day to another."""
        return self.day(first) if first == last else f"{self.day(first)} {DASH} {self.day(last)}"

    def week(self, monday: date) -> str:
        """A week by its first and last day: `16 Nov – 22 Nov 2026`."""
        return f"{self.short_day(monday)} {DASH} {self.day(monday + timedelta(days=6))}"


def _percent(share: float) -> int:
    nearest = round(share * 100)
    return min(max(nearest, 1), 99) if 0.0 < share < 1.0 else nearest
