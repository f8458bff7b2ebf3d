"""The text of somebody's file, or why it cannot be had."""

from pathlib import Path

import pytest

from app.domain.errors import FileProblemsError
from app.planfile.source import LARGEST_BYTES, read_text


def trouble(path: Path) -> str:
    """What is said of a file that cannot be read, without its name."""
    with pytest.raises(FileProblemsError) as caught:
        read_text(path)
    return str(caught.value).removeprefix(f"{path}:")


def test_a_byte_order_mark_and_windows_line_ends_are_left_out(tmp_path: Path) -> None:
    path = tmp_path / "plan.toml"
    path.write_bytes(b"\xef\xbb\xbfa = 1\r\nb = 2\n")
    assert read_text(path) == "a = 1\nb = 2\n"


def test_a_file_of_one_mebibyte_is_read_and_one_byte_more_is_not(tmp_path: Path) -> None:
    assert LARGEST_BYTES == 1_048_576
    path = tmp_path / "plan.toml"
    path.write_bytes(b"#" * LARGEST_BYTES)
    assert len(read_text(path)) == LARGEST_BYTES
    path.write_bytes(b"#" * (LARGEST_BYTES + 1))
    assert trouble(path) == "1:1: the file is larger than 1 MiB; check that it is the right one"


def test_a_file_without_end_is_not_read_to_its_end() -> None:
    assert "larger than 1 MiB" in trouble(Path("/dev/zero"))


def test_what_is_not_utf_8_is_placed_by_line_and_character(tmp_path: Path) -> None:
    path = tmp_path / "plan.toml"
    path.write_bytes('a = 1\nb = "ä'.encode() + b"\xe4\n")
    assert trouble(path) == "2:7: the file is not UTF-8 text; save it as UTF-8 in your editor"


def test_a_missing_file_a_folder_and_an_impossible_name_are_told_apart(tmp_path: Path) -> None:
    assert trouble(tmp_path / "none.toml") == "1:1: there is no such file; check the name and the folder"
    assert trouble(tmp_path) == "1:1: this is a folder; name a file in it"
    assert trouble(tmp_path / "a\0b") == "1:1: no file can have this name; check the name"
    (tmp_path / "file").write_text("")
    assert "the file cannot be read" in trouble(tmp_path / "file" / "below")
    assert "the file cannot be read" in trouble(tmp_path / ("x" * 300))


def test_a_file_that_may_not_be_read_says_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    # Whoever runs the tests may be allowed everything, so the refusal is staged.
    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", refuse)
    assert trouble(tmp_path / "a.toml") == "1:1: the file may not be read; give yourself the right to read it"
    assert trouble(tmp_path) == "1:1: this is a folder; name a file in it"
