"""What an earlier session left beside is put into the database at the next start, once."""

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from app.domain.errors import StoreError
from app.domain.plan import Side
from app.domain.records import BoutBegan, Fact, RepDone, RunBegan, RunHeader
from app.store.database import Database, open_database
from app.store.side_file import SideFile, side_files
from app.store.side_lines import facts_line, run_line

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"
HEADER = RunHeader(RUN, "Ines", "Try-out", "text", datetime(2026, 3, 2, tzinfo=UTC), "UTC")
FACTS: tuple[Fact, ...] = (
    RunBegan(),
    BoutBegan(5_000, 0, 1),
    RepDone(9_000, 0, 1, 1, Side.LEFT, 5_000, 3),
    RepDone(13_000, 0, 1, 2, Side.LEFT, 9_000, 3),
)


class Place:
    """A database and the folder for its side files."""

    def __init__(self, tmp_path: Path) -> None:
        self.path, self.folder = tmp_path / "data" / "record.db", tmp_path / "state"

    def open(self) -> Database:
        return open_database(self.path, spare=self.folder)

    def leave(self, *lines: bytes) -> Path:
        side = SideFile(self.folder, self.path)
        side.write(lines)
        side.close()
        return side.path

    def left(self) -> tuple[Path, ...]:
        return side_files(self.folder, self.path)


@pytest.fixture
def place(tmp_path: Path) -> Place:
    return Place(tmp_path)


def test_a_whole_run_beside_comes_into_the_database_and_the_file_goes(place: Place) -> None:
    place.leave(run_line(HEADER, ()), facts_line(RUN, 0, FACTS[:3]), facts_line(RUN, 3, FACTS[3:]))
    with place.open() as database:
        taken = database.take_in()
        assert (taken.taken, taken.sentence) == (1, None)
        assert database.queries.facts_of(RUN) == FACTS
        assert database.queries.unfinished_runs() == (HEADER,)
        assert place.left() == ()
        assert database.take_in().taken == 0


def test_what_is_in_the_database_already_is_not_doubled(place: Place) -> None:
    with place.open() as database:
        database.journal.open_run(HEADER, ())
        database.journal.append(RUN, 0, FACTS[:2])
    for _ in range(2):
        place.leave(run_line(HEADER, ()), facts_line(RUN, 0, FACTS), facts_line(RUN, 0, FACTS))
        with place.open() as database:
            assert database.take_in().taken == 1
            assert database.queries.facts_of(RUN) == FACTS


def test_a_last_line_that_was_cut_off_was_never_acknowledged_and_is_let_go(place: Place) -> None:
    place.leave(run_line(HEADER, ()), facts_line(RUN, 0, FACTS[:3]), facts_line(RUN, 3, FACTS[3:])[:-9])
    with place.open() as database:
        assert database.take_in().sentence is None
        assert database.queries.facts_of(RUN) == FACTS[:3]
    assert place.left() == ()


@pytest.mark.parametrize(
    "lines",
    [
        (b"no line\n", facts_line(RUN, 0, FACTS)),
        (facts_line(RUN, 0, FACTS[:1]), facts_line(RUN, 2, FACTS[2:])),
        (run_line(replace(HEADER, zone="Asia/Kathmandu"), ()), facts_line(RUN, 0, FACTS)),
        (facts_line(RUN.replace("0190", "0191"), 0, FACTS),),
    ],
    ids=["a line changed", "a gap", "another run of that name", "a run that is nowhere"],
)
def test_what_cannot_be_read_or_placed_is_kept_and_said(place: Place, lines: tuple[bytes, ...]) -> None:
    path = place.leave(*lines)
    content = path.read_bytes()
    with place.open() as database:
        database.journal.open_run(HEADER, ())
        taken = database.take_in()
        assert taken.taken == 0
        (kept,) = place.left()
        assert taken.sentence is not None
        assert str(kept) in taken.sentence
        assert kept.read_bytes() == content
        assert database.take_in().sentence is None


def test_a_database_that_cannot_be_written_leaves_the_file_where_it_is(place: Place) -> None:
    path = place.leave(run_line(HEADER, ()), facts_line(RUN, 0, FACTS))
    place.open().close()
    with open_database(place.path, read_only=True, spare=place.folder) as database, pytest.raises(StoreError):
        database.take_in()
    assert place.left() == (path,)


def test_a_folder_that_cannot_be_read_is_said(place: Place, monkeypatch: pytest.MonkeyPatch) -> None:
    place.leave(run_line(HEADER, ()))
    with place.open() as database, monkeypatch.context() as patch:
        patch.setattr(Path, "read_bytes", _refuse)
        with pytest.raises(StoreError, match="tried again at the next start"):
            database.take_in()
    assert len(place.left()) == 1


def _refuse(_path: Path) -> bytes:
    raise PermissionError(13, "no")


def test_without_a_folder_beside_there_is_nothing_to_take_in(place: Place) -> None:
    with open_database(place.path) as database:
        assert database.take_in().taken == 0
