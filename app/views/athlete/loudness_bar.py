"""How loud the run is, with a button for each of its keys."""

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.run.sounding import Loudness
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label, quiet_button, say

Change = Callable[[Loudness], Loudness]


class LoudnessBar(QWidget):
    """Shows a loudness; `change` is given what is asked for, `show_keys` opens the page of keys."""

    def __init__(
        self, look: Look, change: Callable[[Change], object], show_keys: Callable[[], object]
    ) -> None:
        super().__init__()
        self._words = label(look, colour=look.scheme.quiet)
        self._switch = quiet_button(look, "", lambda: change(Loudness.switched))
        row = QHBoxLayout(self)
        side = look.margin
        row.setContentsMargins(side, 0, side, round(look.sizes.body * 0.8))
        row.addWidget(self._words)
        row.addWidget(quiet_button(look, tr("softer  (−)"), lambda: change(Loudness.softer)))
        row.addWidget(quiet_button(look, tr("louder  (+)"), lambda: change(Loudness.louder)))
        row.addWidget(self._switch)
        row.addStretch(1)
        row.addWidget(quiet_button(look, tr("Keys  (F1)"), show_keys))

    def show_loudness(self, loudness: Loudness) -> None:
        """Show how loud it is."""
        say(self._words, loudness_words(loudness))
        words = tr("sound on  (V)") if loudness.muted else tr("sound off  (V)")
        if self._switch.text() != words:
            self._switch.setText(words)
            self._switch.setAccessibleName(words)


def loudness_words(loudness: Loudness) -> str:
    """How loud it is, in a few words."""
    return tr("Sound off") if loudness.muted else tr("Sound {n} %").format(n=loudness.percent)
