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


def test_a_list_has_a_hundred_entries_at_most_and_one_with_more_is_looked_at_all_the_same() -> None:
    assert len(accepted(Texts(), ["x"] * 100)) == 100  # type: ignore[arg-type]
    assert refused(Texts(), ["x"] * 101) == ["the list has 101 entries; write 100 at most"]
    refusals = Refusals()
    assert Texts().read(["x"] * 100 + [""], refusals) is None
    assert [place for _, place in refusals] == [(), (100,)]


def test_a_text_that_is_too_long_and_holds_what_is_unseen_is_told_both() -> None:
    assert refused(Text(), "x" * 501 + "\x07") == [
        "the text has 502 characters; write 500 at most",
        "the text holds the control character U+0007; remove it",
    ]


def test_all_that_is_unseen_in_a_text_is_named_each_once() -> None:
    assert refused(Text(), "a\x07b\x08c\x07") == [
        "the text holds the control characters U+0007 and U+0008; remove them"
    ]
    assert refused(Text(), "\u202ea\nb\u2066c\x00") == [
        "the text runs over more than one line; write it on one",
        "the text holds U+202E and U+2066, which turn the reading direction; remove them",
        "the text holds the control character U+0000; remove it",
    ]
    assert refused(Text(), "x" + "".join(map(chr, range(1, 9)))) == [
        "the text holds the control characters U+0001, U+0002, U+0003, U+0004, U+0005 and 3 more; remove them"
    ]


def test_a_word_is_one_of_those_known_to_the_letter() -> None:
    kind = Word(("left", "right", "weaker"))
    assert accepted(kind, "left") == "left"
    assert refused(kind, "Left") == ['"Left" is not known here; did you mean "left"?']
    assert refused(kind, "up") == ['"up" is not known here; write "left", "right" or "weaker"']
    assert refused(kind, 1) == ['1 is not known here; write "left", "right" or "weaker"']


@pytest.mark.parametrize("letter", ["B", "b", "Ä", "ß", "Я", "ℵ", "膝", "ª", "µ", "𐐀"])
def test_a_superset_has_one_letter_of_any_alphabet(letter: str) -> None:
    assert accepted(Letter(), letter) == letter


@pytest.mark.parametrize("value", ["AB", "", " ", "1", "²", "_", "-", "A\u0308", "×", "👣", 1, True, None])
def test_what_is_no_single_letter_is_refused(value: object) -> None:
    (message,) = refused(Letter(), value)
    assert message.endswith(' is no letter of a superset; write one letter, like "A"')


def test_a_letter_with_blanks_around_it_is_offered_without() -> None:
    assert refused(Letter(), " b\n") == [
        '" b<U+000A>" is no letter of a superset; write one letter, like "b"'
    ]


@pytest.mark.parametrize(
    "path",
    [
        "a.svg",
        "figures/a b.svg",
        "..a/b.svg",
        "a/b../c",
        "./a.svg",
        "ä/膝.png",
        "~a.svg",
        "a/~/b",
        ".a",
        "a//b",
    ],
)
def test_a_path_inside_the_folder_is_kept(path: str) -> None:
    assert accepted(PicturePath(), path) == path


@pytest.mark.parametrize(
    "path",
    [
        *("..", "a/..", "a/../b", "/a", "//a/b", "~", "~/a.svg", "c:/a", "C:", "a\\b", "", "a\nb"),
        *(
            "http://x/a.svg",
            "http:a.svg",
            "file:a.svg",
            "file:///a.svg",
            "a/b:c",
            ".",
            "./",
            "a/",
            "a/.",
            "/",
        ),
    ],
)
def test_a_path_that_could_lead_elsewhere_is_refused(path: str) -> None:
    refused(PicturePath(), path)
