"""The tables for reading, drawn from a run and its corrections."""

from dataclasses import replace

from app.domain.fold import fold_run
from app.domain.records import BoutRecord
from app.reports.drawn import BOUTS, DRAWN, FAULTS, REPS, SESSIONS, Drawn, drawn_rows
from tests.filled import invented_runs
from tests.summaries import summary

RUN = invented_runs(3, unfinished=False)[0]
RECORDS = fold_run(RUN.facts)


def drawn(records: tuple[BoutRecord, ...] = RECORDS) -> Drawn:
    by_bout = {record.bout: record for record in records}
    return Drawn(
        summary(run_id=RUN.header.run_id, outcome=None, elapsed_ms=90_000, session_rpe=4, pain=None),
        "Hugo",
        tuple((bout, by_bout.get(bout.bout)) for bout in RUN.prescribed),
    )


def test_every_row_fits_its_table_and_has_a_key_of_its_own() -> None:
    for table in DRAWN:
        rows = list(drawn_rows(table, [drawn()]))
        assert rows
        assert [table.check(row) for row in rows] == rows
        assert len({table.key_of(row) for row in rows}) == len(rows)
        assert [list(row) for row in rows] == [list(table.column_names)] * len(rows)


def test_there_is_a_row_for_each_attempt_rep_and_fault() -> None:
    counts = {table.name: len(list(drawn_rows(table, [drawn(), drawn()]))) for table in DRAWN}
    reps = [rep for record in RECORDS for rep in record.reps]
    faults = sum(len(rep.faults) for rep in reps)
    assert faults > 0
    assert counts == {"sessions": 2, "bouts": 2 * len(RECORDS), "reps": 2 * len(reps), "faults": 2 * faults}


def test_a_session_says_its_minutes_load_and_start_by_the_clock_on_the_wall() -> None:
    (row,) = drawn_rows(SESSIONS, [drawn()])
    assert (row["minutes"], row["load"], row["pain"], row["outcome"]) == (1.5, 6.0, None, None)
    assert row["local_start"] == "2026-11-21T18:05:00+01:00"


def test_without_a_plan_reps_are_unknown_and_not_nought() -> None:
    (row,) = drawn_rows(SESSIONS, [replace(drawn(), bouts=())])
    assert (row["reps_prescribed"], row["reps_met"], row["reps_done"]) == (None, None, None)


def test_what_was_corrected_is_named() -> None:
    run = drawn((replace(RECORDS[0], rpe=9, corrected=frozenset({"rpe", "pain"})),))
    (row,) = drawn_rows(BOUTS, [run])
    assert (row["rpe"], row["corrected"]) == (9, "pain, rpe")
    (session,) = drawn_rows(
        SESSIONS, [replace(run, summary=replace(run.summary, corrected=frozenset({"pain"})))]
    )
    assert session["corrected"] == "pain"


def test_a_fault_without_a_name_is_unknown() -> None:
    names = [row["fault"] for row in drawn_rows(FAULTS, [drawn()])]
    assert set(names) == {None, "knee in"}
    assert sum(row["faults"] for row in drawn_rows(REPS, [drawn()])) == len(names)  # type: ignore[misc]
