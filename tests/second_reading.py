"""A second reading of the plan file's page, written from its words and not from the program.

It takes a plan as the tables of its file, in seconds, and lists the rows of its compiled timeline. It shares
no code with the program, and goes about it another way: it writes all bouts down first, then looks at each
pair of neighbours to see which gap is between them.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

Table = dict[str, Any]
Row = tuple[int, int | None, str, str, str, int, str, int | None, str | None]
OTHER = {"left": "right", "right": "left", "both": "both"}


@dataclass
class Bout:
    """One bout as written down: who, which set, which side, and its phases as (phase, rep, side, ms)."""

    block: int
    place: tuple[int, int]
    stage: str
    exercise: Table
    set_number: int
    side: str
    phases: list[tuple[str, int, str, int | None]]


def ms(seconds: float) -> int:
    """Seconds as written, in whole ms."""
    value = Fraction(str(seconds)) * 1000
    assert value.denominator == 1, f"{seconds} s is no whole number of ms"
    return int(value)


def upper(value: int | list[int]) -> int:
    """A range is led to its upper bound."""
    return value[1] if isinstance(value, list) else value


def tempo_fields(text: str) -> list[str]:
    """The four fields; three mean a last of 0; without separators each sign is a field."""
    for separator in "-/:":
        text = text.replace(separator, " ")
    fields = text.split() if " " in text else list(text)
    return [*fields, "0"] if len(fields) == 3 else fields


def rows(plan: Table, athlete: Table | None = None, weaker: str | None = None) -> list[Row]:
    """The rows of the plan, for an athlete with `first` and `reps` by exercise name, or for anybody."""
    bouts = written_down(plan, athlete or {}, weaker)
    lead_in = ms(plan.get("lead_in", 5))
    found: list[Row] = []
    now = 0
    for number, bout in enumerate(bouts):
        who = (bout.stage, bout.exercise["name"], bout.set_number)
        if number > 0:
            kind, gap = gap_between(plan, bouts[number - 1], bout)
            if gap > lead_in:
                found.append((now, now + gap - lead_in, kind, *who, bout.side, None, None))
                now += gap - lead_in
        found.append((now, now + lead_in, "lead_in", *who, bout.side, None, None))
        now += lead_in
        for phase, rep, side, length in bout.phases:
            if length is None:
                found.append((now, None, "work", *who, side, rep, phase))
                now = 0
            elif length > 0:
                found.append((now, now + length, "work", *who, side, rep, phase))
                now += length
    return found


def written_down(plan: Table, athlete: Table, weaker: str | None) -> list[Bout]:
    """Every bout in order: blocks of exercises, round by round, side by side."""
    bouts: list[Bout] = []
    block = 0
    for s, stage in enumerate(plan["stage"]):
        exercises = list(enumerate(stage["exercise"]))
        while exercises:
            letter = exercises[0][1].get("superset")
            together = [exercises.pop(0)]
            while letter and exercises and exercises[0][1].get("superset") == letter:
                together.append(exercises.pop(0))
            block += 1
            for set_number in range(1, 21):
                for e, exercise in together:
                    if set_number > exercise.get("sets", 1):
                        continue
                    for side in sides_of_a_set(exercise, athlete, weaker):
                        reps = athlete.get("reps", {}).get(exercise["name"], exercise.get("reps"))
                        phases = phases_of(exercise, upper(reps), side, plan)
                        bouts.append(Bout(block, (s, e), stage["name"], exercise, set_number, side, phases))
    return bouts


def sides_of_a_set(exercise: Table, athlete: Table, weaker: str | None) -> list[str]:
    """The side of each bout of one set."""
    sides = exercise.get("sides", "both")
    if sides in ("both", "left", "right"):
        return [sides]
    first = exercise.get("first", "left")
    if first == "weaker":
        first = weaker or "left"
    first = athlete.get("first") or first
    return [first] if sides == "alternate" else [first, OTHER[first]]


def gap_between(plan: Table, before: Bout, after: Bout) -> tuple[str, int]:
    """The one gap between two neighbouring bouts."""
    if before.place == after.place and before.set_number == after.set_number:
        return "side_change", ms(plan.get("side_change", 8))
    if before.block == after.block and after.set_number > before.set_number:
        return "rest", ms(before.exercise.get("rest", 60))
    return "changeover", ms(plan.get("changeover", 20))


def phases_of(
    exercise: Table, reps: int | None, side: str, plan: Table
) -> list[tuple[str, int, str, int | None]]:
    """The phases of a bout that begins on a side."""
    if exercise.get("pace") == "own":
        return [("own", 1, side, None)]
    if "work" in exercise:
        return [("work", 1, side, ms(upper(exercise["work"])))]
    assert reps is not None
    turns = [(rep, side) for rep in range(1, reps + 1)]
    if exercise.get("sides") == "alternate":
        turns = [(rep, turn) for rep in range(1, reps + 1) for turn in (side, OTHER[side])]
    one_rep, after_it = rep_of(exercise, plan)
    found: list[tuple[str, int, str, int | None]] = []
    for count, (rep, turn) in enumerate(turns):
        if count > 0 and after_it is not None:
            earlier_rep, earlier_side = turns[count - 1]
            found.append((after_it[0], earlier_rep, earlier_side, after_it[1]))
        found += [(phase, rep, turn, length) for phase, length in one_rep]
    return found


def rep_of(exercise: Table, plan: Table) -> tuple[list[tuple[str, int]], tuple[str, int] | None]:
    """The phases of one rep, and what comes after it when another follows."""
    if "tempo" in exercise:
        fast = plan.get("fast", 1.0)
        e, low, c, high = (
            ms(fast if field in "Xx" else float(field)) for field in tempo_fields(exercise["tempo"])
        )
        lowering = [("eccentric", e), ("hold_lengthened", low)]
        rising = [("concentric", c), ("hold_shortened", high)]
        begins = exercise.get("begins", "eccentric")
        if begins == "eccentric":
            return lowering + rising, None
        if begins == "concentric":
            return rising + lowering, None
        return [rising[1], *lowering, rising[0]], None
    if "hold" in exercise:
        return [("hold", ms(upper(exercise["hold"])))], ("relax", ms(exercise.get("relax", 2)))
    if "stick" in exercise:
        move, reset = ms(exercise.get("move", 2)), ms(exercise.get("reset", 4))
        return [("move", move), ("stick", ms(upper(exercise["stick"])))], ("reset", reset)
    return [("go", ms(exercise["every"]))], None
