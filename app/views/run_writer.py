"""A run on its way into the record."""

from collections.abc import Callable, Sequence

from app.domain.records import BoutPrescribed, Fact, RunBegan, RunHeader
from app.views.worker import RecordKeeper


class RunWriter:
    """Writes the facts of one run. Its header is made when the run begins, for it says when that was."""

    def __init__(
        self, keeper: RecordKeeper, new_header: Callable[[], RunHeader], prescribed: Sequence[BoutPrescribed]
    ) -> None:
        self._keeper, self._new_header, self._prescribed = keeper, new_header, prescribed
        self._header: RunHeader | None = None

    @property
    def run_id(self) -> str | None:
        """The id of the run; None before it began."""
        return None if self._header is None else self._header.run_id

    def __call__(self, first: int, facts: Sequence[Fact]) -> None:
        """Hand over facts, the first of them numbered `first`; before the first of all, what the run is."""
        if self._header is None:
            self._header = self._new_header()
        if isinstance(facts[0], RunBegan):
            self._keeper.open_run(self._header, self._prescribed)
        self._keeper.append(self._header.run_id, first, facts)
