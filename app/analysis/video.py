"""Times from frames of a video, with the error that its frame rate brings."""

import math
from dataclasses import dataclass

from app.analysis.jumps import GRAVITY, flight_over_contact, height_over_contact, jump_height

LEAST_FPS, SURE_FPS = 120.0, 240.0
TOO_COARSE = "Under 120 frames a second a contact time is too coarse."
COARSE = "Under 240 frames a second one frame changes a contact time by more than two parts in a hundred."


@dataclass(frozen=True, slots=True)
class VideoJump:
    """A rebound read from frames; times in s, height in m, both indices named apart; None where refused.

    `height_error_m` and `contact_error` (a share of the contact, 0-1) are those of one frame more or less.
    """

    flight_s: float
    height_m: float
    height_error_m: float
    contact_s: float | None
    contact_error: float | None
    flight_over_contact: float | None
    height_over_contact: float | None
    refused: str | None
    warning: str | None


def frames_time(first: int, last: int, fps: float) -> float:
    """Seconds from one frame to a later one: frames / frames a second. Arithmetic.

    Raises ValueError when the frames are not in order or the rate is not above 0.
    """
    if last < first or first < 0 or not fps > 0 or not math.isfinite(fps):
        raise ValueError("Frames are counted forwards, at a rate above nought.")
    return (last - first) / fps


def height_error_one_frame(flight_s: float, fps: float, gravity: float = GRAVITY) -> float:
    """Error of a jump height in m when the flight in s is off by one frame: g t / (4 fps).

    The derivative of g t^2 / 8 times one frame.
    """
    return gravity * flight_s / (4 * fps)


def height_error_random(flight_s: float, fps: float, gravity: float = GRAVITY) -> float:
    """SD of a jump height in m when both ends are off evenly within a frame: g t / (4 fps sqrt 6).

    The difference of two even errors of a frame's width has the SD 1 / (fps sqrt 6).
    """
    return height_error_one_frame(flight_s, fps, gravity) / math.sqrt(6)


def contact_error(contact_s: float, fps: float) -> float:
    """Share (0-1) by which one frame changes a contact time in s: 1 / (fps x contact). Arithmetic.

    Raises ValueError unless the contact lasts.
    """
    if contact_s <= 0:
        raise ValueError("A contact has to last.")
    return 1 / (fps * contact_s)


def video_jump(touch_down: int, take_off: int, landing: int, fps: float) -> VideoJump:
    """A rebound from the frames of touch-down, take-off and landing at a number of frames a second.

    Contact and with it both indices are refused under 120 frames a second and warned of under 240, a choice
    by what one frame does. Raises ValueError when the frames are not in order.
    """
    contact, flight = frames_time(touch_down, take_off, fps), frames_time(take_off, landing, fps)
    height = jump_height(flight)
    error = height_error_one_frame(flight, fps)
    if fps < LEAST_FPS:
        return VideoJump(flight, height, error, None, None, None, None, TOO_COARSE, None)
    return VideoJump(
        flight,
        height,
        error,
        contact,
        contact_error(contact, fps),
        flight_over_contact(flight, contact),
        height_over_contact(height, contact),
        None,
        COARSE if fps < SURE_FPS else None,
    )
