"""The kinds of words a file may hold: what each accepts, how it is read, and how JSON Schema says the same.

`read` gives the value as the domain wants it, or None after having refused it. A refusal is a sentence in two
halves, what is wrong; what would be right.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import PurePosixPath
from typing import Any, Protocol

from app.domain.grouping import MOST_STATIONS
from app.planfile.shown import BIDI_MARKS, UNSEEN, choices, code_point, shown, suggestion

LONGEST_TEXT = 500
MOST_IN_A_LIST = 100
MOST_NAMED = 5
"""So many characters that work unseen are named in one message."""

_NO_LETTER = r"[\u0000-@\[-`\u007b-\u00a9\u00ab-\u00b4\u00b6-\u00b9\u00bb-\u00bf\u00d7\u00f7]"
_UNSEEN = r"[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]"

Schema = dict[str, Any]


class Refuse(Protocol):
    """Takes down what is wrong with a value, or with the part of it that `below` leads to."""

    def __call__(self, message: str, *below: str | int, key: bool = False) -> None:
        """Take down one problem, of the value or (`key`) of the key it stands under."""


class Kind(Protocol):
    """One kind of value."""

    def read(self, value: object, refuse: Refuse) -> object | None:
        """The value as the domain wants it; None after a refusal."""

    def schema(self) -> Schema:
        """The same in JSON Schema."""


def below(refuse: Refuse, *place: str | int) -> Refuse:
    """A `refuse` for a part of the value, which itself takes down problems of the whole."""

    def refuse_part(message: str, *further: str | int, key: bool = False) -> None:
        refuse(message, *place, *further, key=key)

    return refuse_part


@dataclass(frozen=True, slots=True)
class Text:
    """Words on one line, seen and not blank, at most 500 characters."""

    def read(self, value: object, refuse: Refuse) -> str | None:
        """The text as it stands."""
        if not isinstance(value, str):
            refuse(f"this must be text, not {shown(value)}; put it in quotes")
            return None
        if not value.strip():
            refuse("the text is empty; write at least one word")
            return None
        hidden = list(dict.fromkeys(UNSEEN.findall(value)))
        if len(value) > LONGEST_TEXT:
            refuse(f"the text has {len(value)} characters; write {LONGEST_TEXT} at most")
        for message in _hidden_messages(hidden):
            refuse(message)
        return None if hidden or len(value) > LONGEST_TEXT else value

    def schema(self) -> Schema:
        """A string of limited length without unseen characters."""
        return {"type": "string", "maxLength": LONGEST_TEXT, "pattern": r"\S", "not": {"pattern": _UNSEEN}}


def _hidden_messages(hidden: list[str]) -> Iterator[str]:
    """What is wrong with characters that work unseen, in a sentence for each way in which they do."""
    turning = [character for character in hidden if character in BIDI_MARKS]
    controls = [character for character in hidden if character not in BIDI_MARKS and character not in "\n\r"]
    if len(turning) + len(controls) < len(hidden):
        yield "the text runs over more than one line; write it on one"
    for characters, one, several in (
        (turning, "{}, which turns the reading direction", "{}, which turn the reading direction"),
        (controls, "the control character {}", "the control characters {}"),
    ):
        if characters:
            what = (one if len(characters) == 1 else several).format(_named(characters))
            yield f"the text holds {what}; remove {'it' if len(characters) == 1 else 'them'}"


def _named(characters: list[str]) -> str:
    names = [code_point(character) for character in characters[:MOST_NAMED]]
    if len(characters) > MOST_NAMED:
        names.append(f"{len(characters) - MOST_NAMED} more")
    *others, last = names
    return f"{', '.join(others)} and {last}" if others else last


@dataclass(frozen=True, slots=True)
class Texts:
    """A list of texts, at most 100."""

    def read(self, value: object, refuse: Refuse) -> tuple[str, ...] | None:
        """The texts in order."""
        if isinstance(value, str):
            refuse(f"this must be a list; put it in square brackets, like [{shown(value)}]")
            return None
        if not isinstance(value, list):
            refuse(f'this must be a list of texts, not {shown(value)}; write it like ["first", "second"]')
            return None
        if len(value) > MOST_IN_A_LIST:
            refuse(f"the list has {len(value)} entries; write {MOST_IN_A_LIST} at most")
        texts = [Text().read(item, below(refuse, index)) for index, item in enumerate(value)]
        sound = tuple(text for text in texts if text is not None)
        return sound if len(sound) == len(value) <= MOST_IN_A_LIST else None

    def schema(self) -> Schema:
        """An array of strings."""
        return {"type": "array", "items": Text().schema(), "maxItems": MOST_IN_A_LIST}


@dataclass(frozen=True, slots=True)
class StationNames:
    """One to twelve names, each once."""

    def read(self, value: object, refuse: Refuse) -> tuple[str, ...] | None:
        """The names in order."""
        names = Texts().read(value, refuse)
        if names is None:
            return None
        twice = [index for index, name in enumerate(names) if name in names[:index]]
        for index in twice:
            refuse(f"{shown(names[index])} stands here for the second time; keep one of the two", index)
        if not 1 <= len(names) <= MOST_STATIONS:
            refuse(f"there are {len(names)} stations; write 1 to {MOST_STATIONS}, or leave the key out")
        return None if twice or not 1 <= len(names) <= MOST_STATIONS else names

    def schema(self) -> Schema:
        """An array of different strings."""
        bounds = {"minItems": 1, "maxItems": MOST_STATIONS, "uniqueItems": True}
        return {"type": "array", "items": Text().schema(), **bounds}


@dataclass(frozen=True, slots=True)
class Word:
    """One of a few words."""

    words: tuple[str, ...]

    def read(self, value: object, refuse: Refuse) -> str | None:
        """The word."""
        if isinstance(value, str) and value in self.words:
            return value
        near = suggestion(value, self.words) if isinstance(value, str) else None
        offered = choices(f'"{word}"' for word in self.words)
        right = f'did you mean "{near}"?' if near else f"write {offered}"
        refuse(f"{shown(value)} is not known here; {right}")
        return None

    def schema(self) -> Schema:
        """An enumeration."""
        return {"enum": list(self.words)}


@dataclass(frozen=True, slots=True)
class Letter:
    """One letter of any alphabet."""

    def read(self, value: object, refuse: Refuse) -> str | None:
        """The letter as it stands."""
        text = value.strip() if isinstance(value, str) else ""
        if text == value and _is_letter(text):
            return text
        example = text if _is_letter(text) else "A"
        refuse(f'{shown(value)} is no letter of a superset; write one letter, like "{example}"')
        return None

    def schema(self) -> Schema:
        """A string of one character that is a letter, as far as a pattern for every editor can tell."""
        return {"type": "string", "minLength": 1, "maxLength": 1, "not": {"pattern": _NO_LETTER}}


def _is_letter(text: str) -> bool:
    return len(text) == 1 and text.isalpha()


@dataclass(frozen=True, slots=True)
class PicturePath:
    """A path relative to the plan's folder and inside it, with `/` between its parts.

    Only the words of the path are judged here; a link that leads out is found where the folder is known.
    """

    def read(self, value: object, refuse: Refuse) -> str | None:
        """The path as it stands."""
        text = Text().read(value, refuse)
        if text is None:
            return None
        if "\\" in text:
            refuse('the path holds "\\"; write it with "/", like "figures/landing.svg"')
        elif ":" in text:
            refuse('a path has no ":"; write it from the plan\'s folder, like "figures/landing.svg"')
        elif text.startswith(("/", "~/")) or text == "~":
            refuse(
                'the path starts outside the plan\'s folder; write it from there, like "figures/landing.svg"'
            )
        elif ".." in PurePosixPath(text).parts:
            refuse("the path leaves the plan's folder; put the picture beside the plan or below it")
        elif text.rpartition("/")[2] in ("", "."):
            refuse('the path names no picture; write its name at the end, like "figures/landing.svg"')
        else:
            return text
        return None

    def schema(self) -> Schema:
        """A string that neither begins at a root nor climbs."""
        outside = {"pattern": r"^/|^~(/|$)|[:\\]|(^|/)\.\.(/|$)|(^|/)\.?$"}
        return {**Text().schema(), "not": {"anyOf": [{"pattern": _UNSEEN}, outside]}}
