"""What is written down can be read back whole, and the figures drawn from it follow."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import select

from app.domain.errors import StoreError
from app.domain.fold import fold_closing, fold_run, standing
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutBegan,
    BoutEnded,
    BoutOutcome,
    BoutPrescribed,
    BoutRated,
    BoutRecord,
    Fact,
    FaultMarked,
    RepDone,
    RepMissed,
    RunBegan,
    RunEnded,
    RunHeader,
    RunOutcome,
    SessionRated,
)
from app.run.journal import Journal
from app.store.conversions import course_columns, record_columns
from app.store.database import Database, open_database
from app.store.rows import (
    AthleteRow,
    BoutRecordRow,
    FactRow,
    FoldRow,
    PlanRow,
    PrescriptionRow,
    Row,
    RunCourseRow,
)
from tests.strategies import headers, prescribed_bouts, run_facts

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
HEADER = RunHeader(
    run_id=RUN,
    athlete="Ines",
    plan_title="Landing control",
    plan_text='title = "Landing control"\n',
    started_at=datetime(2026, 3, 2, 17, 30, tzinfo=UTC),
    zone="Europe/Lisbon",
)
BOUT = BoutPrescribed(0, "Catch", StageKind.STABILITY, "Step-down", 1, Side.LEFT, 2, 3, 24_000, 1, "2.5")
FACTS: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(5_000, 0, 1),
    RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 3),
    RepDone(13_000, 0, 1, 2, Side.LEFT, 9_000, 5),
    BoutEnded(13_000, 0, 1, BoutOutcome.ENDED_EARLY),
)


def begun(database: Database, facts: Sequence[Fact] = FACTS) -> Journal:
    journal: Journal = database.journal
    journal.open_run(HEADER, [BOUT])
    journal.append(RUN, 0, facts)
    return journal


def count(database: Database, table: type[Row]) -> int:
    with database._link.reading() as connection:
        return len(connection.execute(select(table.__table__)).all())


def drawn(database: Database, run_id: str) -> tuple[list[dict[str, object]], dict[str, object] | None]:
    """The rows of figures of a run, without whose and when it is."""
    with database._link.reading() as connection:
        records = select(BoutRecordRow.__table__).where(BoutRecordRow.run_id == run_id)
        course = select(RunCourseRow.__table__).where(RunCourseRow.run_id == run_id)
        found = [dict(row) for row in connection.execute(records).mappings()]
        went = connection.execute(course).mappings().first()
    return [_unnamed(row) for row in found], None if went is None else _unnamed(dict(went))


def _unnamed(row: dict[str, object]) -> dict[str, object]:
    named = ("run_id", "athlete_id", "started_at", "zone", "corrected")
    return {name: value for name, value in row.items() if name not in named}


def sums(records: Sequence[BoutRecord], prescribed: Sequence[BoutPrescribed]) -> dict[str, int | None]:
    """What the records of a run come to, added up one by one."""
    stand = standing(records).values()
    tempo = [record_columns(each, prescribed[each.bout]) for each in stand]
    return {
        "reps_met": sum(min(each.reps_done, prescribed[each.bout].low) for each in stand),
        "reps_done": sum(each.reps_done for each in records),
        "tempo_known": sum(each["tempo_known"] for each in tempo),
        "tempo_kept": sum(each["tempo_kept"] for each in tempo),
        "pain": max((each.pain for each in records if each.pain is not None), default=None),
    }


@settings(max_examples=30)
@given(headers(), prescribed_bouts(), st.data())
def test_whatever_a_run_writes_in_whatever_portions_is_read_back_and_drawn_as_it_folds(
    header: RunHeader, prescribed: tuple[BoutPrescribed, ...], data: st.DataObject
) -> None:
    facts = data.draw(run_facts(len(prescribed)))
    portions = data.draw(st.lists(st.integers(1, 6), min_size=len(facts), max_size=len(facts)))
    with TemporaryDirectory() as folder, open_database(Path(folder) / "record.db") as database:
        database.journal.open_run(header, prescribed)
        place = 0
        for size in portions:
            database.journal.append(header.run_id, place, facts[place : place + size])
            place += size
            written = facts[:place]
            records = sorted(fold_run(written), key=lambda record: (record.bout, record.attempt))
            asked = {bout.bout: bout for bout in prescribed}
            course = course_columns(fold_closing(written)) | sums(records, prescribed) if written else None
            rows = [record_columns(each, asked[each.bout]) for each in records]
            assert drawn(database, header.run_id) == (rows, course)
        assert database.queries.facts_of(header.run_id) == facts
        assert database.queries.header_of(header.run_id) == header
        bouts = database.queries.bouts_of(header.run_id)
        assert [record for _, record in bouts if record is not None] == records if facts else True
        assert tuple(dict.fromkeys(bout for bout, _ in bouts)) == prescribed


def test_while_a_bout_is_under_way_each_fact_is_a_row(database: Database) -> None:
    begun(database, FACTS[:4])
    assert (count(database, FactRow), count(database, FoldRow)) == (4, 0)


def test_the_end_of_a_bout_folds_its_facts_into_one_row(database: Database) -> None:
    begun(database, FACTS[:4]).append(RUN, 4, FACTS[4:])
    assert (count(database, FactRow), count(database, FoldRow)) == (0, 1)
    assert database.queries.facts_of(RUN) == FACTS


def test_portions_do_not_change_what_stands_in_the_file(tmp_path: Path) -> None:
    with (
        open_database(tmp_path / "one.db", random_bytes=bytes) as database,
        open_database(tmp_path / "other.db", random_bytes=bytes) as other,
    ):
        journal = begun(database, FACTS[:1])
        for number, fact in enumerate(FACTS[1:], 1):
            journal.append(RUN, number, [fact])
        begun(other)
        for table in (FactRow, FoldRow, BoutRecordRow, RunCourseRow):
            with database._link.reading() as one, other._link.reading() as two:
                rows = [connection.execute(select(table.__table__)).all() for connection in (one, two)]
            assert rows[0] == rows[1]


def test_a_number_written_before_is_left_as_it_is_folded_or_not(database: Database) -> None:
    journal = begun(database, FACTS[:3])
    other = RepDone(8_000, 0, 1, 1, Side.RIGHT, 5_000, 99)
    journal.append(RUN, 2, [other, *FACTS[3:]])
    assert database.queries.facts_of(RUN) == FACTS
    journal.append(RUN, 0, [other] * 5)
    assert database.queries.facts_of(RUN) == FACTS
    assert len(drawn(database, RUN)[0]) == 1


def test_a_fact_left_out_is_refused_and_nothing_of_the_portion_kept(database: Database) -> None:
    journal = begun(database, FACTS[:2])
    with pytest.raises(ValueError, match=r"after number 1 .* missing"):
        journal.append(RUN, 3, FACTS[3:])
    assert database.queries.facts_of(RUN) == FACTS[:2]


def test_the_first_fact_has_number_nought(database: Database) -> None:
    database.journal.open_run(HEADER, [BOUT])
    with pytest.raises(ValueError, match="missing"):
        database.journal.append(RUN, 1, FACTS)


def test_an_empty_portion_changes_nothing(database: Database) -> None:
    begun(database).append(RUN, 5, ())
    assert database.queries.facts_of(RUN) == FACTS


def test_facts_of_a_run_that_is_not_in_the_database_are_refused_in_plain_words(database: Database) -> None:
    with pytest.raises(StoreError, match="run being recorded is not in the database"):
        database.journal.append(RUN, 0, FACTS)


def test_answers_after_the_fold_are_further_facts_and_change_the_figures(database: Database) -> None:
    journal = begun(database)
    journal.append(RUN, 5, [BoutRated(20_000, 0, 1, reps=3, rpe=6, pain=1)])
    journal.append(RUN, 6, [BoutRated(21_000, 0, 1, pain=4)])
    ((record,), _) = drawn(database, RUN)
    assert (record["reps_stated"], record["rpe"], record["pain"]) == (3, 6, 4)
    assert count(database, FactRow) == 2
    (summary,) = database.queries.run_summaries()
    assert (summary.reps_met, summary.reps_done, summary.pain) == (2, 3, 4)


def test_a_fault_marked_after_the_fold_makes_its_rep_unclean(database: Database) -> None:
    journal = begun(database)
    assert drawn(database, RUN)[0][0]["reps_clean"] == 2
    for number in (5, 6):
        journal.append(RUN, number, [FaultMarked(15_000, 0, 1, 2, Side.LEFT, "trunk rolls")])
        assert drawn(database, RUN)[0][0]["reps_clean"] == 1


def test_a_rep_left_out_is_neither_counted_nor_clean(database: Database) -> None:
    begun(database, (*FACTS[:4], RepMissed(17_000, 0, 1, 3, Side.LEFT)))
    ((record,), _) = drawn(database, RUN)
    assert (record["reps_counted"], record["reps_clean"]) == (2, 2)


def test_a_rating_long_after_the_end_is_seen(database: Database) -> None:
    journal = begun(database, (*FACTS, RunEnded(13_000, RunOutcome.FINISHED)))
    journal.append(RUN, 6, [SessionRated(1_813_000, 7, 1_800_000, "heavy legs")])
    (summary,) = database.queries.run_summaries()
    assert (summary.outcome, summary.elapsed_ms, summary.session_rpe) == (RunOutcome.FINISHED, 13_000, 7)


def test_a_run_that_ends_with_a_bout_under_way_is_folded_whole(database: Database) -> None:
    begun(database, (*FACTS[:4], RunEnded(13_500, RunOutcome.ABANDONED)))
    assert (count(database, FactRow), count(database, FoldRow)) == (0, 1)
    ((record,), _) = drawn(database, RUN)
    assert (record["outcome"], record["reps_counted"]) == ("broken_off", 2)


def test_opening_a_run_again_changes_nothing_and_another_of_its_name_is_refused(database: Database) -> None:
    begun(database).open_run(HEADER, [BOUT])
    assert database.queries.facts_of(RUN) == FACTS
    for other in (
        replace(HEADER, athlete="Tomas"),
        replace(HEADER, plan_text="changed"),
        replace(HEADER, started_at=HEADER.started_at + timedelta(seconds=1)),
    ):
        with pytest.raises(ValueError, match="is another"):
            database.journal.open_run(other, [BOUT])
    assert database.queries.athletes() == ("Ines",)


def test_runs_of_one_plan_by_one_athlete_share_what_they_have_in_common(database: Database) -> None:
    begun(database)
    later = replace(HEADER, run_id=RUN.replace("0190", "0191"), started_at=HEADER.started_at + timedelta(2))
    database.journal.open_run(later, [BOUT])
    for table in (AthleteRow, PlanRow, PrescriptionRow):
        assert count(database, table) == 1


def test_editing_a_plan_leaves_the_runs_before_as_they_were(database: Database) -> None:
    begun(database)
    edited = replace(HEADER, run_id=RUN.replace("0190", "0191"), plan_text="edited")
    database.journal.open_run(edited, [replace(BOUT, low=1)])
    assert database.queries.header_of(RUN) == HEADER
    assert database.queries.bouts_of(RUN)[0][0] == BOUT


def test_names_of_new_athletes_come_from_the_given_randomness(tmp_path: Path) -> None:
    names = []
    for name in ("one.db", "two.db"):
        with open_database(tmp_path / name, random_bytes=lambda size: b"\x07" * size) as database:
            database.journal.open_run(HEADER, [BOUT])
            with database._link.reading() as connection:
                names.append(connection.execute(select(AthleteRow.id)).scalar_one())
    assert names[0] == names[1]
    # 17:30 UTC on 2 March 2026 is 1 772 472 600 s (`date -u -d '2026-03-02 17:30' +%s`): 0x019caf9985c0 ms.
    assert names[0].startswith("019caf99-85c0-7")
