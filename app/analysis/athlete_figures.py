"""All figures of one athlete over a range of days."""

from app.analysis.figure import Figure
from app.analysis.figures_adherence import adherence_figures
from app.analysis.figures_changes import change_figures
from app.analysis.figures_load import load_figures
from app.analysis.figures_progression import progression_figures
from app.analysis.figures_tests import figures_of_tests
from app.analysis.figures_wellbeing import pain_figures, wellbeing_figures
from app.domain.reviewed import AthleteRecord


def athlete_figures(record: AthleteRecord, *, with_course: bool = False) -> tuple[Figure, ...]:
    """Every figure of a record, unknown ones with why.

    Adherence, load with its changes, signs of progression, effort, pain and readiness, tests. `with_course`
    adds load lately and usually.
    """
    return (
        *adherence_figures(record),
        *load_figures(record, with_course=with_course),
        *change_figures(record),
        *progression_figures(record),
        *wellbeing_figures(record),
        *pain_figures(record),
        *figures_of_tests(record),
    )
