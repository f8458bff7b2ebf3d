"""Planning sessions from Review: the dialog on one side, the record on the other."""

from collections.abc import Callable, Sequence
from datetime import date, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFileDialog, QWidget

from app.analysis.local_time import known_zone
from app.domain.planned import DueSession
from app.views.review import words
from app.views.review.handout.handing_out import file_name
from app.views.review.planning.book import NewSession, Shown, Stamp, plan_session, read_days, write_calendar
from app.views.theme import Look
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.review.planning.dialog import PlanDialog
    from app.views.worker import RecordKeeper

PLANNED = message("Planned: {plan}, from {day}, for {names}.")
EXCUSED = message("Excused. It counts neither as done nor as missed.")
DUE_AGAIN = message("It is due again.")
MOVED = message("Moved to {day}.")
ENDED = message("It comes no more from {day} on. What was before stays.")
FILTER = message("Calendar files (*.ics)")
WRITTEN = message("Written to {path}.")


class Planner:
    """Opens the dialog for an athlete, and writes down what is planned; `after` is called after each."""

    def __init__(
        self,
        keeper: "RecordKeeper",
        stamp: Callable[[], Stamp],
        new_id: Callable[[datetime], str],
        plans: tuple[Sequence[Path], Callable[[Path], str]],
        after: Callable[[], object],
    ) -> None:
        self._keeper, self._stamp, self._new_id, self._after = keeper, stamp, new_id, after
        self._plans, self._title_of = plans
        self._dialog: PlanDialog | None = None

    def open(self, athlete: str, look: Look, parent: QWidget) -> None:
        """Let sessions of an athlete be planned, beginning with the present month."""
        from app.views.review.planning.dialog import PlanDialog

        if self._dialog is not None or not parent.isVisible():
            return
        dialog = self._dialog = PlanDialog(look, athlete, self._today(), self._plans, self._title_of, parent)
        dialog.went.connect(self._read)
        dialog.planned.connect(self._plan)
        dialog.excused.connect(self._excuse)
        dialog.due_again.connect(self._make_due)
        dialog.moved.connect(self._move)
        dialog.ended.connect(self._end)
        dialog.exported.connect(self._export)
        dialog.finished.connect(self._let_go)
        dialog.open()
        self._read()

    def _read(self) -> None:
        self._write(lambda _database: None, "")

    def _plan(self, new: NewSession) -> None:
        stamp, new_id = self._stamp(), self._new_id
        told = tr(PLANNED).format(
            plan=new.plan_title, day=words.dated(new.day), names=", ".join(new.athletes)
        )
        self._write(lambda database: plan_session(database, new, stamp, new_id), told)

    def _excuse(self, due: DueSession, reason: str) -> None:
        of, stamp = _named(due), self._stamp()
        self._write(lambda database: database.planned.excuse(*of, reason, *stamp), tr(EXCUSED))

    def _make_due(self, due: DueSession) -> None:
        of, stamp = _named(due), self._stamp()
        self._write(lambda database: database.planned.make_due(*of, *stamp), tr(DUE_AGAIN))

    def _move(self, due: DueSession, to_day: date) -> None:
        of, stamp = _named(due), self._stamp()
        told = tr(MOVED).format(day=words.dated(to_day))
        self._write(lambda database: database.planned.move(*of, to_day, *stamp), told)

    def _end(self, due: DueSession) -> None:
        of, stamp = _named(due), self._stamp()
        told = tr(ENDED).format(day=words.dated(of[1]))
        self._write(lambda database: database.planned.end(*of, *stamp), told)

    def _export(self) -> None:
        dialog = self._dialog
        if dialog is None:
            return
        told = f"{file_name(dialog.athlete)}.ics"
        path, _ = QFileDialog.getSaveFileName(dialog, tr("Save the calendar"), told, tr(FILTER))
        if path:
            athlete, written = dialog.athlete, tr(WRITTEN).format(path=path)
            self._write(lambda database: write_calendar(database, athlete, Path(path)), written)

    def _write(self, work: "Callable[[Database], object]", told: str) -> None:
        """Do something in the record, and show the days in sight as they stand since."""
        dialog = self._dialog
        if dialog is None:
            return
        athlete, (first, last), today = dialog.athlete, dialog.grid.span, self._today()

        def done(database: "Database") -> Shown:
            work(database)
            return read_days(database, athlete, first, last, today)

        self._keeper.ask(done, partial(self._show, told, (first, last)))

    def _show(self, told: str, days: tuple[date, date], shown: Shown) -> None:
        if self._dialog is not None and self._dialog.grid.span == days:
            self._dialog.show_days(shown)
        if told and self._dialog is not None:
            self._dialog.say(told)
            self._after()

    def _today(self) -> date:
        now, zone = self._stamp()
        return now.astimezone(known_zone(zone)).date()

    def _let_go(self, _result: int) -> None:
        dialog, self._dialog = self._dialog, None
        if dialog is not None:
            dialog.deleteLater()


def _named(due: DueSession) -> tuple[str, date]:
    """What a session is named by in the record: its id and the day as first planned."""
    return due.occurrence.planned.id, due.occurrence.first_day
