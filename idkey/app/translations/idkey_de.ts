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
    <name>AgainPage</name>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Run all cases again</source>
        <translation>Alle Fälle erneut beurteilen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Cases looked at</source>
        <translation>Angesehene Fälle</translation>
    </message>
    <message>
        <source>Cases that come out otherwise</source>
        <translation>Fälle, die jetzt anders ausgehen</translation>
    </message>
    <message>
        <source>What changes, and why</source>
        <translation>Was sich ändert, und warum</translation>
    </message>
    <message>
        <source>Issue anew …</source>
        <translation>Neu ausstellen …</translation>
    </message>
    <message>
        <source>Show the case</source>
        <translation>Fall zeigen</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Was</source>
        <translation>War</translation>
    </message>
    <message>
        <source>Would be</source>
        <translation>Wäre</translation>
    </message>
    <message>
        <source>After a new key version</source>
        <translation>Nach einer neuen Schlüsselversion</translation>
    </message>
    <message>
        <source>Judges every recorded case with the key as it is now and lists those that come out otherwise. Nothing in the book changes by that: a case is issued anew only when you say so.</source>
        <translation>Beurteilt jeden aufgezeichneten Fall mit dem jetzigen Schlüssel und listet die auf, die anders ausgehen. In den Akten ändert sich dadurch nichts: Ein Fall wird nur neu ausgestellt, wenn Sie es sagen.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>✓ Issued anew with the key in hand.</source>
        <translation>✓ Mit dem jetzigen Schlüssel neu ausgestellt.</translation>
    </message>
    <message>
        <source>Stopped after {done} of {n} cases; {changed} come out otherwise.</source>
        <translation>Nach {done} von {n} Fällen angehalten; {changed} gehen anders aus.</translation>
    </message>
    <message>
        <source>All {n} cases come out as they were.</source>
        <translation>Alle {n} Fälle ergeben dasselbe wie zuvor.</translation>
    </message>
    <message>
        <source>{changed} of {n} cases come out otherwise.</source>
        <translation>{changed} von {n} Fällen gehen anders aus.</translation>
    </message>
    <message>
        <source>Running …</source>
        <translation>Läuft …</translation>
    </message>
    <message>
        <source>{title}: {n} cases</source>
        <translation>{title}: {n} Fälle</translation>
    </message>
    <message>
        <source>{title}: one case</source>
        <translation>{title}: ein Fall</translation>
    </message>
    <message>
        <source>No case is recorded yet with a key that is at hand.</source>
        <translation>Noch ist kein Fall mit einem Schlüssel aufgezeichnet, der zur Hand ist.</translation>
    </message>
    <message>
        <source>{done} of {n} cases</source>
        <translation>{done} von {n} Fällen</translation>
    </message>
    <message>
        <source>Press again to add a revision with the new verdict and to write a new rationale. The earlier revision and document stay in the record.</source>
        <translation>Noch einmal drücken, um eine Fassung mit dem neuen Urteil hinzuzufügen und eine neue Begründung zu schreiben. Frühere Fassung und früheres Dokument bleiben in der Akte.</translation>
    </message>
</context>
<context>
    <name>AgreementPanel</name>
    <message>
        <source>Second opinions</source>
        <translation>Zweite Meinungen</translation>
    </message>
    <message>
        <source>Nobody has given one yet. A second keeper can determine an animal of the records again, blind; how far the two agree is told here.</source>
        <translation>Noch hat niemand eine abgegeben. Eine zweite Person kann ein Tier aus den Akten noch einmal blind bestimmen; wie weit beide übereinstimmen, steht dann hier.</translation>
    </message>
    <message>
        <source>Character</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>Same</source>
        <translation>Gleich</translation>
    </message>
    <message>
        <source>Kappa</source>
        <translation>Kappa</translation>
    </message>
    <message>
        <source>{same} of {n}</source>
        <translation>{same} von {n}</translation>
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
    <name>ArrivalPage</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Add to my keys</source>
        <translation>Zu meinen Schlüsseln legen</translation>
    </message>
    <message>
        <source>Replace mine</source>
        <translation>Meinen ersetzen</translation>
    </message>
    <message>
        <source>Id of the second key</source>
        <translation>Kennung des zweiten Schlüssels</translation>
    </message>
    <message>
        <source>Keep both, this one as</source>
        <translation>Beide behalten, diesen als</translation>
    </message>
    <message>
        <source>{file}: {form}. Id {id}, version {version}, {size}.</source>
        <translation>{file}: {form}. Kennung {id}, Version {version}, {size}.</translation>
    </message>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>The very same key is here already; there is nothing to add.</source>
        <translation>Genau dieser Schlüssel ist schon da; es gibt nichts hinzuzufügen.</translation>
    </message>
    <message>
        <source>No key here has this id. It can be added as it is.</source>
        <translation>Kein Schlüssel hier hat diese Kennung. Er kann so dazukommen.</translation>
    </message>
    <message>
        <source>A key with this id is here, but it is broken.</source>
        <translation>Ein Schlüssel mit dieser Kennung ist hier, aber er ist fehlerhaft.</translation>
    </message>
    <message>
        <source>A key with this id came with the program (version {here}), which is not replaced. This one can stand beside it under another id.</source>
        <translation>Ein Schlüssel mit dieser Kennung kam mit dem Programm (Version {here}) und wird nicht ersetzt. Dieser kann unter anderer Kennung danebenstehen.</translation>
    </message>
    <message>
        <source>You have a key with this id in version {here}; this one is version {came}. From yours to this one {step}; after version {here} would come {next}. When it is replaced, yours is kept among the removed keys.</source>
        <translation>Sie haben einen Schlüssel mit dieser Kennung in Version {here}; dieser hat Version {came}. Von Ihrem zu diesem gilt: {step}; nach Version {here} käme {next}. Wird er ersetzt, bleibt Ihrer bei den weggelegten Schlüsseln.</translation>
    </message>
    <message>
        <source>What was left out, changed or assumed</source>
        <translation>Was wegfiel, geändert oder angenommen wurde</translation>
    </message>
    <message>
        <source>Nothing was left out and nothing was assumed.</source>
        <translation>Nichts fiel weg, und nichts wurde angenommen.</translation>
    </message>
    <message>
        <source>Recorded cases that would be judged otherwise: {n}</source>
        <translation>Fälle in den Akten, die anders beurteilt würden: {n}</translation>
    </message>
    <message>
        <source>No recorded case would be judged otherwise.</source>
        <translation>Kein Fall in den Akten würde anders beurteilt.</translation>
    </message>
</context>
<context>
    <name>AsFound</name>
    <message>
        <source>The animal as found so far</source>
        <translation>Das Tier nach den bisherigen Befunden</translation>
    </message>
    <message>
        <source>Hatched: not known yet</source>
        <translation>Schraffiert: noch unbekannt</translation>
    </message>
    <message>
        <source>As found so far</source>
        <translation>Bisher gefunden</translation>
    </message>
    <message>
        <source>As found, not to scale</source>
        <translation>Bisher, nicht maßstäblich</translation>
    </message>
    <message>
        <source>From one finding</source>
        <translation>Aus einem Befund</translation>
    </message>
    <message>
        <source>From {n} findings</source>
        <translation>Aus {n} Befunden</translation>
    </message>
</context>
<context>
    <name>AskedRow</name>
    <message>
        <source>Ask nothing of {name}</source>
        <translation>Nach {name} nicht fragen</translation>
    </message>
    <message>
        <source>from{unit}</source>
        <translation>von{unit}</translation>
    </message>
    <message>
        <source>to{unit}</source>
        <translation>bis{unit}</translation>
    </message>
</context>
<context>
    <name>AuditPage</name>
    <message>
        <source>Which to show</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Search what was found</source>
        <translation>In den Funden suchen</translation>
    </message>
    <message>
        <source>Search: taxon, character, file …</source>
        <translation>Suchen: Taxon, Merkmal, Datei …</translation>
    </message>
    <message>
        <source>What is weak is looked for once there is no error left.</source>
        <translation>Schwächen werden gesucht, sobald kein Fehler mehr da ist.</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Dorthin</translation>
    </message>
    <message>
        <source>Everything ({n})</source>
        <translation>Alles ({n})</translation>
    </message>
    <message>
        <source>Nothing that was found has these words.</source>
        <translation>Kein Fund enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Nothing to mend: no mistakes, and no weakness known.</source>
        <translation>Nichts zu beheben: keine Fehler und keine bekannte Schwäche.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What mends it</source>
        <translation>Was hilft</translation>
    </message>
</context>
<context>
    <name>AuditStrip</name>
    <message>
        <source>Show everything that was found</source>
        <translation>Alles Gefundene zeigen</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Dorthin</translation>
    </message>
    <message>
        <source>Go to the first thing to mend</source>
        <translation>Zum Ersten, was zu beheben ist</translation>
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
    <name>BuildOptions</name>
    <message>
        <source>What to build for</source>
        <translation>Worauf gebaut wird</translation>
    </message>
    <message>
        <source>Leads of a couplet</source>
        <translation>Aussagen je Alternative</translation>
    </message>
    <message>
        <source>Dangerous animals first</source>
        <translation>Gefährliche Tiere zuerst</translation>
    </message>
    <message>
        <source>Tell them from the rest first, and ask nothing that means handling while a medically significant species is still possible.</source>
        <translation>Sie zuerst von den übrigen trennen und nichts fragen, wozu man anfassen muss, solange eine medizinisch bedeutsame Art noch möglich ist.</translation>
    </message>
    <message>
        <source>Opening that stays as it is written</source>
        <translation>Anfang, der bleibt, wie er geschrieben ist</translation>
    </message>
    <message>
        <source>How often each taxon comes in</source>
        <translation>Wie oft jedes Taxon hereinkommt</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>alle gleich</translation>
    </message>
    <message>
        <source>as rates and cases say</source>
        <translation>wie Raten und Fälle sagen</translation>
    </message>
    <message>
        <source>Build couplets</source>
        <translation>Alternativen bauen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>none: build all of it</source>
        <translation>keiner: alles bauen</translation>
    </message>
    <message>
        <source>the first couplet</source>
        <translation>die erste Alternative</translation>
    </message>
    <message>
        <source>the first {n} couplets</source>
        <translation>die ersten {n} Alternativen</translation>
    </message>
    <message>
        <source>Little effort</source>
        <translation>Wenig Mühe</translation>
    </message>
    <message>
        <source>Few couplets</source>
        <translation>Wenige Alternativen</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>One per state</source>
        <translation>Eine je Zustand</translation>
    </message>
    <message>
        <source>Couplets from the scores</source>
        <translation>Alternativen aus den Werten</translation>
    </message>
</context>
<context>
    <name>BuildPage</name>
    <message>
        <source>Take these couplets over</source>
        <translation>Diese Alternativen übernehmen</translation>
    </message>
    <message>
        <source>The built couplets</source>
        <translation>Die gebauten Alternativen</translation>
    </message>
    <message>
        <source>Mend the errors of the key first: see the line at the foot.</source>
        <translation>Beheben Sie zuerst die Fehler des Schlüssels: siehe die Zeile unten.</translation>
    </message>
    <message>
        <source>These are the couplets of the key now; take back brings the others back.</source>
        <translation>Das sind jetzt die Alternativen des Schlüssels; Rückgängig bringt die anderen wieder.</translation>
    </message>
    <message>
        <source>The scores have changed since: build again.</source>
        <translation>Die Werte haben sich seither geändert: bauen Sie neu.</translation>
    </message>
    <message>
        <source>No couplets from these scores take less effort.</source>
        <translation>Keine Alternativen aus diesen Werten machen weniger Mühe.</translation>
    </message>
    <message>
        <source>The best that was found; the words of the leads are made from the scores, so read them once.</source>
        <translation>Das Beste, was gefunden wurde; die Aussagen sind aus den Werten gebildet, lesen Sie sie einmal durch.</translation>
    </message>
    <message>
        <source>Building …</source>
        <translation>Es wird gebaut …</translation>
    </message>
    <message>
        <source>Stopped; nothing was changed.</source>
        <translation>Angehalten; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>{n} built couplets</source>
        <translation>{n} gebaute Alternativen</translation>
    </message>
</context>
<context>
    <name>BuildTable</name>
    <message>
        <source>written</source>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>built</source>
        <translation>gebaut</translation>
    </message>
    <message>
        <source>Couplets</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>Questions, on average</source>
        <translation>Fragen im Mittel</translation>
    </message>
    <message>
        <source>Questions, at worst</source>
        <translation>Fragen höchstens</translation>
    </message>
    <message>
        <source>No key with as many leads asks fewer, on average, than</source>
        <translation>Mit so vielen Aussagen fragt kein Schlüssel im Mittel weniger als</translation>
    </message>
    <message>
        <source>Effort, on average (1 is a glance)</source>
        <translation>Mühe im Mittel (1 ist ein Blick)</translation>
    </message>
    <message>
        <source>Effort, at worst</source>
        <translation>Mühe höchstens</translation>
    </message>
    <message>
        <source>Animals that come out under one name</source>
        <translation>Tiere, die unter einem Namen herauskommen</translation>
    </message>
    <message>
        <source>Ends with more than one name</source>
        <translation>Enden mit mehr als einem Namen</translation>
    </message>
    <message>
        <source>Taxa nothing leads to</source>
        <translation>Taxa, zu denen nichts führt</translation>
    </message>
</context>
<context>
    <name>CaseAsks</name>
    <message>
        <source>This is a second opinion itself; ask for another on the first case.</source>
        <translation>Dies ist selbst eine zweite Meinung; eine weitere bitte beim ersten Fall einholen.</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
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
    <name>CasesPage</name>
    <message>
        <source>The key has changed since this case was judged. Press again to judge it with the key in hand; that adds a revision, and nothing is overwritten.</source>
        <translation>Der Schlüssel hat sich seit dem Urteil über diesen Fall geändert. Noch einmal drücken, um ihn mit dem jetzigen Schlüssel zu beurteilen; das fügt eine Fassung hinzu, überschrieben wird nichts.</translation>
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
    <message>
        <source>Writing …</source>
        <translation>Es wird geschrieben …</translation>
    </message>
</context>
<context>
    <name>CautionBar</name>
    <message>
        <source>Do not handle.</source>
        <translation>Nicht anfassen.</translation>
    </message>
    <message>
        <source>Again: do not handle.</source>
        <translation>Wieder: nicht anfassen.</translation>
    </message>
    <message>
        <source>Most likely it is a medically significant species.</source>
        <translation>Sehr wahrscheinlich ist es eine medizinisch bedeutsame Art.</translation>
    </message>
    <message>
        <source>Only medically significant species are left.</source>
        <translation>Nur medizinisch bedeutsame Arten sind übrig.</translation>
    </message>
    <message>
        <source>A medically significant species is possible again.</source>
        <translation>Eine medizinisch bedeutsame Art ist wieder möglich.</translation>
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
        <source>Again: treat as listed.</source>
        <translation>Wieder: wie gelistet behandeln.</translation>
    </message>
    <message>
        <source>Most likely it is a permit-listed species.</source>
        <translation>Sehr wahrscheinlich ist es eine gelistete Art.</translation>
    </message>
    <message>
        <source>Only permit-listed species are left.</source>
        <translation>Nur gelistete Arten sind übrig.</translation>
    </message>
    <message>
        <source>A permit-listed species is possible again.</source>
        <translation>Eine gelistete Art ist wieder möglich.</translation>
    </message>
    <message>
        <source>A permit-listed species is still possible.</source>
        <translation>Eine gelistete Art ist noch möglich.</translation>
    </message>
</context>
<context>
    <name>CellEditor</name>
    <message>
        <source>The cell</source>
        <translation>Die Zelle</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Another sex or stage</source>
        <translation>Anderes Geschlecht oder Stadium</translation>
    </message>
    <message>
        <source>Remove this one</source>
        <translation>Diese Angabe entfernen</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>all animals</source>
        <translation>alle Tiere</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Bekannt</translation>
    </message>
    <message>
        <source>Not applicable</source>
        <translation>Entfällt</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>There is one for {whom} already.</source>
        <translation>Für {whom} gibt es schon eine Angabe.</translation>
    </message>
    <message>
        <source>Nothing is chosen: what was there stays. Choose, or say unknown.</source>
        <translation>Nichts ist gewählt: Es bleibt, was da war. Wählen Sie, oder geben Sie „unbekannt“ an.</translation>
    </message>
</context>
<context>
    <name>CellGrounds</name>
    <message>
        <source>Sex it holds for</source>
        <translation>Geschlecht, für das es gilt</translation>
    </message>
    <message>
        <source>both sexes</source>
        <translation>beide Geschlechter</translation>
    </message>
    <message>
        <source>Stage it holds for</source>
        <translation>Stadium, für das es gilt</translation>
    </message>
    <message>
        <source>all stages</source>
        <translation>alle Stadien</translation>
    </message>
    <message>
        <source>How the value reached the key</source>
        <translation>Wie der Wert in den Schlüssel kam</translation>
    </message>
    <message>
        <source>Sources, by their short names</source>
        <translation>Quellen, mit ihren Kurznamen</translation>
    </message>
    <message>
        <source>short names, with commas</source>
        <translation>Kurznamen, mit Kommas</translation>
    </message>
    <message>
        <source>Page or note</source>
        <translation>Seite oder Bemerkung</translation>
    </message>
    <message>
        <source>page, or what sources disagree about</source>
        <translation>Seite, oder worin sich Quellen widersprechen</translation>
    </message>
    <message>
        <source>This key has no source “{name}” yet.</source>
        <translation>Dieser Schlüssel hat noch keine Quelle „{name}“.</translation>
    </message>
    <message>
        <source>Same basis and sources for {n} chosen cells</source>
        <translation>Gleiche Grundlage und Quellen für {n} gewählte Zellen</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Beruht auf</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
</context>
<context>
    <name>ChangeList</name>
    <message>
        <source>Only changes with these words</source>
        <translation>Nur Änderungen mit diesen Wörtern</translation>
    </message>
    <message>
        <source>Only changes of</source>
        <translation>Nur Änderungen an</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>All changes ({n})</source>
        <translation>Alle Änderungen ({n})</translation>
    </message>
    <message>
        <source>{n} of {all} changes are shown.</source>
        <translation>{n} von {all} Änderungen werden gezeigt.</translation>
    </message>
</context>
<context>
    <name>CharacterHeader</name>
    <message>
        <source>Characters</source>
        <translation>Merkmale</translation>
    </message>
</context>
<context>
    <name>CharacterPage</name>
    <message>
        <source>New character</source>
        <translation>Neues Merkmal</translation>
    </message>
    <message>
        <source>What does one see?</source>
        <translation>Was sieht man?</translation>
    </message>
    <message>
        <source>{name} (copy)</source>
        <translation>{name} (Kopie)</translation>
    </message>
    <message>
        <source>Name: the term of the trade</source>
        <translation>Name: der Fachausdruck</translation>
    </message>
    <message>
        <source>Question in plain words</source>
        <translation>Frage in einfachen Worten</translation>
    </message>
    <message>
        <source>States</source>
        <translation>Zustände</translation>
    </message>
    <message>
        <source>How to look</source>
        <translation>Wie man hinsieht</translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Wie weit man ihm trauen kann</translation>
    </message>
    <message>
        <source>Shops lean on it more than it can bear.</source>
        <translation>Läden verlassen sich mehr darauf, als sie trägt.</translation>
    </message>
    <message>
        <source>A rule of thumb</source>
        <translation>Eine Faustregel</translation>
    </message>
    <message>
        <source>When it applies</source>
        <translation>Wann es gilt</translation>
    </message>
    <message>
        <source>Only where another character shows</source>
        <translation>Nur wenn ein anderes Merkmal zeigt</translation>
    </message>
    <message>
        <source>Found by, and from where</source>
        <translation>Wie man es findet und woher es stammt</translation>
    </message>
    <message>
        <source>states, in no order</source>
        <translation>Zustände ohne Reihenfolge</translation>
    </message>
    <message>
        <source>states, from least to most</source>
        <translation>Zustände, vom geringsten zum stärksten</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>eine Zählung</translation>
    </message>
    <message>
        <source>a measurement</source>
        <translation>eine Messung</translation>
    </message>
    <message>
        <source>a ratio</source>
        <translation>ein Verhältnis</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>such as mm</source>
        <translation>etwa mm</translation>
    </message>
    <message>
        <source>Part of the body</source>
        <translation>Körperteil</translation>
    </message>
    <message>
        <source>such as telson</source>
        <translation>etwa telson</translation>
    </message>
    <message>
        <source>Ways of looking, easiest first</source>
        <translation>Arten hinzusehen, die leichteste zuerst</translation>
    </message>
    <message>
        <source>What exactly is looked at</source>
        <translation>Was genau betrachtet wird</translation>
    </message>
    <message>
        <source>How to look, in one sentence</source>
        <translation>Wie man hinsieht, in einem Satz</translation>
    </message>
    <message>
        <source>What commonly goes wrong</source>
        <translation>Was oft schiefgeht</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>low</source>
        <translation>gering</translation>
    </message>
    <message>
        <source>Observers agree</source>
        <translation>Beobachter stimmen überein</translation>
    </message>
    <message>
        <source>Measured error rate</source>
        <translation>Gemessene Fehlerrate</translation>
    </message>
    <message>
        <source>A rate lies between 0 and 1, such as 0.08.</source>
        <translation>Eine Rate liegt zwischen 0 und 1, etwa 0,08.</translation>
    </message>
    <message>
        <source>Trouble (a glance is 1)</source>
        <translation>Aufwand (ein Blick ist 1)</translation>
    </message>
    <message>
        <source>It must be above 0.</source>
        <translation>Es muss über 0 liegen.</translation>
    </message>
    <message>
        <source>Uncertainty of one measurement</source>
        <translation>Unsicherheit einer Messung</translation>
    </message>
    <message>
        <source>It must not be below 0.</source>
        <translation>Es darf nicht unter 0 liegen.</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Weighed as one with</source>
        <translation>Zusammen gewogen mit</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Other words people search for</source>
        <translation>Andere Wörter, nach denen gesucht wird</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Eines je Zeile</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>First state</source>
        <translation>Erster Zustand</translation>
    </message>
    <message>
        <source>Second state</source>
        <translation>Zweiter Zustand</translation>
    </message>
    <message>
        <source>Kind of {name}</source>
        <translation>Art von {name}</translation>
    </message>
    <message>
        <source>Between states and numbers nothing can be kept. This changes: {uses}.</source>
        <translation>Zwischen Zuständen und Zahlen lässt sich nichts behalten. Das ändert: {uses}.</translation>
    </message>
    <message>
        <source>Change the kind</source>
        <translation>Art ändern</translation>
    </message>
    <message>
        <source>Id of the state {name}</source>
        <translation>Kennung des Zustands {name}</translation>
    </message>
    <message>
        <source>Remove the state {name}</source>
        <translation>Zustand {name} entfernen</translation>
    </message>
    <message>
        <source>{name} is named by scores, leads or checks, which will let go of it.</source>
        <translation>{name} kommt in Werten, Aussagen oder Prüfsätzen vor; dort fällt es weg.</translation>
    </message>
    <message>
        <source>Remove it everywhere</source>
        <translation>Überall entfernen</translation>
    </message>
</context>
<context>
    <name>CheckPage</name>
    <message>
        <source>What is stated, in your own words</source>
        <translation>Die Aussage, in eigenen Worten</translation>
    </message>
    <message>
        <source>these findings leave these taxa</source>
        <translation>diese Befunde lassen diese Taxa übrig</translation>
    </message>
    <message>
        <source>this label means these taxa</source>
        <translation>dieses Etikett meint diese Taxa</translation>
    </message>
    <message>
        <source>where a label comes from</source>
        <translation>woher ein Etikett stammt</translation>
    </message>
    <message>
        <source>stated in print, not computed</source>
        <translation>gedruckte Aussage, nicht berechnet</translation>
    </message>
    <message>
        <source>What is stated</source>
        <translation>Die Aussage</translation>
    </message>
    <message>
        <source>What it is about</source>
        <translation>Worum es geht</translation>
    </message>
    <message>
        <source>What is seen</source>
        <translation>Was man sieht</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>Taxa that must stay possible</source>
        <translation>Taxa, die möglich bleiben müssen</translation>
    </message>
    <message>
        <source>Taxa that must be ruled out</source>
        <translation>Taxa, die ausgeschlossen sein müssen</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es stammt</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Does it rest on the same text as the scores?</source>
        <translation>Beruht es auf demselben Text wie die Werte?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Sex of the specimen</source>
        <translation>Geschlecht des Tiers</translation>
    </message>
    <message>
        <source>Its stage</source>
        <translation>Sein Stadium</translation>
    </message>
    <message>
        <source>Label texts</source>
        <translation>Etikettentexte</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Eines je Zeile</translation>
    </message>
    <message>
        <source>Country or region</source>
        <translation>Land oder Gebiet</translation>
    </message>
    <message>
        <source>– Not computed: it is kept for people to read.</source>
        <translation>– Wird nicht berechnet: zum Nachlesen aufbewahrt.</translation>
    </message>
    <message>
        <source>✓ The matrix agrees.</source>
        <translation>✓ Die Matrix stimmt zu.</translation>
    </message>
    <message>
        <source>The matrix rules out what must stay: {taxa}.</source>
        <translation>Die Matrix schließt aus, was bleiben muss: {taxa}.</translation>
    </message>
    <message>
        <source>The matrix leaves what must go: {taxa}.</source>
        <translation>Die Matrix lässt übrig, was ausgeschlossen sein muss: {taxa}.</translation>
    </message>
</context>
<context>
    <name>Chip</name>
    <message>
        <source>{name}: press to remove it; Alt and an arrow key move it.</source>
        <translation>{name}: drücken entfernt es; Alt mit einer Pfeiltaste verschiebt es.</translation>
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
    <name>ClashModel</name>
    <message>
        <source>taken</source>
        <translation>genommen</translation>
    </message>
    <message>
        <source>What clashes</source>
        <translation>Was sich widerspricht</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Mine</source>
        <translation>Meins</translation>
    </message>
    <message>
        <source>Theirs</source>
        <translation>Das andere</translation>
    </message>
</context>
<context>
    <name>ClashTable</name>
    <message>
        <source>Clashes; M takes mine, T takes theirs</source>
        <translation>Widersprüche; M nimmt meins, T nimmt das andere</translation>
    </message>
</context>
<context>
    <name>Clashes</name>
    <message>
        <source>The record book was exchanged or restored while “{animal}” was open.</source>
        <translation>Die Akten wurden ausgetauscht oder wiederhergestellt, während „{animal}“ offen war.</translation>
    </message>
    <message>
        <source>Your state was added to it as revision {ours}.</source>
        <translation>Ihr Stand wurde als Fassung {ours} hinzugefügt.</translation>
    </message>
    <message>
        <source>{who} saved “{animal}” on {when}, after you opened it. Changed: {what}.</source>
        <translation>{who} hat „{animal}“ am {when} gespeichert, nachdem Sie es geöffnet hatten. Geändert: {what}.</translation>
    </message>
    <message>
        <source>Another counter</source>
        <translation>Eine andere Theke</translation>
    </message>
    <message>
        <source>the verdict</source>
        <translation>das Urteil</translation>
    </message>
    <message>
        <source>Nothing is overwritten: theirs is kept as revision {theirs}, yours as revision {ours}, which counts for now. Look at theirs before you go on.</source>
        <translation>Nichts ist überschrieben: Deren Stand bleibt als Fassung {theirs}, Ihrer als Fassung {ours}, die vorerst gilt. Sehen Sie deren Stand an, bevor Sie weitermachen.</translation>
    </message>
    <message>
        <source>Go on from theirs</source>
        <translation>Mit deren Stand weitermachen</translation>
    </message>
</context>
<context>
    <name>ColumnPanel</name>
    <message>
        <source>What the column holds</source>
        <translation>Was die Spalte enthält</translation>
    </message>
    <message>
        <source>Kind of character</source>
        <translation>Art des Merkmals</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>States, one a line</source>
        <translation>Zustände, einer je Zeile</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Was sie enthält</translation>
    </message>
    <message>
        <source>States in the order they should have, one a line</source>
        <translation>Zustände in der gewünschten Reihenfolge, einer je Zeile</translation>
    </message>
    <message>
        <source>You said so.</source>
        <translation>Sie haben es so angegeben.</translation>
    </message>
</context>
<context>
    <name>ColumnsDialog</name>
    <message>
        <source>Columns of the table</source>
        <translation>Spalten der Tabelle</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>not in the table</source>
        <translation>nicht in der Tabelle</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Say once which column holds what; it is remembered for tables with these columns. The number of the sale is needed. On the right stands the first line.</source>
        <translation>Sagen Sie einmal, welche Spalte was enthält; es wird für Tabellen mit diesen Spalten gemerkt. Die Nummer des Verkaufs ist nötig. Rechts steht die erste Zeile.</translation>
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
    <name>Confirm</name>
    <message>
        <source>Leave as it is</source>
        <translation>So lassen</translation>
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
    <name>CopyDialog</name>
    <message>
        <source>Your own copy</source>
        <translation>Ihre eigene Kopie</translation>
    </message>
    <message>
        <source>A copy of “{title}”, comments and all, goes to your own keys.</source>
        <translation>Eine Kopie von „{title}“, samt Kommentaren, kommt zu Ihren eigenen Schlüsseln.</translation>
    </message>
    <message>
        <source>Id of the copy</source>
        <translation>Kennung der Kopie</translation>
    </message>
    <message>
        <source>Id of the copy, which is the name of its folder</source>
        <translation>Kennung der Kopie; so heißt auch ihr Ordner</translation>
    </message>
    <message>
        <source>Copy and work on it</source>
        <translation>Kopieren und bearbeiten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
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
    <name>CoupletBar</name>
    <message>
        <source>How they are shown</source>
        <translation>Wie sie gezeigt werden</translation>
    </message>
    <message>
        <source>Start with a couplet</source>
        <translation>Mit einer Alternative anfangen</translation>
    </message>
    <message>
        <source>Add a lead</source>
        <translation>Aussage hinzufügen</translation>
    </message>
    <message>
        <source>Couplet below this lead</source>
        <translation>Alternative unter dieser Aussage</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Start here</source>
        <translation>Hier anfangen</translation>
    </message>
    <message>
        <source>Number anew</source>
        <translation>Neu nummerieren</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Move the lead up</source>
        <translation>Aussage nach oben</translation>
    </message>
    <message>
        <source>Move the lead down</source>
        <translation>Aussage nach unten</translation>
    </message>
    <message>
        <source>This key has no couplets. They can also be built from the matrix.</source>
        <translation>Dieser Schlüssel hat keine Alternativen. Sie lassen sich auch aus der Matrix bauen.</translation>
    </message>
    <message>
        <source>Couplets: {n}</source>
        <translation>Alternativen: {n}</translation>
    </message>
    <message>
        <source>⚠ no lead comes to: {names}</source>
        <translation>⚠ keine Aussage führt zu: {names}</translation>
    </message>
    <message>
        <source>⚠ leads in a circle: {n}</source>
        <translation>⚠ Aussagen im Kreis: {n}</translation>
    </message>
    <message>
        <source>⚠ leads to a couplet that is not there: {n}</source>
        <translation>⚠ Aussagen zu einer Alternative, die es nicht gibt: {n}</translation>
    </message>
    <message>
        <source>⚠ leads against the scores: {n}</source>
        <translation>⚠ Aussagen gegen die Werte: {n}</translation>
    </message>
    <message>
        <source>⚠ taxa no lead ends in: {n}</source>
        <translation>⚠ Taxa, bei denen keine Aussage endet: {n}</translation>
    </message>
    <message>
        <source>✓ every lead agrees with the scores</source>
        <translation>✓ jede Aussage passt zu den Werten</translation>
    </message>
    <message>
        <source>Graph</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
</context>
<context>
    <name>CoupletGraph</name>
    <message>
        <source>Couplets as a graph</source>
        <translation>Alternativen als Bild</translation>
    </message>
    <message>
        <source>Drag a lead onto another couplet to lead it there. Arrows move, Delete removes.</source>
        <translation>Eine Aussage auf eine andere Alternative ziehen, damit sie dorthin führt. Pfeiltasten bewegen, Entf entfernt.</translation>
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
    <name>CoupletPage</name>
    <message>
        <source>Number of the couplet</source>
        <translation>Nummer der Alternative</translation>
    </message>
    <message>
        <source>How to look at this couplet, or a caution</source>
        <translation>Wie man bei dieser Alternative hinsieht, oder eine Warnung</translation>
    </message>
    <message>
        <source>Couplet {name}</source>
        <translation>Alternative {name}</translation>
    </message>
    <message>
        <source>Lead {name}</source>
        <translation>Aussage {name}</translation>
    </message>
    <message>
        <source>Remove: {what}</source>
        <translation>Entfernen: {what}</translation>
    </message>
    <message>
        <source>What the animal shows</source>
        <translation>Was das Tier zeigt</translation>
    </message>
    <message>
        <source>{what} goes on to {goal}</source>
        <translation>{what} geht weiter zu {goal}</translation>
    </message>
    <message>
        <source>Words of {what}</source>
        <translation>Worte von {what}</translation>
    </message>
    <message>
        <source>Words of couplet {name}</source>
        <translation>Worte der Alternative {name}</translation>
    </message>
</context>
<context>
    <name>CoupletText</name>
    <message>
        <source>Couplets as text</source>
        <translation>Alternativen als Text</translation>
    </message>
    <message>
        <source>A line for each lead: 1 a. What the animal shows -&gt; 2. After the arrow stands the next couplet, or the taxa it ends in. Indented below it: sees: character = state, state; another = 10..20 and remark: … A note for the couplet: 1 note: …</source>
        <translation>Eine Zeile je Aussage: 1 a. Was das Tier zeigt -&gt; 2. Hinter dem Pfeil steht die nächste Alternative oder die Taxa, bei denen sie endet. Eingerückt darunter: sees: Merkmal = Zustand, Zustand; anderes = 10..20 und remark: … Eine Anmerkung zur Alternative: 1 note: …</translation>
    </message>
    <message>
        <source>Mistakes in the text</source>
        <translation>Fehler im Text</translation>
    </message>
    <message>
        <source>Put my text away, show the couplets as they are</source>
        <translation>Meinen Text verwerfen, die Alternativen zeigen, wie sie sind</translation>
    </message>
    <message>
        <source>Line {line}: {problem} {remedy}</source>
        <translation>Zeile {line}: {problem} {remedy}</translation>
    </message>
    <message>
        <source>Your text is kept, but not taken over before its mistakes are mended.</source>
        <translation>Ihr Text ist aufbewahrt, wird aber erst übernommen, wenn die Fehler behoben sind.</translation>
    </message>
</context>
<context>
    <name>CoverageView</name>
    <message>
        <source>{share} {ground} ({n} of {all} cells)</source>
        <translation>{share} {ground} ({n} von {all} Zellen)</translation>
    </message>
</context>
<context>
    <name>DiagnosisPage</name>
    <message>
        <source>Search a taxon …</source>
        <translation>Ein Taxon suchen …</translation>
    </message>
    <message>
        <source>Search a taxon</source>
        <translation>Ein Taxon suchen</translation>
    </message>
    <message>
        <source>Characters wanted against each other taxon</source>
        <translation>Merkmale, die gegen jedes andere Taxon verlangt sind</translation>
    </message>
    <message>
        <source>With description</source>
        <translation>Mit Beschreibung</translation>
    </message>
    <message>
        <source>Diagnosis and description</source>
        <translation>Diagnose und Beschreibung</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy the text of this taxon</source>
        <translation>Den Text zu diesem Taxon kopieren</translation>
    </message>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>Shown as of the last key without errors.</source>
        <translation>Gezeigt ist der letzte Schlüssel ohne Fehler.</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Es wird geschrieben …</translation>
    </message>
    <message>
        <source>All as HTML …</source>
        <translation>Alle als HTML …</translation>
    </message>
    <message>
        <source>All as text …</source>
        <translation>Alle als Text …</translation>
    </message>
    <message>
        <source>Characters per rival</source>
        <translation>Merkmale je Rivale</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Kopiert.</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation>Geschrieben: {file}</translation>
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
    <name>Doors</name>
    <message>
        <source>Keep the changes for later</source>
        <translation>Änderungen für später aufheben</translation>
    </message>
    <message>
        <source>Throw the changes away</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>The key has a mistake, so it cannot be used yet and was not saved.</source>
        <translation>Der Schlüssel hat einen Fehler; er ist so noch nicht zu gebrauchen und wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>The key has {n} mistakes, so it cannot be used yet and was not saved.</source>
        <translation>Der Schlüssel hat {n} Fehler; er ist so noch nicht zu gebrauchen und wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>Your work is kept, and comes back when you open the key again.</source>
        <translation>Ihre Arbeit ist aufgehoben und ist wieder da, wenn Sie den Schlüssel wieder öffnen.</translation>
    </message>
    <message>
        <source>Took in what changed on the disk</source>
        <translation>Übernommen, was sich auf der Platte geändert hat</translation>
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
    <name>EditionChoice</name>
    <message>
        <source>From disk</source>
        <translation>Von der Platte</translation>
    </message>
    <message>
        <source>{name}: from a file or folder</source>
        <translation>{name}: aus einer Datei oder einem Ordner</translation>
    </message>
    <message>
        <source>A file…</source>
        <translation>Eine Datei …</translation>
    </message>
    <message>
        <source>A folder…</source>
        <translation>Ein Ordner …</translation>
    </message>
</context>
<context>
    <name>EntryButton</name>
    <message>
        <source>Seen: {what}</source>
        <translation>Gesehen: {what}</translation>
    </message>
</context>
<context>
    <name>EntryList</name>
    <message>
        <source>Search: {name}</source>
        <translation>Suchen: {name}</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Add to: {name}</source>
        <translation>Hinzufügen zu: {name}</translation>
    </message>
    <message>
        <source>Copy the chosen one: {name}</source>
        <translation>Den gewählten Eintrag kopieren: {name}</translation>
    </message>
    <message>
        <source>Remove the chosen one: {name}</source>
        <translation>Den gewählten Eintrag entfernen: {name}</translation>
    </message>
    <message>
        <source>Move the chosen one up (Alt+Up): {name}</source>
        <translation>Den gewählten Eintrag nach oben (Alt+Auf): {name}</translation>
    </message>
    <message>
        <source>Move the chosen one down (Alt+Down): {name}</source>
        <translation>Den gewählten Eintrag nach unten (Alt+Ab): {name}</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>{found} of {all}</source>
        <translation>{found} von {all}</translation>
    </message>
</context>
<context>
    <name>EntryPage</name>
    <message>
        <source>Nothing here yet. Add the first one.</source>
        <translation>Hier ist noch nichts. Den ersten Eintrag hinzufügen.</translation>
    </message>
    <message>
        <source>New: {name}</source>
        <translation>Neu: {name}</translation>
    </message>
    <message>
        <source>Copy of {name}</source>
        <translation>Kopie von {name}</translation>
    </message>
    <message>
        <source>{name} is named by others, which will let go of it: {uses}.</source>
        <translation>{name} kommt anderswo vor und fällt dort weg: {uses}.</translation>
    </message>
    <message>
        <source>Remove it everywhere</source>
        <translation>Überall entfernen</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>Place of {name}</source>
        <translation>Platz von {name}</translation>
    </message>
    <message>
        <source>{field} of {name}</source>
        <translation>{field} von {name}</translation>
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
        <source>Nothing of this kind in this key</source>
        <translation>Nichts dieser Art in diesem Schlüssel</translation>
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
    <name>FigureChooser</name>
    <message>
        <source>Search the drawings</source>
        <translation>Zeichnungen durchsuchen</translation>
    </message>
    <message>
        <source>Search the drawings: key, character, state …</source>
        <translation>Zeichnungen suchen: Schlüssel, Merkmal, Zustand …</translation>
    </message>
    <message>
        <source>Drawings</source>
        <translation>Zeichnungen</translation>
    </message>
</context>
<context>
    <name>FindingPictures</name>
    <message>
        <source>Add pictures</source>
        <translation>Bilder hinzufügen</translation>
    </message>
    <message>
        <source>The pasted picture</source>
        <translation>Das eingefügte Bild</translation>
    </message>
    <message>
        <source>There is no picture to paste.</source>
        <translation>Es ist kein Bild zum Einfügen da.</translation>
    </message>
    <message>
        <source>Copy one in another program, then paste it onto the finding.</source>
        <translation>Kopieren Sie eines in einem anderen Programm und fügen Sie es dann beim Befund ein.</translation>
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
    <name>GoalField</name>
    <message>
        <source>Taxa it ends in</source>
        <translation>Taxa, bei denen sie endet</translation>
    </message>
    <message>
        <source>goes on to couplet {id}: {lead}</source>
        <translation>geht weiter zu Alternative {id}: {lead}</translation>
    </message>
    <message>
        <source>ends in these taxa</source>
        <translation>endet bei diesen Taxa</translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>Page of the library</source>
        <translation>Seite der Bibliothek</translation>
    </message>
    <message>
        <source>Take a key in</source>
        <translation>Schlüssel aufnehmen</translation>
    </message>
    <message>
        <source>New key</source>
        <translation>Neuer Schlüssel</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
    </message>
    <message>
        <source>Keys here</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Compare versions</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Join two edits</source>
        <translation>Vereinen</translation>
    </message>
    <message>
        <source>From a file… (Ctrl+O)</source>
        <translation>Aus einer Datei … (Strg+O)</translation>
    </message>
    <message>
        <source>From a folder…</source>
        <translation>Aus einem Ordner …</translation>
    </message>
    <message>
        <source>What was copied (Ctrl+V)</source>
        <translation>Was kopiert wurde (Strg+V)</translation>
    </message>
    <message>
        <source>From a spreadsheet…</source>
        <translation>Aus einer Tabelle …</translation>
    </message>
    <message>
        <source>An empty key…</source>
        <translation>Ein leerer Schlüssel …</translation>
    </message>
    <message>
        <source>From the small leaf key…</source>
        <translation>Aus dem kleinen Blattschlüssel …</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>What saving would change: checks, couplets, cases</source>
        <translation>Was das Speichern ändern würde: Prüfsätze, Alternativen, Fälle</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Put this key away and choose another one</source>
        <translation>Diesen Schlüssel weglegen und einen anderen wählen</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>version {version}</source>
        <translation>Version {version}</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Do again</source>
        <translation>Wiederholen</translation>
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
    <name>ImpactPage</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich geändert hat</translation>
    </message>
    <message>
        <source>What the changes do</source>
        <translation>Was die Änderungen bewirken</translation>
    </message>
    <message>
        <source>Nothing has changed since the key was saved.</source>
        <translation>Nichts hat sich geändert, seit der Schlüssel gespeichert wurde.</translation>
    </message>
    <message>
        <source>What the changes do can be said once the key has no errors.</source>
        <translation>Was die Änderungen bewirken, lässt sich sagen, sobald der Schlüssel keine Fehler hat.</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Es wird nachgesehen …</translation>
    </message>
    <message>
        <source>Judging the recorded cases again …</source>
        <translation>Die erfassten Fälle werden neu beurteilt …</translation>
    </message>
    <message>
        <source>One change since the key was saved.</source>
        <translation>Eine Änderung, seit der Schlüssel gespeichert wurde.</translation>
    </message>
    <message>
        <source>{n} changes.</source>
        <translation>{n} Änderungen.</translation>
    </message>
    <message>
        <source>Make it version {n}</source>
        <translation>Zu Version {n} machen</translation>
    </message>
    <message>
        <source>Stopped: what the changes do was not looked at to the end.</source>
        <translation>Angehalten: Was die Änderungen bewirken, wurde nicht bis zum Ende angesehen.</translation>
    </message>
    <message>
        <source>Stopped: the recorded cases were not all judged again.</source>
        <translation>Angehalten: nicht alle Fälle wurden neu beurteilt.</translation>
    </message>
    <message>
        <source>Version {n}</source>
        <translation>Version {n}</translation>
    </message>
</context>
<context>
    <name>JoinPage</name>
    <message>
        <source>Both began with</source>
        <translation>Beide begannen mit</translation>
    </message>
    <message>
        <source>Mine</source>
        <translation>Meine</translation>
    </message>
    <message>
        <source>Theirs</source>
        <translation>Die andere</translation>
    </message>
    <message>
        <source>Take mine everywhere</source>
        <translation>Überall meins nehmen</translation>
    </message>
    <message>
        <source>Take theirs everywhere</source>
        <translation>Überall das andere nehmen</translation>
    </message>
    <message>
        <source>Go on with the joined key</source>
        <translation>Mit dem vereinten Schlüssel weiter</translation>
    </message>
    <message>
        <source>Being joined …</source>
        <translation>Wird vereint …</translation>
    </message>
    <message>
        <source>Choose the version both began with, yours, and theirs. What only one of you changed is taken; where both changed the same thing, you decide.</source>
        <translation>Wählen Sie die Version, mit der beide begannen, Ihre und die andere. Was nur eine Seite geändert hat, wird genommen; wo beide dasselbe geändert haben, entscheiden Sie.</translation>
    </message>
    <message>
        <source>These are not versions of one key; joining them makes little sense.</source>
        <translation>Das sind keine Versionen eines Schlüssels; sie zu vereinen hat wenig Sinn.</translation>
    </message>
    <message>
        <source>Nothing clashes: what each of you changed stands side by side.</source>
        <translation>Nichts widerspricht sich: Was jede Seite geändert hat, steht nebeneinander.</translation>
    </message>
    <message>
        <source>Changed by both: {n}; undecided: {open}. Those stand as ticked. M takes mine, T takes theirs.</source>
        <translation>Von beiden geändert: {n}; unentschieden: {open}. Diese stehen wie angehakt. M nimmt meins, T nimmt das andere.</translation>
    </message>
    <message>
        <source>The joined key is version {version}.</source>
        <translation>Der vereinte Schlüssel hat Version {version}.</translation>
    </message>
    <message>
        <source>… and {n} more</source>
        <translation>… und {n} weitere</translation>
    </message>
    <message>
        <source>The joined key cannot be used like that; decide otherwise:</source>
        <translation>So ist der vereinte Schlüssel nicht brauchbar; entscheiden Sie anders:</translation>
    </message>
</context>
<context>
    <name>KeyList</name>
    <message>
        <source>Keys that are here</source>
        <translation>Schlüssel, die hier sind</translation>
    </message>
</context>
<context>
    <name>KeyPage</name>
    <message>
        <source>Printed couplets, in the workshop</source>
        <translation>Gedruckte Alternativen, in der Werkstatt</translation>
    </message>
    <message>
        <source>Start a case</source>
        <translation>Fall beginnen</translation>
    </message>
    <message>
        <source>Open in the workshop</source>
        <translation>In der Werkstatt öffnen</translation>
    </message>
    <message>
        <source>Hand on…</source>
        <translation>Weitergeben …</translation>
    </message>
    <message>
        <source>Take off the shelf</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>{taxa} taxa · {characters} characters · {scores} scores</source>
        <translation>{taxa} Taxa · {characters} Merkmale · {scores} Werte</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Eines je Zeile</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>such as CC-BY-4.0</source>
        <translation>etwa CC-BY-4.0</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>such as 1.0.0</source>
        <translation>etwa 1.0.0</translation>
    </message>
    <message>
        <source>Portraits are drawn as</source>
        <translation>Porträts werden gezeichnet als</translation>
    </message>
    <message>
        <source>Cautions, shown with every verdict of this key</source>
        <translation>Warnungen, die bei jedem Urteil dieses Schlüssels stehen</translation>
    </message>
    <message>
        <source>What it covers, and what it does not</source>
        <translation>Was er umfasst und was nicht</translation>
    </message>
    <message>
        <source>Authors, each with what they did</source>
        <translation>Autoren, je mit ihrem Beitrag</translation>
    </message>
    <message>
        <source>Glossary</source>
        <translation>Glossar</translation>
    </message>
    <message>
        <source>term: explanation, one a line</source>
        <translation>Begriff: Erklärung, eines je Zeile</translation>
    </message>
    <message>
        <source>{field} of the key</source>
        <translation>{field} des Schlüssels</translation>
    </message>
</context>
<context>
    <name>LabelDialog</name>
    <message>
        <source>Shop label</source>
        <translation>Ladenetikett</translation>
    </message>
    <message>
        <source>Printed on</source>
        <translation>Gedruckt auf</translation>
    </message>
    <message>
        <source>Price, with its currency</source>
        <translation>Preis, mit Währung</translation>
    </message>
    <message>
        <source>Labels of the sheet that are gone already</source>
        <translation>Schon verbrauchte Etiketten des Bogens</translation>
    </message>
    <message>
        <source>Lines to cut along, for plain paper</source>
        <translation>Schnittlinien, für gewöhnliches Papier</translation>
    </message>
    <message>
        <source>Write as PDF …</source>
        <translation>Als PDF schreiben …</translation>
    </message>
    <message>
        <source>Roll, {size}</source>
        <translation>Rolle, {size}</translation>
    </message>
    <message>
        <source>A4 sheet, {across} × {down} labels, {size}</source>
        <translation>A4-Bogen, {across} × {down} Etiketten, {size}</translation>
    </message>
    <message>
        <source>{n} labels, one for each selected case.</source>
        <translation>{n} Etiketten, eins für jeden gewählten Fall.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>It says no more than the verdict does. The drawing is close to the print.</source>
        <translation>Es sagt nicht mehr als das Urteil. Die Zeichnung kommt dem Druck nahe.</translation>
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
    <name>LabelPage</name>
    <message>
        <source>New label</source>
        <translation>Neues Etikett</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Eines je Zeile</translation>
    </message>
    <message>
        <source>The label as the trade writes it</source>
        <translation>Das Etikett, wie der Handel es schreibt</translation>
    </message>
    <message>
        <source>Other spellings and languages</source>
        <translation>Andere Schreibweisen und Sprachen</translation>
    </message>
    <message>
        <source>Taxa it properly covers</source>
        <translation>Taxa, für die es zu Recht steht</translation>
    </message>
    <message>
        <source>Other taxa often sold under it</source>
        <translation>Andere Taxa, die oft so verkauft werden</translation>
    </message>
    <message>
        <source>It covers, outside this key</source>
        <translation>Es umfasst, außerhalb dieses Schlüssels</translation>
    </message>
    <message>
        <source>Sold under it, outside this key</source>
        <translation>So verkauft, außerhalb dieses Schlüssels</translation>
    </message>
    <message>
        <source>What a wrong label does</source>
        <translation>Was ein falsches Etikett anrichtet</translation>
    </message>
    <message>
        <source>To a person</source>
        <translation>Für Menschen</translation>
    </message>
    <message>
        <source>To the papers</source>
        <translation>Für die Papiere</translation>
    </message>
    <message>
        <source>Characters that decide it, best first</source>
        <translation>Merkmale, die es entscheiden, das beste zuerst</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>published for the trade</source>
        <translation>für den Handel veröffentlicht</translation>
    </message>
    <message>
        <source>published in taxonomy</source>
        <translation>in der Taxonomie veröffentlicht</translation>
    </message>
    <message>
        <source>hobby practice, no source</source>
        <translation>Hobbypraxis, keine Quelle</translation>
    </message>
    <message>
        <source>Why the mix-up happens</source>
        <translation>Warum die Verwechslung vorkommt</translation>
    </message>
    <message>
        <source>How the mix-up is known</source>
        <translation>Woher man die Verwechslung kennt</translation>
    </message>
    <message>
        <source>What it usually turns out to be, before your own cases</source>
        <translation>Was es meist ist, vor Ihren eigenen Fällen</translation>
    </message>
    <message>
        <source>Starting rates</source>
        <translation>Anfangsraten</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>At the bench this label says</source>
        <translation>Am Tisch sagt dieses Etikett</translation>
    </message>
</context>
<context>
    <name>LabelPreview</name>
    <message>
        <source>The label as it is printed</source>
        <translation>Das Etikett, wie es gedruckt wird</translation>
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
    <name>LeadForm</name>
    <message>
        <source>Where it goes</source>
        <translation>Wohin sie führt</translation>
    </message>
    <message>
        <source>What that means for the characters</source>
        <translation>Was das für die Merkmale heißt</translation>
    </message>
    <message>
        <source>What the animal shows, as a sentence</source>
        <translation>Was das Tier zeigt, als Satz</translation>
    </message>
    <message>
        <source>Remark: what cannot be told apart, a caution</source>
        <translation>Bemerkung: was sich nicht trennen lässt, eine Warnung</translation>
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
        <source>Nothing looked at yet. What you note appears here, with what it changed.</source>
        <translation>Noch nichts angesehen. Was Sie notieren, erscheint hier mit seiner Wirkung.</translation>
    </message>
    <message>
        <source>Enter corrects it, Delete takes it back, P adds a picture of it.</source>
        <translation>Enter berichtigt, Entf nimmt zurück, P fügt ein Bild hinzu.</translation>
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
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n Bild</numerusform>
            <numerusform>%n Bilder</numerusform>
        </translation>
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
    <message>
        <source>Add a picture …</source>
        <translation>Bild hinzufügen …</translation>
    </message>
    <message>
        <source>Paste a picture</source>
        <translation>Bild einfügen</translation>
    </message>
    <message>
        <source>Show the pictures</source>
        <translation>Bilder zeigen</translation>
    </message>
</context>
<context>
    <name>LibraryState</name>
    <message>
        <source>Cases rest on the key {key}: {n}. It stays, so that they can be read.</source>
        <translation>Auf dem Schlüssel {key} beruhen Fälle: {n}. Er bleibt, damit sie lesbar sind.</translation>
    </message>
    <message>
        <source>{key} is off the shelf; its folder is kept: {place}</source>
        <translation>{key} ist weggelegt; sein Ordner bleibt erhalten: {place}</translation>
    </message>
    <message>
        <source>Written: {file}.</source>
        <translation>Geschrieben: {file}.</translation>
    </message>
    <message>
        <source>Nothing had to be left out.</source>
        <translation>Nichts musste wegfallen.</translation>
    </message>
    <message>
        <source>What it cannot hold:</source>
        <translation>Was darin keinen Platz hat:</translation>
    </message>
    <message>
        <source>{key} is among your keys now.</source>
        <translation>{key} gehört jetzt zu Ihren Schlüsseln.</translation>
    </message>
</context>
<context>
    <name>LibraryView</name>
    <message>
        <source>{file} is being read …</source>
        <translation>{file} wird gelesen …</translation>
    </message>
    <message>
        <source>Several files were dragged here; the first one is shown.</source>
        <translation>Mehrere Dateien wurden hierher gezogen; die erste wird gezeigt.</translation>
    </message>
    <message>
        <source>Take the others one after another.</source>
        <translation>Nehmen Sie die anderen nacheinander.</translation>
    </message>
    <message>
        <source>What was pasted is being read …</source>
        <translation>Das Eingefügte wird gelesen …</translation>
    </message>
    <message>
        <source>pasted text</source>
        <translation>eingefügter Text</translation>
    </message>
    <message>
        <source>There is nothing here that could be a key.</source>
        <translation>Hier ist nichts, was ein Schlüssel sein könnte.</translation>
    </message>
    <message>
        <source>Copy a file, a folder or a table first.</source>
        <translation>Kopieren Sie zuerst eine Datei, einen Ordner oder eine Tabelle.</translation>
    </message>
    <message>
        <source>the joined key</source>
        <translation>der vereinte Schlüssel</translation>
    </message>
    <message>
        <source>{file} is being written …</source>
        <translation>{file} wird geschrieben …</translation>
    </message>
    <message>
        <source>Which file holds the key?</source>
        <translation>Welche Datei enthält den Schlüssel?</translation>
    </message>
    <message>
        <source>Which folder is the key?</source>
        <translation>Welcher Ordner ist der Schlüssel?</translation>
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
    <name>MatrixGrid</name>
    <message>
        <source>Matrix of taxa and characters</source>
        <translation>Matrix aus Taxa und Merkmalen</translation>
    </message>
</context>
<context>
    <name>MatrixLegend</name>
    <message>
        <source>from print</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>varies</source>
        <translation>wechselnd</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>entfällt</translation>
    </message>
    <message>
        <source>mistake</source>
        <translation>Fehler</translation>
    </message>
</context>
<context>
    <name>MatrixPage</name>
    <message>
        <source>{n} of {all} cells filled</source>
        <translation>{n} von {all} Zellen gefüllt</translation>
    </message>
    <message>
        <source>No cell shown here has that.</source>
        <translation>Keine der gezeigten Zellen enthält das.</translation>
    </message>
</context>
<context>
    <name>MatrixTools</name>
    <message>
        <source>How cells are shown</source>
        <translation>Wie die Zellen gezeigt werden</translation>
    </message>
    <message>
        <source>Which cells to look for</source>
        <translation>Welche Zellen gesucht werden</translation>
    </message>
    <message>
        <source>By region</source>
        <translation>Nach Körperregion</translation>
    </message>
    <message>
        <source>Characters of one body region stand side by side</source>
        <translation>Merkmale einer Körperregion stehen nebeneinander</translation>
    </message>
    <message>
        <source>Find a word in the matrix</source>
        <translation>Ein Wort in der Matrix suchen</translation>
    </message>
    <message>
        <source>Find (Ctrl+F)</source>
        <translation>Suchen (Strg+F)</translation>
    </message>
    <message>
        <source>All cells</source>
        <translation>Alle Zellen</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>From memory</source>
        <translation>Aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Without a source</source>
        <translation>Ohne Quelle</translation>
    </message>
    <message>
        <source>With a mistake</source>
        <translation>Mit Fehler</translation>
    </message>
    <message>
        <source>Two alike</source>
        <translation>Ähnliches Paar</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Overview</source>
        <translation>Überblick</translation>
    </message>
</context>
<context>
    <name>MatrixWork</name>
    <message>
        <source>{character}: {n} taxa</source>
        <translation>{character}: {n} Taxa</translation>
    </message>
    <message>
        <source>{taxon}: {n} characters</source>
        <translation>{taxon}: {n} Merkmale</translation>
    </message>
    <message>
        <source>{n} cells of the matrix</source>
        <translation>{n} Zellen der Matrix</translation>
    </message>
</context>
<context>
    <name>MistakesDialog</name>
    <message>
        <source>Nothing was changed</source>
        <translation>Nichts wurde geändert</translation>
    </message>
    <message>
        <source>Cells that did not fit</source>
        <translation>Zellen, die nicht passten</translation>
    </message>
    <message>
        <source>{n} cells do not fit, so none was changed:</source>
        <translation>{n} Zellen passen nicht, deshalb wurde keine geändert:</translation>
    </message>
    <message>
        <source>One cell does not fit, so none was changed:</source>
        <translation>Eine Zelle passt nicht, deshalb wurde keine geändert:</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
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
    <name>NewDialog</name>
    <message>
        <source>A new key</source>
        <translation>Ein neuer Schlüssel</translation>
    </message>
    <message>
        <source>Title of the key</source>
        <translation>Titel des Schlüssels</translation>
    </message>
    <message>
        <source>What is the key called?</source>
        <translation>Wie heißt der Schlüssel?</translation>
    </message>
    <message>
        <source>The title can be changed later; the folder is named after it.</source>
        <translation>Der Titel lässt sich später ändern; der Ordner wird nach ihm benannt.</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel anlegen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
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
    <message numerus="yes">
        <source>Show all %n candidates</source>
        <translation>
            <numerusform>%n Kandidaten zeigen</numerusform>
            <numerusform>Alle %n Kandidaten zeigen</numerusform>
        </translation>
    </message>
    <message>
        <source>Show fewer</source>
        <translation>Weniger zeigen</translation>
    </message>
    <message>
        <source>Write a number of 0 or more, such as 12.5.</source>
        <translation>Eine Zahl ab 0 schreiben, etwa 12,5.</translation>
    </message>
    <message>
        <source>Far from what is known of the candidates: {known}</source>
        <translation>Weit von dem, was von den Kandidaten bekannt ist: {known}</translation>
    </message>
</context>
<context>
    <name>ObservedPage</name>
    <message>
        <source>Tick all that differ</source>
        <translation>Alle ankreuzen, die abweichen</translation>
    </message>
    <message>
        <source>Take the ticked rates over</source>
        <translation>Angekreuzte Raten übernehmen</translation>
    </message>
    <message>
        <source>There is no record book here.</source>
        <translation>Hier ist kein Fallbuch.</translation>
    </message>
    <message>
        <source>Adding up …</source>
        <translation>Es wird gezählt …</translation>
    </message>
    <message>
        <source>Nobody has answered enough drill pictures of this key yet.</source>
        <translation>Noch niemand hat genug Übungsbilder dieses Schlüssels beantwortet.</translation>
    </message>
    <message>
        <source>What people misread agrees with what the key says, as far as it goes.</source>
        <translation>Was verwechselt wird, passt zu dem, was der Schlüssel sagt, so weit es reicht.</translation>
    </message>
    <message>
        <source>For {n} of {all} characters the key says something else than was seen.</source>
        <translation>Bei {n} von {all} Merkmalen sagt der Schlüssel etwas anderes, als gesehen wurde.</translation>
    </message>
    <message>
        <source>Character</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>0 to 50 %</source>
        <translation>0 bis 50 %</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Offer</source>
        <translation>Angebot</translation>
    </message>
    <message>
        <source>Most often</source>
        <translation>Am häufigsten</translation>
    </message>
    <message>
        <source>Fewer than {n} answers, or the key says it already.</source>
        <translation>Weniger als {n} Antworten, oder der Schlüssel sagt es schon.</translation>
    </message>
    <message>
        <source>{wrong} of {n}</source>
        <translation>{wrong} von {n}</translation>
    </message>
    <message>
        <source>From drawings in the drill; the first {warm} answers of each person to a character are left out. An offer takes {n} answers and leans towards the rate in the key. Line: 95 % interval; dot: seen; upright: the key; triangle: the offer.</source>
        <translation>Von Zeichnungen in der Übung; die ersten {warm} Antworten jeder Person zu einem Merkmal zählen nicht. Ein Angebot braucht {n} Antworten und neigt zur Rate im Schlüssel. Linie: 95-%-Intervall; Punkt: gesehen; Strich: der Schlüssel; Dreieck: das Angebot.</translation>
    </message>
    <message>
        <source>Error rate of a character</source>
        <translation>Fehlerrate eines Merkmals</translation>
    </message>
    <message>
        <source>Error rates of {n} characters</source>
        <translation>Fehlerraten von {n} Merkmalen</translation>
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
    <name>OpinionDialog</name>
    <message>
        <source>Somebody else looks at the same animal afresh. They see what the label says and nothing that was found before; the first case is put away from the bench. When they have come to a verdict, this record shows how far the two agree.</source>
        <translation>Jemand anderes sieht dasselbe Tier neu an. Zu sehen ist, was das Etikett sagt, und nichts, was zuvor gefunden wurde; der erste Fall wird vom Tisch geräumt. Steht ein Urteil, zeigt diese Akte, wie weit beide übereinstimmen.</translation>
    </message>
    <message>
        <source>Begin a second opinion</source>
        <translation>Zweite Meinung beginnen</translation>
    </message>
    <message>
        <source>Initials of the second keeper</source>
        <translation>Kürzel der zweiten Person</translation>
    </message>
    <message>
        <source>The first determination is signed the same: it would not be a second one.</source>
        <translation>Die erste Bestimmung trägt dasselbe Kürzel: Es wäre keine zweite.</translation>
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
        <source>answered</source>
        <translation>beantwortet</translation>
    </message>
    <message>
        <source>worth {share}</source>
        <translation>Wert {share}</translation>
    </message>
</context>
<context>
    <name>PageList</name>
    <message>
        <source>Pages of the workshop</source>
        <translation>Seiten der Werkstatt</translation>
    </message>
    <message>
        <source>{page}: one mistake</source>
        <translation>{page}: ein Fehler</translation>
    </message>
    <message>
        <source>{page}: {n} mistakes</source>
        <translation>{page}: {n} Fehler</translation>
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
    <name>PapersDialog</name>
    <message>
        <source>Permit fields</source>
        <translation>Angaben zu Papieren</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Note them</source>
        <translation>Notieren</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Number in the stock book, or of the shipment</source>
        <translation>Nummer im Bestandsbuch oder der Lieferung</translation>
    </message>
    <message>
        <source>Missing or odd</source>
        <translation>Fehlt oder stimmt nicht</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>By this key no listed taxon is possible any more. Papers may be noted.</source>
        <translation>Nach diesem Schlüssel ist kein gelistetes Taxon mehr möglich. Papiere können notiert werden.</translation>
    </message>
    <message>
        <source>May stand on a list: {taxa} ({lists}).</source>
        <translation>Vielleicht gelistet: {taxa} ({lists}).</translation>
    </message>
    <message>
        <source>The number in the stock book is missing; write one to save.</source>
        <translation>Die Nummer im Bestandsbuch fehlt; zum Speichern eine angeben.</translation>
    </message>
    <message>
        <source>Nothing. That does not say that the papers are enough.</source>
        <translation>Nichts. Das heißt nicht, dass die Papiere genügen.</translation>
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
    <name>PickField</name>
    <message>
        <source>Add …</source>
        <translation>Hinzufügen …</translation>
    </message>
</context>
<context>
    <name>PictureViewer</name>
    <message>
        <source>Next picture</source>
        <translation>Nächstes Bild</translation>
    </message>
    <message>
        <source>Add another</source>
        <translation>Noch eines hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>{seen} · picture {n} of {all}</source>
        <translation>{seen} · Bild {n} von {all}</translation>
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
    <name>PlateCanvas</name>
    <message>
        <source>Drawn animal: {view}</source>
        <translation>Gezeichnetes Tier: {view}</translation>
    </message>
</context>
<context>
    <name>PlateLink</name>
    <message>
        <source>Parts of the animal and what is seen on them (Ctrl+B)</source>
        <translation>Teile des Tiers und was man an ihnen sieht (Strg+B)</translation>
    </message>
    <message>
        <source>On the animal: {part}</source>
        <translation>Am Tier: {part}</translation>
    </message>
</context>
<context>
    <name>PlateView</name>
    <message>
        <source>Parts of the animal</source>
        <translation>Teile des Tiers</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Part or character</source>
        <translation>Teil oder Merkmal</translation>
    </message>
    <message>
        <source>Find a part or a character</source>
        <translation>Ein Teil oder ein Merkmal suchen</translation>
    </message>
    <message>
        <source>Show all parts</source>
        <translation>Alle Teile zeigen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Click a part, or reach it with the arrows and Enter.</source>
        <translation>Ein Teil anklicken, oder mit den Pfeiltasten und Enter wählen.</translation>
    </message>
    <message>
        <source>This key looks at nothing on this part.</source>
        <translation>An diesem Teil sieht dieser Schlüssel nichts an.</translation>
    </message>
    <message>
        <source>Nothing in this key is called that.</source>
        <translation>In diesem Schlüssel heißt nichts so.</translation>
    </message>
</context>
<context>
    <name>PrintPage</name>
    <message>
        <source>Layout</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>With drawings</source>
        <translation>Mit Zeichnungen</translation>
    </message>
    <message>
        <source>The printed key</source>
        <translation>Der gedruckte Schlüssel</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Es wird geschrieben …</translation>
    </message>
    <message>
        <source>The key has no couplets yet. Write them, or build them from the scores.</source>
        <translation>Der Schlüssel hat noch keine Alternativen. Schreiben Sie sie, oder bauen Sie sie aus den Werten.</translation>
    </message>
    <message>
        <source>Bracketed</source>
        <translation>Untereinander</translation>
    </message>
    <message>
        <source>Indented</source>
        <translation>Eingerückt</translation>
    </message>
    <message>
        <source>Save as PDF …</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <source>Save as HTML …</source>
        <translation>Als HTML speichern …</translation>
    </message>
    <message>
        <source>Save as text …</source>
        <translation>Als Text speichern …</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation>Geschrieben: {file}</translation>
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
    <name>QuickEntry</name>
    <message>
        <source>What the cell says</source>
        <translation>Was die Zelle sagt</translation>
    </message>
    <message>
        <source>40 to 55 · from 40 · to 55 · 44.5 · n/a</source>
        <translation>40 to 55 · from 40 · to 55 · 44.5 · n/a</translation>
    </message>
    <message>
        <source>Enter takes: {state}</source>
        <translation>Eingabe übernimmt: {state}</translation>
    </message>
    <message>
        <source>No state has that in it.</source>
        <translation>Das kommt in keinem Zustand vor.</translation>
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
        <source>Workshop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
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
    <name>RateBar</name>
    <message>
        <source>observed {share} ({low} to {high}); the key says {now}</source>
        <translation>beobachtet {share} ({low} bis {high}); der Schlüssel sagt {now}</translation>
    </message>
</context>
<context>
    <name>RatesField</name>
    <message>
        <source>Share of each taxon, one a line</source>
        <translation>Anteil je Taxon, eines je Zeile</translation>
    </message>
    <message>
        <source>Genus species 0.6</source>
        <translation>Gattung Art 0,6</translation>
    </message>
    <message>
        <source>It must be above 0.</source>
        <translation>Es muss über 0 liegen.</translation>
    </message>
    <message>
        <source>Who counted</source>
        <translation>Wer gezählt hat</translation>
    </message>
    <message>
        <source>Worth how many animals</source>
        <translation>Wie viele Tiere es zählt</translation>
    </message>
</context>
<context>
    <name>RatesPage</name>
    <message>
        <source>Whose months</source>
        <translation>Wessen Monate</translation>
    </message>
    <message>
        <source>Export table …</source>
        <translation>Tabelle ausgeben …</translation>
    </message>
    <message>
        <source>Export plots …</source>
        <translation>Diagramme ausgeben …</translation>
    </message>
    <message>
        <source>What the labels turn out to be, {day}</source>
        <translation>Als was die Etiketten sich erweisen, {day}</translation>
    </message>
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
        <source>What the labels turn out to be</source>
        <translation>Als was die Etiketten sich erweisen</translation>
    </message>
    <message>
        <source>all cases</source>
        <translation>alle Fälle</translation>
    </message>
    <message>
        <source>label: {name}</source>
        <translation>Etikett: {name}</translation>
    </message>
    <message>
        <source>supplier: {name}</source>
        <translation>Lieferant: {name}</translation>
    </message>
    <message>
        <source>Share of animals whose label was contradicted, among those whose verdict says whether the label was right. Lines are 95 % intervals (Wilson): a long line means too few animals to blame anybody. Animals that were checked because they looked wrong push a rate up. The sample case and second opinions are not counted.</source>
        <translation>Anteil der Tiere, deren Etikett widerlegt wurde, unter denen, deren Urteil etwas über das Etikett sagt. Linien sind 95-%-Intervalle (Wilson): Eine lange Linie heißt zu wenige Tiere, um jemandem etwas vorzuwerfen. Tiere, die geprüft wurden, weil sie falsch aussahen, heben den Anteil. Der Beispielfall und zweite Meinungen zählen nicht mit.</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation>Geschrieben: {file}</translation>
    </message>
    <message>
        <source>No case has a verdict on its label yet; here they will be counted. The sample case is never counted.</source>
        <translation>Noch kein Fall hat ein Urteil über sein Etikett; hier werden sie gezählt. Der Beispielfall zählt nie mit.</translation>
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
        <source>Language of the document</source>
        <translation>Sprache des Dokuments</translation>
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
        <source>Rules of thumb</source>
        <translation>Faustregeln</translation>
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
        <source>More …</source>
        <translation>Mehr …</translation>
    </message>
    <message>
        <source>What else can be done with the case</source>
        <translation>Was man mit dem Fall noch tun kann</translation>
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
        <source>Papers …</source>
        <translation>Papiere …</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Second opinion …</source>
        <translation>Zweite Meinung …</translation>
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
        <source>Write the corrected shop labels of the selected cases as PDF</source>
        <translation>Die berichtigten Ladenetiketten der gewählten Fälle als PDF schreiben</translation>
    </message>
    <message>
        <source>Note the permit fields of the animal, and see what is missing</source>
        <translation>Die Angaben zu Papieren des Tiers notieren und sehen, was fehlt</translation>
    </message>
    <message>
        <source>Copy the verdict as plain text, for the notes of a till</source>
        <translation>Das Urteil als reinen Text kopieren, für die Notizen einer Kasse</translation>
    </message>
    <message>
        <source>Have the same animal determined again, blind</source>
        <translation>Dasselbe Tier noch einmal blind bestimmen lassen</translation>
    </message>
    <message>
        <source>Write the selected cases as a Darwin Core Archive</source>
        <translation>Die gewählten Fälle als Darwin-Core-Archiv schreiben</translation>
    </message>
    <message>
        <source>Take a buyer&apos;s reference out of the whole book</source>
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
        <source>The text is on the clipboard; paste it where you need it.</source>
        <translation>Der Text ist in der Zwischenablage; fügen Sie ihn ein, wo Sie ihn brauchen.</translation>
    </message>
    <message>
        <source>Shop label written: {file}</source>
        <translation>Etikett geschrieben: {file}</translation>
    </message>
    <message>
        <source>The permit fields are noted.</source>
        <translation>Die Angaben zu Papieren sind notiert.</translation>
    </message>
    <message>
        <source>A blind case for {who} is begun.</source>
        <translation>Ein blinder Fall für {who} ist begonnen.</translation>
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
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Rates</source>
        <translation>Anteile</translation>
    </message>
    <message>
        <source>New key version</source>
        <translation>Neue Schlüsselversion</translation>
    </message>
    <message>
        <source>Sales</source>
        <translation>Verkäufe</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Akten</translation>
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
    <name>SeesField</name>
    <message>
        <source>Add a character …</source>
        <translation>Merkmal hinzufügen …</translation>
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
    <name>SheetPage</name>
    <message>
        <source>Sheet of the file</source>
        <translation>Blatt der Datei</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel anlegen</translation>
    </message>
    <message>
        <source>A new key from {file}</source>
        <translation>Ein neuer Schlüssel aus {file}</translation>
    </message>
    <message>
        <source>The sheet; the current column is shown beside it</source>
        <translation>Das Blatt; die aktuelle Spalte steht daneben</translation>
    </message>
    <message>
        <source>What does not fit; Enter goes to the cell</source>
        <translation>Was nicht passt; Enter führt zur Zelle</translation>
    </message>
    <message>
        <source>Title of the key</source>
        <translation>Titel des Schlüssels</translation>
    </message>
    <message>
        <source>Being worked out …</source>
        <translation>Wird ausgewertet …</translation>
    </message>
    <message>
        <source>Places that do not fit yet: {n}</source>
        <translation>Stellen, die noch nicht passen: {n}</translation>
    </message>
    <message>
        <source>Makes a key with {size}; scores: {n}.</source>
        <translation>Ergibt einen Schlüssel: {size}; Werte: {n}.</translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>To take a key in, drag a file or folder here, paste it, or choose it above. Packages, folders, spreadsheets, JSON, SDD and NEXUS are recognised.</source>
        <translation>Um einen Schlüssel aufzunehmen, ziehen Sie eine Datei oder einen Ordner hierher, fügen Sie ihn ein oder wählen Sie ihn oben. Pakete, Ordner, Tabellen, JSON, SDD und NEXUS werden erkannt.</translation>
    </message>
</context>
<context>
    <name>SourcePage</name>
    <message>
        <source>Author, year, title, place</source>
        <translation>Autor, Jahr, Titel, Ort</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Art des Werks</translation>
    </message>
    <message>
        <source>primary, institution, legal …</source>
        <translation>primary, institution, legal …</translation>
    </message>
    <message>
        <source>Only a part? Which one</source>
        <translation>Nur ein Teil? Welcher</translation>
    </message>
    <message>
        <source>I have seen it</source>
        <translation>Ich habe ihn gesehen</translation>
    </message>
    <message>
        <source>The text itself, not a mention of it.</source>
        <translation>Den Text selbst, nicht nur eine Erwähnung.</translation>
    </message>
    <message>
        <source>Author, year, title and place</source>
        <translation>Autor, Jahr, Titel und Ort</translation>
    </message>
    <message>
        <source>Where it was read</source>
        <translation>Wo es gelesen wurde</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Empty when all of it was seen</source>
        <translation>Leer, wenn alles gesehen wurde</translation>
    </message>
    <message>
        <source>1 score rests on it.</source>
        <translation>1 Wert beruht darauf.</translation>
    </message>
    <message>
        <source>{n} scores rest on it.</source>
        <translation>{n} Werte beruhen darauf.</translation>
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
        <source>This key draws no whole animals: practise with close-ups only.</source>
        <translation>Dieser Schlüssel zeichnet keine ganzen Tiere: Geübt wird nur mit Nahaufnahmen.</translation>
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
    <message>
        <source>Keys that can be edited</source>
        <translation>Schlüssel, die sich bearbeiten lassen</translation>
    </message>
    <message>
        <source>Make your own copy…</source>
        <translation>Eigene Kopie anlegen …</translation>
    </message>
    <message>
        <source>Open a folder…</source>
        <translation>Ordner öffnen …</translation>
    </message>
    <message>
        <source>A new key…</source>
        <translation>Ein neuer Schlüssel …</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>Ihr eigener</translation>
    </message>
    <message>
        <source>came with the program</source>
        <translation>mit dem Programm gekommen</translation>
    </message>
    <message>
        <source>version {version}</source>
        <translation>Version {version}</translation>
    </message>
    <message>
        <source>● changes not saved yet</source>
        <translation>● Änderungen noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Which key do you want to work on?</source>
        <translation>An welchem Schlüssel möchten Sie arbeiten?</translation>
    </message>
    <message>
        <source>Your own keys are changed in place. A key that came with the program stays as it is: you work on a copy of it.</source>
        <translation>Ihre eigenen Schlüssel werden an Ort und Stelle geändert. Ein Schlüssel, der mit dem Programm gekommen ist, bleibt, wie er ist: Sie arbeiten an einer Kopie davon.</translation>
    </message>
    <message>
        <source>Work on it</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Work on a copy…</source>
        <translation>Kopie bearbeiten …</translation>
    </message>
    <message>
        <source>Folder of a key</source>
        <translation>Ordner eines Schlüssels</translation>
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
    <message numerus="yes">
        <source>%n drill picture(s) due for {person}</source>
        <translation>
            <numerusform>%n Übungsbild für {person} fällig</numerusform>
            <numerusform>%n Übungsbilder für {person} fällig</numerusform>
        </translation>
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
    <name>StateForm</name>
    <message>
        <source>Picture: {file}</source>
        <translation>Bild: {file}</translation>
    </message>
    <message>
        <source>Picture: the usual one</source>
        <translation>Bild: das übliche</translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation>Noch kein Bild</translation>
    </message>
    <message>
        <source>Reference colours, the typical one first</source>
        <translation>Bezugsfarben, die typische zuerst</translation>
    </message>
    <message>
        <source>Words on the tile</source>
        <translation>Worte auf der Kachel</translation>
    </message>
    <message>
        <source>Second line</source>
        <translation>Zweite Zeile</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>such as CC-BY-4.0</source>
        <translation>etwa CC-BY-4.0</translation>
    </message>
    <message>
        <source>Who made the picture</source>
        <translation>Wer das Bild gemacht hat</translation>
    </message>
    <message>
        <source>How it may be used</source>
        <translation>Wie es benutzt werden darf</translation>
    </message>
    <message>
        <source>Choose a drawing …</source>
        <translation>Zeichnung …</translation>
    </message>
    <message>
        <source>A picture of your own …</source>
        <translation>Eigenes Bild …</translation>
    </message>
    <message>
        <source>The usual one</source>
        <translation>Das übliche</translation>
    </message>
    <message>
        <source>Pictures ({kinds})</source>
        <translation>Bilder ({kinds})</translation>
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
    <name>StatesField</name>
    <message>
        <source>Add a state</source>
        <translation>Zustand hinzufügen</translation>
    </message>
    <message>
        <source>Remove this state</source>
        <translation>Zustand entfernen</translation>
    </message>
    <message>
        <source>Move this state one place earlier</source>
        <translation>Diesen Zustand einen Platz nach vorn</translation>
    </message>
    <message>
        <source>Move this state one place later</source>
        <translation>Diesen Zustand einen Platz nach hinten</translation>
    </message>
    <message>
        <source>New state</source>
        <translation>Neuer Zustand</translation>
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
    <name>TaxonHeader</name>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
</context>
<context>
    <name>TaxonPage</name>
    <message>
        <source>New taxon</source>
        <translation>Neues Taxon</translation>
    </message>
    <message>
        <source>{name} (copy)</source>
        <translation>{name} (Kopie)</translation>
    </message>
    <message>
        <source>Danger to people</source>
        <translation>Gefahr für Menschen</translation>
    </message>
    <message>
        <source>Papers – law changes, so say how old the data is</source>
        <translation>Papiere – Recht ändert sich, daher den Stand angeben</translation>
    </message>
    <message>
        <source>Where it lives, and its size</source>
        <translation>Wo es lebt, und seine Größe</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Verbreitung</translation>
    </message>
    <message>
        <source>Size in words, with unit</source>
        <translation>Größe in Worten, mit Einheit</translation>
    </message>
    <message>
        <source>More about the climate</source>
        <translation>Mehr zum Klima</translation>
    </message>
    <message>
        <source>Notes and sources</source>
        <translation>Anmerkungen und Quellen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Id (file name)</source>
        <translation>Kennung (Dateiname)</translation>
    </message>
    <message>
        <source>Author, year; in brackets where the genus changed</source>
        <translation>Autor, Jahr; in Klammern, wenn die Gattung wechselte</translation>
    </message>
    <message>
        <source>Accepted name</source>
        <translation>Gültiger Name</translation>
    </message>
    <message>
        <source>Genus species</source>
        <translation>Gattung Art</translation>
    </message>
    <message>
        <source>Authority</source>
        <translation>Autor</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Subfamily</source>
        <translation>Unterfamilie</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Species group</source>
        <translation>Artengruppe</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Eines je Zeile</translation>
    </message>
    <message>
        <source>Everyday names</source>
        <translation>Alltagsnamen</translation>
    </message>
    <message>
        <source>Synonyms</source>
        <translation>Synonyme</translation>
    </message>
    <message>
        <source>By what</source>
        <translation>Wodurch</translation>
    </message>
    <message>
        <source>Add …</source>
        <translation>Hinzufügen …</translation>
    </message>
    <message>
        <source>sting</source>
        <translation>Stich</translation>
    </message>
    <message>
        <source>bite</source>
        <translation>Biss</translation>
    </message>
    <message>
        <source>hairs</source>
        <translation>Haare</translation>
    </message>
    <message>
        <source>Worst usual outcome</source>
        <translation>Schlimmste übliche Folge</translation>
    </message>
    <message>
        <source>More about the danger</source>
        <translation>Mehr zur Gefahr</translation>
    </message>
    <message>
        <source>Sources for the danger</source>
        <translation>Quellen zur Gefahr</translation>
    </message>
    <message>
        <source>not listed</source>
        <translation>nicht gelistet</translation>
    </message>
    <message>
        <source>CITES Appendix</source>
        <translation>CITES-Anhang</translation>
    </message>
    <message>
        <source>EU Annex (338/97)</source>
        <translation>EU-Anhang (338/97)</translation>
    </message>
    <message>
        <source>Listed since</source>
        <translation>Gelistet seit</translation>
    </message>
    <message>
        <source>Data as of</source>
        <translation>Stand der Angaben</translation>
    </message>
    <message>
        <source>2026-01-31 or 2026</source>
        <translation>2026-01-31 oder 2026</translation>
    </message>
    <message>
        <source>From memory</source>
        <translation>Aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>No official text was seen.</source>
        <translation>Kein amtlicher Text wurde gesehen.</translation>
    </message>
    <message>
        <source>Names the lists use</source>
        <translation>Namen in den Listen</translation>
    </message>
    <message>
        <source>More about the papers</source>
        <translation>Mehr zu den Papieren</translation>
    </message>
    <message>
        <source>Sources for the papers</source>
        <translation>Quellen zu den Papieren</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>Adult length in mm</source>
        <translation>Länge erwachsener Tiere in mm</translation>
    </message>
    <message>
        <source>120 – 220</source>
        <translation>120 – 220</translation>
    </message>
</context>
<context>
    <name>TaxonPortrait</name>
    <message>
        <source>Portrait drawn from the scores</source>
        <translation>Porträt, aus den Werten gezeichnet</translation>
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
    <name>TextPage</name>
    <message>
        <source>Text</source>
        <translation>Text</translation>
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
    <name>TillPage</name>
    <message>
        <source>Take in a table …</source>
        <translation>Tabelle übernehmen …</translation>
    </message>
    <message>
        <source>Write a table …</source>
        <translation>Tabelle schreiben …</translation>
    </message>
    <message>
        <source>with references to buyers</source>
        <translation>mit Verweisen auf Käufer</translation>
    </message>
    <message>
        <source>What became of the table</source>
        <translation>Was aus der Tabelle wurde</translation>
    </message>
    <message>
        <source>Watch a folder …</source>
        <translation>Ordner überwachen …</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Nicht mehr überwachen</translation>
    </message>
    <message>
        <source>Rationales that were attached</source>
        <translation>Angehängte Begründungen</translation>
    </message>
    <message>
        <source>Check a document …</source>
        <translation>Dokument prüfen …</translation>
    </message>
    <message>
        <source>What the check found</source>
        <translation>Was die Prüfung ergab</translation>
    </message>
    <message>
        <source>Reading {file} …</source>
        <translation>{file} wird gelesen …</translation>
    </message>
    <message>
        <source>A table of the till (CSV) adds prices, dates, buyers and papers to the sales of this book, by the number of the sale. What a line leaves empty stays as it was noted.</source>
        <translation>Eine Tabelle der Kasse (CSV) ergänzt Preise, Daten, Käufer und Papiere der Verkäufe in diesen Akten, nach der Nummer des Verkaufs. Was eine Zeile leer lässt, bleibt wie notiert.</translation>
    </message>
    <message>
        <source>Sales of the till</source>
        <translation>Verkäufe der Kasse</translation>
    </message>
    <message>
        <source>The till keeps one file or folder per sale, named by its number: the rationale of each case that went out with it is put beside it, once. This works while the window is open.</source>
        <translation>Die Kasse legt je Verkauf eine Datei oder einen Ordner mit seiner Nummer an: Die Begründung jedes Falls, der damit hinausging, wird einmal daneben gelegt. Das geht, solange das Fenster offen ist.</translation>
    </message>
    <message>
        <source>Watched folder</source>
        <translation>Überwachter Ordner</translation>
    </message>
    <message>
        <source>A rationale that somebody brings back, as PDF or JSON: is it whole, does it match the record, and would the key in hand still say the same?</source>
        <translation>Eine Begründung, die jemand zurückbringt, als PDF oder JSON: Ist sie unversehrt, passt sie zur Akte, und würde der jetzige Schlüssel noch dasselbe sagen?</translation>
    </message>
    <message>
        <source>A rationale comes back</source>
        <translation>Eine Begründung kommt zurück</translation>
    </message>
    <message>
        <source>No folder is watched.</source>
        <translation>Kein Ordner wird überwacht.</translation>
    </message>
    <message>
        <source>Watching {folder}</source>
        <translation>Überwacht wird {folder}</translation>
    </message>
    <message>
        <source>Sale {sale}: {problem}</source>
        <translation>Verkauf {sale}: {problem}</translation>
    </message>
    <message>
        <source>Sale {sale}: {file}</source>
        <translation>Verkauf {sale}: {file}</translation>
    </message>
    <message>
        <source>Table of the till</source>
        <translation>Tabelle der Kasse</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Folder of the till</source>
        <translation>Ordner der Kasse</translation>
    </message>
    <message>
        <source>A rationale</source>
        <translation>Eine Begründung</translation>
    </message>
    <message>
        <source>Cases with a new or corrected sale: {n}.</source>
        <translation>Fälle mit neuem oder berichtigtem Verkauf: {n}.</translation>
    </message>
    <message>
        <source>Line {line}: sale {number} belongs to no case of this book.</source>
        <translation>Zeile {line}: Verkauf {number} gehört zu keinem Fall dieser Akten.</translation>
    </message>
    <message>
        <source>Written: {file}</source>
        <translation>Geschrieben: {file}</translation>
    </message>
    <message>
        <source>✓ Nothing speaks against this document.</source>
        <translation>✓ Nichts spricht gegen dieses Dokument.</translation>
    </message>
    <message>
        <source>✗ Something does not match: do not rely on this document.</source>
        <translation>✗ Etwas passt nicht: Verlassen Sie sich nicht auf dieses Dokument.</translation>
    </message>
</context>
<context>
    <name>TroubleDialog</name>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>The folder is not there any more.</source>
        <translation>Den Ordner gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>What is there now cannot be read as a key.</source>
        <translation>Was jetzt dort steht, lässt sich nicht als Schlüssel lesen.</translation>
    </message>
    <message>
        <source>Changed on the disk</source>
        <translation>Auf der Platte geändert</translation>
    </message>
    <message>
        <source>Changed by you</source>
        <translation>Von Ihnen geändert</translation>
    </message>
    <message>
        <source>Save as your own copy…</source>
        <translation>Als eigene Kopie speichern …</translation>
    </message>
    <message>
        <source>Take in both</source>
        <translation>Beides übernehmen</translation>
    </message>
    <message>
        <source>Overwrite what is there</source>
        <translation>Überschreiben, was dort steht</translation>
    </message>
    <message>
        <source>The same places were changed on both sides.</source>
        <translation>Auf beiden Seiten wurden dieselben Stellen geändert.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
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
    <name>VersionsPage</name>
    <message>
        <source>Earlier version</source>
        <translation>Frühere Version</translation>
    </message>
    <message>
        <source>Later version</source>
        <translation>Spätere Version</translation>
    </message>
    <message>
        <source>Swap the two</source>
        <translation>Beide tauschen</translation>
    </message>
    <message>
        <source>Choose two versions of a key: one that is here, one that was replaced or removed, or a file from disk.</source>
        <translation>Wählen Sie zwei Versionen eines Schlüssels: eine von hier, eine ersetzte oder weggelegte oder eine Datei von der Platte.</translation>
    </message>
    <message>
        <source>Being compared …</source>
        <translation>Wird verglichen …</translation>
    </message>
    <message>
        <source>The two say the same.</source>
        <translation>Beide sagen dasselbe.</translation>
    </message>
    <message>
        <source>Changes from {old} to {new}: {n}; {step}. After {old} should come {next} or later.</source>
        <translation>Änderungen von {old} zu {new}: {n}; {step}. Nach {old} sollte {next} oder eine spätere Version kommen.</translation>
    </message>
    <message>
        <source>These are two keys, {old} and {new}, not two versions of one.</source>
        <translation>Das sind zwei Schlüssel, {old} und {new}, nicht zwei Versionen eines einzigen.</translation>
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
    <message>
        <source>The way so far</source>
        <translation>Der Weg bisher</translation>
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
    <name>WorkshopView</name>
    <message>
        <source>Saved. Cases that are open keep the key as it was.</source>
        <translation>Gespeichert. Offene Fälle behalten den Schlüssel, wie er war.</translation>
    </message>
    <message>
        <source>Put them away and open them again to judge them with the new one.</source>
        <translation>Legen Sie sie weg und öffnen Sie sie wieder, um sie mit dem neuen zu beurteilen.</translation>
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
    <name>agreement</name>
    <message>
        <source>hardly better</source>
        <translation>kaum besser</translation>
    </message>
    <message>
        <source>a little better</source>
        <translation>etwas besser</translation>
    </message>
    <message>
        <source>better</source>
        <translation>besser</translation>
    </message>
    <message>
        <source>much better</source>
        <translation>viel besser</translation>
    </message>
    <message>
        <source>about as well as two people can</source>
        <translation>etwa so gut, wie zwei Menschen es können</translation>
    </message>
    <message>
        <source>No animal has two verdicts yet, so nothing can be said over all animals.</source>
        <translation>Noch kein Tier hat zwei Urteile, also lässt sich über alle Tiere nichts sagen.</translation>
    </message>
    <message>
        <source>Over all animals determined twice: the same name for {same} of {n}.</source>
        <translation>Über alle zweimal bestimmten Tiere: derselbe Name bei {same} von {n}.</translation>
    </message>
    <message>
        <source>Only one name came up, so guessing would have done as well: these animals cannot show whether the two agree.</source>
        <translation>Es kam nur ein Name vor, Raten hätte also genügt: An diesen Tieren zeigt sich nicht, ob beide übereinstimmen.</translation>
    </message>
    <message>
        <source>Guessing, with each name as often as here, would give {guessed} of {n}.</source>
        <translation>Raten, jeden Namen so oft wie hier, ergäbe {guessed} von {n}.</translation>
    </message>
    <message>
        <source>So these animals do not show that the two do better (kappa {kappa}).</source>
        <translation>An diesen Tieren zeigt sich also nicht, dass beide besser sind (Kappa {kappa}).</translation>
    </message>
    <message>
        <source>The two did {strength} (kappa {kappa})</source>
        <translation>Beide waren {strength} (Kappa {kappa})</translation>
    </message>
    <message>
        <source>; {n} animals are few, so take it as rough</source>
        <translation>; {n} Tiere sind wenig, also nur als grobes Maß nehmen</translation>
    </message>
    <message>
        <source>{kappa}, 95 %: {low} to {high}</source>
        <translation>{kappa}, 95 %: {low} bis {high}</translation>
    </message>
</context>
<context>
    <name>audit</name>
    <message>
        <source>Errors</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Weaknesses</source>
        <translation>Schwächen</translation>
    </message>
    <message>
        <source>{file}, line {n}</source>
        <translation>{file}, Zeile {n}</translation>
    </message>
    <message>
        <source>Looking for mistakes …</source>
        <translation>Fehler werden gesucht …</translation>
    </message>
    <message>
        <source>1 error</source>
        <translation>1 Fehler</translation>
    </message>
    <message>
        <source>{n} errors</source>
        <translation>{n} Fehler</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>{n} warnings</source>
        <translation>{n} Hinweise</translation>
    </message>
    <message>
        <source>No mistakes, no weakness known</source>
        <translation>Keine Fehler, keine bekannte Schwäche</translation>
    </message>
    <message>
        <source>1 weakness</source>
        <translation>1 Schwäche</translation>
    </message>
    <message>
        <source>{n} weaknesses</source>
        <translation>{n} Schwächen</translation>
    </message>
</context>
<context>
    <name>changes</name>
    <message>
        <source>{name} noted</source>
        <translation>{name} notiert</translation>
    </message>
    <message>
        <source>{name} changed</source>
        <translation>{name} geändert</translation>
    </message>
    <message>
        <source>{name} withdrawn</source>
        <translation>{name} zurückgenommen</translation>
    </message>
    <message>
        <source>the label</source>
        <translation>das Etikett</translation>
    </message>
    <message>
        <source>sex or stage</source>
        <translation>Geschlecht oder Stadium</translation>
    </message>
    <message>
        <source>the remark</source>
        <translation>die Bemerkung</translation>
    </message>
    <message>
        <source>the walk through the couplets</source>
        <translation>der Weg durch die Alternativen</translation>
    </message>
    <message>
        <source>what is asked</source>
        <translation>was gefragt ist</translation>
    </message>
    <message>
        <source>how many conflicts are borne</source>
        <translation>wie viele Widersprüche geduldet werden</translation>
    </message>
    <message>
        <source>how carefully was looked</source>
        <translation>wie sorgfältig hingesehen wurde</translation>
    </message>
    <message>
        <source>whether past outcomes count</source>
        <translation>ob frühere Ergebnisse zählen</translation>
    </message>
    <message>
        <source>the determiner</source>
        <translation>wer bestimmt</translation>
    </message>
    <message>
        <source>the language of the rationale</source>
        <translation>die Sprache der Begründung</translation>
    </message>
    <message>
        <source>the key or its version</source>
        <translation>der Schlüssel oder seine Version</translation>
    </message>
</context>
<context>
    <name>character_form</name>
    <message>
        <source>Characters</source>
        <translation>Merkmale</translation>
    </message>
</context>
<context>
    <name>check_form</name>
    <message>
        <source>Checks</source>
        <translation>Prüfsätze</translation>
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
        <source>Parts of the animal</source>
        <translation>Teile des Tiers</translation>
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
        <source>Workshop</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
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
    <name>couplets</name>
    <message>
        <source>First couplet</source>
        <translation>Erste Alternative</translation>
    </message>
    <message>
        <source>New lead: {what}</source>
        <translation>Neue Aussage: {what}</translation>
    </message>
    <message>
        <source>New couplet below: {what}</source>
        <translation>Neue Alternative unter: {what}</translation>
    </message>
    <message>
        <source>Place of: {what}</source>
        <translation>Platz von: {what}</translation>
    </message>
    <message>
        <source>The key starts elsewhere</source>
        <translation>Der Schlüssel fängt anderswo an</translation>
    </message>
    <message>
        <source>Couplets numbered anew</source>
        <translation>Alternativen neu nummeriert</translation>
    </message>
    <message>
        <source>⚠ The couplet it names is not there.</source>
        <translation>⚠ Die genannte Alternative gibt es nicht.</translation>
    </message>
    <message>
        <source>⚠ It leads back to where it came from.</source>
        <translation>⚠ Sie führt dorthin zurück, woher sie kam.</translation>
    </message>
    <message>
        <source>⚠ The scores speak against it for: {taxa}.</source>
        <translation>⚠ Die Werte sprechen dagegen bei: {taxa}.</translation>
    </message>
    <message>
        <source>✓ It agrees with the scores of the taxon it leads to.</source>
        <translation>✓ Sie passt zu den Werten des Taxons, zu dem sie führt.</translation>
    </message>
    <message>
        <source>✓ It agrees with the scores of all {n} taxa it leads to.</source>
        <translation>✓ Sie passt zu den Werten aller {n} Taxa, zu denen sie führt.</translation>
    </message>
    <message>
        <source>“{what}” belongs to nothing.</source>
        <translation>„{what}“ gehört zu nichts.</translation>
    </message>
    <message>
        <source>“{what}” is no lead.</source>
        <translation>„{what}“ ist keine Aussage.</translation>
    </message>
    <message>
        <source>Couplet {what} has fewer than two leads.</source>
        <translation>Alternative {what} hat weniger als zwei Aussagen.</translation>
    </message>
    <message>
        <source>Add another lead below it.</source>
        <translation>Darunter eine weitere Aussage hinzufügen.</translation>
    </message>
    <message>
        <source>“{what}” cannot be the id of a couplet.</source>
        <translation>„{what}“ kann keine Kennung einer Alternative sein.</translation>
    </message>
    <message>
        <source>Lead {what} is there twice.</source>
        <translation>Aussage {what} steht zweimal da.</translation>
    </message>
    <message>
        <source>Give one another letter.</source>
        <translation>Einer einen anderen Buchstaben geben.</translation>
    </message>
    <message>
        <source>Lead {what} says nothing.</source>
        <translation>Aussage {what} sagt nichts.</translation>
    </message>
    <message>
        <source>Lead {what} goes nowhere.</source>
        <translation>Aussage {what} führt nirgendwohin.</translation>
    </message>
    <message>
        <source>“{what}” stands below no lead.</source>
        <translation>„{what}“ steht unter keiner Aussage.</translation>
    </message>
    <message>
        <source>“{what}” asks for nothing.</source>
        <translation>„{what}“ fragt nach nichts.</translation>
    </message>
    <message>
        <source>Unknown character &apos;{what}&apos;.</source>
        <translation>Unbekanntes Merkmal &apos;{what}&apos;.</translation>
    </message>
    <message>
        <source>Join the two, or remove one.</source>
        <translation>Beide zusammenfassen oder eines entfernen.</translation>
    </message>
    <message>
        <source>&apos;{what}&apos; is asked for twice.</source>
        <translation>Nach &apos;{what}&apos; wird zweimal gefragt.</translation>
    </message>
    <message>
        <source>There is no state &apos;{what}&apos;.</source>
        <translation>Es gibt keinen Zustand &apos;{what}&apos;.</translation>
    </message>
    <message>
        <source>“{what}” is no range.</source>
        <translation>„{what}“ ist kein Bereich.</translation>
    </message>
    <message>
        <source>Swap the two numbers.</source>
        <translation>Die beiden Zahlen tauschen.</translation>
    </message>
    <message>
        <source>The range {what} is upside down.</source>
        <translation>Der Bereich {what} ist verkehrt herum.</translation>
    </message>
    <message>
        <source>There is no couplet or taxon &apos;{what}&apos;.</source>
        <translation>Es gibt keine Alternative und kein Taxon &apos;{what}&apos;.</translation>
    </message>
    <message>
        <source>Start an indented line with sees: or remark:.</source>
        <translation>Eine eingerückte Zeile mit sees: oder remark: beginnen.</translation>
    </message>
    <message>
        <source>Use letters, digits, &apos;_&apos;, &apos;-&apos; and &apos;.&apos;, and no blanks.</source>
        <translation>Buchstaben, Ziffern, &apos;_&apos;, &apos;-&apos; und &apos;.&apos; verwenden, keine Leerzeichen.</translation>
    </message>
    <message>
        <source>Write -&gt; and behind it the number of a couplet, or the ids of taxa.</source>
        <translation>-&gt; schreiben und dahinter die Nummer einer Alternative oder die Kennungen von Taxa.</translation>
    </message>
    <message>
        <source>Write: character = state, state; another = 10..20</source>
        <translation>So schreiben: Merkmal = Zustand, Zustand; anderes = 10..20</translation>
    </message>
    <message>
        <source>Write it as 10..20, 10.. or ..20.</source>
        <translation>So schreiben: 10..20, 10.. oder ..20.</translation>
    </message>
    <message>
        <source>Correct it, or add the character first.</source>
        <translation>Berichtigen, oder erst das Merkmal hinzufügen.</translation>
    </message>
    <message>
        <source>Write it as: 1 a. What the animal shows -&gt; 2</source>
        <translation>So schreiben: 1 a. Was das Tier zeigt -&gt; 2</translation>
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
    <name>form_fields</name>
    <message>
        <source>Add a source …</source>
        <translation>Quelle hinzufügen …</translation>
    </message>
</context>
<context>
    <name>forms</name>
    <message>
        <source>1 score</source>
        <translation>1 Wert</translation>
    </message>
    <message>
        <source>{n} scores</source>
        <translation>{n} Werte</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <source>taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>couplets</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>Prüfsätze</translation>
    </message>
    <message>
        <source>“{text}” is no number. Write digits, such as 12.5.</source>
        <translation>„{text}“ ist keine Zahl. Ziffern schreiben, etwa 12,5.</translation>
    </message>
    <message>
        <source>Write digits, or leave it empty.</source>
        <translation>Ziffern schreiben oder leer lassen.</translation>
    </message>
    <message>
        <source>Write it as 120 – 220.</source>
        <translation>So schreiben: 120 – 220.</translation>
    </message>
    <message>
        <source>The smaller number comes first.</source>
        <translation>Die kleinere Zahl kommt zuerst.</translation>
    </message>
    <message>
        <source>“{text}” is no colour. Write it as #rrggbb.</source>
        <translation>„{text}“ ist keine Farbe. Als #rrggbb schreiben.</translation>
    </message>
    <message>
        <source>“{text}” is no id. Use letters, digits, &apos;_&apos;, &apos;-&apos; and &apos;.&apos;, and no blanks.</source>
        <translation>„{text}“ ist keine Kennung. Buchstaben, Ziffern, &apos;_&apos;, &apos;-&apos; und &apos;.&apos; verwenden, keine Leerzeichen.</translation>
    </message>
    <message>
        <source>“{text}” is taken. Choose another id.</source>
        <translation>„{text}“ ist vergeben. Eine andere Kennung wählen.</translation>
    </message>
    <message>
        <source>“{text}” explains nothing. Write term: explanation.</source>
        <translation>„{text}“ erklärt nichts. So schreiben: Begriff: Erklärung.</translation>
    </message>
    <message>
        <source>“{text}” is explained twice. Keep one.</source>
        <translation>„{text}“ wird zweimal erklärt. Eine behalten.</translation>
    </message>
    <message>
        <source>“{text}” names no taxon of this key.</source>
        <translation>„{text}“ nennt kein Taxon dieses Schlüssels.</translation>
    </message>
    <message>
        <source>A share lies above 0 and is at most 1.</source>
        <translation>Ein Anteil liegt über 0 und ist höchstens 1.</translation>
    </message>
</context>
<context>
    <name>impact</name>
    <message>
        <source>Couplets</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>What the key can tell apart, and sources</source>
        <translation>Was der Schlüssel unterscheiden kann, und Quellen</translation>
    </message>
    <message>
        <source>Recorded cases</source>
        <translation>Erfasste Fälle</translation>
    </message>
    <message>
        <source>No recorded case has been judged with this key.</source>
        <translation>Kein erfasster Fall wurde mit diesem Schlüssel beurteilt.</translation>
    </message>
    <message>
        <source>None would be judged otherwise, of {n} looked at.</source>
        <translation>Keiner von {n} geprüften würde anders beurteilt.</translation>
    </message>
    <message>
        <source>{some} of {n} would be judged otherwise:</source>
        <translation>{some} von {n} würden anders beurteilt:</translation>
    </message>
    <message>
        <source>Published checks</source>
        <translation>Veröffentlichte Prüfungen</translation>
    </message>
    <message>
        <source>The key has no check that can be computed.</source>
        <translation>Der Schlüssel hat keine Prüfung, die sich rechnen lässt.</translation>
    </message>
    <message>
        <source>{passing} of {n} pass.</source>
        <translation>{passing} von {n} bestehen.</translation>
    </message>
    <message>
        <source>fails now</source>
        <translation>scheitert jetzt</translation>
    </message>
    <message>
        <source>passes now</source>
        <translation>besteht jetzt</translation>
    </message>
    <message>
        <source>Nothing gets worse or better.</source>
        <translation>Nichts wird schlechter oder besser.</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>… and {n} more</source>
        <translation>… und {n} weitere</translation>
    </message>
</context>
<context>
    <name>label_form</name>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Usually it is: {shares}.</source>
        <translation>Meist ist es: {shares}.</translation>
    </message>
</context>
<context>
    <name>library</name>
    <message>
        <source>from print</source>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>partly from memory</source>
        <translation>teils aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>from memory or common practice</source>
        <translation>aus dem Gedächtnis oder aus üblicher Praxis</translation>
    </message>
    <message>
        <source>without a source</source>
        <translation>ohne Quelle</translation>
    </message>
    <message>
        <source>not filled</source>
        <translation>nicht ausgefüllt</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>{n} %</source>
        <translation>{n} %</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>weggelegt</translation>
    </message>
    <message>
        <source>In which folder shall the key&apos;s folder lie?</source>
        <translation>In welchem Ordner soll der Ordner des Schlüssels liegen?</translation>
    </message>
    <message>
        <source>Where to write</source>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Keys and spreadsheets</source>
        <translation>Schlüssel und Tabellen</translation>
    </message>
    <message>
        <source>Being read …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <source>Last written on {day}.</source>
        <translation>Zuletzt geschrieben am {day}.</translation>
    </message>
    <message>
        <source>By {authors}.</source>
        <translation>Von {authors}.</translation>
    </message>
    <message>
        <source>Licence: {licence}.</source>
        <translation>Lizenz: {licence}.</translation>
    </message>
    <message>
        <source>No licence is stated.</source>
        <translation>Eine Lizenz ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Sources cited: {n}; seen by the authors: {seen}.</source>
        <translation>Zitierte Quellen: {n}; von den Verfassern gesehen: {seen}.</translation>
    </message>
    <message>
        <source>{n} of {all} published statements hold.</source>
        <translation>{n} von {all} veröffentlichten Aussagen gelten.</translation>
    </message>
    <message>
        <source>It carries no published statements.</source>
        <translation>Er enthält keine veröffentlichten Aussagen.</translation>
    </message>
    <message>
        <source>Nobody has said yet how dangerous {n} of its taxa are; they are treated as medically significant.</source>
        <translation>Für {n} seiner Taxa hat noch niemand gesagt, wie gefährlich sie sind; sie gelten als medizinisch bedeutsam.</translation>
    </message>
    <message>
        <source>Medically significant taxa: {n}.</source>
        <translation>Medizinisch bedeutsame Taxa: {n}.</translation>
    </message>
    <message>
        <source>Permit-listed taxa: {n}; check locally.</source>
        <translation>Gelistete Taxa: {n}; vor Ort klären.</translation>
    </message>
    <message>
        <source>The oldest of these entries is of {day}.</source>
        <translation>Der älteste dieser Einträge ist von {day}.</translation>
    </message>
    <message>
        <source>Every pair of taxa can be told apart.</source>
        <translation>Jedes Paar von Taxa lässt sich unterscheiden.</translation>
    </message>
    <message>
        <source>Pairs that no character of it sets apart: {n}</source>
        <translation>Paare, die keines seiner Merkmale unterscheidet: {n}</translation>
    </message>
    <message>
        <source>… and {n} more</source>
        <translation>… und {n} weitere</translation>
    </message>
    <message>
        <source>What it covers</source>
        <translation>Was er umfasst</translation>
    </message>
    <message>
        <source>It cannot be used as it stands. Mend what is named here, then look again.</source>
        <translation>So ist er nicht brauchbar. Beheben Sie, was hier genannt ist, und sehen Sie wieder nach.</translation>
    </message>
    <message>
        <source>Worth a look</source>
        <translation>Einen Blick wert</translation>
    </message>
    <message>
        <source>Names of the taxa</source>
        <translation>Namen der Taxa</translation>
    </message>
    <message>
        <source>Genera, put before the names</source>
        <translation>Gattungen, vor die Namen gesetzt</translation>
    </message>
    <message>
        <source>Authorities</source>
        <translation>Autoren der Namen</translation>
    </message>
    <message>
        <source>Families</source>
        <translation>Familien</translation>
    </message>
    <message>
        <source>A character</source>
        <translation>Ein Merkmal</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <source>States without an order</source>
        <translation>Zustände ohne Reihenfolge</translation>
    </message>
    <message>
        <source>States in an order</source>
        <translation>Zustände mit Reihenfolge</translation>
    </message>
    <message>
        <source>Whole numbers</source>
        <translation>Ganze Zahlen</translation>
    </message>
    <message>
        <source>Measurements with a unit</source>
        <translation>Maße mit Einheit</translation>
    </message>
    <message>
        <source>One length divided by another</source>
        <translation>Eine Länge geteilt durch eine andere</translation>
    </message>
    <message>
        <source>Measurement in {unit}</source>
        <translation>Maß in {unit}</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>{n} states in order</source>
        <translation>{n} geordnete Zustände</translation>
    </message>
    <message>
        <source>{n} states</source>
        <translation>{n} Zustände</translation>
    </message>
    <message>
        <source>cannot be used as it stands</source>
        <translation>so nicht brauchbar</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>Ihrer</translation>
    </message>
    <message>
        <source>came with the program</source>
        <translation>mit dem Programm gekommen</translation>
    </message>
    <message>
        <source>being read …</source>
        <translation>wird gelesen …</translation>
    </message>
    <message>
        <source>one taxon</source>
        <translation>ein Taxon</translation>
    </message>
    <message>
        <source>one character</source>
        <translation>ein Merkmal</translation>
    </message>
    <message>
        <source>{n} taxa</source>
        <translation>{n} Taxa</translation>
    </message>
    <message>
        <source>{n} characters</source>
        <translation>{n} Merkmale</translation>
    </message>
    <message>
        <source>a key folder</source>
        <translation>ein Schlüsselordner</translation>
    </message>
    <message>
        <source>a key package</source>
        <translation>ein Schlüsselpaket</translation>
    </message>
    <message>
        <source>a key as JSON</source>
        <translation>ein Schlüssel als JSON</translation>
    </message>
    <message>
        <source>a key as SDD</source>
        <translation>ein Schlüssel als SDD</translation>
    </message>
    <message>
        <source>a NEXUS matrix</source>
        <translation>eine NEXUS-Matrix</translation>
    </message>
    <message>
        <source>a key as a spreadsheet</source>
        <translation>ein Schlüssel als Tabelle</translation>
    </message>
    <message>
        <source>Key package, everything in one file</source>
        <translation>Schlüsselpaket, alles in einer Datei</translation>
    </message>
    <message>
        <source>Spreadsheet, XLSX</source>
        <translation>Tabelle, XLSX</translation>
    </message>
    <message>
        <source>Spreadsheet, ODS</source>
        <translation>Tabelle, ODS</translation>
    </message>
    <message>
        <source>Matrix alone, CSV</source>
        <translation>Nur die Matrix, CSV</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>SDD 1.1</source>
        <translation>SDD 1.1</translation>
    </message>
    <message>
        <source>NEXUS matrix</source>
        <translation>NEXUS-Matrix</translation>
    </message>
    <message>
        <source>Key folder, plain text</source>
        <translation>Schlüsselordner, reiner Text</translation>
    </message>
    <message>
        <source>something that older cases may point to is gone</source>
        <translation>etwas, worauf ältere Fälle verweisen können, ist weg</translation>
    </message>
    <message>
        <source>a verdict may change</source>
        <translation>ein Urteil kann sich ändern</translation>
    </message>
    <message>
        <source>words and references only</source>
        <translation>nur Wörter und Verweise</translation>
    </message>
    <message>
        <source>nothing differs</source>
        <translation>nichts ist anders</translation>
    </message>
    <message>
        <source>The key itself</source>
        <translation>Der Schlüssel selbst</translation>
    </message>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>Characters</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Couplets</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Published statements</source>
        <translation>Veröffentlichte Aussagen</translation>
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
    <message>
        <source>en</source>
        <translation>de</translation>
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
    <name>plates</name>
    <message>
        <source>On no single part</source>
        <translation>An keinem einzelnen Teil</translation>
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
        <source>This is the sample: no rate and no starting rate counts it.</source>
        <translation>Dies ist das Beispiel: Es zählt in keiner Rate und keiner Ausgangsrate mit.</translation>
    </message>
    <message>
        <source>The key has changed since: writing it again judges the case anew.</source>
        <translation>Der Schlüssel hat sich seither geändert: Erneutes Schreiben beurteilt den Fall neu.</translation>
    </message>
    <message>
        <source>A dangerous species was not ruled out: do not handle.</source>
        <translation>Eine gefährliche Art war nicht ausgeschlossen: nicht anfassen.</translation>
    </message>
    <message>
        <source>A permit-listed species was not ruled out: check papers.</source>
        <translation>Eine gelistete Art war nicht ausgeschlossen: Papiere prüfen.</translation>
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
    <message>
        <source>This is a second opinion, given blind. It counts in no rate; the first one is</source>
        <translation>Dies ist eine zweite Meinung, blind abgegeben. Sie zählt in keiner Rate mit; die erste ist</translation>
    </message>
    <message>
        <source>case {id}</source>
        <translation>Fall {id}</translation>
    </message>
    <message>
        <source>Second opinions</source>
        <translation>Zweite Meinungen</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>{who} is still at it, blind: {n} findings, no verdict of their own yet.</source>
        <translation>{who} ist noch dabei, blind: {n} Befunde, noch kein eigenes Urteil.</translation>
    </message>
    <message>
        <source>Compare all the same</source>
        <translation>Trotzdem vergleichen</translation>
    </message>
    <message>
        <source>no name</source>
        <translation>kein Name</translation>
    </message>
    <message>
        <source>the same name, {name}</source>
        <translation>derselbe Name, {name}</translation>
    </message>
    <message>
        <source>another name, {name}</source>
        <translation>ein anderer Name, {name}</translation>
    </message>
    <message>
        <source>✓ same</source>
        <translation>✓ gleich</translation>
    </message>
    <message>
        <source>≈ partly</source>
        <translation>≈ teilweise</translation>
    </message>
    <message>
        <source>✗ different</source>
        <translation>✗ verschieden</translation>
    </message>
    <message>
        <source>· one only</source>
        <translation>· nur eine Seite</translation>
    </message>
    <message>
        <source>Seen by both: {n} characters; the same on {same}</source>
        <translation>Von beiden gesehen: {n} Merkmale; gleich bei {same}</translation>
    </message>
    <message>
        <source>Permit fields</source>
        <translation>Angaben zu Papieren</translation>
    </message>
    <message>
        <source>May stand on a list: {taxa} ({lists}).</source>
        <translation>Vielleicht gelistet: {taxa} ({lists}).</translation>
    </message>
    <message>
        <source>Missing or odd: {n} of the fields.</source>
        <translation>Fehlend oder unstimmig: {n} der Angaben.</translation>
    </message>
    <message>
        <source>Fill them in</source>
        <translation>Ausfüllen</translation>
    </message>
</context>
<context>
    <name>source_form</name>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
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
    <name>taxon_form</name>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
</context>
<context>
    <name>till</name>
    <message>
        <source>Case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>Number of the sale</source>
        <translation>Nummer des Verkaufs</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
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
        <source>Remark</source>
        <translation>Bemerkung</translation>
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
    <message>
        <source>Reading the key …</source>
        <translation>Der Schlüssel wird gelesen …</translation>
    </message>
    <message>
        <source>Picture: {credit}, {licence}</source>
        <translation>Bild: {credit}, {licence}</translation>
    </message>
    <message>
        <source>Picture: {credit}</source>
        <translation>Bild: {credit}</translation>
    </message>
</context>
<context>
    <name>workshop</name>
    <message>
        <source>it occurs</source>
        <translation>kommt vor</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>usually</source>
        <translation>meist</translation>
    </message>
    <message>
        <source>sometimes</source>
        <translation>manchmal</translation>
    </message>
    <message>
        <source>rarely</source>
        <translation>selten</translation>
    </message>
    <message>
        <source>How often: {state}</source>
        <translation>Wie oft: {state}</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>animals measured</source>
        <translation>gemessene Tiere</translation>
    </message>
    <message>
        <source>This is no range: {why}.</source>
        <translation>Das ist kein Bereich: {why}.</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>entfällt</translation>
    </message>
    <message>
        <source>Nothing is known here yet.</source>
        <translation>Hier ist noch nichts bekannt.</translation>
    </message>
    <message>
        <source>Matrix</source>
        <translation>Matrix</translation>
    </message>
    <message>
        <source>What to mend</source>
        <translation>Zu beheben</translation>
    </message>
    <message>
        <source>Build couplets</source>
        <translation>Alternativen bauen</translation>
    </message>
    <message>
        <source>Diagnoses</source>
        <translation>Diagnosen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Misread in drill</source>
        <translation>Verwechslungen</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Characters</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <source>Taxa</source>
        <translation>Taxa</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Couplets</source>
        <translation>Alternativen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfsätze</translation>
    </message>
    <message>
        <source>Key itself</source>
        <translation>Der Schlüssel selbst</translation>
    </message>
</context>
</TS>
