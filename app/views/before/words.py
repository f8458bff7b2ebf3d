"""The words of the questions before a run: what is asked, what each number means, what is said of it."""

from app.run.readiness_form import ReadinessForm, Step
from app.views.before.body_map import spot_words
from app.views.translation import message, tr

TITLES: dict[Step, str] = {
    Step.SLEEP: message("Sleep"),
    Step.FATIGUE: message("Fatigue"),
    Step.STRESS: message("Stress"),
    Step.SORENESS: message("Soreness"),
    Step.PAIN: message("Pain now"),
    Step.PLACE: message("Where"),
    Step.CHANGED: message("Health"),
    Step.RED_FLAG: message("Warning signs"),
    Step.CARE: message("Note"),
}

QUESTIONS: dict[Step, str] = {
    Step.SLEEP: message("How was your sleep last night?"),
    Step.FATIGUE: message("How much fatigue do you feel?"),
    Step.STRESS: message("How much stress is on you?"),
    Step.SORENESS: message("How sore are your muscles?"),
    Step.PAIN: message("How much pain do you have now?"),
    Step.PLACE: message("Where does it hurt most?"),
    Step.CHANGED: message("Has anything changed in your health?"),
    Step.RED_FLAG: message("Is one of these there today?"),
    Step.CARE: message("What does your practitioner need to know?"),
}

_AMOUNTS = (
    message("next to none"),
    message("very little"),
    message("a little"),
    message("some"),
    message("much"),
    message("very much"),
    message("as much as can be"),
)

ITEM_WORDS: dict[Step, tuple[str, ...]] = {
    Step.SLEEP: (
        message("very, very good"),
        message("very good"),
        message("good"),
        message("middling"),
        message("bad"),
        message("very bad"),
        message("very, very bad"),
    ),
    Step.FATIGUE: _AMOUNTS,
    Step.STRESS: _AMOUNTS,
    Step.SORENESS: (
        message("not sore at all"),
        message("barely sore"),
        message("a little sore"),
        message("fairly sore"),
        message("sore"),
        message("very sore"),
        message("very, very sore"),
    ),
}
"""From 1 to 7; the higher, the worse. Our own wording on the steps of a 7-point scale, common practice."""

PAIN_ENDS: dict[int, str] = {0: message("none"), 10: message("the worst")}

CHANGES = (
    message("An illness or an injury"),
    message("A new medicine or treatment"),
    message("Anything else your practitioner should know"),
)
SIGNS = (
    message("Sharp pain"),
    message("A joint that gives way"),
    message("Chest pain"),
    message("Dizziness"),
    message("Numbness"),
)
SEE_SOMEBODY = message(
    "Sharp pain, giving way, chest pain, dizziness or numbness: stop, and see a licensed professional."
)

YES, NO = message("yes"), message("no")
UNKNOWN = message("—")


def answer_words(form: ReadinessForm, step: Step) -> str:
    """The answer to a question as it is shown beside the others; a dash for what is not known."""
    value = form.value(step)
    if step is Step.CARE:
        return form.note.strip() or UNKNOWN
    if value is None:
        return UNKNOWN
    if isinstance(value, bool):
        return tr(YES if value else NO)
    if not isinstance(value, int):
        return spot_words(value)
    if step is Step.PAIN:
        return tr("{n} of 10").format(n=value)
    return tr("{n} · {word}").format(n=value, word=tr(ITEM_WORDS[step][value - 1]))


def care_words(form: ReadinessForm) -> tuple[str, ...]:
    """Why a note is asked for, in sentences; nothing is made of it beyond that."""
    said = []
    if form.held and form.pain:
        said.append(tr("You said pain {n} of 10.").format(n=form.pain))
    if form.red_flag:
        said.append(tr("You said that a warning sign is there."))
        said.append(tr(SEE_SOMEBODY))
    if form.changed:
        said.append(tr("You said that something has changed in your health."))
    if form.held:
        said.append(tr("The session is not started before you have written a note and chosen."))
    return tuple(said)
