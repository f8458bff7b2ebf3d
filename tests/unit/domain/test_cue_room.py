"""What is heard in a room, and where: sides that differ, windows, who goes where, one team's tempo."""

from dataclasses import replace

import pytest

from app.domain.athlete import Athlete
from app.domain.cue_room import RoomEar, room_cues, room_texts, station_letter
from app.domain.cue_tones import work_tones
from app.domain.cue_values import Cue, CueKind, CueLevel
from app.domain.cue_words import TONGUES
from app.domain.cues import bout_cues
from app.domain.group import GroupSession
from app.domain.group_choice import group_session
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, Side, Sides
from tests.planned import holds, plan_of, tempo_reps

ROW = Exercise("Row", tempo_reps(4, "2-0-2-0"), sides=Sides.EACH)
PLAN = plan_of(ROW, Exercise("Hop", tempo_reps(4, "2-0-1-0"), sides=Sides.ALTERNATE), lead_in_ms=5_000)
SAME = (Athlete("Anouk"), Athlete("Bram"))
APART = (Athlete("Anouk"), Athlete("Bram", Side.RIGHT))
ROUND = plan_of(
    Exercise("Press", tempo_reps(9, "1-0-1-0")), Exercise("Hold", holds(5, 3)), Exercise("Row", ROW.dose)
)
SIX = tuple(Athlete(f"A{number}") for number in range(6))
WINDOW = Grouping(Form.STATIONS, 40_000, 20_000, 2)


def heard(session: GroupSession, slot: int, ear: RoomEar = RoomEar()) -> tuple[Cue, ...]:  # noqa: B008
    """The cues of a whole slot, its gap included."""
    bout = session.leader.bouts[slot]
    return room_cues(session, bout, ear, from_ms=-bout.before_ms - 1_000)


def said(cues: tuple[Cue, ...], kind: CueKind | None = None) -> list[tuple[int, str | None]]:
    return [(cue.at_ms, cue.text) for cue in cues if cue.kind.spoken and kind in (None, cue.kind)]


def test_together_on_one_side_it_is_heard_as_by_one_athlete() -> None:
    session = group_session(PLAN, SAME, Grouping())
    for bout in session.leader.bouts:
        alone = bout_cues(session.leader, bout, from_ms=-9_000)
        assert room_cues(session, bout, RoomEar(), from_ms=-9_000) == alone


@pytest.mark.parametrize("code", TONGUES)
def test_where_people_start_on_different_sides_the_sides_are_the_first_and_the_second(code: str) -> None:
    tongue = TONGUES[code]
    session = group_session(PLAN, APART, Grouping())
    cues = [heard(session, slot, RoomEar(tongue=tongue)) for slot in range(3)]
    assert {cue.side for slot in cues for cue in slot} == {Side.BOTH}
    sides = [[text for _, text in said(slot, CueKind.SIDE)] for slot in cues]
    assert sides[0] == [tongue.first_side]
    assert sides[1] == [tongue.change_side.format(tongue.second_side), tongue.second_side]
    assert sides[2] == [tongue.first_side]
    counted = [text or "" for _, text in said(cues[2], CueKind.COUNT)]
    assert counted[0].startswith(tongue.first_side)
    assert counted[1].startswith(tongue.second_side)
    named = {
        word for side in (Side.LEFT, Side.RIGHT) for word in (tongue.sides[side], tongue.side_words[side])
    }
    assert not named & {text for slot in cues for _, text in said(slot)}


def test_in_waves_it_is_said_whose_turn_it_is() -> None:
    session = group_session(PLAN, SAME, Grouping(Form.WAVES))
    turns = [said(heard(session, slot), CueKind.SIDE)[0][1] for slot in range(4)]
    assert turns == ["wave A", "wave B", "wave A", "wave B"]
    quiet = heard(session, 0, RoomEar(level=CueLevel.TONES))
    assert said(quiet) == []


def test_a_window_has_three_seconds_a_start_ten_seconds_three_seconds_and_an_end() -> None:
    session = group_session(ROUND, SIX, WINDOW)
    cues = heard(session, 5)
    tones = [(cue.at_ms, cue.kind) for cue in cues if not cue.kind.spoken]
    tick, end = CueKind.TICK, CueKind.END
    assert tones == [
        *((at, tick) for at in (-3_000, -2_000, -1_000)),
        (0, CueKind.EXPLOSIVE),
        *((at, tick) for at in (37_000, 38_000, 39_000)),
        (40_000, end),
    ]
    assert said(cues) == [(-19_500, "change"), (-10_000, "10 seconds"), (30_000, "10 seconds")]


def test_in_the_first_round_it_is_said_who_goes_where_and_later_no_more() -> None:
    session = group_session(ROUND, SIX, WINDOW)
    names = {place: f"Short{place}" for place in range(5)}
    told = [said(heard(session, slot, RoomEar(names)), CueKind.EXERCISE) for slot in range(6)]
    assert [text for _, text in told[0]] == [
        "Short0, Short3: station A",
        "Short1, Short4: station B",
        "Short2, A5: station C",
    ]
    assert [text for _, text in told[1]] == [
        "Short2, A5: station A",
        "Short0, Short3: station B",
        "Short1, Short4: station C",
    ]
    assert told[3:] == [[], [], []]


def test_short_windows_and_changes_are_not_announced() -> None:
    session = group_session(ROUND, SIX, replace(WINDOW, work_ms=15_000, change_ms=10_000))
    assert said(heard(session, 5), CueKind.TIME_LEFT) == []


def test_the_tempo_of_whoever_is_picked_is_heard_in_the_window() -> None:
    session = group_session(ROUND, SIX, WINDOW)
    part = session.parts[1]
    for slot in range(3):
        (bout,) = part.bouts_in(slot)
        cues = heard(session, slot, RoomEar(picked=1))
        onsets = {
            cue.at_ms
            for cue in work_tones(part.timeline.exercise_of(bout), bout)
            if cue.kind not in (CueKind.END, CueKind.TICK)
        }
        assert onsets <= {cue.at_ms for cue in cues if not cue.kind.spoken}
        assert said(cues, CueKind.COUNT)
        assert max(cue.at_ms for cue in cues) == 40_000
    assert not said(heard(session, 0), CueKind.COUNT)


def test_the_second_side_of_a_window_is_heard_where_it_falls() -> None:
    session = group_session(plan_of(ROW), [Athlete("Anouk")], WINDOW)
    first, second = session.parts[0].bouts_in(0)
    begins = (first.work_ms or 0) + second.before_ms
    sides = {cue.side for cue in heard(session, 0, RoomEar(picked=0)) if 0 < cue.at_ms < begins}
    later = {cue.side for cue in heard(session, 0, RoomEar(picked=0)) if begins <= cue.at_ms < 36_000}
    assert Side.LEFT in sides
    assert Side.RIGHT not in sides
    assert Side.RIGHT in later
    assert Side.LEFT not in later


def test_what_one_sits_out_is_not_heard() -> None:
    resting = Athlete("Anouk", sits_out=frozenset({"Row"}))
    session = group_session(plan_of(ROW), [resting], WINDOW)
    assert heard(session, 0, RoomEar(picked=0)) == heard(session, 0)


def test_after_a_pause_a_window_goes_on_with_its_start_where_it_was() -> None:
    session = group_session(ROUND, SIX, WINDOW)
    bout = session.leader.bouts[4]
    cues = room_cues(session, bout, RoomEar(), from_ms=15_000, work_from_ms=20_000)
    assert [cue.at_ms for cue in cues if cue.kind is CueKind.EXPLOSIVE] == [20_000]
    assert min(cue.at_ms for cue in cues) == 17_000
    assert said(cues, CueKind.SIDE) == []


@pytest.mark.parametrize("form", Form)
def test_every_text_that_is_said_is_made_ahead(form: Form) -> None:
    session = group_session(ROUND, SIX, replace(WINDOW, form=form))
    texts = room_texts(session, RoomEar())
    assert len(texts) == len(set(texts))
    for picked in (None, *range(6)) if form is Form.STATIONS else (None,):
        for slot in range(len(session.leader.bouts)):
            for cue in heard(session, slot, RoomEar(picked=picked)):
                if cue.text is not None:
                    assert {cue.text, *cue.shorter} <= set(texts)
    assert [station_letter(number) for number in (0, 11)] == ["A", "L"]
