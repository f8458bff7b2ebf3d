"""The German of the reports, by their English; the English text is the sentence's name."""

SENTENCES = {
    "{n} session is in the record.": "{n} Einheit ist aufgezeichnet.",
    "{n} sessions are in the record.": "{n} Einheiten sind aufgezeichnet.",
    "{n} of {m} planned sessions were done ({share}); {k} were excused.": (
        "{n} von {m} geplanten Einheiten wurden ausgeführt ({share}); {k} waren entschuldigt."
    ),
    "No planned session was due, so that nothing can be said of how many were done.": (
        "Es war keine geplante Einheit fällig; wie viele ausgeführt wurden, lässt sich daher nicht sagen."
    ),
    "{share} of {m} prescribed reps were done.": (
        "{share} von {m} vorgegebenen Wiederholungen wurden ausgeführt."
    ),
    "Nothing is known of reps.": "Über die Wiederholungen ist nichts bekannt.",
    "{share} of {m} reps that were led to a tempo kept it.": (
        "{share} von {m} Wiederholungen, die im Tempo geführt wurden, hielten es ein."
    ),
    "Of no whole week is the load known.": "Von keiner ganzen Woche ist die Belastung bekannt.",
    "The load of the last week known in full was {n} AU; no other week is known in full.": (
        "Die Belastung der letzten ganz bekannten Woche war {n} AU; keine weitere Woche ist ganz bekannt."
    ),
    "The load of the last week known in full was {n} AU, of the one known before it {m} AU.": (
        "Die Belastung der letzten ganz bekannten Woche war {n} AU, der davor bekannten {m} AU."
    ),
    "The effort of {n} session is not rated.": "Die Anstrengung von {n} Einheit ist nicht angegeben.",
    "The effort of {n} sessions is not rated.": "Die Anstrengung von {n} Einheiten ist nicht angegeben.",
    "Pain is not known: nobody has answered.": "Über Schmerz ist nichts bekannt: Niemand hat geantwortet.",
    "The highest pain was {n} of 10; it was above 5 in {k} of {m} sessions with an answer.": (
        "Der stärkste Schmerz war {n} von 10; über 5 lag er in {k} von {m} Einheiten mit einer Antwort."
    ),
    "On {n} of {m} mornings after, pain had not settled.": (
        "An {n} von {m} Morgen danach war der Schmerz nicht abgeklungen."
    ),
    "{test}: one side is behind beyond the error of the test: {side}.": (
        "{test}: Eine Seite liegt über den Fehler des Tests hinaus zurück: {side}."
    ),
    "In no test is a side behind beyond the error of the test, as far as that error is known.": (
        "In keinem Test liegt eine Seite über dessen Fehler hinaus zurück, soweit dieser bekannt ist."
    ),
    "No test was done on both sides, so that nothing can be said of a side that lags.": (
        "Kein Test wurde auf beiden Seiten gemacht; über eine schwächere Seite lässt sich nichts sagen."
    ),
    "The table has the last {n} weeks, the chart all.": (
        "Die Tabelle zeigt die letzten {n} Wochen, das Diagramm alle."
    ),
    "No test was done on both sides on one day.": "Kein Test wurde an einem Tag auf beiden Seiten gemacht.",
    "{n} more row is among the figures.": "{n} weitere Zeile steht unter den Zahlen.",
    "{n} more rows are among the figures.": "{n} weitere Zeilen stehen unter den Zahlen.",
    "No test was done in this time.": "In dieser Zeit wurde kein Test gemacht.",
    "{title}: nothing is known.": "{title}: nichts bekannt.",
    "{title}: {n} known, {gaps} not; first {first}, last {last}, least {least}, greatest {most} {unit}.": (
        "{title}: {n} bekannt, {gaps} unbekannt; zuerst {first}, zuletzt {last}, "
        "kleinster Wert {least}, größter {most} {unit}."
    ),
    "This is no medical device. It does not diagnose, clear or predict injury.": (
        "Dies ist kein Medizinprodukt. Es stellt keine Diagnose, gibt niemanden frei und sagt keine "
        "Verletzung vorher."
    ),
    "Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional.": (
        "Stechender Schmerz, Wegknicken, Schmerz in der Brust, Schwindel, Taubheit: aufhören und eine "
        "zugelassene Fachperson aufsuchen."
    ),
    "Nothing advances by itself: the practitioner decides. Local practice and law come first.": (
        "Nichts steigt von selbst auf: Die Fachperson entscheidet. Örtliche Praxis und Recht gehen vor."
    ),
    "A dash or a gap is unknown, never nought.": "Ein Strich oder eine Lücke heißt unbekannt, nie null.",
    "No session of yours is written down for this time.": (
        "Für diese Zeit ist keine Einheit von dir aufgezeichnet."
    ),
    "You did {n} of the {m} sessions that were planned for you.": (
        "Du hast {n} von {m} Einheiten gemacht, die für dich geplant waren."
    ),
    "You did {n} session.": "Du hast {n} Einheit gemacht.",
    "You did {n} sessions.": "Du hast {n} Einheiten gemacht.",
    "You did {share} of the reps you were asked for.": (
        "Du hast {share} der Wiederholungen gemacht, die du machen solltest."
    ),
    "The most pain you told of was {n} of 10.": "Der stärkste Schmerz, den du genannt hast, war {n} von 10.",
    "You did not say how much pain you had.": "Du hast nicht gesagt, wie stark dein Schmerz war.",
    "This sheet is no advice. Talk about it with the person who plans your training.": (
        "Dieses Blatt ist kein Rat. Sprich darüber mit der Person, die dein Training plant."
    ),
}

WORDS = {
    "Report: {name}": "Bericht: {name}",
    "Your training: {name}": "Dein Training: {name}",
    "{span}. Made on {day}.": "{span}. Erstellt am {day}.",
    "page": "Seite",
    "{low} to {high}": "{low} bis {high}",
    "In short": "Kurz gesagt",
    "Adherence": "Ausführung",
    "Load": "Belastung",
    "Signs to weigh": "Zeichen zum Abwägen",
    "The signs to weigh found no room here; they are among the figures.": (
        "Die Zeichen zum Abwägen fanden hier keinen Platz; sie stehen unter den Zahlen."
    ),
    "Exercise": "Übung",
    "Day": "Tag",
    "Load, kg": "Last, kg",
    "Reps": "Wiederholungen",
    "Asked for": "Vorgegeben",
    "Two for two": "Zwei für zwei",
    "Top of the range": "Oben im Bereich",
    "yes": "ja",
    "not yet": "noch nicht",
    "below it": "darunter",
    "Volume": "Volumen",
    "AU": "AU",
    "kg": "kg",
    "{exercise}, {side}": "{exercise}, {side}",
    "{what} in the last whole week: {this} after {before} {unit} ({percent}).": (
        "{what} in der letzten ganzen Woche: {this} nach {before} {unit} ({percent})."
    ),
    "The practitioner decides, pain and technique first: these are signs and no advice.": (
        "Die Fachperson entscheidet, Schmerz und Technik zuerst: Dies sind Zeichen und kein Rat."
    ),
    "Pain and readiness": "Schmerz und Bereitschaft",
    "Left and right": "Links und rechts",
    "Tests": "Tests",
    "Your tests": "Deine Tests",
    "What you did": "Was du gemacht hast",
    "Notes": "Notizen",
    "Keep in mind": "Zu beachten",
    "What the figures are": "Was die Zahlen bedeuten",
    "Figure": "Zahl",
    "How it is made": "Wie sie entsteht",
    "Source": "Quelle",
    "What": "Was",
    "How many": "Wie viele",
    "Done": "Ausgeführt",
    "Of": "Von",
    "Share": "Anteil",
    "95 % interval": "95-%-Intervall",
    "Week": "Woche",
    "Load, AU": "Belastung, AU",
    "Monotony": "Monotonie",
    "Strain, AU": "Beanspruchung, AU",
    "Contacts": "Kontakte",
    "Tension, s": "Spannung, s",
    "Volume, kg": "Volumen, kg",
    "Test": "Test",
    "First": "Zuerst",
    "Last": "Zuletzt",
    "Left": "Links",
    "Right": "Rechts",
    "Difference": "Unterschied",
    "Index, %": "Index, %",
    "Behind": "Zurück",
    "Reps, {stage}": "Wiederholungen, {stage}",
    "Readiness as last answered, 4 (well) to 28 (badly)": (
        "Bereitschaft, zuletzt angegeben, 4 (gut) bis 28 (schlecht)"
    ),
    "Against its error": "Gegen den Fehler",
    "Days": "Tage",
    "Best": "Bester",
    "Change": "Änderung",
    "Error": "Fehler",
    "Slope a week (95 %)": "Steigung je Woche (95 %)",
    "left": "links",
    "right": "rechts",
    "both": "beide",
    "neither": "keine",
    "unknown": "unbekannt",
    "within error": "innerhalb",
    "beyond error": "darüber",
    "{n} %": "{n} %",
    "{test}, {side}": "{test}, {side}",
    "{day}, {who}: {text}": "{day}, {who}: {text}",
    "Landings stuck, {side}": "Gestandene Landungen, {side}",
    "Sessions with pain 0 to 2": "Einheiten mit Schmerz 0 bis 2",
    "Sessions with pain 3 to 5": "Einheiten mit Schmerz 3 bis 5",
    "Sessions with pain above 5": "Einheiten mit Schmerz über 5",
    "Sessions without an answer": "Einheiten ohne Antwort",
    "Mornings after with pain that had not settled": "Morgen danach mit Schmerz, der nicht abgeklungen war",
    "Mornings after that are known": "Morgen danach, die bekannt sind",
    "reps": "Wiederholungen",
    "sessions": "Einheiten",
    "contacts": "Kontakte",
    "errors": "Fehler",
    "deg": "Grad",
    "of 10": "von 10",
    "0 to 10": "0 bis 10",
    "in the session": "in der Einheit",
    "morning after": "Morgen danach",
    "Reps done of prescribed, by week": "Ausgeführte von vorgegebenen Wiederholungen, je Woche",
    "Done of prescribed, by week": "Ausgeführt von vorgegeben, je Woche",
    "Load of the week": "Belastung der Woche",
    "Contacts of the week": "Kontakte der Woche",
    "Pain by session": "Schmerz je Einheit",
}

FIGURES = {
    "Session adherence": "Ausgeführte Einheiten",
    "sessions done / sessions due; excused and not due ones in neither": (
        "ausgeführte / fällige Einheiten; entschuldigte und nicht fällige in keinem von beiden"
    ),
    "Rep adherence": "Ausgeführte Wiederholungen",
    "reps met / reps prescribed, at most all of each bout; extra reps apart": (
        "erfüllte / vorgegebene Wiederholungen, je Durchgang höchstens alle; zusätzliche gesondert"
    ),
    "Tempo adherence": "Eingehaltenes Tempo",
    "reps that kept the tempo / reps led to one; the program leads, no sensor measures": (
        "Wiederholungen im Tempo / im Tempo geführte; das Programm führt, kein Sensor misst"
    ),
    "sum of seven days from Monday": "Summe von sieben Tagen ab Montag: Anstrengung (0-10) x Minuten",
    "mean of seven daily loads / their standard deviation, that of a sample (n - 1)": (
        "Mittel der sieben Tagesbelastungen / ihre Standardabweichung, die einer Stichprobe (n - 1)"
    ),
    "Strain": "Beanspruchung",
    "load of the week x monotony, not rounded": "Belastung der Woche x Monotonie, nicht gerundet",
    "reps done x contacts a rep": "ausgeführte Wiederholungen x Kontakte je Wiederholung",
    "Time under tension, nominal": "Zeit unter Spannung, nominell",
    "reps done x the sum of a rep's phases; an explosive phase by convention": (
        "ausgeführte Wiederholungen x Summe der Phasen; eine explosive Phase nach Vereinbarung"
    ),
    "Volume load": "Volumen",
    "sum of reps x kg": "Summe aus Wiederholungen x kg",
    "Pain in the session": "Schmerz in der Einheit",
    "highest pain stated; zones 0-2, 3-5, 6-10": "stärkster genannter Schmerz; Bereiche 0-2, 3-5, 6-10",
    "Readiness": "Bereitschaft",
    "sleep + fatigue + stress + soreness, 1 (well) to 7 (badly) each": (
        "Schlaf + Müdigkeit + Stress + Muskelkater, je 1 (gut) bis 7 (schlecht)"
    ),
    "Interval": "Intervall",
    "95 % interval, as if sessions or reps were independent": (
        "95-%-Intervall, als wären Einheiten oder Wiederholungen unabhängig"
    ),
    "Difference of the sides": "Unterschied der Seiten",
    "(greater - smaller) / greater x 100": "(größerer - kleinerer) / größerer Wert x 100",
    "Limb symmetry index": "Seitenindex",
    "No index: nobody has said which side is the reference.": (
        "Kein Index: Niemand hat gesagt, welche Seite die Bezugsseite ist."
    ),
    "Index of the right side, reference left.": "Index der rechten Seite, Bezugsseite links.",
    "Index of the left side, reference right.": "Index der linken Seite, Bezugsseite rechts.",
    "other side / reference side x 100": "andere Seite / Bezugsseite x 100",
    "Error of the test": "Fehler des Tests",
    "1.96 x sqrt 2 x typical error of the repeated tries of all": (
        "1,96 x Wurzel 2 x typischer Fehler der wiederholten Versuche aller"
    ),
    "Slope": "Steigung",
    "median of the slopes of all pairs of days": "Median der Steigungen aller Paare von Tagen",
    "last set at least 2 reps above the most asked for, two sessions running, one load; left out is 0": (
        "letzter Satz mindestens 2 Wiederholungen über der größten Vorgabe, in zwei Einheiten nacheinander, "
        "bei einer Last; ausgelassen ist 0"
    ),
    "every set of the last session at the most reps asked for, or above: double progression": (
        "jeder Satz der letzten Einheit bei der größten vorgegebenen Wiederholungszahl oder darüber: "
        "doppelte Steigerung"
    ),
    "NSCA, from memory. A sign, no advice.": "NSCA, aus dem Gedächtnis. Ein Zeichen, kein Rat.",
    "Common practice, from memory. A sign, no advice.": (
        "Übliche Praxis, aus dem Gedächtnis. Ein Zeichen, kein Rat."
    ),
    "Common practice, no source.": "Übliche Praxis, ohne Quelle.",
    "Common practice, no source. A guideline, not a limit.": (
        "Übliche Praxis, ohne Quelle. Ein Anhalt, keine Grenze."
    ),
    "Common practice, no source. Interval: Wilson 1927, J Am Stat Assoc 22:209-212.": (
        "Übliche Praxis, ohne Quelle. Intervall: Wilson 1927, J Am Stat Assoc 22:209-212."
    ),
    "No published standard; the tolerance is a setting. Interval: Wilson 1927, J Am Stat Assoc 22:209-212.": (
        "Kein veröffentlichter Maßstab; die Toleranz ist eine Einstellung. Intervall: Wilson 1927."
    ),
    "Textbook rule of the tempo's four digits.": "Lehrbuchregel der vier Ziffern des Tempos.",
    "Foster 1998, Med Sci Sports Exerc 30:1164-1168; n - 1 is a choice, its abstract does not say.": (
        "Foster 1998, Med Sci Sports Exerc 30:1164-1168; n - 1 ist eine Wahl, die Zusammenfassung "
        "sagt es nicht."
    ),
    "Thomee 1997; Silbernagel et al. 2007, Am J Sports Med 35:897-906; bounds from memory.": (
        "Thomee 1997; Silbernagel et al. 2007, Am J Sports Med 35:897-906; Grenzen aus dem Gedächtnis."
    ),
    "Bishop et al. 2018, Strength Cond J, from memory.": (
        "Bishop et al. 2018, Strength Cond J, aus dem Gedächtnis."
    ),
    "Gokeler et al. 2017 (PMC5315711); for times Noyes et al. 1991, from memory.": (
        "Gokeler et al. 2017 (PMC5315711); für Zeiten Noyes et al. 1991, aus dem Gedächtnis."
    ),
    "Hopkins 2000, Sports Med 30:1-15 (secondary: course notes).": (
        "Hopkins 2000, Sports Med 30:1-15 (mittelbar: Lehrunterlagen)."
    ),
}

TESTS = {
    "Single hop for distance": "Einbeinsprung auf Weite",
    "Triple hop for distance": "Dreifacher Einbeinsprung auf Weite",
    "Crossover hop for distance": "Überkreuzsprung auf Weite",
    "Six metre timed hop": "Sechs Meter auf einem Bein, auf Zeit",
    "Counter-movement jump, height": "Sprung mit Ausholbewegung, Höhe",
    "Counter-movement jump on one leg, height": "Sprung mit Ausholbewegung auf einem Bein, Höhe",
    "Counter-movement jump, height over time to take-off": (
        "Sprung mit Ausholbewegung, Höhe durch Zeit bis zum Absprung"
    ),
    "Jumps that ended in the square": "Sprünge, die im Feld endeten",
    "One-rep maximum, estimated (Epley)": "Maximum für eine Wiederholung, geschätzt (Epley)",
    "One-rep maximum, estimated (Brzycki)": "Maximum für eine Wiederholung, geschätzt (Brzycki)",
    "One-rep maximum, estimated (Lombardi)": "Maximum für eine Wiederholung, geschätzt (Lombardi)",
    "Drop jump, flight over contact": "Niedersprung, Flug durch Kontakt",
    "Drop jump, height over contact": "Niedersprung, Höhe durch Kontakt",
    "Ten hops, flight over contact": "Zehn Hüpfer, Flug durch Kontakt",
    "Ten hops, height over contact": "Zehn Hüpfer, Höhe durch Kontakt",
    "Reach forwards on one leg": "Reichweite nach vorn auf einem Bein",
    "Reach backwards and inwards on one leg": "Reichweite nach hinten innen auf einem Bein",
    "Reach backwards and outwards on one leg": "Reichweite nach hinten außen auf einem Bein",
    "Limb length": "Beinlänge",
    "Stance on one leg, eyes open": "Einbeinstand, Augen offen",
    "Stance on one leg, eyes closed": "Einbeinstand, Augen zu",
    "Balance errors, six stances": "Gleichgewichtsfehler, sechs Stände",
    "Landing errors, jump from a 30 cm box": "Landefehler, Sprung vom 30-cm-Kasten",
    "Shoulder external rotation, force": "Außenrotation der Schulter, Kraft",
    "Shoulder internal rotation, force": "Innenrotation der Schulter, Kraft",
    "Shoulder rotation, total range": "Rotation der Schulter, gesamter Umfang",
    "Adductor strength, force": "Kraft der Adduktoren",
    "One-rep maximum, measured": "Maximum für eine Wiederholung, gemessen",
}

GERMAN = {**SENTENCES, **WORDS, **FIGURES, **TESTS}
