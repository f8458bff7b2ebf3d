"""Putting a tolerance in force: all runs are judged by it anew, so that their counts can be compared."""

from contextlib import suppress
from datetime import datetime, timedelta
from typing import NamedTuple

from sqlalchemy import Connection, func, insert, select

from app.domain.errors import DamagedStoreError
from app.domain.tolerance import Tolerance
from app.store.drawing import runs_with_facts
from app.store.later_rows import SettingRow
from app.store.link import Link
from app.store.people import RandomBytes, new_name
from app.store.redrawing import draw_again
from app.store.rows import RunCourseRow
from app.store.tolerance import NAME, tolerance_of


class Judged(NamedTuple):
    """How many runs were judged anew, and how many kept what was counted, their facts lost or unreadable."""

    judged: int
    kept: int


class Tolerances:
    """Reads and sets the tolerance. Methods raise StoreError when the record cannot be had."""

    def __init__(self, link: Link, random_bytes: RandomBytes) -> None:
        self._link = link
        self._random_bytes = random_bytes

    def current(self) -> Tolerance:
        """The tolerance in force."""
        with self._link.reading() as connection:
            return tolerance_of(connection)

    def choose(self, tolerance: Tolerance, at: datetime, zone: str) -> Judged:
        """Put a tolerance in force and judge every run by it anew.

        All or nothing: where it is broken off, the record is as it was. Runs whose facts are lost or cannot
        be read keep what was counted.
        """
        with self._link.writing() as connection:
            if tolerance_of(connection) == tolerance:
                return Judged(0, 0)
            value, at = f"{tolerance.percent} {tolerance.ms}", _after_the_last(connection, at)
            name = new_name(at, self._random_bytes)
            connection.execute(
                insert(SettingRow), {"id": name, "name": NAME, "value": value, "at": at, "zone": zone}
            )
            runs, judged = runs_with_facts(connection), 0
            for run_id in runs:
                with suppress(DamagedStoreError):
                    draw_again(connection, self._link.path, run_id)
                    judged += 1
            every = connection.execute(select(func.count()).select_from(RunCourseRow)).scalar_one()
            return Judged(judged, max(every - judged, 0))


def _after_the_last(connection: Connection, at: datetime) -> datetime:
    # The latest holds: a clock that was put back, or stood still, must not leave an older choice in force.
    query = select(SettingRow.at).where(SettingRow.name == NAME).order_by(SettingRow.at.desc()).limit(1)
    last = connection.execute(query).scalar_one_or_none()
    return at if last is None else max(at, last + timedelta(milliseconds=1))
