"""Presentation: Review as it may be shown to others, without pain, and with nobody's name but one."""

from collections.abc import Sequence
from dataclasses import replace

from app.domain.records import RunSummary
from app.views.translation import message, tr

NOTICE = message("presentation: pain, notes and the names of others are hidden (F8)")


def presented(runs: Sequence[RunSummary], shown: str | None) -> tuple[RunSummary, ...]:
    """The runs without pain, everybody but the one shown by a number in place of the name."""
    others = sorted({run.athlete for run in runs} - {shown}, key=lambda name: (name.casefold(), name))
    called = {name: tr("Athlete {n}").format(n=number) for number, name in enumerate(others, start=1)}
    return tuple(
        replace(
            run,
            athlete=called.get(run.athlete, run.athlete),
            pain=None,
            corrected=run.corrected - {"pain", "athlete"},
        )
        for run in runs
    )
