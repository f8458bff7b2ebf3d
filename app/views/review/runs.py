"""The list of runs: what its columns show, say and sort by; figures that were corrected are marked."""

from app.analysis.load import load_of
from app.analysis.local_time import local_start
from app.domain.readiness import PAIN_LIMIT
from app.domain.records import RunOutcome, RunSummary
from app.views.review import words
from app.views.review.marks import marked, spoken
from app.views.translation import tr
from app.views.widgets.rows_model import Column, Tone

_REPS = ("reps_met", "reps_done")


def run_columns(*, offset: bool = False, pain: bool = True) -> tuple[Column[RunSummary], ...]:
    """Columns of the list; `offset` writes the distance from UTC beside each hour, `pain` shows pain."""
    return (*_who(offset=offset), *_effort(), *(_pain() if pain else ()), _data())


def _who(*, offset: bool) -> tuple[Column[RunSummary], ...]:
    return (
        Column(
            tr("Date and time"),
            lambda run: _marked(run, _when(run, offset=offset), "started_at", "zone"),
            lambda run: run.started_at,
            tip=lambda run: f"{_when(run, offset=True)}, {run.zone}",
            hint=tr("By the clock of the place where the session was done"),
        ),
        Column(
            tr("Athlete"),
            lambda run: _marked(run, run.athlete, "athlete"),
            lambda run: run.athlete.casefold(),
            wide=True,
        ),
        Column(tr("Plan"), lambda run: run.plan_title, lambda run: run.plan_title.casefold(), wide=True),
        Column(tr("Outcome"), words.outcome, words.outcome, tone=_outcome_tone),
    )


def _effort() -> tuple[Column[RunSummary], ...]:
    return (
        Column(
            tr("Reps met"),
            lambda run: _marked(run, words.reps(run), *_REPS),
            lambda run: run.reps_met / run.reps_prescribed if run.reps_prescribed else None,
            right=True,
            spoken=lambda run: spoken(
                tr("unknown") if run.imported else words.reps(run), run.corrected, *_REPS
            ),
            hint=tr("Reps done up to those prescribed, bout by bout, of all those prescribed"),
        ),
        Column(
            tr("RPE"),
            lambda run: _marked(run, words.whole(run.session_rpe), "session_rpe"),
            lambda run: run.session_rpe,
            right=True,
            spoken=lambda run: spoken(_spoken(run.session_rpe), run.corrected, "session_rpe"),
            hint=tr("Rating of perceived exertion of the whole session, 0 to 10"),
        ),
        Column(
            tr("Minutes"),
            words.minutes,
            lambda run: run.elapsed_ms,
            right=True,
            spoken=lambda run: tr("unknown") if run.elapsed_ms is None else words.minutes(run),
            hint=tr("From beginning to end, rests included"),
        ),
        Column(
            tr("Load, AU"),
            lambda run: _marked(run, words.whole(load_of(run)), "session_rpe"),
            load_of,
            right=True,
            spoken=lambda run: spoken(
                tr("unknown") if load_of(run) is None else words.whole(load_of(run)),
                run.corrected,
                "session_rpe",
            ),
            hint=tr("Session RPE times minutes, in arbitrary units"),
        ),
    )


def _pain() -> tuple[Column[RunSummary], ...]:
    return (
        Column(
            tr("Pain"),
            lambda run: _marked(run, words.pain(run.pain), "pain"),
            lambda run: run.pain,
            right=True,
            tone=_pain_tone,
            spoken=lambda run: spoken(_spoken(run.pain), run.corrected, "pain"),
            hint=tr("Highest pain stated in the session, 0 to 10"),
        ),
    )


def _data() -> Column[RunSummary]:
    return Column(
        tr("Data"),
        lambda run: "" if _led(run) else _source(run),
        _source,
        tone=lambda _run: Tone.QUIET,
        spoken=_source,
        hint=tr("Invented sessions belong to the demonstration; imported ones are past training from a list"),
    )


def _when(run: RunSummary, *, offset: bool) -> str:
    return words.when(local_start(run), offset=offset, day_alone=run.imported)


def _led(run: RunSummary) -> bool:
    return not (run.imported or run.invented)


def _source(run: RunSummary) -> str:
    if run.imported:
        return tr("imported")
    return tr("invented") if run.invented else tr("recorded")


def _outcome_tone(run: RunSummary) -> Tone:
    return Tone.INK if run.outcome is RunOutcome.FINISHED else Tone.QUIET


def _pain_tone(run: RunSummary) -> Tone:
    return Tone.ATTENTION if run.pain is not None and run.pain > PAIN_LIMIT else Tone.INK


def _marked(run: RunSummary, text: str, *figures: str) -> str:
    return marked(text, run.corrected, *figures)


def _spoken(value: int | None) -> str:
    return tr("unknown") if value is None else tr("{n} of 10").format(n=value)
