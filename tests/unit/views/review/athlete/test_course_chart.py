"""Load lately and usually: two lines, gaps until there are days enough, and never one over the other."""

from datetime import timedelta

import pytest

from app.views.review.athlete.course_chart import NO_COURSE, course_chart
from tests.reviewed import MONDAY, record, session

FIRST = MONDAY - timedelta(days=39)


def courses(days: int, rpe: int = 5) -> tuple[tuple[float | None, ...], tuple[float | None, ...]]:
    """Both lines of so many days in a row with a session of 40 min each."""
    runs = tuple(session(FIRST + timedelta(days=day), rpe=rpe) for day in range(days))
    last = FIRST + timedelta(days=days - 1)
    charted = course_chart(record(sessions=runs, first=FIRST, last=last, today=last))
    (panel,) = charted.data.panels
    lately, usually = panel.series
    return lately.values, usually.values


def test_a_load_that_never_changes_is_its_own_mean_lately_and_usually() -> None:
    # A weighted mean of equal values is that value, whatever the weights: 5 x 40 min = 200 AU.
    lately, usually = courses(40)
    assert lately[27:] == pytest.approx([200.0] * 13)
    assert usually[27:] == pytest.approx([200.0] * 13)


def test_there_is_a_gap_until_twenty_eight_days_are_known_in_a_row() -> None:
    lately, usually = courses(40)
    assert lately[:27] == usually[:27] == (None,) * 27


def test_with_fewer_days_it_says_what_is_missing_and_every_place_knows_why() -> None:
    runs = tuple(session(FIRST + timedelta(days=day)) for day in range(10))
    charted = course_chart(record(sessions=runs, first=FIRST, last=FIRST + timedelta(days=9)))
    assert charted.data.empty == NO_COURSE
    assert all(figure.value is None and figure.reason for why in charted.whys for figure in why)


def test_no_line_is_a_ratio() -> None:
    charted = course_chart(record(sessions=(session(),)))
    assert [series.name for series in charted.data.panels[0].series] == ["lately", "usually"]
    assert "ratio" not in " ".join(charted.data.spoken)


def test_why_tells_the_plain_means_beside_the_weighted_ones() -> None:
    # Arithmetic: 21 days of 200 AU and 7 of 400 have means of 400 and 250.
    runs = tuple(session(FIRST + timedelta(days=day), rpe=5 if day < 21 else 10) for day in range(28))
    last = FIRST + timedelta(days=27)
    charted = course_chart(record(sessions=runs, first=FIRST, last=last, today=last + timedelta(days=1)))
    assert len(charted.data.panels[0].series) == 2
    told = {figure.name: figure.value for figure in charted.whys[-1]}
    assert (told["Mean of the last 7 days"], told["Mean of the last 28 days"]) == (400, 250)
    assert {figure.unit for figure in charted.whys[-1]} == {"AU a day"}
