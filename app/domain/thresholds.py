"""The numbers behind the cautions: one table, each with its source and its standing."""

from collections.abc import Mapping
from dataclasses import dataclass, fields, replace
from decimal import Decimal
from difflib import get_close_matches
from enum import StrEnum
from math import isfinite

from app.domain.errors import PacewrightError


class Standing(StrEnum):
    """How much weight a caution carries."""

    GUIDELINE = "guideline"
    COMMON_PRACTICE = "common practice"
    CHOICE = "choice"


@dataclass(frozen=True, slots=True)
class Basis:
    """What a caution rests on."""

    source: str
    standing: Standing


@dataclass(frozen=True, slots=True)
class Threshold:
    """A number at which a caution is worth saying, its unit and what it rests on."""

    value: float
    unit: str
    basis: Basis

    def __str__(self) -> str:
        return f"{self.value:g} {self.unit}"


def _threshold(value: float, unit: str, source: str, standing: Standing) -> Threshold:
    return Threshold(value, unit, Basis(source, standing))


@dataclass(frozen=True, slots=True)
class Thresholds:
    """The table of all thresholds. Times in the units people plan in, as each threshold says."""

    contacts_beginner: Threshold
    contacts_intermediate: Threshold
    contacts_advanced: Threshold
    explosive_rest_ratio: Threshold
    session_minutes: Threshold
    isometric_seconds: Threshold
    set_tension_seconds: Threshold
    side_difference_percent: Threshold
    long_hold_seconds: Threshold
    tension_before_power_seconds: Threshold


DEFAULT = Thresholds(
    contacts_beginner=_threshold(
        100,
        "contacts a session",
        "NSCA guideline for beginners, 80-100 contacts (as quoted in secondary texts)",
        Standing.GUIDELINE,
    ),
    contacts_intermediate=_threshold(
        120,
        "contacts a session",
        "Potach and Chu, Essentials of Strength Training and Conditioning, 100-120 contacts (from memory)",
        Standing.GUIDELINE,
    ),
    contacts_advanced=_threshold(
        140,
        "contacts a session",
        "Potach and Chu, Essentials of Strength Training and Conditioning, 120-140 contacts (from memory)",
        Standing.GUIDELINE,
    ),
    explosive_rest_ratio=_threshold(
        5,
        "times the work as rest",
        "Chu's text on plyometrics, work to rest 1:5 to 1:10",
        Standing.GUIDELINE,
    ),
    session_minutes=_threshold(90, "minutes", "no source, a choice of this program", Standing.CHOICE),
    isometric_seconds=_threshold(180, "s of holds", "no source, a choice of this program", Standing.CHOICE),
    set_tension_seconds=_threshold(
        180, "s under tension a set", "no source, a choice of this program", Standing.CHOICE
    ),
    side_difference_percent=_threshold(
        10,
        "% fewer reps on one side",
        "a choice of this program, after the 90 % limb symmetry asked for in return-to-sport batteries "
        "(Gokeler and others, PMC5315711)",
        Standing.CHOICE,
    ),
    long_hold_seconds=_threshold(30, "s a hold", "common practice, no source", Standing.COMMON_PRACTICE),
    tension_before_power_seconds=_threshold(
        200,
        "s under tension before power work",
        "a choice of this program, after the NSCA position statement of 1993: no plyometrics when fatigued",
        Standing.CHOICE,
    ),
)
"""The thresholds as they come with the program."""

STAGE_ORDER_BASIS = Basis(
    "common practice, from least to most demanding; compare Page 2006, J Bodyw Mov Ther 10:77-84 "
    "(static, dynamic, functional)",
    Standing.COMMON_PRACTICE,
)
STOP_SIGNS_BASIS = Basis(
    "common practice; the ACSM exercise guidelines list signs to stop at (from memory)",
    Standing.COMMON_PRACTICE,
)
EXPLOSIVE_HOLD_BASIS = Basis("common practice, no source", Standing.COMMON_PRACTICE)


class ThresholdError(PacewrightError):
    """Settings of thresholds that cannot be used. `problems` holds every key and what is wrong with it."""

    def __init__(self, problems: tuple[tuple[str, str], ...]) -> None:
        super().__init__("\n".join(f"{key}: {message}" for key, message in problems))
        self.problems = problems


def thresholds_from(settings: Mapping[str, object]) -> Thresholds:
    """The table with the numbers of a settings mapping in place of its own, named as the person's own choice.

    Raises ThresholdError with every problem when a name is unknown or a value is no number from 0 up.
    """
    names = tuple(field.name for field in fields(Thresholds))
    problems: list[tuple[str, str]] = []
    changed: dict[str, Threshold] = {}
    for key, value in settings.items():
        if key not in names:
            problems.append((key, _unknown(key, names)))
        elif not _usable(value):
            problems.append((key, f"{value!r} cannot be used; write a number from 0 up, such as {_own(key)}"))
        else:
            changed[key] = _set_to(_table_value(key), float(str(value)))
    if problems:
        raise ThresholdError(tuple(problems))
    return replace(DEFAULT, **changed)


def _set_to(threshold: Threshold, value: float) -> Threshold:
    basis = Basis(f"your own setting; the program's is {threshold}", Standing.CHOICE)
    return replace(threshold, value=value, basis=basis)


def _table_value(name: str) -> Threshold:
    threshold: Threshold = getattr(DEFAULT, name)
    return threshold


def _own(name: str) -> str:
    return f"{_table_value(name).value:g}"


def _usable(value: object) -> bool:
    if isinstance(value, bool) or not isinstance(value, int | float | Decimal):
        return False
    return isfinite(value) and value >= 0


def _unknown(key: str, names: tuple[str, ...]) -> str:
    near = get_close_matches(key, names, n=1)
    if near:
        return f"there is no such threshold; did you mean {near[0]}?"
    return f"there is no such threshold; there are {', '.join(names)}"
