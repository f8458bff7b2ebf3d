"""What marks a database file as this program's, and of which make."""

APPLICATION_ID = 0x50637772
"""In the file's header (SQLite's application_id): the letters `Pcwr`."""

SCHEMA_VERSION = 6
"""In the file's header (SQLite's user_version): the number of the last migration applied."""


def revision_of(version: int) -> str:
    """The name of the migration that leads to a schema version: `0001` leads to 1."""
    return f"{version:04d}"
