"""Damage done to plan files on purpose, the same each time for the same seed."""

import json
import random
import tomllib
from collections.abc import Callable, Iterator
from copy import deepcopy
from typing import Any

SNIPPETS = (
    *(
        b"nan",
        b"-inf",
        b"1e999999",
        b"1e99999999999999999999",
        b"-0.0",
        b"0x" + b"f" * 40,
        b"9" * 30,
        b"1_000",
    ),
    *(b"true", b"1979-05-27T07:32:00Z", b"07:32:00", b"X-X-X-X", b"0-0-0-0", b"3010", b"[" * 30, b"{a=" * 30),
    *(b'"', b"'", b'"""', b"'''", b"[", b"]", b"[[", b"]]", b"{", b"}", b"#", b"=", b",", b".", b"\\"),
    *(b"\\u202e", b"\\uD800", b"\\U00110000", b"\\x", b"\x00", b"\x07", b"\x7f", b"\t", b"\n", b"\n\n"),
    *(b"\r", b"\r\n", b"\xef\xbb\xbf", b"\xff", b"\xc3", b"\xe2\x80\xae", b"\xe2\x80\xa8"),
    *(b"[[stage]]\n", b"[[stage.exercise]]\n", b"[stage]\n", b"a.b.c.d = 1\n", b'"a"."b" = 1\n'),
    *(b"format = 1\n", b"reps = 3\n", b"hold = 4\n", b"sets = 20\n", b"stage"),
)
ODD_VALUES: tuple[Any, ...] = (
    *(None, True, False, 0, 1, -1, 10**9, 10**400, -(10**400), 0.0, 0.1, 0.00001, 1.5, 1e300),
    *(float("nan"), float("inf"), "", " ", "x", "x" * 501, "x" * 5000, "\n", "\u202e", "\x00", "\x7f"),
    *("3-0-1-0", "own", "alternate", "A", "..", "/etc", [], [[]], [1], [1, 2], [2, 1], [1, 2, 3], ["a"]),
    *(["a"] * 30, [["a"]], [{}], {}, {"a": 1}, {"hold": "x"}, {"exercise": []}, [{"name": "x"}] * 70),
)
ODD_KEYS = (
    "",
    "reps",
    "tempo",
    "hold",
    "work",
    "stage",
    "exercise",
    "Reps",
    "rep",
    "\u202e",
    "x" * 3000,
    "a b",
)


def byte_mutants(source: bytes, others: tuple[bytes, ...], count: int, seed: int) -> Iterator[bytes]:
    """`count` copies of a file, each with one to eight pieces of it broken."""
    chance = random.Random(seed)
    for _ in range(count):
        data = bytearray(source)
        for _ in range(chance.choice((1, 1, 1, 2, 3, 8))):
            chance.choice(_BREAKS)(data, chance, others)
        yield bytes(data)


def _flip(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    if data:
        data[chance.randrange(len(data))] = chance.randrange(256)


def _insert(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    at = chance.randint(0, len(data))
    data[at:at] = chance.choice(SNIPPETS) * chance.choice((1, 1, 1, 1, 50))


def _replace(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    at = chance.randint(0, len(data))
    data[at : at + chance.randint(0, 12)] = chance.choice(SNIPPETS)


def _remove(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    at = chance.randint(0, len(data))
    del data[at : at + chance.choice((1, 1, 4, 40, 400))]


def _repeat(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    at = chance.randint(0, len(data))
    piece = data[at : at + chance.choice((1, 10, 100, 1000))]
    data[at:at] = piece * chance.choice((1, 2, 20))


def _splice(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    other = chance.choice(others)
    at, start = chance.randint(0, len(data)), chance.randint(0, len(other))
    data[at : at + chance.randint(0, 200)] = other[start : start + chance.randint(0, 400)]


def _swap_lines(data: bytearray, chance: random.Random, others: tuple[bytes, ...]) -> None:
    lines = bytes(data).split(b"\n")
    one, two = chance.randrange(len(lines)), chance.randrange(len(lines))
    lines[one], lines[two] = lines[two], lines[one]
    data[:] = b"\n".join(lines)


Node = dict[str, Any] | list[Any]

_BREAKS: tuple[Callable[[bytearray, random.Random, tuple[bytes, ...]], None], ...] = (
    _flip, _flip, _insert, _insert, _replace, _replace, _remove, _repeat, _splice, _swap_lines,
)  # fmt: skip


def structure_mutants(source: str, count: int, seed: int) -> Iterator[str]:
    """`count` plans that are always TOML, each with one to six keys or values that make no sense."""
    chance = random.Random(seed)
    for _ in range(count):
        document = tomllib.loads(source)
        for _ in range(chance.choice((1, 1, 2, 6))):
            _break_node(chance.choice(list(_nodes(document))), chance)
        yield dump(document)


def _nodes(value: object) -> Iterator[Node]:
    if isinstance(value, dict | list):
        yield value
        for item in value.values() if isinstance(value, dict) else value:
            yield from _nodes(item)


def _break_node(node: Node, chance: random.Random) -> None:
    keys: list[Any] = list(node) if isinstance(node, dict) else list(range(len(node)))
    if not keys or chance.random() < 0.2:
        value = deepcopy(chance.choice(ODD_VALUES))
        if isinstance(node, dict):
            node[chance.choice(ODD_KEYS)] = value
        else:
            node.insert(chance.randint(0, len(node)), value)
        return
    key: Any = chance.choice(keys)
    way = chance.random()
    if way < 0.2:
        del node[key]
    elif way < 0.3 and isinstance(node, dict):
        node[chance.choice(ODD_KEYS)] = node.pop(key)
    elif way < 0.4 and isinstance(node, list):
        node.extend([node[key]] * chance.choice((1, 5, 70)))
    else:
        node[key] = deepcopy(chance.choice(ODD_VALUES))


def dump(document: dict[str, Any]) -> str:
    """A TOML text of one line a key, tables within tables in braces."""
    return "".join(f"{_text(key)} = {_value(item)}\n" for key, item in document.items() if item is not None)


def _value(value: object) -> str:
    if isinstance(value, str):
        return _text(value)
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return f"[{', '.join(_value(item) for item in value if item is not None)}]"
    if isinstance(value, dict):
        pairs = [f"{_text(key)} = {_value(item)}" for key, item in value.items() if item is not None]
        return f"{{{', '.join(pairs)}}}"
    return str(value)


def _text(value: str) -> str:
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
