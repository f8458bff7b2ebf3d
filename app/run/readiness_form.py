"""What is asked before a run, question by question: the answers so far, and which question is next."""

from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from app.domain.plan import Side
from app.domain.readiness import ITEMS, LEAST, MOST, PAIN_LIMIT, Decision, Readiness

WORST_PAIN = 10


class Step(StrEnum):
    """What is asked, in this order; at DONE nothing is any more."""

    SLEEP = "sleep"
    FATIGUE = "fatigue"
    STRESS = "stress"
    SORENESS = "soreness"
    PAIN = "pain"
    PLACE = "place"
    CHANGED = "changed"
    RED_FLAG = "red_flag"
    CARE = "care"
    DONE = "done"


ITEM_STEPS = tuple(Step(name) for name in ITEMS)
YES_NO_STEPS = (Step.CHANGED, Step.RED_FLAG)


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on the body by its name, and the side it is on; None in the middle."""

    place: str
    side: Side | None = None


@dataclass(frozen=True, slots=True)
class ReadinessForm:
    """The answers so far, and the question that is asked. None is not answered, never nought.

    Every method gives the form as it stands after it; one that makes no sense where the form stands gives
    the form itself. A question that is passed over keeps the answer it had.
    """

    step: Step = Step.SLEEP
    sleep: int | None = None
    fatigue: int | None = None
    stress: int | None = None
    soreness: int | None = None
    pain: int | None = None
    spot: Spot | None = None
    changed: bool | None = None
    red_flag: bool | None = None
    note: str = ""
    decision: Decision | None = None

    @property
    def steps(self) -> tuple[Step, ...]:
        """The questions these answers lead through: a place where there is pain, care where it is due."""
        left_out = set()
        if not self.pain:
            left_out.add(Step.PLACE)
        if not (self.held or self.changed):
            left_out.add(Step.CARE)
        return tuple(step for step in Step if step not in left_out)

    @property
    def held(self) -> bool:
        """Whether the session waits for a note and a decision: pain above the limit, or a red flag."""
        return (self.pain or 0) > PAIN_LIMIT or self.red_flag is True

    @property
    def may_decide(self) -> bool:
        """Whether a decision can be taken: it is due, and there is a note."""
        return self.step is Step.CARE and self.held and bool(self.note.strip())

    @property
    def may_begin(self) -> bool:
        """Whether nothing stands against starting the session."""
        return self.step is Step.DONE and (not self.held or self.decision is Decision.SPOKEN)

    @property
    def touched(self) -> bool:
        """Whether anything was answered, written or passed over."""
        return self != ReadinessForm()

    def value(self, step: Step) -> int | bool | Spot | None:
        """The answer to a question, None while there is none."""
        known: int | bool | Spot | None = getattr(self, "spot" if step is Step.PLACE else step.value, None)
        return known

    def number(self, number: int) -> "ReadinessForm":
        """Answer with a number: 1-7, pain with 0-10, yes with 1 and no with 2."""
        if self.step in ITEM_STEPS and LEAST <= number <= MOST:
            return self._with(self.step, number)
        if self.step is Step.PAIN and 0 <= number <= WORST_PAIN:
            return self._with(Step.PAIN, number, spot=self.spot if number else None)
        if self.step in YES_NO_STEPS and number in (1, 2):
            return self.say(yes=number == 1)
        return self

    def make_ten(self) -> "ReadinessForm":
        """Turn a pain of 1 that was just answered into 10."""
        if self.step is Step.PLACE and self.pain == 1:
            return replace(self, pain=WORST_PAIN, decision=None)
        return self

    def point(self, spot: Spot) -> "ReadinessForm":
        """Say where it hurts."""
        return self._with(Step.PLACE, spot) if self.step is Step.PLACE else self

    def say(self, *, yes: bool) -> "ReadinessForm":
        """Answer yes or no."""
        return self._with(self.step, yes) if self.step in YES_NO_STEPS else self

    def write(self, note: str) -> "ReadinessForm":
        """Take a note."""
        return replace(self, note=note) if self.step is Step.CARE else self

    def decide(self, decision: Decision) -> "ReadinessForm":
        """Say what was decided; not before there is a note."""
        return replace(self, decision=decision, step=Step.DONE) if self.may_decide else self

    def pass_over(self) -> "ReadinessForm":
        """Go on to the next question; what waits for a decision cannot be passed over."""
        if self.step is Step.DONE or (self.step is Step.CARE and self.held):
            return self
        return self._after(self.step)

    def skip_all(self) -> "ReadinessForm":
        """Ask nothing more, save what has to be decided."""
        if self.step in (Step.CARE, Step.DONE):
            return self
        return replace(self, step=Step.CARE if self.held else Step.DONE)

    def back(self) -> "ReadinessForm":
        """Ask the question before again; the first stays."""
        before = [step for step in self.steps if _order(step) < _order(self.step)]
        return self.go_to(before[-1]) if before else self

    def go_to(self, step: Step) -> "ReadinessForm":
        """Ask a question that these answers lead to; a decision that was taken is to be taken anew."""
        if step is Step.DONE or step not in self.steps:
            return self
        return replace(self, step=step, decision=None)

    def readiness(
        self, id_: str, athlete: str, at: datetime, zone: str, run_id: str | None = None
    ) -> Readiness:
        """What is written down: the answers of an athlete at a moment, before a run or before none."""
        items = {name: getattr(self, name) for name in ITEMS}
        return Readiness(
            id=id_,
            athlete=athlete,
            at=at,
            zone=zone,
            **items,
            pain=self.pain,
            pain_place=None if self.spot is None else self.spot.place,
            pain_side=None if self.spot is None else self.spot.side,
            changed=self.changed,
            red_flag=self.red_flag,
            note=self.note.strip() or None,
            run_id=run_id,
            decision=self.decision,
        )

    @property
    def total(self) -> int | None:
        """The sum of the four items, 4 to 28; None when one is missing."""
        known = [self.value(step) for step in ITEM_STEPS]
        return None if None in known else sum(number for number in known if isinstance(number, int))

    def _with(self, step: Step, value: object, **more: object) -> "ReadinessForm":
        name = "spot" if step is Step.PLACE else step.value
        answered: ReadinessForm = replace(self, decision=None, **{name: value}, **more)  # type: ignore[arg-type]
        return answered._after(step)

    def _after(self, step: Step) -> "ReadinessForm":
        later = [each for each in self.steps if _order(each) > _order(step)]
        return replace(self, step=later[0])


_ORDER = {step: index for index, step in enumerate(Step)}


def _order(step: Step) -> int:
    return _ORDER[step]
