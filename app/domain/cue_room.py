"""What is heard in a room: the leading clock's slots as cues, with who changes where.

Together and in waves a slot is heard as a bout is, but where people work on different sides the sides are
"first side" and "second side". A window at stations has a start, its last seconds and an end; the tempo of
one team can be heard in it alone.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from app.domain.cue_gap import CODA_MS, gap_before, gap_ticks
from app.domain.cue_speech import work_speech
from app.domain.cue_tones import ACCENT_MS, CHORD_MS, thin, ticks_before, work_tones
from app.domain.cue_values import LEVEL_SPEECH, Cue, CueKind, CueLevel
from app.domain.cue_words import ENGLISH, Tongue
from app.domain.cues import QUIET_MS, bout_cues
from app.domain.group import GroupSession, Part
from app.domain.grouping import Form
from app.domain.plan import Side
from app.domain.timeline import Bout, SpanKind

ANNOUNCED_S = 10
"""So many seconds before its end a window is announced to end, where it is at least twice as long."""


@dataclass(frozen=True, slots=True)
class RoomEar:
    """How a room is led by ear: what people are called, and whose tempo is heard at the stations.

    `names` holds what each athlete is called aloud, by their place in the session; `picked` is such a place,
    None where only windows are heard.
    """

    names: Mapping[int, str] = field(default_factory=dict)
    picked: int | None = None
    level: CueLevel = CueLevel.FULL
    tongue: Tongue = ENGLISH


def room_cues(
    session: GroupSession,
    slot: Bout,
    ear: RoomEar,
    *,
    from_ms: int,
    work_from_ms: int = 0,
    rest_ms: int | None = None,
) -> tuple[Cue, ...]:
    """The cues of a slot of the leading clock, for a sound that begins to play at `from_ms` of its axis.

    As `cues.bout_cues`; speech still has to be fitted.
    """
    if session.form is Form.STATIONS:
        made = _window_cues(session, slot, ear, work_from_ms, rest_ms)
        return _from(made, from_ms + QUIET_MS, ear.level)
    differ = session.sides_differ(slot.index)
    tongue = _of_turns(ear.tongue, slot) if differ else ear.tongue
    cues = bout_cues(
        session.leader,
        slot,
        from_ms=from_ms,
        work_from_ms=work_from_ms,
        rest_ms=rest_ms,
        level=ear.level,
        tongue=tongue,
    )
    if differ:
        cues = tuple(replace(cue, side=Side.BOTH) for cue in cues)
    if session.form is Form.WAVES and ear.level is not CueLevel.TONES and work_from_ms == 0:
        cues = (_wave(session, slot, ear, max(from_ms + QUIET_MS, _opening(slot, rest_ms))), *cues)
    return tuple(sorted(cues, key=lambda cue: (cue.at_ms, cue.priority)))


def room_texts(session: GroupSession, ear: RoomEar) -> tuple[str, ...]:
    """Every text that a room may need spoken, each once, whoever's tempo is picked."""
    texts: dict[str, None] = {}
    for slot in session.leader.bouts:
        for from_ms in (-slot.before_ms - QUIET_MS, -slot.lead_in_ms):
            for cue in room_cues(session, slot, ear, from_ms=from_ms):
                texts.update(dict.fromkeys(_forms(cue)))
        if slot.open_ended and ear.level is not CueLevel.TONES:
            texts.update(dict.fromkeys(str(count) for count in range(1, slot.high + 1)))
    if session.form is Form.STATIONS:
        for part in session.parts:
            for bout in part.timeline.bouts:
                for cue in _spoken_at(part, bout, ear):
                    texts.update(dict.fromkeys(_forms(cue)))
    return tuple(texts)


def station_letter(station: int) -> str:
    """What a station is called, from its number, from 0."""
    return chr(ord("A") + station)


def _of_turns(tongue: Tongue, slot: Bout) -> Tongue:
    """The words of sides where left is some people's first and others' second."""
    turns = tongue.first_side, tongue.second_side
    now, other = turns[::-1] if slot.gap_kind is SpanKind.SIDE_CHANGE else turns
    words = {slot.side: now, slot.side.other: other}
    return replace(tongue, sides=words, side_words=words, first="{}")


def _wave(session: GroupSession, slot: Bout, ear: RoomEar, at_ms: int) -> Cue:
    text = ear.tongue.wave.format(station_letter(slot.index % session.teams))
    return _said(at_ms, CueKind.SIDE, text, (), until_ms=0)


def _window_cues(
    session: GroupSession, slot: Bout, ear: RoomEar, work_from_ms: int, rest_ms: int | None
) -> Iterator[Cue]:
    gap = gap_before(slot, work_from_ms, rest_ms)
    yield from gap_ticks(gap, Side.BOTH)
    if work_from_ms == 0:
        yield from _change(session, slot, ear, rest_ms)
    yield Cue(work_from_ms, CueKind.EXPLOSIVE, Side.BOTH, ACCENT_MS, ear.tongue.begin)
    for cue in (*_end(slot, ear.tongue), *_picked(session, slot, ear)):
        if cue.at_ms >= work_from_ms:
            yield cue


def _change(session: GroupSession, slot: Bout, ear: RoomEar, rest_ms: int | None) -> Iterator[Cue]:
    """What is said before a window: change, who goes where in the first round, the seconds left."""
    opening, tongue = _opening(slot, rest_ms), ear.tongue
    until = -slot.lead_in_ms if slot.gap_kind is not None else 0
    if slot.gap_kind is not None:
        yield _said(opening, CueKind.SIDE, tongue.change, (), until)
        if opening + 2 * ANNOUNCED_S * 1000 <= CODA_MS:
            yield _seconds(-ANNOUNCED_S * 1000, tongue, until_ms=0)
    if slot.index < max(len(session.stations), len(session.places[0])):
        yield from _who_goes_where(session, slot, ear, opening, until)


def _who_goes_where(
    session: GroupSession, slot: Bout, ear: RoomEar, at_ms: int, until_ms: int
) -> Iterator[Cue]:
    row = session.places[slot.index]
    there = sorted((station, team) for team, station in enumerate(row) if station is not None)
    for station, team in there:
        names = [
            ear.names.get(place, part.athlete.name)
            for place, part in enumerate(session.parts)
            if part.team == team
        ]
        if names:
            where = ear.tongue.station.format(station_letter(station))
            texts = (f"{', '.join(names)}: {where}", f"{where}: {names[0]}")
            yield _said(at_ms, CueKind.EXERCISE, texts[0], texts[1:], until_ms)


def _end(slot: Bout, tongue: Tongue) -> Iterator[Cue]:
    """The last seconds of a window, and its end."""
    end_ms = slot.work_ms or 0
    if end_ms >= 2 * ANNOUNCED_S * 1000:
        yield _seconds(end_ms - ANNOUNCED_S * 1000, tongue, end_ms)
    yield from ticks_before(end_ms, Side.BOTH)
    yield Cue(end_ms, CueKind.END, Side.BOTH, CHORD_MS, tongue.bout_done)


def _seconds(at_ms: int, tongue: Tongue, until_ms: int) -> Cue:
    text = tongue.seconds.format(ANNOUNCED_S)
    return Cue(at_ms, CueKind.TIME_LEFT, Side.BOTH, 0, text, text, (str(ANNOUNCED_S),), until_ms)


def _picked(session: GroupSession, slot: Bout, ear: RoomEar) -> Iterator[Cue]:
    """The tempo of whoever is picked, on the axis of the window."""
    if ear.picked is None:
        return
    part = session.parts[ear.picked]
    start_ms = 0
    for number, bout in enumerate(part.bouts_in(slot.index)):
        start_ms += bout.before_ms if number else 0
        if (bout.stage, bout.exercise) not in part.sits_out:
            yield from _at(start_ms, _tones_at(part, bout, ear), slot)
            yield from _at(start_ms, _spoken_at(part, bout, ear), slot)
        start_ms += bout.work_ms or 0


def _tones_at(part: Part, bout: Bout, ear: RoomEar) -> Iterator[Cue]:
    for tone in work_tones(part.timeline.exercise_of(bout), bout, ear.tongue):
        if tone.kind not in (CueKind.END, CueKind.TICK):
            yield tone


def _spoken_at(part: Part, bout: Bout, ear: RoomEar) -> Iterator[Cue]:
    for cue in work_speech(part.timeline.exercise_of(bout), bout, ear.tongue):
        if cue.kind in LEVEL_SPEECH[ear.level]:
            yield cue


def _at(start_ms: int, cues: Iterable[Cue], slot: Bout) -> Iterator[Cue]:
    for cue in cues:
        until = None if cue.until_ms is None else cue.until_ms + start_ms
        if cue.at_ms + start_ms < (slot.work_ms or 0):
            yield replace(cue, at_ms=cue.at_ms + start_ms, until_ms=until)


def _opening(slot: Bout, rest_ms: int | None) -> int:
    """Where speech before a slot may begin: clear of the end of the one before."""
    return gap_before(slot, 0, rest_ms).start_ms + (0 if slot.gap_kind is None else CODA_MS)


def _said(at_ms: int, kind: CueKind, text: str, shorter: tuple[str, ...], until_ms: int) -> Cue:
    return Cue(at_ms, kind, Side.BOTH, 0, text, text, shorter, until_ms, slides=True)


def _from(cues: Iterable[Cue], earliest_ms: int, level: CueLevel) -> tuple[Cue, ...]:
    """The cues from an instant on, in order of time: tones thinned, speech by level, late where it may."""
    given = list(cues)
    tones = [cue for cue in given if not cue.kind.spoken and cue.at_ms >= earliest_ms]
    speech = [
        cue if cue.at_ms >= earliest_ms else replace(cue, at_ms=earliest_ms)
        for cue in given
        if cue.kind in LEVEL_SPEECH[level] and (cue.at_ms >= earliest_ms or _may_be_late(cue, earliest_ms))
    ]
    return tuple(sorted((*thin(tones), *speech), key=lambda cue: (cue.at_ms, cue.priority)))


def _may_be_late(cue: Cue, earliest_ms: int) -> bool:
    return cue.slides and cue.at_ms >= earliest_ms - QUIET_MS


def _forms(cue: Cue) -> tuple[str, ...]:
    return () if cue.text is None else (cue.text, *cue.shorter)
