"""Every text that leading a plan may need spoken, so that all can be made before it begins."""

from app.domain.cue_values import Cue, CueLevel
from app.domain.cue_words import ENGLISH, Tongue
from app.domain.cues import bout_cues, whole_bout_cues
from app.domain.timeline import Timeline


def spoken_texts(
    timeline: Timeline, level: CueLevel = CueLevel.FULL, tongue: Tongue = ENGLISH
) -> tuple[str, ...]:
    """Each text once, in the order of need: what is said, shorter forms, the counts of open-ended work."""
    texts: dict[str, None] = {}
    for bout in timeline.bouts:
        again = bout_cues(timeline, bout, from_ms=-bout.lead_in_ms, level=level, tongue=tongue)
        for cue in (*whole_bout_cues(timeline, bout, level=level, tongue=tongue), *again):
            texts.update(dict.fromkeys(_forms(cue)))
        if bout.open_ended and level is not CueLevel.TONES:
            texts.update(dict.fromkeys(str(count) for count in range(1, bout.high + 1)))
    return tuple(texts)


def _forms(cue: Cue) -> tuple[str, ...]:
    return () if cue.text is None else (cue.text, *cue.shorter)
