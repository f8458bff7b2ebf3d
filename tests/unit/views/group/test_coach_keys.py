"""The coach's keys: two for a mark, one for the room, none that does harm by itself."""

import random

import pytest

from app.domain.records import SkipReason
from app.run.intents import Begin, ExtendRest, MarkFault, MarkMissed, Pause, Resume, SkipExercise, Stop
from app.run.room_intents import Arrive, Depart, ForOne, GoToSlot, RoomIntent
from app.run.state import Stand
from app.views.group.coach_keys import CHOSEN_FOR_MS, PEOPLE_KEYS, Asked, Keys, Moment, key_of, strike

FAULTS = ("knee falls in", "trunk tips")


def moment(stand: Stand = Stand.RUNNING, people: int = 12, slot: int = 3) -> Moment:
    return Moment(stand, slot, 8, people, (True,) * people, FAULTS)


def struck(keys: str, at: Moment | None = None, gap_ms: int = 200) -> list[RoomIntent | Asked]:
    """What a row of keys asks for."""
    state, now, told = Keys(), 1_000, list[RoomIntent | Asked]()
    for key in keys:
        now += gap_ms
        state, asked = strike(state, key, at or moment(), now)
        if asked is not None:
            told.append(asked)
    return told


@pytest.mark.parametrize(
    ("keys", "wanted"),
    [
        ("3F", ForOne(2, MarkFault())),
        ("32", ForOne(2, MarkFault("trunk tips"))),
        ("BM", ForOne(10, MarkMissed())),
        ("0LL", Depart(9)),
        ("3\r", Arrive(2)),
        ("3O2", ForOne(2, SkipExercise(SkipReason.EQUIPMENT))),
        ("K1", SkipExercise(SkipReason.PAIN)),
        ("T", ExtendRest()),
        (">", GoToSlot(4)),
        ("<", GoToSlot(2)),
        ("SS", Stop()),
        ("+", Asked.LOUDER),
        ("3Y", Asked.NOTE),
    ],
)
def test_keys_ask_for_what_their_page_says(keys: str, wanted: RoomIntent) -> None:
    assert struck(keys) == [wanted]


def test_space_begins_pauses_and_goes_on() -> None:
    stands = (Stand.READY, Stand.RUNNING, Stand.PAUSED)
    assert [struck(" ", moment(stand))[0] for stand in stands] == [Begin(), Pause(), Resume()]
    assert struck(" ", moment(Stand.ENDED)) == []


@pytest.mark.parametrize("keys", ["3", "39", "S", "ST", "K", "K9", "3O", "3O0", "3\x1bF", "S\x1bS", "F", "x"])
def test_no_key_alone_and_no_wrong_one_after_it_does_anything(keys: str) -> None:
    assert struck(keys) == []


@pytest.mark.parametrize("before", ["3", "3O", "K", "S"])
def test_space_pauses_whatever_was_struck_before(before: str) -> None:
    assert struck(before + " ") == [Pause()]


def test_a_choice_is_forgotten_a_question_is_not() -> None:
    assert struck("3F", gap_ms=CHOSEN_FOR_MS + 1) == []
    assert struck("SS", gap_ms=CHOSEN_FOR_MS + 1) == [Stop()]


def test_a_key_of_nobody_chooses_nobody() -> None:
    assert struck("9F", moment(people=4)) == []
    assert struck("<", moment(slot=0)) == []
    assert struck(">", moment(slot=7)) == []


def test_before_the_session_enter_takes_somebody_off_and_puts_them_on_again() -> None:
    ready = Moment(Stand.READY, 0, 8, 2, (True, False), ())
    assert struck("1\r2\r", ready) == [Depart(0), Arrive(1)]
    assert struck("TEAK><S", ready) == []


def test_everybody_up_to_the_last_key_has_their_own_and_none_is_a_command() -> None:
    keys = [key_of(member) for member in range(40)]
    known = [key for key in keys if key]
    assert len(known) == len(set(known)) == len(PEOPLE_KEYS)
    assert not set(known) & set("TNEAKSVFM +-=")


def test_any_row_of_keys_is_followed_without_an_exception() -> None:
    rng = random.Random(7)
    signs = PEOPLE_KEYS + "TNEAKSVFMOYL +-=\r\x1b<>ß"
    state, now = Keys(), 0
    for _ in range(20_000):
        now += rng.choice((0, 100, 900, 6_000))
        at = Moment(rng.choice(tuple(Stand)), rng.randrange(8), 8, 5, (True, False) * 2 + (True,), FAULTS)
        state, _ = strike(state, rng.choice(signs), at, now)
