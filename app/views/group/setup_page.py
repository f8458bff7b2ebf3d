"""Before a group session: which plan, in which form, for whom."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QRadioButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.domain.group_choice import GroupChoice
from app.domain.grouping import (
    LONGEST_CHANGE_MS,
    LONGEST_WINDOW_MS,
    MOST_ROUNDS,
    SHORTEST_CHANGE_MS,
    SHORTEST_WINDOW_MS,
    Form,
    Grouping,
)
from app.domain.units import MS_PER_SECOND
from app.views.group.wording import FORMS
from app.views.lettering import Weight
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.widgets.plain import card, label, quiet_button, say, strong_button

ABOUT: dict[Form, str] = {
    Form.TOGETHER: message("Everybody does the same at the same time, each with their own reps and load."),
    Form.STATIONS: message("Teams work for a while at each station, then all move on."),
    Form.WAVES: message("One half works while the other rests and spots; then they swap."),
}
Numbers = tuple[QSpinBox, QSpinBox, QSpinBox, QSpinBox]


@dataclass(frozen=True, slots=True)
class SetUp:
    """What is chosen on the page: a plan of those offered, the form, its numbers; and what is said."""

    plans: tuple[Path, ...]
    plan: int
    form: int
    numbers: tuple[int, ...]
    offered: str
    notice: str


class SetupPage(QWidget):
    """Asks what a group session needs. `chosen` carries plan and choice, `left` is emitted on the way back.

    `look_up` gives how a plan is meant for a group, None where it cannot be read.
    """

    chosen = Signal(object, object)
    again = Signal()
    laid_down = Signal()
    left = Signal()

    def __init__(
        self, look: Look, plans: Sequence[Path], look_up: Callable[[Path], Grouping | None], people: int
    ) -> None:
        super().__init__()
        self._look, self._look_up = look, look_up
        self._plan = QComboBox()
        self._forms = QButtonGroup(self)
        self._about = label(look, colour=look.scheme.quiet, wrap=True)
        self._notice = label(look, colour=look.scheme.notice, wrap=True)
        self._offer_words = label(look, pixels=look.sizes.heading, wrap=True)
        self._offer = self._offer_card()
        self._numbers = self._number_boxes()
        self._labels = [label(look, words) for words in self._number_words()]
        self._people = label(look, pixels=look.sizes.heading, colour=look.scheme.quiet)
        self.setPalette(palette(look.scheme))
        self.setAutoFillBackground(True)
        say(self._people, tr("%n people in the roster", "", people))
        self._lay_out()
        for path in plans:
            self._add(path)
        self._plan.currentIndexChanged.connect(lambda _index: self._show_plan())
        self._forms.idToggled.connect(lambda _id, _on: self._show_form())
        self._show_plan()
        self.setFocusProxy(self._plan)

    @property
    def kept(self) -> SetUp:
        """What is chosen and said, for a page in its place."""
        plans = tuple(Path(self._plan.itemData(index)) for index in range(self._plan.count()))
        numbers = tuple(box.value() for box in self._numbers)
        said = self._offer_words.text(), self._notice.text()
        return SetUp(plans, self._plan.currentIndex(), self._forms.checkedId(), numbers, *said)

    def carry_on(self, kept: SetUp) -> None:
        """Be where another page was."""
        for path in kept.plans[self._plan.count() :]:
            self._add(path)
        self._plan.setCurrentIndex(kept.plan)
        self._forms.button(kept.form).setChecked(True)
        for box, number in zip(self._numbers, kept.numbers, strict=True):
            box.setValue(number)
        self.offer(kept.offered)
        self.show_notice(kept.notice)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc goes back, Enter goes on."""
        if event.key() == Qt.Key.Key_Escape and not self.window().isFullScreen():
            self.left.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._go()
        else:
            super().keyPressEvent(event)

    def offer(self, sentence: str) -> None:
        """Offer a group session that was cut short, or nothing."""
        say(self._offer_words, sentence)
        self._offer.setVisible(bool(sentence))

    def show_notice(self, sentence: str) -> None:
        """Say what went wrong, in a sentence."""
        say(self._notice, sentence)
        self._notice.setVisible(bool(sentence))

    @property
    def plan(self) -> Path | None:
        """The file that is chosen."""
        data = self._plan.currentData()
        return Path(data) if data else None

    @property
    def choice(self) -> GroupChoice:
        """What is chosen."""
        work, change, rounds, swap = (box.value() for box in self._numbers)
        return GroupChoice(
            list(Form)[self._forms.checkedId()],
            work * MS_PER_SECOND,
            change * MS_PER_SECOND,
            rounds,
            swap * MS_PER_SECOND,
        )

    def _go(self) -> None:
        if self.plan is not None:
            self.chosen.emit(self.plan, self.choice)

    def _add(self, path: Path) -> None:
        self._plan.addItem(path.stem.replace("_", " ").capitalize(), str(path))
        self._plan.setItemData(self._plan.count() - 1, str(path), Qt.ItemDataRole.ToolTipRole)

    def _pick(self) -> None:
        name, _ = QFileDialog.getOpenFileName(self.window(), tr("Open a plan"), "", tr("Plans (*.toml)"))
        if name:
            self._add(Path(name))
            self._plan.setCurrentIndex(self._plan.count() - 1)

    def _show_plan(self) -> None:
        found = None if self.plan is None else self._look_up(self.plan)
        grouping = found or Grouping()
        self._forms.button(list(Form).index(grouping.form)).setChecked(True)
        lengths = (grouping.work_ms, grouping.change_ms, None, grouping.swap_ms)
        for box, ms in zip(self._numbers, lengths, strict=True):
            box.setValue(grouping.rounds if ms is None else ms // MS_PER_SECOND)
        self._show_form()

    def _show_form(self) -> None:
        form = list(Form)[max(self._forms.checkedId(), 0)]
        say(self._about, tr(ABOUT[form]))
        wanted = {Form.STATIONS: (0, 1, 2), Form.WAVES: (3,)}.get(form, ())
        for index, (box, words) in enumerate(zip(self._numbers, self._labels, strict=True)):
            box.setVisible(index in wanted)
            words.setVisible(index in wanted)

    def _number_boxes(self) -> Numbers:
        bounds = (
            (SHORTEST_WINDOW_MS // MS_PER_SECOND, LONGEST_WINDOW_MS // MS_PER_SECOND, tr(" s")),
            (SHORTEST_CHANGE_MS // MS_PER_SECOND, LONGEST_CHANGE_MS // MS_PER_SECOND, tr(" s")),
            (1, MOST_ROUNDS, ""),
            (SHORTEST_CHANGE_MS // MS_PER_SECOND, LONGEST_CHANGE_MS // MS_PER_SECOND, tr(" s")),
        )
        boxes = []
        for (least, most, suffix), words in zip(bounds, self._number_words(), strict=True):
            box = QSpinBox()
            box.setRange(least, most)
            box.setSuffix(suffix)
            box.setFont(self._look.font(self._look.sizes.heading))
            box.setAccessibleName(words)
            boxes.append(box)
        return boxes[0], boxes[1], boxes[2], boxes[3]

    @staticmethod
    def _number_words() -> tuple[str, ...]:
        return (
            tr("Work at a station"),
            tr("Change between stations"),
            tr("Rounds"),
            tr("Time to swap"),
        )

    def _offer_card(self) -> QWidget:
        frame = card(self._look)
        row = QHBoxLayout(frame)
        row.addWidget(self._offer_words, 1)
        row.addWidget(quiet_button(self._look, tr("Lay it down"), self.laid_down.emit))
        row.addWidget(strong_button(self._look, tr("Take it up again"), self.again.emit))
        frame.hide()
        return frame

    def _lay_out(self) -> None:
        look = self._look
        side = round(look.sizes.body * 3.2)
        column = QVBoxLayout(self)
        column.setContentsMargins(side, side, side, side)
        column.setSpacing(look.sizes.body)
        title = tr("A group session")
        column.addWidget(label(look, title, pixels=look.sizes.display, weight=Weight.SEMIBOLD))
        column.addWidget(self._people)
        column.addWidget(self._offer)
        plan = QHBoxLayout()
        self._plan.setFont(look.font(look.sizes.heading))
        self._plan.setAccessibleName(tr("Plan"))
        plan.addWidget(self._plan, 1)
        plan.addWidget(quiet_button(look, tr("Open a plan…"), self._pick))
        column.addLayout(plan)
        forms = QHBoxLayout()
        for index, form in enumerate(Form):
            button = QRadioButton(tr(FORMS[form]))
            button.setFont(look.font(look.sizes.heading, Weight.SEMIBOLD))
            button.setAccessibleName(tr(FORMS[form]))
            button.setStyleSheet(
                f"QRadioButton {{ color: {look.scheme.quiet}; padding: 4px 8px;"
                " border: 2px solid transparent; }"
                f"QRadioButton:checked {{ color: {look.scheme.ink};"
                f" border-bottom-color: {look.scheme.accent}; }}"
                f"QRadioButton:focus {{ border-color: {look.scheme.quiet}; }}"
            )
            self._forms.addButton(button, index)
            forms.addWidget(button)
        forms.addStretch(1)
        column.addLayout(forms)
        column.addWidget(self._about)
        numbers = QFormLayout()
        for words, box in zip(self._labels, self._numbers, strict=True):
            numbers.addRow(words, box)
        column.addLayout(numbers)
        column.addWidget(self._notice)
        column.addStretch(1)
        row = QHBoxLayout()
        row.addWidget(quiet_button(look, tr("Back  (Esc)"), self.left.emit))
        row.addStretch(1)
        row.addWidget(strong_button(look, tr("See who is here"), partial(self._go)))
        column.addLayout(row)
