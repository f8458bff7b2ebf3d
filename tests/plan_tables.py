"""Plans as the tables of their file: Hypothesis strategies for them, and how they are written as TOML."""

import json
from typing import Any

from hypothesis import strategies as st

Table = dict[str, Any]
NAMES = (
    "Side-lying external rotation",
    "Hop and hold",
    "Split squat",
    "Wall slide",
    "Ball drop",
    "Calf raise",
)


def seconds(least: float, most: float) -> st.SearchStrategy[float | int]:
    """Seconds with one decimal at most, whole ones as whole numbers."""
    tenths = st.integers(round(least * 10), round(most * 10))
    return tenths.map(lambda value: value // 10 if value % 10 == 0 else value / 10)


def ranged(values: st.SearchStrategy[Any]) -> st.SearchStrategy[Any]:
    """A value or a range of two."""
    return values | st.tuples(values, values).map(sorted).map(list)


@st.composite
def tempi(draw: st.DrawFn) -> str:
    """Any tempo in any spelling, with at least one phase that lasts."""
    separator = draw(st.sampled_from(["-", "/", ":", ""]))
    digit = st.integers(0, 5).map(str)
    if separator:
        digit |= st.integers(0, 59).map(lambda tenths: f"{tenths // 10}.{tenths % 10}")
    moving = digit | st.just("X")
    fields = [draw(moving), draw(digit), draw(moving), draw(digit)]
    if all(field in ("0", "0.0") for field in fields):
        fields[draw(st.sampled_from([0, 2]))] = "X"
    if fields[3] == "0" and draw(st.booleans()):
        del fields[3]
    return separator.join(fields)


@st.composite
def doses(draw: st.DrawFn) -> Table:
    """The keys of one dose."""
    form = draw(st.sampled_from(["tempo", "hold", "stick", "every", "pace", "work"]))
    if form == "work":
        return {"work": draw(ranged(seconds(0.1, 90)))}
    dose: Table = {"reps": draw(ranged(st.integers(1, 6)))}
    if form == "tempo":
        optional = {"begins": st.sampled_from(["eccentric", "concentric", "hold"])}
        dose |= {"tempo": draw(tempi())} | draw(st.fixed_dictionaries({}, optional=optional))
    elif form == "hold":
        dose |= {"hold": draw(ranged(seconds(0.1, 60)))}
        dose |= draw(st.fixed_dictionaries({}, optional={"relax": seconds(0, 5)}))
    elif form == "stick":
        times = {"move": seconds(0.1, 4), "reset": seconds(0, 9)}
        dose |= {"stick": draw(ranged(seconds(0.1, 6)))} | draw(st.fixed_dictionaries({}, optional=times))
    elif form == "every":
        dose |= {"every": draw(seconds(0.1, 12))}
    else:
        dose |= {"pace": "own"}
    return dose


@st.composite
def exercises(draw: st.DrawFn) -> Table:
    """One exercise."""
    dose = draw(doses())
    alternates = [] if "pace" in dose or "work" in dose else ["alternate"]
    sides = st.sampled_from(["both", "each", "left", "right", *alternates])
    optional: dict[str, st.SearchStrategy[Any]] = {
        "sides": sides,
        "first": st.sampled_from(["left", "right", "weaker"]),
        "sets": st.integers(1, 4),
        "rest": seconds(0, 90),
        "superset": st.sampled_from(["A", "A", "B"]),
        "load_kg": st.integers(1, 40).map(lambda halves: halves / 2),
        "contacts": st.integers(0, 4),
        "target": st.sampled_from(["infraspinatus", "calves"]),
    }
    return {"name": draw(st.sampled_from(NAMES))} | dose | draw(st.fixed_dictionaries({}, optional=optional))


@st.composite
def stages(draw: st.DrawFn, number: int) -> Table:
    """One stage with one to four exercises."""
    kind = draw(st.sampled_from(["activation", "integration", "stability", "reactive", "power", "other"]))
    return {
        "name": f"Stage {number}",
        "kind": kind,
        "exercise": draw(st.lists(exercises(), min_size=1, max_size=4)),
    }


@st.composite
def plan_tables(draw: st.DrawFn) -> Table:
    """Any plan of one to three stages."""
    gaps = {
        "lead_in": seconds(3, 9),
        "changeover": seconds(0, 40),
        "side_change": seconds(0, 20),
        "fast": seconds(0.1, 2),
        "level": st.sampled_from(["beginner", "intermediate", "advanced"]),
    }
    count = draw(st.integers(1, 3))
    return (
        {"format": 1, "title": "Any plan"}
        | draw(st.fixed_dictionaries({}, optional=gaps))
        | {"stage": [draw(stages(number)) for number in range(1, count + 1)]}
    )


@st.composite
def athletes_of(draw: st.DrawFn, plan: Table) -> Table:
    """An athlete's adjustments to a plan: the side that begins, and reps by exercise name."""
    names = sorted({exercise["name"] for stage in plan["stage"] for exercise in stage["exercise"]})
    reps = st.dictionaries(st.sampled_from(names), ranged(st.integers(1, 7)), max_size=3)
    return {"first": draw(st.sampled_from([None, "left", "right"])), "reps": draw(reps)}


def toml_of(plan: Table) -> str:
    """The plan as a file."""
    lines = [f"{key} = {json.dumps(value)}" for key, value in plan.items() if key != "stage"]
    for stage in plan["stage"]:
        lines += ["", "[[stage]]"]
        lines += [f"{key} = {json.dumps(value)}" for key, value in stage.items() if key != "exercise"]
        for exercise in stage["exercise"]:
            lines += ["", "  [[stage.exercise]]"]
            lines += [f"  {key} = {json.dumps(value)}" for key, value in exercise.items()]
    return "\n".join(lines) + "\n"
