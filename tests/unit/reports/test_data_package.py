"""The data dictionary says of every table and column what it is."""

import json

from app.domain.tables import TABLES
from app.reports.data_package import data_package, descriptor_text
from app.reports.drawn import DRAWN

TOLD = [
    (table, f"{table.name}.csv", drawn)
    for drawn, tables in ((False, TABLES), (True, DRAWN))
    for table in tables
]
PACKAGE = data_package("2026-11-22T18:00:00Z", TOLD)
RESOURCES = {resource["name"]: resource for resource in PACKAGE["resources"]}


def field(table: str, name: str) -> dict[str, object]:
    (found,) = [each for each in RESOURCES[table]["schema"]["fields"] if each["name"] == name]
    return dict(found)


def test_every_table_and_column_is_there_in_order_with_its_words() -> None:
    assert list(RESOURCES) == [table.name for table, _, _ in TOLD]
    for table, path, drawn in TOLD:
        resource = RESOURCES[table.name]
        assert (resource["path"], resource["pacewright"]) == (path, {"drawn": drawn})
        assert [each["name"] for each in resource["schema"]["fields"]] == list(table.column_names)
        assert all(each["description"] for each in resource["schema"]["fields"])


def test_a_column_says_its_type_bounds_and_whether_it_must_be_known() -> None:
    assert field("readiness", "sleep") | {"description": ""} == {
        "name": "sleep",
        "type": "integer",
        "description": "",
        "constraints": {"minimum": 1, "maximum": 7},
    }
    assert field("runs", "id")["constraints"] == {"required": True}
    assert (field("runs", "id")["type"], field("runs", "id")["format"]) == ("string", "uuid")
    assert field("runs", "started_at")["type"] == "datetime"
    assert field("runs", "invented")["type"] == "boolean"
    assert field("athletes", "consent_on")["type"] == "date"
    assert field("athletes", "reference_side")["constraints"] == {"enum": ["left", "right"]}
    assert field("sessions", "load")["type"] == "number"
    assert field("facts", "side")["constraints"] == {"enum": ["left", "right", "both"]}
    assert "constraints" not in field("plans", "text")


def test_keys_and_links_between_tables_are_said() -> None:
    assert RESOURCES["facts"]["schema"]["primaryKey"] == ["run", "number"]
    assert RESOURCES["facts"]["schema"]["foreignKeys"] == [
        {"fields": ["run"], "reference": {"resource": "runs", "fields": ["id"]}}
    ]
    assert "primaryKey" not in RESOURCES["faults"]["schema"]
    alone = data_package("", [TOLD[4]])["resources"][0]
    assert "foreignKeys" not in alone["schema"]


def test_the_text_is_json_that_ends_its_last_line() -> None:
    assert json.loads(descriptor_text(PACKAGE)) == PACKAGE
    assert descriptor_text(PACKAGE).endswith("}\n")
