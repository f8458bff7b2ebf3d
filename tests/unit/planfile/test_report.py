"""All problems of a file, in its order, each once."""

import pytest

from app.domain.errors import FileProblemsError, Problem
from app.planfile.positions import Place
from app.planfile.report import MOST_PROBLEMS, Report


class Rows:
    """Places as rows: the first part of a path is the line; keys stand in column 1, values in column 9."""

    def of_key(self, path: Place) -> tuple[int, int]:
        return int(path[0]), 1

    def of_value(self, path: Place) -> tuple[int, int]:
        return int(path[0]), 9


def no_places() -> Rows:
    """Fails the test that asks for places where there is nothing to place."""
    pytest.fail("places were asked for")


def test_problems_come_in_the_order_of_the_file_and_once() -> None:
    report = Report("f", Rows, [Problem(2, 5, "begun")])
    report.refuse("late", 3)
    report.refuse("early", 1)
    report.refuse("key", 3, key=True)
    report.refuse("early", 1)
    assert not report.clean
    assert str(report.error()) == "f:1:9: early\nf:2:5: begun\nf:3:1: key\nf:3:9: late"


def test_nothing_more_is_said_about_a_broken_line() -> None:
    report = Report("f", Rows, [Problem(2, 5, "begun")], broken={2})
    report.refuse("about the value put there", 2)
    assert report.error().problems == (Problem(2, 5, "begun"),)


def test_places_are_looked_up_only_when_there_is_something_to_place() -> None:
    assert Report("f", no_places).clean
    error = Report("f", no_places, [Problem(1, 1, "begun")]).error()
    assert isinstance(error, FileProblemsError)


def test_problems_without_end_are_cut_short_and_it_is_said() -> None:
    whole = Report("f", Rows, [Problem(1, 1, "begun")])
    for number in range(MOST_PROBLEMS - 1):
        whole.refuse("wrong", number + 1)
    assert len(whole.error().problems) == MOST_PROBLEMS
    whole.refuse("wrong", MOST_PROBLEMS)
    assert len(whole.error().problems) == MOST_PROBLEMS + 1
    report = Report("f", Rows)
    report.refuse("found first", MOST_PROBLEMS + 200)
    for number in range(MOST_PROBLEMS + 100):
        report.refuse("wrong", number + 1)
    problems = report.error().problems
    assert len(problems) == MOST_PROBLEMS + 1
    assert problems[0].message == "there are more than 500 problems; mend these first"
    assert problems[-1].message == "found first"
