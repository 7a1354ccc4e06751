<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Aside</name>
    <message>
        <source>That could not be done</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das ging nicht</translation>
    </message>
    <message>
        <source>It failed on the way: %1. Close other programs if memory is short, and try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mittendrin gescheitert: %1. Andere Programme schließen, wenn der Speicher knapp ist, und es noch einmal versuchen.</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>OK</translation>
    </message>
</context>
<context>
    <name>Copied</name>
    <message>
        <source>A workshop without a name</source>
        <translation>Eine Werkstatt ohne Namen</translation>
    </message>
    <message>
        <source>%1, audited by the profile %2, copied on %3.</source>
        <translation>%1, geprüft nach dem Profil %2, kopiert am %3.</translation>
    </message>
    <message>
        <source>A drawing held against chosen rules; this certifies nothing.</source>
        <translation>Eine Zeichnung, an gewählten Regeln gemessen; das bescheinigt nichts.</translation>
    </message>
</context>
<context>
    <name>Details</name>
    <message>
        <source>Change the %2 of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 ändern</translation>
    </message>
    <message>
        <source>Id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Kurzname, mit dem andere Dinge der Datei auf dieses verweisen.</translation>
    </message>
    <message>
        <source>Name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage x</translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie weit rechts im Plan, von seinem Ursprung aus.</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage y</translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie weit oben im Plan, von seinem Ursprung aus.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grad gegen den Uhrzeigersinn.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Height</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Footprint</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>What it covers of the floor, seen from above.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was es vom Boden bedeckt, von oben gesehen.</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>By corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach Ecken</translation>
    </message>
    <message>
        <source>Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Along the side where the operator stands.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Längs der Seite, an der der Bediener steht.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>From the operator&apos;s side to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Bedienseite nach hinten.</translation>
    </message>
    <message>
        <source>Footprint corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecken der Grundfläche</translation>
    </message>
    <message>
        <source>Measured from the middle: to the right, and to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Mitte aus gemessen: nach rechts und nach hinten.</translation>
    </message>
</context>
<context>
    <name>DeviceSection</name>
    <message>
        <source>Kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>What it is, and so whether and how it stops.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was es ist, und damit, ob und wie es stoppt.</translation>
    </message>
    <message>
        <source>To the right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Mitte der Maschine, vom Bediener aus nach rechts.</translation>
    </message>
    <message>
        <source>To the back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach hinten</translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Mitte der Maschine, vom Bediener weg.</translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees as the machine stands: 270 is towards the operator.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Richtung vom Gerät zu der Person, die es benutzt, in Grad, so wie die Maschine steht: 270 ist zum Bediener hin.</translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Richtung vom Gerät zu der Person, die es benutzt, in Grad gegen den Uhrzeigersinn, von rechts aus.</translation>
    </message>
    <message>
        <source>Faces</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeigt nach</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Length</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Of a bar or cord, from end to end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einer Leiste oder Leine, von Ende zu Ende.</translation>
    </message>
    <message>
        <source>From the floor to where it is pressed, stepped on or pulled.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vom Boden bis dahin, wo gedrückt, getreten oder gezogen wird.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt</translation>
    </message>
    <message>
        <source>Which machines it stops. A room stands for every machine in it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Welche Maschinen es stoppt. Ein Raum steht für jede Maschine darin.</translation>
    </message>
    <message>
        <source>the machine it is on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die Maschine, an der es ist</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>every machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jede Maschine</translation>
    </message>
    <message>
        <source>those ticked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die angekreuzten</translation>
    </message>
    <message>
        <source>Change what %1 does</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ändern, was %1 stoppt</translation>
    </message>
    <message>
        <source>Room: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum: %1</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit</translation>
    </message>
    <message>
        <source>Seconds from this stop until the machine stands still.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sekunden von diesem Stopp, bis die Maschine stillsteht.</translation>
    </message>
    <message>
        <source>as the machine has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>wie bei der Maschine</translation>
    </message>
    <message>
        <source>Run-down of each machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit je Maschine</translation>
    </message>
    <message>
        <source>Where this stop takes longer or shorter for one machine than another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo dieser Stopp für eine Maschine länger oder kürzer braucht als für eine andere.</translation>
    </message>
    <message>
        <source>Instruction</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anweisung</translation>
    </message>
    <message>
        <source>What the poster tells a novice to do. Empty: as usual for its kind.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was der Aushang einem Neuling zu tun sagt. Leer: wie für die Art üblich.</translation>
    </message>
    <message>
        <source>Emergency stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Not-Halt</translation>
    </message>
    <message>
        <source>Whether it counts as one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ob es als einer gilt.</translation>
    </message>
    <message>
        <source>as usual for its kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>wie für die Art üblich</translation>
    </message>
    <message>
        <source>yes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nein</translation>
    </message>
    <message>
        <source>Thrown to the</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umgelegt nach</translation>
    </message>
    <message>
        <source>Which way a switch is thrown to stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In welche Richtung ein Schalter zum Stoppen umgelegt wird.</translation>
    </message>
    <message>
        <source>not given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>left</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>rechts</translation>
    </message>
    <message>
        <source>top</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>oben</translation>
    </message>
    <message>
        <source>bottom</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>unten</translation>
    </message>
    <message>
        <source>Pin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stift</translation>
    </message>
    <message>
        <source>Whether the pin that guards the start is there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ob der Stift da ist, der den Start sichert.</translation>
    </message>
    <message>
        <source>not known</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>fitted</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Held at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gehalten an</translation>
    </message>
    <message>
        <source>The stations whose operator has the trigger in hand.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Arbeitsplätze, deren Bediener den Drücker in der Hand hat.</translation>
    </message>
    <message>
        <source>the machine’s first station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der erste Arbeitsplatz der Maschine</translation>
    </message>
</context>
<context>
    <name>DialogAsker</name>
    <message>
        <source>Workshop layouts (*%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkstatt-Layouts (*%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Layout öffnen</translation>
    </message>
    <message>
        <source>Save the layout as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Layout speichern unter</translation>
    </message>
    <message>
        <source>Export the table as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Tabelle exportieren als</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tabellen (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose a picture to draw over</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Bild zum Nachzeichnen wählen</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bilder (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)</translation>
    </message>
    <message>
        <source>Save the poster as</source>
        <translation>Den Aushang speichern unter</translation>
    </message>
    <message>
        <source>Print the poster</source>
        <translation>Den Aushang drucken</translation>
    </message>
    <message>
        <source>Save the rules as</source>
        <translation>Die Regeln speichern unter</translation>
    </message>
    <message>
        <source>Choose a profile of rules</source>
        <translation>Ein Profil von Regeln wählen</translation>
    </message>
    <message>
        <source>Profiles (*.yaml);;All files (*)</source>
        <translation>Profile (*.yaml);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>DoorSection</name>
    <message>
        <source>In the wall of</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In der Wand von</translation>
    </message>
    <message>
        <source>The room whose wall carries the door.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Raum, in dessen Wand die Tür ist.</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Führt nach</translation>
    </message>
    <message>
        <source>The room on the other side, or outside.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Raum auf der anderen Seite, oder draußen.</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lichte Breite</translation>
    </message>
    <message>
        <source>Between the door’s frame or leaf, where people go through.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zwischen Rahmen oder Türblatt, wo man durchgeht.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>A locked door is no way to a stop or a phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine verschlossene Tür ist kein Weg zu einem Stopp oder Telefon.</translation>
    </message>
    <message>
        <source>never</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nie</translation>
    </message>
    <message>
        <source>after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>außerhalb der Betriebszeit</translation>
    </message>
    <message>
        <source>always</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>immer</translation>
    </message>
    <message>
        <source>outside</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>draußen</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>differ</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>verschieden</translation>
    </message>
</context>
<context>
    <name>FindingGroups</name>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In keinem Raum</translation>
    </message>
    <message>
        <source>Of no machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von keiner Maschine</translation>
    </message>
    <message>
        <source>The whole shop</source>
        <translation>Die ganze Werkstatt</translation>
    </message>
</context>
<context>
    <name>FixtureSection</name>
    <message>
        <source>A bench, a column, a rack: solid, and no machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Werkbank, eine Stütze, ein Regal: fest, und keine Maschine.</translation>
    </message>
    <message>
        <source>From the floor to its top: a stop behind it can be seen or reached over it, or not.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vom Boden bis zur Oberkante: Ein Stopp dahinter ist darüber hinweg zu sehen oder zu erreichen, oder nicht.</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Rooms and doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Räume und Türen</translation>
    </message>
    <message>
        <source>Room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Drag from one corner to the opposite one, or type the two sides.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von einer Ecke zur gegenüberliegenden ziehen, oder die zwei Seiten eintippen.</translation>
    </message>
    <message>
        <source>Room by corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum nach Ecken</translation>
    </message>
    <message>
        <source>Click each corner in turn.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Jede Ecke der Reihe nach anklicken.</translation>
    </message>
    <message>
        <source>Door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tür</translation>
    </message>
    <message>
        <source>Click a wall; it leads to the room on the other side.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Wand anklicken; die Tür führt in den Raum dahinter.</translation>
    </message>
    <message>
        <source>Machines</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplätze</translation>
    </message>
    <message>
        <source>Operator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>Where the one who works the machine stands.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo die Person steht, die die Maschine bedient.</translation>
    </message>
    <message>
        <source>Helper</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>Where a second person stands at the work.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo eine zweite Person bei der Arbeit steht.</translation>
    </message>
    <message>
        <source>Setter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einrichter</translation>
    </message>
    <message>
        <source>Where somebody stands to set the machine up.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo jemand steht, um die Maschine einzurichten.</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ausbilder</translation>
    </message>
    <message>
        <source>Where somebody stands to teach or watch.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo jemand steht, um anzuleiten oder aufzupassen.</translation>
    </message>
    <message>
        <source>Stop devices</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppgeräte</translation>
    </message>
    <message>
        <source>Stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt nichts.</translation>
    </message>
    <message>
        <source>Phones</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefone</translation>
    </message>
    <message>
        <source>Phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Click the wall that it hangs on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Wand anklicken, an der es hängt.</translation>
    </message>
    <message>
        <source>Benches and columns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkbänke und Stützen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Solid, and no machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fest, und keine Maschine.</translation>
    </message>
    <message>
        <source>Column</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stütze</translation>
    </message>
    <message>
        <source>Rack</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Notes and checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notizen und Nachmessungen</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Words on the plan, with a line to what they are about.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Worte im Plan, mit einer Linie zu dem, worum es geht.</translation>
    </message>
    <message>
        <source>Tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachmessung</translation>
    </message>
    <message>
        <source>A distance taped on the floor, held against the computed one: click where it was taped from, then to.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein mit dem Maßband gemessener Weg, verglichen mit dem berechneten: erst den Anfang anklicken, dann das Ende.</translation>
    </message>
    <message>
        <source>Underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <source>Scale the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maßstab des Hintergrundbilds</translation>
    </message>
    <message>
        <source>Click two points of the picture, and type how far they are apart.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zwei Punkte des Bildes anklicken und eintippen, wie weit sie auseinander sind.</translation>
    </message>
    <message>
        <source>Comes with its usual stations (%1) and devices (%2).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bringt die üblichen Arbeitsplätze (%1) und Geräte (%2) mit.</translation>
    </message>
</context>
<context>
    <name>LengthField</name>
    <message>
        <source>900 (in %1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>900 (in %1)</translation>
    </message>
    <message>
        <source>Not a length: write it with a point, such as 1.2 m, or as %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Länge: mit Punkt schreiben, etwa 1.2 m, oder als %1.</translation>
    </message>
    <message>
        <source>Not a length up to 10 km. Type it as 1.2 m, 4&apos; 6&quot; or %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Länge bis 10 km. Als 1.2 m, 4&apos; 6&quot; oder %1 eintippen.</translation>
    </message>
    <message>
        <source>It has to be more than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es muss mehr als 0 sein.</translation>
    </message>
    <message>
        <source>It cannot be less than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es kann nicht weniger als 0 sein.</translation>
    </message>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>That would be %1, where %2 is usual. Type the unit with it, such as 1.2 m.</source>
        <translation>Das wären %1, üblich sind %2. Die Einheit mit eintippen, etwa 1.2 m.</translation>
    </message>
</context>
<context>
    <name>LetStand</name>
    <message>
        <source>%1 Accepted by %2 until %3.</source>
        <translation>%1 Hingenommen von %2 bis %3.</translation>
    </message>
    <message>
        <source>accepted at %1, now %2</source>
        <translation>hingenommen bei %1, jetzt %2</translation>
    </message>
    <message>
        <source>accepted at %1, now without a figure</source>
        <translation>hingenommen bei %1, jetzt ohne Zahl</translation>
    </message>
    <message>
        <source>the last day, %1, has passed</source>
        <translation>der letzte Tag, %1, ist vorbei</translation>
    </message>
    <message>
        <source>%1 No longer accepted: %2.</source>
        <translation>%1 Nicht mehr hingenommen: %2.</translation>
    </message>
    <message>
        <source>No longer accepted, %1; it was by %2 until %3: %4</source>
        <translation>Nicht mehr hingenommen, %1; es war von %2 bis %3: %4</translation>
    </message>
    <message>
        <source>Accepted by %1 until %2: %3</source>
        <translation>Hingenommen von %1 bis %2: %3</translation>
    </message>
    <message>
        <source>%1 about %2, accepted by %3 until %4: %5</source>
        <translation>%1 zu %2, hingenommen von %3 bis %4: %5</translation>
    </message>
    <message>
        <source>its last day, %1, cannot be read: a day such as 2026-12-31 is expected</source>
        <translation>der letzte Tag, %1, ist nicht zu lesen: erwartet wird ein Tag wie 2026-12-31</translation>
    </message>
    <message>
        <source>%1 about %2, no longer accepted, %3; it was by %4 until %5: %6</source>
        <translation>%1 zu %2, nicht mehr hingenommen, %3; es war von %4 bis %5: %6</translation>
    </message>
    <message>
        <source>This is not found now. Should it come back, it is not accepted: %1. What accepted it is of no use any more: take it back.</source>
        <translation>Das wird jetzt nicht gefunden. Käme es wieder, wäre es nicht hingenommen: %1. Was es hinnahm, nützt nichts mehr: zurücknehmen.</translation>
    </message>
    <message>
        <source>This is not found now. Should it come back, it is not accepted: it is not said which of several is meant. Take it back where it is mended.</source>
        <translation>Das wird jetzt nicht gefunden. Käme es wieder, wäre es nicht hingenommen: Es ist nicht gesagt, welcher von mehreren Befunden gemeint ist. Zurücknehmen, wo es behoben ist.</translation>
    </message>
    <message>
        <source>This is not found now, yet it is kept with the layout that it is accepted: should it come back, it is accepted again. Take it back where it is mended.</source>
        <translation>Das wird jetzt nicht gefunden, doch im Layout steht, dass es hingenommen wird: Käme es wieder, wäre es wieder hingenommen. Zurücknehmen, wo es behoben ist.</translation>
    </message>
    <message>
        <source>This is not found now, yet it is kept with the layout that it is accepted: should it come back, it is accepted again as long as it is no worse than %1. Take it back where it is mended.</source>
        <translation>Das wird jetzt nicht gefunden, doch im Layout steht, dass es hingenommen wird: Käme es wieder, wäre es wieder hingenommen, solange es nicht schlechter ist als %1. Zurücknehmen, wo es behoben ist.</translation>
    </message>
    <message>
        <source>it was then</source>
        <translation>es damals war</translation>
    </message>
    <message>
        <source>Not accepted: what is accepted does not say which of several it means.</source>
        <translation>Nicht hingenommen: Was hingenommen wird, sagt nicht, welcher von mehreren gemeint ist.</translation>
    </message>
</context>
<context>
    <name>MachineSection</name>
    <message>
        <source>As people call it: Engine lathe 1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie man sie nennt: Drehmaschine 1.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>What sort of machine it is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was für eine Maschine es ist.</translation>
    </message>
    <message>
        <source>From the floor to its top.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vom Boden bis zur Oberkante.</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit</translation>
    </message>
    <message>
        <source>Seconds from the stop until it stands still, as timed at the machine. Empty: not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sekunden vom Stopp, bis sie stillsteht, an der Maschine gestoppt. Leer: nicht bekannt.</translation>
    </message>
    <message>
        <source>Hand-held</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Handgeführt</translation>
    </message>
    <message>
        <source>Held or guided by hand: only its trigger counts.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In der Hand gehalten oder geführt: Nur der Drücker zählt.</translation>
    </message>
    <message>
        <source>After the stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach dem Stopp</translation>
    </message>
    <message>
        <source>What to do once it stands still: Back the tool off before you release the stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was zu tun ist, wenn sie stillsteht: Werkzeug zurückfahren, bevor der Stopp gelöst wird.</translation>
    </message>
    <message>
        <source>not given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Hazard outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gefahrenbereich</translation>
    </message>
    <message>
        <source>Nobody may reach across it. Measured from the middle of the machine: to the right, and to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Niemand darf darüber hinweg greifen. Von der Mitte der Maschine aus gemessen: nach rechts und nach hinten.</translation>
    </message>
</context>
<context>
    <name>MixedSection</name>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage x</translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie weit rechts im Plan, von seinem Ursprung aus.</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage y</translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie weit oben im Plan, von seinem Ursprung aus.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grad gegen den Uhrzeigersinn.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 drehen</translation>
    </message>
</context>
<context>
    <name>NoteSection</name>
    <message>
        <source>Text</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Text</translation>
    </message>
    <message>
        <source>The words on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Worte im Plan.</translation>
    </message>
    <message>
        <source>Points to something</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeigt auf etwas</translation>
    </message>
    <message>
        <source>A line leads from the words to a place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Linie führt von den Worten zu einer Stelle.</translation>
    </message>
    <message>
        <source>Points to x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeigt auf x</translation>
    </message>
    <message>
        <source>The place that the line leads to.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Stelle, zu der die Linie führt.</translation>
    </message>
    <message>
        <source>Points to y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeigt auf y</translation>
    </message>
</context>
<context>
    <name>NoteTool</name>
    <message>
        <source>X</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>X</translation>
    </message>
    <message>
        <source>Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Y</translation>
    </message>
    <message>
        <source>Click where the note goes; drag from there to what it points to.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anklicken, wohin die Notiz soll; von da zu dem ziehen, worauf sie zeigt.</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>NumberField</name>
    <message>
        <source>Not a number: write it with a point, such as 2.5.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Zahl: mit Punkt schreiben, etwa 2.5.</translation>
    </message>
    <message>
        <source>Not a number. Type one such as %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Zahl. Eine wie %1 eintippen.</translation>
    </message>
    <message>
        <source>It has to be a whole number.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <source>It has to be more than %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es muss mehr als %1 sein.</translation>
    </message>
    <message>
        <source>It has to be from %1 to %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es muss von %1 bis %2 sein.</translation>
    </message>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>unbekannt</translation>
    </message>
</context>
<context>
    <name>OutlineTool</name>
    <message>
        <source>X</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>X</translation>
    </message>
    <message>
        <source>Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Y</translation>
    </message>
    <message>
        <source>Length</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Direction</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Click the room&apos;s first corner, or type its place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die erste Ecke des Raums anklicken, oder ihre Lage eintippen.</translation>
    </message>
    <message>
        <source>Click the next corner, or type length, Tab, direction, Enter. Backspace takes one back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die nächste Ecke anklicken, oder Länge, Tab, Richtung, Eingabetaste tippen. Rücktaste nimmt eine zurück.</translation>
    </message>
    <message>
        <source>Click the next corner; click the first one, or press Enter without a number, to close the room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die nächste Ecke anklicken; zum Schließen des Raums die erste anklicken oder die Eingabetaste ohne Zahl drücken.</translation>
    </message>
</context>
<context>
    <name>PhoneSection</name>
    <message>
        <source>As people call it: Yard phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie man es nennt: Hoftelefon.</translation>
    </message>
    <message>
        <source>Faces</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeigt nach</translation>
    </message>
    <message>
        <source>The direction from the phone to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Richtung vom Telefon zu der Person, die es benutzt, in Grad gegen den Uhrzeigersinn, von rechts aus.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>From the floor.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vom Boden aus.</translation>
    </message>
</context>
<context>
    <name>PlaceTool</name>
    <message>
        <source>X</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>X</translation>
    </message>
    <message>
        <source>Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Y</translation>
    </message>
    <message>
        <source>Turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Click where it stands, or type its place and turn. R turns it by 15°.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anklicken, wo es steht, oder Lage und Drehung eintippen. R dreht es um 15°.</translation>
    </message>
    <message>
        <source>Click the wall where the door goes.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Wand anklicken, in die die Tür soll.</translation>
    </message>
    <message>
        <source>Click where the person stands at the machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anklicken, wo die Person an der Maschine steht.</translation>
    </message>
    <message>
        <source>Click the machine&apos;s side or the wall that carries it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Seite der Maschine oder die Wand anklicken, an der es ist.</translation>
    </message>
    <message>
        <source>Click the wall where the phone hangs.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Wand anklicken, an der das Telefon hängt.</translation>
    </message>
</context>
<context>
    <name>Problems</name>
    <message>
        <source>Fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verstoß</translation>
    </message>
    <message>
        <source>Warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>RoomSection</name>
    <message>
        <source>As people call the room; it stands on the plan and on the poster.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie man den Raum nennt; es steht im Plan und auf dem Aushang.</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Freien</translation>
    </message>
    <message>
        <source>A porch, yard or outside corridor that people walk on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Vorbau, Hof oder Außengang, auf dem man geht.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>The inside faces of the walls, corner by corner.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Innenseiten der Wände, Ecke für Ecke.</translation>
    </message>
</context>
<context>
    <name>RoomTool</name>
    <message>
        <source>X</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>X</translation>
    </message>
    <message>
        <source>Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Y</translation>
    </message>
    <message>
        <source>Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Click the opposite corner, or type width, Tab, depth, Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die gegenüberliegende Ecke anklicken, oder Breite, Tab, Tiefe, Eingabetaste tippen.</translation>
    </message>
    <message>
        <source>Click or drag from the room&apos;s first corner, or type its numbers.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die erste Ecke des Raums anklicken oder von ihr aus ziehen, oder die Zahlen eintippen.</translation>
    </message>
</context>
<context>
    <name>ScaleTool</name>
    <message>
        <source>True distance</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wahrer Abstand</translation>
    </message>
    <message>
        <source>There is no underlay picture yet: choose one in the gallery.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt noch kein Hintergrundbild: in der Galerie eines wählen.</translation>
    </message>
    <message>
        <source>Click one end of a length that you know on the picture.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Ende einer Länge anklicken, die auf dem Bild bekannt ist.</translation>
    </message>
    <message>
        <source>Click its other end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das andere Ende anklicken.</translation>
    </message>
    <message>
        <source>Type its true length, then Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die wahre Länge eintippen, dann Eingabetaste.</translation>
    </message>
</context>
<context>
    <name>SelectTool</name>
    <message>
        <source>Release to put it there; Escape leaves it where it was; Alt keeps it from being pulled to guides.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Loslassen legt es dort ab; Esc lässt es, wo es war; mit Alt wird es nicht an Hilfslinien gezogen.</translation>
    </message>
    <message>
        <source>Draw a first room: its numbers, or Draw, Room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einen ersten Raum zeichnen: seine Zahlen, oder Zeichnen, Raum.</translation>
    </message>
    <message>
        <source>Click a thing to pick it, or drag a frame round several.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Ding anklicken, um es auszuwählen, oder einen Rahmen um mehrere ziehen.</translation>
    </message>
    <message>
        <source>Drag it, nudge it with the arrow keys, or type its numbers at the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ziehen, mit den Pfeiltasten rücken, oder rechts die Zahlen eintippen.</translation>
    </message>
</context>
<context>
    <name>StationSection</name>
    <message>
        <source>Role</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Who stands here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wer hier steht.</translation>
    </message>
    <message>
        <source>operator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bediener</translation>
    </message>
    <message>
        <source>helper</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>setter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einrichter</translation>
    </message>
    <message>
        <source>instructor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ausbilder</translation>
    </message>
    <message>
        <source>To the right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach rechts</translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Mitte der Maschine, vom Bediener aus nach rechts.</translation>
    </message>
    <message>
        <source>To the back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach hinten</translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator: the operator stands at less than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von der Mitte der Maschine, vom Bediener weg: Der Bediener steht bei weniger als 0.</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>its stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sein Stopp</translation>
    </message>
    <message>
        <source>%1 at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 in Griffweite</translation>
    </message>
    <message>
        <source>walk %1 to %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg %1 zu %2</translation>
    </message>
    <message>
        <source>walk %1 to %2 through a narrow place</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg %1 zu %2 durch eine enge Stelle</translation>
    </message>
    <message>
        <source>no way to a stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Weg zu einem Stopp</translation>
    </message>
    <message>
        <source>no stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Stopp</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>meets</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verstoß</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, accepted</source>
        <translation>%1, hingenommen</translation>
    </message>
</context>
<context>
    <name>Suppose</name>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tür %1</translation>
    </message>
    <message>
        <source>%1 by %2 at %3, %4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 mal %2 bei %3, %4</translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 außer Betrieb ist</translation>
    </message>
    <message>
        <source>%1 devices are out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Geräte außer Betrieb sind</translation>
    </message>
    <message>
        <source>%1 is shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 zu ist</translation>
    </message>
    <message>
        <source>%1 doors are shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Türen zu sind</translation>
    </message>
    <message>
        <source>something stands in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>etwas im Weg steht</translation>
    </message>
    <message>
        <source>%1 things stand in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Dinge im Weg stehen</translation>
    </message>
    <message>
        <source>it is after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die Betriebszeit vorbei ist</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>in the way: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>im Weg: %1</translation>
    </message>
</context>
<context>
    <name>TapeCheckSection</name>
    <message>
        <source>From</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>The station, device or phone where the tape begins.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Arbeitsplatz, das Gerät oder das Telefon, wo das Maßband beginnt.</translation>
    </message>
    <message>
        <source>To</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach</translation>
    </message>
    <message>
        <source>The station, device or phone where the tape ends.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Arbeitsplatz, das Gerät oder das Telefon, wo das Maßband endet.</translation>
    </message>
    <message>
        <source>Taped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>As measured along the floor with a tape.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie am Boden entlang mit dem Maßband gemessen.</translation>
    </message>
    <message>
        <source>Day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>When it was taped: year, month, day.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wann gemessen wurde: Jahr, Monat, Tag.</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Durch</translation>
    </message>
    <message>
        <source>Who taped it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wer gemessen hat.</translation>
    </message>
</context>
<context>
    <name>TapeTool</name>
    <message>
        <source>Taped length</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gemessene Länge</translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape began.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Den Arbeitsplatz, Stopp oder das Telefon anklicken, wo das Maßband begann.</translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape ended.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Den Arbeitsplatz, Stopp oder das Telefon anklicken, wo das Maßband endete.</translation>
    </message>
    <message>
        <source>Type the length that was read from the tape along the way on the floor, then Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die am Maßband abgelesene Länge des Weges am Boden eintippen, dann Eingabetaste.</translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>Not a day. Type it as year, month, day: 2026-03-02.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein Tag. Als Jahr, Monat, Tag eintippen: 2026-03-02.</translation>
    </message>
    <message>
        <source>It cannot be left empty.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es darf nicht leer bleiben.</translation>
    </message>
    <message>
        <source>Everything needs an id, such as saw-2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alles braucht eine Kennung, etwa saege-2.</translation>
    </message>
    <message>
        <source>“%1” means something else in a layout. Choose another id.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>„%1“ bedeutet in einem Layout etwas anderes. Eine andere Kennung wählen.</translation>
    </message>
    <message>
        <source>An id has only lower-case letters a to z, digits and hyphens, such as saw-2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Kennung hat nur Kleinbuchstaben a bis z, Ziffern und Bindestriche, etwa saege-2.</translation>
    </message>
</context>
<context>
    <name>ThingRows</name>
    <message>
        <source>room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In keinem Raum</translation>
    </message>
    <message>
        <source>Tape checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachmessungen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Tape check %1: %2 to %3, %4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachmessung %1: %2 bis %3, %4</translation>
    </message>
    <message>
        <source>Underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <source>%1, machine: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, Maschine: %2</translation>
    </message>
    <message>
        <source>%1, machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, Maschine</translation>
    </message>
    <message>
        <source>Door %1 to %2, %3 wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tür %1 nach %2, %3 breit</translation>
    </message>
    <message>
        <source>%1, locked after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, außerhalb der Betriebszeit verschlossen</translation>
    </message>
    <message>
        <source>%1, always locked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, immer verschlossen</translation>
    </message>
</context>
<context>
    <name>UnderlaySection</name>
    <message>
        <source>Picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bild</translation>
    </message>
    <message>
        <source>The file of the scan or photo, beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei des Scans oder Fotos, neben dem Layout.</translation>
    </message>
    <message>
        <source>Millimetres a pixel</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Millimeter je Pixel</translation>
    </message>
    <message>
        <source>How much of the floor a pixel of the picture covers.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie viel vom Boden ein Pixel des Bildes bedeckt.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Deckkraft</translation>
    </message>
    <message>
        <source>From 0, not to be seen, to 1, as the picture is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von 0, nicht zu sehen, bis 1, wie das Bild ist.</translation>
    </message>
</context>
<context>
    <name>WorkshopSection</name>
    <message>
        <source>Revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Revision</translation>
    </message>
    <message>
        <source>File</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Its name, as it stands on reports and posters.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ihr Name, wie er auf Berichten und Aushängen steht.</translation>
    </message>
    <message>
        <source>Address</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>What to read to the one who answers an emergency call.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was der Person vorzulesen ist, die den Notruf annimmt.</translation>
    </message>
    <message>
        <source>Emergency call</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notruf</translation>
    </message>
    <message>
        <source>What to dial, and from which phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was zu wählen ist, und von welchem Telefon.</translation>
    </message>
    <message>
        <source>Meet responders at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Treffpunkt mit Rettungskräften</translation>
    </message>
    <message>
        <source>The door or gate where somebody waits for them.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Tür oder das Tor, wo jemand auf sie wartet.</translation>
    </message>
    <message>
        <source>Number</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Counts the plans that were put up on the wall.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zählt die Pläne, die an die Wand gehängt wurden.</translation>
    </message>
    <message>
        <source>no revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>keine Revision</translation>
    </message>
    <message>
        <source>Day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Of this revision: year, month, day.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dieser Revision: Jahr, Monat, Tag.</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Durch</translation>
    </message>
    <message>
        <source>Who drew it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wer sie gezeichnet hat.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>What changed, and why.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was sich geändert hat, und warum.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>In which lengths are shown, typed without a unit, and written.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In der Längen gezeigt, ohne Einheit eingetippt und geschrieben werden.</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>metres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Meter</translation>
    </message>
    <message>
        <source>inches</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuß und Zoll</translation>
    </message>
    <message>
        <source>Profile</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Profil</translation>
    </message>
    <message>
        <source>The rules and limits to audit by: %1, or the name of a file beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Regeln und Grenzwerte der Prüfung: %1, oder der Name einer Datei neben dem Layout.</translation>
    </message>
</context>
<context>
    <name>documents</name>
    <message>
        <source>the link leads to a file that is not there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die Verknüpfung führt zu einer Datei, die es nicht gibt</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es gibt keine solche Datei</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es ist ein Ordner</translation>
    </message>
    <message>
        <source>it is not a plain file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it is over 64 MiB; no layout is so large</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sie ist über 64 MiB groß; so groß ist kein Layout</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>; and %1 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; und %1 weitere</translation>
    </message>
    <message>
        <source>Not saved: what is there cannot be read, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Was da ist, ist nicht lesbar und bleibt, wie es ist</translation>
    </message>
    <message>
        <source>Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Not saved: what is there is not a layout, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Was da ist, ist kein Layout und bleibt, wie es ist</translation>
    </message>
    <message>
        <source>Save under another name, or move that file away first.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern, oder erst jene Datei beiseite schaffen.</translation>
    </message>
    <message>
        <source>Not saved: there is a layout of this name already</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Es gibt schon ein Layout dieses Namens</translation>
    </message>
    <message>
        <source>Save under another name, or replace it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern, oder es ersetzen.</translation>
    </message>
    <message>
        <source>Not saved: the file has changed on disk since it was opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Die Datei wurde auf dem Datenträger geändert, seit sie geöffnet wurde</translation>
    </message>
    <message>
        <source>Save under another name, or look at both and replace the one on disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern, oder beide ansehen und die auf dem Datenträger ersetzen.</translation>
    </message>
    <message>
        <source>Not saved: the file would not open again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Die Datei ließe sich nicht wieder öffnen</translation>
    </message>
    <message>
        <source>Undo the last change and save again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die letzte Änderung rückgängig machen und wieder speichern.</translation>
    </message>
    <message>
        <source>Saved, but it is not sure that the file would survive a power cut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gespeichert, aber es ist nicht sicher, dass die Datei einen Stromausfall überstünde</translation>
    </message>
    <message>
        <source>Save again, or save a copy on another disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wieder speichern, oder eine Kopie auf einem anderen Datenträger speichern.</translation>
    </message>
    <message>
        <source>Not saved: the file could not be written; what was there is unchanged</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Die Datei ließ sich nicht schreiben; was da war, ist unverändert</translation>
    </message>
    <message>
        <source>Make room, or mend the permissions, or save in another folder; then save again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Platz schaffen, oder die Rechte richten, oder in einem anderen Ordner speichern; dann wieder speichern.</translation>
    </message>
    <message>
        <source>Not opened: the file cannot be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht geöffnet: Die Datei ist nicht lesbar</translation>
    </message>
    <message>
        <source>Choose another file, or mend what is in the way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine andere Datei wählen, oder beheben, was im Weg ist.</translation>
    </message>
    <message>
        <source>Not opened: this is not a layout that can be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht geöffnet: Das ist kein lesbares Layout</translation>
    </message>
    <message>
        <source>The file is left as it is. Mend the lines named, or open another file.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei bleibt, wie sie ist. Die genannten Zeilen richten, oder eine andere Datei öffnen.</translation>
    </message>
    <message>
        <source>Open to look only: another holds this layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nur zum Ansehen offen: Jemand anders hält dieses Layout</translation>
    </message>
    <message>
        <source>its lock is damaged; made by %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>seine Sperre ist beschädigt; gesetzt von %1</translation>
    </message>
    <message>
        <source>If you are sure that nobody works on it, take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wenn sicher niemand daran arbeitet, übernehmen.</translation>
    </message>
    <message>
        <source>Close it there, or save your work under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es dort schließen, oder die eigene Arbeit unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Ask there first. If you are sure that nobody works on it, take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Erst dort fragen. Wenn sicher niemand daran arbeitet, übernehmen.</translation>
    </message>
    <message>
        <source>Open to look only: nothing can be written in this folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nur zum Ansehen offen: In diesen Ordner lässt sich nichts schreiben</translation>
    </message>
    <message>
        <source>Save under another name in a folder of yours, or have the permissions changed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen in einem eigenen Ordner speichern, oder die Rechte ändern lassen.</translation>
    </message>
    <message>
        <source>Open without a lock: another could write the file at the same time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ohne Sperre offen: Jemand anders könnte die Datei gleichzeitig schreiben</translation>
    </message>
    <message>
        <source>Try again, or save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch einmal versuchen, oder unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>somebody</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jemand</translation>
    </message>
    <message>
        <source>an unknown computer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>einem unbekannten Rechner</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 an %2, seit %3</translation>
    </message>
    <message>
        <source>The program stopped while it kept this work, and a part is missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Programm endete, während es diese Arbeit sicherte, und ein Teil fehlt</translation>
    </message>
    <message>
        <source>This kept work is damaged and cannot be opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese gesicherte Arbeit ist beschädigt und lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>What was kept before it, if anything, is listed beside it. Throw this away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was davor gesichert wurde, falls etwas, steht daneben in der Liste. Diese wegwerfen, oder behalten und mit einem Texteditor ansehen: Ab der dritten Zeile ist sie ein Layout.</translation>
    </message>
    <message>
        <source>Throw it away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wegwerfen, oder behalten und mit einem Texteditor ansehen: Ab der dritten Zeile ist sie ein Layout.</translation>
    </message>
    <message>
        <source>Unsaved work is kept here, and its lock is damaged</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hier ist ungespeicherte Arbeit gesichert, und ihre Sperre ist beschädigt</translation>
    </message>
    <message>
        <source>Start the program again in a minute to have the work back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Programm in einer Minute neu starten, um die Arbeit zurückzubekommen.</translation>
    </message>
    <message>
        <source>Unsaved work is kept here by a program on another computer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hier sichert ein Programm auf einem anderen Rechner ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>If the program runs there no more, start it there once to have the work back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wenn das Programm dort nicht mehr läuft, es dort einmal starten, um die Arbeit zurückzubekommen.</translation>
    </message>
    <message>
        <source>This kept work is whole, but cannot be opened as things are</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese gesicherte Arbeit ist heil, lässt sich aber so nicht öffnen</translation>
    </message>
    <message>
        <source>Keep it, and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Behalten und mit einem Texteditor ansehen: Ab der dritten Zeile ist sie ein Layout.</translation>
    </message>
    <message>
        <source>If the shop&apos;s own kinds of device were moved, put their file back beside %1 and start the program again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wenn die eigenen Gerätearten der Werkstatt verschoben wurden, ihre Datei wieder neben %1 legen und das Programm neu starten.</translation>
    </message>
    <message>
        <source>its bytes are not those that were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ihre Bytes sind nicht die, die geschrieben wurden</translation>
    </message>
    <message>
        <source>The kept work could not be thrown away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die gesicherte Arbeit ließ sich nicht wegwerfen</translation>
    </message>
    <message>
        <source>It will be offered again at the next start. Mend the permissions of its folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie wird beim nächsten Start wieder angeboten. Die Rechte ihres Ordners richten.</translation>
    </message>
    <message>
        <source>Your unsaved work cannot be kept for the case of a crash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ungespeicherte Arbeit lässt sich nicht für den Fall eines Absturzes sichern</translation>
    </message>
    <message>
        <source>Save often; make room or mend the permissions of this folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Oft speichern; Platz schaffen oder die Rechte dieses Ordners richten.</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the lock cannot be made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die Sperre lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>Your last changes could not be kept for the case of a crash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die letzten Änderungen ließen sich nicht für den Fall eines Absturzes sichern</translation>
    </message>
    <message>
        <source>Save now; make room or mend the permissions of this folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Jetzt speichern; Platz schaffen oder die Rechte dieses Ordners richten.</translation>
    </message>
    <message>
        <source>Not saved: the file is write-protected, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht gespeichert: Die Datei ist schreibgeschützt und bleibt, wie sie ist</translation>
    </message>
    <message>
        <source>Save under another name, or take the protection off first.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern, oder erst den Schreibschutz entfernen.</translation>
    </message>
    <message>
        <source>Its name must end in one of .%1, so that no layout, profile or record is written over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Name muss auf eines von .%1 enden, damit kein Layout, kein Profil und keine Kontrollaufzeichnung überschrieben wird.</translation>
    </message>
    <message>
        <source>It is write-protected, and is left as it is. Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei ist schreibgeschützt und bleibt, wie sie ist. Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>The layout is made with this file. Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Layout ist mit dieser Datei gemacht. Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Its name must end in .yaml, and not in .layout.yaml as those of layouts do.</source>
        <translation>Der Name muss auf .yaml enden, und nicht auf .layout.yaml wie bei Layouts.</translation>
    </message>
    <message>
        <source>There is a file of this name that is no profile. Save under another name.</source>
        <translation>Es gibt eine Datei dieses Namens, die kein Profil ist. Unter einem anderen Namen speichern.</translation>
    </message>
</context>
<context>
    <name>edits</name>
    <message>
        <source>Add %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Remove the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild entfernen</translation>
    </message>
    <message>
        <source>Change the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild ändern</translation>
    </message>
    <message>
        <source>Add the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild hinzufügen</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ausrichten</translation>
    </message>
    <message>
        <source>Distribute %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 verteilen</translation>
    </message>
    <message>
        <source>Change the %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%2: %1 ändern</translation>
    </message>
    <message>
        <source>the workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>the revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Revision</translation>
    </message>
    <message>
        <source>Change the profile</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Profil ändern</translation>
    </message>
    <message>
        <source>Change the unit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einheit ändern</translation>
    </message>
    <message>
        <source>kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Change the rule %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regel %1 ändern</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 einfügen</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 duplizieren</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Remove %1 and %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 und %2 entfernen</translation>
    </message>
    <message>
        <source>1 door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Tür</translation>
    </message>
    <message numerus="yes">
        <source>%n doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>%n Tür</numerusform>
            <numerusform>%n Türen</numerusform>
        </translation>
    </message>
    <message>
        <source>1 tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Nachmessung</translation>
    </message>
    <message numerus="yes">
        <source>%n tape checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>%n Nachmessung</numerusform>
            <numerusform>%n Nachmessungen</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing with the id %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt nichts mit der Kennung %1.</translation>
    </message>
    <message>
        <source>An id has lower-case letters, digits and hyphens only: lathe-1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Kennung hat nur Kleinbuchstaben, Ziffern und Bindestriche: lathe-1.</translation>
    </message>
    <message>
        <source>The id %1 has a meaning of its own; choose another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kennung %1 hat eine eigene Bedeutung; eine andere wählen.</translation>
    </message>
    <message>
        <source>There is something with the id %1 already; choose another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt schon etwas mit der Kennung %1; eine andere wählen.</translation>
    </message>
    <message>
        <source>Change the id of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kennung von %1 ändern</translation>
    </message>
    <message>
        <source>Move a corner of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecke von %1 verschieben</translation>
    </message>
    <message>
        <source>Move a wall of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wand von %1 verschieben</translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecke zu %1 hinzufügen</translation>
    </message>
    <message>
        <source>Remove a corner of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecke von %1 entfernen</translation>
    </message>
    <message>
        <source>Scale the underlay picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maßstab des Hintergrundbilds setzen</translation>
    </message>
    <message>
        <source>Nothing was changed: a layout holds places and lengths within 10 km only, and sizes above 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nichts wurde geändert: Ein Layout fasst nur Orte und Längen bis 10 km, und Größen über 0.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <source>room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tür</translation>
    </message>
    <message>
        <source>fixture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einbau</translation>
    </message>
    <message>
        <source>machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplatz</translation>
    </message>
    <message>
        <source>device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachmessung</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>%n Ding</numerusform>
            <numerusform>%n Dinge</numerusform>
        </translation>
    </message>
    <message>
        <source>Accept %1 about %2</source>
        <translation>%1 zu %2 hinnehmen</translation>
    </message>
    <message>
        <source>No longer accept %1 about %2</source>
        <translation>%1 zu %2 nicht mehr hinnehmen</translation>
    </message>
    <message>
        <source>Remove what accepted %1 about %2</source>
        <translation>Entfernen, womit %1 zu %2 hingenommen war</translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>in Griffweite</translation>
    </message>
    <message>
        <source>no way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Weg</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 mal %2</translation>
    </message>
    <message>
        <source>stop: %1; phone: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopp: %1; Telefon: %2</translation>
    </message>
    <message>
        <source>%1, at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, in Griffweite</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 through a narrow way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2 durch einen engen Weg</translation>
    </message>
    <message>
        <source>no way to it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Weg dahin</translation>
    </message>
    <message>
        <source>none</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>not measured, the station is not on the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht gemessen, der Arbeitsplatz ist nicht auf dem Boden</translation>
    </message>
    <message>
        <source>Underlay picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hintergrundbild</translation>
    </message>
    <message>
        <source>Door %1, %2 wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tür %1, %2 breit</translation>
    </message>
    <message>
        <source>Station %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplatz %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Phone: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon: %1</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Taped from %1 to %2: %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gemessen von %1 bis %2: %3</translation>
    </message>
    <message>
        <source>O</source>
        <comment>letter of an operator&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>B</translation>
    </message>
    <message>
        <source>H</source>
        <comment>letter of a helper&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>H</translation>
    </message>
    <message>
        <source>S</source>
        <comment>letter of a setter&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>E</translation>
    </message>
    <message>
        <source>I</source>
        <comment>letter of an instructor&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A</translation>
    </message>
    <message>
        <source>moved %1 across, %2 up</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>verschoben: %1 quer, %2 nach oben</translation>
    </message>
    <message>
        <source>Emergency phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notruftelefon</translation>
    </message>
    <message>
        <source>Column</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stütze</translation>
    </message>
    <message>
        <source>Rack</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkbank</translation>
    </message>
    <message>
        <source>Room %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum %1</translation>
    </message>
    <message>
        <source>pointer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeiger</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>not known</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>breit</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>narrowest %1 → %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>engste Stelle %1 → %2</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>stop %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopp %1</translation>
    </message>
    <message>
        <source>phone %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon %1</translation>
    </message>
    <message>
        <source>Release to pick what lies in the frame.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Loslassen, um zu wählen, was im Rahmen liegt.</translation>
    </message>
    <message>
        <source>fails now also: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt auch Verstoß: %1</translation>
    </message>
    <message>
        <source>warns now also: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt auch Warnung: %1</translation>
    </message>
    <message>
        <source>now meets</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt erfüllt</translation>
    </message>
    <message>
        <source>now fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt Verstoß</translation>
    </message>
    <message>
        <source>now warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt Warnung</translation>
    </message>
    <message>
        <source>now fails: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt Verstoß: %1</translation>
    </message>
    <message>
        <source>now warns: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>jetzt Warnung: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; </translation>
    </message>
    <message>
        <source>nothing stops it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nichts stoppt sie</translation>
    </message>
    <message>
        <source>no stop at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Stopp in Griffweite</translation>
    </message>
    <message>
        <source>stop too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopp zu weit</translation>
    </message>
    <message>
        <source>phone too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon zu weit</translation>
    </message>
    <message>
        <source>failed its check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrolle nicht bestanden</translation>
    </message>
    <message>
        <source>nobody can walk to it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>niemand kommt hin</translation>
    </message>
    <message>
        <source>the way is narrow</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der Weg ist eng</translation>
    </message>
    <message>
        <source>no way out that is wide enough</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Weg hinaus, der breit genug ist</translation>
    </message>
    <message>
        <source>too high or too low</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>zu hoch oder zu tief</translation>
    </message>
    <message>
        <source>above the accessible reach</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>über der barrierefreien Reichhöhe</translation>
    </message>
    <message>
        <source>no emergency stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Not-Halt</translation>
    </message>
    <message>
        <source>the start has no guard</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der Start ist ungesichert</translation>
    </message>
    <message>
        <source>what looks like its stop is nearer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>näher ist, was nur wie ihr Stopp aussieht</translation>
    </message>
    <message>
        <source>help comes too late</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hilfe kommt zu spät</translation>
    </message>
    <message>
        <source>runs on too long</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>läuft zu lange nach</translation>
    </message>
    <message>
        <source>runs on longer by the room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>läuft mit dem Raum-Not-Aus länger nach</translation>
    </message>
    <message>
        <source>no room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Raum-Not-Aus</translation>
    </message>
    <message>
        <source>room cut-off too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum-Not-Aus zu weit</translation>
    </message>
    <message>
        <source>no room cut-off near an exit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Raum-Not-Aus nahe einem Ausgang</translation>
    </message>
    <message>
        <source>stop out of sight</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopp nicht zu sehen</translation>
    </message>
    <message>
        <source>two stand in one place, or one in a doorway</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>zwei stehen auf einem Platz oder einer in einer Tür</translation>
    </message>
    <message>
        <source>no phone after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>außerhalb der Betriebszeit kein Telefon</translation>
    </message>
    <message>
        <source>tape and plan differ</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maßband und Plan weichen voneinander ab</translation>
    </message>
    <message>
        <source>cannot be built as drawn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>so nicht zu bauen, wie gezeichnet</translation>
    </message>
    <message>
        <source>not known in full</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht ganz bekannt</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>passed, but does not count in full</source>
        <translation>bestanden, zählt aber nicht ganz</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>could not be reached</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht getestet</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nie kontrolliert</translation>
    </message>
    <message>
        <source>less than half of its time gone</source>
        <translation>weniger als die halbe Frist abgelaufen</translation>
    </message>
    <message>
        <source>half of its time gone</source>
        <translation>halbe Frist abgelaufen</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute fällig</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>no way to a stop</source>
        <translation>kein Weg zu einem Stopp</translation>
    </message>
    <message>
        <source>no way to a phone</source>
        <translation>kein Weg zu einem Telefon</translation>
    </message>
</context>
<context>
    <name>poster</name>
    <message>
        <source>STOP LOCATIONS</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>STOPP-STELLEN</translation>
    </message>
    <message>
        <source>STOP LOCATIONS, page %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>STOPP-STELLEN, Seite %1 von %2</translation>
    </message>
    <message>
        <source>How each machine stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>So stoppt jede Maschine</translation>
    </message>
    <message>
        <source>On the walls</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>An den Wänden</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Danach: %1</translation>
    </message>
    <message>
        <source>These are not stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das hier stoppt nichts</translation>
    </message>
    <message>
        <source>Starts the machine: put the pin back. It is not a stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Startet die Maschine: Stift wieder einstecken. Das ist kein Stopp.</translation>
    </message>
    <message>
        <source>Stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt nichts.</translation>
    </message>
    <message>
        <source>Stops every machine in this room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt jede Maschine in diesem Raum.</translation>
    </message>
    <message>
        <source>Stops every machine in all rooms.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt jede Maschine in allen Räumen.</translation>
    </message>
    <message>
        <source>Also stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt auch: %1</translation>
    </message>
    <message>
        <source>Stops only: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt nur: %1</translation>
    </message>
    <message>
        <source>Does not stop this machine. Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt diese Maschine nicht. Stoppt: %1</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Only for the one who holds it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nur für die Person, die das Gerät hält.</translation>
    </message>
    <message>
        <source>No stop of its own. Use %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein eigener Stopp. %1 benutzen.</translation>
    </message>
    <message>
        <source>No stop in this room. Keep off this machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein Stopp in diesem Raum. Von dieser Maschine fernbleiben.</translation>
    </message>
    <message>
        <source>The cut-off for this room is elsewhere: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Not-Aus für diesen Raum ist anderswo: %1.</translation>
    </message>
    <message>
        <source>In an emergency</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Notfall</translation>
    </message>
    <message>
        <source>Stop the machine. Anyone may press any stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maschine stoppen. Alle dürfen jeden Stopp drücken.</translation>
    </message>
    <message>
        <source>Dial: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anrufen: %1</translation>
    </message>
    <message>
        <source>Say where: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ort nennen: %1</translation>
    </message>
    <message>
        <source>Meet the responders: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rettungskräfte empfangen: %1</translation>
    </message>
    <message>
        <source>Phone: %1 from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon: %1 von hier.</translation>
    </message>
    <message>
        <source>Phone: %1 from here, by way of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon: %1 von hier. Weg: %2.</translation>
    </message>
    <message>
        <source>After hours: %1 from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außerhalb der Betriebszeit: %1 von hier.</translation>
    </message>
    <message>
        <source>After hours: %1 from here, by way of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außerhalb der Betriebszeit: %1 von hier. Weg: %2.</translation>
    </message>
    <message>
        <source>No phone is drawn. Find out now where the nearest is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein Telefon eingezeichnet. Jetzt herausfinden, wo das nächste ist.</translation>
    </message>
    <message>
        <source>No way to a phone is known from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von hier ist kein Weg zu einem Telefon bekannt.</translation>
    </message>
    <message>
        <source>After hours no phone can be reached from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außerhalb der Betriebszeit ist von hier kein Telefon zu erreichen.</translation>
    </message>
    <message>
        <source>The way is narrow.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg ist eng.</translation>
    </message>
    <message>
        <source>outside</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>draußen</translation>
    </message>
    <message>
        <source>You are here</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie sind hier</translation>
    </message>
    <message>
        <source>to %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>zu %1</translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Revision %1</translation>
    </message>
    <message>
        <source>No revision given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Revision angegeben</translation>
    </message>
    <message>
        <source>Layout %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Layout %1</translation>
    </message>
    <message>
        <source>Print at 100 %: this bar is 100 mm long.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mit 100 % drucken: Dieser Balken ist 100 mm lang.</translation>
    </message>
    <message>
        <source>Drawn from a plan and checked against chosen rules. It certifies no machine, stop or room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first. Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aus einem Plan gezeichnet und an gewählten Regeln geprüft. Bescheinigt weder Maschine noch Stopp noch Raum. Örtliche Vorschriften, der Hersteller der Maschine, die zuständige Behörde und zugelassene Fachleute gehen vor. Sich nie auf einen Stopp als Schutzeinrichtung verlassen. Einen Stopp nur so testen, wie es der Hersteller und die Anweisung der Werkstatt vorgeben, und nur, wenn kein Werkzeug im Eingriff ist.</translation>
    </message>
    <message>
        <source>Mushroom button</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pilztaster</translation>
    </message>
    <message>
        <source>Press the red button.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Roten Knopf drücken.</translation>
    </message>
    <message>
        <source>Foot bar</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Trittleiste</translation>
    </message>
    <message>
        <source>Step on the bar.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf die Leiste treten.</translation>
    </message>
    <message>
        <source>Switch thrown to horizontal</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Schalter, der waagerecht gestellt wird</translation>
    </message>
    <message>
        <source>Throw the switch to horizontal.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Schalter waagerecht stellen.</translation>
    </message>
    <message>
        <source>Trigger</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drücker</translation>
    </message>
    <message>
        <source>Let go of the trigger.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drücker loslassen.</translation>
    </message>
    <message>
        <source>Guarded start with pin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gesicherter Start mit Stift</translation>
    </message>
    <message>
        <source>This starts the machine. It stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das startet die Maschine. Es stoppt nichts.</translation>
    </message>
    <message>
        <source>Pull cord</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Reißleine</translation>
    </message>
    <message>
        <source>Pull the cord.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>An der Leine ziehen.</translation>
    </message>
    <message>
        <source>Paddle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopp-Klappe</translation>
    </message>
    <message>
        <source>Push the paddle.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf die Klappe drücken.</translation>
    </message>
    <message>
        <source>Room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum-Not-Aus</translation>
    </message>
    <message>
        <source>Press to cut the power to the room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drücken: schaltet den Strom im Raum ab.</translation>
    </message>
    <message>
        <source>Isolator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hauptschalter</translation>
    </message>
    <message>
        <source>Turn the supply switch to off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hauptschalter auf Aus drehen.</translation>
    </message>
    <message>
        <source>How it stops</source>
        <translation>So wird gestoppt</translation>
    </message>
    <message>
        <source>This machine has no stop of its own.</source>
        <translation>Diese Maschine hat keinen eigenen Stopp.</translation>
    </message>
    <message>
        <source>If you cannot reach it</source>
        <translation>Wenn er nicht erreichbar ist</translation>
    </message>
    <message>
        <source>%1: %2 from where you work.</source>
        <translation>%1: %2 vom Arbeitsplatz aus.</translation>
    </message>
    <message>
        <source>%1 in %3: %2 from where you work.</source>
        <translation>%1 in %3: %2 vom Arbeitsplatz aus.</translation>
    </message>
    <message>
        <source>%1: at hand from where you work.</source>
        <translation>%1: vom Arbeitsplatz aus in Griffweite.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>No other stop stops this machine.</source>
        <translation>Kein anderer Stopp hält diese Maschine an.</translation>
    </message>
    <message>
        <source>No way from where you work is known: the plan has none, or no place to work at.</source>
        <translation>Vom Arbeitsplatz aus ist kein Weg bekannt: Im Plan fehlt der Weg oder der Arbeitsplatz.</translation>
    </message>
    <message>
        <source>Nothing stops this machine. Keep off it.</source>
        <translation>Nichts stoppt diese Maschine. Von ihr fernbleiben.</translation>
    </message>
    <message>
        <source>After hours there is no way to it.</source>
        <translation>Außerhalb der Betriebszeit führt kein Weg dorthin.</translation>
    </message>
    <message>
        <source>The plan has drawing faults (%1): something may be missing here.</source>
        <translation>Der Plan hat Zeichenfehler (%1): Hier kann etwas fehlen.</translation>
    </message>
    <message>
        <source>Inspection round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang</translation>
    </message>
    <message>
        <source>All devices (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Geräte (%1)</translation>
    </message>
    <message>
        <source>Devices that are due (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fällige Geräte (%1)</translation>
    </message>
    <message>
        <source>Devices of %2 (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Geräte von %2 (%1)</translation>
    </message>
    <message>
        <source>Devices of %2 that are due (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fällige Geräte von %2 (%1)</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gedruckt %1</translation>
    </message>
    <message>
        <source>Round %1, opened %2 by %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang %1, begonnen %2 von %3</translation>
    </message>
    <message>
        <source>Round no.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang Nr.</translation>
    </message>
    <message>
        <source>Date</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Begun at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Beginn um</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrolliert von</translation>
    </message>
    <message>
        <source>Second person</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>Tick what was tried and was so. Where it was tried and was not so, write NO into the box. What was not tried stays empty. One result for each device, and the time where it failed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ankreuzen, was getestet oder nachgesehen wurde und so war. Was dabei nicht so war: NEIN in das Kästchen schreiben. Was nicht getestet oder nachgesehen wurde, bleibt leer. Für jedes Gerät ein Ergebnis, und die Uhrzeit, wo es nicht bestanden hat.</translation>
    </message>
    <message>
        <source>The walk, in the order of the numbers. 1 : %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg, in der Reihenfolge der Nummern. 1 : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In keinem Raum</translation>
    </message>
    <message>
        <source>%1, on a wall or post</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, an einer Wand oder Stütze</translation>
    </message>
    <message>
        <source>%1, %2 above the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2 über dem Boden</translation>
    </message>
    <message>
        <source>Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt: %1</translation>
    </message>
    <message>
        <source>Is wired to stop nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ist so verdrahtet, dass es nichts stoppt.</translation>
    </message>
    <message>
        <source>No stop. To look at: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein Stopp. Zum Ansehen: %1</translation>
    </message>
    <message>
        <source>Failed on %1 (%2). This is a retest.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden am %1 (%2). Dies ist eine Nachkontrolle.</translation>
    </message>
    <message>
        <source>It is no longer on the plan: nothing can be recorded of it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ist nicht mehr im Plan: Nichts kann davon eingetragen werden.</translation>
    </message>
    <message>
        <source>Nothing in its way, marking legible</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nichts im Weg, Kennzeichnung lesbar</translation>
    </message>
    <message>
        <source>Pressed, and it worked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gedrückt, und es wirkte</translation>
    </message>
    <message>
        <source>Pressed while running at no load: the machine stopped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Leerlauf gedrückt: die Maschine stoppte</translation>
    </message>
    <message>
        <source>Latches: it stays as it was pressed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rastet ein: bleibt gedrückt</translation>
    </message>
    <message>
        <source>Stays stopped when it is released</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bleibt gestoppt, wenn es gelöst wird</translation>
    </message>
    <message>
        <source>Stays stopped when power returns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bleibt gestoppt, wenn der Strom wiederkommt</translation>
    </message>
    <message>
        <source>Pass</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bestanden</translation>
    </message>
    <message>
        <source>Fail</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden</translation>
    </message>
    <message>
        <source>Not tested</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht getestet</translation>
    </message>
    <message>
        <source>Could not reach</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht erreichbar</translation>
    </message>
    <message>
        <source>Time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Run-down, seconds</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit, Sekunden</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Still to be done, by whom, until when</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch zu tun, von wem, bis wann</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>What stops it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was sie stoppt</translation>
    </message>
    <message>
        <source>These do not stop it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das stoppt sie nicht</translation>
    </message>
    <message>
        <source>After hours: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außerhalb der Betriebszeit: %1</translation>
    </message>
    <message>
        <source>NOT SAVED</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>NICHT GESPEICHERT</translation>
    </message>
    <message>
        <source>Letters (ASR A1.3): title %1 mm, read to %2 m; table %3 mm, to %4 m.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buchstaben (ASR A1.3): Titel %1 mm, lesbar bis %2 m; Tabelle %3 mm, bis %4 m.</translation>
    </message>
    <message>
        <source>Letters (ASR A1.3): name %1 mm, read to %2 m; how it stops %3 mm, to %4 m.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buchstaben (ASR A1.3): Name %1 mm, lesbar bis %2 m; wie sie stoppt %3 mm, bis %4 m.</translation>
    </message>
    <message>
        <source>Signs on the plan: %1 mm, recognised to %2 m (60 times the height, ISO 3864-1, unlit).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeichen im Plan: %1 mm, erkennbar bis %2 m (60-fache Höhe, ISO 3864-1, unbeleuchtet).</translation>
    </message>
    <message>
        <source>The list goes on: see page %1 of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Liste geht weiter: siehe Seite %1 von %2.</translation>
    </message>
    <message>
        <source>Enter it afterwards with its time: in the window in the place Inspect, under &quot;Done on paper on&quot;; or %1 (a round that was not opened before: %2). Keep this sheet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Danach mit der Uhrzeit eintragen: im Fenster im Bereich Kontrollieren unter „Auf Papier erledigt am“; oder %1 (ein vorher nicht eröffneter Kontrollgang: %2). Dieses Blatt aufbewahren.</translation>
    </message>
    <message>
        <source>Failed a check on %1: do not rely on it.</source>
        <translation>Kontrolle am %1 nicht bestanden: nicht darauf verlassen.</translation>
    </message>
    <message>
        <source>In its place, with its pin if it has one; nothing in its way, marking legible</source>
        <translation>An seinem Platz, mit seinem Stift, falls es einen hat; nichts im Weg, Kennzeichnung lesbar</translation>
    </message>
    <message>
        <source>a day that cannot be read</source>
        <translation>(Tag nicht lesbar)</translation>
    </message>
    <message>
        <source>The walk is %1, doors as in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg ist %1 lang, Türen wie in der Betriebszeit.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg ist %1 lang, Türen wie außerhalb der Betriebszeit.</translation>
    </message>
    <message>
        <source>No order is shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Reihenfolge ist kürzer.</translation>
    </message>
    <message>
        <source>No order is shorter by more than %1 %.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Reihenfolge ist um mehr als %1 % kürzer.</translation>
    </message>
    <message>
        <source>How much shorter another order might be is not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Um wie viel kürzer eine andere Reihenfolge wäre, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The order is that of the round: on the plan as it is now another may be shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Reihenfolge ist die des Kontrollgangs: Auf dem Plan, wie er jetzt ist, kann eine andere kürzer sein.</translation>
    </message>
    <message>
        <source>It begins at %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Er beginnt bei %1.</translation>
    </message>
    <message>
        <source>It leads back to where it began.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Er führt zum Anfang zurück.</translation>
    </message>
    <message>
        <source>On the plan no way leads to: %1. See how to get there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf dem Plan führt kein Weg zu: %1. Vor Ort sehen, wie man hinkommt.</translation>
    </message>
    <message>
        <source>On the plan no way leads here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf dem Plan führt kein Weg hierher.</translation>
    </message>
    <message>
        <source>Nothing in its way</source>
        <translation>Nichts im Weg</translation>
    </message>
    <message>
        <source>Marking legible</source>
        <translation>Kennzeichnung lesbar</translation>
    </message>
    <message>
        <source>Tagged out by, until when</source>
        <translation>Sperranhänger durch, bis wann</translation>
    </message>
    <message>
        <source>What else was done at once</source>
        <translation>Was sonst sofort getan wurde</translation>
    </message>
    <message>
        <source>To test, with the work clear: %1</source>
        <translation>Zum Testen, kein Werkzeug im Eingriff: %1</translation>
    </message>
    <message>
        <source>What a stop stops must come to rest, and stay at rest.</source>
        <translation>Was ein Stopp stoppt, muss zum Stillstand kommen und stehen bleiben.</translation>
    </message>
    <message>
        <source>name cannot be read</source>
        <translation>Name nicht zu lesen</translation>
    </message>
</context>
<context>
    <name>posters</name>
    <message>
        <source>%1: there is no room for a plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: für einen Plan ist kein Platz</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is in no room that can be built</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 steht in keinem Raum, der sich aufbauen lässt</translation>
    </message>
    <message>
        <source>the room does not fit on %1 at 1:%2 or larger</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der Raum passt auf %1 nicht im Maßstab 1:%2 oder größer</translation>
    </message>
    <message>
        <source>what is to be told of a machine, or in an emergency, is longer than a page of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>was zu einer Maschine oder für den Notfall zu sagen ist, ist länger als eine Seite %1</translation>
    </message>
    <message>
        <source>so many stops stand so close that their signs of %1 mm find no place on %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>so viele Stopps sind so dicht beisammen, dass ihre Zeichen von %1 mm auf %2 keinen Platz finden</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; divide the room, or draw it as two</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein wählbares Papier würde reichen; den Raum teilen oder als zwei zeichnen</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; say it in fewer words</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein wählbares Papier würde reichen; es mit weniger Worten sagen</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; see whether each is drawn where it is, and only once</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein wählbares Papier würde reichen; nachsehen, ob jeder dort gezeichnet ist, wo er ist, und nur einmal</translation>
    </message>
    <message>
        <source>%1 would do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 würde reichen</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>what to dial (`emergency_call`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>was zu wählen ist (`emergency_call`)</translation>
    </message>
    <message>
        <source>the address to say (`address`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>welche Adresse zu nennen ist (`address`)</translation>
    </message>
    <message>
        <source>where to meet the responders (`meet_responders_at`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>wo die Rettungskräfte zu empfangen sind (`meet_responders_at`)</translation>
    </message>
    <message>
        <source>the table does not fit beside the plan on %1: it goes on to %2 pages</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die Tabelle passt auf %1 nicht neben den Plan: sie braucht %2 Seiten</translation>
    </message>
    <message>
        <source>no font here has these letters, which print as empty boxes: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>keine Schrift hier hat diese Zeichen, die als leere Kästchen gedruckt werden: %1</translation>
    </message>
    <message>
        <source>drawn outside the room, and so in the table only, without a sign: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>außerhalb des Raums gezeichnet, und darum nur in der Tabelle, ohne Zeichen: %1</translation>
    </message>
    <message>
        <source>no place on the plan for the name of %1; the table has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>im Plan ist kein Platz für den Namen von %1; in der Tabelle steht er</translation>
    </message>
    <message>
        <source>the room&apos;s name is too long for the header&apos;s letters: it is in letters of %1 mm</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>der Name des Raums ist zu lang für die Buchstaben der Kopfzeile: er steht in Buchstaben von %1 mm</translation>
    </message>
    <message>
        <source>the layout&apos;s `site` does not say %1; the poster has a line to fill in by hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>`site` im Layout sagt nicht, %1; der Aushang hat eine Zeile zum Ausfüllen von Hand</translation>
    </message>
    <message>
        <source>the layout has no `revision`: nobody can tell this poster from an older one but by its hash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>das Layout hat keine `revision`: nur an der Prüfsumme lässt sich dieser Aushang von einem älteren unterscheiden</translation>
    </message>
    <message>
        <source>its outline cannot be built; `stopwalk check` says why</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sein Umriss lässt sich nicht aufbauen; `stopwalk check` sagt, warum</translation>
    </message>
    <message>
        <source>there is no machine and no stop in it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es gibt darin keine Maschine und keinen Stopp</translation>
    </message>
    <message>
        <source>something stands before the place where it hangs, so that nobody can stand there to read it: choose another</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>vor der Stelle, an der er hängt, steht etwas, sodass dort niemand stehen und ihn lesen kann: eine andere wählen</translation>
    </message>
    <message>
        <source>drawing faults in the layout: %1; what is faulty may be missing here, and `stopwalk check` names it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeichenfehler im Layout: %1; was fehlerhaft ist, kann hier fehlen, und `stopwalk check` nennt es</translation>
    </message>
    <message>
        <source>%1: its words are too long for the sheet; they are cut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: die Texte sind zu lang für das Blatt; sie sind abgeschnitten</translation>
    </message>
    <message>
        <source>%1: how it stops is in letters of %2 mm only, so that all of it fits on one page</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: wie sie stoppt, steht nur in Buchstaben von %2 mm, damit alles auf eine Seite passt</translation>
    </message>
    <message>
        <source>%1: its stops and their words do not fit on one page; one language alone, or fewer words, may</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: ihre Stopps und deren Texte passen nicht auf eine Seite; in einer Sprache allein oder mit weniger Worten vielleicht</translation>
    </message>
    <message>
        <source>the check of %1 on %2 failed, and it has not passed since: it is shown as out of order; when it has passed, print this anew</source>
        <translation>%1 hat die Kontrolle am %2 nicht bestanden und seither keine: es ist als außer Betrieb gezeigt; sobald es eine bestanden hat, neu drucken</translation>
    </message>
    <message>
        <source>the check of %1 on %2 failed, and it has not passed since: the profile counts it as a stop all the same, and so it is shown as one</source>
        <translation>%1 hat die Kontrolle am %2 nicht bestanden und seither keine: das Profil zählt es trotzdem als Stopp, und so wird es gezeigt</translation>
    </message>
</context>
<context>
    <name>rounds</name>
    <message>
        <source>Is wired to stop nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ist so verdrahtet, dass es nichts stoppt.</translation>
    </message>
    <message>
        <source>Stops every machine (%1).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt jede Maschine (%1).</translation>
    </message>
    <message>
        <source>Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stoppt: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In keinem Raum</translation>
    </message>
    <message>
        <source>%1, on the machine %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, an der Maschine %2</translation>
    </message>
    <message>
        <source>%1, on a wall or post</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, an einer Wand oder Stütze</translation>
    </message>
    <message>
        <source>%1, %2 above the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2 über dem Boden</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Already checked in this round: %1. Record it again only if it was tested again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In diesem Kontrollgang schon kontrolliert: %1. Nur erneut eintragen, wenn es erneut getestet wurde.</translation>
    </message>
    <message>
        <source>%1 due today</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 heute fällig</translation>
    </message>
    <message>
        <source>%1 overdue by 1 day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 seit 1 Tag überfällig</translation>
    </message>
    <message>
        <source>%1 overdue by %2 days</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 seit %2 Tagen überfällig</translation>
    </message>
    <message>
        <source>failed on %1, to be checked again once it is mended</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>am %1 nicht bestanden, nach der Reparatur erneut zu kontrollieren</translation>
    </message>
    <message>
        <source>%1: %2 due, %3 overdue</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 fällig, %3 überfällig</translation>
    </message>
    <message>
        <source>%1: %2 due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 fällig</translation>
    </message>
    <message>
        <source>%1: %2, by %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2, durch %3</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>Still to be done: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch zu tun: %1</translation>
    </message>
    <message>
        <source>Failed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>; </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; </translation>
    </message>
    <message>
        <source>Failed: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden: %1</translation>
    </message>
    <message>
        <source>Say who does what is still to be done.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Angeben, wer tut, was noch zu tun ist.</translation>
    </message>
    <message>
        <source>Say what is still to be done.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Angeben, was noch zu tun ist.</translation>
    </message>
    <message>
        <source>Until %1: a day is expected as 2026-03-02.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bis %1: erwartet wird ein Tag wie 2026-03-02.</translation>
    </message>
    <message>
        <source>Choose the result: what came of it?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Ergebnis wählen: was kam heraus?</translation>
    </message>
    <message>
        <source>What does not stay stopped has not passed: choose the failure.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was nicht gestoppt bleibt, hat nicht bestanden: „Nicht bestanden“ wählen.</translation>
    </message>
    <message>
        <source>Tick what was tried: a pass says nothing without it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ankreuzen, was getestet oder nachgesehen wurde: ohne das sagt „Bestanden“ nichts.</translation>
    </message>
    <message>
        <source>Not recorded: %1 is being written by %2. What was entered is kept here; try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht eingetragen: %1 wird gerade von %2 geschrieben. Die Eingaben bleiben hier; erneut versuchen.</translation>
    </message>
    <message>
        <source>Not recorded: %1 cannot be written (%2). What was entered is kept here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht eingetragen: %1 kann nicht geschrieben werden (%2). Die Eingaben bleiben hier.</translation>
    </message>
    <message>
        <source>It is not sure that this was recorded in %1 (%2). Look at the device&apos;s checks before you record it again; what was entered is kept here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ist nicht sicher, dass dies in %1 eingetragen wurde (%2). Vor dem erneuten Eintragen die Kontrollen des Geräts ansehen; die Eingaben bleiben hier.</translation>
    </message>
    <message>
        <source>A record that was never finished is kept in %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein nie beendeter Eintrag ist in %1 aufgehoben.</translation>
    </message>
    <message>
        <source>retest</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachkontrolle</translation>
    </message>
    <message>
        <source>press</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drücken</translation>
    </message>
    <message>
        <source>full test</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>voller Test</translation>
    </message>
    <message>
        <source>look</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language of dates</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>de</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>never passed a check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>hat noch keine Kontrolle bestanden</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 to be done again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 zu wiederholen</translation>
    </message>
    <message>
        <source>check %1 of %2 does not count: %3</source>
        <translation>Kontrolle %1 vom %2 zählt nicht: %3</translation>
    </message>
    <message>
        <source>%1 of %2 devices are due, %3 of them overdue.</source>
        <translation>%1 von %2 Geräten sind fällig, %3 davon überfällig.</translation>
    </message>
    <message>
        <source>Failed, and no longer on the plan: %1.</source>
        <translation>Nicht bestanden und nicht mehr im Plan: %1.</translation>
    </message>
    <message>
        <source>To be done by today: %1, overdue: %2.</source>
        <translation>Bis heute zu tun: %1, überfällig: %2.</translation>
    </message>
    <message>
        <source>Nothing is due until %1.</source>
        <translation>Bis %1 ist nichts fällig.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Nichts ist fällig.</translation>
    </message>
    <message>
        <source>Check %1 is not in the records any more: nothing corrects it.</source>
        <translation>Kontrolle %1 steht nicht mehr in den Aufzeichnungen: Nichts berichtigt sie.</translation>
    </message>
    <message>
        <source>Check %1 is of another device, %2: it is corrected there.</source>
        <translation>Kontrolle %1 ist von einem anderen Gerät, %2: Sie wird dort berichtigt.</translation>
    </message>
    <message>
        <source>Check %1 is of round %2: it is corrected there.</source>
        <translation>Kontrolle %1 gehört zu Kontrollgang %2: Sie wird dort berichtigt.</translation>
    </message>
    <message>
        <source>Check %1 was corrected already, by check %2: correct that one.</source>
        <translation>Kontrolle %1 wurde schon berichtigt, durch Kontrolle %2: diese berichtigen.</translation>
    </message>
    <message>
        <source>It is no longer on the plan under this id: of it can only be recorded that it was taken away.</source>
        <translation>Es steht nicht mehr unter dieser Kennung im Plan: Eingetragen werden kann nur, dass es entfernt wurde.</translation>
    </message>
    <message>
        <source>failed since %1, last on %2, to be checked again once it is mended</source>
        <translation>nicht bestanden seit %1, zuletzt am %2, nach der Reparatur wieder zu kontrollieren</translation>
    </message>
    <message>
        <source>%1: failed on %2, and no longer on the plan under this id. Enter: say that it was taken away</source>
        <translation>%1: nicht bestanden am %2 und nicht mehr unter dieser Kennung im Plan. Eingabetaste: sagen, dass es entfernt wurde</translation>
    </message>
    <message>
        <source>What does not stay in when pressed has not passed: choose the failure.</source>
        <translation>Was gedrückt nicht eingerastet bleibt, hat nicht bestanden: „Nicht bestanden“ wählen.</translation>
    </message>
    <message>
        <source>Not recorded: that check was corrected meanwhile, by check %1: correct that one.</source>
        <translation>Nicht eingetragen: Diese Kontrolle wurde inzwischen berichtigt, durch Kontrolle %1: diese berichtigen.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>Run-down %1: seconds from 0 to %2 are expected, such as 2.4.</source>
        <translation>Nachlaufzeit %1: Erwartet werden Sekunden von 0 bis %2, etwa 2.4.</translation>
    </message>
    <message>
        <source>Stops nothing: it is looked at, and never pressed.</source>
        <translation>Stoppt nichts: Es wird angesehen und nie gedrückt.</translation>
    </message>
    <message>
        <source>a day that cannot be read</source>
        <translation>(Tag nicht lesbar)</translation>
    </message>
    <message>
        <source>How much shorter another order might be is not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Um wie viel kürzer eine andere Reihenfolge wäre, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No order is shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Reihenfolge ist kürzer.</translation>
    </message>
    <message>
        <source>No order is shorter by more than %1 %.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Reihenfolge ist um mehr als %1 % kürzer.</translation>
    </message>
    <message>
        <source>On the plan no way leads to: %1. They come at the end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf dem Plan führt kein Weg zu: %1. Sie kommen am Ende.</translation>
    </message>
    <message>
        <source>The walk cannot begin at %1: nobody can stand there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg kann nicht bei %1 beginnen: Dort kann niemand stehen.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt kein Gerät zu kontrollieren.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg ist %1 lang, Türen wie außerhalb der Betriebszeit.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg ist %1 lang, Türen wie in der Betriebszeit.</translation>
    </message>
    <message>
        <source>On the plan no way leads here after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf dem Plan führt außerhalb der Betriebszeit kein Weg hierher.</translation>
    </message>
    <message>
        <source>On the plan no way leads here in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf dem Plan führt in der Betriebszeit kein Weg hierher.</translation>
    </message>
    <message>
        <source>What has something in its way has not passed: choose the failure.</source>
        <translation>Was verstellt ist, hat nicht bestanden: „Nicht bestanden“ wählen.</translation>
    </message>
    <message>
        <source>What has no legible marking has not passed: choose the failure.</source>
        <translation>Was keine lesbare Kennzeichnung hat, hat nicht bestanden: „Nicht bestanden“ wählen.</translation>
    </message>
    <message>
        <source>Say who tagged the machine out.</source>
        <translation>Angeben, wer den Sperranhänger angebracht hat.</translation>
    </message>
    <message>
        <source>%1 is no name.</source>
        <translation>%1 ist kein Name.</translation>
    </message>
    <message>
        <source>Say who tagged the machine out: %1</source>
        <translation>Angeben, wer den Sperranhänger angebracht hat: %1</translation>
    </message>
    <message>
        <source>Say who does what is still to be done: %1</source>
        <translation>Angeben, wer tut, was noch zu tun ist: %1</translation>
    </message>
    <message>
        <source>Say who the second person was, or leave that line empty: %1</source>
        <translation>Angeben, wer die zweite Person war, oder die Zeile leer lassen: %1</translation>
    </message>
    <message>
        <source>Not recorded: the device failed meanwhile, by check %1. If you tried it after that, record this once more; else try it again, or choose what you find.</source>
        <translation>Nicht eingetragen: Das Gerät hat inzwischen nicht bestanden, nach Kontrolle %1. Wurde es erst danach ausprobiert, dies noch einmal eintragen; sonst es neu ausprobieren, oder wählen, was sich zeigt.</translation>
    </message>
    <message>
        <source>%1 (check %2 of %3, %4)</source>
        <comment>what is due; why that check was not it</comment>
        <translation>%1 (Kontrolle %2 vom %3, %4)</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>could not be reached; a day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 never passed</source>
        <translation>%1 nie bestanden</translation>
    </message>
</context>
<context>
    <name>stopwalk::edits::EditedLayout</name>
    <message>
        <source>Nothing was changed: this layout is open for looking only.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nichts wurde geändert: Dieses Layout ist nur zum Ansehen offen.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::AcceptDialog</name>
    <message>
        <source>That day has passed. Type today&apos;s or a later one.</source>
        <translation>Dieser Tag ist vorbei. Den heutigen oder einen späteren eintippen.</translation>
    </message>
    <message>
        <source>Accept this finding</source>
        <translation>Diesen Befund hinnehmen</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Hinnehmen</translation>
    </message>
    <message>
        <source>It stays a finding, as grave as it is, and is shown with these words everywhere. They are kept with the layout.</source>
        <translation>Er bleibt ein Befund, so schwer wie er ist, und wird überall mit diesen Worten gezeigt. Sie bleiben beim Layout.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Why it may stand for a time, and what is done meanwhile.</source>
        <translation>Warum er für eine Zeit bestehen darf, und was bis dahin getan wird.</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Hingenommen von</translation>
    </message>
    <message>
        <source>The name of who answers for it.</source>
        <translation>Der Name dessen, der dafür einsteht.</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>The last day, such as 2026-12-31. Arrows up and down change it by a day, with Shift by a month.</source>
        <translation>Der letzte Tag, etwa 2026-12-31. Die Pfeile auf und ab ändern ihn um einen Tag, mit Umschalt um einen Monat.</translation>
    </message>
    <message>
        <source>That is more than %1 years from now. Type a day up to %2; what stands longer is a matter for the rules.</source>
        <translation>Das ist in mehr als %1 Jahren. Einen Tag bis %2 eingeben; was länger bestehen soll, gehört in die Regeln.</translation>
    </message>
    <message>
        <source>This is found no more: something was changed meanwhile. There is nothing to accept.</source>
        <translation>Das wird nicht mehr gefunden: Inzwischen wurde etwas geändert. Es gibt nichts hinzunehmen.</translation>
    </message>
    <message>
        <source>It is found otherwise by now: read it above, and accept it if it may stand like that.</source>
        <translation>Das wird inzwischen anders gefunden: oben lesen, und hinnehmen, wenn es so bestehen darf.</translation>
    </message>
    <message>
        <source>What is found now is not computed yet. Accept it again in a moment; if that lasts, close this and audit again.</source>
        <translation>Was jetzt gefunden wird, ist noch nicht berechnet. In einem Augenblick noch einmal hinnehmen; bleibt es so, dies schließen und noch einmal prüfen.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Accepting</name>
    <message>
        <source>Accept the fin&amp;ding…</source>
        <translation>Befund &amp;vorläufig hinnehmen…</translation>
    </message>
    <message>
        <source>Lets it stand for a time: why, by whom, until when</source>
        <translation>Lässt ihn für eine Zeit bestehen: warum, von wem, bis wann</translation>
    </message>
    <message>
        <source>Accept…</source>
        <translation>Hinnehmen…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>No lon&amp;ger accept the finding</source>
        <translation>Befund ni&amp;cht mehr hinnehmen</translation>
    </message>
    <message>
        <source>What lets it stand is taken out of the layout</source>
        <translation>Was ihn bestehen lässt, wird aus dem Layout genommen</translation>
    </message>
    <message>
        <source>Pick a finding first.</source>
        <translation>Zuerst einen Befund auswählen.</translation>
    </message>
    <message>
        <source>Go back to how it is first: what is only supposed is not accepted.</source>
        <translation>Zuerst zurück zum Ist-Zustand: Was nur angenommen ist, wird nicht hingenommen.</translation>
    </message>
    <message>
        <source>Nobody has accepted this finding.</source>
        <translation>Niemand hat diesen Befund hingenommen.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>This is found no more. What accepted it can be taken back.</source>
        <translation>Das wird nicht mehr gefunden. Was es hinnimmt, kann zurückgenommen werden.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ActionFinder</name>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Find an action</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aktion suchen</translation>
    </message>
    <message>
        <source>Actions</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aktionen</translation>
    </message>
    <message>
        <source>All that this window can do. Enter does it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alles, was dieses Fenster kann. Eingabetaste führt es aus.</translation>
    </message>
    <message>
        <source>Type what you want to do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eintippen, was zu tun ist</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::BlockDialog</name>
    <message>
        <source>Something in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Etwas im Weg</translation>
    </message>
    <message>
        <source>Put it there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dort hinstellen</translation>
    </message>
    <message>
        <source>Of its middle, on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Mitte, im Plan.</translation>
    </message>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage x</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lage y</translation>
    </message>
    <message>
        <source>Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Across the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quer im Plan.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Up the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Plan nach oben.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Details</name>
    <message>
        <source>Details</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>The workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Werkstatt</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Dinge</translation>
    </message>
    <message>
        <source>%1, a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, vor einem Augenblick</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::EachSecondsField</name>
    <message>
        <source>Machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::FindingList</name>
    <message>
        <source>Findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>What the audit found, the worst first. Enter goes there on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was die Prüfung fand, das Schlimmste zuerst. Eingabetaste führt im Plan dorthin.</translation>
    </message>
    <message>
        <source>Search findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Befunde durchsuchen</translation>
    </message>
    <message>
        <source>Group findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Befunde gruppieren</translation>
    </message>
    <message>
        <source>By room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach Raum</translation>
    </message>
    <message>
        <source>By machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach Maschine</translation>
    </message>
    <message>
        <source>By rule</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach Regel</translation>
    </message>
    <message>
        <source>Fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verstöße</translation>
    </message>
    <message>
        <source>Warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Neu: %1</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch nicht geprüft.</translation>
    </message>
    <message>
        <source>There is nothing to audit yet. Draw a machine with its station, and the findings stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch ist nichts zu prüfen. Eine Maschine mit ihrem Arbeitsplatz zeichnen, dann stehen hier die Befunde.</translation>
    </message>
    <message>
        <source>Every rule is met, as drawn and as entered.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Jede Regel ist erfüllt, wie gezeichnet und eingegeben.</translation>
    </message>
    <message>
        <source>No finding is like that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kein Befund ist so.</translation>
    </message>
    <message>
        <source>Of a moment ago:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stand von eben:</translation>
    </message>
    <message>
        <source>1 finding.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Befund.</translation>
    </message>
    <message>
        <source>%1 findings.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Befunde.</translation>
    </message>
    <message>
        <source>No findings, as drawn and as entered.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Befunde, wie gezeichnet und eingegeben.</translation>
    </message>
    <message>
        <source>%1 of %2 findings; the others are not shown.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 von %2 Befunden; die anderen werden nicht gezeigt.</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>%1 of %2 findings.</source>
        <translation>%1 von %2 Befunden.</translation>
    </message>
    <message>
        <source>Order of the findings</source>
        <translation>Reihenfolge der Befunde</translation>
    </message>
    <message>
        <source>Worst first</source>
        <translation>Schlimmste zuerst</translation>
    </message>
    <message>
        <source>Farthest past its limit first</source>
        <translation>Am weitesten über dem Grenzwert zuerst</translation>
    </message>
    <message>
        <source>By name</source>
        <translation>Nach Namen</translation>
    </message>
    <message>
        <source>&amp;Copy the findings</source>
        <translation>Befunde &amp;kopieren</translation>
    </message>
    <message>
        <source>What is shown, as text for a letter</source>
        <translation>Was zu sehen ist, als Text für einen Brief</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>&amp;Export the findings…</source>
        <translation>Befunde &amp;exportieren…</translation>
    </message>
    <message>
        <source>All findings as a CSV file</source>
        <translation>Alle Befunde als CSV-Datei</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Not grouped</source>
        <translation>Nicht gruppiert</translation>
    </message>
    <message>
        <source>Accepted, and found no more: %1</source>
        <translation>Hingenommen und nicht mehr gefunden: %1</translation>
    </message>
    <message>
        <source>1 station has no way to a stop or to a phone, and no rule that is on warns of it.</source>
        <translation>1 Arbeitsplatz hat keinen Weg zu einem Stopp oder zu einem Telefon, und keine eingeschaltete Regel warnt davor.</translation>
    </message>
    <message>
        <source>%1 stations have no way to a stop or to a phone, and no rule that is on warns of it.</source>
        <translation>%1 Arbeitsplätze haben keinen Weg zu einem Stopp oder zu einem Telefon, und keine eingeschaltete Regel warnt davor.</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>Stand von eben: Was seitdem geändert wurde, ist nicht enthalten.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Gallery</name>
    <message>
        <source>What to draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was zu zeichnen ist</translation>
    </message>
    <message>
        <source>Choose what to draw; then click on the plan. Enter chooses by keyboard.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wählen, was zu zeichnen ist; dann in den Plan klicken. Eingabetaste wählt mit der Tastatur.</translation>
    </message>
    <message>
        <source>Search what to draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Suchen, was zu zeichnen ist</translation>
    </message>
    <message>
        <source>Nothing here is called that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hier heißt nichts so.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::MoveDialog</name>
    <message>
        <source>Move or turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verschieben oder drehen</translation>
    </message>
    <message>
        <source>Move</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>To the right by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach rechts um</translation>
    </message>
    <message>
        <source>Less than 0: to the left.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weniger als 0: nach links.</translation>
    </message>
    <message>
        <source>Up by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach oben um</translation>
    </message>
    <message>
        <source>On the plan. Less than 0: down.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Plan. Weniger als 0: nach unten.</translation>
    </message>
    <message>
        <source>Turn by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Drehen um</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise, each on its own place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grad gegen den Uhrzeigersinn, jedes an seiner Stelle.</translation>
    </message>
    <message>
        <source>Move and turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 verschieben und drehen</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::OutlineField</name>
    <message>
        <source>x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>y</translation>
    </message>
    <message>
        <source>They differ</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Verschieden</translation>
    </message>
    <message>
        <source>Add outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umriss hinzufügen</translation>
    </message>
    <message>
        <source>Add corner</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecke hinzufügen</translation>
    </message>
    <message>
        <source>Remove outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umriss entfernen</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ecke entfernen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::PaperChooser</name>
    <message>
        <source>%1, %2 × %3 mm</source>
        <translation>%1, %2 × %3 mm</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>The sheet that the poster is printed on.</source>
        <translation>Das Blatt, auf das der Aushang gedruckt wird.</translation>
    </message>
    <message>
        <source>Lying or upright</source>
        <translation>Quer oder hoch</translation>
    </message>
    <message>
        <source>Which way up the sheet hangs.</source>
        <translation>Wie herum das Blatt hängt.</translation>
    </message>
    <message>
        <source>As fits best</source>
        <translation>Wie es am besten passt</translation>
    </message>
    <message>
        <source>Lying</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Of the poster. What the shop wrote itself is not translated.</source>
        <translation>Des Aushangs. Was die Werkstatt selbst schrieb, wird nicht übersetzt.</translation>
    </message>
    <message>
        <source>Also in</source>
        <translation>Auch auf</translation>
    </message>
    <message>
        <source>A second language on the same poster.</source>
        <translation>Eine zweite Sprache auf demselben Aushang.</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Keine weitere</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>The font of the poster.</source>
        <translation>Die Schriftart des Aushangs.</translation>
    </message>
    <message>
        <source>The system&apos;s (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die des Systems (%1)</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ProblemList</name>
    <message>
        <source>Problems</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>What is wrong with the drawing, and what the audit found. Enter goes there on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was an der Zeichnung falsch ist, und was die Prüfung fand. Eingabetaste führt im Plan dorthin.</translation>
    </message>
    <message>
        <source>No problems. Faults of the drawing and findings of the audit would stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Probleme. Hier stünden Fehler der Zeichnung und Befunde der Prüfung.</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch nicht geprüft.</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stand von eben</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ReachChooser</name>
    <message>
        <source>What the floor&apos;s colours show</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was die Farben des Bodens zeigen</translation>
    </message>
    <message>
        <source>Machine whose stop is walked to</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maschine, zu deren Stopp der Weg führt</translation>
    </message>
    <message>
        <source>No colours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keine Farben</translation>
    </message>
    <message>
        <source>Walk to the phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zum Telefon</translation>
    </message>
    <message>
        <source>Walk to any stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zu irgendeinem Stopp</translation>
    </message>
    <message>
        <source>Walk to a cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zu einem Not-Aus</translation>
    </message>
    <message>
        <source>Walk to the stop of one machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zum Stopp einer Maschine</translation>
    </message>
    <message>
        <source>Co&amp;lour the floor by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Boden &amp;färben nach</translation>
    </message>
    <message>
        <source>Choose a machine</source>
        <translation>Eine Maschine wählen</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RenameDialog</name>
    <message>
        <source>Rename</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>As people call it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie man es nennt.</translation>
    </message>
    <message>
        <source>Id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Kurzname, mit dem andere Dinge der Datei auf dieses verweisen.</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 umbenennen</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RoomChooser</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>&amp;Room</source>
        <translation>&amp;Raum</translation>
    </message>
    <message>
        <source>Room that the poster is of</source>
        <translation>Raum, für den der Aushang ist</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RulesPanel</name>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rules</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Space puts a rule on or off. What is bold is the house&apos;s own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Leertaste schaltet eine Regel an oder aus. Fettes hat die Werkstatt selbst festgelegt.</translation>
    </message>
    <message>
        <source>Search rules</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regeln durchsuchen</translation>
    </message>
    <message>
        <source>A break of it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht erfüllt</translation>
    </message>
    <message>
        <source>How bad it is if the rule is not met.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie schlimm es ist, wenn die Regel nicht erfüllt ist.</translation>
    </message>
    <message>
        <source>fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ist ein Verstoß</translation>
    </message>
    <message>
        <source>warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ist eine Warnung</translation>
    </message>
    <message>
        <source>is noted</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ist ein Hinweis</translation>
    </message>
    <message>
        <source>Reason</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Why the house keeps it otherwise. Shown as the basis.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Warum die Werkstatt es anders hält. Wird als Grundlage gezeigt.</translation>
    </message>
    <message>
        <source>Basis</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Rules of the profile %1; what is changed here is kept with the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regeln des Profils %1; was hier geändert wird, bleibt beim Layout.</translation>
    </message>
    <message>
        <source>%1 (the house&apos;s own)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (eigene Festlegung)</translation>
    </message>
    <message>
        <source>Limit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limit, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grenzwert, %1</translation>
    </message>
    <message>
        <source>From where on the rule is broken.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ab wo die Regel nicht erfüllt ist.</translation>
    </message>
    <message>
        <source>1 rule is off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Regel ist abgeschaltet.</translation>
    </message>
    <message>
        <source>%1 rules are off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Regeln sind abgeschaltet.</translation>
    </message>
    <message>
        <source>As the profile ha&amp;s it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie im &amp;Profil</translation>
    </message>
    <message>
        <source>The rule chosen is on</source>
        <translation>Die gewählte Regel ist an</translation>
    </message>
    <message>
        <source>A rule that is off finds nothing</source>
        <translation>Eine Regel, die aus ist, findet nichts</translation>
    </message>
    <message>
        <source>The rule chosen as the profile has it</source>
        <translation>Die gewählte Regel wie im Profil</translation>
    </message>
    <message>
        <source>Puts back what was changed of this rule</source>
        <translation>Nimmt zurück, was an dieser Regel geändert wurde</translation>
    </message>
    <message>
        <source>Choose the prof&amp;ile</source>
        <translation>&amp;Profil wählen</translation>
    </message>
    <message>
        <source>The rules and limits that the layout is audited by</source>
        <translation>Die Regeln und Grenzwerte, nach denen das Layout geprüft wird</translation>
    </message>
    <message>
        <source>Profile fro&amp;m a file…</source>
        <translation>Profil aus einer &amp;Datei…</translation>
    </message>
    <message>
        <source>One of your own, beside the layout</source>
        <translation>Ein eigenes, neben dem Layout</translation>
    </message>
    <message>
        <source>File…</source>
        <translation>Datei…</translation>
    </message>
    <message>
        <source>Sa&amp;ve the rules as a profile file…</source>
        <translation>Re&amp;geln als Profildatei speichern…</translation>
    </message>
    <message>
        <source>All rules as they are kept here, for other layouts and the command line</source>
        <translation>Alle Regeln, wie sie hier gelten, für andere Layouts und die Befehlszeile</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>This rule is as the profile has it.</source>
        <translation>Diese Regel ist wie im Profil.</translation>
    </message>
    <message>
        <source>Choose a rule in the list first.</source>
        <translation>Zuerst in der Liste eine Regel wählen.</translation>
    </message>
    <message>
        <source>Type the reason: it takes the place of what the limit rested on.</source>
        <translation>Den Grund eingeben: Er tritt an die Stelle dessen, worauf der Grenzwert beruhte.</translation>
    </message>
    <message>
        <source>The reason is kept as soon as the rule is changed.</source>
        <translation>Der Grund wird behalten, sobald die Regel geändert ist.</translation>
    </message>
    <message>
        <source>Why is it otherwise here?</source>
        <translation>Warum ist es hier anders?</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Section</name>
    <message>
        <source>the workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werkstatt</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationModel</name>
    <message>
        <source>at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>in Griffweite</translation>
    </message>
    <message>
        <source>no way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kein Weg</translation>
    </message>
    <message>
        <source>none</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht vorhanden</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source> s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation> s</translation>
    </message>
    <message>
        <source>Without the run-down, which is not recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ohne die Nachlaufzeit, die nicht festgehalten ist.</translation>
    </message>
    <message>
        <source>From the first sign of trouble to rest: reaction, walk and run-down. A plus: the run-down is not recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vom ersten Anzeichen bis zum Stillstand: Reaktion, Weg und Nachlaufzeit. Ein Pluszeichen: Die Nachlaufzeit ist nicht festgehalten.</translation>
    </message>
    <message>
        <source>Station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplatz</translation>
    </message>
    <message>
        <source>State</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Nearest stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nächster Stopp</translation>
    </message>
    <message>
        <source>How it works</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bedienung</translation>
    </message>
    <message>
        <source>Walk</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Walk to phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zum Telefon</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lichte Breite</translation>
    </message>
    <message>
        <source>What changes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>%1, narrow</source>
        <translation>%1, eng</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationTable</name>
    <message>
        <source>Stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplätze</translation>
    </message>
    <message>
        <source>Every station with its nearest stop and phone. Enter goes there on the plan; a click on a heading sorts.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Jeder Arbeitsplatz mit seinem nächsten Stopp und Telefon. Eingabetaste führt im Plan dorthin; ein Klick auf eine Überschrift sortiert.</translation>
    </message>
    <message>
        <source>Search stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsplätze durchsuchen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kopie&amp;ren</translation>
    </message>
    <message>
        <source>The rows picked, or all of them, as text for a table or a letter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die ausgewählten Zeilen, oder alle, als Text für eine Tabelle oder einen Brief</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>All stations as a CSV file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Arbeitsplätze als CSV-Datei</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stand von eben</translation>
    </message>
    <message>
        <source>%1 of %2 stations</source>
        <translation>%1 von %2 Arbeitsplätzen</translation>
    </message>
    <message>
        <source>Copy the &amp;table of stations</source>
        <translation>&amp;Tabelle der Arbeitsplätze kopieren</translation>
    </message>
    <message>
        <source>E&amp;xport the table of stations…</source>
        <translation>Tabelle der Arbeitsplätze e&amp;xportieren…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+X</source>
        <translation>Ctrl+Shift+X</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translation>Noch nicht geprüft.</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>Stand von eben: Was seitdem geändert wurde, ist nicht enthalten.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::SupposePanel</name>
    <message>
        <source>Tick what might be otherwise, and see what it changes for whom. Nothing of it is saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ankreuzen, was anders sein könnte, und sehen, was sich für wen ändert. Nichts davon wird gespeichert.</translation>
    </message>
    <message>
        <source>The doors that are locked then are shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die dann verschlossenen Türen sind zu</translation>
    </message>
    <message>
        <source>What might be otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was anders sein könnte</translation>
    </message>
    <message>
        <source>Space ticks: a device out of order, a door shut. Enter opens the numbers of something in the way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Leertaste kreuzt an: ein Gerät außer Betrieb, eine Tür zu. Eingabetaste öffnet die Zahlen von etwas im Weg.</translation>
    </message>
    <message>
        <source>Search devices, phones and doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Geräte, Telefone und Türen suchen</translation>
    </message>
    <message>
        <source>A block on the floor: drag it on the plan, or type its numbers</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Klotz auf dem Boden: im Plan ziehen, oder seine Zahlen eintippen</translation>
    </message>
    <message>
        <source>&amp;Back to how it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück zu&amp;m Ist-Zustand</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>Shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>In the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Weg</translation>
    </message>
    <message>
        <source>After hou&amp;rs</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A&amp;ußerhalb der Betriebszeit</translation>
    </message>
    <message>
        <source>Put in the &amp;way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;In den Weg stellen</translation>
    </message>
    <message>
        <source>What is picked is out of &amp;order</source>
        <translation>Das Ausgewählte ist a&amp;ußer Betrieb</translation>
    </message>
    <message>
        <source>The stops and phones picked on the plan, all at once</source>
        <translation>Die im Plan ausgewählten Stopps und Telefone, alle auf einmal</translation>
    </message>
    <message>
        <source>The door that is picked is s&amp;hut</source>
        <translation>Die ausgewählte Tür ist &amp;zu</translation>
    </message>
    <message>
        <source>All doors picked on the plan, at once</source>
        <translation>Alle im Plan ausgewählten Türen auf einmal</translation>
    </message>
    <message>
        <source>&amp;Put something in the way</source>
        <translation>Etwas &amp;in den Weg stellen</translation>
    </message>
    <message>
        <source>Its place and size by &amp;numbers…</source>
        <translation>Platz und Größe in Za&amp;hlen…</translation>
    </message>
    <message>
        <source>Of what stands in the way</source>
        <translation>Von dem, was im Weg steht</translation>
    </message>
    <message>
        <source>Take it &amp;away</source>
        <translation>Wieder weg&amp;nehmen</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Was im Weg steht</translation>
    </message>
    <message>
        <source>Ta&amp;ke away</source>
        <translation>&amp;Wegnehmen</translation>
    </message>
    <message>
        <source>After ho&amp;urs</source>
        <translation>Außerha&amp;lb der Betriebszeit</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation>Ctrl+Shift+B</translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation>Ctrl+Shift+L</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Ctrl+Shift+K</translation>
    </message>
    <message>
        <source>Pick a stop or a phone on the plan first.</source>
        <translation>Zuerst im Plan einen Stopp oder ein Telefon auswählen.</translation>
    </message>
    <message>
        <source>Pick a door on the plan first.</source>
        <translation>Zuerst im Plan eine Tür auswählen.</translation>
    </message>
    <message>
        <source>Nothing is put in the way.</source>
        <translation>Nichts ist in den Weg gestellt.</translation>
    </message>
    <message>
        <source>Choose one of those in the way in the list first.</source>
        <translation>Zuerst in der Liste wählen, was im Weg steht.</translation>
    </message>
    <message>
        <source>Nothing is supposed.</source>
        <translation>Nichts ist angenommen.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ThingList</name>
    <message>
        <source>Things on the plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dinge im Plan</translation>
    </message>
    <message>
        <source>Everything on the plan. Enter goes there on the plan; the menu key has the rest.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alles im Plan. Eingabetaste führt im Plan dorthin; die Menütaste hat den Rest.</translation>
    </message>
    <message>
        <source>Search things by name or id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dinge nach Name oder Kennung suchen</translation>
    </message>
    <message>
        <source>Go to on plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Plan zeigen</translation>
    </message>
    <message>
        <source>Rename...</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umbenennen...</translation>
    </message>
    <message>
        <source>Move or turn by numbers...</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mit Zahlen verschieben oder drehen...</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Duplizieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Nothing is drawn yet. Choose a room in the gallery, and drag it on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch ist nichts gezeichnet. In der Galerie einen Raum wählen und im Plan aufziehen.</translation>
    </message>
    <message>
        <source>Nothing on the plan is called that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Im Plan heißt nichts so.</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stand von eben</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::WallChooser</name>
    <message>
        <source>outside</source>
        <translation>draußen</translation>
    </message>
    <message>
        <source>Wall %1 of %2, %3</source>
        <translation>Wand %1 von %2, %3</translation>
    </message>
    <message>
        <source>%1, with the door to %2</source>
        <translation>%1, mit der Tür nach %2</translation>
    </message>
    <message>
        <source>%1, with doors to %2</source>
        <translation>%1, mit Türen nach %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Where it han&amp;gs</source>
        <translation>Wo er hän&amp;gt</translation>
    </message>
    <message>
        <source>&amp;Choose the wall on the plan</source>
        <translation>Die &amp;Wand auf dem Plan wählen</translation>
    </message>
    <message>
        <source>Shows the plan of the room: click the wall where the poster is to hang</source>
        <translation>Zeigt den Plan des Raums: die Wand anklicken, an der der Aushang hängen soll</translation>
    </message>
    <message>
        <source>Wall that the poster hangs on</source>
        <translation>Wand, an der der Aushang hängt</translation>
    </message>
    <message>
        <source>Where most wall is free: wall %1</source>
        <translation>Wo am meisten Wand frei ist: Wand %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Why</name>
    <message>
        <source>Why this is a finding</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Warum das ein Befund ist</translation>
    </message>
    <message>
        <source>Pick a finding: its rule, limit, basis and what would mend it stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einen Befund auswählen: Hier stehen seine Regel, sein Grenzwert, seine Grundlage und was ihn behebt.</translation>
    </message>
    <message>
        <source>Measured:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gemessen:</translation>
    </message>
    <message>
        <source>Limit:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grenzwert:</translation>
    </message>
    <message>
        <source>To mend it:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abhilfe:</translation>
    </message>
    <message>
        <source>Rule:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regel:</translation>
    </message>
    <message>
        <source>What it means:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bedeutung:</translation>
    </message>
    <message>
        <source>Basis:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grundlage:</translation>
    </message>
    <message>
        <source>by %1 until %2: %3</source>
        <translation>von %1 bis %2: %3</translation>
    </message>
    <message>
        <source>Accepted:</source>
        <translation>Hingenommen:</translation>
    </message>
    <message>
        <source>Not accepted:</source>
        <translation>Nicht hingenommen:</translation>
    </message>
    <message>
        <source>what %1 accepts until %2 may be this finding or another of this rule about %3. To mean this one, the layout must say %4: accept it here, and it does.</source>
        <translation>Was %1 bis %2 hinnimmt, kann dieser Befund sein oder ein anderer dieser Regel zu %3. Damit dieser gemeint ist, muss im Layout %4 stehen: Ihn hier hinnehmen, dann steht es dort.</translation>
    </message>
    <message>
        <source>No longer accepted, %1:</source>
        <translation>Nicht mehr hingenommen, %1:</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::AuditMarks</name>
    <message>
        <source>and %1 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>A moment ago:</source>
        <translation>Vor einem Augenblick:</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::NumberEntry</name>
    <message>
        <source>%1: type a length such as 1.2 m, 900 mm or 4&apos; 6&quot;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: eine Länge eintippen, etwa 1.2 m, 900 mm oder 4&apos; 6&quot;</translation>
    </message>
    <message>
        <source>%1: type degrees such as 90</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: Grad eintippen, etwa 90</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::PlanView</name>
    <message>
        <source>Plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Plan</translation>
    </message>
    <message>
        <source>The plan of the workshop. The list of things beside it does the same by keyboard.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Plan der Werkstatt. Die Liste der Dinge daneben kann dasselbe mit der Tastatur.</translation>
    </message>
    <message>
        <source>This layout is open for looking only: nothing can be drawn.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dieses Layout ist nur zum Ansehen offen: Es lässt sich nichts zeichnen.</translation>
    </message>
    <message>
        <source>Release to put it there; Escape leaves it where it was.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Loslassen stellt es dort ab; Esc lässt es, wo es war.</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>what it is; what its last check came to</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1 Picked: %2</source>
        <translation>%1 Ausgewählt: %2</translation>
    </message>
    <message>
        <source>The walks of %1 more stations that are picked are not drawn.</source>
        <translation>Die Wege von %1 weiteren ausgewählten Arbeitsplätzen sind nicht gezeichnet.</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::ReachLayer</name>
    <message>
        <source>feet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>metres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Meter</translation>
    </message>
    <message>
        <source>Walk to the phone, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zum Telefon, %1</translation>
    </message>
    <message>
        <source>Walk to any stop, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zu irgendeinem Stopp, %1</translation>
    </message>
    <message>
        <source>Walk to a cut-off, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zu einem Not-Aus, %1</translation>
    </message>
    <message>
        <source>Walk to the stop of %1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weg zum Stopp von %1, %2</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>None can be walked to: something stands before it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Keines ist zu Fuß zu erreichen: Es steht etwas davor.</translation>
    </message>
    <message>
        <source>Striped: only through a gap under %1; not measured.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gestreift: nur durch eine Lücke unter %1; nicht gemessen.</translation>
    </message>
    <message>
        <source>Crossed: no way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gekreuzt: kein Weg.</translation>
    </message>
    <message>
        <source>There is no stop of this machine to walk to, or none that works.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt keinen Stopp dieser Maschine, zu dem man gehen kann, oder keinen, der funktioniert.</translation>
    </message>
    <message>
        <source>There is none in this layout, or none that works.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In diesem Layout gibt es keines, oder keines, das funktioniert.</translation>
    </message>
    <message>
        <source>%1+</source>
        <translation>%1+</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>Stand von eben: Was seitdem geändert wurde, ist nicht enthalten.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::BigButton</name>
    <message>
        <source>Key: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Taste: %1</translation>
    </message>
    <message>
        <source>No: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nein: %1</translation>
    </message>
    <message>
        <source>Key %1: once yes, twice no, three times not tried</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Taste %1: einmal ja, zweimal nein, dreimal nicht getestet</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Taste %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::CheckCard</name>
    <message>
        <source>All rounds</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Kontrollgänge</translation>
    </message>
    <message>
        <source>Previous device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Voriges Gerät</translation>
    </message>
    <message>
        <source>Next device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nächstes Gerät</translation>
    </message>
    <message>
        <source>Devices checked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollierte Geräte</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Second person</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zweite Person</translation>
    </message>
    <message>
        <source>where one must be there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>wo eine dabei sein muss</translation>
    </message>
    <message>
        <source>Record (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eintragen (Enter)</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Karte: %1</translation>
    </message>
    <message>
        <source>Being written…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wird geschrieben…</translation>
    </message>
    <message>
        <source>Done on paper on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf Papier erledigt am</translation>
    </message>
    <message>
        <source>empty: now; else as 2026-03-02 09:15</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>leer: jetzt; sonst wie 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>Record as of %1 (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eintragen zum %1 (Enter)</translation>
    </message>
    <message>
        <source>H</source>
        <comment>the key for: all checks of this device</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>H</translation>
    </message>
    <message>
        <source>Round %1 of %2: %3 checked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang %1 von %2: %3 kontrolliert</translation>
    </message>
    <message>
        <source>Inspected by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrolliert von</translation>
    </message>
    <message>
        <source>name: the check bears it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Name: die Kontrolle trägt ihn</translation>
    </message>
    <message>
        <source>With a pass, what was done and what is still to be done is not recorded: put it into the note if it holds.</source>
        <translation>Mit „bestanden“ wird nicht eingetragen, was getan wurde und was noch zu tun ist: Gilt es noch, gehört es in die Notiz.</translation>
    </message>
    <message>
        <source>Record that it was taken away (Enter)</source>
        <translation>Eintragen, dass es entfernt wurde (Enter)</translation>
    </message>
    <message>
        <source>empty: now; else a time as 09:15, or 2026-03-02 09:15</source>
        <translation>leer: jetzt; sonst Zeit wie 09:15 oder 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>T</source>
        <comment>the key for: the time on paper</comment>
        <translation>Z</translation>
    </message>
    <message>
        <source>T&amp;ime the run-down</source>
        <translation>Nachlaufzeit &amp;messen</translation>
    </message>
    <message>
        <source>&amp;Give the time on paper</source>
        <translation>&amp;Uhrzeit vom Papier eingeben</translation>
    </message>
    <message>
        <source>When it was done, if it is entered from paper.</source>
        <translation>Wann es getan wurde, wenn es vom Papier eingegeben wird.</translation>
    </message>
    <message>
        <source>The check is being written.</source>
        <translation>Die Kontrolle wird geschrieben.</translation>
    </message>
    <message>
        <source>The device is no longer on the plan.</source>
        <translation>Das Gerät ist nicht mehr auf dem Plan.</translation>
    </message>
    <message>
        <source>A stop is asked for each of that by itself.</source>
        <translation>Bei einem Stopp wird nach jedem davon einzeln gefragt.</translation>
    </message>
    <message>
        <source>It stops nothing: it is only looked at.</source>
        <translation>Es stoppt nichts: Es wird nur angesehen.</translation>
    </message>
    <message>
        <source>At rest: stop th&amp;e clock</source>
        <translation>Stillstand: Uhr &amp;anhalten</translation>
    </message>
    <message>
        <source>All runs are timed.</source>
        <translation>Alle Messungen sind gemacht.</translation>
    </message>
    <message>
        <source>Key: %1</source>
        <translation>Taste: %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Counting</name>
    <message>
        <source>not counted: %1</source>
        <translation>zählt nicht: %1</translation>
    </message>
    <message>
        <source>only looked at</source>
        <translation>nur angesehen</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
    <message>
        <source>leaves the failure open: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>lässt den Mangel offen: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; </translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::CountsFor</name>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>not ticked: %1</source>
        <translation>nicht angekreuzt: %1</translation>
    </message>
    <message>
        <source>Recorded like this, it stays failed: %1.</source>
        <translation>So eingetragen bleibt der Mangel offen: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, the device stays due for: %1, %2.</source>
        <translation>So eingetragen bleibt am Gerät fällig: %1, %2.</translation>
    </message>
    <message>
        <source>It counts as no test.</source>
        <translation>Es zählt nicht als Test.</translation>
    </message>
    <message>
        <source>It counts as: %1.</source>
        <translation>Es zählt als: %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what is due; what was not ticked</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Recorded like this, the device becomes due for: %1.</source>
        <translation>So eingetragen wird am Gerät fällig: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, it does not count: %1.</source>
        <translation>So eingetragen zählt es nicht: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, the device stays due for: %1, as the check is of %2.</source>
        <translation>So eingetragen bleibt am Gerät fällig: %1, denn die Prüfung ist vom %2.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::DeviceHistory</name>
    <message>
        <source>%1 (%2 runs)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2 Messungen)</translation>
    </message>
    <message>
        <source>not so: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nicht so: %1</translation>
    </message>
    <message>
        <source>to be done: %1, by %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>zu tun: %1, durch %2</translation>
    </message>
    <message>
        <source>A correction is a record of its own; the old one stays as it was written.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Berichtigung ist ein eigener Eintrag; der alte bleibt, wie er geschrieben wurde.</translation>
    </message>
    <message>
        <source>Checks of the device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollen des Geräts</translation>
    </message>
    <message>
        <source>Result</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>When</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit</translation>
    </message>
    <message>
        <source>What was found</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was festgestellt wurde</translation>
    </message>
    <message>
        <source>%1: no check is recorded yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: noch ist keine Kontrolle eingetragen.</translation>
    </message>
    <message>
        <source>%1: 1 check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: 1 Kontrolle</translation>
    </message>
    <message>
        <source>%1: %2 checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 Kontrollen</translation>
    </message>
    <message>
        <source>%1 (corrected by %2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (berichtigt durch %2)</translation>
    </message>
    <message>
        <source>%1 (in place of %2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (anstelle von %2)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1, entered %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, eingetragen %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>Correct this check… (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese Kontrolle berichtigen… (Enter)</translation>
    </message>
    <message>
        <source>%1, written %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, geschrieben %2</translation>
    </message>
    <message>
        <source>machine tagged out by %1</source>
        <translation>Sperranhänger an der Maschine durch %1</translation>
    </message>
    <message>
        <source>no readable time</source>
        <translation>keine lesbare Zeit</translation>
    </message>
    <message>
        <source>Correct the chec&amp;k that is picked…</source>
        <translation>Die ausgewählte &amp;Kontrolle berichtigen…</translation>
    </message>
    <message>
        <source>Pick a check of the device, below the plan, first.</source>
        <translation>Zuerst unter dem Plan eine Kontrolle des Geräts auswählen.</translation>
    </message>
    <message>
        <source>It was corrected already: correct the one in its place.</source>
        <translation>Sie ist schon berichtigt: die berichtigen, die an ihre Stelle trat.</translation>
    </message>
    <message>
        <source>%1 (1 run)</source>
        <translation>%1 (1 Messung)</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Drafts</name>
    <message>
        <source>not so: %1</source>
        <translation>nicht so: %1</translation>
    </message>
    <message>
        <source>second person %1</source>
        <translation>zweite Person %1</translation>
    </message>
    <message>
        <source>an earlier day</source>
        <translation>(früherer Tag)</translation>
    </message>
    <message>
        <source>Entered on %1 without a name, not recorded</source>
        <translation>Eingegeben am %1 ohne Namen, nicht eingetragen</translation>
    </message>
    <message>
        <source>Entered on %1 by %2, not recorded</source>
        <translation>Eingegeben am %1 von %2, nicht eingetragen</translation>
    </message>
    <message>
        <source>%1: what stands in the lines below.</source>
        <translation>%1: was unten in den Zeilen steht.</translation>
    </message>
    <message>
        <source>%1: %2. What you try and find yourself is to be chosen; the lines below stay.</source>
        <translation>%1: %2. Was selbst getestet und festgestellt wird, ist neu zu wählen; die Zeilen unten bleiben.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::DuePage</name>
    <message>
        <source>What is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>What is to be inspected, failed devices first, then by room. The one picked is shown on the plan, its checks below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was zu kontrollieren ist, zuerst was nicht bestanden hat, dann nach Raum. Das gewählte Gerät wird auf dem Plan gezeigt, seine Kontrollen darunter.</translation>
    </message>
    <message>
        <source>Rounds not finished</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht beendete Kontrollgänge</translation>
    </message>
    <message>
        <source>Start a round…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang beginnen…</translation>
    </message>
    <message>
        <source>Continue the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang fortsetzen</translation>
    </message>
    <message>
        <source>Save the layout…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Layout speichern…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Save the layout, then start</source>
        <translation>Layout speichern, dann beginnen</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::FailureForm</name>
    <message>
        <source>It stays failed, on the plan and in the audit, until it passes a check of its own. Take the machine out of use as the shop&apos;s procedure says.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gilt als nicht bestanden, auf dem Plan und in der Prüfung, bis es eine eigene Kontrolle besteht. Die Maschine außer Betrieb nehmen, wie es die Anweisung der Werkstatt vorgibt.</translation>
    </message>
    <message>
        <source>Machine tagged out by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sperranhänger durch</translation>
    </message>
    <message>
        <source>name; empty: it is not</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Name; leer: keiner</translation>
    </message>
    <message>
        <source>What else was done at once</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was sonst sofort getan wurde</translation>
    </message>
    <message>
        <source>What is still to be done</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was noch zu tun ist</translation>
    </message>
    <message>
        <source>Who does it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wer es tut</translation>
    </message>
    <message>
        <source>Until when</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bis wann</translation>
    </message>
    <message>
        <source>a day, as 2026-03-02</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ein Tag wie 2026-03-02</translation>
    </message>
    <message>
        <source>Tagged out until</source>
        <translation>Sperranhänger bis</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::OnPaper</name>
    <message>
        <source>The clocks here were put forward over that time: type it with its zone, as +01:00.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Über diese Zeit wurden hier die Uhren vorgestellt: mit Zeitzone angeben, wie +01:00.</translation>
    </message>
    <message>
        <source>The clocks here showed that time twice: type it as %1 or as %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese Zeit zeigten die Uhren hier zweimal: als %1 oder als %2 angeben.</translation>
    </message>
    <message>
        <source>That is before the round was begun, %1. A round that was walked on paper earlier is started with its own day and time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das ist vor dem Beginn des Kontrollgangs, %1. Ein früher auf Papier gegangener Kontrollgang wird mit seinem eigenen Tag und seiner Uhrzeit begonnen.</translation>
    </message>
    <message>
        <source>%1 %2: that is still to come.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2: Das kommt erst noch.</translation>
    </message>
    <message>
        <source>a time as 09:15, or with its day as 2026-03-02 09:15, is expected</source>
        <translation>erwartet wird eine Zeit wie 09:15 oder mit ihrem Tag wie 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>a day and a time are expected as 2026-03-02 09:15</source>
        <translation>erwartet werden Tag und Zeit wie 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>%1 %2: %3.</source>
        <translation>%1 %2: %3.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::OnPlan</name>
    <message>
        <source>today</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>%1 d</source>
        <comment>days</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Tg.</translation>
    </message>
    <message>
        <source>%1 mo</source>
        <comment>months</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Mon.</translation>
    </message>
    <message>
        <source>%1 y</source>
        <comment>years</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 J.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>passed; a day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1, next due on %2</source>
        <comment>half of its time gone; a day</comment>
        <translation>%1, nächste fällig am %2</translation>
    </message>
    <message>
        <source>Last check: %1; %2.</source>
        <translation>Letzte Kontrolle: %1; %2.</translation>
    </message>
    <message>
        <source>No. %1 of this round: %2.</source>
        <translation>Nr. %1 dieses Kontrollgangs: %2.</translation>
    </message>
    <message>
        <source>not checked yet</source>
        <translation>noch nicht kontrolliert</translation>
    </message>
    <message>
        <source>In this round</source>
        <translation>In diesem Kontrollgang</translation>
    </message>
    <message>
        <source>%1 It does not count in full: %2.</source>
        <translation>%1 Es zählt nicht ganz: %2.</translation>
    </message>
    <message>
        <source>%1 Still due: %2.</source>
        <translation>%1 Noch fällig: %2.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::OpenFailure</name>
    <message>
        <source>Failed on %1 (check %2): it stays failed until it passes a check of its own, made by another person than %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden am %1 (Kontrolle %2): Das bleibt so, bis es eine eigene Kontrolle besteht, die jemand anders als %3 macht.</translation>
    </message>
    <message>
        <source>Failed on %1 (check %2): it stays failed until it passes a check of its own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht bestanden am %1 (Kontrolle %2): Das bleibt so, bis es eine eigene Kontrolle besteht.</translation>
    </message>
    <message>
        <source>Failed since %1. %2</source>
        <translation>Nicht bestanden seit %1. %2</translation>
    </message>
    <message>
        <source>It still counts as failed: by the times given, or as the records are not as they were written, it is not sure that it was taken away after check %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gilt weiter als nicht bestanden: Nach den angegebenen Zeiten, oder weil die Aufzeichnungen nicht mehr so sind, wie sie geschrieben wurden, ist nicht sicher, dass es nach Kontrolle %1 entfernt wurde.</translation>
    </message>
    <message>
        <source>It is still failed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gilt weiter als nicht bestanden: %1.</translation>
    </message>
    <message>
        <source>Failed on %1 (check %2), found by somebody whose name cannot be read: it stays failed until it passes two checks of its own, made by two different people.</source>
        <translation>Nicht bestanden am %1 (Kontrolle %2), gefunden von jemandem, dessen Name nicht zu lesen ist: Das bleibt so, bis es zwei eigene Kontrollen besteht, die zwei verschiedene Personen machen.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Reasons</name>
    <message>
        <source>the records are not as they were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Aufzeichnungen sind nicht mehr, wie sie geschrieben wurden</translation>
    </message>
    <message>
        <source>it is dated, or was entered, on a day that is still to come</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Tag der Kontrolle oder des Eintragens kommt erst noch</translation>
    </message>
    <message>
        <source>it did not test %1, which the device stops now</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht mitgetestet wurde, was das Gerät jetzt stoppt: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>a correction undoes no failure</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Berichtigung hebt keinen Mangel auf</translation>
    </message>
    <message>
        <source>it was not pressed, or did not stay in, or what it stops did not stop or stay stopped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es wurde nicht betätigt oder blieb nicht eingerastet, oder was es stoppt, kam nicht zum Stillstand oder blieb nicht stehen</translation>
    </message>
    <message>
        <source>this check counts for nothing: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese Kontrolle zählt nicht: %1</translation>
    </message>
    <message>
        <source>by the times given it is not sure that this was after check %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nach den angegebenen Zeiten ist nicht sicher, dass dies nach Kontrolle %1 war</translation>
    </message>
    <message>
        <source>another person than %1, who found it, is to pass it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hat den Mangel gefunden; bestehen muss es die Kontrolle einer anderen Person</translation>
    </message>
    <message>
        <source>it does not say that it was looked at</source>
        <translation>Dass es angesehen wurde, ist nicht gesagt</translation>
    </message>
    <message>
        <source>it did not test %1</source>
        <translation>Nicht mitgetestet wurde: %1</translation>
    </message>
    <message>
        <source>it does not end as a record does</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie endet nicht wie ein Eintrag</translation>
    </message>
    <message>
        <source>it was changed after it was written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie wurde geändert, nachdem sie geschrieben war</translation>
    </message>
    <message>
        <source>what it says is no record of this format, or more than one</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was darin steht, ist kein Eintrag dieses Formats oder mehr als einer</translation>
    </message>
    <message>
        <source>lines before it were changed, removed, put in or moved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeilen davor wurden geändert, entfernt, eingefügt oder verschoben</translation>
    </message>
    <message>
        <source>the line break behind it is missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Zeilenumbruch dahinter fehlt</translation>
    </message>
    <message>
        <source>it was made before the device was recorded as taken away</source>
        <translation>Die Kontrolle war, bevor eingetragen wurde, dass das Gerät entfernt ist</translation>
    </message>
    <message>
        <source>the file was rewritten by a formatter: one record a line is expected; take the file back from a copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei wurde von einem Formatierer umgeschrieben: erwartet wird ein Eintrag je Zeile; die Datei aus einer Kopie zurückholen</translation>
    </message>
    <message>
        <source>the file was saved as UTF-16: one record a line is expected, as UTF-8; take the file back from a copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei wurde als UTF-16 gespeichert: erwartet wird ein Eintrag je Zeile, als UTF-8; die Datei aus einer Kopie zurückholen</translation>
    </message>
    <message>
        <source>it was found by somebody whose name cannot be read: two different people are to pass it, in a check each</source>
        <translation>den Mangel hat jemand gefunden, dessen Name nicht zu lesen ist; bestehen muss es je eine Kontrolle zweier verschiedener Personen</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::ResultChoice</name>
    <message>
        <source>P</source>
        <comment>the key for: pass</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>B</translation>
    </message>
    <message>
        <source>F</source>
        <comment>the key for: fail</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>N</translation>
    </message>
    <message>
        <source>N</source>
        <comment>the key for: not tested</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>G</translation>
    </message>
    <message>
        <source>R</source>
        <comment>the key for: could not reach</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>E</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::RunDownFields</name>
    <message>
        <source>Run-down, seconds</source>
        <translation>Nachlaufzeit, Sekunden</translation>
    </message>
    <message>
        <source>Run %1, seconds</source>
        <translation>Nachlaufzeit %1, Sekunden</translation>
    </message>
    <message>
        <source>%1 of %2, mean %3</source>
        <translation>%1 von %2, Mittel %3</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::RunDownTimer</name>
    <message>
        <source>At rest: stop the clock (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stillstand: Uhr anhalten (Leertaste)</translation>
    </message>
    <message>
        <source>All %1 runs are timed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle %1 Messungen sind gemacht</translation>
    </message>
    <message>
        <source>Time the run-down (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachlaufzeit messen (Leertaste)</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Time one now, dated by the paper (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Jetzt messen, Zeit des Papiers (Leertaste)</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::StartForm</name>
    <message>
        <source>Who walks the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wer den Kontrollgang macht</translation>
    </message>
    <message>
        <source>your name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>eigener Name</translation>
    </message>
    <message>
        <source>Over what</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>One room:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Raum:</translation>
    </message>
    <message>
        <source>Room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>What is due: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was fällig ist: %1</translation>
    </message>
    <message>
        <source>All devices: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Geräte: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Being written…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wird geschrieben…</translation>
    </message>
    <message>
        <source>Start the round (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang beginnen (Enter)</translation>
    </message>
    <message>
        <source>Walked on paper on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auf Papier gegangen am</translation>
    </message>
    <message>
        <source>empty: it is walked now; else as 2026-03-02 09:15</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>leer: wird jetzt gegangen; sonst wie 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>What is entered is kept; a round can be stopped and continued at any time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was eingetragen ist, bleibt erhalten; ein Kontrollgang kann jederzeit unterbrochen und fortgesetzt werden.</translation>
    </message>
    <message>
        <source>Sheet on paper…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Blatt auf Papier…</translation>
    </message>
    <message>
        <source>Saves the sheet to walk this round with as PDF, and opens no round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Speichert das Blatt für diesen Kontrollgang als PDF und eröffnet keinen Kontrollgang.</translation>
    </message>
    <message>
        <source>only what is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nur Fälliges</translation>
    </message>
    <message>
        <source>Doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Türen</translation>
    </message>
    <message>
        <source>Doors as in opening hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Türen wie in der Betriebszeit</translation>
    </message>
    <message>
        <source>Doors as after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Türen wie außerhalb der Betriebszeit</translation>
    </message>
    <message>
        <source>back to the beginning</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>zum Anfang zurück</translation>
    </message>
    <message>
        <source>Where the walk begins</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo der Weg beginnt</translation>
    </message>
    <message>
        <source>Begins wherever the walk is shortest</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Beginnt, wo der Weg am kürzesten wird</translation>
    </message>
    <message>
        <source>Begins at: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Beginnt bei: %1</translation>
    </message>
    <message>
        <source>The shortest walk is being sought…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der kürzeste Weg wird gesucht…</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::AuditPlace</name>
    <message>
        <source>It changes nothing for any station.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ändert für keinen Arbeitsplatz etwas.</translation>
    </message>
    <message>
        <source>1 station worse off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Arbeitsplatz schlechter gestellt</translation>
    </message>
    <message>
        <source>%1 stations worse off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Arbeitsplätze schlechter gestellt</translation>
    </message>
    <message>
        <source>1 station better off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Arbeitsplatz besser gestellt</translation>
    </message>
    <message>
        <source>%1 stations better off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Arbeitsplätze besser gestellt</translation>
    </message>
    <message>
        <source>1 station otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Arbeitsplatz anders gestellt</translation>
    </message>
    <message>
        <source>%1 stations otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Arbeitsplätze anders gestellt</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>What the audit found, and what if</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was die Prüfung fand, und was wäre wenn</translation>
    </message>
    <message>
        <source>Findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>What if</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was wäre wenn</translation>
    </message>
    <message>
        <source>Rules</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Holds a drawing against chosen rules; certifies nothing. Local codes, the maker and licensed people come first. Never rely on a stop as a guard. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vergleicht eine Zeichnung mit gewählten Regeln; bescheinigt nichts. Örtliche Vorschriften, Hersteller und zugelassene Fachleute gehen vor. Sich nie auf einen Stopp als Schutzeinrichtung verlassen. &lt;a href=&quot;#&quot;&gt;Mehr&lt;/a&gt;</translation>
    </message>
    <message>
        <source>1 new finding</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 neuer Befund</translation>
    </message>
    <message>
        <source>%1 new findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 neue Befunde</translation>
    </message>
    <message>
        <source>1 finding gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Befund weniger</translation>
    </message>
    <message>
        <source>%1 findings gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Befunde weniger</translation>
    </message>
    <message>
        <source>What if %1? Not as the workshop is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was wäre, wenn %1? Nicht so, wie die Werkstatt ist.</translation>
    </message>
    <message>
        <source>1 rule is off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 Regel ist abgeschaltet</translation>
    </message>
    <message>
        <source>%1 rules are off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Regeln sind abgeschaltet</translation>
    </message>
    <message>
        <source>The layout&apos;s own profile is not used</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das eigene Profil des Layouts wird nicht verwendet</translation>
    </message>
    <message>
        <source>Of a moment ago: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stand von eben: %1</translation>
    </message>
    <message>
        <source>The inspection records cannot be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen lassen sich nicht lesen</translation>
    </message>
    <message>
        <source>The inspection records are not as they were read before</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen sind nicht mehr so, wie sie gelesen wurden</translation>
    </message>
    <message>
        <source>The inspection records are not all as they were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen sind nicht alle so, wie sie geschrieben wurden</translation>
    </message>
    <message>
        <source>1 finding changed</source>
        <translation>1 Befund geändert</translation>
    </message>
    <message>
        <source>%1 findings changed</source>
        <translation>%1 Befunde geändert</translation>
    </message>
    <message>
        <source>Look at the &amp;findings</source>
        <translation>&amp;Befunde ansehen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>How findings are &amp;listed</source>
        <translation>Wie Befunde &amp;aufgeführt sind</translation>
    </message>
    <message>
        <source>Look at the table of &amp;stations</source>
        <translation>Tabelle der Arbeitsplätze an&amp;sehen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Look at &amp;what if</source>
        <translation>&amp;Was wäre wenn ansehen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Colour the floor b&amp;y</source>
        <translation>Boden &amp;färben nach</translation>
    </message>
    <message>
        <source>Look at the &amp;rules</source>
        <translation>&amp;Regeln ansehen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>and %1 more, in the table</source>
        <translation>und %1 weitere, in der Tabelle</translation>
    </message>
    <message>
        <source>The file of inspection records is empty</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei der Kontrollaufzeichnungen ist leer</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::Document</name>
    <message>
        <source>New layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Neues Layout</translation>
    </message>
    <message>
        <source>New workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Neue Werkstatt</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FileFlow</name>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>the profile %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>das Profil %1</translation>
    </message>
    <message>
        <source>the picture %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>das Bild %1</translation>
    </message>
    <message>
        <source>%1-copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1-kopie</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>OK</translation>
    </message>
    <message>
        <source>%1 is open elsewhere</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist anderswo offen</translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 arbeitet daran. Wenn zwei einander überschreiben, geht Arbeit verloren.</translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nur zum Ansehen öffnen</translation>
    </message>
    <message>
        <source>Take it over</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Do not open it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht öffnen</translation>
    </message>
    <message>
        <source>%1 could not be opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>The shop&apos;s own files beside it could not be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die eigenen Dateien der Werkstatt daneben sind nicht lesbar</translation>
    </message>
    <message>
        <source>The kinds of device and machines that come with the program are used instead.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stattdessen werden die Gerätearten und Maschinen benutzt, die mit dem Programm kommen.</translation>
    </message>
    <message>
        <source>Go back to the file as it was saved?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück zur Datei, wie sie gespeichert wurde?</translation>
    </message>
    <message>
        <source>What was changed since then is lost.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was seither geändert wurde, geht verloren.</translation>
    </message>
    <message>
        <source>Keep working</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>Go back to the file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück zur Datei</translation>
    </message>
    <message>
        <source>%1 is open for looking only</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist nur zum Ansehen offen</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern</translation>
    </message>
    <message>
        <source>%1 was taken over by somebody else</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hat jemand anders übernommen</translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work. Ask there before you take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 arbeitet daran. Wenn zwei einander überschreiben, geht Arbeit verloren. Vor dem Übernehmen dort fragen.</translation>
    </message>
    <message>
        <source>The layout could not be opened in that folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>In jenem Ordner ließe sich das Layout nicht öffnen</translation>
    </message>
    <message>
        <source>It uses the shop&apos;s own kinds of device (%1). Copy device-kinds.yaml there first, or save in another folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es benutzt eigene Gerätearten der Werkstatt (%1). Erst device-kinds.yaml dorthin kopieren, oder in einem anderen Ordner speichern.</translation>
    </message>
    <message>
        <source>the shop&apos;s own kinds and machines, which cannot be read there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>die eigenen Arten und Maschinen der Werkstatt, die dort nicht lesbar sind</translation>
    </message>
    <message>
        <source>Not everything that the layout uses is in that folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht alles, was das Layout benutzt, ist in jenem Ordner</translation>
    </message>
    <message>
        <source>Missing there: %1. Copy it there as well, or the layout is shown and audited without it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dort fehlt: %1. Es auch dorthin kopieren, sonst wird das Layout ohne dies gezeigt und geprüft.</translation>
    </message>
    <message>
        <source>Save it there all the same</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Trotzdem dort speichern</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Saved, but perhaps not for good</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gespeichert, aber vielleicht nicht dauerhaft</translation>
    </message>
    <message>
        <source>%1 was changed by someone else</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hat jemand anders geändert</translation>
    </message>
    <message>
        <source>%1 is there already</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist schon da</translation>
    </message>
    <message>
        <source>Replace what is there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ersetzen, was da ist</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Änderungen an %1 speichern?</translation>
    </message>
    <message>
        <source>Without saving, they are lost.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ohne Speichern gehen sie verloren.</translation>
    </message>
    <message>
        <source>Save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Throw away the work that was kept?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die gesicherte Arbeit wegwerfen?</translation>
    </message>
    <message>
        <source>It was never saved, and cannot be brought back afterwards. %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie wurde nie gespeichert und lässt sich danach nicht zurückholen. %1</translation>
    </message>
    <message>
        <source>%1 stays as it is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>The kept work is still there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die gesicherte Arbeit ist noch da</translation>
    </message>
    <message>
        <source>%1 is write-protected</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist schreibgeschützt</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FirstMinutes</name>
    <message>
        <source>Begin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anfangen</translation>
    </message>
    <message>
        <source>Draw a first room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einen ersten Raum zeichnen</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>&amp;Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Tiefe</translation>
    </message>
    <message>
        <source>Draw the room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Den Raum zeichnen</translation>
    </message>
    <message>
        <source>Inside, from wall to wall: 8 m, 7500 mm or 24&apos; 6&quot;. It can be changed at any time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Innen, von Wand zu Wand: 8 m, 7500 mm oder 24&apos; 6&quot;. Das lässt sich jederzeit ändern.</translation>
    </message>
    <message>
        <source>Or look at a sample</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Oder ein Beispiel ansehen</translation>
    </message>
    <message>
        <source>Or go on with a file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Oder mit einer Datei weitermachen</translation>
    </message>
    <message>
        <source>Open a layout…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Layout öffnen…</translation>
    </message>
    <message>
        <source>Type a length from 0.1 m to 1000 m, such as 8 m, 7500 mm or 24&apos; 6&quot;.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Länge von 0.1 m bis 1000 m eintippen, etwa 8 m, 7500 mm oder 24&apos; 6&quot;.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::InspectPlace</name>
    <message>
        <source>Test a stop only as its maker and the shop&apos;s procedure say, with the work clear. A record certifies nothing. Local codes, the maker and licensed people come first. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einen Stopp nur so testen, wie es der Hersteller und die Anweisung der Werkstatt vorgeben, und nur, wenn kein Werkzeug im Eingriff ist. Ein Eintrag bescheinigt nichts. Örtliche Vorschriften, Hersteller und zugelassene Fachleute gehen vor. &lt;a href=&quot;#&quot;&gt;Mehr&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Save the layout first: inspection records stand beside its file.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zuerst das Layout speichern: Kontrollaufzeichnungen stehen neben seiner Datei.</translation>
    </message>
    <message>
        <source>The inspection records cannot be read, and nothing is added to them: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen können nicht gelesen werden, und nichts kommt dazu: %1.</translation>
    </message>
    <message>
        <source>The layout is not in its file as it is here. Save it first (Ctrl+S): a check names the layout that it was made by.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Layout steht nicht so in seiner Datei wie hier. Zuerst speichern (Ctrl+S): eine Kontrolle nennt das Layout, nach dem sie gemacht wurde.</translation>
    </message>
    <message>
        <source>The plan is just being read. Try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Plan wird gerade gelesen. Erneut versuchen.</translation>
    </message>
    <message>
        <source>There is no stop device on the plan yet. Draw one (Alt+1): what is due stands here then.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ist noch kein Stoppgerät auf dem Plan. Eines zeichnen (Alt+1): dann steht hier, was fällig ist.</translation>
    </message>
    <message>
        <source>Type who walks the round: it stands on every check.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eingeben, wer den Kontrollgang macht: es steht auf jeder Kontrolle.</translation>
    </message>
    <message>
        <source>There is no device that is due.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ist kein Gerät fällig.</translation>
    </message>
    <message>
        <source>The device is no longer on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Gerät ist nicht mehr auf dem Plan.</translation>
    </message>
    <message>
        <source>Recorded as %1: %2, %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eingetragen als %1: %2, %3.</translation>
    </message>
    <message>
        <source>%1 All devices of this round are checked.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Alle Geräte dieses Kontrollgangs sind kontrolliert.</translation>
    </message>
    <message>
        <source>&amp;What is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Was fällig ist</translation>
    </message>
    <message>
        <source>&amp;Start a round…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang &amp;beginnen…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>&amp;Continue the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang &amp;fortsetzen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>&amp;Next device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Nächstes Gerät</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Voriges Gerät</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Record the check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrolle &amp;eintragen</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>That check is of no round that lists its device: correct it on the command line.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese Kontrolle gehört zu keinem Kontrollgang, der ihr Gerät nennt: auf der Befehlszeile berichtigen.</translation>
    </message>
    <message>
        <source>Pick a stop device that was checked: its checks stand below the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Gerät wählen, das schon kontrolliert wurde: seine Kontrollen stehen unter dem Plan.</translation>
    </message>
    <message>
        <source>Corrects check %1. That one stays in the records as it was written. Escape leaves it uncorrected.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Berichtigt Kontrolle %1. Jene bleibt in den Aufzeichnungen, wie sie geschrieben wurde. Esc lässt sie unberichtigt.</translation>
    </message>
    <message>
        <source>%1 A correction undoes no failure: only a check of its own that passes does.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Eine Berichtigung hebt keinen Mangel auf: das tut nur eine eigene bestandene Kontrolle.</translation>
    </message>
    <message>
        <source>C&amp;hecks of the device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollen des &amp;Geräts</translation>
    </message>
    <message>
        <source>Ctrl+Shift+H</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+H</translation>
    </message>
    <message>
        <source>The clock was still running: that run is not kept.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Uhr lief noch: diese Messung wird nicht behalten.</translation>
    </message>
    <message>
        <source>The clock is still running: stop it (Space) once all is at rest. A wrong run can be dropped.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Uhr läuft noch: anhalten (Leertaste), sobald alles stillsteht. Eine falsche Messung lässt sich streichen.</translation>
    </message>
    <message>
        <source>Type in &quot;Inspected by&quot; who made this check: it bears that name for good.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter „Kontrolliert von“ eintragen, wer diese Kontrolle gemacht hat: Sie trägt diesen Namen auf Dauer.</translation>
    </message>
    <message>
        <source>Inspection records that were read here are no longer there as they were: nothing is added to their rounds. Put them back, or start a round anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollaufzeichnungen, die hier gelesen wurden, sind nicht mehr da, wie sie waren: Ihren Kontrollgängen wird nichts hinzugefügt. Sie zurücklegen oder einen Kontrollgang neu beginnen.</translation>
    </message>
    <message>
        <source>A check is still being written. Try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Kontrolle wird noch geschrieben. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>A check is still being written. What is entered here is kept; try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine Kontrolle wird noch geschrieben. Was hier eingegeben ist, bleibt; noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The devices to inspect could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die zu kontrollierenden Geräte konnten nicht berechnet werden: %1.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt kein Gerät zu kontrollieren.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No round lists that device: say on the command line that it was taken away.</source>
        <translation>Kein Kontrollgang führt dieses Gerät: Auf der Befehlszeile sagen, dass es entfernt wurde.</translation>
    </message>
    <message>
        <source>If it was taken away, press Enter once more. What it failed, and what is still to be done at it, is then no longer asked for. If it only has another id now, leave it.</source>
        <translation>Wurde es entfernt, noch einmal die Eingabetaste drücken. Was es nicht bestand und was daran noch zu tun ist, wird dann nicht mehr verlangt. Hat es jetzt nur eine andere Kennung, es so lassen.</translation>
    </message>
    <message>
        <source>taken away</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>Inspection records that were read here are no longer there as they were: put them back. Enter once more starts a round without them.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollaufzeichnungen, die hier gelesen wurden, sind nicht mehr da, wie sie waren: sie zurücklegen. Noch einmal die Eingabetaste beginnt einen Kontrollgang ohne sie.</translation>
    </message>
    <message>
        <source>%1 Failed only by them: %2. That is then forgotten once the layout is closed, unless it is checked in this round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Nur nach ihnen nicht bestanden: %2. Das ist vergessen, sobald das Layout geschlossen wird, außer es wird in diesem Kontrollgang kontrolliert.</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>That it was taken away is recorded already.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dass es entfernt wurde, ist schon eingetragen.</translation>
    </message>
    <message>
        <source>The settings of this computer cannot be written: what is entered here is lost if it is not recorded before the program ends.</source>
        <translation>Die Einstellungen dieses Rechners lassen sich nicht schreiben: Was hier eingegeben ist, geht verloren, wenn es nicht eingetragen wird, bevor das Programm endet.</translation>
    </message>
    <message>
        <source>Round %1, %2, %3: %4 of %5 checked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollgang %1, %2, %3: %4 von %5 kontrolliert</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>where; no way leads there</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Of so many devices the shortest walk is sought when the round is started, and that takes its time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bei so vielen Geräten wird der kürzeste Weg gesucht, wenn der Kontrollgang beginnt; das dauert eine Weile.</translation>
    </message>
    <message>
        <source>The walk could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Weg konnte nicht berechnet werden: %1.</translation>
    </message>
    <message>
        <source>Nobody can stand where the walk is to begin: choose another place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo der Weg beginnen soll, kann niemand stehen: einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>Start a round, or continue one, first.</source>
        <translation>Zuerst einen Kontrollgang beginnen oder einen fortsetzen.</translation>
    </message>
    <message>
        <source>Of before</source>
        <comment>signs on the plan</comment>
        <translation>Stand von vorher</translation>
    </message>
    <message>
        <source>The records are being read again: what is shown of them is of before.</source>
        <translation>Die Kontrollaufzeichnungen werden neu gelesen: Was von ihnen gezeigt wird, ist der Stand von vorher.</translation>
    </message>
    <message>
        <source>What was &amp;tried</source>
        <translation>Was ge&amp;testet wurde</translation>
    </message>
    <message>
        <source>What came &amp;of it</source>
        <translation>Was &amp;herauskam</translation>
    </message>
    <message>
        <source>%1 Of what was entered here before, only the note and the second person are recorded with it.</source>
        <translation>%1 Von dem, was hier vorher eingegeben wurde, werden nur die Notiz und die zweite Person mit eingetragen.</translation>
    </message>
    <message>
        <source>%1 Still due: %2.</source>
        <translation>%1 Noch fällig: %2.</translation>
    </message>
    <message>
        <source>%1 is before the check: the last day of what is tagged out or to be done is expected.</source>
        <translation>%1 liegt vor der Kontrolle: erwartet wird der letzte Tag des Sperranhängers oder dessen, was zu tun bleibt.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::MainWindow</name>
    <message>
        <source>There is nothing to paste.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt nichts einzufügen.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist kein lesbares Bild</translation>
    </message>
    <message>
        <source>Choose a PNG or JPEG file, such as a scan or a photo of a plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eine PNG- oder JPEG-Datei wählen, etwa einen Scan oder ein Foto eines Plans.</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>OK</translation>
    </message>
    <message>
        <source>Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Paste</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Duplizieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>arbeitsplaetze</translation>
    </message>
    <message>
        <source>What Stopwalk does not do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was Stopwalk nicht macht</translation>
    </message>
    <message>
        <source>Stopwalk checks a drawing against chosen rules. It does not certify a machine, a stop or a room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first.

Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear. Anyone may press any stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopwalk prüft eine Zeichnung an gewählten Regeln. Es bescheinigt weder eine Maschine noch einen Stopp noch einen Raum. Örtliche Vorschriften, der Hersteller der Maschine, die zuständige Behörde und zugelassene Fachleute gehen vor.

Sich nie auf einen Stopp als Schutzeinrichtung verlassen. Einen Stopp nur so testen, wie es der Hersteller und die Anweisung der Werkstatt vorgeben, und nur, wenn kein Werkzeug im Eingriff ist. Alle dürfen jeden Stopp drücken.</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Go &amp;back to the saved file…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück zur gespeicherten &amp;Datei…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (fehlt)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Rückgängig:</translation>
    </message>
    <message>
        <source>&amp;Redo:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Wiederholen:</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ent&amp;fernen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A&amp;lles auswählen</translation>
    </message>
    <message>
        <source>Select all of this &amp;kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle dieser Ar&amp;t auswählen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>Select &amp;nothing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Nichts auswählen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Arrange</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Anordnen</translation>
    </message>
    <message>
        <source>Turn &amp;left by 90°</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Um 90° nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Turn &amp;right by 90°</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Um 90° nach &amp;rechts drehen</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>Align le&amp;ft sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>L&amp;inke Seiten ausrichten</translation>
    </message>
    <message>
        <source>Align right &amp;sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>R&amp;echte Seiten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;top sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Obere Seiten ausrichten</translation>
    </message>
    <message>
        <source>Align &amp;bottom sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Untere Seiten ausrichten</translation>
    </message>
    <message>
        <source>Align middles &amp;across</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mitten &amp;waagerecht ausrichten</translation>
    </message>
    <message>
        <source>Align middles &amp;up and down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mitten &amp;senkrecht ausrichten</translation>
    </message>
    <message>
        <source>Equal &amp;gaps across</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gleiche &amp;Abstände waagerecht</translation>
    </message>
    <message>
        <source>Equal gaps up and &amp;down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gleiche A&amp;bstände senkrecht</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>&amp;Pick things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dinge aus&amp;wählen</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>&amp;Room, a rectangle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Raum als Rechteck</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>Room by &amp;corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum nach E&amp;cken</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+3</translation>
    </message>
    <message>
        <source>&amp;Door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Tür</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+4</translation>
    </message>
    <message>
        <source>&amp;Machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Maschine</translation>
    </message>
    <message>
        <source>&amp;Stop device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Stoppgerät</translation>
    </message>
    <message>
        <source>Ctrl+5</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+5</translation>
    </message>
    <message>
        <source>P&amp;hone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Te&amp;lefon</translation>
    </message>
    <message>
        <source>Ctrl+6</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+6</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Werk&amp;bank</translation>
    </message>
    <message>
        <source>Ctrl+7</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+7</translation>
    </message>
    <message>
        <source>C&amp;olumn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stüt&amp;ze</translation>
    </message>
    <message>
        <source>Rac&amp;k</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Re&amp;gal</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Ctrl+8</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+8</translation>
    </message>
    <message>
        <source>Tape ch&amp;eck</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nachm&amp;essung</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;Underlay picture…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Hintergrundbild…</translation>
    </message>
    <message>
        <source>Sca&amp;le the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Maßstab des H&amp;intergrundbilds</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>An&amp;sicht</translation>
    </message>
    <message>
        <source>The place to &amp;draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bereich &amp;Zeichnen</translation>
    </message>
    <message>
        <source>Alt+1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+1</translation>
    </message>
    <message>
        <source>The place to &amp;audit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bereich &amp;Prüfen</translation>
    </message>
    <message>
        <source>Alt+2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+2</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Show &amp;everything</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <source>0</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>0</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>Ctrl+&apos;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+&apos;</translation>
    </message>
    <message>
        <source>Go to what is &amp;picked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zum Ausge&amp;wählten</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>What is &amp;this?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was ist &amp;das?</translation>
    </message>
    <message>
        <source>&amp;Find an action…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Aktion suchen…</translation>
    </message>
    <message>
        <source>Ctrl+/</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+/</translation>
    </message>
    <message>
        <source>What Stopwalk does &amp;not do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was Stopwalk &amp;nicht macht</translation>
    </message>
    <message>
        <source>Places of work</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeitsbereiche</translation>
    </message>
    <message>
        <source>Draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>Audit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Draw and change the plan (Alt+1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Den Plan zeichnen und ändern (Alt+1)</translation>
    </message>
    <message>
        <source>Findings, all stations, and what if (Alt+2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Befunde, alle Arbeitsplätze, und was wäre wenn (Alt+2)</translation>
    </message>
    <message>
        <source>What there is to draw, and what is drawn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was es zu zeichnen gibt, und was gezeichnet ist</translation>
    </message>
    <message>
        <source>Gallery</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Galerie</translation>
    </message>
    <message>
        <source>Things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dinge</translation>
    </message>
    <message>
        <source>This work is not safe from a crash: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diese Arbeit ist vor einem Absturz nicht sicher: %1</translation>
    </message>
    <message>
        <source>Room 1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Raum 1</translation>
    </message>
    <message>
        <source>What if %1? Nothing of this is saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was wäre, wenn %1? Nichts davon wird gespeichert.</translation>
    </message>
    <message>
        <source>Back to how it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zurück zum Ist-Zustand</translation>
    </message>
    <message>
        <source> (for looking only)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation> (nur zum Ansehen)</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>%1, line %2: %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, Zeile %2: %3.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>Und %n weitere.</numerusform>
            <numerusform>Und %n weitere.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was noticed in %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was in %1 auffiel</translation>
    </message>
    <message>
        <source>The layout was opened all the same. The lines are below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Layout wurde trotzdem geöffnet. Die Zeilen stehen unten.</translation>
    </message>
    <message>
        <source>Show them all</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Close</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Open it as it is now</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Öffnen, wie sie jetzt ist</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist nicht mehr auf dem Datenträger.</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wieder speichern</translation>
    </message>
    <message>
        <source>%1 can no longer be read.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist nicht mehr lesbar.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Spra&amp;che</translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Beispiel öffnen</translation>
    </message>
    <message>
        <source>The place of the pos&amp;ter</source>
        <translation>Bereich Aus&amp;hang</translation>
    </message>
    <message>
        <source>Alt+4</source>
        <translation>Alt+4</translation>
    </message>
    <message>
        <source>&amp;Poster</source>
        <translation>Aushan&amp;g</translation>
    </message>
    <message>
        <source>Poster</source>
        <translation>Aushang</translation>
    </message>
    <message>
        <source>The stop-location poster of each room (Alt+4)</source>
        <translation>Der Aushang mit den Stopp-Stellen jedes Raums (Alt+4)</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The place to in&amp;spect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bereich Kontroll&amp;ieren</translation>
    </message>
    <message>
        <source>Alt+3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+3</translation>
    </message>
    <message>
        <source>&amp;Inspect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Kontrollieren</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Kontrollieren</translation>
    </message>
    <message>
        <source>What is due, and rounds from device to device (Alt+3)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was fällig ist, und Kontrollgänge von Gerät zu Gerät (Alt+3)</translation>
    </message>
    <message>
        <source>Nothing was changed: while devices are inspected the plan is only looked at.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nichts wurde geändert: beim Kontrollieren wird der Plan nur angesehen.</translation>
    </message>
    <message>
        <source>Save the sheet of this round as P&amp;DF…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>B&amp;latt dieses Kontrollgangs als PDF speichern…</translation>
    </message>
    <message>
        <source>Save the &amp;bundle of a period…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Zusammenstellung eines Zeitraums speichern…</translation>
    </message>
    <message>
        <source>All stations, as the layout is, are in %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Arbeitsplätze, wie das Layout ist, stehen in %1.</translation>
    </message>
    <message>
        <source>A record is being written. The window closes when it is on the disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Eintrag wird geschrieben. Das Fenster schließt, sobald er auf dem Datenträger ist.</translation>
    </message>
    <message>
        <source>The inspection records of %1 stay with it, and cannot be read: what failed by them is not known here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen von %1 bleiben dort und sind nicht lesbar: Was nach ihnen nicht bestanden hat, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>The inspection records of %1 stay with it. Failed by them, and not known here: %2 devices.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen von %1 bleiben dort. Nach ihnen nicht bestanden und hier nicht bekannt: %2 Geräte.</translation>
    </message>
    <message>
        <source>%1 %2 has records of its own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2 hat eigene Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Copy the records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Aufzeichnungen kopieren</translation>
    </message>
    <message>
        <source>Begin without them</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ohne sie beginnen</translation>
    </message>
    <message>
        <source>The inspection records of %1 are copied. Each goes on by itself from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen von %1 sind kopiert. Von hier an gehen beide für sich weiter.</translation>
    </message>
    <message>
        <source>The records are copied, but perhaps not for good: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Aufzeichnungen sind kopiert, aber vielleicht nicht dauerhaft: %1.</translation>
    </message>
    <message>
        <source>The records were not copied</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Aufzeichnungen wurden nicht kopiert</translation>
    </message>
    <message>
        <source>it is gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sie ist nicht mehr da</translation>
    </message>
    <message>
        <source>%1 was changed by another program, and cannot be used as it is now: %2. The kinds of device and machine templates that were read before stay in use until it can.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 wurde von einem anderen Programm geändert und ist so, wie es jetzt ist, nicht zu gebrauchen: %2. Die zuvor gelesenen Gerätearten und Maschinenvorlagen gelten weiter, bis es wieder geht.</translation>
    </message>
    <message>
        <source>%1 was changed by another program, and was read again: the layout is audited by what it says now.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 wurde von einem anderen Programm geändert und neu gelesen: Das Layout wird nach dem geprüft, was jetzt darin steht.</translation>
    </message>
    <message>
        <source>%1 was changed by another program. %2 The profile as it was read before stays in use until it can be read again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 wurde von einem anderen Programm geändert. %2 Das Profil gilt weiter, wie es zuvor gelesen wurde, bis es wieder gelesen werden kann.</translation>
    </message>
    <message>
        <source>No table is exported</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es wird keine Tabelle exportiert</translation>
    </message>
    <message>
        <source>The audit could not be computed: %1. What is shown of it is of a moment ago. Close other programs if memory is short; the next change is audited anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Prüfung konnte nicht berechnet werden: %1. Was von ihr zu sehen ist, ist von vor einem Augenblick. Andere Programme schließen, wenn der Speicher knapp ist; die nächste Änderung wird neu geprüft.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch einmal prüfen</translation>
    </message>
    <message>
        <source>The colours of the floor could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Farben des Bodens konnten nicht berechnet werden: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and counted as a stop all the same: %1.</source>
        <translation>Kontrolle nicht bestanden und seither keine bestanden, trotzdem als Stopp gezählt: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and counted as no stop: %1.</source>
        <translation>Kontrolle nicht bestanden und seither keine bestanden, nicht als Stopp gezählt: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and no longer on the plan under this id: %1. What stands in its place now counts as a stop.</source>
        <translation>Kontrolle nicht bestanden, seither keine bestanden, und nicht mehr unter dieser Kennung im Plan: %1. Was nun an seiner Stelle steht, zählt als Stopp.</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>befunde</translation>
    </message>
    <message>
        <source>%1-findings</source>
        <translation>%1-befunde</translation>
    </message>
    <message>
        <source>All findings, as the layout is, are in %1.</source>
        <translation>Alle Befunde, wie das Layout ist, stehen in %1.</translation>
    </message>
    <message>
        <source>Audi&amp;t</source>
        <translation>Prüfe&amp;n</translation>
    </message>
    <message>
        <source>house-rules</source>
        <translation>hausregeln</translation>
    </message>
    <message>
        <source>Rules of %1</source>
        <translation>Regeln von %1</translation>
    </message>
    <message>
        <source>All rules, as they are kept here, are in %1.</source>
        <translation>Alle Regeln, wie sie hier gelten, stehen in %1.</translation>
    </message>
    <message>
        <source>That profile cannot be chosen</source>
        <translation>Dieses Profil kann nicht gewählt werden</translation>
    </message>
    <message>
        <source>Save the layout first: a profile file stands beside it.</source>
        <translation>Zuerst das Layout speichern: Eine Profildatei steht neben ihm.</translation>
    </message>
    <message>
        <source>It must stand in the folder of the layout or below, so that it goes where the layout goes.</source>
        <translation>Es muss im Ordner des Layouts oder darunter stehen, damit es mit dem Layout mitgeht.</translation>
    </message>
    <message>
        <source>R&amp;ename…</source>
        <translation>&amp;Umbenennen…</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>Move &amp;or turn by numbers…</source>
        <translation>Mit Zahlen &amp;verschieben oder drehen…</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>S&amp;tation of the operator</source>
        <translation>Arbeits&amp;platz des Bedieners</translation>
    </message>
    <message>
        <source>St&amp;ation of a helper</source>
        <translation>&amp;Arbeitsplatz eines Helfers</translation>
    </message>
    <message>
        <source>Stat&amp;ion of a setter</source>
        <translation>Arbeitsplatz &amp;für den Einrichter</translation>
    </message>
    <message>
        <source>Station o&amp;f an instructor</source>
        <translation>Arbeitsplatz eines Ausbil&amp;ders</translation>
    </message>
    <message>
        <source>The audit is still being computed; this is done when it is there.</source>
        <translation>Die Prüfung wird noch berechnet; das wird getan, wenn sie da ist.</translation>
    </message>
    <message>
        <source>something else was asked for</source>
        <translation>etwas anderes wurde verlangt</translation>
    </message>
    <message>
        <source>another layout was opened</source>
        <translation>ein anderes Layout wurde geöffnet</translation>
    </message>
    <message>
        <source>the audit could not be computed</source>
        <translation>die Prüfung konnte nicht berechnet werden</translation>
    </message>
    <message>
        <source>What was to be done once the audit is there is not done: %1. Ask for it again: %2.</source>
        <translation>Was getan werden sollte, sobald die Prüfung da ist, wird nicht getan: %1. Es noch einmal verlangen: %2.</translation>
    </message>
    <message>
        <source>%1, into %2</source>
        <translation>%1, in %2</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::NoticeBar</name>
    <message>
        <source>Notice</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Close</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PageView</name>
    <message>
        <source>Poster</source>
        <translation>Aushang</translation>
    </message>
    <message>
        <source>%1, sheets: %2</source>
        <translation>%1, Blätter: %2</translation>
    </message>
    <message>
        <source>Being made…</source>
        <translation>Wird gemacht…</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PosterFiles</name>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Save the layout first?</source>
        <translation>Zuerst das Layout speichern?</translation>
    </message>
    <message>
        <source>A poster carries the hash of the layout&apos;s file, by which anyone can tell later whether it is still true. This layout is not in its file as it is here: its posters would say %1 instead.</source>
        <translation>Ein Aushang trägt die Prüfsumme der Layout-Datei, an der jeder später erkennt, ob er noch stimmt. Dieses Layout steht nicht so in seiner Datei, wie es hier ist: Auf seinen Aushängen stünde stattdessen %1.</translation>
    </message>
    <message>
        <source>Save the layout first</source>
        <translation>Zuerst das Layout speichern</translation>
    </message>
    <message>
        <source>Go on, marked %1</source>
        <translation>Weiter, mit dem Vermerk %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There is no poster</source>
        <translation>Es gibt keinen Aushang</translation>
    </message>
    <message>
        <source>The layout has no room indoors to make one of.</source>
        <translation>Das Layout hat keinen Raum im Haus, für den es einen geben könnte.</translation>
    </message>
    <message>
        <source>Posters are being made…</source>
        <translation>Aushänge werden gemacht…</translation>
    </message>
    <message>
        <source>Not every room has a poster on this paper</source>
        <translation>Nicht jeder Raum hat auf diesem Papier einen Aushang</translation>
    </message>
    <message>
        <source>Save none</source>
        <translation>Keinen speichern</translation>
    </message>
    <message>
        <source>Save the others</source>
        <translation>Die anderen speichern</translation>
    </message>
    <message>
        <source>poster</source>
        <translation>aushang</translation>
    </message>
    <message>
        <source>posters</source>
        <translation>aushaenge</translation>
    </message>
    <message>
        <source>That is the layout itself</source>
        <translation>Das ist das Layout selbst</translation>
    </message>
    <message>
        <source>Save the poster under another name.</source>
        <translation>Den Aushang unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Replace what is there?</source>
        <translation>Ersetzen, was dort ist?</translation>
    </message>
    <message>
        <source>The poster has several pages, and each is a file. There already: %1.</source>
        <translation>Der Aushang hat mehrere Seiten, und jede ist eine Datei. Schon da: %1.</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>It is write-protected, and is left as it is. Save under another name.</source>
        <translation>Die Datei ist schreibgeschützt und bleibt, wie sie ist. Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>The posters are written</source>
        <translation>Die Aushänge sind geschrieben</translation>
    </message>
    <message>
        <source>What they do not do as they should, and rooms without one, are below.</source>
        <translation>Was sie nicht tun, wie sie sollten, und Räume ohne Aushang stehen unten.</translation>
    </message>
    <message>
        <source>The poster is being written…</source>
        <translation>Der Aushang wird geschrieben…</translation>
    </message>
    <message>
        <source>The poster is being printed…</source>
        <translation>Der Aushang wird gedruckt…</translation>
    </message>
    <message>
        <source>Printed at 100 %. Measure the bar at the foot of the poster: 100 mm.</source>
        <translation>Zu 100 % gedruckt. Den Balken unten auf dem Aushang nachmessen: 100 mm.</translation>
    </message>
    <message>
        <source>The poster was not printed</source>
        <translation>Der Aushang wurde nicht gedruckt</translation>
    </message>
    <message>
        <source>The printer did not take it. Save it as PDF and print that at 100 %, without fitting it to the page.</source>
        <translation>Der Drucker hat ihn nicht angenommen. Als PDF speichern und dieses zu 100 % drucken, ohne es an die Seite anzupassen.</translation>
    </message>
    <message>
        <source>No poster is made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es wird kein Aushang gemacht</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PosterPlace</name>
    <message>
        <source>What the poster cannot do as it should</source>
        <translation>Was der Aushang nicht so kann, wie er sollte</translation>
    </message>
    <message>
        <source>What the poster cannot do as it sho&amp;uld</source>
        <translation>Was der Aushang nicht so kann, wie er sollt&amp;e</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Save as picture (PNG)…</source>
        <translation>Als Bild (PNG) speichern…</translation>
    </message>
    <message>
        <source>Save as drawing (SVG)…</source>
        <translation>Als Zeichnung (SVG) speichern…</translation>
    </message>
    <message>
        <source>Save posters of all rooms…</source>
        <translation>Aushänge aller Räume speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Drawn from a plan and checked against chosen rules; certifies nothing. Local codes, the maker and licensed people come first. Never rely on a stop as a guard. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translation>Nach einem Plan gezeichnet und mit gewählten Regeln verglichen; bescheinigt nichts. Örtliche Vorschriften, Hersteller und zugelassene Fachleute gehen vor. Sich nie auf einen Stopp als Schutzeinrichtung verlassen. &lt;a href=&quot;#&quot;&gt;Mehr&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Choose the &amp;room</source>
        <translation>Den &amp;Raum wählen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Choose the &amp;wall on the plan</source>
        <translation>Die &amp;Wand auf dem Plan wählen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Save as p&amp;icture (PNG)…</source>
        <translation>Als &amp;Bild (PNG) speichern…</translation>
    </message>
    <message>
        <source>Save as &amp;drawing (SVG)…</source>
        <translation>Als &amp;Zeichnung (SVG) speichern…</translation>
    </message>
    <message>
        <source>Save posters of &amp;all rooms…</source>
        <translation>Aushänge &amp;aller Räume speichern…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Click the wall where the poster is to hang; Escape goes back to the poster.</source>
        <translation>Die Wand anklicken, an der der Aushang hängen soll; Esc führt zum Aushang zurück.</translation>
    </message>
    <message>
        <source>The wheel zooms and dragging moves the page; 0 shows it whole.</source>
        <translation>Das Rad zoomt, Ziehen verschiebt die Seite; 0 zeigt sie ganz.</translation>
    </message>
    <message>
        <source>There is no room indoors yet. Draw one: posters are made of rooms.</source>
        <translation>Es gibt noch keinen Raum im Haus. Einen zeichnen: Aushänge gibt es für Räume.</translation>
    </message>
    <message>
        <source>There is no poster of this room on this paper.</source>
        <translation>Für diesen Raum gibt es auf diesem Papier keinen Aushang.</translation>
    </message>
    <message>
        <source>There is no poster of this room: %1.</source>
        <translation>Für diesen Raum gibt es keinen Aushang: %1.</translation>
    </message>
    <message>
        <source>It says %1: this layout is not in its file as it is here, so that the poster cannot be held against it.</source>
        <translation>Darauf steht %1: Dieses Layout steht nicht so in seiner Datei, wie es hier ist, der Aushang kann also nicht mit ihr verglichen werden.</translation>
    </message>
    <message>
        <source>Nothing: it does all that it should.</source>
        <translation>Nichts: Er kann alles, was er soll.</translation>
    </message>
    <message>
        <source>No poster is made: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es wird kein Aushang gemacht: %1</translation>
    </message>
    <message>
        <source>The poster could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Aushang konnte nicht berechnet werden: %1.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RecordsBeside</name>
    <message>
        <source>The inspection records in %1 cannot be read, and are not taken into account: %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen in %1 lassen sich nicht lesen und werden nicht berücksichtigt: %2.</translation>
    </message>
    <message>
        <source>%1 What had failed when they were last read still counts as failed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Was beim letzten Lesen nicht bestanden hatte, gilt weiter als nicht bestanden.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are gone: %2 that were read here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen in %1 sind weg: %2, die hier gelesen wurden.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are not all there any more, or not as they were: it held %2, now %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Kontrollaufzeichnungen in %1 sind nicht mehr alle da oder nicht mehr, wie sie waren: Es waren %2, jetzt sind es %3.</translation>
    </message>
    <message>
        <source>%1 Find out who moved or changed the file, and put it back. What failed by them still counts as failed here, and nothing is recorded until they are back or a round is started anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Herausfinden, wer die Datei verschoben oder geändert hat, und sie zurücklegen. Was nach ihnen nicht bestanden hat, gilt hier weiter als nicht bestanden, und es wird nichts eingetragen, bis sie wieder da sind oder ein Kontrollgang neu begonnen wird.</translation>
    </message>
    <message>
        <source>Line %1 of the inspection records in %2 is not as it was written: %3. No pass counts up to line %4.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeile %1 der Kontrollaufzeichnungen in %2 ist nicht mehr, wie sie geschrieben wurde: %3. Bis Zeile %4 zählt nichts als bestanden.</translation>
    </message>
    <message>
        <source>The inspection records in %1 end in one that was never finished, or was cut or changed later: it does not count, and a failure may be in it. What is recorded next puts it aside into a file of its own.</source>
        <translation>Die Kontrollaufzeichnungen in %1 enden mit einem Eintrag, der nie fertig wurde oder später gekürzt oder geändert wurde: Er zählt nicht, und es kann ein Mangel darin stehen. Der nächste Eintrag legt ihn in einer eigenen Datei beiseite.</translation>
    </message>
    <message>
        <source>%1 are the inspection records of %2 too: what failed in one counts as failed in the other. Save one of them under a name of its own.</source>
        <translation>%1 sind auch die Kontrollaufzeichnungen von %2: Was in dem einen nicht bestanden hat, gilt auch im anderen als nicht bestanden. Eines davon unter einem eigenen Namen speichern.</translation>
    </message>
    <message>
        <source>Lines of it that cannot be read any more: %1. What failed by them is not known.</source>
        <translation>Zeilen darin, die nicht mehr zu lesen sind: %1. Was nach ihnen nicht bestanden hat, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are not as they were when they were last read.</source>
        <translation>Die Prüfaufzeichnungen in %1 sind nicht so, wie sie zuletzt gelesen wurden.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RecoveryDialog</name>
    <message>
        <source>%1 is as it was when this work began: what was kept is newer.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist, wie es war, als diese Arbeit begann: Das Gesicherte ist neuer.</translation>
    </message>
    <message>
        <source>%1 holds this work already. Nothing is lost if it is thrown away.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 enthält diese Arbeit schon. Es geht nichts verloren, wenn sie weggeworfen wird.</translation>
    </message>
    <message>
        <source>%1 was changed by somebody else since. If you go on with what was kept, you are asked before it is saved over theirs.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hat seither jemand anders geändert. Beim Weitermachen mit dem Gesicherten wird gefragt, bevor es deren Fassung überschreibt.</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk. What was kept is all there is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ist nicht mehr auf dem Datenträger. Das Gesicherte ist alles, was es gibt.</translation>
    </message>
    <message>
        <source>Work that was not saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arbeit, die nicht gespeichert wurde</translation>
    </message>
    <message>
        <source>a new layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ein neues Layout</translation>
    </message>
    <message>
        <source>Work is kept here by a program on another computer.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hier sichert ein Programm auf einem anderen Rechner Arbeit.</translation>
    </message>
    <message>
        <source>Stopwalk stopped before %1 was saved. The work was kept.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopwalk endete, bevor %1 gespeichert war. Die Arbeit wurde gesichert.</translation>
    </message>
    <message>
        <source>What was kept</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Gesicherte</translation>
    </message>
    <message>
        <source>The file as it is saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Datei, wie sie gespeichert ist</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie wurde nie gespeichert.</translation>
    </message>
    <message>
        <source>Go on with what was kept</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mit dem Gesicherten weitermachen</translation>
    </message>
    <message>
        <source>Throw the kept work away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Gesicherte wegwerfen</translation>
    </message>
    <message>
        <source>Decide later</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Später entscheiden</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RoundPapers</name>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>OK</translation>
    </message>
    <message>
        <source>Save the layout first?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zuerst das Layout speichern?</translation>
    </message>
    <message>
        <source>What is printed of inspections carries the hash of the layout&apos;s file. This layout is not in its file as it is here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was von Kontrollen gedruckt wird, trägt die Prüfsumme der Layout-Datei. Dieses Layout steht nicht so in seiner Datei, wie es hier ist.</translation>
    </message>
    <message>
        <source>Save the layout first</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zuerst das Layout speichern</translation>
    </message>
    <message>
        <source>Print nothing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nichts drucken</translation>
    </message>
    <message>
        <source>That is the layout itself</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das ist das Layout selbst</translation>
    </message>
    <message>
        <source>Save it under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>The sheet is written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Blatt ist geschrieben</translation>
    </message>
    <message>
        <source>What it does not do as it should is below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was es nicht so tut, wie es soll, steht darunter.</translation>
    </message>
    <message>
        <source>A sheet of which devices?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ein Blatt für welche Geräte?</translation>
    </message>
    <message>
        <source>All devices</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alle Geräte</translation>
    </message>
    <message>
        <source>What is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>The sheet is being made…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Blatt wird gemacht…</translation>
    </message>
    <message>
        <source>There is no sheet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt kein Blatt</translation>
    </message>
    <message>
        <source>There is no device that is due.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es ist kein Gerät fällig.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt kein Gerät zu kontrollieren.</translation>
    </message>
    <message>
        <source>Save the sheet of the round as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Blatt des Kontrollgangs speichern unter</translation>
    </message>
    <message>
        <source>round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>kontrollgang</translation>
    </message>
    <message>
        <source>The bundle of which period?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Zusammenstellung welchen Zeitraums?</translation>
    </message>
    <message>
        <source>It holds the records of the period, the audit of the plan, and what is still open.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sie enthält die Kontrollaufzeichnungen des Zeitraums, die Prüfung des Plans und was noch offen ist.</translation>
    </message>
    <message>
        <source>The last twelve months</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die letzten zwölf Monate</translation>
    </message>
    <message>
        <source>This year</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dieses Jahr</translation>
    </message>
    <message>
        <source>All there is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alles, was es gibt</translation>
    </message>
    <message>
        <source>There are no records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt keine Kontrollaufzeichnungen</translation>
    </message>
    <message>
        <source>Nothing was inspected yet: a bundle is of what was recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Noch wurde nichts kontrolliert: Eine Zusammenstellung ist von dem, was eingetragen wurde.</translation>
    </message>
    <message>
        <source>The bundle is being made…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Zusammenstellung wird gemacht…</translation>
    </message>
    <message>
        <source>Save the bundle as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Die Zusammenstellung speichern unter</translation>
    </message>
    <message>
        <source>records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>aufzeichnungen</translation>
    </message>
    <message>
        <source>No round is being walked. The sheet opens none: it is opened when the sheet is entered. One room, other doors or another beginning are chosen in the form of a new round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es läuft kein Kontrollgang. Das Blatt eröffnet keinen: Er wird eröffnet, wenn das Blatt eingetragen wird. Ein einzelner Raum, andere Türen oder ein anderer Anfang werden im Formular eines neuen Kontrollgangs gewählt.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auswählen…</translation>
    </message>
    <message>
        <source>Nobody can stand where the walk is to begin: choose another place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wo der Weg beginnen soll, kann niemand stehen: einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>From … to …</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von … bis …</translation>
    </message>
    <message>
        <source>Both days belong to it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Beide Tage gehören dazu.</translation>
    </message>
    <message>
        <source>From</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Make the bundle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zusammenstellung machen</translation>
    </message>
    <message>
        <source>Two days as 2026-03-02 are expected, the earlier first. Both belong to it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Erwartet werden zwei Tage wie 2026-03-02, der frühere zuerst. Beide gehören dazu.</translation>
    </message>
    <message>
        <source>The name says what it is: it ends in .pdf for a document, in .csv for a table.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Der Name sagt, was es ist: Er endet auf .pdf für ein Dokument, auf .csv für eine Tabelle.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::TellWritten</name>
    <message>
        <source>Written, but perhaps not for good</source>
        <translation>Geschrieben, aber vielleicht nicht dauerhaft</translation>
    </message>
    <message>
        <source>%1 was not written</source>
        <translation>%1 wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::WallView</name>
    <message>
        <source>Walls of the room</source>
        <translation>Wände des Raums</translation>
    </message>
    <message>
        <source>Arrow keys go from wall to wall, Enter hangs the poster there, Escape leaves. The list of walls does the same.</source>
        <translation>Pfeiltasten gehen von Wand zu Wand, Eingabetaste hängt den Aushang dort auf, Esc verlässt sie. Die Liste der Wände tut dasselbe.</translation>
    </message>
    <message>
        <source>Click the wall where the poster is to hang; Escape goes back to it.</source>
        <translation>Die Wand anklicken, an der der Aushang hängen soll; Esc führt zu ihm zurück.</translation>
    </message>
    <message>
        <source>Hangs here</source>
        <translation>Hängt hier</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>%1 The layout is audited by the usual profile, %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Das Layout wird nach dem üblichen Profil %2 geprüft.</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>There is no profile `%1`%2, and no such file beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Es gibt kein Profil `%1`%2 und keine solche Datei neben dem Layout.</translation>
    </message>
    <message>
        <source>The profile %1 cannot be read (%2).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Das Profil %1 ist nicht lesbar (%2).</translation>
    </message>
    <message>
        <source>Language: %1. It is spoken from the next start of Stopwalk on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sprache: %1. Sie gilt ab dem nächsten Start von Stopwalk.</translation>
    </message>
    <message>
        <source>As the computer has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Wie der Rechner</translation>
    </message>
</context>
</TS>
