"""Corrections in the database: nothing is written over, and every figure follows."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import select

from app.domain.correctable import Subject, Value
from app.domain.corrections import Change, Correction, Target
from app.domain.errors import StoreError
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    Fact,
    FaultMarked,
    RepDone,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    SessionRated,
)
from app.store.database import Database, open_database
from app.store.later_rows import CorrectionRow
from app.store.rows import AthleteRow, BoutRecordRow, RunRow

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
STARTED = datetime(2026, 3, 2, 17, 30, tzinfo=UTC)
NEXT_DAY = STARTED + timedelta(days=1)
HEADER = RunHeader(RUN, "Ines", "Landing control", "text", STARTED, "Europe/Lisbon")
BOUTS = tuple(
    BoutPrescribed(index, "Catch", StageKind.STABILITY, "Step-down", 1, Side.LEFT, 2, 3, 24_000, 1, None)
    for index in range(2)
)
FACTS: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(5_000, 0, 1),
    RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 3),
    FaultMarked(9_500, 0, 1, 1, Side.LEFT, "trunk rolls"),
    RepDone(13_000, 0, 1, 2, Side.LEFT, 9_000, 5),
    BoutEnded(13_000, 0, 1, BoutOutcome.DONE),
    BoutRated(20_000, 0, 1, rpe=5, pain=3, note="warm"),
    BoutBegan(60_000, 1, 1),
    RepDone(64_000, 1, 1, 1, Side.LEFT, 60_000, 3),
    BoutEnded(64_000, 1, 1, BoutOutcome.ENDED_EARLY),
    RunEnded(70_000, RunOutcome.FINISHED),
    SessionRated(75_000, 6, 5_000, "heavy legs"),
)
RUN_ITSELF = Target(Subject.RUN, RUN)
FIRST, SECOND = Target(Subject.BOUT, RUN, 0, 1), Target(Subject.BOUT, RUN, 1, 1)
FIRST_REP = Target(Subject.REP, RUN, 0, 1, 1, Side.LEFT)


@pytest.fixture
def written(database: Database) -> Database:
    """A database with one run in it."""
    write(database)
    return database


def write(database: Database, facts: tuple[Fact, ...] = FACTS) -> None:
    database.journal.open_run(HEADER, BOUTS)
    database.journal.append(RUN, 0, facts)


def change(target: Target, field: str, after: Value, minutes: int = 0) -> Change:
    at = NEXT_DAY + timedelta(minutes=minutes)
    return Change(target, field, after, "Tomas", "heard it wrong", at, "Europe/Lisbon")


def correct(database: Database, target: Target, field: str, after: Value, minutes: int = 0) -> Correction:
    made = database.corrections.correct(change(target, field, after, minutes))
    assert made is not None
    return made


def undo(database: Database, correction: Correction, minutes: int) -> Correction:
    at = NEXT_DAY + timedelta(minutes=minutes)
    made = database.corrections.undo(correction.id, "Ines", "it was right", at, "UTC")
    assert made is not None
    return made


def rows(database: Database, table: type) -> list[dict[str, object]]:
    with database._link.reading() as connection:
        return [dict(row) for row in connection.execute(select(table.__table__)).mappings()]  # type: ignore[attr-defined]


def test_a_correction_says_what_who_when_why_and_what_was_before(written: Database) -> None:
    made = correct(written, FIRST, "rpe", 7)
    assert made.before == 5
    assert made.change == change(FIRST, "rpe", 7)
    assert made.replaces == ()
    assert written.corrections.history_of(RUN).corrections == (made,)


def test_the_facts_and_the_run_as_written_stay_as_they_were(written: Database) -> None:
    before = rows(written, RunRow)
    for target, field, after in (
        (FIRST, "rpe", 7),
        (FIRST_REP, "missed", True),
        (RUN_ITSELF, "athlete", "Tomas"),
        (RUN_ITSELF, "started_at", "2026-03-01T17:30:00+00:00"),
    ):
        correct(written, target, field, after)
    assert written.queries.facts_of(RUN) == FACTS
    assert rows(written, RunRow) == before


@pytest.mark.parametrize(
    ("target", "field", "after", "figures", "corrected"),
    [
        (FIRST, "reps_stated", 1, {"reps_met": 2, "reps_done": 2}, {"reps_met", "reps_done"}),
        (FIRST, "reps_stated", 9, {"reps_met": 3, "reps_done": 10}, {"reps_met", "reps_done"}),
        (FIRST_REP, "missed", True, {"reps_met": 2, "reps_done": 2}, {"reps_met", "reps_done"}),
        (FIRST, "pain", None, {"pain": None}, {"pain"}),
        (SECOND, "pain", 6, {"pain": 6}, {"pain"}),
        (SECOND, "pain", 1, {"pain": 3}, {"pain"}),
        (RUN_ITSELF, "session_rpe", 9, {"session_rpe": 9}, {"session_rpe"}),
        (RUN_ITSELF, "athlete", "Tomas", {"athlete": "Tomas"}, {"athlete"}),
        (
            RUN_ITSELF,
            "started_at",
            "2026-02-27T08:00:00+00:00",
            {"started_at": datetime(2026, 2, 27, 8, tzinfo=UTC)},
            {"started_at"},
        ),
        (RUN_ITSELF, "zone", "Asia/Kathmandu", {"zone": "Asia/Kathmandu"}, {"zone"}),
        (FIRST, "note", "cold", {}, set()),
    ],
)
def test_the_summary_has_the_corrected_value_and_says_so(
    written: Database,
    target: Target,
    field: str,
    after: Value,
    figures: dict[str, object],
    corrected: set[str],
) -> None:
    (before,) = written.queries.run_summaries()
    correct(written, target, field, after)
    (summary,) = written.queries.run_summaries()
    assert summary == replace(before, **figures, corrected=frozenset(corrected))  # type: ignore[arg-type]


def test_the_bouts_have_the_corrected_values_and_say_so(written: Database) -> None:
    correct(written, FIRST, "note", "cold")
    correct(written, FIRST_REP, "faults", ())
    (_, first), (_, second) = written.queries.bouts_of(RUN)
    assert first is not None
    assert second is not None
    assert (first.note, first.corrected) == ("cold", frozenset({"note", "faults"}))
    assert all(rep.clean for rep in first.reps)
    assert second.corrected == frozenset()
    assert [row["reps_clean"] for row in rows(written, BoutRecordRow)] == [2, 1]


def test_how_a_run_was_rated_and_noted_is_as_corrected(written: Database) -> None:
    correct(written, RUN_ITSELF, "note", "light legs")
    closing = written.queries.closing_of(RUN)
    assert (closing.session_rpe, closing.lag_ms, closing.note) == (6, 5_000, "light legs")
    assert written.queries.closing_of(RUN.replace("0190", "0191")).note is None


def test_a_run_of_another_athlete_is_found_under_them_and_led_on_as_theirs(database: Database) -> None:
    write(database, FACTS[:3])
    correct(database, RUN_ITSELF, "athlete", "Tomas")
    queries = database.queries
    assert queries.athletes() == ("Tomas",)
    assert queries.run_summaries(athlete="Ines") == ()
    assert len(queries.run_summaries(athlete="Tomas")) == 1
    assert queries.unfinished_runs() == (replace(HEADER, athlete="Tomas"),)
    assert queries.header_of(RUN).athlete == "Tomas"
    database.journal.open_run(HEADER, BOUTS)  # both what was written and what holds are this run
    database.journal.open_run(replace(HEADER, athlete="Tomas"), BOUTS)
    with pytest.raises(ValueError, match="is another"):
        database.journal.open_run(replace(HEADER, athlete="Bea"), BOUTS)


def test_no_name_of_an_athlete_stands_in_a_correction(written: Database) -> None:
    correct(written, RUN_ITSELF, "athlete", "Wilhelmina")
    (row,) = rows(written, CorrectionRow)
    assert "Wilhelmina" not in str(row)
    (shown,) = written.corrections.history_of(RUN).corrections
    assert (shown.before, shown.after) == ("Ines", "Wilhelmina")


def test_moving_a_run_to_an_athlete_who_is_known_makes_nobody(written: Database) -> None:
    correct(written, RUN_ITSELF, "athlete", "Tomas")
    correct(written, RUN_ITSELF, "athlete", "Ines", minutes=1)
    assert len(rows(written, AthleteRow)) == 2
    assert written.queries.run_summaries()[0].corrected == frozenset()


def test_undo_is_a_further_correction_and_both_stay_in_the_history(written: Database) -> None:
    made = correct(written, FIRST, "rpe", 7)
    taken_back = undo(written, made, 5)
    found = written.corrections.history_of(RUN)
    assert found.corrections == (made, taken_back)
    assert (taken_back.after, taken_back.before, taken_back.replaces) == (5, 7, (made.id,))
    (_, first), _ = written.queries.bouts_of(RUN)
    assert first is not None
    assert (first.rpe, first.corrected) == (5, frozenset())


def test_an_undo_can_be_undone(written: Database) -> None:
    again = undo(written, undo(written, correct(written, RUN_ITSELF, "athlete", "Tomas"), 5), 6)
    assert (again.before, again.after) == ("Ines", "Tomas")
    assert written.queries.athletes() == ("Tomas",)


def test_only_what_holds_can_be_taken_back(written: Database) -> None:
    first = correct(written, FIRST, "rpe", 7)
    correct(written, FIRST, "rpe", 8, minutes=1)
    with pytest.raises(StoreError, match="a later one does"):
        undo(written, first, 5)
    with pytest.raises(StoreError, match="not in the record"):
        written.corrections.undo(RUN, "Ines", "why", NEXT_DAY, "UTC")


def test_a_value_that_holds_already_is_not_written_again(written: Database) -> None:
    assert written.corrections.correct(change(FIRST, "rpe", 5)) is None
    assert written.corrections.history_of(RUN).corrections == ()


@pytest.mark.parametrize(
    "target",
    [
        Target(Subject.RUN, RUN.replace("0190", "0191")),
        Target(Subject.BOUT, RUN, 9, 1),
        Target(Subject.REP, RUN, 0, 1, 9, Side.LEFT),
        Target(Subject.REP, RUN, 0, 1, 1, Side.RIGHT),
        Target(Subject.RATING, RUN),
    ],
)
def test_what_is_not_there_cannot_be_corrected(written: Database, target: Target) -> None:
    field = {Subject.RUN: "note", Subject.BOUT: "note", Subject.REP: "missed"}.get(target.subject, "note")
    after: Value = True if field == "missed" else "words"
    with pytest.raises(StoreError, match="is not in the record any more"):
        written.corrections.correct(change(target, field, after))
    assert rows(written, CorrectionRow) == []


def test_facts_that_come_after_a_correction_are_drawn_with_it(database: Database) -> None:
    write(database, FACTS[:6])
    correct(database, FIRST, "rpe", 8)
    database.journal.append(RUN, 6, FACTS[6:])
    (summary,) = database.queries.run_summaries()
    assert (summary.reps_done, summary.session_rpe, summary.elapsed_ms) == (3, 6, 70_000)
    assert [row["rpe"] for row in rows(database, BoutRecordRow)] == [8, None]
    (_, first), _ = database.queries.bouts_of(RUN)
    assert first is not None
    assert (first.rpe, first.pain) == (8, 3)  # the answer came later, the correction holds


def test_corrections_made_apart_are_both_kept_and_the_conflict_is_told(tmp_path: Path) -> None:
    with open_database(tmp_path / "one.db") as one, open_database(tmp_path / "two.db") as two:
        for database in (one, two):
            write(database)
        early = correct(one, FIRST, "rpe", 7, minutes=1)
        late = correct(two, FIRST, "rpe", 9, minutes=2)
        assert one.corrections.add([late, late]) == 1
        assert two.corrections.add([early]) == 1
        for database in (one, two):
            found = database.corrections.history_of(RUN)
            assert found.corrections == (early, late)
            (conflict,) = found.conflicts
            assert (conflict.holds, conflict.others) == (late, (early,))
            (_, first), _ = database.queries.bouts_of(RUN)
            assert first is not None
            assert first.rpe == 9
        assert one.corrections.add([early, late]) == 0


def test_saying_the_same_again_settles_a_conflict(written: Database) -> None:
    theirs = Correction(RUN.replace("0190", "0192"), change(FIRST, "rpe", 9, minutes=2), 5)
    correct(written, FIRST, "rpe", 7, minutes=1)
    written.corrections.add([theirs])
    assert written.corrections.history_of(RUN).conflicts
    correct(written, FIRST, "rpe", 9, minutes=3)
    assert written.corrections.history_of(RUN).conflicts == ()


def test_a_correction_may_come_before_what_it_corrects(tmp_path: Path) -> None:
    with open_database(tmp_path / "one.db") as one, open_database(tmp_path / "two.db") as two:
        write(one)
        made = correct(one, FIRST, "rpe", 7)
        assert two.corrections.add([made]) == 1
        write(two)
        assert rows(two, BoutRecordRow) == rows(one, BoutRecordRow)


def test_a_run_corrected_to_an_athlete_who_is_not_there_stays_with_its_own(written: Database) -> None:
    nobody = RUN.replace("0190", "0199")
    written.corrections.add([Correction(nobody, change(RUN_ITSELF, "athlete", nobody), nobody)])
    assert written.queries.run_summaries()[0].athlete == "Ines"
    (shown,) = written.corrections.history_of(RUN).corrections
    assert shown.after == "somebody who was erased"


def test_what_is_known_of_an_athlete_follows_its_corrections(written: Database) -> None:
    (person,) = written.answers.people()
    assert (person.name, person.consent_on) == ("Ines", None)
    target = Target(Subject.ATHLETE, person.id)
    correct(written, target, "consent_on", "2026-03-01")
    correct(written, target, "consent_scope", "led, kept, shown to the practitioner")
    asked = correct(written, target, "name", "Inês")
    (after,) = written.answers.people()
    assert after.consent_on is not None
    assert (after.name, after.consent_on.isoformat()) == ("Inês", "2026-03-01")
    assert written.queries.athletes() == ("Inês",)
    undo(written, asked, 1)
    assert written.queries.athletes() == ("Ines",)
    assert len(written.corrections.history_about(person.id).corrections) == 4


def test_a_reference_side_is_chosen_and_taken_back_with_its_history(written: Database) -> None:
    (person,) = written.answers.people()
    assert person.reference_side is None
    target = Target(Subject.ATHLETE, person.id)
    correct(written, target, "reference_side", "left")
    (after,) = written.answers.people()
    assert after.reference_side is Side.LEFT
    other = correct(written, target, "reference_side", "right", 1)
    undo(written, other, 2)
    (after,) = written.answers.people()
    assert after.reference_side is Side.LEFT
    history = written.corrections.history_about(person.id).corrections
    assert [(each.before, each.change.after) for each in history] == [
        (None, "left"),
        ("left", "right"),
        ("right", "left"),
    ]


def test_damage_in_a_correction_is_said(written: Database) -> None:
    correct(written, FIRST, "rpe", 7)
    with written._link.writing() as connection:
        connection.exec_driver_sql("UPDATE correction SET after = '99'")
    with pytest.raises(StoreError, match="is damaged"):
        written.corrections.history_of(RUN)


CHANGES: tuple[tuple[Target, str, tuple[Value, ...]], ...] = (
    (RUN_ITSELF, "session_rpe", (None, 2, 6)),
    (RUN_ITSELF, "zone", ("UTC", "Asia/Kathmandu")),
    (FIRST, "pain", (None, 0, 3, 6)),
    (FIRST, "reps_stated", (None, 0, 4)),
    (FIRST_REP, "missed", (True, False)),
    (SECOND, "reps_stated", (0, 1, 2)),
)


@settings(max_examples=15)
@given(st.lists(st.tuples(st.integers(0, 5), st.integers(0, 3), st.integers(0, 9)), max_size=6), st.data())
def test_two_databases_that_hand_each_other_their_corrections_come_to_the_same(
    wanted: list[tuple[int, int, int]], data: st.DataObject
) -> None:
    with (
        TemporaryDirectory() as folder,
        open_database(Path(folder) / "one.db") as one,
        open_database(Path(folder) / "two.db") as two,
    ):
        for database in (one, two):
            write(database)
        for which, value, minutes in wanted:
            target, field, values = CHANGES[which]
            place = one if data.draw(st.booleans()) else two
            after = values[value % len(values)]
            place.corrections.correct(change(target, field, after, minutes))
        ours, theirs = (db.corrections.history_of(RUN).corrections for db in (one, two))
        one.corrections.add(theirs)
        two.corrections.add(data.draw(st.permutations(ours)))
        assert one.corrections.history_of(RUN) == two.corrections.history_of(RUN)
        assert one.queries.run_summaries() == two.queries.run_summaries()
        assert rows(one, BoutRecordRow) == rows(two, BoutRecordRow)
