"""What the gym screen says, as pure functions of a scene."""

from app.domain.group import GroupSession
from app.domain.grouping import Form
from app.domain.plan import Side
from app.domain.units import MS_PER_SECOND, seconds_text
from app.domain.words import phase_word, side_word
from app.run.state import Doing, Stand
from app.views.athlete.headline import Headline
from app.views.athlete.wording import bout_line, headline, whole_seconds
from app.views.group.scene import RoomScene, Someone, Standing, StationScene
from app.views.theme import Scheme
from app.views.translation import message, tr

STANDINGS: dict[Standing, str] = {
    Standing.DONE: message("done"),
    Standing.RESTS: message("rests"),
    Standing.SITS_OUT: message("sits out"),
    Standing.ABSENT: message("not here yet"),
    Standing.GONE: message("has gone"),
}
FORMS: dict[Form, str] = {
    Form.TOGETHER: message("Together"),
    Form.STATIONS: message("Stations"),
    Form.WAVES: message("Waves"),
}


def room_headline(scene: RoomScene, scheme: Scheme) -> Headline:
    """The huge words for all; where people work on different sides, which of their two it is."""
    made = headline(scene.leader, scheme)
    if not scene.sides_differ:
        return made
    word = tr("SECOND SIDE") if scene.second_side else tr("FIRST SIDE")
    return Headline(
        Side.BOTH, word, made.phase_text, made.seconds_text, made.count_text, made.of_text, made.colour
    )


def about(someone: Someone, *, waves: bool = False) -> str:
    """What stands beside a name: side and reps, or why there is no work; a resting wave has its heading."""
    if someone.standing is Standing.WORKS:
        counted = f"{someone.done}/{someone.target}"
        if someone.side is Side.BOTH:
            return counted
        return tr("{side} · {counted}").format(side=tr(side_word(someone.side)).lower(), counted=counted)
    if waves and someone.standing is Standing.RESTS:
        return ""
    return tr(STANDINGS[someone.standing])


def then_line(scene: RoomScene) -> str:
    """What comes after the slot."""
    shown = scene.leader
    if shown.doing is Doing.GAP:
        return ""
    if shown.following is None:
        return tr("last bout of the session")
    gap, following = seconds_text(shown.following.before_ms), shown.following
    if scene.wave is not None:
        return tr("Then wave {letter}, after {gap} s").format(letter="BA"[scene.wave], gap=gap)
    if not scene.next_differs:
        bout = bout_line(shown.timeline, following, shown.bout)
    elif scene.sides_differ and not scene.second_side:
        bout = tr("second side, {n}").format(n=following.high)
    else:
        name = shown.timeline.exercise_of(following).name
        bout = tr("{exercise}, {n}").format(exercise=name, n=following.high)
    return tr("Then {bout}, after {gap} s").format(bout=bout, gap=gap)


def round_line(scene: RoomScene) -> str:
    """Where in the rotation the room is."""
    turns = scene.slots // scene.rounds
    window = scene.slot % turns + 1
    return tr("Round {n} of {m} · window {k} of {l}").format(
        n=scene.round_, m=scene.rounds, k=window, l=turns
    )


def change_line(scene: RoomScene) -> str:
    """What the countdown counts to."""
    if scene.leader.stand is Stand.READY:
        return ""
    if scene.leader.doing is not Doing.WORK:
        return tr("work in")
    return tr("change in") if scene.slot + 1 < scene.slots else tr("over in")


def seconds_left(scene: RoomScene) -> int:
    """Whole seconds to the next change or the next work."""
    shown = scene.leader
    if shown.doing is not Doing.WORK:
        return whole_seconds(shown.gap_left_ms or 0)
    return whole_seconds(max((shown.bout.work_ms or 0) - shown.local_ms, 0))


def where_next(station: StationScene) -> str:
    """Where those at a station go next."""
    return "" if station.following is None else tr("to {letter}").format(letter=station.following)


def wave_title(team: int, *, works: bool) -> str:
    """The heading over a wave."""
    letter = "AB"[team]
    return (tr("Wave {letter} works") if works else tr("Wave {letter} rests and spots")).format(letter=letter)


def tile_lines(session: GroupSession) -> list[str]:
    """The longest lines that the tiles of a session will have: side, phase and count together."""
    lines = []
    for part in session.parts:
        for bout in part.timeline.bouts:
            exercise = part.timeline.exercise_of(bout)
            side = "" if bout.side is Side.BOTH else f"{tr(side_word(bout.side))[:1]} "
            count = max(bout.high, (bout.work_ms or 0) // MS_PER_SECOND if bout.high == 1 else 0)
            phases = {span.phase for span in bout.work}
            lines += [f"{side}{tr(phase_word(exercise, phase))}{count}" for phase in phases]
    return lines
