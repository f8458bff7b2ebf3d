"""A dialog for tests over a window of its own, with the record behind it."""

from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any, cast

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.keeping import Result
from app.store.database import Database
from app.views.lettering import desk_scale, load_fonts
from app.views.review.entry.dialog import TestDialog
from app.views.review.entry.entering import Entering
from app.views.theme import LIGHT, Look
from app.views.worker import RecordKeeper

NOW = datetime(2026, 11, 25, 23, 30, tzinfo=UTC)
ZONE = "Europe/Berlin"
TODAY = date(2026, 11, 26)
"""The day in Berlin at that moment."""
FONTS = Path(__file__).parents[1] / "resources" / "fonts"


class AtOnce:
    """A keeper that answers on the spot."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def ask(self, query: Callable[[Database], Any], then: Callable[[Any], None]) -> None:
        then(query(self._database))


class Entry:
    """The dialog over a window, and the record behind it."""

    def __init__(self, qtbot: QtBot, database: Database) -> None:
        self.qtbot, self.database, self.refreshed = qtbot, database, 0
        self.window = QWidget()
        self.window.resize(1366, 768)
        qtbot.addWidget(self.window)
        self.window.show()
        keeper = cast("RecordKeeper", AtOnce(database))
        self.entering = Entering(keeper, lambda: (NOW, ZONE), wiring.new_run_id, self._refresh)
        look = Look(LIGHT, load_fonts(FONTS), desk_scale(1366))
        self.entering.open("Ines", look, self.window)
        (self.dialog,) = self.window.findChildren(TestDialog)

    def _refresh(self) -> None:
        self.refreshed += 1

    @property
    def results(self) -> list[Result]:
        found = [held.thing for held in self.database.answers.results_of("Ines")]
        return sorted(found, key=lambda result: (result.at, result.attempt))

    def type(self, words: str, *, into: QLineEdit | None = None) -> None:
        where = into or self.dialog.focusWidget()
        assert where is not None
        self.qtbot.keyClicks(where, words)
        self.qtbot.keyClick(where, Qt.Key.Key_Return)

    @property
    def told(self) -> str:
        return self.dialog.form.message.text()
