"""espeak-ng through ctypes: text to samples, in the process and without a word on a loudspeaker."""

import ctypes
import threading
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.domain.errors import PacewrightError

RATE = 22_050
"""Samples a second of espeak-ng's own voices."""

_SYNCHRONOUS = 2
_DO_NOT_EXIT = 0x8000
_UTF8 = 1
_BY_CHARACTER = 1
_WORDS_A_MINUTE = 1

_Callback = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p)

_one_at_a_time = threading.Lock()
"""The library keeps its state for the whole process and breaks when two threads are in it."""


class VoiceError(PacewrightError):
    """Speech cannot be had."""


def synthesise(text: str, voice: str, words_a_minute: int) -> NDArray[np.int16]:
    """A text as samples of one channel at `RATE`, with the silence the library puts around it.

    `voice` is a name espeak-ng knows, such as `en`, `de`, `es`, `fr`. Raises VoiceError when the library or
    the voice is missing.
    """
    heard: list[NDArray[np.int16]] = []

    def keep(samples: Any, count: int, _events: Any) -> int:  # noqa: ANN401
        if samples and count > 0:
            heard.append(np.ctypeslib.as_array(samples, (count,)).copy())
        return 0

    callback = _Callback(keep)
    said = text.encode("utf-8", "ignore") + b"\0"
    with _one_at_a_time:
        library = _library()
        if library.espeak_SetVoiceByName(voice.encode()):
            raise VoiceError(f"espeak-ng has no voice called '{voice}'.")
        library.espeak_SetParameter(_WORDS_A_MINUTE, words_a_minute, 0)
        library.espeak_SetSynthCallback(callback)
        failed = library.espeak_Synth(said, len(said), 0, _BY_CHARACTER, 0, _UTF8, None, None)
    if failed:
        raise VoiceError(f"espeak-ng could not say '{text[:40]}'.")
    return np.concatenate(heard) if heard else np.zeros(0, dtype=np.int16)


@lru_cache(maxsize=1)
def _library() -> Any:  # noqa: ANN401
    try:
        import espeakng_loader

        library = ctypes.CDLL(espeakng_loader.get_library_path())
        data = espeakng_loader.get_data_path()
    except Exception as error:
        raise VoiceError("The speech library espeakng-loader is not installed.") from error
    library.espeak_Synth.argtypes = (
        ctypes.c_char_p, ctypes.c_size_t, ctypes.c_uint, ctypes.c_int,
        ctypes.c_uint, ctypes.c_uint, ctypes.c_void_p, ctypes.c_void_p,
    )  # fmt: skip
    if library.espeak_Initialize(_SYNCHRONOUS, 0, data.encode(), _DO_NOT_EXIT) != RATE:
        raise VoiceError("espeak-ng did not start.")
    return library
