<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Details</name>
    <message>
        <source>Change the %2 of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Footprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it covers of the floor, seen from above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the side where the operator stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the operator&apos;s side to the back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Footprint corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured from the middle: to the right, and to the back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeviceSection</name>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is, and so whether and how it stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees as the machine stands: 270 is towards the operator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a bar or cord, from end to end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the floor to where it is pressed, stepped on or pulled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which machines it stops. A room stands for every machine in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the machine it is on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>those ticked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change what %1 does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds from this stop until the machine stands still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the machine has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-down of each machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where this stop takes longer or shorter for one machine than another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the poster tells a novice to do. Empty: as usual for its kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether it counts as one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as usual for its kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thrown to the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which way a switch is thrown to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the pin that guards the start is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stations whose operator has the trigger in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the machine’s first station</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DialogAsker</name>
    <message>
        <source>Workshop layouts (*%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the layout as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the table as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a picture to draw over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DoorSection</name>
    <message>
        <source>In the wall of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room whose wall carries the door.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room on the other side, or outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the door’s frame or leaf, where people go through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked door is no way to a stop or a phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished">exterior</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>differ</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingGroups</name>
    <message>
        <source>In no room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of no machine</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FixtureSection</name>
    <message>
        <source>A bench, a column, a rack: solid, and no machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the floor to its top: a stop behind it can be seen or reached over it, or not.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Rooms and doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag from one corner to the opposite one, or type the two sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room by corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click each corner in turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a wall; it leads to the room on the other side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Operator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the one who works the machine stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a second person stands at the work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where somebody stands to set the machine up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where somebody stands to teach or watch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop devices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops nothing.</source>
        <translation type="unfinished">No detiene nada.</translation>
    </message>
    <message>
        <source>Phones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the wall that it hangs on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Benches and columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid, and no machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes and checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words on the plan, with a line to what they are about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A distance taped on the floor, held against the computed one: click where it was taped from, then to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale the underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click two points of the picture, and type how far they are apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes with its usual stations (%1) and devices (%2).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LengthField</name>
    <message>
        <source>900 (in %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a length: write it with a point, such as 1.2 m, or as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a length up to 10 km. Type it as 1.2 m, 4&apos; 6&quot; or %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has to be more than 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be less than 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MachineSection</name>
    <message>
        <source>As people call it: Engine lathe 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What sort of machine it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the floor to its top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds from the stop until it stands still, as timed at the machine. Empty: not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held or guided by hand: only its trigger counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do once it stands still: Back the tool off before you release the stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hazard outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody may reach across it. Measured from the middle of the machine: to the right, and to the back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MixedSection</name>
    <message>
        <source>At x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoteSection</name>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to something</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line leads from the words to a place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place that the line leads to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to y</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoteTool</name>
    <message>
        <source>X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where the note goes; drag from there to what it points to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NumberField</name>
    <message>
        <source>Not a number: write it with a point, such as 2.5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a number. Type one such as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has to be a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has to be more than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has to be from %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OutlineTool</name>
    <message>
        <source>X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Direction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the room&apos;s first corner, or type its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the next corner, or type length, Tab, direction, Enter. Backspace takes one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the next corner; click the first one, or press Enter without a number, to close the room.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhoneSection</name>
    <message>
        <source>As people call it: Yard phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The direction from the phone to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the floor.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceTool</name>
    <message>
        <source>X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where it stands, or type its place and turn. R turns it by 15°.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the wall where the door goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where the person stands at the machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the machine&apos;s side or the wall that carries it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the wall where the phone hangs.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Problems</name>
    <message>
        <source>Fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoomSection</name>
    <message>
        <source>As people call the room; it stands on the plan and on the poster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A porch, yard or outside corridor that people walk on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The inside faces of the walls, corner by corner.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RoomTool</name>
    <message>
        <source>X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the opposite corner, or type width, Tab, depth, Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click or drag from the room&apos;s first corner, or type its numbers.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScaleTool</name>
    <message>
        <source>True distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no underlay picture yet: choose one in the gallery.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click one end of a length that you know on the picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click its other end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type its true length, then Enter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SelectTool</name>
    <message>
        <source>Release to put it there; Escape leaves it where it was; Alt keeps it from being pulled to guides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a first room: its numbers, or Draw, Room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a thing to pick it, or drag a frame round several.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag it, nudge it with the arrow keys, or type its numbers at the right.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationSection</name>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>operator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>setter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator: the operator stands at less than 0.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>its stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walk %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walk %1 to %2 through a narrow place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no way to a stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Suppose</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2 at %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 devices are out of order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doors are shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something stands in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 things stand in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is after hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TapeCheckSection</name>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station, device or phone where the tape begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station, device or phone where the tape ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As measured along the floor with a tape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it was taped: year, month, day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who taped it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TapeTool</name>
    <message>
        <source>Taped length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the length that was read from the tape along the way on the floor, then Enter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>Not a day. Type it as year, month, day: 2026-03-02.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be left empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything needs an id, such as saw-2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” means something else in a layout. Choose another id.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An id has only lower-case letters a to z, digits and hyphens, such as saw-2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThingRows</name>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape check %1: %2 to %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, machine: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1 to %2, %3 wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, locked after hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, always locked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UnderlaySection</name>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of the scan or photo, beside the layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Millimetres a pixel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the floor a pixel of the picture covers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 0, not to be seen, to 1, as the picture is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkshopSection</name>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its name, as it stands on reports and posters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to read to the one who answers an emergency call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to dial, and from which phone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meet responders at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The door or gate where somebody waits for them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts the plans that were put up on the wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of this revision: year, month, day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who drew it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What changed, and why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In which lengths are shown, typed without a unit, and written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules and limits to audit by: %1, or the name of a file beside the layout.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>documents</name>
    <message>
        <source>the link leads to a file that is not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not a plain file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is over 64 MiB; no layout is so large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: what is there cannot be read, and is left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: what is there is not a layout, and is left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name, or move that file away first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: there is a layout of this name already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name, or replace it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: the file has changed on disk since it was opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name, or look at both and replace the one on disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: the file would not open again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo the last change and save again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved, but it is not sure that the file would survive a power cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save again, or save a copy on another disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: the file could not be written; what was there is unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make room, or mend the permissions, or save in another folder; then save again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened: the file cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another file, or mend what is in the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened: this is not a layout that can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is left as it is. Mend the lines named, or open another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open to look only: another holds this layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its lock is damaged; made by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you are sure that nobody works on it, take it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it there, or save your work under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask there first. If you are sure that nobody works on it, take it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open to look only: nothing can be written in this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name in a folder of yours, or have the permissions changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open without a lock: another could write the file at the same time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again, or save under another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an unknown computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program stopped while it kept this work, and a part is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This kept work is damaged and cannot be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was kept before it, if anything, is listed beside it. Throw this away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work is kept here, and its lock is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the program again in a minute to have the work back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work is kept here by a program on another computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the program runs there no more, start it there once to have the work back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This kept work is whole, but cannot be opened as things are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it, and look at it with a text editor: from the third line on it is a layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the shop&apos;s own kinds of device were moved, put their file back beside %1 and start the program again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its bytes are not those that were written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kept work could not be thrown away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will be offered again at the next start. Mend the permissions of its folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your unsaved work cannot be kept for the case of a crash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save often; make room or mend the permissions of this folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lock cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your last changes could not be kept for the case of a crash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save now; make room or mend the permissions of this folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>edits</name>
    <message>
        <source>Add %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distribute %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the rule %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n doors</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 tape check</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n tape checks</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing with the id %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An id has lower-case letters, digits and hyphens only: lathe-1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The id %1 has a meaning of its own; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is something with the id %1 already; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the id of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a corner of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a wall of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a corner of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale the underlay picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed: a layout holds places and lengths within 10 km only, and sizes above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tape check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n things</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop %1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>phone %1 → %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop: %1; phone: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 through a narrow way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no way to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured, the station is not on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Underlay picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1, %2 wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taped from %1 to %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>O</source>
        <comment>letter of an operator&apos;s station</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>H</source>
        <comment>letter of a helper&apos;s station</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S</source>
        <comment>letter of a setter&apos;s station</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I</source>
        <comment>letter of an instructor&apos;s station</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved %1 across, %2 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pointer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>poster</name>
    <message>
        <source>STOP LOCATIONS</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>PUNTOS DE PARADA</translation>
    </message>
    <message>
        <source>STOP LOCATIONS, page %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>PUNTOS DE PARADA, página %1 de %2</translation>
    </message>
    <message>
        <source>How each machine stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cómo se detiene cada máquina</translation>
    </message>
    <message>
        <source>On the walls</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En las paredes</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>These are not stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esto no detiene nada</translation>
    </message>
    <message>
        <source>Starts the machine: put the pin back. It is not a stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pone en marcha la máquina: vuelva a poner el pasador. No es una parada.</translation>
    </message>
    <message>
        <source>Stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No detiene nada.</translation>
    </message>
    <message>
        <source>Stops every machine in this room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene todas las máquinas de esta sala.</translation>
    </message>
    <message>
        <source>Stops every machine in all rooms.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene todas las máquinas de todas las salas.</translation>
    </message>
    <message>
        <source>Also stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>También detiene: %1</translation>
    </message>
    <message>
        <source>Stops only: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Solo detiene: %1</translation>
    </message>
    <message>
        <source>Does not stop this machine. Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No detiene esta máquina. Detiene: %1</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>Only for the one who holds it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Solo para quien lo tiene en la mano.</translation>
    </message>
    <message>
        <source>No stop of its own. Use %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin parada propia. Use %1.</translation>
    </message>
    <message>
        <source>No stop in this room. Keep off this machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay parada en esta sala. No se acerque a esta máquina.</translation>
    </message>
    <message>
        <source>The cut-off for this room is elsewhere: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El corte general de esta sala está en otro lugar: %1.</translation>
    </message>
    <message>
        <source>In an emergency</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En una emergencia</translation>
    </message>
    <message>
        <source>Stop the machine. Anyone may press any stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detenga la máquina. Cualquiera puede pulsar cualquier parada.</translation>
    </message>
    <message>
        <source>Dial: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Llame al: %1</translation>
    </message>
    <message>
        <source>Say where: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diga dónde: %1</translation>
    </message>
    <message>
        <source>Meet the responders: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Reciba a los equipos de emergencia: %1</translation>
    </message>
    <message>
        <source>Phone: %1 from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono: a %1 de aquí.</translation>
    </message>
    <message>
        <source>Phone: %1 from here, by way of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono: a %1 de aquí. Camino: %2.</translation>
    </message>
    <message>
        <source>After hours: %1 from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de horario: a %1 de aquí.</translation>
    </message>
    <message>
        <source>After hours: %1 from here, by way of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de horario: a %1 de aquí. Camino: %2.</translation>
    </message>
    <message>
        <source>No phone is drawn. Find out now where the nearest is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún teléfono dibujado. Averigüe ahora dónde está el más cercano.</translation>
    </message>
    <message>
        <source>No way to a phone is known from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se conoce ningún camino desde aquí hasta un teléfono.</translation>
    </message>
    <message>
        <source>After hours no phone can be reached from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de horario no se llega desde aquí a ningún teléfono.</translation>
    </message>
    <message>
        <source>The way is narrow.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El camino es estrecho.</translation>
    </message>
    <message>
        <source>outside</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>exterior</translation>
    </message>
    <message>
        <source>You are here</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Usted está aquí</translation>
    </message>
    <message>
        <source>to %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>a %1</translation>
    </message>
    <message>
        <source>Phone %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono %1</translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Revisión %1</translation>
    </message>
    <message>
        <source>No revision given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin número de revisión</translation>
    </message>
    <message>
        <source>Layout %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Distribución %1</translation>
    </message>
    <message>
        <source>Plan of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Plano de %1</translation>
    </message>
    <message>
        <source>Letters (ASR A1.3): title %1 mm, read to %2 m; table %3 mm, to %4 m. Signs on the plan: %5 mm, recognised to %6 m (60 times the height, ISO 3864-1, unlit).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Letras (ASR A1.3): título %1 mm, se lee hasta %2 m; tabla %3 mm, hasta %4 m. Señales en el plano: %5 mm, se reconocen hasta %6 m (60 veces la altura, ISO 3864-1, sin iluminar).</translation>
    </message>
    <message>
        <source>Print at 100 %: this bar is 100 mm long.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imprima al 100 %: esta barra mide 100 mm.</translation>
    </message>
    <message>
        <source>Drawn from a plan and checked against chosen rules. It certifies no machine, stop or room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first. Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujado a partir de un plano y comprobado con las reglas elegidas. No certifica ninguna máquina, parada ni sala. Tienen prioridad las normas locales, el fabricante de la máquina, la autoridad competente y los profesionales autorizados. Nunca confíe en una parada como protección. Pruebe una parada solo como indiquen el fabricante y el procedimiento del taller, con la pieza libre.</translation>
    </message>
    <message>
        <source>Mushroom button</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pulsador de seta</translation>
    </message>
    <message>
        <source>Press the red button.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pulse el botón rojo.</translation>
    </message>
    <message>
        <source>Foot bar</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Barra de pie</translation>
    </message>
    <message>
        <source>Step on the bar.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pise la barra.</translation>
    </message>
    <message>
        <source>Switch thrown to horizontal</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Interruptor que se pone horizontal</translation>
    </message>
    <message>
        <source>Throw the switch to horizontal.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ponga el interruptor en horizontal.</translation>
    </message>
    <message>
        <source>Trigger</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gatillo</translation>
    </message>
    <message>
        <source>Let go of the trigger.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Suelte el gatillo.</translation>
    </message>
    <message>
        <source>Guarded start with pin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arranque protegido con pasador</translation>
    </message>
    <message>
        <source>This starts the machine. It stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esto pone en marcha la máquina. No detiene nada.</translation>
    </message>
    <message>
        <source>Pull cord</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cable de tiro</translation>
    </message>
    <message>
        <source>Pull the cord.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tire del cable.</translation>
    </message>
    <message>
        <source>Paddle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Paleta</translation>
    </message>
    <message>
        <source>Push the paddle.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empuje la paleta.</translation>
    </message>
    <message>
        <source>Room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Corte general de la sala</translation>
    </message>
    <message>
        <source>Press to cut the power to the room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pulse para cortar la corriente de la sala.</translation>
    </message>
    <message>
        <source>Isolator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seccionador</translation>
    </message>
    <message>
        <source>Turn the supply switch to off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Gire el interruptor de alimentación a la posición de apagado.</translation>
    </message>
</context>
<context>
    <name>stopwalk::edits::EditedLayout</name>
    <message>
        <source>Nothing was changed: this layout is open for looking only.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ActionFinder</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find an action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Actions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that this window can do. Enter does it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what you want to do</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::BlockDialog</name>
    <message>
        <source>Something in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of its middle, on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up the plan.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Details</name>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The workshop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 things</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::EachSecondsField</name>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-down</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::FindingList</name>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the audit found, the worst first. Enter goes there on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to audit yet. Draw a machine with its station, and the findings stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule is met, as drawn and as entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No finding is like that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Gallery</name>
    <message>
        <source>What to draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what to draw; then click on the plan. Enter chooses by keyboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search what to draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here is called that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::MoveDialog</name>
    <message>
        <source>Move or turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the right by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less than 0: to the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the plan. Less than 0: down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees counter-clockwise, each on its own place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move and turn %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::OutlineField</name>
    <message>
        <source>x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ProblemList</name>
    <message>
        <source>Problems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong with the drawing, and what the audit found. Enter goes there on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No problems. Faults of the drawing and findings of the audit would stand here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ReachChooser</name>
    <message>
        <source>What the floor&apos;s colours show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine whose stop is walked to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to the phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to any stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to a cut-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to the stop of one machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Colour the floor by</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RenameDialog</name>
    <message>
        <source>Rename</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As people call it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RulesPanel</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space puts a rule on or off. What is bold is the house&apos;s own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A break of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How bad it is if the rule is not met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the house keeps it otherwise. Shown as the basis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;profile has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules of the profile %1; what is changed here is kept with the layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (the house&apos;s own)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From where on the rule is broken.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Section</name>
    <message>
        <source>the workshop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationModel</name>
    <message>
        <source>at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without the run-down, which is not recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the first sign of trouble to rest: reaction, walk and run-down. A plus: the run-down is not recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it works</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What changes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationTable</name>
    <message>
        <source>Stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every station with its nearest stop and phone. Enter goes there on the plan; a click on a heading sorts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rows picked, or all of them, as text for a table or a letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All stations as a CSV file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::SupposePanel</name>
    <message>
        <source>Tick what might be otherwise, and see what it changes for whom. Nothing of it is saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;After hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The doors that are locked then are shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What might be otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space ticks: a device out of order, a door shut. Enter opens the numbers of something in the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search devices, phones and doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A block on the floor: drag it on the plan, or type its numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to how it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the way</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ThingList</name>
    <message>
        <source>Things on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything on the plan. Enter goes there on the plan; the menu key has the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search things by name or id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to on plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move or turn by numbers...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is drawn yet. Choose a room in the gallery, and drag it on the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on the plan is called that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Why</name>
    <message>
        <source>Why this is a finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick a finding: its rule, limit, basis and what would mend it stand here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To mend it:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it means:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::AuditMarks</name>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::NumberEntry</name>
    <message>
        <source>%1: type a length such as 1.2 m, 900 mm or 4&apos; 6&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: type degrees such as 90</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::PlanView</name>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan of the workshop. The list of things beside it does the same by keyboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This layout is open for looking only: nothing can be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::ReachLayer</name>
    <message>
        <source>feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to the phone, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to any stop, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to a cut-off, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk to the stop of %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the layout before; the new one is being computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is none in this layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None can be walked to: something stands before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Striped: only through a gap under %1; not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crossed: no way.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::AuditPlace</name>
    <message>
        <source>It changes nothing for any station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 station worse off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stations worse off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 station better off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stations better off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 station otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stations otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the audit found, and what if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds a drawing against chosen rules; certifies nothing. Local codes, the maker and licensed people come first. Never rely on a stop as a guard. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::Document</name>
    <message>
        <source>New layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New workshop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FileFlow</name>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the profile %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the picture %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1-copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>OK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s own files beside it could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kinds of device and machines that come with the program are used instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the file as it was saved?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was changed since then is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open for looking only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was taken over by somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work. Ask there before you take it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout could not be opened in that folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It uses the shop&apos;s own kinds of device (%1). Copy device-kinds.yaml there first, or save in another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shop&apos;s own kinds and machines, which cannot be read there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not everything that the layout uses is in that folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing there: %1. Copy it there as well, or the layout is shown and audited without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it there all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved, but perhaps not for good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by someone else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without saving, they are lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw away the work that was kept?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was never saved, and cannot be brought back afterwards. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kept work is still there</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FirstMinutes</name>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a first room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inside, from wall to wall: 8 m, 7500 mm or 24&apos; 6&quot;. It can be changed at any time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or look at a sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or go on with a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a layout…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a length from 0.1 m to 1000 m, such as 8 m, 7500 mm or 24&apos; 6&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::MainWindow</name>
    <message>
        <source>There is nothing to paste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not a picture that can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a PNG or JPEG file, such as a scan or a photo of a plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>OK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All stations are in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What Stopwalk does not do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopwalk checks a drawing against chosen rules. It does not certify a machine, a stop or a room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first.

Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear. Anyone may press any stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a s&amp;ample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go &amp;back to the saved file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select all of this &amp;kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Arrange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn &amp;left by 90°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn &amp;right by 90°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align le&amp;ft sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align right &amp;sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align &amp;top sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align &amp;bottom sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align middles &amp;across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align middles &amp;up and down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal &amp;gaps across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal gaps up and &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pick things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Room, a rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room by &amp;corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;tation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;hone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;olumn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rac&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tape ch&amp;eck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Underlay picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sca&amp;le the underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place to &amp;draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place to &amp;audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show &amp;everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+&apos;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to what is &amp;picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is &amp;this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find an action…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+/</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What Stopwalk does &amp;not do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw and change the plan (Alt+1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings, all stations, and what if (Alt+2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What there is to draw, and what is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gallery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This work is not safe from a crash: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if %1? Nothing of this is saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to how it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (for looking only)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>What was noticed in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The layout was opened all the same. The lines are below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show them all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it as it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no longer on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can no longer be read.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::NoticeBar</name>
    <message>
        <source>Notice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RecoveryDialog</name>
    <message>
        <source>%1 is as it was when this work began: what was kept is newer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds this work already. Nothing is lost if it is thrown away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by somebody else since. If you go on with what was kept, you are asked before it is saved over theirs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no longer on the disk. What was kept is all there is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work that was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work is kept here by a program on another computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopwalk stopped before %1 was saved. The work was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file as it is saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with what was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw the kept work away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide later</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>%1 The layout is audited by the usual profile, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no profile `%1`%2, and no such file beside the layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The profile %1 cannot be read (%2).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
