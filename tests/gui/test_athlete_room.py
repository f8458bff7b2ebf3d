"""The athlete's screen with words of any length: the window keeps its size, and nothing runs into another."""

from itertools import pairwise

import pytest
from PySide6.QtCore import QRect
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, TempoReps
from app.domain.plan import Exercise, Plan, Sides, Stage, StageKind, Words
from app.domain.profile import profile_of
from app.domain.tempo import parse_tempo
from app.domain.timeline import Timeline
from app.run.intents import Begin, MarkFault, Pause, Tick
from app.run.sounding import NoSound
from app.views.athlete.headline import LEAST_SHRUNK, MARGIN, HeadlineView
from app.views.athlete.page import AthletePage
from app.views.athlete.session import RunSession
from app.views.lettering import load_fonts, type_scale
from app.views.theme import Look, Place, choose
from app.views.widgets.faces import Folding
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.profile import ProfileView
from tests.fakes import HandClock, RecordingSpeaker

SIZES = [(1366, 768), (1280, 720), (1920, 1080)]
LONGEST = ("shoulder blade down and back, slow on the way to the floor, " * 10)[:500]
READY, WORK, REST, PAUSED, OVER = -1, 8_000, 22_000, 9_000, 200_000


def endless() -> Timeline:
    exercise = Exercise(
        f"Exercise {LONGEST}"[:500],
        TempoReps(Band.exactly(3), parse_tempo("2-1-2-1")),
        sides=Sides.EACH,
        sets=2,
        rest_ms=30_000,
        setup=LONGEST,
        cues=(LONGEST,),
        faults=(LONGEST,),
        words=Words(eccentric=LONGEST, hold=LONGEST, concentric=LONGEST),
    )
    return compile_timeline(Plan(LONGEST, (Stage(LONGEST, StageKind.ACTIVATION, (exercise,)),)))


def ordinary() -> Timeline:
    return compile_timeline(wiring.read_plan(wiring.demo_folder() / "shoulder_rotators.toml").plan)


def page_at(qtbot: QtBot, timeline: Timeline, at_ms: int, size: tuple[int, int]) -> AthletePage:
    """The page of a run so long after ready, in a window of a size."""
    clock = HandClock()
    session = RunSession(timeline, clock, RecordingSpeaker(), NoSound(), lambda _first, _facts: None)
    family = load_fonts(wiring.resources_folder() / "fonts")
    page = AthletePage(Look(choose(Place.TRAINING), family, type_scale(size[1] * 22 / 1080)), session, "Hugo")
    qtbot.addWidget(page)
    if at_ms >= 0:
        session.act(Begin())
    while clock.at_ms < at_ms:
        clock.at_ms = min(clock.at_ms + 500, at_ms)
        session.act(Tick())
    if at_ms == REST:
        session.act(MarkFault(LONGEST))
    if at_ms == PAUSED:
        session.act(Pause())
    page.resize(*size)
    page.show()
    page.refresh()
    QApplication.processEvents()
    return page


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("at_ms", [READY, WORK, REST, PAUSED, OVER])
@pytest.mark.parametrize("made", [endless, ordinary])
def test_no_words_make_the_window_larger(
    made: object, at_ms: int, size: tuple[int, int], qtbot: QtBot
) -> None:
    assert callable(made)
    page = page_at(qtbot, made(), at_ms, size)
    assert (page.width(), page.height()) == size
    smallest = page.minimumSizeHint()
    assert smallest.width() <= size[0]
    assert smallest.height() <= size[1]


@pytest.mark.parametrize("at_ms", [READY, WORK, REST, PAUSED, OVER])
def test_no_words_lie_over_others(at_ms: int, qtbot: QtBot) -> None:
    page = page_at(qtbot, endless(), at_ms, SIZES[0])
    labels = [each for each in page.findChildren(QLabel) if each.isVisible() and each.text()]
    places = [(place_in(page, each), each) for each in labels if not _scrolled(each)]
    assert len(places) > 2
    for index, (place, label) in enumerate(places):
        assert page.rect().contains(place), label.text()[:30]
        for other, beside in places[index + 1 :]:
            assert not place.intersects(other), f"{label.text()[:30]} over {beside.text()[:30]}"


def place_in(page: QWidget, part: QWidget) -> QRect:
    return QRect(part.mapTo(page, part.rect().topLeft()), part.size())


def _scrolled(label: QLabel) -> bool:
    above: QWidget | None = label
    while above is not None:
        if above.objectName() == "qt_scrollarea_viewport" and not isinstance(above.parentWidget(), Folding):
            return True
        above = above.parentWidget()
    return False


@pytest.mark.parametrize("at_ms", [READY, OVER])
def test_what_scrolls_is_no_wider_than_its_place(at_ms: int, qtbot: QtBot) -> None:
    page = page_at(qtbot, endless(), at_ms, SIZES[0])
    areas = [each for each in page.findChildren(QScrollArea) if each.isVisible()]
    assert areas
    for area in areas:
        inside = area.widget()
        assert inside is not None
        assert inside.width() <= area.viewport().width()


def test_the_exercise_and_the_cue_are_in_sight_whatever_the_stage_is_called(qtbot: QtBot) -> None:
    page = page_at(qtbot, endless(), WORK, SIZES[0])
    seen = {each.text()[:8]: each for each in page.findChildren(FittedLabel) if each.isVisible()}
    for begins in ("Exercise", LONGEST[:8]):
        assert seen[begins].width() > SIZES[0][0] * 0.4


def test_a_long_word_for_a_phase_is_cut_before_the_count_is_too_small(qtbot: QtBot) -> None:
    page = page_at(qtbot, endless(), WORK, SIZES[0])
    (view,) = page.findChildren(HeadlineView)
    fit = view._fit()
    assert fit.pixels >= min(view.wished_px(), view.height() / 1.5)
    assert fit.word == LEAST_SHRUNK
    word = view._fitting_word(fit)
    assert word.endswith("…")
    assert view._width(fit, word) <= view.width() * (1 - 2 * MARGIN) + 1


@pytest.mark.parametrize(("tempo", "reps"), [("0.1-0-0.1-0", 200), ("1-0-1-0", 40), ("3-1-2-0", 8)])
def test_the_numbers_of_the_reps_never_run_into_each_other(tempo: str, reps: int, qtbot: QtBot) -> None:
    exercise = Exercise("Taps", TempoReps(Band.exactly(reps), parse_tempo(tempo)))
    bout = compile_timeline(Plan("Fast", (Stage("One", StageKind.OTHER, (exercise,)),))).bouts[0]
    view = ProfileView(Look(choose(Place.TRAINING), "Inter", type_scale(15.6)))
    qtbot.addWidget(view)
    view.resize(1366, 400)
    view.show_bout(profile_of(bout, exercise), 0)
    gap = view.height() * 0.025
    painted = view._firsts[:: view._step(gap)]
    metrics = QFontMetricsF(view._number_font)
    for one, other in pairwise(painted):
        end = view._x(one.start_ms) + gap + metrics.horizontalAdvance(str(one.rep))
        assert end <= view._x(other.start_ms)
    assert reps > 100 or painted == view._firsts
