"""What was dropped on the window: a plan, or a sentence that says what can be."""

from collections.abc import Sequence
from pathlib import Path

from app.views.translation import tr


def dropped_plan(paths: Sequence[str]) -> Path | str:
    """The plan among what was dropped; `paths` are local, empty where something has no local path."""
    if len(paths) != 1:
        return tr("Drop one file at a time here: a plan, which ends in .toml.")
    path = Path(paths[0])
    if not paths[0] or path.suffix.lower() != ".toml" or not path.is_file():
        return tr("Only a plan can be dropped here: a file on this computer that ends in .toml.")
    return path
