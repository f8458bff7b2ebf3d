"""Hypothesis strategies shared by tests."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from functools import cache

from hypothesis import strategies as st

from app.domain.dose import Band, Dose, HoldReps, OwnPaceReps, SignalReps, StickReps, TempoReps, WorkTime
from app.domain.grouping import Form, Grouping
from app.domain.length import session_ms
from app.domain.plan import (
    LEAST_LEAD_IN_MS,
    LONGEST_SESSION_MS,
    Exercise,
    First,
    Level,
    Plan,
    Side,
    Sides,
    Stage,
    StageKind,
    StageOrder,
    Words,
)
from app.domain.records import (
    BoutBegan,
    BoutChosen,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    FaultMarked,
    LoadUsed,
    Paused,
    PauseReason,
    RepDone,
    RepMissed,
    RestExtended,
    Resumed,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    RunSummary,
    SessionRated,
    SkipReason,
    TakenBack,
)
from app.domain.tempo import Begins, Tempo
from tests.summaries import SQUAD, summary

ZONES = (
    "UTC",
    "Europe/Lisbon",
    "Europe/Copenhagen",
    "America/St_Johns",
    "Pacific/Auckland",
    "Asia/Kathmandu",
)


@st.composite
def summaries(draw: st.DrawFn) -> RunSummary:
    """Any run, ended or not, anywhere between 2019 and 2029, whatever is unknown."""
    prescribed = draw(st.integers(0, 400))
    met = draw(st.integers(0, prescribed))
    outcome = draw(st.sampled_from([*RunOutcome, None]))
    naive = draw(st.datetimes(datetime(2019, 1, 1), datetime(2029, 12, 31)))  # noqa: DTZ001 - made UTC below
    return summary(
        run_id=str(draw(st.uuids())),
        athlete=draw(st.sampled_from(SQUAD)),
        started_at=naive.replace(tzinfo=UTC),
        zone=draw(st.sampled_from(ZONES)),
        outcome=outcome,
        elapsed_ms=None if outcome is None else draw(st.integers(0, 6 * 3_600_000)),
        reps_prescribed=prescribed,
        reps_met=met,
        reps_done=met + draw(st.integers(0, 30)),
        session_rpe=draw(st.none() | st.integers(0, 10)),
        pain=draw(st.none() | st.integers(0, 10)),
    )


PHRASES = (
    "Split squat",
    "knee follows the toe",
    'a "quoted" word',
    "back\\slash",
    "Füße, 膝, 👣",
    " spaced ",
    "= + #",
)
ALL_WORDS = Words("lower", "stay", "lift", "let go", "jump", "stick", "step back", "go", "work")
_UNSEEN = "\u061c\u200e\u200f\u2028\u2029\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


@cache
def texts(longest: int = 40) -> st.SearchStrategy[str]:
    """Any text a plan may hold: on one line, not blank, no controls, no marks of reading direction."""
    alphabet = st.characters(exclude_categories=("Cc", "Cs"), exclude_characters=_UNSEEN)
    anything = st.text(alphabet, min_size=1, max_size=longest).filter(lambda text: bool(text.strip()))
    return st.one_of(st.sampled_from(PHRASES), st.sampled_from(PHRASES), anything)


@cache
def bands(least: int, most: int) -> st.SearchStrategy[Band]:
    """A number, or a range, within limits."""
    bounds = st.tuples(st.integers(least, most), st.integers(least, most))
    return st.integers(least, most).map(Band.exactly) | bounds.map(lambda pair: Band(min(pair), max(pair)))


@cache
def lengths(least_ms: int = 100, most_ms: int = 12_000) -> st.SearchStrategy[int]:
    """A length in whole ms, most often of whole seconds."""
    whole = st.integers(-(-least_ms // 1000), most_ms // 1000).map(lambda seconds: seconds * 1000)
    return whole | st.integers(least_ms, most_ms)


def rep_bands() -> st.SearchStrategy[Band]:
    """Reps of a set, a number or a range."""
    return bands(1, 12)


@cache
def tempi() -> st.SearchStrategy[Tempo]:
    """Any tempo of phases up to 6 s in tenths of a second, X where X may be, not all of it 0."""
    phase = st.integers(0, 60).map(lambda tenths: tenths * 100) | st.sampled_from([0, 1000, 2000, 3000])
    any_tempo = st.builds(Tempo, phase | st.none(), phase, phase | st.none(), phase)
    return any_tempo.map(lambda tempo: Tempo(3000, 0, 1000, 0) if tempo == Tempo(0, 0, 0, 0) else tempo)


@cache
def doses() -> st.SearchStrategy[Dose]:
    """A dose of any kind."""
    seconds = bands(1, 12).map(lambda band: Band(band.low * 1000, band.high * 1000))
    held = seconds | bands(100, 12_000)
    return st.one_of(
        st.builds(TempoReps, rep_bands(), tempi(), st.sampled_from(Begins)),
        st.builds(HoldReps, rep_bands(), held, st.just(0) | lengths()),
        st.builds(StickReps, rep_bands(), held, lengths(), st.just(0) | lengths()),
        st.builds(SignalReps, rep_bands(), lengths()),
        st.builds(OwnPaceReps, rep_bands()),
        st.builds(WorkTime, bands(100, 120_000)),
    )


@cache
def exercises() -> st.SearchStrategy[Exercise]:
    """Any exercise, its words and numbers within what a plan file may hold."""
    few = st.just(()) | st.lists(texts(), max_size=3).map(tuple)
    word = st.none() | texts(12)
    any_exercise = st.builds(
        Exercise,
        name=texts(),
        dose=doses(),
        target=st.none() | texts(),
        sides=st.sampled_from(Sides),
        first=st.sampled_from(First),
        sets=st.integers(1, 4),
        rest_ms=lengths(0, 180_000),
        load_kg=st.none() | st.integers(0, 1_000_000).map(lambda grams: Decimal(grams) / 1000),
        contacts=st.none() | st.integers(0, 4),
        superset=st.sampled_from([None, None, "A", "b", "Я"]),
        setup=st.none() | texts(),
        cues=few,
        faults=few,
        words=st.sampled_from([Words(), ALL_WORDS]) | st.builds(Words, word, word, word, go=word),
        picture=st.sampled_from([None, "figures/a.svg", "~b.png"]),
        stop_if=few,
        easier=st.none() | texts(),
        harder=st.none() | texts(),
    )
    return any_exercise.map(_without_sides_that_cannot_alternate)


def _without_sides_that_cannot_alternate(exercise: Exercise) -> Exercise:
    if isinstance(exercise.dose, OwnPaceReps | WorkTime) and exercise.sides is Sides.ALTERNATE:
        return replace(exercise, sides=Sides.EACH)
    return exercise


@cache
def stages() -> st.SearchStrategy[Stage]:
    """Any stage of one to three exercises."""
    inside = st.lists(exercises(), min_size=1, max_size=3).map(tuple)
    return st.builds(Stage, texts(), st.sampled_from(StageKind), inside)


@st.composite
def groupings(draw: st.DrawFn, names: tuple[str, ...]) -> Grouping:
    """Any way a group may do a plan of these exercises."""
    chosen = st.lists(st.sampled_from(names), max_size=12, unique=True).map(tuple)
    windows, changes = lengths(10_000, 600_000), lengths(5_000, 600_000)
    return Grouping(
        draw(st.sampled_from(Form)),
        draw(windows),
        draw(changes),
        draw(st.integers(1, 20)),
        draw(chosen),
        draw(st.none() | st.integers(1, 40)),
        draw(lengths(0, 600_000)),
    )


def _grouped(plan: Plan) -> st.SearchStrategy[Plan]:
    names = tuple(exercise.name for stage in plan.stages for exercise in stage.exercises)
    return st.just(plan) | groupings(names).map(lambda group: replace(plan, group=group))


@cache
def plans() -> st.SearchStrategy[Plan]:
    """Any plan that a plan file may hold, of one to three stages."""
    return (
        st.builds(
            Plan,
            title=texts(),
            stages=st.lists(stages(), min_size=1, max_size=3).map(tuple),
            author=st.none() | texts(),
            level=st.sampled_from(Level),
            order=st.sampled_from(StageOrder),
            lead_in_ms=lengths(LEAST_LEAD_IN_MS, 15_000),
            changeover_ms=lengths(0, 90_000),
            side_change_ms=lengths(0, 30_000),
            fast_ms=lengths(100, 3_000),
        )
        .filter(lambda plan: session_ms(plan) <= LONGEST_SESSION_MS)
        .flatmap(_grouped)
    )


RATINGS = st.none() | st.integers(0, 10)
NOTES = st.none() | st.text(max_size=12)
LOADS = st.integers(0, 1_000_000).map(lambda grams: str(Decimal(grams) / 1000))
SIDES = st.sampled_from(Side)
_TIMES = st.integers(0, 6 * 3_600_000)
_SMALL = st.integers(0, 300)


def any_fact() -> st.SearchStrategy[Fact]:
    """Any one fact, sensible or not."""
    number = st.integers(-(2**40), 2**40)
    bout, attempt, rep = _SMALL, st.integers(1, 9), _SMALL
    skip = st.none() | st.sampled_from(SkipReason)
    return st.one_of(
        st.builds(RunBegan, number),
        st.builds(BoutBegan, number, bout, attempt),
        st.builds(RepDone, number, bout, attempt, rep, SIDES, number, number),
        st.builds(RepMissed, number, bout, attempt, rep, SIDES),
        st.builds(FaultMarked, number, bout, attempt, rep, SIDES, NOTES),
        st.builds(BoutEnded, number, bout, attempt, st.sampled_from(BoutOutcome), skip, NOTES),
        st.builds(BoutRated, number, bout, attempt, st.none() | _SMALL, RATINGS, RATINGS, NOTES),
        st.builds(Paused, number, st.sampled_from(PauseReason)),
        st.builds(Resumed, number),
        st.builds(RestExtended, number, bout, number),
        st.builds(RunEnded, number, st.sampled_from(RunOutcome)),
        st.builds(SessionRated, number, RATINGS, st.none() | number, NOTES),
        st.builds(LoadUsed, number, bout, attempt, LOADS),
        st.builds(TakenBack, number, bout, attempt),
        st.builds(BoutChosen, number, bout),
    )


@st.composite
def prescribed_bouts(draw: st.DrawFn, most: int = 4) -> tuple[BoutPrescribed, ...]:
    """What the bouts of a short run ask for."""
    bouts = []
    for index in range(draw(st.integers(1, most))):
        low = draw(st.integers(1, 5))
        bouts.append(
            BoutPrescribed(
                bout=index,
                stage_name=draw(st.sampled_from(("Wake", "Catch"))),
                stage_kind=draw(st.sampled_from(StageKind)),
                exercise=draw(st.sampled_from(("Towel press", "Dune hop"))),
                set_number=draw(st.integers(1, 3)),
                side=draw(SIDES),
                low=low,
                high=low + draw(st.integers(0, 2)),
                work_ms=draw(st.none() | st.integers(1_000, 200_000)),
                contacts_per_rep=draw(st.integers(0, 2)),
                load_kg=draw(st.sampled_from((None, "0", "2.5"))),
            )
        )
    return tuple(bouts)


@st.composite
def run_facts(draw: st.DrawFn, bouts: int) -> tuple[Fact, ...]:
    """What a run of so many bouts may write down, from nothing at all to the last late answer."""
    facts: list[Fact] = [RunBegan()]
    now = 0
    for bout in range(bouts):
        for attempt in range(1, draw(st.integers(1, 2)) + 1):
            now += draw(st.integers(0, 60_000))
            facts += _attempt(draw, bout, attempt, now)
            facts += _afterwards(draw, bout, attempt)
    if draw(st.booleans()):
        facts.append(RunEnded(draw(_TIMES), draw(st.sampled_from(RunOutcome))))
        late = st.builds(SessionRated, _TIMES, RATINGS, st.none() | _TIMES, NOTES) | _answers(bouts - 1, 1)
        facts += draw(st.lists(late, max_size=3))
    return tuple(facts[: draw(st.integers(0, len(facts)))]) if draw(st.booleans()) else tuple(facts)


def _attempt(draw: st.DrawFn, bout: int, attempt: int, now: int) -> list[Fact]:
    skip = st.builds(
        BoutEnded,
        st.just(now),
        st.just(bout),
        st.just(attempt),
        st.just(BoutOutcome.SKIPPED),
        st.sampled_from(SkipReason),
        NOTES,
    )
    if draw(st.integers(0, 5)) == 0:
        return [draw(skip)]
    facts: list[Fact] = [BoutBegan(now, bout, attempt)]
    for rep in range(1, draw(st.integers(0, 5)) + 1):
        side, start = draw(SIDES), now
        now += draw(st.integers(200, 9_000))
        fault = FaultMarked(now, bout, attempt, rep, side, draw(NOTES))
        done = RepDone(now, bout, attempt, rep, side, start, draw(st.integers(0, 40)))
        facts += draw(
            st.sampled_from(
                (
                    [done],
                    [fault, done],
                    [done, fault, fault],
                    [RepMissed(now, bout, attempt, rep, side)],
                    [Paused(now, PauseReason.ASKED), Resumed(now + 1_000), done],
                )
            )
        )
    outcome = draw(st.sampled_from((BoutOutcome.DONE, BoutOutcome.ENDED_EARLY, BoutOutcome.BROKEN_OFF)))
    return [*facts, BoutEnded(now, bout, attempt, outcome)]


def _afterwards(draw: st.DrawFn, bout: int, attempt: int) -> list[Fact]:
    later = st.one_of(
        _answers(bout, attempt),
        st.builds(FaultMarked, _TIMES, st.just(bout), st.just(attempt), st.integers(1, 5), SIDES, NOTES),
        st.builds(RestExtended, _TIMES, st.just(bout + 1), st.just(15_000)),
    )
    return draw(st.lists(later, max_size=2))


def _answers(bout: int, attempt: int) -> st.SearchStrategy[Fact]:
    bouts, of = st.integers(0, bout), st.just(attempt)
    rated = st.builds(BoutRated, _TIMES, bouts, of, st.none() | _SMALL, RATINGS, RATINGS, NOTES)
    return rated | st.builds(LoadUsed, _TIMES, bouts, of, LOADS) | st.builds(TakenBack, _TIMES, bouts, of)


def headers() -> st.SearchStrategy[RunHeader]:
    """Any run's header; names and texts in any script."""
    words = st.text(st.characters(codec="utf-8", exclude_characters="\x00"), max_size=20)
    return st.builds(
        RunHeader,
        run_id=st.uuids(version=4).map(str),
        athlete=words,
        plan_title=words,
        plan_text=words,
        started_at=st.integers(0, 2**62).map(
            lambda us: datetime(1971, 1, 1, tzinfo=UTC) + timedelta(us / 2**46)
        ),
        zone=st.sampled_from(ZONES),
        invented=st.booleans(),
    )
