"""Tries typed as frame numbers of a video: what they come to, how coarse that is, and what is refused."""

from decimal import Decimal
from enum import Enum
from itertools import pairwise
from math import isfinite

from app.analysis.jumps import jump_height
from app.analysis.tests_kinds import FieldTest
from app.analysis.video import frames_time, height_error_one_frame, height_error_random, video_jump
from app.views.review.entry.telling import CM_A_METRE, MS, Said, told_of_flight, told_of_parts
from app.views.review.entry.tries import Try, Written, as_decimals, typed_part, typed_try
from app.views.translation import message, pointed

NO_RATE = message("Enter how many frames a second the video has, such as 240.")
TWO_FRAMES = message("Enter two frame numbers, of take-off and landing, such as 412 520.")
THREE_FRAMES = message("Enter three frame numbers, of touch-down, take-off and landing, such as 360 412 520.")
MOVEMENT_FRAMES = message(
    "Enter three frame numbers, of the first movement, take-off and landing, such as 240 412 520."
)
IN_ORDER = message("Frame numbers rise: each of them comes after the one before it.")
HEIGHT_ERROR = message(
    "One frame more or less changes it by {error} cm; by chance it is off by {chance} cm (SD)."
)
CONTACT_ERROR = message("One frame more or less changes the contact time by {share} %.")
FRAMES_NOTE = message("Video at {fps} frames a second, frames {frames}.")


class Frames(Enum):
    """Which frames of a video a test is read from, and what is asked for."""

    FLIGHT = TWO_FRAMES
    CONTACT_AND_FLIGHT = THREE_FRAMES
    MOVEMENT_AND_FLIGHT = MOVEMENT_FRAMES

    @property
    def count(self) -> int:
        """How many frames they are."""
        return 2 if self is Frames.FLIGHT else 3


VIDEO: dict[str, Frames] = {
    "jump_height": Frames.FLIGHT,
    "one_leg_jump_height": Frames.FLIGHT,
    "jump_modified_index": Frames.MOVEMENT_AND_FLIGHT,
    "drop_jump_flight": Frames.CONTACT_AND_FLIGHT,
    "drop_jump_height": Frames.CONTACT_AND_FLIGHT,
    "ten_hops_flight": Frames.CONTACT_AND_FLIGHT,
    "ten_hops_height": Frames.CONTACT_AND_FLIGHT,
}
"""The tests that can be read from a video, by their key."""


def frames_a_second(typed: str) -> float | None:
    """A frame rate as typed; None for what is none."""
    try:
        rate = float(typed.strip().replace(",", "."))
    except ValueError:
        return None
    return rate if isfinite(rate) and 1 <= rate <= 10_000 else None


def video_try(test: FieldTest, typed: str, fps: float | None) -> Try:
    """A try typed as frame numbers of a video; refused and warned of as `video_jump` says.

    Contact and flight are kept as they are, a height as what it comes to.
    """
    kind = VIDEO[test.key]
    if fps is None:
        return Try(problem=Said(NO_RATE))
    parts = typed.replace(",", " ").split()
    if len(parts) != kind.count or not all(part.isdecimal() and len(part) < 10 for part in parts):
        return Try(problem=Said(kind.value))
    frames = [int(part) for part in parts]
    if any(later <= earlier for earlier, later in pairwise(frames)):
        return Try(problem=Said(IN_ORDER))
    if kind is Frames.FLIGHT:
        return _height(test, frames, fps)
    return _of_times(test, kind, frames, fps)


def _height(test: FieldTest, frames: list[int], fps: float) -> Try:
    flight = frames_time(frames[0], frames[1], fps)
    within = typed_try(test, as_decimals(jump_height(flight) * CM_A_METRE))
    if within.problem is not None:
        return within
    aside = _coarse_height(flight, fps), told_of_flight(flight)
    return Try(within.written, within.value, None, aside, _named(frames))


def _of_times(test: FieldTest, kind: Frames, frames: list[int], fps: float) -> Try:
    before, flight = frames_time(frames[0], frames[1], fps), frames_time(frames[1], frames[2], fps)
    asides: list[Said] = []
    if kind is Frames.CONTACT_AND_FLIGHT:
        jump = video_jump(frames[0], frames[1], frames[2], fps)
        if jump.refused is not None or jump.contact_error is None:
            return Try(problem=Said(jump.refused or IN_ORDER))
        asides.append(Said(CONTACT_ERROR, {"share": pointed(f"{jump.contact_error * 100:.1f}")}))
        asides += [Said(jump.warning)] if jump.warning else []
    else:
        asides.append(_coarse_height(flight, fps))
    written = []
    for part, seconds in zip(test.parts, (before, flight), strict=True):
        found = typed_part(part, f"{Decimal(str(round(seconds * MS, 1))):f}")
        if isinstance(found, Said):
            return Try(problem=found)
        written.append(Written(part.key, found, part.unit))
    values = [float(each.value) for each in written]
    value = test.value_of(values)
    told = (*told_of_parts(test, values), *asides)
    return Try(tuple(written), None if value is None else as_decimals(value), None, told, _named(frames))


def _coarse_height(flight: float, fps: float) -> Said:
    errors = (height_error_one_frame(flight, fps), height_error_random(flight, fps))
    one, chance = (pointed(f"{error * CM_A_METRE:.1f}") for error in errors)
    return Said(HEIGHT_ERROR, {"error": one, "chance": chance})


def _named(frames: list[int]) -> str:
    return " ".join(map(str, frames))
