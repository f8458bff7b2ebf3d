"""A switch in a file: true or false."""

from dataclasses import dataclass

from app.planfile.kinds import Refuse, Schema
from app.planfile.shown import shown


@dataclass(frozen=True, slots=True)
class Switch:
    """True or false."""

    def read(self, value: object, refuse: Refuse) -> bool | None:
        """The value itself."""
        if isinstance(value, bool):
            return value
        refuse(f"this must be true or false, not {shown(value)}; write it without quotes")
        return None

    def schema(self) -> Schema:
        """A boolean."""
        return {"type": "boolean"}
