"""The words of the screens in a person's language, by Qt Linguist.

The English text is the message's name. `tr` gives its words when they are shown; `message` marks a text that
is kept somewhere until then, so that it is found when the list of messages is made.
"""

from collections.abc import Mapping
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTranslator

from app.planfile.screen_settings import SYSTEM

Choice = TypeVar("Choice")

ENGLISH = "en"
SPOKEN = (ENGLISH, "de")
"""Languages the screens can be had in."""
MOST_FIGURES = 12


def tr(text: str, comment: str = "", n: int = -1) -> str:
    """The words for an English text in the language of the screens.

    `comment` tells apart texts that are alike in English only. `n` is put in for `%n` and chooses the plural:
    in English of what ends in `(s)`, elsewhere of the forms that the list of messages has.
    """
    words = QCoreApplication.translate("", text, comment or None, n)
    return words if n < 0 else words.replace("(s)", "" if n == 1 else "s")


def message(text: str) -> str:
    """Mark a text that is translated where it is shown; gives the text itself."""
    return text


def translated(words: Mapping[Choice, str]) -> dict[Choice, str]:
    """The choices with their words in the language of the screens."""
    return {choice: tr(text) for choice, text in words.items()}


def language_of(wanted: str) -> str:
    """The language of the screens: as wanted, else the first of the system's that they can be had in."""
    if wanted != SYSTEM:
        return wanted
    known = (tag.partition("-")[0] for tag in QLocale.system().uiLanguages())
    return next((language for language in known if language in SPOKEN), ENGLISH)


def locale_of(language: str) -> QLocale:
    """How numbers and dates are written: as the system has it where it speaks that language."""
    system, plain = QLocale.system(), QLocale(language)
    return system if system.language() == plain.language() else plain


def figure(number: float) -> str:
    """A number as it is written in the language of the screens, with as few places as it needs."""
    locale = QLocale()
    locale.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
    return locale.toString(float(number), "g", MOST_FIGURES)


def pointed(figures: str) -> str:
    """Figures written with a point, with the one of the language of the screens in its place."""
    return figures.replace(".", QLocale().decimalPoint())


class Tongue(QObject):
    """Puts the program's words, and those of Qt's own buttons, into one language; `end` takes them back."""

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._translators: list[QTranslator] = []
        self._before = QLocale()
        self.language = ENGLISH

    def speak(self, language: str) -> None:
        """Use a language from now on; what is shown already stays as it is."""
        self._be_silent()
        self.language = language
        QLocale.setDefault(locale_of(language))
        qt = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
        for name, folder in (("qtbase", qt), ("pacewright", str(self._folder))):
            translator = QTranslator(self)
            if translator.load(f"{name}_{language}", folder):
                QCoreApplication.installTranslator(translator)
                self._translators.append(translator)

    def end(self) -> None:
        """Speak English again, and write numbers as before."""
        self._be_silent()
        self.language = ENGLISH
        QLocale.setDefault(self._before)

    def _be_silent(self) -> None:
        for translator in self._translators:
            QCoreApplication.removeTranslator(translator)
            translator.deleteLater()
        self._translators.clear()
