"""How long a session lasts, as far as a file that may have problems in it lets that be known."""

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import islice
from typing import Any

from app.domain.length import session_ms
from app.domain.plan import LEAST_LEAD_IN_MS, Exercise, Plan, Stage, StageKind
from app.planfile.amounts import SHORTEST_PHASE_MS
from app.planfile.building import LENGTHS, build_exercise, lengths_of
from app.planfile.doses import FORM_OF
from app.planfile.form import EXERCISE, PLAN
from app.planfile.keys import DOSE_KEYS
from app.planfile.shown import suggestions
from app.planfile.tables import MOST_GUESSED, Table, Values

_DOSE = frozenset(key.name for key in DOSE_KEYS)
_OF_LENGTH = _DOSE | {"sides", "sets", "rest", "superset"}
_LEAST_MS = {"lead_in": LEAST_LEAD_IN_MS, "changeover": 0, "side_change": 0, "fast": SHORTEST_PHASE_MS}

Written = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class KnownLength:
    """A length in ms, and whether it is that of the whole session or of what is known of it."""

    ms: int
    whole: bool


def known_length(document: Written, values: Values) -> KnownLength:
    """The length of a session, `document` being the file and `values` what was sound in it.

    Where it is not known as a whole it is a lower bound: the sum of the exercises whose length is known,
    each by itself, without changeovers.
    """
    parts = tuple(_parts(document, values))
    sound = {name: values[name] for name in LENGTHS if name in document and name in values}
    settled = document.keys() & LENGTHS == sound.keys() and not _may_mean(document, PLAN, LENGTHS)
    lengths = lengths_of(sound if settled else {**_LEAST_MS, **sound})
    known = [exercise for exercise, _ in parts if exercise is not None]
    if settled and _listed(document) and all(whole for _, whole in parts):
        rest = iter(known)
        stages = tuple(_stage(islice(rest, len(stage["exercise"]))) for stage in values["stage"])
        return KnownLength(session_ms(Plan("", stages, **lengths)), whole=True)
    alone = (Plan("", (_stage([_alone(exercise)]),), **lengths) for exercise in known)
    return KnownLength(sum(map(session_ms, alone)), whole=False)


def _may_mean(written: Written, table: Table, names: Collection[str]) -> bool:
    """Whether a key that the table does not know may have been meant for one of the names."""
    unknown = written.keys() - {key.name for key in table.keys}
    if len(unknown) > MOST_GUESSED:
        return True
    return any(suggestions(name, names) or table.also.get(name) in names for name in unknown)


def _listed(document: Written) -> bool:
    """Whether every stage has its list of exercises, under the name for it."""
    stages = document.get("stage")
    return isinstance(stages, list) and all(
        isinstance(stage, dict) and isinstance(stage.get("exercise"), list) for stage in stages
    )


def _parts(document: Written, values: Values) -> Iterator[tuple[Exercise | None, bool]]:
    """Each exercise as far as its length is known, None where it is not; and whether all of that is known."""
    for number, stage in enumerate(values.get("stage", ())):
        for index, exercise in enumerate(stage.get("exercise", ())):
            yield _part(_written_at(document, number, index), exercise)


def _written_at(document: Written, number: int, index: int) -> Written:
    """An exercise as it is written; empty where it stands under a mistyped key or is no table."""
    try:
        written = document["stage"][number]["exercise"][index]
    except LookupError:
        return {}
    return written if isinstance(written, dict) else {}


def _part(written: Written, values: Values) -> tuple[Exercise | None, bool]:
    dose = written.keys() & _DOSE
    markers = dose & FORM_OF.keys()
    if len(markers) != 1 or not dose <= values.keys() or _may_mean(written, EXERCISE, _OF_LENGTH):
        return None, False
    form = FORM_OF[markers.pop()]
    if not set(form.needs) <= values.keys():
        return None, False
    given = {"name": "", **{name: values[name] for name in _OF_LENGTH if name in values}}
    lost = {name for name in written.keys() & _OF_LENGTH if name not in values}
    if given.get("sides") == "alternate" and not form.alternates:
        lost.add("sides")
        del given["sides"]
    if lost & {"rest", "superset"}:
        given["rest"] = 0
    return build_exercise(given), not lost


def _alone(exercise: Exercise) -> Exercise:
    """An exercise without its neighbours; in a superset they may decide the rest."""
    return exercise if exercise.superset is None else replace(exercise, superset=None, rest_ms=0)


def _stage(exercises: Iterable[Exercise]) -> Stage:
    return Stage("", StageKind.OTHER, tuple(exercises))
