"""Where backups lie and what their names say: a moment, and nothing of who or what."""

from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest

from app.store.places import aside_folder, backup_folder, free_place, moment_in, moment_name

AT = datetime(2026, 3, 2, 17, 30, 5, 999_999, tzinfo=UTC)


def test_the_folders_of_the_usual_database_stand_beside_it() -> None:
    database = Path("/data/pacewright.db")
    assert backup_folder(database) == Path("/data/backups")
    assert aside_folder(database) == Path("/data/set_aside")


def test_two_databases_in_one_folder_have_folders_of_their_own() -> None:
    one, other = Path("/data/one.db"), Path("/data/other.db")
    assert len({backup_folder(one), backup_folder(other), aside_folder(one), aside_folder(other)}) == 4


def test_a_moment_is_named_in_utc_whatever_its_zone() -> None:
    elsewhere = AT.astimezone(timezone(timedelta(hours=-3, minutes=-30)))
    assert moment_name(AT) == moment_name(elsewhere) == "2026-03-02T17-30-05Z"


def test_names_of_moments_sort_by_their_moment() -> None:
    moments = [AT + timedelta(seconds=step) for step in (0, 1, 60, 86_400, 40_000_000)]
    assert sorted(map(moment_name, moments)) == [moment_name(moment) for moment in moments]


def test_a_moment_is_read_back_from_the_name_it_begins() -> None:
    assert moment_in(f"{moment_name(AT)}-schema1.db") == AT.replace(microsecond=0)


@pytest.mark.parametrize("name", ["", "pacewright.db", "2026-13-02T17-30-05Z.db", "x2026-03-02T17-30-05Z"])
def test_a_name_without_a_moment_has_none(name: str) -> None:
    assert moment_in(name) is None


def test_a_place_that_is_taken_is_not_given_again(tmp_path: Path) -> None:
    for expected in ("a.db", "a-2.db", "a-3.db"):
        place = free_place(tmp_path, "a", ".db")
        assert place.name == expected
        place.touch()
