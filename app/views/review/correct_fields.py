"""What of a run can be corrected, part by part, in words."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import Enum

from app.analysis.local_time import known_zone
from app.domain.correctable import Subject, Value, as_value, utc_text
from app.domain.corrected import target_of_bout, target_of_rep
from app.domain.corrections import Correction, History, Target
from app.domain.plan import Side
from app.domain.records import BoutPrescribed, BoutRecord, RepRecord
from app.domain.words import side_word
from app.views.review import words
from app.views.review.details import RunDetails
from app.views.translation import message, tr

UNNAMED = message("unnamed fault")
AS_COUNTED = message("as counted")


class Kind(Enum):
    """How a value is entered."""

    SCALE = "scale"
    REPS = "reps"
    WORDS = "words"
    NAME = "name"
    MOMENT = "moment"
    MISSED = "missed"
    FAULTS = "faults"
    LOAD = "load"


@dataclass(frozen=True, slots=True)
class Field:
    """One field of one thing, with the value that holds today."""

    title: str
    target: Target
    name: str
    kind: Kind
    value: Value


@dataclass(frozen=True, slots=True)
class Part:
    """A run as a whole, or one attempt at a bout: its figures in words, and its fields.

    `corrected` names the fields that hold another value than the one first written.
    """

    title: str
    reps: str
    rpe: str
    pain: str
    note: str
    fields: tuple[Field, ...]
    corrected: frozenset[str]


_KINDS = {
    "athlete": (message("Athlete"), Kind.NAME),
    "started_at": (message("Date and time"), Kind.MOMENT),
    "session_rpe": (message("Session RPE"), Kind.SCALE),
    "reps_stated": (message("Reps"), Kind.REPS),
    "rpe": (message("RPE"), Kind.SCALE),
    "pain": (message("Pain"), Kind.SCALE),
    "note": (message("Note"), Kind.WORDS),
    "load_kg": (message("Load in kg"), Kind.LOAD),
    "missed": (message("done or missed"), Kind.MISSED),
    "faults": (message("faults"), Kind.FAULTS),
    "zone": (message("Time zone"), Kind.WORDS),
}


def parts_of(details: RunDetails) -> tuple[Part, ...]:
    """The run as a whole first, then each attempt at a bout in order."""
    return (_whole(details), *(_bout(details, asked, record) for asked, record in details.bouts))


def _whole(details: RunDetails) -> Part:
    header, closing = details.header, details.closing
    target = Target(Subject.RUN, header.run_id)
    values: dict[str, Value] = {
        "athlete": header.athlete,
        "started_at": utc_text(header.started_at),
        "session_rpe": closing.session_rpe,
        "note": closing.note,
    }
    return Part(
        tr("The session"),
        "",
        words.whole(closing.session_rpe),
        "",
        closing.note or "",
        tuple(_field(target, name, value) for name, value in values.items()),
        frozenset(name for name in values if differs(details.history, target, name)),
    )


def _bout(details: RunDetails, asked: BoutPrescribed, record: BoutRecord) -> Part:
    run_id = details.header.run_id
    target = target_of_bout(run_id, record)
    values: dict[str, Value] = {
        "reps_stated": record.reps_stated,
        "rpe": record.rpe,
        "pain": record.pain,
        "note": record.note,
        "load_kg": record.load_kg,
    }
    fields = [_field(target, name, value) for name, value in values.items()]
    for rep in record.reps:
        fields += _rep_fields(run_id, record, rep)
    return Part(
        bout_words(asked, record.attempt),
        words.whole(record.reps_done),
        words.whole(record.rpe),
        words.pain(record.pain),
        record.note or "",
        tuple(fields),
        record.corrected,
    )


def _rep_fields(run_id: str, record: BoutRecord, rep: RepRecord) -> list[Field]:
    target = target_of_rep(run_id, record, rep)
    which = rep_words(rep.rep, rep.side)
    return [
        Field(f"{which}: {tr(_KINDS[name][0])}", target, name, _KINDS[name][1], as_value(getattr(rep, name)))
        for name in ("missed", "faults")
    ]


def _field(target: Target, name: str, value: Value) -> Field:
    title, kind = _KINDS[name]
    return Field(tr(title), target, name, kind, value)


def differs(known: History, target: Target, field: str) -> bool:
    """Whether what holds of a field differs from what stood there before its first correction."""
    holding = known.holding.get((target, field))
    if holding is None:
        return False
    made = [each for each in known.corrections if each.key == (target, field)]
    first = next((each for each in made if not each.replaces), made[0])
    return holding.after != first.before


def bout_words(asked: BoutPrescribed, attempt: int) -> str:
    """Which bout it is: `2  Step-down, set 1, left, done again`."""
    parts = [asked.exercise, tr("set {n}").format(n=asked.set_number)]
    parts += [] if asked.side is Side.BOTH else [tr(side_word(asked.side)).lower()]
    parts += [] if attempt == 1 else [tr("attempt {n}").format(n=attempt)]
    return f"{asked.bout + 1}  {', '.join(parts)}"


def rep_words(rep: int | None, side: Side | None) -> str:
    """Which rep it is."""
    if side is None or side is Side.BOTH:
        return tr("Rep {n}").format(n=rep)
    return tr("Rep {n}, {side}").format(n=rep, side=tr(side_word(side)).lower())


def what_words(correction: Correction, bouts: Sequence[tuple[BoutPrescribed, BoutRecord]]) -> str:
    """What a correction is about: `2  Step-down, set 1, left: RPE`."""
    target, field = correction.change.target, correction.change.field
    title = tr(_KINDS[field][0]) if field in _KINDS else field
    if target.subject is Subject.RUN:
        return title
    asked = next((asked for asked, _ in bouts if asked.bout == target.bout), None)
    unknown = tr("Bout {n}").format(n=(target.bout or 0) + 1)
    which = unknown if asked is None else bout_words(asked, target.attempt or 1)
    if target.subject is Subject.REP:
        return f"{which}: {rep_words(target.rep, target.side)}, {title}"
    return f"{which}: {title}"


def value_words(field: str, value: Value, zone: str) -> str:
    """A value as a person reads it; moments by the clock of a time zone."""
    match field:
        case "started_at":
            return words.moment(datetime.fromisoformat(str(value)).astimezone(known_zone(zone)))
        case "missed":
            return tr("missed", "a rep") if value else tr("done", "a rep")
        case "faults":
            return fault_words(value) or tr("none", "faults")
        case "reps_stated" if value is None:
            return tr(AS_COUNTED)
        case _:
            return words.DASH if value is None or value == "" else str(value)


def fault_words(value: Value) -> str:
    """Faults in a line, commas between them."""
    return ", ".join(fault or tr(UNNAMED) for fault in value) if isinstance(value, tuple) else ""


def faults_from(text: str) -> tuple[str, ...]:
    """The faults that a line names, each once."""
    named = [part.strip() for part in text.split(",") if part.strip()]
    return tuple(dict.fromkeys("" if name == tr(UNNAMED) else name for name in named))
