"""The list that a mistake stands in."""

import pytest

from app.planfile.unclosed import OpenList, list_around

TEXT = """\
a = [1, 2]
cues = [
  "one", # [
  "tw]o",
]
b = [[1], [2
c = 3
[[stage]]
d = [
  "[[stage]]",
  'x'
[stage.exercise]
e = [1,
"""


@pytest.mark.parametrize(
    ("line", "found"),
    [
        (1, None),
        (2, None),
        (3, OpenList(2, 5, 8, closed=True)),
        (5, OpenList(2, 5, 8, closed=True)),
        (6, None),
        (7, OpenList(6, 6, 5, closed=False)),
        (8, None),
        (9, None),
        (11, OpenList(9, 11, 5, closed=False)),
        (12, OpenList(9, 11, 5, closed=False)),
        (13, OpenList(13, 14, 5, closed=False)),
        (14, OpenList(13, 14, 5, closed=False)),
    ],
)
def test_a_list_ends_with_its_bracket_or_before_the_next_key_or_heading(
    line: int, found: OpenList | None
) -> None:
    assert list_around(TEXT, line) == found


def test_brackets_too_many_open_nothing() -> None:
    assert list_around("a = 1]]\nb = [1]\nc = 2\n", 3) is None
