"""Where keys and values stand in a TOML text."""

import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.planfile.positions import Positions, line_and_column
from app.planfile.writer import write_plan
from tests.strategies import plans

DEMO = Path(__file__).parents[3] / "demo_data"

TEXT = """\
a = 1
"b c" . d = [ 1, # one
  [ 2, "]#" ],
]
# [[not.this]]
[t]
e = { f = "}", 'g' = 1979-05-27 07:32:00, h . i = 3 }

[[s]]
k = \"\"\"
[[s]]
k = 1 \\" \"\"\"\"
[[s.x]]
[[s.x]]
m = '''a'b''''
[s.x.y]
n = 4
[[s]]
  [[s.x]] # last
  o = "\\\\" # end
"""


@pytest.mark.parametrize(
    ("path", "key", "value"),
    [
        (("a",), (1, 1), (1, 5)),
        (("b c",), (2, 1), (2, 1)),
        (("b c", "d"), (2, 9), (2, 13)),
        (("b c", "d", 0), (2, 15), (2, 15)),
        (("b c", "d", 1, 1), (3, 8), (3, 8)),
        (("t",), (6, 1), (6, 1)),
        (("t", "e", "f"), (7, 7), (7, 11)),
        (("t", "e", "g"), (7, 16), (7, 22)),
        (("t", "e", "h", "i"), (7, 47), (7, 51)),
        (("s", 0, "k"), (10, 1), (10, 5)),
        (("s", 0, "x", 0), (13, 1), (13, 1)),
        (("s", 0, "x", 1, "m"), (15, 1), (15, 5)),
        (("s", 0, "x", 1, "y", "n"), (17, 1), (17, 5)),
        (("s", 1), (18, 1), (18, 1)),
        (("s", 1, "x", 0), (19, 3), (19, 3)),
        (("s", 1, "x", 0, "o"), (20, 3), (20, 7)),
    ],
)
def test_every_key_and_value_is_found(
    path: tuple[str | int, ...], key: tuple[int, int], value: tuple[int, int]
) -> None:
    positions = Positions(TEXT)
    assert positions.of_key(path) == key
    assert positions.of_value(path) == value


def test_what_is_not_there_is_placed_at_what_is_around_it() -> None:
    positions = Positions(TEXT)
    assert positions.of_value(("s", 1, "x", 0, "missing")) == (19, 3)
    assert positions.of_value(("missing",)) == (1, 1)
    assert positions.of_value(()) == (1, 1)


def test_headings_are_listed_in_order_with_their_paths() -> None:
    assert [path for path, _ in Positions(TEXT).headings] == [
        ("t",),
        ("s", 0),
        ("s", 0, "x", 0),
        ("s", 0, "x", 1),
        ("s", 1),
        ("s", 1, "x", 0),
    ]


def leaves(value: object, path: tuple[str | int, ...] = ()) -> dict[tuple[str | int, ...], object]:
    """Every value of a document that has no others within it, by its path."""
    if isinstance(value, dict):
        return {
            place: leaf for key, item in value.items() for place, leaf in leaves(item, (*path, key)).items()
        }
    if isinstance(value, list):
        return {
            place: leaf
            for index, item in enumerate(value)
            for place, leaf in leaves(item, (*path, index)).items()
        }
    return {path: value}


def assert_found(text: str) -> None:
    """The parser of the standard library reads each value at its place as what it is in the whole."""
    positions = Positions(text)
    lines = text.split("\n")
    for path, value in leaves(tomllib.loads(text)).items():
        line, column = positions.of_value(path)
        rest = lines[line - 1][column - 1 :]
        assert any(tomllib_reads(f"v = {rest[:end]}", value) for end in range(len(rest), 0, -1)), (path, rest)


def tomllib_reads(text: str, value: object) -> bool:
    """Whether a text of one key has this value."""
    try:
        return bool(tomllib.loads(text)["v"] == value)
    except tomllib.TOMLDecodeError:
        return False


@pytest.mark.parametrize("name", ["landing_control.toml", "shoulder_rotators.toml", "roster.toml"])
def test_every_value_of_the_demo_files_is_found(name: str) -> None:
    assert_found((DEMO / name).read_text(encoding="utf-8"))


@given(plans().map(write_plan))
def test_every_value_of_any_written_plan_is_found(text: str) -> None:
    assert_found(text)


@given(st.text(alphabet="ab\n", max_size=30), st.data())
def test_line_and_column_count_from_one(text: str, data: st.DataObject) -> None:
    offset = data.draw(st.integers(0, len(text)))
    line, column = line_and_column(text, offset)
    assert sum(len(row) + 1 for row in text.split("\n")[: line - 1]) + column - 1 == offset
