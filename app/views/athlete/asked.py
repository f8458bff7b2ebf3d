"""The bouts that can be asked about: those that are over, each by the attempt that stands."""

from collections.abc import Sequence

from app.domain.fold import fold_run, standing
from app.domain.records import BoutRecord, Fact


def asked_about(facts: Sequence[Fact], under_way: int | None = None) -> tuple[BoutRecord, ...]:
    """The bouts of a run that were begun and are over, in the order in which they ended.

    `under_way` is the bout that is not over yet.
    """
    found = standing(fold_run(facts)).values()
    over = [record for record in found if record.began_ms is not None and record.bout != under_way]
    return tuple(sorted(over, key=lambda record: (record.ended_ms, record.bout)))


def answered(record: BoutRecord) -> bool:
    """Whether effort and pain of a bout are known."""
    return record.rpe is not None and record.pain is not None


class Turning:
    """Which of the bouts is asked about: the last that is over, until another is turned to."""

    def __init__(self) -> None:
        self._records: tuple[BoutRecord, ...] = ()
        self._chosen: int | None = None

    def take(self, records: Sequence[BoutRecord]) -> None:
        """Take what is known now; a bout that has just ended comes to the front."""
        new = tuple(records)
        if not self._records or not new or new[-1].bout != self._records[-1].bout:
            self._chosen = None
        self._records = new

    @property
    def record(self) -> BoutRecord | None:
        """The bout asked about, None where none is over."""
        return next((each for each in self._records if each.bout == self._chosen), self._last)

    @property
    def at_last(self) -> bool:
        """Whether the bout asked about is the last that is over."""
        return self.record is self._last

    @property
    def earlier(self) -> int:
        """How many bouts before the one asked about are not answered."""
        return len(self._earlier())

    def turn_back(self) -> None:
        """Ask about the bout before that is not answered, where there is one."""
        if earlier := self._earlier():
            self._chosen = earlier[-1].bout

    def turn_on(self) -> None:
        """Ask about the next bout that is not answered, else about the last."""
        place = self._place()
        later = [each for each in self._records[place + 1 :] if not answered(each)]
        following = later[0] if later else self._last
        self._chosen = None if following is None else following.bout

    @property
    def _last(self) -> BoutRecord | None:
        return self._records[-1] if self._records else None

    def _place(self) -> int:
        return next((place for place, each in enumerate(self._records) if each is self.record), 0)

    def _earlier(self) -> list[BoutRecord]:
        return [each for each in self._records[: self._place()] if not answered(each)]
