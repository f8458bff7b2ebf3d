"""The athlete's page at a desk: a clock moved by hand, keys pressed, and what came of it."""

from collections.abc import Sequence
from decimal import Decimal
from typing import cast

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind
from app.domain.records import Fact, RepDone
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.sounding import NoSound
from app.views.athlete.around import Around
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from tests.fakes import HandClock, RecordingSpeaker

TWO_REPS = TempoReps(Band.exactly(2), parse_tempo("2-1-1-0"))
FAULTS = ("knee caves in", "heel lifts")


def heel_raise(dose: Dose, sides: Sides = Sides.BOTH, sets: int = 1, load_kg: str | None = None) -> Timeline:
    """A plan of one exercise."""
    exercise = Exercise(
        "Heel raise",
        dose,
        sides=sides,
        sets=sets,
        rest_ms=30_000,
        faults=FAULTS,
        cues=("Tall",),
        load_kg=None if load_kg is None else Decimal(load_kg),
    )
    return compile_timeline(Plan("Try-out", (Stage("One", StageKind.ACTIVATION, (exercise,)),)))


class Desk:
    """A page with a clock, and what it wrote."""

    def __init__(
        self,
        qtbot: QtBot,
        dose: Dose,
        sides: Sides = Sides.BOTH,
        sets: int = 1,
        *,
        timeline: Timeline | None = None,
        around: Around | None = None,
    ) -> None:
        timeline = timeline or heel_raise(dose, sides, sets)
        self.around = around
        self.qtbot, self.clock, self.facts = qtbot, HandClock(7_000), list[Fact]()
        self.speaker, self.sound = RecordingSpeaker(), NoSound()
        self.session = RunSession(timeline, self.clock, self.speaker, self.sound, self._write)
        self.now_s = 0.0
        self.page = self.another_page()

    def another_page(self) -> AthletePage:
        """A page for the same run, as a window of another size would build it."""
        look = Look(choose(Place.TRAINING), "Inter", type_scale(22))
        self.page = AthletePage(look, self.session, "Hugo", lambda: self.now_s, self.around)
        self.page.resize(1280, 720)
        self.qtbot.addWidget(self.page)
        self.page.show()
        self.page.setFocus()
        return self.page

    def _write(self, first: int, facts: Sequence[Fact]) -> None:
        assert first == len(self.facts)
        self.facts.extend(facts)

    def press(self, *keys: Qt.Key) -> "Desk":
        for key in keys:
            self.qtbot.keyClick(self.page, key)
        return self

    def press_where_the_keys_go(self, *keys: Qt.Key) -> "Desk":
        """Press keys as a person does: on whatever part of the page has the focus."""
        for key in keys:
            focused = cast("QWidget | None", self.page.focusWidget())
            self.qtbot.keyClick(self.page if focused is None else focused, key)
        return self

    def wait(self, ms: int) -> "Desk":
        end = self.clock.at_ms + ms
        while self.clock.at_ms < end:
            self.clock.at_ms = min(self.clock.at_ms + 500, end)
            self.page.refresh()
        return self

    def texts(self) -> str:
        """Every word in sight, spoken names of painted parts included."""
        seen = [label.text() for label in self.page.findChildren(QLabel) if label.isVisibleTo(self.page)]
        named = [
            part.accessibleName() for part in self.page.findChildren(QWidget) if part.isVisibleTo(self.page)
        ]
        return "\n".join([*seen, *named])

    def button(self, text: str) -> QPushButton:
        found = [
            button
            for button in self.page.findChildren(QPushButton)
            if button.isVisibleTo(self.page) and button.accessibleName().startswith(text)
        ]
        assert found, f"no button '{text}' in sight"
        return found[0]

    def click(self, text: str) -> "Desk":
        self.qtbot.mouseClick(self.button(text), Qt.MouseButton.LeftButton)
        return self

    @property
    def reps(self) -> list[int]:
        return [fact.rep for fact in self.facts if isinstance(fact, RepDone)]
