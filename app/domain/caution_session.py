"""Cautions about a session as a whole: its order, its length, its contacts, its sides."""

from collections.abc import Iterator
from fractions import Fraction

from app.domain.caution_value import EXPLOSIVE_STAGES, Caution, CautionRule, Place, caution
from app.domain.figures import bout_figures
from app.domain.plan import Level, Side, Sides, StageKind
from app.domain.thresholds import STAGE_ORDER_BASIS, Threshold, Thresholds
from app.domain.timeline import Timeline
from app.domain.units import clock_text

GROUNDWORK = frozenset({StageKind.ACTIVATION, StageKind.INTEGRATION, StageKind.STABILITY})


def stage_order(timeline: Timeline, _thresholds: Thresholds) -> Iterator[Caution]:
    """Reactive or power work that stands before activation, integration or stability."""
    stages = timeline.plan.stages
    for index, stage in enumerate(stages):
        later = [other for other in stages[index + 1 :] if other.kind in GROUNDWORK]
        if stage.kind in EXPLOSIVE_STAGES and later:
            named = " and ".join(f"'{other.name}' ({other.kind})" for other in later)
            yield caution(
                CautionRule.STAGE_ORDER,
                Place(stage.name),
                f"{stage.kind} work comes before {named}",
                "control is usually prepared before speed is asked",
                STAGE_ORDER_BASIS,
            )


def session_length(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """A session longer than the table says; own-pace work, whose length is unknown, comes on top."""
    limit = thresholds.session_minutes
    if timeline.timed_ms > limit.value * 60_000:
        least = "at least " if timeline.open_ended else ""
        yield caution(
            CautionRule.SESSION_LENGTH,
            Place(),
            f"the session takes {least}{clock_text(timeline.timed_ms)}, more than {limit}",
            "attention and form may fade towards the end",
            limit.basis,
        )


def contacts(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """More contacts than the guideline of the plan's level; unknown ones come on top."""
    counted = [bout_figures(timeline, bout).contacts for bout in timeline.bouts]
    known = sum(band.high for band in counted if band is not None)
    limit = _contact_limit(timeline.plan.level, thresholds)
    if known > limit.value:
        least = "at least " if None in counted else ""
        yield caution(
            CautionRule.CONTACTS,
            Place(),
            f"{least}{known} contacts; for the level {timeline.plan.level} the guideline is up to {limit}",
            "it is a guideline for low to moderate intensity, not a limit",
            limit.basis,
        )


def side_balance(timeline: Timeline, thresholds: Thresholds) -> Iterator[Caution]:
    """Clearly fewer reps on one side than on the other in one-sided work."""
    left = right = 0
    for bout in timeline.bouts:
        if timeline.exercise_of(bout).sides is not Sides.BOTH:
            figures = bout_figures(timeline, bout)
            left, right = left + figures.reps_left.high, right + figures.reps_right.high
    most, least = max(left, right), min(left, right)
    limit = thresholds.side_difference_percent
    if most and Fraction(100 * (most - least), most) > Fraction(limit.value):
        side = Side.LEFT if left < right else Side.RIGHT
        yield caution(
            CautionRule.SIDE_BALANCE,
            Place(),
            f"one-sided work asks {left} reps on the left and {right} on the right, fewer on the {side}",
            "one side gets less work; that may be just what is meant",
            limit.basis,
        )


def _contact_limit(level: Level, thresholds: Thresholds) -> Threshold:
    return {
        Level.BEGINNER: thresholds.contacts_beginner,
        Level.INTERMEDIATE: thresholds.contacts_intermediate,
        Level.ADVANCED: thresholds.contacts_advanced,
    }[level]
