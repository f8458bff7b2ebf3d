"""Figures of progression by exercise and side: what was lifted how often, and the signs read from it."""

from dataclasses import dataclass
from decimal import Decimal

from app.analysis.figure import Figure, Input, Rule
from app.analysis.progression import Reached, double_progression, load_step, two_for_two
from app.domain.dose import DoseKind
from app.domain.plan import Side
from app.domain.reviewed import AthleteRecord, ExerciseDone

YES_OR_NO = "yes or no"
"""The unit of a sign: 1 is yes, 0 is not yet."""
OF_SIDE = "; side: "
"""Stands between the exercise and the side that a figure is of."""
NO_LOAD = "No load was said or planned."
NO_REPS = "How many reps were done in the last set is unknown."
TIMED = "It is work for a time, which has no reps."
NOT_AGAINST_A_LOAD = "These signs are for reps against a load, not for landings, jumps or timed work."
TOO_FEW_SESSIONS = "The last two sessions with this load and these reps asked for are not both known."
NOUGHT_HAS_NO_STEP = "The load is nought, so that there is no step."
NO_RANGE = "One number of reps is asked for, and no range."
RANGES_DIFFER = "The sets ask for different ranges of reps."
SET_UNKNOWN = "The reps of a set of the last session are unknown."
REPS_BY_SET, ASKED_BY_SET, LOAD_BY_SET = "reps by set", "reps asked for by set", "load by set, kg"
MOST_ASKED, LOAD_OF_LAST_SET = "most reps asked for", "load of the last set, kg"
WHERE_SETS_LIE = "where the sets lie"
_DASH, _ACSM = "–", "ACSM 2009, position stand on progression, Med Sci Sports Exerc 41:687-708."
_LIFTED = frozenset({DoseKind.TEMPO, DoseKind.HOLD, DoseKind.OWN_PACE})

LOAD_USED = Rule(
    "Load of the last set", "kg", "as said after the set, else as planned", "Common practice, no source."
)
LAST_REPS = Rule(
    "Reps of the last set", "reps", "reps said, else counted, of the attempt that stands", LOAD_USED.source
)
TWO_FOR_TWO = Rule(
    "Two for two",
    YES_OR_NO,
    "last set at least 2 reps above the most asked for, two sessions running, one load; left out is 0",
    "NSCA, from memory. A sign, no advice.",
)
DOUBLE = Rule(
    "Top of the range",
    YES_OR_NO,
    "every set of the last session at the most reps asked for, or above: double progression",
    "Common practice, from memory. A sign, no advice.",
)
LEAST_STEP = Rule(
    "Load step, 2 %",
    "kg",
    "load of the last set x 0.02; customary once 1 or 2 reps above the target can be done",
    _ACSM,
)
MOST_STEP = Rule(
    "Load step, 10 %",
    "kg",
    "load of the last set x 0.10; customary once 1 or 2 reps above the target can be done",
    _ACSM,
)


@dataclass(frozen=True, slots=True)
class ExerciseSigns:
    """The signs of one exercise on one side, out of its last session and those before it.

    `reached` is where the sets of the last session lie; None where that is unknown.
    """

    last: ExerciseDone
    load: Figure
    reps: Figure
    two_for_two: Figure
    double: Figure
    reached: Reached | None
    steps: tuple[Figure, Figure]

    @property
    def figures(self) -> tuple[Figure, ...]:
        """All of them, in the order in which they are read."""
        return self.load, self.reps, self.two_for_two, self.double, *self.steps


def exercise_signs(record: AthleteRecord) -> tuple[ExerciseSigns, ...]:
    """The signs of each exercise and side of a record, of what was trained last first, then by name.

    Where an exercise is asked for in several ways, those of the way of its last session.
    """
    found: dict[tuple[str, Side], list[ExerciseDone]] = {}
    for each in record.exercises:
        found.setdefault((each.exercise, each.side), []).append(each)
    signs = [_signs([one for one in each if one.dose is each[0].dose]) for each in found.values()]
    return tuple(sorted(signs, key=lambda one: (-one.last.day.toordinal(), one.last.exercise.casefold())))


def progression_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Every figure of the signs of a record's exercises; `of` names the exercise and the side."""
    return tuple(figure for signs in exercise_signs(record) for figure in signs.figures)


def reps_words(last: ExerciseDone) -> str:
    """The reps of the sets, a dash for each that is unknown: `12 12 –`; of timed work a dash."""
    if last.dose is DoseKind.WORK:
        return _DASH
    return " ".join(_DASH if each.reps is None else str(each.reps) for each in last.sets)


def asked_words(last: ExerciseDone) -> str:
    """The reps asked for, once where all sets ask for the same: `8-12`, or `12 10 8`; of timed work none."""
    if last.dose is DoseKind.WORK:
        return _DASH
    each = [str(one.high) if one.low == one.high else f"{one.low}-{one.high}" for one in last.sets]
    return each[0] if len(set(each)) == 1 else " ".join(each)


def _signs(sessions: list[ExerciseDone]) -> ExerciseSigns:
    last = sessions[0]
    of = _of(last)
    load = last.sets[-1].load_kg
    given: tuple[Input, ...] = (("day", last.day.isoformat()), *_sets(last))
    reached = _reached(last)
    return ExerciseSigns(
        last,
        LOAD_USED.figure(_kg(load), int(load is not None), NO_LOAD, given, (), of),
        _last_reps(last, given, of),
        _two_for_two(sessions, of),
        _double(last, reached, given, of),
        reached,
        _steps(load, of),
    )


def _last_reps(last: ExerciseDone, given: tuple[Input, ...], of: str) -> Figure:
    timed = last.dose is DoseKind.WORK
    reps = None if timed else last.sets[-1].reps
    return LAST_REPS.figure(reps, int(reps is not None), TIMED if timed else NO_REPS, given, (), of)


def _two_for_two(sessions: list[ExerciseDone], of: str) -> Figure:
    last = sessions[0].sets[-1]
    alike = []
    for each in sessions:
        if (each.sets[-1].high, each.sets[-1].load_kg) != (last.high, last.load_kg):
            break
        alike.append(each)
    running = alike[:2]
    inputs: tuple[Input, ...] = (
        (MOST_ASKED, last.high),
        (LOAD_OF_LAST_SET, _kg(last.load_kg)),
        *((each.day.isoformat(), each.sets[-1].reps) for each in reversed(running)),
    )
    unknown = (LOAD_OF_LAST_SET,) if last.load_kg is None else ()
    if sessions[0].dose not in _LIFTED:
        return TWO_FOR_TWO.figure(None, 0, NOT_AGAINST_A_LOAD, inputs, unknown, of)
    sign = two_for_two(last.high, [each.sets[-1].reps for each in reversed(running)])
    return TWO_FOR_TWO.figure(_as_number(sign), len(running), TOO_FEW_SESSIONS, inputs, unknown, of)


def _double(last: ExerciseDone, reached: Reached | None, given: tuple[Input, ...], of: str) -> Figure:
    inputs = (*given, (WHERE_SETS_LIE, None if reached is None else reached.value))
    value = _as_number(None if reached is None else reached is Reached.TOP)
    return DOUBLE.figure(value, len(last.sets), _why_no_range(last) or SET_UNKNOWN, inputs, (), of)


def _why_no_range(last: ExerciseDone) -> str | None:
    """Why no range is worked within; None where one is."""
    if last.dose not in _LIFTED:
        return NOT_AGAINST_A_LOAD
    ranges = {(each.low, each.high) for each in last.sets}
    if len(ranges) > 1:
        return RANGES_DIFFER
    return NO_RANGE if any(low == high for low, high in ranges) else None


def _reached(last: ExerciseDone) -> Reached | None:
    if _why_no_range(last) is not None:
        return None
    return double_progression(last.sets[0].low, last.sets[0].high, [each.reps for each in last.sets])


def _steps(load: Decimal | None, of: str) -> tuple[Figure, Figure]:
    step = None if not load else load_step(load)
    reason = NO_LOAD if load is None else NOUGHT_HAS_NO_STEP
    inputs: tuple[Input, ...] = ((LOAD_OF_LAST_SET, _kg(load)),)

    def figure(rule: Rule, kg: Decimal | None) -> Figure:
        return rule.figure(_kg(kg), int(kg is not None), reason, inputs, (), of)

    least, most = (None, None) if step is None else (step.least_kg, step.most_kg)
    return figure(LEAST_STEP, least), figure(MOST_STEP, most)


def _sets(last: ExerciseDone) -> tuple[Input, ...]:
    loads = " ".join(_DASH if each.load_kg is None else str(each.load_kg) for each in last.sets)
    return (
        (REPS_BY_SET, reps_words(last)),
        (ASKED_BY_SET, asked_words(last)),
        (LOAD_BY_SET, loads),
    )


def _of(last: ExerciseDone) -> str:
    side = "" if last.side is Side.BOTH else f"{OF_SIDE}{last.side.value}"
    return f"exercise: {last.exercise}{side}"


def _kg(load: Decimal | None) -> float | None:
    return None if load is None else float(load)


def _as_number(sign: bool | None) -> float | None:
    return None if sign is None else float(sign)
