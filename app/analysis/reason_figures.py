"""The reasons to look at somebody as figures, so that each can say by which rule it stands first."""

from collections.abc import Iterable

from app.analysis.figure import Figure, Input, Rule
from app.analysis.figures_wellbeing import OWN, PAIN
from app.analysis.reasons import DEFAULT_LIMITS, Limits, Number, Reason

PRACTICE = "Common practice, no source; a choice."
THOMEE = "Pain is to have subsided by the next morning: Thomee 1997, from memory."
NO_SESSION_YET = "There was no session yet."

RULES: dict[str, tuple[Rule, str]] = {
    "pain_above": (
        Rule(
            "First by pain in a session",
            "0-10",
            "highest pain of a session of the last days, above the limit",
            PAIN.source,
        ),
        "pain",
    ),
    "pain_before": (
        Rule(
            "First by pain before training",
            "0-10",
            "pain answered before training in the last days, above the limit",
            PAIN.source,
        ),
        "pain",
    ),
    "warning_sign": (
        Rule(
            "First by a warning sign",
            "1",
            "a warning sign answered before training in the last days: 1",
            "Stop list of the usual guidelines, from memory.",
        ),
        "",
    ),
    "not_settled": (
        Rule(
            "First by pain that had not settled",
            "0-10",
            "pain on the morning after, higher than before that session",
            THOMEE,
        ),
        "after",
    ),
    "morning_above": (
        Rule(
            "First by pain on the morning after",
            "0-10",
            "pain on the morning after, above the limit",
            PAIN.source,
        ),
        "after",
    ),
    "no_session": (
        Rule(
            "First by days without a session",
            "days",
            "days since the last session, above the limit, with a planned one missed",
            PRACTICE,
        ),
        "days",
    ),
    "side_behind": (
        Rule(
            "First by a side that is behind",
            "%",
            "(greater - smaller) / greater x 100, where their distance exceeds the error of the test",
            "Bishop et al. 2018, Strength Cond J, from memory.",
        ),
        "difference",
    ),
    "not_answered": (
        Rule(
            "First by mornings not answered",
            "answers",
            "mornings after a session of the last days whose pain is not answered",
            PRACTICE,
        ),
        "owed",
    ),
    "pain_rising": (
        Rule(
            "First by rising pain",
            "0-10",
            "highest pain of each of the last three weeks, rising twice in a row",
            "Pain is not to rise from week to week: Thomee 1997, from memory; twice is a choice.",
        ),
        "third",
    ),
    "readiness": (Rule("First by readiness", "SD", OWN.formula, OWN.source), "z"),
}
"""By the name of a rule what its figure is called and how it is made, and which of its numbers it is."""

PAINFUL_RULES = frozenset(rule.name for rule, _ in RULES.values())
"""Why somebody stands first may tell of pain, so that all of it is hidden when others look on."""


def reason_figures(reasons: Iterable[Reason], limits: Limits = DEFAULT_LIMITS) -> tuple[Figure, ...]:
    """A figure for each reason, the most urgent first, with its rule, its limits and its numbers."""
    return tuple(_figure(reason, limits) for reason in reasons)


def _figure(reason: Reason, limits: Limits) -> Figure:
    rule, main = RULES[reason.rule]
    numbers = dict(reason.numbers)
    value = _number(numbers.get(main)) if main else 1.0
    inputs = tuple((name, _given(given)) for name, given in reason.numbers if name != main)
    return rule.figure(value, 1, NO_SESSION_YET, (*inputs, *_limits(reason.rule, limits)))


def _limits(rule: str, limits: Limits) -> tuple[Input, ...]:
    days: Input = ("days looked back on", limits.days_back)
    pain: Input = ("limit", limits.pain)
    found: dict[str, tuple[Input, ...]] = {
        "pain_above": (pain, days),
        "pain_before": (pain, days),
        "warning_sign": (days,),
        "not_settled": (days,),
        "morning_above": (pain, days),
        "no_session": (("limit", limits.days_without),),
        "not_answered": (days,),
        "readiness": (("limit", limits.readiness_z), days),
    }
    return found.get(rule, ())


def _given(value: Number) -> float | int | str:
    return value if isinstance(value, int | float | str) else value.isoformat()


def _number(value: Number | None) -> float | None:
    return float(value) if isinstance(value, int | float) else None
