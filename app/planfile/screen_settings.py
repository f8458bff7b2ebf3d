"""What the settings file says of the screens: colours, contrast, motion, text, language and direction.

[screen]
scheme = "by place"       # dark for training and light at the desk; or system, light, dark
contrast = "system"       # system, normal or high
motion = "system"         # system, full or reduced
text = 100                # size of all text in percent, 100 to 200
language = "system"       # of the screens: system, en or de
direction = "system"      # system, ltr or rtl

The distance stands in the same table.
"""

from dataclasses import dataclass

from app.planfile.amounts import Count
from app.planfile.kinds import Word
from app.planfile.tables import Key, Values

SYSTEM = "system"
"""Wherever it may be chosen: as the computer is set."""
SCHEMES = ("by place", SYSTEM, "light", "dark")
CONTRASTS = (SYSTEM, "normal", "high")
MOTIONS = (SYSTEM, "full", "reduced")
SCREEN_LANGUAGES = (SYSTEM, "en", "de")
DIRECTIONS = (SYSTEM, "ltr", "rtl")
LEAST_TEXT, MOST_TEXT = 100, 200


@dataclass(frozen=True, slots=True)
class ScreenSettings:
    """How the screens are to look; each word one of its list above, `text` in percent."""

    scheme: str = "by place"
    contrast: str = SYSTEM
    motion: str = SYSTEM
    text: int = LEAST_TEXT
    language: str = SYSTEM
    direction: str = SYSTEM


SCREEN_KEYS = (
    Key("scheme", Word(SCHEMES), "Light or dark.", default="by place"),
    Key("contrast", Word(CONTRASTS), "How strong colours stand out.", default=SYSTEM),
    Key("motion", Word(MOTIONS), "Whether the profile moves, or stands and a marker moves.", default=SYSTEM),
    Key("text", Count(LEAST_TEXT, MOST_TEXT), "Size of all text in percent.", default=LEAST_TEXT),
    Key("language", Word(SCREEN_LANGUAGES), "Of the screens.", default=SYSTEM),
    Key("direction", Word(DIRECTIONS), "Where lines begin.", default=SYSTEM),
)


def screen_settings(values: Values) -> ScreenSettings:
    """The settings in the values of the table."""
    return ScreenSettings(**{key.name: values[key.name] for key in SCREEN_KEYS if key.name in values})
