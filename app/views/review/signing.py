"""Who changes something in the record, and why: the two entries that go with every change from Review."""

from collections.abc import Callable

from PySide6.QtWidgets import QLineEdit

from app.views.review.typed import LONGEST, plain
from app.views.translation import message, tr

WHO_AND_WHY = message("Say who and why: both stand in the history.")


class Signing:
    """The entries, and what stands in them."""

    def __init__(self, say: Callable[[str], object], who: str = "") -> None:
        self._say = say
        self.who, self.why = QLineEdit(who), QLineEdit()
        for entry in self.entries:
            entry.setMaxLength(LONGEST)

    @property
    def entries(self) -> tuple[QLineEdit, QLineEdit]:
        """Who, then why."""
        return self.who, self.why

    def said(self) -> bool:
        """Whether both are filled in; if not, says so and goes to the one that is empty."""
        empty = [entry for entry in self.entries if not plain(entry.text())]
        if empty:
            self._say(tr(WHO_AND_WHY))
            empty[0].setFocus()
        return not empty

    def take(self) -> tuple[str, str]:
        """Who and why. The reason is spent with that: the next change has one of its own."""
        who, why = plain(self.who.text()), plain(self.why.text())
        self.why.clear()
        return who, why
