"""A run on a screen: one clock behind the sound, facts to the record in order, nothing lost on leaving."""

from collections.abc import Sequence

from pytestqt.qtbot import QtBot

from app.domain.dose import Band, OwnPaceReps
from app.domain.records import Fact, RepDone, RunBegan, RunEnded, RunOutcome
from app.run.intents import Begin, CountRep, Tick
from app.run.sounding import NoSound
from app.run.state import RunState
from app.views.athlete.session import RunSession
from tests.fakes import HandClock, RecordingSpeaker
from tests.led import TWO_REPS, one


class Followed(NoSound):
    """A sound that writes down in which order it was asked what."""

    def __init__(self) -> None:
        super().__init__()
        self.asked: list[str] = []

    def hear(self, facts: tuple[Fact, ...]) -> None:
        self.asked += [type(fact).__name__ for fact in facts]

    def follow(self, state: RunState, now_ms: int) -> None:
        self.asked.append("follow")

    def close(self) -> None:
        self.asked.append("close")


class Session:
    """A session on a clock moved by hand, and what it wrote."""

    def __init__(self, qtbot: QtBot, *, latency_ms: int = 0, own_pace: bool = False) -> None:
        self.clock, self.speaker, self.sound = HandClock(50_000), RecordingSpeaker(latency_ms), Followed()
        self.written: list[Fact] = []
        timeline = one(OwnPaceReps(Band.exactly(3)) if own_pace else TWO_REPS)
        self.session = RunSession(timeline, self.clock, self.speaker, self.sound, self._write)

    def _write(self, first: int, facts: Sequence[Fact]) -> None:
        assert first == len(self.written)
        self.written.extend(facts)

    def places_until(self, at_ms: int) -> list[int]:
        seen = []
        while self.clock.at_ms < at_ms:
            self.clock.at_ms += 16
            seen.append(self.session.look().local_ms)
        return seen


def test_the_picture_is_behind_the_clock_by_the_latency_of_the_sound(qtbot: QtBot) -> None:
    made = Session(qtbot, latency_ms=180)
    made.session.act(Begin())
    made.clock.at_ms += 6_000
    assert made.session.now_ms() == made.clock.at_ms - 180


def test_a_speaker_that_becomes_later_or_earlier_never_lets_the_picture_go_back(qtbot: QtBot) -> None:
    made = Session(qtbot)
    made.session.act(Begin())
    places = made.places_until(57_000)
    for latency_ms in (200, 0, 350, 20):
        made.speaker.latency_ms = latency_ms
        places += made.places_until(made.clock.at_ms + 1_000)
    assert places == sorted(places)
    assert places[-1] == made.clock.at_ms - 20 - 50_000 - 5_000
    assert [fact.rep for fact in made.written if isinstance(fact, RepDone)] == [1]


def test_what_happened_is_heard_and_then_the_sound_follows_the_run(qtbot: QtBot) -> None:
    made = Session(qtbot, own_pace=True)
    made.session.act(Begin())
    assert made.sound.asked == ["RunBegan", "follow"]
    made.places_until(57_000)
    made.sound.asked.clear()
    made.session.act(CountRep())
    assert made.sound.asked == ["RepDone", "follow"]
    made.sound.asked.clear()
    made.session.act(Tick())
    assert made.sound.asked == ["follow"]


def test_leaving_in_mid_bout_abandons_the_run_and_closes_the_sound_after_it(qtbot: QtBot) -> None:
    made = Session(qtbot)
    made.session.act(Begin())
    made.places_until(60_000)
    made.session.close()
    assert made.written[0] == RunBegan()
    assert isinstance(made.written[-1], RunEnded)
    assert made.written[-1].outcome is RunOutcome.ABANDONED
    assert made.sound.asked[-2:] == ["follow", "close"]
