"""`speakers`: which devices there are, and a test to hear."""

import argparse
import sys

SUMMARY = "list the sound devices and play a test: a rep on the left, a rep on the right"
SILENT = "silent"
PREFERENCES = ("auto", "simpleaudio", "miniaudio", SILENT)


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument(
        "--speaker", choices=PREFERENCES, default="auto", help="which to test (auto if not given)"
    )
    parser.add_argument("--device", metavar="NAME", help="test this device, through miniaudio")
    parser.add_argument("--list", action="store_true", help="list only, play nothing")


def run(arguments: argparse.Namespace) -> int:
    """List the devices, play the test and say through what; exit status 1 when nothing was heard."""
    from app.audio.bout_sound import Manner
    from app.audio.speaker.choice import choose_speaker
    from app.audio.speaker.mini import list_devices
    from app.audio.trial import Trial
    from app.audio.voice import Voice

    devices = list_devices()
    print("simpleaudio: the system's default device")
    for name in devices:
        print(f"miniaudio: {name}")
    if not devices:
        print("miniaudio: no device found")
    if arguments.list:
        return 0
    trial = Trial(choose_speaker(arguments.speaker, device=arguments.device), Voice(), Manner())
    heard = trial.begin()
    sounds = heard.speaker != SILENT
    if sounds:
        print(f"Playing the test through {heard.speaker}.")
    else:
        trial.stop()
    trial.wait()
    for notice in heard.notices:
        sys.stderr.write(f"{notice}\n")
    return 0 if sounds or arguments.speaker == SILENT else 1
