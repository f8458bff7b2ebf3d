"""`guide`: a whole session as one sound file for a phone."""

import argparse
import csv
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from app.cli.whose import athlete_for, configure_whose
from app.domain.errors import PacewrightError, UsageError

if TYPE_CHECKING:
    from app.domain.cue_values import Cue
    from app.domain.plan import Plan

SUMMARY = "write a whole session as one sound file, spoken and sounded, for a phone"
COLUMNS = ("sample", "ms", "kind", "text")
PACES = (0.5, 60.0)


def configure(parser: argparse.ArgumentParser) -> None:
    """Declare the command's words."""
    parser.add_argument("plan", type=Path, metavar="PLAN")
    parser.add_argument(
        "-o", "--output", type=Path, required=True, metavar="FILE", help="a .wav or .flac file"
    )
    configure_whose(parser)
    parser.add_argument("--stage", type=int, metavar="N", help="this stage alone, counted from 1")
    parser.add_argument(
        "--pace",
        type=float,
        default=3.0,
        metavar="SECONDS",
        help="a rep where the pace is one's own (3 if not given)",
    )
    parser.add_argument(
        "--level", choices=("full", "spare", "tones"), default="full", help="full if not given"
    )
    parser.add_argument("--language", choices=("en", "de", "es", "fr"), default="en", help="en if not given")
    parser.add_argument("--cues", type=Path, metavar="FILE", help="write the list of cues here, as CSV")


def run(arguments: argparse.Namespace) -> int:
    """Write the guide, and say how long it is and what it lacks."""
    from app.audio.bout_sound import Manner
    from app.audio.guide import paced, write_guide
    from app.audio.voice import Voice
    from app.domain.compiler import compile_timeline
    from app.domain.cue_texts import spoken_texts
    from app.domain.cue_values import CueLevel
    from app.domain.cue_words import TONGUES
    from app.domain.units import clock_text
    from app.planfile.reader import read_plan

    if not PACES[0] <= arguments.pace <= PACES[1]:
        raise UsageError("--pace is how many seconds a rep takes, from 0.5 to 60.")
    whole = read_plan(arguments.plan)
    athlete = athlete_for(whole, arguments)
    plan = paced(_stage_of(whole, arguments.stage), round(arguments.pace * 1000))
    _refuse_too_long(plan)
    timeline = compile_timeline(plan, athlete)
    manner = Manner(CueLevel(arguments.level), arguments.language)
    voice = Voice(arguments.language)
    try:
        texts = spoken_texts(timeline, manner.level, TONGUES[manner.language])
        phrases = voice.prepare(texts).result()
    finally:
        voice.close()
    cues = write_guide(arguments.output, timeline, manner, phrases)
    if arguments.cues:
        _write_cues(arguments.cues, cues)
    if voice.notice:
        sys.stderr.write(f"{voice.notice}\n")
    print(f"{arguments.output}: {clock_text(timeline.timed_ms)}, {len(cues)} cues")
    return 0


def _stage_of(plan: "Plan", number: int | None) -> "Plan":
    from dataclasses import replace

    if number is None:
        return plan
    if not 1 <= number <= len(plan.stages):
        raise UsageError(f"--stage is from 1 to {len(plan.stages)}: the plan has no stage {number}.")
    return replace(plan, stages=(plan.stages[number - 1],))


def _refuse_too_long(plan: "Plan") -> None:
    """Refuse a pace that makes the session longer than one may be; a plan itself never is."""
    from app.domain.length import session_ms
    from app.domain.plan import LONGEST_SESSION_MS
    from app.domain.units import clock_text, exact_clock_text

    length_ms = session_ms(plan)
    if length_ms > LONGEST_SESSION_MS:
        raise UsageError(
            f"At this --pace the session lasts {exact_clock_text(length_ms)}, and "
            f"{clock_text(LONGEST_SESSION_MS)} is the most: give fewer seconds a rep, or one --stage alone."
        )


def _write_cues(path: Path, cues: "Sequence[Cue]") -> None:
    from app.audio.samples import PER_MS
    from app.domain.cue_values import caption
    from app.reports.guard import guarded

    try:
        with path.open("w", encoding="utf-8", newline="") as file:
            rows = csv.writer(file)
            rows.writerow(COLUMNS)
            for cue in cues:
                rows.writerow((cue.at_ms * PER_MS, cue.at_ms, cue.kind.value, guarded(caption(cue))))
    except OSError as error:
        raise PacewrightError(f"{path} cannot be written: {error.strerror}.") from error
