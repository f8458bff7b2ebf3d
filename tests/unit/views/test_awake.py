"""The display is held awake while it is wanted, and let go of whatever happens."""

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager

from app.views.awake import Awake
from tests.fakes import ImmediateExecutor


class System:
    """Counts how often it is asked and released."""

    def __init__(self) -> None:
        self.log: list[str] = []

    @contextmanager
    def keep(self) -> Iterator[None]:
        self.log.append("held")
        yield
        self.log.append("let go")


def test_it_is_held_once_and_let_go_once() -> None:
    system = System()
    awake = Awake(system.keep, ImmediateExecutor())
    for wanted in (True, True, False, False, True):
        awake.hold(wanted=wanted)
    awake.close()
    assert system.log == ["held", "let go", "held", "let go"]


def test_a_system_that_cannot_be_asked_is_no_trouble() -> None:
    def refuse() -> AbstractContextManager[object]:
        raise OSError("no bus")

    awake = Awake(refuse, ImmediateExecutor())
    awake.hold(wanted=True)
    awake.close()


def test_the_real_library_can_be_asked_anywhere() -> None:
    awake = Awake()
    awake.hold(wanted=True)
    awake.close()
