"""What the settings file says of pedals and presenters: which of their keys do what.

[keys]                    # written by teaching a pedal, on the page of keys
count = ["PageDown"]      # keys that count a rep, or go on
pause = ["PageUp"]        # keys that pause, and go on again
one_pedal = false         # whether a short press counts and a long one pauses

Keys are named as the page of keys names them.
"""

from dataclasses import dataclass, replace

from app.planfile.kinds import Texts
from app.planfile.switch import Switch
from app.planfile.tables import Key, Table, Values


@dataclass(frozen=True, slots=True)
class PedalKeys:
    """Names of keys that count or go on, and that pause or go on again.

    With `one_pedal` a short press of a counting key counts and a long one pauses.
    """

    count: tuple[str, ...] = ()
    pause: tuple[str, ...] = ()
    one_pedal: bool = False

    def learned(self, name: str, *, pause: bool) -> "PedalKeys":
        """These keys with one more; a key does one thing only."""
        count = tuple(each for each in self.count if each != name)
        halt = tuple(each for each in self.pause if each != name)
        if pause:
            return replace(self, count=count, pause=(*halt, name))
        return replace(self, count=(*count, name), pause=halt)


KEYS = Table(
    (
        Key("count", Texts(), "Keys of a pedal that count a rep, or go on."),
        Key("pause", Texts(), "Keys of a pedal that pause, and go on again."),
        Key("one_pedal", Switch(), "A short press counts, a long one pauses.", default=False),
    )
)


def pedal_keys(values: Values) -> PedalKeys:
    """The keys in the values of the table; one that stands in both lists pauses."""
    pause = tuple(values.get("pause", ()))
    count = tuple(name for name in values.get("count", ()) if name not in pause)
    return PedalKeys(count, pause, values.get("one_pedal", False))
