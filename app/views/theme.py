"""The look: colours by what they mean, dark for training and light for the desk, and a window's palette."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtGui import QColor, QFont, QPalette

from app.domain.tempo import Phase
from app.views.contrast import contrast, held, mixed
from app.views.lettering import TypeScale, Weight, lettering

SKY, YELLOW, ORANGE, VERMILLION = "#56B4E9", "#F0E442", "#E69F00", "#D55E00"
BLUE, GREEN = "#0072B2", "#009E73"
GLANCE_RATIO = 7.0
"""Contrast of what is read from afar: WCAG 2.2, 1.4.6, enhanced."""
GRAPHIC_RATIO = 3.0
"""Contrast of what is only seen: WCAG 2.2, 1.4.11."""
MARGIN = 3.2
"""Room at the edges of a page, of running text at its usual size."""
NEXT = 0.62
"""Brightness of what is to come, of that under way."""


class Place(StrEnum):
    """Where a screen is read: from afar in the gym, or at the desk."""

    TRAINING = "training"
    DESK = "desk"


class Lightness(StrEnum):
    """Which schemes a person wants: each place's own, or one of them everywhere."""

    BY_PLACE = "by place"
    LIGHT = "light"
    DARK = "dark"


class Role(StrEnum):
    """What a phase's colour says about the work in it; always beside the word and the slope."""

    ECCENTRIC = "eccentric"
    HOLD = "hold"
    CONCENTRIC = "concentric"
    EXPLOSIVE = "explosive"
    FREE = "free"
    IDLE = "idle"


ROLES: dict[Phase, Role] = {
    Phase.ECCENTRIC: Role.ECCENTRIC,
    Phase.HOLD_LENGTHENED: Role.HOLD,
    Phase.CONCENTRIC: Role.CONCENTRIC,
    Phase.HOLD_SHORTENED: Role.HOLD,
    Phase.HOLD: Role.HOLD,
    Phase.RELAX: Role.IDLE,
    Phase.MOVE: Role.EXPLOSIVE,
    Phase.STICK: Role.HOLD,
    Phase.RESET: Role.IDLE,
    Phase.GO: Role.EXPLOSIVE,
    Phase.OWN: Role.FREE,
    Phase.WORK: Role.FREE,
}


@dataclass(frozen=True, slots=True)
class Scheme:
    """Colours by what they mean, each `#RRGGBB`.

    `ground` is the window, `panel` a card or tile on it; `ink` is read first, `quiet` second; `faint` is for
    lines that only divide. `line_ratio` and `text_ratio` are the least contrasts of coloured lines and words
    on both grounds; what is read from afar holds GLANCE_RATIO, and what only has to be seen GRAPHIC_RATIO.
    """

    name: str
    dark: bool
    ground: str
    panel: str
    ink: str
    quiet: str
    faint: str
    line_ratio: float = 3.0
    text_ratio: float = 4.5

    def line(self, phase: Phase, *, explosive: bool = False) -> str:
        """Colour of a phase's line; `explosive` for a phase written X."""
        return self._line(self._phase(phase, explosive))

    def text(self, phase: Phase, *, explosive: bool = False) -> str:
        """Colour of a phase's word, which is read from afar; `explosive` for a phase written X."""
        return self._glance(self._phase(phase, explosive))

    @property
    def waiting(self) -> str:
        """Words read from afar while there is nothing to do yet."""
        return self._glance(self.quiet)

    @property
    def unfilled(self) -> str:
        """What is yet to come of something counted: treads, blocks, the rest of a bar."""
        return held(self.faint, (self.ground, self.panel), GRAPHIC_RATIO)

    @property
    def well(self) -> str:
        """What the words of a plain button stand on."""
        return self.faint if contrast(self.ink, self.faint) >= self.text_ratio else self.panel

    @property
    def well_edge(self) -> str:
        """The edge of a plain button, where its ground alone does not set it off."""
        return self.quiet if self.well == self.panel else self.well

    def coming(self, phase: Phase, *, explosive: bool = False) -> str:
        """Colour of a phase's line while it is yet to come: half-bright, and plain to see."""
        half = mixed(self.line(phase, explosive=explosive), self.ground, NEXT)
        return held(half, (self.ground,), GRAPHIC_RATIO)

    @property
    def accent(self) -> str:
        """Dots, bars and links."""
        return self._text(SKY if self.dark else BLUE)

    @property
    def on_accent(self) -> str:
        """Words on the accent."""
        return held(self.ground if self.dark else "#FFFFFF", (self.accent,), self.text_ratio)

    @property
    def left(self) -> str:
        """The left side in charts: squares."""
        return self._text(VERMILLION)

    @property
    def right(self) -> str:
        """The right side in charts: circles."""
        return self.accent

    @property
    def attention(self) -> str:
        """What needs a person now: triangles."""
        return self._text(VERMILLION)

    @property
    def notice(self) -> str:
        """What is worth a look: squares."""
        return self._text(ORANGE)

    @property
    def good(self) -> str:
        """What is as it should be: circles, ticks."""
        return self._text(GREEN)

    def _phase(self, phase: Phase, explosive: bool) -> str:
        role = Role.EXPLOSIVE if explosive else ROLES[phase]
        return {
            Role.ECCENTRIC: SKY,
            Role.HOLD: YELLOW,
            Role.CONCENTRIC: ORANGE,
            Role.EXPLOSIVE: VERMILLION,
            Role.FREE: self.ink,
            Role.IDLE: self.quiet,
        }[role]

    def _line(self, colour: str) -> str:
        return held(colour, (self.ground, self.panel), self.line_ratio)

    def _glance(self, colour: str) -> str:
        return held(colour, (self.ground, self.panel), GLANCE_RATIO)

    def _text(self, colour: str) -> str:
        return held(colour, (self.ground, self.panel), self.text_ratio)


DARK = Scheme("dark", True, "#0C141F", "#131E2C", "#F4F7FA", "#8FA1B5", "#2A3A4D")
LIGHT = Scheme("light", False, "#F7F8FA", "#FFFFFF", "#15202B", "#5B6B7C", "#DDE3EA", 4.5)
DARK_HIGH = Scheme("dark, strong", True, "#000000", "#000000", "#FFFFFF", "#D3DBE4", "#8FA1B5", 4.5, 7.0)
LIGHT_HIGH = Scheme("light, strong", False, "#FFFFFF", "#FFFFFF", "#000000", "#36424F", "#5B6B7C", 4.5, 7.0)
SCHEMES = (DARK, LIGHT, DARK_HIGH, LIGHT_HIGH)


def choose(place: Place, lightness: Lightness = Lightness.BY_PLACE, *, high_contrast: bool = False) -> Scheme:
    """Choose the scheme of a place: dark for training, light for the desk, or the one wanted everywhere."""
    dark = lightness is Lightness.DARK or (lightness is Lightness.BY_PLACE and place is Place.TRAINING)
    if high_contrast:
        return DARK_HIGH if dark else LIGHT_HIGH
    return DARK if dark else LIGHT


@dataclass(frozen=True, slots=True)
class Look:
    """What a screen needs to paint itself: colours, letters and their sizes, the distance it is seen from.

    `text` is how many times larger than usual a person wants the letters; `sizes` are that large already.
    `still` asks for less motion.
    """

    scheme: Scheme
    family: str
    sizes: TypeScale
    distance_m: float = 3.0
    text: float = 1.0
    still: bool = False

    @property
    def margin(self) -> int:
        """Room at the edges of a page in pixels; it does not grow with the letters."""
        return round(self.sizes.body * MARGIN / self.text)

    def font(self, pixels: float, weight: Weight = Weight.REGULAR) -> QFont:
        """Letters of a height in pixels, with figures of equal width."""
        return lettering(self.family, pixels, weight)


def palette(scheme: Scheme) -> QPalette:
    """Make the palette that the Fusion style paints ordinary widgets with."""
    roles = QPalette.ColorRole
    colours = {
        roles.Window: scheme.ground,
        roles.WindowText: scheme.ink,
        roles.Base: scheme.panel,
        roles.AlternateBase: scheme.ground,
        roles.Text: scheme.ink,
        roles.Button: scheme.panel,
        roles.ButtonText: scheme.ink,
        roles.BrightText: scheme.attention,
        roles.PlaceholderText: scheme.quiet,
        roles.ToolTipBase: scheme.ink,
        roles.ToolTipText: scheme.ground,
        roles.Highlight: scheme.accent,
        roles.HighlightedText: scheme.on_accent,
        roles.Link: scheme.accent,
        roles.LinkVisited: scheme.accent,
        roles.Mid: scheme.faint,
        roles.Midlight: scheme.faint,
        roles.Dark: scheme.quiet,
        roles.Light: scheme.panel,
        roles.Shadow: scheme.ink if scheme.dark else scheme.quiet,
    }
    made = QPalette()
    for role, colour in colours.items():
        made.setColor(role, QColor(colour))
    for role in (roles.WindowText, roles.Text, roles.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(scheme.quiet))
    return made
