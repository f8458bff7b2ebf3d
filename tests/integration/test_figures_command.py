"""`figures` and `report` as a person uses them."""

import json
from datetime import UTC, datetime
from pathlib import Path

import pytest
from pypdf import PdfReader

from app.__main__ import main
from app.domain.correctable import Subject
from app.domain.corrections import Change, Target
from app.domain.keeping import Note, Result
from app.domain.plan import Side
from app.store.database import open_database

AT = datetime(2026, 11, 3, 17, tzinfo=UTC)
NOTE = Note("0190163d-8694-739b-aea5-966c26f8ad91", "Ines", "Quiet landings", "Ruben", AT, "UTC")


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    path = tmp_path / "record.db"
    with open_database(path) as database:
        for number, (side, value) in enumerate(((Side.LEFT, "151.5"), (Side.RIGHT, "160"))):
            name = f"0190163d-8694-739b-aea5-966c26f8ad0{number}"
            database.answers.keep(Result(name, "Ines", "single_hop", value, "cm", AT, "UTC", side))
        database.answers.keep(NOTE)
    return path


def say(kept: Path, *words: object) -> int:
    return main([*map(str, words), "--athlete", "Ines", "--database", str(kept)])


WINDOW = ("--from", "2026-11-01", "--to", "2026-11-30")


def test_every_figure_is_there_with_its_unit_and_the_reason_where_it_is_null(
    kept: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert say(kept, "figures", "--json", *WINDOW) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["athlete"], told["from"], told["to"]) == ("Ines", "2026-11-01", "2026-11-30")
    figures = {(figure["name"], figure["of"]): figure for figure in told["figures"]}
    last = figures["Single hop for distance: last", "side: left"]
    assert (last["value"], last["unit"], last["n"], last["reason"]) == (151.5, "cm", 1, None)
    assert last["formula"]
    assert last["source"]
    none = figures["Session adherence", ""]
    assert (none["value"], none["reason"]) == (None, "No planned session was due.")
    assert all((figure["value"] is None) is (figure["reason"] is not None) for figure in told["figures"])
    change = figures["Single hop for distance: smallest worthwhile change", ""]
    assert change["reason"] == "There are too few athletes with this test: fewer than 10."


def test_the_index_of_the_sides_waits_for_a_reference_side_that_somebody_chose(
    kept: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    def index(*words: str) -> tuple[str | None, float | None, str | None]:
        assert say(kept, "figures", "--json", *WINDOW, *words) == 0
        told = json.loads(capsys.readouterr().out)
        found = [each for each in told["figures"] if each["name"].endswith("limb symmetry index")]
        return told["reference_side"], found[0]["value"], found[0]["reason"]

    assert index() == (None, None, "Nobody has said which side is the reference.")
    side, value, reason = index("--reference", "right")
    assert (side, reason) == ("right", None)
    assert value == pytest.approx(151.5 / 160 * 100)
    with open_database(kept) as database:
        (ines,) = database.answers.people()
        change = Change(
            Target(Subject.ATHLETE, ines.id), "reference_side", "left", "Ruben", "sound", AT, "UTC"
        )
        database.corrections.correct(change)
    side, value, _ = index()
    assert side == "left"
    assert value == pytest.approx(160 / 151.5 * 100)


def test_without_json_it_is_a_table_to_read(kept: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert say(kept, "figures", *WINDOW) == 0
    head, _, columns, *rows = capsys.readouterr().out.splitlines()
    assert head == "Ines, from 2026-11-01 to 2026-11-30"
    assert columns.split()[:4] == ["figure", "of", "value", "unit"]
    assert any("No planned session was due." in row for row in rows)
    assert any(row.startswith("Single hop for distance: last") and " 151.5 " in row for row in rows)


def test_what_does_not_fit_is_said_plainly(kept: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert say(kept, "figures", "--from", "2026-11-02", "--to", "2026-11-01") == 1
    assert "--to is a day before that of --from." in capsys.readouterr().err
    assert main(["figures", "--athlete", "Nobody", "--database", str(kept)]) == 1
    assert "There is nobody called Nobody in the record." in capsys.readouterr().err
    assert say(kept, "figures", "--from", "1926-11-02", "--to", "2026-11-01") == 1
    assert "more than thirty years" in capsys.readouterr().err


def pages(file: Path) -> str:
    with PdfReader(file) as reader:
        return "\n".join(page.extract_text() for page in reader.pages)


def test_a_report_holds_the_notes_that_were_chosen_and_no_other(kept: Path, tmp_path: Path) -> None:
    file = tmp_path / "ines.pdf"
    assert say(kept, "report", *WINDOW, "-o", file) == 0
    assert "Quiet landings" not in pages(file)
    assert say(kept, "report", *WINDOW, "-o", file, "--notes") == 0
    assert "Quiet landings" in pages(file)
    assert say(kept, "report", *WINDOW, "-o", file, "--sheet", "--note", NOTE.id, "--language", "de") == 0
    assert "Dein Training: Ines" in pages(file)
    assert "Quiet landings" in pages(file)


def test_a_strange_note_and_a_place_that_cannot_be_written_are_said_plainly(
    kept: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert say(kept, "report", *WINDOW, "-o", tmp_path / "a.pdf", "--note", "0190") == 1
    assert "There is no note 0190 about Ines." in capsys.readouterr().err
    assert say(kept, "report", *WINDOW, "-o", tmp_path / "no" / "a.pdf") == 1
    assert "cannot be written: No such file or directory." in capsys.readouterr().err
