"""Contacts and time under tension by week or month; unknown as soon as a part of it is."""

from app.analysis.figure import Figure
from app.analysis.figures_load import CONTACTS, CONTACTS_UNKNOWN, LOAD_UNKNOWN, NO_TENSION, TENSION, VOLUME
from app.analysis.work_weeks import WorkDone, work_of
from app.domain.reviewed import AthleteRecord
from app.views.charts.data import ChartData, Form, Panel, Series
from app.views.charts.scales import round_ticks
from app.views.review import words
from app.views.review.athlete.buckets import gathered
from app.views.review.athlete.charted import Charted, Times, decimals, each_tick, spoken
from app.views.translation import message, tr

NOTHING = message("No landing, jump or rep to a tempo is known of in this time.")
MINUTE = 60.0
NO_SESSION = message("There was no session in this time.")


def work_chart(record: AthleteRecord, times: Times) -> Charted:
    """Contacts above, minutes under tension below."""
    sessions = gathered(record.sessions, (each.day for each in record.sessions), times.buckets)
    weeks = [work_of(each) if each else None for each in sessions]
    contacts = [None if week is None or week.contacts is None else float(week.contacts) for week in weeks]
    minutes = [None if week is None or week.tut_s is None else week.tut_s / MINUTE for week in weeks]
    told = [
        [words.whole(value) for value in contacts],
        [decimals(value, 1, "min") for value in minutes],
    ]
    data = ChartData(
        tr("Chart: contacts and time under tension"),
        times.unit,
        times.labels,
        spoken(
            times.names,
            [tr("{n} contacts").format(n=each) for each in told[0]],
            [tr("{n} under tension").format(n=each) for each in told[1]],
        ),
        (
            _panel(tr("Contacts"), contacts, told[0], weeks, ""),
            _panel(tr("Time under tension"), minutes, told[1], weeks, "min"),
        ),
        window=times.window,
        names=times.names,
        empty=tr(NOTHING),
        aside=tr("foot or hand contacts above · nominal minutes under tension below"),
    )
    whys = tuple(_figures(week, bucket.of) for week, bucket in zip(weeks, times.buckets, strict=True))
    return Charted(tr("Contacts and time under tension"), data, whys)


def _figures(week: WorkDone | None, of: str) -> tuple[Figure, ...]:
    if week is None:
        return tuple(rule.figure(None, 0, NO_SESSION, (), (), of) for rule in (CONTACTS, TENSION, VOLUME))
    runs = (("sessions", week.sessions),)
    known = (*runs, (message("known part, kg"), week.known_volume_kg))
    return (
        CONTACTS.figure(week.contacts, week.sessions, CONTACTS_UNKNOWN, runs, (), of),
        TENSION.figure(week.tut_s, week.sessions, NO_TENSION, runs, (), of),
        VOLUME.figure(week.volume_kg, week.sessions, LOAD_UNKNOWN, known, (), of),
    )


def _panel(
    name: str, values: list[float | None], told: list[str], weeks: list[WorkDone | None], unit: str
) -> Panel:
    dashes = tuple(
        place
        for place, week in enumerate(weeks)
        if week is not None and week.sessions and values[place] is None
    )
    top = max([1.0, *(value for value in values if value is not None)])
    series = Series(name, tuple(values), tuple(told), Form.BARS, unknown=dashes)
    return Panel(
        (series,), each_tick(round_ticks(top, 2), unit, lambda tick: f"{tick:,g}".replace(",", words.THIN))
    )
