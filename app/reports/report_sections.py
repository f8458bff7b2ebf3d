"""The sections of a report: adherence, load, sides, tests, pain, notes, cautions and definitions."""

from collections.abc import Iterable

from app.analysis.figure import Figure, Rule
from app.analysis.figures_adherence import REPS, SESSIONS, STUCK, TEMPO
from app.analysis.figures_load import CONTACTS, MONOTONY, STRAIN, TENSION, VOLUME, WEEK
from app.analysis.figures_tests import BISHOP, GOKELER, SEN
from app.analysis.figures_trust import HOPKINS
from app.analysis.figures_wellbeing import PAIN, TOTAL
from app.analysis.local_time import known_zone
from app.analysis.pain import Zone, zone
from app.analysis.tests_catalog import tried_tests
from app.analysis.tests_kinds import FieldTest
from app.domain.keeping import Note
from app.domain.plan import Side
from app.reports.report_charts import (
    contacts_chart,
    days_tested,
    kept_chart,
    load_chart,
    pain_chart,
    test_chart,
)
from app.reports.report_found import Found, given
from app.reports.report_parts import Block, Charts, Heading, Lines, Table
from app.reports.report_summary import DIFFERENCE, unsettled
from app.reports.report_words import DASH, Words

MOST_WEEKS, MOST_STAGES, MOST_CHARTS, MOST_ROWS = 8, 6, 4, 8
CAUTIONS = (
    "This is no medical device. It does not diagnose, clear or predict injury.",
    "Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional.",
    "Nothing advances by itself: the practitioner decides. Local practice and law come first.",
    "A dash or a gap is unknown, never nought.",
)
TERMS = (
    Rule("Interval", "1", "95 % interval, as if sessions or reps were independent", "Wilson 1927."),
    Rule("Difference of the sides", "%", "(greater - smaller) / greater x 100", BISHOP),
    Rule("Limb symmetry index", "%", "other side / reference side x 100", GOKELER),
    Rule("Error of the test", "1", "1.96 x sqrt 2 x typical error of the repeated tries of all", HOPKINS),
    Rule("Slope", "1", "median of the slopes of all pairs of days", SEN),
)
INDEX_TOLD = {
    None: "No index: nobody has said which side is the reference.",
    Side.LEFT: "Index of the right side, reference left.",
    Side.RIGHT: "Index of the left side, reference right.",
}
EXPLAINED = (SESSIONS, REPS, TEMPO, WEEK, MONOTONY, STRAIN, CONTACTS, TENSION, VOLUME, PAIN, TOTAL, *TERMS)


def adherence(found: Found, say: Words) -> tuple[Block, ...]:
    """Sessions, reps and tempo with their intervals, by week and by stage."""
    whole = [_share(say, say(rule.name), found.one(rule.name)) for rule in (SESSIONS, REPS, TEMPO)]
    every = found.parts(REPS.name, "stage: ")
    stages = every[:MOST_STAGES]
    rows = [
        _share(say, say("Reps, {stage}", stage=figure.of.partition(": ")[2]), figure) for figure in stages
    ]
    head = tuple(map(say, ("What", "Done", "Of", "Share", "95 % interval")))
    stuck = [each for each in found.parts(STUCK.name, "side: ") if each.value is not None]
    for figure in stuck:
        side = say(figure.of.partition(": ")[2])
        rows.append(_share(say, say("Landings stuck, {side}", side=side), figure))
    charts = Charts((kept_chart(found, say), contacts_chart(found, say)))
    told = Table(head, (*whole, *rows)), *_left_out(len(every) - MOST_STAGES, say)
    return Heading(say("Adherence")), *told, charts


def load(found: Found, say: Words) -> tuple[Block, ...]:
    """Load of the last weeks, with monotony and strain; what was done beside it."""
    head = tuple(
        map(say, ("Week", "Load, AU", "Monotony", "Strain, AU", "Contacts", "Tension, s", "Volume, kg"))
    )
    names = tuple(rule.name for rule in (WEEK, MONOTONY, STRAIN, CONTACTS, TENSION, VOLUME))
    rows = []
    for monday in found.mondays[-MOST_WEEKS:]:
        values = [found.value(name, monday.isoformat()) for name in names]
        cells = [
            say.number(value) if name == MONOTONY.name else say.whole(value)
            for name, value in zip(names, values, strict=True)
        ]
        rows.append((say.week(monday), *cells))
    blocks: list[Block] = [Heading(say("Load")), Table(head, tuple(rows))]
    if len(found.mondays) > MOST_WEEKS:
        blocks.append(Lines((say("The table has the last {n} weeks, the chart all.", n=MOST_WEEKS),)))
    blocks.append(Charts((load_chart(found, say), pain_chart(found, say))))
    return tuple(blocks)


def sides(found: Found, say: Words) -> tuple[Block, ...]:
    """Left against right of every test with both, raw values first."""
    rows = [
        _sides(found, say, test, figure)
        for test in tried_tests(found.record.results)
        for figure in found.of_days(DIFFERENCE.format(test=test.name))
        if figure.of
    ]
    if not rows:
        told = Lines((say("No test was done on both sides on one day."),))
        return Heading(say("Left and right")), told
    names = ("Test", "Left", "Right", "Difference", "Index, %", "Behind", "Against its error")
    index = say(INDEX_TOLD[found.record.reference])
    return Heading(say("Left and right")), *_cut(tuple(map(say, names)), rows, say), Lines((index,))


def progress(found: Found, say: Words) -> tuple[Block, ...]:
    """Best, last, change beside the error of each test, slope with its interval, most often done first."""
    every = ((days_tested(found, test), test) for test in tried_tests(found.record.results))
    tested = sorted(every, key=lambda pair: -pair[0])
    done = [test for days, test in tested if days]
    if not done:
        return Heading(say("Tests")), Lines((say("No test was done in this time."),))
    rows = [row for test in done for row in _progress(found, say, test)]
    names = ("Test", "Days", "Best", "Last", "Change", "Error", "Slope a week (95 %)")
    often = tested[:MOST_CHARTS]
    charts = tuple(test_chart(found, say, test) for days, test in often if days > 1)
    blocks: tuple[Block, ...] = (Heading(say("Tests")), *_cut(tuple(map(say, names)), rows, say))
    return (*blocks, Charts(charts)) if charts else blocks


def pain(found: Found, say: Words) -> tuple[Block, ...]:
    """How often pain lay in each zone, how mornings after were, and the last readiness."""
    sessions = found.record.sessions_within
    zones = [zone(each.pain) for each in sessions]
    worse, known = unsettled(found.record)
    rows = (
        (say("Sessions with pain 0 to 2"), say.whole(zones.count(Zone.SAFE) if any(zones) else None)),
        (say("Sessions with pain 3 to 5"), say.whole(zones.count(Zone.CAUTION) if any(zones) else None)),
        (say("Sessions with pain above 5"), say.whole(zones.count(Zone.STOP) if any(zones) else None)),
        (say("Sessions without an answer"), say.whole(zones.count(None))),
        (say("Mornings after with pain that had not settled"), say.whole(worse if known else None)),
        (say("Mornings after that are known"), say.whole(known)),
        (say("Readiness as last answered, 4 (well) to 28 (badly)"), _last_answered(found, say)),
    )
    return Heading(say("Pain and readiness")), Table((say("What"), say("How many")), rows)


def notes(chosen: Iterable[Note], say: Words) -> tuple[Block, ...]:
    """The notes chosen, each with its day and who wrote it; nothing where none was."""
    told = []
    for note in sorted(chosen, key=lambda each: (each.at, each.id)):
        day = say.day(note.at.astimezone(known_zone(note.zone)).date())
        told.append(say("{day}, {who}: {text}", day=day, who=note.who, text=note.text))
    return (Heading(say("Notes")), Lines(tuple(told))) if told else ()


def cautions(say: Words, more: Iterable[str] = ()) -> tuple[Block, ...]:
    """What is always to be kept in mind, and `more` of this report."""
    return Heading(say("Keep in mind")), Lines((*map(say, CAUTIONS), *more))


def definitions(say: Words, more: Iterable[Rule] = ()) -> tuple[Block, ...]:
    """How each figure is made, and where that comes from; `more` are those that not every report has."""
    rules = (*EXPLAINED, *more)
    rows = tuple((say(rule.name), say(rule.formula), say.known(rule.source)) for rule in rules)
    head = say("Figure"), say("How it is made"), say("Source")
    return Heading(say("What the figures are")), Table(head, rows, text=True)


def _cut(head: tuple[str, ...], rows: list[tuple[str, ...]], say: Words) -> tuple[Block, ...]:
    """The table with as many rows as a report has room for, and how many are left out."""
    return Table(head, tuple(rows[:MOST_ROWS])), *_left_out(len(rows) - MOST_ROWS, say)


def _left_out(more: int, say: Words) -> tuple[Block, ...]:
    if more <= 0:
        return ()
    one, many = "{n} more row is among the figures.", "{n} more rows are among the figures."
    return (Lines((say.counted(more, one, many),)),)


def _last_answered(found: Found, say: Words) -> str:
    known = [figure for figure in found.of_days(TOTAL.name) if figure.value is not None]
    return say.whole(known[-1].value if known else None)


def _share(say: Words, told: str, figure: Figure | None) -> tuple[str, ...]:
    if figure is None or figure.value is None:
        return told, DASH, DASH, DASH, DASH
    done = figure.inputs[0][1]
    count = done if isinstance(done, int | float) else None
    return (
        told,
        say.whole(count),
        say.whole(figure.n),
        say.percent(figure.value),
        say.bounds(figure.low, figure.high),
    )


def _sides(found: Found, say: Words, test: FieldTest, figure: Figure) -> tuple[str, ...]:
    left, right, behind = (given(figure, label) for label in ("left", "right", "side behind"))
    return (
        say.called_in_unit(test),
        say.number(left) if isinstance(left, float) else DASH,
        say.number(right) if isinstance(right, float) else DASH,
        DASH if figure.value is None else say("{n} %", n=say.number(figure.value)),
        say.number(found.value(f"{test.name}: limb symmetry index", figure.of)),
        say("neither") if behind == Side.BOTH.value else say(str(behind)),
        say(str(given(figure, "against its error")).replace("_", " ")),
    )


def _progress(found: Found, say: Words, test: FieldTest) -> Iterable[tuple[str, ...]]:
    for side in (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,):
        of = f"side: {side.value}" if test.by_side else ""
        last, slope = found.one(f"{test.name}: last", of), found.one(f"{test.name}: slope", of)
        if last is None or not last.n:
            continue
        name = say.called_in_unit(test)
        told = say.number(None if slope is None else slope.value)
        if slope is not None and slope.low is not None:
            bounds = say("{low} to {high}", low=say.number(slope.low), high=say.number(slope.high))
            told = f"{told} ({bounds})"
        yield (
            say("{test}, {side}", test=name, side=say(side.value)) if test.by_side else name,
            say.whole(last.n),
            say.number(found.value(f"{test.name}: best", of)),
            say.number(last.value),
            say.number(found.value(f"{test.name}: change", of)),
            say.number(found.value(f"{test.name}: minimal detectable change", "")),
            told,
        )
