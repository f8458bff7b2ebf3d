"""Review on a shared machine and before others: the curtain, presentation, and what somebody agreed to."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton
from pytestqt.qtbot import QtBot

from app.domain.keeping import Person
from app.domain.records import RunSummary
from app.planfile.passphrase import CURTAIN, hashed
from app.planfile.settings import Settings
from app.store.database import open_database
from app.views.lettering import desk_scale, load_fonts
from app.views.review.content import ReviewContent
from app.views.review.curtain import WRONG, Curtain
from app.views.review.page import ALL, ReviewPage
from app.views.review.presentation import NOTICE
from app.views.review.room import ReviewRoom
from app.views.theme import LIGHT, Look
from tests.laptops import RUNS, Laptop
from tests.rig import Rig
from tests.summaries import summary

FONTS = Path(__file__).parents[2] / "resources" / "fonts"
THREE = (
    summary(run_id="run-1", athlete="Ines", pain=7, invented=False),
    summary(run_id="run-2", athlete="Hugo", pain=2, invented=False),
    summary(run_id="run-3", athlete="Kaya", pain=0, invented=False),
)


@pytest.fixture
def page(qtbot: QtBot) -> Iterator[ReviewPage]:
    made = ReviewPage(
        Look(LIGHT, load_fonts(FONTS), desk_scale(1366)), lambda: None, lambda _run, _look: None
    )
    qtbot.addWidget(made)
    made.resize(1366, 768)
    made.show()
    made.show_summaries(THREE)
    yield made
    made.close()


def content(page: ReviewPage) -> ReviewContent:
    assert page.content is not None
    return page.content


def everything_said(page: ReviewPage) -> str:
    """All that the page shows or tells a screen reader, and what it would copy."""
    shown = content(page)
    parts = [label.text() for label in page.findChildren(QLabel)]
    parts += [page.athlete.itemText(place) for place in range(page.athlete.count())]
    parts += [str(page.athlete.itemData(place)) for place in range(page.athlete.count())]
    for table in (shown.model, shown.week_card.model, shown.load_card.model):
        for column in table.columns:
            parts += [column.title, *(column.text(row) for row in table.rows)]
    return "\n".join(parts)


def test_in_presentation_nobody_is_named_but_the_one_chosen_and_no_pain_is_shown(
    qtbot: QtBot, page: ReviewPage
) -> None:
    page.choose_athlete("Hugo")
    qtbot.keyClick(page, Qt.Key.Key_F8)
    said = everything_said(page)
    assert page.title.text() == "Hugo"
    assert NOTICE in page.subtitle.text()
    assert [name for name in ("Ines", "Kaya", "Pain") if name in said] == []
    assert not content(page).correct.isVisible()
    page.choose_athlete(None)
    assert "Ines" not in everything_said(page)
    assert sorted(run.athlete for run in content(page).model.rows) == ["Athlete 1", "Athlete 2", "Hugo"]


def test_with_all_shown_nobody_is_named(page: ReviewPage) -> None:
    page.present(on=True)
    assert [name for name in ("Ines", "Kaya", "Hugo", "Pain") if name in everything_said(page)] == []
    assert page.athlete.itemText(0) == ALL


def test_presentation_ends_where_it_began(qtbot: QtBot, page: ReviewPage) -> None:
    page.choose_athlete("Hugo")
    before = everything_said(page)
    qtbot.keyClick(page, Qt.Key.Key_F8)
    page.choose_athlete("Athlete 1")
    qtbot.keyClick(page, Qt.Key.Key_F8)
    assert everything_said(page) == before
    assert page.title.text() == "Hugo"
    assert content(page).correct.isVisible()
    assert "Pain" in before


def test_new_runs_come_in_hidden_too(page: ReviewPage) -> None:
    page.present(on=True)
    page.show_summaries((*THREE, summary(run_id="run-4", athlete="Wendelin", pain=9)))
    assert "Wendelin" not in everything_said(page)


def test_the_line_says_what_the_athlete_chosen_agreed_to(page: ReviewPage) -> None:
    page.show_people((Person("1", "Hugo", None, date(2026, 1, 2), "training data"), Person("2", "Ines")))
    assert not page.consent.isVisible()
    page.choose_athlete("Hugo")
    assert (page.consent.isVisible(), page.consent.text()) == (
        True,
        "Consent since 2 Jan 2026: training data",
    )
    page.choose_athlete("Ines")
    assert page.consent.text() == "Consent: unknown"
    page.present(on=True)
    assert not page.consent.isVisible()


def test_an_imported_session_shows_its_day_and_leaves_the_rest_unknown(page: ReviewPage) -> None:
    imported: RunSummary = replace(
        summary(invented=False, imported=True, reps_prescribed=0, reps_met=0, reps_done=0, pain=None),
        outcome=None,
        elapsed_ms=None,
    )
    page.show_summaries((imported,))
    row = {column.title: column.text(imported) for column in content(page).model.columns}
    assert row["Date and time"] == "Sat 21 Nov 2026"
    assert (row["Reps met"], row["Outcome"], row["Minutes"], row["Load, AU"]) == ("–", "unknown", "–", "–")
    assert row["Data"] == "imported"
    assert content(page).week_card.model.rows == ()
    load = content(page).load_card.model
    assert next(column.text(load.rows[0]) for column in load.columns) == "Sat 21 Nov 2026"


@pytest.fixture
def rig(qtbot: QtBot, tmp_path: Path) -> Iterator[Rig]:
    Laptop(tmp_path / "own.db", 1).lead(RUNS)
    made = Rig(qtbot, tmp_path, open_database)
    yield made
    made.window.close()


def shown(rig: Rig) -> Callable[[], bool]:
    return lambda: any(room.squad.lines for room in rig.window.findChildren(ReviewRoom))


def test_review_opens_at_once_where_no_passphrase_is_kept(rig: Rig, qtbot: QtBot) -> None:
    rig.open()
    rig.click("Review what was done")
    qtbot.waitUntil(shown(rig))
    (room,) = rig.window.findChildren(ReviewRoom)
    assert (room.isVisible(), room.presenting) == (True, False)
    qtbot.keyClick(room.squad.table, Qt.Key.Key_F8)
    assert room.presenting


def test_review_opens_in_presentation_where_the_settings_say_so(rig: Rig, qtbot: QtBot) -> None:
    rig.settings = Settings(presentation=True)
    rig.open()
    rig.click("Review what was done")
    qtbot.waitUntil(shown(rig))
    (room,) = rig.window.findChildren(ReviewRoom)
    told = [column.text(line) for line in room.squad.lines for column in room.squad.model.columns]
    assert "Athlete 1" in told
    assert "Hugo" not in " ".join((rig.texts(), *told))
    assert "Pain" not in [column.title for column in room.squad.model.columns]


def test_a_passphrase_is_asked_for_each_time_and_the_screen_says_what_it_is_worth(
    rig: Rig, qtbot: QtBot
) -> None:
    rig.settings = Settings(passphrase=hashed("sand und see"))
    rig.open()
    rig.click("Review what was done")
    (curtain,) = rig.window.findChildren(Curtain)
    assert CURTAIN in [label.text() for label in curtain.findChildren(QLabel)]
    assert rig.window.findChildren(ReviewRoom) == []
    qtbot.keyClicks(curtain.entry, "sand am see")
    qtbot.keyClick(curtain.entry, Qt.Key.Key_Return)
    assert WRONG in [label.text() for label in curtain.findChildren(QLabel)]
    assert rig.window.findChildren(ReviewRoom) == []
    qtbot.keyClicks(curtain.entry, "sand und see")
    (button,) = curtain.findChildren(QPushButton)
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(shown(rig))
    (room,) = rig.window.findChildren(ReviewRoom)
    assert room.isVisible()
    qtbot.keyClick(room.squad.table, Qt.Key.Key_Escape)
    assert not room.isVisible()
    rig.click("Review what was done")
    assert not room.isVisible()
    *_, again = rig.window.findChildren(Curtain)
    qtbot.keyClick(again, Qt.Key.Key_Escape)
    assert not room.isVisible()
