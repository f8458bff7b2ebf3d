"""The settings file: how a person wants to be led, and what was measured of their devices.

`settings.toml` in the data folder, written by hand or by the program; every key may be left out:

    format = 1

    [sound]
    speaker = "auto"          # auto, simpleaudio, miniaudio or silent
    device = "Hall speakers"  # one that `speakers` lists; through miniaudio
    cues = "full"             # full, spare or tones
    language = "en"           # of what is said: en, de, es, fr
    tones = 100               # loudness in percent, of tones and of voice
    voice = 100
    mute = false

    [[latency]]               # written by the calibration
    device = "simpleaudio"
    ms = 40

    [screen]
    distance = 3.0            # metres from the screen to the eye
    gym_distance = 10.0       # the same for the gym screen of a group
    presentation = false      # whether Review opens without pain, notes and the names of others
    ask_before = true         # whether a session is begun with questions about the day

    [practitioner]            # written by `passphrase`
    passphrase = "$argon2id$v=19$..."

    [cautions]                # numbers in place of the program's own, see the README
    session_minutes = 75

How the screens look stands in [screen] too, see `screen_settings`; pedals in [keys], see `key_settings`.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from pathlib import Path

from app.domain.cue_values import CueLevel
from app.domain.thresholds import DEFAULT, ThresholdError, Thresholds, thresholds_from
from app.planfile.amounts import Count, Format
from app.planfile.key_settings import KEYS, PedalKeys, pedal_keys
from app.planfile.kinds import Refuse, Schema, Text, Word
from app.planfile.passphrase import PassphraseHash
from app.planfile.positions import Positions
from app.planfile.report import Report
from app.planfile.screen_settings import SCREEN_KEYS, ScreenSettings, screen_settings
from app.planfile.shown import shown
from app.planfile.source import read_text
from app.planfile.switch import Switch
from app.planfile.syntax import parse_toml
from app.planfile.tables import Key, Table, Tables, Values

FORMAT = 1
SPEAKERS = ("auto", "simpleaudio", "miniaudio", "silent")
LANGUAGES = ("en", "de", "es", "fr")
MOST_LATENCY_MS = 1_000
NEAREST_M, FARTHEST_M = Decimal("0.5"), Decimal(30)
DEFAULT_DISTANCE_M = 3.0
DEFAULT_GYM_DISTANCE_M = 10.0


@dataclass(frozen=True, slots=True)
class Settings:
    """What the settings file says, each with its default. Loudness is 0 to 1; latency in ms by device."""

    speaker: str = "auto"
    device: str | None = None
    cues: CueLevel = CueLevel.FULL
    language: str = "en"
    tones: float = 1.0
    voice: float = 1.0
    mute: bool = False
    latency_ms: Mapping[str, int] = field(default_factory=dict)
    distance_m: float = DEFAULT_DISTANCE_M
    gym_distance_m: float = DEFAULT_GYM_DISTANCE_M
    presentation: bool = False
    ask_before: bool = True
    screen: ScreenSettings = field(default_factory=ScreenSettings)
    keys: PedalKeys = field(default_factory=PedalKeys)
    passphrase: str | None = None
    thresholds: Thresholds = DEFAULT


@dataclass(frozen=True, slots=True)
class Distance:
    """Metres from the screen to the eye."""

    def read(self, value: object, refuse: Refuse) -> float | None:
        """The distance in m."""
        number = Decimal(value) if isinstance(value, int | Decimal) and not isinstance(value, bool) else None
        if number is not None and number.is_finite() and NEAREST_M <= number <= FARTHEST_M:
            return float(number)
        refuse(f"{shown(value)} is no distance; write metres, {NEAREST_M} to {FARTHEST_M}")
        return None

    def schema(self) -> Schema:
        """A number of metres."""
        return {"type": "number", "minimum": float(NEAREST_M), "maximum": float(FARTHEST_M)}


@dataclass(frozen=True, slots=True)
class Cautions:
    """Numbers in place of the thresholds of the cautions, by name."""

    def read(self, value: object, refuse: Refuse) -> Thresholds | None:
        """The table of thresholds with these numbers in it."""
        if not isinstance(value, dict):
            refuse(f"this must be a table, not {shown(value)}; begin it with [cautions]")
            return None
        plain = {
            key: float(number) if isinstance(number, Decimal) else number for key, number in value.items()
        }
        try:
            return thresholds_from(plain)
        except ThresholdError as error:
            for key, message in error.problems:
                refuse(message, key)
            return None

    def schema(self) -> Schema:
        """An object of numbers."""
        return {"type": "object", "additionalProperties": {"type": "number", "minimum": 0}}


SOUND = Table(
    (
        Key("speaker", Word(SPEAKERS), "What plays the sound.", default="auto"),
        Key("device", Text(), "The device, as `speakers` lists it; through miniaudio."),
        Key("cues", Word(tuple(CueLevel)), "How much is said.", default="full"),
        Key("language", Word(LANGUAGES), "Of what is said.", default="en"),
        Key("tones", Count(0, 100), "Loudness of tones in percent.", default=100),
        Key("voice", Count(0, 100), "Loudness of speech in percent.", default=100),
        Key("mute", Switch(), "No sound at all.", default=False),
    )
)
LATENCY = Table(
    (
        Key("device", Text(), "The speaker or device.", required=True, example='device = "simpleaudio"'),
        Key("ms", Count(0, MOST_LATENCY_MS), "How late its sound is.", required=True, example="ms = 40"),
    )
)
SCREEN = Table(
    (
        Key("distance", Distance(), "Metres from the screen to the eye.", default=3.0),
        Key("gym_distance", Distance(), "The same for the gym screen of a group.", default=10.0),
        Key("presentation", Switch(), "Review opens without pain, notes and names.", default=False),
        Key("ask_before", Switch(), "Ask about the day before a session.", default=True),
        *SCREEN_KEYS,
    )
)
PRACTITIONER = Table((Key("passphrase", PassphraseHash(), "Asked for before Review, as a hash."),))
SETTINGS = Table(
    (
        Key("format", Format(FORMAT), "Version of the file format.", default=1),
        Key("sound", SOUND, "How one is led by ear."),
        Key("latency", Tables(LATENCY, 50, "[[latency]]"), "How late the sound of each device is."),
        Key("screen", SCREEN, "How one is led by eye."),
        Key("keys", KEYS, "Pedals and presenters."),
        Key("practitioner", PRACTITIONER, "The practitioner's part."),
        Key("cautions", Cautions(), "Numbers in place of the program's own."),
    )
)


def read_settings(path: Path) -> Settings:
    """What a settings file says; the defaults where there is none. Raises FileProblemsError."""
    return parse_settings(read_text(path), str(path)) if path.exists() else Settings()


def parse_settings(text: str, file: str) -> Settings:
    """The settings in a text. Raises FileProblemsError with every problem of it."""
    parsed = parse_toml(text, SETTINGS)
    report = Report(file, lambda: Positions(parsed.text), parsed.problems, parsed.broken)
    values = None if parsed.document is None else SETTINGS.read(parsed.document, report.refuse)
    if values is None or not report.clean:
        raise report.error()
    return _settings(values)


def _settings(values: Values) -> Settings:
    sound, screen = values.get("sound", {}), values.get("screen", {})
    return Settings(
        speaker=sound.get("speaker", "auto"),
        device=sound.get("device"),
        cues=CueLevel(sound.get("cues", CueLevel.FULL)),
        language=sound.get("language", "en"),
        tones=sound.get("tones", 100) / 100,
        voice=sound.get("voice", 100) / 100,
        mute=sound.get("mute", False),
        latency_ms={row["device"]: row["ms"] for row in values.get("latency", ())},
        distance_m=screen.get("distance", DEFAULT_DISTANCE_M),
        gym_distance_m=screen.get("gym_distance", DEFAULT_GYM_DISTANCE_M),
        presentation=screen.get("presentation", False),
        ask_before=screen.get("ask_before", True),
        screen=screen_settings(screen),
        keys=pedal_keys(values.get("keys", {})),
        passphrase=values.get("practitioner", {}).get("passphrase"),
        thresholds=values.get("cautions", DEFAULT),
    )
