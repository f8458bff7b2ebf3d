"""The whole form of a plan file: its tables, one within the other, and what does not go together in them."""

from collections.abc import Set

from app.planfile.doses import FORM_OF, FORMS, DoseForm
from app.planfile.keys import (
    DOSE_KEYS,
    EXERCISE_KEYS,
    GROUP_KEYS,
    MOST_EXERCISES,
    MOST_STAGES,
    PLAN_KEYS,
    STAGE_KEYS,
)
from app.planfile.kinds import Refuse, Schema
from app.planfile.shown import choices, near_name, shown
from app.planfile.tables import Key, Table, Tables, Values, Written

_ABOVE = "write it above the first [[stage]]"
_UNDER = "write it under a [[stage.exercise]]"
_DOSE_NAMES = frozenset(key.name for key in DOSE_KEYS)
_EXERCISE_NAMES = frozenset(key.name for key in EXERCISE_KEYS) - {"name"}
_ALSO = {"pause": "rest", "break": "rest", "weight": "load_kg", "kg": "load_kg"}
_PLAN_NAMES = frozenset(key.name for key in PLAN_KEYS)
_GROUP_NAMES = frozenset(key.name for key in GROUP_KEYS) - _EXERCISE_NAMES
_GROUP_ABOVE = "write [group] above the first [[stage]]"


def _fitting(named: Set[str]) -> Set[str]:
    """The keys of an exercise that go with those of a dose already written."""
    doses = named & _DOSE_NAMES
    forms = [form for form in FORMS if doses <= set(form.keys)]
    forms = forms or [form for form in FORMS if form.marker in doses]
    return {*(_EXERCISE_NAMES - _DOSE_NAMES), "name", *(key for form in forms for key in form.keys)}


def _check_exercise(written: Written, values: Values, refuse: Refuse) -> None:
    markers = [form.marker for form in FORMS if form.marker in written.named]
    if not markers and not written.guessed & FORM_OF.keys():
        marks = choices(f.marker for f in FORMS)
        refuse(f"the exercise has no dose; write one of {marks}", key=True)
    for other in markers[1:]:
        refuse(f"{markers[0]} and {other} are two doses; keep one of them", other, key=True)
    if len(markers) == 1:
        _check_dose(FORM_OF[markers[0]], written, values, refuse)


def _check_dose(form: DoseForm, written: Written, values: Values, refuse: Refuse) -> None:
    for name in form.needs:
        if name not in written.meant:
            refuse(
                f'"{name}" is missing beside {form.marker}; write {name} = 8, or a range',
                form.marker,
                key=True,
            )
    for key in DOSE_KEYS:
        if key.name in written.named and key.name not in form.keys:
            owners = choices(other.marker for other in FORMS if key.name in other.keys)
            refuse(f"{key.name} does not go with {form.marker}; it goes with {owners}", key.name, key=True)
    if not form.alternates and "sides" in written.named and values.get("sides") == "alternate":
        refuse(f'sides = "alternate" does not go with {form.marker}; write sides = "each"', "sides")


def _check_plan(_written: Written, values: Values, refuse: Refuse) -> None:
    _check_count(values, refuse)
    _check_stations(values, refuse)


def _check_stations(values: Values, refuse: Refuse) -> None:
    """Refuse stations that are no exercises, unless the name of one could not be read."""
    names = [item.get("name") for stage in values.get("stage", ()) for item in stage.get("exercise", ())]
    if None in names or not names:
        return
    for index, station in enumerate(values.get("group", {}).get("stations", ())):
        if station not in names:
            near = near_name(station, names)
            right = f"did you mean {shown(near)}?" if near else "write the name of one as it stands below"
            refuse(f"{shown(station)} is no exercise of this plan; {right}", "group", "stations", index)


def _check_count(values: Values, refuse: Refuse) -> None:
    places = [
        (number, index)
        for number, stage in enumerate(values.get("stage", ()))
        for index, _ in enumerate(stage.get("exercise", ()))
    ]
    # Of a single stage with more than that it is said already.
    if len(places) > MOST_EXERCISES > max(index for _, index in places):
        number, index = places[MOST_EXERCISES]
        message = f"the plan has {len(places)} exercises; write {MOST_EXERCISES} at most, or split it"
        refuse(message, "stage", number, "exercise", index)


def _dose_rules() -> Schema:
    """Exactly one dose: each form requires its own keys and forbids those of the others."""
    return {"oneOf": [_form_rule(form) for form in FORMS]}


def _form_rule(form: DoseForm) -> Schema:
    foreign = [key.name for key in DOSE_KEYS if key.name not in form.keys]
    sides = {} if form.alternates else {"sides": {"not": {"const": "alternate"}}}
    return {
        "title": form.marker,
        "required": [form.marker, *form.needs],
        "properties": {**dict.fromkeys(foreign, False), **sides},
    }


EXERCISE = Table(
    EXERCISE_KEYS,
    check=_check_exercise,
    rules=_dose_rules(),
    elsewhere={**dict.fromkeys(_PLAN_NAMES, _ABOVE), "group": _GROUP_ABOVE},
    fitting=_fitting,
    also=_ALSO,
)
STAGE = Table(
    (
        *STAGE_KEYS,
        Key(
            "exercise",
            Tables(EXERCISE, MOST_EXERCISES, "[[stage.exercise]]"),
            "The exercises in order.",
            required=True,
            example="a first exercise under [[stage.exercise]]",
        ),
    ),
    elsewhere={
        **dict.fromkeys(_PLAN_NAMES, _ABOVE),
        **dict.fromkeys(_EXERCISE_NAMES, _UNDER),
        "group": _GROUP_ABOVE,
    },
)
GROUP = Table(
    GROUP_KEYS,
    elsewhere={
        **dict.fromkeys(_EXERCISE_NAMES - {"work"}, _UNDER),
        **dict.fromkeys(_PLAN_NAMES, "write it above [group]"),
        "name": 'a session has a title: title = "..."',
    },
)
PLAN = Table(
    (
        *PLAN_KEYS,
        Key("group", GROUP, "How a group does the session."),
        Key(
            "stage",
            Tables(STAGE, MOST_STAGES, "[[stage]]"),
            "The stages in order.",
            required=True,
            example="a first stage under [[stage]]",
        ),
    ),
    check=_check_plan,
    elsewhere={
        "exercise": "write it as [[stage.exercise]] below its [[stage]]",
        "stages": "write each stage as [[stage]]",
        "kind": "write it under a [[stage]]",
        "name": 'a session has a title: title = "..."',
        **dict.fromkeys(_GROUP_NAMES, "write it under [group]"),
        **dict.fromkeys(_EXERCISE_NAMES, _UNDER),
    },
)
