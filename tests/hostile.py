"""Plan files written to hurt their reader, by name; each as large as a file may be, or larger."""

from collections.abc import Callable, Mapping

MIB = 1 << 20
PLAN = 'format = 1\ntitle = "x"\n[[stage]]\nname = "x"\nkind = "power"\n[[stage.exercise]]\nname = "x"\n'


def _filled(piece: str, head: str = "") -> bytes:
    """A head and then one piece over and over, up to 1 MiB."""
    data = (head + piece * ((MIB - len(head)) // len(piece.encode()))).encode()
    return data[:MIB]


def _once(line: str) -> bytes:
    return (PLAN + line).encode()


HOSTILE: Mapping[str, Callable[[], bytes]] = {
    "brackets opened": lambda: b"[" * MIB,
    "brackets closed": lambda: b"]" * MIB,
    "a list in a list": lambda: _filled("[", "a = "),
    "a table in a table": lambda: _filled("{a = ", "a = "),
    "empty lists": lambda: _filled("[], ", "a = ["),
    "numbers": lambda: _filled("1,", "a = ["),
    "dotted keys": lambda: _filled("a.", ""),
    "dotted keys in quotes": lambda: _filled('"a".', ""),
    "dotted headings": lambda: _filled("a.", "["),
    "keys": lambda: "".join(f"k{number} = 1\n" for number in range(70_000)).encode(),
    "headings": lambda: "".join(f"[h{number}]\n" for number in range(90_000)).encode(),
    "exercises": lambda: _filled("[[stage.exercise]]\n", PLAN),
    "stages": lambda: _filled("[[stage]]\n"),
    "misspelt stages": lambda: _filled("[[stag]]\n"),
    "single stages": lambda: _filled("[stage]\n"),
    "digits": lambda: _filled("9", "sets = "),
    "hexadecimal digits": lambda: _filled("f", "sets = 0x"),
    "digits after the point": lambda: _filled("3", "sets = 0."),
    "digits short of the limit": lambda: _filled("f" * 999 + " "),
    "an exponent": lambda: _once("work = 1e" + "9" * 900),
    "a text never closed": lambda: _filled("x", 'title = "'),
    "a long text never closed": lambda: _filled('\\"', 'title = """'),
    "quotes": lambda: b'"' * MIB,
    "apostrophes": lambda: b"'" * MIB,
    "backslashes": lambda: _filled("\\", 'title = "'),
    "a long title": lambda: _once('work = 4\nsetup = "' + "x" * 1_000_000 + '"'),
    "a long key": lambda: _filled("x", "") + b"=1",
    "blank lines": lambda: b"\n" * MIB,
    "spaces": lambda: b" " * MIB,
    "remarks": lambda: b"#\n" * (MIB // 2),
    "nothing but zeros": lambda: b"\0" * MIB,
    "no text at all": lambda: bytes(range(256)) * (MIB // 256),
    "lone carriage returns": lambda: b"a = 1\r" * (MIB // 6),
    "larger than any plan": lambda: b"#" * (MIB + 1),
    "far larger": lambda: b"x = 1\n" * (8 * MIB // 6),
}
