"""The courses of a run: an earlier state gives way, two that part are both kept, in any order."""

from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.records import Fact, RunBegan, RunEnded, RunOutcome
from app.store.courses import Course, course_of, farthest, read_course
from tests.strategies import any_fact

COMMON: tuple[Fact, ...] = (RunBegan(),)
SHORT = course_of((*COMMON, RunEnded(5, RunOutcome.ABANDONED)))
LONG = course_of((*COMMON, RunEnded(7, RunOutcome.FINISHED), RunEnded(9, RunOutcome.FINISHED)))


def test_a_course_counts_its_facts_and_reads_back() -> None:
    assert (LONG.count, read_course(LONG.body)) == (3, LONG)
    assert LONG.facts()[0] == RunBegan()


def test_an_earlier_state_of_a_course_gives_way_to_it() -> None:
    earlier = course_of(LONG.facts()[:2])
    assert farthest([earlier, LONG, course_of(COMMON), LONG]) == (LONG,)


def test_of_two_that_part_the_one_with_more_facts_is_last() -> None:
    assert farthest([LONG, SHORT]) == farthest([SHORT, LONG, course_of(COMMON)]) == (SHORT, LONG)


@given(st.lists(st.lists(any_fact(), max_size=4).map(course_of), min_size=1, max_size=5), st.randoms())
def test_the_farthest_are_the_same_in_any_order_and_taken_together_in_any_way(
    courses: list[Course], chance: Random
) -> None:
    wanted = farthest(courses)
    shuffled = list(courses)
    chance.shuffle(shuffled)
    middle = len(shuffled) // 2
    assert farthest(shuffled) == wanted
    assert farthest([*farthest(shuffled[:middle]), *farthest(shuffled[middle:])]) == wanted
    for course in courses:
        assert any(kept.facts()[: course.count] == course.facts() for kept in wanted)


@pytest.mark.parametrize("body", [b"", b"\x02", b"\x01\x7f", SHORT.body[:-1]])
def test_bytes_that_are_no_facts_are_refused(body: bytes) -> None:
    with pytest.raises(ValueError, match=r"unknown format|no fact|no end|no choice"):
        read_course(body)


def test_facts_in_other_bytes_than_the_program_s_own_are_refused() -> None:
    spelt_out = b"\x01" + b"\x01\x80\x00"
    with pytest.raises(ValueError, match="not written as this program"):
        read_course(spelt_out)
