"""The review of a record drawn into a picture: the squad, and one of its athletes."""

import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtGui import QImage

from app.__main__ import main
from tests.filled import fill, invented_runs

ROOT = Path(__file__).parents[2]


@pytest.fixture
def record(tmp_path: Path) -> Path:
    made = tmp_path / "record.db"
    fill(made, invented_runs(8))
    return made


@pytest.mark.parametrize("words", [[], ["--athlete", "Hugo"]], ids=["squad", "athlete"])
def test_the_squad_and_an_athlete_are_drawn(record: Path, tmp_path: Path, words: list[str]) -> None:
    to = tmp_path / "review.png"
    command = [sys.executable, "-m", "app", "picture", "--review", str(record), "-o", str(to), *words]
    done = subprocess.run(
        [*command, "--size", "1366x768"], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout == f"{to}\n"
    image = QImage(str(to))
    assert (image.width(), image.height()) == (1366, 768)
    colours = {image.pixelColor(x, y).rgb() for x in range(0, 1366, 7) for y in range(0, 768, 7)}
    assert len(colours) > 8


def test_nobody_of_that_name_is_said(
    record: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    words = ["picture", "--review", str(record), "--athlete", "Nobody", "-o", str(tmp_path / "x.png")]
    assert main(words) == 1
    assert "There is nobody called Nobody in this record" in capsys.readouterr().err
    assert not (tmp_path / "x.png").exists()
