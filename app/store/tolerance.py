"""The tolerance that the record judges tempo by: one for all of it, so that all counts can be compared."""

from datetime import datetime

from sqlalchemy import Connection, insert, select

from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance
from app.store.later_rows import SettingRow
from app.store.link import Link
from app.store.people import RandomBytes, new_name

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


class Tolerances:
    """Reads and sets the tolerance. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def current(self) -> Tolerance:
        """The tolerance in force."""
        with self._link.reading() as connection:
            return tolerance_of(connection)

    def choose(self, tolerance: Tolerance, at: datetime, zone: str) -> int:
        """Put a tolerance in force and judge every run by it anew; gives how many of them.

        All or nothing: where it is broken off, the record is as it was. Runs whose facts cannot be read keep
        what was counted.
        """
        from app.store.drawing import runs_with_facts
        from app.store.redrawing import draw_again

        with self._link.writing() as connection:
            if tolerance_of(connection) == tolerance:
                return 0
            value = f"{tolerance.percent} {tolerance.ms}"
            name = new_name(at, self._random_bytes)
            connection.execute(
                insert(SettingRow), {"id": name, "name": NAME, "value": value, "at": at, "zone": zone}
            )
            runs = runs_with_facts(connection)
            for run_id in runs:
                draw_again(connection, self._link.path, run_id)
            return len(runs)


def _read(value: str) -> Tolerance:
    try:
        percent, ms = map(int, value.split())
        return Tolerance(percent, ms)
    except ValueError:
        return DEFAULT_TOLERANCE
