"""Every page of the program, as it is seen, in any look: for tests that look at all of them."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass

from PySide6.QtWidgets import QApplication, QMainWindow, QWidget

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.dose import Dose
from app.domain.plan import Exercise
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.run.intents import Begin, CountRep, Intent, MarkFault, Pause, Stop, Tick
from app.run.sounding import NoSound
from app.run.state import Doing
from app.views.appearance import Appearance, SystemWish
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.framed import framed
from app.views.lettering import load_fonts
from app.views.review.page import ReviewPage
from app.views.screen.page import ScreenPage
from app.views.theme import palette
from app.views.window import Pages
from tests.fakes import HandClock, RecordingSpeaker
from tests.planned import compiled, own_pace
from tests.summaries import season

WORK_MS = 20_000
DEMO = compile_timeline(wiring.read_plan(wiring.demo_folder() / "shoulder_rotators.toml").plan)
STEP_MS = 500


@dataclass(frozen=True, slots=True)
class Shown:
    """How a page is seen: width and height in logical pixels, and what the settings say."""

    width: int
    height: int
    screen: ScreenSettings


@contextmanager
def appearing(shown: Shown) -> Iterator[Appearance]:
    """The looks of these settings, and the program's language and direction as they say."""
    family = load_fonts(wiring.resources_folder() / "fonts")
    made = Appearance(family, wiring.resources_folder() / "translations", Settings(screen=shown.screen))
    made.hear(SystemWish())
    try:
        yield made
    finally:
        made.end()


def screen(appearance: Appearance, shown: Shown) -> QWidget:
    page = ScreenPage(
        appearance.training(shown.height), appearance.desk(shown.width), appearance.settings, SystemWish()
    )
    page.measure(shown.height)
    return page


def review(appearance: Appearance, shown: Shown) -> QWidget:
    page = ReviewPage(appearance.desk(shown.width), lambda: None)
    page.show_summaries(season(1))
    return framed(appearance.desk(shown.width), page, lambda: None)


def athlete(*acts: Intent | Doing | int, dose: Dose | None = None) -> Callable[[Appearance, Shown], QWidget]:
    """The athlete's page after these intents; a number lets so many ms pass, `Doing` the time until then.

    The session is the demonstration's, or one exercise of a dose.
    """

    def make(appearance: Appearance, shown: Shown) -> QWidget:
        clock = HandClock(5_000)
        timeline = DEMO if dose is None else compiled(Exercise("Wall throws", dose, cues=("Tall",)))
        session = RunSession(timeline, clock, RecordingSpeaker(), NoSound(), lambda _first, _facts: None)
        page = AthletePage(appearance.training(shown.height), session, "Hugo")
        for act in acts:
            if isinstance(act, Doing):
                while session.look().doing is not act:
                    clock.at_ms += STEP_MS
            elif isinstance(act, int):
                for _ in range(act // STEP_MS):
                    clock.at_ms += STEP_MS
                    session.act(Tick())
            else:
                session.act(act)
        return page

    return make


PAGES: dict[str, Callable[[Appearance, Shown], QWidget]] = {
    "ready": athlete(),
    "lead-in": athlete(Begin(), 2_000),
    "work": athlete(Begin(), Doing.WORK, WORK_MS),
    "counting": athlete(Begin(), Doing.WORK, CountRep(), CountRep(), dose=own_pace((8, 12))),
    "rest": athlete(Begin(), Doing.WORK, WORK_MS, MarkFault("the shoulder hitches"), Doing.GAP, 1_000),
    "paused": athlete(Begin(), Doing.WORK, WORK_MS, Pause()),
    "finished": athlete(Begin(), Doing.WORK, WORK_MS, Doing.GAP, 1_000, Stop()),
    "screen": screen,
    "review": review,
}


@contextmanager
def opened(name: str, shown: Shown) -> Iterator[QWidget]:
    """A page in sight."""
    with appearing(shown) as appearance:
        page = PAGES[name](appearance, shown)
        window, pages = QMainWindow(), Pages()
        window.setPalette(palette(appearance.training(shown.height).scheme))
        pages.addWidget(page)
        window.setCentralWidget(pages)
        window.resize(shown.width, shown.height)
        window.show()
        if isinstance(page, AthletePage):
            page.refresh()
        for _ in range(3):
            QApplication.processEvents()
        try:
            yield page
        finally:
            window.close()
            window.deleteLater()
