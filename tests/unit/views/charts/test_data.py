"""What a chart shows, as plain values."""

from tests.chart_data import loads, sides, weeks


def test_a_chart_is_empty_when_nothing_is_known_and_nothing_was_done() -> None:
    assert weeks().is_empty
    assert weeks(None, None).is_empty
    assert not weeks(None, 0.0).is_empty


def test_something_done_of_unknown_value_is_not_nothing() -> None:
    only_dash = loads(4)
    assert only_dash.panels[1].series[0].unknown == (3,)
    assert not only_dash.is_empty


def test_the_text_has_all_series_and_a_line_a_place() -> None:
    assert sides((1.0, None), (2.0, 3.5)).as_text() == "Day\tleft\tright\n0 Nov\t1 s\t2 s\n1 Nov\t–\t3.5 s"
