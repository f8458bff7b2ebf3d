"""A figure says what it rests on, and one that is unknown says why."""

import json
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.analysis.athlete_figures import athlete_figures
from app.analysis.figure import Figure, Rule, as_data
from app.domain.plan import Side
from app.domain.planned import DueState
from app.domain.reviewed import AthleteRecord, ReviewedSession
from tests.full_record import full
from tests.reviewed import MONDAY, due, lights, record, result, session, totals

RULE = Rule("Reps", "1", "done / prescribed", "Common practice, no source.", "as if reps were independent")


def found_in(looked: AthleteRecord, name: str, of: str = "", *, with_course: bool = False) -> Figure:
    """The one figure of a name."""
    (figure,) = (
        each
        for each in athlete_figures(looked, with_course=with_course)
        if each.name == name and each.of == of
    )
    return figure


def test_a_figure_has_a_value_or_a_reason_and_never_both() -> None:
    with pytest.raises(ValueError, match="has a value or the reason"):
        Figure("Reps", None, "1", 0, None, "", "")
    with pytest.raises(ValueError, match="has a value or the reason"):
        Figure("Reps", 0.0, "1", 0, "unknown", "", "")


def test_a_share_carries_its_interval_and_its_caution() -> None:
    figure = RULE.share(("done", 8), ("prescribed", 10), "none")
    assert (figure.value, figure.n, figure.caution) == (0.8, 10, "as if reps were independent")
    assert figure.low == pytest.approx(0.490162, abs=1e-6)
    assert figure.inputs == (("done", 8), ("prescribed", 10))


def test_a_share_of_nothing_says_why_and_has_no_interval() -> None:
    figure = RULE.share(("done", 0), ("prescribed", 0), "Nothing was prescribed.")
    assert (figure.value, figure.reason) == (None, "Nothing was prescribed.")
    assert (figure.low, figure.high, figure.caution) == (None, None, None)


def test_every_figure_says_what_it_rests_on() -> None:
    figures = athlete_figures(full(), with_course=True)
    assert len(figures) > 100
    for figure in figures:
        assert figure.name
        assert figure.unit
        assert figure.formula
        assert figure.source
        assert (figure.value is None) is (figure.reason is not None)


def test_no_two_figures_have_one_name_and_one_thing_they_are_of() -> None:
    keys = [(figure.name, figure.of) for figure in athlete_figures(full(), with_course=True)]
    assert len(keys) == len(set(keys))


def test_figures_are_plain_data() -> None:
    figures = [as_data(figure) for figure in athlete_figures(full())]
    again = json.loads(json.dumps(figures, allow_nan=False))
    assert again == figures
    assert {"name", "value", "unit", "n", "reason", "formula", "source", "inputs", "unknown"} <= set(again[0])


def test_a_full_record_gives_its_numbers() -> None:
    looked = full()
    assert found_in(looked, "Session adherence").value == 0.5
    assert found_in(looked, "Rep adherence").value == 0.9
    assert found_in(looked, "Rep adherence", "side: right").value == 0.6
    assert found_in(looked, "Tempo adherence").value == pytest.approx(80 / 92)
    assert found_in(looked, "Landings stuck", "side: left").value == pytest.approx(88 / 92)
    assert found_in(looked, "Load of the week", "2026-11-16").value == 600
    assert found_in(looked, "Contacts", "2026-11-16").value == 72
    assert found_in(looked, "Time under tension, nominal", "2026-11-16").value == pytest.approx(3 * 368)
    assert found_in(looked, "Volume load", "2026-11-16").value == 1_380
    assert found_in(looked, "Highest pain").value == 1
    assert found_in(looked, "Readiness", "2026-11-16").value == 12
    assert found_in(looked, "Reach of the leg, composite", "side: left").value == pytest.approx(
        95.5556, abs=5e-5
    )
    assert found_in(looked, "Single hop for distance: slope", "side: left").value == pytest.approx(-2)
    assert found_in(looked, "Single hop for distance: limb symmetry index", "2026-11-16").value == 100


def test_monotony_of_a_week_shows_its_seven_days() -> None:
    figure = found_in(record(), "Monotony", "2026-11-16")
    assert [value for _, value in figure.inputs] == [200, 0, 200, 0, 200, 0, 0]
    assert figure.value == pytest.approx(600 / 7 / (200 * (2 / 7) ** 0.5), rel=1e-9)


def test_an_unknown_day_is_named_and_leaves_the_week_unknown() -> None:
    looked = record(sessions=(session(), session(MONDAY + timedelta(days=2), rpe=None)))
    figure = found_in(looked, "Monotony", "2026-11-16")
    assert (figure.value, figure.unknown) == (None, ("2026-11-18",))
    assert figure.reason == "A day of this week is unknown."
    assert found_in(looked, "Load of the week", "2026-11-16").value is None


def test_the_course_of_load_is_off_unless_asked_for() -> None:
    names = {figure.name for figure in athlete_figures(full())}
    assert not {"Load lately", "Load usually"} & names
    assert found_in(full(), "Load lately", "2026-11-22", with_course=True).value is not None


def test_the_course_waits_for_28_days_in_a_row() -> None:
    figure = found_in(record(), "Load lately", "2026-11-22", with_course=True)
    assert (figure.value, figure.reason) == (None, "Fewer than 28 days in a row are known.")


def test_nothing_divides_load_lately_by_load_usually() -> None:
    # Common practice refuted (Impellizzeri et al. 2020): no figure of a ratio is made.
    assert not [
        each.name for each in athlete_figures(full(), with_course=True) if "ratio" in each.name.lower()
    ]


def test_without_a_reference_side_there_is_no_symmetry_index_but_the_raw_sides() -> None:
    looked = record(results=(result(78), result(100, side=Side.RIGHT)))
    figure = found_in(looked, "Single hop for distance: limb symmetry index", "2026-11-16")
    assert (figure.value, figure.reason) == (None, "Nobody has said which side is the reference.")
    assert dict(figure.inputs)["left"] == 78
    assert dict(figure.inputs)["right"] == 100
    apart = found_in(looked, "Single hop for distance: difference of the sides", "2026-11-16")
    assert apart.value == pytest.approx(22)
    assert "The error of this test is not known." in apart.unknown


@pytest.mark.parametrize(
    ("reference", "index", "told"),
    [
        (Side.RIGHT, 78, "index of the left side, reference right: left / right x 100"),
        (Side.LEFT, 100 / 78 * 100, "index of the right side, reference left: right / left x 100"),
    ],
)
def test_the_index_says_of_which_side_it_is_and_which_is_the_reference(
    reference: Side, index: float, told: str
) -> None:
    looked = record(results=(result(78), result(100, side=Side.RIGHT)), reference=reference)
    figure = found_in(looked, "Single hop for distance: limb symmetry index", "2026-11-16")
    assert figure.value == pytest.approx(index)
    assert figure.formula.startswith(told)
    assert dict(figure.inputs)["reference side"] == reference.value


def test_one_side_alone_is_compared_with_nothing() -> None:
    looked = record(results=(result(78),), reference=Side.LEFT)
    figure = found_in(looked, "Single hop for distance: limb symmetry index")
    assert (figure.value, figure.reason) == (None, "There is no day on which both sides were tested.")


def test_changes_that_matter_are_those_of_everybodys_tries_or_said_to_be_unknown() -> None:
    others = [
        result(140 + number % 4 + number, athlete=f"Athlete {number}", attempt=attempt)
        for number in range(12)
        for attempt in (1, 2)
    ]
    looked = record(results=(result(78),), tries=lights(others))
    known = {each.name: each for each in athlete_figures(looked)}
    assert known["Single hop for distance: typical error"].value == 0
    assert known["Single hop for distance: minimal detectable change"].value == 0
    assert known["Single hop for distance: smallest worthwhile change"].n == 12
    assert (
        dict(known["Single hop for distance: smallest worthwhile change"].inputs)["the test can show it"]
        == "yes"
    )
    looked = record(results=(result(78),))
    unknown = {each.name: each for each in athlete_figures(looked)}
    assert unknown["Single hop for distance: minimal detectable change"].reason
    assert unknown["Single hop for distance: smallest worthwhile change"].reason


def test_results_outside_of_the_days_are_not_in_it() -> None:
    looked = record(results=(result(78), result(150, day=MONDAY - timedelta(days=1))))
    figure = found_in(looked, "Single hop for distance: best", "side: left")
    assert (figure.value, figure.n) == (78, 1)


def test_sessions_outside_of_the_days_are_not_in_it() -> None:
    before = MONDAY - timedelta(days=1)
    looked = record(
        sessions=(session(), session(before, pain=9)),
        due=(due(MONDAY, DueState.DONE), due(before, DueState.MISSED)),
    )
    for name, of in (
        ("Session adherence", "2026-11-09"),
        ("Rep adherence", "2026-11-09"),
        ("Contacts", "2026-11-09"),
    ):
        assert (name, of) not in {(figure.name, figure.of) for figure in athlete_figures(looked)}
    assert found_in(looked, "Session adherence").n == 1
    assert found_in(looked, "Rep adherence").n == 100
    assert found_in(looked, "Highest pain").value == 1


def test_a_zero_that_is_known_is_no_unknown() -> None:
    looked = record(sessions=(session(rpe=0, pain=0, pain_next_morning=0),))
    of = f"2026-11-16 run-{MONDAY}"
    assert found_in(looked, "Pain in the session", of).value == 0
    assert found_in(looked, "Pain on the next morning", of).value == 0
    assert found_in(looked, "Load of the day", "2026-11-16").value == 0


UNKNOWN = session(minutes=None, rpe=None, pain=None, pain_next_morning=None, totals=None)


@pytest.mark.parametrize(
    "looked",
    [
        record(sessions=(), since=None),
        record(sessions=(UNKNOWN,)),
        record(sessions=(session(imported=True, totals=None),)),
        record(sessions=(session(totals=totals(prescribed=0, met=0, done=0, tempo_known=0, tempo_kept=0)),)),
        record(first=date(2026, 10, 24), last=date(2026, 10, 26)),
        record(first=date(2026, 12, 28), last=date(2027, 1, 3), sessions=(session(date(2027, 1, 1)),)),
    ],
    ids=["nothing", "all unknown", "imported", "no reps", "clocks change", "year's end"],
)
def test_a_record_with_little_in_it_gives_figures_with_reasons(looked: AthleteRecord) -> None:
    figures = athlete_figures(looked, with_course=True)
    assert figures
    assert json.dumps([as_data(figure) for figure in figures], allow_nan=False)


@given(
    st.lists(
        st.builds(
            session,
            st.dates(MONDAY, MONDAY + timedelta(days=6)),
            rpe=st.none() | st.integers(0, 10),
            minutes=st.none() | st.floats(0, 400),
            pain=st.none() | st.integers(0, 10),
            ended=st.booleans(),
        ),
        max_size=8,
        unique_by=lambda each: each.day,
    )
)
def test_no_session_whatever_makes_a_figure_that_is_no_number(sessions: list[ReviewedSession]) -> None:
    figures = athlete_figures(record(sessions=tuple(sessions)), with_course=True)
    json.dumps([as_data(figure) for figure in figures], allow_nan=False)
    unknown = {figure.of for figure in figures if figure.name == "Load of the day" and figure.value is None}
    known = {
        f"{each.day}"
        for each in record(sessions=tuple(sessions)).sessions
        if each.rpe is None or each.minutes is None
    }
    assert unknown == known
