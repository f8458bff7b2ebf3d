"""The six forms of a dose as a table: the key that marks each, what it needs, what may stand beside it."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from app.domain.dose import (
    DEFAULT_MOVE_MS,
    DEFAULT_RELAX_MS,
    DEFAULT_RESET_MS,
    Dose,
    HoldReps,
    OwnPaceReps,
    SignalReps,
    StickReps,
    TempoReps,
    WorkTime,
)
from app.domain.tempo import Begins

Values = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class DoseForm:
    """One form of a dose: marked by `marker`; `build` makes the dose from the values read."""

    marker: str
    needs: tuple[str, ...]
    may: tuple[str, ...]
    alternates: bool
    build: Callable[[Values], Dose]

    @property
    def keys(self) -> tuple[str, ...]:
        """Every key that may be written with this form."""
        return (self.marker, *self.needs, *self.may)


def _tempo(values: Values) -> Dose:
    return TempoReps(values["reps"], values["tempo"], Begins(values.get("begins", Begins.ECCENTRIC)))


def _hold(values: Values) -> Dose:
    return HoldReps(values["reps"], values["hold"], values.get("relax", DEFAULT_RELAX_MS))


def _stick(values: Values) -> Dose:
    move, reset = values.get("move", DEFAULT_MOVE_MS), values.get("reset", DEFAULT_RESET_MS)
    return StickReps(values["reps"], values["stick"], move, reset)


FORMS: tuple[DoseForm, ...] = (
    DoseForm("tempo", ("reps",), ("begins",), True, _tempo),
    DoseForm("hold", ("reps",), ("relax",), True, _hold),
    DoseForm("stick", ("reps",), ("move", "reset"), True, _stick),
    DoseForm("every", ("reps",), (), True, lambda values: SignalReps(values["reps"], values["every"])),
    DoseForm("pace", ("reps",), (), False, lambda values: OwnPaceReps(values["reps"])),
    DoseForm("work", (), (), False, lambda values: WorkTime(values["work"])),
)
FORM_OF: Mapping[str, DoseForm] = {form.marker: form for form in FORMS}
