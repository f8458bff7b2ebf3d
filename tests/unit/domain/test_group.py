"""Groups: who does what in which slot, for any roster, any stations, any window."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.dose import Band, Dose
from app.domain.errors import PacewrightError
from app.domain.group import GroupError, GroupSession, teams_of
from app.domain.group_stations import Rotation, fitted_dose, stations
from app.domain.group_together import together
from app.domain.group_waves import waves
from app.domain.grouping import Form
from app.domain.plan import Exercise, Plan, Side, Sides, Stage, StageKind
from app.domain.prescription import prescriptions
from tests.planned import holds, own_pace, plan_of, signals, sticks, tempo_reps, work_for
from tests.strategies import plans

ROOM = st.integers(1, 40).map(lambda count: tuple(Athlete(f"A{number}") for number in range(count)))
WINDOWS = st.builds(Rotation, st.integers(10_000, 120_000), st.integers(5_000, 60_000), st.integers(1, 4))


def stationed(count: int) -> Plan:
    """A plan whose exercises take turns through all doses but those that need more than ten seconds."""
    doses: list[Dose] = [
        tempo_reps(8, "2-0-1-0"),
        holds(5, 2),
        sticks(4, (1, 2)),
        signals(6, 2),
        own_pace(8),
        work_for(20),
    ]
    each = [
        Exercise(f"Station {number}", doses[number % len(doses)], sides=Sides.BOTH) for number in range(count)
    ]
    return Plan("Round", (Stage("All", StageKind.OTHER, tuple(each)),))


@given(ROOM, st.integers(1, 12), WINDOWS, st.data())
def test_every_team_is_at_every_station_once_a_round_and_nowhere_twice(
    athletes: tuple[Athlete, ...], count: int, rotation: Rotation, data: st.DataObject
) -> None:
    teams = data.draw(st.integers(1, len(athletes)))
    session = stations(stationed(count), athletes, rotation, teams=teams)
    turns = max(count, session.teams)
    assert session.teams == teams
    assert len(session.leader.bouts) == len(session.places) == turns * rotation.rounds
    for row in session.places:
        busy = [station for station in row if station is not None]
        assert len(busy) == len(set(busy)), "two teams at one station"
    for team in range(teams):
        for round_ in range(rotation.rounds):
            window = [row[team] for row in session.places[round_ * turns : (round_ + 1) * turns]]
            assert sorted(place for place in window if place is not None) == list(range(count))


@given(ROOM, st.integers(1, 12), WINDOWS)
def test_the_room_takes_its_windows_and_changes_and_nothing_else(
    athletes: tuple[Athlete, ...], count: int, rotation: Rotation
) -> None:
    session = stations(stationed(count), athletes, rotation)
    slots = max(count, session.teams) * rotation.rounds
    lead_in = session.leader.bouts[0].lead_in_ms
    whole = slots * rotation.work_ms + (slots - 1) * rotation.change_ms + lead_in
    assert session.leader.timed_ms == whole


@given(ROOM, st.integers(1, 12), WINDOWS)
def test_work_in_a_window_fits_it_and_one_rep_more_would_not(
    athletes: tuple[Athlete, ...], count: int, rotation: Rotation
) -> None:
    session = stations(stationed(count), athletes, rotation)
    for part in session.parts:
        for bout in part.timeline.bouts:
            assert bout.work_ms is not None
            assert bout.work_ms <= rotation.work_ms
            exercise = part.timeline.exercise_of(bout)
            alike = {
                other.work_ms
                for each in session.parts
                for other in each.timeline.bouts
                if (other.stage, other.exercise) == (bout.stage, bout.exercise)
            }
            assert alike == {bout.work_ms}, f"unequal work at {exercise.name}"
            if len(bout.windows) > 1:
                longest = bout.windows[0].end_ms - bout.windows[0].start_ms
                assert len(bout.windows) == 200 or bout.work_ms + longest > rotation.work_ms


def test_a_window_of_one_sided_work_is_shared_between_the_sides() -> None:
    exercise = Exercise("Row", tempo_reps(8, "2-0-2-0"), sides=Sides.EACH)
    session = stations(plan_of(exercise, side_change_ms=6_000), [Athlete("A")], Rotation(60_000, 20_000))
    left, right = session.parts[0].timeline.bouts
    assert (left.side, right.side) == (Side.LEFT, Side.RIGHT)
    assert session.parts[0].slots == (0, 0)
    assert left.work_ms == right.work_ms == 24_000, "27 s a side hold six reps of 4 s"
    assert right.before_ms == 6_000


def test_reps_of_ones_own_stand_where_they_are_fewer_than_fit() -> None:
    plan = plan_of(Exercise("Row", tempo_reps(8, "2-0-2-0")))
    few = Athlete("A", reps={"Row": Band(3, 4)})
    session = stations(plan, [few, Athlete("B")], Rotation(60_000, 20_000), teams=1)
    assert [len(part.timeline.bouts[0].windows) for part in session.parts] == [4, 15]


def test_a_window_too_short_for_one_rep_is_refused_by_name() -> None:
    plan = plan_of(Exercise("Long hold", holds(1, 30)))
    with pytest.raises(GroupError, match="Long hold"):
        stations(plan, [Athlete("A")], Rotation(20_000, 10_000))


def test_work_at_ones_own_pace_becomes_work_for_the_window() -> None:
    exercise = Exercise("Bounds", own_pace(10))
    assert fitted_dose(exercise, 40_000, 1_000) == work_for(40)


@pytest.mark.parametrize(
    ("work_ms", "change_ms", "rounds"), [(9_999, 20_000, 1), (40_000, 4_999, 1), (40_000, 20_000, 0)]
)
def test_a_rotation_beyond_its_bounds_is_refused(work_ms: int, change_ms: int, rounds: int) -> None:
    with pytest.raises(GroupError):
        Rotation(work_ms, change_ms, rounds)


def test_what_is_no_station_is_refused() -> None:
    plan = stationed(3)
    for chosen in ([(0, 0), (0, 0)], [(0, 7)]):
        with pytest.raises(GroupError, match="another exercise"):
            stations(plan, [Athlete("A")], Rotation(), chosen)
    with pytest.raises(GroupError, match="at most 12"):
        stations(stationed(13), [Athlete("A")], Rotation())


@pytest.mark.parametrize("form", Form)
def test_a_group_of_nobody_or_of_more_than_forty_is_refused(form: Form) -> None:
    for athletes in ((), tuple(Athlete(str(number)) for number in range(41))):
        with pytest.raises(PacewrightError, match="athlete"):
            made(form, stationed(2), athletes)


def made(form: Form, plan: Plan, athletes: tuple[Athlete, ...]) -> GroupSession:
    """A group session of a form, with a change of twenty seconds."""
    if form is Form.STATIONS:
        return stations(plan, athletes, Rotation())
    return together(plan, athletes) if form is Form.TOGETHER else waves(plan, athletes, 20_000)


@given(st.lists(st.none() | st.sampled_from("ABCDEFG"), min_size=1, max_size=40), st.integers(1, 12))
def test_teams_follow_the_letters_and_are_even_without_them(letters: list[str | None], count: int) -> None:
    athletes = [Athlete(str(number), team=letter) for number, letter in enumerate(letters)]
    teams = teams_of(athletes, count)
    for letter, team in zip(letters, teams, strict=True):
        assert 0 <= team < count
        if letter is not None and ord(letter) - ord("A") < count:
            assert team == ord(letter) - ord("A")
    if not any(letters):
        sizes = [teams.count(team) for team in range(count)]
        assert max(sizes) - min(sizes) <= 1


@given(plans(), ROOM)
def test_together_gives_everybody_the_timeline_they_have_alone(
    plan: Plan, athletes: tuple[Athlete, ...]
) -> None:
    session = together(plan, athletes)
    for part in session.parts:
        assert part.timeline.bouts == compile_timeline(plan, part.athlete).bouts
        assert part.slots == tuple(range(len(session.leader.bouts)))


def test_the_leading_clock_takes_the_most_reps_of_anybody() -> None:
    plan = plan_of(
        Exercise("Row", tempo_reps((6, 8), "2-0-2-0")), Exercise("Press", tempo_reps(5, "2-0-1-0"))
    )
    more, fewer = Athlete("A", reps={"Row": Band(9, 12)}), Athlete("B", reps={"Row": Band(2, 2)})
    assert [bout.high for bout in together(plan, [more, fewer]).leader.bouts] == [12, 5]
    assert [bout.high for bout in together(plan, [fewer]).leader.bouts] == [2, 5]


def test_sides_differ_only_where_people_begin_on_different_ones() -> None:
    plan = plan_of(
        Exercise("Row", tempo_reps(5, "2-0-2-0"), sides=Sides.EACH), Exercise("Squat", holds(2, 5))
    )
    same = together(plan, [Athlete("A", first=Side.RIGHT), Athlete("B", first=Side.RIGHT)])
    assert [bout.side for bout in same.leader.bouts] == [Side.RIGHT, Side.LEFT, Side.BOTH]
    assert not any(same.sides_differ(slot) for slot in range(3))
    mixed = together(plan, [Athlete("A", first=Side.RIGHT), Athlete("B")])
    assert [mixed.sides_differ(slot) for slot in range(3)] == [True, True, False]


def test_a_variant_changes_the_name_and_keeps_load_and_reps_of_the_exercise() -> None:
    exercise = Exercise("Hop", sticks(4, 2), easier="Step down", harder="Hop over a line")
    easy = Athlete("A", reps={"Hop": Band(2, 3)}, variants={"Hop": "easier"})
    hard = Athlete("B", variants={"Hop": "harder"})
    other = Athlete("C", variants={"Row": "harder"})
    session = together(plan_of(exercise), [easy, hard, other])
    asked = [prescriptions(part.timeline)[0] for part in session.parts]
    assert [each.exercise for each in asked] == ["Step down", "Hop over a line", "Hop"]
    assert [each.high for each in asked] == [3, 4, 4]


@given(plans(), st.integers(2, 40), st.integers(5_000, 60_000))
def test_in_waves_one_works_while_the_other_rests_and_rests_are_no_shorter_than_planned(
    plan: Plan, count: int, swap_ms: int
) -> None:
    athletes = tuple(Athlete(str(number)) for number in range(count))
    session = waves(plan, athletes, swap_ms)
    once = together(plan, athletes).leader
    assert [bout.work for bout in session.leader.bouts[::2]] == [bout.work for bout in once.bouts]
    assert [bout.work for bout in session.leader.bouts[1::2]] == [bout.work for bout in once.bouts]
    slots = [set(part.slots) for part in session.parts]
    assert abs(len(session.members(0)) - len(session.members(1))) <= 1
    for part, theirs in zip(session.parts, slots, strict=True):
        for other, others in zip(session.parts, slots, strict=True):
            assert (part.team == other.team) or not theirs & others
    for slot, bout in enumerate(session.leader.bouts[2:], 2):
        before, between = session.leader.bouts[slot - 1], session.leader.bouts[slot]
        rest = before.before_ms + (before.work_ms or 0) + between.before_ms
        assert rest >= once.bouts[slot // 2].before_ms
        assert bout.before_ms >= min(swap_ms, bout.before_ms)
    assert all(bout.before_ms >= swap_ms for bout in session.leader.bouts[1:])


def test_one_athlete_makes_no_waves() -> None:
    with pytest.raises(GroupError, match="two athletes"):
        waves(stationed(2), [Athlete("A")], 10_000)
    with pytest.raises(GroupError, match="letter of one wave"):
        waves(stationed(2), [Athlete("A", team="A"), Athlete("B", team="A")], 10_000)
