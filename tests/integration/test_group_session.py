"""A group session through room, journal and store: true for each athlete, whole after everything."""

import json
import random
import signal
import sqlite3
import subprocess
import sys
from collections import Counter
from collections.abc import Callable
from contextlib import closing
from decimal import Decimal
from functools import partial
from pathlib import Path
from uuid import UUID

import pytest

from app import wiring
from app.__main__ import main
from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.dose import Band
from app.domain.group_choice import group_session
from app.domain.grouping import Form, Grouping
from app.domain.plan import Side, WrittenPlan
from app.domain.prescription import prescriptions
from app.domain.records import Fact, RepDone, RepMissed, RunEnded, SkipReason
from app.run.controller import Controller
from app.run.intents import (
    Begin,
    BeginNow,
    CountRep,
    EndBout,
    ExtendRest,
    MarkFault,
    MarkMissed,
    Pause,
    RateBout,
    RedoBout,
    Resume,
    SkipExercise,
    Stop,
    Tick,
)
from app.run.rehearsal import rehearse
from app.run.room_controller import RoomController
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.room_pen import RoomPen
from app.run.room_rehearsal import rehearse_room
from app.store.database import Database
from app.store.verify import verify
from tests.waiting import wait_for_reps

ROOT = Path(__file__).parents[2]
SHORT = """format = 1
title = "Seaside round"
lead_in = 3
changeover = 8
side_change = 4

[[stage]]
name = "Wake"
kind = "activation"

  [[stage.exercise]]
  name = "Towel press"
  sides = "each"
  sets = 2
  reps = 3
  tempo = "1-0-1-0"
  rest = 8

  [[stage.exercise]]
  name = "Wall hold"
  reps = 2
  hold = 2
  load_kg = 4
  easier = "Wall hold, kneeling"

[[stage]]
name = "Land"
kind = "reactive"

  [[stage.exercise]]
  name = "Dune hop"
  sides = "alternate"
  reps = 2
  stick = 1

  [[stage.exercise]]
  name = "Throw"
  reps = [2, 3]
  pace = "own"
"""
SQUAD = (
    Athlete("Anouk"),
    Athlete("Bram", Side.RIGHT),
    Athlete("Chidi", loads_kg={("Wall hold", Side.BOTH): Decimal("5.5")}),
    Athlete("Dagny", reps={"Towel press": Band(2, 2)}),
)


def written() -> WrittenPlan:
    return wiring.parse_plan(SHORT)


def pen_of(
    database: Database, form: Form, athletes: tuple[Athlete, ...] = SQUAD, teams: int | None = None
) -> RoomPen:
    """A room of the squad that nobody has begun, written into a database."""
    plan = written()
    grouping = Grouping(form, 20_000, 8_000, 1, teams=teams)
    session = group_session(plan.plan, athletes, grouping)
    header = partial(wiring.new_member_header, written=plan, invented=True)
    return RoomPen(RoomController(session), database.journal, wiring.new_group(session, grouping), header)


def kept_of(path: Path, run_id: str) -> dict[str, list[tuple[object, ...]]]:
    """All that the record holds of a run, without its own name, its moment and its tie."""
    name = UUID(run_id).bytes
    with closing(sqlite3.connect(path)) as raw:
        prescribed = raw.execute(
            "SELECT prescribed_bout.* FROM prescribed_bout JOIN run "
            "ON run.prescription_hash = prescribed_bout.prescription_hash WHERE run.id = ?",
            (name,),
        ).fetchall()
        run = raw.execute("SELECT plan_hash, zone, invented FROM run WHERE id = ?", (name,)).fetchall()
        tables = {"prescribed": prescribed, "run": run}
        for table, own in (("fact", "run_id"), ("fold", "run_id"), ("bout_record", "run_id")):
            rows = raw.execute(f"SELECT * FROM {table} WHERE {own} = ?", (name,))  # noqa: S608
            tables[table] = [row[1:] for row in rows]
        course = raw.execute("SELECT * FROM run_course WHERE run_id = ?", (name,))
        names = [column[0] for column in course.description]
        apart = {"run_id", "athlete_id", "started_at"}
        tables["course"] = [
            tuple(value for key, value in zip(names, row, strict=True) if key not in apart) for row in course
        ]
    return tables


def alone(path: Path, athlete: Athlete) -> str:
    """Rehearse the plan for one athlete by themselves; gives the run's name."""
    plan = written()
    timeline = compile_timeline(plan.plan, athlete)
    header = wiring.new_header(athlete.name, plan, invented=True)
    with wiring.open_record(path) as database:
        database.journal.open_run(header, prescriptions(timeline))
        rehearse(Controller(timeline), database.journal, header.run_id, lambda _ms: None)
    return header.run_id


def test_the_record_of_each_is_that_of_the_same_athlete_alone_but_for_the_tie(tmp_path: Path) -> None:
    room, single = tmp_path / "room.db", tmp_path / "alone.db"
    with wiring.open_record(room) as database:
        pen = pen_of(database, Form.TOGETHER)
        rehearse_room(pen, lambda _ms: None)
    for member, athlete in zip(pen.group.members, SQUAD, strict=True):
        led, trained = kept_of(room, member.run_id), kept_of(single, alone(single, athlete))
        if athlete.reps:  # who does fewer reps than the others waits for them: all but times is the same
            facts = {name: [row[:-1] for row in rows] for name, rows in led.items() if name == "prescribed"}
            assert facts == {"prescribed": [row[:-1] for row in trained["prescribed"]]}
            assert reps_of(room, member.run_id) == reps_of(single, None, athlete.name)
        else:
            assert led == trained
        assert led["course"]
        assert led["fold"]


def reps_of(path: Path, run_id: str | None, athlete: str = "") -> list[tuple[object, ...]]:
    """The reps of a run without their times."""
    with wiring.open_record(path) as database:
        if run_id is None:
            (run_id,) = (run.run_id for run in database.queries.run_summaries() if run.athlete == athlete)
        facts = database.queries.facts_of(run_id)
    return [(fact.bout, fact.attempt, fact.rep, fact.side) for fact in facts if isinstance(fact, RepDone)]


@pytest.mark.parametrize("form", Form)
def test_of_every_form_what_is_prescribed_is_recorded(form: Form, tmp_path: Path) -> None:
    with wiring.open_record(tmp_path / "record.db") as database:
        pen = pen_of(database, form, teams=2)
        rehearse_room(pen, lambda _ms: None)
        for member, part in zip(pen.group.members, pen.room.session.parts, strict=True):
            bouts = database.queries.bouts_of(member.run_id)
            assert [asked.high for asked, _ in bouts] == [bout.high for bout in part.timeline.bouts]
            assert all(record is not None and record.reps_done == asked.high for asked, record in bouts)
        assert database.groups.read(pen.group.group_id) == pen.group
        assert database.groups.unfinished() == ()
    assert verify(tmp_path / "record.db", thorough=True).sound


class Coach:
    """Asks at random, as often as wished, and lets the clock go on meanwhile."""

    def __init__(self, pen: RoomPen, seed: int) -> None:
        self.pen, self.chance, self.now_ms = pen, random.Random(seed), 0
        self.told: list[list[Fact]] = [[] for _ in pen.group.members]

    def ask(self, intents: int) -> None:
        for _ in range(intents):
            self.now_ms += self.chance.choice((0, 40, 400, 900, 1_500, 1_900, 2_600))
            self.follow(self.chance.choice(self.makers)(self.chance))

    def follow(self, intent: RoomIntent) -> None:
        for place, first, facts in self.pen.follow(intent, self.now_ms):
            assert first == len(self.told[place])
            self.told[place].extend(facts)

    makers: tuple[Callable[[random.Random], RoomIntent], ...] = (
        *(lambda _: Tick(),) * 6,
        *(lambda _: Resume(),) * 4,
        lambda _: Begin(),
        lambda _: Pause(),
        lambda _: CountRep(),
        lambda _: EndBout(),
        lambda _: RedoBout(),
        lambda _: ExtendRest(),
        lambda _: BeginNow(),
        lambda c: (
            SkipExercise(SkipReason.TIME, None, c.choice((None, 0, 3, 99))) if c.random() < 0.2 else Tick()
        ),
        lambda c: Arrive(c.randrange(-1, 6)),
        lambda c: Depart(c.randrange(-1, 6)) if c.random() < 0.1 else Tick(),
        lambda c: ForOne(c.randrange(-1, 6), c.choice((MarkMissed(), MarkFault(), RateBout(0, rpe=4)))),
        lambda c: GoToSlot(c.randrange(-1, 12)) if c.random() < 0.3 else Tick(),
        lambda c: Stop() if c.random() < 0.02 else Tick(),
    )


def test_ten_thousand_intents_of_a_coach_lose_nothing_and_leave_no_run_open(tmp_path: Path) -> None:
    asked, kept = 0, 0
    with wiring.open_record(tmp_path / "record.db") as database:
        for seed in range(40):
            pen = pen_of(database, list(Form)[seed % 3], teams=2)
            pen.room = RoomController(pen.room.session, [seed % 5 != place for place in range(len(SQUAD))])
            coach = Coach(pen, seed)
            coach.ask(250)
            asked += 250
            coach.follow(Stop())
            assert pen.room.over
            for member, facts in zip(pen.group.members, coach.told, strict=True):
                assert database.queries.facts_of(member.run_id) == tuple(facts)
                assert sum(isinstance(fact, RunEnded) for fact in facts) == bool(facts)
                kept += len(facts)
        assert database.groups.unfinished() == ()
        assert database.queries.unfinished_runs() == ()
    assert asked == 10_000
    assert kept > 3_000
    assert verify(tmp_path / "record.db").sound


@pytest.mark.parametrize("form", Form)
def test_killed_in_mid_session_the_whole_group_goes_on_with_nothing_lost_or_doubled(
    form: Form, tmp_path: Path
) -> None:
    path, roster, plan = (tmp_path / name for name in ("record.db", "roster.csv", "plan.toml"))
    plan.write_text(SHORT, encoding="utf-8")
    roster.write_text("name,first,exercise,reps,sits_out\nAnouk,,,,\nBram,right,,,\nDagny,,Wall hold,,yes\n")
    words = ["--roster", roster, "--form", form, "--work", "20", "--change", "8", "--database", path]
    command = [sys.executable, "-m", "app", "rehearse", plan, *words, "--speed", "40"]
    process = subprocess.Popen(list(map(str, command)), cwd=ROOT, stdout=subprocess.DEVNULL)
    try:
        wait_for_reps(path, 8)
    finally:
        process.send_signal(signal.SIGKILL)
        process.wait()
    with wiring.open_record(path) as database:
        (group,) = database.groups.unfinished()
        before = [database.queries.facts_of(member.run_id) for member in group.members]
        assert sum(isinstance(fact, RepDone) for facts in before for fact in facts) >= 8
        pen = wiring.take_up_group(database, group, database.journal, 5_000)
        assert not pen.room.over
        rehearse_room(pen, lambda _ms: None, now_ms=5_000)
        assert database.groups.unfinished() == ()
        for member, part, then in zip(group.members, pen.room.session.parts, before, strict=True):
            facts = database.queries.facts_of(member.run_id)
            assert facts[: len(then)] == then
            done = Counter(
                (fact.bout, fact.rep, fact.side) for fact in facts if isinstance(fact, RepDone | RepMissed)
            )
            assert max(done.values()) == 1
            asked = {
                bout.index: bout.high
                for bout in part.timeline.bouts
                if (bout.stage, bout.exercise) not in part.sits_out
            }
            assert Counter(bout for bout, _, _ in done) == asked
            assert sum(isinstance(fact, RunEnded) for fact in facts) == 1
    assert verify(path, thorough=True).sound


def test_who_had_not_come_when_it_was_cut_short_can_still_come(tmp_path: Path) -> None:
    with wiring.open_record(tmp_path / "record.db") as database:
        pen = pen_of(database, Form.TOGETHER)
        pen.room = RoomController(pen.room.session, [True, True, False, False])
        for now_ms in range(0, 12_000, 250):
            pen.follow(Begin() if now_ms == 0 else Tick(), now_ms)
        (group,) = database.groups.unfinished()
        recalled: list[str] = []
        again = wiring.take_up_group(
            database, group, database.journal, 0, lambda header, *_: recalled.append(header.run_id)
        )
        assert recalled == [member.run_id for member in group.members[:2]]
        again.follow(Arrive(2), 0)
        rehearse_room(again, lambda _ms: None)
        late = database.queries.facts_of(group.members[2].run_id)
        assert {fact.bout for fact in late if isinstance(fact, RepDone)} == set(range(1, 7))
        assert database.queries.header_of(group.members[2].run_id).athlete == "Chidi"
        assert group.members[3].run_id not in database.queries.run_ids()


def said(capsys: pytest.CaptureFixture[str], *words: object) -> tuple[int, str, str]:
    status = main(["rehearse", *map(str, words)])
    out, err = capsys.readouterr()
    return status, out, err


def test_the_command_says_of_each_athlete_what_was_prescribed_and_recorded(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan = tmp_path / "plan.toml"
    plan.write_text(SHORT.replace("[[stage]]", '[group]\nform = "waves"\n\n[[stage]]', 1), encoding="utf-8")
    roster = tmp_path / "roster.csv"
    roster.write_text("name\nAnouk\nBram\nChidi\n")
    status, out, err = said(capsys, plan, "--roster", roster, "--json")
    report = json.loads(out)
    assert (status, err, report["form"]) == (0, "", "waves")
    assert [each["athlete"] for each in report["athletes"]] == ["Anouk", "Bram", "Chidi"]
    assert all(each["reps_recorded"] == each["reps_prescribed"] == 21 for each in report["athletes"])
    status, out, _ = said(capsys, plan, "--roster", roster, "--form", "stations", "--work", 15, "--rounds", 2)
    assert status == 0
    assert out.splitlines()[-1].startswith("stations, 3 athletes: recorded ")
    status, out, _ = said(
        capsys, plan, "--roster", roster, "--form", "together", "--athlete", "Bram", "--json"
    )
    assert [each["athlete"] for each in json.loads(out)["athletes"]] == ["Bram"]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["--form", "waves"], "A group needs --roster FILE: say who is in it."),
        (
            ["--form", "stations", "--work", "5", "--roster", "ROSTER"],
            "The window of work at a station is 10 s",
        ),
        (["--form", "waves", "--roster", "ROSTER", "--athlete", "Nobody"], "Nobody is not in"),
        (["--form", "waves", "--roster", "ROSTER", "--athlete", "Bram"], "Waves need at least two athletes"),
    ],
)
def test_what_cannot_be_done_is_said(
    words: list[str], says: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    plan, roster = tmp_path / "plan.toml", tmp_path / "roster.csv"
    plan.write_text(SHORT, encoding="utf-8")
    roster.write_text("name\nAnouk\nBram\n")
    status, out, err = said(capsys, plan, *(str(roster) if word == "ROSTER" else word for word in words))
    assert (status, out) == (1, "")
    assert says in err
