"""What the program remembers on this computer from start to start: plans led lately, the window's place."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings
from PySide6.QtWidgets import QWidget

FILE_NAME = "window.ini"
MOST_PLANS = 6
MOST_UNASKED = 200
_PLANS, _UNASKED, _PLACE = "plans/recent", "ratings/not_asked_again", "window/place"
_BETWEEN = "\n"


class Remembered:
    """A small file in the state folder. Whatever stands in it, it can be read; what is no word of it is not.

    Without a folder everything is forgotten at the end.
    """

    def __init__(self, folder: Path | None) -> None:
        self._folder = folder
        self._plans: tuple[tuple[Path, str], ...] = ()
        self._unasked: tuple[str, ...] = ()
        kept = self._file()
        if kept is not None:
            self._plans = tuple(found for line in _lines(kept, _PLANS) if (found := _plan(line)) is not None)
            self._unasked = tuple(_lines(kept, _UNASKED))

    def recent(self, athlete: str | None = None) -> tuple[Path, ...]:
        """The plans that were led lately, those of an athlete first, each the latest first."""
        mine = [path for path, name in self._plans if name == athlete]
        return tuple(dict.fromkeys((*mine, *(path for path, _ in self._plans))))[:MOST_PLANS]

    def last(self, athlete: str) -> Path | None:
        """The plan that an athlete was led through last."""
        return next((path for path, name in self._plans if name == athlete), None)

    def led(self, path: Path, athlete: str) -> None:
        """Remember that an athlete was led through a plan; a path that no file of words can hold is not."""
        if not _plain(str(path)):
            return
        entry = (path.absolute(), athlete)
        self._plans = (entry, *(each for each in self._plans if each != entry))[: MOST_PLANS * 8]
        self._keep_plans()

    def drop_missing(self) -> int:
        """Forget the plans whose files are gone; how many there were."""
        there = tuple(each for each in self._plans if each[0].is_file())
        gone = {path for path, _ in self._plans} - {path for path, _ in there}
        if gone:
            self._plans = there
            self._keep_plans()
        return len(gone)

    @property
    def unasked(self) -> frozenset[str]:
        """What is not to be asked again."""
        return frozenset(self._unasked)

    def leave_unasked(self, name: str) -> None:
        """Never ask this again on this computer."""
        self._unasked = (name, *(each for each in self._unasked if each != name))[:MOST_UNASKED]
        self._put(_UNASKED, self._unasked)

    def place(self, window: QWidget) -> bool:
        """Put a window where it was, on a screen that is there; False when nothing is remembered."""
        kept = self._file()
        place = None if kept is None else kept.value(_PLACE)
        return isinstance(place, QByteArray) and not place.isEmpty() and window.restoreGeometry(place)

    def keep_place(self, window: QWidget) -> None:
        """Remember where a window is."""
        kept = self._file()
        if kept is not None:
            kept.setValue(_PLACE, window.saveGeometry())
            kept.sync()

    def _keep_plans(self) -> None:
        self._put(_PLANS, [f"{path}\t{athlete}" for path, athlete in self._plans])

    def _put(self, key: str, lines: Sequence[str]) -> None:
        kept = self._file()
        if kept is not None:
            kept.setValue(key, _BETWEEN.join(lines))
            kept.sync()

    def _file(self) -> QSettings | None:
        if self._folder is None:
            return None
        return QSettings(str(self._folder / FILE_NAME), QSettings.Format.IniFormat)


def _lines(kept: QSettings, key: str) -> list[str]:
    found = kept.value(key)
    return found.split(_BETWEEN) if isinstance(found, str) and found else []


def _plain(text: str) -> bool:
    return text.isprintable()


def _plan(line: str) -> tuple[Path, str] | None:
    path, tab, athlete = line.partition("\t")
    return (Path(path), athlete) if tab and path else None
