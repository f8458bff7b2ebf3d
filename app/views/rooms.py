"""The rooms beside the session, one at a time: sound, screen, group; each made when its door is opened."""

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import SignalInstance
from PySide6.QtWidgets import QWidget

from app.domain.errors import PacewrightError
from app.views.appearance import Appearance

if TYPE_CHECKING:
    from app.domain.group_choice import GroupChoice
    from app.domain.plan import WrittenPlan
    from app.views.house import House
    from app.views.worker import RecordKeeper


class Room(Protocol):
    """A widget with a way back, that lets go of what it holds when it is left."""

    @property
    def left(self) -> SignalInstance:
        """Emitted when the person is done."""

    def end(self) -> None:
        """Let everything go."""


class Rooms:
    """Makes rooms. Each raises PacewrightError when it cannot be entered."""

    def __init__(
        self, house: "House", keeper: "RecordKeeper", appearance: Appearance, within: QWidget
    ) -> None:
        self._house, self._keeper, self._appearance, self._within = house, keeper, appearance, within

    def sound(self) -> Room:
        """How one is led by ear."""
        from app.views.sound.room import SoundRoom

        return SoundRoom(self._appearance.training(self._within.height()), self._house)

    def screen(self) -> Room:
        """How the screens look."""
        from app.views.screen.room import ScreenRoom

        return ScreenRoom(self._appearance, self._house, self._within)

    def group(self, wish: "tuple[WrittenPlan, GroupChoice] | None" = None) -> Room:
        """A session for a whole group; with a wish it is ready to begin at once."""
        from app.views.group.group_room import GroupRoom

        looks = (self._appearance.training, self._appearance.gym)
        room = GroupRoom(self._house, self._keeper, looks, self._within)
        self._appearance.changed.connect(room.renew)
        try:
            if wish is not None:
                room.begin(*wish)
        except PacewrightError:
            room.end()
            raise
        return room


def as_widget(room: Room) -> QWidget:
    """The widget that a room is. Raises TypeError for one that is none."""
    if not isinstance(room, QWidget):
        raise TypeError(f"{room} is no widget")
    return room
