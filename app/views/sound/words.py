"""The words for what may be chosen of the sound."""

from app.domain.cue_values import CueLevel
from app.planfile.settings import Settings

SPEAKER_WORDS: dict[str, str] = {
    "auto": "whatever plays best here",
    "simpleaudio": "simpleaudio: the system's own output",
    "miniaudio": "miniaudio: an output of your choice",
    "silent": "nothing: no sound is made",
}
CUE_WORDS: dict[CueLevel, str] = {
    CueLevel.FULL: "everything: phases, halfway, coaching too",
    CueLevel.SPARE: "counts, sides, exercises and time left",
    CueLevel.TONES: "nothing: tones alone lead",
}
LANGUAGE_WORDS: dict[str, str] = {"en": "English", "de": "Deutsch", "es": "Español", "fr": "Français"}
DEFAULT_OUTPUT = "the system's default"


def devices_offered(found: tuple[str, ...], chosen: str | None) -> dict[str | None, str]:
    """The outputs to choose from and their words: the default, those found, the chosen one in any case."""
    offered: dict[str | None, str] = {None: DEFAULT_OUTPUT, **{name: name for name in found}}
    if chosen is not None and chosen not in offered:
        offered[chosen] = f"{chosen} (not there now)"
    return offered


def overruled_words(kept: Settings, holding: Settings) -> str:
    """What the words of the command say in place of what is kept, in a sentence; nothing where they agree."""
    said = {
        "speaker": (kept.speaker, holding.speaker),
        "cues": (kept.cues, holding.cues),
        "language": (kept.language, holding.language),
    }
    words = [f"{name} {new}" for name, (old, new) in said.items() if old != new]
    if not words:
        return ""
    return f"Until the program is closed, the command that opened it decides: {', '.join(words)}."


def latency_words(speaker: str, ms: int) -> str:
    """How late the sound is taken to be."""
    return f"The sound of {speaker} is taken to come {ms} ms late, and the picture waits for it."
