"""What a value that TOML cannot read was most likely meant to be."""

import re
import tomllib

from app.planfile.amounts import Count, Load, Ranged, Seconds
from app.planfile.keys import EXERCISE_KEYS, PLAN_KEYS
from app.planfile.shown import shown

LONGEST_TRIED = 500
LONGEST_WRITTEN = 80

_KINDS = {key.name: key.kind for key in (*PLAN_KEYS, *EXERCISE_KEYS)}
_SINGLE = frozenset(name for name, kind in _KINDS.items() if isinstance(kind, Seconds | Count | Load))
_RANGED = frozenset(name for name, kind in _KINDS.items() if isinstance(kind, Ranged))
_OF_WHOLE = frozenset(
    name for name, kind in _KINDS.items() if isinstance(kind, Ranged) and isinstance(kind.amount, Count)
)
_OF_NO_NUMBER = frozenset(_KINDS) - _SINGLE - _RANGED

_STRAIGHT = {ord(quote): '"' for quote in "“”„‟«»＂"} | {ord(quote): "'" for quote in "‘’‚‛‹›＇"}
_TYPOGRAPHIC = re.compile(f"[{''.join(map(chr, _STRAIGHT))}]")
_QUOTES = "\"'" + "".join(map(chr, _STRAIGHT))
_NUMBER = r"[0-9]{1,4}(?:\.[0-9]+)?"
_RANGE = re.compile(rf"(?P<low>{_NUMBER})(?:[ ,;]+|[ ]*[-–][ ]*|[ ]+to[ ]+)(?P<high>{_NUMBER})")
_COMMA = re.compile(r"(?P<whole>[0-9]{1,4}),(?P<part>[0-9]{1,3})")
_ODD_NUMBER = re.compile(r"(?P<sign>[+-]?)0*(?P<whole>[0-9]{0,6})(?P<part>[.,][0-9]{0,6})?")
_UNIT = re.compile(r"[ ]*(?:s|sec|seconds|kg|x|reps)\.?\Z")
_NO_NUMBER = re.compile(r"[+-]?[.,]?")


def remedy(key: str, value: str) -> str:
    """What is wrong with a value as it stands behind a key, and what would be right."""
    ended = value.rstrip(" \t;,")
    inner = ended.strip(_QUOTES)
    if key not in _OF_NO_NUMBER and (number := _number(key, ended)):
        return number
    if key in _SINGLE | _RANGED and (value[0] not in "[{" + _QUOTES or _ODD_NUMBER.fullmatch(inner)):
        example = inner if _readable(inner) else "8"
        return f"this is no number; write one without quotes, like {key} = {example}"
    if _TYPOGRAPHIC.search(value):
        return f"quotes are straight here; write {key} = {_straight(ended)}"
    if ended != value and _readable(ended):
        return f"nothing stands behind a value; write {key} = {_short(ended)}"
    if value[0] in "\"'[{":
        return f"something stands after the value of {key}; a remark begins with #"
    text = ended.replace(",", ".") if key == "tempo" else ended
    return f"this value cannot be read; text stands in quotes: {key} = {shown(text or value)}"


def _straight(value: str) -> str:
    """A value with straight quotes: translated where that can be read, else all of it as one text."""
    inner = value.strip(_QUOTES)
    translated = value.translate(_STRAIGHT)
    if value[0] in _QUOTES and not _TYPOGRAPHIC.search(inner):
        return shown(inner)
    return _short(translated) if _readable(translated) else shown(inner)


def _number(key: str, value: str) -> str | None:
    """The sentence for a value that is meant for a number, or two; None where it is none."""
    bare = _UNIT.sub("", value).strip("()")
    if bounds := _RANGE.fullmatch(bare):
        return _two_numbers(key, bare, bounds["low"], bounds["high"])
    if _NO_NUMBER.fullmatch(bare) or not (match := _ODD_NUMBER.fullmatch(bare)):
        return None
    part = (match["part"] or "").replace(",", ".").rstrip(".")
    number = f"{match['sign'].strip('+')}{match['whole'] or '0'}{part}"
    wrong = "a number stands without its unit" if bare != value else _odd(bare)
    return f"{wrong}; write {key} = {number}"


def _odd(value: str) -> str:
    if "," in value:
        return "a number has a point, not a comma"
    digits = value.lstrip("+-")
    if digits[:1] == "0" and digits[1:2].isdigit():
        return "a number has no 0 in front"
    return (
        "a number has digits on both sides of its point" if "." in digits else "nothing stands behind a value"
    )


def _two_numbers(key: str, value: str, low: str, high: str) -> str:
    comma = _COMMA.fullmatch(value)
    in_range = f"a range stands in brackets; write {key} = [{low}, {high}]"
    if comma is None or key in _OF_WHOLE:
        return (
            f"{key} takes one number; write {key} = {low} or {key} = {high}" if key in _SINGLE else in_range
        )
    decimal = f"{key} = {comma['whole'].lstrip('0') or '0'}.{comma['part']}"
    if key in _RANGED and int(low) <= int(high):
        return f"{in_range}, or {decimal} with a point"
    return f"a number has a point, not a comma; write {decimal}"


def _readable(value: str) -> bool:
    try:
        return len(value) <= LONGEST_TRIED and bool(tomllib.loads(f"value = {value}"))
    except ValueError:
        return False


def _short(value: str) -> str:
    """A value as TOML has it, cut where it is long."""
    return value if len(value) <= LONGEST_WRITTEN else f"{value[:LONGEST_WRITTEN]}..."
