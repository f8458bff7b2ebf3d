"""The profile for those who asked for less motion: the line stands, the marker moves."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from app.domain.plan import Exercise
from app.domain.profile import profile_of
from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from app.views.widgets.profile import ProfileView
from tests.planned import compiled, tempo_reps

LOOK = Look(choose(Place.TRAINING), "Inter", type_scale(22))
EXERCISE = Exercise("Heel raise", tempo_reps(6, "2-1-1-0"))
REP_MS = 4_000


def view(qtbot: QtBot, look: Look) -> ProfileView:
    made = ProfileView(look)
    qtbot.addWidget(made)
    made.resize(1366, 300)
    made.show_bout(profile_of(compiled(EXERCISE).bouts[0], EXERCISE), 0)
    return made


def places(seen: ProfileView, moments: range) -> list[tuple[float, float]]:
    """Where the line of the second rep begins and where the ring is, at each moment."""
    found = []
    for at_ms in moments:
        seen.show_moment(at_ms)
        seen.grab()
        found.append((seen._x(REP_MS), seen.ring().center().x()))
    return found


def test_standing_the_line_keeps_its_place_while_the_ring_moves_along_it(qtbot: QtBot) -> None:
    seen = places(view(qtbot, replace(LOOK, still=True)), range(0, REP_MS, 250))
    assert len({line for line, _ in seen}) == 1
    rings = [ring for _, ring in seen]
    assert rings == sorted(set(rings))


def test_moving_the_ring_keeps_its_place_while_the_line_moves_past_it(qtbot: QtBot) -> None:
    seen = places(view(qtbot, LOOK), range(0, REP_MS, 250))
    assert len({round(ring, 6) for _, ring in seen}) == 1
    lines = [line for line, _ in seen]
    assert lines == sorted(set(lines), reverse=True)


def test_the_ring_is_in_sight_from_the_lead_in_to_the_end(qtbot: QtBot) -> None:
    seen = view(qtbot, replace(LOOK, still=True))
    for at_ms in range(-5_000, 6 * REP_MS + 1, 500):
        seen.show_moment(at_ms)
        assert seen.rect().contains(seen.ring().center().toPoint())


@pytest.mark.parametrize("still", [False, True])
def test_time_runs_from_left_to_right_in_every_reading_direction(still: bool, qtbot: QtBot) -> None:
    seen = view(qtbot, replace(LOOK, still=still))
    plain = seen.grab().toImage()
    seen.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    assert seen._x(REP_MS) < seen._x(2 * REP_MS)
    assert seen.grab().toImage() == plain


def test_a_profile_that_stands_can_be_laid_out_before_it_has_a_bout(qtbot: QtBot) -> None:
    seen = ProfileView(replace(LOOK, still=True))
    qtbot.addWidget(seen)
    seen.resize(800, 200)
    seen.show()
    seen.show_moment(100.0)
    seen.show_bout((), 0)
    assert not seen.grab().isNull()
