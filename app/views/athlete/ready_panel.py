"""The screen before a run: what is planned for whom, the cautions, and one key to begin."""

from collections.abc import Callable
from functools import partial

from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from app.run.sounding import Making
from app.views.athlete.around import Around
from app.views.athlete.figure import load_figure
from app.views.athlete.session import RunSession
from app.views.athlete.set_up_list import SetUpList
from app.views.lettering import Weight
from app.views.sound.check import SoundCheck
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import card, label, quiet_button, say, scrolling, strong_button

CAUTIONS = (
    message("This is no medical device: it does not diagnose, clear or predict injury."),
    message("Pain above 5 of 10 or any red-flag sign ends the exercise and asks for a note."),
    message(
        "Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional."
    ),
    message("Your practitioner decides; local practice and law come first. Nothing advances by itself."),
)


class ReadyPanel(QWidget):
    """Shows the session that is about to begin, and what may be done before it does."""

    def __init__(
        self, look: Look, session: RunSession, athlete: str, begin: Callable[[], object], around: Around
    ) -> None:
        super().__init__()
        self._look, self._timeline = look, session.timeline
        self._figure_of = partial(load_figure, session.folder)
        self._begin = strong_button(look, tr("I am ready  (Space)"), begin)
        self._begin.setFont(look.font(look.sizes.title, Weight.SEMIBOLD))
        self._around = around
        self._notice = label(look, wrap=True, colour=look.scheme.notice)
        self._making = label(look, colour=look.scheme.quiet)
        self._making.hide()
        layout = QHBoxLayout(self)
        side = look.margin
        layout.setContentsMargins(side, look.sizes.body, side, round(side * 0.5))
        layout.setSpacing(side)
        layout.addLayout(self._plan_column(athlete), 8)
        layout.addLayout(self._caution_column(), 5)

    def show_notice(self, notice: str | None) -> None:
        """Say what the athlete should know of the sound."""
        say(self._notice, notice or "")
        self._notice.setVisible(bool(notice))

    def show_making(self, making: Making | None) -> None:
        """Say how far speech has been made; nothing once it is."""
        say(self._making, "" if making is None else _making_words(making))
        self._making.setVisible(making is not None)

    def _plan_column(self, athlete: str) -> QVBoxLayout:
        look, plan = self._look, self._timeline.plan
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        title = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD, lines=2)
        title.setText(plan.title)
        column.addWidget(title)
        minutes = -(-self._timeline.timed_ms // 60_000)
        timed, open_ended = (
            tr("For {athlete}  ·  {n} min"),
            tr("For {athlete}  ·  {n} min, and own-pace work"),
        )
        about = open_ended if self._timeline.open_ended else timed
        whom = FittedLabel(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        whom.setText(about.format(athlete=athlete, n=minutes))
        column.addWidget(whom)
        column.addSpacing(look.sizes.body)
        exercises = SetUpList(look, plan, self._figure_of)
        about = tr("The exercises of this session, and how to set them up")
        column.addWidget(self._scrolling(exercises, about), 1)
        return column

    def _scrolling(self, inside: QWidget, name: str) -> QScrollArea:
        area = scrolling(inside, name)
        area.verticalScrollBar().setPalette(palette(self._look.scheme))
        return area

    def _caution_column(self) -> QVBoxLayout:
        look = self._look
        frame = card(look)
        inner = QVBoxLayout(frame)
        edge = round(look.sizes.body * 1.8)
        inner.setContentsMargins(edge, edge, edge, edge)
        inner.setSpacing(round(look.sizes.body * 0.9))
        inner.addWidget(
            label(look, tr("Before you begin"), pixels=look.sizes.heading, weight=Weight.SEMIBOLD)
        )
        for caution in CAUTIONS:
            inner.addWidget(label(look, tr(caution), wrap=True))
        column = QVBoxLayout()
        column.setSpacing(round(look.sizes.body * 0.6))
        cautions = QWidget()
        around = QVBoxLayout(cautions)
        around.setContentsMargins(0, 0, 0, 0)
        around.addWidget(frame)
        around.addStretch(1)
        column.addWidget(self._scrolling(cautions, tr("Before you begin")), 1)
        if self._around.make_trial is not None:
            column.addWidget(SoundCheck(look, self._around.make_trial))
        column.addWidget(self._making)
        column.addWidget(self._notice)
        foot = QHBoxLayout()
        if self._around.back is not None:
            foot.addWidget(quiet_button(look, tr("Back  (Esc)"), self._around.back))
        foot.addStretch(1)
        foot.addWidget(self._begin)
        column.addLayout(foot)
        return column


def _making_words(making: Making) -> str:
    return tr("Voice: {n} of {m} phrases").format(n=making.done, m=making.of)
