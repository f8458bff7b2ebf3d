"""A steady beat to set the picture by."""

from app.audio.latency import BEAT_MS
from app.audio.samples import Stereo
from app.audio.track import FULL_VOLUME, Volumes, render_track
from app.domain.cue_tones import TICK_MS
from app.domain.cue_values import Cue, CueKind
from app.domain.plan import Side


def beat_sound(beats: int, volumes: Volumes = FULL_VOLUME) -> Stereo:
    """So many beats, one each second, after a second of silence so that the first is not shifted."""
    cues = [Cue(beat * BEAT_MS, CueKind.TICK, Side.BOTH, TICK_MS, "beat") for beat in range(1, beats + 1)]
    return render_track(cues, 0, (beats + 1) * BEAT_MS, volumes=volumes)
