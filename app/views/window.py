"""The window: the pages on top of each other, and the way from one to the next."""

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QIcon, QKeyEvent, QKeySequence, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QMainWindow, QMessageBox, QWidget

from app.domain.errors import PacewrightError
from app.domain.plan import WrittenPlan
from app.planfile.settings import Settings
from app.views.appearance import Appearance
from app.views.athlete.around import Around
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.before.asking import Asking
from app.views.before.page import BeforePage
from app.views.home.page import HomePage
from app.views.homing import Homing
from app.views.house import House, Wish
from app.views.leading import Leading
from app.views.pages import Pages
from app.views.remembered import Remembered
from app.views.reviewing import Reviewing
from app.views.rooms import Room, Rooms, as_widget
from app.views.surroundings import Surroundings
from app.views.theme import Look, palette
from app.views.translation import message, tr
from app.views.unfinished import GONE, Unfinished
from app.views.worker import RecordKeeper

REBUILD_AFTER_MS = 120
SKIPPED = message("Skipped for today. What you wrote is kept for your practitioner.")
UNWRITTEN = message("Part of what was done is not in the record yet. Try again, or leave without it.")


class Window(QMainWindow):
    """Owns the pages.

    `broken` carries the sentence for what it cannot go on without: a record that cannot be opened, a roster
    that is not in order.
    """

    broken = Signal(str)

    def __init__(self, house: House, wish: Wish, family: str) -> None:
        super().__init__()
        self._house, self._wish = house, wish
        self._appearance = Appearance(family, house.translations, _settings(house), self)
        self._appearance.changed.connect(self._renew)
        self.setWindowTitle("Pacewright")
        self.setWindowIcon(QIcon(str(house.icon)))
        self.resize(1280, 720)
        self._keeper = RecordKeeper(house.open_record, self)
        self._keeper.failed.connect(self._on_failed)
        self._keeper.opened.connect(self._on_opened)
        self._keeper.troubled.connect(self._show_trouble)
        self._keeper.noticed.connect(self._show_notice)
        self._record_open = self._never_open = False
        self._trouble = self._notice = ""
        self._settled = self._closed = self._key_led_on = False
        self._leading = Leading(house, self._keeper, self)
        self._asking = Asking(house, self._keeper, self)
        self._homing = Homing(house, self._keeper, Remembered(house.state), self)
        self._homing.begun.connect(self._begin_plan)
        self._homing.taken_up.connect(lambda cut: self._or_say(partial(self.take_up, cut)))
        self._homing.laid_down.connect(lambda cut: self._or_say(partial(self.lay_down, cut)))
        self._leading.began.connect(self._show_session)
        self._reviewing = Reviewing(house, self._keeper, self._go_home)
        self._leading.under_way.connect(self._asking.close)
        self._page: AthletePage | BeforePage | None = None
        self._surroundings = Surroundings(house, self._keeper, self._tell_next)
        self._rooms = Rooms(house, self._keeper, self._appearance, self)
        self._room: Room | None = None
        self._pages = Pages()
        self.setCentralWidget(self._pages)
        self._built_height = self.height()
        self._resized = QTimer(self, singleShot=True, interval=REBUILD_AFTER_MS)
        self._resized.timeout.connect(self._rebuild)
        self._start = self._build_start()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Once the window has been seen, do what waited for that."""
        super().paintEvent(event)
        if not self._settled:
            QTimer.singleShot(0, self.settle)

    def settle(self) -> None:
        """Do, once, what waits for the first paint: open the record, show what was wished for."""
        if self._settled or self._closed:
            return
        self._settled = True
        self._keeper.open()
        try:
            names = tuple(athlete.name for athlete in self._house.read_athletes())
            self._homing.settle(names, self._wish.athlete)
            self._start.take_focus()
            if self._wish.session is not None and self._wish.group is not None:
                self._enter(partial(self._rooms.group, (self._wish.session, self._wish.group)))
            elif self._wish.session is not None:
                self.begin_session(self._wish.session, self._homing.athlete)
                self._homing.led(self._wish.plan, self._homing.athlete)
        except PacewrightError as error:
            self.broken.emit(str(error))

    def choose_plan(self, path: Path) -> None:
        """Read a plan and show the session it makes, or say what is wrong with it."""
        self._begin_plan(path, self._homing.athlete)

    def take_over(self, plan: Path | None, athlete: str | None) -> None:
        """Come to the front with what another start of the program wished for; a run goes on as it is."""
        if athlete is not None:
            self._homing.choose_athlete(athlete)
        if plan is not None:
            self._homing.bring(plan)
        if self._pages.currentWidget() is self._reviewing.frame:
            self._go_home()
        self.setWindowState(self.windowState() & ~Qt.WindowState.WindowMinimized)
        self.raise_()
        self.activateWindow()

    def _begin_plan(self, path: Path, name: str) -> None:
        def begin() -> None:
            self.begin_session(self._house.read_plan(path), name)
            self._homing.led(path, name)

        self._or_say(begin)

    def begin_session(self, session: WrittenPlan, name: str) -> None:
        """Show the session of an athlete, ready to begin."""
        self._leading.begin(session, name)

    def take_up(self, unfinished: Unfinished) -> None:
        """Show a run that was cut short, standing still at its bout; or say why it can't be led on."""
        if not self._leading.take_up(unfinished):
            self._start.show_notice(tr(GONE))

    def lay_down(self, unfinished: Unfinished) -> None:
        """Close a run that was cut short as it stands: abandoned, every rep kept."""
        self._leading.lay_down(unfinished)
        self._homing.look_again()

    def _show_session(self) -> None:
        if self._leading.session is not None:
            self._surroundings.look_ahead(self._leading.athlete)
            if self._leading.fresh and self._appearance.settings.ask_before:
                self._asking.open(self._leading.athlete)
            self._page = self._build_page(self._leading.session)

    def _turn_page(self, by_key: bool = False) -> None:
        """Show what comes after the questions, or the questions again."""
        self._key_led_on = by_key
        page, session = self._page, self._leading.session
        if page is not None and session is not None:
            self._page = self._build_page(session)
            self._drop(page)

    def _ask_again(self) -> None:
        """Go back from the session that stands ready to the questions; to the start where none were asked."""
        if self._asking.reopen():
            self._turn_page()
        else:
            self.leave_session()

    def _skip_today(self) -> None:
        self.leave_session()
        self._start.show_notice(self._trouble or tr(SKIPPED))

    def leave_session(self) -> None:
        """Go back to the start page; a run that is not over is abandoned, every finished rep kept."""
        page, self._page = self._page, None
        if page is None:
            return
        self._drop(page)
        self._start.be_deaf()
        self._start.show_notice(self._trouble or self._notice)
        self._leading.leave()
        self._asking.close(None)
        self._go_home()

    def open_review(self) -> None:
        """Show what was done, once the passphrase was said where there is one."""
        self._or_say(lambda: self._reviewing.enter(self._desk_look(), self, self._show_room))

    def open_sound(self) -> None:
        """Let the person choose how they are led by ear."""
        self._or_say(lambda: self._enter(self._rooms.sound))

    def open_screen(self) -> None:
        """Let the person choose how the screens look."""
        self._or_say(lambda: self._enter(self._rooms.screen))

    def open_group(self) -> None:
        """Let a coach lead a group."""
        self._or_say(lambda: self._enter(self._rooms.group))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """F11 is full screen; Esc leaves it, then the review, which F8 makes fit to be shown to others.

        Ctrl and the comma lead from the start page to how the screens look.
        """
        if event.key() == Qt.Key.Key_F11:
            self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)
        elif event.key() == Qt.Key.Key_Escape and self.isFullScreen():
            self.showNormal()
        elif event.key() == Qt.Key.Key_Escape and self._pages.currentWidget() is self._reviewing.frame:
            self._go_home()
        elif event.matches(QKeySequence.StandardKey.Preferences) or _is_ctrl_comma(event):
            if self._pages.currentWidget() is self._start:
                self.open_screen()
        elif event.key() == Qt.Key.Key_F8:
            self._reviewing.turn()
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Keep what was done, then let everything go."""
        event.accept()
        if self._closed:
            return
        self._closed = True
        try:
            self._homing.close()
            self._leave_room()
            self.leave_session()
        finally:
            self._appearance.end()
            self._leading.close()
            self._finish_record()

    def _finish_record(self) -> None:
        again = QMessageBox.StandardButton.Retry
        choices = again | QMessageBox.StandardButton.Discard
        # A record that never opened takes nothing however often it is tried.
        while not self._never_open and (sentence := self._asking.finish()) is not None:
            if QMessageBox.warning(self, "Pacewright", f"{sentence}\n\n{tr(UNWRITTEN)}", choices) != again:
                break
        self._keeper.close()

    def _or_say(self, act: Callable[[], object]) -> None:
        self._start.show_notice("")
        try:
            act()
        except PacewrightError as error:
            self._start.show_notice(str(error))

    def _show_room(self, room: QWidget) -> None:
        if self._pages.indexOf(room) < 0:
            self._pages.addWidget(room)
        self._pages.setCurrentWidget(room)
        room.setFocus()

    def _enter(self, make: Callable[[], Room]) -> None:
        self._leave_room()
        self._room = make()
        self._room.left.connect(self._leave_room)
        self._show_room(as_widget(self._room))

    def _leave_room(self) -> None:
        room, self._room = self._room, None
        if room is not None:
            room.end()
            self._go_home()
            self._drop(as_widget(room))

    def _go_home(self) -> None:
        self._pages.setCurrentWidget(self._start)
        self._start.take_focus()
        self._homing.look_again()

    def _on_opened(self) -> None:
        self._record_open = True
        self._homing.look_again()
        self._keeper.back_up(self._house.back_up_record)

    def _show_notice(self, sentence: str) -> None:
        self._notice = sentence
        if not self._trouble and not self._closed:
            self._start.show_notice(sentence)

    def _on_failed(self, sentence: str) -> None:
        if self._closed:
            return
        if not self._record_open:
            self._never_open = True
            self.broken.emit(sentence)
        elif self._page is None:
            QMessageBox.warning(self, "Pacewright", sentence)
        else:
            self._show_trouble(sentence)

    def _show_trouble(self, sentence: str) -> None:
        self._trouble = sentence
        if self._page is not None:
            self._page.show_trouble(sentence)
        elif not self._closed:
            self._start.show_notice(sentence)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Build the pages anew, with letters to match, once the window has another size for good."""
        super().resizeEvent(event)
        self._resized.start()

    def _look(self) -> Look:
        return self._appearance.training(self.height())

    def _desk_look(self) -> Look:
        return self._appearance.desk(self.width())

    def _rebuild(self) -> None:
        if self.height() != self._built_height:
            self._build_anew()

    def _renew(self) -> None:
        """Let every page look as it is to look now."""
        self._reviewing.renew(self._desk_look(), self, self._show_room)
        self._build_anew()

    def _build_anew(self) -> None:
        self._built_height = self.height()
        old_start, old_page = self._start, self._page
        showing_start = self._pages.currentWidget() is old_start
        self._start = self._build_start()
        self._start.show_notice(old_start.notice)
        self._drop(old_start)
        if showing_start:
            self._pages.setCurrentWidget(self._start)
        if self._leading.session is not None and old_page is not None:
            page = self._page = self._build_page(self._leading.session)
            if isinstance(page, AthletePage) and isinstance(old_page, AthletePage):
                page.ask_again(old_page.question)
            self._drop(old_page)

    def _build_start(self) -> HomePage:
        look = self._look()
        self.setPalette(palette(look.scheme))
        doors = (
            (tr("Review what was done"), self.open_review),
            (tr("Group"), self.open_group),
            (tr("Sound"), self.open_sound),
            (tr("Screen"), self.open_screen),
        )
        start = self._homing.build(look, doors)
        self._pages.addWidget(start)
        return start

    def _build_page(self, session: RunSession) -> AthletePage | BeforePage:
        asked = self._asking.form
        if asked is None or asked.may_begin:
            return self._build_athlete_page(session)
        page = BeforePage(self._look(), asked, self._leading.athlete, session.timeline.plan.title)
        page.show_trouble(self._trouble)
        page.changed.connect(self._asking.hold)
        page.answered.connect(self._turn_page)
        page.skipped.connect(self._skip_today)
        page.left.connect(self.leave_session)
        self._show_room(page)
        page.take_focus()
        return page

    def _build_athlete_page(self, session: RunSession) -> AthletePage:
        page = AthletePage(self._look(), session, self._leading.athlete, around=self._around())
        page.show_trouble(self._trouble)
        page.left.connect(self.leave_session)
        page.due.connect(self._leading.ticker.soon)
        self._leading.ticker.tick.connect(page.refresh)
        self._show_room(page)
        return page

    def _around(self) -> Around:
        back = self._ask_again if self._leading.fresh else None
        pressed, self._key_led_on = self._key_led_on, False
        return self._surroundings.around(back, key_just_pressed=pressed)

    def _tell_next(self, when: str) -> None:
        if isinstance(self._page, AthletePage):
            self._page.show_next_session(when)

    def _drop(self, page: QWidget) -> None:
        if isinstance(page, AthletePage):
            self._leading.ticker.tick.disconnect(page.refresh)
        self._pages.removeWidget(page)
        page.deleteLater()


def _settings(house: House) -> Settings:
    """The settings; the defaults where they are not in order, which is said as soon as they are wanted."""
    try:
        return house.read_settings()
    except PacewrightError:
        return Settings()


def _is_ctrl_comma(event: QKeyEvent) -> bool:
    return event.key() == Qt.Key.Key_Comma and event.modifiers() == Qt.KeyboardModifier.ControlModifier
