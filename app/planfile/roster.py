"""Rosters: who there is, and what of a plan is different for whom. Written as TOML or as CSV.

TOML, the fuller form; every key but `name` may be left out:

    format = 1
    club = "Samphire Bay Handball"

    [[athlete]]
    name = "Ines"
    first = "right"                        # the side that begins, whatever the plan says
    notes = "Left shoulder tired after long throws."
    short = "Ine"                          # in a group: the name on the screen of the room
    team = "B"                             # the letter of the team or wave, A to L
    sits_out = ["Tuck jump"]               # exercises left out in a group

      [[athlete.exercise]]
      name = "Split squat"                 # as the plan names it
      reps = [6, 8]                        # a number, or a range
      load_kg = { left = 4, right = 5.5 }  # or one number for both sides
      variant = "easier"                   # or harder: which of the plan's variants is done in a group

CSV: a first line with the names of the columns, in any order; `name` is the only one that must be there. One
line an athlete, or several with the same name, one for each exercise and side that is different; `side` is
left, right or empty for both; a range of reps is written 6-8; `sits_out` says yes in the row of an exercise
that is left out. Comma, semicolon or tab between the cells;
where it is the semicolon, numbers may have a decimal comma.

    name,first,exercise,side,load_kg,reps,notes
    Ines,right,Split squat,left,4,6-8,Left shoulder tired after long throws.
    Ines,,Split squat,right,5.5,,
"""

import re
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path

from app.domain.athlete import Athlete
from app.domain.plan import Side
from app.planfile.amounts import Count, Format, Load, Ranged
from app.planfile.keys import FORMAT, MOST_EXERCISES, MOST_REPS
from app.planfile.kinds import Refuse, Schema, Text, Texts, Word
from app.planfile.positions import Positions
from app.planfile.report import Report
from app.planfile.roster_csv import parse_csv
from app.planfile.shown import shown
from app.planfile.source import read_text
from app.planfile.syntax import parse_toml
from app.planfile.tables import Key, Table, Tables, Values, Written

MOST_ATHLETES = 500
TEAMS = tuple("ABCDEFGHIJKL")
VARIANTS = ("easier", "harder")

_ATHLETE_HEADER = re.compile(r"^[ \t]*\[\[[ \t]*athlete[ \t]*\]\]", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class SideLoads:
    """Loads in kg: one number for both sides, or a table with left, right or each of them."""

    def read(self, value: object, refuse: Refuse) -> dict[Side, Decimal] | None:
        """The loads by side, BOTH where it is one number."""
        if not isinstance(value, dict):
            load = Load().read(value, refuse)
            return None if load is None else {Side.BOTH: load}
        loads = _SIDES.read(value, refuse)
        return None if loads is None else {Side(side): load for side, load in loads.items()}

    def schema(self) -> Schema:
        """A number or an object."""
        return {"anyOf": [Load().schema(), _SIDES.schema()]}


def _check_override(written: Written, _values: Values, refuse: Refuse) -> None:
    if not written.meant & {"reps", "load_kg", "variant"}:
        message = "nothing is different here; write reps, load_kg or variant, or leave the exercise out"
        refuse(message, key=True)


def _check_names(_written: Written, values: Values, refuse: Refuse) -> None:
    _refuse_twice("exercise", values, refuse)


def _check_roster(_written: Written, values: Values, refuse: Refuse) -> None:
    _refuse_twice("athlete", values, refuse)


def _refuse_twice(of: str, values: Values, refuse: Refuse) -> None:
    seen: set[str] = set()
    for index, item in enumerate(values.get(of, ())):
        name = item.get("name")
        if name in seen:
            refuse(f"{shown(name)} stands here for the second time; keep one of the two", of, index, "name")
        seen.add(name)


_SIDES = Table(
    (Key("left", Load(), "Load on the left in kg."), Key("right", Load(), "Load on the right in kg.")),
)
OVERRIDE = Table(
    (
        Key("name", Text(), "The exercise, as the plan names it.", required=True, example='name = "..."'),
        Key("reps", Ranged(Count(1, MOST_REPS)), "Reps in place of the plan's, a number or a range."),
        Key("load_kg", SideLoads(), "Load in kg in place of the plan's, one number or { left = , right = }."),
        Key("variant", Word(VARIANTS), "Which of the plan's variants is done, at the same tempo."),
    ),
    check=_check_override,
)
ATHLETE = Table(
    (
        Key("name", Text(), "The athlete.", required=True, example='name = "..."'),
        Key(
            "first",
            Word((Side.LEFT.value, Side.RIGHT.value)),
            "The side that begins, whatever the plan says.",
        ),
        Key("notes", Text(), "What the practitioner should have in mind."),
        Key("short", Text(), "In a group: the name on the screen of the room."),
        Key("team", Word(TEAMS), "In a group: the letter of the team or wave."),
        Key("sits_out", Texts(), "In a group: exercises left out, as the plan names them."),
        Key("exercise", Tables(OVERRIDE, MOST_EXERCISES, "[[athlete.exercise]]"), "What is different."),
    ),
    check=_check_names,
)
ROSTER = Table(
    (
        Key("format", Format(FORMAT), "Version of the file format.", required=True, example="format = 1"),
        Key("club", Text(), "Whose roster it is."),
        Key(
            "athlete",
            Tables(ATHLETE, MOST_ATHLETES, "[[athlete]]"),
            "The athletes.",
            required=True,
            example="a first athlete under [[athlete]]",
        ),
    ),
    check=_check_roster,
)


def read_roster(path: Path) -> tuple[Athlete, ...]:
    """The athletes of a roster in the order of the file, as CSV where the file's name ends so, else as TOML.

    Raises FileProblemsError with every problem of the file.
    """
    text = read_text(path)
    return (
        parse_roster_csv(text, str(path)) if path.suffix.lower() == ".csv" else parse_roster(text, str(path))
    )


def parse_roster(text: str, file: str) -> tuple[Athlete, ...]:
    """The athletes of a TOML roster. Raises FileProblemsError with every problem of the text."""
    parsed = parse_toml(text.replace("\r\n", "\n"), ROSTER)
    report = Report(file, lambda: Positions(parsed.text), parsed.problems, parsed.broken)
    return _athletes(parsed.document, report)


def parse_roster_csv(text: str, file: str) -> tuple[Athlete, ...]:
    """The athletes of a CSV roster. Raises FileProblemsError with every problem of the text."""
    sheet = parse_csv(text.replace("\r\n", "\n"))
    return _athletes(sheet.document, Report(file, lambda: sheet, sheet.problems))


def is_roster(text: str) -> bool:
    """Whether a TOML text looks like a roster rather than a plan."""
    return _ATHLETE_HEADER.search(text) is not None


def _athletes(document: dict[str, object] | None, report: Report) -> tuple[Athlete, ...]:
    values = None if document is None else ROSTER.read(document, report.refuse)
    if values is None or not report.clean:
        raise report.error()
    return tuple(_athlete(athlete) for athlete in values["athlete"])


def _athlete(values: Values) -> Athlete:
    overrides = values.get("exercise", ())
    loads = {
        (override["name"], side): load
        for override in overrides
        for side, load in override.get("load_kg", {}).items()
    }
    reps = {override["name"]: override["reps"] for override in overrides if "reps" in override}
    first = Side(values["first"]) if "first" in values else None
    variants = {override["name"]: override["variant"] for override in overrides if "variant" in override}
    return Athlete(
        values["name"],
        first,
        loads,
        reps,
        notes=values.get("notes"),
        short=values.get("short"),
        team=values.get("team"),
        sits_out=frozenset(values.get("sits_out", ())),
        variants=variants,
    )
