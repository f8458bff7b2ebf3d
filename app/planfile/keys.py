"""The format as tables: every key of a plan file, what it holds and what it means.

The reader reads by these tables and the JSON Schema is made from them, so that the two cannot disagree.
"""

from dataclasses import fields
from enum import StrEnum

from app.domain import grouping
from app.domain import plan as domain
from app.domain.dose import (
    DEFAULT_MOVE_MS,
    DEFAULT_RELAX_MS,
    DEFAULT_RESET_MS,
)
from app.domain.tempo import Begins
from app.planfile.amounts import LONGEST_GAP_MS, Count, Format, Load, Ranged, Seconds, TempoText
from app.planfile.kinds import Letter, PicturePath, StationNames, Text, Texts, Word
from app.planfile.tables import Key, Table

FORMAT = 1
MOST_STAGES = 10
MOST_EXERCISES = 60
MOST_SETS = 20
MOST_REPS = 200
MOST_CONTACTS = 1000


def _gap(least_ms: int = 0) -> Seconds:
    return Seconds(least_ms, LONGEST_GAP_MS)


def _words_of(enumeration: type[StrEnum]) -> Word:
    return Word(tuple(member.value for member in enumeration))


def _seconds(ms: int) -> int | float:
    return ms // 1000 if ms % 1000 == 0 else ms / 1000


PLAN_KEYS: tuple[Key, ...] = (
    Key("format", Format(FORMAT), "Version of the file format.", required=True, example="format = 1"),
    Key("title", Text(), "What the session is called.", required=True, example='title = "..."'),
    Key("author", Text(), "Who wrote the plan."),
    Key("level", _words_of(domain.Level), "Which guideline of contacts applies.", default="beginner"),
    Key(
        "order",
        _words_of(domain.StageOrder),
        "locked: stages in order; free: in any order.",
        default="locked",
    ),
    Key(
        "lead_in",
        Seconds(domain.LEAST_LEAD_IN_MS),
        "Seconds of countdown before each bout; the end of the gap, not an addition to it.",
        default=_seconds(domain.DEFAULT_LEAD_IN_MS),
    ),
    Key("changeover", _gap(), "Seconds between exercises.", default=_seconds(domain.DEFAULT_CHANGEOVER_MS)),
    Key(
        "side_change",
        _gap(),
        "Seconds between the sides of a set.",
        default=_seconds(domain.DEFAULT_SIDE_CHANGE_MS),
    ),
    Key(
        "fast",
        Seconds(),
        "Seconds given to an X phase on the timeline: a setting, not a measurement.",
        default=_seconds(domain.DEFAULT_FAST_MS),
    ),
)

GROUP_KEYS: tuple[Key, ...] = (
    Key(
        "form",
        _words_of(grouping.Form),
        "together: all do the same; stations: teams go round; waves: half work while half rest.",
        default="together",
    ),
    Key(
        "work",
        Seconds(grouping.SHORTEST_WINDOW_MS, grouping.LONGEST_WINDOW_MS),
        "Seconds of work at a station.",
        default=_seconds(grouping.DEFAULT_WINDOW_MS),
    ),
    Key(
        "change",
        Seconds(grouping.SHORTEST_CHANGE_MS, grouping.LONGEST_CHANGE_MS),
        "Seconds to move on to the next station.",
        default=_seconds(grouping.DEFAULT_CHANGE_MS),
    ),
    Key("rounds", Count(1, grouping.MOST_ROUNDS), "How often all teams go round the stations.", default=1),
    Key(
        "stations",
        StationNames(),
        "The exercises that are stations, as the plan names them, in order; all when left out.",
    ),
    Key(
        "teams",
        Count(1, grouping.MOST_MEMBERS),
        "How many teams go round; as many as stations when left out.",
    ),
    Key(
        "swap",
        Seconds(0, grouping.LONGEST_CHANGE_MS),
        "Seconds for two waves to swap, at least.",
        default=_seconds(grouping.DEFAULT_SWAP_MS),
    ),
)

STAGE_KEYS: tuple[Key, ...] = (
    Key("name", Text(), "What the stage is called.", required=True, example='name = "..."'),
    Key(
        "kind",
        _words_of(domain.StageKind),
        "The rung of the ladder.",
        required=True,
        example='kind = "activation", or another rung',
    ),
)

_FIRST_KEYS: tuple[Key, ...] = (
    Key("name", Text(), "What the exercise is called.", required=True, example='name = "..."'),
    Key("target", Text(), "One muscle or group."),
    Key("sides", _words_of(domain.Sides), "How the exercise is shared between the sides.", default="both"),
    Key(
        "first",
        _words_of(domain.First),
        "The side that begins; weaker needs the athlete's record and is left when unknown.",
        default="left",
    ),
    Key("sets", Count(1, MOST_SETS), "Sets; a set of each side is a bout left and a bout right.", default=1),
)

DOSE_KEYS: tuple[Key, ...] = (
    Key(
        "reps",
        Ranged(Count(1, MOST_REPS)),
        "Reps, or a range [12, 15]: led to the upper, met from the lower.",
    ),
    Key(
        "tempo", TempoText(), "Seconds of eccentric, hold, concentric, hold; X is as fast as control allows."
    ),
    Key("begins", _words_of(Begins), "The phase of a tempo played first.", default="eccentric"),
    Key("hold", Ranged(Seconds()), "Seconds of an isometric rep, or a range."),
    Key("relax", Seconds(or_none=True), "Seconds between holds.", default=_seconds(DEFAULT_RELAX_MS)),
    Key("stick", Ranged(Seconds()), "Seconds a landing is held, or a range: clean from the lower."),
    Key(
        "move", Seconds(), "Seconds for jump and landing, from the signal.", default=_seconds(DEFAULT_MOVE_MS)
    ),
    Key(
        "reset",
        Seconds(or_none=True),
        "Seconds to get back into position after a stuck landing.",
        default=_seconds(DEFAULT_RESET_MS),
    ),
    Key("every", Seconds(), "Seconds from one signal to the next."),
    Key("pace", Word(("own",)), "own: reps at the athlete's own pace, counted as they come."),
    Key("work", Ranged(Seconds()), "Seconds of continuous work, or a range."),
)

WORD_KEYS: tuple[Key, ...] = tuple(
    Key(field.name, Text(), f"Said and shown for the phase: {field.name}.") for field in fields(domain.Words)
)
_GAPS = ("rest", "lead_in", "side_change", "changeover")
_NO_WORD = f"no gap has a word of its own, but {', '.join(key.name for key in WORD_KEYS)} have"
WORDS = Table(WORD_KEYS, elsewhere=dict.fromkeys(_GAPS, _NO_WORD))

_LAST_KEYS: tuple[Key, ...] = (
    Key(
        "rest",
        _gap(),
        "Seconds after each set but the exercise's last.",
        default=_seconds(domain.DEFAULT_REST_MS),
    ),
    Key("load_kg", Load(), "Load in kg."),
    Key(
        "contacts",
        Count(0, MOST_CONTACTS),
        "Contacts a rep; by default 1 in reactive and power stages, else 0.",
    ),
    Key("superset", Letter(), "A letter shared with neighbours whose sets alternate."),
    Key("setup", Text(), "How to get into position."),
    Key("cues", Texts(), "Short instructions on form."),
    Key("faults", Texts(), "Deviations in form to look out for."),
    Key("words", WORDS, "What is said and shown for a phase."),
    Key("picture", PicturePath(), "Path of a picture, relative to the plan's folder and inside it."),
    Key("stop_if", Texts(), "What ends the exercise at once."),
    Key("easier", Text(), "An easier variant, at the same tempo, for those of a group who need it."),
    Key("harder", Text(), "A harder variant, at the same tempo, for those of a group who can."),
)

EXERCISE_KEYS: tuple[Key, ...] = (*_FIRST_KEYS, *DOSE_KEYS, *_LAST_KEYS)
