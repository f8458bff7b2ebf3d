"""What the analysis says of its figures, reasons and tests is among the messages of the screens."""

import importlib
import pkgutil
from collections.abc import Iterator
from dataclasses import replace
from datetime import date

import app.analysis
from app.analysis.athlete_figures import athlete_figures
from app.analysis.attention import BEHIND
from app.analysis.balance import landing_band
from app.analysis.figure import Figure, Rule
from app.analysis.figures_adherence import WILSON
from app.analysis.figures_of_one_test import PLISKY
from app.analysis.figures_tests import BISHOP, GOKELER, MANN, SEN, TRIES, figures_of_tests
from app.analysis.figures_trust import ALTMAN, FLEISS, HOPKINS
from app.analysis.progression import Reached
from app.analysis.reason_figures import PRACTICE, THOMEE
from app.analysis.tests_catalog import CATALOGUE
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord
from app.views.review.borrowed import BORROWED
from app.views.review.borrowed_tests import BORROWED_OF_TESTS
from tests.full_record import full

CITED = {SEN, MANN, GOKELER, BISHOP, TRIES, HOPKINS, ALTMAN, FLEISS, PLISKY, THOMEE, PRACTICE, WILSON}
"""Sources; they stand as they are cited."""
INTERNAL = {"; side: "}
OF_REASONS = {
    *("after", "before", "days", "days looked back on", "error", "limit", "missed", "second", "test", "unit"),
    *("session RPE", "minutes"),
}
"""What goes into figures of reasons and of a run, which no athlete's figures show."""


def everything() -> Iterator[tuple[str, object]]:
    """Everything that the modules of the analysis have by a name, what they have by key among it."""
    for module in pkgutil.iter_modules(app.analysis.__path__):
        for name, value in vars(importlib.import_module(f"app.analysis.{module.name}")).items():
            yield name, value
            if isinstance(value, dict) and name.isupper():
                for held in value.values():
                    yield from ((name, part) for part in (held if isinstance(held, tuple) else (held,)))


def said() -> Iterator[str]:
    """Every name, formula, caution and sentence of the analysis, and what its tests are called."""
    found = list(everything())
    cited = {rule.source for _, rule in found if isinstance(rule, Rule)}
    for name, value in found:
        if isinstance(value, Rule):
            yield from filter(None, (value.name, value.formula, value.caution))
        elif isinstance(value, str) and " " in value and name.isupper() and name[0] != "_":
            yield from () if value in cited | CITED | INTERNAL else (value,)
    for test in CATALOGUE:
        yield from (test.name, test.standing)
    yield from BEHIND.values()
    yield from (each.value for each in Reached)


def shown_everywhere() -> Iterator[str]:
    """Every word of an athlete's figures."""
    for figure in athlete_figures(full(), with_course=True):
        yield from shown(figure)


def looked_at() -> Iterator[AthleteRecord]:
    """A full record with each reference side and with none, one with nothing known of a test's error."""
    yield from (replace(full(), reference=side) for side in (None, Side.LEFT, Side.RIGHT))
    yield replace(full(), tries=())


def said_of_tests() -> Iterator[str]:
    """Everything in the figures of tests that a screen shows in words, and what a try is made of."""
    for looked in looked_at():
        for figure in figures_of_tests(looked):
            yield from shown(figure)
    for test in CATALOGUE:
        for part in test.parts:
            yield from (part.name, part.unit)
        yield from (test.name, test.standing, test.unit)
    yield from map(landing_band, (4, 5, 6, 7))
    yield from ("both", "yes", "no")


def shown(figure: Figure) -> Iterator[str]:
    """The words of a figure but for its numbers."""
    pieces = figure.name.split(": ")
    yield from (figure.name,) if figure.name in BORROWED_OF_TESTS else (pieces[0], pieces[-1])
    yield from (figure.formula, figure.source, figure.unit.removesuffix(" a week"), *figure.unknown)
    yield from filter(None, (figure.caution, figure.reason))
    for label, value in figure.inputs:
        yield label
        yield from (value.replace("_", " "),) if isinstance(value, str) else ()


ALIKE = {"%", "1", "N", "S", "Var", "Z", "p", "cm", "kg", "m/s", "ms", "s", "ICC(1,1)", "ICC(2,1)"} | {
    SEN,
    ALTMAN,
    FLEISS,
    *(f"{name}, kg" for name in ("Brzycki", "Lombardi", "Mayhew", "O'Conner", "Wathen")),
}
"""Units, names and plain citations, which are the same in every language."""


def is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True


def test_everything_the_analysis_says_is_a_message() -> None:
    assert set(said()) - {*BORROWED, *BORROWED_OF_TESTS} == set()


def test_everything_that_figures_of_tests_say_is_a_message() -> None:
    told = {text for text in said_of_tests() if not is_day(text)}
    assert told - {*BORROWED, *BORROWED_OF_TESTS} == ALIKE


def test_nothing_of_a_test_is_named_that_no_figure_says() -> None:
    assert set(BORROWED_OF_TESTS) - set(said_of_tests()) - set(said()) == set()


def test_nothing_is_named_that_it_does_not_say() -> None:
    named = {*said(), *said_of_tests(), *shown_everywhere()}
    assert set(BORROWED) - named == OF_REASONS
