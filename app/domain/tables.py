"""The one list of what a record hands on: to another computer, to a spreadsheet, and takes back.

Settings are left out, because a record keeps its own. Parents stand before their children, so that rows can
be taken in table by table.
"""

from app.domain.table import Table
from app.domain.tables_beside_runs import CORRECTIONS, DEVICES, NOTES, RATINGS, READINESS, RESULTS
from app.domain.tables_of_groups import GROUP_MEMBERS, GROUP_SESSIONS
from app.domain.tables_of_planning import PLANNED, PLANNED_CHANGES
from app.domain.tables_of_runs import ATHLETES, BRANCHES, FACTS, PLANS, PRESCRIBED, RUNS

TABLES: tuple[Table, ...] = (
    ATHLETES,
    PLANS,
    PRESCRIBED,
    RUNS,
    FACTS,
    BRANCHES,
    DEVICES,
    READINESS,
    RATINGS,
    RESULTS,
    NOTES,
    PLANNED,
    PLANNED_CHANGES,
    GROUP_SESSIONS,
    GROUP_MEMBERS,
    CORRECTIONS,
)
