"""The keys of the working screen as buttons, for a mouse, a touch screen and a screen reader."""

from collections.abc import Callable
from functools import partial

from PySide6.QtWidgets import QWidget

from app.run.intents import CountRep, EndBout, Intent, MarkFault, MarkMissed, Pause, TakeBack
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import quiet_button


class WorkButtons(QWidget):
    """A quiet row; what makes no sense of a bout is not offered."""

    def __init__(self, look: Look, act: Callable[[Intent], object]) -> None:
        super().__init__()
        self._shown: tuple[bool, bool] | None = None
        row = FlowLayout(self, round(look.sizes.body * 0.4))

        def button(words: str, intent: Intent) -> QWidget:
            made = quiet_button(look, words, partial(act, intent))
            row.addWidget(made)
            return made

        button(tr("Pause  (Space)"), Pause())
        self._at_work = [button(tr("One more rep  (Enter)"), CountRep())]
        self._timed = [button(tr("Not done  (M)"), MarkMissed())]
        self._always = [
            button(tr("A fault  (F)"), MarkFault()),
            button(tr("Take back  (Backspace)"), TakeBack()),
            button(tr("End this bout  (E)"), EndBout()),
        ]

    def show_snapshot(self, shown: Snapshot) -> None:
        """Offer what goes with a moment of a bout; the row keeps its height."""
        state = (shown.doing is Doing.WORK, shown.bout.open_ended)
        if state == self._shown:
            return
        self._shown = state
        work, open_ended = state
        for part in self._at_work:
            part.setVisible(work and open_ended)
        for part in self._timed:
            part.setVisible(work and not open_ended)
        for part in self._always:
            part.setVisible(work)
