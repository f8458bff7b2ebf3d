"""Tries at a test as they are typed: a number, or the numbers a try is made of; and what is wrong."""

import re
from dataclasses import dataclass
from decimal import Decimal

from app.analysis.balance import MOST_ERRORS
from app.analysis.tests_kinds import NO_UNIT, FieldTest, Part
from app.views.review.entry.telling import Said, told_of_parts
from app.views.review.figure_names import unit_words
from app.views.translation import message, tr

FIGURES = 4
NO_NUMBER = message("“{typed}” is no number. Enter one from {least} to {most}, such as {such}.")
TWO_WAYS = message("{typed} can be read as {one} and as {other}. Enter one of these.")
NOTHING_COUNTED = message("Nothing was counted. Leave the try empty.")
OUT_OF_BOUNDS = message("{typed} lies outside of this test. Enter a number from {least} to {most}.")
NO_ENTRY = message("Enter at least one try.")
PARTS_WANTED = message("Enter {parts}, in this order with a space between them.")
PARTS_OR_ONE = message("Enter {parts}, in this order with a space between them, or the result alone.")
WHOLE_WANTED = message("{typed} is counted in whole numbers.")
NOT_HELD = re.compile(r"[-–—]")
NOT_HELD_NOTE = message("A dash is a stance that could not be held: ten errors.")
NUMBER = re.compile(r"[+-]?(?:\d+(?:[.,]\d{0,6})?|[.,]\d{1,6})")
THOUSANDS = re.compile(r"\+?[1-9]\d{0,2}[.,]\d{3}")
BETWEEN = re.compile(r"\s*[;x×*]\s*|\s+")


@dataclass(frozen=True, slots=True)
class Written:
    """A number as the record keeps it: under which key, as decimals, in which unit."""

    key: str
    value: str
    unit: str


@dataclass(frozen=True, slots=True)
class Try:
    """One try: what is `written` of it, or the `problem`; exactly one is there.

    `value` is what it comes to as decimals in the unit of its test, None where it comes to none. `aside` says
    more of it, `frames` which frames of a video it was read from, `remark` what is to be noted beside it.
    """

    written: tuple[Written, ...] = ()
    value: str | None = None
    problem: Said | None = None
    aside: tuple[Said, ...] = ()
    frames: str = ""
    remark: str = ""


@dataclass(frozen=True, slots=True)
class _Bounds:
    """From where to where a number may lie, in its unit."""

    least: float
    most: float
    unit: str
    whole: bool = False

    def hold(self, number: Decimal) -> bool:
        """Whether a number lies within."""
        return Decimal(str(self.least)) <= number <= Decimal(str(self.most))

    @property
    def words(self) -> dict[str, str]:
        """The bounds and an example in words."""
        unit = unit_words(self.unit)
        middle = Decimal(str(round((self.least + self.most) / 2, 1)))
        such = f"{round(middle) if self.whole else middle.normalize():f}"
        return {"least": f"{self.least:g}", "most": f"{self.most:g} {unit}".strip(), "such": such}


def typed_try(test: FieldTest, typed: str) -> Try:
    """A try typed as a number with a point or a comma, or as the numbers that it is made of, in their order.

    Of a stance that could not be held a dash stands for its errors.
    """
    pieces = [piece for piece in BETWEEN.split(typed.strip()) if piece]
    if test.parts and len(pieces) == len(test.parts):
        return parts_try(test, pieces)
    if test.parts and (not test.direct or len(pieces) > 1):
        told = PARTS_OR_ONE if test.direct else PARTS_WANTED
        return Try(problem=Said(told, {"parts": parts_words(test)}))
    found = typed_value(test, typed)
    if isinstance(found, Said):
        return Try(problem=found)
    return Try((Written(test.key, found, test.unit),), found)


def parts_try(test: FieldTest, pieces: list[str]) -> Try:
    """A try of its parts, each as typed."""
    written, remarks = [], []
    for part, piece in zip(test.parts, pieces, strict=True):
        held = not (part.unit == "errors" and NOT_HELD.fullmatch(piece))
        found = typed_part(part, piece if held else str(MOST_ERRORS))
        if isinstance(found, Said):
            return Try(problem=found)
        remarks += [] if held else [part.name]
        written.append(Written(part.key, found, part.unit))
    values = [float(each.value) for each in written]
    value = test.value_of(values)
    if value is None and not any(values):
        return Try(problem=Said(NOTHING_COUNTED))
    shown = None if value is None else as_decimals(value)
    return Try(tuple(written), shown, None, told_of_parts(test, values), remark=", ".join(remarks))


def typed_value(test: FieldTest, typed: str) -> str | Said:
    """A result by itself as decimals, or what is wrong with it."""
    return _number(typed, _Bounds(test.least, test.most, test.unit))


def typed_part(part: Part, typed: str) -> str | Said:
    """One of the numbers of a try as decimals, or what is wrong with it."""
    found = _number(typed, _Bounds(part.least, part.most, part.unit, part.whole))
    if isinstance(found, str) and part.whole and Decimal(found) != int(Decimal(found)):
        return Said(WHOLE_WANTED, {"typed": typed.strip()})
    return found


def parts_words(test: FieldTest) -> str:
    """What a try is made of: `contact in ms, flight in ms`."""
    told = (
        tr("{part} in {unit}").format(part=tr(part.name), unit=unit_words(part.unit))
        if part.unit not in (NO_UNIT, part.name, "errors", "jumps")
        else tr(part.name)
        for part in test.parts
    )
    return ", ".join(told)


def as_decimals(value: float) -> str:
    """A worked-out value with as many figures as its inputs can carry."""
    return f"{Decimal(f'{value:.{FIGURES}g}'):f}"


def _number(typed: str, bounds: _Bounds) -> str | Said:
    text = typed.strip()
    told = {"typed": text, **bounds.words}
    if not NUMBER.fullmatch(text):
        return Said(NO_NUMBER, told)
    number = Decimal(text.replace(",", "."))
    if THOUSANDS.fullmatch(text) and bounds.hold(number) and bounds.hold(number * 1000):
        # Four decimals, because with three the number could be read in two ways again.
        one = f"{number:.4f}" if number % Decimal("0.01") else f"{number.normalize():f}"
        return Said(TWO_WAYS, {"typed": text, "one": one, "other": f"{number * 1000:.0f}"})
    if not bounds.hold(number):
        return Said(OUT_OF_BOUNDS, told)
    return f"{abs(number) if number == 0 else number:f}"
