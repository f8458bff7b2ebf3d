"""The words for what may be chosen of the sound."""

from app.domain.cue_values import CueLevel
from app.planfile.settings import Settings
from app.views.translation import message, tr

SPEAKER_WORDS: dict[str, str] = {
    "auto": message("whatever plays best here"),
    "simpleaudio": message("simpleaudio: the system's own output"),
    "miniaudio": message("miniaudio: an output of your choice"),
    "silent": message("nothing: no sound is made"),
}
CUE_WORDS: dict[CueLevel, str] = {
    CueLevel.FULL: message("everything: phases, halfway, coaching too"),
    CueLevel.SPARE: message("counts, sides, exercises and time left"),
    CueLevel.TONES: message("nothing: tones alone lead"),
}
LANGUAGE_WORDS: dict[str, str] = {"en": "English", "de": "Deutsch", "es": "Español", "fr": "Français"}


def devices_offered(found: tuple[str, ...], chosen: str | None) -> dict[str | None, str]:
    """The outputs to choose from and their words: the default, those found, the chosen one in any case."""
    offered: dict[str | None, str] = {None: tr("the system's default"), **{name: name for name in found}}
    if chosen is not None and chosen not in offered:
        offered[chosen] = tr("{output} (not there now)").format(output=chosen)
    return offered


def overruled_words(kept: Settings, holding: Settings) -> str:
    """What the words of the command say in place of what is kept, in a sentence; nothing where they agree."""
    said = {
        tr("speaker"): (kept.speaker, holding.speaker),
        tr("cues"): (kept.cues, holding.cues),
        tr("language"): (kept.language, holding.language),
    }
    words = [f"{name} {new}" for name, (old, new) in said.items() if old != new]
    if not words:
        return ""
    told = tr("Until the program is closed, the command that opened it decides: {words}.")
    return told.format(words=", ".join(words))


def latency_words(speaker: str, ms: int) -> str:
    """How late the sound is taken to be."""
    told = tr("The sound of {speaker} is taken to come {ms} ms late, and the picture waits for it.")
    return told.format(speaker=speaker, ms=ms)
