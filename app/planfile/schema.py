"""The plan format as a JSON Schema (draft 2020-12), made from the same tables the reader reads by.

A schema cannot say that ranges run upwards, how long a session lasts, where links lead: the reader does.
"""

import json

from app.planfile.form import PLAN
from app.planfile.kinds import Schema


def plan_schema() -> Schema:
    """The schema of a plan file."""
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": "urn:pacewright:plan:1",
        "title": "Pacewright plan, format 1",
        "description": "One planned session: ordered stages of exercises.",
        **PLAN.schema(),
    }


def schema_text() -> str:
    """The schema as it is printed and kept in the resources."""
    return json.dumps(plan_schema(), indent=2, ensure_ascii=False) + "\n"
