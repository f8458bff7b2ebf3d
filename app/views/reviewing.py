"""The way into the review: the passphrase where there is one, the page in its frame, corrections from it."""

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.domain.keeping import Person
from app.domain.records import RunSummary
from app.views.framed import framed
from app.views.theme import Look

if TYPE_CHECKING:
    from app.store.database import Database
    from app.views.house import House
    from app.views.review.page import ReviewPage
    from app.views.worker import RecordKeeper


class Reviewing:
    """Owns the review once it was opened. `frame` is what the window shows of it, None before."""

    def __init__(self, house: "House", keeper: "RecordKeeper", leave: Callable[[], object]) -> None:
        self._house, self._keeper, self._leave = house, keeper, leave
        self._page: ReviewPage | None = None
        self.frame: QWidget | None = None

    def enter(self, look: Look, window: QWidget, show: Callable[[QWidget], object]) -> None:
        """Have the frame shown, at once or once the passphrase was said. Raises FileProblemsError."""
        from app.views.review.curtain import pass_curtain

        settings = self._house.overrule(self._house.read_settings())
        enter = partial(self._show, look, window, show, presenting=settings.presentation)
        pass_curtain(settings.passphrase, look, window, enter)

    def turn(self) -> None:
        """Begin to present, or end it, while the review is seen."""
        if self._page is not None and self._page.isVisible():
            self._page.present(on=not self._page.presenting)

    def renew(self, look: Look, window: QWidget, show: Callable[[QWidget], object]) -> None:
        """Let the review go; while it is seen, have one in another look shown in its place."""
        frame, page = self.frame, self._page
        self.frame = self._page = None
        if frame is None or page is None:
            return
        seen = frame.isVisible()
        page.close_charts()
        if seen:
            self._show(look, window, show, presenting=page.presenting)
        frame.setParent(None)
        frame.deleteLater()

    def _show(
        self, look: Look, window: QWidget, show: Callable[[QWidget], object], *, presenting: bool
    ) -> None:
        from app.views.review.page import ReviewPage

        if self.frame is None:

            def read() -> None:
                self._keeper.ask(_people, page.show_people)
                self._keeper.ask(_summaries, page.show_summaries)

            page = self._page = ReviewPage(look, read, self._correct_with(read, window))
            page.present(on=presenting)
            self.frame = framed(look, page, self._leave)
        show(self.frame)

    def _correct_with(
        self, after: Callable[[], object], window: QWidget
    ) -> Callable[[str, Look], None] | None:
        from app.views.review.correcting import Correcting

        if self._house.stamp is None:
            return None
        correcting = Correcting(self._keeper, self._house.stamp, after)
        return lambda run_id, look: correcting.open(run_id, look, window)


def _people(database: "Database") -> tuple[Person, ...]:
    return database.answers.people()


def _summaries(database: "Database") -> tuple[RunSummary, ...]:
    return database.queries.run_summaries()
