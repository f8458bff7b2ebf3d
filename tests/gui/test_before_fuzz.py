"""Thousands of random keys and clicks on the questions before a run: nothing breaks, nothing is passed by."""

import random

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton
from pytestqt.qtbot import QtBot

from app.domain.readiness import Decision
from app.run.readiness_form import Step
from tests.questions import Questions

STROKES = 1_500
KEYS = (
    *(Qt.Key(Qt.Key.Key_0 + digit) for digit in range(10)),
    *[Qt.Key.Key_Backspace] * 3,
    *[Qt.Key.Key_Space] * 2,
    Qt.Key.Key_Return,
    Qt.Key.Key_Enter,
    Qt.Key.Key_Y,
    Qt.Key.Key_N,
    Qt.Key.Key_Tab,
    Qt.Key.Key_Up,
    Qt.Key.Key_Down,
    Qt.Key.Key_Left,
    Qt.Key.Key_Right,
    Qt.Key.Key_Escape,
    Qt.Key.Key_F5,
)


def strike(asked: Questions, chance: random.Random) -> None:
    asked.now_s += chance.choice((0.01, 0.3, 2.0))
    if chance.random() < 0.25:
        buttons = [part for part in asked.page.findChildren(QAbstractButton) if part.isVisible()]
        chance.choice([part for part in buttons if part.isEnabled()]).click()
    elif chance.random() < 0.03:
        asked.press(Qt.Key.Key_S)
    else:
        asked.press(chance.choice(KEYS))


def test_random_keys_and_clicks_break_nothing_and_pass_no_note_by(qtbot: QtBot) -> None:
    chance, ends, held = random.Random(20261125), [], 0
    asked = Questions(qtbot)
    for _ in range(STROKES):
        strike(asked, chance)
        form = asked.form
        asked.ends = [end for end in asked.ends if end != "left"]
        assert (form.step is Step.DONE) is bool(asked.ends)
        if not asked.ends:
            continue
        if form.held:
            held += 1
            assert form.note.strip()
            assert (form.decision is Decision.SKIPPED) is (asked.ends == ["skipped"])
        ends += asked.ends
        assert len(asked.ends) == 1
        asked.page.close()
        asked = Questions(qtbot)
    assert {"answered", "skipped"} <= set(ends)
    assert held >= 5
