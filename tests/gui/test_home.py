"""The first page by keys, by mouse, and with four hundred names."""

from datetime import timedelta
from pathlib import Path
from typing import cast

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QApplication, QDialog, QFileDialog, QLabel, QWidget
from pytestqt.qtbot import QtBot

from app.domain.plan import Side
from app.domain.squad import OwedKind
from app.views.home.owed_card import LateAnswer
from app.views.home.page import DEAF_S, HomePage
from app.views.home.people import GUEST, Trainee
from app.views.home.state import HomeState, Offer
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from tests.fitting import misfits, nameless
from tests.homes import DEMO, NOW, home_state, owed_rating

Key = Qt.Key
LONG = ("Maximiliana von der Wetterwarte zu Hohenfels " * 3)[:100].strip()


class Home:
    """A page with a clock for keys, and what it told of."""

    def __init__(self, qtbot: QtBot, state: HomeState) -> None:
        self.qtbot, self.now_s, self.told = qtbot, 100.0, list[object]()
        look = Look(choose(Place.TRAINING), "Inter", type_scale(16))
        doors = [("Sound", lambda: self.told.append("sound"))]
        self.page = HomePage(look, doors, lambda: self.now_s)
        page = self.page
        page.begun.connect(lambda plan, name: self.told.append((plan, name)))
        for signal in (page.athlete_chosen, page.plan_chosen, page.plan_brought, page.answered, page.unasked):
            signal.connect(self.told.append)
        page.resize(1366, 768)
        qtbot.addWidget(page)
        page.show()
        page.activateWindow()
        qtbot.waitUntil(page.isActiveWindow)
        page.show_state(state)
        page.take_focus()
        QApplication.processEvents()

    def press(self, *keys: Qt.Key) -> "Home":
        """Press keys as a person does: on whatever part of the page has the focus."""
        for key in keys:
            self.qtbot.keyClick(self._focused(), key)
        return self

    def _focused(self) -> QWidget:
        """Where keys go; the page itself where the window has not been given the focus."""
        focused = cast("QWidget | None", self.page.focusWidget())
        return self.page if focused is None else focused

    def type(self, words: str) -> "Home":
        for letter in words:
            press = QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, letter)
            QApplication.sendEvent(self._focused(), press)
        return self

    def click(self, name: str) -> "Home":
        found = [
            button
            for button in self.page.findChildren(QAbstractButton)
            if button.isVisible() and button.accessibleName().startswith(name)
        ]
        self.qtbot.mouseClick(found[0], Qt.MouseButton.LeftButton)
        return self

    def names(self) -> list[str]:
        return [row.shown for row in self.page.people.model.rows]

    def texts(self) -> str:
        return "\n".join(label.text() for label in self.page.findChildren(QLabel) if label.isVisible())


@pytest.fixture
def home(qtbot: QtBot) -> Home:
    return Home(qtbot, home_state())


@pytest.mark.parametrize("key", [Key.Key_Return, Key.Key_Enter, Key.Key_Space])
def test_one_key_begins_what_is_most_likely_and_the_button_says_which(home: Home, key: Qt.Key) -> None:
    home.click("Sound")
    home.page.take_focus()
    assert home.press(key).told == ["sound", (DEMO[0], "Hugo")]
    assert "Shoulder rotators, week 2, Hugo" in home.texts()


@pytest.mark.parametrize("key", [Key.Key_Return, Key.Key_Space])
def test_that_key_takes_up_a_run_that_was_cut_short_before_anything_else(home: Home, key: Qt.Key) -> None:
    done: list[str] = []
    home.page.offer(Offer("cut short", lambda: done.append("up"), lambda: done.append("down")))
    home.press(key)
    assert (done, home.told) == (["up"], [])


def test_a_run_that_was_cut_short_is_laid_down_by_the_mouse(home: Home) -> None:
    done: list[str] = []
    home.page.offer(Offer("cut short", lambda: done.append("up"), lambda: done.append("down")))
    home.click("Lay it down")
    assert done == ["down"]
    assert "cut short" not in home.texts()


def test_an_offer_that_comes_while_a_name_is_typed_leaves_the_keys_where_they_are(home: Home) -> None:
    home.type("in")
    home.page.offer(Offer("cut short", lambda: None, lambda: None))
    home.type("e")
    assert home.page.people.search.text() == "ine"


def test_a_key_held_down_or_meant_for_the_page_before_begins_nothing(home: Home) -> None:
    home.page.be_deaf()
    home.press(Key.Key_Return, Key.Key_Space)
    assert home.told == []
    home.now_s += DEAF_S
    home.press(Key.Key_Return)
    assert home.told == [(DEMO[0], "Hugo")]


def test_typing_filters_at_once_and_enter_takes_the_first(home: Home) -> None:
    home.type("ÍN")
    assert home.names()[0] == "Ines"
    assert home.told[-1] == "Ines"
    home.press(Key.Key_Return)
    assert home.page.people.search.text() == ""
    assert home.press(Key.Key_Return).told[-1] == (DEMO[0], "Ines")


def test_arrows_choose_among_those_that_are_left(home: Home) -> None:
    home.type("a")
    left = home.names()
    home.press(Key.Key_Down, Key.Key_Down, Key.Key_Up)
    assert home.told[-1] == left[1]


def test_esc_gives_back_who_was_chosen_before(home: Home) -> None:
    home.type("ines")
    home.press(Key.Key_Escape)
    assert home.told[-1] == "Hugo"
    assert home.page.athlete == "Hugo"


def test_arrows_alone_choose_without_typing(home: Home) -> None:
    place = home.names().index("Hugo")
    home.press(Key.Key_Down)
    assert home.told == [home.names()[place + 1]]


def test_a_name_is_chosen_by_the_mouse(home: Home) -> None:
    view = home.page.people.view
    index = home.page.people.model.index(2, 0)
    home.qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=view.visualRect(index).center())
    assert home.told == [home.names()[2]]


def test_a_new_name_and_a_guest_may_train(home: Home) -> None:
    home.type("Wanda  Q")
    assert home.names() == ["“Wanda Q”, a new name"]
    assert home.told[-1] == "Wanda Q"
    home.press(Key.Key_Escape).type("gues")
    assert home.told[-1] == GUEST


def test_four_hundred_names_in_any_script_and_of_any_length_are_found(qtbot: QtBot) -> None:
    people = (
        *(Trainee(f"Athlete {number:03}", NOW - timedelta(days=number)) for number in range(397)),
        Trainee("Ἀθηνᾶ Παπαδοπούλου"),
        Trainee("محمد الأمين"),
        Trainee(LONG),
    )
    home = Home(qtbot, HomeState(NOW.date(), people, LONG))
    assert len(home.names()) == 401
    assert misfits(home.page) == []
    assert home.type("396").names() == ["Athlete 396", "“396”, a new name"]
    home.press(Key.Key_Escape).type("παπα")
    home.press(Key.Key_Escape).type("الأ")
    assert {"Ἀθηνᾶ Παπαδοπούλου", "محمد الأمين"} <= set(home.told)


def test_a_plan_is_chosen_by_mouse_and_by_keys(home: Home) -> None:
    home.click("Landing control")
    assert home.told == [DEMO[1]]
    home.page.plans.cards[0].setFocus()
    home.press(Key.Key_Return)
    assert home.told == [DEMO[1], DEMO[0]]


def test_a_plan_that_cannot_be_led_says_why_and_cannot_be_begun(qtbot: QtBot, tmp_path: Path) -> None:
    broken = tmp_path / "broken.toml"
    broken.write_text("format = 1\n", encoding="utf-8")
    home = Home(qtbot, home_state(broken))
    assert "This plan cannot be led:\nbroken.toml:1:1:" in home.texts()
    home.click("broken.toml")
    assert home.told == []


def test_without_a_plan_nothing_can_be_begun(qtbot: QtBot) -> None:
    home = Home(qtbot, HomeState(NOW.date()))
    home.press(Key.Key_Return, Key.Key_Space)
    assert home.told == []
    assert "Choose a plan first." in home.texts()


def dropped(home: Home, *paths: Path) -> None:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    how = (Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    enter = QDragEnterEvent(QPoint(9, 9), *how)
    home.page.dragEnterEvent(enter)
    assert enter.isAccepted()
    home.page.dropEvent(QDropEvent(QPointF(9, 9), *how))


def test_a_plan_dropped_on_the_page_is_brought_and_begins_nothing(home: Home) -> None:
    dropped(home, DEMO[1])
    assert home.told == [DEMO[1]]


def test_anything_else_dropped_is_answered_with_what_can_be(home: Home, tmp_path: Path) -> None:
    dropped(home, tmp_path / "song.flac")
    assert home.told == []
    assert "Only a plan can be dropped here" in home.texts()
    dropped(home, DEMO[0], DEMO[1])
    assert "one file at a time" in home.texts()


def test_a_plan_is_opened_by_its_key(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_words: (str(DEMO[1]), ""))
    home.qtbot.keyClick(home.page, Key.Key_O, Qt.KeyboardModifier.ControlModifier)
    assert home.told == [DEMO[1]]


def test_the_page_of_keys_opens_and_closes_at_any_key(home: Home) -> None:
    home.press(Key.Key_F1)
    (dialog,) = home.page.findChildren(QDialog)
    assert dialog.isVisible()
    home.qtbot.keyClick(dialog, Key.Key_Space)
    assert not dialog.isVisible()
    assert home.told == []


def test_what_is_owed_is_answered_by_keys_alone(home: Home) -> None:
    home.press(Key.Key_F2, Key.Key_1)
    home.now_s += 0.5
    home.press(Key.Key_0, Key.Key_Return)
    assert home.told == [LateAnswer(owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo"), 10)]


def test_one_and_nought_slowly_are_nought(home: Home) -> None:
    home.press(Key.Key_F2, Key.Key_1)
    home.now_s += 3
    home.press(Key.Key_0, Key.Key_Return)
    assert home.told == [LateAnswer(owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo"), 0)]


def test_pain_is_answered_with_its_place_and_side_by_the_mouse(home: Home) -> None:
    home.click("Hugo: Landing control, yesterday. Answer")
    home.click("How much does it hurt this morning? 4").click("Left").click("Right")
    card = home.page.owed.open_card
    assert card is not None
    home.qtbot.keyClicks(card.place, "front of the  knee")
    home.click("Keep it")
    owed = owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo")
    assert home.told == [LateAnswer(owed, 4, "front of the knee", Side.RIGHT)]


def test_unanswered_is_kept_as_nothing(home: Home) -> None:
    home.press(Key.Key_F2, Key.Key_Return, Key.Key_5, Key.Key_Escape)
    assert home.told == []
    assert home.page.owed.open_card is None
    home.press(Key.Key_F2, Key.Key_Return)
    assert home.told == []


def test_what_is_not_to_be_asked_again_is_told(home: Home) -> None:
    home.click("Ines: Landing control, yesterday. Answer").click("Do not ask again")
    assert home.told == [owed_rating(OwedKind.SESSION_RPE, "Ines")]


def test_digits_answer_nobody_while_no_card_is_open(home: Home) -> None:
    home.type("7")
    assert home.page.people.search.text() == "7"
    assert home.page.owed.open_card is None


def test_a_card_that_is_open_stays_so_while_others_come_and_go(home: Home) -> None:
    home.press(Key.Key_F2, Key.Key_6)
    state = home_state()
    later = (owed_rating(OwedKind.SESSION_RPE, "Bram"), *state.owed[:1])
    home.page.show_state(HomeState(state.today, state.people, "Hugo", state.plans, state.plan, later))
    home.press(Key.Key_Return)
    assert home.told == [LateAnswer(owed_rating(OwedKind.NEXT_MORNING_PAIN, "Hugo"), 6)]


def test_everything_fits_and_has_a_name(home: Home) -> None:
    home.page.offer(Offer("Shoulder rotators, Hugo: cut short after 12 reps.", lambda: None, lambda: None))
    home.press(Key.Key_F2)
    home.page.show_notice("Only a plan can be dropped here.")
    home.qtbot.waitUntil(lambda: misfits(home.page) == [], timeout=3_000)
    assert nameless(home.page) == []
