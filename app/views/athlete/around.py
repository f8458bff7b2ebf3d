"""What the athlete's page knows beside the run."""

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from app.planfile.key_settings import PedalKeys

if TYPE_CHECKING:
    from app.audio.trial import Trial


@dataclass(frozen=True, slots=True)
class Around:
    """What the page knows beside the run.

    The pedals that were learned and how to keep more of them, and when the next session is, in words; None
    where nobody knows. Before the run begins `make_trial` lets the sound be tried, `back` leads to what stood
    before, and `key_just_pressed` tells that a key led here which begins the run, too.
    """

    pedals: PedalKeys = field(default_factory=PedalKeys)
    keep_pedals: Callable[[PedalKeys], object] | None = None
    next_session: str | None = None
    make_trial: "Callable[[], Trial] | None" = None
    back: Callable[[], object] | None = None
    key_just_pressed: bool = False
