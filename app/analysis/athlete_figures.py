"""All figures of one athlete over a range of days."""

from collections.abc import Mapping

from app.analysis.figure import Figure
from app.analysis.figures_adherence import adherence_figures
from app.analysis.figures_load import load_figures
from app.analysis.figures_tests import figures_of_tests
from app.analysis.figures_wellbeing import wellbeing_figures
from app.domain.reviewed import AthleteRecord


def athlete_figures(
    record: AthleteRecord,
    errors: Mapping[str, float] | None = None,
    worthwhile: Mapping[str, float] | None = None,
    *,
    with_course: bool = False,
) -> tuple[Figure, ...]:
    """Every figure of a record: adherence, load, effort, pain and readiness, tests; unknown ones with why.

    `errors` are minimal detectable changes by the key of their test, in its unit, see
    `own_detectable_change`; `worthwhile` are smallest worthwhile ones, see `own_worthwhile_change`.
    `with_course` adds load lately and usually.
    """
    return (
        *adherence_figures(record),
        *load_figures(record, with_course=with_course),
        *wellbeing_figures(record),
        *figures_of_tests(record, errors, worthwhile),
    )
