"""Together and in waves: the huge words, the moving profile, the coaching cue, and the roster band."""

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedLayout, QVBoxLayout, QWidget

from app.domain.grouping import Form
from app.domain.profile import profile_of
from app.domain.units import clock_text
from app.run.snapshot import Snapshot
from app.run.state import Doing
from app.views.athlete.headline import HeadlineView
from app.views.athlete.wording import bout_line, whole_seconds
from app.views.athlete.work_panel import CountBar
from app.views.group.band import Crew, RosterBand
from app.views.group.legible import Legible
from app.views.group.scene import RoomScene
from app.views.group.wording import room_headline, then_line, wave_title
from app.views.lettering import Weight
from app.views.theme import Look
from app.views.translation import tr
from app.views.widgets.fitted import FittedLabel
from app.views.widgets.plain import label, say
from app.views.widgets.profile import ProfileView


class RoomHeadline(HeadlineView):
    """The huge words in letters that can be read across the room."""

    def __init__(self, look: Look, sizes: Legible) -> None:
        super().__init__(look)
        self._glance = sizes.glance

    def wished_px(self) -> float:
        """Font size of side and phase before fitting."""
        return float(self._glance)


class TogetherView(QWidget):
    """Shows a slot that all, or one wave of them, do at the same time."""

    def __init__(self, look: Look, sizes: Legible, form: Form) -> None:
        super().__init__()
        self._look, self._sizes = look, sizes
        self._entered: tuple[int, int, int] | None = None
        self._headline = RoomHeadline(look, sizes)
        self._profile = ProfileView(look)
        self._count = CountBar(look)
        self._clock = label(look, pixels=sizes.glance * 1.2, weight=Weight.BOLD)
        self._coming = FittedLabel(look, pixels=look.sizes.display, weight=Weight.SEMIBOLD, lines=2)
        self._then = FittedLabel(look, pixels=look.sizes.title, weight=Weight.SEMIBOLD, lines=2)
        self._cue = FittedLabel(look, pixels=look.sizes.title, lines=3)
        self._band = RosterBand(look, sizes, waves=form is Form.WAVES)
        self._shape = QStackedLayout()
        self._stack = QStackedLayout()
        self._lay_out()

    @property
    def pages(self) -> int:
        """On how many pages the names are."""
        return self._band.pages

    @property
    def crowded(self) -> bool:
        """Whether a name is too long to be read whole."""
        return self._band.crowded

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let headline and band grow and shrink with the window."""
        super().resizeEvent(event)
        self._headline.fit_window()
        self._band.fit(self.window().height())

    def show_scene(self, scene: RoomScene, now_ms: int) -> None:
        """Show a moment of the room."""
        shown = scene.leader
        waiting = shown.doing is Doing.GAP
        self._stack.setCurrentIndex(1 if waiting else 0)
        if waiting:
            say(self._clock, clock_text(whole_seconds(shown.gap_left_ms or 0) * 1000))
            say(self._coming, _coming(scene))
        else:
            self._show_work(scene, shown)
        say(self._cue, (shown.exercise.setup if shown.doing is not Doing.WORK else shown.cue) or "")
        say(self._then, then_line(scene))
        self._band.show_crews(_crews(scene), now_ms)

    def _show_work(self, scene: RoomScene, shown: Snapshot) -> None:
        entered = (shown.bout.index, shown.attempt, shown.work_from_ms)
        if entered != self._entered:
            self._entered = entered
            self._shape.setCurrentWidget(self._count if shown.bout.open_ended else self._profile)
            self._profile.show_bout(profile_of(shown.bout, shown.exercise), shown.work_from_ms)
        self._headline.show_headline(room_headline(scene, self._look.scheme))
        if shown.bout.open_ended:
            self._count.show_count(shown.passed, shown.bout.low, shown.reps)
        else:
            self._profile.show_moment(shown.local_ms)

    def _lay_out(self) -> None:
        look, side = self._look, self._look.margin
        self._shape.addWidget(self._profile)
        self._shape.addWidget(self._count)
        work, gap = QWidget(), QWidget()
        working = QVBoxLayout(work)
        working.setContentsMargins(0, 0, 0, 0)
        working.addWidget(self._headline)
        working.addLayout(self._shape, 1)
        waiting = QHBoxLayout(gap)
        waiting.setContentsMargins(side, 0, side, 0)
        waiting.setSpacing(side)
        waiting.addWidget(self._clock)
        waiting.addWidget(self._coming, 1)
        self._stack.addWidget(work)
        self._stack.addWidget(gap)
        words = QHBoxLayout()
        words.setContentsMargins(side, 0, side, 0)
        words.setSpacing(side)
        words.addWidget(self._cue, 3)
        words.addWidget(self._then, 2)
        people = QVBoxLayout()
        people.setContentsMargins(side, 0, side, round(side * 0.4))
        people.addWidget(self._band)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(round(look.sizes.body * 0.5))
        layout.addLayout(self._stack, 1)
        layout.addLayout(words)
        layout.addLayout(people)


def _coming(scene: RoomScene) -> str:
    """The slot that is waited for."""
    shown = scene.leader
    bout = bout_line(shown.timeline, shown.bout)
    if scene.sides_differ:
        side = tr("second side") if scene.second_side else tr("first side")
        bout = tr("{exercise}, {side}").format(exercise=shown.exercise.name, side=side)
    return tr("Next: {bout}").format(bout=bout)


def _crews(scene: RoomScene) -> tuple[Crew, ...]:
    if scene.wave is None:
        return (Crew("", scene.people),)
    return tuple(
        Crew(
            wave_title(team, works=team == scene.wave),
            tuple(someone for someone in scene.people if someone.team == team),
            team == scene.wave,
        )
        for team in (0, 1)
    )
