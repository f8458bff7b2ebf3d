"""Putting a tolerance in force: all runs are judged by it anew, so that their counts can be compared."""

from datetime import datetime

from sqlalchemy import insert

from app.domain.tolerance import Tolerance
from app.store.drawing import runs_with_facts
from app.store.later_rows import SettingRow
from app.store.link import Link
from app.store.people import RandomBytes, new_name
from app.store.redrawing import draw_again
from app.store.tolerance import NAME, tolerance_of


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
