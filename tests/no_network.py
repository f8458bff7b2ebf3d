"""A guard against network traffic: a process or a test under it fails when a socket for the internet is made.

`python -m tests.no_network COMMAND ...` runs a command of the program under it. Sockets of the machine
itself, such as a display's, are let through.
"""

import socket
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

INTERNET = {socket.AF_INET, socket.AF_INET6}
_TABLES = ("tcp", "tcp6", "udp", "udp6", "raw", "raw6")
_ASKING = {
    "socket.getaddrinfo",
    "socket.gethostbyname",
    "socket.gethostbyaddr",
    "socket.connect",
    "socket.sendto",
}


class NetworkError(AssertionError):
    """Something wanted to reach a network."""


class NoInternetSocket(socket.socket):
    """A socket that refuses to be one for the internet."""

    def __init__(self, family: int = socket.AF_INET, *rest: int, **more: object) -> None:
        if family in INTERNET or family == -1:
            raise NetworkError("a socket for the internet was made")
        super().__init__(family, *rest, **more)  # type: ignore[arg-type]


@contextmanager
def no_network() -> Iterator[None]:
    """Fail whatever makes a socket for the internet or asks for an address, and look at what is left open."""

    def refuse(*_asked: object, **_more: object) -> None:
        raise NetworkError("an address was asked for")

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(socket, "socket", NoInternetSocket)
        patch.setattr(socket, "getaddrinfo", refuse)
        patch.setattr(socket, "create_connection", refuse)
        yield
        assert internet_sockets() == []


def internet_sockets() -> list[str]:
    """The sockets for the internet that this process has open, whoever made them, as the kernel tells."""
    known = set()
    for table in _TABLES:
        path = Path(f"/proc/self/net/{table}")
        lines = path.read_text(encoding="ascii").splitlines()[1:] if path.exists() else []
        known |= {f"socket:[{line.split()[9]}]" for line in lines}
    opened = []
    for entry in Path("/proc/self/fd").iterdir():
        try:
            target = str(entry.readlink())
        except OSError:
            continue
        opened += [target] if target in known else []
    return opened


def _audited(event: str, arguments: tuple[object, ...]) -> None:
    """Sees every socket that Python makes, by whatever name, and cannot be taken away again."""
    if event == "socket.__new__" and arguments[1] in INTERNET:
        raise NetworkError("a socket for the internet was made")
    if event in _ASKING and not (
        event in {"socket.connect", "socket.sendto"} and isinstance(arguments[1], str)
    ):
        raise NetworkError(f"{event} was called")


def main() -> int:
    """Run the command under the guard."""
    sys.addaudithook(_audited)
    from app.__main__ import main as command

    status = command(sys.argv[1:])
    assert internet_sockets() == []
    return status


if __name__ == "__main__":
    sys.exit(main())
