"""Which plans are offered, in which order, and which is likely."""

from collections.abc import Callable
from datetime import time
from pathlib import Path

import pytest

from app import wiring
from app.domain.plan import WrittenPlan
from app.views.home.plans import PlanShelf, Today, Why, likely, offered_plans
from tests.rig import PLAN

Write = Callable[[str], Path]
AT_SIX = time(18)


@pytest.fixture
def write(tmp_path: Path) -> Write:
    def made(title: str) -> Path:
        path = tmp_path / f"{title}.toml"
        path.write_text(PLAN.replace("Try-out", title), encoding="utf-8")
        return path

    return made


@pytest.fixture
def shelf() -> PlanShelf:
    return PlanShelf(wiring.read_plan)


def test_what_is_known_of_a_plan_is_its_stages_its_exercises_and_its_length(
    shelf: PlanShelf, write: Write
) -> None:
    (plan,) = offered_plans(shelf, [], [write("One")], [])
    assert plan.figures is not None
    assert (plan.title, plan.figures.stages, plan.figures.exercises) == ("One", ("One",), 1)
    # By hand: 2 sets of 2 reps of 4 s, a lead-in of 5 s before the first, a rest of 30 s before the second.
    assert plan.figures.length_ms == 5_000 + 8_000 + 30_000 + 8_000
    assert not plan.figures.own_pace


def test_handed_over_comes_first_then_planned_then_led_then_the_demo_each_once(
    shelf: PlanShelf, write: Write
) -> None:
    handed, planned, led, demo = (write(title) for title in ("Handed", "Planned", "Led", "Demo"))
    today = [Today("Hugo", "Planned", planned, AT_SIX, done=False)]
    plans = offered_plans(shelf, today, [led, planned, handed], [demo, led], last=led, handed=handed)
    assert [(plan.title, plan.why) for plan in plans] == [
        ("Handed", Why.HANDED),
        ("Planned", Why.PLANNED),
        ("Led", Why.LAST),
        ("Demo", Why.DEMO),
    ]
    assert plans[1].at == AT_SIX


def test_a_planned_session_without_a_file_takes_the_known_plan_of_its_title(
    shelf: PlanShelf, write: Write
) -> None:
    led, other = write("Led"), write("Other")
    today = [Today("Hugo", "Led", None, None, done=False), Today("Hugo", "Unknown", None, None, done=False)]
    plans = offered_plans(shelf, today, [other, led], [])
    assert [(plan.path, plan.why) for plan in plans] == [
        (led, Why.PLANNED),
        (None, Why.PLANNED),
        (other, Why.RECENT),
    ]


def test_a_plan_that_cannot_be_read_says_why_and_is_not_likely(shelf: PlanShelf, write: Write) -> None:
    broken, sound = write("Broken"), write("Sound")
    broken.write_text("format = 1\n", encoding="utf-8")
    plans = offered_plans(shelf, [], [broken, sound], [])
    assert plans[0].problem is not None
    assert "title" in str(plans[0].problem)
    best = likely(plans)
    assert best is not None
    assert best.path == sound


def test_what_was_done_today_is_not_likely_once_more(shelf: PlanShelf, write: Write) -> None:
    done, other = write("Done"), write("Other")
    plans = offered_plans(shelf, [Today("Hugo", "Done", done, None, done=True)], [done, other], [])
    best = likely(plans)
    assert best is not None
    assert (plans[0].why, best.path) == (Why.DONE, other)
    assert likely(plans[:1]) == plans[0]
    assert likely([]) is None


def test_a_plan_is_read_once_until_its_file_changes(write: Write) -> None:
    read: list[Path] = []

    def reading(path: Path) -> WrittenPlan:
        read.append(path)
        return wiring.read_plan(path)

    shelf, path = PlanShelf(reading), write("One")
    assert shelf.look(path) == shelf.look(path)
    assert len(read) == 1
    path.write_text(PLAN.replace("Try-out", "Changed"), encoding="utf-8")
    changed = path.stat().st_mtime_ns + 1
    import os

    os.utime(path, ns=(changed, changed))
    assert shelf.offered(path, Why.RECENT).title == "Changed"
