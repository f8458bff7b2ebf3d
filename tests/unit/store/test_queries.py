"""What is asked of the record, against the same figures worked out by hand or by plain loops."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import event
from sqlalchemy.exc import StatementError

from app.domain.errors import StoreError
from app.domain.fold import fold_run
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    BoutRecord,
    Fact,
    RepDone,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    RunSummary,
    SessionRated,
    SkipReason,
)
from app.store.database import Database, open_database
from tests.strategies import headers, prescribed_bouts, run_facts

MONDAY = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
BOUTS = tuple(
    BoutPrescribed(index, "Catch", StageKind.STABILITY, "Step-down", 1, side, 2, 3, 24_000, 1, None)
    for index, side in enumerate((Side.LEFT, Side.RIGHT))
)


def header(day: int = 0, athlete: str = "Ines", *, invented: bool = False) -> RunHeader:
    name = f"0190163d-8694-7{day:03x}-aea5-{sum(map(ord, athlete)):012x}"
    return RunHeader(
        name, athlete, "Landing", "text", MONDAY + timedelta(days=day), "Europe/Lisbon", invented
    )


def reps(bout: int, attempt: int, number: int) -> list[Fact]:
    done = [
        RepDone(9_000 * rep, bout, attempt, rep, Side.LEFT, 9_000 * rep - 8_000, 0)
        for rep in range(1, number + 1)
    ]
    outcome = BoutOutcome.DONE if number >= 2 else BoutOutcome.ENDED_EARLY
    return [BoutBegan(0, bout, attempt), *done, BoutEnded(9_000 * number, bout, attempt, outcome)]


def write(database: Database, head: RunHeader, facts: list[Fact]) -> None:
    database.journal.open_run(head, BOUTS)
    database.journal.append(head.run_id, 0, facts)


@contextmanager
def statements(database: Database) -> Iterator[list[str]]:
    """Every statement sent meanwhile, without the bounds of transactions."""
    sent: list[str] = []

    def note(_connection: object, _cursor: object, statement: str, *_rest: object) -> None:
        if not statement.startswith("BEGIN"):
            sent.append(statement)

    event.listen(database._link._engine, "before_cursor_execute", note)
    yield sent
    event.remove(database._link._engine, "before_cursor_execute", note)


def test_a_summary_says_what_was_asked_done_met_and_felt(database: Database) -> None:
    facts = [
        RunBegan(),
        *reps(0, 1, 3),  # one rep beyond the two asked for
        BoutRated(30_000, 0, 1, rpe=5, pain=3),
        *reps(1, 1, 1),
        BoutRated(60_000, 1, 1, pain=2),
        RunEnded(70_000, RunOutcome.FINISHED),
        SessionRated(75_000, 6, 5_000),
    ]
    write(database, header(), facts)
    assert database.queries.run_summaries() == (
        RunSummary(
            run_id=header().run_id,
            athlete="Ines",
            plan_title="Landing",
            started_at=MONDAY,
            zone="Europe/Lisbon",
            invented=False,
            outcome=RunOutcome.FINISHED,
            elapsed_ms=70_000,
            reps_prescribed=4,
            reps_met=3,
            reps_done=4,
            session_rpe=6,
            pain=3,
        ),
    )


def test_what_nobody_said_is_unknown_and_what_was_not_done_is_nought(database: Database) -> None:
    write(database, header(), [RunBegan()])
    (summary,) = database.queries.run_summaries()
    assert (summary.session_rpe, summary.pain, summary.outcome, summary.elapsed_ms) == (None,) * 4
    assert (summary.reps_prescribed, summary.reps_met, summary.reps_done) == (4, 0, 0)


def test_a_bout_done_again_is_met_by_its_last_attempt_and_all_its_reps_are_done(database: Database) -> None:
    write(database, header(), [RunBegan(), *reps(0, 1, 2), *reps(0, 2, 1)])
    (summary,) = database.queries.run_summaries()
    assert (summary.reps_met, summary.reps_done) == (1, 3)


def test_reps_stated_stand_before_reps_counted(database: Database) -> None:
    write(database, header(), [RunBegan(), *reps(0, 1, 3), BoutRated(30_000, 0, 1, reps=0)])
    (summary,) = database.queries.run_summaries()
    assert (summary.reps_met, summary.reps_done) == (0, 0)


def test_the_reps_of_a_bout_under_way_are_seen(database: Database) -> None:
    write(database, header(), [RunBegan(), *reps(0, 1, 2)[:-1]])
    (summary,) = database.queries.run_summaries()
    assert (summary.reps_met, summary.reps_done) == (2, 2)


@settings(max_examples=25)
@given(headers(), prescribed_bouts(), st.data())
def test_a_summary_is_what_plain_loops_over_the_records_give(
    head: RunHeader, prescribed: tuple[BoutPrescribed, ...], data: st.DataObject
) -> None:
    facts = data.draw(run_facts(len(prescribed)))
    with TemporaryDirectory() as folder, open_database(Path(folder) / "record.db") as database:
        database.journal.open_run(head, prescribed)
        database.journal.append(head.run_id, 0, facts)
        summaries = database.queries.run_summaries()
    records = fold_run(facts)
    stands: dict[int, BoutRecord] = {}
    for bout in prescribed:
        attempts = [record for record in records if record.bout == bout.bout]
        ended = [each for each in attempts if each.outcome.value in ("done", "ended_early")]
        if attempts:
            stands[bout.bout] = max(
                ended or attempts, key=lambda each: (0 if each in ended else each.reps_done, each.attempt)
            )
    if not facts:
        assert summaries == ()
        return
    (summary,) = summaries
    assert summary.reps_prescribed == sum(bout.low for bout in prescribed)
    assert summary.reps_done == sum(record.reps_done for record in records)
    met = [min(stands[bout.bout].reps_done, bout.low) for bout in prescribed if bout.bout in stands]
    assert summary.reps_met == sum(met)
    stated = [record.pain for record in records if record.pain is not None]
    assert summary.pain == (max(stated) if stated else None)
    ends = [fact for fact in facts if isinstance(fact, RunEnded)]
    assert summary.outcome == (ends[-1].outcome if ends else None)
    rpes = [fact.rpe for fact in facts if isinstance(fact, SessionRated) and fact.rpe is not None]
    assert summary.session_rpe == (rpes[-1] if rpes else None)


def test_summaries_come_oldest_first_and_can_be_narrowed(database: Database) -> None:
    for day, athlete in ((2, "Ines"), (0, "Tomas"), (1, "Ines"), (3, "Tomas")):
        write(database, header(day, athlete), [RunBegan()])
    ask = database.queries.run_summaries
    days = [(line.started_at - MONDAY).days for line in ask()]
    assert days == [0, 1, 2, 3]
    assert [line.athlete for line in ask(since=MONDAY + timedelta(days=1))] == ["Ines", "Ines", "Tomas"]
    assert [line.athlete for line in ask(until=MONDAY + timedelta(days=1))] == ["Tomas"]
    assert [(line.started_at - MONDAY).days for line in ask(athlete="Tomas")] == [0, 3]
    assert ask(MONDAY, MONDAY + timedelta(days=3), "Tomas")[0].run_id == header(0, "Tomas").run_id
    assert len(ask(MONDAY, MONDAY + timedelta(days=3), "Tomas")) == 1


def test_bounds_may_be_given_in_any_zone_but_not_in_none(database: Database) -> None:
    write(database, header(), [RunBegan()])
    in_kathmandu = MONDAY.astimezone(ZoneInfo("Asia/Kathmandu"))
    assert len(database.queries.run_summaries(since=in_kathmandu)) == 1
    assert database.queries.run_summaries(until=in_kathmandu) == ()
    with pytest.raises(StatementError, match="time zone"):
        database.queries.run_summaries(since=MONDAY.replace(tzinfo=None))


def test_however_many_runs_there_are_the_summaries_take_one_statement(database: Database) -> None:
    for day in range(5):
        write(database, header(day), [RunBegan(), *reps(0, 1, 2)])
    with statements(database) as sent:
        assert len(database.queries.run_summaries()) == 5
    assert len(sent) == 1


def test_every_bout_is_listed_with_each_attempt_and_with_none_where_it_was_not_begun(
    database: Database,
) -> None:
    write(database, header(), [RunBegan(), *reps(0, 1, 1), *reps(0, 2, 2)])
    listed = database.queries.bouts_of(header().run_id)
    assert [(bout, None if record is None else record.attempt) for bout, record in listed] == [
        (BOUTS[0], 1),
        (BOUTS[0], 2),
        (BOUTS[1], None),
    ]


def test_a_bout_left_out_keeps_its_reason_and_note(database: Database) -> None:
    skipped = BoutEnded(9_000, 1, 1, BoutOutcome.SKIPPED, SkipReason.EQUIPMENT, "no box")
    write(database, header(), [RunBegan(), skipped])
    _, (_, record) = database.queries.bouts_of(header().run_id)
    assert record is not None
    assert (record.reason, record.note) == (SkipReason.EQUIPMENT, "no box")


def test_the_bouts_of_a_run_take_four_statements(database: Database) -> None:
    write(database, header(), [RunBegan(), *reps(0, 1, 2), *reps(1, 1, 2)])
    with statements(database) as sent:
        database.queries.bouts_of(header().run_id)
    assert len(sent) == 4


def test_unfinished_runs_are_those_that_began_and_have_no_end_the_latest_first(database: Database) -> None:
    write(database, header(0), [RunBegan(), *reps(0, 1, 2)])
    write(database, header(1), [RunBegan(), RunEnded(9_000, RunOutcome.ABANDONED)])
    write(database, header(2), [RunBegan()])
    database.journal.open_run(header(3), BOUTS)  # never begun: there is nothing to go on with
    assert database.queries.unfinished_runs() == (header(2), header(0))
    database.journal.append(header(2).run_id, 1, [RunEnded(5, RunOutcome.FINISHED)])
    assert database.queries.unfinished_runs() == (header(0),)


def test_a_run_that_never_began_is_no_line_of_the_list(database: Database) -> None:
    database.journal.open_run(header(), BOUTS)
    assert database.queries.run_summaries() == ()
    assert database.queries.run_ids() == {header().run_id}


def test_athletes_are_those_with_a_run_once_each_in_the_order_of_the_alphabet(database: Database) -> None:
    for day, athlete in enumerate(("ines", "Tomas", "Bea", "Tomas")):
        write(database, header(day, athlete), [RunBegan()])
    assert database.queries.athletes() == ("Bea", "ines", "Tomas")


def test_invented_runs_alone_are_no_real_ones(database: Database) -> None:
    assert not database.queries.holds_real_runs()
    write(database, header(0, invented=True), [RunBegan()])
    assert not database.queries.holds_real_runs()
    write(database, replace(header(1), invented=False), [RunBegan()])
    assert database.queries.holds_real_runs()


def test_a_run_that_is_not_there_has_no_facts_and_no_header(database: Database) -> None:
    assert database.queries.facts_of(header().run_id) == ()
    assert database.queries.bouts_of(header().run_id) == ()
    with pytest.raises(StoreError, match="There is no run"):
        database.queries.header_of(header().run_id)
