"""Contrast of two colours, and how a colour is moved until it holds one. Colours are `#RRGGBB` in sRGB."""

import math
from functools import cache

Linear = tuple[float, float, float]

_WEIGHTS: Linear = (0.2126, 0.7152, 0.0722)
_FLARE = 0.05


def luminance(colour: str) -> float:
    """Relative luminance of a colour, 0 for black to 1 for white, by WCAG 2.2."""
    return _weigh(_linear(colour))


def contrast(first: str, second: str) -> float:
    """Contrast ratio (L1 + 0.05) / (L2 + 0.05), lighter over darker, 1 to 21, by WCAG 2.2; not rounded."""
    lighter, darker = sorted((luminance(first), luminance(second)), reverse=True)
    return (lighter + _FLARE) / (darker + _FLARE)


def mixed(colour: str, ground: str, share: float) -> str:
    """A colour faded into a ground, of which `share` (0 to 1) is left."""
    if share >= 1.0:
        return colour
    pairs = ((int(colour[at : at + 2], 16), int(ground[at : at + 2], 16)) for at in (1, 3, 5))
    return "#" + "".join(f"{round(under + (part - under) * share):02X}" for part, under in pairs)


@cache
def held(colour: str, grounds: tuple[str, ...], ratio: float) -> str:
    """Darken a colour on light grounds, lighten it on dark ones, just until it holds `ratio` on each of them.

    Darkening scales linear light and so keeps the hue; lightening mixes white in. The colour comes back as it
    is where it holds already, as black or white where nothing reaches the ratio.
    """
    if all(contrast(colour, ground) >= ratio for ground in grounds):
        return colour
    levels = [luminance(ground) for ground in grounds]
    if sum(levels) / len(levels) > 0.18:
        return _darkened(_linear(colour), (min(levels) + _FLARE) / ratio - _FLARE)
    return _lightened(_linear(colour), (max(levels) + _FLARE) * ratio - _FLARE)


def _darkened(light: Linear, target: float) -> str:
    factor = min(max(target, 0.0) / max(_weigh(light), 1e-9), 1.0)
    return "#" + "".join(f"{math.floor(_encoded(channel * factor) * 255):02X}" for channel in light)


def _lightened(light: Linear, target: float) -> str:
    present = _weigh(light)
    share = min(max((target - present) / max(1.0 - present, 1e-9), 0.0), 1.0)
    mixed = (channel + share * (1.0 - channel) for channel in light)
    return "#" + "".join(f"{min(math.ceil(_encoded(channel) * 255), 255):02X}" for channel in mixed)


def _linear(colour: str) -> Linear:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return _decoded(red), _decoded(green), _decoded(blue)


def _weigh(light: Linear) -> float:
    return sum(weight * channel for weight, channel in zip(_WEIGHTS, light, strict=True))


def _decoded(channel: float) -> float:
    return channel / 12.92 if channel <= 0.04045 else ((channel + 0.055) / 1.055) ** 2.4


def _encoded(channel: float) -> float:
    return channel * 12.92 if channel <= 0.0031308 else 1.055 * channel ** (1 / 2.4) - 0.055
