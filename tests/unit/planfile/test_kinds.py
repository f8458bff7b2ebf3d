"""The kinds of words a file may hold."""

import pytest

from app.planfile.kinds import Letter, PicturePath, Text, Texts, Word
from tests.plantexts import Refusals, accepted, refused


@pytest.mark.parametrize("text", ["x", "x" * 500, " spaced ", "a\u00a0b", "= + - @", "שלום"])
def test_text_is_kept_as_it_stands(text: str) -> None:
    assert accepted(Text(), text) == text


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ("", "the text is empty"),
        (" \u00a0\u2003", "the text is empty"),
        ("x" * 501, "the text has 501 characters; write 500 at most"),
        ("one\ntwo", "the text runs over more than one line; write it on one"),
        (3, "this must be text, not 3; put it in quotes"),
        (True, "this must be text, not true; put it in quotes"),
        (["x"], "this must be text, not a list; put it in quotes"),
    ],
)
def test_text_that_is_none_is_refused(value: object, says: str) -> None:
    (message,) = refused(Text(), value)
    assert message.startswith(says)


def test_every_wrong_text_of_a_list_is_told_with_its_number() -> None:
    refusals = Refusals()
    assert Texts().read(["fine", "", 3], refusals) is None
    assert [place for _, place in refusals] == [(1,), (2,)]


def test_texts_keep_their_order_and_may_be_none() -> None:
    assert accepted(Texts(), ["b", "a"]) == ("b", "a")
    assert accepted(Texts(), []) == ()


def test_a_list_has_twenty_entries_at_most() -> None:
    assert len(accepted(Texts(), ["x"] * 20)) == 20  # type: ignore[arg-type]
    assert refused(Texts(), ["x"] * 21) == ["the list has 21 entries; write 20 at most"]


def test_a_word_is_one_of_those_known_to_the_letter() -> None:
    kind = Word(("left", "right", "weaker"))
    assert accepted(kind, "left") == "left"
    assert refused(kind, "Left") == ['"Left" is not known here; did you mean "left"?']
    assert refused(kind, "up") == ['"up" is not known here; write "left", "right" or "weaker"']
    assert refused(kind, 1) == ['1 is not known here; write "left", "right" or "weaker"']


def test_a_superset_has_one_capital_letter() -> None:
    assert accepted(Letter(), "B") == "B"
    assert refused(Letter(), "b") == ['"b" is no letter of a superset; write one capital letter, like "B"']
    for value in ("AB", "", "1", "Ä", "A\n", 1):
        assert refused(Letter(), value)[0].endswith('like "A"')


@pytest.mark.parametrize(
    "path", ["a.svg", "figures/a b.svg", "..a/b.svg", "a/b../c", "./a.svg", "ä/膝.png", "http://x"]
)
def test_a_path_inside_the_folder_is_kept(path: str) -> None:
    assert accepted(PicturePath(), path) == path


@pytest.mark.parametrize(
    "path", ["..", "a/..", "a/../b", "/a", "//a/b", "~", "~a/b", "c:/a", "C:", "a\\b", "", "a\nb"]
)
def test_a_path_that_could_lead_elsewhere_is_refused(path: str) -> None:
    refused(PicturePath(), path)
