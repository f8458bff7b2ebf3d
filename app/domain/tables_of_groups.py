"""The tables of group sessions and of who was to come to them."""

from app.domain.grouping import MOST_MEMBERS, Form
from app.domain.table import Column, Table
from app.domain.values import Choice, Moment, Name, Text, Whole

GROUP_SESSIONS = Table(
    "group_sessions",
    "Sessions that a group was led through; each athlete has a run of their own.",
    (
        Column("id", Name(), "The name of the group session, unlike any other."),
        Column("form", Choice(tuple(Form)), "How the group went through the plan."),
        Column("choices", Text(), "Windows, rounds, stations and teams, as JSON; lengths in ms."),
        Column("started_at", Moment(), "When it began, in UTC."),
        Column("zone", Text(100), "The name of the time zone where that was."),
    ),
    ("id",),
)
GROUP_MEMBERS = Table(
    "group_members",
    "Who was to come to group sessions, and which run is theirs; who was absent has none.",
    (
        Column("id", Name(), "The name of the row, unlike any other."),
        Column("group", Name(), "Which group session."),
        Column("athlete", Name(), "Who."),
        Column("run", Name(), "The name of their run, whether or not there is one."),
        Column("place", Whole(0, MOST_MEMBERS - 1), "Their place in the order of the roster, from 0."),
        Column("choices", Text(), "What of the plan was different for them, and their team, as JSON."),
        Column("at", Moment(), "When it was written down, in UTC."),
        Column("zone", Text(100), "The name of the time zone where that was."),
    ),
    ("id",),
    {"group": "group_sessions", "athlete": "athletes"},
)
