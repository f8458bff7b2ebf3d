"""What may be chosen of the sound, a row each."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QHBoxLayout, QLabel, QWidget

from app.domain.cue_values import CueLevel
from app.planfile.settings import Settings
from app.views.sound.words import CUE_WORDS, LANGUAGE_WORDS, SPEAKER_WORDS, devices_offered
from app.views.theme import Look
from app.views.translation import tr, translated
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.percent import PercentSlider
from app.views.widgets.plain import label, quiet_button, say

Choice = TypeVar("Choice")

LETTERS = 32
WITH_DEVICE = ("auto", "miniaudio")
"""Speakers that play to an output by name."""


class SoundChoices(QWidget):
    """Rows to choose speaker, output, cues, language and loudness from. `changed` follows each change."""

    changed = Signal()

    def __init__(self, look: Look, settings: Settings, look_again: Callable[[], object]) -> None:
        super().__init__()
        self._look = look
        self._speaker = self._box(tr("Played by"), translated(SPEAKER_WORDS), settings.speaker)
        self._device = self._box(tr("Output"), devices_offered((), settings.device), settings.device)
        self._cues = self._box(tr("What is said"), translated(CUE_WORDS), settings.cues)
        self._language = self._box(tr("Language"), LANGUAGE_WORDS, settings.language)
        self._tones = PercentSlider(look, tr("Loudness of tones"), round(settings.tones * 100))
        self._voice = PercentSlider(look, tr("Loudness of the voice"), round(settings.voice * 100))
        self._mute = QCheckBox(tr("Mute"))
        self._mute.setFont(look.font(look.sizes.body))
        self._mute.setAccessibleName(tr("Mute"))
        self._mute.setChecked(settings.mute)
        self._mute.setStyleSheet(_tick_style(look))
        self._found = label(look, pixels=look.sizes.small, colour=look.scheme.quiet)
        self._again = quiet_button(look, tr("Look again"), look_again)
        self._speaker.currentIndexChanged.connect(self._allow_device)
        self._lay_out()
        self._allow_device()

    def put_into(self, settings: Settings) -> Settings:
        """Settings with what is chosen here in its place."""
        return replace(
            settings,
            speaker=self._speaker.currentData(),
            device=self._device.currentData(),
            cues=CueLevel(self._cues.currentData()),
            language=self._language.currentData(),
            tones=self._tones.percent / 100,
            voice=self._voice.percent / 100,
            mute=self._mute.isChecked(),
        )

    def show_looking(self) -> None:
        """Say that outputs are looked for."""
        say(self._found, tr("looking…"))

    def show_devices(self, names: tuple[str, ...]) -> None:
        """Offer the outputs that were found, keeping the one chosen."""
        chosen = self._device.currentData()
        self._device.blockSignals(True)
        _fill(self._device, devices_offered(names, chosen), chosen)
        self._device.blockSignals(False)
        say(self._found, tr("{n} found").format(n=len(names)) if names else tr("none found"))

    def _allow_device(self) -> None:
        by_name = self._speaker.currentData() in WITH_DEVICE
        self._device.setEnabled(by_name)
        self._again.setEnabled(by_name)

    def _box(self, name: str, words: Mapping[Choice, str], chosen: Choice) -> ChoiceBox:
        box = ChoiceBox(name, LETTERS, self._look)
        box.set_look(self._look)
        _fill(box, words, chosen)
        box.currentIndexChanged.connect(lambda _index: self.changed.emit())
        return box

    def _lay_out(self) -> None:
        look = self._look
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(look.sizes.heading)
        grid.setVerticalSpacing(round(look.sizes.body * 0.9))
        rows: tuple[tuple[str, QWidget], ...] = (
            (tr("Played by"), self._speaker),
            (tr("Output"), self._device),
            (tr("What is said"), self._cues),
            (tr("Language of what is said"), self._language),
            (tr("Loudness of tones"), self._tones),
            (tr("Loudness of the voice"), self._voice),
            (tr("No sound at all"), self._mute),
        )
        places = (0, 1, 3, 4, 5, 6, 7)
        for row, (words, part) in zip(places, rows, strict=True):
            grid.addWidget(self._name(words, part), row, 0)
            grid.addWidget(part, row, 1)
        beside = QHBoxLayout()
        beside.addWidget(self._again)
        beside.addWidget(self._found)
        beside.addStretch(1)
        grid.addLayout(beside, 2, 1)
        self.setTabOrder(self._device, self._again)
        self.setTabOrder(self._again, self._cues)
        grid.setColumnStretch(1, 1)
        grid.setRowStretch(len(rows) + 1, 1)

    def _name(self, words: str, part: QWidget) -> QLabel:
        name = label(self._look, words, colour=self._look.scheme.quiet)
        name.setBuddy(part)
        name.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        return name


def _fill(box: ChoiceBox, words: Mapping[Choice, str], chosen: Choice) -> None:
    box.clear()
    for value, text in words.items():
        box.addItem(text, value)
    box.setCurrentIndex(list(words).index(chosen))


def _tick_style(look: Look) -> str:
    scheme, high = look.scheme, look.sizes.body
    return (
        f"QCheckBox {{ color: {scheme.ink}; padding: 4px;"
        " border: 2px solid transparent; border-radius: 6px; }"
        f"QCheckBox:focus {{ border-color: {scheme.quiet}; }}"
        f"QCheckBox::indicator {{ width: {high}px; height: {high}px; border: 2px solid {scheme.quiet};"
        f" border-radius: 5px; background: {scheme.panel}; }}"
        f"QCheckBox::indicator:checked {{ background: {scheme.ink}; border: 5px solid {scheme.quiet}; }}"
    )
