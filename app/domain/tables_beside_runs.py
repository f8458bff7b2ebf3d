"""The tables of what is said beside a run or after it: answers, results, notes, corrections."""

from app.domain.correctable import Subject
from app.domain.fact_rows import MOST_BOUTS, MOST_REPS, SCALE
from app.domain.keeping import DeviceKind, RatingKind
from app.domain.plan import Side
from app.domain.readiness import LEAST, MOST, Decision
from app.domain.table import Column, Table
from app.domain.values import Choice, Decimals, Flag, Moment, Name, Text, Whole, Words

_SIDE = Choice(tuple(Side))
_ITEM = Whole(LEAST, MOST)
_ID = Column("id", Name(), "The name of the row, unlike any other.")
_ATHLETE = Column("athlete", Name(), "Whose it is.")
_RUN = Column("run", Name(), "The run it belongs to, where it belongs to one.", unknown=True)
_WHEN = (
    Column("at", Moment(), "When it was written down, in UTC."),
    Column("zone", Text(100), "The name of the time zone where that was."),
)
_NOTE = Column("note", Words(empty=True), "What was noted.", unknown=True)

DEVICES = Table(
    "devices",
    "The instruments that tests were measured with.",
    (
        _ID,
        Column("kind", Choice(tuple(DeviceKind)), "What it is for."),
        Column("name", Words(), "What it is called."),
        *_WHEN,
    ),
    ("id",),
)
READINESS = Table(
    "readiness",
    "What athletes said of themselves before a session, as it was first written down.",
    (
        _ID,
        _ATHLETE,
        _RUN,
        *_WHEN,
        Column("sleep", _ITEM, "Sleep, 1 (very good) to 7 (very bad).", unknown=True),
        Column("fatigue", _ITEM, "Fatigue, 1 (very low) to 7 (very high).", unknown=True),
        Column("stress", _ITEM, "Stress, 1 (very low) to 7 (very high).", unknown=True),
        Column("soreness", _ITEM, "Muscle soreness, 1 (very low) to 7 (very high).", unknown=True),
        Column("pain", SCALE, "Pain, 0 to 10.", unknown=True),
        Column("pain_place", Words(empty=True), "Where the pain is.", unknown=True),
        Column("pain_side", _SIDE, "On which side.", unknown=True),
        Column("changed", Flag(), "Whether anything changed in their health.", unknown=True),
        Column("red_flag", Flag(), "Whether a sign is there with which nobody trains.", unknown=True),
        _NOTE,
        Column(
            "decision",
            Choice(tuple(Decision)),
            "What was chosen where no session was to be led: spoken to their practitioner, or skipped.",
            unknown=True,
        ),
    ),
    ("id",),
    {"athlete": "athletes", "run": "runs"},
)
RATINGS = Table(
    "ratings",
    "What athletes said of a run after it, as it was first written down.",
    (
        _ID,
        Column("run", Name(), "The run."),
        Column("kind", Choice(tuple(RatingKind)), "What was rated."),
        Column("value", SCALE, "The answer, 0 to 10; unknown where there was none.", unknown=True),
        *_WHEN,
        Column("place", Words(empty=True), "Where it hurt.", unknown=True),
        Column("side", _SIDE, "On which side.", unknown=True),
        _NOTE,
    ),
    ("id",),
    {"run": "runs"},
)
RESULTS = Table(
    "results",
    "Tries at tests, as they were first written down.",
    (
        _ID,
        _ATHLETE,
        Column("test", Words(), "Which test."),
        Column("value", Decimals(), "What was measured, in decimals."),
        Column("unit", Words(), "In which unit."),
        *_WHEN,
        Column("side", _SIDE, "The side of the body."),
        Column("attempt", Whole(1, 1_000), "Which try, from 1."),
        Column("device", Name(), "What it was measured with.", unknown=True),
        _NOTE,
    ),
    ("id",),
    {"athlete": "athletes", "device": "devices"},
)
NOTES = Table(
    "notes",
    "Words about athletes or their runs, as they were first written down.",
    (
        _ID,
        _ATHLETE,
        _RUN,
        Column("text", Words(), "The words."),
        Column("who", Words(), "Who wrote them."),
        *_WHEN,
    ),
    ("id",),
    {"athlete": "athletes", "run": "runs"},
)
CORRECTIONS = Table(
    "corrections",
    "What was set right, one row a correction of one field; none is ever taken away. The values are JSON.",
    (
        _ID,
        Column("subject", Choice(tuple(Subject)), "What kind of thing is corrected."),
        Column("subject_id", Name(), "The run, for runs, bouts and reps; else the row itself."),
        Column("bout", Whole(0, MOST_BOUTS), "The number of the bout, from 0.", unknown=True),
        Column("attempt", Whole(1, MOST_BOUTS), "Which attempt, from 1.", unknown=True),
        Column("rep", Whole(0, MOST_REPS), "The number of the rep.", unknown=True),
        Column("side", _SIDE, "The side of the rep.", unknown=True),
        Column("field", Text(40), "Which field."),
        Column("before", Text(), "What held until then."),
        Column("after", Text(), "What holds since, unless a later correction replaces it."),
        Column("who", Words(), "Who corrected it."),
        Column("why", Words(), "Why."),
        *_WHEN,
        Column("replaces", Text(), "The corrections that it was made in the knowledge of."),
    ),
    ("id",),
)
