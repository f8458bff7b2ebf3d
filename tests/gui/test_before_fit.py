"""The questions before a run at many sizes, in large text and mirrored: nothing cut, nothing over another."""

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app import wiring
from app.domain.plan import Side
from app.run.readiness_form import ReadinessForm, Spot, Step
from app.views.before.body_map import PartButton
from app.views.before.page import BeforePage
from app.views.lettering import load_fonts, training_scale
from app.views.theme import Look, Place, choose
from tests.fitting import misfits, nameless

SIZES = [(1366, 768), (1920, 1080), (3840, 2160)]
LARGE = 1.0, 2.0
STEPS = [step for step in Step if step is not Step.DONE]
FULL = ReadinessForm(
    Step.CARE, 7, 7, 7, 7, 10, Spot("shoulder blade and upper back", Side.RIGHT), True, True, "since Monday"
)
LEAST_TARGET_PX = 24
"""WCAG 2.2, success criterion 2.5.8."""


@pytest.fixture(params=[Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft])
def _direction(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[None]:
    qapp.setLayoutDirection(request.param)
    yield
    qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def page_at(qtbot: QtBot, form: ReadinessForm, size: tuple[int, int], text: float = 1.0) -> BeforePage:
    family = load_fonts(wiring.resources_folder() / "fonts")
    look = Look(choose(Place.TRAINING), family, training_scale(size[1], text), text=text)
    page = BeforePage(look, form, "Hugo", "Shoulder rotators, week 2")
    qtbot.addWidget(page)
    page.resize(*size)
    page.show()
    for _ in range(3):
        QApplication.processEvents()
    return page


@pytest.mark.usefixtures("_direction")
@pytest.mark.parametrize("text", LARGE)
@pytest.mark.parametrize("size", SIZES)
def test_every_question_fits(size: tuple[int, int], text: float, qtbot: QtBot) -> None:
    for step in STEPS:
        page = page_at(qtbot, replace(FULL, step=step), size, text)
        assert (page.width(), page.height()) == size
        # The frames of slanted regions overlap; their shapes do not, see test_body_parts.
        assert [wrong for wrong in misfits(page) if "lies over PartButton" not in wrong] == []
        assert nameless(page) == []
        page.close()


def test_a_small_window_makes_nothing_larger_than_itself(qtbot: QtBot) -> None:
    for step in STEPS:
        page = page_at(qtbot, replace(FULL, step=step), (640, 480), 2.0)
        assert (page.width(), page.height()) == (640, 480)


@pytest.mark.parametrize("size", SIZES)
def test_every_region_is_large_enough_to_be_touched(size: tuple[int, int], qtbot: QtBot) -> None:
    page = page_at(qtbot, replace(FULL, step=Step.PLACE), size)
    small = [
        (button.accessibleName(), button.width(), button.height())
        for button in page.findChildren(PartButton)
        if min(button.width(), button.height()) < LEAST_TARGET_PX
    ]
    assert small == []


def test_the_note_is_in_sight_however_large_the_text_is(qtbot: QtBot) -> None:
    page = page_at(qtbot, FULL, (1366, 768), 2.0)
    note = page.focusWidget()
    assert note.objectName() == "note"
    assert not note.visibleRegion().isEmpty()
    assert note.visibleRegion().boundingRect().height() == note.height()
