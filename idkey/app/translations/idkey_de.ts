<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
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
    <name>BenchBar</name>
    <message>
        <source>What you need to know</source>
        <translation>Was Sie wissen müssen</translation>
    </message>
    <message>
        <source>Sex of the animal</source>
        <translation>Geschlecht des Tieres</translation>
    </message>
    <message>
        <source>Stage of the animal</source>
        <translation>Stadium des Tieres</translation>
    </message>
    <message>
        <source>How the looking is done</source>
        <translation>Wie hingesehen wird</translation>
    </message>
    <message>
        <source>How to go through the key</source>
        <translation>Wie man durch den Schlüssel geht</translation>
    </message>
    <message>
        <source>To find out</source>
        <translation>Gefragt ist</translation>
    </message>
    <message>
        <source>Any sex</source>
        <translation>Geschlecht offen</translation>
    </message>
    <message>
        <source>Any stage</source>
        <translation>Stadium offen</translation>
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
    <name>CompareView</name>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
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
    <name>Frame</name>
    <message>
        <source>Opening records and keys; you can write already.</source>
        <translation>Akten und Schlüssel werden geöffnet; Sie können schon schreiben.</translation>
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
    <name>Notice</name>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
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
        <source>Nothing has that name here.</source>
        <translation>Nichts heißt hier so.</translation>
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
    <name>TaxonSheet</name>
    <message>
        <source>Compare with the leader</source>
        <translation>Mit dem Führenden vergleichen</translation>
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