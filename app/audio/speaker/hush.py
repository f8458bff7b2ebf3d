"""Keeping ALSA's own lines off stderr, for every library that plays through it."""

import ctypes
import sys

_Handler = ctypes.CFUNCTYPE(
    None, ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p
)
_say_nothing = _Handler(lambda *_: None)


def hush_alsa() -> None:
    """Keep ALSA from writing its search for a device on stderr; a sentence of ours says what is wrong."""
    if sys.platform != "linux":
        return
    try:
        ctypes.CDLL("libasound.so.2").snd_lib_error_set_handler(_say_nothing)
    except (OSError, AttributeError):
        return
