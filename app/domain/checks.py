"""What an answer may be: bounds of numbers, lengths of texts, moments that say in which zone they are."""

import re
from datetime import datetime
from decimal import Decimal, InvalidOperation

LONGEST_TEXT = 4_000
HEAVIEST_KG = 1_000
_LOAD = re.compile(r"[0-9]{1,4}(\.[0-9]{1,3})?")
_PLAIN = {"\n", "\t"}


def in_range(name: str, value: object, least: int, most: int) -> None:
    """Raise ValueError unless a value is unknown or a whole number within bounds."""
    whole = isinstance(value, int) and not isinstance(value, bool)
    if value is not None and not (whole and least <= value <= most):  # type: ignore[operator]
        raise ValueError(f"{name} is a whole number from {least} to {most}, not {value!r}")


def short_text(name: str, value: object, *, wanted: bool = False) -> None:
    """Raise ValueError unless a value is a text of at most 4 000 characters, or unknown and not `wanted`."""
    if value is None and not wanted:
        return
    if not isinstance(value, str) or len(value) > LONGEST_TEXT or (wanted and not value.strip()):
        raise ValueError(f"{name} is a text of at most {LONGEST_TEXT} characters")
    if any(ord(letter) < 32 and letter not in _PLAIN for letter in value):
        raise ValueError(f"{name} has a character that cannot be shown")


def moment(name: str, value: object) -> None:
    """Raise ValueError unless a value is a moment that says in which time zone it is."""
    if not isinstance(value, datetime) or value.utcoffset() is None:
        raise ValueError(f"{name} is a moment with its time zone, not {value!r}")


def decimal_text(name: str, value: object) -> None:
    """Raise ValueError unless a value is a finite number written in decimals, such as `31.5`."""
    try:
        finite = isinstance(value, str) and Decimal(value).is_finite()
    except InvalidOperation:
        finite = False
    if not finite:
        raise ValueError(f"{name} is a number written in decimals, not {value!r}")


def load_text(name: str, value: object) -> None:
    """Raise ValueError unless a value is unknown or a load in kg, 0 to 1000 in at most three decimals."""
    if value is None:
        return
    if not isinstance(value, str) or not _LOAD.fullmatch(value) or Decimal(value) > HEAVIEST_KG:
        raise ValueError(f"{name} is a load from 0 to {HEAVIEST_KG} kg such as 12.5, not {value!r}")
