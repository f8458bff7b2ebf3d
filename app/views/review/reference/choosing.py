"""Choosing the reference side from Review: the dialog on one side, the record on the other."""

from collections.abc import Callable
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.domain.corrections import Correction
from app.domain.plan import Side
from app.views.review.reference.known import KnownReference, choose_reference, read_reference
from app.views.theme import Look
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.review.reference.dialog import ReferenceDialog
    from app.views.worker import RecordKeeper

KEPT, TAKEN_BACK = message("Kept, with who and why."), message("Taken back.")
UNCHANGED = message("That side holds already.")


class Choosing:
    """Opens the dialog for an athlete, and keeps what is chosen; `after` is called once it was kept."""

    def __init__(
        self, keeper: "RecordKeeper", stamp: Callable[[], tuple[datetime, str]], after: Callable[[], object]
    ) -> None:
        self._keeper, self._stamp, self._after = keeper, stamp, after
        self._who = ""
        self._dialog: ReferenceDialog | None = None

    def open(self, athlete: str, look: Look, parent: QWidget) -> None:
        """Read what is known, and let a side be chosen."""
        self._keeper.ask(
            lambda database: read_reference(database, athlete), partial(self._show, look, parent)
        )

    def _show(self, look: Look, parent: QWidget, known: KnownReference) -> None:
        from app.views.review.reference.dialog import ReferenceDialog

        if self._dialog is not None or not parent.isVisible():
            return
        dialog = self._dialog = ReferenceDialog(look, self._who, parent)
        dialog.chosen.connect(partial(self._choose, known))
        dialog.taken_back.connect(partial(self._take_back, known.athlete))
        dialog.finished.connect(self._let_go)
        dialog.show_known(known)
        dialog.open()

    def _choose(self, known: KnownReference, side: Side | None, who: str, why: str) -> None:
        self._who, stamp = who, self._stamp()

        def work(database: "Database") -> tuple[KnownReference, str]:
            written = choose_reference(database, known, side, who, why, stamp)
            return read_reference(database, known.athlete), KEPT if written else UNCHANGED

        self._keeper.ask(work, self._written)

    def _take_back(self, athlete: str, correction: Correction, who: str, why: str) -> None:
        self._who, (at, zone) = who, self._stamp()

        def work(database: "Database") -> tuple[KnownReference, str]:
            database.corrections.undo(correction.id, who, why, at, zone)
            return read_reference(database, athlete), TAKEN_BACK

        self._keeper.ask(work, self._written)

    def _written(self, came: tuple[KnownReference, str]) -> None:
        known, sentence = came
        if self._dialog is not None:
            self._dialog.show_known(known)
            self._dialog.say(tr(sentence))
        self._after()

    def _let_go(self, _result: int) -> None:
        dialog, self._dialog = self._dialog, None
        if dialog is not None:
            dialog.deleteLater()
