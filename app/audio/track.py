"""A bout as samples: every cue at its exact place, speech over softened tones, nothing ever clipped."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from app.audio.samples import CHANNELS, FULL_SCALE, PEAK, PER_MS, Spoken, Stereo, Wave, to_stereo
from app.audio.tones import GAINS, tone
from app.domain.cue_values import Cue

DUCKED = 10 ** (-6 / 20)
"""Tones under speech are softened by 6 dB."""
DUCK_RAMP_MS = 10

Phrases = Mapping[str, Spoken]
"""Phrases by their text."""


@dataclass(frozen=True, slots=True)
class Volumes:
    """How loud tones and voice are, each 0 to 1."""

    tones: float = 1.0
    voice: float = 1.0

    @property
    def loudest(self) -> float:
        """How loud the louder of both is."""
        return max(self.tones, self.voice)

    @property
    def balance(self) -> "Volumes":
        """Both against each other, the louder at 1."""
        if not self.loudest:
            return Volumes()
        return Volumes(self.tones / self.loudest, self.voice / self.loudest)


FULL_VOLUME = Volumes()


@dataclass(frozen=True, slots=True)
class _Piece:
    start: int
    wave: Wave
    spoken: bool

    @property
    def end(self) -> int:
        return self.start + len(self.wave)


def render_track(
    cues: Sequence[Cue],
    start_ms: int,
    end_ms: int,
    *,
    volumes: Volumes = FULL_VOLUME,
    phrases: Phrases | None = None,
) -> Stereo:
    """The stretch [start_ms, end_ms) of a bout as samples of shape ((end_ms - start_ms) * 48, 2).

    A cue begins at sample (at_ms - start_ms) * 48 exactly. Cues outside the stretch, and spoken ones whose
    text is not in `phrases`, are left out; one that sounds across the end is cut there.
    """
    frames = max(end_ms - start_ms, 0) * PER_MS
    track = np.zeros((frames, CHANNELS), dtype=np.int16)
    pieces = [
        piece
        for cue in cues
        if start_ms <= cue.at_ms < end_ms
        and (piece := _piece(cue, start_ms, phrases or {}, volumes)) is not None
    ]
    for cluster in _clusters(sorted(pieces, key=lambda piece: piece.start)):
        start = cluster[0].start
        end = min(max(piece.end for piece in cluster), frames)
        track[start:end] = to_stereo(_mixed(cluster, start, end))
    return track


def _piece(cue: Cue, start_ms: int, phrases: Phrases, volumes: Volumes) -> _Piece | None:
    start = (cue.at_ms - start_ms) * PER_MS
    if not cue.kind.spoken:
        return _Piece(start, tone(cue.kind, cue.length_ms, cue.side) * np.float32(volumes.tones), False)
    voice = phrases.get(cue.text or "")
    if voice is None or not voice.size:
        return None
    gains = np.array(GAINS[cue.side], dtype=np.float32) * np.float32(volumes.voice / FULL_SCALE)
    return _Piece(start, voice[:, np.newaxis].astype(np.float32) * gains, True)


def _clusters(pieces: list[_Piece]) -> list[list[_Piece]]:
    """Pieces in groups that sound together."""
    groups: list[list[_Piece]] = []
    end = -1
    for piece in pieces:
        if piece.start < end:
            groups[-1].append(piece)
        else:
            groups.append([piece])
        end = max(end, piece.end)
    return groups


def _mixed(cluster: list[_Piece], start: int, end: int) -> Wave:
    """The sum of a group, made softer as a whole where its peak would be too high."""
    wave = np.zeros((end - start, CHANNELS), dtype=np.float32)
    tones = [piece for piece in cluster if not piece.spoken]
    speech = [piece for piece in cluster if piece.spoken]
    for piece in tones:
        _add(wave, piece, start)
    for piece in speech:
        _duck(wave, piece, start)
    for piece in speech:
        _add(wave, piece, start)
    peak = float(np.max(np.abs(wave), initial=0.0))
    return wave if peak <= PEAK else wave * np.float32(PEAK / peak)


def _add(wave: Wave, piece: _Piece, start: int) -> None:
    room = wave[piece.start - start :]
    length = min(len(room), len(piece.wave))
    room[:length] += piece.wave[:length]


def _duck(wave: Wave, piece: _Piece, start: int) -> None:
    ramp = DUCK_RAMP_MS * PER_MS
    first, last = piece.start - start, piece.end - start
    gain = np.full(len(wave), 1.0, dtype=np.float32)
    gain[max(first, 0) : last] = DUCKED
    before = gain[max(first - ramp, 0) : max(first, 0)]
    before[:] = np.linspace(1.0, DUCKED, len(before), endpoint=False)
    after = gain[last : last + ramp]
    after[:] = np.linspace(DUCKED, 1.0, ramp, endpoint=False)[: len(after)]
    wave *= gain[:, np.newaxis]
