"""Edits of a plan file that leave all else as its author wrote it: remarks, order, spelling, blank lines.

Every function takes the text of a file that can be read, its lines ended by a line feed, and gives the edited
text; whether that is still a sound plan is for the reader to say. Stages and exercises are counted from 0.
"""

from collections.abc import MutableMapping
from typing import Any, cast

import tomlkit
from tomlkit.items import InlineTable

from app.domain.errors import PacewrightError
from app.domain.plan import Exercise, Stage
from app.planfile.pieces import Piece, cut, lay
from app.planfile.positions import Place
from app.planfile.writer import Value, write_exercise, write_stage, write_value

_GROUP = ("group",)
_EXERCISE_PLACE = 4
_STAGE_PLACE = 2


class EditError(PacewrightError):
    """The file has no such place, or not in a form that can be edited."""


def set_value(text: str, place: Place, value: Value | None) -> str:
    """Write the value of a key, such as ("stage", 0, "exercise", 2, "rest"); None takes the key out.

    ("group", "form") is such a place too. Raises EditError when there is no such stage or exercise.
    """
    pieces = cut(text)
    whole, inner = _split(place)
    if place[:1] == _GROUP and any(piece.place == _GROUP for piece in pieces):
        whole, inner = _GROUP, place[1:]
        if not inner:
            return lay([piece for piece in pieces if piece.place != _GROUP])
    number = _find(pieces, whole)
    pieces[number] = Piece(whole, _with_value(pieces[number], inner, value))
    return "".join(piece.text for piece in pieces)


def add_exercise(text: str, stage: int, index: int, exercise: Exercise) -> str:
    """Put a new exercise at a place in a stage. Raises EditError when there is no such stage."""
    pieces = cut(text)
    new = Piece(("stage", stage, "exercise", index), write_exercise(exercise) + "\n")
    pieces.insert(_gap(pieces, stage, index), new)
    return lay(pieces)


def remove_exercise(text: str, stage: int, index: int) -> str:
    """Take an exercise out, with the remarks right above it. Raises EditError when it is not there."""
    pieces = cut(text)
    del pieces[_find(pieces, ("stage", stage, "exercise", index))]
    return lay(pieces)


def move_exercise(text: str, source: tuple[int, int], target: tuple[int, int]) -> str:
    """Move an exercise from one stage and index to another, the target's counted once it is taken out.

    Raises EditError when either is not there.
    """
    pieces = cut(text)
    moved = pieces.pop(_find(pieces, ("stage", source[0], "exercise", source[1])))
    pieces.insert(_gap(pieces, *target), moved)
    return lay(pieces)


def add_stage(text: str, index: int, stage: Stage) -> str:
    """Put a new stage with its exercises at a place in the plan."""
    runs = _runs(cut(text))
    runs.insert(index + 1, [Piece(("stage", index), write_stage(stage) + "\n")])
    return lay([piece for run in runs for piece in run])


def remove_stage(text: str, index: int) -> str:
    """Take a stage out with its exercises. Raises EditError when it is not there."""
    runs = _runs(cut(text))
    taken = runs.pop(_stage_run(runs, index))
    runs[index] += [piece for piece in taken if piece.place == _GROUP]
    return lay([piece for run in runs for piece in run])


def move_stage(text: str, source: int, target: int) -> str:
    """Move a stage with its exercises, the target counted once it is taken out. Raises EditError as above."""
    runs = _runs(cut(text))
    moved = runs.pop(_stage_run(runs, source))
    runs.insert(target + 1, moved)
    return lay([piece for run in runs for piece in run])


def _split(place: Place) -> tuple[Place, Place]:
    """The place of the piece that holds a value, and the way from there."""
    if place[2:3] == ("exercise",) and len(place) > _EXERCISE_PLACE:
        return place[:_EXERCISE_PLACE], place[_EXERCISE_PLACE:]
    if place[:1] == ("stage",) and len(place) > _STAGE_PLACE:
        return place[:_STAGE_PLACE], place[_STAGE_PLACE:]
    return (), place


def _find(pieces: list[Piece], place: Place) -> int:
    for number, piece in enumerate(pieces):
        if piece.place == place:
            return number
    counted = " ".join(str(part + 1 if isinstance(part, int) else part) for part in place)
    raise EditError(
        f"There is no {counted} under a heading; write plans with [[stage]] and [[stage.exercise]]."
    )


def _gap(pieces: list[Piece], stage: int, index: int) -> int:
    """Where in the list an exercise goes to stand at an index of its stage."""
    inside = [
        number for number, piece in enumerate(pieces) if piece.place[:3] == ("stage", stage, "exercise")
    ]
    if index < len(inside):
        return inside[index]
    return (inside or [_find(pieces, ("stage", stage))])[-1] + 1


def _runs(pieces: list[Piece]) -> list[list[Piece]]:
    """The pieces by stage, those of the head first."""
    runs: list[list[Piece]] = [[]]
    for piece in pieces:
        if len(piece.place) == _STAGE_PLACE:
            runs.append([])
        runs[-1].append(piece)
    return runs


def _stage_run(runs: list[list[Piece]], index: int) -> int:
    _find([run[0] for run in runs], ("stage", index))
    return index + 1


def _with_value(piece: Piece, inner: Place, value: Value | None) -> str:
    """The text of a piece with one value in it changed; a new key goes before the remarks at its end."""
    lines = piece.text.splitlines(keepends=True)
    count = len(lines)
    while count and (not lines[count - 1].strip() or lines[count - 1].lstrip().startswith("#")):
        count -= 1
    document = tomlkit.parse("".join(lines[:count]))
    table = cast("MutableMapping[Any, Any]", document)
    for name in piece.place[::2]:
        table = table[name]
    table = table[0] if len(piece.place) > 1 else table
    _put(table, inner, value)
    return tomlkit.dumps(document) + "".join(lines[count:])


def _put(table: MutableMapping[Any, Any], inner: Place, value: Value | None) -> None:
    name, *rest = inner
    held = table.get(name) if rest else None
    if rest and (held is None or isinstance(held, InlineTable)):
        # Braces are written anew: tomlkit would leave its own spacing in them.
        values = {**({} if held is None else held.unwrap()), str(rest[0]): value}
        said = {key: item for key, item in values.items() if item is not None}
        _put(table, (name,), said or None)
    elif rest:
        _put(cast("MutableMapping[Any, Any]", held), tuple(rest), value)
    elif value is not None:
        table[name] = tomlkit.value(write_value(value))
    elif name in table:
        del table[name]
