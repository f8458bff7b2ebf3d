"""Everything the page of an athlete shows, worked out before it is shown; plain values, no widgets."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from app.analysis.figure import Figure
from app.analysis.figures_adherence import REPS, SESSIONS, TEMPO, adherence_figures
from app.analysis.figures_changes import last_changes
from app.analysis.figures_load import MONOTONY, WEEK, load_figures
from app.analysis.figures_progression import ExerciseSigns, exercise_signs
from app.analysis.figures_wellbeing import HIGHEST, OWN, TOTAL, wellbeing_figures
from app.analysis.reliability import detectable_changes, trusts_of
from app.analysis.tests_kinds import FieldTest
from app.domain.keeping import Note, Person
from app.domain.records import RunSummary
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.buckets import buckets, step_of
from app.views.review.athlete.calendar import Week, weeks_of
from app.views.review.athlete.charted import Charted, Times
from app.views.review.athlete.course_chart import course_chart
from app.views.review.athlete.kept_charts import reps_chart, sessions_chart, tempo_chart
from app.views.review.athlete.load_charts import load_charts
from app.views.review.athlete.result_chart import result_chart, tests_done
from app.views.review.athlete.session_chart import session_chart
from app.views.review.athlete.side_chart import side_chart, sided_exercises
from app.views.review.athlete.work_charts import work_chart
from app.views.review.figure_words import PAINFUL

WHOLE = (SESSIONS.name, REPS.name, TEMPO.name, HIGHEST.name)
LATEST = (WEEK.name, MONOTONY.name, TOTAL.name, OWN.name)
ORDER = (
    SESSIONS.name,
    REPS.name,
    TEMPO.name,
    WEEK.name,
    MONOTONY.name,
    HIGHEST.name,
    TOTAL.name,
    OWN.name,
)
"""The figures at the top, in this order; WHOLE are of the whole time, LATEST the last that is known."""


@dataclass(frozen=True, slots=True)
class AthleteView:
    """One athlete's page. `charts` are in the order they are shown; `exercises` and `tests` can be chosen.

    `signs` are those of progression; `changes` the absolute and percent ones of the last week that is over.
    """

    record: AthleteRecord
    head: tuple[Figure, ...]
    charts: tuple[Charted, ...]
    exercises: tuple[str, ...]
    tests: tuple[FieldTest, ...]
    errors: Mapping[str, float]
    weeks: tuple[Week, ...]
    notes: tuple[Note, ...] = ()
    runs: tuple[RunSummary, ...] = ()
    people: tuple[Person, ...] = ()
    pain: bool = True
    signs: tuple[ExerciseSigns, ...] = ()
    changes: tuple[tuple[Figure, Figure], ...] = ()

    def side(self, exercise: str | None) -> Charted:
        """The chart of the sides in one exercise."""
        return side_chart(self.record, exercise)

    def course(self) -> Charted:
        """The chart of the load lately and usually."""
        return course_chart(self.record)

    def result(self, test: FieldTest | None) -> Charted:
        """The chart of the results of one test."""
        return result_chart(self.record, test, self.errors)


def athlete_view(
    record: AthleteRecord,
    notes: Sequence[Note] = (),
    runs: Sequence[RunSummary] = (),
    people: Sequence[Person] = (),
    *,
    pain: bool = True,
) -> AthleteView:
    """Work out the page of a record; without `pain` nothing of it, and no notes."""
    step = step_of(record.first, record.last)
    times = Times(buckets(record.first, record.last, step), step, record.today)
    load, wellbeing = load_figures(record), wellbeing_figures(record)
    week, day, monotony = load_charts(record, times, load)
    charts = (
        reps_chart(record, times),
        week,
        tempo_chart(record, times),
        session_chart(record, wellbeing, pain=pain),
        sessions_chart(record, times),
        monotony,
        work_chart(record, times),
        day,
    )
    return AthleteView(
        record,
        head_figures((*adherence_figures(record), *load, *wellbeing), pain=pain),
        charts,
        sided_exercises(record),
        tests_done(record),
        detectable_changes(trusts_of(record.tries)),
        weeks_of(record),
        tuple(notes) if pain else (),
        tuple(runs),
        tuple(people),
        pain,
        exercise_signs(record),
        last_changes(record),
    )


def head_figures(found: Iterable[Figure], *, pain: bool = True) -> tuple[Figure, ...]:
    """Those of all figures that stand at the top of the page; an unknown one among them says why."""
    chosen: dict[str, Figure] = {}
    for figure in found:
        before = chosen.get(figure.name)
        unknown = before is None or before.value is None
        latest = figure.name in LATEST and (figure.value is not None or unknown)
        if latest or (figure.name in WHOLE and not figure.of):
            chosen[figure.name] = figure
    return tuple(chosen[name] for name in ORDER if name in chosen and (pain or name not in PAINFUL))
