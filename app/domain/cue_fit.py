"""Finding room for speech: what is said where, once it is known how long each phrase is."""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace

from app.domain.cue_tones import TICK_MS, thin
from app.domain.cue_values import Cue, CueKind

BREATH_MS = 80
"""Silence between two phrases, and between a tone and a phrase that can wait."""
TICKED_INSTEAD = frozenset({CueKind.COUNT, CueKind.TIME_LEFT, CueKind.HALFWAY})
"""Kinds that leave a tick where no form of them has room."""

Length = Callable[[str], int | None]
"""Whole ms that a text takes to say, rounded up; None when it cannot be said."""


def fit_speech(cues: Iterable[Cue], length_ms: Length) -> tuple[Cue, ...]:
    """The cues with every phrase given its place and length, shortened, or left out.

    By order of priority a phrase takes the first of its forms that ends before the next tone of higher
    priority, by its `until_ms`, and a breath before the next phrase; one that slides begins at the first such
    place, clear of ticks if it can be. No two phrases overlap, and no coaching cue is said twice in a row.
    """
    given = tuple(cues)
    tones = [cue for cue in given if not cue.kind.spoken]
    speech = sorted((cue for cue in given if cue.kind.spoken), key=lambda cue: (cue.priority, cue.at_ms))
    floor = _Floor(tones)
    said: list[Cue] = []
    ticks: list[Cue] = []
    for cue in speech:
        forms = [(text, length) for text in (cue.text or "", *cue.shorter) if (length := length_ms(text))]
        placed = next((fit for text, length in forms if (fit := floor.place(cue, text, length))), None)
        if placed is not None:
            floor.take(placed)
            said.append(placed)
        elif forms and cue.kind in TICKED_INSTEAD:
            ticks.append(Cue(cue.at_ms, CueKind.TICK, cue.side, TICK_MS, cue.shown))
    sounding = (*thin([*tones, *ticks]), *_unrepeated(said))
    return tuple(sorted(sounding, key=lambda cue: (cue.at_ms, cue.priority)))


def _unrepeated(said: Iterable[Cue]) -> list[Cue]:
    kept: list[Cue] = []
    last = None
    for cue in sorted(said, key=lambda cue: cue.at_ms):
        if cue.kind is CueKind.COACHING:
            if cue.text == last:
                continue
            last = cue.text
        kept.append(cue)
    return kept


@dataclass
class _Stretches:
    """Stretches of time in order, none overlapping another."""

    starts: list[int] = field(default_factory=list)
    ends: list[int] = field(default_factory=list)

    def add(self, start: int, end: int) -> None:
        place = bisect_left(self.starts, start)
        self.starts.insert(place, start)
        self.ends.insert(place, end)

    def clash(self, start: int, end: int) -> int | None:
        """The end of the first stretch that shares time with [start, end), None when none does."""
        place = max(bisect_left(self.starts, start) - 1, 0)
        while place < len(self.starts) and self.starts[place] < end:
            if self.ends[place] > start:
                return self.ends[place]
            place += 1
        return None

    def begins_within(self, start: int, end: int) -> bool:
        """Whether some stretch begins after `start` and before `end`; one at `start` does not count."""
        place = bisect_right(self.starts, start)
        return place < len(self.starts) and self.starts[place] < end


class _Floor:
    """Who has the floor when: the tones, which stay, and the phrases placed so far."""

    def __init__(self, tones: Sequence[Cue]) -> None:
        self._tones, self._ticks, self._phrases = _Stretches(), _Stretches(), _Stretches()
        for tone in tones:
            kept = self._ticks if tone.kind is CueKind.TICK else self._tones
            kept.add(tone.at_ms, tone.end_ms)

    def take(self, cue: Cue) -> None:
        self._phrases.add(cue.at_ms, cue.end_ms)

    def place(self, cue: Cue, text: str, length: int) -> Cue | None:
        """The cue with a text at its place, None when there is none."""
        at = self._sliding(cue, length) if cue.slides else self._fixed(cue, length)
        if at is None:
            return None
        return replace(cue, at_ms=at, length_ms=length, text=text, shown=text, shorter=())

    def _fixed(self, cue: Cue, length: int) -> int | None:
        at = cue.at_ms
        late = cue.until_ms is not None and at + length > cue.until_ms
        free = not late and not self._tones.begins_within(at, at + length) and not self._talk(at, length)
        return at if free else None

    def _sliding(self, cue: Cue, length: int) -> int | None:
        clear = self._first_place(cue, length, (self._tones, self._ticks))
        return clear if clear is not None else self._first_place(cue, length, (self._tones,))

    def _first_place(self, cue: Cue, length: int, sounds: tuple[_Stretches, ...]) -> int | None:
        at = cue.at_ms
        while cue.until_ms is None or at + length <= cue.until_ms:
            ends = [sound.clash(at - BREATH_MS, at + length) for sound in sounds]
            taken = [end for end in (*ends, self._talk(at, length)) if end is not None]
            if not taken:
                return at
            at = max(taken) + BREATH_MS
        return None

    def _talk(self, at: int, length: int) -> int | None:
        """The end of a phrase that leaves no breath to one at a place, None when there is none."""
        return self._phrases.clash(at - BREATH_MS, at + length + BREATH_MS)
