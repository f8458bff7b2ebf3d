"""A checkout to try the start script on, with a stand-in for Python that notes how it was called."""

import os
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[1]
BASH = shutil.which("bash") or "/bin/bash"

STAND_IN = """#!{bash}
# Stands in for Python: makes "environments" that hold a copy of itself, and notes every other call.
note() {{ printf '%s\\n' "$*" >>"{calls}"; }}
case "$*" in
-c*) case "$2" in *sysconfig*) echo "{header}" ;; esac ;;
"-m venv "*)
    note "venv"
    mkdir -p "$3/bin"
    ln -sf "$(readlink -f "$0")" "$3/bin/python"
    : >"$3/pyvenv.cfg"
    ;;
"-m pip --version") ;;
"-m pip install"*)
    note "install ${{*: -1}}"
    if [[ -e "{broken}" && $* == *--editable* && $* != *--no-deps* ]]; then cat "{broken}"; exit 1; fi
    ;;
"-m compileall"*) ;;
"-P -m app"*)
    shift 3
    note "app $(printf '[%s]' "$@") in $PWD"
    echo "said by the program"
    exit "${{STATUS:-0}}"
    ;;
"- base") echo "a-requirement" ;;
*) note "unforeseen $*" ;;
esac
"""


@dataclass(frozen=True)
class Checkout:
    """A copy of the scripts, a stand-in for Python on the path, and what it was called with."""

    root: Path
    commands: Path
    calls: Path
    broken: Path

    def start(
        self, *words: str, script: Path | None = None, cwd: Path | None = None, **surroundings: str
    ) -> subprocess.CompletedProcess[str]:
        """Run the start script with the stand-in alone on the path."""
        inherited = {name: value for name, value in os.environ.items() if name in {"HOME", "TMPDIR"}}
        return subprocess.run(
            [BASH, str(script or self.root / "resources/start.sh"), *words],
            cwd=cwd or self.root,
            env=inherited | {"PATH": str(self.commands)} | surroundings,
            capture_output=True,
            text=True,
            check=False,
        )

    def called(self) -> list[str]:
        """The calls so far; forgotten once read."""
        lines = self.calls.read_text(encoding="utf-8").splitlines() if self.calls.exists() else []
        self.calls.unlink(missing_ok=True)
        return lines


# All that the scripts take from the system: with neither apt-get nor sudo, nothing can be installed.
TOOLS = [
    "cat",
    "chmod",
    "cksum",
    "cp",
    "dirname",
    "basename",
    "env",
    "flock",
    "grep",
    "ls",
    "mkdir",
    "mktemp",
    "readlink",
    "rm",
    "tail",
    "ln",
    "cc",
    "gcc",
]


def make_checkout(tmp_path: Path) -> Checkout:
    """A checkout that holds the scripts alone, and a path that holds the stand-in and what scripts need."""
    root = tmp_path / "a checkout"
    (root / "resources").mkdir(parents=True)
    for name in ("resources/start.sh", "resources/environment.sh", "pyproject.toml"):
        shutil.copy(ROOT / name, root / name)
    commands = tmp_path / "commands"
    commands.mkdir()
    for tool in TOOLS:
        found = shutil.which(tool)
        if found:
            (commands / tool).symlink_to(found)
    made = Checkout(root, commands, tmp_path / "calls", tmp_path / "broken")
    header = tmp_path / "Python.h"
    header.touch()
    stand_in = commands / "python3.12"
    text = STAND_IN.format(bash=BASH, calls=made.calls, broken=made.broken, header=header)
    stand_in.write_text(text, encoding="utf-8")
    stand_in.chmod(0o755)
    return made
