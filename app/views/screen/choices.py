"""What may be chosen of the screens, a row each."""

from collections.abc import Mapping
from dataclasses import replace
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.views.screen.words import (
    CONTRAST_WORDS,
    DIRECTION_WORDS,
    LANGUAGE_WORDS,
    MOTION_WORDS,
    SCHEME_WORDS,
    distances_offered,
    sizes_offered,
)
from app.views.theme import Look
from app.views.translation import tr, translated
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.plain import label

Choice = TypeVar("Choice")

LETTERS = 26


class ScreenChoices(QWidget):
    """Rows to choose colours, contrast, motion, text, distance, language and direction from.

    `changed` follows each change. Each row has a name that stays whatever the language.
    """

    changed = Signal()

    def __init__(self, look: Look, settings: Settings) -> None:
        super().__init__()
        self._look = look
        screen = settings.screen
        self._boxes: dict[str, ChoiceBox] = {}
        grid = self._grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(look.sizes.heading)
        grid.setVerticalSpacing(round(look.sizes.body * 0.7))
        self._row("scheme", tr("Colours"), translated(SCHEME_WORDS), screen.scheme)
        self._row("contrast", tr("Contrast"), translated(CONTRAST_WORDS), screen.contrast)
        self._row("motion", tr("Motion"), translated(MOTION_WORDS), screen.motion)
        self._row("text", tr("Size of text"), sizes_offered(screen.text), screen.text)
        self._row(
            "distance", tr("Your distance"), distances_offered(settings.distance_m), settings.distance_m
        )
        self._row("language", tr("Language"), translated(LANGUAGE_WORDS), screen.language)
        self._row("direction", tr("Lines run"), translated(DIRECTION_WORDS), screen.direction)
        grid.setColumnStretch(1, 1)
        self.setFocusProxy(self._boxes["scheme"])

    @property
    def reached(self) -> str | None:
        """The name of the row that the keys go to."""
        return next((name for name, box in self._boxes.items() if box.hasFocus()), None)

    def reach(self, name: str | None) -> None:
        """Let the keys go to a row, the first where none is named."""
        self._boxes[name or "scheme"].setFocus()

    def put_into(self, settings: Settings) -> Settings:
        """Settings with what is chosen here in its place."""
        chosen = {name: box.currentData() for name, box in self._boxes.items()}
        distance = chosen.pop("distance")
        return replace(settings, distance_m=distance, screen=ScreenSettings(**chosen))

    def _row(self, name: str, title: str, words: Mapping[Choice, str], chosen: Choice) -> None:
        box = ChoiceBox(title, LETTERS, self._look)
        box.setObjectName(name)
        box.set_look(self._look)
        for value, text in words.items():
            box.addItem(text, value)
        box.setCurrentIndex(list(words).index(chosen))
        box.currentIndexChanged.connect(lambda _index: self.changed.emit())
        self._boxes[name] = box
        row = len(self._boxes)
        self._grid.addWidget(self._name(title, box), row, 0)
        self._grid.addWidget(box, row, 1)

    def _name(self, title: str, box: ChoiceBox) -> QLabel:
        name = label(self._look, title, colour=self._look.scheme.quiet)
        name.setBuddy(box)
        name.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return name
