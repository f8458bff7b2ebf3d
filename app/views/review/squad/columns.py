"""The columns of the squad: what each shows, says and is sorted by."""

from collections.abc import Callable
from datetime import date

from app.analysis.reasons import Level, Number, Reason
from app.domain.readiness import PAIN_LIMIT
from app.views.review import words
from app.views.review.figure_words import number_words, weekday_words
from app.views.review.squad.line import SquadLine
from app.views.translation import tr
from app.views.widgets.rows_model import Column, Tone

UNKNOWN = "unknown"
WHY_FIRST, LOAD = 1, 6
"""Places of the columns that are painted and not written."""


def squad_columns(*, pain: bool = True) -> tuple[Column[SquadLine], ...]:
    """All columns; without `pain` neither pain nor the reasons, which may tell of it."""
    name: Column[SquadLine] = Column(
        tr("Athlete"), lambda line: line.called, lambda line: line.called.casefold()
    )
    why: Column[SquadLine] = Column(
        tr("Why first"),
        first_reason if pain else (lambda _line: ""),
        lambda line: line.place if pain and line.attention.reasons else None,
        wide=True,
        tip=all_reasons if pain else None,
        spoken=_spoken_reason if pain else None,
        hint=tr("Who needs a look first, by stated rules; nobody is advanced by them"),
    )
    hurts: Column[SquadLine] = Column(
        tr("Pain"),
        lambda line: words.pain(line.pain),
        lambda line: line.pain,
        right=True,
        tone=lambda line: Tone.ATTENTION if line.pain is not None and line.pain > PAIN_LIMIT else Tone.INK,
        hint=tr("Highest pain stated in the last session, 0 to 10"),
    )
    return (name, why, *_adherence(), *([hurts] if pain else []), *_answers())


def _adherence() -> tuple[Column[SquadLine], ...]:
    return (
        Column(
            tr("Last session"),
            lambda line: words.DASH if line.last is None else _short_day(line.last, line.record.today),
            lambda line: line.last,
            tip=lambda line: "" if line.last is None else weekday_words(line.last),
            spoken=lambda line: tr("none known") if line.last is None else weekday_words(line.last),
        ),
        Column(
            tr("Sessions"),
            lambda line: _two(lambda week: _done(line, week)),
            lambda line: _share(line.weeks.sessions[0].share, line.weeks.sessions[1].share),
            hint=tr("Sessions done of those due, this week · last week"),
        ),
        Column(
            tr("Reps"),
            lambda line: _two(lambda week: words.percent(line.weeks.kept[week].reps_share)),
            lambda line: _share(line.weeks.kept[0].reps_share, line.weeks.kept[1].reps_share),
            hint=tr("Reps done of those prescribed, this week · last week"),
        ),
        Column(
            tr("Tempo"),
            lambda line: _two(lambda week: words.percent(line.weeks.kept[week].tempo_share)),
            lambda line: _share(line.weeks.kept[0].tempo_share, line.weeks.kept[1].tempo_share),
            hint=tr("Reps that kept their tempo, this week · last week"),
        ),
        Column(
            tr("Load, 8 weeks"),
            _load,
            _latest_load,
            spoken=_load,
            hint=tr("RPE × minutes a week, the last bar is this week; grey where not every day is known"),
        ),
    )


def _answers() -> tuple[Column[SquadLine], ...]:
    return (
        Column(
            tr("Owed"),
            lambda line: words.whole(len(line.owed)) if line.owed else "",
            lambda line: len(line.owed) or None,
            right=True,
            spoken=lambda line: words.whole(len(line.owed)),
            hint=tr("Answers that can still be given: effort of a session, pain on the morning after"),
        ),
        Column(
            tr("Readiness"),
            _readiness,
            lambda line: line.readiness.total if line.readiness else None,
            right=True,
            spoken=lambda line: _readiness(line) if line.readiness else tr(UNKNOWN),
            hint=tr(
                "Last sum of four answers, 4 (well) to 28 (badly), and how far from their own 28 days in SD"
            ),
        ),
    )


def first_reason(line: SquadLine) -> str:
    """The most urgent reason in words; empty where there is none."""
    return reason_words(line.attention.reasons[0]) if line.attention.reasons else ""


def all_reasons(line: SquadLine) -> str:
    """Every reason, a line each."""
    return "\n".join(map(reason_words, line.attention.reasons))


def reason_words(reason: Reason) -> str:
    """A reason with its numbers and days as this person writes them."""
    return tr(reason.template).format(**{name: _number(value) for name, value in reason.numbers})


def level(line: SquadLine) -> Level | None:
    """How urgent the first reason is."""
    return line.attention.level


def _spoken_reason(line: SquadLine) -> str:
    return all_reasons(line) or tr("nothing to report")


def _number(value: Number) -> str:
    if isinstance(value, date):
        return words.day(value)
    return tr(value) if isinstance(value, str) else number_words(float(value))


def _short_day(day: date, today: date) -> str:
    return words.day(day) if day.year == today.year else weekday_words(day)


def _two(say: Callable[[int], str]) -> str:
    return words.DOT.join((say(0), say(1)))


def _done(line: SquadLine, week: int) -> str:
    found = line.weeks.sessions[week]
    if found.due:
        return words.of(found.done, found.due)
    return words.DASH


def _share(this: float | None, before: float | None) -> float | None:
    return before if this is None else this


def _latest_load(line: SquadLine) -> float | None:
    known = [bar.known for bar in line.loads if bar.known is not None]
    return known[-1] if known else None


def _load(line: SquadLine) -> str:
    return ", ".join(words.DASH if bar.known is None else words.whole(bar.known) for bar in line.loads)


def _readiness(line: SquadLine) -> str:
    point = line.readiness
    if point is None or point.total is None:
        return words.DASH
    if point.z is None:
        return words.whole(point.total)
    return tr("{total} ({z} SD)").format(total=point.total, z=f"{point.z:+.1f}")
