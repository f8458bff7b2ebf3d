"""What a room hears as samples: louder tones, each wave in its own speaker, whoever is picked."""

import numpy as np
import pytest

from app.audio.bout_sound import Entry, Manner, bout_sound
from app.audio.room_score import RoomScore, into_one
from app.audio.room_sound import RoomSound
from app.audio.run_sound import RunSound
from app.audio.samples import FULL_SCALE, PEAK, PER_MS, Stereo
from app.audio.track import FULL_VOLUME, Volumes
from app.domain.athlete import Athlete
from app.domain.cue_room import RoomEar
from app.domain.group import GroupSession
from app.domain.group_choice import group_session
from app.domain.grouping import Form, Grouping
from app.domain.plan import Exercise, Plan
from app.run.intents import Begin, Pause, Tick
from app.run.room_controller import RoomController
from tests.fakes import HandClock, ImmediateExecutor, RecordingSpeaker
from tests.planned import holds, plan_of, tempo_reps

PLAN = plan_of(Exercise("Press", tempo_reps(3, "1-0-1-0")), Exercise("Hold", holds(3, 3)))
FOUR = tuple(Athlete(name) for name in ("Anouk", "Bram", "Chidi", "Dagny"))
WINDOW = Grouping(Form.STATIONS, 20_000, 10_000)


def session_of(form: Form, plan: Plan = PLAN) -> GroupSession:
    return group_session(plan, FOUR, Grouping(form, 20_000, 10_000))


def heard(session: GroupSession, slot: int, *, apart: bool = False, picked: int | None = None) -> Stereo:
    bout = session.leader.bouts[slot]
    score = RoomScore(session, RoomEar(picked=picked), apart)
    return score.samples(bout, Entry(-bout.before_ms), FULL_VOLUME, {})


def at(samples: Stereo, from_ms: int, to_ms: int, lead_ms: int) -> Stereo:
    return samples[(from_ms + lead_ms) * PER_MS : (to_ms + lead_ms) * PER_MS]


def test_together_the_tones_are_those_of_one_athlete_and_six_decibels_louder_where_there_is_room() -> None:
    session = session_of(Form.TOGETHER)
    bout = session.leader.bouts[0]
    alone = bout_sound(session.leader, bout, Entry(-bout.before_ms), Manner(), {})
    room = heard(session, 0)
    assert room.shape == alone.shape
    lead = bout.before_ms
    phase, led = (at(each, 0, 400, lead).astype(int) for each in (alone, room))
    assert np.abs(led - 2 * phase).max() <= 1, "6 dB are twice the amplitude"
    assert np.abs(room).max() > np.abs(alone).max()
    assert np.abs(room).max() <= PEAK * FULL_SCALE + 1


@pytest.mark.parametrize(("slot", "loud", "silent"), [(0, 0, 1), (1, 1, 0), (2, 0, 1), (3, 1, 0)])
def test_apart_each_wave_is_in_one_speaker_alone(slot: int, loud: int, silent: int) -> None:
    samples = heard(session_of(Form.WAVES), slot, apart=True)
    assert samples[:, loud].any()
    assert not samples[:, silent].any()
    both = heard(session_of(Form.WAVES), slot)
    assert both[:, silent].any()
    assert np.array_equal(samples.any(axis=1), both.any(axis=1))


def test_only_waves_are_put_apart() -> None:
    for form in (Form.TOGETHER, Form.STATIONS):
        session = session_of(form)
        assert np.array_equal(heard(session, 0, apart=True), heard(session, 0))


def test_one_channel_has_the_mean_of_both() -> None:
    samples = np.array([[100, 300], [-7, 0]], dtype=np.int16)
    assert into_one(samples, 1).tolist() == [[0, 200], [0, -4]]
    assert into_one(samples, 0)[:, 1].tolist() == [0, 0]


def test_a_window_sounds_at_its_start_its_last_seconds_and_its_end_and_is_else_silent() -> None:
    session = session_of(Form.STATIONS)
    lead = session.leader.bouts[1].before_ms
    samples = heard(session, 1)
    assert len(samples) == (lead + 20_000 + 500) * PER_MS
    for start_ms in (-3_000, -2_000, -1_000, 0, 17_000, 18_000, 19_000, 20_000):
        assert samples[(start_ms + lead) * PER_MS].any(), "a cue begins at its exact sample"
        assert not at(samples, start_ms - 200, start_ms, lead).any()
    assert not at(samples, 200, 17_000, lead).any()


def test_a_tempo_that_is_picked_is_heard_in_the_window() -> None:
    session = session_of(Form.STATIONS)
    lead = session.leader.bouts[0].before_ms
    picked = heard(session, 0, picked=0)
    assert all(picked[(start_ms + lead) * PER_MS].any() for start_ms in range(0, 16_000, 1_000))


def test_the_voice_is_left_as_loud_as_it_was() -> None:
    session = session_of(Form.WAVES)
    bout = session.leader.bouts[0]
    phrase = np.full(4_800, 5_000, dtype=np.int16)
    score = RoomScore(session, RoomEar())
    samples = score.samples(bout, Entry(-bout.before_ms), Volumes(0.0, 1.0), {"wave A": phrase})
    assert np.abs(samples).max() == 5_000
    assert "wave B" in score.texts()


class Hall:
    """A room and its sound, on a clock moved by hand."""

    def __init__(self, form: Form) -> None:
        self.room = RoomController(session_of(form))
        self.speaker, self.clock = RecordingSpeaker(), HandClock()
        threads = (ImmediateExecutor(), ImmediateExecutor())
        sound = RunSound(self.room.session.leader, self.speaker, self.clock, executors=threads)
        self.sound = RoomSound(sound, RoomScore(self.room.session, RoomEar()))
        self.sound.prepare(self.room.state.leader)

    def do(self, intent: Begin | Tick | Pause) -> None:
        _, led = self.room.handle(intent, self.clock.at_ms)
        self.sound.hear(led)
        self.sound.follow(self.room.state.leader, self.clock.at_ms)

    def to(self, at_ms: int) -> None:
        while self.clock.at_ms < at_ms:
            self.clock.at_ms += 250
            self.do(Tick())


@pytest.mark.parametrize("form", Form)
def test_the_sound_follows_the_leading_clock_one_buffer_a_slot(form: Form) -> None:
    hall = Hall(form)
    hall.do(Begin())
    hall.to(400_000)
    assert hall.room.over
    assert len(hall.speaker.played) == len(hall.room.session.leader.bouts)
    hall.sound.close()


def test_a_pick_is_heard_at_once_and_the_same_pick_changes_nothing() -> None:
    hall = Hall(Form.STATIONS)
    hall.do(Begin())
    hall.to(8_000)
    (plain,) = hall.speaker.played
    hall.sound.pick(0)
    hall.do(Tick())
    assert hall.sound.picked == 0
    assert len(hall.speaker.played) == 2
    assert hall.speaker.played[1].any(axis=1).sum() > plain.any(axis=1).sum()
    hall.sound.pick(0)
    hall.do(Tick())
    assert len(hall.speaker.played) == 2
    hall.sound.pick(None)
    hall.do(Tick())
    assert np.array_equal(hall.speaker.played[2][-PER_MS * 3_000 :], plain[-PER_MS * 3_000 :])
    hall.sound.close()
