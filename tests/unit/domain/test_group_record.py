"""Group sessions as they are kept: laid out again from the record alone."""

from dataclasses import replace
from datetime import UTC, datetime
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.athlete import Athlete
from app.domain.dose import Band
from app.domain.errors import StoreError
from app.domain.group_choice import group_session
from app.domain.group_record import (
    GroupMember,
    GroupRecord,
    athlete_of,
    grouping_of,
    grouping_text,
    member_text,
    session_of,
)
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, Plan, Side
from tests.planned import plan_of, tempo_reps

AT = datetime(2026, 1, 20, 18, 0, tzinfo=UTC)
PLAN = plan_of(
    Exercise("Row", tempo_reps(4, "2-0-1-0"), easier="Row, kneeling"), Exercise("Hop", tempo_reps(3, "10X0"))
)
INES = Athlete(
    "Ines",
    Side.RIGHT,
    {("Row", Side.LEFT): Decimal("4.50")},
    {"Row": Band(2, 3)},
    notes="tired",
    short="Ine",
    team="B",
    sits_out=frozenset({"Hop"}),
    variants={"Row": "easier"},
)


def record_of(plan: Plan, athletes: list[Athlete], grouping: Grouping) -> GroupRecord:
    """A group session as it would be kept."""
    session = group_session(plan, athletes, grouping)
    members = tuple(
        GroupMember(f"m{place}", place, part.athlete.name, f"r{place}", member_text(part.athlete, part.team))
        for place, part in enumerate(session.parts)
    )
    return GroupRecord("g", grouping.form, grouping_text(grouping, session), AT, "UTC", members[::-1])


def test_what_is_different_for_an_athlete_reads_back_but_for_words_about_them() -> None:
    text = member_text(INES, 1)
    assert athlete_of(GroupMember("m", 0, "Ines", "r", text)) == replace(INES, notes=None, short=None)
    assert "tired" not in text
    assert "Ine" not in text


@given(st.sampled_from(Form), st.integers(2, 14), st.integers(1, 3), st.none() | st.integers(1, 14))
def test_a_session_is_laid_out_again_as_it_was(
    form: Form, people: int, rounds: int, teams: int | None
) -> None:
    athletes = [INES, *(Athlete(f"A{number}", team="A") for number in range(people - 1))]
    grouping = Grouping(form, 20_000, 10_000, rounds, ("Hop", "Row"), teams, 7_000)
    before = group_session(PLAN, athletes, grouping)
    after = session_of(PLAN, record_of(PLAN, athletes, grouping))
    assert (after.form, after.leader, after.stations, after.places) == (
        before.form,
        before.leader,
        before.stations,
        before.places,
    )
    for was, now in zip(before.parts, after.parts, strict=True):
        assert (now.timeline, now.slots, now.sits_out, now.team) == (
            was.timeline,
            was.slots,
            was.sits_out,
            was.team,
        )


@pytest.mark.parametrize("text", ["", "{}", "[]", '{"form": "circle"}', '{"form":"waves","x":1}'])
def test_what_cannot_be_read_says_so(text: str) -> None:
    with pytest.raises(StoreError, match="cannot be read"):
        grouping_of(text)
    with pytest.raises(StoreError, match="cannot be read"):
        athlete_of(GroupMember("m", 0, "Ines", "r", text))
