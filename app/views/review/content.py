"""What Review shows once there are runs: two charts above, the list of runs below."""

from collections.abc import Sequence

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QModelIndex, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QHBoxLayout, QVBoxLayout, QWidget

from app.analysis.adherence import reps_by_week
from app.analysis.load import SessionLoad, loads_by_session
from app.domain.records import RunSummary
from app.views.charts.chart_card import ChartCard
from app.views.review import words
from app.views.review.figures import load_columns, week_columns
from app.views.review.load_chart import WINDOW, LoadChart
from app.views.review.marks import LEGEND
from app.views.review.runs import run_columns
from app.views.review.week_chart import WeekChart
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.card import Card
from app.views.widgets.rows_model import RowsModel
from app.views.widgets.rows_table import RowsTable
from app.views.widgets.word_button import WordButton


class ReviewContent(QWidget):
    """The charts and the list of one set of runs; a run chosen in the list is pointed at above, and back.

    `correct_wanted` carries the UUID of a run that the person wants to correct, `opened` that of one to see.
    """

    correct_wanted = Signal(str)
    opened = Signal(str)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pain = True
        self.weeks = WeekChart()
        self.loads = LoadChart()
        self.week_card = ChartCard(
            tr("Reps done of prescribed, by week"),
            tr("line: 95 % interval, as if reps were independent"),
            self.weeks,
            week_columns(),
        )
        self.load_card = ChartCard(tr("RPE and load, by session"), "", self.loads, load_columns())
        self.list_card = Card(tr("Sessions"))
        self.model: RowsModel[RunSummary] = RowsModel(run_columns(), look.scheme, self)
        self.list = RowsTable(self.model, tr("Sessions"))
        self.list.sort_by(0, Qt.SortOrder.DescendingOrder)
        self.list_card.body.addWidget(self.list)
        self.correct = WordButton(tr("Correct…"))
        self.correct.setEnabled(False)
        self.correct.clicked.connect(self._want_correction)
        self.list_card.header.addWidget(self.correct)
        self._charts = QHBoxLayout()
        self._charts.addWidget(self.week_card, 1)
        self._charts.addWidget(self.load_card, 1)
        self._frame = QVBoxLayout(self)
        self._frame.setContentsMargins(0, 0, 0, 0)
        self._frame.addLayout(self._charts, 10)
        self._frame.addWidget(self.list_card, 11)
        self.list.selectionModel().selectionChanged.connect(self._point_at_chosen)
        self.list.activated.connect(self._open)
        self.loads.chosen.connect(self._choose_pointed)
        self.set_look(look)

    def present(self, *, on: bool, correcting: bool) -> None:
        """Leave out, or show again, what others must not see; `correcting` says whether anything can be."""
        self._pain = not on
        self.correct.setVisible(correcting and not on)

    def show_runs(self, runs: Sequence[RunSummary]) -> None:
        """Show these runs and no others; those chosen stay chosen."""
        chosen = {self.model.rows[index.row()].run_id for index in self.list.selectionModel().selectedRows()}
        self.model.columns = run_columns(offset=words.zones_differ(runs), pain=self._pain)
        self.model.set_rows(runs)
        weeks, sessions = reps_by_week(runs), loads_by_session(runs)
        self.week_card.set_rows(weeks)
        self.load_card.set_rows(sessions)
        self.weeks.show_weeks(weeks)
        self.loads.show_sessions(sessions)
        self.load_card.set_aside(load_note(sessions))
        self.list_card.set_aside(tr(LEGEND) if any(run.corrected for run in runs) else "")
        self._choose_again(chosen)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        gap = look.sizes.body
        self._charts.setSpacing(gap)
        self._frame.setSpacing(gap)
        for card in (self.week_card, self.load_card, self.list_card):
            card.set_look(look)
        self.list.set_look(look)
        self.correct.set_look(look)

    def close_charts(self) -> None:
        """Let go of the drawings before the program ends."""
        self.weeks.close_plots()
        self.loads.close_plots()

    def _point_at_chosen(self, chosen: QItemSelection) -> None:
        self._weigh_choice()
        places = [index.row() for index in chosen.indexes()]
        if places:
            wanted = self.model.rows[places[0]].run_id
            at = [place for place, session in enumerate(self.loads.sessions) if session.run_id == wanted]
            self.loads.point_at(at[0] if at else None)

    def _choose_again(self, run_ids: set[str]) -> None:
        flags = QItemSelectionModel.SelectionFlag.Select | QItemSelectionModel.SelectionFlag.Rows
        for place, run in enumerate(self.model.rows):
            if run.run_id in run_ids:
                self.list.selectionModel().select(self.model.index(place, 0), flags)
        self._weigh_choice()

    def _weigh_choice(self) -> None:
        self.correct.setEnabled(len(self.list.selectionModel().selectedRows()) == 1)

    def _open(self, index: QModelIndex) -> None:
        self.opened.emit(self.model.rows[index.row()].run_id)

    def _want_correction(self) -> None:
        (chosen,) = self.list.selectionModel().selectedRows()
        self.correct_wanted.emit(self.model.rows[chosen.row()].run_id)

    def _choose_pointed(self, place: int) -> None:
        wanted = self.loads.sessions[place].run_id
        row = next(at for at, run in enumerate(self.model.rows) if run.run_id == wanted)
        self.list.selectRow(row)
        self.list.scrollTo(self.model.index(row, 0), QAbstractItemView.ScrollHint.PositionAtCenter)


def load_note(sessions: Sequence[SessionLoad]) -> str:
    """What the load is, how many sessions have none, and how to reach those out of sight."""
    unknown = sum(session.load is None for session in sessions)
    notes = [tr("load in AU = RPE × minutes")]
    notes += [tr("%n session(s) without a load", "", unknown)] if unknown else []
    notes += [tr("drag for earlier ones")] if len(sessions) > WINDOW else []
    return words.DOT.join(notes)
