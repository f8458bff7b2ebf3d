"""The profile: painted anew when the line has moved by a pixel, and at once when the work begins."""

import pytest
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from app.domain.plan import Exercise
from app.domain.profile import profile_of
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from app.views.widgets.profile import ProfileView
from tests.planned import compiled, tempo_reps


class CountedProfile(ProfileView):
    """A profile that counts how often it is painted."""

    painted = 0

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        self.painted += 1
        super().paintEvent(event)


@pytest.fixture
def profile(qtbot: QtBot) -> CountedProfile:
    view = CountedProfile(Look(choose(Place.TRAINING), "Inter", type_scale(22)))
    qtbot.addWidget(view)
    view.resize(300, 80)
    exercise = Exercise("Row", tempo_reps(4, "2-0-2-0"))
    view.show_bout(profile_of(compiled(exercise).bouts[0], exercise), 0)
    with qtbot.waitExposed(view):
        view.show()
    view.show_moment(-3_000)
    QApplication.processEvents()
    return view


def paints(view: CountedProfile, qtbot: QtBot, *moments: float) -> int:
    """How often it is painted while it is shown these moments."""
    before = view.painted
    for moment in moments:
        view.show_moment(moment)
        QApplication.processEvents()
    return view.painted - before


def test_a_small_profile_is_painted_when_a_pixel_has_passed(profile: CountedProfile, qtbot: QtBot) -> None:
    ms_a_pixel = 1 / profile._px_a_ms
    assert paints(profile, qtbot, 1_000) == 1
    assert paints(profile, qtbot, 1_000 + 0.3 * ms_a_pixel, 1_000 + 0.6 * ms_a_pixel) == 0
    assert paints(profile, qtbot, 1_000 + 1.0 * ms_a_pixel) == 1


def test_the_beginning_of_the_work_is_painted_at_once(profile: CountedProfile, qtbot: QtBot) -> None:
    assert paints(profile, qtbot, -1) == 1
    assert paints(profile, qtbot, 0) == 1
