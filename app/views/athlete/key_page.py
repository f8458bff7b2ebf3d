"""The page of keys, on F1, and from there the teaching of pedals."""

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QGridLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.planfile.key_settings import PedalKeys
from app.views.athlete.keys import KEY_PAGE
from app.views.athlete.pedal import learnable, name_of
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.flow import FlowLayout
from app.views.widgets.plain import label, quiet_button, say, scrolling

Learn = Callable[[PedalKeys], object]
MOST_OF_WINDOW = 0.95


class KeyPage(QDialog):
    """Shows what each key does; any key closes it, and the session goes on behind it.

    `learn` is given the pedals when one was taught.
    """

    def __init__(self, look: Look, parent: QWidget, pedals: PedalKeys, learn: Learn) -> None:
        super().__init__(parent)
        self._page = parent
        self._look, self._pedals, self._learn = look, pedals, learn
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Keys"))
        self.setStyleSheet(f"QDialog {{ background: {look.scheme.panel}; }}")
        outer = QVBoxLayout(self)
        edge = round(look.sizes.body * 1.6)
        outer.setContentsMargins(edge, edge, edge, edge)
        inside = QWidget()
        grid = QGridLayout(inside)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(edge)
        grid.setVerticalSpacing(round(look.sizes.body * 0.15))
        for row, (key, what) in enumerate(self._rows()):
            grid.addWidget(label(look, key, weight=Weight.SEMIBOLD), row, 0)
            grid.addWidget(label(look, what, wrap=look.text > 1.0), row, 1)
        grid.setColumnStretch(1, 1)
        scroll = scrolling(inside, tr("Keys"))
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        outer.addWidget(scroll, 1)
        outer.addLayout(self._teaching())
        self._fit(inside, edge, parent)
        for button in self.findChildren(QPushButton):
            button.setAutoDefault(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close at any key, so that the next one reaches the session."""
        if not event.isAutoRepeat():
            self.close()

    def _fit(self, inside: QWidget, edge: int, parent: QWidget) -> None:
        """Be as large as what is shown, within the window."""
        wanted = inside.sizeHint()
        room = parent.window().size() * MOST_OF_WINDOW
        if self._look.text > 1.0:
            self.resize(room)
            return
        foot = 3 * edge + round(self._look.sizes.body * 3)
        self.resize(min(max(wanted.width() + 3 * edge, self.minimumSizeHint().width()), room.width()), 0)
        self.resize(self.width(), min(wanted.height() + foot, room.height()))

    def _rows(self) -> list[tuple[str, str]]:
        rows = [(tr(key), tr(what)) for key, what in KEY_PAGE]
        if self._pedals.count:
            about = tr("pedal: next, or one more rep")
            if self._pedals.one_pedal:
                about = tr("pedal: short for next or one more rep, long to pause and go on")
            rows.append((", ".join(self._pedals.count), about))
        if self._pedals.pause:
            rows.append((", ".join(self._pedals.pause), tr("pedal: pause, go on")))
        return rows

    def _teaching(self) -> FlowLayout:
        row = FlowLayout(None, self._look.sizes.body // 2)
        for words, pause in ((tr("Teach a pedal to count"), False), (tr("Teach a pedal to pause"), True)):
            row.addWidget(quiet_button(self._look, words, partial(self._teach, pause=pause)))
        one = QCheckBox(tr("One pedal: short counts, long pauses"))
        one.setFont(self._look.font(self._look.sizes.body))
        one.setStyleSheet(f"color: {self._look.scheme.ink}")
        one.setAccessibleName(one.text())
        one.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        one.setChecked(self._pedals.one_pedal)
        one.toggled.connect(self._one_pedal)
        row.addWidget(one)
        if self._pedals.count or self._pedals.pause:
            row.addWidget(quiet_button(self._look, tr("Forget the pedals"), self._forget))
        return row

    def _teach(self, *, pause: bool) -> None:
        self.close()
        TeachPedal(self._look, self._page, self._pedals, self._learn, pause=pause).show()

    def _one_pedal(self, checked: bool) -> None:
        self._pedals = replace(self._pedals, one_pedal=checked)
        self._learn(self._pedals)

    def _forget(self) -> None:
        self._learn(PedalKeys())
        self.close()


class TeachPedal(QDialog):
    """Waits for the key that a pedal or a presenter sends, and learns it; Esc learns nothing."""

    def __init__(self, look: Look, parent: QWidget, pedals: PedalKeys, learn: Learn, *, pause: bool) -> None:
        super().__init__(parent)
        self._pedals, self._learn, self._pause = pedals, learn, pause
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Pedal"))
        self.setStyleSheet(f"QDialog {{ background: {look.scheme.panel}; }}")
        column = QVBoxLayout(self)
        edge = round(look.sizes.body * 2)
        column.setContentsMargins(edge, edge, edge, edge)
        words = tr("Press the pedal now.")
        column.addWidget(label(look, words, pixels=look.sizes.title, weight=Weight.SEMIBOLD))
        self._about = label(look, wrap=True, colour=look.scheme.quiet)
        say(self._about, tr("It then pauses and goes on.") if pause else tr("It then counts and goes on."))
        column.addWidget(self._about)
        nothing = quiet_button(look, tr("Learn nothing  (Esc)"), self.close)
        nothing.setAutoDefault(False)
        column.addWidget(nothing)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Learn the key, or say that it cannot be learned."""
        key = Qt.Key(event.key())
        if event.isAutoRepeat():
            return
        if key is Qt.Key.Key_Escape:
            self.close()
        elif learnable(key):
            self._learn(self._pedals.learned(name_of(key), pause=self._pause))
            self.close()
        else:
            say(self._about, tr("That key cannot be learned. Set the pedal to send another one."))
