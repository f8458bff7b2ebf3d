"""What the analysis says of its figures, reasons and tests is among the messages of the screens."""

import importlib
import pkgutil
from collections.abc import Iterator

import app.analysis
from app.analysis.attention import BEHIND
from app.analysis.figure import Rule
from app.analysis.progression import Reached
from app.analysis.tests_catalog import CATALOGUE
from app.views.review.borrowed import BORROWED

CITED = {"WILSON", "HOPKINS", "SEN", "MANN", "GOKELER", "BISHOP", "TRIES"}
"""Sources; they stand as they are cited."""


def said() -> Iterator[str]:
    """Every name, formula, caution and sentence of the analysis, and what its tests are called."""
    for module in pkgutil.iter_modules(app.analysis.__path__):
        for name, value in vars(importlib.import_module(f"app.analysis.{module.name}")).items():
            if isinstance(value, Rule):
                yield from filter(None, (value.name, value.formula, value.caution))
            elif isinstance(value, str) and " " in value and name.isupper() and name[0] != "_":
                yield from () if name in CITED else (value,)
    for test in CATALOGUE:
        yield from (test.name, test.standing)
    yield from BEHIND.values()
    yield from (each.value for each in Reached)


def test_everything_the_analysis_says_is_a_message() -> None:
    assert set(said()) - set(BORROWED) == set()


def test_nothing_is_named_that_it_does_not_say() -> None:
    assert set(BORROWED) - set(said()) == {"extra reps", "due", "days"}
