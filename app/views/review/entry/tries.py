"""Tries at a test as they are typed: a number in its unit, or frames of a video; and what is wrong."""

from dataclasses import dataclass, field
from decimal import Decimal, InvalidOperation
from enum import Enum
from itertools import pairwise
from math import isfinite

from app.analysis.jumps import jump_height
from app.analysis.tests_kinds import NO_UNIT, FieldTest
from app.analysis.video import frames_time, height_error_one_frame, video_jump
from app.views.translation import message, pointed

CM_A_METRE = 100
FIGURES = 4
LONGEST = 1_000
NO_NUMBER = message("“{typed}” is no number. Enter one from {least} to {most}, such as {such}.")
OUT_OF_BOUNDS = message("{typed} lies outside of this test. Enter a number from {least} to {most}.")
NO_RATE = message("Enter how many frames a second the video has, such as 240.")
TWO_FRAMES = message("Enter two frame numbers, of take-off and landing, such as 412 520.")
THREE_FRAMES = message("Enter three frame numbers, of touch-down, take-off and landing, such as 360 412 520.")
IN_ORDER = message("Frame numbers rise: each of them comes after the one before it.")
NO_ENTRY = message("Enter at least one try.")
HEIGHT_ERROR = message("One frame more or less changes it by {error} cm.")
CONTACT_ERROR = message("One frame more or less changes the contact time by {share} %.")
FRAMES_NOTE = message("Video at {fps} frames a second, frames {frames}.")


def plain(text: str) -> str:
    """Words as they were typed or pasted, without what cannot be shown."""
    return "".join(letter for letter in text if letter.isprintable()).strip()


class Frames(Enum):
    """Which frames of a video a test is read from."""

    FLIGHT = 2
    CONTACT_AND_FLIGHT = 3


VIDEO: dict[str, Frames] = {
    "jump_height": Frames.FLIGHT,
    "one_leg_jump_height": Frames.FLIGHT,
    "drop_jump_flight": Frames.CONTACT_AND_FLIGHT,
    "drop_jump_height": Frames.CONTACT_AND_FLIGHT,
    "ten_hops_flight": Frames.CONTACT_AND_FLIGHT,
    "ten_hops_height": Frames.CONTACT_AND_FLIGHT,
}
"""The tests that can be read from a video, by their key."""


@dataclass(frozen=True, slots=True)
class Said:
    """A message with the values that go into it."""

    text: str
    values: dict[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Try:
    """One try: `value` as decimals in the unit of its test, or the `problem`; exactly one is there.

    `aside` says what the frames of a video do to it, `frames` which they were.
    """

    value: str | None
    problem: Said | None = None
    aside: tuple[Said, ...] = ()
    frames: str = ""


def typed_try(test: FieldTest, typed: str) -> Try:
    """A try typed as a number, with a point or a comma."""
    text = typed.strip().replace(",", ".")
    bounds = {"typed": typed.strip(), **_bounds(test)}
    try:
        number = Decimal(text)
    except InvalidOperation:
        return Try(None, Said(NO_NUMBER, bounds))
    if not number.is_finite():
        return Try(None, Said(NO_NUMBER, bounds))
    if not Decimal(str(test.least)) <= number <= Decimal(str(test.most)):
        return Try(None, Said(OUT_OF_BOUNDS, bounds))
    return Try(f"{number:f}")


def frames_a_second(typed: str) -> float | None:
    """A frame rate as typed; None for what is none."""
    try:
        rate = float(typed.strip().replace(",", "."))
    except ValueError:
        return None
    return rate if isfinite(rate) and 1 <= rate <= 10_000 else None


def video_try(test: FieldTest, typed: str, fps: float | None) -> Try:
    """A try typed as frame numbers of a video; refused and warned of as `video_jump` says."""
    kind = VIDEO[test.key]
    if fps is None:
        return Try(None, Said(NO_RATE))
    parts = typed.replace(",", " ").split()
    if len(parts) != kind.value or not all(part.isdecimal() and len(part) < 10 for part in parts):
        return Try(None, Said(TWO_FRAMES if kind is Frames.FLIGHT else THREE_FRAMES))
    frames = [int(part) for part in parts]
    if any(later <= earlier for earlier, later in pairwise(frames)):
        return Try(None, Said(IN_ORDER))
    found = _height(frames, fps) if kind is Frames.FLIGHT else _rebound(test, frames, fps)
    if found.value is None:
        return found
    within = typed_try(test, found.value)
    return within if within.problem else Try(found.value, None, found.aside, " ".join(parts))


def _height(frames: list[int], fps: float) -> Try:
    flight = frames_time(frames[0], frames[1], fps)
    error = height_error_one_frame(flight, fps) * CM_A_METRE
    return Try(
        _text(jump_height(flight) * CM_A_METRE),
        None,
        (Said(HEIGHT_ERROR, {"error": pointed(f"{error:.1f}")}),),
    )


def _rebound(test: FieldTest, frames: list[int], fps: float) -> Try:
    jump = video_jump(frames[0], frames[1], frames[2], fps)
    value = jump.flight_over_contact if test.unit == NO_UNIT else jump.height_over_contact
    if value is None or jump.contact_error is None:
        return Try(None, Said(jump.refused or IN_ORDER))
    asides = [Said(CONTACT_ERROR, {"share": pointed(f"{jump.contact_error * 100:.1f}")})]
    asides += [Said(jump.warning)] if jump.warning else []
    return Try(_text(value), None, tuple(asides))


def _bounds(test: FieldTest) -> dict[str, str]:
    unit = "" if test.unit == NO_UNIT else f" {test.unit}"
    such = (test.least + test.most) / 4
    return {"least": _text(test.least), "most": f"{_text(test.most)}{unit}", "such": _text(such)}


def _text(value: float) -> str:
    """Four significant figures in plain decimals."""
    return f"{Decimal(f'{value:.{FIGURES}g}'):f}"
