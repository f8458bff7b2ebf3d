"""What was said of a run before and after it, in words."""

from app.analysis.local_time import known_zone
from app.domain.keeping import Rating
from app.domain.readiness import ITEMS, Decision, Readiness
from app.views.review import words
from app.views.review.run.view import RunView
from app.views.translation import message, tr

NAMES = {
    "sleep": message("sleep {n}"),
    "fatigue": message("fatigue {n}"),
    "stress": message("stress {n}"),
    "soreness": message("soreness {n}"),
}
DECISIONS = {
    Decision.SPOKEN: message("spoke to the practitioner first"),
    Decision.SKIPPED: message("left the day out"),
}
PLACES = {"left": message("left"), "right": message("right")}


def before_words(said: Readiness) -> str:
    """What an athlete said of themselves before a run; what was not answered has a dash, never a nought."""
    told = [tr(NAMES[name]).format(n=words.whole(getattr(said, name))) for name in ITEMS]
    if said.total is not None:
        told.append(tr("sum {n} of 28").format(n=said.total))
    told.append(_pain(said))
    if said.changed:
        told.append(tr("something changed in their health"))
    if said.red_flag:
        told.append(tr("a warning sign"))
    if said.decision is not None:
        told.append(tr(DECISIONS[said.decision]))
    if said.note:
        told.append(tr("note: {note}").format(note=said.note))
    return tr("Before: {answers}").format(answers=words.DOT.join(told))


def rating_words(rating: Rating, view: RunView) -> str:
    """The pain of the next morning, where it was and when it was said."""
    if rating.value is None:
        return tr("next morning not answered")
    told = tr("next morning {pain}").format(pain=words.whole(rating.value))
    at = rating.at.astimezone(known_zone(rating.zone or view.header.zone))
    where = ", ".join(filter(None, (_place(rating.place, rating.side), words.moment(at))))
    return tr("{told} ({where})").format(told=told, where=where)


def _pain(said: Readiness) -> str:
    if said.pain is None:
        return tr("pain not answered")
    told = tr("pain {n}").format(n=said.pain)
    place = _place(said.pain_place, said.pain_side)
    return tr("{told}, {place}").format(told=told, place=place) if place else told


def _place(place: str | None, side: object) -> str:
    named = PLACES.get(str(getattr(side, "value", "")))
    return " ".join(filter(None, (tr(named) if named else "", tr(place) if place else "")))
