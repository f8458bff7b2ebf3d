"""How the screens look: as a person chose, and where the choice is the system's, as that is set."""

from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QLocale, QObject, Qt, Signal
from PySide6.QtGui import QGuiApplication

from app.planfile.screen_settings import LEAST_TEXT, SYSTEM, ScreenSettings
from app.planfile.settings import Settings
from app.views.lettering import TypeScale, desk_scale, training_scale
from app.views.theme import Lightness, Look, Place, Scheme, choose
from app.views.translation import Tongue, language_of


@dataclass(frozen=True, slots=True)
class SystemWish:
    """What the system asks of programs; None where it, or this Qt, does not say."""

    dark: bool | None = None
    strong: bool | None = None
    still: bool | None = None


@dataclass(frozen=True, slots=True)
class Manner:
    """What comes of a choice and the system's wish: which colours, and whether things stand still."""

    lightness: Lightness
    strong: bool
    still: bool

    def scheme(self, place: Place) -> Scheme:
        """The colours of a place."""
        return choose(place, self.lightness, high_contrast=self.strong)


def manner(screen: ScreenSettings, system: SystemWish) -> Manner:
    """Decide what holds. What the system does not say is as without a wish: by place, normal, full."""
    told = {True: Lightness.DARK, False: Lightness.LIGHT, None: Lightness.BY_PLACE}[system.dark]
    lightness = told if screen.scheme == SYSTEM else Lightness(screen.scheme)
    strong = bool(system.strong) if screen.contrast == SYSTEM else screen.contrast == "high"
    still = bool(system.still) if screen.motion == SYSTEM else screen.motion == "reduced"
    return Manner(lightness, strong, still)


def reading_direction(screen: ScreenSettings, language: str) -> Qt.LayoutDirection:
    """Where lines begin: as chosen, else as the language of the screens is read."""
    if screen.direction == SYSTEM:
        return QLocale(language).textDirection()
    right = screen.direction == "rtl"
    return Qt.LayoutDirection.RightToLeft if right else Qt.LayoutDirection.LeftToRight


def system_wish() -> SystemWish:
    """Ask the system. Needs a QGuiApplication; Qt knows of contrast from 6.10 on, of motion from 6.12 on."""
    hints = QGuiApplication.styleHints()
    dark = {Qt.ColorScheme.Dark: True, Qt.ColorScheme.Light: False}.get(hints.colorScheme())
    access = getattr(hints, "accessibility", lambda: None)()
    return SystemWish(dark, _told(access, "contrastPreference"), _told(access, "motionPreference"))


def _told(access: object | None, name: str) -> bool | None:
    """Whether a preference is for more contrast, or for less motion; None where there is no word of it."""
    ask = getattr(access, name, None)
    return None if ask is None else ask().name != "NoPreference"


class Appearance(QObject):
    """Makes the looks of the screens. `changed` is emitted when they are to be built anew.

    It listens to the system, and sets the language and where lines begin for the whole program until `end`.
    """

    changed = Signal()

    def __init__(
        self, family: str, translations: Path, settings: Settings, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._family, self._settings, self._system = family, settings, system_wish()
        self._tongue = Tongue(translations, self)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._ask_again)
        access = getattr(hints, "accessibility", lambda: None)()
        for name in ("contrastPreferenceChanged", "motionPreferenceChanged"):
            told = getattr(access, name, None)
            if told is not None:
                told.connect(self._ask_again)
        self._speak()

    @property
    def manner(self) -> Manner:
        """What holds now."""
        return manner(self._settings.screen, self._system)

    @property
    def settings(self) -> Settings:
        """The settings as they hold now."""
        return self._settings

    @property
    def system(self) -> SystemWish:
        """What the system asks for now."""
        return self._system

    def take(self, settings: Settings) -> None:
        """Look as these settings say from now on."""
        before, self._settings = self._settings, settings
        if (before.screen, before.distance_m) == (settings.screen, settings.distance_m):
            return
        self._speak()
        self.changed.emit()

    def hear(self, system: SystemWish) -> None:
        """Take it that the system asks for this from now on."""
        before, self._system = self.manner, system
        if self.manner != before:
            self.changed.emit()

    def training(self, window_height: int) -> Look:
        """The look of what is seen from afar."""
        return self._look(Place.TRAINING, training_scale(window_height, self._text))

    def gym(self, window_height: int) -> Look:
        """The look of the gym screen, seen from across the room; its letters follow the distance alone."""
        scale = training_scale(window_height)
        return replace(self._look(Place.TRAINING, scale), distance_m=self._settings.gym_distance_m, text=1.0)

    def desk(self, window_width: int) -> Look:
        """The look of what is read at the desk."""
        return self._look(Place.DESK, desk_scale(window_width, self._text))

    def end(self) -> None:
        """Leave the program as it was found."""
        self._tongue.end()
        QGuiApplication.setLayoutDirection(Qt.LayoutDirection.LeftToRight)

    @property
    def _text(self) -> float:
        return self._settings.screen.text / LEAST_TEXT

    def _look(self, place: Place, sizes: TypeScale) -> Look:
        holds = self.manner
        distance = self._settings.distance_m
        return Look(holds.scheme(place), self._family, sizes, distance, self._text, holds.still)

    def _speak(self) -> None:
        screen = self._settings.screen
        language = language_of(screen.language)
        self._tongue.speak(language)
        QGuiApplication.setLayoutDirection(reading_direction(screen, language))

    def _ask_again(self) -> None:
        self.hear(system_wish())
