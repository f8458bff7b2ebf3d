"""Entering tests from Review: the dialog on one side, the record on the other."""

from collections.abc import Callable
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.analysis.local_time import known_zone
from app.domain.correctable import Value
from app.domain.corrected import Held
from app.domain.corrections import Correction
from app.domain.keeping import Result
from app.views.review import words
from app.views.review.entry.form import SIDES, entry_name
from app.views.review.entry.reach import REACHES, reach_words
from app.views.review.entry.results import Entered, Known, NewId, change_of, keep_entered, read_known
from app.views.review.figure_names import unit_words
from app.views.theme import Look
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.review.entry.dialog import TestDialog
    from app.views.worker import RecordKeeper

KEPT = message("Kept: {test}, {side}, {day}: {values}.")
CORRECTED = message("Corrected. What was recorded stays beside it.")
TAKEN_BACK = message("Taken back.")
UNCHANGED = message("That value holds already.")


class Entering:
    """Opens the dialog for an athlete, and keeps what is entered; `after` is called once it was kept."""

    def __init__(
        self,
        keeper: "RecordKeeper",
        stamp: Callable[[], tuple[datetime, str]],
        new_id: NewId,
        after: Callable[[], object],
    ) -> None:
        self._keeper, self._stamp, self._new_id, self._after = keeper, stamp, new_id, after
        self._dialog: TestDialog | None = None

    def open(self, athlete: str, look: Look, parent: QWidget) -> None:
        """Read what is known, and let a test be entered."""
        self._keeper.ask(
            lambda database: read_known(database, athlete), partial(self._show, athlete, look, parent)
        )

    def _show(self, athlete: str, look: Look, parent: QWidget, known: Known) -> None:
        from app.views.review.entry.dialog import TestDialog

        if self._dialog is not None or not parent.isVisible():
            return
        now, zone = self._stamp()
        today = now.astimezone(known_zone(zone)).date()
        dialog = self._dialog = TestDialog(look, athlete, today, parent)
        dialog.entered.connect(self._keep)
        dialog.corrected.connect(partial(self._correct, athlete))
        dialog.taken_back.connect(partial(self._take_back, athlete))
        dialog.finished.connect(self._let_go)
        dialog.show_known(known)
        dialog.open()

    def _keep(self, entered: Entered) -> None:
        stamp, new_id = self._stamp(), self._new_id
        self._keeper.ask(
            lambda database: keep_entered(database, entered, stamp, new_id), partial(self._kept, entered)
        )

    def _kept(self, entered: Entered, known: Known) -> None:
        if self._dialog is not None:
            self._dialog.show_known(known)
            self._dialog.go_on()
            told = [kept_words(entered)]
            if entered.test.key in REACHES:
                told += reach_words(known, entered.side)
            self._dialog.form.say("\n".join(told))
        self._after()

    def _correct(
        self, athlete: str, held: Held[Result], field: str, value: Value, who: str, why: str
    ) -> None:
        change = change_of(held, field, value, who, why, self._stamp())

        def work(database: "Database") -> tuple[Known, str]:
            written = database.corrections.correct(change)
            return read_known(database, athlete), UNCHANGED if written is None else CORRECTED

        self._keeper.ask(work, self._was_corrected)

    def _take_back(self, athlete: str, correction: Correction, who: str, why: str) -> None:
        at, zone = self._stamp()

        def work(database: "Database") -> tuple[Known, str]:
            written = database.corrections.undo(correction.id, who, why, at, zone)
            return read_known(database, athlete), UNCHANGED if written is None else TAKEN_BACK

        self._keeper.ask(work, self._was_corrected)

    def _was_corrected(self, came: tuple[Known, str]) -> None:
        known, sentence = came
        if self._dialog is not None:
            self._dialog.show_known(known)
            self._dialog.results.say(tr(sentence))
        self._after()

    def _let_go(self, _result: int) -> None:
        dialog, self._dialog = self._dialog, None
        if dialog is not None:
            dialog.deleteLater()


def kept_words(entered: Entered) -> str:
    """What was kept, so that a slip is seen at once."""
    units = {written.unit for tried in entered.tries for written in tried}
    unit = f" {unit_words(units.pop())}".rstrip() if len(units) == 1 else ""
    name = entry_name(entered.test)
    return tr(KEPT).format(
        test=f"{name}: {entered.test.lift}" if entered.test.lift else name,
        side=tr(SIDES[entered.side]),
        day=words.dated(entered.day),
        values=", ".join(" ".join(written.value for written in tried) for tried in entered.tries) + unit,
    )
