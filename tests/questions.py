"""The page before a run at a desk: keys pressed, buttons clicked, and what came of it."""

from functools import partial
from typing import cast

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractButton, QLabel, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from app.run.readiness_form import ReadinessForm
from app.views.before.page import BeforePage
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose


class Questions:
    """A page with a clock for keys, the forms it told of, and how it ended."""

    def __init__(self, qtbot: QtBot, form: ReadinessForm | None = None) -> None:
        self.qtbot, self.now_s = qtbot, 0.0
        self.forms: list[ReadinessForm] = []
        self.ends: list[str] = []
        look = Look(choose(Place.TRAINING), "Inter", type_scale(16))
        self.page = BeforePage(look, form or ReadinessForm(), "Hugo", "Try-out", lambda: self.now_s)
        self.page.changed.connect(self.forms.append)
        self.page.answered.connect(lambda by_key: self.ends.append("answered" + " by key" * by_key))
        self.page.skipped.connect(lambda: self.ends.append("skipped"))
        self.page.left.connect(lambda: self.ends.append("left"))
        self.page.resize(1280, 720)
        qtbot.addWidget(self.page)
        self.page.show()
        self.page.take_focus()

    @property
    def form(self) -> ReadinessForm:
        return self.page.form

    def focused(self) -> QWidget:
        """The part of the page that the keys go to."""
        focused = cast("QWidget | None", self.page.focusWidget())
        return self.page if focused is None else focused

    def press(self, *keys: Qt.Key) -> "Questions":
        """Press keys as a person does: on whatever part of the page has the focus."""
        for key in keys:
            self.qtbot.keyClick(self.focused(), key)
        return self

    def number(self, *numbers: int) -> "Questions":
        return self.press(*(Qt.Key(Qt.Key.Key_0 + number) for number in numbers))

    def type(self, words: str) -> "Questions":
        self.qtbot.keyClicks(self.focused(), words)
        return self

    def button(self, name: str) -> QAbstractButton:
        """The button in sight whose accessible name begins so."""
        found = [
            button
            for button in self.page.findChildren(QAbstractButton)
            if button.isVisible() and button.accessibleName().startswith(name)
        ]
        assert found, f"no button '{name}' in sight"
        return found[0]

    def click(self, *names: str) -> "Questions":
        for name in names:
            self.qtbot.mouseClick(self.button(name), Qt.MouseButton.LeftButton)
        return self

    def act(self, *names: str) -> "Questions":
        """Do the accessible action of buttons, as a screen reader does."""
        for name in names:
            spoken = QAccessible.queryAccessibleInterface(self.button(name))
            does = spoken.actionInterface()
            assert does is not None
            told = partial(self._told_since, len(self.forms))
            does.doAction(does.actionNames()[0])
            self.qtbot.waitUntil(told, timeout=3_000)
        return self

    def _told_since(self, count: int) -> bool:
        return len(self.forms) > count

    def note(self) -> QLineEdit:
        note = self.page.findChild(QLineEdit, "note")
        assert isinstance(note, QLineEdit)
        return note

    def texts(self) -> str:
        return "\n".join(label.text() for label in self.page.findChildren(QLabel) if label.isVisible())
