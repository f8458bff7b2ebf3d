"""`speakers`: which devices there are, and a test to hear."""

import argparse
import sys
import time
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.audio.samples import Stereo

SUMMARY = "list the sound devices and play a test: left, right, and the tones of a rep"
PREFERENCES = ("auto", "simpleaudio", "miniaudio", "silent")


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument(
        "--speaker", choices=PREFERENCES, default="auto", help="which to test (auto if not given)"
    )
    parser.add_argument("--device", metavar="NAME", help="test this device, through miniaudio")
    parser.add_argument("--list", action="store_true", help="list only, play nothing")


def run(arguments: argparse.Namespace) -> int:
    """List the devices, play the test and say through what; exit status 1 when nothing was heard."""
    from app.audio.samples import RATE
    from app.audio.speaker.choice import choose_speaker
    from app.audio.speaker.mini import list_devices

    devices = list_devices()
    print("simpleaudio: the system's default device")
    for name in devices:
        print(f"miniaudio: {name}")
    if not devices:
        print("miniaudio: no device found")
    if arguments.list:
        return 0
    speaker = choose_speaker(arguments.speaker, device=arguments.device)
    samples = rehearsal_of_tones()
    speaker.warm_up()
    speaker.play(samples)
    notice, heard = speaker.notice, speaker.name != "silent"
    if heard:
        print(f"Playing the test through {speaker.name}.")
        time.sleep(len(samples) / RATE + speaker.latency_ms / 1000)
        notice = speaker.notice or notice
    speaker.close()
    if notice:
        sys.stderr.write(f"{notice}\n")
    return 0 if heard or arguments.speaker == "silent" else 1


def rehearsal_of_tones() -> "Stereo":
    """The test sound: each side named, then the tones of a rep on it, and the closing chord."""
    from app.audio.samples import RATE
    from app.audio.track import render_track
    from app.audio.voice import Voice
    from app.domain.cue_values import Cue, CueKind
    from app.domain.cue_words import ENGLISH
    from app.domain.plan import Side

    rep = (CueKind.ECCENTRIC, CueKind.HOLD_LENGTHENED, CueKind.CONCENTRIC, CueKind.HOLD_SHORTENED)
    voice = Voice()
    try:
        phrases = voice.prepare(ENGLISH.sides.values()).result()
    finally:
        voice.close()
    cues: list[Cue] = []
    at = 1000
    for side in (Side.LEFT, Side.RIGHT):
        text = ENGLISH.sides[side]
        length = len(phrases[text]) * 1000 // RATE + 1 if text in phrases else 0
        cues.append(Cue(at, CueKind.SIDE, side, length, text, text))
        at += 1000
        for kind in rep:
            cues.append(Cue(at, kind, side, 350, kind.value))
            at += 500
    cues.append(Cue(at, CueKind.END, Side.BOTH, 450, ENGLISH.bout_done))
    return render_track(cues, 0, at + 1000, phrases=phrases)
