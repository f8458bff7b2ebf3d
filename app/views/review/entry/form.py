"""The form in which tries at one test are typed: lift, day, side, tries, video or not, note, device."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QCompleter,
    QDateEdit,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QWidget,
)

from app.analysis.one_rep_max import TEMPO_WORK
from app.analysis.tests_catalog import CATALOGUE, field_test
from app.analysis.tests_kinds import FieldTest
from app.domain.keeping import Device
from app.domain.plan import Side
from app.views.review import words
from app.views.review.entry.results import Entered
from app.views.review.entry.telling import Said, told_of_hops
from app.views.review.entry.tries import (
    NO_ENTRY,
    NOT_HELD_NOTE,
    PARTS_OR_ONE,
    PARTS_WANTED,
    Try,
    parts_try,
    parts_words,
    typed_try,
)
from app.views.review.entry.tries_row import A_ROW, TriesRow
from app.views.review.entry.video_tries import FRAMES_NOTE, VIDEO, frames_a_second, video_try
from app.views.review.figure_names import unit_words
from app.views.review.typed import LONGEST, plain
from app.views.theme import Look
from app.views.translation import message, tr, translated
from app.views.widgets.card import Card
from app.views.widgets.choice_box import ChoiceBox
from app.views.widgets.plain import strong_button

SIDES = {Side.LEFT: message("left"), Side.RIGHT: message("right"), Side.BOTH: message("both sides at once")}
WALL = "yyyy-MM-dd"
SET_NAME = message("Set to the last rep")
"""What the estimated maxima are entered by: they are made of the same numbers."""
NO_LIFT = message("Enter which lift it was.")
ALL_STANCES = message("Enter all six stances, or the sum alone.")
SUM_ALONE = message("or the sum alone")
OF_STANCES = 3
FEW_PARTS = 3
"""A try of more numbers than these has an entry for each of them."""
LONGEST_LIFT = 100


def entry_name(test: FieldTest) -> str:
    """What a test is called where it is entered."""
    return tr(SET_NAME) if test.parts and test.by_lift else tr(test.plain_name)


@dataclass(frozen=True, slots=True)
class Draft:
    """Tries with their places, their side and their note, that were typed and not kept."""

    typed: tuple[tuple[int, str], ...]
    side: str
    note: str


class TestForm(Card):
    """Takes tries at the test it is given. `entered` carries an `Entered`; what is wrong is said below."""

    __test__ = False
    entered = Signal(object)

    def __init__(self, look: Look, athlete: str, today: date, parent: QWidget | None = None) -> None:
        super().__init__(tr("Tries"), "", parent)
        self._athlete = athlete
        self._test: FieldTest | None = None
        self._lifts: tuple[str, ...] = ()
        self._drafts: dict[tuple[str, bool], Draft] = {}
        self._offered: tuple[str, bool] | None = None
        self.day, self.side = QDateEdit(_qdate(today)), ChoiceBox(tr("Side"), 18, look)
        self.day.setDisplayFormat(WALL)
        self.day.setMaximumDate(_qdate(today))
        self.video = QCheckBox(tr("From frames of a video"))
        self.tempo = QCheckBox(tr("Led to a tempo"))
        self.lift, self.rate, self.note, self.device = QLineEdit(), QLineEdit(), QLineEdit(), QLineEdit()
        for entry in (self.note, self.device):
            entry.setMaxLength(LONGEST)
        self.lift.setMaxLength(LONGEST_LIFT)
        self.tries = TriesRow()
        self.message = QLabel()
        self.message.setWordWrap(True)
        self.message.setTextFormat(Qt.TextFormat.PlainText)
        self.keep = strong_button(look, tr("Keep"), self._enter, tip=tr("Ctrl+Return"))
        self.keep.setShortcut("Ctrl+Return")
        self._lay_out()
        self.video.toggled.connect(self._turn_to_video)
        self.tempo.toggled.connect(self._weigh)
        self.rate.textChanged.connect(self._weigh)
        self.lift.returnPressed.connect(lambda: self.tries.go_to(0))
        self.tries.changed.connect(self._weigh)
        self.tries.done.connect(self._enter)
        self.set_look(look)

    def show_test(self, test: FieldTest) -> None:
        """Let tries at a test be typed; what was typed at another stays there until it is kept."""
        self._lay_aside()
        if self._test is not None and self._test.key != test.key:
            self.note.clear()
        self._offered, self._test = None, test
        self.heading.say(entry_name(test))
        self.set_aside(words.DOT.join(tr(each.standing) for each in _entered_with(test)))
        self.side.clear()
        sides = (Side.LEFT, Side.RIGHT) if test.by_side else (Side.BOTH,)
        for side in sides:
            self.side.addItem(translated(SIDES)[side], side.value)
        self.side.setEnabled(test.by_side)
        self.video.setVisible(test.key in VIDEO)
        self.video.setChecked((test.key, True) in self._drafts)
        self.tempo.setChecked(False)
        self.tempo.setVisible(test.by_lift and bool(test.parts))
        self._form.setRowVisible(self.lift, test.by_lift)
        self._turn_to_video()

    def show_devices(self, devices: Sequence[Device]) -> None:
        """Offer the names of instruments that are known."""
        self.device.setCompleter(QCompleter([each.name for each in devices], self.device))

    def show_lifts(self, lifts: Sequence[str]) -> None:
        """Offer the lifts that are known; one that differs in capitals alone is the known one."""
        self._lifts = tuple(lifts)
        completer = QCompleter(list(lifts), self.lift)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.lift.setCompleter(completer)

    def go_on(self) -> None:
        """Make ready for the next, once the tries typed were kept: the other side where there is one."""
        self.forget()
        if self.side.count() > 1:
            self.side.setCurrentIndex(1 - self.side.currentIndex())
        self.tries.go_to(0)

    @property
    def unkept(self) -> list[str]:
        """The names of the tests at which tries were typed that are not kept."""
        self._lay_aside()
        keys = dict.fromkeys(key for key, _video in self._drafts)
        return [entry_name(test) for test in map(field_test, keys) if test is not None]

    def say(self, sentence: str) -> None:
        """Say what came of it."""
        self.message.setText(sentence)

    def set_look(self, look: Look) -> None:
        """Take colours and letters."""
        super().set_look(look)
        body = look.font(look.sizes.body)
        boxes = (self.day, self.video, self.tempo, self.lift, self.rate, self.note, self.device)
        for part in (*boxes, *self._captions):
            part.setFont(body)
        self.message.setFont(look.font(look.sizes.body))
        self.side.set_look(look)
        self.tries.set_look(look)

    def _lay_out(self) -> None:
        self._form = QFormLayout()
        told = (
            (tr("Lift"), self.lift),
            (tr("Day"), self.day),
            (tr("Side"), self.side),
            (tr("Frames a second"), self.rate),
            (tr("Tries"), self.tries),
            (tr("Note"), self.note),
            (tr("Measured with"), self.device),
        )
        self._captions = [QLabel(word) for word, _ in told]
        for caption, (word, entry) in zip(self._captions, told, strict=True):
            caption.setBuddy(entry)
            entry.setAccessibleName(word)
            self._form.addRow(caption, entry)
        self._form.insertRow(3, self.video)
        self._form.insertRow(3, self.tempo)
        self.body.addLayout(self._form)
        below = QHBoxLayout()
        below.addWidget(self.message, 1)
        below.addWidget(self.keep, 0, Qt.AlignmentFlag.AlignBottom)
        self.body.addLayout(below, 1)

    @property
    def _by_stance(self) -> bool:
        return self._test is not None and len(self._test.parts) > FEW_PARTS

    def forget(self) -> None:
        """Clear the tries in sight: they were kept."""
        if self._offered is not None:
            self._drafts.pop(self._offered, None)
        self._offered = None
        self._offer()

    def _lay_aside(self) -> None:
        """Hold what stands in the entries for when their test is shown again."""
        if self._offered is None:
            return
        typed = self.tries.typed
        if typed:
            self._drafts[self._offered] = Draft(typed, self.side.currentData(), self.note.text())
        else:
            self._drafts.pop(self._offered, None)

    def _turn_to_video(self, _on: bool = False) -> None:
        self._form.setRowVisible(self.rate, self.video.isChecked())
        self._offer()
        self._weigh()

    def _offer(self) -> None:
        """Offer empty entries, or those that were laid aside of the same test."""
        test = self._test
        if test is None:
            return
        self._lay_aside()
        self._offered = None
        self._offer_empty(test)
        self._offered = test.key, self.video.isChecked()
        draft = self._drafts.get(self._offered)
        if draft is not None:
            self.tries.put(draft.typed)
            self.side.setCurrentIndex(self.side.findData(draft.side))
            self.note.setText(draft.note)

    def _offer_empty(self, test: FieldTest) -> None:
        if self._by_stance:
            captions = [*(tr(part.name) for part in test.parts), tr(SUM_ALONE)]
            self.tries.offer(len(captions), "", captions, across=OF_STANCES)
            return
        hint = tr("frames") if self.video.isChecked() else _unit_hint(test)
        numbers = 0 if self.video.isChecked() else max(len(test.parts), 1)
        across = A_ROW if numbers == 1 or test.tries > A_ROW else OF_STANCES
        self.tries.offer(test.tries, hint, across=across, numbers=numbers)

    def _tried(self, typed: str) -> Try:
        assert self._test is not None  # noqa: S101 - told by the callers
        if self.tempo.isChecked():
            return Try(problem=Said(TEMPO_WORK))
        if self.video.isChecked():
            return video_try(self._test, typed, frames_a_second(self.rate.text()))
        return typed_try(self._test, typed)

    def _found(self) -> list[tuple[int, Try]]:
        """The tries typed with their places; of stances, which have an entry each, the one that they make."""
        assert self._test is not None  # noqa: S101 - told by the callers
        typed = self.tries.typed
        if not self._by_stance:
            return [(place, self._tried(word)) for place, word in typed]
        stances, alone = (
            typed[: len(self._test.parts)],
            [word for place, word in typed if place == len(self._test.parts)],
        )
        if alone and len(typed) == 1:
            return [(len(self._test.parts), typed_try(self._test, alone[0]))]
        if len(stances) < len(self._test.parts) or alone:
            told = Said(ALL_STANCES)
            return [(typed[-1][0], Try(problem=told))] if typed else []
        return [(0, parts_try(self._test, [word for _, word in stances]))]

    def _weigh(self, *_changed: object) -> None:
        """Say at once what comes out of the numbers typed, and how coarse a video is."""
        test = self._test
        if test is None:
            return
        lines = [] if self.tries.typed else _wanted(test, video=self.video.isChecked())
        if self.tempo.isChecked():
            lines.append(tr(TEMPO_WORK))
        hops = []
        for place, found in self._found() if self.tries.typed else ():
            if found.problem is not None or not (found.aside or test.parts):
                continue
            asides = [_words(each) for each in found.aside]
            alone = found.value is not None and not (test.parts and asides)
            value = [f"{_with_unit(found.value or '', test)}."] if alone else []
            lines.append(tr("Try {n}: {value}").format(n=place + 1, value=" ".join([*value, *asides])))
            hops.append([float(each.value) for each in found.written])
        if (
            test.key.startswith("ten_hops")
            and len(hops) == test.tries
            and all(len(each) > 1 for each in hops)
        ):
            lines = [*map(_words, told_of_hops(hops))]
        self.say("\n".join(lines))

    def _enter(self) -> None:
        test = self._lifted()
        if test is None:
            return
        if not self.tries.typed:
            self._refuse(0, Said(NO_ENTRY))
            return
        self._test, plain_test = test, self._test
        found = self._found()
        self._test = plain_test
        for place, each in found:
            if each.problem is not None:
                self._refuse(place, each.problem)
                return
        self.entered.emit(
            Entered(
                self._athlete,
                test,
                date.fromisoformat(self.day.date().toString(WALL)),
                Side(self.side.currentData()),
                tuple(each.written for _, each in found),
                tuple(self._noted(each) for _, each in found),
                plain(self.device.text()),
            )
        )

    def _lifted(self) -> FieldTest | None:
        """The test, with its lift where it is done with one; None where that is not said yet."""
        test = self._test
        if test is None or not test.by_lift:
            return test
        typed = " ".join(plain(self.lift.text()).replace(":", " ").split())
        if not typed:
            self.say(tr(NO_LIFT))
            self.lift.setFocus()
            return None
        known = {lift.casefold(): lift for lift in self._lifts}
        return test.with_lift(known.get(typed.casefold(), typed))

    def _refuse(self, place: int, problem: Said) -> None:
        told = _words(problem)
        self.say(told if self._by_stance else tr("Try {n}: {problem}").format(n=place + 1, problem=told))
        self.tries.go_to(place)

    def _noted(self, tried: Try) -> str | None:
        """The note typed, and the frames a value was read from, so that it can be checked."""
        parts = [plain(self.note.text())]
        if tried.frames:
            parts.append(tr(FRAMES_NOTE).format(fps=self.rate.text().strip(), frames=tried.frames))
        if tried.remark:
            parts.append(tr("Not held: {stances}.").format(stances=tried.remark))
        return " ".join(filter(None, parts)) or None


def _wanted(test: FieldTest, *, video: bool) -> list[str]:
    """What is to be typed, where it is more than a number."""
    if video:
        return [tr(VIDEO[test.key].value)]
    if len(test.parts) > FEW_PARTS:
        return [tr(NOT_HELD_NOTE)]
    if test.parts:
        return [tr(PARTS_OR_ONE if test.direct else PARTS_WANTED).format(parts=parts_words(test))]
    return []


def _entered_with(test: FieldTest) -> list[FieldTest]:
    """The tests that the same numbers are entered for, where they can be entered by these alone."""
    return [test] if test.direct else [each for each in CATALOGUE if each.parts == test.parts]


def _unit_hint(test: FieldTest) -> str:
    return "" if test.parts else unit_words(test.unit)


def _words(said: Said) -> str:
    return tr(said.text).format(**said.values)


def _with_unit(value: str, test: FieldTest) -> str:
    return f"{value} {unit_words(test.unit)}".strip()


def _qdate(day: date) -> QDate:
    return QDate(day.year, day.month, day.day)
