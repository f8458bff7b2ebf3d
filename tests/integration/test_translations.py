"""The list of messages is that of the screens: nothing missing, nothing left over, all of it translated."""

import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "resources" / "translations"
LIST, COMPILED = FOLDER / "pacewright_de.ts", FOLDER / "pacewright_de.qm"
HOLE = re.compile(r"\{\w+\}|%n")

Message = tuple[str, str, bool]
"""The English text, what tells it apart, and whether it has a plural."""


def tool(name: str) -> str:
    found = shutil.which(name, path=str(Path(sys.executable).parent))
    if found is None:
        pytest.skip(f"{name} is not here")
    return found


def messages(path: Path) -> dict[Message, list[str]]:
    """Each message of a list with its translation, or the forms of its plural."""
    found = {}
    for each in ET.parse(path).getroot().iter("message"):  # noqa: S314 - our own file
        translation = each.find("translation")
        assert translation is not None
        forms = [form.text or "" for form in translation.findall("numerusform")]
        key = (each.findtext("source", ""), each.findtext("comment", ""), each.get("numerus") == "yes")
        found[key] = forms or [translation.text or ""]
    return found


KNOWN = messages(LIST)


def test_the_list_holds_what_the_screens_say_and_nothing_else(tmp_path: Path) -> None:
    files = sorted(str(path.relative_to(ROOT)) for path in (ROOT / "app" / "views").rglob("*.py"))
    found = tmp_path / "found.ts"
    subprocess.run(
        [
            tool("pyside6-lupdate"),
            "-silent",
            "-tr-function-alias",
            "QT_TR_NOOP+=message",
            *files,
            "-ts",
            found,
        ],
        cwd=ROOT,
        check=True,
    )
    assert sorted(messages(found)) == sorted(KNOWN), "run resources/translations/update.sh"


def test_no_message_is_left_unfinished_or_behind() -> None:
    text = LIST.read_text(encoding="utf-8")
    assert 'type="unfinished"' not in text
    assert 'type="vanished"' not in text
    assert 'type="obsolete"' not in text
    assert all(forms and all(forms) for forms in KNOWN.values())


def test_every_plural_has_both_german_forms() -> None:
    assert {key: forms for key, forms in KNOWN.items() if len(forms) != (2 if key[2] else 1)} == {}


def test_what_is_filled_in_stands_in_the_translation_too() -> None:
    wrong = {
        source: form
        for (source, _, _), forms in KNOWN.items()
        for form in forms
        if sorted(set(HOLE.findall(source))) != sorted(set(HOLE.findall(form)))
    }
    assert wrong == {}


def test_the_keys_a_button_names_are_the_same_in_both_languages() -> None:
    """The key stands in brackets behind the words; a few of them have a German name."""
    german = {"Space": "Leertaste", "Backspace": "Rücktaste", "Enter or Space": "Enter oder Leertaste"}
    key = re.compile(r"  \(([^)]+)\)$")
    wrong = []
    for (source, _, _), forms in KNOWN.items():
        named, said = key.search(source), key.search(forms[0])
        if named is None and said is None:
            continue
        wanted = "" if named is None else german.get(named[1], named[1].replace("Ctrl+", "Strg+"))
        if said is None or said[1].split(", ")[0] != wanted.split(", ")[0]:
            wrong.append((source, forms[0]))
    assert wrong == []


def test_the_compiled_list_is_that_of_the_text(tmp_path: Path) -> None:
    compiled = tmp_path / "compiled.qm"
    subprocess.run([tool("pyside6-lrelease"), "-silent", "-nounfinished", LIST, "-qm", compiled], check=True)
    assert compiled.read_bytes() == COMPILED.read_bytes(), "run resources/translations/update.sh"
