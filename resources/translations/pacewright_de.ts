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
        <translation>↑ und ↓ in der Pause</translation>
    </message>
    <message>
        <source>one rep more or fewer was done</source>
        <translation>eine Wiederholung mehr oder weniger wurde gemacht</translation>
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
        <translation>Pause</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Unterbrochen</translation>
    </message>
    <message>
        <source>The computer slept or was busy, so the session waited for you.</source>
        <translation>Der Computer schlief oder war beschäftigt, darum hat die Einheit auf dich gewartet.</translation>
    </message>
    <message>
        <source>1  pain</source>
        <translation>1  Schmerz</translation>
    </message>
    <message>
        <source>2  equipment</source>
        <translation>2  Gerät</translation>
    </message>
    <message>
        <source>3  time</source>
        <translation>3  Zeit</translation>
    </message>
    <message>
        <source>4  something else</source>
        <translation>4  etwas anderes</translation>
    </message>
    <message>
        <source>What happened, for your practitioner</source>
        <translation>Was war, für deine Betreuung</translation>
    </message>
    <message>
        <source>Pain {pain}: {name} ends here. {caution}</source>
        <translation>Schmerz {pain}: {name} endet hier. {caution}</translation>
    </message>
    <message>
        <source>Stop the session here? Everything done so far is kept.</source>
        <translation>Die Einheit hier abbrechen? Alles bisher Getane bleibt.</translation>
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
        <translation>Ja, hier aufhören  (S)</translation>
    </message>
    <message>
        <source>keep it</source>
        <translation>behalten</translation>
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
        <translation>Wie man sie abgleicht</translation>
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
        <translation>Gerät</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>here</source>
        <translation>da</translation>
    </message>
    <message>
        <source>rests</source>
        <translation>ruht</translation>
    </message>
    <message>
        <source>rep {n}: {fault}</source>
        <translation>Wdh. {n}: {fault}</translation>
    </message>
    <message>
        <source>rep {n}: not done</source>
        <translation>Wdh. {n}: nicht gemacht</translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation>Nicht begonnen</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Vorbei</translation>
    </message>
    <message>
        <source>Rest, {time} left</source>
        <translation>Pause, noch {time}</translation>
    </message>
    <message>
        <source>sits out: why?</source>
        <translation>setzt aus: warum?</translation>
    </message>
    <message>
        <source>leaves for good: L once more</source>
        <translation>geht ganz: noch einmal L</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Stop for everybody?</source>
        <translation>Für alle beenden?</translation>
    </message>
    <message>
        <source>Leave, and stop for everybody?</source>
        <translation>Verlassen und für alle beenden?</translation>
    </message>
    <message>
        <source>Leave out: why?</source>
        <translation>Auslassen: warum?</translation>
    </message>
    <message>
        <source>is not here</source>
        <translation>ist nicht da</translation>
    </message>
    <message>
        <source>this rep is not done</source>
        <translation>diese Wiederholung ist nicht gemacht</translation>
    </message>
    <message>
        <source>no rep is under way</source>
        <translation>keine Wiederholung läuft</translation>
    </message>
    <message>
        <source>marked already, or nothing to mark</source>
        <translation>schon vermerkt, oder nichts zu vermerken</translation>
    </message>
    <message>
        <source>is here</source>
        <translation>ist da</translation>
    </message>
    <message>
        <source>joins with the next bout</source>
        <translation>kommt mit dem nächsten Durchgang dazu</translation>
    </message>
    <message>
        <source>cannot join any more</source>
        <translation>kann nicht mehr dazukommen</translation>
    </message>
    <message>
        <source>is here already</source>
        <translation>ist schon da</translation>
    </message>
    <message>
        <source>{counted}, came late</source>
        <translation>{counted}, kam später</translation>
    </message>
    <message>
        <source>{counted}, cut short</source>
        <translation>{counted}, unterbrochen</translation>
    </message>
    <message>
        <source>{counted}, partly</source>
        <translation>{counted}, zum Teil</translation>
    </message>
    <message>
        <source>{n} of {m}: {bout}</source>
        <translation>{n} von {m}: {bout}</translation>
    </message>
    <message>
        <source>Enter leaves, and ends the session for everybody. Any other key goes on.</source>
        <translation>Enter verlässt und beendet die Einheit für alle. Jede andere Taste macht weiter.</translation>
    </message>
    <message>
        <source>L once more: {name} leaves for good. Any other key goes on.</source>
        <translation>Noch einmal L: {name} geht ganz. Jede andere Taste macht weiter.</translation>
    </message>
    <message>
        <source>S once more ends the session for everybody. Any other key goes on.</source>
        <translation>Noch einmal S beendet die Einheit für alle. Jede andere Taste macht weiter.</translation>
    </message>
    <message>
        <source>Leave out this exercise for all. Why?   {reasons}</source>
        <translation>Diese Übung für alle auslassen. Warum?   {reasons}</translation>
    </message>
    <message>
        <source>{name} sits out this exercise. Why?   {reasons}</source>
        <translation>{name} setzt bei dieser Übung aus. Warum?   {reasons}</translation>
    </message>
    <message>
        <source>Somebody&apos;s key, then Enter: here or not.   / finds a name.   Space begins.</source>
        <translation>Taste einer Person, dann Enter: da oder nicht.   / sucht einen Namen.   Leertaste beginnt.</translation>
    </message>
    <message>
        <source>Somebody&apos;s key, then: F a fault, M a missed rep, O sits out, L leaves, Y a note.   Space pauses.</source>
        <translation>Taste einer Person, dann: F Fehler, M nicht gemacht, O setzt aus, L geht, Y Notiz.   Leertaste hält an.</translation>
    </message>
    <message>
        <source>{name}:   Enter here or not   Y note</source>
        <translation>{name}:   Enter da oder nicht   Y Notiz</translation>
    </message>
    <message>
        <source>{name}:   {faults}   F fault   M missed   O sits out   L leaves   Enter is here   Y note</source>
        <translation>{name}:   {faults}   F Fehler   M nicht gemacht   O setzt aus   L geht   Enter ist da   Y Notiz</translation>
    </message>
    <message>
        <source>{n} of {m} here</source>
        <translation>{n} von {m} da</translation>
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
        <translation>Diese Wiederholung gilt als nicht gemacht</translation>
    </message>
    <message>
        <source>Marked: {faults}</source>
        <translation>Vermerkt: {faults}</translation>
    </message>
    <message>
        <source>Press Enter for each rep</source>
        <translation>Enter für jede Wiederholung</translation>
    </message>
    <message>
        <source>Reps counted</source>
        <translation>Gezählte Wiederholungen</translation>
    </message>
    <message>
        <source>{n} of {m}</source>
        <translation>{n} von {m}</translation>
    </message>
    <message>
        <source>enough from here</source>
        <translation>ab hier genug</translation>
    </message>
    <message>
        <source>contacts: {done} of {asked}</source>
        <translation>Kontakte: {done} von {asked}</translation>
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
        <translation>Die Einheit wird gelesen …</translation>
    </message>
    <message>
        <source>Nothing is known of the bouts of this session: only its day, its length and its effort were entered.</source>
        <translation>Von den Durchgängen dieser Einheit ist nichts bekannt: Nur Tag, Dauer und Anstrengung wurden eingetragen.</translation>
    </message>
    <message>
        <source>Why? (W)</source>
        <translation>Warum? (W)</translation>
    </message>
    <message>
        <source>Bouts and reps</source>
        <translation>Durchgänge und Wiederholungen</translation>
    </message>
    <message>
        <source>each strip is {s} s long from edge to edge; ✕ missed, ■ fault</source>
        <translation>jeder Streifen ist von Rand zu Rand {s} s lang; ✕ nicht gemacht, ■ Fehler</translation>
    </message>
    <message>
        <source>abandoned</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>{n} min</source>
        <translation>{n} min</translation>
    </message>
    <message>
        <source>load {n} AU</source>
        <translation>Belastung {n} AU</translation>
    </message>
    <message>
        <source>load unknown</source>
        <translation>Belastung unbekannt</translation>
    </message>
    <message>
        <source>pauses: {n}, {s} s</source>
        <translation>Unterbrechungen: {n}, {s} s</translation>
    </message>
    <message>
        <source>The athlete: {note}</source>
        <translation>Die Person: {note}</translation>
    </message>
    <message>
        <source>{who}: {note}</source>
        <translation>{who}: {note}</translation>
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
        <source>Pain by day</source>
        <translation>Schmerz nach Tagen</translation>
    </message>
    <message>
        <source>Nobody was asked about pain in this time.</source>
        <translation>In dieser Zeit wurde niemand nach Schmerz gefragt.</translation>
    </message>
    <message>
        <source>settled by the next morning</source>
        <translation>bis zum nächsten Morgen abgeklungen</translation>
    </message>
    <message>
        <source>not settled by the next morning</source>
        <translation>bis zum nächsten Morgen nicht abgeklungen</translation>
    </message>
    <message>
        <source>next morning not known</source>
        <translation>nächster Morgen nicht bekannt</translation>
    </message>
    <message>
        <source>not answered</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>no session</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <source>In the session</source>
        <translation>In der Einheit</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Abgeklungen</translation>
    </message>
    <message>
        <source>Next morning</source>
        <translation>Nächster Morgen</translation>
    </message>
    <message>
        <source>Chart: pain by day</source>
        <translation>Diagramm: Schmerz nach Tagen</translation>
    </message>
    <message>
        <source>0 to 10 · diamonds: before training, circles: in the session, triangles: the morning after</source>
        <translation>0 bis 10 · Rauten: vor dem Training, Kreise: in der Einheit, Dreiecke: am Morgen danach</translation>
    </message>
    <message>
        <source>0–2 low</source>
        <translation>0–2 gering</translation>
    </message>
    <message>
        <source>3–5 take care</source>
        <translation>3–5 Vorsicht</translation>
    </message>
    <message>
        <source>6–10 too high</source>
        <translation>6–10 zu hoch</translation>
    </message>
    <message>
        <source>before {pain}</source>
        <translation>vorher {pain}</translation>
    </message>
    <message>
        <source>in the session {pain}</source>
        <translation>in der Einheit {pain}</translation>
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
        <translation>Kader</translation>
    </message>
    <message>
        <source>Nobody fits these letters. Esc shows everybody again.</source>
        <translation>Zu diesen Buchstaben passt niemand. Esc zeigt wieder alle.</translation>
    </message>
    <message>
        <source>sessions, reps, tempo: this week · last week</source>
        <translation>Einheiten, Wiederholungen, Tempo: diese · letzte Woche</translation>
    </message>
    <message>
        <source>Nobody is like that just now. Choose everybody to see all.</source>
        <translation>Das trifft gerade auf niemanden zu. „Alle“ zeigt wieder alle.</translation>
    </message>
    <message>
        <source>/ to search</source>
        <translation>/ zum Suchen</translation>
    </message>
    <message>
        <source>Search the squad</source>
        <translation>Im Kader suchen</translation>
    </message>
    <message>
        <source>Who is shown</source>
        <translation>Wer gezeigt wird</translation>
    </message>
    <message>
        <source>All sessions</source>
        <translation>Alle Einheiten</translation>
    </message>
    <message>
        <source>Who needs me first</source>
        <translation>Wer mich zuerst braucht</translation>
    </message>
    <message>
        <source>week {n}</source>
        <translation>Woche {n}</translation>
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
        <translation>wer mich zuerst braucht</translation>
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
        <source>The last day lies before the first. Choose a later one.</source>
        <translation>Der letzte Tag liegt vor dem ersten. Wähle einen späteren.</translation>
    </message>
    <message>
        <source>The file holds health data and is not encrypted.</source>
        <translation>Die Datei enthält Gesundheitsdaten und ist nicht verschlüsselt.</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Report: {name}</source>
        <translation>Bericht: {name}</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Report of one to three pages</source>
        <translation>Bericht von ein bis drei Seiten</translation>
    </message>
    <message>
        <source>Sheet for the athlete, one page</source>
        <translation>Blatt für die Person, eine Seite</translation>
    </message>
    <message>
        <source>Open it afterwards</source>
        <translation>Danach öffnen</translation>
    </message>
    <message>
        <source>Save as …</source>
        <translation>Sichern als …</translation>
    </message>
    <message>
        <source>What stands in it</source>
        <translation>Was darin steht</translation>
    </message>
    <message>
        <source>Notes, none unless ticked</source>
        <translation>Notizen, keine ohne Haken</translation>
    </message>
    <message>
        <source>No notes</source>
        <translation>Keine Notizen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
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
        <source>Relax</source>
        <translation>Lösen</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>Stick</source>
        <translation>Stehen</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Your pace</source>
        <translation>Frei</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>It is a curtain, not encryption: whoever may read your files may read the record.</source>
        <translation>Es ist ein Vorhang, keine Verschlüsselung: Wer deine Dateien lesen darf, darf die Aufzeichnung lesen.</translation>
    </message>
    <message numerus="yes">
        <source>{n} rep(s)</source>
        <translation>
            <numerusform>{n} Wiederholung</numerusform>
            <numerusform>{n} Wiederholungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} rep(s) a side</source>
        <translation>
            <numerusform>{n} Wiederholung je Seite</numerusform>
            <numerusform>{n} Wiederholungen je Seite</numerusform>
        </translation>
    </message>
    <message>
        <source>{reps}, {tempo}, {phase} first</source>
        <translation>{reps}, {tempo}, erst {phase}</translation>
    </message>
    <message numerus="yes">
        <source>{n} hold(s) of {length}</source>
        <translation>
            <numerusform>{n} × {length} Halten</numerusform>
            <numerusform>{n} × {length} Halten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} hold(s) a side of {length}</source>
        <translation>
            <numerusform>{n} × {length} Halten je Seite</numerusform>
            <numerusform>{n} × {length} Halten je Seite</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} landing(s), {phase} {length}</source>
        <translation>
            <numerusform>{n} Landung, {phase} {length}</numerusform>
            <numerusform>{n} Landungen, {phase} {length}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} landing(s) a side, {phase} {length}</source>
        <translation>
            <numerusform>{n} Landung je Seite, {phase} {length}</numerusform>
            <numerusform>{n} Landungen je Seite, {phase} {length}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} rep(s), one every {seconds} s</source>
        <translation>
            <numerusform>{n} Wiederholung, eine alle {seconds} s</numerusform>
            <numerusform>{n} Wiederholungen, eine alle {seconds} s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} rep(s) a side, one every {seconds} s</source>
        <translation>
            <numerusform>{n} Wiederholung je Seite, eine alle {seconds} s</numerusform>
            <numerusform>{n} Wiederholungen je Seite, eine alle {seconds} s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{n} rep(s) at your own pace</source>
        <translation>
            <numerusform>{n} Wiederholung im eigenen Tempo</numerusform>
            <numerusform>{n} Wiederholungen im eigenen Tempo</numerusform>
        </translation>
    </message>
    <message>
        <source>{length} of work</source>
        <translation>{length} Arbeit</translation>
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
        <source>Enter a test</source>
        <translation>Test eintragen</translation>
    </message>
    <message>
        <source>Not kept yet: {tests}. Keep it, or close once more to leave it.</source>
        <translation>Noch nicht behalten: {tests}. Behalte es, oder schließe noch einmal, um es zu verwerfen.</translation>
    </message>
    <message>
        <source>Enter a test: {name}</source>
        <translation>Test eintragen: {name}</translation>
    </message>
    <message>
        <source>Search a test</source>
        <translation>Test suchen</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>Tests and their results</source>
        <translation>Tests und ihre Ergebnisse</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Listen: left, then right.</source>
        <translation>Hör zu: links, dann rechts.</translation>
    </message>
    <message>
        <source>Played through {speaker}. Nothing heard? See Sound on the first page.</source>
        <translation>Gespielt über {speaker}. Nichts gehört? Sieh unter Ton auf der ersten Seite nach.</translation>
    </message>
    <message>
        <source>Stop the test</source>
        <translation>Probe beenden</translation>
    </message>
    <message>
        <source>Test the sound</source>
        <translation>Ton prüfen</translation>
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
        <translation>Was am Ton gewählt werden kann</translation>
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
    <message>
        <source>That session cannot be led on: its plan or the athlete&apos;s numbers have changed since. Everything done is kept; lay it down, and begin a new one.</source>
        <translation>Diese Einheit lässt sich nicht weiterführen: Ihr Plan oder die Werte der Person haben sich seither geändert. Alles Getane ist aufgehoben; lege sie ab und beginne eine neue.</translation>
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
        <source>Begin, pause, go on  (Space)</source>
        <translation>Beginnen, anhalten, weiter  (Leertaste)</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>A note on {name}, Enter keeps it</source>
        <translation>Notiz zu {name}, Enter behält sie</translation>
    </message>
    <message>
        <source>Leave  (Esc)</source>
        <translation>Verlassen  (Esc)</translation>
    </message>
    <message>
        <source>their tempo is heard</source>
        <translation>ihr Tempo ist zu hören</translation>
    </message>
    <message>
        <source>their tempo is not heard</source>
        <translation>ihr Tempo ist nicht zu hören</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>notiert</translation>
    </message>
    <message>
        <source>Find a name</source>
        <translation>Namen suchen</translation>
    </message>
    <message>
        <source>Find a name, Enter: here or not</source>
        <translation>Namen suchen, Enter: da oder nicht</translation>
    </message>
    <message>
        <source>Monitor of the gym screen</source>
        <translation>Monitor des Hallenbilds</translation>
    </message>
    <message>
        <source>One rep for all  (Enter)</source>
        <translation>Eine Wiederholung für alle  (Enter)</translation>
    </message>
    <message>
        <source>Leave out  (K)</source>
        <translation>Auslassen  (K)</translation>
    </message>
    <message>
        <source>Back  (←)</source>
        <translation>Zurück  (←)</translation>
    </message>
    <message>
        <source>On  (→)</source>
        <translation>Weiter  (→)</translation>
    </message>
    <message>
        <source>Softer  (-)</source>
        <translation>Leiser  (-)</translation>
    </message>
    <message>
        <source>Louder  (+)</source>
        <translation>Lauter  (+)</translation>
    </message>
    <message>
        <source>Sound off or on  (V)</source>
        <translation>Ton aus oder an  (V)</translation>
    </message>
    <message>
        <source>Stop  (S)</source>
        <translation>Abbrechen  (S)</translation>
    </message>
    <message>
        <source>Gym screen  (F9)</source>
        <translation>Hallenbild  (F9)</translation>
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
        <translation>Noch einmal: {bout}</translation>
    </message>
    <message>
        <source>+15 s  (T)</source>
        <translation>+15 s  (T)</translation>
    </message>
    <message>
        <source>A longer rest</source>
        <translation>Eine längere Pause</translation>
    </message>
    <message>
        <source>Do it again  (A)</source>
        <translation>Noch einmal  (A)</translation>
    </message>
    <message>
        <source>Do the last bout again</source>
        <translation>Den letzten Durchgang noch einmal</translation>
    </message>
    <message>
        <source>Begin now  (N)</source>
        <translation>Jetzt beginnen  (N)</translation>
    </message>
    <message>
        <source>Go to the lead-in</source>
        <translation>Zum Vorlauf</translation>
    </message>
    <message>
        <source>Take back  (Backspace)</source>
        <translation>Zurücknehmen  (Rücktaste)</translation>
    </message>
    <message>
        <source>The last mark or answer</source>
        <translation>Den letzten Vermerk, die letzte Antwort</translation>
    </message>
    <message>
        <source>Pause  (Space)</source>
        <translation>Anhalten  (Leertaste)</translation>
    </message>
    <message>
        <source>Let the rest stand still</source>
        <translation>Die Pause anhalten</translation>
    </message>
    <message>
        <source>Time left in this gap</source>
        <translation>Restzeit dieser Pause</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Change sides</source>
        <translation>Seitenwechsel</translation>
    </message>
    <message>
        <source>Next exercise</source>
        <translation>Nächste Übung</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>left first</source>
        <translation>links zuerst</translation>
    </message>
    <message>
        <source>right first</source>
        <translation>rechts zuerst</translation>
    </message>
    <message>
        <source>{n} to do</source>
        <translation>noch {n}</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>of {n}</source>
        <translation>von {n}</translation>
    </message>
    <message>
        <source>Set {n} of {m}</source>
        <translation>Satz {n} von {m}</translation>
    </message>
    <message>
        <source>{n} min left, own pace aside</source>
        <translation>noch {n} min, ohne eigenes Tempo</translation>
    </message>
    <message>
        <source>less than a minute left</source>
        <translation>weniger als eine Minute</translation>
    </message>
    <message>
        <source>{n} min left</source>
        <translation>noch {n} min</translation>
    </message>
    <message>
        <source>set {n}</source>
        <translation>Satz {n}</translation>
    </message>
    <message>
        <source>last bout of the session</source>
        <translation>letzter Durchgang der Einheit</translation>
    </message>
    <message>
        <source>next: {bout}, after {seconds} s</source>
        <translation>dann: {bout}, nach {seconds} s</translation>
    </message>
    <message>
        <source>{name}, set {n}</source>
        <translation>{name}, Satz {n}</translation>
    </message>
    <message>
        <source>{name}, set {n}, {side}</source>
        <translation>{name}, Satz {n}, {side}</translation>
    </message>
    <message>
        <source>Goes on with the rest of {seconds} s.</source>
        <translation>Weiter mit der Pause von {seconds} s.</translation>
    </message>
    <message>
        <source>Goes on with rep {n} of {m}, after {seconds} s to get ready.</source>
        <translation>Weiter mit Wiederholung {n} von {m}, nach {seconds} s Vorlauf.</translation>
    </message>
    <message>
        <source>Goes on with {n} of {m} counted, after {seconds} s to get ready.</source>
        <translation>Weiter mit {n} von {m} gezählt, nach {seconds} s Vorlauf.</translation>
    </message>
    <message>
        <source>Goes on with {n} of {m} counted, {side}, after {seconds} s to get ready.</source>
        <translation>Weiter mit {n} von {m} gezählt, {side}, nach {seconds} s Vorlauf.</translation>
    </message>
    <message>
        <source>Goes on with rep {n} of {m}, {side}, after {seconds} s to get ready.</source>
        <translation>Weiter mit Wiederholung {n} von {m}, {side}, nach {seconds} s Vorlauf.</translation>
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
        <source>reps met</source>
        <translation>erfüllte Wiederholungen</translation>
    </message>
    <message>
        <source>reps prescribed</source>
        <translation>vorgeschriebene Wiederholungen</translation>
    </message>
    <message>
        <source>extra reps</source>
        <translation>zusätzliche Wiederholungen</translation>
    </message>
    <message>
        <source>reps beyond: {n}</source>
        <translation>darüber: {n}</translation>
    </message>
    <message>
        <source>Reps beyond</source>
        <translation>Wiederholungen darüber</translation>
    </message>
    <message>
        <source>reps that kept the tempo</source>
        <translation>Wiederholungen im Tempo</translation>
    </message>
    <message>
        <source>reps led to a tempo</source>
        <translation>im Tempo geführte Wiederholungen</translation>
    </message>
    <message>
        <source>not due yet</source>
        <translation>noch nicht fällig</translation>
    </message>
    <message>
        <source>Excused</source>
        <translation>Entschuldigt</translation>
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
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>As table</source>
        <translation>Als Tabelle</translation>
    </message>
    <message>
        <source>As chart</source>
        <translation>Als Diagramm</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Save as picture…</source>
        <translation>Als Bild sichern…</translation>
    </message>
    <message>
        <source>The figures are copied.</source>
        <translation>Die Zahlen sind kopiert.</translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation>Gesichert als {path}.</translation>
    </message>
    <message>
        <source>Chart: {heading}</source>
        <translation>Diagramm: {heading}</translation>
    </message>
    <message>
        <source>{heading}, figures</source>
        <translation>{heading}, Zahlen</translation>
    </message>
    <message>
        <source>{heading}, figures pointed at</source>
        <translation>{heading}, gezeigte Zahlen</translation>
    </message>
    <message>
        <source>{heading}: more</source>
        <translation>{heading}: mehr</translation>
    </message>
    <message>
        <source>Load of the month</source>
        <translation>Belastung des Monats</translation>
    </message>
    <message>
        <source>sum of the days of the month</source>
        <translation>Summe der Tage des Monats</translation>
    </message>
    <message>
        <source>A day of this month is unknown.</source>
        <translation>Ein Tag dieses Monats ist unbekannt.</translation>
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
        <source>28 days in a row have to be known before there is a course.</source>
        <translation>Erst wenn 28 Tage hintereinander bekannt sind, gibt es einen Verlauf.</translation>
    </message>
    <message>
        <source>lately</source>
        <translation>zuletzt</translation>
    </message>
    <message>
        <source>usually</source>
        <translation>gewöhnlich</translation>
    </message>
    <message>
        <source>Chart: load lately and usually</source>
        <translation>Diagramm: Belastung zuletzt und gewöhnlich</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>lately {value}</source>
        <translation>zuletzt {value}</translation>
    </message>
    <message>
        <source>usually {value}</source>
        <translation>gewöhnlich {value}</translation>
    </message>
    <message>
        <source>AU a day · means over 7 and 28 days, the latest weighing most</source>
        <translation>AU am Tag · Mittel über 7 und 28 Tage, die letzten wiegen am meisten</translation>
    </message>
    <message>
        <source>Load lately and usually</source>
        <translation>Belastung zuletzt und gewöhnlich</translation>
    </message>
    <message>
        <source>RPE × minutes, in AU · nought on a rest day</source>
        <translation>RPE × Minuten, in AU · null am Ruhetag</translation>
    </message>
    <message>
        <source>days known</source>
        <translation>bekannte Tage</translation>
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
        <source>bars: the error of a result</source>
        <translation>Striche: der Fehler eines Ergebnisses</translation>
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
        <source>Reference side: none</source>
        <translation>Bezugsseite: keine</translation>
    </message>
    <message>
        <source>Reference side: left</source>
        <translation>Bezugsseite: links</translation>
    </message>
    <message>
        <source>Reference side: right</source>
        <translation>Bezugsseite: rechts</translation>
    </message>
    <message>
        <source>Charts, calendar, notes and runs</source>
        <translation>Diagramme, Kalender, Notizen und Läufe</translation>
    </message>
    <message>
        <source>Effort by session</source>
        <translation>Anstrengung je Einheit</translation>
    </message>
    <message>
        <source>Lately and usually</source>
        <translation>Zuletzt und gewöhnlich</translation>
    </message>
    <message>
        <source>Exercise or test compared</source>
        <translation>Verglichene Übung oder verglichener Test</translation>
    </message>
    <message>
        <source>Told apart</source>
        <translation>Aufgeteilt</translation>
    </message>
    <message>
        <source>Test shown</source>
        <translation>Gezeigter Test</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>Nach Tagen</translation>
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
        <source>Nothing is known of this side on that day.</source>
        <translation>Von dieser Seite ist an diesem Tag nichts bekannt.</translation>
    </message>
    <message>
        <source>what this side did on that day, added up; divided by nothing</source>
        <translation>was diese Seite an diesem Tag getan hat, zusammengezählt; durch nichts geteilt</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Linke Seite</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Rechte Seite</translation>
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
        <source>There was no session in this time.</source>
        <translation>In dieser Zeit gab es keine Einheit.</translation>
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
        <source>Signs to weigh</source>
        <translation>Zeichen zum Abwägen</translation>
    </message>
    <message>
        <source>The practitioner decides, pain and technique first: these are signs and no advice.</source>
        <translation>Die Fachperson entscheidet, Schmerz und Technik zuerst: Dies sind Zeichen, kein Rat.</translation>
    </message>
    <message>
        <source>The practitioner decides, technique first: these are signs and no advice.</source>
        <translation>Die Fachperson entscheidet, Technik zuerst: Dies sind Zeichen, kein Rat.</translation>
    </message>
    <message>
        <source>No exercise was done in the last sessions of this time.</source>
        <translation>In den letzten Einheiten dieser Zeit wurde keine Übung gemacht.</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>Kontakte</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Umfang</translation>
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
        <source>known part, kg</source>
        <translation>bekannter Teil, kg</translation>
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
        <translation>Öffnen</translation>
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
        <translation>{value} (4 bis 28)</translation>
    </message>
    <message>
        <source>There are no two weeks after one another in this time.</source>
        <translation>In dieser Zeit liegen keine zwei Wochen hintereinander.</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>below it</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>{what}: {this} after {before} {unit}, {change}</source>
        <translation>{what}: {this} nach {before} {unit}, {change}</translation>
    </message>
    <message>
        <source>{what}: {this} after {before} {unit}, {change} ({percent})</source>
        <translation>{what}: {this} nach {before} {unit}, {change} ({percent})</translation>
    </message>
    <message>
        <source>{what}: {this} after {before} {unit}, {change} ({percent}), above 10 %</source>
        <translation>{what}: {this} nach {before} {unit}, {change} ({percent}), über 10 %</translation>
    </message>
    <message>
        <source>{what}: unknown</source>
        <translation>{what}: unbekannt</translation>
    </message>
    <message>
        <source>AU</source>
        <translation>AU</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>A click or Return says why</source>
        <translation>Ein Klick oder die Eingabetaste sagt, warum</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Zuletzt gemacht</translation>
    </message>
    <message>
        <source>Load, kg</source>
        <translation>Last, kg</translation>
    </message>
    <message>
        <source>Of the last set: as said after it, else as planned</source>
        <translation>Des letzten Satzes: wie danach gesagt, sonst wie geplant</translation>
    </message>
    <message>
        <source>Reps of those asked for</source>
        <translation>Wiederholungen von den verlangten</translation>
    </message>
    <message>
        <source>Each set of the last session, and the reps that were asked for</source>
        <translation>Jeder Satz der letzten Einheit und die verlangten Wiederholungen</translation>
    </message>
    <message>
        <source>Two for two</source>
        <translation>Zwei für zwei</translation>
    </message>
    <message>
        <source>Two reps above the most asked for, in the last set of two sessions running</source>
        <translation>Zwei Wiederholungen über den höchstens verlangten, im letzten Satz zweier Einheiten hintereinander</translation>
    </message>
    <message>
        <source>Top of the range</source>
        <translation>Oberes Ende des Bereichs</translation>
    </message>
    <message>
        <source>Every set of the last session at the most reps asked for, or above</source>
        <translation>Jeder Satz der letzten Einheit bei den höchstens verlangten Wiederholungen oder darüber</translation>
    </message>
    <message>
        <source>2 to 10 %, kg</source>
        <translation>2 bis 10 %, kg</translation>
    </message>
    <message>
        <source>The customary step of a load, once 1 or 2 reps above the target can be done</source>
        <translation>Der übliche Schritt einer Last, sobald 1 oder 2 Wiederholungen über dem Ziel gelingen</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>Week {n}, {span}, after the week before:</source>
        <translation>Woche {n}, {span}, nach der Woche davor:</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>abgeklungen</translation>
    </message>
    <message>
        <source>not settled</source>
        <translation>nicht abgeklungen</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
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
        <source>unnamed fault</source>
        <translation>unbenannter Fehler</translation>
    </message>
    <message>
        <source>as counted</source>
        <translation>wie gezählt</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Tag und Zeit</translation>
    </message>
    <message>
        <source>Session RPE</source>
        <translation>RPE der Einheit</translation>
    </message>
    <message>
        <source>Load in kg</source>
        <translation>Last in kg</translation>
    </message>
    <message>
        <source>done or missed</source>
        <translation>gemacht oder nicht</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>The session</source>
        <translation>Die Einheit</translation>
    </message>
    <message>
        <source>Rep {n}</source>
        <translation>Wdh. {n}</translation>
    </message>
    <message>
        <source>Rep {n}, {side}</source>
        <translation>Wdh. {n}, {side}</translation>
    </message>
    <message>
        <source>Bout {n}</source>
        <translation>Durchgang {n}</translation>
    </message>
    <message>
        <source>missed</source>
        <comment>a rep</comment>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <source>done</source>
        <comment>a rep</comment>
        <translation>gemacht</translation>
    </message>
    <message>
        <source>none</source>
        <comment>faults</comment>
        <translation>keine</translation>
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
        <translation>Keine Notiz aus dieser Zeit.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
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
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Reps and tempo</source>
        <translation>Wiederholungen und Tempo</translation>
    </message>
    <message>
        <source>% with 95 % interval · circles: reps, diamonds: tempo, triangles: landings stuck</source>
        <translation>% mit 95-%-Bereich · Kreise: Wiederholungen, Rauten: Tempo, Dreiecke: gestandene Landungen</translation>
    </message>
    <message>
        <source>by stage</source>
        <translation>nach Stufe</translation>
    </message>
    <message>
        <source>by exercise</source>
        <translation>nach Übung</translation>
    </message>
    <message>
        <source>by side</source>
        <translation>nach Seite</translation>
    </message>
    <message>
        <source>Chart: reps and tempo by stage, exercise and side</source>
        <translation>Diagramm: Wiederholungen und Tempo nach Stufe, Übung und Seite</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>gestanden</translation>
    </message>
    <message>
        <source>landings</source>
        <translation>Landungen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Choose the result that is wrong.</source>
        <translation>Wähle das Ergebnis, das falsch ist.</translation>
    </message>
    <message>
        <source>That value holds already. Enter another.</source>
        <translation>Dieser Wert gilt schon. Gib einen anderen ein.</translation>
    </message>
    <message>
        <source>Enter left or right.</source>
        <translation>Gib links oder rechts ein.</translation>
    </message>
    <message>
        <source>Enter a day such as 2026-11-25.</source>
        <translation>Gib einen Tag ein wie 2026-11-25.</translation>
    </message>
    <message>
        <source>{when}: {what} {before} → {after}, {who}: {why}</source>
        <translation>{when}: {what} {before} → {after}, {who}: {why}</translation>
    </message>
    <message>
        <source>Nothing of that is corrected, so that there is nothing to take back.</source>
        <translation>Daran ist nichts berichtigt, also gibt es nichts zurückzunehmen.</translation>
    </message>
    <message>
        <source>What was recorded stays as it is. A correction is written beside it.</source>
        <translation>Das Aufgezeichnete bleibt, wie es ist. Eine Berichtigung wird daneben geschrieben.</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>That value holds already. Enter another, or close.</source>
        <translation>Dieser Wert gilt schon. Gib einen anderen ein oder schließe.</translation>
    </message>
    <message>
        <source>Correct a session</source>
        <translation>Einheit berichtigen</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Berichtigung</translation>
    </message>
    <message>
        <source>Nothing is written over; taking back is a further correction.</source>
        <translation>Nichts wird überschrieben; Zurücknehmen ist eine weitere Berichtigung.</translation>
    </message>
    <message>
        <source>Should be</source>
        <translation>Soll sein</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Correction and history</source>
        <translation>Berichtigung und Verlauf</translation>
    </message>
    <message>
        <source>Try</source>
        <translation>Versuch</translation>
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
        <translation>Alle tun zur selben Zeit dasselbe, jede Person mit eigenen Wiederholungen und eigener Last.</translation>
    </message>
    <message>
        <source>Teams work for a while at each station, then all move on.</source>
        <translation>Teams arbeiten eine Weile an jeder Station, dann wechseln alle.</translation>
    </message>
    <message>
        <source>One half works while the other rests and spots; then they swap.</source>
        <translation>Die eine Hälfte arbeitet, die andere ruht und sichert; dann wird getauscht.</translation>
    </message>
    <message numerus="yes">
        <source>%n people in the roster</source>
        <translation>
            <numerusform>%n Person im Verzeichnis</numerusform>
            <numerusform>%n Personen im Verzeichnis</numerusform>
        </translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation>Plan öffnen</translation>
    </message>
    <message>
        <source>Plans (*.toml)</source>
        <translation>Pläne (*.toml)</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Work at a station</source>
        <translation>Arbeit an einer Station</translation>
    </message>
    <message>
        <source>Change between stations</source>
        <translation>Wechsel zwischen Stationen</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Time to swap</source>
        <translation>Zeit zum Tauschen</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>A group session</source>
        <translation>Eine Gruppeneinheit</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation>Plan öffnen…</translation>
    </message>
    <message>
        <source>See who is here</source>
        <translation>Sehen, wer da ist</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>Bout</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Set, side</source>
        <translation>Satz, Seite</translation>
    </message>
    <message>
        <source>Planned above, done below</source>
        <translation>Oben geplant, unten getan</translation>
    </message>
    <message>
        <source>Each rep as a profile over time; a cross is a rep that was missed, a square a fault</source>
        <translation>Jede Wiederholung als Verlauf über die Zeit; ein Kreuz ist eine nicht gemachte, ein Quadrat ein Fehler</translation>
    </message>
    <message>
        <source>Done, of those planned</source>
        <translation>Getan, von den geplanten</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>{load} kg</source>
        <translation>{load} kg</translation>
    </message>
    <message>
        <source>attempt {n}</source>
        <translation>Anlauf {n}</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
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
        <translation>leiser  (−)</translation>
    </message>
    <message>
        <source>louder  (+)</source>
        <translation>lauter  (+)</translation>
    </message>
    <message>
        <source>Keys  (F1)</source>
        <translation>Tasten  (F1)</translation>
    </message>
    <message>
        <source>sound on  (V)</source>
        <translation>Ton an  (V)</translation>
    </message>
    <message>
        <source>sound off  (V)</source>
        <translation>Ton aus  (V)</translation>
    </message>
    <message>
        <source>Sound off</source>
        <translation>Ton aus</translation>
    </message>
    <message>
        <source>Sound {n} %</source>
        <translation>Ton {n} %</translation>
    </message>
    <message>
        <source>One more rep  (Enter)</source>
        <translation>Eine mehr  (Enter)</translation>
    </message>
    <message>
        <source>Not done  (M)</source>
        <translation>Nicht gemacht  (M)</translation>
    </message>
    <message>
        <source>A fault  (F)</source>
        <translation>Fehler  (F)</translation>
    </message>
    <message>
        <source>End this bout  (E)</source>
        <translation>Durchgang beenden  (E)</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Taste</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Effort 0-10</source>
        <translation>Anstrengung 0-10</translation>
    </message>
    <message>
        <source>Pain 0-10</source>
        <translation>Schmerz 0-10</translation>
    </message>
    <message>
        <source>Effort and pain of everybody</source>
        <translation>Anstrengung und Schmerz von allen</translation>
    </message>
    <message>
        <source>A number answers and goes on; 1 and 0 quickly for 10. Enter or ↓ passes over: it stays unknown. Backspace goes back.</source>
        <translation>Eine Zahl antwortet und geht weiter; 1 und 0 rasch für 10. Enter oder ↓ übergeht: Es bleibt unbekannt. Rücktaste geht zurück.</translation>
    </message>
    <message>
        <source>Everybody was asked.</source>
        <translation>Alle wurden gefragt.</translation>
    </message>
    <message>
        <source>Nobody was there.</source>
        <translation>Niemand war da.</translation>
    </message>
    <message>
        <source>{name}: how hard was it?</source>
        <translation>{name}: Wie anstrengend war es?</translation>
    </message>
    <message>
        <source>{name}: how much did it hurt?</source>
        <translation>{name}: Wie sehr hat es wehgetan?</translation>
    </message>
    <message>
        <source>Not here: {names}</source>
        <translation>Nicht da: {names}</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Last mark</source>
        <translation>Letzter Vermerk</translation>
    </message>
    <message>
        <source>People of this session</source>
        <translation>Personen dieser Einheit</translation>
    </message>
    <message>
        <source>Why first</source>
        <translation>Warum zuerst</translation>
    </message>
    <message>
        <source>Who needs a look first, by stated rules; nobody is advanced by them</source>
        <translation>Wer zuerst einen Blick braucht, nach genannten Regeln; niemand rückt durch sie vor</translation>
    </message>
    <message>
        <source>Highest pain stated in the last session, 0 to 10</source>
        <translation>Höchster angegebener Schmerz der letzten Einheit, 0 bis 10</translation>
    </message>
    <message>
        <source>Last session</source>
        <translation>Letzte Einheit</translation>
    </message>
    <message>
        <source>none known</source>
        <translation>keine bekannt</translation>
    </message>
    <message>
        <source>Sessions done of those due, this week · last week</source>
        <translation>Einheiten von fälligen, diese · letzte Woche</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Reps done of those prescribed, this week · last week</source>
        <translation>Wiederholungen von vorgeschriebenen, diese · letzte Woche</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Reps that kept their tempo, this week · last week</source>
        <translation>Wiederholungen im Tempo, diese · letzte Woche</translation>
    </message>
    <message>
        <source>Load, 8 weeks</source>
        <translation>Belastung, 8 Wochen</translation>
    </message>
    <message>
        <source>RPE × minutes a week, the last bar is this week; grey where not every day is known</source>
        <translation>RPE × Minuten je Woche, der letzte Balken ist diese Woche; grau, wo nicht jeder Tag bekannt ist</translation>
    </message>
    <message>
        <source>Owed</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Answers that can still be given: effort of a session, pain on the morning after</source>
        <translation>Antworten, die noch gegeben werden können: Anstrengung einer Einheit, Schmerz am Morgen danach</translation>
    </message>
    <message>
        <source>as if reps were independent</source>
        <translation>als wären Wiederholungen unabhängig</translation>
    </message>
    <message>
        <source>as if sessions were independent, which those of one athlete are not</source>
        <translation>als wären Einheiten unabhängig, was die einer Person nicht sind</translation>
    </message>
    <message>
        <source>as if reps were independent, which those of one athlete are not</source>
        <translation>als wären Wiederholungen unabhängig, was die einer Person nicht sind</translation>
    </message>
    <message>
        <source>Next-morning pain after {day} is not answered.</source>
        <translation>Der Schmerz am Morgen nach {day} ist nicht beantwortet.</translation>
    </message>
    <message>
        <source>No session for {days} days, and {missed} of {due} planned were missed.</source>
        <translation>Seit {days} Tagen keine Einheit, und {missed} von {due} geplanten wurden versäumt.</translation>
    </message>
    <message>
        <source>No session yet, and {missed} of {due} planned were missed.</source>
        <translation>Noch keine Einheit, und {missed} von {due} geplanten wurden versäumt.</translation>
    </message>
    <message>
        <source>There is no result.</source>
        <translation>Es gibt kein Ergebnis.</translation>
    </message>
    <message>
        <source>There is one result, so that nothing has changed yet.</source>
        <translation>Es gibt ein Ergebnis, darum hat sich noch nichts geändert.</translation>
    </message>
    <message>
        <source>No planned session was due.</source>
        <translation>Keine geplante Einheit war fällig.</translation>
    </message>
    <message>
        <source>No reps were prescribed, or none of them are known.</source>
        <translation>Es waren keine Wiederholungen vorgeschrieben, oder keine ist bekannt.</translation>
    </message>
    <message>
        <source>No rep was led to a tempo.</source>
        <translation>Keine Wiederholung wurde im Tempo geführt.</translation>
    </message>
    <message>
        <source>No landing was marked.</source>
        <translation>Keine Landung wurde vermerkt.</translation>
    </message>
    <message>
        <source>Session adherence</source>
        <translation>Ausgeführte Einheiten</translation>
    </message>
    <message>
        <source>sessions done / sessions due; excused and not due ones in neither</source>
        <translation>ausgeführte / fällige Einheiten; entschuldigte und nicht fällige in keinem von beiden</translation>
    </message>
    <message>
        <source>Rep adherence</source>
        <translation>Ausgeführte Wiederholungen</translation>
    </message>
    <message>
        <source>reps met / reps prescribed, at most all of each bout; extra reps apart</source>
        <translation>erfüllte / vorgegebene Wiederholungen, je Durchgang höchstens alle; zusätzliche gesondert</translation>
    </message>
    <message>
        <source>Extra reps</source>
        <translation>Zusätzliche Wiederholungen</translation>
    </message>
    <message>
        <source>reps done beyond those prescribed, bout by bout</source>
        <translation>Wiederholungen über die vorgeschriebenen hinaus, Durchgang für Durchgang</translation>
    </message>
    <message>
        <source>Tempo adherence</source>
        <translation>Eingehaltenes Tempo</translation>
    </message>
    <message>
        <source>reps that kept the tempo / reps led to one; the program leads, no sensor measures</source>
        <translation>Wiederholungen im Tempo / im Tempo geführte; das Programm führt, kein Sensor misst</translation>
    </message>
    <message>
        <source>Landings stuck</source>
        <translation>Gestandene Landungen</translation>
    </message>
    <message>
        <source>landings without a fault / landings done</source>
        <translation>Landungen ohne Fehler / Landungen</translation>
    </message>
    <message>
        <source>A day of this week is unknown.</source>
        <translation>Ein Tag dieser Woche ist unbekannt.</translation>
    </message>
    <message>
        <source>The day is not over, not in the record, or has a session without effort or length.</source>
        <translation>Der Tag ist nicht vorbei, nicht aufgezeichnet oder hat eine Einheit ohne Anstrengung oder Dauer.</translation>
    </message>
    <message>
        <source>The contacts of a session are unknown.</source>
        <translation>Die Kontakte einer Einheit sind unbekannt.</translation>
    </message>
    <message>
        <source>Nothing that was done has a tempo or a hold, or a session is unknown.</source>
        <translation>Nichts Getanes hat ein Tempo oder ein Halten, oder eine Einheit ist unbekannt.</translation>
    </message>
    <message>
        <source>The load of some work is unknown.</source>
        <translation>Die Last mancher Arbeit ist unbekannt.</translation>
    </message>
    <message>
        <source>Fewer than 28 days in a row are known.</source>
        <translation>Weniger als 28 Tage in Folge sind bekannt.</translation>
    </message>
    <message>
        <source>Load of the day</source>
        <translation>Belastung des Tages</translation>
    </message>
    <message>
        <source>sum of session RPE x minutes, rests included; 0 on a rest day</source>
        <translation>Summe aus RPE der Einheit x Minuten, mit Pausen; 0 am Ruhetag</translation>
    </message>
    <message>
        <source>Load of the week</source>
        <translation>Belastung der Woche</translation>
    </message>
    <message>
        <source>sum of seven days from Monday</source>
        <translation>Summe von sieben Tagen ab Montag: Anstrengung (0-10) x Minuten</translation>
    </message>
    <message>
        <source>mean of seven daily loads / their standard deviation, that of a sample (n - 1)</source>
        <translation>Mittel der sieben Tagesbelastungen / ihre Standardabweichung, die einer Stichprobe (n - 1)</translation>
    </message>
    <message>
        <source>load of the week x monotony, not rounded</source>
        <translation>Belastung der Woche x Monotonie, nicht gerundet</translation>
    </message>
    <message>
        <source>reps done x contacts a rep</source>
        <translation>ausgeführte Wiederholungen x Kontakte je Wiederholung</translation>
    </message>
    <message>
        <source>Time under tension, nominal</source>
        <translation>Zeit unter Spannung, nominell</translation>
    </message>
    <message>
        <source>reps done x the sum of a rep&apos;s phases; an explosive phase by convention</source>
        <translation>ausgeführte Wiederholungen x Summe der Phasen; eine explosive Phase nach Vereinbarung</translation>
    </message>
    <message>
        <source>Volume load</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>sum of reps x kg</source>
        <translation>Summe aus Wiederholungen x kg</translation>
    </message>
    <message>
        <source>Load lately</source>
        <translation>Belastung zuletzt</translation>
    </message>
    <message>
        <source>exponentially weighted mean, lambda = 2 / (7 + 1)</source>
        <translation>exponentiell gewichtetes Mittel, Lambda = 2 / (7 + 1)</translation>
    </message>
    <message>
        <source>Load usually</source>
        <translation>Belastung sonst</translation>
    </message>
    <message>
        <source>exponentially weighted mean, lambda = 2 / (28 + 1)</source>
        <translation>exponentiell gewichtetes Mittel, Lambda = 2 / (28 + 1)</translation>
    </message>
    <message>
        <source>The error of this test is not known.</source>
        <translation>Der Fehler dieses Tests ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Points of one athlete that follow one another are not independent: read the slope and its interval.</source>
        <translation>Aufeinanderfolgende Punkte einer Person sind nicht unabhängig: Lies die Steigung und ihr Intervall.</translation>
    </message>
    <message>
        <source>A reach or the limb length is missing.</source>
        <translation>Eine Reichweite oder die Beinlänge fehlt.</translation>
    </message>
    <message>
        <source>There are too few athletes with this test: fewer than 10.</source>
        <translation>Zu wenige Personen haben diesen Test: weniger als 10.</translation>
    </message>
    <message>
        <source>More of it is neither better nor worse.</source>
        <translation>Mehr davon ist weder besser noch schlechter.</translation>
    </message>
    <message>
        <source>There is no day on which both sides were tested.</source>
        <translation>An keinem Tag wurden beide Seiten geprüft.</translation>
    </message>
    <message>
        <source>Both sides are nought.</source>
        <translation>Beide Seiten sind null.</translation>
    </message>
    <message>
        <source>Reach of the leg, composite</source>
        <translation>Reichweite des Beins, zusammengefasst</translation>
    </message>
    <message>
        <source>sum of the three reaches / (3 x limb length) x 100</source>
        <translation>Summe der drei Reichweiten / (3 x Beinlänge) x 100</translation>
    </message>
    <message>
        <source>The athlete has not rated it.</source>
        <translation>Die Person hat es nicht angegeben.</translation>
    </message>
    <message>
        <source>It was not asked.</source>
        <translation>Es wurde nicht gefragt.</translation>
    </message>
    <message>
        <source>There is no session.</source>
        <translation>Es gibt keine Einheit.</translation>
    </message>
    <message>
        <source>Nothing was answered.</source>
        <translation>Nichts wurde beantwortet.</translation>
    </message>
    <message>
        <source>Pain before training is not known, and that of the next morning is above 2.</source>
        <translation>Der Schmerz vor dem Training ist nicht bekannt, und der am nächsten Morgen liegt über 2.</translation>
    </message>
    <message>
        <source>Pain before training</source>
        <translation>Schmerz vor dem Training</translation>
    </message>
    <message>
        <source>first answer of the day</source>
        <translation>erste Antwort des Tages</translation>
    </message>
    <message>
        <source>Pain of the day</source>
        <translation>Schmerz des Tages</translation>
    </message>
    <message>
        <source>highest pain stated in a session of the day</source>
        <translation>stärkster in einer Einheit des Tages angegebener Schmerz</translation>
    </message>
    <message>
        <source>Settled by the next morning</source>
        <translation>Bis zum nächsten Morgen abgeklungen</translation>
    </message>
    <message>
        <source>1 where pain on the next morning is no higher than before training, or, that unknown, at most 2</source>
        <translation>1, wo der Schmerz am nächsten Morgen nicht höher ist als vor dem Training oder, wenn dieser unbekannt ist, höchstens 2</translation>
    </message>
    <message>
        <source>other side / reference side x 100; turned over where less is better</source>
        <translation>andere Seite / Bezugsseite x 100; umgekehrt, wo weniger besser ist</translation>
    </message>
    <message>
        <source>index of the right side, reference left: right / left x 100; turned if less is better</source>
        <translation>Index der rechten Seite, Bezug links: rechts / links x 100; umgekehrt, wenn weniger besser ist</translation>
    </message>
    <message>
        <source>index of the left side, reference right: left / right x 100; turned if less is better</source>
        <translation>Index der linken Seite, Bezug rechts: links / rechts x 100; umgekehrt, wenn weniger besser ist</translation>
    </message>
    <message>
        <source>Effort of the session</source>
        <translation>Anstrengung der Einheit</translation>
    </message>
    <message>
        <source>rating of the whole session</source>
        <translation>Angabe zur ganzen Einheit</translation>
    </message>
    <message>
        <source>highest pain stated; zones 0-2, 3-5, 6-10</source>
        <translation>stärkster genannter Schmerz; Bereiche 0-2, 3-5, 6-10</translation>
    </message>
    <message>
        <source>as stated; no higher than before training</source>
        <translation>wie angegeben; nicht höher als vor dem Training</translation>
    </message>
    <message>
        <source>Highest pain</source>
        <translation>Stärkster Schmerz</translation>
    </message>
    <message>
        <source>highest pain stated in any session</source>
        <translation>stärkster in einer Einheit genannter Schmerz</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>sleep + fatigue + stress + soreness, 1 (well) to 7 (badly) each</source>
        <translation>Schlaf + Müdigkeit + Stress + Muskelkater, je 1 (gut) bis 7 (schlecht)</translation>
    </message>
    <message>
        <source>Readiness against own days</source>
        <translation>Bereitschaft gegen eigene Tage</translation>
    </message>
    <message>
        <source>(sum - mean of the last 28 days) / their standard deviation (n - 1); above 0 is worse</source>
        <translation>(Summe - Mittel der letzten 28 Tage) / deren Standardabweichung (n - 1); über 0 ist schlechter</translation>
    </message>
    <message>
        <source>The test asks for ten rebounds.</source>
        <translation>Der Test verlangt zehn Hüpfer.</translation>
    </message>
    <message>
        <source>Mean of the last 7 days</source>
        <translation>Mittel der letzten 7 Tage</translation>
    </message>
    <message>
        <source>sum of the last 7 daily loads / 7</source>
        <translation>Summe der letzten 7 Tagesbelastungen / 7</translation>
    </message>
    <message>
        <source>Mean of the last 28 days</source>
        <translation>Mittel der letzten 28 Tage</translation>
    </message>
    <message>
        <source>sum of the last 28 daily loads / 28</source>
        <translation>Summe der letzten 28 Tagesbelastungen / 28</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>No load was said or planned.</source>
        <translation>Keine Last wurde gesagt oder geplant.</translation>
    </message>
    <message>
        <source>How many reps were done in the last set is unknown.</source>
        <translation>Wie viele Wiederholungen im letzten Satz gemacht wurden, ist unbekannt.</translation>
    </message>
    <message>
        <source>It is work for a time, which has no reps.</source>
        <translation>Es ist Arbeit nach Zeit, die keine Wiederholungen hat.</translation>
    </message>
    <message>
        <source>These signs are for reps against a load, not for landings, jumps or timed work.</source>
        <translation>Diese Zeichen gelten für Wiederholungen gegen eine Last, nicht für Landungen, Sprünge oder Arbeit nach Zeit.</translation>
    </message>
    <message>
        <source>The last two sessions with this load and these reps asked for are not both known.</source>
        <translation>Die letzten zwei Einheiten mit dieser Last und diesen verlangten Wiederholungen sind nicht beide bekannt.</translation>
    </message>
    <message>
        <source>The load is nought, so that there is no step.</source>
        <translation>Die Last ist null, also gibt es keinen Schritt.</translation>
    </message>
    <message>
        <source>One number of reps is asked for, and no range.</source>
        <translation>Verlangt ist eine Zahl von Wiederholungen, kein Bereich.</translation>
    </message>
    <message>
        <source>The sets ask for different ranges of reps.</source>
        <translation>Die Sätze verlangen verschiedene Bereiche von Wiederholungen.</translation>
    </message>
    <message>
        <source>The reps of a set of the last session are unknown.</source>
        <translation>Die Wiederholungen eines Satzes der letzten Einheit sind unbekannt.</translation>
    </message>
    <message>
        <source>reps by set</source>
        <translation>Wiederholungen je Satz</translation>
    </message>
    <message>
        <source>reps asked for by set</source>
        <translation>verlangte Wiederholungen je Satz</translation>
    </message>
    <message>
        <source>load by set, kg</source>
        <translation>Last je Satz, kg</translation>
    </message>
    <message>
        <source>most reps asked for</source>
        <translation>höchstens verlangte Wiederholungen</translation>
    </message>
    <message>
        <source>load of the last set, kg</source>
        <translation>Last des letzten Satzes, kg</translation>
    </message>
    <message>
        <source>where the sets lie</source>
        <translation>wo die Sätze liegen</translation>
    </message>
    <message>
        <source>Load of the last set</source>
        <translation>Last des letzten Satzes</translation>
    </message>
    <message>
        <source>as said after the set, else as planned</source>
        <translation>wie nach dem Satz gesagt, sonst wie geplant</translation>
    </message>
    <message>
        <source>Reps of the last set</source>
        <translation>Wiederholungen des letzten Satzes</translation>
    </message>
    <message>
        <source>reps said, else counted, of the attempt that stands</source>
        <translation>gesagte, sonst gezählte Wiederholungen des Versuchs, der gilt</translation>
    </message>
    <message>
        <source>last set at least 2 reps above the most asked for, two sessions running, one load; left out is 0</source>
        <translation>letzter Satz mindestens 2 Wiederholungen über den höchstens verlangten, zwei Einheiten hintereinander, mit einer Last; ausgelassen ist 0</translation>
    </message>
    <message>
        <source>every set of the last session at the most reps asked for, or above: double progression</source>
        <translation>jeder Satz der letzten Einheit bei den höchstens verlangten Wiederholungen oder darüber: doppelte Steigerung</translation>
    </message>
    <message>
        <source>Load step, 2 %</source>
        <translation>Lastschritt, 2 %</translation>
    </message>
    <message>
        <source>load of the last set x 0.02; customary once 1 or 2 reps above the target can be done</source>
        <translation>Last des letzten Satzes x 0,02; üblich, sobald 1 oder 2 Wiederholungen über dem Ziel gelingen</translation>
    </message>
    <message>
        <source>Load step, 10 %</source>
        <translation>Lastschritt, 10 %</translation>
    </message>
    <message>
        <source>load of the last set x 0.10; customary once 1 or 2 reps above the target can be done</source>
        <translation>Last des letzten Satzes x 0,10; üblich, sobald 1 oder 2 Wiederholungen über dem Ziel gelingen</translation>
    </message>
    <message>
        <source>One of the two weeks is not known in full.</source>
        <translation>Eine der beiden Wochen ist nicht ganz bekannt.</translation>
    </message>
    <message>
        <source>There was none of it in the week before.</source>
        <translation>In der Woche davor gab es nichts davon.</translation>
    </message>
    <message>
        <source>week before</source>
        <translation>Woche davor</translation>
    </message>
    <message>
        <source>this week</source>
        <translation>diese Woche</translation>
    </message>
    <message>
        <source>above 10 %</source>
        <translation>über 10 %</translation>
    </message>
    <message>
        <source>Load, change on the week before</source>
        <translation>Belastung, Änderung zur Woche davor</translation>
    </message>
    <message>
        <source>this week - the week before; only between weeks known in full</source>
        <translation>diese Woche - Woche davor; nur zwischen ganz bekannten Wochen</translation>
    </message>
    <message>
        <source>Load, change in percent</source>
        <translation>Belastung, Änderung in Prozent</translation>
    </message>
    <message>
        <source>(this week - the week before) / the week before x 100</source>
        <translation>(diese Woche - Woche davor) / Woche davor x 100</translation>
    </message>
    <message>
        <source>Contacts, change on the week before</source>
        <translation>Kontakte, Änderung zur Woche davor</translation>
    </message>
    <message>
        <source>Contacts, change in percent</source>
        <translation>Kontakte, Änderung in Prozent</translation>
    </message>
    <message>
        <source>Volume load, change on the week before</source>
        <translation>Lastumfang, Änderung zur Woche davor</translation>
    </message>
    <message>
        <source>Volume load, change in percent</source>
        <translation>Lastumfang, Änderung in Prozent</translation>
    </message>
    <message>
        <source>top of the range in every set</source>
        <translation>in jedem Satz am oberen Ende</translation>
    </message>
    <message>
        <source>within the range</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>below the range in a set</source>
        <translation>in einem Satz unter dem Bereich</translation>
    </message>
    <message>
        <source>Every day was the same, so that the spread is nought.</source>
        <translation>Jeder Tag war gleich, darum ist die Streuung null.</translation>
    </message>
    <message>
        <source>There was no load in this week.</source>
        <translation>In dieser Woche gab es keine Belastung.</translation>
    </message>
    <message>
        <source>Above 12 reps the estimate is too far off.</source>
        <translation>Über 12 Wiederholungen liegt die Schätzung zu weit daneben.</translation>
    </message>
    <message>
        <source>The reps were done to a prescribed tempo, for which no estimate holds.</source>
        <translation>Die Wiederholungen folgten einem vorgeschriebenen Tempo, für das keine Schätzung gilt.</translation>
    </message>
    <message>
        <source>The load is unknown.</source>
        <translation>Die Last ist unbekannt.</translation>
    </message>
    <message>
        <source>One of the four questions is not answered.</source>
        <translation>Eine der vier Fragen ist nicht beantwortet.</translation>
    </message>
    <message>
        <source>There are too few days to compare with: fewer than 14 of the last 28.</source>
        <translation>Es gibt zu wenige Tage zum Vergleich: weniger als 14 der letzten 28.</translation>
    </message>
    <message>
        <source>All days before were the same, so that there is no spread to compare with.</source>
        <translation>Alle Tage davor waren gleich, darum gibt es keine Streuung zum Vergleich.</translation>
    </message>
    <message>
        <source>Pain {pain} on {day}, {after} on the next morning: not settled.</source>
        <translation>Schmerz {pain} am {day}, {after} am nächsten Morgen: nicht abgeklungen.</translation>
    </message>
    <message>
        <source>Pain {pain} on {day}, and the next morning is not known.</source>
        <translation>Schmerz {pain} am {day}, und der nächste Morgen ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Pain {pain} on {day}, settled by the next morning.</source>
        <translation>Schmerz {pain} am {day}, bis zum nächsten Morgen abgeklungen.</translation>
    </message>
    <message>
        <source>Pain {pain} before training on {day}.</source>
        <translation>Schmerz {pain} vor dem Training am {day}.</translation>
    </message>
    <message>
        <source>Pain {after} on the morning after {day}, {before} before it: not settled.</source>
        <translation>Schmerz {after} am Morgen nach {day}, {before} davor: nicht abgeklungen.</translation>
    </message>
    <message>
        <source>Pain {after} on the morning after {day}.</source>
        <translation>Schmerz {after} am Morgen nach {day}.</translation>
    </message>
    <message>
        <source>A warning sign was reported on {day}.</source>
        <translation>Am {day} wurde ein Warnzeichen gemeldet.</translation>
    </message>
    <message>
        <source>The highest pain of a week rose twice in a row: {first}, {second}, {third}.</source>
        <translation>Der stärkste Schmerz der Woche stieg zweimal in Folge: {first}, {second}, {third}.</translation>
    </message>
    <message>
        <source>Readiness on {day} is {z} SD worse than on their own last {days} days.</source>
        <translation>Die Bereitschaft am {day} ist {z} SD schlechter als an den eigenen letzten {days} Tagen.</translation>
    </message>
    <message>
        <source>A value of one side is missing.</source>
        <translation>Ein Wert einer Seite fehlt.</translation>
    </message>
    <message>
        <source>Nobody has said which side is the reference.</source>
        <translation>Niemand hat gesagt, welche Seite der Bezug ist.</translation>
    </message>
    <message>
        <source>The side that it is divided by is nought.</source>
        <translation>Die Seite, durch die geteilt wird, ist null.</translation>
    </message>
    <message>
        <source>There are too few repeated tries to know the error of this test: fewer than 10.</source>
        <translation>Es gibt zu wenige wiederholte Versuche, um den Fehler dieses Tests zu kennen: weniger als 10.</translation>
    </message>
    <message>
        <source>There are too few points for a trend: fewer than 8.</source>
        <translation>Es gibt zu wenige Punkte für einen Trend: weniger als 8.</translation>
    </message>
    <message>
        <source>All points are of one time.</source>
        <translation>Alle Punkte sind von einem Zeitpunkt.</translation>
    </message>
    <message>
        <source>Under 120 frames a second a contact time is too coarse.</source>
        <translation>Unter 120 Bildern je Sekunde ist eine Kontaktzeit zu grob.</translation>
    </message>
    <message>
        <source>Under 240 frames a second one frame changes a contact time by more than two parts in a hundred.</source>
        <translation>Unter 240 Bildern je Sekunde ändert ein Bild eine Kontaktzeit um mehr als zwei Hundertstel.</translation>
    </message>
    <message>
        <source>Single hop for distance</source>
        <translation>Einbeinsprung auf Weite</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Triple hop for distance</source>
        <translation>Dreifacher Einbeinsprung auf Weite</translation>
    </message>
    <message>
        <source>Crossover hop for distance</source>
        <translation>Überkreuzsprung auf Weite</translation>
    </message>
    <message>
        <source>Six metre timed hop</source>
        <translation>Sechs Meter auf einem Bein, auf Zeit</translation>
    </message>
    <message>
        <source>Counter-movement jump, height</source>
        <translation>Sprung mit Ausholbewegung, Höhe</translation>
    </message>
    <message>
        <source>Counter-movement jump on one leg, height</source>
        <translation>Sprung mit Ausholbewegung auf einem Bein, Höhe</translation>
    </message>
    <message>
        <source>Drop jump, flight over contact</source>
        <translation>Niedersprung, Flug durch Kontakt</translation>
    </message>
    <message>
        <source>Drop jump, height over contact</source>
        <translation>Niedersprung, Höhe durch Kontakt</translation>
    </message>
    <message>
        <source>Ten hops, flight over contact</source>
        <translation>Zehn Hüpfer, Flug durch Kontakt</translation>
    </message>
    <message>
        <source>Harper et al. 2011, from memory</source>
        <translation>Harper et al. 2011, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Ten hops, height over contact</source>
        <translation>Zehn Hüpfer, Höhe durch Kontakt</translation>
    </message>
    <message>
        <source>Reach forwards on one leg</source>
        <translation>Reichweite nach vorn auf einem Bein</translation>
    </message>
    <message>
        <source>Reach backwards and inwards on one leg</source>
        <translation>Reichweite nach hinten innen auf einem Bein</translation>
    </message>
    <message>
        <source>Reach backwards and outwards on one leg</source>
        <translation>Reichweite nach hinten außen auf einem Bein</translation>
    </message>
    <message>
        <source>Limb length</source>
        <translation>Beinlänge</translation>
    </message>
    <message>
        <source>Stance on one leg, eyes open</source>
        <translation>Einbeinstand, Augen offen</translation>
    </message>
    <message>
        <source>Stance on one leg, eyes closed</source>
        <translation>Einbeinstand, Augen zu</translation>
    </message>
    <message>
        <source>Balance errors, six stances</source>
        <translation>Gleichgewichtsfehler, sechs Stände</translation>
    </message>
    <message>
        <source>University of North Carolina, manual of the Balance Error Scoring System</source>
        <translation>University of North Carolina, Handbuch des Balance Error Scoring System</translation>
    </message>
    <message>
        <source>Landing errors, jump from a 30 cm box</source>
        <translation>Landefehler, Sprung vom 30-cm-Kasten</translation>
    </message>
    <message>
        <source>Padua et al. 2009 (mean of three jumps; items from memory)</source>
        <translation>Padua et al. 2009 (Mittel aus drei Sprüngen; Punkte aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Shoulder external rotation, force</source>
        <translation>Außenrotation der Schulter, Kraft</translation>
    </message>
    <message>
        <source>Shoulder internal rotation, force</source>
        <translation>Innenrotation der Schulter, Kraft</translation>
    </message>
    <message>
        <source>Shoulder rotation, total range</source>
        <translation>Rotation der Schulter, gesamter Umfang</translation>
    </message>
    <message>
        <source>Adductor strength, force</source>
        <translation>Kraft der Adduktoren</translation>
    </message>
    <message>
        <source>One-rep maximum, measured</source>
        <translation>Maximum für eine Wiederholung, gemessen</translation>
    </message>
    <message>
        <source>Left {difference} % behind: {test}, {left} against {right} {unit}, error {error}.</source>
        <translation>Links {difference} % zurück: {test}, {left} gegen {right} {unit}, Fehler {error}.</translation>
    </message>
    <message>
        <source>Right {difference} % behind: {test}, {right} against {left} {unit}, error {error}.</source>
        <translation>Rechts {difference} % zurück: {test}, {right} gegen {left} {unit}, Fehler {error}.</translation>
    </message>
    <message>
        <source>First by pain in a session</source>
        <translation>Zuerst wegen Schmerz in einer Einheit</translation>
    </message>
    <message>
        <source>highest pain of a session of the last days, above the limit</source>
        <translation>stärkster Schmerz einer Einheit der letzten Tage, über der Grenze</translation>
    </message>
    <message>
        <source>First by pain before training</source>
        <translation>Zuerst wegen Schmerz vor dem Training</translation>
    </message>
    <message>
        <source>pain answered before training in the last days, above the limit</source>
        <translation>in den letzten Tagen vor dem Training angegebener Schmerz, über der Grenze</translation>
    </message>
    <message>
        <source>First by a warning sign</source>
        <translation>Zuerst wegen eines Warnzeichens</translation>
    </message>
    <message>
        <source>a warning sign answered before training in the last days: 1</source>
        <translation>ein in den letzten Tagen vor dem Training angegebenes Warnzeichen: 1</translation>
    </message>
    <message>
        <source>First by pain that had not settled</source>
        <translation>Zuerst wegen Schmerz, der nicht abgeklungen war</translation>
    </message>
    <message>
        <source>pain on the morning after, higher than before that session</source>
        <translation>Schmerz am Morgen danach, höher als vor dieser Einheit</translation>
    </message>
    <message>
        <source>First by pain on the morning after</source>
        <translation>Zuerst wegen Schmerz am Morgen danach</translation>
    </message>
    <message>
        <source>pain on the morning after, above the limit</source>
        <translation>Schmerz am Morgen danach, über der Grenze</translation>
    </message>
    <message>
        <source>First by days without a session</source>
        <translation>Zuerst wegen Tagen ohne Einheit</translation>
    </message>
    <message>
        <source>days since the last session, above the limit, with a planned one missed</source>
        <translation>Tage seit der letzten Einheit, über der Grenze, und eine geplante versäumt</translation>
    </message>
    <message>
        <source>First by a side that is behind</source>
        <translation>Zuerst wegen einer Seite, die zurückliegt</translation>
    </message>
    <message>
        <source>(greater - smaller) / greater x 100, where their distance exceeds the error of the test</source>
        <translation>(größerer - kleinerer) / größerer Wert x 100, wo ihr Abstand den Fehler des Tests übersteigt</translation>
    </message>
    <message>
        <source>First by mornings not answered</source>
        <translation>Zuerst wegen nicht beantworteter Morgen</translation>
    </message>
    <message>
        <source>mornings after a session of the last days whose pain is not answered</source>
        <translation>Morgen nach einer Einheit der letzten Tage, deren Schmerz nicht angegeben ist</translation>
    </message>
    <message>
        <source>First by rising pain</source>
        <translation>Zuerst wegen steigenden Schmerzes</translation>
    </message>
    <message>
        <source>highest pain of each of the last three weeks, rising twice in a row</source>
        <translation>stärkster Schmerz jeder der letzten drei Wochen, zweimal hintereinander gestiegen</translation>
    </message>
    <message>
        <source>First by readiness</source>
        <translation>Zuerst wegen der Bereitschaft</translation>
    </message>
    <message>
        <source>There was no session yet.</source>
        <translation>Es gab noch keine Einheit.</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>days looked back on</source>
        <translation>Tage, auf die zurückgeblickt wird</translation>
    </message>
    <message>
        <source>after</source>
        <translation>danach</translation>
    </message>
    <message>
        <source>before</source>
        <translation>davor</translation>
    </message>
    <message>
        <source>test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erster</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweiter</translation>
    </message>
    <message>
        <source>tolerance, %</source>
        <translation>Toleranz, %</translation>
    </message>
    <message>
        <source>or, if more, ms</source>
        <translation>oder, wenn mehr, ms</translation>
    </message>
    <message>
        <source>The effort or the length of the session is unknown.</source>
        <translation>Die Anstrengung oder die Länge der Einheit ist unbekannt.</translation>
    </message>
    <message>
        <source>Load of the session</source>
        <translation>Belastung der Einheit</translation>
    </message>
    <message>
        <source>session RPE x minutes, rests included</source>
        <translation>RPE der Einheit x Minuten, mit Pausen</translation>
    </message>
    <message>
        <source>session RPE</source>
        <translation>RPE der Einheit</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Last sum of four answers, 4 (well) to 28 (badly), and how far from their own 28 days in SD</source>
        <translation>Letzte Summe von vier Antworten, 4 (gut) bis 28 (schlecht), und wie weit von den eigenen 28 Tagen in SD</translation>
    </message>
    <message>
        <source>nothing to report</source>
        <translation>nichts zu melden</translation>
    </message>
    <message>
        <source>{total} ({z} SD)</source>
        <translation>{total} ({z} SD)</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Kopiert.</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Why the figure is what it is</source>
        <translation>Warum die Zahl ist, wie sie ist</translation>
    </message>
    <message>
        <source>after {bout}</source>
        <translation>nach {bout}</translation>
    </message>
    <message>
        <source>Before the session</source>
        <translation>Vor der Einheit</translation>
    </message>
    <message>
        <source>Between two bouts</source>
        <translation>Zwischen zwei Durchgängen</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>After the session</source>
        <translation>Nach der Einheit</translation>
    </message>
    <message>
        <source>This is no medical device: it does not diagnose, clear or predict injury.</source>
        <translation>Das ist kein Medizinprodukt: Es stellt keine Diagnose, gibt nichts frei und sagt keine Verletzung voraus.</translation>
    </message>
    <message>
        <source>Pain above 5 of 10 or any red-flag sign ends the exercise and asks for a note.</source>
        <translation>Schmerz über 5 von 10 oder ein Warnzeichen beendet die Übung und verlangt eine Notiz.</translation>
    </message>
    <message>
        <source>Sharp pain, giving way, chest pain, dizziness, numbness: stop, and see a licensed professional.</source>
        <translation>Stechender Schmerz, Wegknicken, Brustschmerz, Schwindel, Taubheit: aufhören und eine Fachperson aufsuchen.</translation>
    </message>
    <message>
        <source>Your practitioner decides; local practice and law come first. Nothing advances by itself.</source>
        <translation>Deine Betreuung entscheidet; örtliche Praxis und Recht gehen vor. Nichts rückt von selbst vor.</translation>
    </message>
    <message>
        <source>I am ready  (Space)</source>
        <translation>Ich bin bereit  (Leertaste)</translation>
    </message>
    <message>
        <source>For {athlete}  ·  {n} min</source>
        <translation>Für {athlete}  ·  {n} min</translation>
    </message>
    <message>
        <source>For {athlete}  ·  {n} min, and own-pace work</source>
        <translation>Für {athlete}  ·  {n} min, dazu Arbeit im eigenen Tempo</translation>
    </message>
    <message>
        <source>The exercises of this session, and how to set them up</source>
        <translation>Die Übungen dieser Einheit und ihr Aufbau</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Bevor du beginnst</translation>
    </message>
    <message>
        <source>Back  (Esc)</source>
        <translation>Zurück  (Esc)</translation>
    </message>
    <message>
        <source>Voice: {n} of {m} phrases</source>
        <translation>Stimme: {n} von {m} Ansagen</translation>
    </message>
    <message>
        <source>{n}  {stage}</source>
        <translation>{n}  {stage}</translation>
    </message>
    <message>
        <source>{sets} × {dose}, each side</source>
        <translation>{sets} × {dose}, je Seite</translation>
    </message>
    <message>
        <source>{sets} × {dose}</source>
        <translation>{sets} × {dose}</translation>
    </message>
    <message>
        <source>There are more names or stations than can be read across the room: they take turns on the gym screen.</source>
        <translation>Es sind mehr Namen oder Stationen, als sich durch den Raum lesen lassen: Sie wechseln sich auf dem Hallenbild ab.</translation>
    </message>
    <message>
        <source>That group session cannot be led on: its plan is read otherwise now. Everything done is kept.</source>
        <translation>Diese Gruppeneinheit lässt sich nicht weiterführen: Ihr Plan wird jetzt anders gelesen. Alles Getane ist aufgehoben.</translation>
    </message>
    <message>
        <source>{plan}, with {n} people: cut short. All that was done is kept.</source>
        <translation>{plan}, mit {n} Personen: unterbrochen. Alles Getane ist aufgehoben.</translation>
    </message>
    <message>
        <source>This program keeps no record, so a group cannot be led.</source>
        <translation>Dieses Programm führt keine Aufzeichnung, darum lässt sich keine Gruppe führen.</translation>
    </message>
    <message>
        <source>Coach</source>
        <translation>Coach</translation>
    </message>
    <message>
        <source>Drop one file at a time here: a plan, which ends in .toml.</source>
        <translation>Leg hier eine Datei ab: einen Plan, der auf .toml endet.</translation>
    </message>
    <message>
        <source>Only a plan can be dropped here: a file on this computer that ends in .toml.</source>
        <translation>Hier lässt sich nur ein Plan ablegen: eine Datei auf diesem Computer, die auf .toml endet.</translation>
    </message>
    <message>
        <source>Enter or Space</source>
        <translation>Enter oder Leertaste</translation>
    </message>
    <message>
        <source>begin what is most likely, as the button says</source>
        <translation>das Wahrscheinlichste beginnen, wie es auf dem Knopf steht</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>Buchstaben</translation>
    </message>
    <message>
        <source>look for a name</source>
        <translation>einen Namen suchen</translation>
    </message>
    <message>
        <source>↑ and ↓</source>
        <translation>↑ und ↓</translation>
    </message>
    <message>
        <source>choose who trains; in the plans, choose a plan</source>
        <translation>wählen, wer trainiert; in den Plänen einen Plan wählen</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>go on to the plans, the answers owed, the other pages</source>
        <translation>weiter zu den Plänen, offenen Antworten, anderen Seiten</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Strg+O</translation>
    </message>
    <message>
        <source>open a plan</source>
        <translation>einen Plan öffnen</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>give the first answer that is owed; then 0-9, Enter keeps it</source>
        <translation>die erste offene Antwort geben; dann 0-9, Enter behält sie</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Strg+,</translation>
    </message>
    <message>
        <source>how the screens look</source>
        <translation>wie die Bildschirme aussehen</translation>
    </message>
    <message>
        <source>F11</source>
        <translation>F11</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>Take it up again  (Enter)</source>
        <translation>Wieder aufnehmen  (Enter)</translation>
    </message>
    <message>
        <source>Lay it down</source>
        <translation>Ablegen</translation>
    </message>
    <message>
        <source>the worst imaginable</source>
        <translation>der schlimmste vorstellbare</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>{about}. Answer</source>
        <translation>{about}. Antworten</translation>
    </message>
    <message>
        <source>Ask me later  (Esc)</source>
        <translation>Später fragen  (Esc)</translation>
    </message>
    <message>
        <source>Do not ask again</source>
        <translation>Nicht mehr fragen</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Wo?</translation>
    </message>
    <message>
        <source>Where does it hurt?</source>
        <translation>Wo tut es weh?</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Open a plan…  (Ctrl+O)</source>
        <translation>Plan öffnen…  (Strg+O)</translation>
    </message>
    <message>
        <source>Still owed</source>
        <translation>Noch offen</translation>
    </message>
    <message>
        <source>Answers that are owed</source>
        <translation>Offene Antworten</translation>
    </message>
    <message>
        <source>Plans</source>
        <translation>Pläne</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>{plan}, {athlete}</source>
        <translation>{plan}, {athlete}</translation>
    </message>
    <message>
        <source>Choose a plan first.</source>
        <translation>Wähle zuerst einen Plan.</translation>
    </message>
    <message>
        <source>Begin  (Enter or Space)</source>
        <translation>Beginnen  (Enter oder Leertaste)</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Pacewright</source>
        <translation>Pacewright</translation>
    </message>
    <message>
        <source>Who trains, and which session</source>
        <translation>Wer trainiert, und welche Einheit</translation>
    </message>
    <message>
        <source>Who is training?</source>
        <translation>Wer trainiert?</translation>
    </message>
    <message>
        <source>Which session?</source>
        <translation>Welche Einheit?</translation>
    </message>
    <message>
        <source>no name is kept</source>
        <translation>es wird kein Name aufgehoben</translation>
    </message>
    <message>
        <source>“{name}”, a new name</source>
        <translation>„{name}“, ein neuer Name</translation>
    </message>
    <message>
        <source>{name}, {when}</source>
        <translation>{name}, {when}</translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation>Namen tippen</translation>
    </message>
    <message>
        <source>Who is training</source>
        <translation>Wer trainiert</translation>
    </message>
    <message>
        <source>Everybody who may train here</source>
        <translation>Alle, die hier trainieren dürfen</translation>
    </message>
    <message>
        <source>a new name</source>
        <translation>ein neuer Name</translation>
    </message>
    <message>
        <source>Planned for today</source>
        <translation>Für heute geplant</translation>
    </message>
    <message>
        <source>Planned for today, and done</source>
        <translation>Für heute geplant und getan</translation>
    </message>
    <message>
        <source>Just opened</source>
        <translation>Eben geöffnet</translation>
    </message>
    <message>
        <source>Led last time</source>
        <translation>Zuletzt geführt</translation>
    </message>
    <message>
        <source>Led lately</source>
        <translation>Kürzlich geführt</translation>
    </message>
    <message>
        <source>Of the demo club</source>
        <translation>Vom Vorführverein</translation>
    </message>
    <message>
        <source>The file of this plan is not known here. Open it once, and it is known.</source>
        <translation>Die Datei dieses Plans ist hier nicht bekannt. Öffne sie einmal, dann ist sie es.</translation>
    </message>
    <message>
        <source>{plan}, {about}</source>
        <translation>{plan}, {about}</translation>
    </message>
    <message>
        <source>{why}, {time}</source>
        <translation>{why}, {time}</translation>
    </message>
    <message>
        <source>{why} · {figures}</source>
        <translation>{why} · {figures}</translation>
    </message>
    <message>
        <source>How much does it hurt this morning?</source>
        <translation>Wie sehr tut es heute Morgen weh?</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>not yet</source>
        <comment>a session</comment>
        <translation>noch nie</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n week(s) ago</source>
        <translation>
            <numerusform>vor %n Woche</numerusform>
            <numerusform>vor %n Wochen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stage(s)</source>
        <translation>
            <numerusform>%n Stufe</numerusform>
            <numerusform>%n Stufen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exercise(s)</source>
        <translation>
            <numerusform>%n Übung</numerusform>
            <numerusform>%n Übungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min, and work at your own pace</source>
        <translation>
            <numerusform>etwa %n min, dazu eigenes Tempo</numerusform>
            <numerusform>etwa %n min, dazu eigenes Tempo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min</source>
        <translation>
            <numerusform>etwa %n min</numerusform>
            <numerusform>etwa %n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>Und %n weiterer.</numerusform>
            <numerusform>Und %n weitere.</numerusform>
        </translation>
    </message>
    <message>
        <source>This plan cannot be led:</source>
        <translation>Dieser Plan lässt sich nicht führen:</translation>
    </message>
    <message>
        <source>{athlete}: {plan}, {when}</source>
        <translation>{athlete}: {plan}, {when}</translation>
    </message>
    <message numerus="yes">
        <source>%n plan(s) led lately cannot be found any more and left the list.</source>
        <translation>
            <numerusform>%n kürzlich geführter Plan ist nicht mehr zu finden und fiel aus der Liste.</numerusform>
            <numerusform>%n kürzlich geführte Pläne sind nicht mehr zu finden und fielen aus der Liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>That answer could not be kept. Please give it again.</source>
        <translation>Diese Antwort ließ sich nicht aufheben. Bitte gib sie noch einmal.</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>Mo</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>Di</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>Mi</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>Do</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>Fr</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>Sa</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>So</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>gefehlt</translation>
    </message>
    <message>
        <source>excused</source>
        <translation>befreit</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Woche ab</translation>
    </message>
    <message>
        <source>nothing planned, nothing done</source>
        <translation>nichts geplant, nichts getan</translation>
    </message>
    <message>
        <source>● done · ✕ missed · – excused · ○ planned</source>
        <translation>● getan · ✕ gefehlt · – befreit · ○ geplant</translation>
    </message>
    <message>
        <source>Calendar of sessions</source>
        <translation>Kalender der Einheiten</translation>
    </message>
    <message>
        <source>Time looked back on</source>
        <translation>Betrachtete Zeit</translation>
    </message>
    <message>
        <source>From which day</source>
        <translation>Ab welchem Tag</translation>
    </message>
    <message>
        <source>To which day</source>
        <translation>Bis zu welchem Tag</translation>
    </message>
    <message>
        <source>last 4 weeks</source>
        <translation>letzte 4 Wochen</translation>
    </message>
    <message>
        <source>last 12 weeks</source>
        <translation>letzte 12 Wochen</translation>
    </message>
    <message>
        <source>last year</source>
        <translation>letztes Jahr</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>two dates</source>
        <translation>zwei Tage</translation>
    </message>
    <message>
        <source>Sessions done</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Against own days</source>
        <translation>Gegen eigene Tage</translation>
    </message>
    <message>
        <source>{name}: {value}, why?</source>
        <translation>{name}: {value}, warum?</translation>
    </message>
    <message>
        <source>whole time</source>
        <translation>ganze Zeit</translation>
    </message>
    <message>
        <source>← Squad  (Esc)</source>
        <translation>← Kader  (Esc)</translation>
    </message>
    <message>
        <source>← Athlete  (Esc)</source>
        <translation>← Person  (Esc)</translation>
    </message>
    <message>
        <source>← Sessions  (Esc)</source>
        <translation>← Einheiten  (Esc)</translation>
    </message>
    <message>
        <source>planned {n} reps</source>
        <translation>geplant {n} Wiederholungen</translation>
    </message>
    <message>
        <source>in {s} s</source>
        <translation>in {s} s</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>nicht begonnen</translation>
    </message>
    <message>
        <source>done {n}</source>
        <translation>getan {n}</translation>
    </message>
    <message>
        <source>rep {n} missed</source>
        <translation>Wdh. {n} nicht gemacht</translation>
    </message>
    <message>
        <source>rep {n}: {faults}</source>
        <translation>Wdh. {n}: {faults}</translation>
    </message>
    <message>
        <source>{n} left</source>
        <translation>{n} links</translation>
    </message>
    <message>
        <source>{n} right</source>
        <translation>{n} rechts</translation>
    </message>
    <message>
        <source>ended early</source>
        <translation>vorzeitig beendet</translation>
    </message>
    <message>
        <source>broken off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>left out: pain</source>
        <translation>ausgelassen: Schmerz</translation>
    </message>
    <message>
        <source>left out: equipment</source>
        <translation>ausgelassen: Gerät</translation>
    </message>
    <message>
        <source>left out: time</source>
        <translation>ausgelassen: Zeit</translation>
    </message>
    <message>
        <source>left out: another reason</source>
        <translation>ausgelassen: anderer Grund</translation>
    </message>
    <message>
        <source>unanswered: stays unknown</source>
        <translation>ohne Antwort: bleibt unbekannt</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
    </message>
    <message>
        <source>very, very easy</source>
        <translation>sehr, sehr leicht</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>Counter-movement jump, height over time to take-off</source>
        <translation>Sprung mit Ausholbewegung, Höhe durch Zeit bis zum Absprung</translation>
    </message>
    <message>
        <source>Jumps that ended in the square</source>
        <translation>Sprünge, die im Feld endeten</translation>
    </message>
    <message>
        <source>One-rep maximum, estimated (Epley)</source>
        <translation>Maximum für eine Wiederholung, geschätzt (Epley)</translation>
    </message>
    <message>
        <source>One-rep maximum, estimated (Brzycki)</source>
        <translation>Maximum für eine Wiederholung, geschätzt (Brzycki)</translation>
    </message>
    <message>
        <source>One-rep maximum, estimated (Lombardi)</source>
        <translation>Maximum für eine Wiederholung, geschätzt (Lombardi)</translation>
    </message>
    <message>
        <source>Epley 1985, from memory</source>
        <translation>Epley 1985, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Brzycki 1993, from memory</source>
        <translation>Brzycki 1993, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Lombardi 1989, from memory</source>
        <translation>Lombardi 1989, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Jumps that ended in the square, last day</source>
        <translation>Sprünge, die im Feld endeten, letzter Tag</translation>
    </message>
    <message>
        <source>Landing errors, last mean</source>
        <translation>Landefehler, letztes Mittel</translation>
    </message>
    <message>
        <source>Reach forwards, sides apart</source>
        <translation>Reichweite nach vorn, Abstand der Seiten</translation>
    </message>
    <message>
        <source>Set to the last rep</source>
        <translation>Satz bis zur letzten Wiederholung</translation>
    </message>
    <message>
        <source>Ten hops: contacts of 250 ms or longer</source>
        <translation>Zehn Hüpfer: Kontakte von 250 ms oder länger</translation>
    </message>
    <message>
        <source>best</source>
        <translation>bestes</translation>
    </message>
    <message>
        <source>last</source>
        <translation>letztes</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>rank test</source>
        <translation>Rangtest</translation>
    </message>
    <message>
        <source>limb symmetry index</source>
        <translation>Seitenindex</translation>
    </message>
    <message>
        <source>difference of the sides</source>
        <translation>Unterschied der Seiten</translation>
    </message>
    <message>
        <source>typical error</source>
        <translation>typischer Fehler</translation>
    </message>
    <message>
        <source>minimal detectable change</source>
        <translation>kleinste erkennbare Änderung</translation>
    </message>
    <message>
        <source>smallest worthwhile change</source>
        <translation>kleinste lohnende Änderung</translation>
    </message>
    <message>
        <source>variation of a try</source>
        <translation>Streuung eines Versuchs</translation>
    </message>
    <message>
        <source>first try less second</source>
        <translation>erster Versuch weniger zweiter</translation>
    </message>
    <message>
        <source>repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>intraclass correlation</source>
        <translation>Intraklassenkorrelation</translation>
    </message>
    <message>
        <source>best day; best of a day&apos;s tries</source>
        <translation>bester Tag; bester Versuch eines Tages</translation>
    </message>
    <message>
        <source>best day; mean of a day&apos;s tries</source>
        <translation>bester Tag; Mittel der Versuche eines Tages</translation>
    </message>
    <message>
        <source>best day; mean of best five of a day&apos;s tries</source>
        <translation>bester Tag; Mittel der besten fünf Versuche eines Tages</translation>
    </message>
    <message>
        <source>best day; last of a day&apos;s tries</source>
        <translation>bester Tag; letzter Versuch eines Tages</translation>
    </message>
    <message>
        <source>last day; best of a day&apos;s tries</source>
        <translation>letzter Tag; bester Versuch eines Tages</translation>
    </message>
    <message>
        <source>last day; mean of a day&apos;s tries</source>
        <translation>letzter Tag; Mittel der Versuche eines Tages</translation>
    </message>
    <message>
        <source>last day; mean of best five of a day&apos;s tries</source>
        <translation>letzter Tag; Mittel der besten fünf Versuche eines Tages</translation>
    </message>
    <message>
        <source>last day; last of a day&apos;s tries</source>
        <translation>letzter Tag; letzter Versuch eines Tages</translation>
    </message>
    <message>
        <source>last day less first day</source>
        <translation>letzter Tag weniger erster Tag</translation>
    </message>
    <message>
        <source>median of the slopes of all pairs of days</source>
        <translation>Median der Steigungen aller Paare von Tagen</translation>
    </message>
    <message>
        <source>Mann-Kendall, (S -+ 1) / sqrt Var, ties corrected</source>
        <translation>Mann-Kendall, (S -+ 1) / Wurzel Var, um Gleichstände berichtigt</translation>
    </message>
    <message>
        <source>(greater - smaller) / greater x 100</source>
        <translation>(größerer - kleinerer) / größerer Wert x 100</translation>
    </message>
    <message>
        <source>standard deviation of the differences between the first two tries of a day / sqrt 2</source>
        <translation>Standardabweichung der Unterschiede zwischen den ersten zwei Versuchen eines Tages / Wurzel 2</translation>
    </message>
    <message>
        <source>1.96 x sqrt 2 x typical error</source>
        <translation>1,96 x Wurzel 2 x typischer Fehler</translation>
    </message>
    <message>
        <source>0.2 x standard deviation between athletes, freed of the error that their means hold</source>
        <translation>0,2 x Standardabweichung zwischen den Personen, befreit vom Fehler, den ihre Mittel enthalten</translation>
    </message>
    <message>
        <source>100 x typical error / mean of all tries</source>
        <translation>100 x typischer Fehler / Mittel aller Versuche</translation>
    </message>
    <message>
        <source>mean of the differences of two tries of a day; limits of agreement -+ 2 SD</source>
        <translation>Mittel der Unterschiede zweier Versuche eines Tages; Grenzen der Übereinstimmung -+ 2 SD</translation>
    </message>
    <message>
        <source>root mean square of the differences of two tries</source>
        <translation>quadratisches Mittel der Unterschiede zweier Versuche</translation>
    </message>
    <message>
        <source>ICC(3,1) = (BMS - EMS) / (BMS + EMS), of the first two tries of a day</source>
        <translation>ICC(3,1) = (BMS - EMS) / (BMS + EMS), der ersten zwei Versuche eines Tages</translation>
    </message>
    <message>
        <source>greater - smaller; above 4 cm is a limit found in school basketball, no limit for everybody</source>
        <translation>größerer - kleinerer Wert; über 4 cm ist eine im Schulbasketball gefundene Grenze, keine für alle</translation>
    </message>
    <message>
        <source>jumps inside / all jumps x 100</source>
        <translation>Sprünge im Feld / alle Sprünge x 100</translation>
    </message>
    <message>
        <source>of the ten rebounds of the last day</source>
        <translation>der zehn Hüpfer des letzten Tages</translation>
    </message>
    <message>
        <source>load x (1 + reps / 30); one rep returns the load</source>
        <translation>Last x (1 + Wiederholungen / 30); eine Wiederholung gibt die Last selbst</translation>
    </message>
    <message>
        <source>mean of the jumps of the last day; bands to 4, 5, 6 and above, from memory</source>
        <translation>Mittel der Sprünge des letzten Tages; Stufen bis 4, 5, 6 und darüber, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>Common practice, no source. Interval: Wilson 1927, J Am Stat Assoc 22:209-212.</source>
        <translation>Übliche Praxis, ohne Quelle. Bereich: Wilson 1927, J Am Stat Assoc 22:209-212.</translation>
    </message>
    <message>
        <source>Gokeler et al. 2017 (PMC5315711); for times Noyes et al. 1991, from memory.</source>
        <translation>Gokeler et al. 2017 (PMC5315711); für Zeiten Noyes et al. 1991, aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Bishop et al. 2018, Strength Cond J, from memory.</source>
        <translation>Bishop et al. 2018, Strength Cond J, aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Mann 1945, Econometrica 13:245-259; ties as in Gilbert 1987.</source>
        <translation>Mann 1945, Econometrica 13:245-259; Gleichstände wie bei Gilbert 1987.</translation>
    </message>
    <message>
        <source>Hopkins 2000, Sports Med 30:1-15 (secondary: course notes).</source>
        <translation>Hopkins 2000, Sports Med 30:1-15 (aus zweiter Hand: Kursnotizen).</translation>
    </message>
    <message>
        <source>Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (secondary).</source>
        <translation>Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (aus zweiter Hand).</translation>
    </message>
    <message>
        <source>Schmidtbleicher 1992 (secondary).</source>
        <translation>Schmidtbleicher 1992 (aus zweiter Hand).</translation>
    </message>
    <message>
        <source>Epley 1985, from memory; the others from memory too. No estimate holds for work to a tempo.</source>
        <translation>Epley 1985, aus dem Gedächtnis, die anderen ebenso. Für Arbeit im Tempo gilt keine Schätzung.</translation>
    </message>
    <message>
        <source>Padua et al. 2009. Under 5 is a limit used for the return to sport; no verdict by itself.</source>
        <translation>Padua et al. 2009. Unter 5 ist eine für die Rückkehr zum Sport benutzte Grenze; für sich kein Urteil.</translation>
    </message>
    <message>
        <source>No jump was counted.</source>
        <translation>Kein Sprung wurde gezählt.</translation>
    </message>
    <message>
        <source>The reach forwards of one side is missing.</source>
        <translation>Die Reichweite nach vorn einer Seite fehlt.</translation>
    </message>
    <message>
        <source>No landing was looked at.</source>
        <translation>Keine Landung wurde angesehen.</translation>
    </message>
    <message>
        <source>Tries of one day; from one day to another a test can stray more, and the best of tries strays less.</source>
        <translation>Versuche eines Tages; von Tag zu Tag kann ein Test mehr streuen, und der beste von Versuchen streut weniger.</translation>
    </message>
    <message>
        <source>All tries were the same, so that there is no spread to share out.</source>
        <translation>Alle Versuche waren gleich, es gibt also keine Streuung aufzuteilen.</translation>
    </message>
    <message>
        <source>change over the first, %</source>
        <translation>Änderung durch das erste, %</translation>
    </message>
    <message>
        <source>Kendall&apos;s tau a</source>
        <translation>Kendalls Tau a</translation>
    </message>
    <message>
        <source>Kendall&apos;s tau b, with ties</source>
        <translation>Kendalls Tau b, mit Gleichständen</translation>
    </message>
    <message>
        <source>reference side</source>
        <translation>Bezugsseite</translation>
    </message>
    <message>
        <source>side behind</source>
        <translation>Seite, die zurückliegt</translation>
    </message>
    <message>
        <source>apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>against its error</source>
        <translation>gegen seinen Fehler</translation>
    </message>
    <message>
        <source>symmetry angle, left first, %</source>
        <translation>Symmetriewinkel, links zuerst, %</translation>
    </message>
    <message>
        <source>(G - S) / (G + S), %</source>
        <translation>(G - K) / (G + K), %</translation>
    </message>
    <message>
        <source>(G - S) / mean, %</source>
        <translation>(G - K) / Mittel, %</translation>
    </message>
    <message>
        <source>(G - S) / S, %</source>
        <translation>(G - K) / K, %</translation>
    </message>
    <message>
        <source>repeated medians (Siegel 1982)</source>
        <translation>wiederholte Mediane (Siegel 1982)</translation>
    </message>
    <message>
        <source>the test can show it</source>
        <translation>der Test kann sie zeigen</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>lower limit of agreement</source>
        <translation>untere Grenze der Übereinstimmung</translation>
    </message>
    <message>
        <source>upper limit of agreement</source>
        <translation>obere Grenze der Übereinstimmung</translation>
    </message>
    <message>
        <source>ICC(1,2), of the mean of two</source>
        <translation>ICC(1,2), des Mittels zweier</translation>
    </message>
    <message>
        <source>ICC(2,2), of the mean of two</source>
        <translation>ICC(2,2), des Mittels zweier</translation>
    </message>
    <message>
        <source>ICC(3,2), of the mean of two</source>
        <translation>ICC(3,2), des Mittels zweier</translation>
    </message>
    <message>
        <source>reach forwards, cm</source>
        <translation>Reichweite nach vorn, cm</translation>
    </message>
    <message>
        <source>reach backwards and inwards, cm</source>
        <translation>Reichweite nach hinten innen, cm</translation>
    </message>
    <message>
        <source>reach backwards and outwards, cm</source>
        <translation>Reichweite nach hinten außen, cm</translation>
    </message>
    <message>
        <source>limb length, cm</source>
        <translation>Beinlänge, cm</translation>
    </message>
    <message>
        <source>more than 4 cm</source>
        <translation>mehr als 4 cm</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>im Feld</translation>
    </message>
    <message>
        <source>flight over contact, best five</source>
        <translation>Flug durch Kontakt, beste fünf</translation>
    </message>
    <message>
        <source>height over contact, best five, m/s</source>
        <translation>Höhe durch Kontakt, beste fünf, m/s</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>load, kg</source>
        <translation>Last, kg</translation>
    </message>
    <message>
        <source>load of the maximum by a table, %</source>
        <translation>Last vom Maximum nach einer Tabelle, %</translation>
    </message>
    <message>
        <source>within error</source>
        <translation>innerhalb des Fehlers</translation>
    </message>
    <message>
        <source>beyond error</source>
        <translation>über dem Fehler</translation>
    </message>
    <message>
        <source>excellent</source>
        <translation>ausgezeichnet</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>flight</source>
        <translation>Flug</translation>
    </message>
    <message>
        <source>time to take-off</source>
        <translation>Zeit bis zum Absprung</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>both legs, firm</source>
        <translation>beide Beine, fest</translation>
    </message>
    <message>
        <source>one leg, firm</source>
        <translation>ein Bein, fest</translation>
    </message>
    <message>
        <source>heel to toe, firm</source>
        <translation>Ferse an Zeh, fest</translation>
    </message>
    <message>
        <source>both legs, foam</source>
        <translation>beide Beine, weich</translation>
    </message>
    <message>
        <source>one leg, foam</source>
        <translation>ein Bein, weich</translation>
    </message>
    <message>
        <source>heel to toe, foam</source>
        <translation>Ferse an Zeh, weich</translation>
    </message>
    <message>
        <source>errors</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>jumps</source>
        <translation>Sprünge</translation>
    </message>
    <message>
        <source>deg</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>somewhat hard</source>
        <translation>etwas anstrengend</translation>
    </message>
    <message>
        <source>hard</source>
        <translation>anstrengend</translation>
    </message>
    <message>
        <source>very hard</source>
        <translation>sehr anstrengend</translation>
    </message>
    <message>
        <source>maximal</source>
        <translation>maximal</translation>
    </message>
    <message>
        <source>{question}  ·  press a number</source>
        <translation>{question}  ·  Zahl drücken</translation>
    </message>
    <message>
        <source>Kept: {test}, {side}, {day}: {values}.</source>
        <translation>Aufgehoben: {test}, {side}, {day}: {values}.</translation>
    </message>
    <message>
        <source>Corrected. What was recorded stays beside it.</source>
        <translation>Berichtigt. Das Aufgezeichnete bleibt daneben.</translation>
    </message>
    <message>
        <source>Corrected.</source>
        <translation>Berichtigt.</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Zurückgenommen.</translation>
    </message>
    <message>
        <source>That value holds already.</source>
        <translation>Dieser Wert gilt schon.</translation>
    </message>
    <message>
        <source>both sides at once</source>
        <translation>beide Seiten zugleich</translation>
    </message>
    <message>
        <source>Enter which lift it was.</source>
        <translation>Trage ein, welche Hebeübung es war.</translation>
    </message>
    <message>
        <source>Enter all six stances, or the sum alone.</source>
        <translation>Trage alle sechs Stände ein oder die Summe allein.</translation>
    </message>
    <message>
        <source>or the sum alone</source>
        <translation>oder die Summe allein</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>From frames of a video</source>
        <translation>Aus Bildern eines Videos</translation>
    </message>
    <message>
        <source>Led to a tempo</source>
        <translation>Im Tempo geführt</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Frames a second</source>
        <translation>Bilder je Sekunde</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>Try {n}: {value}</source>
        <translation>Versuch {n}: {value}</translation>
    </message>
    <message>
        <source>Try {n}: {problem}</source>
        <translation>Versuch {n}: {problem}</translation>
    </message>
    <message>
        <source>Not held: {stances}.</source>
        <translation>Nicht gehalten: {stances}.</translation>
    </message>
    <message>
        <source>“{typed}” is no number. Enter one from {least} to {most}, such as {such}.</source>
        <translation>„{typed}“ ist keine Zahl. Gib eine von {least} bis {most} ein, wie {such}.</translation>
    </message>
    <message>
        <source>{typed} can be read as {one} and as {other}. Enter one of these.</source>
        <translation>{typed} kann als {one} und als {other} gelesen werden. Gib eines davon ein.</translation>
    </message>
    <message>
        <source>Nothing was counted. Leave the try empty.</source>
        <translation>Es wurde nichts gezählt. Lass den Versuch leer.</translation>
    </message>
    <message>
        <source>{typed} lies outside of this test. Enter a number from {least} to {most}.</source>
        <translation>{typed} liegt außerhalb dieses Tests. Gib eine Zahl von {least} bis {most} ein.</translation>
    </message>
    <message>
        <source>Enter {parts}, in this order with a space between them.</source>
        <translation>Trage {parts} ein, in dieser Folge mit Leerzeichen dazwischen.</translation>
    </message>
    <message>
        <source>Enter {parts}, in this order with a space between them, or the result alone.</source>
        <translation>Trage {parts} ein, in dieser Folge mit Leerzeichen dazwischen, oder das Ergebnis allein.</translation>
    </message>
    <message>
        <source>{typed} is counted in whole numbers.</source>
        <translation>{typed}: Hier wird in ganzen Zahlen gezählt.</translation>
    </message>
    <message>
        <source>A dash is a stance that could not be held: ten errors.</source>
        <translation>Ein Strich steht für einen Stand, der nicht zu halten war: zehn Fehler.</translation>
    </message>
    <message>
        <source>{part} in {unit}</source>
        <translation>{part} in {unit}</translation>
    </message>
    <message>
        <source>Enter how many frames a second the video has, such as 240.</source>
        <translation>Gib ein, wie viele Bilder je Sekunde das Video hat, wie 240.</translation>
    </message>
    <message>
        <source>Enter two frame numbers, of take-off and landing, such as 412 520.</source>
        <translation>Gib zwei Bildnummern ein, von Absprung und Landung, wie 412 520.</translation>
    </message>
    <message>
        <source>Enter three frame numbers, of touch-down, take-off and landing, such as 360 412 520.</source>
        <translation>Gib drei Bildnummern ein, von Aufsetzen, Absprung und Landung, wie 360 412 520.</translation>
    </message>
    <message>
        <source>Enter three frame numbers, of the first movement, take-off and landing, such as 240 412 520.</source>
        <translation>Trage drei Bildnummern ein, der ersten Bewegung, des Absprungs und der Landung, etwa 240 412 520.</translation>
    </message>
    <message>
        <source>Frame numbers rise: each of them comes after the one before it.</source>
        <translation>Bildnummern steigen: Jede kommt nach der vor ihr.</translation>
    </message>
    <message>
        <source>One frame more or less changes it by {error} cm; by chance it is off by {chance} cm (SD).</source>
        <translation>Ein Bild mehr oder weniger ändert es um {error} cm; zufällig liegt es um {chance} cm daneben (SD).</translation>
    </message>
    <message>
        <source>Enter at least one try.</source>
        <translation>Gib mindestens einen Versuch ein.</translation>
    </message>
    <message>
        <source>One frame more or less changes the contact time by {share} %.</source>
        <translation>Ein Bild mehr oder weniger ändert die Kontaktzeit um {share} %.</translation>
    </message>
    <message>
        <source>Video at {fps} frames a second, frames {frames}.</source>
        <translation>Video mit {fps} Bildern je Sekunde, Bilder {frames}.</translation>
    </message>
    <message>
        <source>Try {n}</source>
        <translation>Versuch {n}</translation>
    </message>
    <message>
        <source>What was answered before the session is not in the record yet.</source>
        <translation>Was vor der Einheit beantwortet wurde, steht noch nicht in der Aufzeichnung.</translation>
    </message>
    <message>
        <source>{name}, drawing</source>
        <translation>{name}, Zeichnung</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Written to {path}. It holds health data and is not encrypted.</source>
        <translation>Nach {path} geschrieben. Die Datei enthält Gesundheitsdaten und ist nicht verschlüsselt.</translation>
    </message>
    <message>
        <source>{path} cannot be written. Choose a folder that exists and is yours.</source>
        <translation>{path} lässt sich nicht schreiben. Wähle einen Ordner, den es gibt und der dir gehört.</translation>
    </message>
    <message>
        <source>Making the report …</source>
        <translation>Der Bericht wird gemacht …</translation>
    </message>
    <message>
        <source>{name} {day}.pdf</source>
        <translation>{name} {day}.pdf</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Bericht sichern</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>New value</source>
        <translation>Neuer Wert</translation>
    </message>
    <message>
        <source>Skipped for today. What you wrote is kept for your practitioner.</source>
        <translation>Für heute ausgelassen. Was du geschrieben hast, ist für deine Betreuung aufgehoben.</translation>
    </message>
    <message>
        <source>Part of what was done is not in the record yet. Try again, or leave without it.</source>
        <translation>Ein Teil des Getanen steht noch nicht in der Aufzeichnung. Versuche es noch einmal oder geh ohne ihn.</translation>
    </message>
    <message>
        <source>Review what was done</source>
        <translation>Rückschau</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>{day}, {plan}</source>
        <translation>{day}, {plan}</translation>
    </message>
    <message>
        <source>{day}, {time}, {plan}</source>
        <translation>{day}, {time}, {plan}</translation>
    </message>
    <message>
        <source>digit or letter, ↑ ↓</source>
        <translation>Ziffer oder Buchstabe, ↑ ↓</translation>
    </message>
    <message>
        <source>choose somebody; then one of these:</source>
        <translation>jemanden wählen; dann eines davon:</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 bis 9</translation>
    </message>
    <message>
        <source>… the fault with that number</source>
        <translation>… der Fehler mit dieser Zahl</translation>
    </message>
    <message>
        <source>F, M</source>
        <translation>F, M</translation>
    </message>
    <message>
        <source>… a fault without a name, a missed rep</source>
        <translation>… ein Fehler ohne Namen, eine nicht gemachte Wiederholung</translation>
    </message>
    <message>
        <source>O, Y</source>
        <translation>O, Y</translation>
    </message>
    <message>
        <source>… sits out the exercise, a note</source>
        <translation>… setzt bei der Übung aus, eine Notiz</translation>
    </message>
    <message>
        <source>Enter, L</source>
        <translation>Enter, L</translation>
    </message>
    <message>
        <source>… is here, leaves for good (L twice)</source>
        <translation>… ist da, geht ganz (zweimal L)</translation>
    </message>
    <message>
        <source>H</source>
        <translation>H</translation>
    </message>
    <message>
        <source>… at stations: their tempo is heard, or no longer</source>
        <translation>… an Stationen: ihr Tempo ist zu hören oder nicht mehr</translation>
    </message>
    <message>
        <source>/</source>
        <translation>/</translation>
    </message>
    <message>
        <source>find a name, before the session</source>
        <translation>einen Namen suchen, vor der Einheit</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>one rep for all, at one&apos;s own pace</source>
        <translation>eine Wiederholung für alle, im eigenen Tempo</translation>
    </message>
    <message>
        <source>T, N</source>
        <translation>T, N</translation>
    </message>
    <message>
        <source>15 s more rest, begin now</source>
        <translation>15 s mehr Pause, jetzt beginnen</translation>
    </message>
    <message>
        <source>E, A</source>
        <translation>E, A</translation>
    </message>
    <message>
        <source>end this bout, do it again</source>
        <translation>diesen Durchgang beenden, noch einmal machen</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>leave out this exercise for all; at stations, this window</source>
        <translation>diese Übung für alle auslassen; an Stationen dieses Fenster</translation>
    </message>
    <message>
        <source>←, →</source>
        <translation>←, →</translation>
    </message>
    <message>
        <source>back, on: by a bout or a window</source>
        <translation>zurück, weiter: um einen Durchgang oder ein Fenster</translation>
    </message>
    <message>
        <source>+, -, V</source>
        <translation>+, -, V</translation>
    </message>
    <message>
        <source>louder, softer, sound off or on</source>
        <translation>lauter, leiser, Ton aus oder an</translation>
    </message>
    <message>
        <source>S twice</source>
        <translation>zweimal S</translation>
    </message>
    <message>
        <source>stop for everybody</source>
        <translation>für alle aufhören</translation>
    </message>
    <message>
        <source>F9</source>
        <translation>F9</translation>
    </message>
    <message>
        <source>gym screen</source>
        <translation>Hallenbild</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>out of a choice; out of the session, which is asked</source>
        <translation>aus einer Wahl; aus der Einheit, es wird gefragt</translation>
    </message>
    <message>
        <source>● done · ▲ missed · ◇ excused · ○ to come · Page Up and Page Down change the month</source>
        <translation>● gemacht · ▲ versäumt · ◇ entschuldigt · ○ steht an · Bild auf und Bild ab wechseln den Monat</translation>
    </message>
    <message>
        <source>Say why it is excused: the reason stands beside the session.</source>
        <translation>Gib an, warum sie entschuldigt ist: Der Grund steht bei der Einheit.</translation>
    </message>
    <message>
        <source>Choose a session of this day first.</source>
        <translation>Wähle zuerst eine Einheit dieses Tages.</translation>
    </message>
    <message>
        <source>Tick at least one athlete.</source>
        <translation>Hake mindestens eine Person an.</translation>
    </message>
    <message>
        <source>The last day of a weekly session lies after its first, by ten years at most.</source>
        <translation>Der letzte Tag einer wöchentlichen Einheit liegt nach dem ersten, höchstens zehn Jahre später.</translation>
    </message>
    <message>
        <source>Plan sessions</source>
        <translation>Einheiten planen</translation>
    </message>
    <message>
        <source>Plan sessions: {name}</source>
        <translation>Einheiten planen: {name}</translation>
    </message>
    <message>
        <source>Every week until</source>
        <translation>Jede Woche bis</translation>
    </message>
    <message>
        <source>Another file …</source>
        <translation>Andere Datei …</translation>
    </message>
    <message>
        <source>Excuse</source>
        <translation>Entschuldigen</translation>
    </message>
    <message>
        <source>Make due</source>
        <translation>Doch fällig</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>End from here</source>
        <translation>Ab hier beenden</translation>
    </message>
    <message>
        <source>Tick everybody</source>
        <translation>Alle anhaken</translation>
    </message>
    <message>
        <source>Calendar file …</source>
        <translation>Kalenderdatei …</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Einplanen</translation>
    </message>
    <message>
        <source>Plan a session on this day</source>
        <translation>Einheit an diesem Tag planen</translation>
    </message>
    <message>
        <source>Sessions of this day</source>
        <translation>Einheiten dieses Tages</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Für wen</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Move to</source>
        <translation>Verschieben auf</translation>
    </message>
    <message>
        <source>Time, if any</source>
        <translation>Uhrzeit, falls fest</translation>
    </message>
    <message>
        <source>Also on</source>
        <translation>Auch am</translation>
    </message>
    <message>
        <source>Month and day</source>
        <translation>Monat und Tag</translation>
    </message>
    <message>
        <source>Also on {day}</source>
        <translation>Auch am {day}</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>{n} today</source>
        <translation>{n} heute</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>steht an</translation>
    </message>
    <message>
        <source>“{typed}” is no time of day. Enter one such as 18:30, or leave it empty.</source>
        <translation>„{typed}“ ist keine Uhrzeit. Gib eine wie 18:30 ein oder lass das Feld leer.</translation>
    </message>
    <message>
        <source>{state}: {reason}</source>
        <translation>{state}: {reason}</translation>
    </message>
    <message>
        <source>Planned: {plan}, from {day}, for {names}.</source>
        <translation>Geplant: {plan}, ab {day}, für {names}.</translation>
    </message>
    <message>
        <source>Excused. It counts neither as done nor as missed.</source>
        <translation>Entschuldigt. Sie zählt weder als gemacht noch als versäumt.</translation>
    </message>
    <message>
        <source>It is due again.</source>
        <translation>Sie ist wieder fällig.</translation>
    </message>
    <message>
        <source>Moved to {day}.</source>
        <translation>Verschoben auf {day}.</translation>
    </message>
    <message>
        <source>It comes no more from {day} on. What was before stays.</source>
        <translation>Ab {day} kommt sie nicht mehr. Was davor war, bleibt.</translation>
    </message>
    <message>
        <source>Calendar files (*.ics)</source>
        <translation>Kalenderdateien (*.ics)</translation>
    </message>
    <message>
        <source>Written to {path}.</source>
        <translation>Geschrieben nach {path}.</translation>
    </message>
    <message>
        <source>Save the calendar</source>
        <translation>Kalender speichern</translation>
    </message>
    <message>
        <source>Index of the right side, reference left</source>
        <translation>Index der rechten Seite, Bezug links</translation>
    </message>
    <message>
        <source>Index of the left side, reference right</source>
        <translation>Index der linken Seite, Bezug rechts</translation>
    </message>
    <message>
        <source>index {n}, reference left</source>
        <translation>Index {n}, Bezug links</translation>
    </message>
    <message>
        <source>index {n}, reference right</source>
        <translation>Index {n}, Bezug rechts</translation>
    </message>
    <message>
        <source>no index: nobody chose a reference side</source>
        <translation>kein Index: niemand hat eine Bezugsseite gewählt</translation>
    </message>
    <message>
        <source>beyond the error of the test</source>
        <translation>über dem Fehler des Tests</translation>
    </message>
    <message>
        <source>within the error of the test</source>
        <translation>innerhalb des Fehlers des Tests</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>Index, reference left</source>
        <translation>Index, Bezug links</translation>
    </message>
    <message>
        <source>Index, reference right</source>
        <translation>Index, Bezug rechts</translation>
    </message>
    <message>
        <source>left behind by {n} %</source>
        <translation>links um {n} % zurück</translation>
    </message>
    <message>
        <source>right behind by {n} %</source>
        <translation>rechts um {n} % zurück</translation>
    </message>
    <message>
        <source>neither behind</source>
        <translation>keine zurück</translation>
    </message>
    <message>
        <source>left by {n} %</source>
        <translation>links um {n} %</translation>
    </message>
    <message>
        <source>right by {n} %</source>
        <translation>rechts um {n} %</translation>
    </message>
    <message>
        <source>neither</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Behind</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Against error</source>
        <translation>Gegen Fehler</translation>
    </message>
    <message>
        <source>Index</source>
        <translation>Index</translation>
    </message>
    <message>
        <source>Reach composite of the {side}: {value} % of the limb length.</source>
        <translation>Gesamtreichweite der {side}: {value} % der Beinlänge.</translation>
    </message>
    <message>
        <source>Enter the limb length of the {side}, and the composite is known.</source>
        <translation>Trage die Beinlänge der {side} ein, dann ist die Gesamtreichweite bekannt.</translation>
    </message>
    <message>
        <source>Forwards the sides are {apart} cm apart: more than 4 cm, a limit found in school basketball.</source>
        <translation>Nach vorn liegen die Seiten {apart} cm auseinander: mehr als 4 cm, eine im Schulbasketball gefundene Grenze.</translation>
    </message>
    <message>
        <source>Estimated for one rep: Epley {epley}, Brzycki {brzycki}, Lombardi {lombardi} kg.</source>
        <translation>Geschätzt für eine Wiederholung: Epley {epley}, Brzycki {brzycki}, Lombardi {lombardi} kg.</translation>
    </message>
    <message>
        <source>Flight over contact {flight}, height over contact {height} m/s.</source>
        <translation>Flug durch Kontakt {flight}, Höhe durch Kontakt {height} m/s.</translation>
    </message>
    <message>
        <source>The contact lasts 250 ms or longer.</source>
        <translation>Der Kontakt dauert 250 ms oder länger.</translation>
    </message>
    <message>
        <source>{good} of {n} in the square: {share} % ({low} to {high} %).</source>
        <translation>{good} von {n} im Feld: {share} % ({low} bis {high} %).</translation>
    </message>
    <message>
        <source>{sum} errors; of each stance ten at most are counted.</source>
        <translation>{sum} Fehler; je Stand werden höchstens zehn gezählt.</translation>
    </message>
    <message>
        <source>{height} cm high, take-off at {speed} m/s.</source>
        <translation>{height} cm hoch, Absprung mit {speed} m/s.</translation>
    </message>
    <message>
        <source>Best five of ten: flight over contact {flight}, height over contact {height} m/s.</source>
        <translation>Beste fünf von zehn: Flug durch Kontakt {flight}, Höhe durch Kontakt {height} m/s.</translation>
    </message>
    <message>
        <source>{slow} of 10 contacts last 250 ms or longer.</source>
        <translation>{slow} von 10 Kontakten dauern 250 ms oder länger.</translation>
    </message>
    <message>
        <source>{unit} a week</source>
        <translation>{unit} je Woche</translation>
    </message>
    <message>
        <source>Kept, with who and why.</source>
        <translation>Behalten, mit wer und warum.</translation>
    </message>
    <message>
        <source>That side holds already.</source>
        <translation>Diese Seite gilt schon.</translation>
    </message>
    <message>
        <source>The side that the other is measured against. The program never chooses it.</source>
        <translation>Die Seite, an der die andere gemessen wird. Das Programm wählt sie nie.</translation>
    </message>
    <message>
        <source>no side</source>
        <translation>keine Seite</translation>
    </message>
    <message>
        <source>Reference side</source>
        <translation>Bezugsseite</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Wahl</translation>
    </message>
    <message>
        <source>Choice and history</source>
        <translation>Wahl und Verlauf</translation>
    </message>
    <message>
        <source>sleep {n}</source>
        <translation>Schlaf {n}</translation>
    </message>
    <message>
        <source>fatigue {n}</source>
        <translation>Müdigkeit {n}</translation>
    </message>
    <message>
        <source>stress {n}</source>
        <translation>Stress {n}</translation>
    </message>
    <message>
        <source>soreness {n}</source>
        <translation>Muskelkater {n}</translation>
    </message>
    <message>
        <source>spoke to the practitioner first</source>
        <translation>sprach zuerst mit der Fachperson</translation>
    </message>
    <message>
        <source>left the day out</source>
        <translation>ließ den Tag aus</translation>
    </message>
    <message>
        <source>sum {n} of 28</source>
        <translation>Summe {n} von 28</translation>
    </message>
    <message>
        <source>something changed in their health</source>
        <translation>etwas an der Gesundheit hat sich geändert</translation>
    </message>
    <message>
        <source>a warning sign</source>
        <translation>ein Warnzeichen</translation>
    </message>
    <message>
        <source>note: {note}</source>
        <translation>Notiz: {note}</translation>
    </message>
    <message>
        <source>Before: {answers}</source>
        <translation>Vorher: {answers}</translation>
    </message>
    <message>
        <source>{told} ({where})</source>
        <translation>{told} ({where})</translation>
    </message>
    <message>
        <source>pain not answered</source>
        <translation>Schmerz nicht angegeben</translation>
    </message>
    <message>
        <source>{told}, {place}</source>
        <translation>{told}, {place}</translation>
    </message>
    <message>
        <source>everybody</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>need a look</source>
        <translation>brauchen einen Blick</translation>
    </message>
    <message>
        <source>answers owed</source>
        <translation>Antworten offen</translation>
    </message>
    <message>
        <source>pain above 2</source>
        <translation>Schmerz über 2</translation>
    </message>
    <message>
        <source>no session this week</source>
        <translation>diese Woche keine Einheit</translation>
    </message>
    <message>
        <source>missed one last week</source>
        <translation>letzte Woche eine versäumt</translation>
    </message>
    <message>
        <source>Say who and why: both stand in the history.</source>
        <translation>Sag, wer und warum: Beides steht im Verlauf.</translation>
    </message>
</context>
</TS>
