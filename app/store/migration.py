"""Brings a database file to today's schema, one step a transaction."""

from pathlib import Path

from sqlalchemy import Connection, text

from app.store.drawing import draw_unsummed
from app.store.link import Link
from app.store.schema import APPLICATION_ID, SCHEMA_VERSION, revision_of
from app.store.troubles import damaged

SCRIPTS = Path(__file__).parent / "migrations"


def version_of(connection: Connection) -> int:
    """The number of the last migration applied to a file, 0 for an empty one."""
    return int(connection.execute(text("PRAGMA user_version")).scalar_one())


def migrate(link: Link, target: int = SCHEMA_VERSION) -> None:
    """Apply every step that a file lacks up to `target`; each is whole or not at all.

    Foreign keys are off meanwhile, because rebuilding a table with them on would delete its children, and are
    checked before each step is kept. Raises StoreError when the file cannot be written or a check fails.
    """
    link.outside_transactions("PRAGMA foreign_keys = OFF")
    try:
        while _step(link, target):
            pass
    finally:
        link.outside_transactions("PRAGMA foreign_keys = ON")


def _step(link: Link, target: int) -> bool:
    """Apply the next step, False when there is none. The lock keeps two programs from doing it twice."""
    with link.writing() as connection:
        version = version_of(connection)
        if version >= target:
            return False
        _upgrade(connection, version + 1)
        if version + 1 == SCHEMA_VERSION:
            draw_unsummed(connection, link.path)
        if connection.execute(text("PRAGMA foreign_key_check")).first() is not None:
            raise damaged(link.path)
        connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
        connection.exec_driver_sql(f"PRAGMA user_version = {version + 1}")
    return True


def _upgrade(connection: Connection, version: int) -> None:
    from alembic import command
    from alembic.config import Config

    config = Config(attributes={"connection": connection})
    config.set_main_option("script_location", str(SCRIPTS).replace("%", "%%"))
    command.upgrade(config, revision_of(version))
