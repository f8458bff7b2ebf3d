"""A PulseAudio of the test's own: its own runtime folder, a null sink at 48 kHz, its monitor recorded."""

import os
import shutil
import signal
import subprocess
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

RATE = 48_000
SINK = "bench"
PATIENCE_S = 20.0
FIRST = ("nice", "-n", "-11") if os.geteuid() == 0 else ()
"""Where it is allowed, sound goes before other processes of the machine, as a desktop's sound server does."""

ALSA_TO_PULSE = "pcm.!default { type pulse }\nctl.!default { type pulse }\n"
ALSA_TO_NOWHERE = "pcm.!default { type null }\nctl.!default { type null }\n"
ALSA_WITHOUT_DEVICE = "pcm.!default { type hw card 31 }\nctl.!default { type hw card 31 }\n"


def installed() -> bool:
    """Whether this machine has what the sound tests start."""
    return all(shutil.which(name) for name in ("pulseaudio", "pactl", "parec"))


def wait_until(holds: Callable[[], bool], what: str) -> None:
    """Wait for another process; give up loudly."""
    give_up = time.monotonic() + PATIENCE_S
    while not holds():
        if time.monotonic() > give_up:
            raise TimeoutError(f"waited in vain for {what}")
        time.sleep(0.02)


@dataclass
class PulseAudio:
    """One server of our own, with its process, and the environment in which programs find it."""

    folder: Path
    process: subprocess.Popen[bytes] | None = field(default=None)

    @property
    def environment(self) -> dict[str, str]:
        """What a program needs in its environment to play here and nowhere else."""
        settings = self.folder / "asound.conf"
        settings.write_text(ALSA_TO_PULSE)
        own = {
            "XDG_RUNTIME_DIR": str(self.folder),
            "PULSE_RUNTIME_PATH": str(self.folder / "pulse"),
            "PULSE_SERVER": f"unix:{self.folder}/pulse/native",
            "PULSE_COOKIE": str(self.folder / "cookie"),
            "PULSE_STATE_PATH": str(self.folder / "state"),
            "ALSA_CONFIG_PATH": f"/usr/share/alsa/alsa.conf:{settings}",
            "HOME": str(self.folder),
        }
        return {**os.environ, **own}

    def start(self) -> None:
        """Start the server and wait until it answers."""
        words = [
            *FIRST, "pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--use-pid-file=no",
            "--disallow-exit", "--log-level=error", "--log-target=stderr", "--disable-shm=yes",
            "-L", f"module-native-protocol-unix auth-anonymous=1 socket={self.folder}/pulse/native",
            "-L", f"module-null-sink sink_name={SINK} rate={RATE} channels=2 format=s16le",
        ]  # fmt: skip
        (self.folder / "pulse").mkdir(mode=0o700, exist_ok=True)
        (self.folder / "pulse" / "native").unlink(missing_ok=True)
        log = (self.folder / "pulse.log").open("ab")
        self.process = subprocess.Popen(words, env=self.environment, stdout=log, stderr=log)
        log.close()
        wait_until(self.answers, "PulseAudio")

    def answers(self) -> bool:
        """Whether the server takes a command."""
        asked = subprocess.run(["pactl", "info"], env=self.environment, capture_output=True, check=False)
        return asked.returncode == 0

    def end(self) -> None:
        """End the server that was started here, by its process id."""
        if self.process is None:
            return
        os.kill(self.process.pid, signal.SIGKILL)
        self.process.wait()
        self.process = None

    @contextmanager
    def recording(self) -> Iterator["Recording"]:
        """Record what the sink plays while the block runs."""
        path = self.folder / f"heard_{time.monotonic_ns()}.raw"
        words = [
            *FIRST, "parec", f"--device={SINK}.monitor", "--format=s16le", f"--rate={RATE}", "--channels=2",
            "--latency-msec=20", "--raw",
        ]  # fmt: skip
        with path.open("wb") as sink:
            recorder = subprocess.Popen(words, env=self.environment, stdout=sink, stderr=subprocess.DEVNULL)
        heard = Recording(path)
        try:
            wait_until(lambda: heard.frames > 0, "the recorder")
            yield heard
        finally:
            os.kill(recorder.pid, signal.SIGTERM)
            recorder.wait()


@dataclass(frozen=True)
class Recording:
    """What is being, or has been, recorded."""

    path: Path

    @property
    def frames(self) -> int:
        """Frames on disk so far."""
        return self.path.stat().st_size // 4

    def wait_for_sound(self) -> None:
        """Wait until something is heard."""
        wait_until(lambda: bool(self.samples().any()), "a sound")

    def samples(self) -> NDArray[np.int16]:
        """All frames so far, shape (frames, 2)."""
        raw = np.fromfile(self.path, dtype=np.int16)
        return raw[: len(raw) // 2 * 2].reshape(-1, 2)


@contextmanager
def pulse_audio(folder: Path) -> Iterator[PulseAudio]:
    """A server for the length of the block."""
    server = PulseAudio(folder)
    server.start()
    try:
        yield server
    finally:
        server.end()
