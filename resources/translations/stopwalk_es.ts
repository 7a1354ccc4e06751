<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Aside</name>
    <message>
        <source>That could not be done</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eso no se pudo hacer</translation>
    </message>
    <message>
        <source>It failed on the way: %1. Close other programs if memory is short, and try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Falló a mitad de camino: %1. Cierre otros programas si falta memoria e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aceptar</translation>
    </message>
</context>
<context>
    <name>Copied</name>
    <message>
        <source>A workshop without a name</source>
        <translation>Un taller sin nombre</translation>
    </message>
    <message>
        <source>%1, audited by the profile %2, copied on %3.</source>
        <translation>%1, auditado según el perfil %2, copiado el %3.</translation>
    </message>
    <message>
        <source>A drawing held against chosen rules; this certifies nothing.</source>
        <translation>Un dibujo comparado con reglas elegidas; esto no certifica nada.</translation>
    </message>
</context>
<context>
    <name>Details</name>
    <message>
        <source>Change the %2 of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar %2 de %1</translation>
    </message>
    <message>
        <source>Id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Identificador</translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El nombre corto con que otras cosas del archivo nombran a esta.</translation>
    </message>
    <message>
        <source>Name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el nombre de %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición x</translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A qué distancia a la derecha en el plano, desde su origen.</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición y</translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A qué distancia hacia arriba en el plano, desde su origen.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grados en sentido contrario a las agujas del reloj.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Height</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Footprint</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Huella</translation>
    </message>
    <message>
        <source>What it covers of the floor, seen from above.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que ocupa del suelo, visto desde arriba.</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rectángulo</translation>
    </message>
    <message>
        <source>By corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por esquinas</translation>
    </message>
    <message>
        <source>Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Along the side where the operator stands.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A lo largo del lado donde está el operario.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>From the operator&apos;s side to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el lado del operario hacia atrás.</translation>
    </message>
    <message>
        <source>Footprint corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esquinas de la huella</translation>
    </message>
    <message>
        <source>Measured from the middle: to the right, and to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medidas desde el centro: a la derecha y hacia atrás.</translation>
    </message>
</context>
<context>
    <name>DeviceSection</name>
    <message>
        <source>Kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>What it is, and so whether and how it stops.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué es, y por tanto si detiene y cómo.</translation>
    </message>
    <message>
        <source>To the right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A la derecha</translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el centro de la máquina, a la derecha del operario.</translation>
    </message>
    <message>
        <source>To the back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacia atrás</translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el centro de la máquina, alejándose del operario.</translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees as the machine stands: 270 is towards the operator.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La dirección del dispositivo hacia quien lo usa, en grados tal como está la máquina: 270 es hacia el operario.</translation>
    </message>
    <message>
        <source>The direction from the device to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La dirección del dispositivo hacia quien lo usa, en grados en sentido contrario a las agujas del reloj, desde la derecha.</translation>
    </message>
    <message>
        <source>Faces</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mira hacia</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Length</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Of a bar or cord, from end to end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De una barra o un cable, de extremo a extremo.</translation>
    </message>
    <message>
        <source>From the floor to where it is pressed, stepped on or pulled.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el suelo hasta donde se pulsa, se pisa o se tira.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene</translation>
    </message>
    <message>
        <source>Which machines it stops. A room stands for every machine in it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué máquinas detiene. Una sala vale por todas sus máquinas.</translation>
    </message>
    <message>
        <source>the machine it is on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la máquina en la que está</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nada todavía</translation>
    </message>
    <message>
        <source>every machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>todas las máquinas</translation>
    </message>
    <message>
        <source>those ticked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>las marcadas</translation>
    </message>
    <message>
        <source>Change what %1 does</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar lo que hace %1</translation>
    </message>
    <message>
        <source>Room: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala: %1</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada</translation>
    </message>
    <message>
        <source>Seconds from this stop until the machine stands still.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Segundos desde esta parada hasta que la máquina queda quieta.</translation>
    </message>
    <message>
        <source>as the machine has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el de la máquina</translation>
    </message>
    <message>
        <source>Run-down of each machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada de cada máquina</translation>
    </message>
    <message>
        <source>Where this stop takes longer or shorter for one machine than another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Donde esta parada tarda más o menos en una máquina que en otra.</translation>
    </message>
    <message>
        <source>Instruction</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Instrucción</translation>
    </message>
    <message>
        <source>What the poster tells a novice to do. Empty: as usual for its kind.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que el cartel le dice que haga a un novato. Vacío: lo habitual para su tipo.</translation>
    </message>
    <message>
        <source>Emergency stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Parada de emergencia</translation>
    </message>
    <message>
        <source>Whether it counts as one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si cuenta como tal.</translation>
    </message>
    <message>
        <source>as usual for its kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>lo habitual para su tipo</translation>
    </message>
    <message>
        <source>yes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no</translation>
    </message>
    <message>
        <source>Thrown to the</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se acciona hacia</translation>
    </message>
    <message>
        <source>Which way a switch is thrown to stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacia dónde se acciona un interruptor para detener.</translation>
    </message>
    <message>
        <source>not given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no indicado</translation>
    </message>
    <message>
        <source>left</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la derecha</translation>
    </message>
    <message>
        <source>top</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>arriba</translation>
    </message>
    <message>
        <source>bottom</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>abajo</translation>
    </message>
    <message>
        <source>Pin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pasador</translation>
    </message>
    <message>
        <source>Whether the pin that guards the start is there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si está el pasador que protege el arranque.</translation>
    </message>
    <message>
        <source>not known</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>fitted</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>puesto</translation>
    </message>
    <message>
        <source>missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>falta</translation>
    </message>
    <message>
        <source>Held at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se sujeta en</translation>
    </message>
    <message>
        <source>The stations whose operator has the trigger in hand.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los puestos cuyo operario tiene el gatillo en la mano.</translation>
    </message>
    <message>
        <source>the machine’s first station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el primer puesto de la máquina</translation>
    </message>
</context>
<context>
    <name>DialogAsker</name>
    <message>
        <source>Workshop layouts (*%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Distribuciones de taller (*%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Open a layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrir una distribución</translation>
    </message>
    <message>
        <source>Save the layout as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la distribución como</translation>
    </message>
    <message>
        <source>Export the table as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Exportar la tabla como</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tablas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Choose a picture to draw over</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elegir una imagen sobre la que dibujar</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imágenes (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)</translation>
    </message>
    <message>
        <source>Save the poster as</source>
        <translation>Guardar el cartel como</translation>
    </message>
    <message>
        <source>Print the poster</source>
        <translation>Imprimir el cartel</translation>
    </message>
    <message>
        <source>Save the rules as</source>
        <translation>Guardar las reglas como</translation>
    </message>
    <message>
        <source>Choose a profile of rules</source>
        <translation>Elegir un perfil de reglas</translation>
    </message>
    <message>
        <source>Profiles (*.yaml);;All files (*)</source>
        <translation>Perfiles (*.yaml);;Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>DoorSection</name>
    <message>
        <source>In the wall of</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En la pared de</translation>
    </message>
    <message>
        <source>The room whose wall carries the door.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La sala en cuya pared está la puerta.</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Da a</translation>
    </message>
    <message>
        <source>The room on the other side, or outside.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La sala del otro lado, o el exterior.</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ancho libre</translation>
    </message>
    <message>
        <source>Between the door’s frame or leaf, where people go through.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Entre el marco o la hoja de la puerta, por donde se pasa.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cerrada con llave</translation>
    </message>
    <message>
        <source>A locked door is no way to a stop or a phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Una puerta cerrada con llave no es camino a una parada ni a un teléfono.</translation>
    </message>
    <message>
        <source>never</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nunca</translation>
    </message>
    <message>
        <source>after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>fuera de horario</translation>
    </message>
    <message>
        <source>always</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>siempre</translation>
    </message>
    <message>
        <source>outside</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>exterior</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>differ</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>varios</translation>
    </message>
</context>
<context>
    <name>FindingGroups</name>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En ninguna sala</translation>
    </message>
    <message>
        <source>Of no machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De ninguna máquina</translation>
    </message>
    <message>
        <source>The whole shop</source>
        <translation>Todo el taller</translation>
    </message>
</context>
<context>
    <name>FixtureSection</name>
    <message>
        <source>A bench, a column, a rack: solid, and no machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un banco, una columna, una estantería: macizo, y no es una máquina.</translation>
    </message>
    <message>
        <source>From the floor to its top: a stop behind it can be seen or reached over it, or not.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Del suelo a lo más alto: una parada detrás se ve o se alcanza por encima, o no.</translation>
    </message>
</context>
<context>
    <name>Gallery</name>
    <message>
        <source>Rooms and doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Salas y puertas</translation>
    </message>
    <message>
        <source>Room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Drag from one corner to the opposite one, or type the two sides.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arrastre de una esquina a la opuesta, o escriba los dos lados.</translation>
    </message>
    <message>
        <source>Room by corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala por esquinas</translation>
    </message>
    <message>
        <source>Click each corner in turn.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en cada esquina, una tras otra.</translation>
    </message>
    <message>
        <source>Door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puerta</translation>
    </message>
    <message>
        <source>Click a wall; it leads to the room on the other side.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en una pared; da a la sala del otro lado.</translation>
    </message>
    <message>
        <source>Machines</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puestos</translation>
    </message>
    <message>
        <source>Operator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Operario</translation>
    </message>
    <message>
        <source>Where the one who works the machine stands.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Donde está quien maneja la máquina.</translation>
    </message>
    <message>
        <source>Helper</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ayudante</translation>
    </message>
    <message>
        <source>Where a second person stands at the work.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Donde está una segunda persona durante el trabajo.</translation>
    </message>
    <message>
        <source>Setter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Preparador</translation>
    </message>
    <message>
        <source>Where somebody stands to set the machine up.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Donde se está para preparar la máquina.</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Instructor</translation>
    </message>
    <message>
        <source>Where somebody stands to teach or watch.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Donde se está para enseñar o vigilar.</translation>
    </message>
    <message>
        <source>Stop devices</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivos de parada</translation>
    </message>
    <message>
        <source>Stops nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No detiene nada.</translation>
    </message>
    <message>
        <source>Phones</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfonos</translation>
    </message>
    <message>
        <source>Phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Click the wall that it hangs on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la pared de la que cuelga.</translation>
    </message>
    <message>
        <source>Benches and columns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Bancos y columnas</translation>
    </message>
    <message>
        <source>Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Solid, and no machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Macizo, y no es una máquina.</translation>
    </message>
    <message>
        <source>Column</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Rack</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Estantería</translation>
    </message>
    <message>
        <source>Notes and checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notas y mediciones</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Words on the plan, with a line to what they are about.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Palabras en el plano, con una línea hasta aquello de lo que tratan.</translation>
    </message>
    <message>
        <source>Tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medición con cinta</translation>
    </message>
    <message>
        <source>A distance taped on the floor, held against the computed one: click where it was taped from, then to.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Una distancia medida con cinta en el suelo, comparada con la calculada: haga clic donde empezó la cinta y luego donde terminó.</translation>
    </message>
    <message>
        <source>Underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imagen de fondo</translation>
    </message>
    <message>
        <source>Scale the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escala de la imagen de fondo</translation>
    </message>
    <message>
        <source>Click two points of the picture, and type how far they are apart.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en dos puntos de la imagen y escriba cuánto distan.</translation>
    </message>
    <message>
        <source>Comes with its usual stations (%1) and devices (%2).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Viene con sus puestos (%1) y dispositivos (%2) habituales.</translation>
    </message>
</context>
<context>
    <name>LengthField</name>
    <message>
        <source>900 (in %1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>900 (en %1)</translation>
    </message>
    <message>
        <source>Not a length: write it with a point, such as 1.2 m, or as %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es una longitud: escríbala con punto, como 1.2 m, o como %1.</translation>
    </message>
    <message>
        <source>Not a length up to 10 km. Type it as 1.2 m, 4&apos; 6&quot; or %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es una longitud de hasta 10 km. Escríbala como 1.2 m, 4&apos; 6&quot; o %1.</translation>
    </message>
    <message>
        <source>It has to be more than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiene que ser mayor que 0.</translation>
    </message>
    <message>
        <source>It cannot be less than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No puede ser menor que 0.</translation>
    </message>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>That would be %1, where %2 is usual. Type the unit with it, such as 1.2 m.</source>
        <translation>Eso serían %1, y lo habitual es %2. Escriba también la unidad, como 1.2 m.</translation>
    </message>
</context>
<context>
    <name>LetStand</name>
    <message>
        <source>%1 Accepted by %2 until %3.</source>
        <translation>%1 Aceptado por %2 hasta el %3.</translation>
    </message>
    <message>
        <source>accepted at %1, now %2</source>
        <translation>aceptado con %1, ahora %2</translation>
    </message>
    <message>
        <source>accepted at %1, now without a figure</source>
        <translation>aceptado con %1, ahora sin cifra</translation>
    </message>
    <message>
        <source>the last day, %1, has passed</source>
        <translation>el último día, %1, ya pasó</translation>
    </message>
    <message>
        <source>%1 No longer accepted: %2.</source>
        <translation>%1 Ya no se acepta: %2.</translation>
    </message>
    <message>
        <source>No longer accepted, %1; it was by %2 until %3: %4</source>
        <translation>Ya no se acepta, %1; lo aceptó %2 hasta el %3: %4</translation>
    </message>
    <message>
        <source>Accepted by %1 until %2: %3</source>
        <translation>Aceptado por %1 hasta el %2: %3</translation>
    </message>
    <message>
        <source>%1 about %2, accepted by %3 until %4: %5</source>
        <translation>%1 sobre %2, aceptado por %3 hasta el %4: %5</translation>
    </message>
    <message>
        <source>its last day, %1, cannot be read: a day such as 2026-12-31 is expected</source>
        <translation>su último día, %1, no se puede leer: se espera un día como 2026-12-31</translation>
    </message>
    <message>
        <source>%1 about %2, no longer accepted, %3; it was by %4 until %5: %6</source>
        <translation>%1 sobre %2, ya no aceptado, %3; lo aceptó %4 hasta el %5: %6</translation>
    </message>
    <message>
        <source>This is not found now. Should it come back, it is not accepted: %1. What accepted it is of no use any more: take it back.</source>
        <translation>Esto no se encuentra ahora. Si volviera, no se aceptaría: %1. Lo que lo aceptaba ya no sirve: retírelo.</translation>
    </message>
    <message>
        <source>This is not found now. Should it come back, it is not accepted: it is not said which of several is meant. Take it back where it is mended.</source>
        <translation>Esto no se encuentra ahora. Si volviera, no se aceptaría: no se dice cuál de varios es. Retírelo donde esté corregido.</translation>
    </message>
    <message>
        <source>This is not found now, yet it is kept with the layout that it is accepted: should it come back, it is accepted again. Take it back where it is mended.</source>
        <translation>Esto no se encuentra ahora, pero en la distribución consta que se acepta: si volviera, se aceptaría otra vez. Retírelo donde esté corregido.</translation>
    </message>
    <message>
        <source>This is not found now, yet it is kept with the layout that it is accepted: should it come back, it is accepted again as long as it is no worse than %1. Take it back where it is mended.</source>
        <translation>Esto no se encuentra ahora, pero en la distribución consta que se acepta: si volviera, se aceptaría otra vez mientras no sea peor que %1. Retírelo donde esté corregido.</translation>
    </message>
    <message>
        <source>it was then</source>
        <translation>entonces</translation>
    </message>
    <message>
        <source>Not accepted: what is accepted does not say which of several it means.</source>
        <translation>No se acepta: lo aceptado no dice cuál de varios es.</translation>
    </message>
</context>
<context>
    <name>MachineSection</name>
    <message>
        <source>As people call it: Engine lathe 1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Como la llama la gente: Torno paralelo 1.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>What sort of machine it is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué clase de máquina es.</translation>
    </message>
    <message>
        <source>From the floor to its top.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Del suelo a lo más alto.</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada</translation>
    </message>
    <message>
        <source>Seconds from the stop until it stands still, as timed at the machine. Empty: not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Segundos desde la parada hasta que queda quieta, cronometrados en la máquina. Vacío: no se sabe.</translation>
    </message>
    <message>
        <source>Hand-held</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De mano</translation>
    </message>
    <message>
        <source>Held or guided by hand: only its trigger counts.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se sujeta o guía con la mano: solo cuenta su gatillo.</translation>
    </message>
    <message>
        <source>After the stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Después de la parada</translation>
    </message>
    <message>
        <source>What to do once it stands still: Back the tool off before you release the stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué hacer cuando quede quieta: Retire la herramienta antes de soltar la parada.</translation>
    </message>
    <message>
        <source>not given</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no indicado</translation>
    </message>
    <message>
        <source>Hazard outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Zona de peligro</translation>
    </message>
    <message>
        <source>Nobody may reach across it. Measured from the middle of the machine: to the right, and to the back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nadie puede alargar el brazo por encima. Medida desde el centro de la máquina: a la derecha y hacia atrás.</translation>
    </message>
</context>
<context>
    <name>MixedSection</name>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición x</translation>
    </message>
    <message>
        <source>How far to the right on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A qué distancia a la derecha en el plano, desde su origen.</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición y</translation>
    </message>
    <message>
        <source>How far up on the plan, from its origin.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A qué distancia hacia arriba en el plano, desde su origen.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grados en sentido contrario a las agujas del reloj.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar %1</translation>
    </message>
</context>
<context>
    <name>NoteSection</name>
    <message>
        <source>Text</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Texto</translation>
    </message>
    <message>
        <source>The words on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Las palabras en el plano.</translation>
    </message>
    <message>
        <source>Points to something</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Señala algo</translation>
    </message>
    <message>
        <source>A line leads from the words to a place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Una línea va de las palabras a un lugar.</translation>
    </message>
    <message>
        <source>Points to x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Señala a x</translation>
    </message>
    <message>
        <source>The place that the line leads to.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El lugar al que va la línea.</translation>
    </message>
    <message>
        <source>Points to y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Señala a y</translation>
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
        <translation>Haga clic donde va la nota; arrastre desde ahí hasta lo que señala.</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>NumberField</name>
    <message>
        <source>Not a number: write it with a point, such as 2.5.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es un número: escríbalo con punto, como 2.5.</translation>
    </message>
    <message>
        <source>Not a number. Type one such as %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es un número. Escriba uno como %1.</translation>
    </message>
    <message>
        <source>It has to be a whole number.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiene que ser un número entero.</translation>
    </message>
    <message>
        <source>It has to be more than %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiene que ser mayor que %1.</translation>
    </message>
    <message>
        <source>It has to be from %1 to %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiene que estar entre %1 y %2.</translation>
    </message>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se sabe</translation>
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
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Direction</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Click the room&apos;s first corner, or type its place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la primera esquina de la sala, o escriba su posición.</translation>
    </message>
    <message>
        <source>Click the next corner, or type length, Tab, direction, Enter. Backspace takes one back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la siguiente esquina, o escriba longitud, Tab, dirección, Intro. Retroceso quita una.</translation>
    </message>
    <message>
        <source>Click the next corner; click the first one, or press Enter without a number, to close the room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la siguiente esquina; para cerrar la sala, haga clic en la primera o pulse Intro sin un número.</translation>
    </message>
</context>
<context>
    <name>PhoneSection</name>
    <message>
        <source>As people call it: Yard phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Como lo llama la gente: Teléfono del patio.</translation>
    </message>
    <message>
        <source>Faces</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mira hacia</translation>
    </message>
    <message>
        <source>The direction from the phone to the one who uses it, in degrees counter-clockwise from the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La dirección del teléfono hacia quien lo usa, en grados en sentido contrario a las agujas del reloj, desde la derecha.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>From the floor.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el suelo.</translation>
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
        <translation>Giro</translation>
    </message>
    <message>
        <source>Click where it stands, or type its place and turn. R turns it by 15°.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic donde está, o escriba su posición y giro. R gira 15°.</translation>
    </message>
    <message>
        <source>Click the wall where the door goes.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la pared donde va la puerta.</translation>
    </message>
    <message>
        <source>Click where the person stands at the machine.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic donde está la persona en la máquina.</translation>
    </message>
    <message>
        <source>Click the machine&apos;s side or the wall that carries it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en el lado de la máquina o en la pared que lo lleva.</translation>
    </message>
    <message>
        <source>Click the wall where the phone hangs.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la pared de la que cuelga el teléfono.</translation>
    </message>
</context>
<context>
    <name>Problems</name>
    <message>
        <source>Fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Incumplimiento</translation>
    </message>
    <message>
        <source>Warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota</translation>
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
        <translation>Como llama la gente a la sala; figura en el plano y en el cartel.</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Al aire libre</translation>
    </message>
    <message>
        <source>A porch, yard or outside corridor that people walk on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un porche, patio o pasillo exterior por el que se camina.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esquinas</translation>
    </message>
    <message>
        <source>The inside faces of the walls, corner by corner.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Las caras interiores de las paredes, esquina por esquina.</translation>
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
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Click the opposite corner, or type width, Tab, depth, Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la esquina opuesta, o escriba anchura, Tab, fondo, Intro.</translation>
    </message>
    <message>
        <source>Click or drag from the room&apos;s first corner, or type its numbers.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en la primera esquina de la sala o arrastre desde ella, o escriba sus números.</translation>
    </message>
</context>
<context>
    <name>ScaleTool</name>
    <message>
        <source>True distance</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Distancia real</translation>
    </message>
    <message>
        <source>There is no underlay picture yet: choose one in the gallery.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía no hay imagen de fondo: elija una en la galería.</translation>
    </message>
    <message>
        <source>Click one end of a length that you know on the picture.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en un extremo de una longitud de la imagen que conozca.</translation>
    </message>
    <message>
        <source>Click its other end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en el otro extremo.</translation>
    </message>
    <message>
        <source>Type its true length, then Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba la longitud real y pulse Intro.</translation>
    </message>
</context>
<context>
    <name>SelectTool</name>
    <message>
        <source>Release to put it there; Escape leaves it where it was; Alt keeps it from being pulled to guides.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Suelte para dejarlo ahí; Esc lo deja donde estaba; con Alt no se pega a las guías.</translation>
    </message>
    <message>
        <source>Draw a first room: its numbers, or Draw, Room.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibuje una primera sala: con sus números, o Dibujar, Sala.</translation>
    </message>
    <message>
        <source>Click a thing to pick it, or drag a frame round several.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en una cosa para elegirla, o arrastre un marco alrededor de varias.</translation>
    </message>
    <message>
        <source>Drag it, nudge it with the arrow keys, or type its numbers at the right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Arrástrela, muévala con las flechas, o escriba sus números a la derecha.</translation>
    </message>
</context>
<context>
    <name>StationSection</name>
    <message>
        <source>Role</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Función</translation>
    </message>
    <message>
        <source>Who stands here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quién está aquí.</translation>
    </message>
    <message>
        <source>operator</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>operario</translation>
    </message>
    <message>
        <source>helper</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>setter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>preparador</translation>
    </message>
    <message>
        <source>instructor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>instructor</translation>
    </message>
    <message>
        <source>To the right</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A la derecha</translation>
    </message>
    <message>
        <source>From the middle of the machine, to the operator’s right.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el centro de la máquina, a la derecha del operario.</translation>
    </message>
    <message>
        <source>To the back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacia atrás</translation>
    </message>
    <message>
        <source>From the middle of the machine, away from the operator: the operator stands at less than 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde el centro de la máquina, alejándose del operario: el operario está a menos de 0.</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>its stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>su parada</translation>
    </message>
    <message>
        <source>%1 at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 al alcance de la mano</translation>
    </message>
    <message>
        <source>walk %1 to %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 a pie hasta %2</translation>
    </message>
    <message>
        <source>walk %1 to %2 through a narrow place</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 a pie hasta %2 por un lugar estrecho</translation>
    </message>
    <message>
        <source>no way to a stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay camino a una parada</translation>
    </message>
    <message>
        <source>no stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin parada</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>meets</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>cumple</translation>
    </message>
    <message>
        <source>warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>aviso</translation>
    </message>
    <message>
        <source>fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>incumple</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, accepted</source>
        <translation>%1, aceptado</translation>
    </message>
</context>
<context>
    <name>Suppose</name>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puerta %1</translation>
    </message>
    <message>
        <source>%1 by %2 at %3, %4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 por %2 en %3, %4</translation>
    </message>
    <message>
        <source>%1 is out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está fuera de servicio</translation>
    </message>
    <message>
        <source>%1 devices are out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 dispositivos están fuera de servicio</translation>
    </message>
    <message>
        <source>%1 is shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está cerrada</translation>
    </message>
    <message>
        <source>%1 doors are shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 puertas están cerradas</translation>
    </message>
    <message>
        <source>something stands in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>hay algo en el camino</translation>
    </message>
    <message>
        <source>%1 things stand in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>hay %1 cosas en el camino</translation>
    </message>
    <message>
        <source>it is after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es fuera de horario</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>in the way: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>en el paso: %1</translation>
    </message>
</context>
<context>
    <name>TapeCheckSection</name>
    <message>
        <source>From</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde</translation>
    </message>
    <message>
        <source>The station, device or phone where the tape begins.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El puesto, dispositivo o teléfono donde empieza la cinta.</translation>
    </message>
    <message>
        <source>To</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>The station, device or phone where the tape ends.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El puesto, dispositivo o teléfono donde termina la cinta.</translation>
    </message>
    <message>
        <source>Taped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medido</translation>
    </message>
    <message>
        <source>As measured along the floor with a tape.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medido a lo largo del suelo con una cinta.</translation>
    </message>
    <message>
        <source>Day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Día</translation>
    </message>
    <message>
        <source>When it was taped: year, month, day.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cuándo se midió: año, mes, día.</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por</translation>
    </message>
    <message>
        <source>Who taped it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quién lo midió.</translation>
    </message>
</context>
<context>
    <name>TapeTool</name>
    <message>
        <source>Taped length</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Longitud medida</translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape began.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en el puesto, la parada o el teléfono donde empezó la cinta.</translation>
    </message>
    <message>
        <source>Click the station, stop or phone where the tape ended.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga clic en el puesto, la parada o el teléfono donde terminó la cinta.</translation>
    </message>
    <message>
        <source>Type the length that was read from the tape along the way on the floor, then Enter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba la longitud leída en la cinta a lo largo del camino en el suelo y pulse Intro.</translation>
    </message>
</context>
<context>
    <name>TextField</name>
    <message>
        <source>Not a day. Type it as year, month, day: 2026-03-02.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es un día. Escríbalo como año, mes, día: 2026-03-02.</translation>
    </message>
    <message>
        <source>It cannot be left empty.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No puede quedar vacío.</translation>
    </message>
    <message>
        <source>Everything needs an id, such as saw-2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todo necesita un identificador, como sierra-2.</translation>
    </message>
    <message>
        <source>“%1” means something else in a layout. Choose another id.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>«%1» significa otra cosa en una distribución. Elija otro identificador.</translation>
    </message>
    <message>
        <source>An id has only lower-case letters a to z, digits and hyphens, such as saw-2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un identificador solo tiene letras minúsculas de la a a la z, cifras y guiones, como sierra-2.</translation>
    </message>
</context>
<context>
    <name>ThingRows</name>
    <message>
        <source>room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sala</translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En ninguna sala</translation>
    </message>
    <message>
        <source>Tape checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mediciones con cinta</translation>
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
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Tape check %1: %2 to %3, %4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medición con cinta %1: de %2 a %3, %4</translation>
    </message>
    <message>
        <source>Underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imagen de fondo</translation>
    </message>
    <message>
        <source>%1, machine: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, máquina: %2</translation>
    </message>
    <message>
        <source>%1, machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, máquina</translation>
    </message>
    <message>
        <source>Door %1 to %2, %3 wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puerta %1 a %2, de %3 de ancho</translation>
    </message>
    <message>
        <source>%1, locked after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, cerrada con llave fuera de horario</translation>
    </message>
    <message>
        <source>%1, always locked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, siempre cerrada con llave</translation>
    </message>
</context>
<context>
    <name>UnderlaySection</name>
    <message>
        <source>Picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imagen</translation>
    </message>
    <message>
        <source>The file of the scan or photo, beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El archivo del escaneo o la foto, junto a la distribución.</translation>
    </message>
    <message>
        <source>Millimetres a pixel</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Milímetros por píxel</translation>
    </message>
    <message>
        <source>How much of the floor a pixel of the picture covers.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cuánto suelo cubre un píxel de la imagen.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Opacidad</translation>
    </message>
    <message>
        <source>From 0, not to be seen, to 1, as the picture is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De 0, que no se ve, a 1, la imagen tal como es.</translation>
    </message>
</context>
<context>
    <name>WorkshopSection</name>
    <message>
        <source>Revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>File</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Its name, as it stands on reports and posters.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Su nombre, como figura en informes y carteles.</translation>
    </message>
    <message>
        <source>Address</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>What to read to the one who answers an emergency call.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que hay que leer a quien atienda la llamada de emergencia.</translation>
    </message>
    <message>
        <source>Emergency call</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Llamada de emergencia</translation>
    </message>
    <message>
        <source>What to dial, and from which phone.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué marcar, y desde qué teléfono.</translation>
    </message>
    <message>
        <source>Meet responders at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lugar para recibir a emergencias</translation>
    </message>
    <message>
        <source>The door or gate where somebody waits for them.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La puerta o verja donde alguien los espera.</translation>
    </message>
    <message>
        <source>Number</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Número</translation>
    </message>
    <message>
        <source>Counts the plans that were put up on the wall.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cuenta los planos que se han colgado en la pared.</translation>
    </message>
    <message>
        <source>no revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin revisión</translation>
    </message>
    <message>
        <source>Day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Día</translation>
    </message>
    <message>
        <source>Of this revision: year, month, day.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De esta revisión: año, mes, día.</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por</translation>
    </message>
    <message>
        <source>Who drew it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quién la dibujó.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>What changed, and why.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué cambió, y por qué.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>In which lengths are shown, typed without a unit, and written.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En la que las longitudes se muestran, se teclean sin unidad y se guardan.</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>metres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>metros</translation>
    </message>
    <message>
        <source>inches</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>pies y pulgadas</translation>
    </message>
    <message>
        <source>Profile</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>The rules and limits to audit by: %1, or the name of a file beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Las reglas y los límites de la auditoría: %1, o el nombre de un archivo junto a la distribución.</translation>
    </message>
</context>
<context>
    <name>documents</name>
    <message>
        <source>the link leads to a file that is not there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el enlace lleva a un archivo que no está</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no existe tal archivo</translation>
    </message>
    <message>
        <source>it is a folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es una carpeta</translation>
    </message>
    <message>
        <source>it is not a plain file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no es un archivo corriente</translation>
    </message>
    <message>
        <source>it is over 64 MiB; no layout is so large</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>pasa de 64 MiB; ninguna distribución es tan grande</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>línea %1: %2</translation>
    </message>
    <message>
        <source>; and %1 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; y %1 más</translation>
    </message>
    <message>
        <source>Not saved: what is there cannot be read, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: lo que hay ahí no se puede leer y se deja como está</translation>
    </message>
    <message>
        <source>Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>Not saved: what is there is not a layout, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: lo que hay ahí no es una distribución y se deja como está</translation>
    </message>
    <message>
        <source>Save under another name, or move that file away first.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre, o aparte antes ese archivo.</translation>
    </message>
    <message>
        <source>Not saved: there is a layout of this name already</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: ya hay una distribución con este nombre</translation>
    </message>
    <message>
        <source>Save under another name, or replace it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre, o sustitúyala.</translation>
    </message>
    <message>
        <source>Not saved: the file has changed on disk since it was opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: el archivo ha cambiado en el disco desde que se abrió</translation>
    </message>
    <message>
        <source>Save under another name, or look at both and replace the one on disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre, o mire ambos y sustituya el del disco.</translation>
    </message>
    <message>
        <source>Not saved: the file would not open again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: el archivo no volvería a abrirse</translation>
    </message>
    <message>
        <source>Undo the last change and save again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Deshaga el último cambio y guarde otra vez.</translation>
    </message>
    <message>
        <source>Saved, but it is not sure that the file would survive a power cut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardado, pero no es seguro que el archivo sobreviva a un corte de luz</translation>
    </message>
    <message>
        <source>Save again, or save a copy on another disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde otra vez, o guarde una copia en otro disco.</translation>
    </message>
    <message>
        <source>Not saved: the file could not be written; what was there is unchanged</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: no se pudo escribir el archivo; lo que había sigue igual</translation>
    </message>
    <message>
        <source>Make room, or mend the permissions, or save in another folder; then save again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Haga sitio, o arregle los permisos, o guarde en otra carpeta; después guarde otra vez.</translation>
    </message>
    <message>
        <source>Not opened: the file cannot be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se abrió: el archivo no se puede leer</translation>
    </message>
    <message>
        <source>Choose another file, or mend what is in the way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija otro archivo, o arregle lo que lo impide.</translation>
    </message>
    <message>
        <source>Not opened: this is not a layout that can be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se abrió: no es una distribución que se pueda leer</translation>
    </message>
    <message>
        <source>The file is left as it is. Mend the lines named, or open another file.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El archivo se deja como está. Arregle las líneas nombradas, o abra otro archivo.</translation>
    </message>
    <message>
        <source>Open to look only: another holds this layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abierta solo para ver: otra persona tiene esta distribución</translation>
    </message>
    <message>
        <source>its lock is damaged; made by %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>su bloqueo está dañado; lo puso %1</translation>
    </message>
    <message>
        <source>If you are sure that nobody works on it, take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si está seguro de que nadie trabaja en ella, hágase cargo.</translation>
    </message>
    <message>
        <source>Close it there, or save your work under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ciérrela allí, o guarde su trabajo con otro nombre.</translation>
    </message>
    <message>
        <source>Ask there first. If you are sure that nobody works on it, take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pregunte antes allí. Si está seguro de que nadie trabaja en ella, hágase cargo.</translation>
    </message>
    <message>
        <source>Open to look only: nothing can be written in this folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abierta solo para ver: no se puede escribir nada en esta carpeta</translation>
    </message>
    <message>
        <source>Save under another name in a folder of yours, or have the permissions changed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre en una carpeta suya, o pida que cambien los permisos.</translation>
    </message>
    <message>
        <source>Open without a lock: another could write the file at the same time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abierta sin bloqueo: otra persona podría escribir el archivo a la vez</translation>
    </message>
    <message>
        <source>Try again, or save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Inténtelo otra vez, o guarde con otro nombre.</translation>
    </message>
    <message>
        <source>somebody</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>alguien</translation>
    </message>
    <message>
        <source>an unknown computer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>un ordenador desconocido</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 en %2, desde %3</translation>
    </message>
    <message>
        <source>The program stopped while it kept this work, and a part is missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El programa se detuvo mientras conservaba este trabajo, y falta una parte</translation>
    </message>
    <message>
        <source>This kept work is damaged and cannot be opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Este trabajo conservado está dañado y no se puede abrir</translation>
    </message>
    <message>
        <source>What was kept before it, if anything, is listed beside it. Throw this away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se conservó antes, si hay algo, aparece al lado. Descarte este, o consérvelo y mírelo con un editor de texto: desde la tercera línea es una distribución.</translation>
    </message>
    <message>
        <source>Throw it away, or keep it and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Descártelo, o consérvelo y mírelo con un editor de texto: desde la tercera línea es una distribución.</translation>
    </message>
    <message>
        <source>Unsaved work is kept here, and its lock is damaged</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aquí hay conservado trabajo sin guardar, y su bloqueo está dañado</translation>
    </message>
    <message>
        <source>Start the program again in a minute to have the work back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vuelva a iniciar el programa dentro de un minuto para recuperar el trabajo.</translation>
    </message>
    <message>
        <source>Unsaved work is kept here by a program on another computer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un programa en otro ordenador conserva aquí trabajo sin guardar</translation>
    </message>
    <message>
        <source>If the program runs there no more, start it there once to have the work back.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si el programa ya no se ejecuta allí, inícielo allí una vez para recuperar el trabajo.</translation>
    </message>
    <message>
        <source>This kept work is whole, but cannot be opened as things are</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Este trabajo conservado está entero, pero no se puede abrir tal como están las cosas</translation>
    </message>
    <message>
        <source>Keep it, and look at it with a text editor: from the third line on it is a layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Consérvelo y mírelo con un editor de texto: desde la tercera línea es una distribución.</translation>
    </message>
    <message>
        <source>If the shop&apos;s own kinds of device were moved, put their file back beside %1 and start the program again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si se movieron los tipos de dispositivo propios del taller, vuelva a poner su archivo junto a %1 e inicie el programa otra vez.</translation>
    </message>
    <message>
        <source>its bytes are not those that were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sus bytes no son los que se escribieron</translation>
    </message>
    <message>
        <source>The kept work could not be thrown away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudo descartar el trabajo conservado</translation>
    </message>
    <message>
        <source>It will be offered again at the next start. Mend the permissions of its folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se volverá a ofrecer en el próximo inicio. Arregle los permisos de su carpeta.</translation>
    </message>
    <message>
        <source>Your unsaved work cannot be kept for the case of a crash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Su trabajo sin guardar no se puede conservar por si el programa falla</translation>
    </message>
    <message>
        <source>Save often; make room or mend the permissions of this folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde a menudo; haga sitio o arregle los permisos de esta carpeta.</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>the lock cannot be made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se puede crear el bloqueo</translation>
    </message>
    <message>
        <source>Your last changes could not be kept for the case of a crash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudieron conservar sus últimos cambios por si el programa falla</translation>
    </message>
    <message>
        <source>Save now; make room or mend the permissions of this folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde ahora; haga sitio o arregle los permisos de esta carpeta.</translation>
    </message>
    <message>
        <source>Not saved: the file is write-protected, and is left as it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se guardó: el archivo está protegido contra escritura y se deja como está</translation>
    </message>
    <message>
        <source>Save under another name, or take the protection off first.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde con otro nombre, o quite antes la protección.</translation>
    </message>
    <message>
        <source>Its name must end in one of .%1, so that no layout, profile or record is written over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Su nombre debe terminar en uno de .%1, para que no se sobrescriba ninguna distribución, perfil ni registro.</translation>
    </message>
    <message>
        <source>It is write-protected, and is left as it is. Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Está protegido contra escritura y se deja como está. Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>The layout is made with this file. Save under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La distribución se hace con este archivo. Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>Its name must end in .yaml, and not in .layout.yaml as those of layouts do.</source>
        <translation>El nombre debe terminar en .yaml, y no en .layout.yaml como los de las distribuciones.</translation>
    </message>
    <message>
        <source>There is a file of this name that is no profile. Save under another name.</source>
        <translation>Hay un archivo con este nombre que no es un perfil. Guarde con otro nombre.</translation>
    </message>
</context>
<context>
    <name>edits</name>
    <message>
        <source>Add %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Remove the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar la imagen de fondo</translation>
    </message>
    <message>
        <source>Change the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar la imagen de fondo</translation>
    </message>
    <message>
        <source>Add the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Añadir la imagen de fondo</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear %1</translation>
    </message>
    <message>
        <source>Distribute %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Repartir %1</translation>
    </message>
    <message>
        <source>Change the %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar %1 de %2</translation>
    </message>
    <message>
        <source>the workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el taller</translation>
    </message>
    <message>
        <source>the revision</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la revisión</translation>
    </message>
    <message>
        <source>Change the profile</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el perfil</translation>
    </message>
    <message>
        <source>Change the unit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar la unidad</translation>
    </message>
    <message>
        <source>kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>tipo</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>Change the rule %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar la regla %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pegar %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Duplicar %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Remove %1 and %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar %1 y %2</translation>
    </message>
    <message>
        <source>1 door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 puerta</translation>
    </message>
    <message numerus="yes">
        <source>%n doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>%n puerta</numerusform>
            <numerusform>%n puertas</numerusform>
        </translation>
    </message>
    <message>
        <source>1 tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 medición con cinta</translation>
    </message>
    <message numerus="yes">
        <source>%n tape checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>%n medición con cinta</numerusform>
            <numerusform>%n mediciones con cinta</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing with the id %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay nada con el identificador %1.</translation>
    </message>
    <message>
        <source>An id has lower-case letters, digits and hyphens only: lathe-1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un identificador solo tiene letras minúsculas, cifras y guiones: lathe-1.</translation>
    </message>
    <message>
        <source>The id %1 has a meaning of its own; choose another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El identificador %1 tiene un significado propio; elija otro.</translation>
    </message>
    <message>
        <source>There is something with the id %1 already; choose another.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ya hay algo con el identificador %1; elija otro.</translation>
    </message>
    <message>
        <source>Change the id of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el identificador de %1</translation>
    </message>
    <message>
        <source>Move a corner of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover una esquina de %1</translation>
    </message>
    <message>
        <source>Move a wall of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover una pared de %1</translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Añadir una esquina a %1</translation>
    </message>
    <message>
        <source>Remove a corner of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar una esquina de %1</translation>
    </message>
    <message>
        <source>Scale the underlay picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fijar la escala de la imagen de fondo</translation>
    </message>
    <message>
        <source>Nothing was changed: a layout holds places and lengths within 10 km only, and sizes above 0.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se cambió nada: una distribución solo admite lugares y longitudes de hasta 10 km, y tamaños mayores que 0.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>imagen de fondo</translation>
    </message>
    <message>
        <source>room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sala</translation>
    </message>
    <message>
        <source>door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>puerta</translation>
    </message>
    <message>
        <source>fixture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>elemento fijo</translation>
    </message>
    <message>
        <source>machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>máquina</translation>
    </message>
    <message>
        <source>station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>puesto</translation>
    </message>
    <message>
        <source>device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>dispositivo</translation>
    </message>
    <message>
        <source>phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>teléfono</translation>
    </message>
    <message>
        <source>note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nota</translation>
    </message>
    <message>
        <source>tape check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>medición con cinta</translation>
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
            <numerusform>%n cosa</numerusform>
            <numerusform>%n cosas</numerusform>
        </translation>
    </message>
    <message>
        <source>Accept %1 about %2</source>
        <translation>Aceptar %1 sobre %2</translation>
    </message>
    <message>
        <source>No longer accept %1 about %2</source>
        <translation>Ya no aceptar %1 sobre %2</translation>
    </message>
    <message>
        <source>Remove what accepted %1 about %2</source>
        <translation>Quitar lo que aceptaba %1 sobre %2</translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>al alcance de la mano</translation>
    </message>
    <message>
        <source>no way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin camino</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>stop: %1; phone: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>parada: %1; teléfono: %2</translation>
    </message>
    <message>
        <source>%1, at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, al alcance de la mano</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 through a narrow way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2 por un camino estrecho</translation>
    </message>
    <message>
        <source>no way to it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay camino</translation>
    </message>
    <message>
        <source>none</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay</translation>
    </message>
    <message>
        <source>not measured, the station is not on the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin medir, el puesto no está en el suelo</translation>
    </message>
    <message>
        <source>Underlay picture</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imagen de fondo</translation>
    </message>
    <message>
        <source>Door %1, %2 wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puerta %1, de %2 de ancho</translation>
    </message>
    <message>
        <source>Station %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puesto %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Phone: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono: %1</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Taped from %1 to %2: %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medido de %1 a %2: %3</translation>
    </message>
    <message>
        <source>O</source>
        <comment>letter of an operator&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>O</translation>
    </message>
    <message>
        <source>H</source>
        <comment>letter of a helper&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A</translation>
    </message>
    <message>
        <source>S</source>
        <comment>letter of a setter&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>P</translation>
    </message>
    <message>
        <source>I</source>
        <comment>letter of an instructor&apos;s station</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>I</translation>
    </message>
    <message>
        <source>moved %1 across, %2 up</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>movido %1 en horizontal, %2 hacia arriba</translation>
    </message>
    <message>
        <source>Emergency phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono de emergencia</translation>
    </message>
    <message>
        <source>Column</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Rack</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Estantería</translation>
    </message>
    <message>
        <source>Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Room %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala %1</translation>
    </message>
    <message>
        <source>pointer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>señal</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>not known</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>wide</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ancho</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>narrowest %1 → %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>lo más estrecho %1 → %2</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>stop %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>parada %1</translation>
    </message>
    <message>
        <source>phone %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>teléfono %1</translation>
    </message>
    <message>
        <source>Release to pick what lies in the frame.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Suelte para elegir lo que queda dentro del marco.</translation>
    </message>
    <message>
        <source>fails now also: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora también incumple: %1</translation>
    </message>
    <message>
        <source>warns now also: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora también aviso: %1</translation>
    </message>
    <message>
        <source>now meets</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora cumple</translation>
    </message>
    <message>
        <source>now fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora incumple</translation>
    </message>
    <message>
        <source>now warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora aviso</translation>
    </message>
    <message>
        <source>now fails: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora incumple: %1</translation>
    </message>
    <message>
        <source>now warns: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ahora aviso: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>; </translation>
    </message>
    <message>
        <source>nothing stops it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nada la detiene</translation>
    </message>
    <message>
        <source>no stop at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ninguna parada al alcance de la mano</translation>
    </message>
    <message>
        <source>stop too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>parada demasiado lejos</translation>
    </message>
    <message>
        <source>phone too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>teléfono demasiado lejos</translation>
    </message>
    <message>
        <source>failed its check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no pasó su comprobación</translation>
    </message>
    <message>
        <source>nobody can walk to it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nadie puede llegar hasta él</translation>
    </message>
    <message>
        <source>the way is narrow</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el camino es estrecho</translation>
    </message>
    <message>
        <source>no way out that is wide enough</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ninguna salida lo bastante ancha</translation>
    </message>
    <message>
        <source>too high or too low</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>demasiado alto o demasiado bajo</translation>
    </message>
    <message>
        <source>above the accessible reach</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>por encima del alcance accesible</translation>
    </message>
    <message>
        <source>no emergency stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ninguna parada de emergencia</translation>
    </message>
    <message>
        <source>the start has no guard</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el arranque no tiene protección</translation>
    </message>
    <message>
        <source>what looks like its stop is nearer</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>más cerca está lo que solo parece su parada</translation>
    </message>
    <message>
        <source>help comes too late</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la ayuda llega tarde</translation>
    </message>
    <message>
        <source>runs on too long</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>tarda demasiado en detenerse</translation>
    </message>
    <message>
        <source>runs on longer by the room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>con el corte general de la sala tarda más en detenerse</translation>
    </message>
    <message>
        <source>no room cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ningún corte general de la sala</translation>
    </message>
    <message>
        <source>room cut-off too far</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>corte general de la sala demasiado lejos</translation>
    </message>
    <message>
        <source>no room cut-off near an exit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ningún corte general de la sala cerca de una salida</translation>
    </message>
    <message>
        <source>stop out of sight</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>parada fuera de la vista</translation>
    </message>
    <message>
        <source>two stand in one place, or one in a doorway</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>dos en un mismo sitio, o uno en una puerta</translation>
    </message>
    <message>
        <source>no phone after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ningún teléfono fuera de horario</translation>
    </message>
    <message>
        <source>tape and plan differ</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la cinta y el plano no coinciden</translation>
    </message>
    <message>
        <source>cannot be built as drawn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no puede construirse como está dibujado</translation>
    </message>
    <message>
        <source>not known in full</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se conoce del todo</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>passed, but does not count in full</source>
        <translation>superada, pero no cuenta del todo</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>fallida</translation>
    </message>
    <message>
        <source>could not be reached</source>
        <translation>no se pudo llegar</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>sin probar</translation>
    </message>
    <message>
        <source>never checked</source>
        <translation>nunca comprobado</translation>
    </message>
    <message>
        <source>less than half of its time gone</source>
        <translation>menos de la mitad del plazo transcurrida</translation>
    </message>
    <message>
        <source>half of its time gone</source>
        <translation>mitad del plazo transcurrida</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>vence hoy</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>plazo vencido</translation>
    </message>
    <message>
        <source>no way to a stop</source>
        <translation>sin camino a una parada</translation>
    </message>
    <message>
        <source>no way to a phone</source>
        <translation>sin camino a un teléfono</translation>
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
        <source>Print at 100 %: this bar is 100 mm long.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Imprima al 100 %: esta barra mide 100 mm.</translation>
    </message>
    <message>
        <source>Drawn from a plan and checked against chosen rules. It certifies no machine, stop or room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first. Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujado a partir de un plano y comprobado con las reglas elegidas. No certifica ninguna máquina, parada ni sala. Tienen prioridad las normas locales, el fabricante de la máquina, la autoridad competente y los profesionales autorizados. Nunca confíe en una parada como protección. Pruebe una parada solo como indiquen el fabricante y el procedimiento del taller, con la pieza separada de la herramienta.</translation>
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
    <message>
        <source>How it stops</source>
        <translation>Cómo se detiene</translation>
    </message>
    <message>
        <source>This machine has no stop of its own.</source>
        <translation>Esta máquina no tiene parada propia.</translation>
    </message>
    <message>
        <source>If you cannot reach it</source>
        <translation>Si no la alcanza</translation>
    </message>
    <message>
        <source>%1: %2 from where you work.</source>
        <translation>%1: a %2 de su puesto.</translation>
    </message>
    <message>
        <source>%1 in %3: %2 from where you work.</source>
        <translation>%1 en %3: a %2 de su puesto.</translation>
    </message>
    <message>
        <source>%1: at hand from where you work.</source>
        <translation>%1: al alcance de la mano desde su puesto.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>No other stop stops this machine.</source>
        <translation>Ninguna otra parada detiene esta máquina.</translation>
    </message>
    <message>
        <source>No way from where you work is known: the plan has none, or no place to work at.</source>
        <translation>No se conoce ningún camino desde su puesto: falta en el plano, o falta el puesto.</translation>
    </message>
    <message>
        <source>Nothing stops this machine. Keep off it.</source>
        <translation>Nada detiene esta máquina. No se acerque a ella.</translation>
    </message>
    <message>
        <source>After hours there is no way to it.</source>
        <translation>Fuera de horario no hay camino hasta allí.</translation>
    </message>
    <message>
        <source>The plan has drawing faults (%1): something may be missing here.</source>
        <translation>El plano tiene errores de dibujo (%1): aquí puede faltar algo.</translation>
    </message>
    <message>
        <source>Inspection round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ronda de inspección</translation>
    </message>
    <message>
        <source>All devices (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los dispositivos (%1)</translation>
    </message>
    <message>
        <source>Devices that are due (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivos pendientes (%1)</translation>
    </message>
    <message>
        <source>Devices of %2 (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivos de %2 (%1)</translation>
    </message>
    <message>
        <source>Devices of %2 that are due (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivos pendientes de %2 (%1)</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Impreso %1</translation>
    </message>
    <message>
        <source>Round %1, opened %2 by %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ronda %1, abierta %2 por %3</translation>
    </message>
    <message>
        <source>Round no.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ronda n.º</translation>
    </message>
    <message>
        <source>Date</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Begun at</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Inicio a las</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Inspeccionado por</translation>
    </message>
    <message>
        <source>Second person</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Segunda persona</translation>
    </message>
    <message>
        <source>Tick what was tried and was so. Where it was tried and was not so, write NO into the box. What was not tried stays empty. One result for each device, and the time where it failed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Marque lo que se probó y era así. Donde se probó y no era así, escriba NO en la casilla. Lo que no se probó queda vacío. Un resultado por dispositivo, y la hora donde falló.</translation>
    </message>
    <message>
        <source>The walk, in the order of the numbers. 1 : %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El camino, en el orden de los números. 1 : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En ninguna sala</translation>
    </message>
    <message>
        <source>%1, on a wall or post</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, en una pared o columna</translation>
    </message>
    <message>
        <source>%1, %2 above the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, a %2 del suelo</translation>
    </message>
    <message>
        <source>Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene: %1</translation>
    </message>
    <message>
        <source>Is wired to stop nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Está conectado de modo que no detiene nada.</translation>
    </message>
    <message>
        <source>No stop. To look at: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es una parada. Para mirar: %1</translation>
    </message>
    <message>
        <source>Failed on %1 (%2). This is a retest.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Falló el %1 (%2). Esta es una repetición.</translation>
    </message>
    <message>
        <source>It is no longer on the plan: nothing can be recorded of it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ya no está en el plano: no se puede registrar nada de él.</translation>
    </message>
    <message>
        <source>Nothing in its way, marking legible</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nada lo obstruye, rotulación legible</translation>
    </message>
    <message>
        <source>Pressed, and it worked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pulsado, y funcionó</translation>
    </message>
    <message>
        <source>Pressed while running at no load: the machine stopped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pulsado en marcha sin carga: la máquina se detuvo</translation>
    </message>
    <message>
        <source>Latches: it stays as it was pressed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se enclava: queda pulsado</translation>
    </message>
    <message>
        <source>Stays stopped when it is released</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sigue detenida al soltarlo</translation>
    </message>
    <message>
        <source>Stays stopped when power returns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sigue detenida al volver la corriente</translation>
    </message>
    <message>
        <source>Pass</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aprobado</translation>
    </message>
    <message>
        <source>Fail</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Falla</translation>
    </message>
    <message>
        <source>Not tested</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No probado</translation>
    </message>
    <message>
        <source>Could not reach</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudo llegar</translation>
    </message>
    <message>
        <source>Time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Run-down, seconds</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada, s</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Still to be done, by whom, until when</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por hacer, quién, hasta cuándo</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>What stops it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué la detiene</translation>
    </message>
    <message>
        <source>These do not stop it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esto no la detiene</translation>
    </message>
    <message>
        <source>After hours: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de horario: %1</translation>
    </message>
    <message>
        <source>NOT SAVED</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>SIN GUARDAR</translation>
    </message>
    <message>
        <source>Letters (ASR A1.3): title %1 mm, read to %2 m; table %3 mm, to %4 m.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Letras (ASR A1.3): título %1 mm, se lee hasta %2 m; tabla %3 mm, hasta %4 m.</translation>
    </message>
    <message>
        <source>Letters (ASR A1.3): name %1 mm, read to %2 m; how it stops %3 mm, to %4 m.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Letras (ASR A1.3): nombre %1 mm, se lee hasta %2 m; cómo se detiene %3 mm, hasta %4 m.</translation>
    </message>
    <message>
        <source>Signs on the plan: %1 mm, recognised to %2 m (60 times the height, ISO 3864-1, unlit).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Señales en el plano: %1 mm, se reconocen hasta %2 m (60 veces la altura, ISO 3864-1, sin iluminar).</translation>
    </message>
    <message>
        <source>The list goes on: see page %1 of %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La lista continúa: vea la página %1 de %2.</translation>
    </message>
    <message>
        <source>Enter it afterwards with its time: in the window in the place Inspect, under &quot;Done on paper on&quot;; or %1 (a round that was not opened before: %2). Keep this sheet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regístrelo después con su hora: en la ventana, en el área Inspeccionar, bajo «Hecho en papel el»; o %1 (una ronda que no se abrió antes: %2). Guarde esta hoja.</translation>
    </message>
    <message>
        <source>Failed a check on %1: do not rely on it.</source>
        <translation>No pasó una comprobación el %1: no confíe en él.</translation>
    </message>
    <message>
        <source>In its place, with its pin if it has one; nothing in its way, marking legible</source>
        <translation>En su sitio, con su pasador si lo tiene; nada lo obstruye, rotulación legible</translation>
    </message>
    <message>
        <source>a day that cannot be read</source>
        <translation>(día ilegible)</translation>
    </message>
    <message>
        <source>The walk is %1, doors as in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El recorrido es de %1, puertas como en horario de apertura.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El recorrido es de %1, puertas como fuera de horario.</translation>
    </message>
    <message>
        <source>No order is shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ningún orden es más corto.</translation>
    </message>
    <message>
        <source>No order is shorter by more than %1 %.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ningún orden es más de un %1 % más corto.</translation>
    </message>
    <message>
        <source>How much shorter another order might be is not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se sabe cuánto más corto podría ser otro orden.</translation>
    </message>
    <message>
        <source>The order is that of the round: on the plan as it is now another may be shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El orden es el de la ronda: en el plano como está ahora otro puede ser más corto.</translation>
    </message>
    <message>
        <source>It begins at %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empieza en %1.</translation>
    </message>
    <message>
        <source>It leads back to where it began.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vuelve a donde empezó.</translation>
    </message>
    <message>
        <source>On the plan no way leads to: %1. See how to get there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano ningún camino lleva a: %1. Vea allí cómo llegar.</translation>
    </message>
    <message>
        <source>On the plan no way leads here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano ningún camino lleva aquí.</translation>
    </message>
    <message>
        <source>Nothing in its way</source>
        <translation>Nada lo obstruye</translation>
    </message>
    <message>
        <source>Marking legible</source>
        <translation>Rotulación legible</translation>
    </message>
    <message>
        <source>Tagged out by, until when</source>
        <translation>Etiquetada fuera de servicio por, hasta cuándo</translation>
    </message>
    <message>
        <source>What else was done at once</source>
        <translation>Qué más se hizo en el acto</translation>
    </message>
    <message>
        <source>To test, with the work clear: %1</source>
        <translation>Para probarlo, con la pieza separada de la herramienta: %1</translation>
    </message>
    <message>
        <source>What a stop stops must come to rest, and stay at rest.</source>
        <translation>Lo que una parada detiene debe detenerse del todo y seguir detenido.</translation>
    </message>
    <message>
        <source>name cannot be read</source>
        <translation>el nombre no se puede leer</translation>
    </message>
</context>
<context>
    <name>posters</name>
    <message>
        <source>%1: there is no room for a plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: no hay sitio para un plano</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is in no room that can be built</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 no está en ninguna sala que se pueda construir</translation>
    </message>
    <message>
        <source>the room does not fit on %1 at 1:%2 or larger</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la sala no cabe en %1 a 1:%2 o mayor</translation>
    </message>
    <message>
        <source>what is to be told of a machine, or in an emergency, is longer than a page of %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>lo que hay que decir de una máquina, o en una emergencia, es más largo que una página %1</translation>
    </message>
    <message>
        <source>so many stops stand so close that their signs of %1 mm find no place on %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>hay tantas paradas tan juntas que sus señales de %1 mm no encuentran sitio en %2</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; divide the room, or draw it as two</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no serviría ningún papel que se pueda elegir; divida la sala o dibújela como dos</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; say it in fewer words</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no serviría ningún papel que se pueda elegir; dígalo con menos palabras</translation>
    </message>
    <message>
        <source>no paper that can be chosen would do; see whether each is drawn where it is, and only once</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no serviría ningún papel que se pueda elegir; mire si cada una está dibujada donde está, y solo una vez</translation>
    </message>
    <message>
        <source>%1 would do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 serviría</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>what to dial (`emergency_call`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>a qué número llamar (`emergency_call`)</translation>
    </message>
    <message>
        <source>the address to say (`address`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>qué dirección decir (`address`)</translation>
    </message>
    <message>
        <source>where to meet the responders (`meet_responders_at`)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>dónde recibir a los equipos de emergencia (`meet_responders_at`)</translation>
    </message>
    <message>
        <source>the table does not fit beside the plan on %1: it goes on to %2 pages</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la tabla no cabe junto al plano en %1: ocupa %2 páginas</translation>
    </message>
    <message>
        <source>no font here has these letters, which print as empty boxes: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ninguna fuente de aquí tiene estas letras, que se imprimen como recuadros vacíos: %1</translation>
    </message>
    <message>
        <source>drawn outside the room, and so in the table only, without a sign: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>dibujado fuera de la sala, y por eso solo en la tabla, sin señal: %1</translation>
    </message>
    <message>
        <source>no place on the plan for the name of %1; the table has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay sitio en el plano para el nombre de %1; la tabla lo tiene</translation>
    </message>
    <message>
        <source>the room&apos;s name is too long for the header&apos;s letters: it is in letters of %1 mm</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el nombre de la sala es demasiado largo para las letras del encabezado: está en letras de %1 mm</translation>
    </message>
    <message>
        <source>the layout&apos;s `site` does not say %1; the poster has a line to fill in by hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el `site` de la distribución no dice %1; el cartel tiene una línea para rellenar a mano</translation>
    </message>
    <message>
        <source>the layout has no `revision`: nobody can tell this poster from an older one but by its hash</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la distribución no tiene `revision`: solo por su suma de comprobación se distingue este cartel de otro más antiguo</translation>
    </message>
    <message>
        <source>its outline cannot be built; `stopwalk check` says why</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>su contorno no se puede construir; `stopwalk check` dice por qué</translation>
    </message>
    <message>
        <source>there is no machine and no stop in it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay en ella ninguna máquina ni parada</translation>
    </message>
    <message>
        <source>something stands before the place where it hangs, so that nobody can stand there to read it: choose another</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>hay algo delante del sitio donde cuelga, y nadie puede ponerse ahí a leerlo: elija otro</translation>
    </message>
    <message>
        <source>drawing faults in the layout: %1; what is faulty may be missing here, and `stopwalk check` names it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>fallos de dibujo en la distribución: %1; lo que tiene fallos puede faltar aquí, y `stopwalk check` lo nombra</translation>
    </message>
    <message>
        <source>%1: its words are too long for the sheet; they are cut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: sus textos son demasiado largos para la hoja; están cortados</translation>
    </message>
    <message>
        <source>%1: how it stops is in letters of %2 mm only, so that all of it fits on one page</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: cómo se detiene está en letras de solo %2 mm, para que todo quepa en una página</translation>
    </message>
    <message>
        <source>%1: its stops and their words do not fit on one page; one language alone, or fewer words, may</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: sus paradas y sus textos no caben en una página; un solo idioma, o menos palabras, quizá</translation>
    </message>
    <message>
        <source>the check of %1 on %2 failed, and it has not passed since: it is shown as out of order; when it has passed, print this anew</source>
        <translation>%1 no pasó la comprobación del %2, ni ninguna desde entonces: se muestra como fuera de servicio; cuando pase una, imprima esto de nuevo</translation>
    </message>
    <message>
        <source>the check of %1 on %2 failed, and it has not passed since: the profile counts it as a stop all the same, and so it is shown as one</source>
        <translation>%1 no pasó la comprobación del %2, ni ninguna desde entonces: el perfil lo cuenta como parada de todos modos, y así se muestra</translation>
    </message>
</context>
<context>
    <name>rounds</name>
    <message>
        <source>Is wired to stop nothing.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Está conectado de modo que no detiene nada.</translation>
    </message>
    <message>
        <source>Stops every machine (%1).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene todas las máquinas (%1).</translation>
    </message>
    <message>
        <source>Stops: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detiene: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>In no room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En ninguna sala</translation>
    </message>
    <message>
        <source>%1, on the machine %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, en la máquina %2</translation>
    </message>
    <message>
        <source>%1, on a wall or post</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, en una pared o columna</translation>
    </message>
    <message>
        <source>%1, %2 above the floor</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, a %2 del suelo</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Already checked in this round: %1. Record it again only if it was tested again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ya comprobado en esta ronda: %1. Regístrelo de nuevo solo si se probó de nuevo.</translation>
    </message>
    <message>
        <source>%1 due today</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: vence hoy</translation>
    </message>
    <message>
        <source>%1 overdue by 1 day</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: plazo vencido hace 1 día</translation>
    </message>
    <message>
        <source>%1 overdue by %2 days</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: plazo vencido hace %2 días</translation>
    </message>
    <message>
        <source>failed on %1, to be checked again once it is mended</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>falló el %1; por comprobar de nuevo cuando esté reparado</translation>
    </message>
    <message>
        <source>%1: %2 due, %3 overdue</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 pendientes, %3 vencidos</translation>
    </message>
    <message>
        <source>%1: %2 due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 pendientes</translation>
    </message>
    <message>
        <source>%1: %2, by %3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2, por %3</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>Still to be done: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Queda por hacer: %1</translation>
    </message>
    <message>
        <source>Failed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Con fallo</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Vencido</translation>
    </message>
    <message>
        <source>Due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pendiente</translation>
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
        <translation>Con fallo: %1</translation>
    </message>
    <message>
        <source>Say who does what is still to be done.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diga quién hace lo que queda por hacer.</translation>
    </message>
    <message>
        <source>Say what is still to be done.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Diga qué queda por hacer.</translation>
    </message>
    <message>
        <source>Until %1: a day is expected as 2026-03-02.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hasta %1: se espera un día como 2026-03-02.</translation>
    </message>
    <message>
        <source>Choose the result: what came of it?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija el resultado: ¿qué salió?</translation>
    </message>
    <message>
        <source>What does not stay stopped has not passed: choose the failure.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que no permanece detenido no ha pasado: elija «Falla».</translation>
    </message>
    <message>
        <source>Tick what was tried: a pass says nothing without it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Marque lo que se probó: sin ello, «Aprobado» no dice nada.</translation>
    </message>
    <message>
        <source>Not recorded: %1 is being written by %2. What was entered is kept here; try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No registrado: %2 está escribiendo %1. Lo introducido queda aquí; inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Not recorded: %1 cannot be written (%2). What was entered is kept here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No registrado: no se puede escribir %1 (%2). Lo introducido queda aquí.</translation>
    </message>
    <message>
        <source>It is not sure that this was recorded in %1 (%2). Look at the device&apos;s checks before you record it again; what was entered is kept here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No es seguro que esto se haya registrado en %1 (%2). Mire las comprobaciones del dispositivo antes de registrarlo de nuevo; lo introducido queda aquí.</translation>
    </message>
    <message>
        <source>A record that was never finished is kept in %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un registro que nunca se terminó se guarda en %1.</translation>
    </message>
    <message>
        <source>retest</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>repetición</translation>
    </message>
    <message>
        <source>press</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>pulsar</translation>
    </message>
    <message>
        <source>full test</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>prueba completa</translation>
    </message>
    <message>
        <source>look</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>mirar</translation>
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
        <translation>es</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>never passed a check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nunca pasó una comprobación</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 to be done again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 por repetir</translation>
    </message>
    <message>
        <source>check %1 of %2 does not count: %3</source>
        <translation>la comprobación %1 del %2 no cuenta: %3</translation>
    </message>
    <message>
        <source>%1 of %2 devices are due, %3 of them overdue.</source>
        <translation>%1 de %2 dispositivos están pendientes, %3 de ellos vencidos.</translation>
    </message>
    <message>
        <source>Failed, and no longer on the plan: %1.</source>
        <translation>Con fallo y ya no en el plano: %1.</translation>
    </message>
    <message>
        <source>To be done by today: %1, overdue: %2.</source>
        <translation>Por hacer hasta hoy: %1, vencidos: %2.</translation>
    </message>
    <message>
        <source>Nothing is due until %1.</source>
        <translation>No hay nada pendiente hasta el %1.</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Check %1 is not in the records any more: nothing corrects it.</source>
        <translation>La comprobación %1 ya no está en los registros: nada la corrige.</translation>
    </message>
    <message>
        <source>Check %1 is of another device, %2: it is corrected there.</source>
        <translation>La comprobación %1 es de otro dispositivo, %2: se corrige allí.</translation>
    </message>
    <message>
        <source>Check %1 is of round %2: it is corrected there.</source>
        <translation>La comprobación %1 es de la ronda %2: se corrige allí.</translation>
    </message>
    <message>
        <source>Check %1 was corrected already, by check %2: correct that one.</source>
        <translation>La comprobación %1 ya fue corregida por la comprobación %2: corrija esa.</translation>
    </message>
    <message>
        <source>It is no longer on the plan under this id: of it can only be recorded that it was taken away.</source>
        <translation>Ya no está en el plano con este identificador: de él solo se puede registrar que se retiró.</translation>
    </message>
    <message>
        <source>failed since %1, last on %2, to be checked again once it is mended</source>
        <translation>con fallo desde el %1, la última vez el %2; por comprobar de nuevo cuando esté reparado</translation>
    </message>
    <message>
        <source>%1: failed on %2, and no longer on the plan under this id. Enter: say that it was taken away</source>
        <translation>%1: falló el %2 y ya no está en el plano con este identificador. Intro: decir que se retiró</translation>
    </message>
    <message>
        <source>What does not stay in when pressed has not passed: choose the failure.</source>
        <translation>Lo que no se queda enclavado al pulsarlo no ha pasado: elija «Falla».</translation>
    </message>
    <message>
        <source>Not recorded: that check was corrected meanwhile, by check %1: correct that one.</source>
        <translation>No registrado: esa comprobación se corrigió entretanto, con la comprobación %1: corrija esa.</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>Run-down %1: seconds from 0 to %2 are expected, such as 2.4.</source>
        <translation>Tiempo de parada %1: se esperan segundos de 0 a %2, como 2.4.</translation>
    </message>
    <message>
        <source>Stops nothing: it is looked at, and never pressed.</source>
        <translation>No detiene nada: se mira y nunca se pulsa.</translation>
    </message>
    <message>
        <source>a day that cannot be read</source>
        <translation>(día ilegible)</translation>
    </message>
    <message>
        <source>How much shorter another order might be is not known.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se sabe cuánto más corto podría ser otro orden.</translation>
    </message>
    <message>
        <source>No order is shorter.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ningún orden es más corto.</translation>
    </message>
    <message>
        <source>No order is shorter by more than %1 %.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ningún orden es más de un %1 % más corto.</translation>
    </message>
    <message>
        <source>On the plan no way leads to: %1. They come at the end.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano ningún camino lleva a: %1. Van al final.</translation>
    </message>
    <message>
        <source>The walk cannot begin at %1: nobody can stand there.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El recorrido no puede empezar en %1: nadie puede estar de pie allí.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún dispositivo que inspeccionar.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El recorrido es de %1, puertas como fuera de horario.</translation>
    </message>
    <message>
        <source>The walk is %1, doors as in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El recorrido es de %1, puertas como en horario de apertura.</translation>
    </message>
    <message>
        <source>On the plan no way leads here after hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano ningún camino lleva aquí fuera de horario.</translation>
    </message>
    <message>
        <source>On the plan no way leads here in opening hours.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano ningún camino lleva aquí en horario de apertura.</translation>
    </message>
    <message>
        <source>What has something in its way has not passed: choose the failure.</source>
        <translation>Lo que está obstruido no ha pasado: elija «Falla».</translation>
    </message>
    <message>
        <source>What has no legible marking has not passed: choose the failure.</source>
        <translation>Lo que no tiene rotulación legible no ha pasado: elija «Falla».</translation>
    </message>
    <message>
        <source>Say who tagged the machine out.</source>
        <translation>Diga quién etiquetó la máquina como fuera de servicio.</translation>
    </message>
    <message>
        <source>%1 is no name.</source>
        <translation>%1 no es un nombre.</translation>
    </message>
    <message>
        <source>Say who tagged the machine out: %1</source>
        <translation>Diga quién etiquetó la máquina como fuera de servicio: %1</translation>
    </message>
    <message>
        <source>Say who does what is still to be done: %1</source>
        <translation>Diga quién hace lo que queda por hacer: %1</translation>
    </message>
    <message>
        <source>Say who the second person was, or leave that line empty: %1</source>
        <translation>Diga quién fue la segunda persona, o deje esa línea vacía: %1</translation>
    </message>
    <message>
        <source>Not recorded: the device failed meanwhile, by check %1. If you tried it after that, record this once more; else try it again, or choose what you find.</source>
        <translation>No registrado: el dispositivo falló entretanto, en la comprobación %1. Si lo probó después de eso, regístrelo una vez más; si no, pruébelo de nuevo, o elija lo que encuentre.</translation>
    </message>
    <message>
        <source>%1 (check %2 of %3, %4)</source>
        <comment>what is due; why that check was not it</comment>
        <translation>%1 (comprobación %2 del %3, %4)</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>could not be reached; a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 never passed</source>
        <translation>%1: nunca se pasó</translation>
    </message>
</context>
<context>
    <name>stopwalk::edits::EditedLayout</name>
    <message>
        <source>Nothing was changed: this layout is open for looking only.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se cambió nada: esta distribución está abierta solo para ver.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::AcceptDialog</name>
    <message>
        <source>That day has passed. Type today&apos;s or a later one.</source>
        <translation>Ese día ha pasado. Escriba el de hoy o uno posterior.</translation>
    </message>
    <message>
        <source>Accept this finding</source>
        <translation>Aceptar este hallazgo</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>It stays a finding, as grave as it is, and is shown with these words everywhere. They are kept with the layout.</source>
        <translation>Sigue siendo un hallazgo, tan grave como es, y se muestra en todas partes con estas palabras. Quedan con la distribución.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why it may stand for a time, and what is done meanwhile.</source>
        <translation>Por qué puede quedar así un tiempo, y qué se hace mientras tanto.</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Aceptado por</translation>
    </message>
    <message>
        <source>The name of who answers for it.</source>
        <translation>El nombre de quien responde de ello.</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>The last day, such as 2026-12-31. Arrows up and down change it by a day, with Shift by a month.</source>
        <translation>El último día, como 2026-12-31. Las flechas arriba y abajo lo cambian un día, con Mayús un mes.</translation>
    </message>
    <message>
        <source>That is more than %1 years from now. Type a day up to %2; what stands longer is a matter for the rules.</source>
        <translation>Eso es dentro de más de %1 años. Escriba un día hasta el %2; lo que dure más es cosa de las reglas.</translation>
    </message>
    <message>
        <source>This is found no more: something was changed meanwhile. There is nothing to accept.</source>
        <translation>Esto ya no se encuentra: entretanto se cambió algo. No hay nada que aceptar.</translation>
    </message>
    <message>
        <source>It is found otherwise by now: read it above, and accept it if it may stand like that.</source>
        <translation>Ahora se encuentra de otro modo: léalo arriba y acéptelo si puede quedar así.</translation>
    </message>
    <message>
        <source>What is found now is not computed yet. Accept it again in a moment; if that lasts, close this and audit again.</source>
        <translation>Lo que se encuentra ahora aún no está calculado. Acéptelo otra vez dentro de un momento; si sigue así, cierre esto y audite de nuevo.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Accepting</name>
    <message>
        <source>Accept the fin&amp;ding…</source>
        <translation>Aceptar el halla&amp;zgo…</translation>
    </message>
    <message>
        <source>Lets it stand for a time: why, by whom, until when</source>
        <translation>Lo deja así un tiempo: por qué, por quién, hasta cuándo</translation>
    </message>
    <message>
        <source>Accept…</source>
        <translation>Aceptar…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Shift+G</translation>
    </message>
    <message>
        <source>No lon&amp;ger accept the finding</source>
        <translation>&amp;Ya no aceptar el hallazgo</translation>
    </message>
    <message>
        <source>What lets it stand is taken out of the layout</source>
        <translation>Lo que lo acepta se quita de la distribución</translation>
    </message>
    <message>
        <source>Pick a finding first.</source>
        <translation>Elija primero un hallazgo.</translation>
    </message>
    <message>
        <source>Go back to how it is first: what is only supposed is not accepted.</source>
        <translation>Vuelva primero a como está: lo que solo se supone no se acepta.</translation>
    </message>
    <message>
        <source>Nobody has accepted this finding.</source>
        <translation>Nadie ha aceptado este hallazgo.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>This is found no more. What accepted it can be taken back.</source>
        <translation>Esto ya no se encuentra. Lo que lo aceptaba se puede retirar.</translation>
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
        <translation>Buscar una acción</translation>
    </message>
    <message>
        <source>Actions</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Acciones</translation>
    </message>
    <message>
        <source>All that this window can do. Enter does it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todo lo que puede hacer esta ventana. Intro lo hace.</translation>
    </message>
    <message>
        <source>Type what you want to do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba lo que quiere hacer</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::BlockDialog</name>
    <message>
        <source>Something in the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Algo en el camino</translation>
    </message>
    <message>
        <source>Put it there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ponerlo ahí</translation>
    </message>
    <message>
        <source>Of its middle, on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De su centro, en el plano.</translation>
    </message>
    <message>
        <source>At x</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición x</translation>
    </message>
    <message>
        <source>At y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Posición y</translation>
    </message>
    <message>
        <source>Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Anchura</translation>
    </message>
    <message>
        <source>Across the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A lo ancho del plano.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Up the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A lo alto del plano.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Details</name>
    <message>
        <source>Details</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>The workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El taller</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 cosas</translation>
    </message>
    <message>
        <source>%1, a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, hace un momento</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::EachSecondsField</name>
    <message>
        <source>Machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Máquina</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::FindingList</name>
    <message>
        <source>Findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>What the audit found, the worst first. Enter goes there on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que encontró la auditoría, primero lo peor. Intro lleva al lugar en el plano.</translation>
    </message>
    <message>
        <source>Search findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar en los hallazgos</translation>
    </message>
    <message>
        <source>Group findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Agrupar los hallazgos</translation>
    </message>
    <message>
        <source>By room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por sala</translation>
    </message>
    <message>
        <source>By machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por máquina</translation>
    </message>
    <message>
        <source>By rule</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por regla</translation>
    </message>
    <message>
        <source>Fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Incumplimientos</translation>
    </message>
    <message>
        <source>Warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Notas</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nuevo: %1</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía sin auditar.</translation>
    </message>
    <message>
        <source>There is nothing to audit yet. Draw a machine with its station, and the findings stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía no hay nada que auditar. Dibuje una máquina con su puesto y los hallazgos aparecerán aquí.</translation>
    </message>
    <message>
        <source>Every rule is met, as drawn and as entered.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se cumplen todas las reglas, según lo dibujado y lo introducido.</translation>
    </message>
    <message>
        <source>No finding is like that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ningún hallazgo es así.</translation>
    </message>
    <message>
        <source>Of a moment ago:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De hace un momento:</translation>
    </message>
    <message>
        <source>1 finding.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 hallazgo.</translation>
    </message>
    <message>
        <source>%1 findings.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hallazgos.</translation>
    </message>
    <message>
        <source>No findings, as drawn and as entered.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin hallazgos, según lo dibujado y lo introducido.</translation>
    </message>
    <message>
        <source>%1 of %2 findings; the others are not shown.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 de %2 hallazgos; los demás no se muestran.</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 de %3</translation>
    </message>
    <message>
        <source>%1 of %2 findings.</source>
        <translation>%1 de %2 hallazgos.</translation>
    </message>
    <message>
        <source>Order of the findings</source>
        <translation>Orden de los hallazgos</translation>
    </message>
    <message>
        <source>Worst first</source>
        <translation>Los peores primero</translation>
    </message>
    <message>
        <source>Farthest past its limit first</source>
        <translation>Primero los que más rebasan su límite</translation>
    </message>
    <message>
        <source>By name</source>
        <translation>Por nombre</translation>
    </message>
    <message>
        <source>&amp;Copy the findings</source>
        <translation>&amp;Copiar los hallazgos</translation>
    </message>
    <message>
        <source>What is shown, as text for a letter</source>
        <translation>Lo que se ve, como texto para una carta</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>&amp;Export the findings…</source>
        <translation>&amp;Exportar los hallazgos…</translation>
    </message>
    <message>
        <source>All findings as a CSV file</source>
        <translation>Todos los hallazgos como archivo CSV</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportar…</translation>
    </message>
    <message>
        <source>Not grouped</source>
        <translation>Sin agrupar</translation>
    </message>
    <message>
        <source>Accepted, and found no more: %1</source>
        <translation>Aceptado, y ya no se encuentra: %1</translation>
    </message>
    <message>
        <source>1 station has no way to a stop or to a phone, and no rule that is on warns of it.</source>
        <translation>1 puesto no tiene camino a una parada o a un teléfono, y ninguna regla activa avisa de ello.</translation>
    </message>
    <message>
        <source>%1 stations have no way to a stop or to a phone, and no rule that is on warns of it.</source>
        <translation>%1 puestos no tienen camino a una parada o a un teléfono, y ninguna regla activa avisa de ello.</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>De hace un momento: no incluye lo que ha cambiado desde entonces.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Gallery</name>
    <message>
        <source>What to draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué dibujar</translation>
    </message>
    <message>
        <source>Choose what to draw; then click on the plan. Enter chooses by keyboard.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija qué dibujar; después haga clic en el plano. Intro elige con el teclado.</translation>
    </message>
    <message>
        <source>Search what to draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar qué dibujar</translation>
    </message>
    <message>
        <source>Nothing here is called that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nada aquí se llama así.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::MoveDialog</name>
    <message>
        <source>Move or turn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover o girar</translation>
    </message>
    <message>
        <source>Move</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover</translation>
    </message>
    <message>
        <source>To the right by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A la derecha</translation>
    </message>
    <message>
        <source>Less than 0: to the left.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Menos de 0: a la izquierda.</translation>
    </message>
    <message>
        <source>Up by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacia arriba</translation>
    </message>
    <message>
        <source>On the plan. Less than 0: down.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el plano. Menos de 0: hacia abajo.</translation>
    </message>
    <message>
        <source>Turn by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar</translation>
    </message>
    <message>
        <source>Degrees counter-clockwise, each on its own place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Grados en sentido contrario a las agujas del reloj, cada uno en su sitio.</translation>
    </message>
    <message>
        <source>Move and turn %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover y girar %1</translation>
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
        <translation>Son distintos</translation>
    </message>
    <message>
        <source>Add outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Añadir contorno</translation>
    </message>
    <message>
        <source>Add corner</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Añadir esquina</translation>
    </message>
    <message>
        <source>Remove outline</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar contorno</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar esquina</translation>
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
        <translation>Papel</translation>
    </message>
    <message>
        <source>The sheet that the poster is printed on.</source>
        <translation>La hoja en la que se imprime el cartel.</translation>
    </message>
    <message>
        <source>Lying or upright</source>
        <translation>Apaisado o vertical</translation>
    </message>
    <message>
        <source>Which way up the sheet hangs.</source>
        <translation>En qué sentido cuelga la hoja.</translation>
    </message>
    <message>
        <source>As fits best</source>
        <translation>Como mejor quepa</translation>
    </message>
    <message>
        <source>Lying</source>
        <translation>Apaisado</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Vertical</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Of the poster. What the shop wrote itself is not translated.</source>
        <translation>Del cartel. Lo que escribió el propio taller no se traduce.</translation>
    </message>
    <message>
        <source>Also in</source>
        <translation>También en</translation>
    </message>
    <message>
        <source>A second language on the same poster.</source>
        <translation>Un segundo idioma en el mismo cartel.</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Ningún otro</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letra</translation>
    </message>
    <message>
        <source>The font of the poster.</source>
        <translation>El tipo de letra del cartel.</translation>
    </message>
    <message>
        <source>The system&apos;s (%1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La del sistema (%1)</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ProblemList</name>
    <message>
        <source>Problems</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Problemas</translation>
    </message>
    <message>
        <source>What is wrong with the drawing, and what the audit found. Enter goes there on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que está mal en el dibujo y lo que encontró la auditoría. Intro lleva al lugar en el plano.</translation>
    </message>
    <message>
        <source>No problems. Faults of the drawing and findings of the audit would stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin problemas. Aquí aparecerían los errores del dibujo y los hallazgos de la auditoría.</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía sin auditar.</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De hace un momento</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ReachChooser</name>
    <message>
        <source>What the floor&apos;s colours show</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué muestran los colores del suelo</translation>
    </message>
    <message>
        <source>Machine whose stop is walked to</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Máquina a cuya parada se camina</translation>
    </message>
    <message>
        <source>No colours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin colores</translation>
    </message>
    <message>
        <source>Walk to the phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino al teléfono</translation>
    </message>
    <message>
        <source>Walk to any stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a cualquier parada</translation>
    </message>
    <message>
        <source>Walk to a cut-off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a un corte general</translation>
    </message>
    <message>
        <source>Walk to the stop of one machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a la parada de una máquina</translation>
    </message>
    <message>
        <source>Co&amp;lour the floor by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Colorear e&amp;l suelo por</translation>
    </message>
    <message>
        <source>Choose a machine</source>
        <translation>Elegir una máquina</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::RenameDialog</name>
    <message>
        <source>Rename</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el nombre</translation>
    </message>
    <message>
        <source>Name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>As people call it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Como lo llama la gente.</translation>
    </message>
    <message>
        <source>Id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Identificador</translation>
    </message>
    <message>
        <source>The short name by which other things of the file speak of this one.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El nombre corto con que otras cosas del archivo nombran a esta.</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el nombre de %1</translation>
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
        <translation>&amp;Sala</translation>
    </message>
    <message>
        <source>Room that the poster is of</source>
        <translation>Sala de la que es el cartel</translation>
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
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Space puts a rule on or off. What is bold is the house&apos;s own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La barra espaciadora activa o desactiva una regla. Lo que está en negrita es propio del taller.</translation>
    </message>
    <message>
        <source>Search rules</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar reglas</translation>
    </message>
    <message>
        <source>A break of it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si no se cumple</translation>
    </message>
    <message>
        <source>How bad it is if the rule is not met.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué gravedad tiene que la regla no se cumpla.</translation>
    </message>
    <message>
        <source>fails</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es un incumplimiento</translation>
    </message>
    <message>
        <source>warns</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>es un aviso</translation>
    </message>
    <message>
        <source>is noted</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>se anota</translation>
    </message>
    <message>
        <source>Reason</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Why the house keeps it otherwise. Shown as the basis.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por qué el taller lo hace de otro modo. Se muestra como fundamento.</translation>
    </message>
    <message>
        <source>Basis</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fundamento</translation>
    </message>
    <message>
        <source>Rules of the profile %1; what is changed here is kept with the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Reglas del perfil %1; lo que se cambie aquí queda con la distribución.</translation>
    </message>
    <message>
        <source>%1 (the house&apos;s own)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (propio del taller)</translation>
    </message>
    <message>
        <source>Limit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Límite</translation>
    </message>
    <message>
        <source>Limit, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Límite, %1</translation>
    </message>
    <message>
        <source>From where on the rule is broken.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A partir de dónde se incumple la regla.</translation>
    </message>
    <message>
        <source>1 rule is off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 regla está desactivada.</translation>
    </message>
    <message>
        <source>%1 rules are off.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 reglas están desactivadas.</translation>
    </message>
    <message>
        <source>As the profile ha&amp;s it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Como en el &amp;perfil</translation>
    </message>
    <message>
        <source>The rule chosen is on</source>
        <translation>La regla elegida está activa</translation>
    </message>
    <message>
        <source>A rule that is off finds nothing</source>
        <translation>Una regla inactiva no encuentra nada</translation>
    </message>
    <message>
        <source>The rule chosen as the profile has it</source>
        <translation>La regla elegida como en el perfil</translation>
    </message>
    <message>
        <source>Puts back what was changed of this rule</source>
        <translation>Deshace lo que se cambió en esta regla</translation>
    </message>
    <message>
        <source>Choose the prof&amp;ile</source>
        <translation>Elegir el perf&amp;il</translation>
    </message>
    <message>
        <source>The rules and limits that the layout is audited by</source>
        <translation>Las reglas y los límites con los que se audita la distribución</translation>
    </message>
    <message>
        <source>Profile fro&amp;m a file…</source>
        <translation>Perfil de un &amp;archivo…</translation>
    </message>
    <message>
        <source>One of your own, beside the layout</source>
        <translation>Uno propio, junto a la distribución</translation>
    </message>
    <message>
        <source>File…</source>
        <translation>Archivo…</translation>
    </message>
    <message>
        <source>Sa&amp;ve the rules as a profile file…</source>
        <translation>&amp;Guardar las reglas como archivo de perfil…</translation>
    </message>
    <message>
        <source>All rules as they are kept here, for other layouts and the command line</source>
        <translation>Todas las reglas como rigen aquí, para otras distribuciones y la línea de comandos</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>This rule is as the profile has it.</source>
        <translation>Esta regla está como en el perfil.</translation>
    </message>
    <message>
        <source>Choose a rule in the list first.</source>
        <translation>Elija primero una regla de la lista.</translation>
    </message>
    <message>
        <source>Type the reason: it takes the place of what the limit rested on.</source>
        <translation>Escriba el motivo: ocupa el lugar del fundamento que tenía el límite.</translation>
    </message>
    <message>
        <source>The reason is kept as soon as the rule is changed.</source>
        <translation>El motivo se guarda en cuanto se cambie la regla.</translation>
    </message>
    <message>
        <source>Why is it otherwise here?</source>
        <translation>¿Por qué es distinto aquí?</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Section</name>
    <message>
        <source>the workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el taller</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationModel</name>
    <message>
        <source>at hand</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>al alcance de la mano</translation>
    </message>
    <message>
        <source>no way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin camino</translation>
    </message>
    <message>
        <source>none</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no hay</translation>
    </message>
    <message>
        <source>not measured</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source> s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation> s</translation>
    </message>
    <message>
        <source>Without the run-down, which is not recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sin el tiempo de parada, que no está registrado.</translation>
    </message>
    <message>
        <source>From the first sign of trouble to rest: reaction, walk and run-down. A plus: the run-down is not recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde la primera señal de problema hasta el reposo: reacción, camino y tiempo de parada. Un signo +: el tiempo de parada no está registrado.</translation>
    </message>
    <message>
        <source>Station</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puesto</translation>
    </message>
    <message>
        <source>State</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Nearest stop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Parada más cercana</translation>
    </message>
    <message>
        <source>How it works</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cómo funciona</translation>
    </message>
    <message>
        <source>Walk</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino</translation>
    </message>
    <message>
        <source>Time</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Walk to phone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino al teléfono</translation>
    </message>
    <message>
        <source>Clear width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ancho libre</translation>
    </message>
    <message>
        <source>What changes</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>%1, narrow</source>
        <translation>%1, estrecho</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::StationTable</name>
    <message>
        <source>Stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puestos</translation>
    </message>
    <message>
        <source>Every station with its nearest stop and phone. Enter goes there on the plan; a click on a heading sorts.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cada puesto con su parada y su teléfono más cercanos. Intro lleva al lugar en el plano; un clic en un encabezado ordena.</translation>
    </message>
    <message>
        <source>Search stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar puestos</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>The rows picked, or all of them, as text for a table or a letter</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Las filas elegidas, o todas, como texto para una tabla o una carta</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>E&amp;xportar…</translation>
    </message>
    <message>
        <source>All stations as a CSV file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los puestos como archivo CSV</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De hace un momento</translation>
    </message>
    <message>
        <source>%1 of %2 stations</source>
        <translation>%1 de %2 puestos</translation>
    </message>
    <message>
        <source>Copy the &amp;table of stations</source>
        <translation>Copiar la ta&amp;bla de puestos</translation>
    </message>
    <message>
        <source>E&amp;xport the table of stations…</source>
        <translation>E&amp;xportar la tabla de puestos…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+X</source>
        <translation>Ctrl+Shift+X</translation>
    </message>
    <message>
        <source>Not audited yet.</source>
        <translation>Todavía sin auditar.</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>De hace un momento: no incluye lo que ha cambiado desde entonces.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::SupposePanel</name>
    <message>
        <source>Tick what might be otherwise, and see what it changes for whom. Nothing of it is saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Marque lo que podría ser de otro modo y vea qué cambia y para quién. Nada de esto se guarda.</translation>
    </message>
    <message>
        <source>The doors that are locked then are shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Las puertas que entonces se cierran con llave están cerradas</translation>
    </message>
    <message>
        <source>What might be otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que podría ser de otro modo</translation>
    </message>
    <message>
        <source>Space ticks: a device out of order, a door shut. Enter opens the numbers of something in the way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La barra espaciadora marca: un dispositivo fuera de servicio, una puerta cerrada. Intro abre los números de algo en el camino.</translation>
    </message>
    <message>
        <source>Search devices, phones and doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar dispositivos, teléfonos y puertas</translation>
    </message>
    <message>
        <source>A block on the floor: drag it on the plan, or type its numbers</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un bloque en el suelo: arrástrelo en el plano, o escriba sus números</translation>
    </message>
    <message>
        <source>&amp;Back to how it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Volver a como es&amp;tá</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>Shut</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cerradas</translation>
    </message>
    <message>
        <source>In the way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En el camino</translation>
    </message>
    <message>
        <source>After hou&amp;rs</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Fuera de horario</translation>
    </message>
    <message>
        <source>Put in the &amp;way</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Poner en el ca&amp;mino</translation>
    </message>
    <message>
        <source>What is picked is out of &amp;order</source>
        <translation>Lo elegido está fuera de &amp;servicio</translation>
    </message>
    <message>
        <source>The stops and phones picked on the plan, all at once</source>
        <translation>Las paradas y teléfonos elegidos en el plano, todos a la vez</translation>
    </message>
    <message>
        <source>The door that is picked is s&amp;hut</source>
        <translation>La puerta elegida está cerra&amp;da</translation>
    </message>
    <message>
        <source>All doors picked on the plan, at once</source>
        <translation>Todas las puertas elegidas en el plano, a la vez</translation>
    </message>
    <message>
        <source>&amp;Put something in the way</source>
        <translation>Poner algo en el ca&amp;mino</translation>
    </message>
    <message>
        <source>Its place and size by &amp;numbers…</source>
        <translation>Su lugar y tamaño en &amp;números…</translation>
    </message>
    <message>
        <source>Of what stands in the way</source>
        <translation>De lo que está en el camino</translation>
    </message>
    <message>
        <source>Take it &amp;away</source>
        <translation>Q&amp;uitarlo</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Lo que está en el camino</translation>
    </message>
    <message>
        <source>Ta&amp;ke away</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>After ho&amp;urs</source>
        <translation>&amp;Fuera de horario</translation>
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
        <translation>Elija antes una parada o un teléfono en el plano.</translation>
    </message>
    <message>
        <source>Pick a door on the plan first.</source>
        <translation>Elija antes una puerta en el plano.</translation>
    </message>
    <message>
        <source>Nothing is put in the way.</source>
        <translation>No hay nada puesto en el camino.</translation>
    </message>
    <message>
        <source>Choose one of those in the way in the list first.</source>
        <translation>Elija antes en la lista lo que está en el camino.</translation>
    </message>
    <message>
        <source>Nothing is supposed.</source>
        <translation>No se supone nada.</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::ThingList</name>
    <message>
        <source>Things on the plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cosas del plano</translation>
    </message>
    <message>
        <source>Everything on the plan. Enter goes there on the plan; the menu key has the rest.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todo lo que hay en el plano. Intro lleva al lugar en el plano; la tecla de menú tiene lo demás.</translation>
    </message>
    <message>
        <source>Search things by name or id</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Buscar cosas por nombre o identificador</translation>
    </message>
    <message>
        <source>Go to on plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ir a su lugar en el plano</translation>
    </message>
    <message>
        <source>Rename...</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cambiar el nombre...</translation>
    </message>
    <message>
        <source>Move or turn by numbers...</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mover o girar con números...</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Nothing is drawn yet. Choose a room in the gallery, and drag it on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía no hay nada dibujado. Elija una sala en la galería y arrástrela en el plano.</translation>
    </message>
    <message>
        <source>Nothing on the plan is called that.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nada en el plano se llama así.</translation>
    </message>
    <message>
        <source>Of a moment ago</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De hace un momento</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::WallChooser</name>
    <message>
        <source>outside</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>Wall %1 of %2, %3</source>
        <translation>Pared %1 de %2, %3</translation>
    </message>
    <message>
        <source>%1, with the door to %2</source>
        <translation>%1, con la puerta a %2</translation>
    </message>
    <message>
        <source>%1, with doors to %2</source>
        <translation>%1, con puertas a %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Where it han&amp;gs</source>
        <translation>Dónde cuel&amp;ga</translation>
    </message>
    <message>
        <source>&amp;Choose the wall on the plan</source>
        <translation>&amp;Elegir la pared en el plano</translation>
    </message>
    <message>
        <source>Shows the plan of the room: click the wall where the poster is to hang</source>
        <translation>Muestra el plano de la sala: haga clic en la pared donde va a colgar el cartel</translation>
    </message>
    <message>
        <source>Wall that the poster hangs on</source>
        <translation>Pared de la que cuelga el cartel</translation>
    </message>
    <message>
        <source>Where most wall is free: wall %1</source>
        <translation>Donde hay más pared libre: pared %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::panels::Why</name>
    <message>
        <source>Why this is a finding</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por qué esto es un hallazgo</translation>
    </message>
    <message>
        <source>Pick a finding: its rule, limit, basis and what would mend it stand here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija un hallazgo: aquí aparecen su regla, su límite, su fundamento y lo que lo arreglaría.</translation>
    </message>
    <message>
        <source>Measured:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medido:</translation>
    </message>
    <message>
        <source>Limit:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Límite:</translation>
    </message>
    <message>
        <source>To mend it:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Para arreglarlo:</translation>
    </message>
    <message>
        <source>Rule:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Regla:</translation>
    </message>
    <message>
        <source>What it means:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué significa:</translation>
    </message>
    <message>
        <source>Basis:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Fundamento:</translation>
    </message>
    <message>
        <source>by %1 until %2: %3</source>
        <translation>por %1 hasta el %2: %3</translation>
    </message>
    <message>
        <source>Accepted:</source>
        <translation>Aceptado:</translation>
    </message>
    <message>
        <source>Not accepted:</source>
        <translation>No se acepta:</translation>
    </message>
    <message>
        <source>what %1 accepts until %2 may be this finding or another of this rule about %3. To mean this one, the layout must say %4: accept it here, and it does.</source>
        <translation>lo que %1 acepta hasta el %2 puede ser este hallazgo u otro de esta regla sobre %3. Para que sea este, la distribución tiene que decir %4: acéptelo aquí, y lo dirá.</translation>
    </message>
    <message>
        <source>No longer accepted, %1:</source>
        <translation>Ya no se acepta, %1:</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::AuditMarks</name>
    <message>
        <source>and %1 more</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>A moment ago:</source>
        <translation>Hace un momento:</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::NumberEntry</name>
    <message>
        <source>%1: type a length such as 1.2 m, 900 mm or 4&apos; 6&quot;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: escriba una longitud como 1.2 m, 900 mm o 4&apos; 6&quot;</translation>
    </message>
    <message>
        <source>%1: type degrees such as 90</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: escriba grados como 90</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::PlanView</name>
    <message>
        <source>Plan</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Plano</translation>
    </message>
    <message>
        <source>The plan of the workshop. The list of things beside it does the same by keyboard.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El plano del taller. La lista de cosas al lado hace lo mismo con el teclado.</translation>
    </message>
    <message>
        <source>This layout is open for looking only: nothing can be drawn.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esta distribución está abierta solo para ver: no se puede dibujar nada.</translation>
    </message>
    <message>
        <source>Release to put it there; Escape leaves it where it was.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Suelte para dejarlo ahí; Esc lo deja donde estaba.</translation>
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
        <translation>%1 Elegido: %2</translation>
    </message>
    <message>
        <source>The walks of %1 more stations that are picked are not drawn.</source>
        <translation>No se dibujan los recorridos de otros %1 puestos elegidos.</translation>
    </message>
</context>
<context>
    <name>stopwalk::plan::ReachLayer</name>
    <message>
        <source>feet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>pies</translation>
    </message>
    <message>
        <source>metres</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>metros</translation>
    </message>
    <message>
        <source>Walk to the phone, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino al teléfono, %1</translation>
    </message>
    <message>
        <source>Walk to any stop, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a cualquier parada, %1</translation>
    </message>
    <message>
        <source>Walk to a cut-off, %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a un corte general, %1</translation>
    </message>
    <message>
        <source>Walk to the stop of %1, %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Camino a la parada de %1, %2</translation>
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
        <translation>No se puede llegar a ninguno: hay algo delante.</translation>
    </message>
    <message>
        <source>Striped: only through a gap under %1; not measured.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A rayas: solo por un hueco de menos de %1; sin medir.</translation>
    </message>
    <message>
        <source>Crossed: no way.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Con cruces: sin camino.</translation>
    </message>
    <message>
        <source>There is no stop of this machine to walk to, or none that works.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ninguna parada de esta máquina a la que se pueda ir, o ninguna que funcione.</translation>
    </message>
    <message>
        <source>There is none in this layout, or none that works.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ninguno en esta distribución, o ninguno que funcione.</translation>
    </message>
    <message>
        <source>%1+</source>
        <translation>%1+</translation>
    </message>
    <message>
        <source>Of a moment ago: what changed since is not in it.</source>
        <translation>De hace un momento: no incluye lo que ha cambiado desde entonces.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::BigButton</name>
    <message>
        <source>Key: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tecla: %1</translation>
    </message>
    <message>
        <source>No: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No: %1</translation>
    </message>
    <message>
        <source>Key %1: once yes, twice no, three times not tried</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tecla %1: una vez sí, dos veces no, tres veces no probado</translation>
    </message>
    <message>
        <source>Key %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tecla %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::CheckCard</name>
    <message>
        <source>All rounds</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todas las rondas</translation>
    </message>
    <message>
        <source>Previous device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivo anterior</translation>
    </message>
    <message>
        <source>Next device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivo siguiente</translation>
    </message>
    <message>
        <source>Devices checked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivos comprobados</translation>
    </message>
    <message>
        <source>Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Second person</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Segunda persona</translation>
    </message>
    <message>
        <source>where one must be there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>donde deba haberla</translation>
    </message>
    <message>
        <source>Record (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Registrar (Intro)</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ficha: %1</translation>
    </message>
    <message>
        <source>Being written…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escribiendo…</translation>
    </message>
    <message>
        <source>Done on paper on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hecho en papel el</translation>
    </message>
    <message>
        <source>empty: now; else as 2026-03-02 09:15</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>vacío: ahora; si no, como 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>Record as of %1 (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Registrar con fecha %1 (Intro)</translation>
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
        <translation>Ronda %1 de %2: %3 comprobados</translation>
    </message>
    <message>
        <source>Inspected by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Inspeccionado por</translation>
    </message>
    <message>
        <source>name: the check bears it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nombre: la comprobación lo lleva</translation>
    </message>
    <message>
        <source>With a pass, what was done and what is still to be done is not recorded: put it into the note if it holds.</source>
        <translation>Con una comprobación superada no se registra lo que se hizo ni lo que queda por hacer: si sigue valiendo, póngalo en la nota.</translation>
    </message>
    <message>
        <source>Record that it was taken away (Enter)</source>
        <translation>Registrar que se retiró (Intro)</translation>
    </message>
    <message>
        <source>empty: now; else a time as 09:15, or 2026-03-02 09:15</source>
        <translation>vacío: ahora; si no, una hora como 09:15, o 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>T</source>
        <comment>the key for: the time on paper</comment>
        <translation>T</translation>
    </message>
    <message>
        <source>T&amp;ime the run-down</source>
        <translation>&amp;Medir el tiempo de parada</translation>
    </message>
    <message>
        <source>&amp;Give the time on paper</source>
        <translation>Dar la hora del pa&amp;pel</translation>
    </message>
    <message>
        <source>When it was done, if it is entered from paper.</source>
        <translation>Cuándo se hizo, si se introduce desde el papel.</translation>
    </message>
    <message>
        <source>The check is being written.</source>
        <translation>Se está escribiendo la comprobación.</translation>
    </message>
    <message>
        <source>The device is no longer on the plan.</source>
        <translation>El dispositivo ya no está en el plano.</translation>
    </message>
    <message>
        <source>A stop is asked for each of that by itself.</source>
        <translation>De una parada se pregunta cada cosa por separado.</translation>
    </message>
    <message>
        <source>It stops nothing: it is only looked at.</source>
        <translation>No detiene nada: solo se mira.</translation>
    </message>
    <message>
        <source>At rest: stop th&amp;e clock</source>
        <translation>En reposo: &amp;detener el reloj</translation>
    </message>
    <message>
        <source>All runs are timed.</source>
        <translation>Hechas todas las mediciones.</translation>
    </message>
    <message>
        <source>Key: %1</source>
        <translation>Tecla: %1</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Counting</name>
    <message>
        <source>not counted: %1</source>
        <translation>no cuenta: %1</translation>
    </message>
    <message>
        <source>only looked at</source>
        <translation>solo mirado</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>sin mirar</translation>
    </message>
    <message>
        <source>leaves the failure open: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>deja abierto el fallo: %1</translation>
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
        <translation>«%1»</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>not ticked: %1</source>
        <translation>sin marcar: %1</translation>
    </message>
    <message>
        <source>Recorded like this, it stays failed: %1.</source>
        <translation>Registrado así, el fallo sigue abierto: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, the device stays due for: %1, %2.</source>
        <translation>Registrado así, queda pendiente en el dispositivo: %1, %2.</translation>
    </message>
    <message>
        <source>It counts as no test.</source>
        <translation>No cuenta como prueba.</translation>
    </message>
    <message>
        <source>It counts as: %1.</source>
        <translation>Cuenta como: %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what is due; what was not ticked</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Recorded like this, the device becomes due for: %1.</source>
        <translation>Registrado así, pasa a estar pendiente en el dispositivo: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, it does not count: %1.</source>
        <translation>Registrado así, no cuenta: %1.</translation>
    </message>
    <message>
        <source>Recorded like this, the device stays due for: %1, as the check is of %2.</source>
        <translation>Registrado así, queda pendiente en el dispositivo: %1, porque la comprobación es del %2.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::DeviceHistory</name>
    <message>
        <source>%1 (%2 runs)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (%2 mediciones)</translation>
    </message>
    <message>
        <source>not so: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no fue así: %1</translation>
    </message>
    <message>
        <source>to be done: %1, by %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>por hacer: %1, por %2</translation>
    </message>
    <message>
        <source>A correction is a record of its own; the old one stays as it was written.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Una corrección es un registro propio; el anterior queda como se escribió.</translation>
    </message>
    <message>
        <source>Checks of the device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Comprobaciones del dispositivo</translation>
    </message>
    <message>
        <source>Result</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>When</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>By</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por</translation>
    </message>
    <message>
        <source>Run-down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Tiempo de parada</translation>
    </message>
    <message>
        <source>What was found</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué se encontró</translation>
    </message>
    <message>
        <source>%1: no check is recorded yet.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: aún no hay ninguna comprobación registrada.</translation>
    </message>
    <message>
        <source>%1: 1 check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: 1 comprobación</translation>
    </message>
    <message>
        <source>%1: %2 checks</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2 comprobaciones</translation>
    </message>
    <message>
        <source>%1 (corrected by %2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (corregida por %2)</translation>
    </message>
    <message>
        <source>%1 (in place of %2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (en lugar de %2)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1, entered %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, registrada el %2</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>Correct this check… (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Corregir esta comprobación… (Intro)</translation>
    </message>
    <message>
        <source>%1, written %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, escrita el %2</translation>
    </message>
    <message>
        <source>machine tagged out by %1</source>
        <translation>máquina etiquetada fuera de servicio por %1</translation>
    </message>
    <message>
        <source>no readable time</source>
        <translation>sin hora legible</translation>
    </message>
    <message>
        <source>Correct the chec&amp;k that is picked…</source>
        <translation>Corregir la comprobación ele&amp;gida…</translation>
    </message>
    <message>
        <source>Pick a check of the device, below the plan, first.</source>
        <translation>Elija antes una comprobación del dispositivo, debajo del plano.</translation>
    </message>
    <message>
        <source>It was corrected already: correct the one in its place.</source>
        <translation>Ya fue corregida: corrija la que está en su lugar.</translation>
    </message>
    <message>
        <source>%1 (1 run)</source>
        <translation>%1 (1 medición)</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Drafts</name>
    <message>
        <source>not so: %1</source>
        <translation>no fue así: %1</translation>
    </message>
    <message>
        <source>second person %1</source>
        <translation>segunda persona %1</translation>
    </message>
    <message>
        <source>an earlier day</source>
        <translation>(día anterior)</translation>
    </message>
    <message>
        <source>Entered on %1 without a name, not recorded</source>
        <translation>Introducido el %1 sin nombre, no registrado</translation>
    </message>
    <message>
        <source>Entered on %1 by %2, not recorded</source>
        <translation>Introducido el %1 por %2, no registrado</translation>
    </message>
    <message>
        <source>%1: what stands in the lines below.</source>
        <translation>%1: lo que está en las líneas de abajo.</translation>
    </message>
    <message>
        <source>%1: %2. What you try and find yourself is to be chosen; the lines below stay.</source>
        <translation>%1: %2. Elija lo que pruebe y encuentre usted; las líneas de abajo se quedan.</translation>
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
        <translation>Lo pendiente</translation>
    </message>
    <message>
        <source>What is to be inspected, failed devices first, then by room. The one picked is shown on the plan, its checks below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que hay que inspeccionar, primero lo que falló, luego por sala. El elegido se muestra en el plano, sus comprobaciones debajo.</translation>
    </message>
    <message>
        <source>Rounds not finished</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Rondas sin terminar</translation>
    </message>
    <message>
        <source>Start a round…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empezar una ronda…</translation>
    </message>
    <message>
        <source>Continue the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Continuar la ronda</translation>
    </message>
    <message>
        <source>Save the layout…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la distribución…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Save the layout, then start</source>
        <translation>Guardar la distribución y empezar</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::FailureForm</name>
    <message>
        <source>It stays failed, on the plan and in the audit, until it passes a check of its own. Take the machine out of use as the shop&apos;s procedure says.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sigue con fallo, en el plano y en la auditoría, hasta que pase una comprobación propia. Ponga la máquina fuera de uso como diga el procedimiento del taller.</translation>
    </message>
    <message>
        <source>Machine tagged out by</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Máquina etiquetada por</translation>
    </message>
    <message>
        <source>name; empty: it is not</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>nombre; vacío: sin etiqueta</translation>
    </message>
    <message>
        <source>What else was done at once</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué más se hizo en el acto</translation>
    </message>
    <message>
        <source>What is still to be done</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué queda por hacer</translation>
    </message>
    <message>
        <source>Who does it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quién lo hace</translation>
    </message>
    <message>
        <source>Until when</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hasta cuándo</translation>
    </message>
    <message>
        <source>a day, as 2026-03-02</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>un día, como 2026-03-02</translation>
    </message>
    <message>
        <source>Tagged out until</source>
        <translation>Etiquetada hasta</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::OnPaper</name>
    <message>
        <source>The clocks here were put forward over that time: type it with its zone, as +01:00.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A esa hora se adelantaron aquí los relojes: escríbala con su huso, como +01:00.</translation>
    </message>
    <message>
        <source>The clocks here showed that time twice: type it as %1 or as %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los relojes de aquí marcaron esa hora dos veces: escríbala como %1 o como %2.</translation>
    </message>
    <message>
        <source>That is before the round was begun, %1. A round that was walked on paper earlier is started with its own day and time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Eso es antes de que empezara la ronda, %1. Una ronda hecha antes en papel se empieza con su propio día y hora.</translation>
    </message>
    <message>
        <source>%1 %2: that is still to come.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2: eso aún está por venir.</translation>
    </message>
    <message>
        <source>a time as 09:15, or with its day as 2026-03-02 09:15, is expected</source>
        <translation>se espera una hora como 09:15, o con su día como 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>a day and a time are expected as 2026-03-02 09:15</source>
        <translation>se esperan un día y una hora como 2026-03-02 09:15</translation>
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
        <translation>hoy</translation>
    </message>
    <message>
        <source>%1 d</source>
        <comment>days</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 d</translation>
    </message>
    <message>
        <source>%1 mo</source>
        <comment>months</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 meses</translation>
    </message>
    <message>
        <source>%1 y</source>
        <comment>years</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>passed; a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1, next due on %2</source>
        <comment>half of its time gone; a day</comment>
        <translation>%1, la próxima vence el %2</translation>
    </message>
    <message>
        <source>Last check: %1; %2.</source>
        <translation>Última comprobación: %1; %2.</translation>
    </message>
    <message>
        <source>No. %1 of this round: %2.</source>
        <translation>N.º %1 de esta ronda: %2.</translation>
    </message>
    <message>
        <source>not checked yet</source>
        <translation>aún sin comprobar</translation>
    </message>
    <message>
        <source>In this round</source>
        <translation>En esta ronda</translation>
    </message>
    <message>
        <source>%1 It does not count in full: %2.</source>
        <translation>%1 No cuenta del todo: %2.</translation>
    </message>
    <message>
        <source>%1 Still due: %2.</source>
        <translation>%1 Aún pendiente: %2.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::OpenFailure</name>
    <message>
        <source>Failed on %1 (check %2): it stays failed until it passes a check of its own, made by another person than %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Falló el %1 (comprobación %2): sigue con fallo hasta que supere una comprobación propia, hecha por otra persona que %3.</translation>
    </message>
    <message>
        <source>Failed on %1 (check %2): it stays failed until it passes a check of its own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Falló el %1 (comprobación %2): sigue con fallo hasta que supere una comprobación propia.</translation>
    </message>
    <message>
        <source>Failed since %1. %2</source>
        <translation>Con fallo desde el %1. %2</translation>
    </message>
    <message>
        <source>It still counts as failed: by the times given, or as the records are not as they were written, it is not sure that it was taken away after check %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sigue contando como fallo: por las horas indicadas, o porque los registros no están como se escribieron, no es seguro que se retirara después de la comprobación %1.</translation>
    </message>
    <message>
        <source>It is still failed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sigue con fallo: %1.</translation>
    </message>
    <message>
        <source>Failed on %1 (check %2), found by somebody whose name cannot be read: it stays failed until it passes two checks of its own, made by two different people.</source>
        <translation>Falló el %1 (comprobación %2), lo encontró alguien cuyo nombre no se puede leer: sigue con fallo hasta que supere dos comprobaciones propias, hechas por dos personas distintas.</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::Reasons</name>
    <message>
        <source>the records are not as they were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>los registros no están como se escribieron</translation>
    </message>
    <message>
        <source>it is dated, or was entered, on a day that is still to come</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el día de la comprobación, o el de su entrada, aún no ha llegado</translation>
    </message>
    <message>
        <source>it did not test %1, which the device stops now</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no probó lo que el dispositivo detiene ahora: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>a correction undoes no failure</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>una corrección no anula ningún fallo</translation>
    </message>
    <message>
        <source>it was not pressed, or did not stay in, or what it stops did not stop or stay stopped</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se accionó, o no quedó enclavado, o lo que detiene no se detuvo o no siguió detenido</translation>
    </message>
    <message>
        <source>this check counts for nothing: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>esta comprobación no cuenta: %1</translation>
    </message>
    <message>
        <source>by the times given it is not sure that this was after check %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>según las horas dadas no es seguro que esto fuera después de la comprobación %1</translation>
    </message>
    <message>
        <source>another person than %1, who found it, is to pass it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>debe darlo por bueno otra persona que %1, que lo encontró</translation>
    </message>
    <message>
        <source>it does not say that it was looked at</source>
        <translation>no dice que se haya mirado</translation>
    </message>
    <message>
        <source>it did not test %1</source>
        <translation>no probó: %1</translation>
    </message>
    <message>
        <source>it does not end as a record does</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no acaba como acaba un registro</translation>
    </message>
    <message>
        <source>it was changed after it was written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>se cambió después de escribirse</translation>
    </message>
    <message>
        <source>what it says is no record of this format, or more than one</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>lo que dice no es un registro de este formato, o es más de uno</translation>
    </message>
    <message>
        <source>lines before it were changed, removed, put in or moved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>se cambiaron, quitaron, añadieron o movieron líneas anteriores</translation>
    </message>
    <message>
        <source>the line break behind it is missing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>falta el salto de línea que le sigue</translation>
    </message>
    <message>
        <source>it was made before the device was recorded as taken away</source>
        <translation>se hizo antes de que el dispositivo se registrara como retirado</translation>
    </message>
    <message>
        <source>the file was rewritten by a formatter: one record a line is expected; take the file back from a copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>un formateador reescribió el archivo: se espera un registro por línea; recupere el archivo de una copia</translation>
    </message>
    <message>
        <source>the file was saved as UTF-16: one record a line is expected, as UTF-8; take the file back from a copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el archivo se guardó como UTF-16: se espera un registro por línea, en UTF-8; recupere el archivo de una copia</translation>
    </message>
    <message>
        <source>it was found by somebody whose name cannot be read: two different people are to pass it, in a check each</source>
        <translation>lo encontró alguien cuyo nombre no se puede leer: deben darlo por bueno dos personas distintas, en una comprobación cada una</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::ResultChoice</name>
    <message>
        <source>P</source>
        <comment>the key for: pass</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A</translation>
    </message>
    <message>
        <source>F</source>
        <comment>the key for: fail</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>F</translation>
    </message>
    <message>
        <source>N</source>
        <comment>the key for: not tested</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>N</translation>
    </message>
    <message>
        <source>R</source>
        <comment>the key for: could not reach</comment>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>L</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::RunDownFields</name>
    <message>
        <source>Run-down, seconds</source>
        <translation>Tiempo de parada, s</translation>
    </message>
    <message>
        <source>Run %1, seconds</source>
        <translation>Tiempo de parada %1, segundos</translation>
    </message>
    <message>
        <source>%1 of %2, mean %3</source>
        <translation>%1 de %2, media %3</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::RunDownTimer</name>
    <message>
        <source>At rest: stop the clock (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>En reposo: detener el reloj (Espacio)</translation>
    </message>
    <message>
        <source>All %1 runs are timed</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hechas las %1 mediciones</translation>
    </message>
    <message>
        <source>Time the run-down (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medir el tiempo de parada (Espacio)</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Time one now, dated by the paper (Space)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medir ahora, con la hora del papel (Espacio)</translation>
    </message>
</context>
<context>
    <name>stopwalk::rounds::StartForm</name>
    <message>
        <source>Who walks the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quién hace la ronda</translation>
    </message>
    <message>
        <source>your name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>su nombre</translation>
    </message>
    <message>
        <source>Over what</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué abarca</translation>
    </message>
    <message>
        <source>One room:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Una sala:</translation>
    </message>
    <message>
        <source>Room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Back</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Volver</translation>
    </message>
    <message>
        <source>What is due: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo pendiente: %1</translation>
    </message>
    <message>
        <source>All devices: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los dispositivos: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Being written…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escribiendo…</translation>
    </message>
    <message>
        <source>Start the round (Enter)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empezar la ronda (Intro)</translation>
    </message>
    <message>
        <source>Walked on paper on</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Recorrida en papel el</translation>
    </message>
    <message>
        <source>empty: it is walked now; else as 2026-03-02 09:15</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>vacío: se recorre ahora; si no, como 2026-03-02 09:15</translation>
    </message>
    <message>
        <source>What is entered is kept; a round can be stopped and continued at any time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se introduce se conserva; una ronda se puede interrumpir y continuar en cualquier momento.</translation>
    </message>
    <message>
        <source>Sheet on paper…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hoja en papel…</translation>
    </message>
    <message>
        <source>Saves the sheet to walk this round with as PDF, and opens no round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarda como PDF la hoja para esta ronda, y no abre ninguna ronda.</translation>
    </message>
    <message>
        <source>only what is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>solo lo pendiente</translation>
    </message>
    <message>
        <source>Doors</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puertas</translation>
    </message>
    <message>
        <source>Doors as in opening hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puertas como en horario de apertura</translation>
    </message>
    <message>
        <source>Doors as after hours</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Puertas como fuera de horario</translation>
    </message>
    <message>
        <source>back to the beginning</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>volver al comienzo</translation>
    </message>
    <message>
        <source>Where the walk begins</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dónde empieza el recorrido</translation>
    </message>
    <message>
        <source>Begins wherever the walk is shortest</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empieza donde el recorrido sea más corto</translation>
    </message>
    <message>
        <source>Begins at: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empieza en: %1</translation>
    </message>
    <message>
        <source>The shortest walk is being sought…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se busca el recorrido más corto…</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::AuditPlace</name>
    <message>
        <source>It changes nothing for any station.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No cambia nada para ningún puesto.</translation>
    </message>
    <message>
        <source>1 station worse off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 puesto peor</translation>
    </message>
    <message>
        <source>%1 stations worse off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 puestos peor</translation>
    </message>
    <message>
        <source>1 station better off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 puesto mejor</translation>
    </message>
    <message>
        <source>%1 stations better off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 puestos mejor</translation>
    </message>
    <message>
        <source>1 station otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 puesto distinto</translation>
    </message>
    <message>
        <source>%1 stations otherwise</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 puestos distintos</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>What the audit found, and what if</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que encontró la auditoría, y qué pasaría si</translation>
    </message>
    <message>
        <source>Findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>What if</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Qué pasaría si</translation>
    </message>
    <message>
        <source>Rules</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Holds a drawing against chosen rules; certifies nothing. Local codes, the maker and licensed people come first. Never rely on a stop as a guard. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Compara un dibujo con las reglas elegidas; no certifica nada. Tienen prioridad las normas locales, el fabricante y los profesionales autorizados. Nunca confíe en una parada como protección. &lt;a href=&quot;#&quot;&gt;Más&lt;/a&gt;</translation>
    </message>
    <message>
        <source>1 new finding</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 hallazgo nuevo</translation>
    </message>
    <message>
        <source>%1 new findings</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hallazgos nuevos</translation>
    </message>
    <message>
        <source>1 finding gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 hallazgo menos</translation>
    </message>
    <message>
        <source>%1 findings gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 hallazgos menos</translation>
    </message>
    <message>
        <source>What if %1? Not as the workshop is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Y si %1? No es como está el taller.</translation>
    </message>
    <message>
        <source>1 rule is off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>1 regla está desactivada</translation>
    </message>
    <message>
        <source>%1 rules are off</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 reglas están desactivadas</translation>
    </message>
    <message>
        <source>The layout&apos;s own profile is not used</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El perfil propio de la distribución no se usa</translation>
    </message>
    <message>
        <source>Of a moment ago: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>De hace un momento: %1</translation>
    </message>
    <message>
        <source>The inspection records cannot be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección no se pueden leer</translation>
    </message>
    <message>
        <source>The inspection records are not as they were read before</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección no están como se leyeron antes</translation>
    </message>
    <message>
        <source>The inspection records are not all as they were written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección no están todos como se escribieron</translation>
    </message>
    <message>
        <source>1 finding changed</source>
        <translation>1 hallazgo cambiado</translation>
    </message>
    <message>
        <source>%1 findings changed</source>
        <translation>%1 hallazgos cambiados</translation>
    </message>
    <message>
        <source>Look at the &amp;findings</source>
        <translation>Ver los &amp;hallazgos</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>How findings are &amp;listed</source>
        <translation>Cómo se &amp;listan los hallazgos</translation>
    </message>
    <message>
        <source>Look at the table of &amp;stations</source>
        <translation>Ver la tabla de &amp;puestos</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Look at &amp;what if</source>
        <translation>Ver &amp;qué pasaría si</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation>Ctrl+Shift+Y</translation>
    </message>
    <message>
        <source>Colour the floor b&amp;y</source>
        <translation>C&amp;olorear el suelo por</translation>
    </message>
    <message>
        <source>Look at the &amp;rules</source>
        <translation>Ver las &amp;reglas</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>and %1 more, in the table</source>
        <translation>y %1 más, en la tabla</translation>
    </message>
    <message>
        <source>The file of inspection records is empty</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El archivo de registros de inspección está vacío</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::Document</name>
    <message>
        <source>New layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Distribución nueva</translation>
    </message>
    <message>
        <source>New workshop</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Taller nuevo</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FileFlow</name>
    <message>
        <source>unknown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>the profile %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>el perfil %1</translation>
    </message>
    <message>
        <source>the picture %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>la imagen %1</translation>
    </message>
    <message>
        <source>%1-copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1-copia</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>%1 is open elsewhere</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está abierto en otro lugar</translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Está trabajando en él %1. Si dos personas guardan una encima de la otra, se pierde trabajo.</translation>
    </message>
    <message>
        <source>Open for looking only</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrir solo para ver</translation>
    </message>
    <message>
        <source>Take it over</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacerse cargo</translation>
    </message>
    <message>
        <source>Do not open it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No abrirlo</translation>
    </message>
    <message>
        <source>%1 could not be opened</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudo abrir %1</translation>
    </message>
    <message>
        <source>The shop&apos;s own files beside it could not be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudieron leer los archivos propios del taller que están al lado</translation>
    </message>
    <message>
        <source>The kinds of device and machines that come with the program are used instead.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se usan en su lugar los tipos de dispositivo y las máquinas que vienen con el programa.</translation>
    </message>
    <message>
        <source>Go back to the file as it was saved?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Volver al archivo tal como se guardó?</translation>
    </message>
    <message>
        <source>What was changed since then is lost.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se cambió desde entonces se pierde.</translation>
    </message>
    <message>
        <source>Keep working</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seguir trabajando</translation>
    </message>
    <message>
        <source>Go back to the file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Volver al archivo</translation>
    </message>
    <message>
        <source>%1 is open for looking only</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está abierto solo para ver</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar con otro nombre</translation>
    </message>
    <message>
        <source>%1 was taken over by somebody else</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otra persona se hizo cargo de %1</translation>
    </message>
    <message>
        <source>It is being worked on by %1. Two people who save over each other lose work. Ask there before you take it over.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Está trabajando en él %1. Si dos personas guardan una encima de la otra, se pierde trabajo. Pregunte allí antes de hacerse cargo.</translation>
    </message>
    <message>
        <source>The layout could not be opened in that folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La distribución no se podría abrir en esa carpeta</translation>
    </message>
    <message>
        <source>It uses the shop&apos;s own kinds of device (%1). Copy device-kinds.yaml there first, or save in another folder.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Usa tipos de dispositivo propios del taller (%1). Copie antes allí device-kinds.yaml, o guarde en otra carpeta.</translation>
    </message>
    <message>
        <source>the shop&apos;s own kinds and machines, which cannot be read there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>los tipos y máquinas propios del taller, que allí no se pueden leer</translation>
    </message>
    <message>
        <source>Not everything that the layout uses is in that folder</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No todo lo que usa la distribución está en esa carpeta</translation>
    </message>
    <message>
        <source>Missing there: %1. Copy it there as well, or the layout is shown and audited without it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Allí falta: %1. Cópielo también allí, o la distribución se muestra y se audita sin ello.</translation>
    </message>
    <message>
        <source>Save it there all the same</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardarla allí de todos modos</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>Saved, but perhaps not for good</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardado, pero quizá no de forma duradera</translation>
    </message>
    <message>
        <source>%1 was changed by someone else</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otra persona cambió %1</translation>
    </message>
    <message>
        <source>%1 is there already</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ya está ahí</translation>
    </message>
    <message>
        <source>Replace what is there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sustituir lo que hay</translation>
    </message>
    <message>
        <source>%1 was not saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 no se guardó</translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Guardar los cambios de %1?</translation>
    </message>
    <message>
        <source>Without saving, they are lost.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Si no se guardan, se pierden.</translation>
    </message>
    <message>
        <source>Save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No guardar</translation>
    </message>
    <message>
        <source>Throw away the work that was kept?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Descartar el trabajo conservado?</translation>
    </message>
    <message>
        <source>It was never saved, and cannot be brought back afterwards. %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nunca se guardó, y después no se puede recuperar. %1</translation>
    </message>
    <message>
        <source>%1 stays as it is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 queda como está.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Conservarlo</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Descartarlo</translation>
    </message>
    <message>
        <source>The kept work is still there</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El trabajo conservado sigue ahí</translation>
    </message>
    <message>
        <source>%1 is write-protected</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está protegido contra escritura</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::FirstMinutes</name>
    <message>
        <source>Begin</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Draw a first room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujar una primera sala</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Anchura</translation>
    </message>
    <message>
        <source>&amp;Depth</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Fondo</translation>
    </message>
    <message>
        <source>Draw the room</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujar la sala</translation>
    </message>
    <message>
        <source>Inside, from wall to wall: 8 m, 7500 mm or 24&apos; 6&quot;. It can be changed at any time.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Por dentro, de pared a pared: 8 m, 7500 mm o 24&apos; 6&quot;. Se puede cambiar en cualquier momento.</translation>
    </message>
    <message>
        <source>Or look at a sample</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>O mirar un ejemplo</translation>
    </message>
    <message>
        <source>Or go on with a file</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>O seguir con un archivo</translation>
    </message>
    <message>
        <source>Open a layout…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrir una distribución…</translation>
    </message>
    <message>
        <source>Type a length from 0.1 m to 1000 m, such as 8 m, 7500 mm or 24&apos; 6&quot;.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba una longitud de 0.1 m a 1000 m, como 8 m, 7500 mm o 24&apos; 6&quot;.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::InspectPlace</name>
    <message>
        <source>Test a stop only as its maker and the shop&apos;s procedure say, with the work clear. A record certifies nothing. Local codes, the maker and licensed people come first. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pruebe una parada solo como indiquen el fabricante y el procedimiento del taller, con la pieza separada de la herramienta. Un registro no certifica nada. Tienen prioridad las normas locales, el fabricante y los profesionales autorizados. &lt;a href=&quot;#&quot;&gt;Más&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Save the layout first: inspection records stand beside its file.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guarde primero la distribución: los registros de inspección están junto a su archivo.</translation>
    </message>
    <message>
        <source>The inspection records cannot be read, and nothing is added to them: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección no se pueden leer y no se les añade nada: %1.</translation>
    </message>
    <message>
        <source>The layout is not in its file as it is here. Save it first (Ctrl+S): a check names the layout that it was made by.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La distribución no está en su archivo como aquí. Guárdela primero (Ctrl+S): una comprobación nombra la distribución con la que se hizo.</translation>
    </message>
    <message>
        <source>The plan is just being read. Try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El plano se está leyendo. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>There is no stop device on the plan yet. Draw one (Alt+1): what is due stands here then.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aún no hay ningún dispositivo de parada en el plano. Dibuje uno (Alt+1): entonces lo pendiente estará aquí.</translation>
    </message>
    <message>
        <source>Type who walks the round: it stands on every check.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba quién hace la ronda: consta en cada comprobación.</translation>
    </message>
    <message>
        <source>There is no device that is due.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún dispositivo pendiente.</translation>
    </message>
    <message>
        <source>The device is no longer on the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El dispositivo ya no está en el plano.</translation>
    </message>
    <message>
        <source>Recorded as %1: %2, %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Registrado como %1: %2, %3.</translation>
    </message>
    <message>
        <source>%1 All devices of this round are checked.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Todos los dispositivos de esta ronda están comprobados.</translation>
    </message>
    <message>
        <source>&amp;What is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Lo pendiente</translation>
    </message>
    <message>
        <source>&amp;Start a round…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Empezar una ronda…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>&amp;Continue the round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Continuar la ronda</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>&amp;Next device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivo &amp;siguiente</translation>
    </message>
    <message>
        <source>Ctrl+PgDown</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+PgDown</translation>
    </message>
    <message>
        <source>&amp;Previous device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivo &amp;anterior</translation>
    </message>
    <message>
        <source>Ctrl+PgUp</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+PgUp</translation>
    </message>
    <message>
        <source>&amp;Record the check</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Registrar la comprobación</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>That check is of no round that lists its device: correct it on the command line.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esa comprobación no es de una ronda que liste su dispositivo: corríjala en la línea de comandos.</translation>
    </message>
    <message>
        <source>Pick a stop device that was checked: its checks stand below the plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija un dispositivo ya comprobado: sus comprobaciones están bajo el plano.</translation>
    </message>
    <message>
        <source>Corrects check %1. That one stays in the records as it was written. Escape leaves it uncorrected.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Corrige la comprobación %1. Esa queda en los registros como se escribió. Esc la deja sin corregir.</translation>
    </message>
    <message>
        <source>%1 A correction undoes no failure: only a check of its own that passes does.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Una corrección no anula ningún fallo: solo lo hace una comprobación propia superada.</translation>
    </message>
    <message>
        <source>C&amp;hecks of the device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>C&amp;omprobaciones del dispositivo</translation>
    </message>
    <message>
        <source>Ctrl+Shift+H</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+H</translation>
    </message>
    <message>
        <source>The clock was still running: that run is not kept.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El reloj aún corría: esa medición no se guarda.</translation>
    </message>
    <message>
        <source>The clock is still running: stop it (Space) once all is at rest. A wrong run can be dropped.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El reloj aún corre: deténgalo (Espacio) cuando todo esté en reposo. Una medición errónea se puede quitar.</translation>
    </message>
    <message>
        <source>Type in &quot;Inspected by&quot; who made this check: it bears that name for good.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escriba en «Inspeccionado por» quién hizo esta comprobación: llevará ese nombre para siempre.</translation>
    </message>
    <message>
        <source>Inspection records that were read here are no longer there as they were: nothing is added to their rounds. Put them back, or start a round anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección que se leyeron aquí ya no están como estaban: no se añade nada a sus rondas. Devuélvalos a su sitio o empiece una ronda nueva.</translation>
    </message>
    <message>
        <source>A check is still being written. Try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía se está escribiendo una comprobación. Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>A check is still being written. What is entered here is kept; try again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía se está escribiendo una comprobación. Lo introducido aquí se conserva; inténtelo de nuevo.</translation>
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
        <translation>Los dispositivos por inspeccionar no se pudieron calcular: %1.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún dispositivo que inspeccionar.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No round lists that device: say on the command line that it was taken away.</source>
        <translation>Ninguna ronda incluye ese dispositivo: diga en la línea de comandos que se retiró.</translation>
    </message>
    <message>
        <source>If it was taken away, press Enter once more. What it failed, and what is still to be done at it, is then no longer asked for. If it only has another id now, leave it.</source>
        <translation>Si se retiró, pulse Intro otra vez. Lo que falló y lo que queda por hacer en él ya no se pedirá. Si ahora solo tiene otro identificador, déjelo.</translation>
    </message>
    <message>
        <source>taken away</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>Inspection records that were read here are no longer there as they were: put them back. Enter once more starts a round without them.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección que se leyeron aquí ya no están como estaban: devuélvalos a su sitio. Intro una vez más empieza una ronda sin ellos.</translation>
    </message>
    <message>
        <source>%1 Failed only by them: %2. That is then forgotten once the layout is closed, unless it is checked in this round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Con fallo solo según ellos: %2. Eso se olvida al cerrar la distribución, salvo que se compruebe en esta ronda.</translation>
    </message>
    <message>
        <source>, </source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>, </translation>
    </message>
    <message>
        <source>That it was taken away is recorded already.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ya está registrado que se retiró.</translation>
    </message>
    <message>
        <source>The settings of this computer cannot be written: what is entered here is lost if it is not recorded before the program ends.</source>
        <translation>No se puede escribir la configuración de este equipo: lo introducido aquí se pierde si no se registra antes de que termine el programa.</translation>
    </message>
    <message>
        <source>Round %1, %2, %3: %4 of %5 checked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ronda %1, %2, %3: %4 de %5 comprobados</translation>
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
        <translation>Con tantos dispositivos el recorrido más corto se busca al empezar la ronda, y eso tarda.</translation>
    </message>
    <message>
        <source>The walk could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se pudo calcular el recorrido: %1.</translation>
    </message>
    <message>
        <source>Nobody can stand where the walk is to begin: choose another place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nadie puede estar de pie donde debe empezar el recorrido: elija otro lugar.</translation>
    </message>
    <message>
        <source>Start a round, or continue one, first.</source>
        <translation>Empiece antes una ronda, o continúe una.</translation>
    </message>
    <message>
        <source>Of before</source>
        <comment>signs on the plan</comment>
        <translation>De antes</translation>
    </message>
    <message>
        <source>The records are being read again: what is shown of them is of before.</source>
        <translation>Los registros se están leyendo de nuevo: lo que se muestra de ellos es de antes.</translation>
    </message>
    <message>
        <source>What was &amp;tried</source>
        <translation>Qué se pro&amp;bó</translation>
    </message>
    <message>
        <source>What came &amp;of it</source>
        <translation>&amp;Qué resultó</translation>
    </message>
    <message>
        <source>%1 Of what was entered here before, only the note and the second person are recorded with it.</source>
        <translation>%1 De lo que se introdujo aquí antes, solo se registran con ello la nota y la segunda persona.</translation>
    </message>
    <message>
        <source>%1 Still due: %2.</source>
        <translation>%1 Aún pendiente: %2.</translation>
    </message>
    <message>
        <source>%1 is before the check: the last day of what is tagged out or to be done is expected.</source>
        <translation>%1 es anterior a la comprobación: se espera el último día de la etiqueta o de lo que queda por hacer.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::MainWindow</name>
    <message>
        <source>There is nothing to paste.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay nada que pegar.</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be read</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 no es una imagen que se pueda leer</translation>
    </message>
    <message>
        <source>Choose a PNG or JPEG file, such as a scan or a photo of a plan.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elija un archivo PNG o JPEG, como un escaneo o una foto de un plano.</translation>
    </message>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Paste</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>stations</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>puestos</translation>
    </message>
    <message>
        <source>What Stopwalk does not do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que Stopwalk no hace</translation>
    </message>
    <message>
        <source>Stopwalk checks a drawing against chosen rules. It does not certify a machine, a stop or a room. Local codes, the machine&apos;s maker, the authority having jurisdiction and licensed people come first.

Never rely on a stop as a guard. Test a stop only as the maker and the shop&apos;s procedure say, with the work clear. Anyone may press any stop.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopwalk comprueba un dibujo con las reglas elegidas. No certifica una máquina, una parada ni una sala. Tienen prioridad las normas locales, el fabricante de la máquina, la autoridad competente y los profesionales autorizados.

Nunca confíe en una parada como protección. Pruebe una parada solo como indiquen el fabricante y el procedimiento del taller, con la pieza separada de la herramienta. Cualquiera puede pulsar cualquier parada.</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>Go &amp;back to the saved file…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Volver al archivo guardado…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 (falta)</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Undo:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Deshacer:</translation>
    </message>
    <message>
        <source>&amp;Redo:</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Rehacer:</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cort&amp;ar</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>D&amp;uplicar</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Re&amp;move</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seleccionar t&amp;odo</translation>
    </message>
    <message>
        <source>Select all of this &amp;kind</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seleccionar todo de este &amp;tipo</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>Select &amp;nothing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seleccionar &amp;nada</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Arrange</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Organizar</translation>
    </message>
    <message>
        <source>Turn &amp;left by 90°</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar 90° a la &amp;izquierda</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Turn &amp;right by 90°</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Girar 90° a la &amp;derecha</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>Align le&amp;ft sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear lados iz&amp;quierdos</translation>
    </message>
    <message>
        <source>Align right &amp;sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear lados d&amp;erechos</translation>
    </message>
    <message>
        <source>Align &amp;top sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear lados &amp;superiores</translation>
    </message>
    <message>
        <source>Align &amp;bottom sides</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear lados in&amp;feriores</translation>
    </message>
    <message>
        <source>Align middles &amp;across</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear centros en &amp;horizontal</translation>
    </message>
    <message>
        <source>Align middles &amp;up and down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alinear centros en &amp;vertical</translation>
    </message>
    <message>
        <source>Equal &amp;gaps across</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Espacio i&amp;gual en horizontal</translation>
    </message>
    <message>
        <source>Equal gaps up and &amp;down</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Espacio ig&amp;ual en vertical</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Dibujar</translation>
    </message>
    <message>
        <source>&amp;Pick things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Elegir cosas</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>&amp;Room, a rectangle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Sala, un rectángulo</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>Room by &amp;corners</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala por es&amp;quinas</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+3</translation>
    </message>
    <message>
        <source>&amp;Door</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Puerta</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+4</translation>
    </message>
    <message>
        <source>&amp;Machine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Máquina</translation>
    </message>
    <message>
        <source>&amp;Stop device</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dispositivo de p&amp;arada</translation>
    </message>
    <message>
        <source>Ctrl+5</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+5</translation>
    </message>
    <message>
        <source>P&amp;hone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Teléfono</translation>
    </message>
    <message>
        <source>Ctrl+6</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+6</translation>
    </message>
    <message>
        <source>&amp;Bench</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Banco</translation>
    </message>
    <message>
        <source>Ctrl+7</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+7</translation>
    </message>
    <message>
        <source>C&amp;olumn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Columna</translation>
    </message>
    <message>
        <source>Rac&amp;k</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esta&amp;ntería</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Ctrl+8</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+8</translation>
    </message>
    <message>
        <source>Tape ch&amp;eck</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Medición con c&amp;inta</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>&amp;Underlay picture…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ima&amp;gen de fondo…</translation>
    </message>
    <message>
        <source>Sca&amp;le the underlay</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escala &amp;de la imagen de fondo</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>The place to &amp;draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Área &amp;Dibujar</translation>
    </message>
    <message>
        <source>Alt+1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+1</translation>
    </message>
    <message>
        <source>The place to &amp;audit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Área &amp;Auditar</translation>
    </message>
    <message>
        <source>Alt+2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+2</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A&amp;cercar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A&amp;lejar</translation>
    </message>
    <message>
        <source>Show &amp;everything</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mostrar &amp;todo</translation>
    </message>
    <message>
        <source>0</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>0</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>C&amp;uadrícula</translation>
    </message>
    <message>
        <source>Ctrl+&apos;</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+&apos;</translation>
    </message>
    <message>
        <source>Go to what is &amp;picked</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ir a lo &amp;seleccionado</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>What is &amp;this?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Qué es e&amp;sto?</translation>
    </message>
    <message>
        <source>&amp;Find an action…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Buscar una acción…</translation>
    </message>
    <message>
        <source>Ctrl+/</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ctrl+/</translation>
    </message>
    <message>
        <source>What Stopwalk does &amp;not do</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que Stopwalk &amp;no hace</translation>
    </message>
    <message>
        <source>Places of work</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Áreas de trabajo</translation>
    </message>
    <message>
        <source>Draw</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujar</translation>
    </message>
    <message>
        <source>Audit</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auditar</translation>
    </message>
    <message>
        <source>Draw and change the plan (Alt+1)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Dibujar y cambiar el plano (Alt+1)</translation>
    </message>
    <message>
        <source>Findings, all stations, and what if (Alt+2)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hallazgos, todos los puestos y qué pasaría si (Alt+2)</translation>
    </message>
    <message>
        <source>What there is to draw, and what is drawn</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se puede dibujar y lo que está dibujado</translation>
    </message>
    <message>
        <source>Gallery</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Galería</translation>
    </message>
    <message>
        <source>Things</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cosas</translation>
    </message>
    <message>
        <source>This work is not safe from a crash: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Este trabajo no está a salvo si el programa falla: %1</translation>
    </message>
    <message>
        <source>Room 1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Sala 1</translation>
    </message>
    <message>
        <source>What if %1? Nothing of this is saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Supuesto: %1. Nada de esto se guarda.</translation>
    </message>
    <message>
        <source>Back to how it is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Volver a como está</translation>
    </message>
    <message>
        <source> (for looking only)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation> (solo para ver)</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar como…</translation>
    </message>
    <message>
        <source>%1, line %2: %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1, línea %2: %3.</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>
            <numerusform>Y %n más.</numerusform>
            <numerusform>Y %n más.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was noticed in %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se observó en %1</translation>
    </message>
    <message>
        <source>The layout was opened all the same. The lines are below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La distribución se abrió de todos modos. Las líneas están abajo.</translation>
    </message>
    <message>
        <source>Show them all</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Mostrarlas todas</translation>
    </message>
    <message>
        <source>Close</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otro programa cambió %1.</translation>
    </message>
    <message>
        <source>Open it as it is now</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrirlo como está ahora</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Conservar lo mío</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ya no está en el disco.</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardarlo otra vez</translation>
    </message>
    <message>
        <source>%1 can no longer be read.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ya no se puede leer.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Open a sa&amp;mple</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abrir un e&amp;jemplo</translation>
    </message>
    <message>
        <source>The place of the pos&amp;ter</source>
        <translation>Área Ca&amp;rtel</translation>
    </message>
    <message>
        <source>Alt+4</source>
        <translation>Alt+4</translation>
    </message>
    <message>
        <source>&amp;Poster</source>
        <translation>Ca&amp;rtel</translation>
    </message>
    <message>
        <source>Poster</source>
        <translation>Cartel</translation>
    </message>
    <message>
        <source>The stop-location poster of each room (Alt+4)</source>
        <translation>El cartel con los puntos de parada de cada sala (Alt+4)</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The place to in&amp;spect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Área Ins&amp;peccionar</translation>
    </message>
    <message>
        <source>Alt+3</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Alt+3</translation>
    </message>
    <message>
        <source>&amp;Inspect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>&amp;Inspeccionar</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Inspeccionar</translation>
    </message>
    <message>
        <source>What is due, and rounds from device to device (Alt+3)</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo pendiente, y rondas de dispositivo en dispositivo (Alt+3)</translation>
    </message>
    <message>
        <source>Nothing was changed: while devices are inspected the plan is only looked at.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se cambió nada: durante la inspección el plano solo se mira.</translation>
    </message>
    <message>
        <source>Save the sheet of this round as P&amp;DF…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la &amp;hoja de esta ronda como PDF…</translation>
    </message>
    <message>
        <source>Save the &amp;bundle of a period…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la recop&amp;ilación de un período…</translation>
    </message>
    <message>
        <source>All stations, as the layout is, are in %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los puestos, tal como está la distribución, están en %1.</translation>
    </message>
    <message>
        <source>A record is being written. The window closes when it is on the disk.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se está escribiendo un registro. La ventana se cierra cuando esté en el disco.</translation>
    </message>
    <message>
        <source>The inspection records of %1 stay with it, and cannot be read: what failed by them is not known here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 se quedan con él y no se pueden leer: aquí no se sabe qué falló según ellos.</translation>
    </message>
    <message>
        <source>The inspection records of %1 stay with it. Failed by them, and not known here: %2 devices.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 se quedan con él. Con fallo según ellos y no conocidos aquí: %2 dispositivos.</translation>
    </message>
    <message>
        <source>%1 %2 has records of its own.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 %2 tiene sus propios registros.</translation>
    </message>
    <message>
        <source>Copy the records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Copiar los registros</translation>
    </message>
    <message>
        <source>Begin without them</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Empezar sin ellos</translation>
    </message>
    <message>
        <source>The inspection records of %1 are copied. Each goes on by itself from here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 están copiados. Desde aquí cada uno sigue por su lado.</translation>
    </message>
    <message>
        <source>The records are copied, but perhaps not for good: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros están copiados, pero quizá no de forma duradera: %1.</translation>
    </message>
    <message>
        <source>The records were not copied</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se copiaron los registros</translation>
    </message>
    <message>
        <source>it is gone</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>%1 was changed by another program, and cannot be used as it is now: %2. The kinds of device and machine templates that were read before stay in use until it can.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otro programa ha cambiado %1, y tal como está ahora no se puede usar: %2. Los tipos de dispositivo y las plantillas de máquina leídos antes siguen en uso hasta que se pueda.</translation>
    </message>
    <message>
        <source>%1 was changed by another program, and was read again: the layout is audited by what it says now.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otro programa ha cambiado %1, y se ha leído de nuevo: la distribución se audita según lo que dice ahora.</translation>
    </message>
    <message>
        <source>%1 was changed by another program. %2 The profile as it was read before stays in use until it can be read again.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otro programa ha cambiado %1. %2 El perfil sigue en uso tal como se leyó antes, hasta que se pueda leer de nuevo.</translation>
    </message>
    <message>
        <source>No table is exported</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se exporta ninguna tabla</translation>
    </message>
    <message>
        <source>The audit could not be computed: %1. What is shown of it is of a moment ago. Close other programs if memory is short; the next change is audited anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La auditoría no se pudo calcular: %1. Lo que se ve de ella es de hace un momento. Cierre otros programas si falta memoria; el próximo cambio se audita de nuevo.</translation>
    </message>
    <message>
        <source>Audit again</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Auditar de nuevo</translation>
    </message>
    <message>
        <source>The colours of the floor could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los colores del suelo no se pudieron calcular: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and counted as a stop all the same: %1.</source>
        <translation>No pasó una comprobación, ni ninguna desde entonces; aun así cuenta como parada: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and counted as no stop: %1.</source>
        <translation>No pasó una comprobación, ni ninguna desde entonces; no cuenta como parada: %1.</translation>
    </message>
    <message>
        <source>Failed and not passed since, and no longer on the plan under this id: %1. What stands in its place now counts as a stop.</source>
        <translation>No pasó una comprobación, ni ninguna desde entonces, y ya no está en el plano con este identificador: %1. Lo que está ahora en su lugar cuenta como parada.</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>hallazgos</translation>
    </message>
    <message>
        <source>%1-findings</source>
        <translation>%1-hallazgos</translation>
    </message>
    <message>
        <source>All findings, as the layout is, are in %1.</source>
        <translation>Todos los hallazgos, tal como está la distribución, están en %1.</translation>
    </message>
    <message>
        <source>Audi&amp;t</source>
        <translation>A&amp;uditar</translation>
    </message>
    <message>
        <source>house-rules</source>
        <translation>reglas-de-la-casa</translation>
    </message>
    <message>
        <source>Rules of %1</source>
        <translation>Reglas de %1</translation>
    </message>
    <message>
        <source>All rules, as they are kept here, are in %1.</source>
        <translation>Todas las reglas, como rigen aquí, están en %1.</translation>
    </message>
    <message>
        <source>That profile cannot be chosen</source>
        <translation>Ese perfil no se puede elegir</translation>
    </message>
    <message>
        <source>Save the layout first: a profile file stands beside it.</source>
        <translation>Guarde antes la distribución: un archivo de perfil está junto a ella.</translation>
    </message>
    <message>
        <source>It must stand in the folder of the layout or below, so that it goes where the layout goes.</source>
        <translation>Debe estar en la carpeta de la distribución o debajo, para que vaya adonde va la distribución.</translation>
    </message>
    <message>
        <source>R&amp;ename…</source>
        <translation>Ca&amp;mbiar el nombre…</translation>
    </message>
    <message>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <source>Move &amp;or turn by numbers…</source>
        <translation>Mo&amp;ver o girar con números…</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>S&amp;tation of the operator</source>
        <translation>P&amp;uesto del operario</translation>
    </message>
    <message>
        <source>St&amp;ation of a helper</source>
        <translation>Puesto del a&amp;yudante</translation>
    </message>
    <message>
        <source>Stat&amp;ion of a setter</source>
        <translation>Puesto del prepa&amp;rador</translation>
    </message>
    <message>
        <source>Station o&amp;f an instructor</source>
        <translation>Puesto de&amp;l instructor</translation>
    </message>
    <message>
        <source>The audit is still being computed; this is done when it is there.</source>
        <translation>La auditoría aún se está calculando; se hace en cuanto esté.</translation>
    </message>
    <message>
        <source>something else was asked for</source>
        <translation>se pidió otra cosa</translation>
    </message>
    <message>
        <source>another layout was opened</source>
        <translation>se abrió otra distribución</translation>
    </message>
    <message>
        <source>the audit could not be computed</source>
        <translation>no se pudo calcular la auditoría</translation>
    </message>
    <message>
        <source>What was to be done once the audit is there is not done: %1. Ask for it again: %2.</source>
        <translation>Lo que debía hacerse en cuanto estuviera la auditoría no se hace: %1. Vuelva a pedirlo: %2.</translation>
    </message>
    <message>
        <source>%1, into %2</source>
        <translation>%1, en %2</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::NoticeBar</name>
    <message>
        <source>Notice</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Close</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PageView</name>
    <message>
        <source>Poster</source>
        <translation>Cartel</translation>
    </message>
    <message>
        <source>%1, sheets: %2</source>
        <translation>%1, hojas: %2</translation>
    </message>
    <message>
        <source>Being made…</source>
        <translation>Se está haciendo…</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PosterFiles</name>
    <message>
        <source>OK</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Save the layout first?</source>
        <translation>¿Guardar antes la distribución?</translation>
    </message>
    <message>
        <source>A poster carries the hash of the layout&apos;s file, by which anyone can tell later whether it is still true. This layout is not in its file as it is here: its posters would say %1 instead.</source>
        <translation>Un cartel lleva la suma de comprobación del archivo de la distribución, con la que cualquiera puede ver después si sigue siendo cierto. Esta distribución no está en su archivo tal como está aquí: sus carteles dirían %1 en su lugar.</translation>
    </message>
    <message>
        <source>Save the layout first</source>
        <translation>Guardar antes la distribución</translation>
    </message>
    <message>
        <source>Go on, marked %1</source>
        <translation>Seguir, con la marca %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>There is no poster</source>
        <translation>No hay cartel</translation>
    </message>
    <message>
        <source>The layout has no room indoors to make one of.</source>
        <translation>La distribución no tiene ninguna sala interior de la que hacerlo.</translation>
    </message>
    <message>
        <source>Posters are being made…</source>
        <translation>Se están haciendo los carteles…</translation>
    </message>
    <message>
        <source>Not every room has a poster on this paper</source>
        <translation>No todas las salas tienen cartel en este papel</translation>
    </message>
    <message>
        <source>Save none</source>
        <translation>No guardar ninguno</translation>
    </message>
    <message>
        <source>Save the others</source>
        <translation>Guardar los demás</translation>
    </message>
    <message>
        <source>poster</source>
        <translation>cartel</translation>
    </message>
    <message>
        <source>posters</source>
        <translation>carteles</translation>
    </message>
    <message>
        <source>That is the layout itself</source>
        <translation>Esa es la propia distribución</translation>
    </message>
    <message>
        <source>Save the poster under another name.</source>
        <translation>Guarde el cartel con otro nombre.</translation>
    </message>
    <message>
        <source>Replace what is there?</source>
        <translation>¿Sustituir lo que hay?</translation>
    </message>
    <message>
        <source>The poster has several pages, and each is a file. There already: %1.</source>
        <translation>El cartel tiene varias páginas, y cada una es un archivo. Ya existen: %1.</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Conservarlos</translation>
    </message>
    <message>
        <source>Replace them</source>
        <translation>Sustituirlos</translation>
    </message>
    <message>
        <source>It is write-protected, and is left as it is. Save under another name.</source>
        <translation>Está protegido contra escritura y se deja como está. Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>The posters are written</source>
        <translation>Los carteles están escritos</translation>
    </message>
    <message>
        <source>What they do not do as they should, and rooms without one, are below.</source>
        <translation>Lo que no hacen como debieran, y las salas sin cartel, está abajo.</translation>
    </message>
    <message>
        <source>The poster is being written…</source>
        <translation>Se está escribiendo el cartel…</translation>
    </message>
    <message>
        <source>The poster is being printed…</source>
        <translation>Se está imprimiendo el cartel…</translation>
    </message>
    <message>
        <source>Printed at 100 %. Measure the bar at the foot of the poster: 100 mm.</source>
        <translation>Impreso al 100 %. Mida la barra al pie del cartel: 100 mm.</translation>
    </message>
    <message>
        <source>The poster was not printed</source>
        <translation>El cartel no se imprimió</translation>
    </message>
    <message>
        <source>The printer did not take it. Save it as PDF and print that at 100 %, without fitting it to the page.</source>
        <translation>La impresora no lo aceptó. Guárdelo como PDF e imprímalo al 100 %, sin ajustarlo a la página.</translation>
    </message>
    <message>
        <source>No poster is made</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se hace ningún cartel</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::PosterPlace</name>
    <message>
        <source>What the poster cannot do as it should</source>
        <translation>Lo que el cartel no puede hacer como debiera</translation>
    </message>
    <message>
        <source>What the poster cannot do as it sho&amp;uld</source>
        <translation>Lo que el cartel no p&amp;uede hacer como debiera</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Save as picture (PNG)…</source>
        <translation>Guardar como imagen (PNG)…</translation>
    </message>
    <message>
        <source>Save as drawing (SVG)…</source>
        <translation>Guardar como dibujo (SVG)…</translation>
    </message>
    <message>
        <source>Save posters of all rooms…</source>
        <translation>Guardar los carteles de todas las salas…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Drawn from a plan and checked against chosen rules; certifies nothing. Local codes, the maker and licensed people come first. Never rely on a stop as a guard. &lt;a href=&quot;#&quot;&gt;More&lt;/a&gt;</source>
        <translation>Dibujado a partir de un plano y comprobado con las reglas elegidas; no certifica nada. Tienen prioridad las normas locales, el fabricante y los profesionales autorizados. Nunca confíe en una parada como protección. &lt;a href=&quot;#&quot;&gt;Más&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Choose the &amp;room</source>
        <translation>Elegir la &amp;sala</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Choose the &amp;wall on the plan</source>
        <translation>Elegir la &amp;pared en el plano</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Save as p&amp;icture (PNG)…</source>
        <translation>Guardar como i&amp;magen (PNG)…</translation>
    </message>
    <message>
        <source>Save as &amp;drawing (SVG)…</source>
        <translation>Guardar como &amp;dibujo (SVG)…</translation>
    </message>
    <message>
        <source>Save posters of &amp;all rooms…</source>
        <translation>Guardar los carteles de &amp;todas las salas…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>Click the wall where the poster is to hang; Escape goes back to the poster.</source>
        <translation>Haga clic en la pared donde va a colgar el cartel; Esc vuelve al cartel.</translation>
    </message>
    <message>
        <source>The wheel zooms and dragging moves the page; 0 shows it whole.</source>
        <translation>La rueda amplía y reduce, y arrastrar mueve la página; 0 la muestra entera.</translation>
    </message>
    <message>
        <source>There is no room indoors yet. Draw one: posters are made of rooms.</source>
        <translation>Aún no hay ninguna sala interior. Dibuje una: los carteles son de salas.</translation>
    </message>
    <message>
        <source>There is no poster of this room on this paper.</source>
        <translation>No hay cartel de esta sala en este papel.</translation>
    </message>
    <message>
        <source>There is no poster of this room: %1.</source>
        <translation>No hay cartel de esta sala: %1.</translation>
    </message>
    <message>
        <source>It says %1: this layout is not in its file as it is here, so that the poster cannot be held against it.</source>
        <translation>Dice %1: esta distribución no está en su archivo tal como está aquí, así que el cartel no puede compararse con él.</translation>
    </message>
    <message>
        <source>Nothing: it does all that it should.</source>
        <translation>Nada: hace todo lo que debe.</translation>
    </message>
    <message>
        <source>No poster is made: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No se hace ningún cartel: %1</translation>
    </message>
    <message>
        <source>The poster could not be computed: %1.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El cartel no se pudo calcular: %1.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RecordsBeside</name>
    <message>
        <source>The inspection records in %1 cannot be read, and are not taken into account: %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 no se pueden leer y no se tienen en cuenta: %2.</translation>
    </message>
    <message>
        <source>%1 What had failed when they were last read still counts as failed.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Lo que había fallado en la última lectura sigue contando como fallo.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are gone: %2 that were read here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 han desaparecido: %2 que se leyeron aquí.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are not all there any more, or not as they were: it held %2, now %3.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los registros de inspección de %1 ya no están todos, o no como estaban: había %2, ahora %3.</translation>
    </message>
    <message>
        <source>%1 Find out who moved or changed the file, and put it back. What failed by them still counts as failed here, and nothing is recorded until they are back or a round is started anew.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 Averigüe quién movió o cambió el archivo y devuélvalo a su sitio. Lo que falló según ellos sigue contando aquí como fallo, y no se registra nada hasta que vuelvan o se empiece una ronda nueva.</translation>
    </message>
    <message>
        <source>Line %1 of the inspection records in %2 is not as it was written: %3. No pass counts up to line %4.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La línea %1 de los registros de inspección en %2 no está como se escribió: %3. Hasta la línea %4 no cuenta ninguna comprobación como superada.</translation>
    </message>
    <message>
        <source>The inspection records in %1 end in one that was never finished, or was cut or changed later: it does not count, and a failure may be in it. What is recorded next puts it aside into a file of its own.</source>
        <translation>Los registros de inspección de %1 acaban en uno que nunca se terminó, o que se cortó o cambió después: no cuenta, y puede haber un fallo en él. El próximo registro lo aparta en un archivo propio.</translation>
    </message>
    <message>
        <source>%1 are the inspection records of %2 too: what failed in one counts as failed in the other. Save one of them under a name of its own.</source>
        <translation>%1 son también los registros de inspección de %2: lo que falló en uno cuenta como fallo en el otro. Guarde uno de ellos con un nombre propio.</translation>
    </message>
    <message>
        <source>Lines of it that cannot be read any more: %1. What failed by them is not known.</source>
        <translation>Líneas que ya no se pueden leer: %1. Lo que falló según ellas no se sabe.</translation>
    </message>
    <message>
        <source>The inspection records in %1 are not as they were when they were last read.</source>
        <translation>Los registros de inspección en %1 no están como cuando se leyeron por última vez.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RecoveryDialog</name>
    <message>
        <source>%1 is as it was when this work began: what was kept is newer.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 está como cuando empezó este trabajo: lo conservado es más nuevo.</translation>
    </message>
    <message>
        <source>%1 holds this work already. Nothing is lost if it is thrown away.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ya contiene este trabajo. No se pierde nada si se descarta.</translation>
    </message>
    <message>
        <source>%1 was changed by somebody else since. If you go on with what was kept, you are asked before it is saved over theirs.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Otra persona cambió %1 después. Si sigue con lo conservado, se le preguntará antes de guardarlo encima de lo suyo.</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk. What was kept is all there is.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 ya no está en el disco. Lo conservado es todo lo que hay.</translation>
    </message>
    <message>
        <source>Work that was not saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Trabajo que no se guardó</translation>
    </message>
    <message>
        <source>a new layout</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>una distribución nueva</translation>
    </message>
    <message>
        <source>Work is kept here by a program on another computer.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Un programa en otro ordenador conserva aquí trabajo.</translation>
    </message>
    <message>
        <source>Stopwalk stopped before %1 was saved. The work was kept.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Stopwalk se detuvo antes de guardar %1. El trabajo se conservó.</translation>
    </message>
    <message>
        <source>What was kept</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo conservado</translation>
    </message>
    <message>
        <source>The file as it is saved</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El archivo tal como está guardado</translation>
    </message>
    <message>
        <source>It was never saved.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nunca se guardó.</translation>
    </message>
    <message>
        <source>Go on with what was kept</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Seguir con lo conservado</translation>
    </message>
    <message>
        <source>Throw the kept work away</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Descartar lo conservado</translation>
    </message>
    <message>
        <source>Decide later</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Decidir más tarde</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::RoundPapers</name>
    <message>
        <source>OK</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Save the layout first?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Guardar primero la distribución?</translation>
    </message>
    <message>
        <source>What is printed of inspections carries the hash of the layout&apos;s file. This layout is not in its file as it is here.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo que se imprime de las inspecciones lleva la suma de comprobación del archivo de la distribución. Esta distribución no está en su archivo tal como está aquí.</translation>
    </message>
    <message>
        <source>Save the layout first</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar primero la distribución</translation>
    </message>
    <message>
        <source>Print nothing</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No imprimir nada</translation>
    </message>
    <message>
        <source>That is the layout itself</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Esa es la propia distribución</translation>
    </message>
    <message>
        <source>Save it under another name.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guárdelo con otro nombre.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>The sheet is written</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>La hoja está escrita</translation>
    </message>
    <message>
        <source>What it does not do as it should is below.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Abajo está lo que no hace como debería.</translation>
    </message>
    <message>
        <source>A sheet of which devices?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿Una hoja de qué dispositivos?</translation>
    </message>
    <message>
        <source>All devices</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todos los dispositivos</translation>
    </message>
    <message>
        <source>What is due</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Lo pendiente</translation>
    </message>
    <message>
        <source>The sheet is being made…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se está haciendo la hoja…</translation>
    </message>
    <message>
        <source>There is no sheet</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay hoja</translation>
    </message>
    <message>
        <source>There is no device that is due.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún dispositivo pendiente.</translation>
    </message>
    <message>
        <source>There is no device to inspect.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún dispositivo que inspeccionar.</translation>
    </message>
    <message>
        <source>Save the sheet of the round as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la hoja de la ronda como</translation>
    </message>
    <message>
        <source>round</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>ronda</translation>
    </message>
    <message>
        <source>The bundle of which period?</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>¿La recopilación de qué período?</translation>
    </message>
    <message>
        <source>It holds the records of the period, the audit of the plan, and what is still open.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Contiene los registros del período, la auditoría del plano y lo que sigue abierto.</translation>
    </message>
    <message>
        <source>The last twelve months</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Los últimos doce meses</translation>
    </message>
    <message>
        <source>This year</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Este año</translation>
    </message>
    <message>
        <source>All there is</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todo lo que hay</translation>
    </message>
    <message>
        <source>There are no records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay registros</translation>
    </message>
    <message>
        <source>Nothing was inspected yet: a bundle is of what was recorded.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Todavía no se inspeccionó nada: una recopilación es de lo que se registró.</translation>
    </message>
    <message>
        <source>The bundle is being made…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se está haciendo la recopilación…</translation>
    </message>
    <message>
        <source>Save the bundle as</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Guardar la recopilación como</translation>
    </message>
    <message>
        <source>records</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>registros</translation>
    </message>
    <message>
        <source>No round is being walked. The sheet opens none: it is opened when the sheet is entered. One room, other doors or another beginning are chosen in the form of a new round.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ninguna ronda en curso. La hoja no abre ninguna: se abre al registrar la hoja. Una sola sala, otras puertas u otro comienzo se eligen en el formulario de una ronda nueva.</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Nobody can stand where the walk is to begin: choose another place.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Nadie puede estar de pie donde debe empezar el recorrido: elija otro lugar.</translation>
    </message>
    <message>
        <source>From … to …</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde … hasta …</translation>
    </message>
    <message>
        <source>Both days belong to it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Ambos días se incluyen.</translation>
    </message>
    <message>
        <source>From</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Make the bundle</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Hacer la recopilación</translation>
    </message>
    <message>
        <source>Two days as 2026-03-02 are expected, the earlier first. Both belong to it.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Se esperan dos días como 2026-03-02, primero el anterior. Ambos se incluyen.</translation>
    </message>
    <message>
        <source>The name says what it is: it ends in .pdf for a document, in .csv for a table.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El nombre dice qué es: termina en .pdf si es un documento, en .csv si es una tabla.</translation>
    </message>
</context>
<context>
    <name>stopwalk::window::TellWritten</name>
    <message>
        <source>Written, but perhaps not for good</source>
        <translation>Escrito, pero quizá no de forma duradera</translation>
    </message>
    <message>
        <source>%1 was not written</source>
        <translation>%1 no se escribió</translation>
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
        <translation>Paredes de la sala</translation>
    </message>
    <message>
        <source>Arrow keys go from wall to wall, Enter hangs the poster there, Escape leaves. The list of walls does the same.</source>
        <translation>Las flechas van de pared en pared, Intro cuelga allí el cartel, Esc sale. La lista de paredes hace lo mismo.</translation>
    </message>
    <message>
        <source>Click the wall where the poster is to hang; Escape goes back to it.</source>
        <translation>Haga clic en la pared donde va a colgar el cartel; Esc vuelve a él.</translation>
    </message>
    <message>
        <source>Hangs here</source>
        <translation>Cuelga aquí</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <source>%1 The layout is audited by the usual profile, %2.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>%1 La distribución se audita con el perfil habitual, %2.</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>línea %1: %2</translation>
    </message>
    <message>
        <source>There is no profile `%1`%2, and no such file beside the layout.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>No hay ningún perfil `%1`%2, ni tal archivo junto a la distribución.</translation>
    </message>
    <message>
        <source>The profile %1 cannot be read (%2).</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El perfil %1 no se puede leer (%2).</translation>
    </message>
    <message>
        <source>Language: %1. It is spoken from the next start of Stopwalk on.</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>Idioma: %1. Se usa a partir del próximo inicio de Stopwalk.</translation>
    </message>
    <message>
        <source>As the computer has it</source>
        <translatorcomment>Not reviewed by a native speaker.</translatorcomment>
        <translation>El del ordenador</translation>
    </message>
</context>
</TS>
