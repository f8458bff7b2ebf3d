"""Readiness: what an athlete says of themselves before a session."""

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from app.domain.checks import in_range, moment, short_text
from app.domain.plan import Side

ITEMS = ("sleep", "fatigue", "stress", "soreness")
"""The four questions of the sum, answered from 1 (very, very low or good) to 7 (very, very high or bad)."""

LEAST, MOST = 1, 7
PAIN_LIMIT = 5
"""Pain above this ends an exercise and keeps a session from being started. Common practice, no source."""


class Decision(StrEnum):
    """What somebody chose to whom the session was not to be led, for their pain or a red flag."""

    SPOKEN = "spoken"
    SKIPPED = "skipped"


@dataclass(frozen=True, slots=True)
class Readiness:
    """One athlete's answers, before the run `run_id` or before none. None is not answered, never nought.

    `id` is a UUIDv7 as text; `at` has a time zone and `zone` is the name of the local one. The four items are
    whole numbers 1-7, `pain` is 0-10 at `pain_place`, on `pain_side`. `changed` is the answer to whether
    anything changed in their health, `red_flag` whether a sign is there with which nobody trains,
    `decision` what was chosen then: they have spoken to their practitioner, or skip the day. Raises
    ValueError for an answer that none of the questions allows.
    """

    id: str
    athlete: str
    at: datetime
    zone: str
    sleep: int | None = None
    fatigue: int | None = None
    stress: int | None = None
    soreness: int | None = None
    pain: int | None = None
    pain_place: str | None = None
    pain_side: Side | None = None
    changed: bool | None = None
    red_flag: bool | None = None
    note: str | None = None
    run_id: str | None = None
    decision: Decision | None = None

    def __post_init__(self) -> None:
        for name in ITEMS:
            in_range(name, getattr(self, name), LEAST, MOST)
        in_range("pain", self.pain, 0, 10)
        short_text("pain_place", self.pain_place)
        short_text("note", self.note)
        moment("at", self.at)

    @property
    def total(self) -> int | None:
        """The sum of the four items, 4 (well) to 28 (badly); None when one is missing.

        Source: Hooper et al. 1995, Med Sci Sports Exerc 27:106-112.
        """
        answers = (self.sleep, self.fatigue, self.stress, self.soreness)
        known = [answer for answer in answers if answer is not None]
        return sum(known) if len(known) == len(answers) else None
