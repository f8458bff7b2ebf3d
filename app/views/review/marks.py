"""The mark of a figure that was corrected."""

from collections.abc import Collection

MARK = "*"
LEGEND = f"{MARK} corrected afterwards"
SPOKEN = ", corrected"


def marked(text: str, corrected: Collection[str], *names: str) -> str:
    """A figure in words, with the mark before it when one of the names it goes by was corrected."""
    return f"{MARK} {text}" if any(name in corrected for name in names) else text


def spoken(text: str, corrected: Collection[str], *names: str) -> str:
    """The same for a screen reader."""
    return text + SPOKEN if any(name in corrected for name in names) else text
