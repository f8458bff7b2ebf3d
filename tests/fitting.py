"""Whether a page fits: no words cut, nothing over anything else, nothing outside its place."""

from collections.abc import Callable, Iterator
from itertools import combinations
from typing import Any

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtGui import QAccessible, QFontMetrics, QRegion
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSpinBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QScrollBar,
    QWidget,
)

from app.views.widgets.elided import ElidedLabel
from app.views.widgets.fitted import FittedLabel

_WRAP = Qt.TextFlag.TextWordWrap
SLACK_PX = 1
"""Rounding of letters at a fractional size."""
WORDED = (QLabel, QAbstractButton, QLineEdit, QComboBox)


def misfits(page: QWidget) -> list[str]:
    """What does not fit on a page, each with the widget's name; nothing where all is well."""
    parts = [part for part in page.findChildren(QWidget) if _counts(part, page)]
    return [
        *(f"{named(part)}: {wrong}" for part in parts for wrong in _words(part)),
        *(f"{named(part)} reaches out of its place" for part in parts if _reaches_out(part)),
        *_overlaps(parts, page),
    ]


def nameless(page: QWidget) -> list[str]:
    """What can be reached by keys and has no name for a screen reader."""
    return [
        named(part)
        for part in page.findChildren(QWidget)
        if _counts(part, page) and part.focusPolicy() != Qt.FocusPolicy.NoFocus and not _name_of(part)
    ]


def _name_of(part: QWidget) -> str:
    return QAccessible.queryAccessibleInterface(part).text(QAccessible.Text.Name).strip()


def named(part: QWidget) -> str:
    """A widget as a person finds it: its kind, its words, and what it stands in."""
    words = part.text() if isinstance(part, QLabel | QAbstractButton) else part.accessibleName()
    above = part.parentWidget()
    return f"{type(part).__name__} '{words[:40]}' in {type(above).__name__}"


def _counts(part: QWidget, page: QWidget) -> bool:
    return part.isVisibleTo(page) and not part.isWindow() and not _inner(part)


def _inner(part: QWidget) -> bool:
    """What Qt or a chart makes for itself: scroll bars, viewports, the field of a box."""
    if isinstance(part, QScrollBar) or isinstance(part.parentWidget(), QScrollArea):
        return True
    above = part.parentWidget()
    while above is not None:
        if isinstance(above, QComboBox | QAbstractSpinBox):
            return True
        if isinstance(above, QAbstractScrollArea) and not isinstance(above, QScrollArea):
            return True
        above = above.parentWidget()
    return False


def _words(part: QWidget) -> Iterator[str]:
    """What is cut of a widget's words."""
    for kind, cut in CUTS.items():
        if isinstance(part, kind):
            yield from cut(part)
            return


def _fitted(part: FittedLabel) -> Iterator[str]:
    font, text = part.fitted()
    if text != part.text():
        yield f"cut to '{text}'"
    elif not _within(QFontMetrics(font).boundingRect(_room(part), _WRAP, text).size(), part.size()):
        yield "larger than its place"


def _elided(part: ElidedLabel) -> Iterator[str]:
    """Its words may end in an ellipsis: the tooltip has the whole."""
    if part.height() + SLACK_PX < part.minimumSizeHint().height():
        yield "lower than its letters"


def _button(part: QAbstractButton) -> Iterator[str]:
    if part.text() and not _within(part.sizeHint(), part.size()):
        yield f"needs {_size(part.sizeHint())}, has {_size(part.size())}"


def _line(part: QLineEdit) -> Iterator[str]:
    shown = part.placeholderText()
    if part.fontMetrics().horizontalAdvance(shown) > part.width():
        yield f"has no room for '{shown}'"


def _label(part: QLabel) -> Iterator[str]:
    if not part.text():
        return
    if part.wordWrap():
        needed = QSize(_longest_word(part), part.heightForWidth(part.width()))
    else:
        needed = part.sizeHint()
        if _letters_fit(part):
            needed.setHeight(0)
    if not _within(needed, part.size()):
        yield f"needs {_size(needed)}, has {_size(part.size())}"


def _letters_fit(part: QLabel) -> bool:
    """Whether the letters are seen whole, though their line would be higher: figures have no tails."""
    metrics, cut = part.fontMetrics(), max(part.fontMetrics().height() - part.contentsRect().height(), 0) / 2
    letters = metrics.tightBoundingRect(part.text())
    top, bottom = metrics.ascent() + letters.top(), metrics.ascent() + letters.bottom()
    return top >= cut and bottom <= metrics.height() - cut


def _longest_word(part: QLabel) -> int:
    return max((part.fontMetrics().horizontalAdvance(word) for word in part.text().split()), default=0)


def _within(needed: QSize, given: QSize) -> bool:
    return needed.width() <= given.width() + SLACK_PX and needed.height() <= given.height() + SLACK_PX


def _size(size: QSize) -> str:
    return f"{size.width()} x {size.height()}"


def _room(part: QWidget) -> QRect:
    return QRect(0, 0, part.contentsRect().width(), 100_000)


def _reaches_out(part: QWidget) -> bool:
    """Whether a widget is cut off by what it stands in. What is scrolled may go on below, not beside."""
    above = part.parentWidget()
    if above is None or not part.width() or not part.height():
        return False
    place, room = part.geometry(), above.rect().adjusted(-SLACK_PX, -SLACK_PX, SLACK_PX, SLACK_PX)
    area = above.parentWidget()
    if isinstance(area, QScrollArea) and above is area.viewport():
        sideways = area.horizontalScrollBarPolicy() is not Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        return not sideways and (place.left() < room.left() or place.right() > room.right())
    return not room.contains(place)


def _overlaps(parts: list[QWidget], page: QWidget) -> Iterator[str]:
    """Siblings that lie over one another, and words over words wherever they stand."""
    places = [(part, seen(part, page)) for part in parts]
    for (one, place), (other, beside) in combinations(places, 2):
        related = one.parentWidget() is other.parentWidget()
        worded = isinstance(one, WORDED) and isinstance(other, WORDED)
        if not (related or worded) or one.isAncestorOf(other) or other.isAncestorOf(one):
            continue
        common = place.intersected(beside).intersected(_shapes_meet(one, other, page))
        if common.width() > SLACK_PX and common.height() > SLACK_PX:
            yield f"{named(one)} lies over {named(other)} by {_size(common.size())}"


def _shapes_meet(one: QWidget, other: QWidget, page: QWidget) -> QRect:
    """Where the shapes of two widgets meet; anywhere where one of them has no shape of its own."""
    if one.mask().isEmpty() or other.mask().isEmpty():
        return page.rect()
    shape, shape_beside = QRegion(one.mask()), QRegion(other.mask())
    shape.translate(one.mapTo(page, QPoint(0, 0)))
    shape_beside.translate(other.mapTo(page, QPoint(0, 0)))
    return shape.intersected(shape_beside).boundingRect()


def seen(part: QWidget, page: QWidget) -> QRect:
    """The part of a widget that is seen, in the page's coordinates."""
    place = QRect(part.mapTo(page, QPoint(0, 0)), part.size())
    above = part.parentWidget()
    while above is not None and above is not page:
        place = place.intersected(QRect(above.mapTo(page, QPoint(0, 0)), above.size()))
        above = above.parentWidget()
    return place


CUTS: dict[type[QWidget], Callable[[Any], Iterator[str]]] = {
    FittedLabel: _fitted,
    ElidedLabel: _elided,
    QLabel: _label,
    QAbstractButton: _button,
    QLineEdit: _line,
}
