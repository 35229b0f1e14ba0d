<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>AboutDialog</name>
    <message>
        <source>About idkey</source>
        <translation>Über idkey</translation>
    </message>
    <message>
        <source>Qt and PySide6 are used under the LGPL, version 3: they are separate libraries that may be replaced by others of the same kind.</source>
        <translation>Qt und PySide6 werden unter der LGPL, Version 3, verwendet: Sie sind eigene Bibliotheken und dürfen durch andere derselben Art ersetzt werden.</translation>
    </message>
    <message>
        <source>Each key names its own licence. The drawings are part of the program. The font is under the SIL Open Font License; its text is in {file}.</source>
        <translation>Jeder Schlüssel nennt seine eigene Lizenz. Die Zeichnungen gehören zum Programm. Die Schrift steht unter der SIL Open Font License; ihr Text liegt in {file}.</translation>
    </message>
    <message>
        <source>A name is an opinion on evidence. A determination is no safety clearance, and permit law is to be checked locally.</source>
        <translation>Ein Name ist eine Meinung zu Belegen. Eine Bestimmung ist keine Freigabe, und was das Artenschutzrecht verlangt, ist vor Ort zu prüfen.</translation>
    </message>
    <message>
        <source>The program is under the MIT licence. It opens no network connection.</source>
        <translation>Das Programm steht unter der MIT-Lizenz. Es öffnet keine Netzverbindung.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Bestandteile</translation>
    </message>
</context>
<context>
    <name>AnimalButton</name>
    <message>
        <source>Sex and stage of the animal, and how it is looked at</source>
        <translation>Geschlecht und Stadium des Tieres, und wie hingesehen wird</translation>
    </message>
    <message>
        <source>Sex and stage open</source>
        <translation>Geschlecht und Stadium offen</translation>
    </message>
    <message>
        <source>Animal: {known}</source>
        <translation>Tier: {known}</translation>
    </message>
    <message>
        <source>Any sex</source>
        <translation>Geschlecht offen</translation>
    </message>
    <message>
        <source>Any stage</source>
        <translation>Stadium offen</translation>
    </message>
</context>
<context>
    <name>AnswerBar</name>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>How it was looked at</source>
        <translation>Wie es angesehen wurde</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Several apply</source>
        <translation>Mehreres trifft zu</translation>
    </message>
    <message>
        <source>Mark more than one: it is one of these.</source>
        <translation>Mehr als eines markieren: eines davon ist es.</translation>
    </message>
    <message>
        <source>None of these</source>
        <translation>Nichts davon</translation>
    </message>
    <message>
        <source>Cannot see it</source>
        <translation>Nicht zu sehen</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>A remark for the record</source>
        <translation>Eine Bemerkung für die Akte</translation>
    </message>
    <message>
        <source>Not what I marked</source>
        <translation>Nicht das Markierte</translation>
    </message>
</context>
<context>
    <name>AnswerRow</name>
    <message>
        <source>right</source>
        <translation>richtig</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>falsch</translation>
    </message>
</context>
<context>
    <name>BenchBar</name>
    <message>
        <source>What you need to know</source>
        <translation>Was Sie wissen müssen</translation>
    </message>
    <message>
        <source>How to go through the key</source>
        <translation>Wie man durch den Schlüssel geht</translation>
    </message>
    <message>
        <source>Free choice</source>
        <translation>Freie Wahl</translation>
    </message>
    <message>
        <source>Couplets</source>
        <translation>Alternativen</translation>
    </message>
</context>
<context>
    <name>CaseView</name>
    <message>
        <source>What to look at</source>
        <translation>Was angesehen wird</translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht zu sagen</translation>
    </message>
    <message>
        <source>Conclude</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>No portrait in this key</source>
        <translation>Kein Bild in diesem Schlüssel</translation>
    </message>
    <message>
        <source>What do the findings carry?</source>
        <translation>Was tragen die Befunde?</translation>
    </message>
    <message>
        <source>No more than was seen: open is an answer too.</source>
        <translation>Nicht mehr, als gesehen wurde: Offen ist auch eine Antwort.</translation>
    </message>
    <message>
        <source>What do you look at?</source>
        <translation>Was sehen Sie sich an?</translation>
    </message>
    <message>
        <source>That could not be seen this way.</source>
        <translation>So war das nicht zu sehen.</translation>
    </message>
    <message>
        <source>Choose a character and a way of looking; typing finds it.</source>
        <translation>Wählen Sie ein Merkmal und eine Art hinzusehen; Tippen findet es.</translation>
    </message>
    <message>
        <source>How it went</source>
        <translation>Wie es lief</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Noch nichts.</translation>
    </message>
    <message>
        <source>Seen so far</source>
        <translation>Bisher gesehen</translation>
    </message>
    <message>
        <source>Not ruled out</source>
        <translation>Nicht ausgeschlossen</translation>
    </message>
</context>
<context>
    <name>CautionBar</name>
    <message>
        <source>Do not handle.</source>
        <translation>Nicht anfassen.</translation>
    </message>
    <message>
        <source>Only medically significant species are left.</source>
        <translation>Nur medizinisch bedeutsame Arten sind übrig.</translation>
    </message>
    <message>
        <source>A medically significant species is still possible.</source>
        <translation>Eine medizinisch bedeutsame Art ist noch möglich.</translation>
    </message>
    <message>
        <source>Treat as listed.</source>
        <translation>Wie gelistet behandeln.</translation>
    </message>
    <message>
        <source>Only permit-listed species are left.</source>
        <translation>Nur gelistete Arten sind übrig.</translation>
    </message>
    <message>
        <source>A permit-listed species is still possible.</source>
        <translation>Eine gelistete Art ist noch möglich.</translation>
    </message>
</context>
<context>
    <name>ClaimView</name>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Arrived on</source>
        <translation>Angekommen am</translation>
    </message>
    <message>
        <source>Claimed sex</source>
        <translation>Geschlecht laut Etikett</translation>
    </message>
    <message>
        <source>Claimed size</source>
        <translation>Größe laut Etikett</translation>
    </message>
</context>
<context>
    <name>CompareDelegate</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>overlaps</source>
        <translation>überschneidet sich</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>not known for all</source>
        <translation>nicht für alle bekannt</translation>
    </message>
</context>
<context>
    <name>CompareSide</name>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Zoom together</source>
        <translation>Gemeinsam vergrößern</translation>
    </message>
    <message>
        <source>Picture to compare with</source>
        <translation>Bild zum Vergleichen</translation>
    </message>
    <message>
        <source>Choose a picture or a drawing above.</source>
        <translation>Wählen Sie oben ein Bild oder eine Zeichnung.</translation>
    </message>
    <message>
        <source>Picture {n}</source>
        <translation>Bild {n}</translation>
    </message>
    <message>
        <source>Drawing: {state}</source>
        <translation>Zeichnung: {state}</translation>
    </message>
    <message>
        <source>Drawing: how to measure</source>
        <translation>Zeichnung: wie gemessen wird</translation>
    </message>
</context>
<context>
    <name>CompareView</name>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>Character</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>Concluding</name>
    <message>
        <source>Look at more first</source>
        <translation>Erst mehr ansehen</translation>
    </message>
    <message>
        <source>About the label:</source>
        <translation>Zum Etikett:</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Must it still be treated as medically significant?</source>
        <translation>Muss es noch als medizinisch bedeutsam behandelt werden?</translation>
    </message>
    <message>
        <source>Must it still be treated as permit-listed?</source>
        <translation>Muss es noch als gelistet behandelt werden?</translation>
    </message>
</context>
<context>
    <name>ConfusionTable</name>
    <message>
        <source>{truth} taken for {said}: {n}</source>
        <translation>{truth} für {said} gehalten: {n}</translation>
    </message>
    <message>
        <source>What was there, and what was said</source>
        <translation>Was da war, und was gesagt wurde</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
</context>
<context>
    <name>CountPanel</name>
    <message>
        <source>Doubtful</source>
        <translation>Zweifelhaft</translation>
    </message>
    <message>
        <source>The chosen mark, or the last one, may be none.</source>
        <translation>Die gewählte oder die letzte Marke ist vielleicht keine.</translation>
    </message>
    <message>
        <source>Take one back</source>
        <translation>Eine zurücknehmen</translation>
    </message>
    <message>
        <source>Click each one once; the marks are numbered.</source>
        <translation>Jedes einmal anklicken; die Marken sind nummeriert.</translation>
    </message>
    <message>
        <source>A doubtful mark counts half, and widens the uncertainty.</source>
        <translation>Eine zweifelhafte Marke zählt halb und vergrößert die Unsicherheit.</translation>
    </message>
    <message>
        <source>{sure} sure</source>
        <translation>{sure} sicher</translation>
    </message>
    <message>
        <source>, {doubtful} doubtful</source>
        <translation>, {doubtful} zweifelhaft</translation>
    </message>
</context>
<context>
    <name>CoupletMap</name>
    <message>
        <source>Map of the couplets</source>
        <translation>Karte der Alternativen</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) taken</source>
        <translation>
            <numerusform>%n Schritt gegangen</numerusform>
            <numerusform>%n Schritte gegangen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Distances</name>
    <message>
        <source>Difference of the states: {said}</source>
        <translation>Abstand der Zustände: {said}</translation>
    </message>
    <message>
        <source>The patch in neutral light</source>
        <translation>Der Fleck in neutralem Licht</translation>
    </message>
</context>
<context>
    <name>DrillView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Drawing the next animal …</source>
        <translation>Das nächste Tier wird gezeichnet …</translation>
    </message>
    <message>
        <source>Drill: learn to see the difference</source>
        <translation>Übung: den Unterschied sehen lernen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>{right} of {n} right</source>
        <translation>{right} von {n} richtig</translation>
    </message>
    <message>
        <source>{n} to go</source>
        <translation>noch {n}</translation>
    </message>
</context>
<context>
    <name>EraseDialog</name>
    <message>
        <source>Takes the reference out of every sale, draft and backup of this book, for good. The records stay verifiable. Write it exactly as it was noted.</source>
        <translation>Nimmt den Hinweis aus jedem Verkauf, Entwurf und jeder Sicherung dieses Buches, endgültig. Die Akten bleiben prüfbar. Schreiben Sie ihn genau so, wie er notiert wurde.</translation>
    </message>
    <message>
        <source>Erase a buyer</source>
        <translation>Einen Käufer löschen</translation>
    </message>
    <message>
        <source>Reference to the buyer</source>
        <translation>Hinweis auf den Käufer</translation>
    </message>
</context>
<context>
    <name>ExerciseCard</name>
    <message>
        <source>Begin</source>
        <translation>Anfangen</translation>
    </message>
    <message>
        <source>Practise beyond</source>
        <translation>Darüber hinaus üben</translation>
    </message>
</context>
<context>
    <name>Feedback</name>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Where to look</source>
        <translation>Wo man hinsieht</translation>
    </message>
    <message>
        <source>What goes wrong</source>
        <translation>Was oft schiefgeht</translation>
    </message>
</context>
<context>
    <name>Frame</name>
    <message>
        <source>Opening records and keys; you can write already.</source>
        <translation>Akten und Schlüssel werden geöffnet; Sie können schon schreiben.</translation>
    </message>
</context>
<context>
    <name>HelpView</name>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>LabelNote</name>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Put this note away</source>
        <translation>Hinweis weglegen</translation>
    </message>
    <message>
        <source>This decides it:</source>
        <translation>Das entscheidet:</translation>
    </message>
    <message>
        <source>This key has no entry for “{text}”.</source>
        <translation>Dieser Schlüssel hat keinen Eintrag für „{text}“.</translation>
    </message>
    <message>
        <source>Nothing in it comes near. The identification goes on.</source>
        <translation>Nichts darin kommt dem nahe. Die Bestimmung geht weiter.</translation>
    </message>
    <message>
        <source>Did the label mean one of these? If not, just go on.</source>
        <translation>Meint das Etikett eines davon? Wenn nicht, einfach weitermachen.</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
</context>
<context>
    <name>LargePictures</name>
    <message>
        <source>← → other states · Esc back</source>
        <translation>← → andere Zustände · Esc zurück</translation>
    </message>
</context>
<context>
    <name>LeadCard</name>
    <message>
        <source>on to couplet {number}</source>
        <translation>weiter bei {number}</translation>
    </message>
    <message>
        <source>ends at {names}</source>
        <translation>endet bei {names}</translation>
    </message>
</context>
<context>
    <name>LedgerView</name>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n Befund</numerusform>
            <numerusform>%n Befunde</numerusform>
        </translation>
    </message>
    <message>
        <source>Ledger of findings</source>
        <translation>Liste der Befunde</translation>
    </message>
    <message>
        <source>Nothing looked at yet. What you note appears here, with what it changed; Enter corrects it, Delete takes it back.</source>
        <translation>Noch nichts angesehen. Was Sie notieren, erscheint hier mit seiner Wirkung; Enter berichtigt, Entf nimmt zurück.</translation>
    </message>
    <message>
        <source>Order of the ledger</source>
        <translation>Reihenfolge der Befunde</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>By time</source>
        <translation>Nach Zeit</translation>
    </message>
    <message>
        <source>By effect</source>
        <translation>Nach Wirkung</translation>
    </message>
    <message>
        <source>rules nothing out</source>
        <translation>schließt nichts aus</translation>
    </message>
    <message numerus="yes">
        <source>ruled out %n</source>
        <translation>
            <numerusform>%n ausgeschlossen</numerusform>
            <numerusform>%n ausgeschlossen</numerusform>
        </translation>
    </message>
    <message>
        <source>raised the doubt</source>
        <translation>mehrte die Zweifel</translation>
    </message>
    <message>
        <source>helped a lot</source>
        <translation>half viel</translation>
    </message>
    <message>
        <source>helped</source>
        <translation>half</translation>
    </message>
    <message>
        <source>changed little</source>
        <translation>änderte wenig</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurücknehmen</translation>
    </message>
</context>
<context>
    <name>LinesPanel</name>
    <message>
        <source>Which line</source>
        <translation>Welche Linie</translation>
    </message>
    <message>
        <source>Lines with joints (C)</source>
        <translation>Linien mit Knicken (C)</translation>
    </message>
    <message>
        <source>Click joint by joint; Enter or a double click ends the line.</source>
        <translation>Knick für Knick anklicken; Enter oder ein Doppelklick beendet die Linie.</translation>
    </message>
    <message>
        <source>Leans away</source>
        <translation>Neigt sich weg</translation>
    </message>
    <message>
        <source>They lie</source>
        <translation>Sie liegen</translation>
    </message>
    <message>
        <source>End points are</source>
        <translation>Die Enden sind</translation>
    </message>
    <message>
        <source>The part leans away from the camera</source>
        <translation>Das Teil neigt sich von der Kamera weg</translation>
    </message>
    <message>
        <source>Part and ruler lie</source>
        <translation>Teil und Lineal liegen</translation>
    </message>
    <message>
        <source>The two lines lie</source>
        <translation>Die zwei Linien liegen</translation>
    </message>
    <message>
        <source>The end points are</source>
        <translation>Die Endpunkte sind</translation>
    </message>
    <message>
        <source>Length of the ruler line in {unit}</source>
        <translation>Länge der Linie am Lineal in {unit}</translation>
    </message>
    <message>
        <source>Standard uncertainty of that length</source>
        <translation>Standardunsicherheit dieser Länge</translation>
    </message>
    <message>
        <source>Length of the ruler line</source>
        <translation>Länge der Linie am Lineal</translation>
    </message>
    <message>
        <source>Next joint of “{name}”; Enter ends it.</source>
        <translation>Nächster Knick von „{name}“; Enter beendet.</translation>
    </message>
    <message>
        <source>Other end of “{name}”.</source>
        <translation>Anderes Ende von „{name}“.</translation>
    </message>
    <message>
        <source>Click both ends of “{name}”.</source>
        <translation>Beide Enden von „{name}“ anklicken.</translation>
    </message>
    <message>
        <source>Enough repeats; more make it a little surer.</source>
        <translation>Genug Wiederholungen; mehr machen es etwas sicherer.</translation>
    </message>
    <message>
        <source>{name}: {lengths} px ({n} of {enough})</source>
        <translation>{name}: {lengths} px ({n} von {enough})</translation>
    </message>
</context>
<context>
    <name>LineupDelegate</name>
    <message>
        <source>danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>painful</source>
        <translation>schmerzhaft</translation>
    </message>
    <message>
        <source>papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>conflict</source>
        <translation>Widerspruch</translation>
    </message>
</context>
<context>
    <name>LineupView</name>
    <message numerus="yes">
        <source>%n possible</source>
        <translation>
            <numerusform>%n möglich</numerusform>
            <numerusform>%n möglich</numerusform>
        </translation>
    </message>
    <message>
        <source>Line-up</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Choose two or more, with Ctrl or Shift</source>
        <translation>Zwei oder mehr wählen, mit Strg oder Umschalt</translation>
    </message>
    <message>
        <source>Portraits are drawn from what the key says, to one scale</source>
        <translation>Die Bilder sind nach den Angaben des Schlüssels gezeichnet, in einem Maßstab</translation>
    </message>
</context>
<context>
    <name>LookPanel</name>
    <message>
        <source>What to mark</source>
        <translation>Was markiert wird</translation>
    </message>
    <message>
        <source>The neutral thing is</source>
        <translation>Das Neutrale ist</translation>
    </message>
    <message>
        <source>Moulted within the last days</source>
        <translation>In den letzten Tagen gehäutet</translation>
    </message>
    <message>
        <source>Patch</source>
        <translation>Fleck</translation>
    </message>
    <message>
        <source>Neutral thing</source>
        <translation>Neutrales</translation>
    </message>
    <message>
        <source>Drag a box over an even patch of the part.</source>
        <translation>Einen Kasten über einen gleichmäßigen Fleck des Teils ziehen.</translation>
    </message>
    <message>
        <source>Drag a box over the part the drawings show.</source>
        <translation>Einen Kasten über das Teil ziehen, das die Zeichnungen zeigen.</translation>
    </message>
    <message>
        <source>Now drag a box over something grey or white in the same light.</source>
        <translation>Jetzt einen Kasten über etwas Graues oder Weißes im selben Licht ziehen.</translation>
    </message>
    <message>
        <source>Say below which state it is; the picture does not decide.</source>
        <translation>Sagen Sie unten, welcher Zustand es ist; das Bild entscheidet nicht.</translation>
    </message>
    <message>
        <source>Sharp and lit well enough to show granules and hairs.</source>
        <translation>Scharf und hell genug, um Körnchen und Haare zu zeigen.</translation>
    </message>
    <message>
        <source>This patch cannot show a fine surface:</source>
        <translation>Dieser Fleck kann keine feine Oberfläche zeigen:</translation>
    </message>
    <message>
        <source>Nearest: “{state}”, {distance} away.</source>
        <translation>Am nächsten: „{state}“, Abstand {distance}.</translation>
    </message>
    <message>
        <source>No state is clearly nearest; the colour alone does not decide.</source>
        <translation>Kein Zustand ist deutlich am nächsten; die Farbe allein entscheidet nicht.</translation>
    </message>
</context>
<context>
    <name>LotPanel</name>
    <message>
        <source>Animals in the lot</source>
        <translation>Tiere in der Lieferung</translation>
    </message>
    <message>
        <source>Wrong ones you are ready to miss, %</source>
        <translation>Falsche, die Ihnen entgehen dürfen, %</translation>
    </message>
    <message>
        <source>How sure you want to be, %</source>
        <translation>Wie sicher Sie sein wollen, %</translation>
    </message>
    <message>
        <source>Looked at so far</source>
        <translation>Bisher angesehen</translation>
    </message>
    <message>
        <source>Wrong among them</source>
        <translation>Falsche darunter</translation>
    </message>
    <message>
        <source>How many of a lot to look at</source>
        <translation>Wie viele einer Lieferung anzusehen sind</translation>
    </message>
    <message>
        <source>Write the size of the lot (1 to {most}) and both shares.</source>
        <translation>Schreiben Sie die Größe der Lieferung (1 bis {most}) und beide Anteile.</translation>
    </message>
    <message>
        <source>No more can be wrong than were looked at, nor looked at than there are.</source>
        <translation>Es können nicht mehr falsch sein als angesehen wurden, und nicht mehr angesehen als da sind.</translation>
    </message>
    <message>
        <source>Look at {n} of the {lot}.</source>
        <translation>Sehen Sie {n} der {lot} an.</translation>
    </message>
    <message>
        <source>Pick them blindly, from the whole lot. If {wrong} or more of the {lot} were wrong, a look at {n} would miss them all in at most {chance} of such picks. So when all {n} are right, you may say with {sure} % confidence: no more than {allowed} are wrong.</source>
        <translation>Greifen Sie blind aus der ganzen Lieferung. Wären {wrong} oder mehr der {lot} falsch, so entgingen sie einem Blick auf {n} alle in höchstens {chance} solcher Griffe. Sind also alle {n} richtig, so dürfen Sie mit {sure} % Sicherheit sagen: Nicht mehr als {allowed} sind falsch.</translation>
    </message>
    <message>
        <source>After a look, write what it showed: it says what may be left.</source>
        <translation>Schreiben Sie nach dem Ansehen, was es ergab: Es sagt, was noch übrig sein kann.</translation>
    </message>
    <message>
        <source>{found} wrong among {looked}: with {sure} % confidence no more than {most} of the {lot} are wrong, those found included.</source>
        <translation>{found} falsch unter {looked}: mit {sure} % Sicherheit sind nicht mehr als {most} der {lot} falsch, die gefundenen eingerechnet.</translation>
    </message>
</context>
<context>
    <name>NamingView</name>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht zu sagen</translation>
    </message>
    <message>
        <source>No drawing</source>
        <translation>Keine Zeichnung</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>NumberAnswer</name>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Write a number of 0 or more, such as 12.5.</source>
        <translation>Eine Zahl ab 0 schreiben, etwa 12,5.</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>Measure on a photo</source>
        <translation>Auf einem Foto messen</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Standard uncertainty; empty takes the usual one of this character</source>
        <translation>Standardunsicherheit; leer nimmt die übliche dieses Merkmals</translation>
    </message>
    <message>
        <source>Write a number of 0 or more, such as 12.5.</source>
        <translation>Eine Zahl ab 0 schreiben, etwa 12,5.</translation>
    </message>
</context>
<context>
    <name>Offers</name>
    <message>
        <source>What the label may mean</source>
        <translation>Was das Etikett meinen kann</translation>
    </message>
</context>
<context>
    <name>OthersView</name>
    <message>
        <source>Search all questions</source>
        <translation>Alle Fragen durchsuchen</translation>
    </message>
    <message>
        <source>Other questions</source>
        <translation>Andere Fragen</translation>
    </message>
    <message>
        <source>No question has that word. Try another.</source>
        <translation>Keine Frage enthält dieses Wort. Versuchen Sie ein anderes.</translation>
    </message>
    <message>
        <source>by how one looks, best first</source>
        <translation>nach Art des Hinsehens, beste zuerst</translation>
    </message>
    <message>
        <source>worth {share}</source>
        <translation>Wert {share}</translation>
    </message>
</context>
<context>
    <name>Palette</name>
    <message>
        <source>Find a command, a question, a taxon, a case</source>
        <translation>Befehl, Frage, Taxon oder Fall finden</translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation>Alles finden</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Nothing has that name here.</source>
        <translation>Nichts heißt hier so.</translation>
    </message>
</context>
<context>
    <name>PeoplePage</name>
    <message>
        <source>Everybody who has practised</source>
        <translation>Alle, die geübt haben</translation>
    </message>
    <message>
        <source>How far people agree</source>
        <translation>Wie weit man übereinstimmt</translation>
    </message>
    <message>
        <source>What is misread how often</source>
        <translation>Was wie oft falsch gelesen wird</translation>
    </message>
    <message>
        <source>Look at this person</source>
        <translation>Diese Person ansehen</translation>
    </message>
    <message>
        <source>Write the attestation</source>
        <translation>Bescheinigung schreiben</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation>Wird zusammengezählt …</translation>
    </message>
    <message>
        <source>Nobody has practised with this key yet.</source>
        <translation>Mit diesem Schlüssel hat noch niemand geübt.</translation>
    </message>
    <message>
        <source>With the key “{key}”.</source>
        <translation>Mit dem Schlüssel „{key}“.</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <source>Pairs told apart</source>
        <translation>Unterschiedene Paare</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Weakest</source>
        <translation>Am schwächsten</translation>
    </message>
    <message>
        <source>Two people</source>
        <translation>Zwei Personen</translation>
    </message>
    <message>
        <source>Same pictures</source>
        <translation>Gleiche Bilder</translation>
    </message>
    <message>
        <source>Same answer</source>
        <translation>Gleiche Antwort</translation>
    </message>
    <message>
        <source>Kappa (Cohen)</source>
        <translation>Kappa (Cohen)</translation>
    </message>
    <message>
        <source>Character</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>The key says</source>
        <translation>Der Schlüssel sagt</translation>
    </message>
    <message>
        <source>Offered to the author</source>
        <translation>Dem Autor angeboten</translation>
    </message>
    <message>
        <source>Most often</source>
        <translation>Am häufigsten</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>How far people agree on the same pictures</source>
        <translation>Wie weit man bei gleichen Bildern übereinstimmt</translation>
    </message>
    <message>
        <source>What people misread, on drawings</source>
        <translation>Was auf Zeichnungen falsch gelesen wird</translation>
    </message>
    <message>
        <source>The author of the key can take an offered rate over in the workshop. The first three answers of each person to a character are left out; an offer takes 30 answers and leans towards the rate in the key.</source>
        <translation>Der Autor des Schlüssels kann eine angebotene Rate in der Werkstatt übernehmen. Die ersten drei Antworten jeder Person zu einem Merkmal zählen nicht; ein Angebot braucht 30 Antworten und neigt zur Rate im Schlüssel.</translation>
    </message>
</context>
<context>
    <name>PhotoBar</name>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <translation>Lupe</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>The whole picture</source>
        <translation>Das ganze Bild</translation>
    </message>
    <message>
        <source>Magnifier at the cursor</source>
        <translation>Lupe am Zeiger</translation>
    </message>
</context>
<context>
    <name>PhotoCanvas</name>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>At {x}, {y} pixels.</source>
        <translation>Bei {x}, {y} Pixel.</translation>
    </message>
    <message>
        <source>{n} points drawn.</source>
        <translation>{n} Punkte gezeichnet.</translation>
    </message>
</context>
<context>
    <name>PhotoLayout</name>
    <message>
        <source>How it was looked at</source>
        <translation>Wie es angesehen wurde</translation>
    </message>
    <message>
        <source>The file of this picture is missing.
A number noted from it stands.</source>
        <translation>Die Datei dieses Bildes fehlt.
Eine daraus notierte Zahl bleibt stehen.</translation>
    </message>
    <message>
        <source>The file of this picture is damaged.
A number noted from it stands.</source>
        <translation>Die Datei dieses Bildes ist beschädigt.
Eine daraus notierte Zahl bleibt stehen.</translation>
    </message>
    <message>
        <source>Drag a picture here, paste one, or choose a file.
Place, time and owner are taken off what is kept.</source>
        <translation>Ein Bild hierher ziehen, einfügen oder eine Datei wählen.
Ort, Zeit und Besitzer werden beim Aufheben entfernt.</translation>
    </message>
    <message>
        <source>Add a picture …</source>
        <translation>Bild hinzufügen …</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>PhotoTool</name>
    <message>
        <source>The pasted picture</source>
        <translation>Das eingefügte Bild</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <source>Add pictures</source>
        <translation>Bilder hinzufügen</translation>
    </message>
</context>
<context>
    <name>Plate</name>
    <message>
        <source>Being drawn …</source>
        <translation>Wird gezeichnet …</translation>
    </message>
</context>
<context>
    <name>ProgressPage</name>
    <message>
        <source>Write the attestation</source>
        <translation>Bescheinigung schreiben</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Share right by exercise</source>
        <translation>Anteil richtig nach Übung</translation>
    </message>
    <message>
        <source>Pairs told apart</source>
        <translation>Unterschiedene Paare</translation>
    </message>
    <message>
        <source>Characters read rightly</source>
        <translation>Richtig gelesene Merkmale</translation>
    </message>
    <message>
        <source>Share right over time</source>
        <translation>Anteil richtig im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Which confusions</source>
        <translation>Welche Verwechslungen</translation>
    </message>
    <message>
        <source>What {person} has shown</source>
        <translation>Was {person} gezeigt hat</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation>Wird zusammengezählt …</translation>
    </message>
    <message>
        <source>No answers with this key yet.</source>
        <translation>Noch keine Antworten mit diesem Schlüssel.</translation>
    </message>
    <message>
        <source>{n} pictures of the key “{title}”. Lines are 95 % intervals (Wilson).</source>
        <translation>{n} Bilder des Schlüssels „{title}“. Linien sind 95-%-Intervalle (Wilson).</translation>
    </message>
    <message>
        <source>{right} of {n}</source>
        <translation>{right} von {n}</translation>
    </message>
    <message>
        <source>A pair counts as told apart when its line begins at {share} or above; that takes {n} right decisions without a mistake. The latest 60 of each pair count.</source>
        <translation>Ein Paar gilt als unterschieden, wenn seine Linie bei {share} oder darüber beginnt; das braucht {n} richtige Entscheidungen ohne Fehler. Es zählen die letzten 60 jedes Paares.</translation>
    </message>
    <message>
        <source>{n} wrong</source>
        <translation>{n} falsch</translation>
    </message>
    <message>
        <source>Taxa, in pairs</source>
        <translation>Taxa, paarweise</translation>
    </message>
    <message>
        <source>Over time</source>
        <translation>Im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Characters read rightly, weakest first</source>
        <translation>Richtig gelesene Merkmale, schwächste zuerst</translation>
    </message>
    <message>
        <source>What was there (rows), and what was said (columns)</source>
        <translation>Was da war (Zeilen), und was gesagt wurde (Spalten)</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>Other questions</source>
        <translation>Andere Fragen</translation>
    </message>
</context>
<context>
    <name>QuestionView</name>
    <message>
        <source>Why now</source>
        <translation>Warum jetzt</translation>
    </message>
    <message>
        <source>Chosen for: {aim}</source>
        <translation>Gewählt für: {aim}</translation>
    </message>
    <message>
        <source>Nothing is left to ask now.</source>
        <translation>Jetzt ist nichts mehr zu fragen.</translation>
    </message>
    <message>
        <source>Choose among the other questions what was passed over, open the reasons (F4), or write the rationale (Ctrl+R).</source>
        <translation>Wählen Sie unter den anderen Fragen, was übergangen wurde, öffnen Sie die Gründe (F4), oder schreiben Sie die Begründung (Strg+R).</translation>
    </message>
    <message>
        <source>What this means (G)</source>
        <translation>Was das bedeutet (G)</translation>
    </message>
    <message>
        <source>What goes wrong</source>
        <translation>Was oft schiefgeht</translation>
    </message>
</context>
<context>
    <name>Rail</name>
    <message>
        <source>Open cases</source>
        <translation>Offene Fälle</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Fall</translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation>Alles finden</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Akten</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>no label yet</source>
        <translation>noch kein Etikett</translation>
    </message>
</context>
<context>
    <name>RangeStrip</name>
    <message>
        <source>Where the candidates lie</source>
        <translation>Wo die Kandidaten liegen</translation>
    </message>
</context>
<context>
    <name>RatesPage</name>
    <message>
        <source>Share of contradicted labels, by label</source>
        <translation>Anteil widerlegter Etiketten, nach Etikett</translation>
    </message>
    <message>
        <source>Share of contradicted labels, by supplier</source>
        <translation>Anteil widerlegter Etiketten, nach Lieferant</translation>
    </message>
    <message>
        <source>Share of contradicted labels, by month</source>
        <translation>Anteil widerlegter Etiketten, nach Monat</translation>
    </message>
    <message>
        <source>By label</source>
        <translation>Nach Etikett</translation>
    </message>
    <message>
        <source>By supplier</source>
        <translation>Nach Lieferant</translation>
    </message>
    <message>
        <source>By month of arrival</source>
        <translation>Nach Monat der Ankunft</translation>
    </message>
    <message>
        <source>No case has a verdict on its label yet; here they will be counted.</source>
        <translation>Noch hat kein Fall ein Urteil über sein Etikett; hier werden sie gezählt.</translation>
    </message>
    <message>
        <source>Share of animals whose label was contradicted, among those whose verdict says whether the label was right. Lines are 95 % intervals (Wilson): a long line means too few animals to blame anybody. Animals that were checked because they looked wrong push a rate up.</source>
        <translation>Anteil der Tiere, deren Etikett widerlegt wurde, unter denen, deren Urteil sagt, ob es stimmte. Linien sind 95-%-Intervalle (Wilson): Eine lange Linie heißt, es sind zu wenige Tiere, um jemanden zu beschuldigen. Tiere, die geprüft wurden, weil sie falsch aussahen, treiben die Rate hoch.</translation>
    </message>
    <message>
        <source>{wrong} of {n}</source>
        <translation>{wrong} von {n}</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
</context>
<context>
    <name>RationaleDialog</name>
    <message>
        <source>Rationale</source>
        <translation>Begründung</translation>
    </message>
    <message>
        <source>What will be written</source>
        <translation>Was geschrieben wird</translation>
    </message>
    <message>
        <source>Write PDF and JSON</source>
        <translation>PDF und JSON schreiben</translation>
    </message>
    <message>
        <source>Open the PDF</source>
        <translation>PDF öffnen</translation>
    </message>
    <message>
        <source>Written and attached to the case: {pdf} and {data}.</source>
        <translation>Geschrieben und an den Fall gehängt: {pdf} und {data}.</translation>
    </message>
    <message>
        <source>Write it again</source>
        <translation>Noch einmal schreiben</translation>
    </message>
    <message>
        <source>Another folder …</source>
        <translation>Anderer Ordner …</translation>
    </message>
    <message>
        <source>as the till prints it; empty without a sale</source>
        <translation>wie auf dem Kassenbon; leer ohne Verkauf</translation>
    </message>
    <message>
        <source>optional; stays out of the document</source>
        <translation>freiwillig; steht nicht im Dokument</translation>
    </message>
    <message>
        <source>Sale number</source>
        <translation>Nummer des Verkaufs</translation>
    </message>
    <message>
        <source>Date of the sale</source>
        <translation>Datum des Verkaufs</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Reference to the buyer</source>
        <translation>Hinweis auf den Käufer</translation>
    </message>
    <message>
        <source>Determined by (initials)</source>
        <translation>Bestimmt von (Kürzel)</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Sign with your initials to write it.</source>
        <translation>Zum Schreiben mit dem Kürzel unterzeichnen.</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
</context>
<context>
    <name>ReasonsView</name>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Count what the label usually is</source>
        <translation>Etikett als Hinweis zählen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>What is missing for a name ({level})</source>
        <translation>Was für einen Namen fehlt ({level})</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>not scored for it</source>
        <translation>dafür nicht erfasst</translation>
    </message>
    <message>
        <source>The findings, held against {name}</source>
        <translation>Die Befunde, gehalten an {name}</translation>
    </message>
    <message>
        <source>The closest rivals</source>
        <translation>Die nächsten Rivalen</translation>
    </message>
    <message>
        <source>set apart by: {names}</source>
        <translation>getrennt durch: {names}</translation>
    </message>
    <message>
        <source>nothing sets it apart yet</source>
        <translation>noch trennt es nichts ab</translation>
    </message>
    <message>
        <source>“{verdict}”, {level}</source>
        <translation>„{verdict}“, {level}</translation>
    </message>
    <message>
        <source>What would change the verdict</source>
        <translation>Was das Urteil ändern würde</translation>
    </message>
</context>
<context>
    <name>RecordsCase</name>
    <message>
        <source>The chosen case</source>
        <translation>Der gewählte Fall</translation>
    </message>
    <message>
        <source>Open at the bench</source>
        <translation>Am Tisch öffnen</translation>
    </message>
    <message>
        <source>Rationale again</source>
        <translation>Begründung erneut</translation>
    </message>
    <message>
        <source>Export …</source>
        <translation>Ausgeben …</translation>
    </message>
    <message>
        <source>Write the rationale of this case again, as PDF and JSON</source>
        <translation>Die Begründung dieses Falls erneut schreiben, als PDF und JSON</translation>
    </message>
    <message>
        <source>Write the corrected shop label as PDF</source>
        <translation>Das berichtigte Etikett als PDF schreiben</translation>
    </message>
    <message>
        <source>Write the selected cases as a Darwin Core Archive</source>
        <translation>Die gewählten Fälle als Darwin-Core-Archiv schreiben</translation>
    </message>
    <message>
        <source>Take a buyer's reference out of the whole book</source>
        <translation>Den Hinweis auf einen Käufer aus dem ganzen Buch nehmen</translation>
    </message>
    <message>
        <source>Shop label …</source>
        <translation>Etikett …</translation>
    </message>
    <message>
        <source>Attach sale …</source>
        <translation>Verkauf anhängen …</translation>
    </message>
    <message>
        <source>Erase buyer …</source>
        <translation>Käufer löschen …</translation>
    </message>
</context>
<context>
    <name>RecordsDeeds</name>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Written and noted in the record: {pdf} and {data}, in {folder}.</source>
        <translation>Geschrieben und in der Akte vermerkt: {pdf} und {data}, in {folder}.</translation>
    </message>
    <message>
        <source>Shop label written: {file}</source>
        <translation>Etikett geschrieben: {file}</translation>
    </message>
    <message>
        <source>One case is written to {file}; its buyer is not in it.</source>
        <translation>Ein Fall steht in {file}; sein Käufer steht nicht darin.</translation>
    </message>
    <message>
        <source>{n} cases are written to {file}; buyers are not in it.</source>
        <translation>{n} Fälle stehen in {file}; Käufer stehen nicht darin.</translation>
    </message>
    <message>
        <source>Sale {number} is attached.</source>
        <translation>Verkauf {number} ist angehängt.</translation>
    </message>
    <message>
        <source>No sale names that buyer; check how the reference was written.</source>
        <translation>Kein Verkauf nennt diesen Käufer; prüfen Sie, wie der Hinweis geschrieben wurde.</translation>
    </message>
    <message>
        <source>Erased. Sales that named the buyer: {sales}; backups: {backups}.</source>
        <translation>Gelöscht. Verkäufe, die den Käufer nannten: {sales}; Sicherungen: {backups}.</translation>
    </message>
    <message>
        <source>Remarks or papers of these cases still name the buyer: {cases}.</source>
        <translation>Bemerkungen oder Papiere dieser Fälle nennen den Käufer noch: {cases}.</translation>
    </message>
    <message>
        <source>Delete these copies, which could not be cleaned: {files}.</source>
        <translation>Löschen Sie diese Kopien, die nicht bereinigt werden konnten: {files}.</translation>
    </message>
</context>
<context>
    <name>RecordsList</name>
    <message>
        <source>Recorded cases</source>
        <translation>Aufgezeichnete Fälle</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
</context>
<context>
    <name>RecordsSearch</name>
    <message>
        <source>Search the records</source>
        <translation>Die Akten durchsuchen</translation>
    </message>
    <message>
        <source>Label, name, supplier, remark, sale number …  ({key})</source>
        <translation>Etikett, Name, Lieferant, Bemerkung, Verkauf …  ({key})</translation>
    </message>
    <message>
        <source>Where the words stand</source>
        <translation>Wo die Wörter stehen</translation>
    </message>
    <message>
        <source>anywhere</source>
        <translation>irgendwo</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation>jedes Urteil</translation>
    </message>
    <message>
        <source>from day</source>
        <translation>ab Tag</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>to day</source>
        <translation>bis Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>{name}, such as 2026-03-12</source>
        <translation>{name}, etwa 2026-03-12</translation>
    </message>
    <message>
        <source>“{day}” is no day yet; write it as 2026-03-12.</source>
        <translation>„{day}“ ist noch kein Tag; schreiben Sie ihn wie 2026-03-12.</translation>
    </message>
</context>
<context>
    <name>RecordsView</name>
    <message>
        <source>Part of the records</source>
        <translation>Teil der Akten</translation>
    </message>
    <message>
        <source>The key has changed since this case was judged. Press again to judge it with the key in hand; that adds a revision, and nothing is overwritten.</source>
        <translation>Der Schlüssel hat sich seit dem Urteil über diesen Fall geändert. Noch einmal drücken, um ihn mit dem jetzigen Schlüssel zu beurteilen; das fügt eine Fassung hinzu, überschrieben wird nichts.</translation>
    </message>
    <message>
        <source>What the labels turn out to be</source>
        <translation>Als was die Etiketten sich erweisen</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Akten</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>The {n} cases worked on last; add a word to see others.</source>
        <translation>Die {n} zuletzt bearbeiteten Fälle; ein Wort dazu zeigt andere.</translation>
    </message>
    <message>
        <source>{n} cases, the one worked on last on top.</source>
        <translation>{n} Fälle, der zuletzt bearbeitete oben.</translation>
    </message>
    <message>
        <source>No case is recorded yet; what is looked at on the bench appears here.</source>
        <translation>Noch kein Fall ist aufgezeichnet; was am Tisch angesehen wird, erscheint hier.</translation>
    </message>
    <message>
        <source>No case has that. Try fewer words, or only the beginnings of words.</source>
        <translation>Kein Fall hat das. Versuchen Sie weniger Wörter oder nur Wortanfänge.</translation>
    </message>
    <message>
        <source>One case.</source>
        <translation>Ein Fall.</translation>
    </message>
</context>
<context>
    <name>ResultCard</name>
    <message>
        <source>Use this number</source>
        <translation>Diese Zahl nehmen</translation>
    </message>
    <message>
        <source>Uncertain because of: {causes}.</source>
        <translation>Unsicher wegen: {causes}.</translation>
    </message>
    <message>
        <source>The repeats differ more than such end points should; check each line.</source>
        <translation>Die Wiederholungen weichen mehr ab, als es solche Endpunkte sollten; prüfen Sie jede Linie.</translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation>Noch kein Bild</translation>
    </message>
    <message>
        <source>Nothing counted yet</source>
        <translation>Noch nichts gezählt</translation>
    </message>
    <message>
        <source>How long is the ruler line?</source>
        <translation>Wie lang ist die Linie am Lineal?</translation>
    </message>
    <message>
        <source>Both lines are needed</source>
        <translation>Beide Linien werden gebraucht</translation>
    </message>
    <message>
        <source>The key never reckons with less than ± {number} here: people differ about end points.</source>
        <translation>Der Schlüssel rechnet hier nie mit weniger als ± {number}: Über Endpunkte ist man verschiedener Meinung.</translation>
    </message>
</context>
<context>
    <name>SaleDialog</name>
    <message>
        <source>The same number again corrects the sale that was noted before.</source>
        <translation>Dieselbe Nummer noch einmal berichtigt den früher notierten Verkauf.</translation>
    </message>
    <message>
        <source>Attach a sale</source>
        <translation>Einen Verkauf anhängen</translation>
    </message>
    <message>
        <source>Number of the sale in the till</source>
        <translation>Nummer des Verkaufs in der Kasse</translation>
    </message>
    <message>
        <source>Date, such as 2026-03-12</source>
        <translation>Datum, etwa 2026-03-12</translation>
    </message>
    <message>
        <source>Price, with its currency</source>
        <translation>Preis, mit Währung</translation>
    </message>
    <message>
        <source>Reference to the buyer (optional, can be erased)</source>
        <translation>Hinweis auf den Käufer (freiwillig, löschbar)</translation>
    </message>
    <message>
        <source>Remark (cannot be erased: name nobody here)</source>
        <translation>Bemerkung (nicht löschbar: hier niemanden nennen)</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Who practises</source>
        <translation>Wer übt</translation>
    </message>
    <message>
        <source>Key to practise with</source>
        <translation>Schlüssel zum Üben</translation>
    </message>
    <message>
        <source>Somebody new: initials</source>
        <translation>Jemand Neues: Kürzel</translation>
    </message>
    <message>
        <source>Initials or alias of somebody new</source>
        <translation>Kürzel oder Deckname von jemand Neuem</translation>
    </message>
    <message>
        <source>Practise as this</source>
        <translation>So üben</translation>
    </message>
    <message>
        <source>Begin with what is due</source>
        <translation>Mit dem Fälligen anfangen</translation>
    </message>
    <message>
        <source>Share right over time</source>
        <translation>Anteil richtig im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Say who practises: initials or an alias are enough.</source>
        <translation>Sagen Sie, wer übt: Kürzel oder Deckname genügen.</translation>
    </message>
    <message>
        <source>Looking up what is due …</source>
        <translation>Es wird nachgesehen, was fällig ist …</translation>
    </message>
    <message>
        <source>No picture comes twice. Esc ends at any time; every answer is kept.</source>
        <translation>Kein Bild kommt zweimal. Esc beendet jederzeit; jede Antwort bleibt.</translation>
    </message>
    <message>
        <source>All done for now.</source>
        <translation>Für jetzt alles getan.</translation>
    </message>
    <message>
        <source>Just now: {right} of {n} right.</source>
        <translation>Eben: {right} von {n} richtig.</translation>
    </message>
    <message>
        <source>{name}: {wrong} of {n} wrong</source>
        <translation>{name}: {wrong} von {n} falsch</translation>
    </message>
    <message>
        <source>Nothing stands out so far.</source>
        <translation>Bisher fällt nichts auf.</translation>
    </message>
    <message>
        <source>Where you go wrong most</source>
        <translation>Wo Sie am meisten irren</translation>
    </message>
</context>
<context>
    <name>StartView</name>
    <message>
        <source>Key in use</source>
        <translation>Verwendeter Schlüssel</translation>
    </message>
    <message>
        <source>There is no label</source>
        <translation>Es gibt kein Etikett</translation>
    </message>
    <message>
        <source>Show me a sample case</source>
        <translation>Einen Beispielfall zeigen</translation>
    </message>
    <message>
        <source>Go on with</source>
        <translation>Weiter mit</translation>
    </message>
    <message>
        <source>no verdict yet</source>
        <translation>noch kein Urteil</translation>
    </message>
    <message>
        <source>Go on with {case}</source>
        <translation>Weiter mit {case}</translation>
    </message>
    <message>
        <source>A new animal</source>
        <translation>Ein neues Tier</translation>
    </message>
    <message>
        <source>Write what its label says on the tag above, word for word, and press Enter. Leave the animal in its tub.</source>
        <translation>Schreiben Sie oben auf den Anhänger Wort für Wort, was auf dem Etikett steht, und drücken Sie Enter. Das Tier bleibt in seiner Dose.</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
</context>
<context>
    <name>StateStrip</name>
    <message>
        <source>The patch</source>
        <translation>Der Fleck</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Which state is it?</source>
        <translation>Welcher Zustand ist es?</translation>
    </message>
    <message>
        <source>Several: one of these.</source>
        <translation>Mehrere: einer davon.</translation>
    </message>
</context>
<context>
    <name>Tag</name>
    <message>
        <source>The label says: {text}</source>
        <translation>Auf dem Etikett steht: {text}</translation>
    </message>
    <message>
        <source>Sold as</source>
        <translation>Verkauft als</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Das Etikett</translation>
    </message>
    <message>
        <source>What the label says</source>
        <translation>Was auf dem Etikett steht</translation>
    </message>
    <message>
        <source>What does the label say?</source>
        <translation>Was steht auf dem Etikett?</translation>
    </message>
</context>
<context>
    <name>TaxonSheet</name>
    <message>
        <source>Compare with the leader</source>
        <translation>Mit dem Führenden vergleichen</translation>
    </message>
</context>
<context>
    <name>TellingView</name>
    <message>
        <source>{one} or {other}?</source>
        <translation>{one} oder {other}?</translation>
    </message>
    <message>
        <source>No portrait in this key</source>
        <translation>Kein Bild in diesem Schlüssel</translation>
    </message>
    <message>
        <source>What do you look at first?</source>
        <translation>Was sehen Sie zuerst an?</translation>
    </message>
    <message>
        <source>Right, that tells nothing. What do you look at instead?</source>
        <translation>Richtig, das sagt nichts. Was sehen Sie stattdessen an?</translation>
    </message>
    <message>
        <source>{name}: which is it?</source>
        <translation>{name}: Was ist es?</translation>
    </message>
    <message>
        <source>This does not tell them apart</source>
        <translation>Das unterscheidet sie nicht</translation>
    </message>
</context>
<context>
    <name>TermPopover</name>
    <message>
        <source>The key explains no more.</source>
        <translation>Mehr erklärt der Schlüssel nicht.</translation>
    </message>
</context>
<context>
    <name>Thumbs</name>
    <message>
        <source>Pictures of this case</source>
        <translation>Bilder dieses Falls</translation>
    </message>
    <message>
        <source>Picture {n}: its file is missing</source>
        <translation>Bild {n}: Die Datei fehlt</translation>
    </message>
    <message>
        <source>Picture {n}: its file is damaged</source>
        <translation>Bild {n}: Die Datei ist beschädigt</translation>
    </message>
    <message>
        <source>Picture {n}</source>
        <translation>Bild {n}</translation>
    </message>
</context>
<context>
    <name>VerdictView</name>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Why: the reasons behind the verdict</source>
        <translation>Warum: die Gründe für das Urteil</translation>
    </message>
</context>
<context>
    <name>WalkView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Both could be right</source>
        <translation>Beides könnte stimmen</translation>
    </message>
    <message>
        <source>Mark more than one lead and follow them all</source>
        <translation>Mehr als eine Aussage markieren und allen folgen</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Folgen</translation>
    </message>
    <message>
        <source>The couplets end here</source>
        <translation>Hier enden die Alternativen</translation>
    </message>
    <message>
        <source>Couplet {number}: which fits?</source>
        <translation>Alternative {number}: Was passt?</translation>
    </message>
    <message>
        <source>The walk starts here.</source>
        <translation>Hier beginnt der Weg.</translation>
    </message>
    <message>
        <source>also open: {couplets}</source>
        <translation>auch offen: {couplets}</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>More animals with this label</source>
        <translation>Weitere Tiere mit diesem Etikett</translation>
    </message>
    <message>
        <source>How many more animals came with this label?</source>
        <translation>Wie viele weitere Tiere kamen mit diesem Etikett?</translation>
    </message>
    <message>
        <source>question</source>
        <translation>Frage</translation>
    </message>
    <message>
        <source>taxon</source>
        <translation>Taxon</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Fall</translation>
    </message>
</context>
<context>
    <name>_Asking</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>commands</name>
    <message>
        <source>Case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Go</source>
        <translation>Gehen</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Fall</translation>
    </message>
    <message>
        <source>Sample case</source>
        <translation>Beispielfall</translation>
    </message>
    <message>
        <source>Next case</source>
        <translation>Nächster Fall</translation>
    </message>
    <message>
        <source>Previous case</source>
        <translation>Voriger Fall</translation>
    </message>
    <message>
        <source>More animals with this label</source>
        <translation>Weitere Tiere mit diesem Etikett</translation>
    </message>
    <message>
        <source>Put the case away</source>
        <translation>Fall weglegen</translation>
    </message>
    <message>
        <source>Write the rationale</source>
        <translation>Begründung schreiben</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Write the label</source>
        <translation>Etikett schreiben</translation>
    </message>
    <message>
        <source>Go to the question</source>
        <translation>Zur Frage gehen</translation>
    </message>
    <message>
        <source>Reasons behind the verdict</source>
        <translation>Gründe für das Urteil</translation>
    </message>
    <message>
        <source>What is sold under this label</source>
        <translation>Was unter diesem Etikett verkauft wird</translation>
    </message>
    <message>
        <source>Next area</source>
        <translation>Nächster Bereich</translation>
    </message>
    <message>
        <source>Previous area</source>
        <translation>Voriger Bereich</translation>
    </message>
    <message>
        <source>Change between couplets and free choice</source>
        <translation>Zwischen Alternativen und freier Wahl wechseln</translation>
    </message>
    <message>
        <source>Compare taxa</source>
        <translation>Taxa vergleichen</translation>
    </message>
    <message>
        <source>Search the questions</source>
        <translation>Fragen durchsuchen</translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation>Alles finden</translation>
    </message>
    <message>
        <source>Measure or look on a photo</source>
        <translation>Auf einem Foto messen oder nachsehen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Akten</translation>
    </message>
    <message>
        <source>Drill</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>About idkey</source>
        <translation>Über idkey</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Usual text size</source>
        <translation>Übliche Schriftgröße</translation>
    </message>
    <message>
        <source>Light colours</source>
        <translation>Helle Farben</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Dunkle Farben</translation>
    </message>
    <message>
        <source>Colours of the system</source>
        <translation>Farben des Systems</translation>
    </message>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
    <message>
        <source>Deutsch</source>
        <translation>Deutsch</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Ganzer Bildschirm</translation>
    </message>
</context>
<context>
    <name>drill</name>
    <message>
        <source>Name the state</source>
        <translation>Den Zustand nennen</translation>
    </message>
    <message>
        <source>Tell the pair apart</source>
        <translation>Das Paar unterscheiden</translation>
    </message>
    <message>
        <source>Run a case</source>
        <translation>Einen Fall führen</translation>
    </message>
    <message>
        <source>One figure, one character: what does it show?</source>
        <translation>Ein Bild, ein Merkmal: Was zeigt es?</translation>
    </message>
    <message>
        <source>Two look-alikes: where do you look first, and which is it?</source>
        <translation>Zwei Doppelgänger: Wo sehen Sie zuerst hin, und welcher ist es?</translation>
    </message>
    <message>
        <source>A whole animal under a label that may be wrong.</source>
        <translation>Ein ganzes Tier unter einem Etikett, das falsch sein kann.</translation>
    </message>
    <message>
        <source>Nothing for today</source>
        <translation>Nichts für heute</translation>
    </message>
    <message>
        <source>{n} to see again</source>
        <translation>{n} wieder anzusehen</translation>
    </message>
    <message>
        <source>{n} new</source>
        <translation>{n} neu</translation>
    </message>
    <message>
        <source>Nothing is waiting.</source>
        <translation>Nichts wartet.</translation>
    </message>
    <message>
        <source>The next one is due at {hour}.</source>
        <translation>Das nächste ist um {hour} fällig.</translation>
    </message>
    <message>
        <source>The next one is due tomorrow at {hour}.</source>
        <translation>Das nächste ist morgen um {hour} fällig.</translation>
    </message>
    <message>
        <source>The next one is due in {n} days.</source>
        <translation>Das nächste ist in {n} Tagen fällig.</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>nicht zu sagen</translation>
    </message>
    <message>
        <source>Right: {truth}.</source>
        <translation>Richtig: {truth}.</translation>
    </message>
    <message>
        <source>It can be seen here: {truth}.</source>
        <translation>Es ist hier zu sehen: {truth}.</translation>
    </message>
    <message>
        <source>You read {said}; the plate shows {truth}.</source>
        <translation>Sie lasen {said}; die Tafel zeigt {truth}.</translation>
    </message>
    <message>
        <source>One step off: you said “{said}”, and it shows “{truth}”.</source>
        <translation>Einen Schritt daneben: Sie sagten „{said}“, und es zeigt „{truth}“.</translation>
    </message>
    <message>
        <source>You said “{said}”, and it shows “{truth}”.</source>
        <translation>Sie sagten „{said}“, und es zeigt „{truth}“.</translation>
    </message>
    <message>
        <source>Right: {name}, and by the character that tells.</source>
        <translation>Richtig: {name}, und am entscheidenden Merkmal.</translation>
    </message>
    <message>
        <source>Right: {name}. The shorter way: look at {tells} first.</source>
        <translation>Richtig: {name}. Der kürzere Weg: zuerst {tells} ansehen.</translation>
    </message>
    <message>
        <source>It is {name}, but {looked} does not show that: it is the same on both, or the key does not know it. Look at {tells}.</source>
        <translation>Es ist {name}, aber {looked} zeigt das nicht: Es ist bei beiden gleich, oder der Schlüssel kennt es nicht. Sehen Sie {tells} an.</translation>
    </message>
    <message>
        <source>It is {name}. What tells them apart is {tells}.</source>
        <translation>Es ist {name}. Was sie unterscheidet, ist {tells}.</translation>
    </message>
    <message>
        <source>{tells} does tell them apart: this is {name}.</source>
        <translation>{tells} unterscheidet sie doch: Das ist {name}.</translation>
    </message>
    <message>
        <source>Right. The findings carry exactly that: {carried}.</source>
        <translation>Richtig. Genau das tragen die Befunde: {carried}.</translation>
    </message>
    <message>
        <source>Left open too soon: there was more to see that would have told something.</source>
        <translation>Zu früh offen gelassen: Es gab noch mehr zu sehen, das etwas gesagt hätte.</translation>
    </message>
    <message>
        <source>More than was seen: you concluded “{said}”, and the findings leave it open.</source>
        <translation>Mehr, als gesehen wurde: Sie schlossen auf „{said}“, und die Befunde lassen es offen.</translation>
    </message>
    <message>
        <source>It was decided already: the findings carry “{carried}”.</source>
        <translation>Es war schon entschieden: Die Befunde tragen „{carried}“.</translation>
    </message>
    <message>
        <source>Your findings carry “{carried}”, but something was misread: the truth is “{truth}”.</source>
        <translation>Ihre Befunde tragen „{carried}“, aber etwas wurde falsch gelesen: Richtig ist „{truth}“.</translation>
    </message>
    <message>
        <source>You concluded “{said}”; the findings carry “{carried}”.</source>
        <translation>Sie schlossen auf „{said}“; die Befunde tragen „{carried}“.</translation>
    </message>
    <message>
        <source>{share} ({low} to {high})</source>
        <translation>{share} ({low} bis {high})</translation>
    </message>
</context>
<context>
    <name>lineup</name>
    <message>
        <source>medically significant</source>
        <translation>medizinisch bedeutsam</translation>
    </message>
    <message>
        <source>permit-listed</source>
        <translation>gelistet</translation>
    </message>
    <message>
        <source>ruled out: {reason}</source>
        <translation>ausgeschlossen: {reason}</translation>
    </message>
    <message>
        <source>in conflict with a finding</source>
        <translation>im Widerspruch zu einem Befund</translation>
    </message>
    <message>
        <source>{n} ruled out</source>
        <translation>{n} ausgeschlossen</translation>
    </message>
    <message>
        <source>{character} and {n} more</source>
        <translation>{character} und {n} mehr</translation>
    </message>
    <message>
        <source>Something not in this key</source>
        <translation>Etwas, das nicht in diesem Schlüssel steht</translation>
    </message>
</context>
<context>
    <name>messages</name>
    <message>
        <source>The program made a mistake and could not finish this step.</source>
        <translation>Das Programm hat einen Fehler gemacht und konnte diesen Schritt nicht beenden.</translation>
    </message>
    <message>
        <source>Please try again; if it comes back, report code {code}.</source>
        <translation>Bitte noch einmal versuchen; kommt er wieder, melden Sie Code {code}.</translation>
    </message>
    <message>
        <source>The last starts of the program ended early.</source>
        <translation>Die letzten Starts des Programms endeten vorzeitig.</translation>
    </message>
    <message>
        <source>It opened without the cases that were on the bench. They are kept in the records: open them again one after another.</source>
        <translation>Es öffnete ohne die Fälle, die auf dem Tisch lagen. Sie stehen in den Akten: Öffnen Sie sie einen nach dem anderen wieder.</translation>
    </message>
</context>
<context>
    <name>page</name>
    <message>
        <source>{right} of {n}</source>
        <translation>{right} von {n}</translation>
    </message>
</context>
<context>
    <name>photo</name>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>Slightly</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <source>Clearly</source>
        <translation>Deutlich</translation>
    </message>
    <message>
        <source>Of 10 cm, one end would stand at most {mm} mm higher.</source>
        <translation>Von 10 cm stünde ein Ende höchstens {mm} mm höher.</translation>
    </message>
    <message>
        <source>Of 10 cm, one end would stand 9 to {mm} mm higher.</source>
        <translation>Von 10 cm stünde ein Ende 9 bis {mm} mm höher.</translation>
    </message>
    <message>
        <source>Of 10 cm, one end would stand 26 to {mm} mm higher.</source>
        <translation>Von 10 cm stünde ein Ende 26 bis {mm} mm höher.</translation>
    </message>
    <message>
        <source>In one plane</source>
        <translation>In einer Ebene</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Auseinander</translation>
    </message>
    <message>
        <source>They lie at different heights or lean differently: 5 % is allowed for.</source>
        <translation>Sie liegen verschieden hoch oder neigen sich verschieden: 5 % werden eingerechnet.</translation>
    </message>
    <message>
        <source>The ruler lies at the height of the part and leans as it does.</source>
        <translation>Das Lineal liegt auf der Höhe des Teils und neigt sich wie dieses.</translation>
    </message>
    <message>
        <source>Both lines lie on one flat part.</source>
        <translation>Beide Linien liegen auf einem flachen Teil.</translation>
    </message>
    <message>
        <source>Sharp</source>
        <translation>Scharf</translation>
    </message>
    <message>
        <source>Ordinary</source>
        <translation>Gewöhnlich</translation>
    </message>
    <message>
        <source>Soft</source>
        <translation>Weich</translation>
    </message>
    <message>
        <source>A click is held to be right to about ± {px} pixels.</source>
        <translation>Ein Klick gilt als auf etwa ± {px} Pixel richtig.</translation>
    </message>
    <message>
        <source>Grey card (18 %)</source>
        <translation>Graukarte (18 %)</translation>
    </message>
    <message>
        <source>White paper</source>
        <translation>Weißes Papier</translation>
    </message>
    <message>
        <source>Other grey or white thing</source>
        <translation>Anderes Graues oder Weißes</translation>
    </message>
    <message>
        <source>clicks</source>
        <translation>Klicks</translation>
    </message>
    <message>
        <source>bends cut short</source>
        <translation>abgekürzte Bögen</translation>
    </message>
    <message>
        <source>tilt and height</source>
        <translation>Neigung und Höhe</translation>
    </message>
    <message>
        <source>the ruler</source>
        <translation>das Lineal</translation>
    </message>
    <message>
        <source>From {low:g} to {high:g}, as the doubtful ones are counted</source>
        <translation>Von {low:g} bis {high:g}, je nachdem, wie die zweifelhaften zählen</translation>
    </message>
    <message>
        <source>95 % interval: {low} to {high}</source>
        <translation>95-%-Intervall: {low} bis {high}</translation>
    </message>
    <message>
        <source>The patch is blown out in places; mark a part without glare.</source>
        <translation>Der Fleck ist stellenweise überstrahlt; markieren Sie ein Stück ohne Glanz.</translation>
    </message>
    <message>
        <source>The neutral thing is blown out; its colour cannot be read. Expose it less.</source>
        <translation>Das Neutrale ist überstrahlt; seine Farbe ist nicht lesbar. Belichten Sie weniger.</translation>
    </message>
    <message>
        <source>The picture is too dark; colours of dark parts are mostly noise.</source>
        <translation>Das Bild ist zu dunkel; Farben dunkler Teile sind vor allem Rauschen.</translation>
    </message>
    <message>
        <source>The light is strongly coloured; daylight would be much surer.</source>
        <translation>Das Licht ist stark gefärbt; Tageslicht wäre viel sicherer.</translation>
    </message>
    <message>
        <source>The neutral thing is not evenly lit; keep shadows and print out of the mark.</source>
        <translation>Das Neutrale ist nicht gleichmäßig beleuchtet; halten Sie Schatten und Druck aus der Marke.</translation>
    </message>
    <message>
        <source>The picture is blurred here; colours of small parts run together.</source>
        <translation>Das Bild ist hier unscharf; Farben kleiner Teile laufen ineinander.</translation>
    </message>
    <message>
        <source>The patch holds several colours; mark a smaller, even one.</source>
        <translation>Der Fleck enthält mehrere Farben; markieren Sie einen kleineren, gleichmäßigen.</translation>
    </message>
    <message>
        <source>The patch or the neutral mark is tiny; mark more of it.</source>
        <translation>Der Fleck oder die neutrale Marke ist winzig; markieren Sie mehr davon.</translation>
    </message>
    <message>
        <source>How light the neutral thing really is is not known, so lightness is left open.</source>
        <translation>Wie hell das Neutrale wirklich ist, ist nicht bekannt; die Helligkeit bleibt daher offen.</translation>
    </message>
    <message>
        <source>A freshly moulted animal is paler than its kind; wait two weeks if you can.</source>
        <translation>Ein frisch gehäutetes Tier ist blasser als seine Art; warten Sie zwei Wochen, wenn Sie können.</translation>
    </message>
    <message>
        <source>the patch has too few pixels; take the picture from nearer</source>
        <translation>der Fleck hat zu wenige Pixel; fotografieren Sie aus größerer Nähe</translation>
    </message>
    <message>
        <source>it is blurred</source>
        <translation>es ist unscharf</translation>
    </message>
    <message>
        <source>no edge in it is clear enough to tell whether it is sharp</source>
        <translation>keine Kante darin ist klar genug, um zu sagen, ob es scharf ist</translation>
    </message>
    <message>
        <source>it is too dark</source>
        <translation>es ist zu dunkel</translation>
    </message>
    <message>
        <source>glare covers too much of it</source>
        <translation>Glanz bedeckt zu viel davon</translation>
    </message>
    <message>
        <source>its noise looks like granules</source>
        <translation>sein Rauschen sieht wie Körnchen aus</translation>
    </message>
</context>
<context>
    <name>preview</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Look-alikes</source>
        <translation>Doppelgänger</translation>
    </message>
    <message>
        <source>Still missing for a name</source>
        <translation>Was für einen Namen noch fehlt</translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation>Nicht angesehen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>nothing sets it apart yet</source>
        <translation>noch trennt es nichts ab</translation>
    </message>
    <message>
        <source>set apart by {names}</source>
        <translation>getrennt durch {names}</translation>
    </message>
</context>
<context>
    <name>records</name>
    <message>
        <source>No verdict yet</source>
        <translation>Noch kein Urteil</translation>
    </message>
    <message>
        <source>No label</source>
        <translation>Kein Etikett</translation>
    </message>
    <message>
        <source>The key has changed since: writing it again judges the case anew.</source>
        <translation>Der Schlüssel hat sich seither geändert: Erneutes Schreiben beurteilt den Fall neu.</translation>
    </message>
    <message>
        <source>A dangerous species was still possible: do not handle.</source>
        <translation>Eine gefährliche Art war noch möglich: nicht anfassen.</translation>
    </message>
    <message>
        <source>A permit-listed species was still possible: check papers.</source>
        <translation>Eine gelistete Art war noch möglich: Papiere prüfen.</translation>
    </message>
    <message>
        <source>{n} findings · key {key} {version} · case {id}</source>
        <translation>{n} Befunde · Schlüssel {key} {version} · Fall {id}</translation>
    </message>
    <message>
        <source>Came in as {number} on {date}</source>
        <translation>Kam an als {number} am {date}</translation>
    </message>
    <message>
        <source>buyer noted</source>
        <translation>Käufer vermerkt</translation>
    </message>
    <message>
        <source>Sold as {number}</source>
        <translation>Verkauft als {number}</translation>
    </message>
    <message>
        <source>Rationale {file} of revision {number}</source>
        <translation>Begründung {file} zu Fassung {number}</translation>
    </message>
    <message>
        <source>Sale and papers</source>
        <translation>Verkauf und Papiere</translation>
    </message>
    <message>
        <source>Revisions</source>
        <translation>Fassungen</translation>
    </message>
    <message>
        <source>and {n} before them</source>
        <translation>und {n} davor</translation>
    </message>
    <message>
        <source>case opened</source>
        <translation>Fall eröffnet</translation>
    </message>
    <message>
        <source>judged</source>
        <translation>beurteilt</translation>
    </message>
</context>
<context>
    <name>taxon</name>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Also called</source>
        <translation>Auch genannt</translation>
    </message>
    <message>
        <source>Older names</source>
        <translation>Ältere Namen</translation>
    </message>
    <message>
        <source>Lives in</source>
        <translation>Lebt in</translation>
    </message>
    <message>
        <source>Adult size</source>
        <translation>Größe erwachsen</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Told from every other taxon of this key by</source>
        <translation>Von jedem anderen Taxon dieses Schlüssels getrennt durch</translation>
    </message>
    <message>
        <source>The characters of this key do not surely tell it from {names}.</source>
        <translation>Die Merkmale dieses Schlüssels trennen es nicht sicher von {names}.</translation>
    </message>
    <message>
        <source>What speaks against it here</source>
        <translation>Was hier dagegen spricht</translation>
    </message>
    <message>
        <source>It would come back without: {names}.</source>
        <translation>Es käme zurück ohne: {names}.</translation>
    </message>
    <message>
        <source>Rightly sold as: {labels}</source>
        <translation>Zu Recht verkauft als: {labels}</translation>
    </message>
    <message>
        <source>Wrongly sold as: {labels}</source>
        <translation>Zu Unrecht verkauft als: {labels}</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Not from print, but from memory or practice: {names}.</source>
        <translation>Nicht aus Gedrucktem, sondern aus dem Gedächtnis oder der Praxis: {names}.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>since {when}</source>
        <translation>seit {when}</translation>
    </message>
    <message>
        <source>listed as {names}</source>
        <translation>gelistet als {names}</translation>
    </message>
</context>
<context>
    <name>walk</name>
    <message>
        <source>This key has no couplets.</source>
        <translation>Dieser Schlüssel hat keine Alternativen.</translation>
    </message>
    <message>
        <source>The way leads to:</source>
        <translation>Der Weg führt zu:</translation>
    </message>
    <message>
        <source>Go on in free choice to make sure: a walk alone proves little.</source>
        <translation>Machen Sie in freier Wahl weiter, um sicherzugehen: Ein Weg allein beweist wenig.</translation>
    </message>
    <message>
        <source>Your findings now speak against the lead taken at {step}.</source>
        <translation>Ihre Befunde sprechen jetzt gegen die Aussage, der Sie bei {step} gefolgt sind.</translation>
    </message>
    <message>
        <source>The findings support {name} most ({share}), but this way no longer leads there. Go back, or follow both leads where you were in doubt.</source>
        <translation>Die Befunde stützen {name} am meisten ({share}), aber dieser Weg führt nicht mehr dorthin. Gehen Sie zurück, oder folgen Sie beiden Aussagen, wo Sie im Zweifel waren.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>Is the label right?</source>
        <translation>Stimmt das Etikett?</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>Was ist es?</translation>
    </message>
    <message>
        <source>Can it hurt?</source>
        <translation>Kann es verletzen?</translation>
    </message>
    <message>
        <source>Does it need papers?</source>
        <translation>Braucht es Papiere?</translation>
    </message>
    <message>
        <source>Looked with care</source>
        <translation>In Ruhe angesehen</translation>
    </message>
    <message>
        <source>Looked as usual</source>
        <translation>Wie üblich angesehen</translation>
    </message>
    <message>
        <source>Looked in a hurry</source>
        <translation>In Eile angesehen</translation>
    </message>
</context>
</TS>