"""Every page of the program, as it is seen, in any look: for tests that look at all of them."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication, QDialog, QMainWindow, QWidget

from app import wiring
from app.audio.trial import Trial
from app.domain.compiler import compile_timeline
from app.domain.correctable import Subject
from app.domain.corrections import Change, Correction, Target, history
from app.domain.dose import Dose
from app.domain.errors import FileProblemsError, Problem
from app.domain.keeping import Note
from app.domain.plan import Exercise, Side
from app.domain.squad import OwedKind, OwedRating
from app.planfile.screen_settings import ScreenSettings
from app.planfile.settings import Settings
from app.run.intents import Begin, CountRep, Intent, MarkFault, Pause, Stop, Tick
from app.run.readiness_form import ReadinessForm, Spot, Step
from app.run.sounding import NoSound
from app.run.state import Doing
from app.views.appearance import Appearance, SystemWish
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.before.page import BeforePage
from app.views.calibration import CalibrationPage
from app.views.framed import framed
from app.views.home.page import HomePage
from app.views.home.people import Trainee
from app.views.home.plans import OfferedPlan, figures_of
from app.views.home.state import HomeState, Offer
from app.views.lettering import load_fonts
from app.views.pages import Pages
from app.views.review.athlete.view import athlete_view
from app.views.review.correct_dialog import CorrectDialog
from app.views.review.details import RunDetails
from app.views.review.entry.dialog import TestDialog
from app.views.review.handout.dialog import ReportDialog
from app.views.review.page import ReviewPage
from app.views.review.planning.book import Shown as ShownDays
from app.views.review.planning.dialog import PlanDialog
from app.views.review.reference.dialog import ReferenceDialog
from app.views.review.reference.known import FIELD, Chosen, KnownReference
from app.views.review.room import Asks, ReviewRoom
from app.views.review.squad.line import squad_lines
from app.views.screen.page import ScreenPage
from app.views.sound.page import SoundPage
from app.views.theme import palette
from app.views.translation import tr
from app.views.widgets.plain import scrolling
from tests.fakes import HandClock, RecordingSpeaker
from tests.planned import compiled, own_pace
from tests.reviewing import run_view
from tests.squads import members, squad
from tests.squads import season as squad_season
from tests.summaries import season

NOW = datetime(2026, 11, 25, 17, 0, tzinfo=UTC)
BROKEN = FileProblemsError("draft.toml", (Problem(3, 1, "unknown key"),))
OWED = (
    OwedRating(
        OwedKind.SESSION_RPE, "1", "Ines", "Landing control, week 1", NOW.date(), NOW, "Europe/Berlin"
    ),
    OwedRating(
        OwedKind.NEXT_MORNING_PAIN, "2", "Hugo", "Shoulder rotators", NOW.date(), NOW, "Europe/Berlin"
    ),
)
WORK_MS = 20_000
PLANS = {
    path: wiring.read_plan(path).plan
    for path in (
        wiring.demo_folder() / "shoulder_rotators.toml",
        wiring.demo_folder() / "landing_control.toml",
    )
}
DEMO = compile_timeline(next(iter(PLANS.values())))
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


def home(appearance: Appearance, shown: Shown) -> QWidget:
    """The first page with a run that was cut short, three plans, six people and something owed."""
    doors = tuple((tr(words), _nothing) for words in ("Review what was done", "Group", "Sound", "Screen"))
    page = HomePage(appearance.training(shown.height), doors)
    people = tuple(Trainee(name, NOW) for name in ("Hugo", "Ines", "Kaya", "Lotte", "Esra", "Farid"))
    plans = [OfferedPlan(path, plan.title, figures_of(plan)) for path, plan in PLANS.items()]
    broken = OfferedPlan(Path("draft.toml"), "draft", problem=BROKEN)
    page.show_state(HomeState(NOW.date(), people, "Hugo", (*plans, broken), next(iter(PLANS)), OWED))
    page.offer(
        Offer("Landing control, Hugo: cut short after 12 reps. All of it is kept.", _nothing, _nothing)
    )
    page.show_notice("The record is on a slow disk.")
    return page


def before(form: ReadinessForm) -> Callable[[Appearance, Shown], QWidget]:
    """The page before a run, where it stands with these answers."""

    def make(appearance: Appearance, shown: Shown) -> QWidget:
        return BeforePage(appearance.training(shown.height), form, "Hugo", "Shoulder rotators, week 2")

    return make


def sound(appearance: Appearance, shown: Shown) -> QWidget:
    look, settings = appearance.training(shown.height), appearance.settings
    page = SoundPage(look, settings, lambda each: each, lambda: ("Hall speakers",), _no_trial)
    page.show_latency("simpleaudio", 40)
    return page


def calibration(appearance: Appearance, shown: Shown) -> QWidget:
    return CalibrationPage(appearance.training(shown.height), HandClock(), RecordingSpeaker(40), _nothing)


def _nothing(*_said: object) -> None:
    """What a page asks for is left alone."""


def _no_trial(_settings: Settings) -> Trial:
    raise AssertionError


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


def room(*, of: str | None = None, run: bool = False) -> Callable[[Appearance, Shown], QWidget]:
    """The room of the review: the squad, one athlete, or a run of theirs."""

    def make(appearance: Appearance, shown: Shown) -> QWidget:
        look = appearance.desk(shown.width)
        made = ReviewRoom(look, Asks(doors=((tr("Open a plan"), _nothing), (tr("Enter a test"), _nothing))))
        made.show_squad(squad_lines(members(squad(weeks=4))))
        if of is not None:
            made.open_athlete(of)
            made.show_athlete(athlete_view(squad_season(of, 4)))
        if run:
            made.open_run("run")
            made.show_run(run_view())
        frame = scrolling(made, made.accessibleName(), sideways=True)
        frame.setPalette(palette(look.scheme))
        frame.setAutoFillBackground(True)
        return frame

    return make


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


def as_page(dialog: QDialog) -> QWidget:
    """A dialog as part of a window, so that it is seen in the size of the window."""
    dialog.setWindowFlags(Qt.WindowType.Widget)
    return dialog


def entering(key: str, *typed: str) -> Callable[[Appearance, Shown], QWidget]:
    """The dialog for tests with these tries typed."""

    def make(appearance: Appearance, shown: Shown) -> QWidget:
        dialog = TestDialog(appearance.desk(shown.width), "Hugo", NOW.date())
        dialog.choose(key)
        for entry, words in zip(dialog.form.tries.entries, typed, strict=False):
            entry.setText(words)
        return as_page(dialog)

    return make


def planning(appearance: Appearance, shown: Shown) -> QWidget:
    """The dialog for planned sessions, with some of them."""
    dialog = PlanDialog(
        appearance.desk(shown.width), "Hugo", NOW.date(), tuple(PLANS), lambda path: PLANS[path].title
    )
    due = squad_season("Hugo", 4).due
    dialog.show_days(ShownDays(due, ("Hugo", "Ines", "Kaya", "Lotte"), ("Landing control, week 2",)))
    return as_page(dialog)


def reference(appearance: Appearance, shown: Shown) -> QWidget:
    """The dialog for the reference side, with one choice that holds and one that was replaced."""
    dialog = ReferenceDialog(appearance.desk(shown.width), "Ruben")
    target = Target(Subject.ATHLETE, "0190b5a0-0000-7000-8000-00000000a001")
    chosen = tuple(
        Chosen(
            Correction(
                f"choice-{place}", Change(target, FIELD, after, "Ruben", "operated side", NOW, "UTC"), before
            ),
            place == 0,
        )
        for place, (before, after) in enumerate((("left", "right"), (None, "left")))
    )
    dialog.show_known(KnownReference("Hugo", (target.of,), Side.RIGHT, chosen))
    return as_page(dialog)


def correcting(appearance: Appearance, shown: Shown) -> QWidget:
    """The dialog that corrects a session, with two bouts and a correction of one of them."""
    view = run_view()
    bouts = tuple((line.asked, line.record) for line in view.lines if line.record is not None)
    record = bouts[0][1]
    target = Target(Subject.BOUT, view.header.run_id, record.bout, record.attempt)
    change = Change(target, "pain", 5, "Ruben", "misheard", NOW, "UTC")
    dialog = CorrectDialog(appearance.desk(shown.width), "Ruben")
    known = history((Correction("correction-1", change, 6),))
    dialog.show_details(RunDetails(view.header, view.closing, bouts, known, ("Hugo", "Ines")))
    return as_page(dialog)


def reporting(appearance: Appearance, shown: Shown) -> QWidget:
    """The dialog for a report, with two notes on offer."""
    days = NOW.date() - timedelta(weeks=11), NOW.date()
    dialog = ReportDialog(appearance.desk(shown.width), "Hugo", days, QLocale().name()[:2])
    dialog.show_notes(
        tuple(Note(f"note-{n}", "Hugo", f"Steadier in set {n}.", "Ruben", NOW, "UTC") for n in (1, 2))
    )
    return as_page(dialog)


PAGES: dict[str, Callable[[Appearance, Shown], QWidget]] = {
    "home": home,
    "before": before(ReadinessForm(Step.SORENESS, 2, 3)),
    "before, pain": before(ReadinessForm(Step.PAIN, 2, 3, 4, 1)),
    "before, place": before(ReadinessForm(Step.PLACE, 2, 3, 4, 1, 6)),
    "before, health": before(ReadinessForm(Step.CHANGED, 2, 3, 4, 1, 6, Spot("knee", Side.LEFT))),
    "before, care": before(
        ReadinessForm(Step.CARE, 2, 3, 4, 1, 6, Spot("knee", Side.LEFT), changed=True, red_flag=True)
    ),
    "ready": athlete(),
    "lead-in": athlete(Begin(), 2_000),
    "work": athlete(Begin(), Doing.WORK, WORK_MS),
    "counting": athlete(Begin(), Doing.WORK, CountRep(), CountRep(), dose=own_pace((8, 12))),
    "rest": athlete(Begin(), Doing.WORK, WORK_MS, MarkFault("the shoulder hitches"), Doing.GAP, 1_000),
    "paused": athlete(Begin(), Doing.WORK, WORK_MS, Pause()),
    "finished": athlete(Begin(), Doing.WORK, WORK_MS, Doing.GAP, 1_000, Stop()),
    "sound": sound,
    "calibration": calibration,
    "screen": screen,
    "squad": room(),
    "tests, stances": entering("balance_errors", "0", "2", "1", "3", "6", "-"),
    "tests, hops": entering("ten_hops_flight", *["200 450"] * 10),
    "tests, a set": entering("one_rep_max_epley", "80 6"),
    "planning": planning,
    "report": reporting,
    "correction": correcting,
    "reference side": reference,
    "reviewed athlete": room(of="Hugo"),
    "reviewed run": room(of="Hugo", run=True),
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
            if isinstance(page, SoundPage):
                page.end()
            window.close()
            window.deleteLater()
