"""Where a console is, for the one that takes its place when the window or the look changes."""

from dataclasses import dataclass

from app.views.group.after_form import AfterForm
from app.views.group.coach_keys import Keys


@dataclass(frozen=True, slots=True)
class Kept:
    """Where a console is: its keys, what it says, the monitor, a note begun, who is asked afterwards."""

    keys: Keys
    echo: tuple[int, str, str] | None
    notice: str
    monitor: str
    writing: str | None
    form: AfterForm
