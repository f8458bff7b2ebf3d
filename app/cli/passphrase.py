"""`passphrase`: a curtain before the practitioner's part of a shared machine."""

import argparse
import sys

from app import wiring
from app.domain.errors import PacewrightError

SUMMARY = "set, change or clear the passphrase that Review asks for on a shared machine"
PLACE = ("practitioner", "passphrase")
LEAST = 6
LONGEST = 1_000


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("--clear", action="store_true", help="ask for none any more")


def run(arguments: argparse.Namespace) -> int:
    """Ask for the present one where there is one, then for the new one; say what a curtain is."""
    from app.planfile.passphrase import CURTAIN, hashed, opens

    kept = wiring.read_settings().passphrase
    if kept is not None and not opens(kept, _asked("The present passphrase: ")):
        raise PacewrightError(
            "That is not the passphrase, so nothing was changed. Where it is forgotten, take its line out of "
            f"{wiring.settings_file()}."
        )
    if arguments.clear:
        wiring.save_settings({PLACE: None})
        sys.stdout.write("Review asks for no passphrase.\n")
        return 0
    passphrase = _asked("The new passphrase: ")
    if not LEAST <= len(passphrase) <= LONGEST:
        raise PacewrightError(f"A passphrase has {LEAST} to {LONGEST} characters. Nothing was changed.")
    if _asked("Once more: ") != passphrase:
        raise PacewrightError("The two are not the same. Nothing was changed.")
    wiring.save_settings({PLACE: hashed(passphrase)})
    sys.stdout.write(f"Review asks for it from now on. {CURTAIN}\n")
    return 0


def _asked(prompt: str) -> str:
    """What is typed unseen; a line of the input where that is no terminal."""
    if sys.stdin.isatty():
        from getpass import getpass

        return getpass(prompt)
    return sys.stdin.readline().rstrip("\n")
