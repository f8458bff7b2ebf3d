"""Whether there is a screen to open a window on; Qt itself would end the process where there is none."""

import os
import socket
import sys
from collections.abc import Mapping

from app.domain.errors import DisplayError

NO_DISPLAY = (
    "There is no display to open a window on. Start this on a desktop, or use `rehearse` to go through "
    "a plan and `picture` to draw the athlete's screen without one."
)
SCREENLESS = frozenset({"offscreen", "minimal", "vnc"})


def require_display(environment: Mapping[str, str] | None = None) -> None:
    """Raise DisplayError when no window can be opened."""
    known = os.environ if environment is None else environment
    if not sys.platform.startswith("linux") or known.get("QT_QPA_PLATFORM", "").split(":")[0] in SCREENLESS:
        return
    if known.get("WAYLAND_DISPLAY"):
        return
    display = known.get("DISPLAY", "")
    if not display or not _answers(display):
        raise DisplayError(NO_DISPLAY)


def _answers(display: str) -> bool:
    host, _, rest = display.rpartition(":")
    if host not in ("", "unix"):
        return True
    number = rest.partition(".")[0]
    if not number.isdigit():
        return False
    return any(_connects(prefix + f"/tmp/.X11-unix/X{number}") for prefix in ("", "\0"))  # noqa: S108


def _connects(address: str) -> bool:
    with socket.socket(socket.AF_UNIX) as probe:
        try:
            probe.connect(address)
        except OSError:
            return False
    return True
