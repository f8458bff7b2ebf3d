"""The house itself: what stands where, how large, and that everything says what it is."""

import ast
import tomllib
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOP_LEVEL = {"README.md", "DEVELOPERS.md", "pyproject.toml", "app", "resources", "tests", "demo_data"}
MODULE_CEILING = 400
FUNCTION_CEILING = 50
TEST_FLOORS = {"unit", "integration", "gui", "golden", "outside", "bench"}
WHOLE_HOUSE = {"contracts", "documents", "house", "leftovers", "none_references"}
"""Tests in tests/unit that mirror no module, because they look at the house."""

MODULES = sorted(path for folder in ("app", "tests") for path in (ROOT / folder).rglob("*.py"))
TESTS = [path for path in MODULES if path.name.startswith("test_")]


def named(path: Path) -> str:
    """The path as it stands in the checkout."""
    return path.relative_to(ROOT).as_posix()


@cache
def parsed(path: Path) -> ast.Module:
    """The module's syntax."""
    return ast.parse(path.read_text(encoding="utf-8"), str(path))


def test_the_top_level_holds_the_agreed_names_and_dot_files_only() -> None:
    visible = {path.name for path in ROOT.iterdir() if not path.name.startswith(".")}
    assert visible == TOP_LEVEL


def test_the_tests_stand_on_the_agreed_floors() -> None:
    folders = {path.name for path in (ROOT / "tests").iterdir() if path.is_dir() and path.name[0] not in "._"}
    assert folders <= TEST_FLOORS


@pytest.mark.parametrize("path", MODULES, ids=named)
def test_a_module_is_no_longer_than_its_ceiling(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= MODULE_CEILING


@pytest.mark.parametrize("path", MODULES, ids=named)
def test_no_function_is_longer_than_its_ceiling(path: Path) -> None:
    functions = [
        node for node in ast.walk(parsed(path)) if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    ]
    lengths = {node.name: (node.end_lineno or node.lineno) - node.lineno + 1 for node in functions}
    assert {name: length for name, length in lengths.items() if length > FUNCTION_CEILING} == {}


@pytest.mark.parametrize("path", MODULES, ids=named)
def test_a_module_says_what_it_is_in_its_first_line(path: Path) -> None:
    docstring = ast.get_docstring(parsed(path))
    assert docstring
    assert docstring.splitlines()[0].endswith(".")


@pytest.mark.parametrize("path", [path for path in MODULES if path.name == "__init__.py"], ids=named)
def test_a_package_file_holds_its_docstring_and_the_version_at_most(path: Path) -> None:
    after = parsed(path).body[1:]
    targets = [
        ast.unparse(target) for node in after if isinstance(node, ast.Assign) for target in node.targets
    ]
    assert len(targets) == len(after)
    assert set(targets) <= {"__version__"}


def mirrored(test: Path) -> Path:
    """What a unit test mirrors, without its ending: app/domain/tempo for tests/unit/domain/test_tempo.py."""
    inner = test.relative_to(ROOT / "tests" / "unit")
    return ROOT / "app" / inner.parent / inner.stem.removeprefix("test_")


@pytest.mark.parametrize(
    "path", [path for path in TESTS if path.is_relative_to(ROOT / "tests/unit")], ids=named
)
def test_a_unit_test_mirrors_what_it_tests(path: Path) -> None:
    if path.parent.name == "unit" and path.stem.removeprefix("test_") in WHOLE_HOUSE:
        return
    module = mirrored(path)
    begins = [other for other in module.parent.glob("*.py") if module.name.startswith(f"{other.stem}_")]
    assert module.with_suffix(".py").exists() or module.is_dir() or begins


def acts(path: Path) -> bool:
    """Whether a module does anything beside naming values and ports."""
    functions = [node for node in ast.walk(parsed(path)) if isinstance(node, ast.FunctionDef)]
    return any(len(node.body) > 1 or ast.get_docstring(node) is None for node in functions)


@cache
def imported(path: Path) -> set[str]:
    """The dotted names of what a module imports."""
    found = set()
    for node in ast.walk(parsed(path)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{alias.name}" for alias in node.names)}
    return found


@cache
def reached_by_unit_tests(floor: str) -> set[str]:
    """The modules of one floor that its unit tests import, and the modules of the floor these stand on."""
    modules = {f"app.{floor}.{path.stem}": path for path in (ROOT / "app" / floor).glob("*.py")}
    reached: set[str] = set()
    waiting = set().union(*(imported(test) for test in (ROOT / "tests/unit" / floor).glob("*.py"))) & set(
        modules
    )
    while waiting:
        reached |= waiting
        waiting = set().union(*(imported(modules[name]) for name in waiting)) & set(modules) - reached
    return reached


PURE = sorted(
    path for floor in ("domain", "run") for path in (ROOT / "app" / floor).glob("*.py") if acts(path)
)


@pytest.mark.parametrize("path", PURE, ids=named)
def test_what_is_pure_is_reached_by_the_unit_tests_of_its_floor(path: Path) -> None:
    assert f"app.{path.parent.name}.{path.stem}" in reached_by_unit_tests(path.parent.name)


def sleeps(path: Path) -> list[int]:
    """The lines on which a module waits for wall time."""
    calls = [node for node in ast.walk(parsed(path)) if isinstance(node, ast.Call)]
    return [call.lineno for call in calls if ast.unparse(call.func) in {"time.sleep", "sleep", "qtbot.wait"}]


@pytest.mark.parametrize("path", [path for path in TESTS if "bench" not in path.parts], ids=named)
def test_no_test_sleeps(path: Path) -> None:
    assert sleeps(path) == []


def test_the_version_is_the_same_everywhere() -> None:
    from app import __version__

    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    appdata = (ROOT / "resources/org.pacewright.Pacewright.metainfo.xml").read_text(encoding="utf-8")
    assert project["version"] == __version__
    assert f'<release version="{__version__}"' in appdata


def test_the_letters_come_in_four_weights_at_most_with_their_licence() -> None:
    fonts = ROOT / "resources/fonts"
    assert 1 <= len(list(fonts.glob("*.otf"))) <= 4
    assert "SIL OPEN FONT LICENSE" in (fonts / "OFL.txt").read_text(encoding="utf-8")


def test_the_licence_is_the_one_the_project_names() -> None:
    text = (ROOT / "resources/LICENCE.txt").read_text(encoding="utf-8")
    assert text.split()[:8] == ["GNU", "GENERAL", "PUBLIC", "LICENSE", "Version", "3,", "29", "June"]
