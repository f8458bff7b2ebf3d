"""The desktop entry, the AppStream record and the icon, as freedesktop's own validators and Qt read them."""

import shutil
import subprocess
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

RESOURCES = Path(__file__).parents[2] / "resources"
NAME = "org.pacewright.Pacewright"
VALIDATORS = {
    f"{NAME}.desktop": ["desktop-file-validate"],
    f"{NAME}.metainfo.xml": ["appstreamcli", "validate", "--no-net"],
}


@pytest.mark.parametrize("file", VALIDATORS)
def test_the_validator_of_freedesktop_accepts_it(file: str) -> None:
    command = VALIDATORS[file]
    if shutil.which(command[0]) is None:
        pytest.skip(f"{command[0]} is not here")
    done = subprocess.run([*command, str(RESOURCES / file)], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def test_the_icon_has_the_ring_in_the_colour_of_a_hold_on_the_ground_of_training() -> None:
    renderer = QSvgRenderer(str(RESOURCES / "pacewright.svg"))
    assert renderer.isValid()
    image = QImage(256, 256, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    renderer.render(painter)
    painter.end()
    ring, centre, corner = image.pixelColor(96, 84), image.pixelColor(114, 84), image.pixelColor(0, 0)
    assert (ring, centre) == (QColor("#F0E442"), QColor("#0C141F"))
    assert corner.alpha() == 0
