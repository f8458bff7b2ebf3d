"""What is owed and when it is asked."""

from datetime import timedelta

from app.domain.squad import OwedKind
from app.views.home.record import due_now, unasked_name
from tests.homes import NOW, owed_rating

RPE, PAIN = OwedKind.SESSION_RPE, OwedKind.NEXT_MORNING_PAIN


def test_session_rpe_is_asked_from_thirty_minutes_after_the_end_on() -> None:
    owed = (owed_rating(RPE, "Hugo", hours=0),)
    assert due_now(owed, NOW + timedelta(minutes=29, seconds=59), (), "Hugo") == ()
    assert due_now(owed, NOW + timedelta(minutes=30), (), "Hugo") == owed


def test_the_athlete_chosen_is_asked_first_and_the_others_in_their_order() -> None:
    ines, hugo, bram = (owed_rating(PAIN, name) for name in ("Ines", "Hugo", "Bram"))
    assert due_now((ines, hugo, bram), NOW, (), "Hugo") == (hugo, ines, bram)


def test_what_is_not_to_be_asked_again_is_left_out_and_nothing_else_of_that_run() -> None:
    rpe, pain = owed_rating(RPE, "Hugo"), owed_rating(PAIN, "Hugo")
    assert due_now((rpe, pain), NOW, {unasked_name(rpe)}, "Hugo") == (pain,)
