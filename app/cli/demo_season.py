"""An invented season of an invented club: who comes when, and how each of them gets on over the weeks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from random import Random
from zoneinfo import ZoneInfo

from app.cli.demo_session import Day, invent_session
from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.plan import Plan, StageKind
from app.domain.prescription import prescriptions
from app.domain.records import BoutPrescribed, Fact, RunHeader
from app.domain.timeline import Timeline
from app.store.identity import RANDOM_BYTES, uuid7

ZONE = "Europe/Lisbon"
WEEKDAYS = (0, 2, 4)
"""Monday, Wednesday, Friday."""

SORE = "Ines"
SILENT = "Bram"
STANDS_STILL = "Kaya"
NEWCOMER = "Hugo"
AWAY = "Greta"
AFTER_LANDING = "Chidi"
"""Whose knee has begun to hurt after landings."""


@dataclass(frozen=True, slots=True)
class InventedRun:
    """One run ready to be written: the facts are made when asked for."""

    header: RunHeader
    timeline: Timeline
    day: Day
    chance: Random

    def prescribed(self) -> tuple[BoutPrescribed, ...]:
        """What its bouts ask for."""
        return prescriptions(self.timeline)

    def facts(self) -> tuple[Fact, ...]:
        """What happened; to be asked once."""
        return invent_session(self.timeline, self.day, self.chance)


@dataclass(frozen=True, slots=True)
class Habits:
    """What an athlete is like all season. Chances are from 0 to 1.

    `faults` is the chance of one in a rep in the first week and in the last.
    """

    comes: float
    faults: tuple[float, float]
    answers: float
    effort: float
    breaks_off: float


@dataclass(frozen=True, slots=True)
class Season:
    """Weeks that end on a day, the plans in turn, and who takes part. Equal values give the same season."""

    plans: Sequence[tuple[Plan, str]]
    athletes: Sequence[Athlete]
    weeks: int
    until: date

    def runs(self) -> Iterator[InventedRun]:
        """All runs in the order in which they begin."""
        timelines = {
            (athlete.name, which): compile_timeline(plan, athlete)
            for athlete in self.athletes
            for which, (plan, _) in enumerate(self.plans)
        }
        for day in range(7 * self.weeks):
            on = self.until - timedelta(days=7 * self.weeks - 1 - day)
            if on.weekday() not in WEEKDAYS or self.is_free(day // 7):
                continue
            which = self._which(on, day)
            for place, athlete in enumerate(self.athletes):
                run = self._run(athlete, place, on, day, which, timelines[athlete.name, which])
                if run is not None:
                    yield run

    def plan_of(self, on: date, day: int) -> tuple[Plan, str]:
        """The plan of a day, counted from the first of the season, and its text."""
        return self.plans[self._which(on, day)]

    def _which(self, on: date, day: int) -> int:
        return (WEEKDAYS.index(on.weekday()) + day // 7) % len(self.plans)

    def is_free(self, week: int) -> bool:
        """The hall is closed for one week in the second half."""
        return self.weeks >= 4 and week == self.weeks * 7 // 12

    def _run(
        self, athlete: Athlete, place: int, on: date, day: int, which: int, timeline: Timeline
    ) -> InventedRun | None:
        habits = habits_of(athlete.name)
        chance = Random(f"{self.until} {self.weeks} {on} {athlete.name}")  # noqa: S311 - an invention, no secret
        gone = day / max(1, 7 * self.weeks - 1)
        if not chance.random() < habits.comes or not present(athlete.name, gone):
            return None
        plan, text = self.plans[which]
        local = datetime.combine(on, time(17, 30), ZoneInfo(ZONE)) + timedelta(
            minutes=8 * place, seconds=chance.randint(-200, 200)
        )
        began = local.astimezone(UTC)
        name = uuid7(int(began.timestamp() * 1000), chance.randbytes(RANDOM_BYTES))
        header = RunHeader(str(name), athlete.name, plan.title, text, began, ZONE, invented=True)
        pain = pain_of(athlete.name, plan, gone, on.isoformat())
        return InventedRun(header, timeline, _day(habits, pain, gone, timeline, chance), chance)


def habits_of(name: str) -> Habits:
    """What an athlete is like, always the same for a name."""
    chance = Random(f"habits of {name}")  # noqa: S311
    begins = chance.uniform(0.2, 0.34)
    ends = begins if name == STANDS_STILL else chance.uniform(0.04, 0.1)
    return Habits(
        comes=1.0 if name == SORE else chance.uniform(0.74, 0.98),
        faults=(begins, ends),
        answers=0.1 if name == SILENT else chance.uniform(0.8, 0.98),
        effort=chance.uniform(4.2, 6.2),
        breaks_off=chance.uniform(0.01, 0.06),
    )


def present(name: str, gone: float) -> bool:
    """Whether an athlete takes part when so much of the season is gone, 0-1."""
    if name == NEWCOMER:
        return gone >= 0.25
    if name == AWAY:
        return gone < 0.87
    return not (name == SORE and 0.5 <= gone < 0.58)


def soreness(gone: float) -> dict[StageKind, int]:
    """The sore shoulder over the season: it rises, ends an exercise, is rested, and settles."""
    worst = 1 if gone < 0.25 else 3 if gone < 0.4 else 6 if gone < 0.5 else 3 if gone < 0.75 else 1
    by_stage = (
        (StageKind.ACTIVATION, 3),
        (StageKind.INTEGRATION, 2),
        (StageKind.STABILITY, 2),
        (StageKind.REACTIVE, 1),
    )
    return {StageKind.POWER: worst, **{kind: max(0, worst - less) for kind, less in by_stage}}


def pain_of(name: str, plan: Plan, gone: float, day: str) -> dict[StageKind, int]:
    """Pain by stage on a day: the sore shoulder, the knee after landings, and now and then a little of it."""
    shoulder = "shoulder" in plan.title.casefold()
    if name == SORE:
        return soreness(gone) if shoulder else {}
    if name == AFTER_LANDING and not shoulder and gone >= 0.8:
        worst = 2 if gone < 0.87 else 4 if gone < 0.94 else 6
        return {StageKind.POWER: worst, StageKind.REACTIVE: worst - 1, StageKind.STABILITY: 1}
    chance = Random(f"a little pain {day} {name}")  # noqa: S311 - an invention, no secret
    return {StageKind.POWER: chance.choice((1, 1, 2))} if chance.random() < 0.12 else {}


def _day(habits: Habits, pain: dict[StageKind, int], gone: float, timeline: Timeline, chance: Random) -> Day:
    begins, ends = habits.faults
    tired = chance.gauss(0, 1)
    breaks_off = chance.random() < habits.breaks_off
    bouts = len(timeline.bouts)
    return Day(
        fault=max(0.01, begins + (ends - begins) * gone + 0.02 * tired),
        miss=0.01,
        answer=habits.answers,
        effort=habits.effort - gone + 0.5 * tired,
        pain=pain,
        breaks_off_after=chance.randrange(bouts // 2, bouts) if breaks_off else None,
    )
