"""Erasure is real: no file of the record holds a byte of the athlete, and no old copy brings them back."""

import json
import sqlite3
import stat
from base64 import b64encode
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from app import wiring
from app.__main__ import main
from app.domain.correctable import Subject
from app.domain.corrections import Target
from app.domain.keeping import Note
from app.domain.records import BoutRated, Fact, SessionRated
from app.store.arrivals import mark_of
from app.store.backup import back_up
from app.store.contents import contents_of
from app.store.copying import is_sound
from app.store.database import open_database
from app.store.encoding import encode
from app.store.erasing import erase_from
from app.store.places import aside_folder, backup_folder
from app.store.replacing import set_aside
from app.store.restore import restore
from app.store.side_file import SideFile
from app.store.side_lines import facts_line, run_line
from app.store.verify import verify
from tests.filled import Invented, fill, invented_runs, spoil
from tests.laptops import Laptop, beside, dump, laptop, of_bout, of_run
from tests.schemas import record_of

NAME, NICKNAME, NOTE, PLACE = "Wendelin Marker", "Wendy", "stabbing under the kneecap", "left patella tip"
TITLE = "Only for Wendelin's knee"
NOW = datetime(2026, 11, 22, 18, 0, tzinfo=UTC)
OTHERS = invented_runs(6, unfinished=False)[1:4]


def theirs() -> list[Invented]:
    """Runs of the one to be erased: one of a plan of their own, one of a plan that others follow too."""
    noted: tuple[Fact, ...] = (
        BoutRated(9_000, 0, 1, None, 5, 6, NOTE),
        SessionRated(900_000, 7, 60_000, NOTE),
    )
    made = invented_runs(2, seed=8, unfinished=False)
    own, shared = (replace(run.header, athlete=NAME) for run in made)
    own = replace(own, plan_title=TITLE, plan_text=f'title = "{TITLE}"\n')
    return [
        Invented(own, made[0].prescribed[:1], (*made[0].facts, *noted)),
        Invented(shared, made[1].prescribed, made[1].facts),
    ]


OWN, SHARED = theirs()


@pytest.fixture
def season(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Laptop:
    """A data folder after a season: backups, a file set aside, something unsaved, and people to keep."""
    data, state = tmp_path / "data", tmp_path / "state"
    data.mkdir(mode=0o700)
    monkeypatch.setenv("PACEWRIGHT_DATA", str(data))
    monkeypatch.setenv("PACEWRIGHT_STATE", str(state))
    record = Laptop(data / "pacewright.db", 4)
    record.lead([*OTHERS, OWN])
    back_up(record.path, backup_folder(record.path), NOW - timedelta(days=40))
    record.lead([SHARED])
    record.keep(*(replace(thing, text=NOTE) if isinstance(thing, Note) else thing for thing in beside([OWN])))
    record.keep(*beside(OTHERS, 2))
    record.plan(OWN, 1, f"{PLACE} is swollen")
    record.plan(OTHERS[0], 2)
    whose = Target(Subject.ATHLETE, record.athlete(NAME))
    record.correct(whose, "short_name", NICKNAME, NAME)
    record.correct(of_bout(OWN), "note", f"{NOTE}, {PLACE}", NAME, 1)
    record.correct(of_bout(OTHERS[0]), "pain", 2, NAME, 2)
    record.correct(of_run(OTHERS[1]), "athlete", NAME, "Tomas", 3)
    record.correct(of_run(SHARED), "athlete", OTHERS[0].header.athlete, "Tomas", 4)
    back_up(record.path, backup_folder(record.path), NOW - timedelta(days=1))
    return record


def files(*folders: Path) -> Iterator[Path]:
    for folder in folders:
        yield from (path for path in folder.rglob("*") if path.is_file())


def holding(folder: Path, *texts: str) -> list[str]:
    """The files that hold one of these texts, as it is or in base64 at any shift."""
    shapes = [text.encode() for text in texts]
    long = [shape for shape in shapes if len(shape) > 12]
    shapes += [b64encode(b"x" * shift + shape)[4:-4] for shape in long for shift in (1, 2, 3)]
    return [
        f"{path.name}: {shape.decode()}"
        for path in files(folder)
        for shape in shapes
        if shape in path.read_bytes()
    ]


def erased(capsys: pytest.CaptureFixture[str], *words: object) -> tuple[int, str, str]:
    status = main(["erase", *map(str, words)])
    out, err = capsys.readouterr()
    return status, out, err


def test_after_it_no_file_holds_a_byte_of_name_note_or_plan(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert len(holding(tmp_path, NAME, NOTE, TITLE)) > 6
    status, out, err = erased(capsys, "--athlete", NAME, "--yes")
    assert (status, err) == (0, "")
    assert "still stands" not in out
    assert holding(tmp_path, NAME, NICKNAME, NOTE, PLACE, TITLE, OWN.header.run_id) == []
    assert all(stat.S_IMODE(path.stat().st_mode) == 0o600 for path in files(season.path.parent))


def test_the_names_of_their_rows_are_gone_and_a_mark_of_them_stays(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    whose = season.athlete(NAME)
    erased(capsys, "--athlete", NAME, "--yes")
    for path in files(season.path.parent):
        data = path.read_bytes()
        for name in (whose, OWN.header.run_id, OTHERS[1].header.run_id):
            assert bytes.fromhex(name.replace("-", "")) not in data
            assert name.encode() not in data
        assert mark_of(whose) in data
    marks = {row[0] for row in dump(season.path)["erased"]}
    assert marks == {mark_of(whose), mark_of(OTHERS[1].header.run_id)}


def test_everybody_else_keeps_all_of_theirs(season: Laptop, capsys: pytest.CaptureFixture[str]) -> None:
    with season.open() as record:
        facts = {run.header.run_id: record.queries.facts_of(run.header.run_id) for run in (*OTHERS, SHARED)}
    erased(capsys, "--athlete", NAME, "--yes")
    assert verify(season.path, thorough=True).sound
    with season.open() as record:
        runs = {run.run_id: run for run in record.queries.run_summaries()}
        assert set(runs) == {OTHERS[0].header.run_id, OTHERS[2].header.run_id, SHARED.header.run_id}
        assert all(record.queries.facts_of(name) == facts[name] for name in runs)
        shared = runs[SHARED.header.run_id]
        assert (shared.athlete, shared.corrected) == (OTHERS[0].header.athlete, frozenset())
        assert runs[OTHERS[0].header.run_id].pain == 2
        (correction,) = record.corrections.history_of(OTHERS[0].header.run_id).corrections
        assert correction.change.who == "left out"
        assert [held.thing.text for held in record.answers.notes_of(OTHERS[0].header.athlete)]
        assert [each.athlete for each in record.planned.of()[0]] == [OTHERS[0].header.athlete]
        assert len(record.answers.devices()) == 1


def test_every_backup_stays_sound_and_whole_but_for_them(
    season: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    before = sorted(path.name for path in backup_folder(season.path).iterdir())
    erased(capsys, "--athlete", NAME, "--yes")
    backups = sorted(backup_folder(season.path).iterdir())
    assert [path.name for path in backups] == before
    for path in backups:
        assert is_sound(path)
        assert OTHERS[0].header.run_id in {run.run_id for run in contents_of(path).runs}


def test_without_yes_nothing_is_done_and_what_would_go_is_said(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    before = {path: path.read_bytes() for path in files(tmp_path)}
    status, out, err = erased(capsys, "--athlete", NAME)
    assert status == 1
    assert "To be erased: 2 runs and all that belongs to them.\n" in out
    assert f"From {season.path}, written anew.\nFrom 2 backups and files set aside, written anew.\n" in out
    assert err.startswith("\nNothing was changed. This cannot be undone.")
    assert {path: path.read_bytes() for path in files(tmp_path)} == before


def test_a_name_that_nobody_has_is_said(season: Laptop, capsys: pytest.CaptureFixture[str]) -> None:
    status, out, err = erased(capsys, "--athlete", "Nobody", "--yes")
    assert (status, out) == (1, "")
    assert err.startswith(f"There is nobody called Nobody in {season.path} or its backups.")
    missing = season.path.with_name("missing.db")
    status, _, err = erased(capsys, "--athlete", NAME, "--database", missing, "--yes")
    assert (status, missing.exists(), "There is no database" in err) == (1, False, True)


def test_an_old_pack_cannot_bring_them_back(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    old = season.pack("old.pwpack")
    erased(capsys, "--athlete", NAME, "--yes")
    before = dump(season.path)
    (taken,) = season.unpack(old)
    assert (taken.new, taken.completed, taken.erased) == (0, 0, 2)
    assert dump(season.path) == before
    old.unlink()
    assert holding(tmp_path, NAME, NOTE, TITLE) == []


def test_an_old_folder_of_tables_cannot_bring_them_back(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = tmp_path / "tables"
    assert main(["export", "--to", str(folder)]) == 0
    erased(capsys, "--athlete", NAME, "--yes")
    assert main(["import", str(folder)]) == 0
    assert "Left out, because the athlete was erased here: 2 runs." in capsys.readouterr().out
    assert holding(season.path.parent, NAME, NOTE, TITLE) == []


def test_a_backup_kept_elsewhere_cannot_bring_them_back(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    copy = stick / "copy.db"
    copy.write_bytes(max(backup_folder(season.path).iterdir()).read_bytes())
    erased(capsys, "--athlete", NAME, "--yes")
    restore(season.path, copy, NOW)
    assert holding(season.path.parent, NAME, NOTE, TITLE) == []
    assert verify(season.path, thorough=True).sound
    with season.open() as record:
        assert len(record.queries.run_summaries()) == 3


def test_the_marks_come_from_a_backup_where_the_record_itself_is_lost(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    copy = tmp_path / "copy.db"
    copy.write_bytes(max(backup_folder(season.path).iterdir()).read_bytes())
    erased(capsys, "--athlete", NAME, "--yes")
    season.path.write_bytes(b"\0" * 8192)
    restore(season.path, copy, NOW)
    with season.open() as record:
        assert NAME not in record.queries.athletes()


def test_somebody_of_that_name_can_begin_anew(season: Laptop, capsys: pytest.CaptureFixture[str]) -> None:
    erased(capsys, "--athlete", NAME, "--yes")
    season.lead([Invented(replace(OWN.header, run_id=OTHERS[1].header.run_id), OWN.prescribed, OWN.facts)])
    with season.open() as record:
        assert NAME in record.queries.athletes()


def test_what_waits_in_side_files_goes_too(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    state = wiring.state_folder()
    side = SideFile(state, season.path)
    header = replace(OWN.header, run_id="0190163d-8694-739b-aea5-966c26f8ad91")
    other = replace(OTHERS[0].header, run_id="0190163d-8694-739b-aea5-966c26f8ad92")
    side.write([run_line(header, OWN.prescribed), facts_line(header.run_id, 0, OWN.facts)])
    side.write([run_line(other, OTHERS[0].prescribed), facts_line(other.run_id, 0, OTHERS[0].facts)])
    side.close()
    unread = side.path.with_name(f"{side.path.name}.unread")
    kept = facts_line(OTHERS[2].header.run_id, 0, OTHERS[2].facts)
    unread.write_bytes(
        run_line(header, OWN.prescribed)
        + facts_line(OWN.header.run_id, 0, OWN.facts)
        + kept
        + b'[7,{"name":"'
        + NAME.encode()
        + b'"}]\n'
    )
    assert b64encode(encode(OWN.facts)) in unread.read_bytes()
    status, out, _ = erased(capsys, "--athlete", NAME, "--yes")
    assert status == 0
    assert f"From {unread}, where something waits to be saved." in out
    assert holding(tmp_path, NAME, NOTE, TITLE) == []
    assert list(state.iterdir()) == [unread]
    assert unread.read_bytes() == kept
    assert stat.S_IMODE(unread.stat().st_mode) == 0o600
    with season.open() as record:
        assert other.run_id in record.queries.run_ids()


def test_a_side_file_that_a_session_still_writes_to_is_in_the_way(
    season: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    side = SideFile(wiring.state_folder(), season.path)
    side.write([run_line(OWN.header, OWN.prescribed)])
    before = dump(season.path)
    status, _, err = erased(capsys, "--athlete", NAME, "--yes")
    side.close()
    assert (status, dump(season.path) == before) == (1, True)
    assert "is in use by another program" in err


def test_files_set_aside_are_written_anew_or_where_they_are_damaged_deleted(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    copy = season.path.read_bytes()
    for _ in range(3):
        aside = set_aside(season.path, NOW)
        assert aside is not None
        season.path.write_bytes(copy)
    sound, torn, nothing = sorted(aside_folder(season.path).iterdir())
    spoil(torn, 5, seed=2)
    nothing.write_bytes(NAME.encode() * 100)
    part = backup_folder(season.path) / "2026-11-21T18-00-00Z-schema3.db.77.part"
    part.write_bytes(copy)
    left = season.path.with_name("pacewright.db.77.part")
    left.write_bytes(copy)
    status, out, _ = erased(capsys, "--athlete", NAME, "--yes")
    assert status == 0
    for path in (torn, nothing):
        assert f"{path} is damaged, so that nobody knows what it holds: it is deleted whole." in out
    assert [path for path in (torn, nothing, part, left) if path.exists()] == []
    assert is_sound(sound)
    assert holding(tmp_path, NAME, NOTE, TITLE) == []


def test_a_name_in_the_words_of_others_is_told_and_left(
    season: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    season.correct(of_run(OTHERS[0]), "note", f"trained with {NAME}", "Tomas", 9)
    _, out, _ = erased(capsys, "--athlete", NAME, "--yes")
    assert f"The name still stands in {season.path}: in the words of others" in out


def test_cut_short_it_can_be_asked_for_again(
    season: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    done: list[Path] = []

    def failing(path: Path, *rest: object) -> None:
        if len(done) == 1:
            raise KeyboardInterrupt
        done.append(path)
        erase_from(path, *rest)  # type: ignore[arg-type]

    monkeypatch.setattr("app.store.erasure.erase_from", failing)
    assert erased(capsys, "--athlete", NAME, "--yes")[0] == 130
    monkeypatch.undo()
    monkeypatch.setenv("PACEWRIGHT_DATA", str(season.path.parent))
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    assert erased(capsys, "--athlete", NAME, "--yes")[0] == 0
    assert holding(tmp_path, NAME, NOTE, TITLE) == []


def test_a_backup_of_an_older_schema_keeps_its_schema(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("PACEWRIGHT_DATA", str(tmp_path))
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    record = tmp_path / "pacewright.db"
    fill(record, invented_runs(3))
    old = backup_folder(record) / "2026-01-20T18-00-00Z-schema1.db"
    old.parent.mkdir()
    old.write_bytes(record_of(1).read_bytes())
    with closing(sqlite3.connect(old)) as raw:
        name = "Hugo"
        (theirs,) = raw.execute(
            "SELECT count(*) FROM run JOIN athlete ON athlete_id = athlete.id WHERE name = ?", (name,)
        ).fetchone()
        (all_of_them,) = raw.execute("SELECT count(*) FROM run").fetchone()
    assert theirs > 0
    assert erased(capsys, "--athlete", name, "--yes")[0] == 0
    assert holding(tmp_path, name) == []
    with closing(sqlite3.connect(old)) as raw:
        assert raw.execute("PRAGMA user_version").fetchone() == (1,)
        assert raw.execute("SELECT count(*) FROM run").fetchone() == (all_of_them - theirs,)
    assert is_sound(old)


def test_two_of_one_name_go_together_and_one_by_id(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("PACEWRIGHT_STATE", str(tmp_path / "state"))
    one, two = laptop(tmp_path, "one", 1), laptop(tmp_path, "two", 2)
    one.lead([OWN])
    two.lead([SHARED, *OTHERS])
    first = one.athlete(NAME)
    two.unpack(one.pack("one.pwpack"))
    assert erased(capsys, "--athlete", first, "--database", two.path, "--yes")[0] == 0
    with two.open() as record:
        assert SHARED.header.run_id in record.queries.run_ids()
        assert OWN.header.run_id not in record.queries.run_ids()
    two.lead([OWN])
    status, out, _ = erased(capsys, "--athlete", NAME, "--database", two.path)
    assert (status, "To be erased: 2 runs" in out) == (1, True)


def test_the_corrections_that_named_them_are_gone_as_json_too(
    season: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    whose = season.athlete(NAME)
    named = [row for row in dump(season.path)["correction"] if json.dumps(whose) in row]
    assert len(named) == 2
    erased(capsys, "--athlete", NAME, "--yes")
    assert [row for row in dump(season.path)["correction"] if json.dumps(whose) in row] == []


def test_the_database_opens_after_it(season: Laptop, capsys: pytest.CaptureFixture[str]) -> None:
    erased(capsys, "--athlete", NAME, "--yes")
    with open_database(season.path) as record:
        assert NAME not in record.queries.athletes()
