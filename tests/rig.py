"""The window with a clock moved by hand and a database of its own."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QStackedWidget, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.audio.bout_sound import Manner
from app.audio.trial import Trial
from app.audio.voice import Voice
from app.domain.athlete import Athlete
from app.domain.cue_values import CueLevel
from app.domain.group_choice import GroupChoice
from app.domain.plan import WrittenPlan
from app.domain.records import RunSummary
from app.planfile.settings import Settings
from app.planfile.settings_edit import Changes
from app.run.sounding import NoSound
from app.store.database import Database
from app.views.athlete.page import AthletePage
from app.views.house import House, Wish
from app.views.window import Window
from tests.fakes import HandClock, RecordingSpeaker

PLAN = """format = 1
title = "Try-out"
[[stage]]
name = "One"
kind = "activation"
  [[stage.exercise]]
  name = "Heel raise"
  sets = 2
  reps = 2
  tempo = "2-1-1-0"
  rest = 30
"""


class Rig:
    """A window on a clock moved by hand and a database of its own."""

    def __init__(self, qtbot: QtBot, folder: Path, open_record: Callable[[Path], Database]) -> None:
        self.qtbot, self.clock = qtbot, HandClock(5_000)
        self.database, self.plan = folder / "own.db", folder / "plan.toml"
        self.plan.write_text(PLAN, encoding="utf-8")
        self.settings, self.saved = Settings(ask_before=False), list[Changes]()
        self.house = House(
            fonts=wiring.resources_folder() / "fonts",
            translations=wiring.resources_folder() / "translations",
            icon=wiring.resources_folder() / "pacewright.svg",
            plans=(self.plan, folder / "missing.toml"),
            open_record=lambda: open_record(self.database),
            choose_speaker=RecordingSpeaker,
            make_clock=lambda: self.clock,
            make_sound=lambda _timeline, _speaker, _clock: NoSound(),
            read_plan=wiring.read_plan,
            parse_plan=wiring.parse_plan,
            read_athletes=lambda: (Athlete("Hugo"), Athlete("Ines")),
            read_settings=lambda: self.settings,
            overrule=lambda settings: settings,
            save_settings=self.saved.append,
            list_devices=lambda: ("Hall speakers", "Headphones"),
            try_speaker=lambda _settings: RecordingSpeaker(40),
            make_trial=lambda _settings: Trial(RecordingSpeaker(), Voice(), Manner(CueLevel.TONES)),
            new_header=wiring.new_header,
            stamp=wiring.stamp,
            new_id=wiring.new_run_id,
        )

    def open(
        self,
        session: WrittenPlan | None = None,
        broken: Callable[[str], object] | None = None,
        athlete: str | None = None,
        group: GroupChoice | None = None,
    ) -> Window:
        wish = Wish(session, athlete or ("Hugo" if session else None), group=group)
        self.window = Window(self.house, wish, "Inter")
        self.window.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
        self.qtbot.addWidget(self.window)
        if broken is not None:
            self.window.broken.connect(broken)
        self.window.show()
        self.window.settle()
        return self.window

    @property
    def page(self) -> QWidget:
        """The page in sight."""
        pages = self.window.centralWidget()
        assert isinstance(pages, QStackedWidget)
        shown = pages.currentWidget()
        assert shown is not None
        return shown

    def press(self, key: Qt.Key) -> None:
        self.qtbot.keyClick(self.page, key)

    def wait(self, ms: int) -> None:
        """Let the session's time pass in steps, each seen by the page as a tick of the screen."""
        end = self.clock.at_ms + ms
        while self.clock.at_ms < end:
            self.clock.at_ms = min(self.clock.at_ms + 500, end)
            page = self.page
            assert isinstance(page, AthletePage)
            page.refresh()

    def click(self, words: str) -> None:
        """Click the button of these words; the key in brackets after them need not be said."""
        buttons = self.page.findChildren(QPushButton)
        (button,) = [part for part in buttons if part.text().partition("  (")[0] == words.partition("  (")[0]]
        self.qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

    def texts(self) -> str:
        page = self.page
        return "\n".join(label.text() for label in page.findChildren(QLabel) if label.isVisibleTo(page))

    def runs(self) -> tuple[RunSummary, ...]:
        with wiring.open_record(self.database) as database:
            return database.queries.run_summaries()
