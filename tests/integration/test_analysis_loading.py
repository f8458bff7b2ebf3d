"""What the figures bring with them: numpy and no more, and nothing before the window is painted."""

import subprocess
import sys
from pathlib import Path

MODULES = sorted(
    f"app.analysis.{path.stem}" for path in (Path(__file__).parents[2] / "app/analysis").glob("[a-z]*.py")
)
REFERENCES = {"scipy", "pandas", "statsmodels", "sklearn"}
LATE = {
    "app.analysis.athlete_figures",
    "app.analysis.attention",
    "app.analysis.trend",
    "app.analysis.tests_catalog",
    "numpy",
}


def loaded_by(statements: str) -> set[str]:
    """The modules that a fresh interpreter has loaded after some statements."""
    asked = f"import sys; {statements}; print(*sys.modules)"
    ran = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    return set(ran.stdout.split())


def test_the_figures_want_numpy_and_no_other_library() -> None:
    roots = {name.split(".")[0] for name in loaded_by(f"import {', '.join(MODULES)}")}
    outside = roots - sys.stdlib_module_names - {"app", "numpy", "__main__"}
    before = {name.split(".")[0] for name in loaded_by("pass")}
    assert {name for name in outside - before if not name.startswith("_")} == set()
    assert "numpy" in roots
    assert not roots & REFERENCES


def test_the_figures_wait_until_the_window_is_there() -> None:
    loaded = loaded_by("import app.cli.open_program, app.views.window")
    assert "app.views.window" in loaded
    assert not loaded & LATE
