"""The German of the reports is complete: every text that is said has one, with the same places in it."""

import ast
import re
from pathlib import Path

import pytest

from app.analysis.tests_catalog import CATALOGUE
from app.reports.report_german import FIGURES, GERMAN, SENTENCES, TESTS, WORDS
from app.reports.report_sections import CAUTIONS, EXPLAINED

REPORTS = Path(__file__).parents[3] / "app" / "reports"
MODULES = sorted({*REPORTS.glob("report_*.py"), REPORTS / "sheet_content.py"})
MORE = {"{n} more row is among the figures.", "{n} more rows are among the figures."}
SAID_ELSEWHERE = MORE | {
    *CAUTIONS,
    "left",
    "right",
    "both",
    "unknown",
    "within error",
    "beyond error",
    "errors",
    "deg",
}


def said() -> set[str]:
    """The texts that `say` and `say.counted` are called with, and those given to `map(say, …)`."""
    found: set[str] = set()
    for module in MODULES:
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) in {"say", "say.counted", "self"}:
                found |= {
                    part.value
                    for argument in node.args
                    for part in ast.walk(argument)
                    if isinstance(part, ast.Constant) and isinstance(part.value, str)
                }
    return {text for text in found if not text.startswith((": ", "_"))} - {
        " ",
        "side behind",
        "against its error",
    }


@pytest.mark.parametrize("text", sorted({*said(), *SAID_ELSEWHERE}))
def test_what_is_said_has_its_german(text: str) -> None:
    assert GERMAN[text]


@pytest.mark.parametrize("rule", EXPLAINED, ids=lambda rule: rule.name)
def test_what_is_explained_is_explained_in_german(rule: object) -> None:
    assert GERMAN[rule.name]  # type: ignore[attr-defined]
    assert GERMAN[rule.formula]  # type: ignore[attr-defined]


def test_every_test_of_the_catalogue_has_a_german_name() -> None:
    assert set(TESTS) == {test.name for test in CATALOGUE}


@pytest.mark.parametrize("text", sorted(GERMAN))
def test_both_languages_have_the_same_places_for_values(text: str) -> None:
    assert sorted(re.findall(r"{\w+}", text)) == sorted(re.findall(r"{\w+}", GERMAN[text]))


def test_no_text_stands_in_two_lists() -> None:
    assert len(GERMAN) == len(SENTENCES) + len(WORDS) + len(FIGURES) + len(TESTS)
