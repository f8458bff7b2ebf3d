"""What a room hears, as samples: louder tones, and each wave in a speaker of its own where that is chosen."""

from dataclasses import dataclass, replace

import numpy as np

from app.audio.bout_sound import OPEN_TAIL_MS, Entry, length_in
from app.audio.samples import Stereo
from app.audio.track import Phrases, Volumes, render_track
from app.domain.cue_fit import fit_speech
from app.domain.cue_gap import CODA_MS
from app.domain.cue_room import RoomEar, room_cues, room_texts
from app.domain.group import GroupSession
from app.domain.grouping import Form
from app.domain.timeline import Bout

LOUDER = 2.0
"""Tones are 6 dB louder in a room than for one athlete, up to the highest level allowed: our own choice."""


@dataclass(frozen=True, slots=True)
class RoomScore:
    """Fills `app.audio.bout_sound.Score` for a room.

    `apart` puts wave A into the left speaker alone and wave B into the right; sides are then told by their
    timbre and by word.
    """

    session: GroupSession
    ear: RoomEar
    apart: bool = False

    def texts(self) -> tuple[str, ...]:
        """Every text that may need to be spoken, whoever's tempo is picked."""
        return room_texts(self.session, self.ear)

    def samples(self, bout: Bout, entry: Entry, volumes: Volumes, phrases: Phrases) -> Stereo:
        """The samples of a slot from `entry.from_ms` to the end of its closing chord."""
        end_ms = OPEN_TAIL_MS if bout.work_ms is None else bout.work_ms + CODA_MS
        wished = room_cues(
            self.session,
            bout,
            self.ear,
            from_ms=entry.from_ms,
            work_from_ms=entry.work_from_ms,
            rest_ms=entry.rest_ms,
        )
        cues = fit_speech(wished, length_in(phrases))
        louder = replace(volumes, tones=volumes.tones * LOUDER)
        samples = render_track(cues, entry.from_ms, end_ms, volumes=louder, phrases=phrases)
        if self.apart and self.session.form is Form.WAVES:
            return into_one(samples, bout.index % self.session.teams)
        return samples


def into_one(samples: Stereo, channel: int) -> Stereo:
    """Both channels mixed into one, 0 left and 1 right; the other is silent."""
    alone = np.zeros_like(samples)
    alone[:, channel] = np.rint(samples.mean(axis=1)).astype(np.int16)
    return alone
