"""Waves: one half works while the other rests and spots; then they swap."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.group import GroupError, GroupSession, Part, checked, own_part, sat_out, teams_of
from app.domain.group_together import leading_timeline
from app.domain.grouping import Form
from app.domain.plan import Plan
from app.domain.timeline import Bout, SpanKind, Timeline

WAVES = 2


def waves(plan: Plan, athletes: Sequence[Athlete], swap_ms: int) -> GroupSession:
    """Each bout of the plan twice over: a slot for the first wave, then one for the second.

    `swap_ms` is the least time between two slots, its lead-in included; it is longer where a wave would else
    rest for less than the plan says. Raises GroupError for fewer than two athletes or too many.
    """
    members = checked(athletes)
    if len(members) < WAVES:
        raise GroupError("Waves need at least two athletes: one works while the other spots.")
    teams = _both_waves(members)
    leader = _doubled(leading_timeline(plan, members), swap_ms)
    parts = tuple(
        Part(
            member,
            timeline,
            tuple(range(team, WAVES * len(timeline.bouts), WAVES)),
            sat_out(plan, member),
            team,
        )
        for member, team in zip(members, teams, strict=True)
        for timeline in (own_part(compile_timeline(plan, member), member),)
    )
    return GroupSession(Form.WAVES, leader, parts)


def _both_waves(members: Sequence[Athlete]) -> tuple[int, ...]:
    teams = teams_of(members, WAVES)
    if len(set(teams)) < WAVES:
        raise GroupError("All athletes have the letter of one wave; give some of them the other, or none.")
    return teams


def _doubled(once: Timeline, swap_ms: int) -> Timeline:
    return Timeline(once.plan, tuple(_slots(once.bouts, swap_ms)))


def _slots(bouts: Sequence[Bout], swap_ms: int) -> Iterator[Bout]:
    """Both slots of each bout; the gap before one is what the plan's own gap leaves after other work."""
    slot = before_ms = other_ms = 0
    for bout in bouts:
        rest_ms = 0 if bout.gap_kind is None else bout.before_ms
        for _ in range(WAVES):
            gap_ms = max(swap_ms, rest_ms - other_ms - before_ms) if slot else 0
            before_ms = max(gap_ms, bout.lead_in_ms)
            kind = (bout.gap_kind or SpanKind.CHANGEOVER) if slot else None
            yield replace(bout, index=slot, gap_kind=kind, gap_ms=before_ms - bout.lead_in_ms)
            slot, other_ms = slot + 1, bout.work_ms or 0
