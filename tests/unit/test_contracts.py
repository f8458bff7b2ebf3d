"""The layers of pyproject.toml hold: a lower floor never knows a higher one."""

import sys
import tomllib
from pathlib import Path
from subprocess import run

ROOT = Path(__file__).parents[2]
LINT = "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports(no_cache=True))"


def test_every_contract_of_the_layering_is_kept() -> None:
    done = run([sys.executable, "-c", LINT], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_floor_of_the_house_stands_in_the_layers() -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    layers = settings["tool"]["importlinter"]["contracts"][0]["layers"]
    placed = {name.strip() for layer in layers for name in layer.split("|")}
    children = {path.stem for path in (ROOT / "app").iterdir() if path.suffix == ".py" or path.is_dir()}
    assert children - {"__init__", "__pycache__"} == placed
