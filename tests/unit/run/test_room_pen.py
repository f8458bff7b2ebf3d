"""A room written down: each run under its own name, all of one moment in one call."""

from collections.abc import Sequence
from datetime import UTC, datetime

from app.domain.athlete import Athlete
from app.domain.group_choice import group_session
from app.domain.group_record import GroupMember, GroupRecord, grouping_text, member_text
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise
from app.domain.records import RepDone, RunBegan, RunEnded, RunHeader
from app.run.group_journal import Written
from app.run.intents import Begin, Stop, Tick
from app.run.room_controller import RoomController
from app.run.room_intents import Arrive
from app.run.room_pen import RoomPen
from app.run.room_rehearsal import rehearse_room
from app.run.state import Stand
from tests.fakes import MemoryJournal
from tests.planned import own_pace, plan_of, tempo_reps

AT = datetime(2026, 1, 20, 18, tzinfo=UTC)
PLAN = plan_of(Exercise("Row", tempo_reps(2, "1-0-1-0")), Exercise("Throw", own_pace(3)))
NAMES = ("Anouk", "Bram", "Chidi")


class Counting(MemoryJournal):
    """A journal that counts the calls that brought facts."""

    def __init__(self) -> None:
        super().__init__()
        self.calls = 0

    def append_all(self, written: Sequence[Written]) -> None:
        self.calls += 1
        super().append_all(written)


def pen_of(form: Form = Form.TOGETHER, present: Sequence[bool] | None = None) -> tuple[RoomPen, Counting]:
    grouping, journal = Grouping(form, 10_000, 5_000), Counting()
    session = group_session(PLAN, [Athlete(name) for name in NAMES], grouping)
    members = tuple(
        GroupMember(f"m{place}", place, part.athlete.name, f"r{place}", member_text(part.athlete, part.team))
        for place, part in enumerate(session.parts)
    )
    group = GroupRecord("g", form, grouping_text(grouping, session), AT, "UTC", members[::-1])

    def header(member: GroupMember) -> RunHeader:
        return RunHeader(member.run_id, member.athlete, PLAN.title, "", AT, "UTC")

    return RoomPen(RoomController(session, present), journal, group, header), journal


def to(pen: RoomPen, from_ms: int, to_ms: int) -> None:
    """Let the clock go on."""
    for now_ms in range(from_ms, to_ms + 1, 250):
        pen.follow(Tick(), now_ms)


def test_all_that_happens_at_one_moment_is_one_call() -> None:
    pen, journal = pen_of()
    pen.follow(Begin(), 0)
    assert (journal.calls, journal.groups) == (1, [pen.group])
    assert [header.run_id for header in journal.headers] == ["r0", "r1", "r2"]
    to(pen, 250, 4_750)
    assert journal.calls == 1, "nothing was to be told"
    to(pen, 5_000, 7_250)
    assert journal.calls == 3, "one as the work began, one as the first rep was done"
    assert all(sum(isinstance(fact, RepDone) for fact in facts) == 1 for facts in journal.facts.values())


def test_who_comes_late_gets_a_run_when_they_come_and_who_does_not_gets_none() -> None:
    pen, journal = pen_of(present=[True, False, False])
    pen.follow(Begin(), 0)
    assert list(journal.facts) == ["r0"]
    to(pen, 250, 6_000)
    pen.follow(Arrive(1), 6_100)
    assert [header.athlete for header in journal.headers] == ["Anouk", "Bram"]
    assert isinstance(journal.facts["r1"][0], RunBegan)
    pen.follow(Stop(), 6_500)
    assert pen.room.over
    assert "r2" not in journal.facts
    assert all(isinstance(facts[-1], RunEnded) for facts in journal.facts.values())


def test_a_rehearsal_counts_reps_at_ones_own_pace_and_does_all_there_is() -> None:
    for form in Form:
        pen, journal = pen_of(form)
        end_ms = rehearse_room(pen, lambda _ms: None)
        assert end_ms > 10_000
        for facts, part in zip(journal.facts.values(), pen.room.session.parts, strict=True):
            done = sum(isinstance(fact, RepDone) for fact in facts)
            assert done == sum(bout.high for bout in part.timeline.bouts)


def test_a_room_taken_up_again_is_written_on_from_where_it_was() -> None:
    pen, journal = pen_of()
    for now_ms in range(0, 7_250, 250):
        pen.follow(Tick() if now_ms else Begin(), now_ms)
    facts = [journal.facts[f"r{place}"] for place in range(3)]
    before = [len(theirs) for theirs in facts]
    room = RoomController.taken_up(pen.room.session, facts, 50_000)
    assert room.state.leader.stand is Stand.PAUSED
    again = RoomPen(room, journal, pen.group, lambda _member: journal.headers[0], kept=True)
    rehearse_room(again, lambda _ms: None, now_ms=50_000)
    assert len(journal.headers) == 3
    for theirs, count in zip(journal.facts.values(), before, strict=True):
        assert len(theirs) > count
        assert sum(isinstance(fact, RunBegan) for fact in theirs) == 1
        assert sum(isinstance(fact, RepDone) for fact in theirs) == 5


def test_who_ends_a_rehearsal_ends_every_run_and_hears_of_it() -> None:
    pen, journal = pen_of()
    waited = 0

    def wait(step_ms: int) -> None:
        nonlocal waited
        waited += step_ms
        if waited > 6_000:
            raise KeyboardInterrupt

    try:
        rehearse_room(pen, wait)
    except KeyboardInterrupt:
        assert all(isinstance(facts[-1], RunEnded) for facts in journal.facts.values())
    else:
        raise AssertionError("nobody heard of it")
