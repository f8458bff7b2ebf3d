"""The notes about an athlete, the latest first."""

from collections.abc import Sequence

from app.analysis.local_time import known_zone
from app.domain.keeping import Note
from app.views.review import words
from app.views.theme import LIGHT, Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.rows_model import Column, RowsModel
from app.views.widgets.rows_table import RowsTable

NONE = message("No note of this time.")


class NotesCard(Card):
    """A list of notes: when, who, what; the whole text in the tooltip and on Ctrl+C."""

    def __init__(self) -> None:
        super().__init__(tr("Notes"))
        self.model: RowsModel[Note] = RowsModel(note_columns(), LIGHT, self)
        self.table = RowsTable(self.model, tr("Notes"))
        self.body.addWidget(self.table, 1)

    def show_notes(self, notes: Sequence[Note]) -> None:
        """Show these notes."""
        self.model.set_rows(sorted(notes, key=lambda note: note.at, reverse=True))
        self.set_aside("" if notes else tr(NONE))

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        self.table.set_look(look, dense=True)


def note_columns() -> tuple[Column[Note], ...]:
    """When a note was written, by whom, and what it says."""
    return (
        Column(
            tr("When"),
            lambda note: words.moment(note.at.astimezone(known_zone(note.zone))),
            lambda note: note.at,
        ),
        Column(tr("Who"), lambda note: note.who, lambda note: note.who.casefold()),
        Column(tr("Note"), lambda note: " ".join(note.text.split()), lambda note: note.text, wide=True),
    )
