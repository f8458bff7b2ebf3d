"""Charts of the report as SVG."""

from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.reports.report_chart import HEIGHT, WIDTH, chart_svg, nice_steps
from app.reports.report_parts import Chart, Point, Series

SVG = "{http://www.w3.org/2000/svg}"


def chart(*values: float | None, **changes: object) -> Chart:
    points = tuple(Point(number, value) for number, value in enumerate(values))
    given_ = {"least": 0.0, "most": 10.0} | changes
    return Chart("Pain", "alt", "0 to 10", (Series("pain", "circle", points),), ((0, "1 Nov"),), **given_)  # type: ignore[arg-type]


def drawn(wanted: Chart, what: str) -> list[ET.Element]:
    return list(ET.fromstring(chart_svg(wanted)).iter(f"{SVG}{what}"))  # noqa: S314 - made here


def test_an_unknown_value_leaves_a_gap_and_is_no_nought() -> None:
    marks = drawn(chart(4, None, 6), "circle")
    assert len(marks) == 2
    joined = [line for line in drawn(chart(4, None, 6), "line") if line.get("stroke") == "#0072B2"]
    assert joined == []
    assert len([line for line in drawn(chart(4, 5, 6), "line") if line.get("stroke") == "#0072B2"]) == 2


def test_higher_values_stand_higher() -> None:
    low, high = drawn(chart(1, 9), "circle")
    assert float(low.get("cy") or 0) > float(high.get("cy") or 0)


def test_series_differ_by_shape_and_not_by_colour_alone() -> None:
    points = (Point(0, 1), Point(1, 2))
    kinds = ("circle", "square", "triangle")
    series = tuple(Series(kind, kind, points, joined=False) for kind in kinds)
    both = Chart("Sides", "alt", "cm", series, ())
    counted = [len(drawn(both, what)) for what in ("circle", "rect", "polygon")]
    assert counted == [3, 3, 3]


def test_words_with_angles_and_ampersands_stay_words() -> None:
    texts = [each.text for each in drawn(Chart("Title", "alt", "<b>&", (), ()), "text")]
    assert "<b>&" in texts


@given(st.lists(st.one_of(st.none(), st.floats(-1e6, 1e6)), max_size=30))
def test_whatever_the_values_everything_stays_within_the_chart(values: list[float | None]) -> None:
    for mark in drawn(chart(*values, least=None, most=None), "circle"):
        assert 0 <= float(mark.get("cx") or -1) <= WIDTH
        assert 0 <= float(mark.get("cy") or -1) <= HEIGHT


@pytest.mark.parametrize(
    ("least", "most", "steps"),
    [(0, 100, (0, 25, 50, 75, 100)), (0, 10, (0, 2.5, 5, 7.5, 10)), (148, 172, (140, 150, 160, 170, 180))],
)
def test_the_steps_of_an_axis_are_round(least: float, most: float, steps: tuple[float, ...]) -> None:
    assert nice_steps(least, most) == steps


def test_decimals_of_the_axis_stand_behind_the_point_of_the_language() -> None:
    told = {element.text for element in drawn(chart(1.0, 9.0, point=","), "text")}
    assert {"2,5", "7,5"} <= told
    assert {"2.5", "7.5"} <= {element.text for element in drawn(chart(1.0, 9.0), "text")}
