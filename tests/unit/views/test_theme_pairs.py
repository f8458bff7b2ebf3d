"""Every pair of colours in use holds its contrast in all four schemes, by the formula of WCAG 2.2.

The formula itself is held to published values in tests/outside/test_contrast.py.
"""

from collections.abc import Iterator

import pytest

from app.domain.tempo import Phase
from app.views.contrast import contrast, held, mixed
from app.views.theme import GLANCE_RATIO, GRAPHIC_RATIO, SCHEMES, Scheme

schemes = pytest.mark.parametrize("scheme", SCHEMES, ids=lambda scheme: scheme.name)
TEXT_RATIO = 4.5
Pair = tuple[str, str, str]
"""What it is, its colour, and the colour it stands on."""


def read_from_afar(scheme: Scheme) -> Iterator[Pair]:
    """Side, count, phase and its seconds, on the athlete's ground and on a tile."""
    for ground in (scheme.ground, scheme.panel):
        yield "side and count", scheme.ink, ground
        yield "ready", scheme.waiting, ground
        for phase in Phase:
            for explosive in (False, True):
                yield f"{phase.value}, explosive {explosive}", scheme.text(phase, explosive=explosive), ground


def read(scheme: Scheme) -> Iterator[Pair]:
    """All other words."""
    for ground in (scheme.ground, scheme.panel):
        for name in ("ink", "quiet", "accent", "left", "right", "attention", "notice", "good"):
            yield name, getattr(scheme, name), ground
    yield "words on the strong button", scheme.on_accent, scheme.accent
    yield "number of a scale", scheme.ink, scheme.well
    yield "number chosen on a scale", scheme.ground, scheme.ink


def seen(scheme: Scheme) -> Iterator[Pair]:
    """Lines and shapes that say something; those that only divide are not among them."""
    for phase in Phase:
        for explosive in (False, True):
            yield f"line of {phase.value}", scheme.line(phase, explosive=explosive), scheme.ground
            yield f"{phase.value} to come", scheme.coming(phase, explosive=explosive), scheme.ground
    for ground in (scheme.ground, scheme.panel):
        yield "what is yet to come", scheme.unfilled, ground
        yield "frame and mark of a choice, edge of a card, ring of focus", scheme.quiet, ground
        yield "side bar, tread stood on", scheme.ink, ground
        yield "bar of what is left", scheme.accent, ground


@schemes
@pytest.mark.parametrize(
    ("pairs", "least"), [(read_from_afar, GLANCE_RATIO), (read, TEXT_RATIO), (seen, GRAPHIC_RATIO)]
)
def test_every_pair_holds_its_contrast(scheme: Scheme, pairs: object, least: float) -> None:
    assert callable(pairs)
    short = {
        what: contrast(colour, ground)
        for what, colour, ground in pairs(scheme)
        if contrast(colour, ground) < least
    }
    assert short == {}


def test_the_ratios_are_those_of_the_guidelines() -> None:
    assert (GLANCE_RATIO, TEXT_RATIO, GRAPHIC_RATIO) == (7.0, 4.5, 3.0)


@schemes
def test_what_is_done_fades_below_what_is_to_come_and_that_below_what_is_now(scheme: Scheme) -> None:
    for phase in (Phase.ECCENTRIC, Phase.HOLD, Phase.CONCENTRIC):
        now, coming = scheme.line(phase), scheme.coming(phase)
        done = mixed(now, scheme.ground, 0.36)
        levels = [contrast(colour, scheme.ground) for colour in (done, coming, now)]
        assert levels == sorted(levels)


def test_fading_leaves_the_ground_and_the_colour_at_its_ends() -> None:
    assert mixed("#FF8000", "#000000", 0.0) == "#000000"
    assert mixed("#FF8000", "#000000", 0.5) == "#804000"
    assert mixed("#FF8000", "#000000", 1.0) == "#FF8000"
    assert held("#FF8000", ("#000000",), 3.0) == "#FF8000"
