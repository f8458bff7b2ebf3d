"""Power is cut while a session is written: every image of the disk opens, with all that was acknowledged."""

from pathlib import Path

import pytest

from app.store import link
from tests.drills import NAME, cuts, image, look, record_making, record_session, session
from tests.file_layer import reachable

IMAGES, IMAGES_OF_MAKING = 120, 8

pytestmark = pytest.mark.skipif(not reachable, reason="SQLite's file layer cannot be reached here")


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "image"
    made.mkdir()
    return made


def test_after_a_power_cut_at_any_moment_the_record_opens_with_all_that_was_acknowledged(
    tmp_path: Path, folder: Path
) -> None:
    before, events = record_session(tmp_path)
    torn = 0
    for seed, cut in enumerate(cuts(events, IMAGES)):
        disk = image(before, events[:cut], seed, folder)
        torn += (folder / f"{NAME}-journal").exists()
        assert look(folder / NAME) >= disk.told, f"cut after {cut} events, seed {seed}"
    assert disk.told == len(session()) + 1
    assert torn > IMAGES / 3


def test_after_a_power_cut_while_a_record_is_made_it_can_be_made(tmp_path: Path, folder: Path) -> None:
    before, events = record_making(tmp_path)
    for seed, cut in enumerate(cuts(events, IMAGES_OF_MAKING)):
        image(before, events[:cut], seed, folder)
        assert look(folder / NAME) == 0


def test_the_drill_finds_what_a_record_that_is_not_synced_loses(
    tmp_path: Path, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    careless = tuple(line.replace("= EXTRA", "= OFF") for line in link._ON_CONNECT)
    with monkeypatch.context() as patch:
        patch.setattr(link, "_ON_CONNECT", careless)
        before, events = record_session(tmp_path)
    assert not any(event.kind == "sync" for event in events)
    lost = 0
    for seed, cut in enumerate(cuts(events, 10)):
        disk = image(before, events[:cut], seed, folder)
        try:
            lost += look(folder / NAME) < disk.told
        except Exception:
            lost += 1
    assert lost > 0
