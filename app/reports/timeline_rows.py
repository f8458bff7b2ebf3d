"""The timeline row by row, for other programs: CSV and JSON."""

import csv
import io
import json
from collections.abc import Iterable, Iterator
from itertools import groupby
from typing import Any

from app.domain.cues import Cue, caption, whole_bout_cues
from app.domain.dose import Band
from app.domain.figures import Figures, Kilograms, session_figures
from app.domain.timeline import Span, Timeline
from app.reports.guard import guarded

COLUMNS = ("start_ms", "end_ms", "kind", "stage", "exercise", "set", "side", "rep", "phase")


def timeline_csv(timeline: Timeline) -> str:
    """A row a span under a heading, by RFC 4180. What has no value is empty."""
    out = io.StringIO(newline="")
    rows = csv.writer(out)
    rows.writerow(COLUMNS)
    for span in timeline.spans():
        row = _row(timeline, span)
        rows.writerow(guarded(value) if isinstance(value, str) else value for value in row)
    return out.getvalue()


def timeline_json(timeline: Timeline) -> str:
    """The spans with their cues, and the figures, as one object. What has no value is null.

    Times of cues run with those of the spans. They are the cues at the fullest; words that find no room
    between two tones are left out when they are played.
    """
    report = {
        "title": timeline.plan.title,
        "timed_ms": timeline.timed_ms,
        "open_ended": timeline.open_ended,
        "spans": list(_spans_with_cues(timeline)),
        "figures": _session(timeline),
    }
    return json.dumps(report, ensure_ascii=False, indent=1) + "\n"


def _row(timeline: Timeline, span: Span) -> tuple[int | str | None, ...]:
    """The values of one row in the order of the columns."""
    bout = span.bout
    return (
        span.start_ms,
        span.end_ms,
        span.kind.value,
        timeline.stage_of(bout).name,
        timeline.exercise_of(bout).name,
        bout.set_number,
        span.side.value,
        span.rep,
        None if span.phase is None else span.phase.value,
    )


def _spans_with_cues(timeline: Timeline) -> Iterator[dict[str, Any]]:
    for index, group in groupby(timeline.spans(), lambda span: span.bout.index):
        spans = tuple(group)
        work_start = next(span.start_ms for span in spans if span.rep is not None)
        by_span = _share(spans, whole_bout_cues(timeline, timeline.bouts[index]), work_start)
        for span, cues in zip(spans, by_span, strict=True):
            yield {
                **dict(zip(COLUMNS, _row(timeline, span), strict=True)),
                "mark_ms": span.mark_ms,
                "cues": [_cue(cue, work_start) for cue in cues],
            }


def _share(spans: tuple[Span, ...], cues: Iterable[Cue], work_start: int) -> list[list[Cue]]:
    """The cues of a bout by the span in which each begins; one on a border belongs to the span it opens."""
    shared: list[list[Cue]] = [[] for _ in spans]
    place = 0
    for cue in sorted(cues, key=lambda cue: cue.at_ms):
        while place + 1 < len(spans) and spans[place + 1].start_ms <= work_start + cue.at_ms:
            place += 1
        shared[place].append(cue)
    return shared


def _cue(cue: Cue, work_start: int) -> dict[str, Any]:
    return {
        "at_ms": work_start + cue.at_ms,
        "kind": cue.kind.value,
        "side": cue.side.value,
        "spoken": cue.kind.spoken,
        "text": caption(cue),
    }


def _session(timeline: Timeline) -> dict[str, Any]:
    session = session_figures(timeline)
    return {
        **_figures(session.figures),
        "stages": [
            {
                "stage": stage.name,
                **_figures(stage.figures),
                "exercises": [{"exercise": part.name, **_figures(part.figures)} for part in stage.exercises],
            }
            for stage in session.stages
        ],
    }


def _figures(figures: Figures) -> dict[str, Any]:
    return {
        "duration_ms": figures.duration_ms,
        "timed_ms": figures.timed_ms,
        "work_ms": figures.work_ms,
        "density": figures.density,
        "reps": _band(figures.reps),
        "reps_left": _band(figures.reps_left),
        "reps_right": _band(figures.reps_right),
        "tut_ms": figures.tut_ms,
        "tut_left_ms": figures.tut_left_ms,
        "tut_right_ms": figures.tut_right_ms,
        "tut_nominal": figures.nominal,
        "isometric_ms": figures.isometric_ms,
        "contacts": _band(figures.contacts),
        "volume_load_kg": _kilograms(figures.volume_load_kg),
        "known_volume_load_kg": _kilograms(figures.known_load_kg),
    }


def _kilograms(load: Kilograms | None) -> list[float] | None:
    return None if load is None else [float(load.low), float(load.high)]


def _band(band: Band | None) -> list[int] | None:
    return None if band is None else [band.low, band.high]
