"""The columns of a run's bouts: what each shows and says."""

from app.domain.plan import Side
from app.domain.readiness import PAIN_LIMIT
from app.domain.records import BoutOutcome
from app.views.review import words
from app.views.review.marks import marked
from app.views.review.run.strip import fault_names, outcome_words, reps_words, strip_words
from app.views.review.run.view import BoutLine
from app.views.translation import tr
from app.views.widgets.rows_model import Column, Tone

STRIP = 3
"""The place of the column that is painted."""
LETTERS = {1: 22, 5: 16, 9: 20}
"""Columns of free words are at most so many letters wide; their tooltips have all of them."""


def bout_columns(*, pain: bool = True) -> tuple[Column[BoutLine], ...]:
    """All columns; without `pain` neither pain nor notes, nor that pain was why something was left out."""
    reasons: Column[BoutLine] = Column(
        tr("Outcome"), outcome_words if pain else _outcome_alone, outcome_words, tone=_tone
    )
    return (
        Column(tr("Bout"), lambda line: f"{line.asked.bout + 1}", lambda line: line.asked.bout, right=True),
        Column(tr("Exercise"), _exercise, lambda line: line.asked.bout, tip=_where),
        Column(tr("Set, side"), _which, lambda line: line.asked.bout),
        Column(
            tr("Planned above, done below"),
            strip_words,
            lambda line: line.asked.bout,
            wide=True,
            hint=tr("Each rep as a profile over time; a cross is a rep that was missed, a square a fault"),
        ),
        Column(
            tr("Reps"),
            _reps,
            lambda line: line.record.reps_done if line.record else None,
            right=True,
            hint=tr("Done, of those planned"),
        ),
        Column(tr("Faults"), _faults, _faults),
        reasons,
        Column(
            tr("RPE"),
            lambda line: _rated(line, "rpe"),
            lambda line: line.record.rpe if line.record else None,
            right=True,
        ),
        *(_private() if pain else ()),
    )


def _private() -> tuple[Column[BoutLine], ...]:
    return (
        Column(
            tr("Pain"),
            lambda line: _rated(line, "pain"),
            lambda line: line.record.pain if line.record else None,
            right=True,
            tone=lambda line: Tone.ATTENTION if _hurt(line) else Tone.INK,
        ),
        Column(tr("Note"), _note, _note),
    )


def _exercise(line: BoutLine) -> str:
    return line.asked.exercise


def _where(line: BoutLine) -> str:
    load = line.record.load_kg if line.record and line.record.load_kg else line.asked.load_kg
    told = [line.asked.stage_name, line.asked.exercise]
    told += [tr("{load} kg").format(load=load)] if load is not None else []
    return words.DOT.join(told)


def _which(line: BoutLine) -> str:
    parts = [f"{line.asked.set_number}"]
    if line.asked.side is not Side.BOTH:
        parts.append(tr("left") if line.asked.side is Side.LEFT else tr("right"))
    if line.record is not None and line.record.attempt > 1:
        parts.append(tr("attempt {n}").format(n=line.record.attempt))
    return ", ".join(parts)


def _reps(line: BoutLine) -> str:
    planned = reps_words(line.asked.low, line.asked.high)
    if line.record is None:
        return tr("{n} of {m}").format(n=words.DASH, m=planned)
    told = tr("{n} of {m}").format(n=words.whole(line.record.reps_done), m=planned)
    return marked(told, line.record.corrected, "reps_stated", "missed")


def _faults(line: BoutLine) -> str:
    if line.record is None:
        return ""
    counted: dict[str, int] = {}
    for rep in line.record.reps:
        for fault in rep.faults:
            counted[fault] = counted.get(fault, 0) + 1
    told = ", ".join(
        fault_names((fault,)) if times == 1 else f"{fault_names((fault,))} × {times}"
        for fault, times in counted.items()
    )
    return marked(told, line.record.corrected, "faults")


def _outcome_alone(line: BoutLine) -> str:
    skipped = line.record is not None and line.record.outcome is BoutOutcome.SKIPPED
    return tr("left out") if skipped else outcome_words(line)


def _rated(line: BoutLine, name: str) -> str:
    if line.record is None:
        return words.DASH
    value: int | None = getattr(line.record, name)
    return marked(words.pain(value) if name == "pain" else words.whole(value), line.record.corrected, name)


def _hurt(line: BoutLine) -> bool:
    return line.record is not None and (line.record.pain or 0) > PAIN_LIMIT


def _note(line: BoutLine) -> str:
    return " ".join((line.record.note or "").split()) if line.record else ""


def _tone(line: BoutLine) -> Tone:
    done = line.record is not None and line.record.outcome is BoutOutcome.DONE
    return Tone.INK if done else Tone.QUIET
