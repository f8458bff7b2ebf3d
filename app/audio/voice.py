"""Speech made ahead: phrases rendered on one worker, trimmed, levelled, at our rate, and kept."""

import unicodedata
from collections.abc import Callable, Iterable
from concurrent.futures import Future, ThreadPoolExecutor

import numpy as np
from numpy.typing import NDArray

from app.audio import espeak
from app.audio.resample import resample
from app.audio.samples import FULL_SCALE, PER_MS, RATE, Spoken
from app.audio.tones import LOUDNESS

WORDS_A_MINUTE = 170
LANGUAGES = ("en", "de", "es", "fr")
HIGHEST_PEAK = 0.6
"""Of a phrase on its own, so that a tone under it leaves room."""
HEARD = 0.01
"""Share of a phrase's peak under which its beginning and end count as silence."""
FADE_MS = 5
ACTIVE_MS = 20
ACTIVE_SHARE = 0.1
_UNSPOKEN = {"Cc", "Cf", "Cs", "Co", "Cn", "So", "Sk"}

Synthesise = Callable[[str, str, int], NDArray[np.int16]]
Progress = Callable[[int, int], None]
"""Called with how many phrases are done, and of how many."""


class Voice:
    """One voice in one language. Phrases are made on a thread of its own and kept by text.

    `notice` says in a sentence why there is no speech, None while there is.
    """

    def __init__(
        self,
        language: str = "en",
        words_a_minute: int = WORDS_A_MINUTE,
        say: Synthesise = espeak.synthesise,
    ) -> None:
        self.language = language
        self.notice: str | None = None
        self._words_a_minute = words_a_minute
        self._say = say
        self._kept: dict[str, Spoken] = {}
        self._closed = False
        self._worker = ThreadPoolExecutor(max_workers=1, thread_name_prefix="voice")

    def prepare(self, texts: Iterable[str], progress: Progress | None = None) -> "Future[dict[str, Spoken]]":
        """Have phrases made: the future gives them by text, without those that cannot be said."""
        return self._worker.submit(self._prepared, tuple(dict.fromkeys(texts)), progress)

    def close(self) -> None:
        """End the thread; what has not been made by now is not made."""
        self._closed = True
        self._worker.shutdown(wait=True, cancel_futures=True)

    def _prepared(self, texts: tuple[str, ...], progress: Progress | None) -> dict[str, Spoken]:
        made: dict[str, Spoken] = {}
        for done, text in enumerate(texts, 1):
            if self._closed:
                break
            phrase = self._phrase(text)
            if phrase is not None:
                made[text] = phrase
            if progress is not None:
                progress(done, len(texts))
        return made

    def _phrase(self, text: str) -> Spoken | None:
        if text not in self._kept:
            plain = speakable(text)
            if self.notice is not None or not plain:
                return None
            try:
                raw = self._say(plain, self.language, self._words_a_minute)
            except espeak.VoiceError as error:
                self.notice = f"No speech: {error} Cues are tones only."
                return None
            self._kept[text] = phrase_of(raw)
        phrase = self._kept[text]
        return phrase if phrase.size else None


def speakable(text: str) -> str:
    """A text without what has no sound (control and format characters, pictographs), its spaces single."""
    kept = (
        " " if unicodedata.category(each) in _UNSPOKEN else each
        for each in unicodedata.normalize("NFC", text)
    )
    return " ".join("".join(kept).split())


def phrase_of(raw: NDArray[np.int16], rate: int = espeak.RATE) -> Spoken:
    """Synthesised speech as a phrase at 48 kHz: silence cut off, at the loudness of the tones, ends smoothed.

    Its loudness is the RMS of the parts in which something is said.
    """
    wave = resample(raw / FULL_SCALE, rate, RATE)
    peak = float(np.max(np.abs(wave), initial=0.0))
    loud = np.flatnonzero(np.abs(wave) > peak * HEARD)
    if not loud.size:
        return np.zeros(0, dtype=np.int16)
    wave = wave[loud[0] : loud[-1] + 1]
    wave = wave * min(LOUDNESS / _active_rms(wave), HIGHEST_PEAK / peak)
    fade = min(FADE_MS * PER_MS, len(wave))
    wave[-fade:] *= np.linspace(1.0, 0.0, fade)
    return np.rint(wave * FULL_SCALE).astype(np.int16)


def _active_rms(wave: NDArray[np.float64]) -> float:
    step = ACTIVE_MS * PER_MS
    blocks = [wave[start : start + step] for start in range(0, len(wave), step)]
    powers = np.array([np.mean(np.square(block)) for block in blocks])
    active = powers[powers >= powers.max() * ACTIVE_SHARE**2]
    return float(np.sqrt(active.mean()))
