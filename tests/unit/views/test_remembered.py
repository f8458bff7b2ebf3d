"""What this computer remembers: it comes back, and no file of nonsense does harm."""

from pathlib import Path

import pytest
from PySide6.QtCore import QRect
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from app.views.remembered import FILE_NAME, MOST_PLANS, Remembered


def plans(folder: Path, count: int) -> list[Path]:
    made = [folder / f"{number} plan ä, №.toml" for number in range(count)]
    for path in made:
        path.touch()
    return made


def test_the_plans_led_lately_come_back_the_latest_first_those_of_the_athlete_before_the_others(
    tmp_path: Path,
) -> None:
    one, two, three = plans(tmp_path, 3)
    kept = Remembered(tmp_path / "state")
    for path, name in ((one, "Hugo"), (two, "Hugo"), (three, "Ἀθηνᾶ"), (one, "Hugo")):
        kept.led(path, name)
    again = Remembered(tmp_path / "state")
    assert again.recent("Hugo") == (one, two, three)
    assert again.recent("Ἀθηνᾶ") == (three, one, two)
    assert again.recent() == (one, three, two)
    assert (again.last("Ἀθηνᾶ"), again.last("Bram")) == (three, None)


def test_only_so_many_plans_are_offered(tmp_path: Path) -> None:
    kept = Remembered(tmp_path)
    for path in plans(tmp_path, MOST_PLANS + 3):
        kept.led(path, "Hugo")
    assert len(kept.recent("Hugo")) == MOST_PLANS


def test_plans_whose_files_are_gone_are_counted_and_forgotten(tmp_path: Path) -> None:
    here, gone = plans(tmp_path, 2)
    kept = Remembered(tmp_path)
    kept.led(gone, "Hugo")
    kept.led(gone, "Ines")
    kept.led(here, "Ines")
    gone.unlink()
    assert kept.drop_missing() == 1
    assert Remembered(tmp_path).recent() == (here,)
    assert kept.drop_missing() == 0


def test_what_is_not_to_be_asked_again_comes_back(tmp_path: Path) -> None:
    kept = Remembered(tmp_path)
    kept.leave_unasked("session_rpe:one")
    kept.leave_unasked("session_rpe:two")
    assert Remembered(tmp_path).unasked == {"session_rpe:one", "session_rpe:two"}


@pytest.mark.parametrize(
    "text",
    [
        "\x00\xff nonsense",
        "[plans]\nrecent=@ByteArray(one)\n",
        "[plans]\nrecent=no tab\n",
        "[[[",
        "[window]\nplace=7",
    ],
)
def test_a_file_of_nonsense_remembers_nothing_and_can_be_written_anew(
    text: str, tmp_path: Path, qtbot: QtBot
) -> None:
    (tmp_path / FILE_NAME).write_text(text, encoding="utf-8")
    kept = Remembered(tmp_path)
    assert (kept.recent(), kept.unasked) == ((), frozenset())
    window = QWidget()
    qtbot.addWidget(window)
    assert not kept.place(window)
    (path,) = plans(tmp_path, 1)
    kept.led(path, "Hugo")
    assert Remembered(tmp_path).recent() == (path,)


def test_a_path_that_no_file_of_words_can_hold_is_passed_over(tmp_path: Path) -> None:
    kept = Remembered(tmp_path)
    kept.led(tmp_path / "two\nlines.toml", "Hugo")
    kept.led(tmp_path / "half\udcff.toml", "Hugo")
    assert kept.recent() == ()


def test_without_a_folder_it_is_forgotten_at_the_end(tmp_path: Path, qtbot: QtBot) -> None:
    (path,) = plans(tmp_path, 1)
    kept, window = Remembered(None), QWidget()
    qtbot.addWidget(window)
    kept.led(path, "Hugo")
    kept.keep_place(window)
    assert kept.recent() == (path,)
    assert not kept.place(window)


def test_a_window_comes_back_where_it_was(tmp_path: Path, qtbot: QtBot) -> None:
    first, second = QWidget(), QWidget()
    for window in (first, second):
        qtbot.addWidget(window)
    first.setGeometry(QRect(40, 60, 500, 300))
    first.show()
    Remembered(tmp_path).keep_place(first)
    assert Remembered(tmp_path).place(second)
    assert second.geometry() == QRect(40, 60, 500, 300)


def test_full_screen_comes_back(tmp_path: Path, qtbot: QtBot) -> None:
    first, second = QWidget(), QWidget()
    for window in (first, second):
        qtbot.addWidget(window)
    first.showFullScreen()
    Remembered(tmp_path).keep_place(first)
    assert Remembered(tmp_path).place(second)
    assert second.isFullScreen()


def test_a_window_on_a_screen_that_is_gone_comes_back_on_one_that_is_there(
    tmp_path: Path, qtbot: QtBot
) -> None:
    first, second = QWidget(), QWidget()
    for window in (first, second):
        qtbot.addWidget(window)
    first.setGeometry(QRect(90_000, 60_000, 5_000, 4_000))
    first.show()
    Remembered(tmp_path).keep_place(first)
    assert Remembered(tmp_path).place(second)
    second.show()
    assert second.screen().availableGeometry().intersects(second.geometry())
    assert second.width() <= second.screen().availableGeometry().width()
