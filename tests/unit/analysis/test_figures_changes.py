"""A change on the week before is told between weeks that are known in full, and between no others."""

from datetime import date, timedelta

from app.analysis.figure import Figure
from app.analysis.figures_changes import change_figures, last_changes
from app.domain.reviewed import AthleteRecord, ReviewedSession
from tests.reviewed import MONDAY, TODAY, record, session, totals

BEFORE = MONDAY - timedelta(days=7)


def two_weeks(*more: ReviewedSession, **changes: object) -> AthleteRecord:
    """100 AU, 20 contacts and 400 kg in one week, 110, 24 and 440 in the next."""
    earlier = totals(contacts=20, volume_kg=400.0)
    later = totals(contacts=24, volume_kg=440.0)
    runs = (
        session(BEFORE, rpe=5, minutes=20.0, totals=earlier),
        session(MONDAY, rpe=5, minutes=22.0, totals=later),
    )
    return record(**({"first": BEFORE, "sessions": (*runs, *more)} | changes))


def told(figures: tuple[Figure, ...], of: date = MONDAY) -> dict[str, float | None]:
    return {figure.name: figure.value for figure in figures if figure.of == of.isoformat()}


def test_the_change_stands_in_its_unit_and_in_percent_beside_it() -> None:
    assert told(change_figures(two_weeks())) == {
        "Load, change on the week before": 10,
        "Load, change in percent": 10,
        "Contacts, change on the week before": 4,
        "Contacts, change in percent": 20,
        "Volume load, change on the week before": 40,
        "Volume load, change in percent": 10,
    }


def test_what_went_in_is_both_weeks_and_whether_it_is_above_a_tenth() -> None:
    figures = {figure.name: figure for figure in change_figures(two_weeks())}
    load, contacts = figures["Load, change in percent"], figures["Contacts, change in percent"]
    assert load.inputs == (("week before", 100.0), ("this week", 110.0), ("above 10 %", "no"))
    assert contacts.inputs[-1] == ("above 10 %", "yes")
    assert (load.n, load.unknown) == (2, ())


def test_a_day_without_effort_leaves_the_load_unknown_and_the_contacts_known() -> None:
    figures = change_figures(two_weeks(session(MONDAY, rpe=None)))
    found = told(figures)
    assert found["Load, change on the week before"] is found["Load, change in percent"] is None
    assert found["Contacts, change on the week before"] == 28
    (load,) = (each for each in figures if each.name == "Load, change in percent")
    assert (load.reason, load.unknown) == ("One of the two weeks is not known in full.", ("this week",))


def test_a_week_of_rest_is_nought_and_a_change_from_it_has_no_percent() -> None:
    figures = change_figures(record(first=BEFORE, sessions=(session(MONDAY, totals=totals(contacts=24)),)))
    found = told(figures)
    assert found["Contacts, change on the week before"] == 24
    assert found["Contacts, change in percent"] is None
    (percent,) = (each for each in figures if each.name == "Contacts, change in percent")
    assert percent.reason == "There was none of it in the week before."


def test_a_week_that_is_not_over_or_not_all_there_is_compared_with_none() -> None:
    for changes in (
        {"today": MONDAY + timedelta(days=6)},
        {"last": MONDAY + timedelta(days=5)},
        {"first": BEFORE + timedelta(days=1)},
        {"since": BEFORE + timedelta(days=1)},
        {"since": None},
    ):
        assert set(told(change_figures(two_weeks(**changes))).values()) == {None}


def test_the_first_week_has_none_before_it() -> None:
    assert change_figures(record()) == ()
    assert last_changes(record()) == ()


def test_the_last_changes_are_those_of_the_last_week_that_is_over() -> None:
    going_on = two_weeks(last=TODAY + timedelta(days=6), today=TODAY + timedelta(days=2))
    for looked in (two_weeks(), going_on):
        pairs = last_changes(looked)
        assert {figure.of for pair in pairs for figure in pair} == {MONDAY.isoformat()}
        assert [figure.value for pair in pairs for figure in pair] == [10, 10, 4, 20, 40, 10]


def test_the_last_changes_look_at_no_day_before_the_time() -> None:
    late = two_weeks(first=BEFORE + timedelta(days=2))
    assert {figure.value for pair in last_changes(late) for figure in pair} == {None}
