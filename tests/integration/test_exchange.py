"""Packs between several computers: in whatever order and however often they come, one record comes of it."""

import zipfile
from base64 import b64decode
from dataclasses import replace
from itertools import permutations
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.correctable import Subject
from app.domain.corrections import Target
from app.domain.errors import PackError, UsageError
from app.domain.tables_of_runs import BRANCHES
from app.store.courses import read_course
from app.store.exchange import Wanted
from app.store.verify import verify
from tests.filled import Invented, change
from tests.laptops import (
    RUNS,
    WORDS,
    beside,
    cut_short,
    dump,
    laid_down,
    laptop,
    of_bout,
    of_run,
)

FIRST, SECOND, THIRD, *OTHERS = RUNS


@pytest.fixture(scope="module")
def packs(tmp_path_factory: pytest.TempPathFactory) -> list[Path]:
    """What two laptops and the practitioner's computer hand on in the course of a season."""
    folder = tmp_path_factory.mktemp("season")
    one, two, desk = (laptop(folder, name, seed) for seed, name in enumerate(("one", "two", "desk")))
    made = []
    one.lead([FIRST, cut_short(SECOND, 9)])
    made.append(one.pack("early.pwpack"))
    desk.unpack(made[0])
    one.lead([SECOND])
    one.keep(*beside(RUNS))
    one.plan(FIRST)
    one.correct(of_bout(FIRST), "pain", 2, "Ines")
    made.append(one.pack("later.pwpack"))
    made.append(one.pack("nameless.pwpack", Wanted(names=False)))
    two.lead([THIRD, *OTHERS])
    two.correct(of_run(THIRD), "athlete", "Bram", "Tomas")
    made.append(two.pack("two.pwpack"))
    desk.lead([laid_down(SECOND, 9)])
    desk.correct(of_bout(FIRST), "pain", 4, "Tomas", 5)
    desk.correct(
        Target(Subject.ATHLETE, desk.athlete(FIRST.header.athlete)), "consent_on", "2026-01-02", "Tomas"
    )
    desk.correct(
        Target(Subject.ATHLETE, desk.athlete(FIRST.header.athlete)), "reference_side", "right", "Tomas"
    )
    desk.correct(Target(Subject.ATHLETE, desk.athlete(FIRST.header.athlete)), "name", "Hugo B.", "Tomas", 6)
    made.append(desk.pack("desk.pwpack"))
    made.append(desk.pack("desk_nameless.pwpack", Wanted(names=False)))
    return made


@pytest.fixture(scope="module")
def expected(packs: list[Path], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The record that comes of all of them in one order."""
    whole = laptop(tmp_path_factory.mktemp("expected"), "whole", 9)
    whole.unpack(*packs)
    assert verify(whole.path, thorough=True).sound
    return whole.path


@settings(max_examples=12)
@given(data=st.data())
def test_packs_give_one_record_in_whatever_order_and_however_often_they_come(
    packs: list[Path], expected: Path, data: st.DataObject
) -> None:
    order = data.draw(st.permutations(packs))
    again = data.draw(st.lists(st.sampled_from(packs), max_size=4))
    with TemporaryDirectory() as folder:
        other = laptop(Path(folder), "other", 5)
        other.unpack(*order, *again)
        assert dump(other.path) == dump(expected)


def test_a_record_unpacked_where_nothing_was_is_the_record_that_was_packed(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    one.lead([*OTHERS, cut_short(FIRST, 9)])
    one.keep(*beside(OTHERS))
    one.correct(of_bout(OTHERS[0]), "rpe", 3, "Tomas")
    (taken,) = other.unpack(one.pack("all.pwpack"))
    assert (taken.new, taken.completed, taken.known, taken.beside) == (4, 0, 0, 6)
    assert dump(other.path) == dump(one.path)


def test_a_run_cut_short_is_completed_by_a_later_pack_and_an_earlier_one_takes_nothing_away(
    tmp_path: Path,
) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead([cut_short(FIRST, 9)])
    early = one.pack("early.pwpack")
    one.lead([FIRST])
    late = one.pack("late.pwpack")
    counts = [(each.new, each.completed, each.known) for each in desk.unpack(early, late, early)]
    assert counts == [(1, 0, 0), (0, 1, 0), (0, 0, 1)]
    with desk.open() as record:
        assert record.queries.facts_of(FIRST.header.run_id) == FIRST.facts
        assert record.queries.unfinished_runs() == ()


def test_of_a_run_led_on_in_two_places_the_longer_course_stands_and_the_other_is_kept(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead([cut_short(FIRST, 9)])
    desk.unpack(one.pack("early.pwpack"))
    desk.lead([laid_down(FIRST, 9)])
    one.lead([FIRST])
    (taken,) = desk.unpack(one.pack("late.pwpack"))
    assert (taken.completed, taken.parted) == (1, 1)
    with desk.open() as record, record.exchange.handing_on(Wanted()) as rows:
        (branch,) = rows.rows(BRANCHES)
    assert read_course(b64decode(str(branch["facts"]))).facts() == laid_down(FIRST, 9).facts
    with desk.open() as record:
        assert record.queries.facts_of(FIRST.header.run_id) == FIRST.facts
    assert verify(desk.path, thorough=True).sound


def test_corrections_that_know_nothing_of_each_other_are_both_kept_and_shown(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead([FIRST])
    desk.unpack(one.pack("early.pwpack"))
    mine = one.correct(of_bout(FIRST), "pain", 7, "Ines")
    theirs = desk.correct(of_bout(FIRST), "pain", 9, "Tomas", 5)
    ((conflict,),) = (taken.conflicts for taken in desk.unpack(one.pack("late.pwpack")))
    assert (conflict.holds, conflict.others) == (theirs, (mine,))
    with desk.open() as record:
        known = record.corrections.history_of(FIRST.header.run_id)
        assert known.corrections == (mine, theirs)
        assert record.queries.run_summaries()[0].pain == 9


def test_two_of_one_name_stay_two_and_are_shown_under_the_name(tmp_path: Path) -> None:
    one, two = laptop(tmp_path, "one", 1), laptop(tmp_path, "two", 2)
    one.lead([FIRST])
    two.lead([RUNS[4]])
    assert FIRST.header.athlete == RUNS[4].header.athlete
    (taken,) = two.unpack(one.pack("one.pwpack"))
    assert taken.namesakes == (FIRST.header.athlete,)
    assert len({row[0] for row in dump(two.path)["athlete"]}) == 2
    with two.open() as record:
        assert len(record.queries.run_summaries(athlete=FIRST.header.athlete)) == 2


def unzipped(pack: Path) -> bytes:
    """All that a pack says."""
    with zipfile.ZipFile(pack) as archive:
        return b"\n".join(archive.read(name) for name in archive.namelist())


def test_a_pack_without_names_names_nobody_and_a_later_one_says_who_they_are(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead([FIRST])
    one.keep(*beside(RUNS))
    whose = one.athlete(FIRST.header.athlete)
    one.correct(Target(Subject.ATHLETE, whose), "name", "Wendelin", "Maren")
    one.correct(of_bout(FIRST), "pain", 7, "Maren")
    nameless = one.pack("nameless.pwpack", Wanted(names=False))
    said = unzipped(nameless)
    assert [name for name in (b"Hugo", b"Wendelin", b"Maren", b"Tomas") if name in said] == []
    assert WORDS.encode() in said
    desk.unpack(nameless)
    with desk.open() as record:
        assert record.queries.athletes() == (f"Athlete {whose[-6:]}",)
    desk.unpack(one.pack("named.pwpack"), nameless)
    with desk.open() as record:
        assert record.queries.athletes() == ("Wendelin",)
    assert dump(desk.path) == dump(one.path)


def test_of_one_athlete_only_theirs_is_handed_on(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead(RUNS)
    one.keep(*beside(RUNS), *beside(RUNS[1:], 2))
    one.correct(of_run(SECOND), "athlete", FIRST.header.athlete, "Tomas")
    one.correct(of_run(RUNS[4]), "athlete", THIRD.header.athlete, "Tomas")
    pack = one.pack("hugo.pwpack", Wanted((FIRST.header.athlete,)))
    assert SECOND.header.athlete.encode() not in unzipped(pack)
    desk.unpack(pack)
    with desk.open() as record:
        summaries = record.queries.run_summaries()
        assert [run.run_id for run in summaries] == [FIRST.header.run_id, SECOND.header.run_id]
        assert {run.athlete for run in summaries} == {FIRST.header.athlete}
        assert [held.thing.text for held in record.answers.notes_of(FIRST.header.athlete)] == [WORDS]
    with pytest.raises(UsageError, match="nobody called Nobody"):
        one.pack("nobody.pwpack", Wanted(("Nobody",)))
    by_id = Wanted((one.athlete(FIRST.header.athlete),))
    assert unzipped(one.pack("by_id.pwpack", by_id)) == unzipped(pack)


def test_since_a_day_is_what_was_done_or_said_since(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead(RUNS)
    one.correct(of_bout(FIRST), "pain", 7, "Maren")
    day = RUNS[3].header.started_at.date()
    desk.unpack(one.pack("since.pwpack", Wanted(since=day)))
    with desk.open() as record:
        ids = {run.run_id for run in record.queries.run_summaries()}
    assert ids == {FIRST.header.run_id, *(run.header.run_id for run in RUNS[3:])}
    with one.open() as record, record.exchange.handing_on(Wanted(since=day, until=day)) as rows:
        assert rows.run_ids == (RUNS[3].header.run_id,)


def test_a_pack_that_says_something_else_of_a_run_is_refused_whole(tmp_path: Path) -> None:
    one, desk = laptop(tmp_path, "one", 1), laptop(tmp_path, "desk", 2)
    one.lead(RUNS)
    desk.lead([Invented(replace(SECOND.header, zone="UTC"), SECOND.prescribed, SECOND.facts)])
    before = dump(desk.path)
    with pytest.raises(PackError, match="something else in runs than the record here"):
        desk.unpack(one.pack("all.pwpack"))
    assert dump(desk.path) == before


def test_a_name_goes_before_none_and_of_two_names_the_first_by_its_letters_in_any_order(
    tmp_path: Path,
) -> None:
    one = laptop(tmp_path, "one", 1)
    one.lead([FIRST])
    packs = [one.pack("nameless.pwpack", Wanted(names=False)), one.pack("named.pwpack")]
    change(one.path, "UPDATE athlete SET name = 'Aaron'")
    packs.append(one.pack("renamed.pwpack"))
    for number, order in enumerate(permutations(packs)):
        desk = laptop(tmp_path, f"desk{number}", 2)
        desk.unpack(*order[:2])
        with desk.open() as record:
            (name,) = record.queries.athletes()
        assert name == ("Aaron" if packs[2] in order[:2] else FIRST.header.athlete)
        desk.unpack(order[2])
        with desk.open() as record:
            assert record.queries.athletes() == ("Aaron",)


def test_what_is_planned_is_handed_on_with_what_became_of_it(tmp_path: Path) -> None:
    one, other = laptop(tmp_path, "one", 1), laptop(tmp_path, "other", 2)
    one.plan(FIRST)
    other.unpack(one.pack("planned.pwpack"), one.pack("again.pwpack"))
    with one.open() as here, other.open() as there:
        planned, changes = here.planned.of()
        assert there.planned.of() == (planned, changes)
    assert (len(planned), len(changes)) == (1, 1)
