"""Writes a room down as it happens: one call to the journal for all that happens at one moment."""

from collections.abc import Callable, Sequence

from app.domain.group_record import GroupMember, GroupRecord
from app.domain.prescription import prescriptions
from app.domain.records import RunHeader
from app.run.group_journal import GroupJournal, Opened
from app.run.room_controller import RoomController, Told
from app.run.room_intents import RoomIntent

MakeHeader = Callable[[GroupMember], RunHeader]
"""Gives the header of a run that begins now."""


class RoomPen:
    """Leads a room by intents and has each athlete's run written down under the name kept for it.

    `header` is asked for when somebody's run begins. `kept` says that the session is in the record already.
    """

    def __init__(
        self,
        room: RoomController,
        journal: GroupJournal,
        group: GroupRecord,
        header: MakeHeader,
        *,
        kept: bool = False,
    ) -> None:
        self.room, self.group = room, group
        self._journal, self._header, self._kept = journal, header, kept
        self._members = sorted(group.members, key=lambda member: member.place)

    def follow(self, intent: RoomIntent, now_ms: int) -> tuple[Told, ...]:
        """Follow an intent and write down what came of it. Raises StoreError as the journal does."""
        told, _ = self.room.handle(intent, now_ms)
        if told:
            self._open([place for place, first, _ in told if first == 0])
            self._journal.append_all(
                [(self._members[place].run_id, first, facts) for place, first, facts in told]
            )
        return told

    def _open(self, places: Sequence[int]) -> None:
        """Write down the runs that begin, the first of them with the session."""
        opened = [self._opened(place) for place in places]
        if not self._kept:
            self._journal.open_group(self.group, opened)
            self._kept = True
            return
        for header, prescribed in opened:
            self._journal.open_run(header, prescribed)

    def _opened(self, place: int) -> Opened:
        timeline = self.room.session.parts[place].timeline
        return self._header(self._members[place]), prescriptions(timeline)
