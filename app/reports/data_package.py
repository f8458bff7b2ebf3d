"""The data dictionary of an export: a Data Package whose resources carry a Table Schema.

Source of the form: https://specs.frictionlessdata.io/ (Data Package, Tabular Data Resource, Table Schema 1).
"""

import json
from collections.abc import Iterable, Mapping
from typing import Any

from app.domain.checks import HEAVIEST_KG
from app.domain.table import Column, Table
from app.domain.values import (
    Choice,
    Clock,
    Day,
    Decimals,
    Digest,
    Flag,
    Kind,
    Load,
    Moment,
    Name,
    Number,
    Text,
    Whole,
    Words,
)

FILE_NAME = "datapackage.json"
FORMAT = 1
TITLE = "A record of led movement sessions"
ABOUT = (
    "One file a table. An empty cell is unknown, never zero. Text that a spreadsheet would take for a "
    "formula has an apostrophe before it. Tables marked as drawn are made from the others and not read back."
)
OWN = "pacewright"

_TYPES: dict[type[Kind], str] = {
    Whole: "integer",
    Number: "number",
    Flag: "boolean",
    Moment: "datetime",
    Day: "date",
    Decimals: "number",
    Load: "number",
    Clock: "string",
    Text: "string",
    Words: "string",
    Choice: "string",
    Name: "string",
    Digest: "string",
}


def data_package(made_at: str, tables: Iterable[tuple[Table, str, bool]]) -> dict[str, Any]:
    """The descriptor of tables: each with the name of its file, and whether it is drawn from the others."""
    told = tuple(tables)
    there = {table.name: table for table, _, _ in told}
    return {
        "profile": "tabular-data-package",
        "name": "pacewright-record",
        "title": TITLE,
        "description": ABOUT,
        "created": made_at,
        OWN: {"format": FORMAT},
        "resources": [_resource(table, path, drawn, there) for table, path, drawn in told],
    }


def descriptor_text(descriptor: Mapping[str, Any]) -> str:
    """The descriptor as it stands in its file."""
    return json.dumps(descriptor, indent=2, ensure_ascii=False) + "\n"


def _resource(table: Table, path: str, drawn: bool, there: Mapping[str, Table]) -> dict[str, Any]:
    return {
        "profile": "tabular-data-resource",
        "name": table.name,
        "path": path,
        "title": table.name.capitalize(),
        "description": table.about,
        "format": path.rpartition(".")[2],
        "encoding": "utf-8",
        "dialect": {"delimiter": ",", "lineTerminator": "\r\n", "quoteChar": '"', "doubleQuote": True},
        OWN: {"drawn": drawn},
        "schema": _schema(table, there),
    }


def _schema(table: Table, there: Mapping[str, Table]) -> dict[str, Any]:
    schema: dict[str, Any] = {
        "fields": [_field(column) for column in table.columns],
        "missingValues": [""],
    }
    if not any(column.unknown for column in table.columns if column.name in table.key):
        schema["primaryKey"] = list(table.key)
    links = [
        {"fields": [name], "reference": {"resource": parent, "fields": list(there[parent].key)}}
        for name, parent in table.links.items()
        if parent in there
    ]
    return {**schema, "foreignKeys": links} if links else schema


def _field(column: Column) -> dict[str, Any]:
    kind = column.kind
    constraints: dict[str, Any] = {} if column.unknown or _may_be_empty(kind) else {"required": True}
    match kind:
        case Whole(least=least, most=most) | Number(least=least, most=most):
            constraints |= {"minimum": least, "maximum": most}
        case Choice(among=among):
            constraints |= {"enum": list(among)}
        case Digest():
            constraints |= {"pattern": "[0-9a-f]{64}"}
        case Clock():
            constraints |= {"pattern": "([01][0-9]|2[0-3]):[0-5][0-9]"}
        case Load():
            constraints |= {"minimum": 0, "maximum": HEAVIEST_KG}
        case _:
            pass
    field = {"name": column.name, "type": _TYPES[type(kind)], "description": column.about}
    if isinstance(kind, Name):
        field["format"] = "uuid"
    if isinstance(kind, Moment):
        field["format"] = "any"
    return {**field, "constraints": constraints} if constraints else field


def _may_be_empty(kind: Kind) -> bool:
    """Whether an empty cell is a value, the text of no characters."""
    return isinstance(kind, Text) or kind == Words(empty=True)
