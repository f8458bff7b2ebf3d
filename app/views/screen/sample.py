"""A small picture of both places: led through a rep as in training, and a line as it is read at the desk."""

from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.domain.compiler import compile_timeline
from app.domain.dose import Band, TempoReps
from app.domain.plan import Exercise, Plan, Stage, StageKind
from app.domain.profile import Stroke, profile_of
from app.domain.tempo import Phase, parse_tempo
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.plain import label, say
from app.views.widgets.profile import ProfileView

REPS = 8
PROFILE_BODIES = 7


def sample_strokes() -> tuple[Stroke, ...]:
    """The shape of an invented bout."""
    exercise = Exercise("Sample", TempoReps(Band.exactly(REPS), parse_tempo("2-1-2-0")))
    timeline = compile_timeline(Plan("Sample", (Stage("Sample", StageKind.OTHER, (exercise,)),)))
    return profile_of(timeline.bouts[0], exercise)


class SampleView(QWidget):
    """Shows both looks. It owns no time: `show_moment` tells it, in ms from any beginning."""

    def __init__(self, training: Look, desk: Look) -> None:
        super().__init__()
        self._strokes = sample_strokes()
        self._whole_ms = self._strokes[-1].end_ms
        self._profile = ProfileView(training)
        self._profile.setAccessibleName(tr("A sample of the profile"))
        self._profile.setFixedHeight(training.sizes.body * PROFILE_BODIES)
        self._profile.show_bout(self._strokes, 0)
        self._training = training
        self._phase = label(training, pixels=training.sizes.title, weight=Weight.BOLD)
        self._count = label(training, pixels=training.sizes.title, weight=Weight.BOLD)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._led())
        column.addWidget(self._read(desk))
        self.show_moment(0)

    def show_moment(self, at_ms: int) -> None:
        """Show a moment of the bout, which begins anew when it is over."""
        at_ms %= self._whole_ms
        self._profile.show_moment(at_ms)
        here = next(stroke for stroke in self._strokes if at_ms < stroke.end_ms)
        words = {
            Phase.ECCENTRIC: tr("Lower"),
            Phase.HOLD_LENGTHENED: tr("Hold"),
            Phase.CONCENTRIC: tr("Lift"),
        }
        if self._phase.text() != words[here.phase]:
            say(self._phase, words[here.phase])
            self._phase.setStyleSheet(f"color: {self._training.scheme.text(here.phase)}")
        say(self._count, tr("{n} of {m}").format(n=here.rep, m=REPS))

    def _led(self) -> QFrame:
        frame, column = _ground(self._training, "led")
        row = QHBoxLayout()
        row.addWidget(self._phase)
        row.addStretch(1)
        row.addWidget(self._count)
        column.addLayout(row)
        column.addWidget(self._profile)
        return frame

    def _read(self, desk: Look) -> QFrame:
        frame, column = _ground(desk, "read")
        line: QLabel = label(desk, tr("At the desk, sessions and numbers are read like this."), wrap=True)
        quiet = label(desk, tr("Quiet words, units and dates look like this."), wrap=True)
        quiet.setStyleSheet(f"color: {desk.scheme.quiet}")
        column.addWidget(line)
        column.addWidget(quiet)
        return frame


def _ground(look: Look, name: str) -> tuple[QFrame, QVBoxLayout]:
    frame = QFrame()
    frame.setObjectName(name)
    frame.setStyleSheet(
        f"QFrame#{name} {{ background: {look.scheme.ground}; border: 1px solid {look.scheme.quiet}; }}"
    )
    column = QVBoxLayout(frame)
    edge = look.sizes.body
    column.setContentsMargins(edge, edge // 2, edge, edge // 2)
    return frame, column
