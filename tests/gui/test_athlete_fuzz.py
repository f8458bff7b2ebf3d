"""Thousands of random keys, clicks and moments against the real window: nothing breaks or counts twice."""

import random
from collections import Counter
from collections.abc import Sequence
from typing import get_args

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from app.domain.records import Fact, RepDone, RepMissed, RunEnded
from app.planfile.key_settings import PedalKeys
from app.run.sounding import NoSound
from app.run.state import Stand
from app.views.athlete.around import Around
from app.views.athlete.keys import KEY_INTENTS
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from tests.driven import FREE, TIMELINE
from tests.fakes import HandClock, RecordingSpeaker

INTENTS = 5_000
KEYS = (
    *KEY_INTENTS,
    *[Qt.Key.Key_Space] * 4,
    *[Qt.Key.Key_Return] * 3,
    Qt.Key.Key_K,
    Qt.Key.Key_X,
    Qt.Key.Key_G,
    Qt.Key.Key_L,
    Qt.Key.Key_W,
    Qt.Key.Key_Left,
    Qt.Key.Key_Right,
    Qt.Key.Key_Up,
    Qt.Key.Key_PageDown,
    Qt.Key.Key_PageUp,
    *(Qt.Key(Qt.Key.Key_0 + digit) for digit in range(10)),
    Qt.Key.Key_Tab,
    Qt.Key.Key_Escape,
)
PEDALS = PedalKeys(("PageDown",), ("PageUp",))
MOMENTS = (0, 16, 250, 900, 1_900, 1_900, 1_900)


class Fuzz:
    """A page per run, pressed at random until it is over, then the next."""

    def __init__(self, qtbot: QtBot) -> None:
        self.qtbot, self.chance = qtbot, random.Random(20261125)
        self.clock, self.facts = HandClock(), list[Fact]()
        self.runs = self.reps = 0
        self.kinds: set[type[Fact]] = set()

    def page(self) -> AthletePage:
        self.facts.clear()
        timeline = FREE if self.runs % 2 else TIMELINE
        session = RunSession(timeline, self.clock, RecordingSpeaker(), NoSound(), self._write)
        look = Look(choose(Place.TRAINING), "Inter", type_scale(18))
        page = AthletePage(look, session, "Hugo", around=Around(PEDALS))
        page.resize(1000, 620)
        self.qtbot.addWidget(page)
        page.show()
        self.session = session
        return page

    def _write(self, _first: int, facts: Sequence[Fact]) -> None:
        self.facts.extend(facts)
        self.kinds |= {type(fact) for fact in facts}

    def strike(self, page: AthletePage) -> None:
        """One key or click, at a moment."""
        for _ in range(self.chance.randint(1, 6)):
            self.clock.at_ms += self.chance.choice(MOMENTS)
            page.refresh()
        if self.chance.random() < 0.2:
            buttons = [part for part in page.findChildren(QPushButton) if part.isVisibleTo(page)]
            calm = [part for part in buttons if "stop here" not in part.text() or self.chance.random() < 0.05]
            if calm:
                self.chance.choice(calm).click()
        else:
            focused = page.focusWidget()
            target = focused if isinstance(focused, QLineEdit) and focused.isVisibleTo(page) else page
            self.qtbot.keyClick(target, self.chance.choice(KEYS))
        page.refresh()

    def check(self) -> None:
        passed = [fact for fact in self.facts if isinstance(fact, RepDone | RepMissed)]
        once = Counter((fact.bout, fact.attempt, fact.rep, fact.side) for fact in passed)
        assert max(once.values(), default=0) <= 1, "a rep was counted twice"
        ended = [fact for fact in self.facts if isinstance(fact, RunEnded)]
        self.reps += len(passed)
        over = self.session.over and self.session.controller.state.outcome is not None
        assert len(ended) == (1 if over else 0)


def test_five_thousand_random_keys_and_clicks_break_nothing(qtbot: QtBot) -> None:
    fuzz = Fuzz(qtbot)
    page = fuzz.page()
    struck = 0
    while struck < INTENTS:
        fuzz.strike(page)
        struck += 1
        begun = fuzz.session.controller.state.stand is not Stand.READY
        if fuzz.session.over or (begun and struck % 700 == 0):
            fuzz.check()
            page.close()
            fuzz.runs += 1
            page = fuzz.page()
    fuzz.check()
    assert fuzz.runs >= 5
    assert fuzz.reps >= 100
    assert fuzz.kinds == set(get_args(Fact)), "something was never done"
