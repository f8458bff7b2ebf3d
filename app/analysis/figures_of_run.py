"""Figures of one session: effort, load, reps, tempo, pain and the answers before it, which know why."""

from collections.abc import Iterable, Iterator, Sequence

from app.analysis.adherence_parts import Kept
from app.analysis.figure import Figure, Rule
from app.analysis.figures_adherence import extra_figure, kept_figures
from app.analysis.figures_load import DAY
from app.analysis.figures_wellbeing import EFFORT, MORNING, NOT_ASKED, NOT_RATED, PAIN, TOTAL
from app.analysis.load import elapsed_minutes, session_load
from app.analysis.pain import zone
from app.analysis.readiness_course import ITEM_MISSING
from app.analysis.tempo_kept import tempo_of_dose
from app.domain.fold import Closing, standing
from app.domain.keeping import Rating
from app.domain.readiness import ITEMS, Readiness
from app.domain.records import BoutPrescribed, BoutRecord
from app.domain.tolerance import DEFAULT_TOLERANCE, Tolerance

LOAD_UNKNOWN = "The effort or the length of the session is unknown."
LOAD = Rule("Load of the session", "AU", "session RPE x minutes, rests included", DAY.source)
Bouts = Sequence[tuple[BoutPrescribed, BoutRecord | None]]


def run_figures(
    closing: Closing,
    bouts: Bouts,
    ratings: Iterable[Rating] = (),
    readiness: Iterable[Readiness] = (),
    tolerance: Tolerance = DEFAULT_TOLERANCE,
) -> tuple[Figure, ...]:
    """The figures of one run out of its bouts, every attempt among them, its end, and what was said of it."""
    return (
        *_effort(closing),
        *_reps(bouts, tolerance),
        *_pain(bouts, ratings, readiness),
        *_before(readiness),
    )


def _effort(closing: Closing) -> Iterator[Figure]:
    rpe, minutes = closing.session_rpe, elapsed_minutes(closing.elapsed_ms)
    yield EFFORT.figure(rpe, int(rpe is not None), NOT_RATED)
    parts = (("session RPE", rpe), ("minutes", minutes))
    unknown = tuple(label for label, value in parts if value is None)
    yield LOAD.figure(session_load(rpe, minutes), 1, LOAD_UNKNOWN, parts, unknown)


def _reps(bouts: Bouts, tolerance: Tolerance) -> tuple[Figure, Figure, Figure]:
    asked = {each.bout: each for each, _ in bouts}
    stands = standing(record for _, record in bouts if record is not None)
    prescribed = sum(each.low for each in asked.values())
    done = {bout: record.reps_done for bout, record in stands.items()}
    met = sum(min(done.get(bout, 0), each.low) for bout, each in asked.items())
    extra = sum(done.values()) - met
    counts = [tempo_of_dose(asked[bout], record, tolerance) for bout, record in stands.items()]
    known, kept = sum(each.known for each in counts), sum(each.kept for each in counts)
    found = Kept(prescribed, met, extra, known, kept)
    reps, tempo = kept_figures(found, tolerance)
    return reps, extra_figure(found), tempo


def _pain(bouts: Bouts, ratings: Iterable[Rating], readiness: Iterable[Readiness]) -> Iterator[Figure]:
    stated = [record.pain for _, record in bouts if record is not None and record.pain is not None]
    highest = max(stated, default=None)
    in_zone = zone(highest)
    zones = (("zone", None if in_zone is None else in_zone.value),)
    yield PAIN.figure(highest, len(stated), NOT_RATED, zones)
    after = tuple(ratings)
    known = after[-1].value if after else None
    before = [each.pain for each in readiness if each.pain is not None]
    yield MORNING.figure(
        known,
        int(known is not None),
        NOT_RATED if after else NOT_ASKED,
        (("before training", before[-1] if before else None),),
        () if before else ("pain before training",),
    )


def _before(readiness: Iterable[Readiness]) -> Iterator[Figure]:
    for said in readiness:
        items = tuple((name, getattr(said, name)) for name in ITEMS)
        unknown = tuple(label for label, value in items if value is None)
        yield TOTAL.figure(said.total, len(items) - len(unknown), ITEM_MISSING, items, unknown)
