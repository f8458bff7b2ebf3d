"""Everything the page of an athlete shows, worked out before it is shown; plain values, no widgets."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from app.analysis.figure import Figure
from app.analysis.figures_changes import last_changes
from app.analysis.figures_load import load_figures
from app.analysis.figures_progression import ExerciseSigns, exercise_signs
from app.analysis.reliability import detectable_changes, trusts_of
from app.analysis.tests_kinds import FieldTest
from app.domain.keeping import Note, Person
from app.domain.records import RunSummary
from app.domain.reviewed import AthleteRecord
from app.views.review.athlete.buckets import Step, buckets, step_of
from app.views.review.athlete.calendar import Week, weeks_of
from app.views.review.athlete.charted import Charted, Found, Made, Times, found_in
from app.views.review.athlete.course_chart import course_chart
from app.views.review.athlete.head import head_of
from app.views.review.athlete.kept_charts import reps_chart, sessions_chart, tempo_chart
from app.views.review.athlete.load_charts import day_chart, monotony_chart, week_chart
from app.views.review.athlete.pain_chart import pain_chart
from app.views.review.athlete.part_chart import Part, part_chart
from app.views.review.athlete.result_chart import result_chart, tests_done
from app.views.review.athlete.session_chart import session_chart
from app.views.review.athlete.side_chart import side_chart, sided_exercises
from app.views.review.athlete.side_test_chart import side_test_chart, sided_tests
from app.views.review.athlete.work_charts import work_chart

AT_ONCE = (0, 1, 3)
"""The charts at the top of the page: reps, load, effort and pain."""


@dataclass(frozen=True, slots=True)
class AthleteView:
    """One athlete's page. `charts` are in the order they are shown; `exercises` and `tests` can be chosen.

    `signs` are those of progression; `changes` the absolute and percent ones of the last week that is over.
    """

    record: AthleteRecord
    head: tuple[Figure, ...]
    charts: Sequence[Charted]
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

    @property
    def sided(self) -> tuple[str | FieldTest, ...]:
        """What can be compared left against right: exercises by name, then tests."""
        return (*self.exercises, *sided_tests(self.tests))

    def side(self, chosen: str | FieldTest | None) -> Charted:
        """The chart of the sides in one exercise or test."""
        if isinstance(chosen, FieldTest):
            return side_test_chart(self.record, chosen, self.errors)
        return side_chart(self.record, chosen)

    def parts(self, by: Part) -> Charted:
        """The chart of reps, tempo and landings by stage, exercise or side."""
        return part_chart(self.record, by)

    def pain_by_day(self) -> Charted | None:
        """The chart of pain by day; None where pain is not shown."""
        return pain_chart(self.record) if self.pain else None

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
    """Work out the page of a record; without `pain` nothing of it, and no notes.

    The charts that are not at the top of the page are worked out when they come into sight.
    """
    charts = Made(chart_makers(record, pain=pain))
    for number in AT_ONCE:
        charts[number]
    return AthleteView(
        record,
        head_of(record, pain=pain),
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


def chart_makers(record: AthleteRecord, *, pain: bool) -> tuple[Callable[[], Charted], ...]:
    """What makes each chart of a page, in the order of the page; `AT_ONCE` are at the top of it."""
    step = step_of(record.first, record.last)
    times = Times(buckets(record.first, record.last, step), step, record.today)

    @cache
    def found() -> Found:
        return found_in(load_figures(record))

    return (
        lambda: reps_chart(record, times),
        lambda: week_chart(record, times, found() if step is Step.WEEK else {}),
        lambda: tempo_chart(record, times),
        lambda: session_chart(record, pain=pain),
        lambda: sessions_chart(record, times),
        lambda: monotony_chart(record, found()),
        lambda: work_chart(record, times),
        lambda: day_chart(record, found()),
    )
