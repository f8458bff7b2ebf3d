"""`group`: what the window is opened with, and what is said before there is one."""

import argparse
from pathlib import Path

import pytest

from app.audio.room_sound import RoomSound
from app.cli import group
from app.domain.athlete import Athlete
from app.domain.errors import PacewrightError, UsageError
from app.domain.group_choice import GroupChoice, group_session
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise
from app.views import application, display
from app.views.house import House, Wish
from tests.planned import plan_of, work_for
from tests.plantexts import plan_text

ROSTER = "name,short\nInes Costa,Ine\nBram,\nKaya,\n"


@pytest.fixture
def asked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> argparse.Namespace:
    """The words of a command, and where what the window was opened with can be read."""
    (tmp_path / "plan.toml").write_text(plan_text("work = 30"), encoding="utf-8")
    (tmp_path / "roster.csv").write_text(ROSTER, encoding="utf-8")
    monkeypatch.setattr(display, "require_display", lambda: None)
    return argparse.Namespace(folder=tmp_path, opened=[])


def open_with(asked: argparse.Namespace, monkeypatch: pytest.MonkeyPatch, *words: str) -> tuple[House, Wish]:
    def run(house: House, wish: Wish) -> int:
        asked.opened.append((house, wish))
        return 0

    monkeypatch.setattr(application, "run_application", run)
    parser = argparse.ArgumentParser()
    group.configure(parser)
    files = [str(asked.folder / "plan.toml"), "--roster", str(asked.folder / "roster.csv")]
    assert group.run(parser.parse_args([*files, "--sound", "silent", *words])) == 0
    opened: tuple[House, Wish] = asked.opened[-1]
    return opened


def test_the_window_is_opened_with_everybody_and_what_was_chosen(
    asked: argparse.Namespace, monkeypatch: pytest.MonkeyPatch
) -> None:
    words = ("--form", "stations", "--work", "30", "--change", "10", "--rounds", "2")
    house, wish = open_with(asked, monkeypatch, *words)
    assert wish.group == GroupChoice(Form.STATIONS, 30_000, 10_000, 2)
    assert wish.session is not None
    assert wish.session.plan.title == "Tuesday"
    assert [athlete.name for athlete in house.read_athletes()] == ["Ines Costa", "Bram", "Kaya"]


def test_who_is_named_alone_is_to_come(asked: argparse.Namespace, monkeypatch: pytest.MonkeyPatch) -> None:
    house, wish = open_with(asked, monkeypatch, "--athlete", "Kaya", "--athlete", "Bram")
    assert [athlete.name for athlete in house.read_athletes()] == ["Bram", "Kaya"]
    assert wish.group == GroupChoice()


@pytest.mark.parametrize(
    ("words", "error"),
    [(("--athlete", "Nobody"), UsageError), (("--form", "waves", "--athlete", "Bram"), PacewrightError)],
)
def test_what_cannot_be_done_is_said_before_there_is_a_window(
    words: tuple[str, ...],
    error: type[Exception],
    asked: argparse.Namespace,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    with pytest.raises(error):
        open_with(asked, monkeypatch, *words)
    assert asked.opened == []


@pytest.mark.parametrize("apart", [False, True])
def test_the_room_is_led_by_a_sound_of_its_own_and_calls_people_by_their_short_names(
    apart: bool, asked: argparse.Namespace, monkeypatch: pytest.MonkeyPatch
) -> None:
    house, _ = open_with(asked, monkeypatch, *(["--apart"] if apart else []))
    athletes = [Athlete("Ines Costa", short="Ine"), Athlete("Bram Visser")]
    led = group_session(plan_of(Exercise("Row", work_for(30))), athletes, Grouping(Form.STATIONS))
    sound = house.room_sound(led, house.choose_speaker(), house.make_clock())
    assert isinstance(sound, RoomSound)
    assert sound._score.apart is apart
    assert sound._score.ear.names == {0: "Ine", 1: "Bram"}
    sound.close()
