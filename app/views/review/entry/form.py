"""The form in which tries at one test are typed: day, side, tries in a row, video or not, note, device."""

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QCompleter, QDateEdit, QFormLayout, QLabel, QLineEdit, QWidget

from app.analysis.tests_kinds import NO_UNIT, FieldTest
from app.domain.keeping import Device
from app.domain.plan import Side
from app.views.review.entry.results import Entered
from app.views.review.entry.tries import (
    FRAMES_NOTE,
    LONGEST,
    NO_ENTRY,
    THREE_FRAMES,
    TWO_FRAMES,
    VIDEO,
    Frames,
    Said,
    Try,
    frames_a_second,
    plain,
    typed_try,
    video_try,
)
from app.views.review.entry.tries_row import TriesRow
from app.views.theme import Look
from app.views.translation import message, tr, translated
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.plain import strong_button

SIDES = {Side.LEFT: message("left"), Side.RIGHT: message("right"), Side.BOTH: message("both sides at once")}
WALL = "yyyy-MM-dd"


class TestForm(Card):
    """Takes tries at the test it is given. `entered` carries an `Entered`; what is wrong is said below."""

    __test__ = False
    entered = Signal(object)

    def __init__(self, look: Look, athlete: str, today: date, parent: QWidget | None = None) -> None:
        super().__init__(tr("Tries"), "", parent)
        self._athlete = athlete
        self._test: FieldTest | None = None
        self.day, self.side = QDateEdit(_qdate(today)), ChoiceBox(tr("Side"), 18, look)
        self.day.setDisplayFormat(WALL)
        self.day.setMaximumDate(_qdate(today))
        self.video = QCheckBox(tr("From frames of a video"))
        self.rate, self.note, self.device = QLineEdit(), QLineEdit(), QLineEdit()
        for entry in (self.note, self.device):
            entry.setMaxLength(LONGEST)
        self.tries = TriesRow()
        self.message = QLabel()
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self.keep = strong_button(look, tr("Keep"), self._enter, tip=tr("Ctrl+Return"))
        self.keep.setShortcut("Ctrl+Return")
        self._lay_out()
        self.video.toggled.connect(self._turn_to_video)
        self.rate.textChanged.connect(self._weigh)
        self.tries.changed.connect(self._weigh)
        self.tries.done.connect(self._enter)
        self.set_look(look)

    def show_test(self, test: FieldTest) -> None:
        """Let tries at a test be typed."""
        self._test = test
        self.heading.say(tr(test.name))
        self.set_aside(tr(test.standing))
        self.side.clear()
        sides = (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,)
        for side in sides:
            self.side.addItem(translated(SIDES)[side], side.value)
        self.side.setEnabled(test.by_side)
        self.video.setVisible(test.key in VIDEO)
        self.video.setChecked(False)
        self._turn_to_video()

    def show_devices(self, devices: Sequence[Device]) -> None:
        """Offer the names of instruments that are known."""
        self.device.setCompleter(QCompleter([each.name for each in devices], self.device))

    def go_on(self) -> None:
        """Make ready for the next: the other side where there is one."""
        if self.side.count() > 1:
            self.side.setCurrentIndex(1 - self.side.currentIndex())
        self._offer()
        self.tries.go_to(0)

    def say(self, sentence: str) -> None:
        """Say what came of it."""
        self.message.setText(sentence)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        body = look.font(look.sizes.body)
        for part in (self.day, self.video, self.rate, self.note, self.device, *self._captions):
            part.setFont(body)
        self.message.setFont(look.font(look.sizes.body))
        self.side.set_look(look)
        self.tries.set_look(look)

    def _lay_out(self) -> None:
        self._form = QFormLayout()
        told = (
            (tr("Day"), self.day),
            (tr("Side"), self.side),
            (tr("Frames a second"), self.rate),
            (tr("Tries"), self.tries),
            (tr("Note"), self.note),
            (tr("Measured with"), self.device),
        )
        self._captions = [QLabel(words) for words, _ in told]
        for caption, (words, entry) in zip(self._captions, told, strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(words)
            self._form.addRow(caption, entry)
        self._form.insertRow(2, self.video)
        self.body.addLayout(self._form)
        self.body.addWidget(self.message, 1)
        self.body.addWidget(self.keep, 0, Qt.AlignmentFlag.AlignRight)

    def _turn_to_video(self, _on: bool = False) -> None:
        self._form.setRowVisible(self.rate, self.video.isChecked())
        self._offer()
        self._weigh()

    def _offer(self) -> None:
        test = self._test
        if test is not None:
            hint = tr("frames") if self.video.isChecked() else "" if test.unit == NO_UNIT else test.unit
            self.tries.offer(test.tries, hint)

    def _tried(self, typed: str) -> Try:
        assert self._test is not None  # noqa: S101 - told by the callers
        if self.video.isChecked():
            return video_try(self._test, typed, frames_a_second(self.rate.text()))
        return typed_try(self._test, typed)

    def _weigh(self) -> None:
        """While a video is read, say at once what comes out of the frames and how coarse it is."""
        if self._test is None or not self.video.isChecked():
            self.say("")
            return
        lines = [] if self.tries.typed else [tr(Said(_hint(self._test)).text)]
        for place, typed in self.tries.typed:
            found = self._tried(typed)
            if found.value is None:
                continue
            told = tr("Try {n}: {value}").format(n=place + 1, value=_with_unit(found.value, self._test))
            lines.append(" ".join([told + ".", *map(_words, found.aside)]))
        self.say("\n".join(lines))

    def _enter(self) -> None:
        if self._test is None:
            return
        typed = self.tries.typed
        if not typed:
            self._refuse(0, Said(NO_ENTRY))
            return
        found = [(place, self._tried(words)) for place, words in typed]
        for place, each in found:
            if each.problem is not None:
                self._refuse(place, each.problem)
                return
        self.entered.emit(
            Entered(
                self._athlete,
                self._test,
                date.fromisoformat(self.day.date().toString(WALL)),
                Side(self.side.currentData()),
                tuple(each.value or "" for _, each in found),
                tuple(self._noted(each) for _, each in found),
                plain(self.device.text()),
            )
        )

    def _refuse(self, place: int, problem: Said) -> None:
        told = tr("Try {n}: {problem}").format(n=place + 1, problem=_words(problem))
        self.say(told)
        self.tries.go_to(place)

    def _noted(self, tried: Try) -> str | None:
        """The note typed, and the frames a value was read from, so that it can be checked."""
        parts = [plain(self.note.text())]
        if tried.frames:
            parts.append(tr(FRAMES_NOTE).format(fps=self.rate.text().strip(), frames=tried.frames))
        return " ".join(filter(None, parts)) or None


def _words(said: Said) -> str:
    return tr(said.text).format(**said.values)


def _hint(test: FieldTest) -> str:
    return TWO_FRAMES if VIDEO[test.key] is Frames.FLIGHT else THREE_FRAMES


def _with_unit(value: str, test: FieldTest) -> str:
    return value if test.unit == NO_UNIT else f"{value} {test.unit}"


def _qdate(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)
