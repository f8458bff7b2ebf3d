"""Figures of how far a test can be trusted, by the record's own repeated tries."""

from collections.abc import Iterator
from dataclasses import replace

from app.analysis.figure import Figure, Input, Rule
from app.analysis.reliability import TOO_FEW_ATHLETES, TOO_FEW_PAIRS, Trust
from app.analysis.tests_kinds import FieldTest

HOPKINS = "Hopkins 2000, Sports Med 30:1-15 (secondary: course notes)."
ALTMAN = "Bland and Altman 1986, Lancet 327:307-310."
FLEISS = "Shrout and Fleiss 1979, Psychol Bull 86:420-428."
MEASURES = frozenset(
    {
        "typical error",
        "minimal detectable change",
        "smallest worthwhile change",
        "variation of a try",
        "first try less second",
        "repeatability",
        "intraclass correlation",
    }
)
"""What is told of a test's trust, by the end of the names of its figures."""
ONE_DAY = (
    "Tries of one day; from one day to another a test can stray more, and the best of tries strays less."
)
NO_SPREAD = "All tries were the same, so that there is no spread to share out."


def trust_figures(test: FieldTest, trust: Trust) -> Iterator[Figure]:
    """Error, change to be detected and worthwhile, agreement and correlation of the first two tries of a day.

    `n` is how many pairs of tries a figure rests on, of the worthwhile change how many athletes.
    """
    yield _error(test, trust)
    yield _of_pairs(
        test, "minimal detectable change", "1.96 x sqrt 2 x typical error", HOPKINS, trust.detectable, trust
    )
    yield _worthwhile(test, trust)
    variation = Rule(
        f"{test.name}: variation of a try", "%", "100 x typical error / mean of all tries", HOPKINS
    )
    yield variation.figure(trust.variation, trust.pairs, TOO_FEW_PAIRS)
    yield _bias(test, trust)
    yield _of_pairs(
        test,
        "repeatability",
        "root mean square of the differences of two tries",
        ALTMAN,
        trust.repeatability,
        trust,
    )
    icc = Rule(
        f"{test.name}: intraclass correlation",
        "1",
        "ICC(3,1) = (BMS - EMS) / (BMS + EMS), of the first two tries of a day",
        FLEISS,
    )
    found = trust.icc
    if found is None:
        yield icc.figure(None, trust.pairs, TOO_FEW_PAIRS)
        return
    others: tuple[Input, ...] = (
        ("ICC(1,1)", found.one_way),
        ("ICC(2,1)", found.agreement),
        ("ICC(1,2), of the mean of two", found.one_way_mean),
        ("ICC(2,2), of the mean of two", found.agreement_mean),
        ("ICC(3,2), of the mean of two", found.consistency_mean),
    )
    yield icc.figure(found.consistency, trust.pairs, NO_SPREAD, others)


def _error(test: FieldTest, trust: Trust) -> Figure:
    formula = "standard deviation of the differences between the first two tries of a day / sqrt 2"
    return _of_pairs(test, "typical error", formula, HOPKINS, trust.error, trust)


def _of_pairs(
    test: FieldTest, name: str, formula: str, source: str, value: float | None, trust: Trust
) -> Figure:
    rule = Rule(f"{test.name}: {name}", test.unit, formula, source)
    found = rule.figure(value, trust.pairs, TOO_FEW_PAIRS)
    return found if value is None else replace(found, caution=ONE_DAY)


def _worthwhile(test: FieldTest, trust: Trust) -> Figure:
    rule = Rule(
        f"{test.name}: smallest worthwhile change",
        test.unit,
        "0.2 x standard deviation between athletes, freed of the error that their means hold",
        HOPKINS,
    )
    told = {None: None, True: "yes", False: "no"}[trust.shows_small]
    inputs: tuple[Input, ...] = (("typical error", trust.error), ("the test can show it", told))
    return rule.figure(trust.worthwhile, trust.athletes, TOO_FEW_ATHLETES, inputs)


def _bias(test: FieldTest, trust: Trust) -> Figure:
    rule = Rule(
        f"{test.name}: first try less second",
        test.unit,
        "mean of the differences of two tries of a day; limits of agreement -+ 2 SD",
        ALTMAN,
    )
    found = trust.agreement
    if found is None:
        return rule.figure(None, trust.pairs, TOO_FEW_PAIRS)
    limits: tuple[Input, ...] = (
        ("standard deviation", found.sd),
        ("lower limit of agreement", found.low),
        ("upper limit of agreement", found.high),
    )
    return rule.figure(found.bias, trust.pairs, None, limits)
