"""The room of the review without a record behind it: handed invented answers, it notes what it asks."""

from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from app.domain.fold import Closing
from app.domain.keeping import Note
from app.domain.plan import Side, StageKind
from app.domain.records import (
    BoutOutcome,
    BoutPrescribed,
    BoutRecord,
    RepRecord,
    RunHeader,
    RunOutcome,
    SkipReason,
)
from app.domain.reviewed import AthleteRecord
from app.views.lettering import desk_scale, load_fonts
from app.views.review.athlete.spans import Stretch
from app.views.review.athlete.view import athlete_view
from app.views.review.room import Asks, ReviewRoom
from app.views.review.run.view import RunView, bout_lines
from app.views.review.squad.line import squad_lines
from app.views.theme import LIGHT, Look, Scheme
from tests.squads import members, squad
from tests.summaries import summary

FONTS = Path(__file__).parents[1] / "resources" / "fonts"
NOTE = "Sharp pain under the kneecap, stopped."


class Room:
    """A room in sight. Asked for somebody, it is answered at once out of `records`."""

    def __init__(
        self,
        qtbot: QtBot,
        records: Sequence[AthleteRecord] | None = None,
        *,
        scheme: Scheme = LIGHT,
        size: tuple[int, int] = (1366, 768),
    ) -> None:
        self.records = {each.athlete: each for each in (squad(weeks=12) if records is None else records)}
        self.left, self.corrected, self.runs, self.done = 0, list[str](), list[str](), list[str]()
        self.stretches: list[Stretch] = []
        self.referred: list[str] = []
        asks = Asks(
            self._squad,
            self._athlete,
            self._run,
            lambda: None,
            self._leave,
            lambda run_id, _look: self.corrected.append(run_id),
            (("Plan sessions", self.done.append),),
            reference=self.referred.append,
        )
        self.widget = ReviewRoom(Look(scheme, load_fonts(FONTS), desk_scale(size[0])), asks)
        qtbot.addWidget(self.widget)
        self.widget.resize(*size)
        self.widget.show()
        self.widget.activateWindow()
        self.widget.setFocus()
        QApplication.processEvents()

    def press(self, *keys: Qt.Key) -> "Room":
        """Press keys where the focus is, as a person does."""
        for key in keys:
            focused: QWidget | None = self.widget.focusWidget()
            QTest.keyClick(focused or self.widget, key)
            QApplication.processEvents()
        return self

    def open(self, name: str) -> "Room":
        """Go to an athlete."""
        self.widget.open_athlete(name)
        QApplication.processEvents()
        return self

    def texts(self) -> str:
        """Every word in sight or behind it: labels, names, descriptions, tooltips, cells of tables."""
        found = []
        for part in self.widget.findChildren(QWidget):
            if part.isVisibleTo(self.widget):
                text = getattr(part, "text", None)
                found += [part.accessibleName(), part.accessibleDescription(), part.toolTip()]
                found += [str(text())] if callable(text) and not isinstance(part, ReviewRoom) else []
                model = getattr(part, "model", None)
                found += _cells(model()) if callable(model) and hasattr(part, "horizontalHeader") else []
        return "\n".join(found)

    def close(self) -> None:
        """Let go of the drawings."""
        self.widget.close_charts()

    def _squad(self) -> None:
        self.widget.show_squad(squad_lines(members(tuple(self.records.values()))))

    def _athlete(self, name: str, stretch: Stretch, pain: bool) -> None:
        self.stretches.append(stretch)
        record = self.records[name]
        note = Note("note", name, NOTE, "Coach", datetime(2026, 11, 18, 17, tzinfo=UTC), "Europe/Copenhagen")
        runs = [summary(run_id=each.run_id, athlete=name, pain=each.pain) for each in record.sessions]
        self.widget.show_athlete(athlete_view(record, (note,), runs, (), pain=pain))

    def _run(self, run_id: str) -> None:
        self.runs.append(run_id)
        self.widget.show_run(run_view())

    def _leave(self) -> None:
        self.left += 1


def _cells(model: object) -> list[str]:
    from PySide6.QtCore import QAbstractItemModel

    if not isinstance(model, QAbstractItemModel):
        return []
    roles = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole)
    return [
        str(model.index(row, column).data(role))
        for row in range(model.rowCount())
        for column in range(model.columnCount())
        for role in roles
    ]


def asked(bout: int, side: Side = Side.LEFT, **changes: object) -> BoutPrescribed:
    """Eight reps of a step-down on one side, led."""
    values: dict[str, object] = {
        "bout": bout,
        "stage_name": "Catch",
        "stage_kind": StageKind.STABILITY,
        "exercise": "Step-down",
        "set_number": 1,
        "side": side,
        "low": 8,
        "high": 8,
        "work_ms": 40_000,
        "contacts_per_rep": 0,
        "load_kg": None,
    }
    return BoutPrescribed(**(values | changes))  # type: ignore[arg-type]


def done(bout: int, reps: int = 8, **changes: object) -> BoutRecord:
    """A bout of so many reps of five seconds; the third has a fault, the fifth was missed."""
    side = changes.pop("side", Side.LEFT)
    records = tuple(
        RepRecord(
            number,
            side,  # type: ignore[arg-type]
            10_000 + 5_000 * (number - 1),
            10_000 + 5_000 * number,
            0,
            number == 5,
            ("knee falls in",) if number == 3 else (),
        )
        for number in range(1, reps + 1)
    )
    values: dict[str, object] = {
        "bout": bout,
        "attempt": 1,
        "reps": records,
        "outcome": BoutOutcome.DONE,
        "began_ms": 10_000,
        "ended_ms": 10_000 + 5_000 * reps,
        "rpe": 4,
        "pain": 6,
        "note": NOTE,
    }
    return BoutRecord(**(values | changes))  # type: ignore[arg-type]


def run_view(bouts: Sequence[tuple[BoutPrescribed, BoutRecord | None]] | None = None) -> RunView:
    """A run of three bouts: one done, one left out for pain, one not begun."""
    left_out = done(
        1, 0, outcome=BoutOutcome.SKIPPED, reason=SkipReason.PAIN, began_ms=None, rpe=None, pain=None
    )
    three = (
        (asked(0), done(0)),
        (asked(1, Side.RIGHT), left_out),
        (asked(2, work_ms=None, low=5, high=8), None),
    )
    header = RunHeader(
        "run-1", "Hugo", "Landing control", "", datetime(2026, 10, 25, 0, 30, tzinfo=UTC), "Europe/Copenhagen"
    )
    closing = Closing(RunOutcome.FINISHED, 40 * 60_000, 5, 0, NOTE)
    return RunView(
        header, closing, bout_lines(three if bouts is None else bouts, None), pauses=1, paused_ms=80_000
    )
