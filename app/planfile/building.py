"""Plans and their parts out of the values read, which are sound by then."""

from typing import Any

from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, First, Level, Plan, Sides, Stage, StageKind, StageOrder, Words
from app.planfile.doses import FORMS
from app.planfile.tables import Values

_SAME = (
    "sets",
    "contacts",
    "load_kg",
    "superset",
    "setup",
    "target",
    "picture",
    "cues",
    "faults",
    "stop_if",
    "easier",
    "harder",
)
LENGTHS = ("lead_in", "changeover", "side_change", "fast")
"""The keys of a plan that are lengths of time."""


def build_plan(values: Values) -> Plan:
    """The plan; what the file leaves out has the defaults of the format."""
    return Plan(
        title=values["title"],
        stages=tuple(_stage(stage) for stage in values["stage"]),
        author=values.get("author"),
        level=Level(values.get("level", Level.BEGINNER)),
        order=StageOrder(values.get("order", StageOrder.LOCKED)),
        group=_grouping(values["group"]) if "group" in values else None,
        **lengths_of(values),
    )


def _grouping(values: Values) -> Grouping:
    lengths = {f"{name}_ms": values[name] for name in ("work", "change", "swap") if name in values}
    same = {name: values[name] for name in ("rounds", "stations", "teams") if name in values}
    return Grouping(Form(values.get("form", Form.TOGETHER)), **lengths, **same)


def lengths_of(values: Values) -> dict[str, Any]:
    """The lengths of a plan as its fields, in ms, as far as the file says them."""
    return {f"{name}_ms": values[name] for name in LENGTHS if name in values}


def _stage(values: Values) -> Stage:
    exercises = tuple(build_exercise(exercise) for exercise in values["exercise"])
    return Stage(values["name"], StageKind(values["kind"]), exercises)


def build_exercise(values: Values) -> Exercise:
    """The exercise, its dose by the key that marks it."""
    given = {name: values[name] for name in _SAME if name in values}
    if "rest" in values:
        given["rest_ms"] = values["rest"]
    form = next(form for form in FORMS if form.marker in values)
    return Exercise(
        name=values["name"],
        dose=form.build(values),
        sides=Sides(values.get("sides", Sides.BOTH)),
        first=First(values.get("first", First.LEFT)),
        words=Words(**values.get("words", {})),
        **given,
    )
