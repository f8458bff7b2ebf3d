"""The mark of a figure that was corrected."""

from collections.abc import Collection

from app.views.translation import message, tr

MARK = "*"
LEGEND = message("* corrected afterwards")


def marked(text: str, corrected: Collection[str], *names: str) -> str:
    """A figure in words, with the mark before it when one of the names it goes by was corrected."""
    return f"{MARK} {text}" if any(name in corrected for name in names) else text


def spoken(text: str, corrected: Collection[str], *names: str) -> str:
    """The same for a screen reader."""
    touched = any(name in corrected for name in names)
    return tr("{figure}, corrected").format(figure=text) if touched else text
