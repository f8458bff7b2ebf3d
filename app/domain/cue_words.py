"""The words of the cues, by language, and the words of a phase."""

from dataclasses import dataclass

from app.domain.plan import Exercise, Side
from app.domain.tempo import Phase
from app.domain.words import PHASE_WORDS, written_word


@dataclass(frozen=True, slots=True)
class Tongue:
    """The program's own spoken words in one language. `{}` stands for a number or a name."""

    code: str
    rep: str
    last_rep: str
    last: str
    halfway: str
    rest: str
    next_exercise: str
    seconds: str
    sides: dict[Side, str]
    side_words: dict[Side, str]
    change_side: str
    first: str
    begin: str
    bout_done: str
    lower_bound: str
    quarter: str
    first_side: str
    second_side: str
    change: str
    station: str
    wave: str
    phases: dict[Phase, str]


def _phases(words: str) -> dict[Phase, str]:
    """Twelve words, comma separated, in the order of `Phase`."""
    return dict(zip(Phase, (word.strip() for word in words.split(",")), strict=True))


TONGUES: dict[str, Tongue] = {
    "en": Tongue(
        code="en",
        rep="rep {}",
        last_rep="last rep",
        last="last",
        halfway="halfway",
        rest="rest",
        next_exercise="next: {}",
        seconds="{} seconds",
        sides={Side.LEFT: "left side", Side.RIGHT: "right side", Side.BOTH: "both sides"},
        side_words={Side.LEFT: "left", Side.RIGHT: "right", Side.BOTH: "both"},
        change_side="change to the {}",
        first="{} first",
        begin="begin",
        bout_done="bout done",
        lower_bound="lower bound reached",
        quarter="quarter done",
        first_side="first side",
        second_side="second side",
        change="change",
        station="station {}",
        wave="wave {}",
        phases={phase: word.lower() for phase, word in PHASE_WORDS.items()},
    ),
    "de": Tongue(
        code="de",
        rep="Nummer {}",
        last_rep="letzte Wiederholung",
        last="letzte",
        halfway="Hälfte geschafft",
        rest="Pause",
        next_exercise="als Nächstes: {}",
        seconds="noch {} Sekunden",
        sides={Side.LEFT: "linke Seite", Side.RIGHT: "rechte Seite", Side.BOTH: "beide Seiten"},
        side_words={Side.LEFT: "links", Side.RIGHT: "rechts", Side.BOTH: "beide"},
        change_side="Wechsel: {}",
        first="{} zuerst",
        begin="los",
        bout_done="Durchgang fertig",
        lower_bound="untere Grenze erreicht",
        quarter="Viertel geschafft",
        first_side="erste Seite",
        second_side="zweite Seite",
        change="Wechsel",
        station="Station {}",
        wave="Welle {}",
        phases=_phases(
            "senken, halten, heben, halten, halten, lösen, los, stehen, zurück, los, eigenes Tempo, arbeiten"
        ),
    ),
    "es": Tongue(
        code="es",
        rep="número {}",
        last_rep="última repetición",
        last="última",
        halfway="mitad",
        rest="descanso",
        next_exercise="ahora: {}",
        seconds="{} segundos",
        sides={Side.LEFT: "lado izquierdo", Side.RIGHT: "lado derecho", Side.BOTH: "ambos lados"},
        side_words={Side.LEFT: "izquierda", Side.RIGHT: "derecha", Side.BOTH: "ambos"},
        change_side="cambio: {}",
        first="{} primero",
        begin="empieza",
        bout_done="serie hecha",
        lower_bound="límite inferior",
        quarter="un cuarto hecho",
        first_side="primer lado",
        second_side="segundo lado",
        change="cambio",
        station="estación {}",
        wave="grupo {}",
        phases=_phases(
            "baja, aguanta, sube, aguanta, aguanta, suelta, ya, clava, vuelve, ya, a tu ritmo, trabaja"
        ),
    ),
    "fr": Tongue(
        code="fr",
        rep="numéro {}",
        last_rep="dernière répétition",
        last="dernière",
        halfway="moitié",
        rest="repos",
        next_exercise="ensuite: {}",
        seconds="{} secondes",
        sides={Side.LEFT: "côté gauche", Side.RIGHT: "côté droit", Side.BOTH: "deux côtés"},
        side_words={Side.LEFT: "gauche", Side.RIGHT: "droite", Side.BOTH: "deux"},
        change_side="changez: {}",
        first="{} d'abord",
        begin="commencez",
        bout_done="série faite",
        lower_bound="limite basse",
        quarter="un quart fait",
        first_side="premier côté",
        second_side="deuxième côté",
        change="changez",
        station="poste {}",
        wave="vague {}",
        phases=_phases(
            "descends, tiens, monte, tiens, tiens, relâche, hop, tiens, reviens, hop, à ton rythme, travaille"
        ),
    ),
}
ENGLISH = TONGUES["en"]


def spoken_phase(exercise: Exercise, phase: Phase, tongue: Tongue = ENGLISH) -> str:
    """What is said for a phase: the plan's own word, else the language's."""
    return written_word(exercise, phase) or tongue.phases[phase]
