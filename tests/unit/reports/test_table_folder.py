"""A folder of tables: private files, and only what this program wrote is read back."""

import json
import stat
from pathlib import Path
from typing import Any

import pytest

from app.domain.errors import FileProblemsError, MissingExtraError, PackError
from app.domain.table import Column, Table
from app.domain.values import Flag, Row, Text
from app.reports.data_package import FILE_NAME
from app.reports.table_folder import read_folder, write_folder, wrong_row

WORDS = Table("words", "Words.", (Column("word", Text(), "A word."),), ("word",))
DRAWN = Table("drawn", "More.", (Column("true", Flag(), "A flag."),), ("true",))
ROWS: list[Row] = [{"word": "=1"}, {"word": ""}]


def write(folder: Path, kind: str = "csv") -> dict[str, int]:
    return write_folder(folder, kind, [(WORDS, ROWS, False), (DRAWN, [], True)], "2026-11-22T18:00:00Z")


def read(folder: Path) -> list[tuple[Table, Path, int, Row]]:
    return list(read_folder(folder, [WORDS]))


def test_what_was_written_is_read_back_with_its_file_and_line(tmp_path: Path) -> None:
    folder = tmp_path / "new" / "out"
    assert write(folder) == {"words": 2, "drawn": 0}
    path = folder / "words.csv"
    assert read(folder) == [(WORDS, path, 2, {"word": "=1"}), (WORDS, path, 3, {"word": ""})]


def test_files_are_their_owner_s_alone_whatever_stood_there(tmp_path: Path) -> None:
    folder = tmp_path / "out"
    folder.mkdir()
    (folder / "words.csv").write_text("old", encoding="utf-8")
    (folder / "words.csv").chmod(0o644)
    (folder / "other.txt").write_text("mine", encoding="utf-8")
    write(folder)
    write(folder)
    modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in folder.iterdir()}
    assert {mode for name, mode in modes.items() if name != "other.txt"} == {0o600}
    assert set(modes) == {"words.csv", "drawn.csv", FILE_NAME, "other.txt"}
    made = tmp_path / "made"
    write(made)
    assert stat.S_IMODE(made.stat().st_mode) == 0o700


def test_a_place_that_cannot_be_written_is_said(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    with pytest.raises(PackError, match="could be written"):
        write(tmp_path / "file")


@pytest.mark.parametrize("kind", ["xlsx", "parquet"])
def test_without_its_library_a_kind_of_file_is_refused_in_words(
    kind: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(__import__("sys").modules, {"xlsx": "xlsxwriter", "parquet": "pyarrow"}[kind], None)
    with pytest.raises(MissingExtraError, match=r'pip install "pacewright\[export\]"'):
        write(tmp_path / "out", kind)


def described(folder: Path, **said: Any) -> Path:  # noqa: ANN401 - whatever is said
    write(folder)
    path = folder / FILE_NAME
    path.write_text(json.dumps(json.loads(path.read_text(encoding="utf-8")) | said), encoding="utf-8")
    return folder


@pytest.mark.parametrize(
    ("said", "because"),
    [
        ({"pacewright": None}, "no folder of tables"),
        ({"pacewright": {"format": 2}}, "newer version"),
        ({"resources": 3}, "no folder of tables"),
        ({"resources": [{"name": "words"}]}, "no folder of tables"),
        ({"resources": []}, "has no table words"),
        ({"resources": [{"name": "words", "path": "../words.csv"}]}, "not written as CSV"),
        ({"resources": [{"name": "words", "path": "words.parquet"}]}, "not written as CSV"),
    ],
)
def test_a_folder_that_says_something_else_is_refused(
    tmp_path: Path, said: dict[str, object], because: str
) -> None:
    with pytest.raises(PackError, match=because):
        read(described(tmp_path / "out", **said))


def test_a_folder_without_a_dictionary_or_with_a_broken_one_is_refused(tmp_path: Path) -> None:
    for content in (None, "", "[", "[" * 100_000, "[]"):
        if content is not None:
            (tmp_path / FILE_NAME).write_text(content, encoding="utf-8")
        with pytest.raises(PackError, match="no folder of tables"):
            read(tmp_path)


def test_a_missing_file_is_said(tmp_path: Path) -> None:
    write(tmp_path / "out")
    (tmp_path / "out" / "words.csv").unlink()
    with pytest.raises(FileProblemsError, match="cannot be read"):
        read(tmp_path / "out")


def test_a_wrong_row_is_said_with_its_place() -> None:
    assert str(wrong_row(Path("a.csv"), 3, ValueError("not so"))) == "a.csv:3:1: not so"
