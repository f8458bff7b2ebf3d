"""Tempo: its spellings, the meaning of its fields, the order in which they are played."""

import pytest
from hypothesis import given

from app.domain.tempo import PLAYING_ORDER, Begins, Phase, Tempo, parse_tempo
from tests.strategies import tempi


@pytest.mark.parametrize(
    "text", ["3-0-1-0", "3/0/1/0", "3:0:1:0", "3010", "3-0-1", "301", " 3-0-1-0 ", "3.0-0-1-0"]
)
def test_every_accepted_spelling_means_the_same(text: str) -> None:
    # The spellings in use: common practice, no source.
    assert parse_tempo(text) == Tempo(3000, 0, 1000, 0)


@pytest.mark.parametrize("text", ["30X0", "3-0-X-0", "3/0/x/0", "30x"])
def test_x_stands_for_a_phase_without_a_length(text: str) -> None:
    tempo = parse_tempo(text)
    assert tempo == Tempo(3000, 0, None, 0)
    assert tempo.explosive


def test_x_may_be_eccentric_too() -> None:
    assert parse_tempo("X-1-2-0") == Tempo(None, 1000, 2000, 0)


def test_a_tempo_without_x_is_not_explosive() -> None:
    assert not parse_tempo("3010").explosive


@pytest.mark.parametrize(
    ("text", "tempo"),
    [
        ("10-0-10-0", Tempo(10_000, 0, 10_000, 0)),
        ("1.5-0.5-1-0.1", Tempo(1500, 500, 1000, 100)),
        ("600-0-0-0", Tempo(600_000, 0, 0, 0)),
        ("0-0-0-0.1", Tempo(0, 0, 0, 100)),
    ],
)
def test_seconds_of_two_digits_and_one_decimal_need_separators_and_are_exact(text: str, tempo: Tempo) -> None:
    assert parse_tempo(text) == tempo


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("3-X-1-0", "X does not stand for a hold"),
        ("3-0-1-X", "X does not stand for a hold"),
        ("3-0-1-0-0", "not 5"),
        ("3-0", "not 2"),
        ("30", "is no tempo"),
        ("30100", "is no tempo"),
        ("", "is no tempo"),
        ("3-0/1-0", "mixes separators"),
        ("-3-0-1-0", "not 5"),
        ("3-0--1-0", "not 5"),
        ("1.55-0-1-0", "no field of a tempo"),
        ("1,5-0-1-0", "no field of a tempo"),
        ("three-0-1-0", "no field of a tempo"),
        ("3-0-XX-0", "no field of a tempo"),
        ("٣-0-1-0", "no field of a tempo"),
        ("1e1-0-1-0", "no field of a tempo"),
        ("nan-0-1-0", "no field of a tempo"),
        ("99999-0-1-0", "no field of a tempo"),
        ("0-0-0-0", "all four"),
        ("000", "all four"),
        ("0.0-0-0-0", "all four"),
    ],
)
def test_anything_else_is_refused_in_words(text: str, says: str) -> None:
    with pytest.raises(ValueError, match=says) as caught:
        parse_tempo(text)
    wrong, right = str(caught.value).split("; ")
    assert wrong
    assert right.startswith(("write ", "use ", "give "))


def test_of_what_is_no_tempo_only_the_beginning_is_repeated_and_nothing_unseen() -> None:
    for text in ("x" * 500, "3\u00a00", "\u202e" * 4 + "-0-1-0"):
        with pytest.raises(ValueError, match="is no ") as caught:
            parse_tempo(text)
        assert str(caught.value).isprintable()
        assert len(str(caught.value)) < 130


def test_a_field_is_found_by_its_phase() -> None:
    tempo = parse_tempo("4-3-X-1")
    assert tempo.length(Phase.ECCENTRIC) == 4000
    assert tempo.length(Phase.HOLD_LENGTHENED) == 3000
    assert tempo.length(Phase.CONCENTRIC) is None
    assert tempo.length(Phase.HOLD_SHORTENED) == 1000
    with pytest.raises(KeyError):
        tempo.length(Phase.STICK)


@pytest.mark.parametrize(
    ("begins", "fields"),
    [(Begins.ECCENTRIC, "1234"), (Begins.CONCENTRIC, "3412"), (Begins.HOLD, "4123")],
)
def test_playing_order_turns_the_four_phases_and_never_shuffles_them(begins: Begins, fields: str) -> None:
    # That the first field is the eccentric whatever is played first: common practice, no source.
    tempo = parse_tempo("1-2-3-4")
    assert [tempo.length(phase) for phase in PLAYING_ORDER[begins]] == [int(field) * 1000 for field in fields]


@given(tempi())
def test_a_tempo_reads_back_from_how_it_is_shown(tempo: Tempo) -> None:
    assert parse_tempo(str(tempo)) == tempo


def test_a_tempo_is_shown_with_separators_and_without_trailing_zeros() -> None:
    assert str(parse_tempo("30x0")) == "3-0-X-0"
    assert str(parse_tempo("1.5/0/10/0")) == "1.5-0-10-0"
