"""The compiler against a second reading of the page, and what holds of every timeline."""

from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.athlete import Athlete
from app.domain.compiler import compile_timeline
from app.domain.dose import Band
from app.domain.plan import Plan, Side
from app.domain.timeline import SpanKind, Timeline, rep_windows
from app.planfile.reader import parse_plan
from tests.plan_tables import Table, athletes_of, plan_tables, toml_of
from tests.second_reading import Row, rows


def read(tables: Table) -> Plan:
    return parse_plan(toml_of(tables), "any.toml", None)


def compiled_rows(timeline: Timeline) -> list[Row]:
    return [
        (
            span.start_ms,
            span.end_ms,
            span.kind.value,
            timeline.stage_of(span.bout).name,
            timeline.exercise_of(span.bout).name,
            span.bout.set_number,
            span.side.value,
            span.rep,
            None if span.phase is None else span.phase.value,
        )
        for span in timeline.spans()
    ]


def as_athlete(adjusted: Table) -> Athlete:
    reps = {
        name: Band(*value) if isinstance(value, list) else Band.exactly(value)
        for name, value in adjusted["reps"].items()
    }
    first = None if adjusted["first"] is None else Side(adjusted["first"])
    return Athlete("Anybody", first=first, reps=reps)


@settings(max_examples=500)
@given(data=st.data(), tables=plan_tables(), weaker=st.sampled_from([None, "left", "right"]))
def test_the_rows_are_those_of_the_second_reading(
    data: st.DataObject, tables: Table, weaker: str | None
) -> None:
    adjusted = data.draw(st.none() | athletes_of(tables))
    athlete = None if adjusted is None else as_athlete(adjusted)
    timeline = compile_timeline(read(tables), athlete, None if weaker is None else Side(weaker))
    assert compiled_rows(timeline) == rows(tables, adjusted, weaker)


@given(tables=plan_tables())
def test_spans_follow_one_another_without_gap_or_overlap(tables: Table) -> None:
    now: int | None = 0
    for span in compile_timeline(read(tables)).spans():
        assert span.start_ms == (now or 0)
        assert span.end_ms is None or span.end_ms > span.start_ms
        now = span.end_ms


@given(tables=plan_tables())
def test_the_length_is_the_sum_of_its_spans(tables: Table) -> None:
    timeline = compile_timeline(read(tables))
    lengths = [span.end_ms - span.start_ms for span in timeline.spans() if span.end_ms is not None]
    assert timeline.timed_ms == sum(lengths)
    assert timeline.open_ended is any(span.end_ms is None for span in timeline.spans())


@given(tables=plan_tables())
def test_every_bout_has_one_lead_in_right_before_its_work(tables: Table) -> None:
    timeline = compile_timeline(read(tables))
    spans = list(timeline.spans())
    for bout in timeline.bouts:
        own = [span for span in spans if span.bout is bout]
        kinds = [span.kind for span in own if span.kind is not SpanKind.WORK]
        assert kinds.count(SpanKind.LEAD_IN) == 1
        assert kinds[-1] is SpanKind.LEAD_IN
        assert own[len(kinds)].kind is SpanKind.WORK


@given(tables=plan_tables())
def test_the_windows_of_the_reps_fill_the_bout(tables: Table) -> None:
    for bout in compile_timeline(read(tables)).bouts:
        windows = rep_windows(bout)
        if bout.open_ended:
            assert windows == ()
            continue
        assert [window.start_ms for window in windows] == [0, *(window.end_ms for window in windows[:-1])]
        assert windows[-1].done_ms == windows[-1].end_ms == bout.work_ms
        assert len(windows) == bout.high
        assert len({(window.rep, window.side) for window in windows}) == bout.high
        assert all(window.start_ms < window.done_ms <= window.end_ms for window in windows)
