"""The words for what may be chosen of the screens."""

from app.planfile.screen_settings import SYSTEM
from app.views.appearance import SystemWish
from app.views.lettering import GLANCE_ARCMIN
from app.views.translation import figure, message, tr

SCHEME_WORDS: dict[str, str] = {
    "by place": message("dark for training, light at the desk"),
    SYSTEM: message("as the computer is set"),
    "light": message("light everywhere"),
    "dark": message("dark everywhere"),
}
CONTRAST_WORDS: dict[str, str] = {
    SYSTEM: message("as the computer is set"),
    "normal": message("normal"),
    "high": message("strong"),
}
MOTION_WORDS: dict[str, str] = {
    SYSTEM: message("as the computer is set"),
    "full": message("the line moves"),
    "reduced": message("the line stands, a marker moves"),
}
LANGUAGE_WORDS: dict[str, str] = {SYSTEM: message("as the computer is set"), "en": "English", "de": "Deutsch"}
DIRECTION_WORDS: dict[str, str] = {
    SYSTEM: message("as the language is read"),
    "ltr": message("from left to right"),
    "rtl": message("from right to left"),
}
TEXT_PERCENT = (100, 125, 150, 175, 200)
DISTANCES_M = (0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0, 30.0)


def sizes_offered(chosen: int) -> dict[int, str]:
    """Sizes of text to choose from, the chosen one in any case."""
    return {percent: tr("{n} %").format(n=percent) for percent in sorted({*TEXT_PERCENT, chosen})}


def distances_offered(chosen: float) -> dict[float, str]:
    """Distances to choose from, the chosen one in any case."""
    return {
        metres: tr("{metres} m").format(metres=figure(metres)) for metres in sorted({*DISTANCES_M, chosen})
    }


def unheard_words(system: SystemWish) -> str:
    """What the computer does not say of its settings, in a sentence; nothing where all is said."""
    if None not in (system.dark, system.strong, system.still):
        return ""
    return tr(
        "Where the computer does not say how it is set, colours go by place, contrast is normal, motion full."
    )


def measured_words(width_mm: float, height_mm: float) -> str:
    """How large the screen says it is."""
    return tr("This screen is {width} × {height} mm.").format(
        width=figure(round(width_mm)), height=figure(round(height_mm))
    )


def seen_words(distance_m: float, height_mm: float, arcmin: float) -> str:
    """How large the three huge things are, and how that looks from the distance."""
    enough = tr("From {metres} m the count is {height} mm high: {angle} arc minutes.")
    short = tr(
        "From {metres} m the count is {height} mm high: {angle} arc minutes, fewer than {least}. "
        "Come closer, or use a larger screen."
    )
    return (enough if arcmin >= GLANCE_ARCMIN else short).format(
        metres=figure(distance_m),
        height=figure(round(height_mm, 1)),
        angle=figure(round(arcmin, 1)),
        least=figure(GLANCE_ARCMIN),
    )
