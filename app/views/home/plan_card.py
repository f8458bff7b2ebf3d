"""One plan to choose: its title, its stages as the ladder, how long it takes; or why it cannot be led."""

from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from app.run.order import Rung
from app.views.home.plans import OfferedPlan, Why
from app.views.home.words import figures_words, problem_words
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import message, tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.ladder import Ladder
from app.views.widgets.plain import label

WHY = {
    Why.PLANNED: message("Planned for today"),
    Why.DONE: message("Planned for today, and done"),
    Why.HANDED: message("Just opened"),
    Why.LAST: message("Led last time"),
    Why.RECENT: message("Led lately"),
    Why.DEMO: message("Of the demo club"),
}
UNKNOWN_FILE = message("The file of this plan is not known here. Open it once, and it is known.")


class PlanCard(QPushButton):
    """A button as wide as its place. The one chosen has a bright edge and says so by its name."""

    def __init__(self, look: Look, plan: OfferedPlan) -> None:
        super().__init__()
        self.plan = plan
        self._look = look
        column = QVBoxLayout(self)
        edge = round(look.sizes.body * 0.6)
        column.setContentsMargins(edge * 2, edge, edge * 2, edge)
        column.setSpacing(round(look.sizes.body * 0.2))
        self._title = FittedLabel(look, pixels=look.sizes.heading, weight=Weight.SEMIBOLD, lines=2)
        self._title.setText(plan.title)
        self._words = label(look, self._about(), wrap=True, colour=look.scheme.quiet)
        if plan.figures is None:
            self._words.setStyleSheet(f"color: {look.scheme.notice}")
        head = QHBoxLayout()
        head.setSpacing(edge * 2)
        head.addWidget(self._title, 1)
        if plan.figures is not None:
            head.addWidget(_ladder(look, plan.figures.stages), 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(head)
        column.addWidget(self._words)
        for part in (self._title, self._words):
            part.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setCheckable(True)
        self.setAutoExclusive(True)
        self.setEnabled(plan.figures is not None)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setToolTip("" if plan.path is None else str(plan.path))
        self.setAccessibleName(tr("{plan}, {about}").format(plan=plan.title, about=self._words.text()))
        self._paint_edge()

    def hasHeightForWidth(self) -> bool:
        """Long words take more lines."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Room for the words."""
        inside = self.layout()
        return super().sizeHint().height() if inside is None else inside.totalHeightForWidth(width)

    def sizeHint(self) -> QSize:
        """Room for the words on as few lines as they like."""
        inside = self.layout()
        return super().sizeHint() if inside is None else inside.totalSizeHint()

    def minimumSizeHint(self) -> QSize:
        """No width of its own."""
        return QSize(0, self.sizeHint().height())

    def _about(self) -> str:
        plan = self.plan
        if plan.problem is not None:
            return problem_words(plan.problem)
        if plan.figures is None:
            return tr(UNKNOWN_FILE)
        why = tr(WHY[plan.why])
        if plan.at is not None:
            why = tr("{why}, {time}").format(why=why, time=f"{plan.at:%H:%M}")
        return tr("{why} · {figures}").format(why=why, figures=figures_words(plan.figures))

    def _paint_edge(self) -> None:
        scheme = self._look.scheme
        self.setStyleSheet(
            f"QPushButton {{ background: {scheme.panel}; border: 3px solid {scheme.faint};"
            " border-radius: 10px; }"
            f"QPushButton:checked {{ background: {scheme.well}; border-color: {scheme.ink}; }}"
            f"QPushButton:hover {{ border-color: {scheme.quiet}; }}"
            f"QPushButton:focus {{ border-color: {scheme.accent}; }}"
        )
        self.toggled.connect(self._paint_words)

    def _paint_words(self, checked: bool) -> None:
        scheme = self._look.scheme
        self._words.setStyleSheet(f"color: {scheme.ink if checked else scheme.quiet}")


class PlanList(QWidget):
    """The plans to choose from, one below the other. `chosen` carries the path of the one pressed."""

    chosen = Signal(object)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self._shown: tuple[OfferedPlan, ...] | None = None
        self._path: Path | None = None
        self.cards: list[PlanCard] = []
        self._group = QButtonGroup(self)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(round(look.sizes.body * 0.5))
        self._column.addStretch(1)

    @property
    def plan(self) -> OfferedPlan | None:
        """The plan chosen."""
        return next((card.plan for card in self.cards if card.isChecked()), None)

    def show_plans(self, plans: tuple[OfferedPlan, ...], chosen: Path | None) -> None:
        """Show these plans, one of them chosen."""
        if plans != self._shown:
            self._shown = plans
            self._build(plans)
        for card in self.cards:
            if card.plan.figures is not None and card.plan.path == chosen:
                card.setChecked(True)
                break

    def _build(self, plans: tuple[OfferedPlan, ...]) -> None:
        for card in self.cards:
            self._group.removeButton(card)
            self._column.removeWidget(card)
            card.hide()
            card.deleteLater()
        self.cards = [PlanCard(self._look, plan) for plan in plans]
        for place, card in enumerate(self.cards):
            self._group.addButton(card)
            self._column.insertWidget(place, card)
            card.clicked.connect(lambda _checked=False, card=card: self.chosen.emit(card.plan.path))


def _ladder(look: Look, names: tuple[str, ...]) -> Ladder:
    ladder = Ladder(look)
    ladder.show_stages(names, (Rung.HERE, *(Rung.OPEN for _ in names[1:])))
    ladder.setAccessibleName(", ".join(names))
    ladder.setToolTip("\n".join(names))
    ladder.setFixedSize(ladder.sizeHint() * 0.6)
    ladder.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
    return ladder
