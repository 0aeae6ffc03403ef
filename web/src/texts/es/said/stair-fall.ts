// What the core says of a stair fall, in Spanish, keyed by its own English words.

export const stairFall: Record<string, string> = {
  'Stair fall': 'Caída por escalera',
  'A body tumbles or slides down a flight of stairs onto a landing. Covers speed, hits and their energy, head and body on padded and bare edges, run-out and stand-off; leaves out the neck, which part hits, bending stairs and balusters.':
    'Un cuerpo rueda o resbala por un tramo de escalera hasta un rellano. Incluye velocidad, golpes y su energía, cabeza y cuerpo en cantos acolchados y desnudos, recorrido final y distancias; no incluye el cuello, qué parte golpea, las escaleras curvas ni los balaustres.',
  'With costume, padding and kit, from a scale.': 'Con vestuario, protecciones y equipo, en una báscula.',
  'Way down': 'Manera de bajar',
  'Tumbling over and over': 'Rodando',
  'Sliding down the edges': 'Resbalando por los cantos',
  'Tumbling puts energy into turning and hits as the body comes round; sliding hits every edge.':
    'Al rodar, parte de la energía va al giro y se golpea a cada vuelta del cuerpo; al resbalar se golpea en cada canto.',
  'Steps in the fall': 'Peldaños de la caída',
  'Risers from where the body leaves its feet to the landing.':
    'Contrahuellas desde donde el cuerpo pierde los pies hasta el rellano.',
  'Rise of a step': 'Altura de peldaño',
  'Top of one tread to the top of the next, with its padding.':
    'De una huella a la siguiente, con su acolchado.',
  'Going of a step': 'Fondo de peldaño',
  'Edge of one tread to the edge of the next, measured level.':
    'De canto a canto de dos huellas, medido en horizontal.',
  'Clear width of the stairs': 'Ancho libre de la escalera',
  'Between walls, balusters or whatever else a limb can hit.':
    'Entre paredes, balaustres o lo que pueda golpear un brazo o una pierna.',
  'Clear length of the landing': 'Largo libre del rellano',
  'From the last edge to a wall, the next flight or a set piece.':
    'Del último canto a una pared, al tramo siguiente o a un elemento del decorado.',
  'Speed at the top': 'Velocidad arriba',
  'Along the stairs as the body leaves its feet; a push or a run gives more.':
    'A lo largo de la escalera al perder los pies; un empujón o una carrera dan más.',
  'Way in one turn': 'Recorrido en una vuelta',
  'Along the edges, from rehearsal pictures; only a tumble uses it.':
    'A lo largo de los cantos, según imágenes de ensayo; solo cuenta al rodar.',
  'Hits in one turn': 'Golpes en una vuelta',
  'Shoulder, back, hip and feet make four; only a tumble uses it.':
    'Hombro, espalda, cadera y pies son cuatro; solo cuenta al rodar.',
  'Radius of gyration': 'Radio de giro',
  'About the axis of the tumble: about 0.2 m for a log roll, 0.3 m tucked, 0.4 m loose.':
    'Respecto al eje en que rueda: unos 0,2 m de tronco, 0,3 m encogido, 0,4 m suelto.',
  'Friction along the edges': 'Rozamiento en los cantos',
  'A padded bag in the costume, let go on the stairs; a tumble rubs part of the time and counts less.':
    'Con un saco acolchado y vestido, soltado en la escalera; al rodar se roza parte del tiempo y cuenta menos.',
  'Share of energy lost in a hit': 'Parte de energía perdida por golpe',
  'From timed falls of a weighted figure or of the last steps; softer stairs take more.':
    'De caídas cronometradas de un muñeco lastrado o de los últimos peldaños; una escalera más blanda quita más.',
  'Friction on the landing': 'Rozamiento en el rellano',
  'The same bag drawn over the landing or slid to rest on it.':
    'El mismo saco arrastrado por el rellano o lanzado hasta que para.',
  'Padding on the edges': 'Acolchado de los cantos',
  'Thickness over the nosings, nought when they are bare.':
    'Grosor sobre los cantos; cero si están desnudos.',
  'Padding on the head': 'Acolchado de la cabeza',
  'Under a wig or a hat, where the head can hit.': 'Bajo peluca o sombrero, donde puede golpear la cabeza.',
  'Padding on the body': 'Acolchado del cuerpo',
  'Over hips, spine, elbows and knees, under the costume.':
    'En caderas, columna, codos y rodillas, bajo el vestuario.',
  'Share of padding that gives': 'Parte del acolchado que cede',
  'How far the padding presses before it is hard, from a press or a dropped weight.':
    'Cuánto se aplasta antes de ponerse duro, con una prensa o un peso que cae.',
  'Give of a bare edge and scalp': 'Lo que ceden canto y cuero cabelludo',
  'About 4 mm for a head on wood, less on stone or steel, more on a stage set of thin board.':
    'Unos 4 mm para una cabeza en madera, menos en piedra o acero, más en un decorado de tablero fino.',
  'Give of the body': 'Lo que cede el cuerpo',
  'Flesh over bone where the body hits first.': 'Carne sobre el hueso donde el cuerpo golpea primero.',
  'Share of speed into an edge': 'Parte de velocidad contra un canto',
  'How much of the speed along the stairs a head brings into an edge, from an instrumented figure.':
    'Cuánta de la velocidad por la escalera lleva la cabeza contra un canto, con un muñeco instrumentado.',
  'Body at full stretch': 'Cuerpo estirado del todo',
  "Heels to fingertips: what may lie ahead of the body's middle on the landing.":
    'De talones a dedos: lo que puede quedar por delante del centro del cuerpo en el rellano.',
  'Last edge to people': 'Del último canto a las personas',
  'Along the landing to the nearest person who is not in the gag.':
    'A lo largo del rellano hasta la persona más cercana que no actúa.',
  'Last edge to the camera': 'Del último canto a la cámara',
  'Along the landing to the camera, its support or its operator, whichever is nearest.':
    'A lo largo del rellano hasta la cámara, su soporte o su operador, lo que esté más cerca.',
  'Falls on the day': 'Caídas en el día',
  'Whole flights by the same performer, rehearsals at speed included.':
    'Tramos enteros del mismo especialista, incluidos los ensayos a velocidad.',
  'Rehearsals of the last steps': 'Ensayos de los últimos peldaños',
  'Falls of the bottom three steps and up before the whole flight.':
    'Caídas desde los tres últimos peldaños y más arriba antes del tramo entero.',
  'Spotters at the stairs': 'Ayudantes en la escalera',
  'People out of shot beside the stairs and at the foot who do nothing else.':
    'Personas fuera de plano junto a la escalera y al pie que no hacen otra cosa.',
  'Medics at the foot': 'Sanitarios al pie',
  'With what a head or neck injury on a stair needs.':
    'Con lo que hace falta para una lesión de cabeza o cuello en una escalera.',
  'Speed at the foot': 'Velocidad al pie',
  'Along the stairs just before the last contact.':
    'A lo largo de la escalera justo antes del último contacto.',
  'Highest speed': 'Velocidad más alta',
  'Along the stairs, at the top, the first contact or the foot, whichever is most.':
    'A lo largo de la escalera, arriba, en el primer contacto o al pie, la que sea mayor.',
  'Speed that hits settle at': 'Velocidad a la que tiende',
  'What a long flight would bring the body to just before each hit.':
    'A la que un tramo largo llevaría el cuerpo justo antes de cada golpe.',
  'Speed of a head into an edge': 'Velocidad de la cabeza contra un canto',
  'Its share of the highest speed with a drop of one rise.':
    'Su parte de la velocidad más alta con la caída de un peldaño.',
  'Head on a padded edge': 'Cabeza en un canto acolchado',
  'Peak, for a half-sine stop over the give and the share of the padding that gives.':
    'Máximo, para una frenada de medio seno en lo que ceden el canto y el acolchado.',
  'HIC on a padded edge': 'HIC en un canto acolchado',
  'Head injury criterion, windows up to 15 ms.': 'Criterio de lesión de cabeza, con ventanas de hasta 15 ms.',
  'Head on a bare edge': 'Cabeza en un canto desnudo',
  "The same on an edge whose padding has gone; the head's own padding is counted.":
    'Lo mismo en un canto que perdió el acolchado; cuenta el propio de la cabeza.',
  'HIC on a bare edge': 'HIC en un canto desnudo',
  'Head injury criterion on that edge, windows of any length.':
    'Criterio de lesión de cabeza en ese canto, con ventanas de cualquier duración.',
  'Energy of the hardest hit': 'Energía del golpe más fuerte',
  'What one contact takes out of the body at the highest speed.':
    'Lo que un contacto le quita al cuerpo a la velocidad más alta.',
  'Force of the hardest hit': 'Fuerza del golpe más fuerte',
  'Peak, for a half-sine stop over flesh and the padding of body and edge.':
    'Máximo, para una frenada de medio seno en la carne y los acolchados del cuerpo y del canto.',
  'The same on a bare edge': 'Lo mismo en un canto desnudo',
  "With the body's own padding only.": 'Solo con el acolchado del propio cuerpo.',
  'Hits in a flight': 'Golpes en un tramo',
  'Contacts that cost energy, the landing included.': 'Contactos que quitan energía, incluido el rellano.',
  'Hits on the day': 'Golpes en el día',
  'Hits in a flight times the falls on the day.': 'Golpes en un tramo por las caídas del día.',
  'Energy of the height': 'Energía de la altura',
  'Weight times the height of the flight: hits, rubbing and the landing take it all.':
    'Peso por la altura del tramo: golpes, rozamiento y rellano se la llevan toda.',
  'Energy rubbed away': 'Energía perdida rozando',
  'Friction along the edges over the whole flight.': 'Rozamiento en los cantos de todo el tramo.',
  'Time on the stairs': 'Tiempo en la escalera',
  'From the top to the landing.': 'De arriba al rellano.',
  'Landing as a fall from': 'Llegada como caída desde',
  'Height of a straight fall onto the landing that hits as hard.':
    'Altura de una caída vertical al rellano que golpea lo mismo.',
  'Run-out on the landing': 'Recorrido final en el rellano',
  "From the last edge to where the body's middle comes to rest, the turning counted in full.":
    'Del último canto a donde para el centro del cuerpo, contando todo el giro.',
  'Landing left': 'Rellano que queda',
  'Clear landing less the run-out and half the body at full stretch.':
    'Rellano libre menos el recorrido final y medio cuerpo estirado.',
  'Gap to people': 'Distancia a las personas',
  'From the furthest reach of the body to the nearest person.':
    'Del alcance máximo del cuerpo a la persona más cercana.',
  'Gap to the camera': 'Distancia a la cámara',
  'From the furthest reach of the body to the camera.': 'Del alcance máximo del cuerpo a la cámara.',
  "Stairs' width over the body": 'Ancho de escalera sobre el cuerpo',
  'Clear width less the body at full stretch; below nothing a limb can catch a baluster.':
    'Ancho libre menos el cuerpo estirado; por debajo de cero un brazo o una pierna puede engancharse en un balaustre.',
  'A head at {speed} on a padded edge gives HIC {#hic} where {#limit} is the limit; thicker padding on the edges and under the wig brings it down.':
    'Una cabeza a {speed} en un canto acolchado da un HIC de {hic} y el límite es {limit}; más acolchado en los cantos y bajo la peluca lo reduce.',
  "The head's peak on a padded edge is {peak} where {limit} is the limit; more padding that gives lengthens the stop.":
    'El máximo de la cabeza en un canto acolchado es {peak} y el límite es {limit}; más acolchado que ceda alarga la frenada.',
  'A head at {speed} on an edge whose padding has gone gives HIC {#hic} against {#limit}; fix every pad so that no hit can shift it, and look after each fall.':
    'Una cabeza a {speed} en un canto que perdió el acolchado da un HIC de {hic} frente a {limit}; fije cada pieza para que ningún golpe la mueva y revise tras cada caída.',
  'Speed on the stairs': 'Velocidad en la escalera',
  'The body reaches {speed} where {limit} is the most by habit; fewer steps, a cut on the stairs or a rougher runner slows it.':
    'El cuerpo llega a {speed} y por costumbre el máximo es {limit}; menos peldaños, un corte en la escalera o una alfombra más áspera lo frenan.',
  'One hit at {speed} takes {energy} out of the body, one of {#hits} in the flight; {limit} is the most by habit, so slow the fall or hit more often and softer.':
    'Un golpe a {speed} le quita al cuerpo {energy}, uno de los {hits} del tramo; por costumbre el máximo es {limit}: frene la caída o golpee más veces y más suave.',
  'Force of a hit, padded': 'Fuerza de un golpe, acolchado',
  'The hardest hit on a padded edge peaks at {force} where {limit} is the most by habit; pad hip, shoulder and edge more.':
    'El golpe más fuerte en un canto acolchado llega a {force} y por costumbre el máximo es {limit}; acolche más cadera, hombro y canto.',
  'Force of a hit, bare edge': 'Fuerza de un golpe, canto desnudo',
  "The same hit on a bare edge peaks at {force} against {limit}; the body's own padding has to do when an edge has lost its pad.":
    'El mismo golpe en un canto desnudo llega a {force} frente a {limit}; la protección del cuerpo debe bastar cuando un canto ha perdido la suya.',
  'Landing as a fall': 'Llegada como caída',
  'The body comes onto the landing as from a fall of {height}; {limit} is the most by habit on a hard floor, so lay a mat that the lens does not see.':
    'El cuerpo llega al rellano como de una caída de {height}; por costumbre el máximo es {limit} en suelo duro: ponga una colchoneta que el objetivo no vea.',
  'Room on the landing': 'Espacio en el rellano',
  'The run-out is up to {run} and {left} of the landing are left past the body; {limit} is wanted before a wall or the next flight.':
    'El recorrido final es de hasta {run} y quedan {left} de rellano más allá del cuerpo; se desean {limit} antes de una pared o del tramo siguiente.',
  'Stand-off of people': 'Distancia de las personas',
  'The run-out is up to {run} and {left} are left between the body and the nearest person; {limit} is wanted, so move people back or to the side.':
    'El recorrido final es de hasta {run} y quedan {left} entre el cuerpo y la persona más cercana; se desean {limit}: aleje a las personas o póngalas a un lado.',
  'Stand-off of the camera': 'Distancia de la cámara',
  'The run-out is up to {run} and {left} are left between the body and the camera; {limit} is wanted, so use a longer lens or leave the camera unattended.':
    'El recorrido final es de hasta {run} y quedan {left} entre el cuerpo y la cámara; se desean {limit}: use un objetivo más largo o deje la cámara sin operador.',
  'Room to the sides': 'Espacio a los lados',
  'The stairs are {room} wider than the body at full stretch; {limit} is wanted, so keep the limbs in or pad the balusters and the wall.':
    'La escalera es {room} más ancha que el cuerpo estirado; se desean {limit}: recoja brazos y piernas o acolche los balaustres y la pared.',
  'Whole flights by one performer: {n}, which is {hits} hits; {limit} is the most by habit, so share the rest or cover it from other angles.':
    'Tramos enteros de un especialista: {n}, que son {hits} golpes; por costumbre el máximo es {limit}: reparta los demás o ruédelo desde otros ángulos.',
  'an unknown number of': 'un número desconocido de',
  'Last steps rehearsed': 'Últimos peldaños ensayados',
  'Falls of the last steps before the whole flight: {n}; at least {limit} is the habit, from the bottom three up.':
    'Caídas de los últimos peldaños antes del tramo entero: {n}; lo habitual son al menos {limit}, desde los tres últimos hacia arriba.',
  'Spotters who do nothing else: {n}; at least {limit} is the habit, one beside the flight and one at the foot.':
    'Ayudantes que no hacen otra cosa: {n}; lo habitual son al menos {limit}, uno junto al tramo y otro al pie.',
  'Medics at the foot of the stairs: {n}; at least {limit} is the habit, with what holds a neck still.':
    'Sanitarios al pie de la escalera: {n}; lo habitual es al menos {limit}, con lo necesario para inmovilizar el cuello.',
  'The way down and along the landing': 'La bajada y el rellano',
  'Time from the top': 'Tiempo desde arriba',
  'Way from the top': 'Recorrido desde arriba',
  'The stairs': 'La escalera',
  'Only the performer is on the stairs; each pad, rail and edge is looked at before each fall.':
    'En la escalera solo está el especialista; antes de cada caída se revisan acolchados, barandillas y cantos.',
  'Run-out at the foot': 'Recorrido final al pie',
  'Where the body and its limbs may come to rest: no person, stand, cable or prop in here.':
    'Donde pueden parar el cuerpo y sus extremidades: aquí no hay personas, soportes, cables ni atrezo.',
  'From {speed} at the top the body stops on the stairs: the friction of {#friction} and the hits take more than the height gives.':
    'Con {speed} arriba el cuerpo se para en la escalera: el rozamiento de {friction} y los golpes quitan más de lo que da la altura.',
  'At {speed} a body thrown off an edge flies over {#steps} steps before it meets the next; hits are then fewer and harder than counted here.':
    'A {speed} un cuerpo lanzado desde un canto vuela sobre {steps} peldaños antes de dar en el siguiente; los golpes son entonces menos y más fuertes que los contados aquí.',
  'The speed has settled at about {speed}: a longer flight of the same stairs is no faster, only more hits.':
    'La velocidad se ha estabilizado en unos {speed}: un tramo más largo de la misma escalera no es más rápido, solo da más golpes.',
  'The body is at {speed} at the foot and still gains towards {settled}: each step more makes the landing harder.':
    'El cuerpo va a {speed} al pie y aún gana hacia {settled}: cada peldaño más hace la llegada más dura.',
  'HIC {#padded} on padding and {#bare} without says nothing of a neck bent under the body: chin in and arms round the head are rehearsed, not computed.':
    'Un HIC de {padded} con acolchado y de {bare} sin él no dice nada de un cuello doblado bajo el cuerpo: la barbilla metida y los brazos en torno a la cabeza se ensayan, no se calculan.',
};
