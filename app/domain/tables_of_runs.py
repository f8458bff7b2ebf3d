"""The tables of people, plans and runs, and of what happened in them."""

from app.domain.dose import DoseKind
from app.domain.fact_rows import FACT_KINDS, FACT_WORDS, MOST_BOUTS, MOST_REPS
from app.domain.plan import Side, StageKind
from app.domain.table import Column, Table
from app.domain.values import (
    LONGEST_NAME,
    MOST_MS,
    Choice,
    Day,
    Digest,
    Flag,
    Moment,
    Name,
    Text,
    Whole,
    Words,
)

ATHLETES = Table(
    "athletes",
    "The people. The id decides who is meant, the name is what is shown.",
    (
        Column("id", Name(), "The name of the row, unlike any other."),
        Column("name", Text(LONGEST_NAME), "What the person is called; left out on request.", unknown=True),
        Column(
            "short_name",
            Words(empty=True),
            "What the person is called where there is little room.",
            unknown=True,
        ),
        Column(
            "consent_on",
            Day(),
            "Since when they agree to what is kept; unknown where nobody asked.",
            unknown=True,
        ),
        Column("consent_scope", Words(empty=True), "What they agree to.", unknown=True),
        Column(
            "reference_side",
            Choice((Side.LEFT, Side.RIGHT)),
            "The side that the other is measured against; unknown where nobody chose one.",
            unknown=True,
        ),
    ),
    ("id",),
)
PLANS = Table(
    "plans",
    "The plans as they were when a run began, named by the SHA-256 of title, line feed and text.",
    (
        Column("hash", Digest(), "The name of the plan, by its content."),
        Column("title", Text(), "What the session is called."),
        Column("text", Text(), "The plan file as it was read."),
    ),
    ("hash",),
)
PRESCRIBED = Table(
    "prescribed",
    "What each bout asks for. All bouts of a prescription have its name, the SHA-256 of what they say.",
    (
        Column("prescription", Digest(), "The name of the prescription, by its content."),
        Column("bout", Whole(0, MOST_BOUTS), "The number of the bout, from 0."),
        Column("stage_name", Text(LONGEST_NAME), "What the stage is called."),
        Column("stage_kind", Choice(tuple(StageKind)), "The rung of the ladder."),
        Column("exercise", Text(LONGEST_NAME), "What the exercise is called."),
        Column("set_number", Whole(1, MOST_BOUTS), "The number of the set, from 1."),
        Column("side", Choice(tuple(Side)), "The side of the body."),
        Column("low", Whole(0, MOST_REPS), "Reps from which the bout is met."),
        Column("high", Whole(0, MOST_REPS), "Reps to which the bout is led."),
        Column("work_ms", Whole(), "The length of the work in ms; unknown at one's own pace.", unknown=True),
        Column("contacts_per_rep", Whole(0, MOST_REPS), "Contacts a rep."),
        Column("load_kg", Text(40), "The load in kg as it was written.", unknown=True),
        Column("dose", Choice(tuple(DoseKind)), "The kind of dose.", unknown=True),
        Column(
            "rep_tut_ms",
            Whole(),
            "The nominal time under tension of one rep in ms, where the dose defines one.",
            unknown=True,
        ),
    ),
    ("prescription", "bout"),
)
RUNS = Table(
    "runs",
    "The runs: who carried out which plan, and when it began.",
    (
        Column("id", Name(), "The name of the run, unlike any other."),
        Column("athlete", Name(), "Who it was."),
        Column("plan", Digest(), "Which plan."),
        Column("prescription", Digest(), "What its bouts asked for."),
        Column("started_at", Moment(), "When it began, in UTC."),
        Column("zone", Text(100), "The name of the time zone where it was done."),
        Column("invented", Flag(), "Whether it is demo data."),
        Column(
            "imported",
            Flag(),
            "Whether it was taken from a list of past training, so that only a day is known.",
        ),
    ),
    ("id",),
    {"athlete": "athletes", "plan": "plans"},
)
_FACT_ABOUT = {
    "at_ms": "When, in ms from the beginning of the run.",
    "bout": "The number of the bout, from 0.",
    "attempt": "Which attempt at the bout, from 1.",
    "rep": "The number of the rep within the bout, from 1, within a side where sides alternate.",
    "side": "The side of the body.",
    "start_ms": "When the rep began, in ms from the beginning of the run.",
    "late_ms": "How long after its scheduled end the program noticed, in ms.",
    "fault": "The fault that was marked; unknown where none was named.",
    "outcome": "How the bout or the run ended.",
    "reason": "Why the bout was left out, or why the run stood still.",
    "reps": "Reps the athlete says were done.",
    "rpe": "Exertion as rated, 0 to 10.",
    "pain": "Pain as stated, 0 to 10.",
    "note": "What was noted.",
    "by_ms": "By how much a rest was made longer, in ms.",
    "lag_ms": "How long after the end of the run the answer came, in ms.",
    "load_kg": "The load that was used, in kg as it was said.",
}
FACTS = Table(
    "facts",
    "What happened, one row each, as it was written down. Which columns have a value depends on what it was.",
    (
        Column("run", Name(), "The run it happened in."),
        Column("number", Whole(0, MOST_MS), "Its place among the facts of the run, from 0."),
        Column("fact", Choice(tuple(FACT_WORDS)), "What happened."),
        *(Column(name, FACT_KINDS[name], about, unknown=True) for name, about in _FACT_ABOUT.items()),
    ),
    ("run", "number"),
    {"run": "runs"},
)
BRANCHES = Table(
    "branches",
    "Where a run was led on in two places, what was written in the other one.",
    (
        Column("run", Name(), "The run."),
        Column("hash", Digest(), "The SHA-256 of the facts."),
        Column("facts", Text(), "All facts of the run as they were written there, in bytes, base64."),
    ),
    ("run", "hash"),
    {"run": "runs"},
)
