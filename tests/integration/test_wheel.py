"""The wheel: built from the tree without a network, it works from an empty folder by itself."""

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
CARRIED = {"app/_resources": ROOT / "resources", "app/_demo_data": ROOT / "demo_data", "app": ROOT / "app"}
LEFT_OUT = {"__pycache__", ".DS_Store"}


def run(*command: str, cwd: Path, path: Path | None = None) -> str:
    """What a command prints on stdout; fails when its status is not 0."""
    surroundings = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    if path is not None:
        surroundings["PYTHONPATH"] = str(path)
    done = subprocess.run(command, cwd=cwd, env=surroundings, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("built")
    run(sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder), cwd=ROOT)
    (built,) = folder.glob("*.whl")
    return built


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    target = tmp_path_factory.mktemp("installed")
    pip = (sys.executable, "-m", "pip", "install", "--quiet", "--no-index", "--no-deps", "--no-compile")
    run(*pip, "--target", str(target), str(wheel), cwd=target)
    return target


def tree(folder: Path) -> set[str]:
    """The files of a folder of the checkout, as they should be carried."""
    files = (path for path in folder.rglob("*") if path.is_file() and not LEFT_OUT & set(path.parts))
    return {path.relative_to(folder).as_posix() for path in files}


@pytest.mark.parametrize("inside", CARRIED)
def test_the_wheel_carries_every_file_of_the_tree(wheel: Path, inside: str) -> None:
    with zipfile.ZipFile(wheel) as archive:
        names = {
            name.removeprefix(f"{inside}/") for name in archive.namelist() if name.startswith(f"{inside}/")
        }
    assert tree(CARRIED[inside]) <= names


def test_the_wheel_installs_the_package_app_alone(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        tops = {name.split("/")[0] for name in archive.namelist()}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"app"}


def test_the_wheel_carries_both_licences(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        licences = {name.split("/licenses/")[1] for name in archive.namelist() if "/licenses/" in name}
    assert licences == {"resources/LICENCE.txt", "resources/fonts/OFL.txt"}


def test_the_installed_program_says_its_version_from_an_empty_folder(installed: Path, tmp_path: Path) -> None:
    from app import __version__

    printed = run(sys.executable, "-m", "app", "--version", cwd=tmp_path, path=installed)
    assert printed == f"pacewright {__version__}\n"


def test_what_runs_is_what_was_installed(installed: Path, tmp_path: Path) -> None:
    printed = run(sys.executable, "-c", "import app; print(app.__file__)", cwd=tmp_path, path=installed)
    assert Path(printed.strip()) == installed / "app/__init__.py"


def test_the_installed_program_rehearses_a_demo_plan_from_an_empty_folder(
    installed: Path, tmp_path: Path
) -> None:
    plan = installed / "app/_demo_data/shoulder_rotators.toml"
    words = ("rehearse", str(plan), "--speed", "0", "--database", str(tmp_path / "new.db"), "--json")
    recorded = json.loads(run(sys.executable, "-m", "app", *words, cwd=tmp_path, path=installed))
    assert recorded["bouts"]
    assert (tmp_path / "new.db").exists()
