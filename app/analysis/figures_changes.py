"""Figures of change from week to week: load, contacts and volume, between weeks known in full."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta

from app.analysis.adherence_parts import monday_of
from app.analysis.figure import Figure, Rule
from app.analysis.figures_load import CONTACTS, VOLUME, WEEK
from app.analysis.load_weeks import loads_by_week
from app.analysis.progression import week_change
from app.analysis.work_weeks import work_by_week
from app.domain.reviewed import AthleteRecord

NOT_IN_FULL = "One of the two weeks is not known in full."
NONE_BEFORE = "There was none of it in the week before."
WEEK_BEFORE, THIS_WEEK, ABOVE_A_TENTH = "week before", "this week", "above 10 %"
WEEK_LONG = timedelta(days=7)
_FORMULA = "this week - the week before; only between weeks known in full"
_IN_PERCENT = "(this week - the week before) / the week before x 100"
_COMMON = "Common practice, no source."
_TEN_PERCENT = (
    "A soft prompt, no limit: the ten percent rule did not lower injuries, 20.8 % against 20.3 % (Buist et "
    "al. 2008); more distance-related ones were seen above 30 % in two weeks (Nielsen et al. 2014)."
)


@dataclass(frozen=True, slots=True)
class Change:
    """What changes: `of` names the figure of a week that is compared, the rules are those of its change."""

    of: str
    absolute: Rule
    percent: Rule


LOAD_CHANGE = Rule("Load, change on the week before", "AU", _FORMULA, _COMMON)
LOAD_PERCENT = Rule("Load, change in percent", "%", _IN_PERCENT, _TEN_PERCENT)
CONTACTS_CHANGE = Rule("Contacts, change on the week before", "contacts", _FORMULA, _COMMON)
CONTACTS_PERCENT = Rule("Contacts, change in percent", "%", _IN_PERCENT, _TEN_PERCENT)
VOLUME_CHANGE = Rule("Volume load, change on the week before", "kg", _FORMULA, _COMMON)
VOLUME_PERCENT = Rule("Volume load, change in percent", "%", _IN_PERCENT, _TEN_PERCENT)
CHANGES = (
    Change(WEEK.name, LOAD_CHANGE, LOAD_PERCENT),
    Change(CONTACTS.name, CONTACTS_CHANGE, CONTACTS_PERCENT),
    Change(VOLUME.name, VOLUME_CHANGE, VOLUME_PERCENT),
)
CHANGE_NAMES = frozenset(rule.name for each in CHANGES for rule in (each.absolute, each.percent))
"""Figures whose day is the Monday of the later week."""
_Week = Mapping[str, float | None]


def change_figures(record: AthleteRecord) -> tuple[Figure, ...]:
    """Every change on the week before: absolute, then percent, of each week of the record but its first."""
    weeks = _weeks(record)
    return tuple(
        figure
        for monday in sorted(weeks)
        if monday - WEEK_LONG in weeks
        for pair in _changes(weeks[monday - WEEK_LONG], weeks[monday], monday)
        for figure in pair
    )


def last_changes(record: AthleteRecord) -> tuple[tuple[Figure, Figure], ...]:
    """Absolute and percent change of load, contacts and volume in the last week that is over.

    None where there is no week before it in the time.
    """
    end = min(record.last, record.today - timedelta(days=1))
    monday = monday_of(end + timedelta(days=1)) - WEEK_LONG
    before = monday - WEEK_LONG
    if monday_of(record.first) > before:
        return ()
    last = monday + timedelta(days=6)
    within = tuple(each for each in record.sessions if before <= each.day <= last)
    weeks = _weeks(replace(record, first=max(record.first, before), last=last, sessions=within))
    return tuple(_changes(weeks[before], weeks[monday], monday))


def _weeks(record: AthleteRecord) -> dict[date, _Week]:
    """What is known of each week by its Monday; a week that is known and without a session has nought."""
    work = work_by_week(record.sessions_within)
    found: dict[date, _Week] = {}
    for week in loads_by_week(record):
        done, whole = work.get(week.monday), _whole(record, week.monday)
        contacts: float | None = done.contacts if done else 0
        volume: float | None = done.volume_kg if done else 0
        found[week.monday] = {
            WEEK.name: week.total if whole else None,
            CONTACTS.name: contacts if whole else None,
            VOLUME.name: volume if whole else None,
        }
    return found


def _whole(record: AthleteRecord, monday: date) -> bool:
    """Whether a week is over and all of it is among the days that the record knows of."""
    sunday = monday + timedelta(days=6)
    within = record.covers(monday) and record.covers(sunday) and sunday < record.today
    return within and record.since is not None and record.since <= monday


def _changes(before: _Week, this: _Week, monday: date) -> Iterator[tuple[Figure, Figure]]:
    of = monday.isoformat()
    for each in CHANGES:
        change = week_change(before[each.of], this[each.of])
        inputs = ((WEEK_BEFORE, change.before), (THIS_WEEK, change.this))
        beyond = None if change.beyond_ten_percent is None else "yes" if change.beyond_ten_percent else "no"
        known = sum(value is not None for value in (change.before, change.this))
        unknown = tuple(label for label, value in inputs if value is None)
        reason = NOT_IN_FULL if change.absolute is None else NONE_BEFORE
        yield (
            each.absolute.figure(change.absolute, known, NOT_IN_FULL, inputs, unknown, of),
            each.percent.figure(
                change.percent, known, reason, (*inputs, (ABOVE_A_TENTH, beyond)), unknown, of
            ),
        )
