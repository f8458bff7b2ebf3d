"""The answers before a session: held while they are given, then kept, and tried again until they are."""

from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from app.domain.errors import PacewrightError
from app.domain.readiness import Readiness
from app.run.readiness_form import ReadinessForm
from app.views.house import House
from app.views.translation import message, tr
from app.views.worker import RecordKeeper

if TYPE_CHECKING:
    from app.store.database import Database

AGAIN_MS = 3_000
"""What could not be kept is tried again after so long."""
UNKEPT = message("What was answered before the session is not in the record yet.")


class Asking(QObject):
    """Holds the form of an athlete from the first question until it is kept, before a run or before none.

    A form that nobody touched is not kept, unless a run begins.
    """

    def __init__(self, house: House, keeper: RecordKeeper, parent: QObject) -> None:
        super().__init__(parent)
        self._house, self._keeper = house, keeper
        self._form: ReadinessForm | None = None
        self._athlete, self._id, self._zone = "", "", ""
        self._at: datetime | None = None
        self._waiting: dict[str, Readiness] = {}
        self._again = QTimer(self, singleShot=True, interval=AGAIN_MS)
        self._again.timeout.connect(self.try_again)

    @property
    def form(self) -> ReadinessForm | None:
        """The answers so far; None while nothing is asked."""
        return self._form

    def open(self, athlete: str) -> None:
        """Ask an athlete from the first question on."""
        self._form = None
        stamp, new_id = self._house.stamp, self._house.new_id
        if stamp is None or new_id is None:
            return
        self._at, self._zone = stamp()
        self._id, self._athlete, self._form = new_id(self._at), athlete, ReadinessForm()

    def reopen(self) -> bool:
        """Ask the last question again; tells whether anything was asked at all."""
        if self._form is None:
            return False
        self._form = self._form.back()
        return True

    def hold(self, form: ReadinessForm) -> None:
        """Take the answers as they are now."""
        self._form = form

    def close(self, run_id: str | None) -> None:
        """Keep the answers, before the run that began with this id or before none; ask nothing any more."""
        form, self._form = self._form, None
        if form is None or self._at is None or not (form.touched or run_id):
            return
        self._waiting[self._id] = form.readiness(self._id, self._athlete, self._at, self._zone, run_id)
        self.try_again()

    def try_again(self) -> None:
        """Have everything kept that is not yet."""
        for readiness in tuple(self._waiting.values()):
            self._keeper.ask(partial(self._write, readiness), self._heard)

    def finish(self) -> str | None:
        """Try once more, and wait; a sentence when answers are kept nowhere but in memory."""
        self._again.stop()
        sentence = self._keeper.finish()
        if self._waiting:
            self.try_again()
            sentence = self._keeper.finish() or sentence
        return sentence or (tr(UNKEPT) if self._waiting else None)

    def _write(self, readiness: Readiness, database: "Database") -> bool:
        """For the database's thread: keep it; tells whether it could be."""
        try:
            database.answers.keep(readiness)
        except PacewrightError:
            return False
        self._waiting.pop(readiness.id, None)
        return True

    def _heard(self, kept: bool) -> None:
        if not kept and not self._again.isActive():
            self._again.start()
