"""Effort and pain of a room by number keys: what is struck lands where it is asked."""

from hypothesis import given
from hypothesis import strategies as st

from app.views.group.after_form import AfterForm, Answer, Question

EFFORT, PAIN = Question.EFFORT, Question.PAIN


def test_two_numbers_a_person_fill_the_grid_row_after_row() -> None:
    form, told = AfterForm(20), list[Answer]()
    for key in range(40):
        form, answer = form.number(key % 10, key * 1_000)
        assert answer is not None
        told.append(answer)
    assert [(answer.row, answer.question) for answer in told] == [
        (row, question) for row in range(20) for question in (EFFORT, PAIN)
    ]
    assert [answer.value for answer in told] == [key % 10 for key in range(40)]
    assert form.place is None
    assert form.number(3, 99_000) == (form, None)


def test_a_nought_soon_after_a_one_is_ten_and_later_an_answer_of_its_own() -> None:
    form, first = AfterForm(2).number(1, 0)
    ten, answer = form.number(0, 700)
    assert (first, answer) == (Answer(0, EFFORT, 1), Answer(0, EFFORT, 10))
    assert ten.place == (0, PAIN)
    late, answer = form.number(0, 900)
    assert answer == Answer(0, PAIN, 0)
    assert late.place == (1, EFFORT)


def test_what_is_passed_over_is_not_answered() -> None:
    form = AfterForm(2).moved(1)
    assert form.place == (0, PAIN)
    form, answer = form.moved(-1).moved(2).number(5, 0)
    assert answer == Answer(1, EFFORT, 5)
    assert AfterForm(2).moved(-3).place == (0, EFFORT)
    assert AfterForm(2).moved(99).place is None
    assert AfterForm(3).at(2, PAIN).number(4, 0)[1] == Answer(2, PAIN, 4)


@given(st.integers(0, 30), st.lists(st.tuples(st.integers(-1, 11), st.integers(0, 3_000)), max_size=80))
def test_answers_stay_within_the_grid_and_the_scale(rows: int, keys: list[tuple[int, int]]) -> None:
    form, now = AfterForm(rows), 0
    for figure, gap in keys:
        now += gap
        form, answer = form.number(figure, now) if figure >= 0 else (form.moved(-1), None)
        if answer is not None:
            assert 0 <= answer.row < rows
            assert 0 <= answer.value <= 10
