"""Which group session comes of a plan: what was chosen goes before what the plan says, then what is usual."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from app.domain.athlete import Athlete
from app.domain.group import GroupError, GroupSession, Place
from app.domain.group_stations import Rotation, stations
from app.domain.group_together import together
from app.domain.group_waves import waves
from app.domain.grouping import Form, Grouping
from app.domain.plan import Plan


@dataclass(frozen=True, slots=True)
class GroupChoice:
    """What somebody chose for a group on a screen or in a command; None leaves it to the plan. In ms."""

    form: Form | None = None
    work_ms: int | None = None
    change_ms: int | None = None
    rounds: int | None = None
    swap_ms: int | None = None


def chosen_grouping(plan: Plan, choice: GroupChoice) -> Grouping:
    """How a group does a plan: as chosen, else as the plan says, else as is usual."""
    written = plan.group or Grouping()
    chosen = {name: getattr(choice, name) for name in GroupChoice.__dataclass_fields__}
    return replace(written, **{name: value for name, value in chosen.items() if value is not None})


def group_session(plan: Plan, athletes: Sequence[Athlete], grouping: Grouping) -> GroupSession:
    """The group session of a plan for the athletes in their order.

    Raises GroupError for what cannot be done, SessionTooLongError when somebody's reps make it too long.
    """
    match grouping.form:
        case Form.TOGETHER:
            return together(plan, athletes)
        case Form.STATIONS:
            rotation = Rotation(grouping.work_ms, grouping.change_ms, grouping.rounds)
            return stations(plan, athletes, rotation, station_places(plan, grouping.stations), grouping.teams)
        case Form.WAVES:
            return waves(plan, athletes, grouping.swap_ms)


def station_places(plan: Plan, names: Sequence[str]) -> tuple[Place, ...]:
    """Where the exercises of these names stand in the plan, the first of each name.

    Raises GroupError for a name that the plan does not have.
    """
    places: dict[str, Place] = {}
    for number, stage in enumerate(plan.stages):
        for place, exercise in enumerate(stage.exercises):
            places.setdefault(exercise.name, (number, place))
    for name in names:
        if name not in places:
            raise GroupError(f'"{name}" is no exercise of this plan; name stations as the plan does.')
    return tuple(places[name] for name in names)
