"""What a house can do with what it was handed."""

from pathlib import Path

from pytestqt.qtbot import QtBot

from app import wiring
from app.planfile.key_settings import PedalKeys
from app.planfile.settings import Settings
from tests.rig import Rig


def test_pedals_that_were_taught_are_written_where_they_differ(qtbot: QtBot, tmp_path: Path) -> None:
    rig = Rig(qtbot, tmp_path, wiring.open_record)
    rig.settings = Settings(keys=PedalKeys(("B",)))
    rig.house.keep_pedals(PedalKeys(("B",), ("PageUp",)))
    assert rig.saved == [{("keys", "pause"): ["PageUp"]}]
