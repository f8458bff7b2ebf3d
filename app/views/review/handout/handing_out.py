"""Making a report from Review: the dialog on one side, the record and the file on the other."""

from collections.abc import Callable
from datetime import date, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFileDialog, QWidget

from app.analysis.local_time import known_zone
from app.domain.errors import PacewrightError
from app.domain.keeping import Note
from app.views.review.athlete.spans import Stretch
from app.views.review.handout.dialog import Wanted
from app.views.theme import Look
from app.views.translation import message, tr

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.review.handout.dialog import ReportDialog
    from app.views.worker import RecordKeeper

FILTER = message("PDF files (*.pdf)")
WRITTEN = message("Written to {path}. It holds health data and is not encrypted.")
NOT_WRITTEN = message("{path} cannot be written. Choose a folder that exists and is yours.")
MAKING = message("Making the report …")


class HandingOut:
    """Opens the dialog for an athlete, and writes the report where a person says."""

    def __init__(
        self, keeper: "RecordKeeper", stamp: Callable[[], tuple[datetime, str]], fonts: Path
    ) -> None:
        self._keeper, self._stamp, self._fonts = keeper, stamp, fonts
        self._dialog: ReportDialog | None = None

    def open(self, athlete: str, look: Look, parent: QWidget) -> None:
        """Read which notes there are, and ask what the report is to hold."""
        self._keeper.ask(
            lambda database: tuple(held.thing for held in database.answers.notes_of(athlete)),
            partial(self._show, athlete, look, parent),
        )

    def _show(self, athlete: str, look: Look, parent: QWidget, notes: tuple[Note, ...]) -> None:
        from app.views.review.handout.dialog import ReportDialog

        if self._dialog is not None or not parent.isVisible():
            return
        today = self._today()
        first, _ = Stretch().days(today, None)
        language = QLocale().name().partition("_")[0]
        dialog = self._dialog = ReportDialog(look, athlete, (first, today), language, parent)
        dialog.show_notes(notes)
        dialog.wanted.connect(self._make)
        dialog.finished.connect(self._let_go)
        dialog.open()

    def _make(self, wanted: Wanted) -> None:
        dialog, today = self._dialog, self._today()
        if dialog is None:
            return
        told = tr("{name} {day}.pdf").format(name=file_name(wanted.athlete), day=wanted.last.isoformat())
        path, _ = QFileDialog.getSaveFileName(dialog, tr("Save the report"), told, tr(FILTER))
        if path:
            dialog.say(tr(MAKING))
            fonts = self._fonts
            self._keeper.ask(
                lambda database: written(database, wanted, today, fonts, Path(path)),
                partial(self._written, Path(path), wanted),
            )

    def _written(self, path: Path, wanted: Wanted, notice: str | None) -> None:
        if self._dialog is not None:
            self._dialog.say(notice or tr(WRITTEN).format(path=path))
        if wanted.opened and path.exists():
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

    def _today(self) -> date:
        now, zone = self._stamp()
        return now.astimezone(known_zone(zone)).date()

    def _let_go(self, _result: int) -> None:
        dialog, self._dialog = self._dialog, None
        if dialog is not None:
            dialog.deleteLater()


def written(database: "Database", wanted: Wanted, today: date, fonts: Path, path: Path) -> str | None:
    """Write the report; gives a sentence about what could not be done, None where all could.

    Raises PacewrightError when the record cannot be read or the file not be written.
    """
    from app.reports.reporting import Report, made_report

    record = database.reviewing.athlete(wanted.athlete, wanted.first, wanted.last, today)
    every = (held.thing for held in database.answers.notes_of(wanted.athlete))
    notes = tuple(note for note in every if note.id in wanted.notes)
    rendered = made_report(Report(record, today, notes, wanted.language, sheet=wanted.sheet), fonts)
    try:
        path.write_bytes(rendered.pdf)
    except OSError as error:
        raise PacewrightError(NOT_WRITTEN.format(path=path)) from error
    return rendered.notice


def file_name(name: str) -> str:
    """What somebody is called, as far as a file can be called so."""
    kept = "".join(letter if letter.isalnum() or letter in " -_" else " " for letter in name)
    return " ".join(kept.split())[:60] or "report"
