"""Who trains: a line to type in and the names that are left of it, in large letters."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import (
    QAbstractListModel,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor, QFontMetrics, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLineEdit,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from app.views.home.people import GUEST, LONGEST_NAME, Trainee, matching, plainly
from app.views.home.words import ago
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr

Index = QModelIndex | QPersistentModelIndex
LARGER = 1.2
"""Names over headings."""
LINES = 4
"""So many names have room at least."""


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the list: the name that is taken, what is shown, and quiet words beside it."""

    name: str
    shown: str
    aside: str = ""


def rows_for(people: Sequence[Trainee], typed: str, today: date) -> tuple[Row, ...]:
    """The names that are left of what was typed; then that name as a new one, and the guest."""
    found = [Row(each.name, each.name, ago(each.last, today)) for each in matching(people, typed)]
    new = " ".join(typed.split())
    guest = Row(GUEST, tr("Guest"), tr("no name is kept"))
    if plainly(new) in plainly(guest.shown):
        found.append(guest)
    if new and plainly(new) not in {plainly(row.name) for row in (*found, guest)}:
        found.append(Row(new, tr("“{name}”, a new name").format(name=new), ""))
    return tuple(found)


class PeopleModel(QAbstractListModel):
    """The lines of the list."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.rows: tuple[Row, ...] = ()

    def show_rows(self, rows: tuple[Row, ...]) -> None:
        """Show other lines."""
        if rows != self.rows:
            self.beginResetModel()
            self.rows = rows
            self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        """How many lines there are."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """What a line says."""
        row = self.rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return row.shown
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return tr("{name}, {when}").format(name=row.shown, when=row.aside) if row.aside else row.shown
        return row.aside if role == Qt.ItemDataRole.UserRole else None


class NameDelegate(QStyledItemDelegate):
    """Paints a name large and when they trained last beside it; a long name ends in an ellipsis."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self._name_font = look.font(look.sizes.heading * LARGER)
        self._chosen_font = look.font(look.sizes.heading * LARGER, Weight.SEMIBOLD)
        self._aside_font = look.font(look.sizes.body)

    def sizeHint(self, _option: QStyleOptionViewItem, _index: Index) -> QSize:
        """As high as a finger needs."""
        return QSize(0, self.line_height)

    @property
    def line_height(self) -> int:
        """Height of a line in pixels."""
        return round(QFontMetrics(self._chosen_font).height() * 1.5)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint one line."""
        view = option.widget
        chosen = isinstance(view, QListView) and view.currentIndex() == index
        scheme = self._look.scheme
        room: QRect = option.rect
        if chosen:
            painter.fillRect(room, QColor(scheme.well))
        pad = round(self._look.sizes.body * 0.6)
        inside = room.adjusted(pad, 0, -pad, 0)
        aside = str(index.data(Qt.ItemDataRole.UserRole) or "")
        aside_px = QFontMetrics(self._aside_font).horizontalAdvance(aside) + pad if aside else 0
        mirrored = view.layoutDirection() == Qt.LayoutDirection.RightToLeft
        name_room = inside.adjusted(aside_px, 0, 0, 0) if mirrored else inside.adjusted(0, 0, -aside_px, 0)
        self._write(painter, name_room, str(index.data()), chosen=chosen)
        painter.setFont(self._aside_font)
        painter.setPen(QColor(scheme.ink if chosen else scheme.quiet))
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignTrailing | Qt.AlignmentFlag.AlignVCenter), aside)

    def _write(self, painter: QPainter, room: QRect, name: str, *, chosen: bool) -> None:
        font = self._chosen_font if chosen else self._name_font
        painter.setFont(font)
        painter.setPen(QColor(self._look.scheme.ink))
        words = QFontMetrics(font).elidedText(name, Qt.TextElideMode.ElideRight, room.width())
        painter.drawText(room, int(Qt.AlignmentFlag.AlignLeading | Qt.AlignmentFlag.AlignVCenter), words)


class SearchLine(QLineEdit):
    """A line to type a name in; the keys that choose go to the list below."""

    stepped = Signal(int)
    taken = Signal()
    left = Signal()

    def __init__(self, look: Look) -> None:
        super().__init__()
        scheme = look.scheme
        self.setFont(look.font(look.sizes.heading * LARGER))
        self.setMaxLength(LONGEST_NAME)
        self.setPlaceholderText(tr("Type a name"))
        self.setAccessibleName(tr("Who is training"))
        self.setStyleSheet(
            f"QLineEdit {{ color: {scheme.ink}; background: {scheme.panel}; border: 2px solid {scheme.quiet};"
            " border-radius: 8px; padding: 6px 10px; }"
            f"QLineEdit:focus {{ border-color: {scheme.accent}; }}"
        )

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows choose, Enter takes, Esc leaves; everything else is typed."""
        steps = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: 8, Qt.Key.Key_PageUp: -8}
        key = Qt.Key(event.key())
        if key in steps:
            self.stepped.emit(steps[key])
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if not event.isAutoRepeat():
                self.taken.emit()
        elif key == Qt.Key.Key_Escape and (self.text() or self.hasFocus()):
            self.clear()
            self.left.emit()
        else:
            super().keyPressEvent(event)


class PeopleList(QWidget):
    """Chooses who trains. `chosen` carries a name at each choice, `done` says that it stands."""

    chosen = Signal(str)
    done = Signal()

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._people: tuple[Trainee, ...] = ()
        self._today = date.min
        self.name = GUEST
        self._before: str | None = None
        self.search = SearchLine(look)
        self.model = PeopleModel(self)
        self.view = self._make_view(look)
        self.search.textEdited.connect(self._filter)
        self.search.stepped.connect(self.step)
        self.search.taken.connect(self._take)
        self.search.left.connect(self._leave)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(round(look.sizes.body * 0.4))
        column.addWidget(self.search)
        column.addWidget(self.view, 1)

    def show_people(self, people: tuple[Trainee, ...], today: date, name: str) -> None:
        """Show everybody who may train here, one of them chosen; what is being typed stays."""
        self._people, self._today, self.name = people, today, name
        self._fill()

    def step(self, count: int) -> None:
        """Choose a line further up or down."""
        if self.model.rows:
            place = min(max(self.view.currentIndex().row() + count, 0), len(self.model.rows) - 1)
            self._choose(place)

    def type(self, text: str) -> None:
        """Begin to look for a name."""
        self.search.setFocus()
        self.search.setText(text)
        self._filter()

    def _make_view(self, look: Look) -> QListView:
        view = QListView()
        delegate = NameDelegate(look, view)
        view.setModel(self.model)
        view.setItemDelegate(delegate)
        view.setAccessibleName(tr("Everybody who may train here"))
        view.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        view.setUniformItemSizes(True)
        view.setFrameShape(QListView.Shape.NoFrame)
        view.viewport().setAutoFillBackground(False)
        view.setMinimumHeight(delegate.line_height * LINES)
        view.clicked.connect(self._click)
        return view

    def _filter(self) -> None:
        self._fill()
        if self.search.text().strip() and self.model.rows:
            self._choose(0)

    def _fill(self) -> None:
        rows = rows_for(self._people, self.search.text(), self._today)
        if not self.search.text().strip() and self.name not in {row.name for row in rows}:
            rows = (Row(self.name, self.name, tr("a new name")), *rows)
        self.model.show_rows(rows)
        self._point(next((place for place, row in enumerate(rows) if row.name == self.name), 0))

    def _point(self, place: int) -> None:
        index = self.model.index(place, 0)
        self.view.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.NoUpdate)
        self.view.scrollTo(index)
        self.view.viewport().update()

    def _choose(self, place: int) -> None:
        self._point(place)
        if self._before is None:
            self._before = self.name
        self.name = self.model.rows[place].name
        self.chosen.emit(self.name)

    def _click(self, index: QModelIndex) -> None:
        self._choose(index.row())
        self._take()

    def _take(self) -> None:
        self._before = None
        self.search.clear()
        self._fill()
        self.done.emit()

    def _leave(self) -> None:
        if self._before is not None and self._before != self.name:
            self.name = self._before
            self.chosen.emit(self.name)
        self._take()
