"""The tolerance that the record judges tempo by: one for all of it, so that all counts can be compared."""

from sqlalchemy import Connection, select

from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance
from app.store.later_rows import SettingRow

NAME = "tempo tolerance"


def tolerance_of(connection: Connection) -> Tolerance:
    """The tolerance in force; the default where none was chosen, or what was chosen cannot be read."""
    query = (
        select(SettingRow.value)
        .where(SettingRow.name == NAME)
        .order_by(SettingRow.at.desc(), SettingRow.id.desc())
        .limit(1)
    )
    value = connection.execute(query).scalar_one_or_none()
    return DEFAULT_TOLERANCE if value is None else _read(value)


def _read(value: str) -> Tolerance:
    try:
        percent, ms = map(int, value.split())
        return Tolerance(percent, ms)
    except ValueError:
        return DEFAULT_TOLERANCE
