<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>Load used</source>
        <translation>Benutzte Last</translation>
    </message>
    <message>
        <source>Half a kilogram less</source>
        <translation>Ein halbes Kilo weniger</translation>
    </message>
    <message>
        <source>Half a kilogram more</source>
        <translation>Ein halbes Kilo mehr</translation>
    </message>
    <message>
        <source>Load used, in kilograms</source>
        <translation>Benutzte Last in Kilogramm</translation>
    </message>
    <message>
        <source>as planned  (L, Enter)</source>
        <translation>wie geplant  (L)</translation>
    </message>
    <message>
        <source>{kg} kg</source>
        <translation>{kg} kg</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>used</source>
        <translation>benutzt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>the worst</source>
        <translation>der schlimmste</translation>
    </message>
    <message>
        <source>Sharp pain, giving way, chest pain, dizziness or numbness: stop, and see a licensed professional.</source>
        <translation>Stechender Schmerz, Wegknicken, Brustschmerz, Schwindel oder Taubheit: aufhören und eine Fachperson aufsuchen.</translation>
    </message>
    <message>
        <source>on  (→)</source>
        <translation>weiter  (→)</translation>
    </message>
    <message>
        <source>Reps done</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>One rep fewer</source>
        <translation>Eine Wiederholung weniger</translation>
    </message>
    <message>
        <source>One rep more</source>
        <translation>Eine Wiederholung mehr</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>Note about this bout</source>
        <translation>Notiz zu diesem Durchgang</translation>
    </message>
    <message>
        <source>of {high}</source>
        <translation>von {high}</translation>
    </message>
    <message>
        <source>Reps done: {done} of {high}</source>
        <translation>Wiederholungen: {done} von {high}</translation>
    </message>
    <message numerus="yes">
        <source>%n before it not answered  (←)</source>
        <translation>
            <numerusform>%n davor ohne Antwort  (←)</numerusform>
            <numerusform>%n davor ohne Antwort  (←)</numerusform>
        </translation>
    </message>
    <message>
        <source>Bouts before it</source>
        <translation>Durchgänge davor</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>under tension</source>
        <translation>unter Spannung</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>{done} of {asked}</source>
        <translation>{done} von {asked}</translation>
    </message>
    <message>
        <source>{seconds} s</source>
        <translation>{seconds} s</translation>
    </message>
    <message>
        <source>In all: {tension} under tension by the tempo written, contacts: {contacts}.</source>
        <translation>Insgesamt: {tension} unter Spannung nach geschriebenem Tempo, Kontakte: {contacts}.</translation>
    </message>
    <message>
        <source>No fault was named.</source>
        <translation>Kein Fehler wurde benannt.</translation>
    </message>
    <message>
        <source>{fault} × {n}</source>
        <translation>{fault} × {n}</translation>
    </message>
    <message>
        <source>Faults: {faults}</source>
        <translation>Fehler: {faults}</translation>
    </message>
    <message>
        <source>Faults  ·  F, then a number, marks one on the last rep</source>
        <translation>Fehler  ·  F, dann eine Zahl, für die letzte Wiederholung</translation>
    </message>
    <message>
        <source>{number}  {fault}</source>
        <translation>{number}  {fault}</translation>
    </message>
    <message>
        <source>Mark {fault} on the last rep</source>
        <translation>{fault} an der letzten Wiederholung vermerken</translation>
    </message>
    <message>
        <source>rep {rep} · {fault}</source>
        <translation>Wdh. {rep} · {fault}</translation>
    </message>
    <message>
        <source>a fault</source>
        <translation>ein Fehler</translation>
    </message>
    <message>
        <source>none marked</source>
        <translation>keine vermerkt</translation>
    </message>
    <message>
        <source>Session finished</source>
        <translation>Einheit beendet</translation>
    </message>
    <message>
        <source>Session stopped</source>
        <translation>Einheit abgebrochen</translation>
    </message>
    <message>
        <source>Session not begun</source>
        <translation>Einheit nicht begonnen</translation>
    </message>
    <message>
        <source>Your practitioner sees this table, your faults, effort, pain, loads and notes, and what was left out and why. What you do not answer is shown as unknown.</source>
        <translation>Deine Betreuung sieht diese Tabelle, deine Fehler, Anstrengung, Schmerzen, Lasten und Notizen und was warum ausgelassen wurde. Was du nicht beantwortest, steht als unbekannt da.</translation>
    </message>
    <message>
        <source>Next session: {when}</source>
        <translation>Nächste Einheit: {when}</translation>
    </message>
    <message>
        <source>How hard was the session?</source>
        <translation>Wie anstrengend war die Einheit?</translation>
    </message>
    <message>
        <source>Note about this session</source>
        <translation>Notiz zu dieser Einheit</translation>
    </message>
    <message>
        <source>Ask me later</source>
        <translation>Später fragen</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Done  (Space)</source>
        <translation>Fertig  (Leertaste)</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>pedal: next, or one more rep</source>
        <translation>Pedal: weiter, oder eine Wiederholung mehr</translation>
    </message>
    <message>
        <source>pedal: short for next or one more rep, long to pause and go on</source>
        <translation>Pedal: kurz für weiter oder eine Wiederholung mehr, lang für Pause und weiter</translation>
    </message>
    <message>
        <source>pedal: pause, go on</source>
        <translation>Pedal: Pause, weiter</translation>
    </message>
    <message>
        <source>Teach a pedal to count</source>
        <translation>Ein Pedal zum Zählen anlernen</translation>
    </message>
    <message>
        <source>Teach a pedal to pause</source>
        <translation>Ein Pedal zum Anhalten anlernen</translation>
    </message>
    <message>
        <source>One pedal: short counts, long pauses</source>
        <translation>Ein Pedal: kurz zählt, lang hält an</translation>
    </message>
    <message>
        <source>Forget the pedals</source>
        <translation>Pedale vergessen</translation>
    </message>
    <message>
        <source>Pedal</source>
        <translation>Pedal</translation>
    </message>
    <message>
        <source>Press the pedal now.</source>
        <translation>Jetzt das Pedal drücken.</translation>
    </message>
    <message>
        <source>It then pauses and goes on.</source>
        <translation>Es hält dann an und macht weiter.</translation>
    </message>
    <message>
        <source>It then counts and goes on.</source>
        <translation>Es zählt dann und macht weiter.</translation>
    </message>
    <message>
        <source>Learn nothing  (Esc)</source>
        <translation>Nichts anlernen  (Esc)</translation>
    </message>
    <message>
        <source>That key cannot be learned. Set the pedal to send another one.</source>
        <translation>Diese Taste kann nicht angelernt werden. Stelle das Pedal auf eine andere ein.</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>begin, pause, go on</source>
        <translation>beginnen, anhalten, weitermachen</translation>
    </message>
    <message>
        <source>Enter or ↓</source>
        <translation>Enter oder ↓</translation>
    </message>
    <message>
        <source>ready; then one more rep, at your own pace</source>
        <translation>bereit; dann eine Wiederholung mehr, im eigenen Tempo</translation>
    </message>
    <message>
        <source>mark a fault on this rep; 1-9 soon after names it</source>
        <translation>einen Fehler an dieser Wiederholung vermerken; 1-9 gleich danach benennt ihn</translation>
    </message>
    <message>
        <source>1-9 at work</source>
        <translation>1-9 bei der Arbeit</translation>
    </message>
    <message>
        <source>mark a fault by its number on this rep</source>
        <translation>einen Fehler mit seiner Zahl vermerken</translation>
    </message>
    <message>
        <source>this rep is not being done</source>
        <translation>diese Wiederholung wird nicht gemacht</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>take back the last mark or answer</source>
        <translation>letzten Vermerk oder letzte Antwort zurücknehmen</translation>
    </message>
    <message>
        <source>end this bout</source>
        <translation>diesen Durchgang beenden</translation>
    </message>
    <message>
        <source>do the bout again</source>
        <translation>den Durchgang noch einmal machen</translation>
    </message>
    <message>
        <source>leave out this exercise; asks why</source>
        <translation>diese Übung auslassen; fragt warum</translation>
    </message>
    <message>
        <source>leave out the rest of this stage; asks why</source>
        <translation>den Rest dieser Stufe auslassen; fragt warum</translation>
    </message>
    <message>
        <source>go to another stage, where the plan leaves their order free</source>
        <translation>zu einer anderen Stufe, wo der Plan die Reihenfolge freilässt</translation>
    </message>
    <message>
        <source>15 s more rest</source>
        <translation>15 s mehr Pause</translation>
    </message>
    <message>
        <source>cut the rest short</source>
        <translation>die Pause abkürzen</translation>
    </message>
    <message>
        <source>0-9 at rest, at the end</source>
        <translation>0-9 in der Pause, am Ende</translation>
    </message>
    <message>
        <source>answer: effort, then pain, then the session; 1 and 0 quickly for 10</source>
        <translation>antworten: Anstrengung, dann Schmerz, dann die Einheit; 1 und 0 rasch für 10</translation>
    </message>
    <message>
        <source>← and →</source>
        <translation>← und →</translation>
    </message>
    <message>
        <source>to an earlier bout that is not answered, and back</source>
        <translation>zu einem früheren Durchgang ohne Antwort, und zurück</translation>
    </message>
    <message>
        <source>↑ and ↓ at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one rep more or fewer was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the load that was used; Enter keeps it</source>
        <translation>die benutzte Last; Enter behält sie</translation>
    </message>
    <message>
        <source>write a note; Enter keeps it</source>
        <translation>eine Notiz schreiben; Enter behält sie</translation>
    </message>
    <message>
        <source>stop the session; asks once more</source>
        <translation>die Einheit abbrechen; fragt noch einmal</translation>
    </message>
    <message>
        <source>+ and -</source>
        <translation>+ und -</translation>
    </message>
    <message>
        <source>louder and softer, at once</source>
        <translation>lauter und leiser, sofort</translation>
    </message>
    <message>
        <source>sound off, and on again</source>
        <translation>Ton aus und wieder an</translation>
    </message>
    <message>
        <source>full screen</source>
        <translation>ganzer Bildschirm</translation>
    </message>
    <message>
        <source>this page</source>
        <translation>diese Seite</translation>
    </message>
    <message>
        <source>For your practitioner; Enter keeps it</source>
        <translation>Für deine Betreuung; Enter behält es</translation>
    </message>
    <message>
        <source>Add a note  (W)</source>
        <translation>Notiz schreiben  (W)</translation>
    </message>
    <message>
        <source>Change the note  (W)</source>
        <translation>Notiz ändern  (W)</translation>
    </message>
    <message>
        <source>Add a note about this bout</source>
        <translation>Notiz zu diesem Durchgang schreiben</translation>
    </message>
    <message>
        <source>Change the note about this bout</source>
        <translation>Notiz zu diesem Durchgang ändern</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer slept or was busy, so the session waited for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1  pain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2  equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3  time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4  something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened, for your practitioner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain {pain}: {name} ends here. {caution}</source>
        <translation>Schmerz {pain}: {name} endet hier. {caution}</translation>
    </message>
    <message>
        <source>Stop the session here? Everything done so far is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out what remains of {name}. Why?</source>
        <translation>Den Rest von {name} auslassen. Warum?</translation>
    </message>
    <message>
        <source>Leave out what remains of the stage {name}. Why?</source>
        <translation>Den Rest der Stufe {name} auslassen. Warum?</translation>
    </message>
    <message>
        <source>Go on with which stage? The one left comes again.</source>
        <translation>Mit welcher Stufe weiter? Die verlassene kommt wieder.</translation>
    </message>
    <message>
        <source>Another stage  (G)</source>
        <translation>Andere Stufe  (G)</translation>
    </message>
    <message>
        <source>Go on  (Space)</source>
        <translation>Weiter  (Leertaste)</translation>
    </message>
    <message>
        <source>Do this bout again  (A)</source>
        <translation>Durchgang noch einmal  (A)</translation>
    </message>
    <message>
        <source>Leave out this exercise  (K)</source>
        <translation>Übung auslassen  (K)</translation>
    </message>
    <message>
        <source>Leave out the rest of this stage  (X)</source>
        <translation>Rest der Stufe auslassen  (X)</translation>
    </message>
    <message>
        <source>Stop here  (S)</source>
        <translation>Hier aufhören  (S)</translation>
    </message>
    <message>
        <source>stay with this one</source>
        <translation>hier bleiben</translation>
    </message>
    <message>
        <source>Yes, stop here  (S)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out  (Enter)</source>
        <translation>Auslassen  (Enter)</translation>
    </message>
    <message>
        <source>The number was wrong</source>
        <translation>Die Zahl war falsch</translation>
    </message>
    <message>
        <source>{place}, left</source>
        <translation>{place}, links</translation>
    </message>
    <message>
        <source>{place}, right</source>
        <translation>{place}, rechts</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorne</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>front of the neck</source>
        <translation>Hals</translation>
    </message>
    <message>
        <source>belly</source>
        <translation>Bauch</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Brust</translation>
    </message>
    <message>
        <source>front of the shoulder</source>
        <translation>Schulter vorne</translation>
    </message>
    <message>
        <source>front of the upper arm</source>
        <translation>Oberarm vorne</translation>
    </message>
    <message>
        <source>bend of the elbow</source>
        <translation>Ellenbeuge</translation>
    </message>
    <message>
        <source>inside of the forearm</source>
        <translation>Unterarm innen</translation>
    </message>
    <message>
        <source>wrist and hand</source>
        <translation>Handgelenk und Hand</translation>
    </message>
    <message>
        <source>hip and groin</source>
        <translation>Hüfte und Leiste</translation>
    </message>
    <message>
        <source>front of the thigh</source>
        <translation>Oberschenkel vorne</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>shin</source>
        <translation>Schienbein</translation>
    </message>
    <message>
        <source>ankle and foot</source>
        <translation>Sprunggelenk und Fuß</translation>
    </message>
    <message>
        <source>back of the head</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>back of the neck</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>lower back</source>
        <translation>unterer Rücken</translation>
    </message>
    <message>
        <source>shoulder blade and upper back</source>
        <translation>Schulterblatt und oberer Rücken</translation>
    </message>
    <message>
        <source>back of the shoulder</source>
        <translation>Schulter hinten</translation>
    </message>
    <message>
        <source>back of the upper arm</source>
        <translation>Oberarm hinten</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>Ellenbogen</translation>
    </message>
    <message>
        <source>outside of the forearm</source>
        <translation>Unterarm außen</translation>
    </message>
    <message>
        <source>back of the hand</source>
        <translation>Handrücken</translation>
    </message>
    <message>
        <source>buttock</source>
        <translation>Gesäß</translation>
    </message>
    <message>
        <source>back of the thigh</source>
        <translation>Oberschenkel hinten</translation>
    </message>
    <message>
        <source>back of the knee</source>
        <translation>Kniekehle</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>Wade</translation>
    </message>
    <message>
        <source>heel</source>
        <translation>Ferse</translation>
    </message>
    <message>
        <source>{title} {n}, {word}</source>
        <translation>{title} {n}, {word}</translation>
    </message>
    <message>
        <source>The question</source>
        <translation>Die Frage</translation>
    </message>
    <message>
        <source>{athlete}, before {plan}</source>
        <translation>{athlete}, vor {plan}</translation>
    </message>
    <message>
        <source>Your answers</source>
        <translation>Deine Antworten</translation>
    </message>
    <message>
        <source>Back  (Backspace)</source>
        <translation>Zurück  (Rücktaste)</translation>
    </message>
    <message>
        <source>Ask me nothing more  (S)</source>
        <translation>Nichts mehr fragen  (S)</translation>
    </message>
    <message>
        <source>Leave it open  (Space)</source>
        <translation>Offen lassen  (Leertaste)</translation>
    </message>
    <message>
        <source>← Start  (Esc)</source>
        <translation>← Start  (Esc)</translation>
    </message>
    <message>
        <source>–  {line}</source>
        <translation>–  {line}</translation>
    </message>
    <message>
        <source>I have spoken to my practitioner  (1)</source>
        <translation>Betreuung gefragt  (1)</translation>
    </message>
    <message>
        <source>Skip today  (2)</source>
        <translation>Heute auslassen  (2)</translation>
    </message>
    <message>
        <source>Go on  (Enter)</source>
        <translation>Weiter  (Enter)</translation>
    </message>
    <message>
        <source>For your practitioner</source>
        <translation>Für deine Betreuung</translation>
    </message>
    <message>
        <source>Note for your practitioner</source>
        <translation>Notiz für deine Betreuung</translation>
    </message>
    <message>
        <source>You may leave it empty.</source>
        <translation>Du kannst es leer lassen.</translation>
    </message>
    <message>
        <source>A few words are enough.</source>
        <translation>Ein paar Worte genügen.</translation>
    </message>
    <message>
        <source>Enter ends the note; then press 1 or 2.</source>
        <translation>Enter beendet die Notiz; dann 1 oder 2 drücken.</translation>
    </message>
    <message>
        <source>{question}: {answer}</source>
        <translation>{question}: {answer}</translation>
    </message>
    <message>
        <source>Sum {n}, of 4 (well) to 28</source>
        <translation>Summe {n}, von 4 (gut) bis 28</translation>
    </message>
    <message>
        <source>Sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>Fatigue</source>
        <translation>Müdigkeit</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>Soreness</source>
        <translation>Muskelkater</translation>
    </message>
    <message>
        <source>Pain now</source>
        <translation>Schmerz jetzt</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>Warning signs</source>
        <translation>Warnzeichen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>How was your sleep last night?</source>
        <translation>Wie hast du letzte Nacht geschlafen?</translation>
    </message>
    <message>
        <source>How much fatigue do you feel?</source>
        <translation>Wie müde bist du?</translation>
    </message>
    <message>
        <source>How much stress is on you?</source>
        <translation>Wie viel Belastung liegt auf dir?</translation>
    </message>
    <message>
        <source>How sore are your muscles?</source>
        <translation>Wie stark ist dein Muskelkater?</translation>
    </message>
    <message>
        <source>How much pain do you have now?</source>
        <translation>Wie viel Schmerz hast du jetzt?</translation>
    </message>
    <message>
        <source>Where does it hurt most?</source>
        <translation>Wo tut es am meisten weh?</translation>
    </message>
    <message>
        <source>Has anything changed in your health?</source>
        <translation>Hat sich an deiner Gesundheit etwas geändert?</translation>
    </message>
    <message>
        <source>Is one of these there today?</source>
        <translation>Ist heute eines davon da?</translation>
    </message>
    <message>
        <source>What does your practitioner need to know?</source>
        <translation>Was muss deine Betreuung wissen?</translation>
    </message>
    <message>
        <source>next to none</source>
        <translation>fast keine</translation>
    </message>
    <message>
        <source>very little</source>
        <translation>sehr wenig</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>some</source>
        <translation>etwas</translation>
    </message>
    <message>
        <source>much</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>very much</source>
        <translation>sehr viel</translation>
    </message>
    <message>
        <source>as much as can be</source>
        <translation>so viel es geht</translation>
    </message>
    <message>
        <source>very, very good</source>
        <translation>sehr, sehr gut</translation>
    </message>
    <message>
        <source>very good</source>
        <translation>sehr gut</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>middling</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>very bad</source>
        <translation>sehr schlecht</translation>
    </message>
    <message>
        <source>very, very bad</source>
        <translation>sehr, sehr schlecht</translation>
    </message>
    <message>
        <source>not sore at all</source>
        <translation>gar kein Muskelkater</translation>
    </message>
    <message>
        <source>barely sore</source>
        <translation>kaum spürbar</translation>
    </message>
    <message>
        <source>a little sore</source>
        <translation>ein wenig</translation>
    </message>
    <message>
        <source>fairly sore</source>
        <translation>ziemlich</translation>
    </message>
    <message>
        <source>sore</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>very sore</source>
        <translation>sehr stark</translation>
    </message>
    <message>
        <source>very, very sore</source>
        <translation>sehr, sehr stark</translation>
    </message>
    <message>
        <source>An illness or an injury</source>
        <translation>Eine Krankheit oder Verletzung</translation>
    </message>
    <message>
        <source>A new medicine or treatment</source>
        <translation>Ein neues Medikament, eine neue Behandlung</translation>
    </message>
    <message>
        <source>Anything else your practitioner should know</source>
        <translation>Etwas anderes, das deine Betreuung wissen sollte</translation>
    </message>
    <message>
        <source>Sharp pain</source>
        <translation>Stechender Schmerz</translation>
    </message>
    <message>
        <source>A joint that gives way</source>
        <translation>Ein Gelenk, das wegknickt</translation>
    </message>
    <message>
        <source>Chest pain</source>
        <translation>Brustschmerz</translation>
    </message>
    <message>
        <source>Dizziness</source>
        <translation>Schwindel</translation>
    </message>
    <message>
        <source>Numbness</source>
        <translation>Taubheit</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>—</source>
        <translation>—</translation>
    </message>
    <message>
        <source>{n} of 10</source>
        <translation>{n} von 10</translation>
    </message>
    <message>
        <source>{n} · {word}</source>
        <translation>{n} · {word}</translation>
    </message>
    <message>
        <source>You said pain {n} of 10.</source>
        <translation>Du hast Schmerz {n} von 10 angegeben.</translation>
    </message>
    <message>
        <source>You said that a warning sign is there.</source>
        <translation>Du hast ein Warnzeichen angegeben.</translation>
    </message>
    <message>
        <source>You said that something has changed in your health.</source>
        <translation>Du hast eine Änderung deiner Gesundheit angegeben.</translation>
    </message>
    <message>
        <source>The session is not started before you have written a note and chosen.</source>
        <translation>Die Einheit beginnt erst, wenn du eine Notiz geschrieben und gewählt hast.</translation>
    </message>
    <message>
        <source>Listen and watch: the ring lands when it is lit. Shift the picture with ← and → until sound and landing are one. Or tap Enter along with the sound sixteen times.</source>
        <translation>Hör und sieh hin: Der Ring landet, wenn er leuchtet. Verschiebe das Bild mit ← und →, bis Ton und Landung eins sind. Oder tippe sechzehnmal Enter im Takt des Tons.</translation>
    </message>
    <message>
        <source>{ms} ms</source>
        <translation>{ms} ms</translation>
    </message>
    <message>
        <source>for {speaker}</source>
        <translation>für {speaker}</translation>
    </message>
    <message>
        <source>{n} of {m} taps</source>
        <translation>{n} von {m} getippt</translation>
    </message>
    <message>
        <source>set by your taps</source>
        <translation>nach deinem Takt gesetzt</translation>
    </message>
    <message>
        <source>Sound and picture</source>
        <translation>Ton und Bild</translation>
    </message>
    <message>
        <source>How to set them together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>← earlier</source>
        <translation>← früher</translation>
    </message>
    <message>
        <source>later →</source>
        <translation>später →</translation>
    </message>
    <message>
        <source>Tap  (Enter)</source>
        <translation>Tippen  (Enter)</translation>
    </message>
    <message>
        <source>Leave it as it was  (Esc)</source>
        <translation>Lassen, wie es war  (Esc)</translation>
    </message>
    <message>
        <source>Keep it  (Space)</source>
        <translation>Behalten  (Leertaste)</translation>
    </message>
    <message>
        <source>The beat</source>
        <translation>Der Takt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rests</source>
        <translation>ruht</translation>
    </message>
    <message>
        <source>rep {n}: {fault}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rep {n}: not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest, {time} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {m}: {bout}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S once more ends the session for everybody. Any other key goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out this exercise for all. Why?   {reasons}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} sits out this exercise. Why?   {reasons}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody&apos;s key, then Enter: here or not.   / finds a name.   Space begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody&apos;s key, then: F a fault, M a missed rep, O sits out, L leaves, Y a note.   Space pauses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}:   Enter here or not   Y note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}:   {faults}   F fault   M missed   O sits out   L leaves   Enter is here   Y note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {m} here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sits out</source>
        <translation>setzt aus</translation>
    </message>
    <message>
        <source>not here yet</source>
        <translation>noch nicht da</translation>
    </message>
    <message>
        <source>has gone</source>
        <translation>ist gegangen</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Gemeinsam</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Stationen</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>SECOND SIDE</source>
        <translation>ZWEITE SEITE</translation>
    </message>
    <message>
        <source>FIRST SIDE</source>
        <translation>ERSTE SEITE</translation>
    </message>
    <message>
        <source>This rep is marked as not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked: {faults}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press Enter for each rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {m}</source>
        <translation>{n} von {m}</translation>
    </message>
    <message>
        <source>enough from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d</source>
        <translation>d.</translation>
    </message>
    <message>
        <source>not ended</source>
        <translation>nicht beendet</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>Reading the session …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known of the bouts of this session: only its day, its length and its effort were entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bouts and reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each strip is {s} s long from edge to edge; ✕ missed, ■ fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>{n} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {n} AU</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pauses: {n}, {s} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The athlete: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{who}: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week {n}</source>
        <translation>Woche {n}</translation>
    </message>
    <message>
        <source>no session ended</source>
        <translation>keine Einheit beendet</translation>
    </message>
    <message>
        <source>no session</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <source>{n} of {m} reps, {k} beyond</source>
        <translation>{n} von {m} Wiederholungen, {k} darüber</translation>
    </message>
    <message>
        <source>{n} of {m} reps</source>
        <translation>{n} von {m} Wiederholungen</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s)</source>
        <translation>
            <numerusform>%n Einheit</numerusform>
            <numerusform>%n Einheiten</numerusform>
        </translation>
    </message>
    <message>
        <source>{n} of them corrected</source>
        <translation>{n} davon berichtigt</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) not ended</source>
        <translation>
            <numerusform>%n Lauf nicht beendet</numerusform>
            <numerusform>%n Läufe nicht beendet</numerusform>
        </translation>
    </message>
    <message>
        <source>RPE {rpe} × {minutes} min = {load} AU</source>
        <translation>RPE {rpe} × {minutes} min = {load} AU</translation>
    </message>
    <message>
        <source>RPE not rated, load unknown</source>
        <translation>RPE nicht angegeben, Belastung unbekannt</translation>
    </message>
    <message>
        <source>RPE {n}, not ended, load unknown</source>
        <translation>RPE {n}, nicht beendet, Belastung unbekannt</translation>
    </message>
    <message>
        <source>RPE {n}, length unknown, load unknown</source>
        <translation>RPE {n}, Dauer unbekannt, Belastung unbekannt</translation>
    </message>
    <message>
        <source>rating corrected</source>
        <translation>Angabe berichtigt</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody fits these letters. Esc shows everybody again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sessions, reps, tempo: this week · last week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>/ to search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the squad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who needs me first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n Person</numerusform>
            <numerusform>%n Personen</numerusform>
        </translation>
    </message>
    <message>
        <source>who needs me first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of them invented</source>
        <translation>{n} davon erfunden</translation>
    </message>
    <message>
        <source>invented data</source>
        <translation>erfundene Daten</translation>
    </message>
    <message>
        <source>{n} of them imported</source>
        <translation>{n} davon eingelesen</translation>
    </message>
    <message>
        <source>{side} · {counted}</source>
        <translation>{side} · {counted}</translation>
    </message>
    <message>
        <source>Round {n} of {m} · window {k} of {l}</source>
        <translation>Runde {n} von {m} · Fenster {k} von {l}</translation>
    </message>
    <message>
        <source>work in</source>
        <translation>Arbeit in</translation>
    </message>
    <message>
        <source>change in</source>
        <translation>Wechsel in</translation>
    </message>
    <message>
        <source>over in</source>
        <translation>Ende in</translation>
    </message>
    <message>
        <source>to {letter}</source>
        <translation>zu {letter}</translation>
    </message>
    <message>
        <source>Wave {letter} works</source>
        <translation>Welle {letter} arbeitet</translation>
    </message>
    <message>
        <source>Wave {letter} rests and spots</source>
        <translation>Welle {letter} ruht und sichert</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation>Kontrast</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Your distance</source>
        <translation>Dein Abstand</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Lines run</source>
        <translation>Zeilen laufen</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Bildschirm</translation>
    </message>
    <message>
        <source>What may be chosen of the screen</source>
        <translation>Was am Bildschirm gewählt werden kann</translation>
    </message>
    <message>
        <source>Keep it  (Enter)</source>
        <translation>Behalten  (Enter)</translation>
    </message>
    <message>
        <source>A sample of the profile</source>
        <translation>Ein Beispiel des Verlaufs</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Senken</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>At the desk, sessions and numbers are read like this.</source>
        <translation>Am Schreibtisch liest man Einheiten und Zahlen so.</translation>
    </message>
    <message>
        <source>Quiet words, units and dates look like this.</source>
        <translation>Leise Worte, Maße und Daten sehen so aus.</translation>
    </message>
    <message>
        <source>dark for training, light at the desk</source>
        <translation>dunkel beim Training, hell am Schreibtisch</translation>
    </message>
    <message>
        <source>as the computer is set</source>
        <translation>wie der Computer</translation>
    </message>
    <message>
        <source>light everywhere</source>
        <translation>überall hell</translation>
    </message>
    <message>
        <source>dark everywhere</source>
        <translation>überall dunkel</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>the line moves</source>
        <translation>die Linie läuft</translation>
    </message>
    <message>
        <source>the line stands, a marker moves</source>
        <translation>die Linie steht, ein Zeiger läuft</translation>
    </message>
    <message>
        <source>as the language is read</source>
        <translation>wie die Sprache</translation>
    </message>
    <message>
        <source>from left to right</source>
        <translation>von links nach rechts</translation>
    </message>
    <message>
        <source>from right to left</source>
        <translation>von rechts nach links</translation>
    </message>
    <message>
        <source>{n} %</source>
        <translation>{n} %</translation>
    </message>
    <message>
        <source>{metres} m</source>
        <translation>{metres} m</translation>
    </message>
    <message>
        <source>Where the computer does not say how it is set, colours go by place, contrast is normal, motion full.</source>
        <translation>Wo der Computer nichts dazu sagt, gehen die Farben nach dem Ort, Kontrast ist normal, Bewegung voll.</translation>
    </message>
    <message>
        <source>This screen is {width} × {height} mm.</source>
        <translation>Dieser Bildschirm misst {width} × {height} mm.</translation>
    </message>
    <message>
        <source>From {metres} m the count is {height} mm high: {angle} arc minutes.</source>
        <translation>Aus {metres} m ist die Zahl {height} mm hoch: {angle} Bogenminuten.</translation>
    </message>
    <message>
        <source>From {metres} m the count is {height} mm high: {angle} arc minutes, fewer than {least}. Come closer, or use a larger screen.</source>
        <translation>Aus {metres} m ist die Zahl {height} mm hoch: {angle} Bogenminuten, weniger als {least}. Komm näher oder nimm einen größeren Bildschirm.</translation>
    </message>
    <message>
        <source>Played by</source>
        <translation>Gespielt von</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>What is said</source>
        <translation>Was gesagt wird</translation>
    </message>
    <message>
        <source>Loudness of tones</source>
        <translation>Lautstärke der Töne</translation>
    </message>
    <message>
        <source>Loudness of the voice</source>
        <translation>Lautstärke der Stimme</translation>
    </message>
    <message>
        <source>Mute</source>
        <translation>Stumm</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal suchen</translation>
    </message>
    <message>
        <source>looking…</source>
        <translation>suche…</translation>
    </message>
    <message>
        <source>{n} found</source>
        <translation>{n} gefunden</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keiner gefunden</translation>
    </message>
    <message>
        <source>Language of what is said</source>
        <translation>Gesprochene Sprache</translation>
    </message>
    <message>
        <source>No sound at all</source>
        <translation>Gar kein Ton</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Listen: left, then right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Played through {speaker}. Nothing heard? See Sound on the first page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the test</source>
        <translation>Probe beenden</translation>
    </message>
    <message>
        <source>Test the sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Getting ready…</source>
        <translation>Wird vorbereitet…</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>What may be chosen of the sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rep on the left, then one on the right: lower, hold, lift. Played as chosen here.</source>
        <translation>Eine Wiederholung links, dann eine rechts: senken, halten, heben. Gespielt wie hier gewählt.</translation>
    </message>
    <message>
        <source>Hear it</source>
        <translation>Anhören</translation>
    </message>
    <message>
        <source>Set sound and picture together…</source>
        <translation>Ton und Bild abgleichen…</translation>
    </message>
    <message>
        <source>Muted: nothing is heard of it.</source>
        <translation>Stumm: Davon ist nichts zu hören.</translation>
    </message>
    <message>
        <source>Plays through {speaker}.</source>
        <translation>Spielt über {speaker}.</translation>
    </message>
    <message>
        <source>whatever plays best here</source>
        <translation>was hier am besten spielt</translation>
    </message>
    <message>
        <source>simpleaudio: the system&apos;s own output</source>
        <translation>simpleaudio: der Ausgang des Systems</translation>
    </message>
    <message>
        <source>miniaudio: an output of your choice</source>
        <translation>miniaudio: ein Ausgang deiner Wahl</translation>
    </message>
    <message>
        <source>nothing: no sound is made</source>
        <translation>nichts: kein Ton</translation>
    </message>
    <message>
        <source>everything: phases, halfway, coaching too</source>
        <translation>alles: Phasen, Hälfte, auch Hinweise</translation>
    </message>
    <message>
        <source>counts, sides, exercises and time left</source>
        <translation>Zählen, Seiten, Übungen, Restzeit</translation>
    </message>
    <message>
        <source>nothing: tones alone lead</source>
        <translation>nichts: nur Töne führen</translation>
    </message>
    <message>
        <source>the system&apos;s default</source>
        <translation>der des Systems</translation>
    </message>
    <message>
        <source>{output} (not there now)</source>
        <translation>{output} (jetzt nicht da)</translation>
    </message>
    <message>
        <source>speaker</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>cues</source>
        <translation>Ansagen</translation>
    </message>
    <message>
        <source>language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Until the program is closed, the command that opened it decides: {words}.</source>
        <translation>Bis das Programm geschlossen wird, gilt der Befehl, der es geöffnet hat: {words}.</translation>
    </message>
    <message>
        <source>The sound of {speaker} is taken to come {ms} ms late, and the picture waits for it.</source>
        <translation>Der Ton von {speaker} gilt als {ms} ms verspätet, und das Bild wartet auf ihn.</translation>
    </message>
    <message numerus="yes">
        <source>{plan}, {athlete}: cut short after %n rep(s). All of it is kept.</source>
        <translation>
            <numerusform>{plan}, {athlete}: nach %n Wiederholung unterbrochen. Alles ist aufgehoben.</numerusform>
            <numerusform>{plan}, {athlete}: nach %n Wiederholungen unterbrochen. Alles ist aufgehoben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stage {n} of {m}: {name}</source>
        <translation>Stufe {n} von {m}: {name}</translation>
    </message>
    <message>
        <source>Locked until what is before them is done or left out: {names}</source>
        <translation>Gesperrt, bis das davor getan oder ausgelassen ist: {names}</translation>
    </message>
    <message>
        <source>Who is here</source>
        <translation>Wer da ist</translation>
    </message>
    <message>
        <source>Paused: everybody stays where they are</source>
        <translation>Angehalten: Alle bleiben, wo sie sind</translation>
    </message>
    <message>
        <source>The session is over. Tell your coach how hard it was, and what hurt.</source>
        <translation>Die Einheit ist vorbei. Sag deinem Coach, wie anstrengend sie war und was wehtat.</translation>
    </message>
    <message>
        <source>Gym screen</source>
        <translation>Hallenbild</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin, pause, go on  (Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>A note on {name}, Enter keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noted of {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a name, Enter: here or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monitor of the gym screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One rep for all  (Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out  (K)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back  (←)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On  (→)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Softer  (-)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Louder  (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound off or on  (V)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop  (S)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gym screen  (F9)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} rest</source>
        <translation>{names}: Pause</translation>
    </message>
    <message>
        <source>{names} rest, then go {where}</source>
        <translation>{names}: Pause, dann {where}</translation>
    </message>
    <message>
        <source>second side</source>
        <translation>zweite Seite</translation>
    </message>
    <message>
        <source>first side</source>
        <translation>erste Seite</translation>
    </message>
    <message>
        <source>{exercise}, {side}</source>
        <translation>{exercise}, {side}</translation>
    </message>
    <message>
        <source>Next: {bout}</source>
        <translation>Als Nächstes: {bout}</translation>
    </message>
    <message>
        <source>Again: {bout}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+15 s  (T)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A longer rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it again  (A)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do the last bout again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin now  (N)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the lead-in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back  (Backspace)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last mark or answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause  (Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the rest stand still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time left in this gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {n} of {m}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} min left, own pace aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than a minute left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} min left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last bout of the session</source>
        <translation>letzter Durchgang der Einheit</translation>
    </message>
    <message>
        <source>next: {bout}, after {seconds} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, set {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, set {n}, {side}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on with the rest of {seconds} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on with rep {n} of {m}, after {seconds} s to get ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on with {n} of {m} counted, after {seconds} s to get ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on with {n} of {m} counted, {side}, after {seconds} s to get ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes on with rep {n} of {m}, {side}, after {seconds} s to get ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then wave {letter}, after {gap} s</source>
        <translation>Dann Welle {letter}, nach {gap} s</translation>
    </message>
    <message>
        <source>second side, {n}</source>
        <translation>zweite Seite, {n}</translation>
    </message>
    <message>
        <source>{exercise}, {n}</source>
        <translation>{exercise}, {n}</translation>
    </message>
    <message>
        <source>Then {bout}, after {gap} s</source>
        <translation>Dann {bout}, nach {gap} s</translation>
    </message>
    <message>
        <source>Week {n}, {span}</source>
        <translation>Woche {n}, {span}</translation>
    </message>
    <message>
        <source>off</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>% with 95 % interval</source>
        <translation>% mit 95-%-Intervall</translation>
    </message>
    <message>
        <source>No session with reps that are known ended in this time.</source>
        <translation>In dieser Zeit endete keine Einheit mit bekannten Wiederholungen.</translation>
    </message>
    <message>
        <source>In this time no rep was led to a tempo that can be judged.</source>
        <translation>In dieser Zeit wurde keine Wiederholung in einem Tempo geführt, das sich beurteilen lässt.</translation>
    </message>
    <message>
        <source>No session was planned for a day of this time. Plan sessions, and what was missed can be counted.</source>
        <translation>Für diese Zeit war keine Einheit geplant. Plane Einheiten, dann lässt sich zählen, was fehlte.</translation>
    </message>
    <message>
        <source>reps beyond: {n}</source>
        <translation>darüber: {n}</translation>
    </message>
    <message>
        <source>Reps done of prescribed</source>
        <translation>Wiederholungen von vorgeschriebenen</translation>
    </message>
    <message>
        <source>Tempo kept</source>
        <translation>Tempo gehalten</translation>
    </message>
    <message>
        <source>excused: {n}</source>
        <translation>entschuldigt: {n}</translation>
    </message>
    <message>
        <source>Sessions done of due</source>
        <translation>Einheiten von fälligen</translation>
    </message>
    <message>
        <source>Chart: {heading}</source>
        <translation>Diagramm: {heading}</translation>
    </message>
    <message>
        <source>No session in this time has both an effort and a length.</source>
        <translation>Keine Einheit dieser Zeit hat Anstrengung und Dauer.</translation>
    </message>
    <message>
        <source>No week of this time is known on every day, so that none has a monotony.</source>
        <translation>Keine Woche dieser Zeit ist an jedem Tag bekannt, daher hat keine eine Monotonie.</translation>
    </message>
    <message>
        <source>{known} AU known, {n} of {of} days are not</source>
        <translation>{known} AU bekannt, {n} von {of} Tagen nicht</translation>
    </message>
    <message>
        <source>RPE × minutes, in AU</source>
        <translation>RPE × Minuten, in AU</translation>
    </message>
    <message>
        <source>RPE × minutes, in AU · grey: not every day is known</source>
        <translation>RPE × Minuten, in AU · grau: nicht jeder Tag ist bekannt</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>Chart: session load by day</source>
        <translation>Diagramm: Belastung je Tag</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>RPE × minutes, in AU · nought on a rest day</source>
        <translation>RPE × Minuten, in AU · null am Ruhetag</translation>
    </message>
    <message>
        <source>Session load by day</source>
        <translation>Belastung je Tag</translation>
    </message>
    <message>
        <source>Known part of it</source>
        <translation>Bekannter Teil</translation>
    </message>
    <message>
        <source>Chart: session load</source>
        <translation>Diagramm: Belastung</translation>
    </message>
    <message>
        <source>Session load</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>Monotony</source>
        <translation>Monotonie</translation>
    </message>
    <message>
        <source>Strain</source>
        <translation>Beanspruchung</translation>
    </message>
    <message>
        <source>monotony {value}</source>
        <translation>Monotonie {value}</translation>
    </message>
    <message>
        <source>strain {value}</source>
        <translation>Beanspruchung {value}</translation>
    </message>
    <message>
        <source>Chart: monotony and strain by week</source>
        <translation>Diagramm: Monotonie und Beanspruchung je Woche</translation>
    </message>
    <message>
        <source>monotony above, without a unit · strain below, in AU</source>
        <translation>oben Monotonie, ohne Einheit · unten Beanspruchung, in AU</translation>
    </message>
    <message>
        <source>Monotony and strain, by week</source>
        <translation>Monotonie und Beanspruchung je Woche</translation>
    </message>
    <message>
        <source>sessions: {n}</source>
        <translation>Einheiten: {n}</translation>
    </message>
    <message>
        <source>rest day</source>
        <translation>Ruhetag</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>No test was entered in this time. Enter one, and its course is drawn here.</source>
        <translation>In dieser Zeit wurde kein Test eingetragen. Trage einen ein, und sein Verlauf erscheint hier.</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>grey: a change within the error of the test</source>
        <translation>grau: eine Änderung innerhalb des Testfehlers</translation>
    </message>
    <message>
        <source>the error of this test is not known</source>
        <translation>der Fehler dieses Tests ist nicht bekannt</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Test results</source>
        <translation>Testergebnisse</translation>
    </message>
    <message>
        <source>Chart: test results</source>
        <translation>Diagramm: Testergebnisse</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>No session in this time.</source>
        <translation>Keine Einheit in dieser Zeit.</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>Chart: effort and pain by session</source>
        <translation>Diagramm: Anstrengung und Schmerz je Einheit</translation>
    </message>
    <message>
        <source>Chart: effort by session</source>
        <translation>Diagramm: Anstrengung je Einheit</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>0 to 10 · circles: in the session, triangles: the morning after</source>
        <translation>0 bis 10 · Kreise: in der Einheit, Dreiecke: am Morgen danach</translation>
    </message>
    <message>
        <source>0 to 10</source>
        <translation>0 bis 10</translation>
    </message>
    <message>
        <source>Effort and pain by session</source>
        <translation>Anstrengung und Schmerz je Einheit</translation>
    </message>
    <message>
        <source>Charts, calendar, notes and runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort by session</source>
        <translation>Anstrengung je Einheit</translation>
    </message>
    <message>
        <source>Exercise compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain in the session</source>
        <translation>Schmerz in der Einheit</translation>
    </message>
    <message>
        <source>Pain on the next morning</source>
        <translation>Schmerz am nächsten Morgen</translation>
    </message>
    <message>
        <source>RPE not rated</source>
        <translation>RPE nicht angegeben</translation>
    </message>
    <message>
        <source>RPE {n}</source>
        <translation>RPE {n}</translation>
    </message>
    <message>
        <source>pain unknown</source>
        <translation>Schmerz unbekannt</translation>
    </message>
    <message>
        <source>pain {n}</source>
        <translation>Schmerz {n}</translation>
    </message>
    <message>
        <source>next morning {pain}</source>
        <translation>nächster Morgen {pain}</translation>
    </message>
    <message>
        <source>next morning not answered</source>
        <translation>nächster Morgen nicht beantwortet</translation>
    </message>
    <message>
        <source>next morning not asked</source>
        <translation>nächster Morgen nicht gefragt</translation>
    </message>
    <message>
        <source>No exercise was done on one side at a time in this time.</source>
        <translation>In dieser Zeit wurde keine Übung einseitig gemacht.</translation>
    </message>
    <message>
        <source>Chart: left against right</source>
        <translation>Diagramm: links gegen rechts</translation>
    </message>
    <message>
        <source>left {value}</source>
        <translation>links {value}</translation>
    </message>
    <message>
        <source>right {value}</source>
        <translation>rechts {value}</translation>
    </message>
    <message>
        <source>Left against right</source>
        <translation>Links gegen rechts</translation>
    </message>
    <message>
        <source>landings stuck in a session</source>
        <translation>gestandene Landungen je Einheit</translation>
    </message>
    <message>
        <source>nominal seconds under tension in a session</source>
        <translation>nominelle Sekunden unter Spannung je Einheit</translation>
    </message>
    <message>
        <source>reps done in a session</source>
        <translation>Wiederholungen je Einheit</translation>
    </message>
    <message>
        <source>No landing, jump or rep to a tempo is known of in this time.</source>
        <translation>Aus dieser Zeit ist keine Landung, kein Sprung und keine Wiederholung im Tempo bekannt.</translation>
    </message>
    <message>
        <source>Chart: contacts and time under tension</source>
        <translation>Diagramm: Kontakte und Zeit unter Spannung</translation>
    </message>
    <message>
        <source>{n} contacts</source>
        <translation>{n} Kontakte</translation>
    </message>
    <message>
        <source>{n} under tension</source>
        <translation>{n} unter Spannung</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>Time under tension</source>
        <translation>Zeit unter Spannung</translation>
    </message>
    <message>
        <source>foot or hand contacts above · nominal minutes under tension below</source>
        <translation>oben Fuß- oder Handkontakte · unten nominelle Minuten unter Spannung</translation>
    </message>
    <message>
        <source>Contacts and time under tension</source>
        <translation>Kontakte und Zeit unter Spannung</translation>
    </message>
    <message>
        <source>Consent: unknown</source>
        <translation>Einwilligung: unbekannt</translation>
    </message>
    <message>
        <source>Consent since {day}, to what is not said</source>
        <translation>Einwilligung seit {day}, wozu ist nicht gesagt</translation>
    </message>
    <message>
        <source>Consent since {day}: {scope}</source>
        <translation>Einwilligung seit {day}: {scope}</translation>
    </message>
    <message>
        <source>Reps done of prescribed, by week</source>
        <translation>Wiederholungen von vorgeschriebenen, je Woche</translation>
    </message>
    <message>
        <source>line: 95 % interval, as if reps were independent</source>
        <translation>Linie: 95-%-Intervall, als wären Wiederholungen unabhängig</translation>
    </message>
    <message>
        <source>RPE and load, by session</source>
        <translation>RPE und Belastung je Einheit</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Correct…</source>
        <translation>Berichtigen…</translation>
    </message>
    <message>
        <source>load in AU = RPE × minutes</source>
        <translation>Belastung in AU = RPE × Minuten</translation>
    </message>
    <message numerus="yes">
        <source>%n session(s) without a load</source>
        <translation>
            <numerusform>%n Einheit ohne Belastung</numerusform>
            <numerusform>%n Einheiten ohne Belastung</numerusform>
        </translation>
    </message>
    <message>
        <source>drag for earlier ones</source>
        <translation>ziehen zeigt frühere</translation>
    </message>
    <message>
        <source>Review is behind a passphrase</source>
        <translation>Die Rückschau steht hinter einem Passwort</translation>
    </message>
    <message>
        <source>That is not the passphrase.</source>
        <translation>Das ist nicht das Passwort.</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>Open Review</source>
        <translation>Rückschau öffnen</translation>
    </message>
    <message>
        <source>{value} of 10</source>
        <translation>{value} von 10</translation>
    </message>
    <message>
        <source>{value} (4 to 28)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d. MMM yyyy</translation>
    </message>
    <message>
        <source>MMM yyyy</source>
        <translation>MMM yyyy</translation>
    </message>
    <message>
        <source>MMM ’yy</source>
        <translation>MMM ’yy</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>By ISO 8601, from Monday</source>
        <translation>Nach ISO 8601, ab Montag</translation>
    </message>
    <message>
        <source>Sessions that ended</source>
        <translation>Beendete Einheiten</translation>
    </message>
    <message>
        <source>Reps met</source>
        <translation>Erfüllt</translation>
    </message>
    <message>
        <source>Prescribed</source>
        <translation>Vorgeschrieben</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>95-%-Intervall</translation>
    </message>
    <message>
        <source>Wilson, as if reps were independent</source>
        <translation>Wilson, als wären Wiederholungen unabhängig</translation>
    </message>
    <message>
        <source>Beyond</source>
        <translation>Darüber</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Tag und Zeit</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>RPE</source>
        <translation>RPE</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Load, AU</source>
        <translation>Belastung, AU</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>ersetzt</translation>
    </message>
    <message>
        <source>disagrees</source>
        <translation>widerspricht</translation>
    </message>
    <message>
        <source>{what}: {value} ({who}) holds, and {others} was said elsewhere. Correct it once more to settle it.</source>
        <translation>{what}: {value} ({who}) gilt, und anderswo steht {others}. Berichtige es noch einmal, um es zu klären.</translation>
    </message>
    <message>
        <source>No note of this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Chart of session RPE and session load, by session</source>
        <translation>Diagramm: RPE und Belastung je Einheit</translation>
    </message>
    <message>
        <source>* corrected afterwards</source>
        <translation>* nachträglich berichtigt</translation>
    </message>
    <message>
        <source>{figure}, corrected</source>
        <translation>{figure}, berichtigt</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Rückschau</translation>
    </message>
    <message>
        <source>All athletes</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Reading the sessions …</source>
        <translation>Die Einheiten werden gelesen …</translation>
    </message>
    <message>
        <source>No session yet. One appears here as soon as an athlete has been led through a plan.</source>
        <translation>Noch keine Einheit. Sobald jemand durch einen Plan geführt wurde, erscheint sie hier.</translation>
    </message>
    <message>
        <source>Athlete shown</source>
        <translation>Gezeigte Person</translation>
    </message>
    <message>
        <source>presentation: pain, notes and the names of others are hidden (F8)</source>
        <translation>Vorführung: Schmerz, Notizen und andere Namen sind verborgen (F8)</translation>
    </message>
    <message>
        <source>Athlete {n}</source>
        <translation>Person {n}</translation>
    </message>
    <message>
        <source>By the clock of the place where the session was done</source>
        <translation>Nach der Uhr des Ortes, an dem die Einheit war</translation>
    </message>
    <message>
        <source>Everybody does the same at the same time, each with their own reps and load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teams work for a while at each station, then all move on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One half works while the other rests and spots; then they swap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%n people in the roster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans (*.toml)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work at a station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change between stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A group session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See who is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>Bout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set, side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned above, done below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each rep as a profile over time; a cross is a rep that was missed, a square a fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done, of those planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{load} kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps done up to those prescribed, bout by bout, of all those prescribed</source>
        <translation>Wiederholungen höchstens bis zu den vorgeschriebenen, Durchgang für Durchgang, von allen vorgeschriebenen</translation>
    </message>
    <message>
        <source>Rating of perceived exertion of the whole session, 0 to 10</source>
        <translation>Empfundene Anstrengung der ganzen Einheit, 0 bis 10</translation>
    </message>
    <message>
        <source>From beginning to end, rests included</source>
        <translation>Von Anfang bis Ende, mit Pausen</translation>
    </message>
    <message>
        <source>Session RPE times minutes, in arbitrary units</source>
        <translation>RPE der Einheit mal Minuten, in willkürlichen Einheiten</translation>
    </message>
    <message>
        <source>Highest pain stated in the session, 0 to 10</source>
        <translation>Höchster angegebener Schmerz der Einheit, 0 bis 10</translation>
    </message>
    <message>
        <source>Data</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Invented sessions belong to the demonstration; imported ones are past training from a list</source>
        <translation>Erfundene Einheiten gehören zur Vorführung; eingelesene sind früheres Training aus einer Liste</translation>
    </message>
    <message>
        <source>imported</source>
        <translation>eingelesen</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>aufgezeichnet</translation>
    </message>
    <message>
        <source>Chart of reps met of those prescribed, by week</source>
        <translation>Diagramm: erfüllte von vorgeschriebenen Wiederholungen je Woche</translation>
    </message>
    <message>
        <source>{name}, choices</source>
        <translation>{name}, Auswahl</translation>
    </message>
    <message>
        <source>Profile of the rep</source>
        <translation>Verlauf der Wiederholung</translation>
    </message>
    <message>
        <source>{name}, titles</source>
        <translation>{name}, Titel</translation>
    </message>
    <message>
        <source>softer  (−)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>louder  (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys  (F1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound on  (V)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound off  (V)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound {n} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more rep  (Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done  (M)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fault  (F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this bout  (E)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort 0-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain 0-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort and pain of everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number answers and goes on; 1 and 0 quickly for 10. Enter or ↓ passes over: it stays unknown. Backspace goes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hard was it, and what hurt?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People of this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who needs a look first, by stated rules; nobody is advanced by them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest pain stated in the last session, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions done of those due, this week · last week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps done of those prescribed, this week · last week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps that kept their tempo, this week · last week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, 8 weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RPE × minutes a week, the last bar is this week; grey where not every day is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers that can still be given: effort of a session, pain on the morning after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last sum of four answers, 4 (well) to 28 (badly), and how far from their own 28 days in SD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{total} ({z} SD)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the figure is what it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after {bout}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between two bouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no medical device: it does not diagnose, clear or predict injury.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain above 5 of 10 or any red-flag sign ends the exercise and asks for a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your practitioner decides; local practice and law come first. Nothing advances by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I am ready  (Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {athlete}  ·  {n} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {athlete}  ·  {n} min, and own-pace work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercises of this session, and how to set them up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voice: {n} of {m} phrases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n}  {stage}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets} × {dose}, each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets} × {dose}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{plan}, with {n} people: cut short. All that was done is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program keeps no record, so a group cannot be led.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop one file at a time here: a plan, which ends in .toml.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a plan can be dropped here: a file on this computer that ends in .toml.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter or Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin what is most likely, as the button says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look for a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>↑ and ↓</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose who trains; in the plans, choose a plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go on to the plans, the answers owed, the other pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open a plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give the first answer that is owed; then 0-9, Enter keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the screens look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F11</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it up again  (Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{about}. Answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask me later  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not ask again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does it hurt?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a plan…  (Ctrl+O)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers that are owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{plan}, {athlete}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a plan first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin  (Enter or Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pacewright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who trains, and which session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is training?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which session?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no name is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{name}”, a new name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everybody who may train here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned for today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned for today, and done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Just opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Led last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Led lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the demo club</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of this plan is not known here. Open it once, and it is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{plan}, {about}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{why}, {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{why} · {figures}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much does it hurt this morning?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n week(s) ago</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exercise(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min, and work at your own pace</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>This plan cannot be led:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{athlete}: {plan}, {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n plan(s) led lately cannot be found any more and left the list.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>That answer could not be kept. Please give it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fri</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>excused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing planned, nothing done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● done · ✕ missed · – excused · ○ planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar of sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time looked back on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last 4 weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last 12 weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against own days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {value}, why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>← Squad  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>← Athlete  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>← Sessions  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned {n} reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in {s} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rep {n} missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rep {n}: {faults}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ended early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: pain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: another reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unanswered: stays unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very, very easy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moderate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somewhat hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maximal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{question}  ·  press a number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
