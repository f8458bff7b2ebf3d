"""Plans to plan files, in one canonical form: keys in the order of the tables, defaults left out.

Reading what was written gives the same plan again.
"""

from collections.abc import Mapping, Sequence
from dataclasses import fields
from decimal import Decimal

from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.grouping import Grouping
from app.domain.plan import Exercise, Plan, Stage
from app.planfile.amounts import tidy
from app.planfile.form import EXERCISE, GROUP, PLAN, STAGE
from app.planfile.keys import FORMAT
from app.planfile.tables import Table

Value = str | int | Decimal | Sequence["Value"] | Mapping[str, "Value"]
Values = Mapping[str, Value | None]

_ESCAPES = {'"': '\\"', "\\": "\\\\", "\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f", "\r": "\\r"}
_FIRST_PLAIN = 0x20
_DELETE = 0x7F


def write_plan(plan: Plan) -> str:
    """The text of a plan file."""
    head = "\n".join(_lines(PLAN, plan_values(plan), ""))
    group = [] if plan.group is None else [write_group(plan.group)]
    return "\n\n".join([head, *group, *map(write_stage, plan.stages)]) + "\n"


def write_group(group: Grouping) -> str:
    """How a group does the plan as it stands in a plan file, its heading first, without a line end."""
    return "\n".join(["[group]", *_lines(GROUP, group_values(group), "")])


def write_stage(stage: Stage) -> str:
    """One stage with its exercises as it stands in a plan file, without a line end at the end."""
    values = {"name": stage.name, "kind": stage.kind.value}
    heading = "\n".join(["[[stage]]", *_lines(STAGE, values, "")])
    return "\n\n".join([heading, *map(write_exercise, stage.exercises)])


def write_exercise(exercise: Exercise) -> str:
    """One exercise as it stands in a plan file, its heading first, without a line end at the end."""
    return "\n".join(["  [[stage.exercise]]", *_lines(EXERCISE, exercise_values(exercise), "  ")])


def write_value(value: Value) -> str:
    """A value in TOML."""
    if isinstance(value, str):
        return f'"{"".join(map(_escaped, value))}"'
    if isinstance(value, int | Decimal):
        return str(value)
    if isinstance(value, Mapping):
        return f"{{ {', '.join(f'{name} = {write_value(item)}' for name, item in value.items())} }}"
    return f"[{', '.join(map(write_value, value))}]"


def plan_values(plan: Plan) -> Values:
    """What a plan file says of the plan itself, by key; None where there is nothing to say."""
    return {
        "format": FORMAT,
        "title": plan.title,
        "author": plan.author,
        "level": plan.level.value,
        "order": plan.order.value,
        "lead_in": _seconds(plan.lead_in_ms),
        "changeover": _seconds(plan.changeover_ms),
        "side_change": _seconds(plan.side_change_ms),
        "fast": _seconds(plan.fast_ms),
    }


def group_values(group: Grouping) -> Values:
    """What a plan file says of a group, by key; None where there is nothing to say."""
    return {
        "form": group.form.value,
        "work": _seconds(group.work_ms),
        "change": _seconds(group.change_ms),
        "rounds": group.rounds,
        "stations": group.stations or None,
        "teams": group.teams,
        "swap": _seconds(group.swap_ms),
    }


def exercise_values(exercise: Exercise) -> Values:
    """What a plan file says of an exercise, by key; None where there is nothing to say."""
    words = {field.name: getattr(exercise.words, field.name) for field in fields(exercise.words)}
    return {
        "name": exercise.name,
        "target": exercise.target,
        "sides": exercise.sides.value,
        "first": exercise.first.value,
        "sets": exercise.sets,
        "rest": _seconds(exercise.rest_ms),
        "load_kg": None if exercise.load_kg is None else tidy(exercise.load_kg),
        "contacts": exercise.contacts,
        "superset": exercise.superset,
        "setup": exercise.setup,
        "cues": exercise.cues or None,
        "faults": exercise.faults or None,
        "picture": exercise.picture,
        "stop_if": exercise.stop_if or None,
        "easier": exercise.easier,
        "harder": exercise.harder,
        "words": {name: word for name, word in words.items() if word is not None} or None,
        **_dose_values(exercise.dose),
    }


def _dose_values(dose: Dose) -> Values:
    match dose:
        case TempoReps(reps, tempo, begins):
            return {"reps": _band(reps), "tempo": str(tempo), "begins": begins.value}
        case HoldReps(reps, hold, relax_ms):
            return {"reps": _band(reps), "hold": _seconds_band(hold), "relax": _seconds(relax_ms)}
        case StickReps(reps, stick, move_ms, reset_ms):
            lengths = {"move": _seconds(move_ms), "reset": _seconds(reset_ms)}
            return {"reps": _band(reps), "stick": _seconds_band(stick), **lengths}
        case SignalReps(reps, every_ms):
            return {"reps": _band(reps), "every": _seconds(every_ms)}
        case OwnPaceReps(reps):
            return {"reps": _band(reps), "pace": "own"}
        case WorkTime(work):
            return {"work": _seconds_band(work)}


def _lines(table: Table, values: Values, indent: str) -> list[str]:
    """One line a key that says something else than its default, in the order of the table."""
    said = [(key.name, values.get(key.name), key.default) for key in table.keys]
    return [
        f"{indent}{name} = {write_value(value)}"
        for name, value, default in said
        if value is not None and (default is None or value != default)
    ]


def _seconds(ms: int) -> Decimal:
    return tidy(Decimal(ms) / 1000)


def _band(band: Band) -> Value:
    return [band.low, band.high] if band.ranged else band.high


def _seconds_band(band: Band) -> Value:
    return [_seconds(band.low), _seconds(band.high)] if band.ranged else _seconds(band.high)


def _escaped(character: str) -> str:
    if character in _ESCAPES:
        return _ESCAPES[character]
    if ord(character) < _FIRST_PLAIN or ord(character) == _DELETE:
        return f"\\u{ord(character):04X}"
    return character
