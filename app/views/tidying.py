"""Memory is tidied between bouts only, on the screen's thread: a pass in mid-bout would be seen."""

import gc


class Tidying:
    """Freezes what is there when a session begins, and collects when asked to."""

    def begin(self) -> None:
        """A session begins: what lives now is looked at no more."""
        gc.collect()
        gc.freeze()
        gc.disable()

    def between(self) -> None:
        """A bout has ended."""
        gc.collect()

    def end(self) -> None:
        """The session is over."""
        gc.enable()
        gc.unfreeze()
