"""`pack`, `unpack`, `export` and `import`, from their words to what stands in the record."""

import csv
import stat
from pathlib import Path

import pytest

from app.__main__ import main
from app.store.database import open_database
from app.store.exchange import Wanted
from tests.filled import invented_runs
from tests.laptops import RUNS, Laptop, beside, cut_short, dump, laid_down, laptop, of_bout, of_run

Said = tuple[int, str, str]


@pytest.fixture
def one(tmp_path: Path) -> Laptop:
    made = laptop(tmp_path, "one", 1)
    made.lead([*RUNS[:-1], cut_short(RUNS[-1], 9)])
    made.keep(*beside(RUNS))
    made.correct(of_bout(RUNS[0]), "pain", 2, "Ines")
    return made


def said(capsys: pytest.CaptureFixture[str], *words: object) -> Said:
    status = main([str(word) for word in words])
    out, err = capsys.readouterr()
    return status, out, err


def test_a_pack_goes_from_one_record_to_another(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    pack, desk = tmp_path / "week.pwpack", tmp_path / "desk.db"
    status, out, err = said(capsys, "pack", "-o", pack, "--database", one.path)
    assert (status, err) == (0, "")
    assert out.startswith(f"{pack}: 6 runs of 4 athletes, 4 answers, results and notes, 1 correction\n")
    assert "not encrypted" in out
    assert stat.S_IMODE(pack.stat().st_mode) == 0o600
    status, out, err = said(capsys, "unpack", pack, "--database", desk)
    assert (status, err) == (0, "")
    assert out == (f"{pack}: 6 runs new, 0 completed, 0 there before; new beside them: 6\n")
    assert dump(desk) == dump(one.path)
    assert "0 runs new, 0 completed, 6 there before" in said(capsys, "unpack", pack, "--database", desk)[1]


def test_who_since_and_without_names_narrow_a_pack(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    pack, desk = tmp_path / "week.pwpack", tmp_path / "desk.db"
    day = str(RUNS[4].header.started_at.date())
    words = (
        "--athlete",
        "Hugo",
        "--athlete",
        "Kaya",
        "--since",
        day,
        "--without-names",
        "--database",
        one.path,
    )
    status, out, _ = said(capsys, "pack", "-o", pack, *words)
    assert (status, "Notes and plans may still name somebody" in out) == (0, True)
    said(capsys, "unpack", pack, "--database", desk)
    with open_database(desk) as record:
        found = {run.run_id for run in record.queries.run_summaries()}
        assert all(name.startswith("Athlete ") for name in record.queries.athletes())
    assert found == {RUNS[0].header.run_id, RUNS[4].header.run_id}


def test_what_disagrees_is_shown_when_it_is_taken_in(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    desk = laptop(tmp_path, "desk", 2)
    desk.lead(invented_runs(1, seed=77))
    desk.unpack(one.pack("early.pwpack"))
    desk.correct(of_bout(RUNS[0]), "pain", 4, "Tomas", 5)
    desk.lead([laid_down(RUNS[-1], 9)])
    one.correct(of_bout(RUNS[0]), "pain", 3, "Ines", 1)
    one.lead([RUNS[-1]])
    late = one.pack("late.pwpack")
    status, out, _ = said(capsys, "unpack", late, "--database", desk.path)
    assert status == 0
    assert "1 completed" in out
    assert "Led on in two places: 1 run." in out
    assert f"More than one athlete is called {RUNS[0].header.athlete}." in out
    assert (
        "Corrections of the pain of a bout disagree. It holds: 4 (Tomas, 2026-11-22). "
        "Kept beside it: 3 (Ines, 2026-11-22)." in out
    )


def test_a_pack_that_is_no_pack_is_refused_in_a_sentence_and_makes_no_record(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    pack, desk = tmp_path / "odd.pwpack", tmp_path / "desk.db"
    pack.write_bytes(b"no zip")
    status, out, err = said(capsys, "unpack", pack, "--database", desk)
    assert (status, out, err.count("\n")) == (1, "", 1)
    assert err.startswith(f"{pack} is refused, and nothing was taken from it: it is damaged, or no zip file.")
    assert not desk.exists()


@pytest.mark.parametrize("words", [("pack", "-o"), ("export", "--to")])
def test_handing_on_from_a_record_that_is_not_there_is_said_and_makes_none(
    words: tuple[str, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    record = tmp_path / "missing.db"
    status, out, err = said(capsys, *words, tmp_path / "out", "--database", record)
    assert (status, out, record.exists()) == (1, "", False)
    assert err.startswith(f"There is no database {record}.")


def test_an_export_taken_back_is_the_record_and_twice_makes_no_difference(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    one.correct(of_run(RUNS[1]), "note", "=1+1\n'quoted'", "Tomas")
    desk, folder = tmp_path / "desk.db", tmp_path / "out"
    status, out, err = said(capsys, "export", "--to", folder, "--database", one.path)
    assert (status, err) == (0, "")
    assert "\nruns: 6 rows\n" in out
    for new in (6, 0):
        status, out, err = said(capsys, "import", folder, "--database", desk)
        assert (status, err) == (0, "")
        assert out.startswith(f"{folder}: {new} runs new, 0 completed")
        assert dump(desk) == dump(one.path)


def test_an_export_is_narrowed_by_who_and_by_days(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    first, last = (str(RUNS[place].header.started_at.date()) for place in (1, 4))
    folder = tmp_path / "out"
    words = (
        "--from",
        first,
        "--until",
        last,
        "--athlete",
        "Ines",
        "--athlete",
        "Hugo",
        "--database",
        one.path,
    )
    assert said(capsys, "export", "--to", folder, "--without-names", *words)[0] == 0
    with (folder / "sessions.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["run"] for row in rows] == [RUNS[1].header.run_id, RUNS[4].header.run_id]
    assert {row["athlete"] for row in rows} == {""}
    said_names = b"".join(path.read_bytes() for path in folder.iterdir())
    assert b"Ines" not in said_names
    status, _, err = said(capsys, "export", "--to", folder, "--from", last, "--until", first)
    assert (status, err) == (1, "--until is a day before that of --from.\n")


def test_a_row_that_was_made_wrong_is_said_with_file_and_line_and_nothing_is_taken(
    one: Laptop, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder, desk = tmp_path / "out", tmp_path / "desk.db"
    said(capsys, "export", "--to", folder, "--database", one.path)
    facts = folder / "facts.csv"
    sound = facts.read_text(encoding="utf-8")
    lines = sound.splitlines(keepends=True)
    facts.write_text("".join([*lines[:2], *lines[3:]]), encoding="utf-8")
    status, out, err = said(capsys, "import", folder, "--database", desk)
    assert (status, out) == (1, "")
    assert err == f"{facts}:3:1: number should be 1, the next fact of the run\n"
    facts.write_text(sound, encoding="utf-8")
    (folder / "plans.csv").write_text("hash,title,text\n", encoding="utf-8")
    status, _, err = said(capsys, "import", folder, "--database", desk)
    assert (status, desk.exists()) == (1, False)
    assert err == (
        f"{folder} is refused, and nothing was taken from it: runs names a row of plans that is not there.\n"
    )


def test_past_training_is_taken_in_once_and_left_alone_where_it_differs(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    past, desk = tmp_path / "past.csv", tmp_path / "desk.db"
    past.write_text(
        "date,session,minutes,RPE\n2026-03-02,Beach run,45,6\n2026-03-03,Swim,,\n", encoding="utf-8"
    )
    words = ("import", past, "--athlete", "Ines", "--database", desk)
    assert "2 past sessions new, 0 there before" in said(capsys, *words)[1]
    assert "0 past sessions new, 2 there before" in said(capsys, *words)[1]
    past.write_text("date,session,minutes,RPE\n2026-03-02,Beach run,50,6\n", encoding="utf-8")
    status, out, _ = said(capsys, *words)
    assert status == 0
    assert "2026-03-02 Beach run is in the record with other figures, and stays as it is there." in out


def test_every_problem_of_past_training_is_said_and_nothing_is_taken(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    past, desk = tmp_path / "past.csv", tmp_path / "desk.db"
    past.write_text("date,session,minutes,RPE\n2026-03-02,Run,45,11\n2026-03-32,Run,45,1\n", encoding="utf-8")
    status, out, err = said(capsys, "import", past, "--athlete", "Ines", "--database", desk)
    assert (status, out, desk.exists()) == (1, "", False)
    assert [line.split(": ")[0] for line in err.splitlines()] == [f"{past}:2:19", f"{past}:3:1"]
    status, _, err = said(capsys, "import", tmp_path, "--athlete", "Ines", "--database", desk)
    assert (status, "goes with a file of past training" in err) == (1, True)


def test_an_export_without_names_can_be_wanted_by_id(one: Laptop) -> None:
    with one.open() as record, record.exchange.handing_on(Wanted((one.athlete("Hugo"),))) as rows:
        assert rows.run_ids == (RUNS[0].header.run_id, RUNS[4].header.run_id)
