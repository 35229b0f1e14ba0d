<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>AboutDialog</name>
    <message>
        <source>About idkey</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Qt and PySide6 are used under the LGPL, version 3: they are separate libraries that may be replaced by others of the same kind.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Each key names its own licence. The drawings are part of the program. The font is under the SIL Open Font License; its text is in {file}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A name is an opinion on evidence. A determination is no safety clearance, and permit law is to be checked locally.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The program is under the MIT licence. It opens no network connection.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>wrong</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Cannot tell</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Conclude</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No portrait in this key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What do the findings carry?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No more than was seen: open is an answer too.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What do you look at?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>That could not be seen this way.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Choose a character and a way of looking; typing finds it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How it went</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Seen so far</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Not ruled out</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Zoom together</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Picture to compare with</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Choose a picture or a drawing above.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Picture {n}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drawing: {state}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drawing: how to measure</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>About the label:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Must it still be treated as medically significant?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Must it still be treated as permit-listed?</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>ConfusionTable</name>
    <message>
        <source>{truth} taken for {said}: {n}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What was there, and what was said</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>cannot tell</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>CountPanel</name>
    <message>
        <source>Doubtful</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The chosen mark, or the last one, may be none.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Take one back</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Click each one once; the marks are numbered.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A doubtful mark counts half, and widens the uncertainty.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{sure} sure</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>, {doubtful} doubtful</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>The patch in neutral light</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Everybody</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drawing the next animal …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drill: learn to see the difference</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drill</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{right} of {n} right</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} to go</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>EraseDialog</name>
    <message>
        <source>Takes the reference out of every sale, draft and backup of this book, for good. The records stay verifiable. Write it exactly as it was noted.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Erase a buyer</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Practise beyond</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Lines with joints (C)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Click joint by joint; Enter or a double click ends the line.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Leans away</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>They lie</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>End points are</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The part leans away from the camera</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Part and ruler lie</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The two lines lie</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The end points are</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Length of the ruler line in {unit}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Standard uncertainty of that length</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Length of the ruler line</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Next joint of “{name}”; Enter ends it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Other end of “{name}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Click both ends of “{name}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Enough repeats; more make it a little surer.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{name}: {lengths} px ({n} of {enough})</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>The neutral thing is</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Moulted within the last days</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Patch</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Neutral thing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drag a box over an even patch of the part.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drag a box over the part the drawings show.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Now drag a box over something grey or white in the same light.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Say below which state it is; the picture does not decide.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sharp and lit well enough to show granules and hairs.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>This patch cannot show a fine surface:</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nearest: “{state}”, {distance} away.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No state is clearly nearest; the colour alone does not decide.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>LotPanel</name>
    <message>
        <source>Animals in the lot</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Wrong ones you are ready to miss, %</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How sure you want to be, %</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Looked at so far</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Wrong among them</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How many of a lot to look at</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Write the size of the lot (1 to {most}) and both shares.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No more can be wrong than were looked at, nor looked at than there are.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Look at {n} of the {lot}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Pick them blindly, from the whole lot. If {wrong} or more of the {lot} were wrong, a look at {n} would miss them all in at most {chance} of such picks. So when all {n} are right, you may say with {sure} % confidence: no more than {allowed} are wrong.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>After a look, write what it showed: it says what may be left.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{found} wrong among {looked}: with {sure} % confidence no more than {most} of the {lot} are wrong, those found included.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>NamingView</name>
    <message>
        <source>Cannot tell</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No drawing</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>How far people agree</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What is misread how often</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Look at this person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Write the attestation</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nobody has practised with this key yet.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>With the key “{key}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Pictures</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Pairs told apart</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Last</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Weakest</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Two people</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Same pictures</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Same answer</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Kappa (Cohen)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Character</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Wrong</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The key says</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Offered to the author</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Most often</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Everybody</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How far people agree on the same pictures</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What people misread, on drawings</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The author of the key can take an offered rate over in the workshop. The first three answers of each person to a character are left out; an offer takes 30 answers and leans towards the rate in the key.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>PhotoBar</name>
    <message>
        <source>Whole</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Magnifier</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The whole picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Magnifier at the cursor</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>PhotoCanvas</name>
    <message>
        <source>Picture</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>At {x}, {y} pixels.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} points drawn.</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>The file of this picture is damaged.
A number noted from it stands.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drag a picture here, paste one, or choose a file.
Place, time and owner are taken off what is kept.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Add a picture …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Reading …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Add pictures</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>Plate</name>
    <message>
        <source>Being drawn …</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>ProgressPage</name>
    <message>
        <source>Write the attestation</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Open it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share right by exercise</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Pairs told apart</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Characters read rightly</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share right over time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Which confusions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What {person} has shown</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Adding up …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No answers with this key yet.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} pictures of the key “{title}”. Lines are 95 % intervals (Wilson).</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{right} of {n}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A pair counts as told apart when its line begins at {share} or above; that takes {n} right decisions without a mistake. The latest 60 of each pair count.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} wrong</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Taxa, in pairs</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Over time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Characters read rightly, weakest first</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What was there (rows), and what was said (columns)</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drill</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share of contradicted labels, by supplier</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share of contradicted labels, by month</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>By label</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>By supplier</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>By month of arrival</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No case has a verdict on its label yet; here they will be counted.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share of animals whose label was contradicted, among those whose verdict says whether the label was right. Lines are 95 % intervals (Wilson): a long line means too few animals to blame anybody. Animals that were checked because they looked wrong push a rate up.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{wrong} of {n}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>not told</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Open at the bench</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Rationale again</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Export …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Write the rationale of this case again, as PDF and JSON</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Write the corrected shop label as PDF</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Write the selected cases as a Darwin Core Archive</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Take a buyer's reference out of the whole book</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Shop label …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Attach sale …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Erase buyer …</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>RecordsDeeds</name>
    <message>
        <source>not stated</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Written and noted in the record: {pdf} and {data}, in {folder}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Shop label written: {file}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>One case is written to {file}; its buyer is not in it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} cases are written to {file}; buyers are not in it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sale {number} is attached.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No sale names that buyer; check how the reference was written.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Erased. Sales that named the buyer: {sales}; backups: {backups}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Remarks or papers of these cases still name the buyer: {cases}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Delete these copies, which could not be cleaned: {files}.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>RecordsList</name>
    <message>
        <source>Recorded cases</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>RecordsSearch</name>
    <message>
        <source>Search the records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Label, name, supplier, remark, sale number …  ({key})</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Where the words stand</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>anywhere</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>supplier</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>from day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>to day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{name}, such as 2026-03-12</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>“{day}” is no day yet; write it as 2026-03-12.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>RecordsView</name>
    <message>
        <source>Part of the records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The key has changed since this case was judged. Press again to judge it with the key in hand; that adds a revision, and nothing is overwritten.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What the labels turn out to be</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The {n} cases worked on last; add a word to see others.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} cases, the one worked on last on top.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No case is recorded yet; what is looked at on the bench appears here.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No case has that. Try fewer words, or only the beginnings of words.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>One case.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>ResultCard</name>
    <message>
        <source>Use this number</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Uncertain because of: {causes}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The repeats differ more than such end points should; check each line.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No picture yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nothing counted yet</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How long is the ruler line?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Both lines are needed</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The key never reckons with less than ± {number} here: people differ about end points.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>SaleDialog</name>
    <message>
        <source>The same number again corrects the sale that was noted before.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Attach a sale</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Number of the sale in the till</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Date, such as 2026-03-12</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Price, with its currency</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Reference to the buyer (optional, can be erased)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Remark (cannot be erased: name nobody here)</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Key to practise with</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Somebody new: initials</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Initials or alias of somebody new</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Practise as this</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Begin with what is due</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Share right over time</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Say who practises: initials or an alias are enough.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Looking up what is due …</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>No picture comes twice. Esc ends at any time; every answer is kept.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>All done for now.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Just now: {right} of {n} right.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{name}: {wrong} of {n} wrong</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nothing stands out so far.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Where you go wrong most</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Note it</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>Which state is it?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Several: one of these.</source>
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>Tag</name>
    <message>
        <source>The label says: {text}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sold as</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>No portrait in this key</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>What do you look at first?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right, that tells nothing. What do you look at instead?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{name}: which is it?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>This does not tell them apart</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Picture {n}: its file is missing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Picture {n}: its file is damaged</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Picture {n}</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Drill</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Manual</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>About idkey</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>Tell the pair apart</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Run a case</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>One figure, one character: what does it show?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Two look-alikes: where do you look first, and which is it?</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A whole animal under a label that may be wrong.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nothing for today</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} to see again</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} new</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Nothing is waiting.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The next one is due at {hour}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The next one is due tomorrow at {hour}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The next one is due in {n} days.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>cannot tell</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right: {truth}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>It can be seen here: {truth}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>You read {said}; the plate shows {truth}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>One step off: you said “{said}”, and it shows “{truth}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>You said “{said}”, and it shows “{truth}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right: {name}, and by the character that tells.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right: {name}. The shorter way: look at {tells} first.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>It is {name}, but {looked} does not show that: it is the same on both, or the key does not know it. Look at {tells}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>It is {name}. What tells them apart is {tells}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{tells} does tell them apart: this is {name}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Right. The findings carry exactly that: {carried}.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Left open too soon: there was more to see that would have told something.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>More than was seen: you concluded “{said}”, and the findings leave it open.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>It was decided already: the findings carry “{carried}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Your findings carry “{carried}”, but something was misread: the truth is “{truth}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>You concluded “{said}”; the findings carry “{carried}”.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{share} ({low} to {high})</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
</context>
<context>
    <name>photo</name>
    <message>
        <source>Flat</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Slightly</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Clearly</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Of 10 cm, one end would stand at most {mm} mm higher.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Of 10 cm, one end would stand 9 to {mm} mm higher.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Of 10 cm, one end would stand 26 to {mm} mm higher.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>In one plane</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Apart</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>They lie at different heights or lean differently: 5 % is allowed for.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The ruler lies at the height of the part and leans as it does.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Both lines lie on one flat part.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sharp</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Ordinary</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Soft</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A click is held to be right to about ± {px} pixels.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Grey card (18 %)</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>White paper</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Other grey or white thing</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>clicks</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>bends cut short</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>tilt and height</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>the ruler</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>From {low:g} to {high:g}, as the doubtful ones are counted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>95 % interval: {low} to {high}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The patch is blown out in places; mark a part without glare.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The neutral thing is blown out; its colour cannot be read. Expose it less.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The picture is too dark; colours of dark parts are mostly noise.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The light is strongly coloured; daylight would be much surer.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The neutral thing is not evenly lit; keep shadows and print out of the mark.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The picture is blurred here; colours of small parts run together.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The patch holds several colours; mark a smaller, even one.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The patch or the neutral mark is tiny; mark more of it.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>How light the neutral thing really is is not known, so lightness is left open.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A freshly moulted animal is paler than its kind; wait two weeks if you can.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>the patch has too few pixels; take the picture from nearer</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>it is blurred</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>no edge in it is clear enough to tell whether it is sharp</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>it is too dark</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>glare covers too much of it</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>its noise looks like granules</source>
        <translation type="unfinished" />
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
        <translation type="unfinished" />
    </message>
    <message>
        <source>No label</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>The key has changed since: writing it again judges the case anew.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A dangerous species was still possible: do not handle.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>A permit-listed species was still possible: check papers.</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>{n} findings · key {key} {version} · case {id}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Came in as {number} on {date}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>buyer noted</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sold as {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Rationale {file} of revision {number}</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Sale and papers</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>Revisions</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>and {n} before them</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>case opened</source>
        <translation type="unfinished" />
    </message>
    <message>
        <source>judged</source>
        <translation type="unfinished" />
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