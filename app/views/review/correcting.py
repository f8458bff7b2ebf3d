"""Correcting a run from Review: the dialog on one side, the record on the other."""

from collections.abc import Callable
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.domain.correctable import Value
from app.domain.corrections import Change, Correction
from app.views.review.details import RunDetails, details_of
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.worker import RecordKeeper

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.review.correct_dialog import CorrectDialog
    from app.views.review.correct_fields import Field

CORRECTED, TAKEN_BACK = message("Corrected."), message("Taken back.")
UNCHANGED = message("That value holds already.")

Stamp = Callable[[], tuple[datetime, str]]
"""Gives the present moment, and the name of the time zone."""


class Correcting:
    """Opens the dialog for a run, carries what is wanted there to the record, and shows what came of it.

    `after` is called each time something was corrected.
    """

    def __init__(self, keeper: RecordKeeper, stamp: Stamp, after: Callable[[], object]) -> None:
        self._keeper, self._stamp, self._after = keeper, stamp, after
        self._who = ""
        self._dialog: CorrectDialog | None = None

    def open(self, run_id: str, look: Look, parent: QWidget) -> None:
        """Read a run, and let it be corrected."""
        self._keeper.ask(lambda database: details_of(database, run_id), partial(self._show, look, parent))

    def _show(self, look: Look, parent: QWidget, details: RunDetails) -> None:
        from app.views.review.correct_dialog import CorrectDialog

        if self._dialog is not None or not parent.isVisible():
            return
        dialog = self._dialog = CorrectDialog(look, self._who, parent)
        dialog.corrected.connect(self._correct)
        dialog.taken_back.connect(self._take_back)
        dialog.finished.connect(self._let_go)
        dialog.show_details(details)
        dialog.open()

    def _correct(self, field: "Field", value: Value, who: str, why: str) -> None:
        change = Change(field.target, field.name, value, who, why, *self._stamp())
        self._write(who, change.target.of, lambda database: database.corrections.correct(change), CORRECTED)

    def _take_back(self, correction: Correction, who: str, why: str) -> None:
        at, zone = self._stamp()
        self._write(
            who,
            correction.change.target.of,
            lambda database: database.corrections.undo(correction.id, who, why, at, zone),
            TAKEN_BACK,
        )

    def _write(
        self, who: str, run_id: str, write: "Callable[[Database], Correction | None]", done: str
    ) -> None:
        self._who = who

        def work(database: "Database") -> tuple[RunDetails, str]:
            written = write(database)
            return details_of(database, run_id), UNCHANGED if written is None else done

        self._keeper.ask(work, self._written)

    def _written(self, came: tuple[RunDetails, str]) -> None:
        details, sentence = came
        if self._dialog is not None:
            self._dialog.show_details(details)
            self._dialog.say(tr(sentence))
        self._after()

    def _let_go(self, _result: int) -> None:
        dialog, self._dialog = self._dialog, None
        if dialog is not None:
            dialog.deleteLater()
