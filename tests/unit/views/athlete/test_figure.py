"""The picture of an exercise comes out of the plan's folder, and from nowhere else."""

from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from PySide6.QtSvg import QSvgRenderer

from app.views.athlete.figure import MOST_BYTES, load_figure

SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 4">{}</svg>'


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    inside = tmp_path / "plan"
    (inside / "figures").mkdir(parents=True)
    return inside


def save_png(path: Path) -> None:
    image = QImage(8, 4, QImage.Format.Format_RGB32)
    image.fill(0)
    assert image.save(str(path))


def test_png_and_svg_are_shown_from_the_folder_and_below_it(folder: Path) -> None:
    save_png(folder / "raise.png")
    (folder / "figures" / "raise.svg").write_text(SVG.format('<path d="M0 0 H8"/>'))
    assert isinstance(load_figure(folder, "raise.png"), QImage)
    assert isinstance(load_figure(folder, "figures/raise.svg"), QSvgRenderer)


def test_nothing_is_shown_from_outside_the_folder(folder: Path) -> None:
    save_png(folder.parent / "secret.png")
    (folder / "link.png").symlink_to(folder.parent / "secret.png")
    for picture in (
        "../secret.png",
        str(folder.parent / "secret.png"),
        "link.png",
        "figures/../../secret.png",
    ):
        assert load_figure(folder, picture) is None


@pytest.mark.parametrize(
    "inside",
    [
        '<image href="/etc/passwd" width="8" height="4"/>',
        '<IMAGE xlink:href="x.png"/>',
        '<style>@import "x.css";</style>',
        '<path d="M0 0" fill="url(other.svg#a)"/>',
    ],
)
def test_a_drawing_that_reaches_for_another_file_is_not_shown(folder: Path, inside: str) -> None:
    (folder / "raise.svg").write_text(SVG.format(inside))
    assert load_figure(folder, "raise.svg") is None


def test_a_drawing_may_point_at_its_own_parts(folder: Path) -> None:
    own = '<defs><linearGradient id="a"/></defs><path d="M0 0 H8 V4" fill="url(#a)"/>'
    (folder / "raise.svg").write_text(SVG.format(own))
    assert load_figure(folder, "raise.svg") is not None


@pytest.mark.parametrize("body", [b"", b"no picture", b"\x89PNG and no more", b"<svg"])
@pytest.mark.parametrize("name", ["raise.png", "raise.svg"])
def test_what_is_no_picture_is_not_shown(folder: Path, name: str, body: bytes) -> None:
    (folder / name).write_bytes(body)
    assert load_figure(folder, name) is None


def test_a_missing_picture_an_unknown_folder_and_another_kind_are_no_picture(folder: Path) -> None:
    (folder / "raise.txt").write_text("raise")
    for picture in ("nowhere.png", "raise.txt", "figures", None, "a\0b.png"):
        assert load_figure(folder, picture) is None
    assert load_figure(None, "raise.png") is None


def test_a_huge_file_is_not_read(folder: Path) -> None:
    save_png(folder / "raise.png")
    with (folder / "raise.png").open("r+b") as file:
        file.truncate(MOST_BYTES + 1)
    assert load_figure(folder, "raise.png") is None
