"""One window a record: a second start hands its plan and its athlete over to the first, and ends."""

import getpass
import json
import os
import sys
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path

from PySide6.QtCore import QDir, QLockFile, QObject, Signal
from PySide6.QtNetwork import QLocalServer, QLocalSocket

REACH_MS, ANSWER_MS = 500, 5_000
MOST_BYTES = 64 * 1024
LONGEST_PATH = 100
"""In bytes; sockets of some systems cannot have a longer one."""
TAKEN = b"taken\n"


class OneWindow(QObject):
    """Whether a window is open on a record already, and what later starts hand over to this one.

    `handed` carries a plan's path or None, and an athlete's name or None. A first window that does not answer
    keeps nobody from opening another.
    """

    handed = Signal(object, object)

    def __init__(self, record: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._name = socket_name(record)
        self._lives = False
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._meet)

    def is_handed_over(self, plan: Path | None, athlete: str | None) -> bool:
        """Hand over to the window that is open; where there is none, or it does not answer, become it.

        Of two starts at one moment one waits for the other.
        """
        lock = QLockFile(str(Path(QDir.tempPath()) / f"{self._name}.lock"))
        lock.setStaleLockTime(2 * ANSWER_MS)
        locked = lock.tryLock(2 * ANSWER_MS)
        try:
            if self._hand_over(plan, athlete):
                return True
            self._listen()
            return False
        finally:
            if locked:
                lock.unlock()

    def close(self) -> None:
        """Listen no more."""
        self._server.close()

    def _hand_over(self, plan: Path | None, athlete: str | None) -> bool:
        socket = QLocalSocket()
        socket.connectToServer(self._name)
        self._lives = socket.waitForConnected(REACH_MS)
        if not self._lives:
            return False
        wish = {"plan": None if plan is None else str(plan.absolute()), "athlete": athlete}
        socket.write(json.dumps(wish).encode() + b"\n")
        answered = socket.waitForReadyRead(ANSWER_MS) and bytes(socket.readAll().data()) == TAKEN
        socket.disconnectFromServer()
        return answered

    def _listen(self) -> None:
        """Be the window that others hand over to, unless one lives; what a dead one left is cleared."""
        if not self._lives:
            QLocalServer.removeServer(self._name)
            self._server.listen(self._name)

    def _meet(self) -> None:
        while self._server.hasPendingConnections():
            socket = self._server.nextPendingConnection()
            socket.disconnected.connect(socket.deleteLater)
            socket.readyRead.connect(self._reading(socket))
            self._hear(socket)

    def _reading(self, socket: QLocalSocket) -> Callable[[], None]:
        return lambda: self._hear(socket)

    def _hear(self, socket: QLocalSocket) -> None:
        if socket.bytesAvailable() > MOST_BYTES:
            socket.abort()
        elif socket.canReadLine():
            wish = understood(bytes(socket.readLine().data()))
            if wish is None:
                socket.abort()
                return
            socket.write(TAKEN)
            socket.flush()
            self.handed.emit(*wish)


def understood(line: bytes) -> tuple[Path | None, str | None] | None:
    """The plan and the athlete that a line hands over; None when it is none of ours."""
    try:
        wish = json.loads(line)
    except ValueError:
        return None
    if not isinstance(wish, dict):
        return None
    plan, athlete = wish.get("plan"), wish.get("athlete")
    if not all(word is None or isinstance(word, str) for word in (plan, athlete)):
        return None
    return (None if plan is None else Path(plan)), athlete


def socket_name(record: Path) -> str:
    """What the window on a record is reached under: by this person alone, on this computer."""
    told = f"{getpass.getuser()}\n{record.resolve()}"
    name = f"pacewright-{sha256(told.encode(errors='surrogateescape')).hexdigest()[:20]}"
    folder = os.environ.get("XDG_RUNTIME_DIR", "")
    whole = str(Path(folder) / name)
    if sys.platform != "win32" and Path(folder).is_absolute() and Path(folder).is_dir():
        return whole if len(os.fsencode(whole)) <= LONGEST_PATH else name
    return name
