"""What a figure is called and measured in, in the language of the screens: a test, its lift, the measure."""

from app.analysis.tests_kinds import NO_UNIT, FieldTest
from app.views.translation import tr

APART = ": "
"""Stands between a test, its lift and what is told of it."""
A_WEEK = " a week"


def name_words(name: str) -> str:
    """The name of a figure: `Single hop for distance: best`. A lift stands as it was given."""
    test, _, rest = name.partition(APART)
    whole = tr(name)
    if whole != name or not rest:
        return whole
    lift, _, measure = rest.rpartition(APART)
    return APART.join(filter(None, (tr(test), lift, tr(measure))))


def called_words(test: FieldTest) -> str:
    """What a test is called, with its lift in the words of whoever entered it."""
    return APART.join(filter(None, (tr(test.plain_name), test.lift)))


def unit_words(unit: str) -> str:
    """A unit, also by the week; empty for what has none."""
    plain, weekly, _ = unit.partition(A_WEEK)
    said = "" if plain == NO_UNIT else tr(plain)
    return tr("{unit} a week").format(unit=said).strip() if weekly else said


def part_words(of: str) -> str:
    """The stage, exercise, side or lift that a figure is of; empty where it is of none."""
    kind, _, name = of.partition(APART)
    return tr(name) if kind == "side" else name
