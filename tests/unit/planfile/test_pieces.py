"""A plan file cut into its pieces and laid together again."""

from pathlib import Path

import pytest
from hypothesis import given

from app.planfile.pieces import Piece, cut, lay
from app.planfile.writer import write_plan
from tests.strategies import plans

DEMO = Path(__file__).parents[3] / "demo_data"

TEXT = """\
# at the top
format = 1

# apart

# about one
# and more
  [[stage]] # one
name = "one"

  [[stage.exercise]]
  setup = \"\"\"
[[stage]]\"\"\"
  [stage.exercise.words]
  hold = "x"
# at the end
"""


def test_remarks_right_above_a_heading_belong_to_it() -> None:
    assert [(piece.place, piece.text.splitlines()[0]) for piece in cut(TEXT)] == [
        ((), "# at the top"),
        (("stage", 0), "# about one"),
        (("stage", 0, "exercise", 0), "  [[stage.exercise]]"),
    ]


def test_what_looks_like_a_heading_inside_text_is_none() -> None:
    assert cut(TEXT)[-1].text.endswith("# at the end\n")


@pytest.mark.parametrize("name", ["landing_control.toml", "shoulder_rotators.toml", "roster.toml"])
def test_the_pieces_of_a_file_are_the_whole_of_it(name: str) -> None:
    text = (DEMO / name).read_text(encoding="utf-8")
    assert "".join(piece.text for piece in cut(text)) == text
    assert lay(cut(text)) == text


@given(plans().map(write_plan))
def test_the_pieces_of_any_written_plan_are_the_whole_of_it(text: str) -> None:
    assert "".join(piece.text for piece in cut(text)) == text
    assert lay(cut(text)) == text


def test_pieces_laid_together_stand_apart_by_a_blank_line() -> None:
    pieces = [Piece((), "a = 1\n"), Piece(("s", 0), "[[s]]\nb = 1\n\n\n"), Piece(("s", 1), "[[s]]")]
    assert lay(pieces) == "a = 1\n\n[[s]]\nb = 1\n\n\n[[s]]\n"
