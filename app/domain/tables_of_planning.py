"""The tables of planned sessions and of what became of them."""

from app.domain.planned import ChangeKind
from app.domain.table import Column, Table
from app.domain.values import Choice, Clock, Day, Moment, Name, Text, Words

_ID = Column("id", Name(), "The name of the row, unlike any other.")
_ATHLETE = Column("athlete", Name(), "Whose it is.")
_WHEN = (
    Column("at", Moment(), "When it was written down, in UTC."),
    Column("zone", Text(100), "The name of the time zone where that was, and in which days are meant."),
)

PLANNED = Table(
    "planned",
    "Which plan on which day for whom.",
    (
        _ID,
        _ATHLETE,
        Column("plan_title", Words(), "What the session is called."),
        Column("day", Day(), "The day, the first one where it is repeated."),
        Column("clock", Clock(), "The time of day; unknown where any will do.", unknown=True),
        Column("until", Day(), "The last day of a session that is repeated every week.", unknown=True),
        Column("plan_file", Words(empty=True), "Where the plan is.", unknown=True),
        *_WHEN,
    ),
    ("id",),
    {"athlete": "athletes"},
)
PLANNED_CHANGES = Table(
    "planned_changes",
    "What became of planned sessions; of those about one day the latest holds.",
    (
        _ID,
        Column("planned", Name(), "Which planned session."),
        _ATHLETE,
        Column("kind", Choice(tuple(ChangeKind)), "What became of it."),
        Column("day", Day(), "The day as it was first planned; of an end the first day without a session."),
        Column("to_day", Day(), "The day to which it was moved.", unknown=True),
        Column("reason", Words(empty=True), "Why.", unknown=True),
        *_WHEN,
    ),
    ("id",),
    {"planned": "planned", "athlete": "athletes"},
)
