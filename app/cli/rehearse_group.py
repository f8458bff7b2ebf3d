"""A rehearsal of a whole group, each athlete's run read back from the database."""

import argparse
import json
import sys
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, Any

from app import wiring
from app.cli.group_words import athletes_of, choice_of
from app.cli.recorded import as_text, recorded

if TYPE_CHECKING:
    from app.domain.group_record import GroupRecord
    from app.run.room_pen import RoomPen
    from app.store.database import Database


def make_pen(arguments: argparse.Namespace, database: "Database") -> "RoomPen":
    """A room of the athletes of a roster that nobody has begun yet, to be written into a database."""
    from app.domain.group_choice import chosen_grouping, group_session
    from app.run.room_controller import RoomController
    from app.run.room_pen import RoomPen

    written = wiring.read_plan(arguments.plan)
    names = (arguments.athlete,) if arguments.athlete else ()
    athletes = athletes_of(written.plan, arguments.roster, names)
    grouping = chosen_grouping(written.plan, choice_of(arguments))
    session = group_session(written.plan, athletes, grouping)
    header = partial(wiring.new_member_header, written=written, invented=True)
    return RoomPen(RoomController(session), database.journal, wiring.new_group(session, grouping), header)


def rehearse_group(pen: "RoomPen", database: "Database", wait: Callable[[int], None]) -> dict[str, Any]:
    """Lead the room to its end, and say what the database holds of it, ready for JSON."""
    from app.run.room_rehearsal import rehearse_room

    rehearse_room(pen, wait)
    return recorded_group(database, pen.group, pen)


def recorded_group(database: "Database", group: "GroupRecord", pen: "RoomPen") -> dict[str, Any]:
    """What the database holds of each athlete's run; a run that never began is null."""
    parts = pen.room.session.parts
    there = database.queries.run_ids()
    reports = [
        recorded(database, member.run_id, parts[member.place].timeline) if member.run_id in there else None
        for member in sorted(group.members, key=lambda member: member.place)
    ]
    return {"group": group.group_id, "form": group.form.value, "athletes": reports}


def say(report: dict[str, Any], *, as_json: bool) -> None:
    """Print what was recorded of a group."""
    if as_json:
        sys.stdout.write(json.dumps(report, indent=2) + "\n")
        return
    runs = [run for run in report["athletes"] if run is not None]
    sys.stdout.write("\n".join(as_text(run) for run in runs))
    done, asked = (sum(run[name] for run in runs) for name in ("reps_recorded", "reps_prescribed"))
    people = len(report["athletes"])
    sys.stdout.write(f"\n{report['form']}, {people} athletes: recorded {done} of {asked} reps\n")
