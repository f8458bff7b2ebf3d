"""Writes single settings into the settings file and leaves the rest as the person wrote it."""

import os
from collections.abc import Mapping, MutableMapping
from dataclasses import asdict
from pathlib import Path
from typing import Any

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import AoT, Array

from app.domain.errors import PacewrightError
from app.planfile.settings import FORMAT, Settings, parse_settings
from app.planfile.source import read_text

SettingPlace = tuple[str, ...]
"""A table and a key, as ("sound", "tones"); in a list of tables the row's device stands between them."""
SettingValue = str | int | float | bool | list[str] | None
"""As the file says it; None takes the key out."""
Changes = Mapping[SettingPlace, SettingValue]


def save_settings(path: Path, changes: Changes) -> None:
    """Write values to their places in a settings file, which is made where there is none.

    The file is its owner's alone. All are written or none. Raises PacewrightError when the file is not in
    order or cannot be written.
    """
    try:
        before = read_text(path) if path.exists() else ""
        parse_settings(before, str(path))
        document = tomlkit.parse(before)
        if not document:
            document["format"] = FORMAT
        for (*tables, key), value in changes.items():
            _set(_table(document, tables), key, value)
        text = tomlkit.dumps(document)
        parse_settings(text, str(path))
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        part = path.with_name(f"{path.name}.part")
        part.unlink(missing_ok=True)
        os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
        part.write_text(text, encoding="utf-8")
        part.replace(path)
    except TOMLKitError as error:
        raise PacewrightError(f"{path} is not in order, so nothing was written to it: {error}") from error
    except OSError as error:
        raise PacewrightError(f"{path} cannot be written: {error.strerror}.") from error


def sound_changes(before: Settings, after: Settings) -> Changes:
    """What is to be written of the sound where it differs."""
    old, new = _sound(before), _sound(after)
    return {("sound", key): value for key, value in new.items() if value != old[key]}


def screen_changes(before: Settings, after: Settings) -> Changes:
    """What is to be written of the screens where it differs."""
    old, new = _screen(before), _screen(after)
    return {("screen", key): value for key, value in new.items() if value != old[key]}


def keys_changes(before: Settings, after: Settings) -> Changes:
    """What is to be written of pedals and presenters where it differs."""
    old, new = _keys(before), _keys(after)
    return {("keys", key): value for key, value in new.items() if value != old[key]}


def _keys(settings: Settings) -> dict[str, SettingValue]:
    keys = settings.keys
    return {"count": list(keys.count), "pause": list(keys.pause), "one_pedal": keys.one_pedal}


def _screen(settings: Settings) -> dict[str, SettingValue]:
    return {"distance": settings.distance_m, "ask_before": settings.ask_before, **asdict(settings.screen)}


def _sound(settings: Settings) -> dict[str, SettingValue]:
    return {
        "speaker": settings.speaker,
        "device": settings.device,
        "cues": settings.cues.value,
        "language": settings.language,
        "tones": round(settings.tones * 100),
        "voice": round(settings.voice * 100),
        "mute": settings.mute,
    }


def _set(table: MutableMapping[str, Any], key: str, value: SettingValue) -> None:
    if value is None:
        table.pop(key, None)
    else:
        table[key] = value


def _table(document: MutableMapping[str, Any], names: list[str]) -> MutableMapping[str, Any]:
    """The table of a place, made where there is none."""
    name, *rows = names
    if rows:
        if name not in document:
            document[name] = tomlkit.aot()
        return _row(document[name], rows[0])
    if name not in document:
        document[name] = tomlkit.table()
    table: MutableMapping[str, Any] = document[name]
    return table


def _row(rows: AoT | Array, device: str) -> MutableMapping[str, Any]:
    """The row of a device, made where there is none."""
    if not any(row.get("device") == device for row in rows):
        new = tomlkit.table() if isinstance(rows, AoT) else tomlkit.inline_table()
        new["device"] = device
        rows.append(new)
    found: MutableMapping[str, Any] = next(row for row in rows if row.get("device") == device)
    return found
