"""Group sessions in the record: kept once, read back, erased and handed on with those who were in them."""

import json
import random
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.domain.group_record import GroupMember, GroupRecord
from app.domain.grouping import Form
from app.domain.records import RunBegan, RunEnded, RunOutcome
from app.store.arrivals import mark_of
from app.store.database import Database, open_database
from app.store.erasing import erase_from, theirs_in
from app.store.exchange import Wanted
from app.store.side_file import SideFile
from app.store.side_lines import (
    facts_line,
    group_line,
    lines_without,
    read_groups,
    read_lines,
    run_line,
)
from app.store.verify import verify
from tests.filled import invented_runs
from tests.laptops import dump, laptop
from tests.schemas import MEMBER, WAVES
from tests.weak_disk import FULL, WeakRecord

AT = datetime(2026, 1, 20, 18, tzinfo=UTC)
RUNS = invented_runs(4)
ABSENT = "0190163d-8694-739b-aea5-966c26f8adff"


def name(number: int) -> str:
    return f"0190163d-8694-7000-8000-0000000000{number:02d}"


def member(place: int, athlete: str, run_id: str) -> GroupMember:
    return GroupMember(name(place), place, athlete, run_id, MEMBER)


GROUP = GroupRecord(
    name(90),
    Form.WAVES,
    WAVES,
    AT,
    "Europe/Lisbon",
    (
        *(member(place, run.header.athlete, run.header.run_id) for place, run in enumerate(RUNS[:2])),
        member(2, "Nele", ABSENT),
    ),
)
OPENED = [(run.header, run.prescribed) for run in RUNS[:2]]


@pytest.fixture
def database(tmp_path: Path) -> Iterator[Database]:
    with open_database(tmp_path / "record.db", random_bytes=random.Random(1).randbytes) as opened:
        yield opened


def test_a_group_is_read_back_as_it_was_with_its_runs_and_once(database: Database) -> None:
    database.journal.open_group(GROUP, OPENED)
    database.journal.open_group(GROUP, OPENED)
    assert database.groups.read(GROUP.group_id) == GROUP
    assert database.queries.run_ids() == {run.header.run_id for run in RUNS[:2]}
    assert database.groups.of_run(RUNS[1].header.run_id) == GROUP.group_id
    assert database.groups.of_run(RUNS[3].header.run_id) is None
    with pytest.raises(ValueError, match="is another"):
        database.journal.open_group(replace(GROUP, choices="{}"), ())
    with pytest.raises(StoreError, match="There is no group session"):
        database.groups.read(name(91))


def test_a_group_is_unfinished_while_a_run_of_it_is_and_its_runs_are_not_offered_alone(
    database: Database,
) -> None:
    one, other = (run.header.run_id for run in RUNS[:2])
    database.journal.open_group(GROUP, OPENED)
    assert database.groups.unfinished() == ()
    database.journal.append_all([(one, 0, [RunBegan()]), (other, 0, [RunBegan()])])
    database.journal.append(one, 1, [RunEnded(9, RunOutcome.FINISHED)])
    assert database.groups.unfinished() == (GROUP,)
    assert database.queries.unfinished_runs() == ()
    database.journal.append(other, 1, [RunEnded(9, RunOutcome.ABANDONED)])
    assert database.groups.unfinished() == ()


def test_what_is_written_of_several_runs_is_whole_or_not_at_all(database: Database) -> None:
    one, other = (run.header.run_id for run in RUNS[:2])
    database.journal.open_group(GROUP, OPENED)
    with pytest.raises(ValueError, match="is missing"):
        database.journal.append_all([(one, 0, [RunBegan()]), (other, 1, [RunBegan()])])
    assert database.queries.facts_of(one) == ()
    database.journal.append_all([(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    for run in RUNS[:2]:
        assert database.queries.facts_of(run.header.run_id) == run.facts


def test_written_at_once_or_one_by_one_the_record_is_the_same(tmp_path: Path) -> None:
    for path, together in ((tmp_path / "one.db", True), (tmp_path / "many.db", False)):
        with open_database(path, random_bytes=random.Random(1).randbytes) as record:
            record.journal.open_group(GROUP, OPENED)
            said = [(run.header.run_id, 0, run.facts) for run in RUNS[:2]]
            for each in [said] if together else [[one] for one in said]:
                record.journal.append_all(each)
    assert dump(tmp_path / "one.db") == dump(tmp_path / "many.db")


def test_in_trouble_a_group_stands_beside_and_is_saved_before_its_runs(tmp_path: Path) -> None:
    record = WeakRecord(tmp_path / "state")
    said: list[str | None] = []
    journal = record.steadily(said.append)
    record.journal.trouble = FULL
    journal.open_group(GROUP, OPENED)
    journal.append_all([(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    (path,) = (tmp_path / "state").iterdir()
    assert read_groups(path.read_bytes()) == (GROUP,)
    runs, unread = read_lines(path.read_bytes())
    assert (unread, [list(run.stretches()) for run in runs.values()]) == (
        0,
        [[(0, list(run.facts))] for run in RUNS[:2]],
    )
    assert journal.unsaved
    record.journal.trouble = None
    assert journal.mend()
    assert record.journal.groups == [GROUP]
    assert record.journal.facts == {run.header.run_id: list(run.facts) for run in RUNS[:2]}
    assert not path.exists()
    assert said[-1] is None
    journal.close()


def test_a_group_that_was_left_beside_comes_into_the_record(tmp_path: Path) -> None:
    state, path = tmp_path / "state", tmp_path / "record.db"
    open_database(path).close()
    side = SideFile(state, path)
    side.write([group_line(GROUP), *(run_line(*opened) for opened in OPENED)])
    side.write([facts_line(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    side.close()
    with open_database(path, spare=state) as record:
        assert record.take_in().unread == ()
        assert record.groups.read(GROUP.group_id) == GROUP
        assert record.queries.facts_of(RUNS[0].header.run_id) == RUNS[0].facts


def test_lines_without_somebody_keep_the_group_of_the_others() -> None:
    left = lines_without(group_line(GROUP), (), {"Nele"})
    assert read_groups(left) == (replace(GROUP, members=GROUP.members[:2]),)
    assert lines_without(group_line(GROUP), (), {each.athlete for each in GROUP.members}) == b""
    assert read_groups(b"[]\n" + group_line(GROUP)[:-4]) == ()


def test_who_is_erased_is_gone_from_their_groups_and_the_last_takes_the_group_along(tmp_path: Path) -> None:
    path = tmp_path / "record.db"
    with open_database(path) as record:
        record.journal.open_group(GROUP, OPENED)
        record.journal.append_all([(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    erase_from(path, theirs_in(path, [RUNS[0].header.athlete]), AT)
    with open_database(path) as record:
        assert record.groups.read(GROUP.group_id).members == GROUP.members[1:]
    assert verify(path, thorough=True).sound
    erase_from(path, theirs_in(path, [RUNS[1].header.athlete, "Nele"]), AT)
    with closing(sqlite3.connect(path)) as raw:
        assert raw.execute("SELECT count(*) FROM group_session").fetchone() == (0,)


def test_a_pack_hands_a_group_on_with_who_was_absent(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    with one.open() as record:
        record.journal.open_group(GROUP, OPENED)
        record.journal.append_all([(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    other.unpack(one.pack("all.pwpack"), one.pack("again.pwpack"))
    assert dump(other.path) == dump(one.path)
    nameless = one.pack("nameless.pwpack", Wanted(names=False))
    third = laptop(tmp_path, "third", 3)
    third.unpack(nameless)
    with third.open() as record:
        group = record.groups.read(GROUP.group_id)
    assert not {each.athlete for each in group.members} & {each.athlete for each in GROUP.members}
    assert [json.loads(each.choices) for each in group.members] == [json.loads(MEMBER)] * 3


def test_a_pack_of_one_athlete_has_their_place_in_the_group_alone(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    with one.open() as record:
        record.journal.open_group(GROUP, OPENED)
        record.journal.append_all([(run.header.run_id, 0, run.facts) for run in RUNS[:2]])
    whose = one.athlete(RUNS[0].header.athlete)
    other.unpack(one.pack("theirs.pwpack", Wanted(athletes=(whose,))))
    with other.open() as record:
        assert record.groups.read(GROUP.group_id).members == GROUP.members[:1]


def test_an_old_pack_brings_nobody_back_into_a_group(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    with one.open() as record:
        record.journal.open_group(GROUP, OPENED)
    pack = one.pack("old.pwpack")
    other.open().close()
    marks = [mark_of(one.athlete(each.athlete)) for each in GROUP.members[:2]]
    with closing(sqlite3.connect(other.path, isolation_level=None)) as raw:
        raw.executemany("INSERT INTO erased VALUES (?, 0)", [(each,) for each in marks])
    other.unpack(pack)
    with other.open() as record:
        assert record.groups.read(GROUP.group_id).members == GROUP.members[2:]
