<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CoupletMap</name>
    <message numerus="yes">
        <source>%n step(s) taken</source>
        <translation>
            <numerusform>%n step taken</numerusform>
            <numerusform>%n steps taken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LedgerView</name>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n finding</numerusform>
            <numerusform>%n findings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s)</source>
        <translation>
            <numerusform>%n picture</numerusform>
            <numerusform>%n pictures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>ruled out %n</source>
        <translation>
            <numerusform>ruled out %n</numerusform>
            <numerusform>ruled out %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LineupView</name>
    <message numerus="yes">
        <source>%n possible</source>
        <translation>
            <numerusform>%n possible</numerusform>
            <numerusform>%n possible</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message numerus="yes">
        <source>Show all %n candidates</source>
        <translation>
            <numerusform>Show all %n candidates</numerusform>
            <numerusform>Show all %n candidates</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StartView</name>
    <message numerus="yes">
        <source>%n drill picture(s) due for {person}</source>
        <translation>
            <numerusform>%n drill picture due for {person}</numerusform>
            <numerusform>%n drill pictures due for {person}</numerusform>
        </translation>
    </message>
</context>
</TS>
