"""The page of one run: each bout and rep planned against done, faults, answers, notes, what was left out."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QPalette, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from app.analysis.local_time import known_zone
from app.domain.records import RunOutcome
from app.views.lettering import Weight
from app.views.review import words
from app.views.review.presentation import NOTICE
from app.views.review.run.before import before_words, rating_words
from app.views.review.run.columns import bout_columns
from app.views.review.run.strip import seconds
from app.views.review.run.table import BoutModel, BoutTable
from app.views.review.run.view import RunView
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.card import Card
from app.views.widgets.elided import ElidedLabel
from app.views.widgets.word_button import WordButton

READING = message("Reading the session …")
NOTHING = message(
    "Nothing is known of the bouts of this session: only its day, its length and its effort were entered."
)


class RunPage(QWidget):
    """Shows a `RunView`. `correct` carries its UUID when the person wants to correct it.

    `why` carries a heading and the figures of the run.
    """

    correct = Signal(str)
    why = Signal(str, object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.view: RunView | None = None
        self._pain = True
        self.title, self.subtitle = ElidedLabel(), ElidedLabel(least=20)
        self.figures, self.before, self.notes = QLabel(), QLabel(), QLabel()
        self.want_why = WordButton(tr("Why? (W)"))
        self.want_correction = WordButton(tr("Correct…"))
        self.card = Card(tr("Bouts and reps"))
        self.model = BoutModel(self)
        self.table = BoutTable(self.model, tr("Bouts and reps"))
        self.message = QLabel(tr(READING))
        self._faces = QStackedWidget()
        self._lay_out()
        self.want_correction.clicked.connect(self._want)
        self.want_why.clicked.connect(self._want_reasons)
        shortcut = QShortcut(QKeySequence("W"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self._want_reasons)
        self.set_look(look)

    def begin(self) -> None:
        """Say that a run is being read."""
        self.view = None
        self._say(READING)

    def show_view(self, view: RunView, *, pain: bool, correcting: bool) -> None:
        """Show a run; without `pain` neither pain nor notes."""
        self.view, self._pain = view, pain
        header = view.header
        self.setAccessibleName(header.plan_title)
        self.title.say(header.plan_title)
        started = header.started_at.astimezone(known_zone(header.zone))
        parts = [header.athlete, words.when(started, day_alone=view.imported)]
        self.subtitle.say(words.DOT.join((*parts, *(() if pain else (tr(NOTICE),)))))
        self.figures.setText(words.DOT.join(_figures(view, pain=pain)))
        self.before.setText("\n".join(map(before_words, view.before)) if pain else "")
        self.before.setVisible(bool(self.before.text()))
        self.notes.setText("\n".join(_notes(view)) if pain else "")
        self.notes.setVisible(bool(self.notes.text()))
        self.want_correction.setVisible(correcting and pain)
        self.model.columns = bout_columns(pain=pain)
        self.model.set_rows(view.lines)
        if not view.lines:
            self._say(NOTHING)
            return
        told = tr("each strip is {s} s long from edge to edge; ✕ missed, ■ fault")
        self.card.set_aside(told.format(s=seconds(view.lines[0].scale_ms)))
        self.table.selectRow(0)
        self._faces.setCurrentWidget(self.card)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        self._look = look
        sizes = look.sizes
        self.title.setFont(look.font(sizes.title, Weight.SEMIBOLD))
        self.subtitle.setFont(look.font(sizes.body))
        drop = self.title.fontMetrics().descent() - self.subtitle.fontMetrics().descent()
        self.subtitle.setContentsMargins(0, 0, 0, drop)
        self.figures.setFont(look.font(sizes.heading))
        for told in (self.before, self.notes):
            told.setFont(look.font(sizes.body))
        self.want_why.set_look(look)
        self.message.setFont(look.font(sizes.heading))
        self.want_correction.set_look(look)
        self.card.set_look(look)
        self.table.set_look(look)
        self._header.setSpacing(sizes.body)
        self._frame.setContentsMargins(sizes.body * 2, 0, sizes.body * 2, sizes.body)
        self._frame.setSpacing(sizes.body)

    def _lay_out(self) -> None:
        self.subtitle.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        for told in (self.figures, self.before, self.notes, self.message):
            told.setWordWrap(True)
            told.setTextFormat(Qt.TextFormat.PlainText)
        self.message.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._header = QHBoxLayout()
        self._header.addWidget(self.title)
        self._header.addWidget(self.subtitle, 1, Qt.AlignmentFlag.AlignBottom)
        self._header.addWidget(self.want_why)
        self._header.addWidget(self.want_correction)
        self.card.body.addWidget(self.table, 1)
        for face in (self.message, self.card):
            self._faces.addWidget(face)
        self._frame = QVBoxLayout(self)
        self._frame.addLayout(self._header)
        self._frame.addWidget(self.figures)
        self._frame.addWidget(self.before)
        self._frame.addWidget(self.notes)
        self._frame.addWidget(self._faces, 1)
        self.setFocusProxy(self.table)

    def _say(self, text: str) -> None:
        self.message.setText(tr(text))
        self._faces.setCurrentWidget(self.message)

    def _want_reasons(self) -> None:
        if self.view is not None:
            self.why.emit(self.view.header.plan_title, self.view.figures)

    def _want(self) -> None:
        if self.view is not None:
            self.correct.emit(self.view.header.run_id)


def _figures(view: RunView, *, pain: bool) -> list[str]:
    closing = view.closing
    ended = {RunOutcome.FINISHED: tr("finished"), RunOutcome.ABANDONED: tr("abandoned")}
    told = [tr("not ended") if closing.outcome is None else ended[closing.outcome]]
    if view.minutes is not None:
        told.append(tr("{n} min").format(n=words.whole(view.minutes)))
    rpe = tr("RPE not rated") if closing.session_rpe is None else tr("RPE {n}").format(n=closing.session_rpe)
    told.append(rpe)
    told.append(
        tr("load {n} AU").format(n=words.whole(view.load)) if view.load is not None else tr("load unknown")
    )
    if view.pauses:
        told.append(tr("pauses: {n}, {s} s").format(n=view.pauses, s=seconds(view.paused_ms)))
    if pain:
        told.append(tr("pain unknown") if view.pain is None else tr("pain {n}").format(n=view.pain))
        told += [rating_words(rating, view) for rating in view.ratings[-1:]]
    return told


def _notes(view: RunView) -> list[str]:
    said = [tr("The athlete: {note}").format(note=view.closing.note)] if view.closing.note else []
    return said + [tr("{who}: {note}").format(who=note.who, note=note.text) for note in view.notes]
