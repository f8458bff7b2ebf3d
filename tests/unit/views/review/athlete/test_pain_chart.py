"""Pain by day, with its zones by band and word and the rule of the next morning in words."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.pain_chart import pain_chart
from app.views.review.athlete.view import athlete_view
from app.views.review.figure_words import PAINFUL
from tests.answered import answers
from tests.reviewed import MONDAY, record, session
from tests.squads import nothing

DAYS = [MONDAY + timedelta(days=number) for number in range(5)]


def looked() -> AthleteRecord:
    said = [
        replace(answers(pain=2), at=datetime(day.year, day.month, day.day, 9, tzinfo=UTC), zone="UTC")
        for day in (DAYS[0], DAYS[1], DAYS[4])
    ]
    runs = (
        session(DAYS[0], pain=6, pain_next_morning=2),
        session(DAYS[1], pain=4, pain_next_morning=3),
        session(DAYS[2], pain=0, pain_next_morning=None),
        session(DAYS[3], pain=None, pain_next_morning=None, next_morning_asked=False),
    )
    return record(sessions=runs, readiness=tuple(said))


def test_each_day_says_whether_pain_had_settled_by_the_next_morning() -> None:
    data = pain_chart(looked()).data
    assert [data.cells(place)[-1] for place in range(5)] == [
        "settled",
        "not settled",
        "not answered",
        "not known",
        "no session",
    ]
    assert [line.rpartition(" · ")[2] for line in data.spoken] == [
        "settled by the next morning",
        "not settled by the next morning",
        "next morning not answered",
        "next morning not known",
        "no session",
    ]


def test_what_is_unknown_is_a_gap_and_never_nought() -> None:
    before, during, after = pain_chart(looked()).data.all_series
    assert list(before.values) == [2, 2, None, None, 2]
    assert list(during.values) == [6, 4, 0, None, None]
    assert during.unknown == (3,)
    assert list(after.values) == [2, 3, None, None, None]


def test_the_zones_have_a_band_and_a_word() -> None:
    zones = pain_chart(looked()).data.panels[0].zones
    assert [(zone.low, zone.high) for zone in zones] == [(0.0, 2.5), (2.5, 5.5), (5.5, 10.0)]
    assert [zone.word for zone in zones] == ["0–2 low", "3–5 take care", "6–10 too high"]
    assert len({zone.ink for zone in zones}) == 3


def test_each_day_says_why_and_all_of_it_is_hidden_in_presentation() -> None:
    charted = pain_chart(looked())
    figures = [figure for why in charted.whys for figure in why]
    assert [figure.value for figure in charted.whys[1]] == [2, 4, 0]
    assert {figure.name for figure in figures} <= PAINFUL
    assert athlete_view(looked(), pain=False).pain_by_day() is None


def test_where_nobody_was_asked_it_says_so() -> None:
    data = pain_chart(nothing()).data
    assert (data.is_empty, data.empty) == (True, "Nobody was asked about pain in this time.")
